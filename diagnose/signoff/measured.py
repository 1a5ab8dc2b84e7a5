"""A measured value or a gauge reading compared with every figure that is printed for the engine."""

from __future__ import annotations

from dataclasses import dataclass

from diagnose.case.case import Case
from diagnose.case.mended import FAST, LIKELY, limits_at
from diagnose.signoff.judging import OWN
from knowledge.book import Book
from knowledge.limits import Figure, Limit, Side
from knowledge.model import Measure, Reading, Source
from knowledge.pressure.gauge import cold_share, hot_share, speed_share, wanted_hot
from knowledge.pressure.quantities import (
    HOT_IDLE_PRESSURE,
    HOT_RUNNING_PRESSURE,
    STOP_IDLE_PRESSURE,
)
from knowledge.pressure.refuted import speed_is_said
from knowledge.stations.relief.quantities import USUAL_RELIEF_SETTING
from knowledge.units import PSI

_SLACK = 1e-9  #: share of a value by which rounding may move it


@dataclass(frozen=True, slots=True)
class Bound:
    """A printed figure, what it is for, and how far a value is beyond it.

    ``figure`` and ``beyond`` in SI units; ``beyond`` is above zero where the value breaks it, for
    a nominal figure the distance from it. ``near``: the two differ by less than the usual
    measuring error.
    """

    limit: Limit
    figure: float
    of: str
    source: Source
    beyond: float
    near: bool

    @property
    def broken(self) -> bool:
        """Whether the value is beyond the figure; never of a nominal one."""
        return self.limit.side is not Side.NOMINAL and self.beyond > _SLACK * abs(self.figure)


def figures_of(limit: Limit, case: Case) -> list[Figure]:
    """The engine's own figure alone; else that of its layout or size; else all for its kind, SI.

    Empty where every figure is of another kind of engine.
    """
    if limit in case.limits:
        return [Figure(case.limits[limit], "", OWN)]
    if usual := case.usual_limits.get(limit):
        return [usual]
    return [Figure(p.value, p.of, p.source) for p in limit.printed(case.has)]


def held(limit: Limit, value: float, spread: float, case: Case) -> tuple[Bound, ...]:
    """A value (SI) beside each figure of one limit; ``spread``: its usual error, SI."""
    way = {Side.LEAST: -1.0, Side.MOST: 1.0, Side.NOMINAL: 1.0}[limit.side]
    found = []
    for figure in figures_of(limit, case):
        beyond = way * (value - figure.value)
        if limit.side is Side.NOMINAL:
            beyond = abs(beyond)
        near = abs(value - figure.value) < spread
        found.append(Bound(limit, figure.value, figure.says, figure.source, beyond, near))
    return tuple(found)


def measured_bounds(
    measure: Measure, value: float, case: Case, book: Book
) -> tuple[tuple[Bound, ...], ...]:
    """A measured value (SI) beside the figures of each limit of its quantity, the broken first."""
    limits = [x for x in book.limits.values() if measure.quantity in x.quantities]
    every = [b for x in limits if (b := held(x, value, measure.spread, case))]
    return tuple(sorted(every, key=lambda bounds: not bounds[0].broken))


def reading_bounds(reading: Reading, case: Case) -> tuple[tuple[Bound, ...], ...]:
    """A reading beside the limits that hold at its speed and heat; empty where none does.

    The first that is broken is the gravest.
    """
    return tuple(held(limit, reading.pressure, 0.0, case) for limit in limits_at(reading, case))


def idle_bounds(reading: Reading, case: Case) -> tuple[tuple[Bound, ...], ...]:
    """What idle needs, beside a hot reading above idle, up to the speed from which more is needed.

    Empty where the reading is of idle itself, or faster, cold, or of a speed that nobody gave.
    """
    hot = hot_share(reading) >= LIKELY
    above = speed_share(reading, case.idle_speed, FAST) >= LIKELY
    if reading.at_least or not hot or not above or not speed_is_said(reading):
        return ()
    limits = (STOP_IDLE_PRESSURE, HOT_IDLE_PRESSURE)
    every = [held(limit, reading.pressure, 0.0, case) for limit in limits]
    return tuple(sorted(every, key=lambda bounds: not bounds[0].broken))


def below_rule(reading: Reading, case: Case) -> float | None:
    """What the rule of thumb wants hot at a reading's speed [Pa]; None where it is kept or silent.

    Above 2000 rpm alone: up to there a limit of its own holds.
    """
    if reading.at_least or speed_share(reading, FAST) < LIKELY or cold_share(reading) >= LIKELY:
        return None
    if HOT_RUNNING_PRESSURE in case.limits:
        return None  # the maker's figure decides
    figures = (HOT_IDLE_PRESSURE, USUAL_RELIEF_SETTING, HOT_RUNNING_PRESSURE)
    idle, relief, running = (case.limit(limit) for limit in figures)
    wanted = wanted_hot(reading.rpm, idle, relief, running)
    return wanted if reading.pressure < wanted - 0.5 * PSI else None
