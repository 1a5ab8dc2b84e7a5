"""The plan as a Markdown sheet to fill in, as TOML blanks, and as data for ``--json``."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from diagnose.output import teardown_words as words
from diagnose.output.documents.cautions import cautions
from diagnose.output.lines import as_typed, clean
from diagnose.teardown.changes import Changes
from diagnose.teardown.loose_ends import LooseEnds
from diagnose.teardown.plan import Check, Meaning, Plan, Stage

BLANK = "______"
_NAMED = re.compile(r" \[\w+\]$")  #: an id behind a sentence, for a terminal


def markdown(plan: Plan, ends: LooseEnds, path: str, changes: Changes | None = None) -> str:
    """The sheet: every blank is a line that begins with its id in backquotes and a colon."""
    lines = [
        f"# Teardown sheet: {one_line(plan.answer.case.job.title) or 'case without a title'}",
        "",
    ]
    lines += [f"Engine: {plan.answer.case.layout.says}.", ""]
    for alarm in plan.answer.alarms:
        lines += [f"**{alarm.severity.value.upper()}**: {alarm.says}", ""]
    if changes:
        told = [f"- {one_line(_NAMED.sub('', line))}" for line in words.changed(changes)]
        lines += [f"## {words.since(changes)}", "", *told, ""]
    lines += [
        "Write yes, no, unknown or probably after the colon of a blank, a measured value with its "
        "unit, and for one of several places `id @ place`. Leave a blank empty where you have not "
        f"looked. Then: `diagnose record {as_typed(path)} --sheet` and the name of this file.",
        "",
        words.pace(plan),
        "",
    ]
    for stage in plan.stages:
        lines += [*_stage(stage, plan), ""]
    open_tasks = ends.open_tasks
    if open_tasks:
        lines += ["## Before anything is put together", ""]
        for due in open_tasks:
            because = ", ".join(f.says for f in due.because[:2])
            lines.append(f"- `{due.task.id}`: {BLANK} · {due.task.says} (because: {because})")
        lines.append("")
    lines += ["## This plan gives way to", "", *(f"- {d}" for d in words.deferrals())]
    return "\n".join(lines)


def one_line(text: str) -> str:
    """One line without the signs that Markdown would take for its own."""
    return (
        "".join(c if c not in "`*_#<>|[]" else " " for c in clean(text)).replace("\n", " ").strip()
    )


def _stage(stage: Stage, plan: Plan) -> Iterator[str]:
    yield f"## Stage {stage.number} of {len(plan.stages)}: {words.title(stage)}"
    yield ""
    yield f"{stage.minutes:.0f} min, {stage.opening_minutes:.0f} of them to open."
    yield ""
    for caution in cautions(stage.cautions, plan.answer):
        yield f"> caution: {caution}"
        yield ">"
    for opening in stage.way:
        if plan.chooser.tree.minutes(opening.access) or opening.keep:
            yield f"- open: {opening.says}"
            yield from (f"  - {text}" for text in _first(opening.keep, opening.destroys))
    for i, check in enumerate(stage.checks, 1):
        yield ""
        yield f"### {stage.number}.{i} {check.inspection.says} ({check.minutes:.0f} min)"
        yield ""
        yield from _check(check, plan)


def _first(keep: str, destroys: str) -> list[str]:
    return [f"record first: {keep}"] * bool(keep) + [f"lost by it: {destroys}"] * bool(destroys)


def _check(check: Check, plan: Plan) -> Iterator[str]:
    inspection = check.inspection
    yield from (f"- {text}" for text in _first(inspection.keep, inspection.destroys))
    yield from (f"{i}. {step}" for i, step in enumerate(inspection.steps, 1))
    yield ""
    for found in check.meanings:
        if found.finding is not None:
            yield f"- `{found.finding.id}`: {BLANK} · {found.finding.says}"
            yield f"  - {words.meaning(found)}"
    for measure in inspection.measures:
        limits = words.limits_of(measure, plan.answer.case)
        yield f"- `{measure.id}`: {BLANK} · {measure.says}, {words.unit_of(measure)}; {limits}"
    if words.takes_readings(check):
        yield f"- `reading`: {BLANK} · one line for each, like {words.READING_BLANK}"
        yield f"- `reading`: {BLANK} ·"


def blanks(plan: Plan) -> str:
    """Every blank of the plan as a key of a TOML file, in the order of the work."""
    lines = ["# yes, no, unknown or probably; measured values with their unit", ""]
    done: set[str] = set()
    readings = False
    for stage in plan.stages:
        lines.append(f"# stage {stage.number}: {words.title(stage)}")
        for check in stage.checks:
            for finding in check.option.findings:
                if finding.id not in done:
                    lines.append(f'{finding.id} = ""  # {finding.says}')
            for measure in check.inspection.measures:
                if measure.id not in done:
                    lines.append(f'{measure.id} = ""  # {measure.says}, {words.unit_of(measure)}')
            done |= {f.id for f in check.option.findings}
            done |= {m.id for m in check.inspection.measures}
            if words.takes_readings(check) and not readings:
                lines.append(f"reading = []  # each like {words.READING_BLANK}")
                readings = True
    return "\n".join(lines)


def data(plan: Plan, ends: LooseEnds, changes: Changes | None = None) -> dict[str, Any]:
    """Everything the plan says; keys are only ever added."""
    case, estimate = plan.answer.case, plan.estimate
    return {
        "case": str(case.path) if case.path else None,
        "title": case.job.title,
        "layout": case.layout.id,
        "alarms": [{"severity": a.severity.value, "says": a.says} for a in plan.answer.alarms],
        "may_stop": ends.may_stop,
        "confirmed": [c.id for c in ends.causes] if ends.confirmed else [],
        "minutes": {
            "made_anew": estimate.until_confirmed,  # the name it has in schema 1
            "to_the_letter": estimate.expected,
            "all": estimate.worst,
        },
        "found": estimate.found,
        "stages": [_stage_data(s, plan) for s in plan.stages],
        "not_planned": [
            {"opens": n.opening.access.value, "minutes": n.minutes, "adds": n.chance}
            for n in plan.not_planned
        ],
        "loose_ends": {
            "unexplained": [f.id for f in ends.unexplained],
            "pressure_closed": ends.pressure_closed,
            "follow": [
                {"task": d.task.id, "because": [f.id for f in d.because], "open": d.open}
                for d in ends.follow
            ],
        },
        "changed": _changes_data(changes) if changes else None,
    }


def _stage_data(stage: Stage, plan: Plan) -> dict[str, Any]:
    return {
        "opens": [o.access.value for o in stage.way],
        "minutes": stage.minutes,
        "opening_minutes": stage.opening_minutes,
        "reach": stage.reach,
        "found": stage.chance,
        "why": stage.why,
        "cautions": cautions(stage.cautions, plan.answer),
        "checks": [
            {
                "inspection": c.inspection.id,
                "minutes": c.minutes,
                "evidence": c.evidence,
                "measures": [m.id for m in c.inspection.measures],
                "outcomes": [_meaning_data(m) for m in c.meanings],
            }
            for c in stage.checks
        ],
        "while_open": [o.inspection.id for o in stage.also],
    }


def _meaning_data(found: Meaning) -> dict[str, Any]:
    return {
        "finding": found.finding.id if found.finding else None,
        "chance": found.chance,
        "leads": found.leads.id,
        "leads_with": found.leads_with,
        "stop": found.settles,
        "next": found.then.id if found.then else None,
    }


def _changes_data(changes: Changes) -> dict[str, Any]:
    return {
        "since": changes.since,
        "told": [s.finding.id for s in changes.new_findings],
        "moved": [
            {"cause": m.cause.id, "before": m.before, "after": m.after}
            for m in changes.cause_changes
        ],
        "minutes_before": changes.before.estimate.expected,
        "minutes_after": changes.after.estimate.expected,
        "dropped": [i.id for i in changes.dropped],
        "added": [i.id for i in changes.added],
    }
