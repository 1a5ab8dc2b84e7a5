"""Which readings keep every limit that holds where they were taken; for the answer to a text."""

from __future__ import annotations

from diagnose.case.case import Case
from diagnose.case.gauge_looks import said
from diagnose.case.pressures import pressure_unit
from diagnose.output.documents.verdicts import shown
from diagnose.signoff.measured import below_rule, reading_bounds
from knowledge.limits import Side
from knowledge.pressure.gauge import is_bound, is_hot
from knowledge.units import PRESSURE


def good_readings(case: Case) -> tuple[str, ...]:
    """Return each reading that a limit holds for, with its highest least figure.

    Empty as soon as one reading breaks a limit or is nearer to it than its gauge's error.
    """
    good = []
    for one in case.readings:
        bounds = [b for every in reading_bounds(one.reading, case) for b in every]
        if any(b.broken or b.near for b in bounds) or below_rule(one.reading, case) is not None:
            return ()
        least = max((b.figure for b in bounds if b.limit.side is Side.LEAST), default=None)
        if least is not None and not is_bound(one.reading):
            unit = pressure_unit(one.entry.pressure or "")
            good.append(f"{said(one.entry)} (at least {shown(least, PRESSURE, unit)})")
    return tuple(dict.fromkeys(good))


def nothing_else_said(case: Case) -> bool:
    """Whether there are readings and nothing but readings, each cold or judged by a limit."""
    signs = (case.behaviours, case.trials, case.finding_records, case.measurements)
    read = [r.reading for r in case.readings]
    judged = (bool(reading_bounds(r, case)) or not is_hot(r) for r in read)
    return not any(signs) and all(judged) and not any(is_bound(r) for r in read)
