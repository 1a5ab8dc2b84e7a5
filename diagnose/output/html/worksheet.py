"""The teardown plan as a page to take to the engine: stages, cautions, blanks, loose ends."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from diagnose.output import teardown_words as words
from diagnose.output.documents.cautions import cautions
from diagnose.output.html import oil_path as sketch
from diagnose.output.html.page import rendered
from diagnose.output.lines import as_typed, clean
from diagnose.teardown.changes import Changes
from diagnose.teardown.loose_ends import DueTask, LooseEnds
from diagnose.teardown.plan import Check, Plan, Stage

MARKS = {"done": "x", "failed": "!", "skipped": "-"}


def worksheet(
    plan: Plan, ends: LooseEnds, path: str, changes: Changes | None = None, history: str = ""
) -> str:
    """The whole page."""
    tools, ready = words.bench_list(plan)
    case = plan.answer.case
    return rendered(
        "worksheet.html",
        name=clean(case.job.title).strip() or "case without a title",
        layout=case.layout.says,
        answer=plan.answer,
        plan=plan,
        ends=ends,
        changes=changes,
        history=history,
        path=as_typed(path),
        stop_here=words.stop_here(plan, ends),
        stages=[_stage(s, plan) for s in plan.stages],
        chances=list(words.chances(plan)),
        never=[words.never(n) for n in plan.not_planned],
        waits=words.minutes(plan.waits) if plan.waits else "",
        hands_on=words.hands_on(plan.estimate),
        pace=words.pace(plan),
        tools=tools,
        ready=ready,
        wide=sketch.WIDE,
        tall=sketch.TALL,
        pressure=words.pressure(plan.answer, ends),
        follow=list(_follow(ends)),
        deferrals=words.deferrals(),
    )


def _stage(stage: Stage, plan: Plan) -> dict[str, Any]:
    stations = {c.inspection.station for c in stage.checks}
    minutes = plan.chooser.tree.minutes
    return {
        "number": stage.number,
        "stage": stage,
        "title": words.title(stage),
        "cautions": cautions(stage.cautions, plan.answer),
        "places": list(sketch.places(stations)),
        "where": sketch.in_words(stations),
        "openings": [
            {"opening": o, "minutes": minutes(o.access)}
            for o in stage.way
            if minutes(o.access) or o.keep
        ],
        "checks": [_check(c, plan) for c in stage.checks],
    }


def _check(check: Check, plan: Plan) -> dict[str, Any]:
    told = {m.finding.id: m for m in check.meanings if m.finding is not None}
    otherwise = next((m for m in check.meanings if m.finding is None), None)
    waits = check.inspection.waits_minutes
    findings = {
        f.id: f
        for f in (
            *(m.finding for m in check.meanings if m.finding is not None),
            *check.option.findings,
        )
    }
    return {
        "inspection": check.inspection,
        "minutes": check.minutes,
        "evidence": check.evidence,
        "waits": words.minutes(waits) if waits else "",
        "rows": [
            {"finding": f, "meaning": words.meaning(told[f.id]) if f.id in told else ""}
            for f in findings.values()
        ],
        "measures": [
            {
                "measure": m,
                "unit": words.unit_of(m),
                "limits": words.limits_of(m, plan.answer.case),
            }
            for m in check.inspection.measures
        ],
        "readings": words.takes_readings(check),
        "otherwise": words.meaning(otherwise) if otherwise else "",
    }


def _follow(ends: LooseEnds) -> Iterator[dict[str, Any]]:
    """What was found must be followed, by what calls for it."""
    for because, dues in words.found_by(ends):
        yield {"because": because, "dues": [_due(d) for d in dues]}


def _due(due: DueTask) -> dict[str, str]:
    entry = due.worked.entry if due.worked is not None else None
    state = (entry.state or "done") if entry else ""
    return {
        "id": due.task.id,
        "says": due.task.says,
        "state": state,
        "mark": MARKS.get(state, ""),
        "note": entry.note if entry else "",
    }
