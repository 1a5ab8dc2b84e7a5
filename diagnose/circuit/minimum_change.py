"""What would be enough: for each thing one could change, the least change that meets the target.

Imported by ``output``. One change at a time, from the engine as it was found, and no further than
back to a sound engine; what brings pressure without mending a leak is marked as such.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace

import numpy as np

from diagnose.circuit.forecast import Forecast, Target
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.ranges import FloatArray, Floats
from knowledge.units import PSI, show

ENOUGH = 0.9  #: share of plausible engines that must meet the target
STEPS = 24  #: tried between what is there and as far as is sensible
LESS = 0.02  #: a change smaller than this share is none
THICK = 1.1  #: times the usual viscosity from which oil is thicker than usual
GRADES = ("5W-30", "10W-40", "15W-40", "20W-50")

#: what can be put back to where a sound engine has it
MENDED = (
    "main_clearance",
    "rod_clearance",
    "cam_bearing_clearance",
    "lifter_clearance",
    "pump_side_clearance",
    "pump_end_clearance",
    "relief_seat_gap",
    "relief_setting",
    "open_hole",
    "pickup_gap",
    "screen_open_share",
    "filter_blocked",
)
MOST_SETTING, MOST_PUMP = 80 * PSI, 1.5  #: as far as relief setting and pump size are stretched


@dataclass(frozen=True, slots=True)
class Remedy:
    """One change that meets the target, how far it goes of what is sensible, and where it ends."""

    what: str
    says: str
    start: str
    end: str
    way: float  #: of the sensible change [1]
    symptom: bool
    met: float  #: share of plausible engines that then meet the target


@dataclass(frozen=True, slots=True)
class MinimumChange:
    """For one target: whether it is met already, by how many, and the single changes that would."""

    target: Target
    met: float  #: share of plausible engines as found
    remedies: tuple[Remedy, ...]  #: what treats no symptom first, the smallest change first
    nearest: Remedy | None  #: where none is enough: the change that gets furthest
    mended: float  #: share that meet it with everything found put right, and no more


def minimum_change(told: Forecast, target: Target) -> MinimumChange:
    """Single changes to the engine as found that would meet a target hot."""
    met = told.chance(target, told.before)
    if met >= ENOUGH:
        return MinimumChange(target, met, (), None, met)
    tried = [*_mending(told, target), *_leak(told, target), *_oil(told, target)]
    tried += _stretching(told, target)
    good = sorted((r for r in tried if r.met >= ENOUGH), key=lambda r: (r.symptom, r.way))
    furthest = max(tried, key=lambda r: r.met, default=None)
    short = furthest if furthest and not good and furthest.met > met else None
    leaking = replace(told.sound, other_conductance=told.before.engine.other_conductance)
    return MinimumChange(target, met, tuple(good), short, float(_met(leaking, told, target)))


def _mending(told: Forecast, target: Target) -> Iterator[Remedy]:
    """Each thing that is off, towards where a sound engine has it."""
    for name in MENDED:
        parameter = CIRCUIT_PARAMETERS[name]
        start, goal = (_column(told, parameter.read(e)) for e in (told.before.engine, told.sound))
        found = any(d.parameter is parameter for d in told.found)
        if found and not np.allclose(start, goal, rtol=LESS, atol=0):
            yield from _walked(told, target, name, start, goal, False)


def _stretching(told: Forecast, target: Target) -> Iterator[Remedy]:
    """More spring, more pump: pressure without mending a leak."""
    engine = told.before.engine
    setting = _column(told, engine.relief_setting)
    higher = np.maximum(setting, MOST_SETTING)
    yield from _walked(told, target, "relief_setting", setting, higher, True)
    pump = _column(told, engine.pump_displacement)
    yield from _walked(told, target, "pump_displacement", pump, MOST_PUMP * pump, True)


def _walked(
    told: Forecast, target: Target, name: str, start: FloatArray, goal: FloatArray, symptom: bool
) -> Iterator[Remedy]:
    """The first step on the way that is enough, else the last."""
    parameter = CIRCUIT_PARAMETERS[name]
    unit = told.units.get(name)

    def at(way: Floats) -> FloatArray:
        return np.clip(start + way * (goal - start), *parameter.plausible)

    way, met = _first(told, target, lambda w: parameter.apply(told.before.engine, at(w)))
    shown, ends = parameter.shown(start, unit), parameter.shown(at(way), unit)
    yield Remedy(name, parameter.says, shown, ends, way, symptom, met)


def _leak(told: Forecast, target: Target) -> Iterator[Remedy]:
    """The leak nobody has found yet, found."""
    if told.unlisted is None or told.unlisted.mean < PSI:
        return
    engine = told.before.engine
    there, sound = (_column(told, e.other_conductance) for e in (engine, told.sound))

    def closed(way: Floats) -> Engine:
        return replace(engine, other_conductance=there + way * (sound - there))

    way, met = _first(told, target, closed)
    end = f"{100 * (1 - way):.0f} % of it"
    yield Remedy("unlisted_leak", "the leak nobody has found yet", "all", end, way, False, met)


def _oil(told: Forecast, target: Target) -> Iterator[Remedy]:
    """The thinnest of the usual grades that is enough."""
    engine, viscosity = told.before.engine, CIRCUIT_PARAMETERS["viscosity_at_100c"]
    now, usual = (float(np.median(np.asarray(e.oil.kv100))) for e in (engine, told.sound))
    thicker = [g for g in GRADES if np.asarray(Oil.of_grade(g).kv100) > 1.05 * now]
    for i, grade in enumerate(thicker, 1):
        oil = Oil.of_grade(grade)
        met = float(_met(replace(engine, oil=oil), told, target))
        if met < ENOUGH and i < len(thicker):
            continue
        thick = float(np.asarray(oil.kv100)) > THICK * usual
        end = f"{grade} ({show(float(np.asarray(oil.kv100)), viscosity.dimension, 'cSt')})"
        says = "thicker oil" if thick else "fresh oil"
        yield Remedy("oil", says, viscosity.shown(now), end, i / len(thicker), thick, met)
        return


def _first(told: Forecast, target: Target, made: Callable[[Floats], Engine]) -> tuple[float, float]:
    """How far one must go for enough engines, or all the way; and how many that makes."""
    way = np.linspace(0, 1, STEPS + 1)[1:, None, None]
    met = np.atleast_1d(_met(made(way), told, target))
    at = int(np.argmax(met >= ENOUGH)) if met.max() >= ENOUGH else STEPS - 1
    return float(way[at].item()), float(met[at])


def _met(engine: Engine, told: Forecast, target: Target) -> FloatArray:
    """Share of engines that meet the target, for each step."""
    state = solve(engine, np.array([target.rpm]), told.hot_temperature)
    good = np.asarray(state.gallery_pressure) >= target.pressure
    return np.asarray(np.mean(good, axis=(-2, -1)))


def _column(told: Forecast, value: Floats) -> FloatArray:
    """A value for each engine."""
    engines = len(np.asarray(told.before.hot.gallery_pressure))
    return np.asarray(value) * np.ones((engines, 1))
