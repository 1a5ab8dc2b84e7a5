"""The book's minutes for the checks a job records, to compare with the minutes spent."""

from __future__ import annotations

from diagnose.diagnosis import Diagnosis
from knowledge.model import Finding, Gauge, Measure, Stage
from knowledge.stations.instrument.findings_direct_gauge import FIT_A_DIRECT_GAUGE
from knowledge.work import Inspection


def minutes_of_checks(answer: Diagnosis) -> float | None:
    """Hands-on minutes of the checks that show what was recorded, with their openings.

    None where nothing was looked at. Of several checks that show a thing, the one counts that
    shows most of what was recorded, then the one of the fewest minutes.
    """
    made = checks_made(answer)
    if not made:
        return None
    tree = answer.planner.tree
    opened = frozenset(place for check in made for place in tree.closure(check.access))
    opening = sum(tree.minutes(place) for place in opened)
    return sum(tree.check_minutes(check) for check in made) + opening


def checks_made(answer: Diagnosis) -> tuple[Inspection, ...]:
    """The fewest checks that show all that was seen, measured or read on a trusted gauge."""
    case, tree = answer.case, answer.planner.tree
    left: set[Finding | Measure] = {
        s.finding for s in case.finding_records if s.stage is not Stage.KNOWN and s.observation
    }
    left |= {m.measure for m in case.measurements}
    gauge = any(r.reading.gauge is Gauge.DIRECT for r in case.readings)
    made = [FIT_A_DIRECT_GAUGE] if gauge else []
    checks = [i for i in answer.book.inspections.values() if i.access in tree.openings]
    for check in made:
        left -= {*check.reveals, *check.measures}
    while left:
        best = max(
            checks, key=lambda i: (len(left.intersection((*i.reveals, *i.measures))), -i.minutes)
        )
        shown = left.intersection((*best.reveals, *best.measures))
        if not shown:
            break
        made.append(best)
        left -= shown
    return tuple(made)
