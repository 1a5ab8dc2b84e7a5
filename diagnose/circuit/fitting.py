"""How well each hidden condition explains a set of gauge readings, whatever the engine is like.

A hypothesis is a condition at a severity; its pressures are computed for many plausible engines at
once and smoothed to a density, so that a few dozen engines are enough. Pressures here are in psi: a
density has units.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from math import erf, sqrt
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import (
    LEAST_SPEED,
    TEMPERATURE_ERROR,
    Point,
    oil_spreads,
    shown,
)
from diagnose.circuit.plausible_engines import UNCERTAIN, varied
from diagnose.circuit.survey_evidence import states
from diagnose.circuit.survey_found import Known
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray, Floats
from knowledge.circuit.conditions import READING_FALSE
from knowledge.model import Reading
from knowledge.units import PSI

HEALTHY, NEITHER, FALSE = "healthy", "none_of_these_alone", READING_FALSE.id
FOUND = "as_found"
SECOND = 0.1  #: prior odds of a further condition beside one that was found (judgement)
NODES = np.array([0.12, 0.3, 0.5, 0.75, 1.0])  #: severities computed
FINE = np.linspace(NODES[0], NODES[-1], 23)  #: severities interpolated between them
MISFIT = 0.02  #: error of the model, share of the pressure (judgement)
SCALE = 0.02  #: a gauge's scale error, share of the pressure (judgement)
BLUR = 0.7  #: width of the density over engines, as a share of their spread
PAIRS, LOOSE = 400, 4.0  #: pairs of conditions tried for "none alone"; their extra error, psi
BOUND_FAILS = 0.04  #: how often a bound that was reported does not hold (judgement)
NOTHING = Known()
LEAST_SHOWN = 0.9  #: psi: least pressure a relative error is taken of


@dataclass(frozen=True, slots=True)
class GaugeError:
    """A reading's own error and the error it shares with the others on its gauge [psi]."""

    own: float
    shared: float


@dataclass(frozen=True, slots=True)
class Predicted:
    """Pressures predicted by every hypothesis [psi]: engines ``n``, readings ``m``."""

    healthy: FloatArray  #: (n, m), with what was found to be as it should be
    faults: Mapping[str, FloatArray]  #: each (severities, n, m), with everything found
    found: FloatArray | None = None  #: (n, m), with everything found and no more; None: nothing
    deviating: frozenset[str] = frozenset()  #: conditions that what was found belongs to

    @property
    def base(self) -> FloatArray:
        """What a further condition is added to."""
        return self.healthy if self.found is None else self.found


class SeverityRange(NamedTuple):
    """How bad a condition is, 0 to 1: the 16 %, 50 % and 84 % quantile."""

    low: float
    middle: float
    high: float


