"""Plausible engines of a case as they are now: with what was found, and showing what was read.

What no finding explains becomes a loss that nobody has found yet (``unlisted_loss``); its shape
over speed and heat follows from the readings.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass, fields, is_dataclass, replace
from functools import reduce
from math import hypot, sqrt
from typing import Any

import numpy as np
from numpy.typing import NDArray

from diagnose.case.case import Case, GaugeReading
from diagnose.circuit.band import Band
from diagnose.circuit.deviations import Deviation, evenly_drawn
from diagnose.circuit.engine_model import Point, known_points, shown
from diagnose.circuit.operating_points import as_if_read, latest_readings
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.circuit.plausible_engines import MOST_RISE
from diagnose.circuit.survey import COLD_MISS, WARM
from diagnose.circuit.unlisted_loss import KINDS, Loss, expected_loss
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray, Floats
from knowledge.model import Reading
from knowledge.pressure.gauge import gauge_error, state_of, states_agree
from knowledge.units import PSI

LEAST_RISE = 0.1  #: K: of a bearing's film over the gallery
ROUNDS = 4  #: steps towards the readings
MISFIT = 0.03  #: error of the model, share of the pressure (judgement)
FITS = 2.0  #: standard errors that the mean engine may be off a reading: 95 in 100 are not


def _bearings(engine: Engine, **fields: Floats) -> Engine:
    """Return the engine with these fields on its mains and rods."""
    changed: dict[str, Any] = fields
    return replace(
        engine,
        mains=tuple(replace(g, **changed) for g in engine.mains),
        rods=tuple(replace(g, **changed) for g in engine.rods),
    )


@dataclass(frozen=True, slots=True)
class _Coordinate:
    """Something that varies from one sound engine to the next; it is moved in the logarithm."""

    read: Callable[[Engine], Floats]
    put: Callable[[Engine, Floats], Engine]  #: the engine with another value


def _of_circuit(name: str) -> _Coordinate:
    """A parameter of the circuit by its name, kept within what is plausible."""
    parameter = CIRCUIT_PARAMETERS[name]

    def put(engine: Engine, value: Floats) -> Engine:
        return parameter.apply(engine, np.clip(value, *parameter.plausible))

    return _Coordinate(parameter.read, put)


#: what the readings can move on a sound engine
_VARIED: tuple[_Coordinate, ...] = (
    *(
        _of_circuit(name)
        for name in (
            "main_clearance",
            "rod_clearance",
            "cam_bearing_clearance",
            "lifter_clearance",
            "pump_displacement",
            "pump_side_clearance",
            "pump_end_clearance",
            "relief_setting",
            "viscosity_at_100c",
        )
    ),
    _Coordinate(
        lambda e: e.mains[0].feed_share,
        lambda e, v: _bearings(e, feed_share=np.clip(v, 0.05, 1.0)),
    ),
    _Coordinate(
        lambda e: np.maximum(e.film_rise, LEAST_RISE),
        lambda e, v: replace(e, film_rise=np.minimum(v, MOST_RISE)),
    ),
)
MOST_SCORE = 4.0  #: standard deviations that a score is kept within
FEW = 0.1  #: share of the engines that must be able to show the readings
RIDGE = 0.05  #: of each variance, added so that the covariance of few engines can be inverted
STEP = 0.2  #: standard deviations, for the slope
LEAST_SD = 1e-3  #: of a coordinate
SHORTER = np.array([1.0, 0.5, 0.2])  #: of a step, tried


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingFit:
    """A reading of the gauge beside what the engines show there [Pa]."""

    read: GaugeReading
    shows: Band
    error: float  #: one standard deviation of the reading [Pa]

    @property
    def off(self) -> float:
        """How far the mean engine is from the reading [Pa], positive where it shows more."""
        reading, shows = self.read.reading, self.shows.mean
        if reading.at_most:
            return max(shows - reading.pressure, 0.0)
        if reading.at_least:
            return min(shows - reading.pressure, 0.0)
        return shows - reading.pressure

    @property
    def fits(self) -> bool:
        """Whether it agrees with the reading within its error."""
        return abs(self.off) <= FITS * self.error


@dataclass(frozen=True, kw_only=True)
class AsRead:
    """Plausible engines in agreement with the case's readings, and how well they agree."""

    sound: Engine  #: columns, without anything found
    found: tuple[Deviation, ...]
    loss: Loss | None  #: None: nothing was read, so nothing is missing
    readings: tuple[ReadingFit, ...]

    @property
    def fits(self) -> bool:
        """Whether the engines agree with every reading."""
        return all(r.fits for r in self.readings)

    def engine(
        self,
        put_right: Collection[str] = (),
        closed: Collection[str] = (),
        share: Floats = 1.0,
    ) -> Engine:
        """Return the engines as found, with some of it put right.

        ``put_right``: ids of findings; ``closed``: kinds of loss nobody has found; ``share``: how
        much of the rest of that loss stays [1].
        """
        kept = (d for d in self.found if d.id not in put_right)
        engine = reduce(lambda e, d: d.apply(e), kept, self.sound)
        return self.loss.applied_to(engine, closed, share) if self.loss else engine

    def short_of(self, pressure: float, rpm: float, temperature: float) -> ReadingFit | None:
        """Return the reading of about this state that is below a pressure [Pa]; None: none is."""
        low = [
            r
            for r in self.readings
            if r.read.reading.pressure < pressure
            and not r.read.reading.at_least
            and states_agree(state_of(r.read.reading), (rpm, temperature))
        ]
        return min(low, key=lambda r: r.read.reading.pressure, default=None)

    @property
    def kinds(self) -> Collection[str]:
        """The kinds of loss that may be there."""
        return KINDS if self.loss else ()

    def lost(self, rpm: float, temperature: float) -> Band | None:
        """Return the pressure that the loss nobody has found takes [Pa]; None without readings."""
        if self.loss is None:
            return None
        whole, left = (
            np.asarray(solve(e, rpm, temperature).gallery_pressure)
            for e in (self.engine(closed=KINDS), self.engine())
        )
        return Band.of(whole - left)


