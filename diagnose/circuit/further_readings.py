"""Curves of what each leading condition would show, and the reading that separates them best."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

import numpy as np

from diagnose.circuit.band import HIGH, LOW
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import Point, shown
from diagnose.circuit.fitting import FALSE, NOTHING, GaugeError
from diagnose.circuit.plausible_engines import varied
from diagnose.circuit.survey_evidence import states
from diagnose.circuit.survey_found import Known
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray
from knowledge.pressure.gauge import states_agree
from knowledge.units import PSI

STEPS = 25  #: speeds of a curve
HEATS = (298.15, 333.15, 363.15)  #: K: cold, warm, hot, where a further reading may be taken
SHARES = (0.0, 0.15, 0.35, 0.65, 1.0)  #: between the lowest and highest speed read
LEAST_LEADING = 0.02  #: share from which a hypothesis is worth telling from others
WORTH = 0.03  #: a further reading must separate at least this much
TOP = 3.5  #: highest speed looked at, over the lowest read, where only idle was read


@dataclass(frozen=True, slots=True, kw_only=True)
class Hypothesis:
    """A condition (or the sound engine) at its fitted severity, and the engines that fit it."""

    id: str
    share: float
    severity: float
    engines: FloatArray  #: weights


@dataclass(frozen=True, slots=True, kw_only=True)
class Curves:
    """Pressure over speed at one oil temperature: each hypothesis, and what was read."""

    temperature: float  #: K
    rpm: FloatArray
    lines: Mapping[str, FloatArray]  #: [psi]
    read: tuple[tuple[float, float], ...]  #: rpm, psi
    at_pump: bool = False  #: tapped there, not at the gallery


@dataclass(frozen=True, slots=True, kw_only=True)
class Further:
    """One more reading: where, and what each leading condition would show there."""

    rpm: float
    temperature: float  #: K
    would_show: Mapping[str, tuple[float, float]]  #: middle and one standard deviation [psi]
    separates: float  #: chance that it settles the leaders, 0 to 1


def _with_condition(engine: Engine, hypothesis: Hypothesis, known: Known) -> tuple[Engine, float]:
    """Return the engine with the condition, and the share of the pressure its gauge shows."""
    if hypothesis.id == FALSE:
        return known.on(engine), 1 - 0.95 * hypothesis.severity
    if hypothesis.id not in FAULTS:
        return known.sound(engine), 1.0
    if hypothesis.severity == 0.0:  # as it was measured
        return known.on(engine), 1.0
    made = FAULTS[hypothesis.id].apply(engine, hypothesis.severity)
    return known.on(made, free=hypothesis.id), 1.0


def _speeds(points: Sequence[Point]) -> tuple[float, float]:
    low, high = min(p.rpm for p in points), max(p.rpm for p in points)
    return low, max(high, min(TOP * low, 3000.0))


def curves(
    engine: Engine,
    z: FloatArray,
    uncertain: Mapping[str, float],
    leaders: Sequence[Hypothesis],
    points: Sequence[Point],
    known: Known = NOTHING,
) -> tuple[Curves, ...]:
    """Predict what the best-fitting engine of each hypothesis shows at each oil temperature read."""
    low, high = _speeds(points)
    rpm = np.linspace(low, high, STEPS)
    state = states([p.temperature for p in points])
    groups = [
        [p for p, of in zip(points, state, strict=True) if of == s] for s in range(max(state) + 1)
    ]
    heats = [float(np.mean([p.temperature for p in g])) for g in groups]
    at = [
        replace(g[0], temperature=heat, rpm=float(n))
        for g, heat in zip(groups, heats, strict=True)
        for n in rpm
    ]
    lines = {}
    for h in leaders:
        middle = varied(engine, (h.engines @ z)[None], uncertain)
        faulty, share = _with_condition(middle, h, known)
        each = np.atleast_2d(shown(faulty, at)).mean(0)  # over what was found, if anything
        lines[h.id] = (share * each / PSI).reshape(len(groups), STEPS)
    return tuple(
        Curves(
            temperature=heat,
            rpm=rpm,
            lines={name: line[i] for name, line in lines.items()},
            read=tuple((p.rpm, p.pressure / PSI) for p in group),
            at_pump=group[0].at_pump,
        )
        for i, (group, heat) in enumerate(zip(groups, heats, strict=True))
    )


def sound_band(sound: Engine, curve: Curves) -> tuple[FloatArray, FloatArray]:
    """Return the band that nine plausible sound engines in ten keep along a curve [psi]."""
    at = [Point(float(n), curve.temperature, 0.0, curve.at_pump) for n in curve.rpm]
    low, high = np.percentile(shown(sound, at) / PSI, [LOW, HIGH], axis=0)
    return np.asarray(low), np.asarray(high)


def further(
    sound: Engine,
    leaders: Sequence[Hypothesis],
    points: Sequence[Point],
    gauges: Sequence[GaugeError],
    known: Known = NOTHING,
) -> Further | None:
    """Find the reading, at a speed and temperature within reach, that best separates the leaders.

    The criterion is the overlap of the predictions of each pair (Bhattacharyya coefficient, both
    taken as normal), weighted by their shares; states that were read are left out. None where there
    is one leader, or no reading separates them.
    """
    close = [h for h in leaders if h.share > LEAST_LEADING]
    tried = _not_read(points)
    if len(close) < 2 or not tried:
        return None
    noise = gauges[0].own ** 2 + gauges[0].shared ** 2
    means, spreads = [], []
    for h in close:
        faulty, share = _with_condition(sound, h, known)
        values = share * shown(faulty, tried) / PSI
        mean = h.engines @ values
        means.append(mean)
        spreads.append(h.engines @ (values - mean) ** 2 + noise)
    separation = _separation(close, means, spreads)
    best = int(separation.argmax())
    if separation[best] < WORTH:
        return None
    would = {
        h.id: (float(m[best]), float(s[best]) ** 0.5)
        for h, m, s in zip(close, means, spreads, strict=True)
    }
    return Further(
        rpm=tried[best].rpm,
        temperature=tried[best].temperature,
        would_show=would,
        separates=float(separation[best]),
    )


def _not_read(points: Sequence[Point]) -> list[Point]:
    """States within reach, at the tap of the readings, that none of them was taken at."""
    low, high = _speeds(points)
    tried = [
        Point(round(low + x * (high - low), -2) or low, t, 0.0, points[0].at_pump)
        for t in HEATS
        for x in SHARES
    ]
    read = [(p.rpm, p.temperature) for p in points]
    return [p for p in tried if not any(states_agree((p.rpm, p.temperature), r) for r in read)]


def _separation(
    leaders: Sequence[Hypothesis], means: Sequence[FloatArray], variances: Sequence[FloatArray]
) -> FloatArray:
    """How well each reading tells the leaders apart, 0 to 1; means in psi, variances in psi2."""
    apart = np.zeros(len(means[0]))
    for a, b in combinations(range(len(leaders)), 2):
        both = variances[a] + variances[b]
        overlap = np.sqrt(2 * np.sqrt(variances[a] * variances[b]) / both)
        overlap *= np.exp(-((means[a] - means[b]) ** 2) / (4 * both))
        apart += leaders[a].share * leaders[b].share * (1 - overlap)
    return np.asarray(apart / sum(a.share * b.share for a, b in combinations(leaders, 2)))
