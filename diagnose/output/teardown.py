"""What ``teardown`` prints: one page of summary, then the stages with their blanks."""

from __future__ import annotations

from diagnose.output import teardown_words as words
from diagnose.output.documents.alarms import alarm_notices
from diagnose.output.documents.cautions import cautions
from diagnose.output.lines import as_typed, headed, labelled, percent, together, wrapped
from diagnose.output.loose_ends import loose_ends as loose_end_lines
from diagnose.output.text.alarms import alarm_lines
from diagnose.teardown.changes import Changes
from diagnose.teardown.loose_ends import LooseEnds
from diagnose.teardown.plan import Check, Plan, Stage

ROOM = 48  #: columns of the stages' names in the table


def teardown(plan: Plan, ends: LooseEnds, path: str, changes: Changes | None = None) -> str:
    """The whole plan as text."""
    return together(
        [
            _head(plan),
            alarm_lines(alarm_notices(plan.answer)),
            _changed(changes) if changes else [],
            _in_short(plan, ends),
            _order(plan),
            _bench(plan),
            *(block for stage in plan.stages for block in _stage(stage, plan)),
            _without(plan),
            loose_end_lines(plan.answer, ends, path),
            _filling_in(plan, path),
            _gives_way(),
        ]
    )


def _head(plan: Plan) -> list[str]:
    case = plan.answer.case
    lines = wrapped(f"Teardown plan: {case.job.title or 'case without a title'}")
    return lines + wrapped(f"Engine: {case.layout.says}", 0, 8)


def _changed(changes: Changes) -> list[str]:
    """What the entries since then did to the ranking and the plan."""
    lines = [words.since(changes)]
    for line in words.changed(changes):
        lines += wrapped(f"- {line}", 2, 4)
    return lines


def _in_short(plan: Plan, ends: LooseEnds) -> list[str]:
    if stop := words.stop_here(plan, ends):
        return wrapped(stop)
    estimate, answer = plan.estimate, plan.answer
    lines = ["In short"]
    lines += labelled("minutes", words.hands_on(estimate), 2, 14)
    if plan.waits:
        lines += labelled("waiting", f"up to {words.minutes(plan.waits)} besides", 2, 14)
    lines += labelled("chance", f"{percent(estimate.found)} that this plan confirms a cause", 2, 14)
    likely = "; ".join(f"{r.cause.says} {percent(r.probability)}" for r in answer.ranking[:3])
    lines += labelled("likely now", likely, 2, 14)
    stop = f"a cause is {percent(plan.request.until)} likely and has been seen on the engine"
    lines += labelled("stop when", stop, 2, 14)
    if plan.request.minutes is not None:
        lines += labelled("limit", f"only what fits into {plan.request.minutes:.0f} min", 2, 14)
    lines += labelled("", words.pace(plan), 2, 14)
    return lines


def _order(plan: Plan) -> list[str]:
    """The stages in one table: minutes so far and chance found by then."""
    if not plan.stages:
        return []
    lines = ["Stages in order".ljust(ROOM) + "minutes so far   found by then"]
    for number, text, total, found in words.chances(plan):
        lines += _beside(f"{number:4}  ", text, f"{total:14.0f}   {percent(found):>13}")
    return lines


def _beside(head: str, text: str, figures: str) -> list[str]:
    """A text in a narrow column, with figures beside its first line."""
    lines, line = [], head
    for word in text.split():
        if len(line) + 1 + len(word) > ROOM and line.strip():
            lines.append(line)
            line = " " * len(head)
        line += word if line.endswith("  ") else f" {word}"
    lines.append(line)
    lines[0] = lines[0].ljust(ROOM) + figures
    return lines


def _bench(plan: Plan) -> list[str]:
    tools, ready = words.bench_list(plan)
    if not tools and not ready:
        return []
    lines = ["On the bench before you begin"]
    if ready:
        lines += labelled("parts", "; ".join(ready), 2, 10)
    if tools:
        lines += labelled("tools", "; ".join(tools), 2, 10)
    return lines


