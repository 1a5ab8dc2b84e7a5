"""Plausible engines of one case, calibrated to the pressures it had when it was sound.

How far one engine is from its profile is wider than sound engines of one kind are from each other:
the profile is a guess at it. So what readings can settle (leaks along films and through holes, pump
flow and slip, the relief valve's setting, slope and override, the oil) starts wide, every known
pressure counts once, and what they leave open stays in the spread.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

import numpy as np

from diagnose.case.case import Case
from diagnose.circuit.engine_model import (
    Point,
    baseline_points,
    known_points,
)
from diagnose.circuit.plausible_engines import UNCERTAIN, conditioned, drawn, varied
from diagnose.hydraulics.engine import Engine
from knowledge.model import Reading
from knowledge.pressure.gauge import SAME_HEAT, USUAL_SPREAD
from knowledge.stations.bearings import quantities as bearings
from knowledge.stations.delivery import quantities as delivery
from knowledge.stations.pump import quantities as pump
from knowledge.stations.relief import quantities as relief
from knowledge.stations.relief.quantities import USUAL_RELIEF_SETTING
from knowledge.stations.topend import quantities as topend

#: one standard deviation of the logarithm of each dimension of one engine about its profile
#: (judgement, held against logs of real engines: ``tests.studies.real_engines``)
WIDE = {
    **UNCERTAIN,
    "mains": 0.2,
    "rods": 0.2,
    "cams": 0.2,
    "lifters": 0.2,
    "tip": 0.25,
    "end": 0.25,
    "displacement": 0.25,
    "relief": 0.25,
    "rate": 0.4,
    "port": 0.2,
    "oil": 0.1,
    "film": 0.5,
    "other": 1.5,
    "jets": 0.5,
}
#: the dimensions that a case may state, by the name of their width: what it states is no guess
STATED = {
    "mains": bearings.MAIN_CLEARANCE,
    "rods": bearings.ROD_CLEARANCE,
    "cams": topend.CAM_BEARING_CLEARANCE,
    "lifters": topend.LIFTER_CLEARANCE,
    "tip": pump.PUMP_SIDE_CLEARANCE,
    "end": pump.PUMP_END_CLEARANCE,
    "displacement": pump.PUMP_DISPLACEMENT,
    "relief": relief.RELIEF_SETTING,
    "rate": relief.RELIEF_RATE,
    "port": relief.RELIEF_PORT,
    "film": bearings.FILM_RISE,
    "other": delivery.OTHER_LEAK,
    "jets": topend.JET_DIAMETER,
}
RELIEF_OF_A_KIND = 0.15  #: of the logarithm, where no relief setting is known
SAME_SPEED = 0.15  #: share: known pressures no further apart, and of the same heat, are one


def widths(case: Case, *, calibrated: bool) -> dict[str, float]:
    """Return one standard deviation of the logarithm of each dimension of the case's engine.

    ``calibrated``: pressures known of it settle the wide ones; where there are none, a survey takes
    it for one of its kind, as it could tell no condition from another otherwise.
    """
    known = {name for name, quantity in STATED.items() if quantity in case.dimensions}
    if USUAL_RELIEF_SETTING in case.limits:
        known.add("relief")
    wide = WIDE if calibrated else {**UNCERTAIN, "relief": RELIEF_OF_A_KIND}
    return wide | {name: UNCERTAIN[name] for name in known}


def calibrated(
    engine: Engine,
    points: Sequence[Point],
    n: int,
    rng: np.random.Generator,
    widths: Mapping[str, float] = WIDE,
) -> Engine:
    """Return ``n`` plausible sound engines about ``engine`` as columns ``(n, 1)``.

    ``points``: pressures known of it when it was sound; each counts once, within its error.
    ``widths``: of its dimensions, as ``WIDE`` has them.

    >>> from diagnose.hydraulics.engine import SET_B
    >>> calibrated(SET_B, [], 6, np.random.default_rng(1)).relief_setting.shape
    (6, 1)
    """
    draws = conditioned(engine, drawn(n, rng), points, rng, widths=widths)
    return varied(engine, draws, widths)


def sound_points(case: Case, readings: Sequence[Reading]) -> tuple[Point, ...]:
    """Return what the gauge showed when the engine was sound.

    Its baseline, and what ``readings`` say it usually shows in other states.
    """
    known = list(baseline_points(case))
    usual = [
        replace(r, pressure=r.usual, pressure_spread=USUAL_SPREAD * r.usual)
        for r in readings
        if r.usual
    ]
    for point in known_points(case, usual):
        if not any(_alike(point, other) for other in known):
            known.append(point)
    return tuple(known)


def _alike(one: Point, other: Point) -> bool:
    """Whether two pressures are of about the same speed, oil temperature and tap."""
    return (
        abs(one.rpm - other.rpm) <= SAME_SPEED * max(one.rpm, other.rpm)
        and abs(one.temperature - other.temperature) <= SAME_HEAT
        and one.at_pump == other.at_pump
    )
