"""What ``review`` prints: the answer first, the reasons second, the next step last."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from diagnose.case_inference import Ranked
from diagnose.diagnosis import Diagnosis
from diagnose.inference.explain import Weight
from diagnose.output.cautions import cautions
from diagnose.output.entries_behind import rests_on
from diagnose.output.lines import as_typed, headed, labelled, percent, together, wrapped
from diagnose.output.reasons import SETTLED, Reason, chain_told, in_short, others, reasons
from diagnose.planning.options import Option
from knowledge.model import Severity
from knowledge.work import Caution

SHOWN = 5


def review(answer: Diagnosis, path: str, shown: int = SHOWN) -> str:
    """The whole answer as text."""
    return together(
        [
            _head(answer),
            alarms(answer),
            _contradictions(answer),
            _in_short(answer),
            _ranking(answer, shown),
            _sets(answer),
            _damage(answer),
            _loose_ends(answer),
            _still_missing(answer),
            next_step(answer, path),
            _scope(),
        ]
    )


def _head(answer: Diagnosis) -> list[str]:
    job = answer.case.job
    lines = wrapped(job.title or "Case without a title")
    lines += wrapped(f"Engine: {answer.case.layout.says}", 0, 8)
    if not answer.inference.evidence:
        lines += wrapped(
            "Nothing has been seen or told yet: what follows is only how common each cause is."
        )
    return lines


def alarms(answer: Diagnosis, told: Collection[str] = ()) -> list[str]:
    """Stop rules first: state, limit, action; but for what was ``told`` already."""
    lines = []
    fresh = [a for a in answer.alarms if a.says not in told]
    for alarm in fresh:
        lines += wrapped(f"{alarm.severity.value.upper()}: {alarm.says}", 0, 2)
    if any(a.severity is Severity.STOP for a in fresh):
        lines += wrapped("The engine maker's own stop limits take precedence over these.", 0, 2)
    return lines


def _in_short(answer: Diagnosis) -> list[str]:
    """The answer in a sentence, with what would put it right once it is as good as settled."""
    if not answer.inference.evidence:
        return []
    lines = wrapped(f"In short: {in_short(answer)}.", 0, 2)
    first = answer.ranking[0]
    if first.probability >= SETTLED:
        lines += labelled("remedy", first.cause.remedy, 2, 12)
        if first.cause.follows:
            lines += labelled("if left", first.cause.follows, 2, 12)
    return lines


def _contradictions(answer: Diagnosis) -> list[str]:
    if not answer.contradictions:
        return []
    lines = ["These do not fit together; look again before trusting the ranking:"]
    for c in answer.contradictions:
        lines += wrapped(f"- {c.says}", 2, 4)
        behind = ", ".join(f"{no} ({said})" for no, said in rests_on(answer, c).items())
        if behind:
            lines += wrapped(f"entries: {behind}", 4, 6)
        lines += wrapped(f"look again: {c.recheck.asks} [{c.recheck.id}]", 4, 6)
    return lines


def _ranking(answer: Diagnosis, shown: int) -> list[str]:
    top = answer.ranking[:shown]
    weights = answer.reasons.weights(
        [r.cause.id for r in top if r.cause.id in answer.reasons.explained]
    )
    lines = ["Root causes, likeliest first"]
    for i, ranked in enumerate(top, 1):
        lines += _cause(answer, i, ranked, weights.get(ranked.cause.id, ()))
    rest = others(answer, shown)
    if rest:
        lines += wrapped(rest, 2)
    return lines


def _cause(answer: Diagnosis, i: int, ranked: Ranked, weights: Sequence[Weight]) -> list[str]:
    name = f"{i:2}. {percent(ranked.probability):>5} likely  "
    lines = ["", *headed(name, f"{ranked.cause.says} [{ranked.cause.id}]")]
    if ranked.cause.no_fault:
        lines += wrapped("(no fault: it would explain the reading)", 6)
    for reason, label in labelled_once(reasons(answer, weights)):
        lines += labelled(label, f"{reason.weight}: {reason.says}", 6, 16)
    way = chain_told(answer, weights)
    if way:
        lines += labelled("how", way, 6, 16)
    return lines


def labelled_once(told: Sequence[Reason]) -> Iterator[tuple[Reason, str]]:
    """Each reason with the word for its side where that side begins."""
    before = ""
    for reason in told:
        yield reason, "" if reason.side == before else reason.side
        before = reason.side


def _sets(answer: Diagnosis) -> list[str]:
    if len(answer.explanations) < 2:
        return []
    lines = ["Explanations as sets of causes"]
    for e in answer.explanations:
        causes = (
            " and ".join(answer.book.causes[c].says for c in e.causes)
            or "some cause further down, none of the first few"
        )
        lines += headed(f"  {percent(e.share):>6}  ", causes)
    return lines


def _damage(answer: Diagnosis) -> list[str]:
    """What was harmed on the way, told as consequence: the chain of damage."""
    if not answer.reasons.damage:
        return []
    lines = ["Damage that follows, to look for and to make good as well"]
    for condition, chance in answer.reasons.damage:
        lines += wrapped(f"{percent(chance):>6}  {condition.says}", 2, 10)
    way = " -> ".join(
        str(answer.inference.graph.nodes[n]["says"]) for n in answer.reasons.damage_chain
    )
    if way:
        lines += labelled("chain", way, 2, 10)
    return lines


def _loose_ends(answer: Diagnosis) -> list[str]:
    lines = []
    if answer.reasons.unexplained:
        lines.append("Not explained by any cause here")
        for finding in answer.reasons.unexplained:
            lines += wrapped(f"- {finding.says} [{finding.id}]", 2, 4)
    if answer.inference.left_out:
        lines += wrapped(
            "Left out of the sum, too entangled: " + ", ".join(answer.inference.left_out)
        )
    return lines


def _still_missing(answer: Diagnosis) -> list[str]:
    """How much of the missing pressure no measured finding explains."""
    if not (answer.case.measured and answer.case.readings):  # then the physics stays unloaded
        return []
    from diagnose.circuit.budget import budget, worth_drawing
    from diagnose.output.documents.budget import still_missing

    if not worth_drawing(answer.case):
        return []
    line = still_missing(budget(answer.case, answer.book), answer.case)
    return wrapped(line, 0, 2) if line else []


def next_step(answer: Diagnosis, path: str) -> list[str]:
    """The check to do next, what it costs, what its outcomes would mean, what to type."""
    choice = answer.next_check
    if choice is None:
        return ["Nothing is left to look at that would tell these causes apart."]
    step = choice.option
    settled = answer.ranking[0].probability >= SETTLED
    lines = ["Still worth a look" if settled else "Look at next"]
    opening = answer.planner.tree.opening_minutes(step.way)
    minutes = f"{step.minutes:.0f} min hands-on"
    if opening:
        minutes += f", {opening:.0f} of them to open"
    lines += wrapped(f"{step.inspection.says} ({minutes}) [{step.inspection.id}]", 2, 4)
    if choice.evidence:
        lines += wrapped(f"first, because {choice.evidence}", 4, 6)
    lines += _precautions(answer, step)
    for outcome in () if settled else answer.planner.outcomes(step):
        text = outcome.finding.says if outcome.finding else "none of these"
        lines += wrapped(
            f"if {text} ({percent(outcome.probability)}): then {outcome.leads.says} leads, "
            f"{percent(outcome.leads_with)} likely",
            4,
            6,
        )
    besides = [o for o in choice.runners_up if o.inspection is not step.inspection]
    if besides:
        others = "; ".join(f"{o.inspection.says} ({o.minutes:.0f} min)" for o in besides[:2])
        lines += labelled("or", others, 4, 9)
    lines.append("  Write down what you find (yes, no or unknown):")
    lines.append(f"    diagnose record {as_typed(path)} {step.findings[0].id}=yes")
    return lines


def _precautions(answer: Diagnosis, step: Option) -> list[str]:
    lines = []
    kinds: dict[Caution, None] = {}
    for opening in step.way:
        minutes = answer.planner.tree.minutes(opening.access)
        if not minutes and not opening.keep:
            continue
        lines += wrapped(f"open: {opening.says} ({minutes:.0f} min)", 4, 6)
        if opening.keep:
            lines += wrapped(f"record first: {opening.keep}", 6, 8)
        kinds.update(dict.fromkeys(opening.cautions))
    if step.inspection.keep:
        lines += wrapped(f"record first: {step.inspection.keep}", 4, 6)
    kinds.update(dict.fromkeys(step.inspection.cautions))
    for caution in cautions(kinds, answer):
        lines += wrapped(f"caution: {caution}", 4, 6)
    return lines


def _scope() -> list[str]:
    return wrapped(
        "The tool ranks causes and shows evidence; a person decides on running and repair. "
        "The engine maker's manual comes first. Certified aircraft engines are out of scope."
    )
