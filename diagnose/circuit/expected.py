"""What the gauge should show at stated speeds and oil temperatures.

Learned from the pressures the engine had when it was sound; without those from the case's own
readings, and then it is what the engine shows as it is now; else from what is usual for its kind.
The law of one engine says it; for a sound engine the calibrated circuit says it too (``averaged``).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

import numpy as np

from diagnose.case.case import Case
from diagnose.circuit.averaged import averaged
from diagnose.circuit.band import Band
from diagnose.circuit.calibration import calibrated, sound_points, widths
from diagnose.circuit.engine_model import (
    BASELINE_ERROR,
    engine_of,
    grade_name,
    numbers,
    oil_spreads,
    usual_points,
)
from diagnose.circuit.operating_points import COLD_START
from diagnose.circuit.pressure_law import SEED, At, PressureLaw, Shown, learn
from diagnose.errors import UsageError
from diagnose.hydraulics.oil import Oil
from knowledge.engines.layouts import UNKNOWN
from knowledge.model import Reading
from knowledge.pressure.gauge import USUAL_HOT, at_pump, is_bound, spread_of, states_agree

FAST = 2500.0  #: rpm
DRAWS = 64  #: plausible engines of the circuit


class LearnedFrom(Enum):
    """What the expected pressures rest on."""

    SOUND = "baseline"  #: what it showed when it was sound
    NOW = "readings"  #: what it shows now
    USUAL = "usual"  #: what is usual for its kind


@dataclass(frozen=True, slots=True, kw_only=True)
class Expected:
    """The pressure at each state asked for [Pa], and which further reading would settle most."""

    at: tuple[At, ...]
    bands: tuple[Band, ...]
    learned_from: LearnedFrom
    readings: int
    further: At | None


def expected(case: Case, at: Sequence[At]) -> Expected:
    """Return the pressure the gauge should show in each state.

    Raises UsageError where the case has neither pressures nor a known kind of engine.
    """
    source, shown = _known(case)
    law = learn(shown, Oil.of_grade(grade_name(case)))
    idle = case.idle_speed
    read = [(s.state.rpm, s.state.temperature) for s in shown]
    others = [
        At(rpm, heat)
        for heat in (USUAL_HOT, COLD_START)
        for rpm in (idle, FAST)
        if source is LearnedFrom.USUAL or not any(states_agree((rpm, heat), one) for one in read)
    ]
    return Expected(
        at=tuple(at),
        bands=_bands(case, law, source, shown, at),
        learned_from=source,
        readings=len(shown),
        further=law.settles_most(at, others),
    )


def _bands(
    case: Case, law: PressureLaw, source: LearnedFrom, shown: Sequence[Shown], at: Sequence[At]
) -> tuple[Band, ...]:
    """The pressure at each state: of the law, averaged with the circuit where it was sound."""
    if source is not LearnedFrom.SOUND or case.profile is None:
        return tuple(law.band(state) for state in at)
    rng = np.random.default_rng(SEED)
    sound = engine_of(numbers(case), Oil.of_grade(grade_name(case)))
    points = sound_points(case, [])
    engine = calibrated(sound, points, DRAWS, rng, widths(case, calibrated=True))
    each = averaged(law, engine, shown, at)
    return tuple(Band.of_middle(each[:, i]) for i in range(len(at)))


def _known(case: Case) -> tuple[LearnedFrom, list[Shown]]:
    for source, readings in (
        (LearnedFrom.SOUND, [b.reading for b in case.baseline]),
        (LearnedFrom.NOW, list(case.facts().readings)),
    ):
        if shown := _as_shown([r for r in readings if not is_bound(r) and not at_pump(r)]):
            return source, shown
    known_kind = case.layout is not UNKNOWN or case.engine.profile is not None
    usual = usual_points(case) if known_kind else ()
    if not usual:
        raise UsageError(
            "--at: nothing to learn from: the case has no reading, no [[baseline]] and no "
            "known kind of engine; record what the gauge shows, such as "
            '"700 rpm 90 C 30 psi"'
        )
    return LearnedFrom.USUAL, [Shown(At(p.rpm, p.temperature), p.pressure, p.error) for p in usual]


def _as_shown(readings: Sequence[Reading]) -> list[Shown]:
    return [
        Shown(
            At(
                r.rpm,
                USUAL_HOT if r.oil_temperature is None else r.oil_temperature,
                r.rpm_spread,
                spread,
            ),
            r.pressure,
            max(spread_of(r), BASELINE_ERROR),
        )
        for r, spread in zip(readings, oil_spreads(readings), strict=True)
    ]
