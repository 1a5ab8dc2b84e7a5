"""When the owner must stop the engine: too little pressure, and too much where that was the fault."""

from __future__ import annotations

from diagnose.case.case import Case
from diagnose.case.mended import mended
from diagnose.diagnosis import Diagnosis
from diagnose.output.scale import Scale, scale_of
from diagnose.signoff.lamp import has_a_lamp_only
from knowledge.pressure.gauge import runs
from knowledge.pressure.patterns import GAUGE_READS_HIGH
from knowledge.pressure.quantities import STOP_IDLE_PRESSURE
from knowledge.stations.relief.quantities import most_held

MUCH_LESS = 0.8  #: of the usual pressure: a reading below it was the trouble itself (judgement)


def when_to_stop(diagnosis: Diagnosis) -> str:
    """The sentences for the owner, in the units of the job."""
    case = diagnosis.case
    if has_a_lamp_only(case):
        return "Stop the engine at once if the lamp comes on or it knocks."
    scale = scale_of(case)
    low = f"Stop the engine at once if the lamp comes on, it knocks, or the gauge {_too_low(case, scale)}."
    if GAUGE_READS_HIGH not in diagnosis.found.present:
        return low
    most = scale.one(most_held(case.limit))
    return f"{low} Go back to idle and stop it if the gauge goes above {most}, cold or hot."


def _too_low(case: Case, scale: Scale) -> str:
    """What counts as too little: the limit, or the pressure of the trouble where that was more."""
    least = case.limit(STOP_IDLE_PRESSURE)
    read = [r for r in case.facts().readings if runs(r) and r.usual is not None]
    usual = [r.usual for r in read if r.usual is not None]
    trouble = [r.pressure for r in read if r.usual and least < r.pressure < MUCH_LESS * r.usual]
    falls = f"falls below {scale.one(least)}"
    if trouble:
        falls = f"falls to the {scale.one(max(trouble))} of this trouble"
    shown = [r.reading.pressure for r in case.start_readings]
    if (idle := mended(case).hot_idle) is not None:
        return f"{falls}, or far below the {scale.one(idle)} it shows at hot idle"
    if shown:  # a set of one speed has no idle
        return f"{falls}, or far below the {scale.one(min(shown))} it shows now"
    if usual:
        return f"{falls}, or far below the {scale.one(min(usual))} it usually shows"
    return falls
