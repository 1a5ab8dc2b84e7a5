"""Two models of one engine's pressure, averaged by how well each shows what it was learned from.

The law follows a few readings closely, the calibrated circuit knows what an engine is made of and
so holds where nothing was read; which is nearer differs from engine to engine.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import hypot, log2

import numpy as np

from diagnose.circuit.engine_model import Point
from diagnose.circuit.engine_model import shown as circuit_shown
from diagnose.circuit.pressure_law import (
    MISFIT,
    READ_ERROR,
    SEED,
    At,
    PressureLaw,
    Shown,
    heat_errors,
)
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray
from knowledge.units import PSI

REACH = 20.0  #: K of oil temperature, or a doubling of speed: so far a reading says which is better
#: (judgement)


def circuit_pressures(engine: Engine, states: Sequence[At]) -> FloatArray:
    """Return what each engine would show at each state [Pa], shape (engines, states).

    ``engine``: columns ``(n, 1)``. Speed, oil temperature and gauge err as the law has them.
    """
    rng = np.random.default_rng(SEED)
    size = (len(np.asarray(engine.relief_setting)), len(states))
    heat = np.array([s.temperature for s in states])
    warmer = np.hypot(heat_errors(heat), [s.temperature_spread for s in states])
    faster = np.array([s.rpm_spread for s in states])
    points = [Point(s.rpm, s.temperature, 0.0) for s in states]
    each = circuit_shown(
        engine, points, warmer * rng.standard_normal(size), faster * rng.standard_normal(size)
    )
    off = MISFIT * each * rng.standard_normal(size)
    off += READ_ERROR * PSI * rng.standard_normal(size)
    return np.asarray(np.maximum(each + off, 0.0))


def averaged(
    law: PressureLaw, engine: Engine, known: Sequence[Shown], asked: Sequence[At]
) -> FloatArray:
    """Return draws of the pressure at each asked state [Pa], shape (draws, states).

    ``known``: what law and circuit were learned from. Each gives the share of the draws that its
    predictive density of those readings earns there.
    """
    states = [s.state for s in known]
    ours, theirs = law.pressures(asked), circuit_pressures(engine, asked)
    there = law.pressures(states), circuit_pressures(engine, states)
    columns = []
    for i, state in enumerate(asked):
        taken = round(share_of(*there, known, nearness(state, states)) * len(ours))
        rest = np.arange(len(ours) - taken) % len(theirs)
        evenly = np.linspace(0, len(ours) - 1, taken).astype(int)
        columns.append(np.concatenate([ours[evenly, i], theirs[rest, i]]))
    return np.stack(columns, axis=1)


def nearness(state: At, read: Sequence[At]) -> float:
    """Return how near a state is to the nearest that was read: 1 there, 0 far away.

    >>> at = At(700.0, 363.0)
    >>> round(nearness(at, [at]), 2), round(nearness(At(700.0, 303.0), [at]), 2)
    (1.0, 0.01)
    """
    apart = [
        hypot((state.temperature - s.temperature) / REACH, log2(state.rpm / s.rpm)) for s in read
    ]
    return float(np.exp(-0.5 * min(apart) ** 2))


def share_of(
    first: FloatArray, second: FloatArray, known: Sequence[Shown], near: float = 1.0
) -> float:
    """Return the weight of the first of two models, from what each shows where it was read.

    ``first``, ``second``: draws [Pa], shape (draws, readings). Weights go with the product of the
    predictive densities of the readings (pseudo model averaging). ``near``: how near to them the
    models are asked; far away all readings together count as one, as a model that is a little
    better among them need not be so elsewhere.

    >>> known = [Shown(At(700.0, 363.0), 200e3, 10e3)]
    >>> near, far = np.array([[195e3], [205e3]]), np.array([[240e3], [250e3]])
    >>> round(share_of(near, near, known), 3), share_of(near, far, known) > 0.99
    (0.5, True)

    Source: Yao, Vehtari, Simpson & Gelman, Bayesian Analysis 13 (2018), 917-1007 (from memory).
    """
    better = _log_density(first, known) - _log_density(second, known)
    better *= near + (1.0 - near) / max(len(known), 1)
    return float(1.0 / (1.0 + np.exp(-np.clip(better, -50.0, 50.0))))


def _log_density(draws: FloatArray, known: Sequence[Shown]) -> float:
    """The log predictive density of the readings, summed; each blurred by its own error."""
    seen, error = (np.array([getattr(s, f) for s in known]) for f in ("pressure", "error"))
    each = -0.5 * ((draws - seen) / error) ** 2 - np.log(error)
    most = each.max(axis=0)
    return float(np.sum(most + np.log(np.exp(each - most).mean(axis=0))))
