"""A loss of pressure that nobody has found yet: how it can act, and what it does to an engine."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, replace

import numpy as np

from diagnose.case.case import Case
from diagnose.circuit.condition_effects import throttling_begins
from diagnose.circuit.deviations import evenly_drawn
from diagnose.circuit.operating_points import points_of
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import density, dynamic_viscosity
from diagnose.hydraulics.ranges import FloatArray, Floats
from knowledge.circuit import conditions as c
from knowledge.model import Condition
from knowledge.units import PSI

ORIFICE = 0.65  #: discharge coefficient a loss through a hole is scaled with (judgement)
WEEP = "weep"  #: oil creeps out through gaps: the more, the thinner it is
HOLE = "hole"  #: oil runs out through an opening, however thin it is
WEAK_RELIEF = "relief"  #: the relief valve opens too early
SLIP = "slip"  #: oil slips back through gaps in the pump
LESS_OIL = "delivery"  #: the pump moves less at each turn
SUCTION = "suction"  #: less oil gets to the pump
#: how a loss can act, and its size in the logarithm for each step beyond ``NONE_BELOW`` (judgement)
KINDS = {WEEP: 0.8, HOLE: 0.8, WEAK_RELIEF: 0.4, SLIP: 0.4, LESS_OIL: 0.5, SUCTION: 0.8}
SHOWS = 0.1  #: size of a loss on the suction side at which it takes the pump to where it shows
BEND = 0.25  #: how round the beginning of a loss is, for the slope
#: the conditions that act like each kind
ACTS_LIKE: Mapping[str, tuple[Condition, ...]] = {
    WEEP: (c.CLEARANCES_WIDE,),
    HOLE: (c.RELIEF_BLEEDS, c.OPEN_LEAK_INSIDE),
    WEAK_RELIEF: (c.RELIEF_CAPS_LOW,),
    SLIP: (c.PUMP_SLIP,),
    LESS_OIL: (c.DELIVERY_REDUCED,),
    SUCTION: (c.SUCTION_THROTTLED,),
}
NONE_BELOW = 0.7  #: score up to which there is none: it is there in one engine of four


@dataclass(frozen=True, slots=True, kw_only=True)
class Loss:
    """A loss nobody has found yet, on each plausible engine; columns ``(n, 1)``."""

    scores: FloatArray  #: standard normal before the readings, one column for each kind
    conductance: Floats  #: of the sound engine's leaks together [m3]
    area: Floats  #: of a hole that takes as much as they do at hot idle [m2]
    screen: Floats  #: open share of the screen from which its blocking begins to show

    def applied_to(
        self, engine: Engine, without: Collection[str] = (), share: Floats = 1.0
    ) -> Engine:
        """Return the engine with that share of the loss, but for the kinds ``without``."""
        by = {
            kind: 0.0 * self.scores[..., :1]
            if kind in without
            else share * width * _size(self.scores[..., i : i + 1])
            for i, (kind, width) in enumerate(KINDS.items())
        }
        return replace(
            engine,
            other_conductance=engine.other_conductance + self.conductance * np.expm1(by[WEEP]),
            open_orifice_area=engine.open_orifice_area + self.area * np.expm1(by[HOLE]),
            relief_setting=engine.relief_setting * np.exp(-by[WEAK_RELIEF]),
            pump_tip_clearance=engine.pump_tip_clearance * np.exp(by[SLIP]),
            pump_end_clearance=engine.pump_end_clearance * np.exp(by[SLIP]),
            pump_displacement=engine.pump_displacement * np.exp(-by[LESS_OIL]),
            screen_open_share=np.minimum(
                engine.screen_open_share,
                self.screen ** -np.expm1(-by[SUCTION] / SHOWS) * np.exp(-by[SUCTION]),
            ),
        )


def kinds_of(conditions: Collection[Condition]) -> frozenset[str]:
    """Return the kinds of loss that act like any of these conditions."""
    return frozenset(k for k, like in ACTS_LIKE.items() if not set(like).isdisjoint(conditions))


def expected_loss(case: Case, sound: Engine, rng: np.random.Generator) -> Loss:
    """Draw a loss as large as may be expected before the readings.

    ``sound``: columns ``(n, 1)``, to whose own leaks at hot idle it is scaled.
    """
    idle = points_of(case)[0]
    state = solve(sound, idle.rpm, idle.temperature)
    pressure = np.maximum(state.gallery_pressure, PSI)
    flow = np.asarray(state.flows.engine)
    oil = density(idle.temperature, np.asarray(sound.oil.rho15))
    n = len(pressure)
    return Loss(
        scores=np.hstack([evenly_drawn(n, rng) for _ in KINDS]),
        conductance=flow * dynamic_viscosity(sound.oil, idle.temperature) / pressure,
        area=flow / (ORIFICE * np.sqrt(2 * pressure / oil)),
        screen=throttling_begins(sound),
    )


def _size(score: FloatArray) -> FloatArray:
    """How far a loss has grown: next to nothing up to ``NONE_BELOW``, then as the score does."""
    return np.asarray(BEND * np.logaddexp(0.0, (score - NONE_BELOW) / BEND))
