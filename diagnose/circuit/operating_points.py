"""The states of running a case's engine is judged in: hot idle, cruise, and where it was read last."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from math import hypot

from diagnose.case.case import Case, GaugeReading
from knowledge.engines.layouts_special import GENERATOR_DIESEL, GENERATOR_PETROL
from knowledge.model import Gauge, Reading
from knowledge.pressure.gauge import (
    HOT,
    IDLE_SLACK,
    RUNNING,
    SAME_HEAT,
    SPEED,
    UNDER,
    USUAL_HOT,
    is_bound,
    of_one_state,
)
from knowledge.reports.words import Speed

CRUISE = 2500.0  #: rpm
ITS_SPEED = "the speed read"  #: name of a point that is neither idle nor cruise
COLD_START = 293.15  #: K: a cold start in a temperate shop
COLD_SPEED = 1500.0  #: rpm: as fast as cold oil is to be turned
MOST_SPREAD = 0.2  #: of the speed: a reading known less well is at no point (judgement)


@dataclass(frozen=True, slots=True)
class OperatingPoint:
    """A state of running, SI."""

    name: str
    rpm: float
    temperature: float
    read: GaugeReading | None  #: None: no reading there
    temperature_known: bool = True


def points_of(case: Case) -> tuple[OperatingPoint, ...]:
    """Return hot idle and cruise as read: a trusted gauge before the panel, the latest reading.

    A ceiling counts where nothing better was read. Other bounds, and readings whose speed or oil
    temperature is known only roughly, are left out. An engine that was read between idle and
    cruise alone, such as a generating set at its one speed, is judged there.
    """
    hot = [r for r in case.readings if is_certain(as_if_read(r.reading)) and is_hot(r.reading)]
    own = [_at_its_idle(r, case) for r in hot]
    idle = [r for r in own if RUNNING < r.reading.rpm <= IDLE_SLACK * case.idle_speed]
    fast = [r for r in hot if r.reading.rpm >= SPEED]
    heat = hot_of(case)
    between = _last([r for r in own if r.reading.rpm > IDLE_SLACK * case.idle_speed])
    if not idle and not fast and between is not None:
        fast_point = _point(ITS_SPEED, between, CRUISE, heat)
        return _point("hot idle", None, case.idle_speed, heat), fast_point
    return (
        _point("hot idle", _last(idle), case.idle_speed, heat),
        _point("cruise", _last(fast), CRUISE, heat),
    )


def _at_its_idle(read: GaugeReading, case: Case) -> GaugeReading:
    """A reading "at idle", without a figure, at the idle speed of its kind of engine."""
    if read.entry.rpm != Speed.IDLE.value:
        return read
    return replace(read, reading=replace(read.reading, rpm=case.idle_speed))


def hot_of(case: Case) -> float:
    """Return the oil temperature of the case's hot idle [K].

    That of its latest hot reading, at idle before others; else of the hot pressures it is known by
    from when it was sound; else 90 °C.
    """
    looked = [r for r in case.readings if is_certain(r.reading) and r.reading.oil_temperature]
    hot = [r for r in looked if is_hot(r.reading)]
    idle = [r for r in hot if RUNNING < r.reading.rpm <= IDLE_SLACK * case.idle_speed]
    known = [b.reading for b in case.baseline]
    sound = [r for r in known if is_certain(r) and r.oil_temperature and is_hot(r)]
    slowest = min(sound, key=lambda r: r.rpm, default=None)
    last = _last(idle) or _last(hot)
    reading = last.reading if last else slowest
    return reading.oil_temperature or USUAL_HOT if reading else USUAL_HOT


def latest_readings(case: Case) -> tuple[GaugeReading, ...]:
    """Return what the gauge shows now: of each state of running the latest look, oldest first.

    A trusted gauge goes before the panel. Readings of a turned or stopped engine are left out.
    """
    kept: list[GaugeReading] = []
    order = sorted(
        (r for r in case.readings if r.reading.rpm > RUNNING),
        key=lambda r: (r.reading.gauge is Gauge.DIRECT, r.entry.no),
        reverse=True,
    )
    for each in order:
        if not any(of_one_state(each.reading, other.reading) for other in kept):
            kept.append(each)
    return tuple(sorted(kept, key=lambda r: r.entry.no))


def fixed_speed(case: Case) -> float | None:
    """Return the one speed of an engine that drives a generator, as it was read; else None [rpm]."""
    if case.layout not in (GENERATOR_DIESEL, GENERATOR_PETROL):
        return None
    read = [r for r in case.readings if is_certain(r.reading) and r.reading.rpm >= SPEED]
    last = _last(read)
    return last.reading.rpm if last else None


def is_certain(reading: Reading) -> bool:
    """Return whether a reading is a pressure at about one speed and one oil temperature."""
    narrow = reading.rpm_spread <= MOST_SPREAD * reading.rpm and reading.oil_spread <= SAME_HEAT
    return narrow and not is_bound(reading)


def as_if_read(reading: Reading) -> Reading:
    """Return a ceiling at one speed ("never above 20 psi at 3000 rpm") as a pressure near it."""
    if not reading.at_most or reading.at_all_speeds:
        return reading
    vague = hypot(reading.pressure_spread, (1 - UNDER) * reading.pressure)
    return replace(reading, pressure=UNDER * reading.pressure, pressure_spread=vague, at_most=False)


def is_hot(reading: Reading) -> bool:
    """Return whether the oil was hot; a reading without an oil temperature is taken as hot."""
    return (reading.oil_temperature or USUAL_HOT) >= HOT


def _last(readings: Sequence[GaugeReading]) -> GaugeReading | None:
    """Return the latest reading of the most trusted gauge, a figure before a ceiling."""
    return max(
        readings,
        key=lambda r: (
            not r.reading.at_most,
            r.reading.gauge is Gauge.DIRECT,
            r.entry.no,
        ),
        default=None,
    )


def _point(name: str, read: GaugeReading | None, rpm: float, heat: float) -> OperatingPoint:
    if read is None:
        return OperatingPoint(name, rpm, heat, None)
    temperature = read.reading.oil_temperature
    return OperatingPoint(
        name, read.reading.rpm, temperature or heat, read, temperature is not None
    )
