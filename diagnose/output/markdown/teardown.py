"""``teardown`` as a Markdown sheet to fill in, and its blanks alone as TOML."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.output.documents.named import UNTITLED
from diagnose.output.documents.plan_changes import PlanChanges
from diagnose.output.documents.stages import READING_EXAMPLE, PlannedCheck, PlannedStage
from diagnose.output.documents.teardown import TeardownDocument
from diagnose.output.lines import as_typed
from diagnose.output.markdown.blanks import BLANK, one_line


def teardown_markdown(document: TeardownDocument) -> str:
    """Render the sheet: every blank is a line that begins with its id in backquotes and a colon."""
    lines = [f"# Teardown sheet: {one_line(document.title) or UNTITLED}", ""]
    lines += [f"Engine: {document.engine}.", ""]
    for alarm in document.alarms:
        lines += [f"**{alarm.severity.value.upper()}**: {alarm.says}", ""]
    if document.changed:
        lines += _changes(document.changed)
    lines += [
        "Write yes, no, unknown or probably after the colon of a blank, a measured value with its "
        "unit, and for one of several places `id @ place`. Leave a blank empty where you have not "
        f"looked. Then: `diagnose record {as_typed(document.path)} --sheet` and the name of this "
        "file.",
        "",
        document.pace,
        "",
    ]
    for stage in document.stages:
        lines += [*_stage(stage, len(document.stages)), ""]
    to_do = [t for t in document.loose_ends.follow if t.open]
    if to_do:
        lines += ["## Before you put anything together", ""]
        for task in to_do:
            because = ", ".join(f.says for f in task.because[:2])
            lines.append(f"- `{task.task}`: {BLANK} · {task.says} (because: {because})")
        lines.append("")
    lines += ["## These come first", "", *(f"- {d}" for d in document.deferrals)]
    if document.history:
        says = document.history.says
        lines += ["", f"{says[:1].upper()}{says[1:]}."]
    return "\n".join(lines)


def _changes(changes: PlanChanges) -> list[str]:
    lines = [f"- {one_line(line)}" for line in changes.in_words(with_ids=False)]
    return [f"## What changed since entry {changes.since}", "", *lines, ""]


def _stage(stage: PlannedStage, stages: int) -> Iterator[str]:
    yield f"## Stage {stage.number} of {stages}: {stage.title}"
    yield ""
    yield f"{stage.minutes:.0f} min, {stage.opening_minutes:.0f} of them to open."
    yield ""
    for caution in stage.cautions:
        yield f"> caution: {caution}"
        yield ">"
    for opening in stage.opens:
        if opening.shown:
            yield f"- open: {opening.says}"
            yield from (f"  - {text}" for text in _first(opening.keep, opening.destroys))
    for i, check in enumerate(stage.checks, 1):
        yield ""
        yield f"### {stage.number}.{i} {check.says} ({check.minutes:.0f} min)"
        yield ""
        yield from _check(check)


def _first(keep: str, destroys: str) -> list[str]:
    return [f"record first: {keep}"] * bool(keep) + [f"lost by it: {destroys}"] * bool(destroys)


def _check(check: PlannedCheck) -> Iterator[str]:
    yield from (f"- {text}" for text in _first(check.keep, check.destroys))
    yield from (f"{i}. {step}" for i, step in enumerate(check.steps, 1))
    yield ""
    for outcome in check.outcomes:
        if outcome.finding is not None:
            yield f"- `{outcome.finding}`: {BLANK} · {outcome.says}"
            yield f"  - {outcome.meaning}"
    for m in check.measures:
        yield f"- `{m.id}`: {BLANK} · {m.says}, {m.unit}; {m.limits}"
    if check.takes_readings:
        yield f"- `reading`: {BLANK} · one line for each, like {READING_EXAMPLE}"
        yield f"- `reading`: {BLANK} ·"


def teardown_blanks(document: TeardownDocument) -> str:
    """Render every blank of the plan as a key of a TOML file, in the order of the work."""
    lines = ["# yes, no, unknown or probably; measured values with their unit", ""]
    if document.history:
        lines.insert(0, f"# {' '.join(document.history.says.split())}")
    keys: set[str] = set()
    for stage in document.stages:
        lines.append(f"# stage {stage.number}: {stage.title}")
        for check in stage.checks:
            for name, line in _keys(check):
                if name not in keys:
                    lines.append(line)
                    keys.add(name)
    return "\n".join(lines)


def _keys(check: PlannedCheck) -> Iterator[tuple[str, str]]:
    for finding in check.findings:
        yield finding.id, f'{finding.id} = ""  # {finding.says}'
    for measure in check.measures:
        yield measure.id, f'{measure.id} = ""  # {measure.says}, {measure.unit}'
    if check.takes_readings:
        yield "reading", f"reading = []  # each like {READING_EXAMPLE}"
