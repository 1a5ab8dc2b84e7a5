"""Predicted gauge pressures before and after a planned repair, and its costs.

Plausible engines that show what the gauge shows, with everything found on them, are solved before
and after the change, cold and hot, over speed. What no finding explains stays as a loss nobody has
found yet.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import reduce

import numpy as np

from diagnose.case.case import Case
from diagnose.case.mended import AS_SOUND
from diagnose.case.units import units_of
from diagnose.circuit.after_repair import as_it_runs
from diagnose.circuit.as_read import AsRead, as_read
from diagnose.circuit.band import Band
from diagnose.circuit.deviations import Deviation, deviations, sound_engines
from diagnose.circuit.fixes import Planned
from diagnose.circuit.fixes import repaired as righted
from diagnose.circuit.operating_points import (
    COLD_START,
    CRUISE,
    as_if_read,
    fixed_speed,
    is_certain,
    is_hot,
    latest_readings,
    points_of,
)
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS, NAMES
from diagnose.circuit.settings import Setting
from diagnose.circuit.worth_reading import Further, WithinReach, within_reach
from diagnose.hydraulics.circuit import State, solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.pump import drive_torque, shaft_power
from diagnose.hydraulics.ranges import FloatArray
from knowledge.engines.features import DIESEL
from knowledge.limits import Limit
from knowledge.model import Source
from knowledge.model import State as FeatureState
from knowledge.pressure.gauge import PSI_PER_1000, SPEED
from knowledge.pressure.quantities import (
    HOT_IDLE_PRESSURE,
    HOT_RUNNING_PRESSURE,
    STOP_RUNNING_PRESSURE,
    USUAL_IDLE_SPEED,
)
from knowledge.units import LENGTH, unit_in

ENGINES, SEED = 48, 11
COLD_EFFICIENCY, HOT_EFFICIENCY = 0.6, 0.85  #: of the pump's drive (judgement)
PETROL_SPEEDS = (1000.0, 1500.0, 2000.0, 3000.0, 4000.0, 5000.0, 6000.0)
DIESEL_SPEEDS = (1000.0, 1500.0, 2000.0, 2500.0)
BEYOND = 1.6  #: times the fastest speed read or wanted: nothing is known above (judgement)
HORSEPOWER = 745.7  #: W
RUNNING_SPEED = 2000.0  #: rpm that a maker's figure of the running engine is for


@dataclass(frozen=True, slots=True)
class Target:
    """The least pressure [Pa] wanted at a speed [rpm], hot."""

    rpm: float
    pressure: float
    says: str
    source: Source | None = None  #: of a usual figure; None where it is the engine's own


@dataclass(frozen=True, slots=True, kw_only=True)
class Prediction:
    """Plausible engines at every speed, before or after the change; arrays (engines, speeds)."""

    engine: Engine
    hot: State
    cold: State

    def power(self, rpm: FloatArray, cold: bool = False) -> FloatArray:
        """Return the power to turn the pump [W]."""
        state, efficiency = (self.cold, COLD_EFFICIENCY) if cold else (self.hot, HOT_EFFICIENCY)
        e = self.engine
        speed = rpm / 60 * e.pump_drive_ratio
        return np.asarray(shaft_power(e.pump_displacement, speed, state.pump_pressure, efficiency))

    def torque(self, cold: bool = False) -> FloatArray:
        """Return the torque on the pump's shaft [N·m]."""
        state, efficiency = (self.cold, COLD_EFFICIENCY) if cold else (self.hot, HOT_EFFICIENCY)
        turning = drive_torque(self.engine.pump_displacement, state.pump_pressure)
        return np.asarray(turning / efficiency)


