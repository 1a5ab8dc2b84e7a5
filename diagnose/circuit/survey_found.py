"""What was measured or seen on an engine, sorted by the hidden conditions it belongs to."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from functools import reduce

import numpy as np

from diagnose.circuit.deviations import Deviation
from diagnose.circuit.engine_model import Point, shown
from diagnose.hydraulics.engine import Engine
from knowledge.circuit import conditions as c
from knowledge.model import Condition
from knowledge.stations.bearings.quantities import MAIN_CLEARANCE, ROD_CLEARANCE
from knowledge.stations.delivery.quantities import COOLER_OPEN_SHARE, FILTER_BLOCKED, OPEN_HOLE
from knowledge.stations.pump.quantities import (
    PUMP_COVER_HOLLOW,
    PUMP_DISPLACEMENT,
    PUMP_END_CLEARANCE,
    PUMP_SIDE_CLEARANCE,
)
from knowledge.stations.relief.quantities import RELIEF_SEAT_GAP, RELIEF_SETTING
from knowledge.stations.suction.quantities import PICKUP_GAP, PICKUP_TUBE, SCREEN_OPEN_SHARE
from knowledge.stations.topend.quantities import CAM_BEARING_CLEARANCE, LIFTER_CLEARANCE, OPEN_JET
from knowledge.units import PSI

SHOWS = 1.0  #: psi: what a gauge shows less of than this is no deviation
#: the condition that a quantity is measured for
_OF = {
    MAIN_CLEARANCE.id: c.CLEARANCES_WIDE,
    ROD_CLEARANCE.id: c.CLEARANCES_WIDE,
    CAM_BEARING_CLEARANCE.id: c.CLEARANCES_WIDE,
    LIFTER_CLEARANCE.id: c.CLEARANCES_WIDE,
    PUMP_DISPLACEMENT.id: c.DELIVERY_REDUCED,
    PUMP_END_CLEARANCE.id: c.PUMP_SLIP,
    PUMP_SIDE_CLEARANCE.id: c.PUMP_SLIP,
    PUMP_COVER_HOLLOW.id: c.PUMP_SLIP,
    RELIEF_SEAT_GAP.id: c.RELIEF_BLEEDS,
    OPEN_HOLE.id: c.OPEN_LEAK_INSIDE,
    OPEN_JET.id: c.OPEN_LEAK_INSIDE,
    PICKUP_GAP.id: c.SUCTION_THROTTLED,
    PICKUP_TUBE.id: c.SUCTION_THROTTLED,
    SCREEN_OPEN_SHARE.id: c.SUCTION_THROTTLED,
    FILTER_BLOCKED.id: c.FLOW_RESTRICTED,
    COOLER_OPEN_SHARE.id: c.FLOW_RESTRICTED,
}


@dataclass(frozen=True, slots=True)
class Known:
    """The findings of a survey's engine; ``deviating``: ids of conditions that a gauge shows."""

    found: tuple[Deviation, ...] = ()
    of: tuple[str, ...] = ()  #: id of the condition each finding belongs to
    deviating: frozenset[str] = frozenset()
    lowers: bool = False  #: what was found takes pressure, so the circuit is not sound

    def on(self, engine: Engine, free: str = "") -> Engine:
        """Return the engine with everything found on it.

        ``free``: id of a condition of which only what was measured stays; how bad the rest of it
        is was only guessed.
        """
        kept = (d for d, of in self._by_condition() if not (d.assumed and of == free))
        return reduce(lambda e, d: d.apply(e), kept, engine)

    def sound(self, engine: Engine) -> Engine:
        """Return the engine with what was found to be as it should be, and nothing else."""
        return self.engine_without(engine, self.deviating)

    @property
    def measured(self) -> frozenset[str]:
        """Ids of the conditions of which something was measured, not only seen."""
        return frozenset(of for d, of in self._by_condition() if not d.assumed)

    def says(self, condition: str) -> str:
        """Return what was found of a condition, in words."""
        parts = [f"{d.says} {d.found}" for d, of in self._by_condition() if of == condition]
        return ", ".join(parts)

    def engine_without(self, engine: Engine, conditions: Collection[str]) -> Engine:
        """Return the engine with everything found but what belongs to ``conditions`` (ids)."""
        kept = (d for d, of in self._by_condition() if of not in conditions)
        return reduce(lambda e, d: d.apply(e), kept, engine)

    def _by_condition(self) -> list[tuple[Deviation, str]]:
        return list(zip(self.found, self.of, strict=True))


def known_of(found: Sequence[Deviation], sound: Engine, points: Sequence[Point]) -> Known:
    """Sort findings by condition; deviating is what changes the pressure at any of ``points``.

    ``sound``: plausible engines as columns, for as many as the findings are drawn for.
    """
    if not found:
        return Known()
    known = Known(tuple(found), tuple(_condition(d, sound).id for d in found))
    with_all = shown(known.on(sound), points)
    deviating, lowers = set(), False
    for condition in set(known.of):
        without = shown(known.engine_without(sound, {condition}), points)
        change = np.mean(with_all - without, axis=0)
        if np.max(np.abs(change)) > SHOWS * PSI:
            deviating.add(condition)
            lowers |= bool(np.min(change) < -SHOWS * PSI)
    return Known(known.found, known.of, frozenset(deviating), lowers)


def _condition(found: Deviation, sound: Engine) -> Condition:
    """The condition a finding belongs to; oil and relief setting by the way they are off."""
    name = found.parameter.id if found.parameter else found.id
    if name in _OF:
        return _OF[name]
    made = found.apply(sound)
    if name == RELIEF_SETTING.id:
        higher = np.mean(made.relief_setting) > np.mean(sound.relief_setting)
        return c.RELIEF_HOLDS_HIGH if higher else c.RELIEF_CAPS_LOW
    thicker = np.mean(made.oil.kv100) > np.mean(sound.oil.kv100)
    return c.OIL_THICK if thicker else c.OIL_THIN
