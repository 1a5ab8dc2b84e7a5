"""An answer as plain data for ``--json``; keys are only ever added."""

from __future__ import annotations

from typing import Any

from diagnose.diagnosis import Diagnosis
from diagnose.output.entries_behind import rests_on
from diagnose.planning.options import Option
from diagnose.planning.single_cause import gain

SCHEMA = 1


def review(answer: Diagnosis) -> dict[str, Any]:
    """Everything ``review`` shows."""
    top = answer.reasons.explained
    weights = answer.reasons.weights(top)
    return {
        "schema": SCHEMA,
        "case": str(answer.case.path) if answer.case.path else None,
        "title": answer.case.job.title,
        "layout": answer.case.layout.id,
        "alarms": [{"severity": a.severity.value, "says": a.says} for a in answer.alarms],
        "contradictions": [
            {
                "findings": [f.id for f in c.findings],
                "says": c.says,
                "recheck": c.recheck.id,
                "entries": list(rests_on(answer, c)),
            }
            for c in answer.contradictions
        ],
        "causes": [
            {
                "id": r.cause.id,
                "says": r.cause.says,
                "station": r.cause.station.value,
                "probability": r.probability,
                "prior": r.prior,
                "no_fault": r.cause.no_fault,
                "source": r.cause.source.key,
                "for": _weighed(weights.get(r.cause.id, ()), 1),
                "against": _weighed(weights.get(r.cause.id, ()), -1),
            }
            for r in answer.ranking
        ],
        "explanations": [{"causes": list(e.causes), "share": e.share} for e in answer.explanations],
        "damage": [
            {"id": c.id, "says": c.says, "probability": p} for c, p in answer.reasons.damage
        ],
        "damage_chain": list(answer.reasons.damage_chain),
        "unexplained": [f.id for f in answer.reasons.unexplained],
        "left_out": list(answer.inference.left_out),
        "evidence": {
            n: {"if_absent": e.if_absent, "if_present": e.if_present}
            for n, e in answer.inference.evidence.items()
        },
        "log_evidence": answer.inference.posterior.log_evidence,
        "next": _next(answer),
    }


def _weighed(weights: Any, sign: int) -> list[dict[str, Any]]:
    return [
        {"finding": w.what, "decibans": w.decibans, "chain": list(w.chain)}
        for w in weights
        if w.decibans * sign > 0
    ]


def _next(answer: Diagnosis) -> list[dict[str, Any]]:
    choice = answer.next_check
    if choice is None:
        return []
    first = _step(choice.option, answer) | {
        "adds": choice.chance,
        "value": choice.value,
        "evidence": choice.evidence,
        "outcomes": [
            {
                "finding": o.finding.id if o.finding else None,
                "probability": o.probability,
                "leads": o.leads.id,
                "leads_with": o.leads_with,
            }
            for o in answer.planner.outcomes(choice.option)
        ],
    }
    return [first, *(_step(o, answer) for o in choice.runners_up)]


def _step(step: Option, answer: Diagnosis) -> dict[str, Any]:
    return {
        "inspection": step.inspection.id,
        "says": step.inspection.says,
        "minutes": step.minutes,
        "bits": gain(answer.planner.single_cause_model.weight, step.view.rows),
        "opens": [o.access.value for o in step.way],
        "findings": [f.id for f in step.findings],
        "cautions": [c.value for c in step.inspection.cautions],
    }