def _stage(stage: Stage, plan: Plan) -> list[list[str]]:
    head = f"Stage {stage.number} of {len(plan.stages)}: {words.title(stage)}"
    lines = wrapped(head, 0, 2)
    facts = f"{stage.minutes:.0f} min"
    if stage.opening_minutes:
        facts += f", {stage.opening_minutes:.0f} of them to open"
    facts += f"; chance to find the cause here {percent(stage.chance)}"
    lines += wrapped(facts, 2)
    if stage.why:
        lines += wrapped(stage.why, 2, 4)
    for caution in cautions(stage.cautions, plan.answer):
        lines += wrapped(f"caution: {caution}", 2, 4)
    for opening in stage.way:
        minutes = plan.chooser.tree.minutes(opening.access)
        if minutes or opening.keep:
            lines += wrapped(f"open: {opening.says} ({minutes:.0f} min)", 2, 4)
        if opening.ready and minutes:
            lines += wrapped(f"have ready: {'; '.join(opening.ready)}", 4, 6)
        if opening.keep:
            lines += wrapped(f"record first: {opening.keep}", 4, 6)
        if opening.destroys:
            lines += wrapped(words.destroys(opening), 4, 6)
    checks = [_check(c, f"{stage.number}.{i}", plan) for i, c in enumerate(stage.checks, 1)]
    also = []
    if stage.also:
        names = "; ".join(
            f"{o.inspection.says} ({o.own:.0f} min) [{o.inspection.id}]" for o in stage.also
        )
        also = [labelled("while it is open, not for the cause", "", 2, 2) + wrapped(names, 4, 4)]
    return [lines, *checks, *also]


def _check(check: Check, number: str, plan: Plan) -> list[str]:
    inspection = check.inspection
    lines = headed(
        f"  {number}  ", f"{inspection.says} ({check.minutes:.0f} min) [{inspection.id}]"
    )
    if check.evidence:
        lines += wrapped(f"first, because {check.evidence}", 6, 8)
    if inspection.waits_minutes:
        lines += wrapped(f"then waits {words.minutes(inspection.waits_minutes)}", 6, 8)
    if inspection.tools:
        lines += wrapped(f"tools: {'; '.join(inspection.tools)}", 6, 8)
    if inspection.keep:
        lines += wrapped(f"record first: {inspection.keep}", 6, 8)
    for step in inspection.steps:
        lines += wrapped(f"- {step}", 6, 8)
    if inspection.destroys:
        lines += wrapped(f"lost by it: {inspection.destroys}", 6, 8)
    for found in check.meanings:
        if found.finding is None:
            lines += wrapped(words.meaning(found), 6, 8)
            continue
        lines += wrapped(f"[____] {found.finding.says}: `{found.finding.id}`", 6, 13)
        lines += wrapped(words.meaning(found), 13, 15)
    for measure in inspection.measures:
        blank = f"[________ {words.unit_of(measure)}] {measure.says}: `{measure.id}`"
        lines += wrapped(blank, 6, 13)
        lines += wrapped(words.limits_of(measure, plan.answer.case), 13, 15)
    if words.takes_readings(check):
        lines += wrapped(f"[ readings ] one line each, such as {words.READING_BLANK}", 6, 13)
    lines += wrapped(f"source: {words.brief(inspection.source)}", 6, 8)
    return lines


def _without(plan: Plan) -> list[str]:
    """Costly openings the plan does without."""
    if not plan.not_planned:
        return []
    lines = ["Not in this plan"]
    for left in plan.not_planned:
        lines += wrapped(f"- {words.never(left)}", 2, 4)
    return lines


def _filling_in(plan: Plan, path: str) -> list[str]:
    if not plan.stages:
        return []
    check = plan.stages[0].checks[0]
    name = as_typed(path)
    lines = ["Write down what you find, or fill in a sheet; the plan is then made anew:"]
    lines.append(f"  diagnose record {name} {check.option.findings[0].id}=yes")
    lines.append(f"  diagnose teardown {name} --markdown > sheet.md")
    lines.append(f"  diagnose record {name} --sheet sheet.md")
    return lines


def _gives_way() -> list[str]:
    lines = ["This plan gives way to"]
    for text in words.deferrals():
        lines += wrapped(f"- {text}", 2, 4)
    return lines
