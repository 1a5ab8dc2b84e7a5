"""The smallest repairs that meet a target: single ones, and the fewest together where none does.

Repairs start from the engine as found and go no further than back to a sound engine; what raises
pressure without closing a leak is marked as a symptom.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from itertools import combinations
from typing import TypeVar

import numpy as np

from diagnose.circuit.as_read import ReadingFit
from diagnose.circuit.band import Band
from diagnose.circuit.deviations import Deviation, as_measured
from diagnose.circuit.fixes import closed_by, rights_of, wrong
from diagnose.circuit.forecast import Forecast, Target
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS, CircuitParameter
from diagnose.circuit.unlisted_loss import KINDS
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.ranges import FloatArray, Floats
from knowledge.circuit import fixes as k
from knowledge.circuit.fixes import Fix
from knowledge.units import PSI, show

MOST_TOGETHER = 4  #: repairs tried together
ENOUGH = 0.9  #: share of plausible engines that must meet the target
STEPS = 24  #: tried between what is there and as far as is sensible
NEARLY_ALL = 0.9  #: share of a loss from which it must go altogether
LESS = 0.02  #: a change smaller than this share is none
WORTH = 1.0 * PSI  #: what brings less is no repair
THICKER = 1.05  #: times the viscosity in it from which a grade is another one
THICK = 1.1  #: times the usual viscosity from which oil is thicker than usual
GRADES = ("5W-30", "10W-40", "15W-40", "20W-50")
MOST_SETTING, MOST_PUMP = 80 * PSI, 1.5  #: most relief setting [Pa] and pump size (times) tried
#: repairs that nobody would make on a mere guess
DONE_IN_FULL = (k.RELIEF, k.PLUG, k.JETS, k.PICKUP, k.OIL_FILTER, k.COOLER)
NOT_ON_A_GUESS = (k.LEAK, k.OIL)

T = TypeVar("T")
Make = Callable[[Floats], Engine]  #: the engine with a share of a change made


@dataclass(frozen=True, slots=True, kw_only=True)
class Remedy:
    """One repair, or several, how much of the sensible range it takes, and what it comes to."""

    what: str
    fixes: tuple[Fix, ...]
    says: str
    start: str
    end: str
    way: float  #: share of the sensible change [1]
    symptom: bool
    assumed: bool = False  #: nothing was found there: only if the loss not found yet is there
    found: bool = False  #: puts right what was found
    met: float  #: share of plausible engines that then meet the target
    after: Band  #: pressure then [Pa]


@dataclass(frozen=True, slots=True, kw_only=True)
class MinimumChange:
    """For one target: the share that meets it already, and the repairs that would."""

    target: Target
    met: float  #: share of plausible engines as found
    remedies: tuple[Remedy, ...]  #: those that treat no symptom first, then the smallest change
    together: tuple[Remedy, ...]  #: two or more, where no single one closes what was found
    short: tuple[Remedy, ...]  #: single repairs that are not enough, the best first
    mended: float  #: share that meets it with everything found put right
    in_doubt: ReadingFit | None = None  #: the gauge reads less there, within its error

    @property
    def nearest(self) -> Remedy | None:
        """Where none is enough: the best single repair."""
        return self.short[0] if self.short and not self.remedies else None


@dataclass(frozen=True, slots=True, kw_only=True)
class _Change:
    """A repair that can be made in part, or in full together with others."""

    what: str
    fix: Fix
    says: str
    make: Make
    start: str
    end: Callable[[float], str]
    put_right: tuple[Deviation, ...] = ()
    closed: frozenset[str] = frozenset()
    then: Callable[[Engine], Engine] | None = None
    symptom: bool = False
    assumed: bool = False
    whole: bool = False  #: nobody would do it in part

    def in_words(self, way: float) -> str:
        """What is done, as an order where nobody knows the place yet."""
        if self.fix is k.LEAK:
            part = "all of it" if way > NEARLY_ALL else f"at least {100 * way:.0f} % of it"
            return f"find what takes the pressure not explained yet, and cure {part}"
        return self.says if self.assumed else f"{self.says} {self.start} -> {self.end(way)}"


def minimum_change(forecast: Forecast, target: Target) -> MinimumChange:
    """Find the repairs of the engine as found that meet a target hot."""
    met = forecast.chance(target, forecast.before)
    if met >= ENOUGH:
        return MinimumChange(
            target=target,
            met=met,
            remedies=(),
            together=(),
            short=(),
            mended=met,
            in_doubt=forecast.state.short_of(target.pressure, target.rpm, forecast.hot_temperature),
        )
    now = float(np.mean(forecast.hot_pressure(forecast.before, target.rpm)))
    changes = [
        *_found(forecast), *_guessed(forecast), *_leak(forecast), *_oil(forecast),
        *_more_pressure(forecast),
    ]  # fmt: skip
    tried = [_single(c, forecast, target) for c in changes]
    good = sorted((r for r in tried if r.met >= ENOUGH), key=_order)
    short = sorted(
        (r for r in tried if r.met < ENOUGH and r.after.mean > now + WORTH),
        key=lambda r: (r.symptom, r.assumed, -r.met, -r.after.mean),
    )
    enough = any(not (r.symptom or r.assumed) for r in good)
    together = () if enough else _together(changes, forecast, target)
    mended = forecast.state.engine(put_right={d.id for d in forecast.found})
    return MinimumChange(
        target=target,
        met=met,
        remedies=tuple(good),
        together=together,
        short=tuple(short),
        mended=float(_share_met(_pressure(mended, forecast, target), target)),
    )


def _order(remedy: Remedy) -> tuple[bool, bool, float]:
    return remedy.symptom, remedy.assumed, remedy.way


# ---------------------------------------------------------------------------- what is tried


def _found(forecast: Forecast) -> Iterator[_Change]:
    """Restore what was found wrong towards its value on a sound engine."""
    wrong_here = wrong(forecast.state)
    for fix in k.ALL:
        found = rights_of(fix, wrong_here)
        ends = [_ends(forecast, p) for p in dict.fromkeys(d.parameter for d in found) if p]
        off = [e for e in ends if not np.allclose(e.start, e.goal, rtol=LESS, atol=0)]
        if off and fix is not k.OIL:
            yield _restored(forecast, fix, off, found)


def _restored(
    forecast: Forecast, fix: Fix, off: Sequence[_Ends], found: tuple[Deviation, ...]
) -> _Change:
    return _Change(
        what=off[0].parameter.id if len(off) == 1 else fix.id,
        fix=fix,
        says=off[0].parameter.says if len(off) == 1 else fix.says,
        make=_towards(forecast.before.engine, off),
        start=", ".join(e.shown(forecast, 0.0) for e in off),
        end=lambda way: ", ".join(e.shown(forecast, way) for e in off),
        put_right=found,
        whole=fix in DONE_IN_FULL,
    )


def _guessed(forecast: Forecast) -> Iterator[_Change]:
    """Close the loss nobody has found, if it is where a repair is made."""
    for fix in k.ALL:
        closed = closed_by(fix, forecast.state)
        if closed and not (fix in NOT_ON_A_GUESS or rights_of(fix, forecast.state.found)):
            engine = forecast.state.engine(closed=closed)
            yield _Change(
                what=fix.id,
                fix=fix,
                says=fix.says,
                make=_always(engine),
                start="as it is",
                end=_always("as it should be"),
                closed=closed,
                assumed=True,
            )


def _always(value: T) -> Callable[[object], T]:
    """A function that gives ``value`` whatever it is asked."""
    return lambda _: value


def _leak(forecast: Forecast) -> Iterator[_Change]:
    """Close the loss nobody has found yet."""
    if forecast.unlisted is None or forecast.unlisted.mean < PSI:
        return
    yield _Change(
        what="unlisted_leak",
        fix=k.LEAK,
        says="the loss not found yet",
        make=lambda way: forecast.state.engine(share=1.0 - np.asarray(way)),
        start="100 %",
        end=lambda way: f"{100 * (1 - way):.0f} %",
        closed=frozenset(KINDS),
    )


def _oil(forecast: Forecast) -> Iterator[_Change]:
    """Change to each of the usual grades that is thicker than what is in it."""
    engine, viscosity = forecast.before.engine, CIRCUIT_PARAMETERS["viscosity_at_100c"]
    now, usual = (float(np.median(np.asarray(e.oil.kv100))) for e in (engine, forecast.sound))
    found = rights_of(k.OIL, wrong(forecast.state))
    for grade in GRADES:
        oil = Oil.of_grade(grade)
        thickness = float(np.asarray(oil.kv100))
        if thickness <= THICKER * now:
            continue
        thick = thickness > THICK * usual
        yield _Change(
            what="oil",
            fix=k.OIL,
            says="thicker oil" if thick else "fresh oil",
            make=_always(replace(engine, oil=oil)),
            start=viscosity.shown(now),
            end=_always(f"{grade} ({show(thickness, viscosity.dimension, 'cSt')})"),
            put_right=() if thick else found,
            then=partial(replace, oil=oil),
            symptom=thick,
        )


def _more_pressure(forecast: Forecast) -> Iterator[_Change]:
    """Raise relief setting or pump size: pressure without closing a leak."""
    engine = forecast.before.engine
    for name, fix, least, times in (
        ("relief_setting", k.RELIEF, MOST_SETTING, 1.0),
        ("pump_displacement", k.PUMP, 0.0, MOST_PUMP),
    ):
        parameter = CIRCUIT_PARAMETERS[name]
        start = _column(forecast, parameter.read(engine))
        ends = _Ends(parameter, start, np.maximum(times * start, least))
        yield _Change(
            what=name,
            fix=fix,
            says=parameter.says,
            make=_towards(engine, [ends]),
            start=ends.shown(forecast, 0.0),
            end=partial(ends.shown, forecast),
            then=ends.applied_to,
            symptom=True,
        )


@dataclass(frozen=True, slots=True)
class _Ends:
    """A parameter from what is there to as far as is sensible, a row for each engine."""

    parameter: CircuitParameter
    start: FloatArray
    goal: FloatArray

    def at(self, way: Floats) -> FloatArray:
        value = self.start + way * (self.goal - self.start)
        return np.clip(value, *self.parameter.plausible)

    def applied_to(self, engine: Engine, way: Floats = 1.0) -> Engine:
        return self.parameter.apply(engine, self.at(way))

    def shown(self, forecast: Forecast, way: float) -> str:
        measured = as_measured(forecast.found, self.parameter)
        value = self.at(way) if way or measured is None else measured
        return self.parameter.shown(value, forecast.units.get(self.parameter.id))


def _ends(forecast: Forecast, parameter: CircuitParameter) -> _Ends:
    start, goal = (
        _column(forecast, parameter.read(e)) for e in (forecast.before.engine, forecast.sound)
    )
    return _Ends(parameter, start, goal)


def _towards(engine: Engine, ends: Sequence[_Ends]) -> Make:
    def made(way: Floats) -> Engine:
        changed = engine
        for each in ends:
            changed = each.applied_to(changed, way)
        return changed

    return made


# ------------------------------------------------------------------------ what it comes to


def _single(change: _Change, forecast: Forecast, target: Target) -> Remedy:
    """The first step of a change that is enough, else the last."""
    way = np.linspace(0, 1, STEPS + 1)[1:, None, None]
    pressure = _pressure(change.make(way), forecast, target)
    pressure = np.broadcast_to(pressure, (STEPS, *pressure.shape[-2:]))
    met = np.atleast_1d(_share_met(pressure, target))
    at = STEPS - 1
    if met.max() >= ENOUGH and not change.whole:
        at = int(np.argmax(met >= ENOUGH))
    share = float(way[at].item())
    return Remedy(
        what=change.what,
        fixes=(change.fix,),
        says=change.in_words(share),
        start=change.start,
        end=change.end(share),
        way=share,
        symptom=change.symptom,
        assumed=change.assumed,
        found=bool(change.put_right),
        met=float(met[at]),
        after=Band.of(pressure[at]),
    )


def _together(changes: Sequence[_Change], forecast: Forecast, target: Target) -> tuple[Remedy, ...]:
    """The fewest repairs that meet the target together, in full; with a symptom only at need."""
    every = [c for c in changes if not c.assumed]
    plain = [c for c in every if not c.symptom]
    for pool, most in ((plain, MOST_TOGETHER), (every, 2)):
        for count in range(2, most + 1):
            tried = (
                _made_together(each, forecast, target)
                for each in combinations(pool, count)
                if len({c.fix for c in each}) == count and sum(c.symptom for c in each) < 2
            )
            if good := sorted((r for r in tried if r.met >= ENOUGH), key=lambda r: -r.met):
                return tuple(good)
    return ()


def _made_together(changes: Sequence[_Change], forecast: Forecast, target: Target) -> Remedy:
    engine = forecast.state.engine(
        put_right={d.id for c in changes for d in c.put_right},
        closed=frozenset[str]().union(*(c.closed for c in changes)),
    )
    for each in changes:
        engine = each.then(engine) if each.then else engine
    pressure = _pressure(engine, forecast, target)
    return Remedy(
        what=" + ".join(c.what for c in changes),
        fixes=tuple(c.fix for c in changes),
        says=" and ".join(c.in_words(1.0) for c in changes),
        start="",
        end="",
        way=1.0,
        symptom=any(c.symptom for c in changes),
        met=float(_share_met(pressure, target)),
        after=Band.of(pressure),
    )


def _pressure(engine: Engine, forecast: Forecast, target: Target) -> FloatArray:
    """Hot gallery pressure at the target's speed [Pa], (..., engines, 1)."""
    state = solve(engine, np.array([target.rpm]), forecast.hot_temperature)
    return np.asarray(state.gallery_pressure)


def _share_met(pressure: FloatArray, target: Target) -> FloatArray:
    """Return the share of engines that meet the target, for each step."""
    return np.asarray(np.mean(pressure >= target.pressure, axis=(-2, -1)))


def _column(forecast: Forecast, value: Floats) -> FloatArray:
    """Return the value as a column, one row for each engine."""
    engines = len(np.asarray(forecast.before.hot.gallery_pressure))
    return np.asarray(value) * np.ones((engines, 1))
