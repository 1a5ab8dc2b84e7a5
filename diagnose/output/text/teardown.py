"""``teardown`` on a terminal: a page of summary, then the stages with their blanks."""

from __future__ import annotations

from diagnose.output.documents.plan_changes import PlanChanges
from diagnose.output.documents.stages import READING_EXAMPLE, PlannedCheck, PlannedStage
from diagnose.output.documents.teardown import TeardownDocument
from diagnose.output.lines import as_typed, headed, labelled, percent, together, wrapped
from diagnose.output.text.alarms import alarm_lines
from diagnose.output.text.loose_ends import comes_first_lines, loose_ends_lines

NAMES = 48  #: columns of the stages' names in the table


def teardown_text(document: TeardownDocument) -> str:
    """Render the whole plan as text."""
    history, number = document.history, len(document.stages)
    return together(
        [
            wrapped(history.says, 0, 2, history.whole) if history else [],
            [
                *wrapped(f"Teardown plan: {document.name}"),
                *wrapped(f"Engine: {document.engine}", 0, 8),
                *(wrapped(document.closed, 0, 2) if document.closed else []),
            ],
            alarm_lines(document.alarms),
            _changes(document.changed) if document.changed else [],
            wrapped(document.strip, 0, 2) if document.strip else [],
            _in_short(document),
            _order(document),
            _bench(document),
            *(block for stage in document.stages for block in stage_lines(stage, number)),
            _not_planned(document),
            loose_ends_lines(document.loose_ends, document.path),
            _filling_in(document),
            comes_first_lines(document.deferrals),
        ]
    )


def _changes(changes: PlanChanges) -> list[str]:
    lines = [f"What changed since entry {changes.since}"]
    for line in changes.in_words(with_ids=True):
        lines += wrapped(f"- {line}", 2, 4)
    return lines


def _in_short(document: TeardownDocument) -> list[str]:
    if document.stop_here:
        return wrapped(document.stop_here)
    lines = ["In short", *labelled("minutes", document.hands_on, 2, 14)]
    if document.waits:
        lines += labelled("waiting", f"up to {document.waits} besides", 2, 14)
    chance = f"{percent(document.found)} that this plan confirms a cause"
    if document.nothing_wrong:
        chance += ", if there is a fault: nothing wrong was found so far"
    lines += labelled("chance", chance, 2, 14)
    lines += labelled("likely now", document.likely, 2, 14)
    stop = f"a cause is {percent(document.until)} likely and has been seen on the engine"
    lines += labelled("stop when", stop, 2, 14)
    if document.limit is not None:
        lines += labelled("limit", f"only what fits into {document.limit:.0f} min", 2, 14)
    lines += labelled("", document.pace, 2, 14)
    return lines


def _order(document: TeardownDocument) -> list[str]:
    """The stages in one table: minutes so far and chance of the cause by then."""
    if not document.summary:
        return []
    lines = ["Stages in order".ljust(NAMES) + "minutes so far   found by then"]
    for stage in document.summary:
        figures = f"{stage.minutes:14.0f}   {percent(stage.chance):>13}"
        lines += _beside(f"{stage.number:4}  ", stage.says, figures)
    return lines


def _beside(head: str, text: str, figures: str) -> list[str]:
    """A text in a narrow column, with figures beside its first line."""
    lines, line = [], head
    for word in text.split():
        if len(line) + 1 + len(word) > NAMES and line.strip():
            lines.append(line)
            line = " " * len(head)
        line += word if line.endswith("  ") else f" {word}"
    lines.append(line)
    lines[0] = lines[0].ljust(NAMES) + figures
    return lines


def _bench(document: TeardownDocument) -> list[str]:
    if not document.tools and not document.ready:
        return []
    lines = ["On the bench before you begin"]
    if document.ready:
        lines += labelled("parts", "; ".join(document.ready), 2, 10)
    if document.tools:
        lines += labelled("tools", "; ".join(document.tools), 2, 10)
    return lines


