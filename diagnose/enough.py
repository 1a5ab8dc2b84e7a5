"""What would be enough: for each thing one could change, the least change that meets the target.

Imported by ``cli`` and ``report``. One change at a time, from the engine as it was found.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from diagnose.forecast import Forecast, Target
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from diagnose.knobs import KNOBS
from knowledge.units import INCH, PSI

ENOUGH = 0.9  #: share of plausible engines that must meet the target
STEPS = 24  #: tried between what is there and as far as is sensible
LESS = 0.02  #: a change smaller than this share of the way is none
GRADES = ("5W-30", "10W-40", "15W-40", "20W-50")

#: (knob, as far as is sensible, that as a factor on what is there, treats the symptom)
LEVERS: tuple[tuple[str, float, bool, bool], ...] = (
    ("main_clearance", 0.0020 * INCH, False, False),
    ("rod_clearance", 0.0020 * INCH, False, False),
    ("cam_bearing_clearance", 0.0020 * INCH, False, False),
    ("pump_side_clearance", 0.0025 * INCH, False, False),
    ("pump_end_clearance", 0.0020 * INCH, False, False),
    ("relief_seat_gap", 0.0, False, False),
    ("open_hole", 0.0, False, False),
    ("pickup_gap", 9.5e-3, False, False),
    ("screen_open_share", 1.0, False, False),
    ("filter_blocked", 1.0, False, False),
    ("relief_setting", 80 * PSI, False, True),
    ("pump_displacement", 1.5, True, True),
)


@dataclass(frozen=True, slots=True)
class Remedy:
    """One change that meets the target, how far it goes of what is sensible, and where it ends."""

    what: str
    says: str
    start: str
    end: str
    way: float  #: of the sensible change [1]
    symptom: bool


@dataclass(frozen=True, slots=True)
class Enough:
    """For one target: whether it is met already, by how many, and the single changes that would."""

    target: Target
    met: float  #: share of plausible engines as found
    remedies: tuple[Remedy, ...]  #: what treats no symptom first, the smallest change first
    nearest: Remedy | None  #: where none is enough: the change that gets furthest


def enough(told: Forecast, target: Target) -> Enough:
    """Single changes to the engine as found that would meet a target hot."""
    engine, met = told.before.engine, told.chance(target, told.before)
    if met >= ENOUGH:
        return Enough(target, met, (), None)
    tried = [r for lever in LEVERS if (r := _pulled(told, engine, target, *lever))]
    if thicker := _thicker(told, engine, target):
        tried.append(thicker)
    remedies = [r for r, share in tried if share >= ENOUGH]
    remedies.sort(key=lambda r: (r.symptom, r.way))
    best = max(tried, key=lambda t: t[1], default=None)
    nearest = best[0] if best and not remedies and best[1] > met else None
    return Enough(target, met, tuple(remedies), nearest)


def _pulled(
    told: Forecast,
    engine: Engine,
    target: Target,
    name: str,
    end: float,
    factor: bool,
    symptom: bool,
) -> tuple[Remedy, float] | None:
    knob = KNOBS[name]
    start = np.asarray(knob.read(engine)) * np.ones((_engines(told), 1))
    goal = start * end if factor else np.full_like(start, end)
    rising = factor or name in ("relief_setting", "pickup_gap", "screen_open_share")
    goal = np.maximum(goal, start) if rising else np.minimum(goal, start)
    if not np.isfinite(start).all() or np.allclose(goal, start, rtol=LESS, atol=0):
        return None
    way = np.linspace(0, 1, STEPS + 1)[1:, None, None]
    met = _met(knob.put(engine, start + way * (goal - start)), told, target)
    first = int(np.argmax(met >= ENOUGH)) if met.max() >= ENOUGH else STEPS - 1
    there = start + way[first] * (goal - start)
    remedy = Remedy(
        name, knob.says, knob.shown(start), knob.shown(there), float(way[first].item()), symptom
    )
    return remedy, float(met[first])


def _thicker(told: Forecast, engine: Engine, target: Target) -> tuple[Remedy, float] | None:
    """The thinnest oil of the usual grades that is enough."""
    now = float(np.median(np.asarray(engine.oil.kv100)))
    thicker = [g for g in GRADES if np.asarray(Oil.of_grade(g).kv100) > 1.05 * now]
    best: tuple[Remedy, float] | None = None
    for i, grade in enumerate(thicker, 1):
        oil = Oil.of_grade(grade)
        met = float(_met(replace(engine, oil=oil), told, target))
        remedy = Remedy(
            "oil",
            "thicker oil",
            KNOBS["viscosity_at_100c"].shown(now),
            f"{grade} ({KNOBS['viscosity_at_100c'].shown(oil.kv100)})",
            i / len(thicker),
            True,
        )
        best = remedy, met
        if met >= ENOUGH:
            break
    return best


def _met(engine: Engine, told: Forecast, target: Target) -> np.ndarray:
    """Share of engines that meet the target, for each step."""
    state = solve(engine, target.rpm, told.hot_temperature)
    good = np.asarray(state.gallery_pressure) >= target.pressure
    return np.asarray(np.mean(good, axis=(-2, -1)))


def _engines(told: Forecast) -> int:
    return len(np.asarray(told.before.hot.gallery_pressure))