@dataclass(frozen=True, slots=True, kw_only=True)
class Forecast:
    """Before and after, what was found and what was set, at which speeds and temperatures."""

    case: Case
    repaired: bool  #: the engine was started after the repair: ``case`` is as it runs since
    settings: tuple[Setting, ...]
    plans: tuple[Planned, ...]  #: repairs in trade words, made before ``settings``
    found: tuple[Deviation, ...]
    speeds: FloatArray  #: [rpm], idle first
    hot_temperature: float
    sound: Engine  #: plausible engines without fault
    state: AsRead  #: the engines as they are now, beside the readings
    before: Prediction
    after: Prediction
    targets: tuple[Target, ...]
    unlisted: Band | None  #: what a loss nobody has found takes at hot idle [Pa]
    limits: Mapping[Limit, float]
    units: Mapping[str, str]  #: the unit each measured thing was written in
    reach: WithinReach  #: where a further reading can be taken
    further: Further  #: narrow the pressure at one of ``targets`` most

    @property
    def changed(self) -> frozenset[str]:
        """Ids of the findings put right and of what is set."""
        righted = (d.id for p in self.plans for d in p.rights(self.state))
        return frozenset((*(s.id for s in self.set_to), *righted))

    @property
    def set_to(self) -> tuple[Setting, ...]:
        """Every quantity that is set to a value."""
        return (*(p.setting for p in self.plans if p.setting), *self.settings)

    @property
    def fits(self) -> bool:
        """Whether ``before`` agrees with every reading; if not, no figure here is worth anything."""
        return self.state.fits

    def chance(self, target: Target, prediction: Prediction) -> float:
        """Return the share of plausible engines that meet a target."""
        return float(np.mean(pressure_at(prediction, self.speeds, target.rpm) >= target.pressure))

    def hot_pressure(self, prediction: Prediction, rpm: float) -> FloatArray:
        """Hot gallery pressure at the computed speed next to ``rpm`` [Pa], shape (engines,).

        ``prediction``: ``self.before`` or ``self.after``.
        """
        return pressure_at(prediction, self.speeds, rpm)


def forecast(
    case: Case,
    settings: Sequence[Setting],
    target: Target | None = None,
    engines: int = ENGINES,
    seed: int = SEED,
    plans: Sequence[Planned] = (),
) -> Forecast:
    """Predict the case's engine before and after the changes, over plausible engines.

    ``plans``: repairs in trade words; ``settings``: quantities by name, set after those.
    """
    rng, repaired = np.random.default_rng(seed), bool(case.start_readings)
    case = as_it_runs(case)
    sound = sound_engines(case, engines, rng)
    state = as_read(case, sound, deviations(case, engines, rng), rng)
    point = points_of(case)[0]
    limits = {x: case.limit(x) for x in LIMITS} | dict(case.limits)
    targets = (target,) if target else targets_of(case, limits)
    speeds = speeds_of(case, targets)
    hot = point.temperature
    as_found = state.engine()
    before = predict(as_found, speeds, hot)
    after = predict(with_settings(righted(state, plans), settings), speeds, hot)
    units = _shown_units(case)
    reach = within_reach(case, state)
    return Forecast(
        case=case,
        repaired=repaired,
        settings=tuple(settings),
        plans=tuple(plans),
        found=state.found,
        speeds=speeds,
        hot_temperature=hot,
        sound=state.sound,
        state=state,
        before=before,
        after=after,
        targets=targets,
        unlisted=state.lost(point.rpm, hot),
        limits=limits,
        units=units,
        reach=reach,
        further=reach.further(_asked(after, speeds, targets)),
    )


def _asked(after: Prediction, speeds: FloatArray, targets: Sequence[Target]) -> FloatArray:
    """The pressures at the speeds of the targets [Pa], shape (engines, targets)."""
    return np.column_stack([pressure_at(after, speeds, t.rpm) for t in targets])


def with_other_changes(
    known: Forecast, settings: Sequence[Setting], plans: Sequence[Planned] = ()
) -> Forecast:
    """Predict other changes to the engine of a forecast; what it is now is not solved again."""
    changed = with_settings(righted(known.state, plans), settings)
    after = predict(changed, known.speeds, known.hot_temperature)
    further = known.reach.further(_asked(after, known.speeds, known.targets))
    return replace(
        known, settings=tuple(settings), plans=tuple(plans), after=after, further=further
    )


def without_readings(known: Forecast) -> Forecast:
    """The same changes to engines of this kind with what was measured, whatever the gauge read."""
    bare = replace(known.case, readings=(), start_readings=())
    target = known.targets[0] if len(known.targets) == 1 else None
    return forecast(bare, known.settings, target, plans=known.plans)


LIMITS = (HOT_IDLE_PRESSURE, USUAL_IDLE_SPEED, STOP_RUNNING_PRESSURE)


def parameter_units(case: Case) -> dict[str, str]:
    """Return the unit each measured parameter of the circuit was written in, by id."""
    named = ((NAMES.get(m.measure.id), m.entry.value or "") for m in case.measurements)
    found = ((k.id, unit_in(text, k.dimension)) for k, text in named if k)
    return {name: unit for name, unit in found if unit}