NO_SEVERITY = SeverityRange(0.0, 0.0, 0.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Fit:
    """One hypothesis against the readings."""

    log_likelihood: float
    severity: SeverityRange
    engines: FloatArray  #: how much each engine counts at the fitted severity, sum one


def warmer(n: int, points: Sequence[Point], rng: np.random.Generator) -> FloatArray:
    """Draw errors of the oil temperature [K] for each engine and state: ``(n, len(points))``."""
    state = states([p.temperature for p in points])
    half = rng.standard_normal(((n + 1) // 2, max(state) + 1))
    return TEMPERATURE_ERROR * np.vstack([half, -half])[:n][:, state]


@dataclass(frozen=True, slots=True)
class Apart:
    """How far each engine's speed and oil temperature are from those of the points: ``(n, m)``."""

    faster: Floats  #: rev/min
    warmer: Floats  #: K


def apart(readings: Sequence[Reading], off: FloatArray, rng: np.random.Generator) -> Apart:
    """Draw the speed and the oil temperature that vague readings had, for each engine.

    ``off`` are the errors of ``warmer``, which readings at one heat share; what words leave open
    is each reading's own. Readings in figures keep their speed and draw nothing.
    """
    speed = np.array([r.rpm_spread for r in readings])
    heat = np.array(oil_spreads(readings))
    if not (speed.any() or heat.any()):
        return Apart(0.0, off)
    n = len(off)
    half = rng.standard_normal((2, (n + 1) // 2, len(readings)))
    drawn = np.concatenate([half, -half], axis=1)[:, :n]
    slowest = np.minimum(LEAST_SPEED - np.array([r.rpm for r in readings]), 0.0)
    return Apart(np.maximum(speed * drawn[0], slowest), off + heat * drawn[1])


def predicted(
    engine: Engine,
    z: FloatArray,
    points: Sequence[Point],
    off: FloatArray | Apart,
    conditions: Iterable[str] = FAULTS,
    widths: Mapping[str, float] = UNCERTAIN,
    known: Known = NOTHING,
) -> Predicted:
    """Predict what the engines of draws ``z`` show, sound and with each condition at ``NODES``.

    ``off``: errors of the oil temperature [K], or of speed and temperature. ``known``: what was
    found on the engine; a measured value stays whatever the condition.
    """
    base = varied(engine, z, widths)
    by = off if isinstance(off, Apart) else Apart(0.0, off)
    steps = NODES[:, None, None]

    def shows(made: Engine) -> FloatArray:
        return shown(made, points, by.warmer, by.faster) / PSI

    return Predicted(
        shows(known.sound(base)),
        {
            name: _interpolated(shows(known.on(FAULTS[name].apply(base, steps), free=name)))
            for name in conditions
        },
        shows(known.on(base)) if known.deviating else None,
        known.deviating,
    )


def _interpolated(at_nodes: FloatArray) -> FloatArray:
    """Interpolate values at ``NODES`` (first axis) at ``FINE``.

    Without that axis (engines, readings) they are the same at every severity.
    """
    if at_nodes.ndim == 2:
        return np.broadcast_to(at_nodes, (len(FINE), *at_nodes.shape))
    weights = np.array([np.interp(FINE, NODES, row) for row in np.eye(len(NODES))]).T
    return np.asarray(np.tensordot(weights, at_nodes, 1))


def errors(gauges: Sequence[GaugeError], pressure: FloatArray) -> FloatArray:
    """Return the covariance of the gauges' errors [psi2]; gauges of one kind share a part."""
    own = np.array([g.own for g in gauges])
    shared = np.array([g.shared for g in gauges])
    alike = shared[:, None] == shared[None, :]
    spread = np.diag(own**2 + (MISFIT * pressure) ** 2)
    shared_part = np.outer(shared, shared) + SCALE**2 * np.outer(pressure, pressure)
    return np.asarray(spread + alike * shared_part)


def log_density(seen: FloatArray, shows: FloatArray, error: FloatArray) -> FloatArray:
    """Return the log density of the readings ``seen`` for each engine: ``(…, n)`` of ``(…, n, m)``.

    A kernel density over engines, shrunk towards its mean so that its covariance stays what it
    is, plus the gauges' error. Source: Liu & West, in Sequential Monte Carlo Methods (2001).
    """
    mean = shows.mean(-2, keepdims=True)
    apart = shows - mean
    spread = np.swapaxes(apart, -1, -2) @ apart / max(shows.shape[-2] - 1, 1)
    root = np.linalg.cholesky(BLUR**2 * spread + error)
    miss = seen - (mean + np.sqrt(1 - BLUR**2) * apart)
    solved = np.linalg.solve(root, np.swapaxes(miss, -1, -2))
    size = np.log(np.diagonal(root, axis1=-2, axis2=-1)).sum(-1)
    m = seen.shape[-1]
    return np.asarray(-0.5 * (solved**2).sum(-2) - size[..., None] - m / 2 * np.log(2 * np.pi))


def _log_mean(x: FloatArray) -> FloatArray:
    """Return the logarithm of the mean of exponentials over the last axis."""
    most = x.max(-1, keepdims=True)
    return np.asarray(most[..., 0] + np.log(np.exp(x - most).mean(-1)))


def fits(
    shows: Predicted,
    seen: FloatArray,
    gauges: Sequence[GaugeError],
    rng: np.random.Generator,
    *,
    may_lie: bool = False,
    bounds: Sequence[int] = (),
) -> dict[str, Fit]:
    """Fit every hypothesis to the readings ``seen`` [psi].

    ``may_lie``: also a gauge that shows only a share of the pressure. ``bounds``: for each reading
    1 where the pressure was at most that, -1 where it was at least that, 0 where it was that;
    empty: all 0.
    """
    error = errors(gauges, np.maximum(seen, LEAST_SHOWN))
    data = Data(seen, error, np.array(bounds or [0] * len(seen)))
    out = {HEALTHY: _fit_of(shows.healthy[None], data, np.zeros(1))}
    found = out[HEALTHY] if shows.found is None else _fit_of(shows.found[None], data, np.zeros(1))
    if shows.found is not None:
        out[FOUND] = found
    for name, by_severity in shows.faults.items():
        fit = _fit_of(by_severity, data, FINE)
        out[name] = _either(found, fit) if name in shows.deviating else fit
    if may_lie:
        shares = 1 - 0.95 * FINE[:, None, None]
        out[FALSE] = _fit_of(shows.base * shares, data, FINE)
    out[NEITHER] = _neither(shows, data, rng)
    return out


@dataclass(frozen=True, slots=True)
class Data:
    """Readings [psi], the covariance of their errors [psi2], and which of them are bounds."""

    seen: FloatArray
    error: FloatArray
    side: NDArray[np.int_]  #: 1: at most, -1: at least, 0: the pressure itself

    @property
    def exact(self) -> NDArray[np.bool_]:
        """The readings that are no bounds."""
        return np.asarray(self.side == 0)

    def log_within(self, shows: FloatArray, error: FloatArray) -> FloatArray:
        """Return the log probability that all bounds hold, for each engine: ``(…, n)``.

        A bound that was reported does not hold in a few cases of a hundred (judgement).
        """
        bound = ~self.exact
        if not bound.any():
            return np.zeros(shows.shape[:-1])
        room = self.side[bound] * (self.seen[bound] - shows[..., bound])
        below = _normal(room / np.sqrt(np.diag(error)[bound]))
        return np.asarray(np.log(BOUND_FAILS / 2 + (1 - BOUND_FAILS) * below).sum(-1))


def _normal(z: FloatArray) -> FloatArray:
    """Return the standard normal distribution function."""
    return np.asarray(0.5 * (1.0 + np.vectorize(erf, otypes=[float])(z / sqrt(2.0))))


def _fit_of(shows: FloatArray, data: Data, severity: FloatArray) -> Fit:
    exact = data.exact
    each = log_density(data.seen[exact], shows[..., exact], data.error[np.ix_(exact, exact)])
    each = each + data.log_within(shows, data.error)  # (severities, engines)
    of_severity = _log_mean(each)
    share = np.exp(of_severity - of_severity.max())
    share /= share.sum()
    low, middle, high = (
        float(severity[min(int(np.searchsorted(np.cumsum(share), q)), len(share) - 1)])
        for q in (0.16, 0.5, 0.84)
    )
    at = each[int(np.abs(severity - middle).argmin())]
    engines = np.exp(at - at.max())
    return Fit(
        log_likelihood=float(_log_mean(of_severity)),
        severity=SeverityRange(low, middle, high),
        engines=engines / engines.sum(),
    )


def _either(found: Fit, more: Fit) -> Fit:
    """Fit a condition that was measured: as measured, or with as much again where nobody looked."""
    both = np.logaddexp(found.log_likelihood, more.log_likelihood) - np.log(2.0)
    better = more if more.log_likelihood > found.log_likelihood else found
    return replace(better, log_likelihood=float(both))


def _neither(shows: Predicted, data: Data, rng: np.random.Generator) -> Fit:
    """Fit none of these alone.

    Two conditions at once, as the sum of what each does, with a wide error.
    """
    sound = shows.base.mean(0)
    every = np.concatenate([f.mean(1) - sound for f in shows.faults.values()])
    first, second = rng.integers(len(every), size=(2, PAIRS))
    guessed = np.maximum(sound + every[first] + every[second], 0.0)
    spread = shows.base - sound
    every_error = spread.T @ spread / len(spread) + data.error + LOOSE**2 * np.eye(len(data.seen))
    exact = data.exact
    root = np.linalg.cholesky(every_error[np.ix_(exact, exact)])
    miss = np.linalg.solve(root, (data.seen - guessed)[:, exact].T)
    size = np.log(np.diag(root)).sum() + exact.sum() / 2 * np.log(2 * np.pi)
    n = len(shows.healthy)
    within = data.log_within(guessed, every_error)
    chance = float(_log_mean(-0.5 * (miss**2).sum(0) - size + within))
    return Fit(log_likelihood=chance, severity=NO_SEVERITY, engines=np.full(n, 1 / n))


def shares(
    found: Mapping[str, Fit], deviating: Collection[str] = (), *, faulty: bool = False
) -> dict[str, float]:
    """Return the posterior of each hypothesis under a uniform prior.

    Where something was found to be wrong (``deviating``), any other condition would be there as
    well, which is less likely. ``faulty``: what was found takes pressure, so it is not sound.
    """
    most = max(f.log_likelihood for f in found.values())
    weight = {
        name: float(np.exp(f.log_likelihood - most))
        * (SECOND if deviating and name not in (HEALTHY, *deviating) else 1.0)
        for name, f in found.items()
        if name != FOUND and not (faulty and name == HEALTHY)
    }
    total = sum(weight.values())
    return {name: w / total for name, w in weight.items()}
