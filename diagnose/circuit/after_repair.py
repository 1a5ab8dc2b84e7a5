"""A case as its engine runs since the repair, for what looks forward."""

from __future__ import annotations

from dataclasses import replace

from diagnose.case.bearings import fitted_clearances
from diagnose.case.case import Case
from diagnose.circuit.deviations import SEEN, WRONG_OIL


def as_it_runs(case: Case) -> Case:
    """Return the case as repaired, once its engine was started again; else the case itself.

    Clearances as fitted take the place of those found, and the readings of the first start that of
    those before. What was found wrong besides counts as put right: if it was not, the readings
    show a loss.
    """
    if not case.start_readings:
        return case
    righted = {finding for finding, *_ in SEEN} | WRONG_OIL
    return replace(
        case,
        readings=case.start_readings,
        measurements=fitted_clearances(case),
        finding_records=tuple(r for r in case.finding_records if r.finding not in righted),
    )
