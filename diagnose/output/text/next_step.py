"""The next check as lines for a terminal: what it costs, its outcomes, what to type."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.output.documents.next_checks import CheckOption
from diagnose.output.lines import as_typed, labelled, percent, wrapped


def nothing_left_lines(path: str, *, to_mend: bool) -> list[str]:
    """What to do where no check is left that tells anything; ``to_mend``: what to mend is known."""
    if not to_mend:
        return ["No check is left that would tell these causes apart."]
    command = f"diagnose signoff {as_typed(path)}"
    return wrapped(f"Next: put it right; what to check on the way: {command}", 0, 2, [command])


def next_step_lines(
    checks: Sequence[CheckOption], path: str, *, settled: bool, to_mend: bool = False
) -> list[str]:
    """The best of the checks.

    ``settled``: the cause is nearly certain already; ``to_mend``: what to mend is known.
    """
    if not checks:
        return nothing_left_lines(path, to_mend=to_mend)
    check, *others = checks
    lines = ["Still worth a look" if settled else "Look at next"]
    minutes = f"{check.minutes:.0f} min hands-on"
    if check.opening_minutes:
        minutes += f", {check.opening_minutes:.0f} of them to open"
    lines += wrapped(f"{check.says} ({minutes}) [{check.inspection}]", 2, 4)
    if check.evidence:
        lines += wrapped(f"first, because {check.evidence}", 4, 6)
    lines += first_lines(check, 4)
    for caution in check.warnings:
        lines += wrapped(f"caution: {caution}", 4, 6)
    for outcome in () if settled else check.outcomes or ():
        lines += wrapped(
            f"if {outcome.says} ({percent(outcome.probability)}): "
            f"{outcome.found_says or 'then '}{outcome.leads_says} "
            f"leads, {percent(outcome.leads_with)} likely",
            4,
            6,
        )
    besides = [o for o in others if o.inspection != check.inspection]
    if besides:
        texts = "; ".join(f"{o.says} ({o.minutes:.0f} min)" for o in besides[:2])
        lines += labelled("or", texts, 4, 9)
    lines.append("  Write down what you find (yes, no or unknown):")
    lines.append(f"    diagnose record {as_typed(path)} {check.findings[0]}=yes")
    return lines


def first_lines(check: CheckOption, indent: int) -> list[str]:
    """What to open on the way to a check, and what to record first."""
    lines = []
    at, on = indent, indent + 2
    for opening in check.openings:
        lines += wrapped(f"open: {opening.says} ({opening.minutes:.0f} min)", at, on)
        if opening.keep:
            lines += wrapped(f"record first: {opening.keep}", on, on + 2)
    if check.keep:
        lines += wrapped(f"record first: {check.keep}", at, on)
    return lines