def as_read(
    case: Case, sound: Engine, found: Sequence[Deviation], rng: np.random.Generator
) -> AsRead:
    """Condition engines with their findings on what the case's gauge shows now.

    ``sound``: columns ``(n, 1)``; ``found``: for as many engines. Ensemble smoother with multiple
    data assimilation over the dimensions of the engines, how bad each finding is, and the loss
    nobody has found. Readings of any speed or any oil temperature are left out.

    Source: Emerick & Reynolds, Computers & Geosciences 55 (2013), 3-15; kinds and widths of the
    loss are judgement.
    """
    read = [r for r in latest_readings(case) if not _is_sweeping(r.reading)]
    if not read:
        return AsRead(sound=sound, found=tuple(found), loss=None, readings=())
    taken = [as_if_read(r.reading) for r in read]
    points = known_points(case, [replace(r, error=_gauge(r)) for r in taken])
    known, errors = (np.array([getattr(p, x) for p in points]) for x in ("pressure", "error"))
    counts = np.array([not r.reading.at_least for r in read])
    prior = AsRead(
        sound=sound, found=tuple(found), loss=expected_loss(case, sound, rng), readings=()
    )
    state = prior
    if counts.any():
        x = _coordinates(prior)
        wanted = known + errors * np.hstack([evenly_drawn(len(x), rng) for _ in known])
        done, cost = _closest(prior, x, x, points, wanted, errors, counts)
        best = done[np.argsort(cost)[: len(x) // 4]]  # from where the others try once more
        again = best[rng.integers(len(best), size=len(x))]
        more, dearer = _closest(prior, x, again, points, wanted, errors, counts)
        done = np.where((dearer < cost)[:, None], more, done)
        off = (shown(_moved(prior, done).engine(), points) - known)[:, counts] / errors[counts]
        rows = _able(off)
        state = _moved(_rows_of(prior, rows), done[rows])
    shows = shown(state.engine(), points)
    fits = [
        ReadingFit(read=r, shows=Band.of(shows[:, i]), error=float(errors[i]))
        for i, r in enumerate(read)
    ]
    return replace(state, readings=tuple(fits))


def _able(off: FloatArray) -> NDArray[np.int_]:
    """Return the rows of the engines that can show the readings, repeated until as many as before.

    ``off``: errors each engine is off each reading. All rows where hardly any engine can.
    """
    n, m = off.shape
    able = np.flatnonzero((off**2).sum(1) <= m + 2 * sqrt(2 * m))
    return able[np.arange(n) % len(able)] if len(able) >= FEW * n else np.arange(n)


def _rows_of(state: AsRead, rows: NDArray[np.int_]) -> AsRead:
    """The state with these rows of each column."""
    assert state.loss is not None
    return replace(
        state,
        sound=_taken(state.sound, rows),
        found=tuple(replace(d, score=d.score[rows]) for d in state.found),
        loss=_taken(state.loss, rows),
    )


def _taken(each: Any, rows: NDArray[np.int_]) -> Any:
    """Return a value with these rows of every column in it, at any depth."""
    if is_dataclass(each) and not isinstance(each, type):
        return replace(each, **{f.name: _taken(getattr(each, f.name), rows) for f in fields(each)})
    if isinstance(each, tuple):
        return tuple(_taken(e, rows) for e in each)
    return each[rows] if isinstance(each, np.ndarray) and each.ndim == 2 else each


def _closest(
    prior: AsRead,
    x: FloatArray,
    start: FloatArray,
    points: Sequence[Point],
    wanted: FloatArray,
    errors: FloatArray,
    counts: NDArray[np.bool_],
) -> tuple[FloatArray, FloatArray]:
    """Return for each engine the coordinates nearest to its own that show what is ``wanted``.

    Also their cost. Gauss-Newton steps from ``start`` on ``|x - x0|^2 / C + |wanted - shown|^2 /
    errors^2``, each shortened until it is better; ``C`` is the covariance of all engines.
    """
    dims = len(_VARIED)  # scores are independent of them and of each other
    covariance = np.cov(x.T) + RIDGE * np.diag(x.var(0))
    covariance[dims:, :] = covariance[:, dims:] = 0.0
    covariance[range(dims, x.shape[1]), range(dims, x.shape[1])] = 1.0
    covariance += LEAST_SD**2 * np.eye(len(covariance))
    inverse = np.linalg.inv(covariance)
    step = np.diag(STEP * np.maximum(x.std(0), LEAST_SD))
    scale = errors[counts]

    def missed(at: FloatArray) -> FloatArray:
        return np.asarray(wanted - shown(_moved(prior, at).engine(), points))[..., counts] / scale

    def cost(at: FloatArray, miss: FloatArray) -> FloatArray:
        away = at - x
        return np.asarray(np.einsum("...i,ij,...j", away, inverse, away) + (miss**2).sum(-1))

    at, miss = start, missed(start)
    least = cost(at, miss)
    for _ in range(ROUNDS):
        slope = (miss - missed(at + step[:, None])) / np.diag(step)[:, None, None]
        slope = np.moveaxis(slope, 0, -1)  # (engines, readings, coordinates)
        back = slope @ covariance
        inner = back @ np.swapaxes(slope, -1, -2) + np.eye(len(scale))
        residual = miss + np.einsum("nmk,nk->nm", slope, at - x)
        move = np.einsum("nmk,nm->nk", back, np.linalg.solve(inner, residual[..., None])[..., 0])
        ways = at + SHORTER[:, None, None] * (x + move - at)
        misses = missed(ways)
        costs = cost(ways, misses)
        best, rows = costs.argmin(0), np.arange(len(x))
        better = costs[best, rows] < least
        at = np.where(better[:, None], ways[best, rows], at)
        miss = np.where(better[:, None], misses[best, rows], miss)
        least = np.where(better, costs[best, rows], least)
    return at, least


def _is_sweeping(reading: Reading) -> bool:
    return reading.at_all_speeds or reading.at_all_heats


def _gauge(reading: Reading) -> float:
    """The gauge's error and that of the circuit with cold oil, one standard deviation [Pa]."""
    cold = COLD_MISS * PSI * max(0.0, WARM - (reading.oil_temperature or WARM))
    return hypot(gauge_error(reading), cold, MISFIT * reading.pressure)


def _coordinates(state: AsRead) -> FloatArray:
    """What the readings can move, one row for each engine."""
    n = len(state.loss.scores) if state.loss else 0
    sound = [np.asarray(v.read(state.sound)) * np.ones((n, 1)) for v in _VARIED]
    scores = [d.score for d in state.found]
    return np.hstack([*map(np.log, sound), *scores, *([state.loss.scores] if state.loss else [])])


def _moved(state: AsRead, x: FloatArray) -> AsRead:
    """The state with other coordinates, within what can be real."""
    columns = [x[..., i : i + 1] for i in range(x.shape[-1])]
    sound = state.sound
    for varied, log in zip(_VARIED, columns, strict=False):
        sound = varied.put(sound, np.exp(log))
    first = len(_VARIED)
    found = tuple(
        replace(d, score=np.clip(c, -MOST_SCORE, MOST_SCORE))
        for d, c in zip(state.found, columns[first:], strict=False)
    )
    assert state.loss is not None
    scores = np.clip(x[..., first + len(found) :], -MOST_SCORE, MOST_SCORE)
    return replace(state, sound=sound, found=found, loss=replace(state.loss, scores=scores))
