"""For each single change of the engine, the least of it that meets a target.

Imported by ``output``. Changes start from the engine as found and go no further than
back to a sound engine; what raises pressure without closing a leak is marked as a symptom.
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

#: what can be restored to its value on a sound engine
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
MOST_SETTING, MOST_PUMP = 80 * PSI, 1.5  #: most relief setting [Pa] and pump size (times) tried


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedy:
    """One change, how much of the sensible range it takes, and its end value."""

    what: str
    says: str
    start: str
    end: str
    way: float  #: share of the sensible change [1]
    symptom: bool
    met: float  #: share of plausible engines that then meet the target


@dataclass(frozen=True, slots=True, kw_only=True)
class MinimumChange:
    """For one target: the share that meets it already, and the single changes that would."""

    target: Target
    met: float  #: share of plausible engines as found
    remedies: tuple[Remedy, ...]  #: those that treat no symptom first, then the smallest change
    nearest: Remedy | None  #: where none is enough: the best single change
    mended: float  #: share that meets it with everything found put right


def minimum_change(forecast: Forecast, target: Target) -> MinimumChange:
    """Find the single changes to the engine as found that meet a target hot."""
    met = forecast.chance(target, forecast.before)
    if met >= ENOUGH:
        return MinimumChange(target=target, met=met, remedies=(), nearest=None, mended=met)
    tried = [*_put_right(forecast, target), *_leak(forecast, target), *_oil(forecast, target)]
    tried += _more_pressure(forecast, target)
    good = sorted((r for r in tried if r.met >= ENOUGH), key=lambda r: (r.symptom, r.way))
    furthest = max(tried, key=lambda r: r.met, default=None)
    short = furthest if furthest and not good and furthest.met > met else None
    leaking = forecast.state.engine(put_right={d.id for d in forecast.found})
    return MinimumChange(
        target=target,
        met=met,
        remedies=tuple(good),
        nearest=short,
        mended=float(_met(leaking, forecast, target)),
    )


def _put_right(forecast: Forecast, target: Target) -> Iterator[Remedy]:
    """Restore each parameter found wrong towards its sound value."""
    for name in MENDED:
        parameter = CIRCUIT_PARAMETERS[name]
        start, goal = (
            _column(forecast, parameter.read(e)) for e in (forecast.before.engine, forecast.sound)
        )
        found = any(d.parameter is parameter for d in forecast.found)
        if found and not np.allclose(start, goal, rtol=LESS, atol=0):
            yield from _first_enough(forecast, target, name, start, goal, False)


def _more_pressure(forecast: Forecast, target: Target) -> Iterator[Remedy]:
    """Raise relief setting or pump size: pressure without closing a leak."""
    engine = forecast.before.engine
    setting = _column(forecast, engine.relief_setting)
    higher = np.maximum(setting, MOST_SETTING)
    yield from _first_enough(forecast, target, "relief_setting", setting, higher, True)
    pump = _column(forecast, engine.pump_displacement)
    yield from _first_enough(forecast, target, "pump_displacement", pump, MOST_PUMP * pump, True)


def _first_enough(
    forecast: Forecast,
    target: Target,
    name: str,
    start: FloatArray,
    goal: FloatArray,
    symptom: bool,
) -> Iterator[Remedy]:
    """The first step from ``start`` to ``goal`` that is enough, else the last."""
    parameter = CIRCUIT_PARAMETERS[name]
    unit = forecast.units.get(name)

    def at(way: Floats) -> FloatArray:
        return np.clip(start + way * (goal - start), *parameter.plausible)

    way, met = _first(forecast, target, lambda w: parameter.apply(forecast.before.engine, at(w)))
    shown, ends = parameter.shown(start, unit), parameter.shown(at(way), unit)
    yield Remedy(
        what=name, says=parameter.says, start=shown, end=ends, way=way, symptom=symptom, met=met
    )


def _leak(forecast: Forecast, target: Target) -> Iterator[Remedy]:
    """Close the loss nobody has found yet."""
    if forecast.unlisted is None or forecast.unlisted.mean < PSI:
        return

    def closed(way: Floats) -> Engine:
        return forecast.state.engine(share=1.0 - np.asarray(way))

    way, met = _first(forecast, target, closed)
    end = f"{100 * (1 - way):.0f} % of it"
    yield Remedy(
        what="unlisted_leak",
        says="the loss nobody has found yet",
        start="all",
        end=end,
        way=way,
        symptom=False,
        met=met,
    )


def _oil(forecast: Forecast, target: Target) -> Iterator[Remedy]:
    """Change to the thinnest of the usual grades that is enough."""
    engine, viscosity = forecast.before.engine, CIRCUIT_PARAMETERS["viscosity_at_100c"]
    now, usual = (float(np.median(np.asarray(e.oil.kv100))) for e in (engine, forecast.sound))
    thicker = [g for g in GRADES if np.asarray(Oil.of_grade(g).kv100) > 1.05 * now]
    for i, grade in enumerate(thicker, 1):
        oil = Oil.of_grade(grade)
        met = float(_met(replace(engine, oil=oil), forecast, target))
        if met < ENOUGH and i < len(thicker):
            continue
        thick = float(np.asarray(oil.kv100)) > THICK * usual
        end = f"{grade} ({show(float(np.asarray(oil.kv100)), viscosity.dimension, 'cSt')})"
        says = "thicker oil" if thick else "fresh oil"
        yield Remedy(
            what="oil",
            says=says,
            start=viscosity.shown(now),
            end=end,
            way=i / len(thicker),
            symptom=thick,
            met=met,
        )
        return


def _first(
    forecast: Forecast, target: Target, made: Callable[[Floats], Engine]
) -> tuple[float, float]:
    """Return the least share of the change that is enough, else 1, and the share of engines met."""
    way = np.linspace(0, 1, STEPS + 1)[1:, None, None]
    met = np.atleast_1d(_met(made(way), forecast, target))
    at = int(np.argmax(met >= ENOUGH)) if met.max() >= ENOUGH else STEPS - 1
    return float(way[at].item()), float(met[at])


def _met(engine: Engine, forecast: Forecast, target: Target) -> FloatArray:
    """Return the share of engines that meet the target, for each step."""
    state = solve(engine, np.array([target.rpm]), forecast.hot_temperature)
    good = np.asarray(state.gallery_pressure) >= target.pressure
    return np.asarray(np.mean(good, axis=(-2, -1)))


def _column(forecast: Forecast, value: Floats) -> FloatArray:
    """Return the value as a column, one row for each engine."""
    engines = len(np.asarray(forecast.before.hot.gallery_pressure))
    return np.asarray(value) * np.ones((engines, 1))