def _shown_units(case: Case) -> dict[str, str]:
    """The unit each parameter is shown in: all lengths in that of the job, the rest as measured."""
    job = units_of(case).shown_in(LENGTH)
    lengths = {n: job for n, p in CIRCUIT_PARAMETERS.items() if job and p.dimension is LENGTH}
    return parameter_units(case) | lengths


def with_settings(engine: Engine, settings: Sequence[Setting]) -> Engine:
    """Return the engine with every change made, in the order given."""
    return reduce(lambda e, s: s.applied_to(e), settings, engine)


def predict(engine: Engine, speeds: FloatArray, hot: float) -> Prediction:
    """Solve the engine at every speed, hot and cold."""
    return Prediction(
        engine=engine, hot=solve(engine, speeds, hot), cold=solve(engine, speeds, COLD_START)
    )


def speeds_of(case: Case, targets: Sequence[Target] = ()) -> FloatArray:
    """Return the speeds looked at [rpm].

    Idle, those wanted, those read, and those usual between and a little beyond.
    """
    diesel = case.known_features.get(DIESEL) is FeatureState.PRESENT
    idle = case.idle_speed
    asked = {idle, *(t.rpm for t in targets)}
    looked = [r.reading for r in latest_readings(case) if is_hot(r.reading)]
    read = {r.rpm for r in looked if is_certain(as_if_read(r))}
    asked |= {n for n in read if not _near(n, asked)}
    fixed = fixed_speed(case)
    usual = {n for n in (DIESEL_SPEEDS if diesel else PETROL_SPEEDS) if n > idle}
    top = fixed or BEYOND * max({n for n in asked if n > SPEED}, default=CRUISE)
    usual = {n for n in usual if n < top}
    return np.array(sorted(asked | {n for n in usual if not _near(n, asked)}))


def _near(rpm: float, speeds: Collection[float]) -> bool:
    """Whether a speed is within an eighth of one of ``speeds``."""
    return any(abs(rpm - n) <= n / 8 for n in speeds)


def targets_of(case: Case, limits: Mapping[Limit, float]) -> tuple[Target, ...]:
    """Return the maker's limits at idle and running; else 10 psi for each 1000 rpm at cruise.

    An engine of one speed is judged there alone, by what it showed there when it was sound.
    """
    fixed = fixed_speed(case)
    idle, running = idle_target(case, limits), _running_target(case, limits, fixed or CRUISE)
    if fixed is None:
        return idle, running
    there = [r for r in case.facts().readings if is_hot(r) and _near(r.rpm, [fixed])]
    sound = [AS_SOUND * r.usual for r in there if r.usual is not None]
    if sound and sound[-1] > running.pressure:
        running = Target(fixed, sound[-1], "nine tenths of what it showed when sound")
    return (running, idle) if HOT_IDLE_PRESSURE in case.limits else (running,)


def idle_target(case: Case, limits: Mapping[Limit, float]) -> Target:
    """Return the maker's limit at hot idle, else the usual one."""
    own = HOT_IDLE_PRESSURE in case.limits
    usual = case.usual_limits.get(HOT_IDLE_PRESSURE) or HOT_IDLE_PRESSURE.printed(case.has)[0]
    says = "maker's limit at hot idle" if own else "usual limit at hot idle"
    source = None if own else usual.source
    return Target(case.idle_speed, limits[HOT_IDLE_PRESSURE], says, source)


def _running_target(case: Case, limits: Mapping[Limit, float], cruise: float) -> Target:
    """Return the maker's limit at speed, else the usual one."""
    running = Target(cruise, PSI_PER_1000 * cruise / 1000, "10 psi per 1000 rpm (common practice)")
    if limits[STOP_RUNNING_PRESSURE] > running.pressure:
        running = Target(cruise, limits[STOP_RUNNING_PRESSURE], "stop limit at speed")
    if HOT_RUNNING_PRESSURE in case.limits:
        running = Target(RUNNING_SPEED, case.limits[HOT_RUNNING_PRESSURE], "maker's limit there")
    return running


def pressure_at(prediction: Prediction, speeds: FloatArray, rpm: float) -> FloatArray:
    """Return the hot gallery pressure at one of the speeds, for each engine [Pa]."""
    at = int(np.argmin(np.abs(speeds - rpm)))
    return np.asarray(prediction.hot.gallery_pressure)[:, at]