def stage_lines(stage: PlannedStage, stages: int) -> list[list[str]]:
    """Return a stage of so many in blocks: what to open, each check, what to see while open."""
    lines = wrapped(f"Stage {stage.number} of {stages}: {stage.title}", 0, 2)
    facts = f"{stage.minutes:.0f} min"
    if stage.opening_minutes:
        facts += f", {stage.opening_minutes:.0f} of them to open"
    lines += wrapped(f"{facts}; chance to find the cause here {percent(stage.found)}", 2)
    if stage.why:
        lines += wrapped(stage.why, 2, 4)
    for caution in stage.cautions:
        lines += wrapped(f"caution: {caution}", 2, 4)
    for opening in stage.opens:
        if opening.shown:
            lines += wrapped(f"open: {opening.says} ({opening.minutes:.0f} min)", 2, 4)
        if opening.ready and opening.minutes:
            lines += wrapped(f"have ready: {'; '.join(opening.ready)}", 4, 6)
        if opening.keep:
            lines += wrapped(f"record first: {opening.keep}", 4, 6)
        if opening.destroys:
            lines += wrapped(f"lost by it: {opening.destroys}", 4, 6)
    checks = [_check(c, f"{stage.number}.{i}") for i, c in enumerate(stage.checks, 1)]
    also = []
    if stage.while_open:
        names = "; ".join(
            f"{c.says} ({c.minutes:.0f} min) [{c.inspection}]" for c in stage.while_open
        )
        also = [labelled("while it is open, not for the cause", "", 2, 2) + wrapped(names, 4, 4)]
    return [lines, *checks, *also]


def _check(check: PlannedCheck, number: str) -> list[str]:
    head = f"{check.says} ({check.minutes:.0f} min) [{check.inspection}]"
    lines = headed(f"  {number}  ", head)
    if check.evidence:
        lines += wrapped(f"first, because {check.evidence}", 6, 8)
    if check.waits:
        lines += wrapped(f"then waits {check.waits}", 6, 8)
    if check.tools:
        lines += wrapped(f"tools: {'; '.join(check.tools)}", 6, 8)
    if check.keep:
        lines += wrapped(f"record first: {check.keep}", 6, 8)
    for step in check.steps:
        lines += wrapped(f"- {step}", 6, 8)
    if check.destroys:
        lines += wrapped(f"lost by it: {check.destroys}", 6, 8)
    for outcome in check.outcomes:
        if outcome.finding is None:
            lines += wrapped(outcome.meaning, 6, 8)
        else:
            lines += wrapped(f"[____] {outcome.says}: `{outcome.finding}`", 6, 13)
            lines += wrapped(outcome.meaning, 13, 15)
    for measure in check.measures:
        lines += wrapped(f"[________ {measure.unit}] {measure.says}: `{measure.id}`", 6, 13)
        lines += wrapped(measure.limits, 13, 15)
    if check.takes_readings:
        lines += wrapped(f"[ readings ] one line each, such as {READING_EXAMPLE}", 6, 13)
    lines += wrapped(f"source: {check.source}", 6, 8)
    return lines


def _not_planned(document: TeardownDocument) -> list[str]:
    """Costly openings the plan does without."""
    if not document.not_planned:
        return []
    lines = ["Not in this plan"]
    for left_out in document.not_planned:
        lines += wrapped(f"- {left_out.says}", 2, 4)
    return lines


def _filling_in(document: TeardownDocument) -> list[str]:
    if not document.stages:
        return []
    name, first = as_typed(document.path), document.stages[0].checks[0].findings[0]
    return [
        "Write down what you find, or fill in a sheet; the plan is then made again:",
        f"  diagnose record {name} {first.id}=yes",
        f"  diagnose teardown {name} --markdown > sheet.md",
        f"  diagnose record {name} --sheet sheet.md",
    ]
