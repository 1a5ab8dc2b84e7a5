"""Is the pump enough at hot idle, and what another pump, relief setting or oil buys and costs.

Plausible engines with their clearances, as the readings leave them and without what leaks besides:
no pump is chosen to make up for a leak.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from diagnose.case.case import Case
from diagnose.circuit.as_read import AsRead
from diagnose.circuit.band import Band
from diagnose.circuit.deviations import OIL_GRADE, oil_grade, sound_engines
from diagnose.circuit.engine_model import grade_name
from diagnose.circuit.forecast import (
    COLD_EFFICIENCY,
    ENGINES,
    HOT_EFFICIENCY,
    SEED,
    Forecast,
    Target,
    forecast,
    idle_target,
    with_settings,
)
from diagnose.circuit.oil_choice import (
    OilChoice,
    OilNeed,
    RunAt,
    column,
    oil_choices,
    oil_needs,
)
from diagnose.circuit.operating_points import (
    COLD_SPEED,
    COLD_START,
    fixed_speed,
    is_hot,
    latest_readings,
)
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.circuit.pump_supply import MOST_OF_THEM, Supply, cavitates_from, supply
from diagnose.circuit.relief_spring import ReliefSpring, SpringTest, spring_of
from diagnose.circuit.settings import Setting
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.pump import drive_torque, shaft_power
from knowledge.engines.features import DIESEL
from knowledge.model import State as FeatureState
from knowledge.units import PSI

PETROL_SPEED, DIESEL_SPEED = 3000.0, 2000.0  #: rpm at speed, where no reading is faster


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One choice of pump and relief, and what it gives; SI."""

    id: str
    relief_setting: float  #: [Pa]
    displacement: float  #: [m3/rev]
    larger: float  #: its displacement over that of the engine's own pump [1]
    idle: Band  #: hot idle, gallery [Pa]
    speed: Band  #: at speed, hot [Pa]
    cold: Band  #: cold, at the pump, the most of idle and ``COLD_SPEED`` [Pa]
    power: Band  #: to turn the pump at speed, hot [W]; all of it ends as heat in the oil
    relief_heat: Band  #: of it by way of the relief valve [W]
    torque: Band  #: on the pump's shaft, cold [N·m]
    fills_to: Band | None  #: engine speed from which the pump cavitates hot [rpm]; None: beyond all
    fills_to_cold: Band | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanted:
    """What a person asks to be compared; None: the usual steps."""

    relief: float | None = None  #: another setting [Pa]
    pump: Setting | None = None  #: another displacement
    oils: tuple[str, ...] = ()
    hot: float | None = None  #: K
    cold: float | None = None  #: K
    plunger: float | None = None  #: diameter of the relief's, as measured [m]
    springs: tuple[SpringTest, ...] = ()  #: the relief spring in hand


@dataclass(frozen=True, kw_only=True)
class Sizing:
    """Everything ``sizing`` answers for one case; each part is computed when it is first used."""

    case: Case
    forecast: Forecast
    target: Target
    wanted: Wanted
    engine: Engine  #: plausible engines without what leaks besides their clearances
    leaking: Engine | None  #: as they leak now; None: nothing does, or the readings do not fit
    hot: float  #: K
    cold: float  #: K
    speed: float  #: rpm

    @cached_property
    def supply(self) -> Supply:
        """What the pump delivers, and what the engine takes, at the pressure wanted."""
        return supply(self.engine, self.target, self.hot)

    @cached_property
    def now(self) -> Supply | None:
        """The same as it leaks now."""
        return supply(self.leaking, self.target, self.hot) if self.leaking else None

    @cached_property
    def choices(self) -> tuple[Choice, ...]:
        """As it is, leaks put right, another relief setting, another pump."""
        return tuple(_choices(self.leaking, self.engine, self.wanted, self._run_at))

    @cached_property
    def oils(self) -> tuple[OilChoice, ...]:
        """The grades asked for and the one in it, thinnest first."""
        own = grade_name(self.case)
        wrong = any(d.id == OIL_GRADE for d in self.forecast.found)
        return oil_choices(
            self.engine,
            own,
            oil_grade(self.case) if wrong else own,
            self.wanted.oils,
            self.target,
            self._run_at,
        )

    @cached_property
    def thicker(self) -> tuple[OilChoice, OilChoice] | None:
        """The oil in it and the next thicker one of those compared, in the engine as it leaks now.

        None where the oil in it gives the pressure wanted, or none is thicker.
        """
        now = self.engine if self.leaking is None else self.leaking
        own = next((o for o in self.oils if o.in_it), None)
        more = [o.grade for o in self.oils if own and o.idle.mean > own.idle.mean]
        if own is None or not more:
            return None
        both = oil_choices(
            now, own.grade, own.grade, (own.grade, *more[:1]), self.target, self._run_at
        )
        has, gets = sorted(both, key=lambda o: not o.in_it)
        return (has, gets) if has.chance < MOST_OF_THEM else None

    @cached_property
    def needs(self) -> tuple[OilNeed, ...]:
        """The thinnest grade that does, by clearance and oil temperature."""
        return oil_needs(self.engine, self.target)

    @cached_property
    def spring(self) -> ReliefSpring:
        """The relief valve's spring, as it is in a sound engine, whatever a faulty one shows."""
        asked = self.wanted
        rng = np.random.default_rng(SEED)
        sound = with_settings(sound_engines(self.case, ENGINES, rng), self.forecast.settings)
        return spring_of(self.case, sound, asked.relief, asked.plunger, asked.springs)

    @property
    def _run_at(self) -> RunAt:
        return RunAt(idle=self.target.rpm, speed=self.speed, hot=self.hot, cold=self.cold)

    @property
    def thinnest(self) -> OilChoice | None:
        """The thinnest of the grades that meets the pressure wanted."""
        return next((o for o in self.oils if o.chance >= MOST_OF_THEM), None)


#: the choices compared
NOW, RIGHT, AS_IT_IS, RELIEF, PUMP = "now", "put_right", "as_it_is", "relief", "pump"
MORE_RELIEF = 10 * PSI  #: usual step of a setting
MORE_PUMP = 1.25  #: usual step of a pump: a high-volume one (common practice)


def sizing(
    case: Case,
    settings: Sequence[Setting] = (),
    target: Target | None = None,
    wanted: Wanted | None = None,
    engines: int = ENGINES,
) -> Sizing:
    """Compare pumps, relief settings and oils on plausible engines of a case.

    ``settings``: what is planned anyway. ``target``: the pressure wanted hot; that of the engine's
    limit at idle unless given; ``engines``: how many plausible ones. Raises UsageError where the
    case names no circuit.
    """
    asked = wanted or Wanted()
    found = forecast(case, settings, target, engines)
    aim = target or idle_target(case, found.limits)
    hot, cold = asked.hot or found.hot_temperature, asked.cold or COLD_START
    engine = with_settings(put_right(found.state), settings)
    leaks = found.fits and found.state.loss is not None
    return Sizing(
        case=case,
        forecast=found,
        target=aim,
        wanted=asked,
        engine=engine,
        leaking=found.after.engine if leaks else None,
        hot=hot,
        cold=cold,
        speed=_speed(case),
    )


def put_right(state: AsRead) -> Engine:
    """Return the engines with their clearances and oil, and without all that leaks besides."""
    besides = [d.id for d in state.found if d.parameter is not None and not d.parameter.gap]
    return state.engine(put_right=besides, closed=state.kinds)


def _speed(case: Case) -> float:
    """The engine speed, hot, that choices are compared at [rpm]: the fastest read, else usual."""
    if (fixed := fixed_speed(case)) is not None:
        return fixed
    diesel = case.known_features.get(DIESEL) is FeatureState.PRESENT
    read = [r.reading.rpm for r in latest_readings(case) if is_hot(r.reading)]
    return max([DIESEL_SPEED if diesel else PETROL_SPEED, *read])


def _choices(now: Engine | None, engine: Engine, asked: Wanted, at: RunAt) -> list[Choice]:
    """The engine as it is, put right, with another relief setting, with another pump."""
    setting = asked.relief or float(np.median(np.asarray(engine.relief_setting))) + MORE_RELIEF
    resized = (
        asked.pump.applied_to(engine)
        if asked.pump
        else CIRCUIT_PARAMETERS["pump_displacement"].apply(
            engine, MORE_PUMP * np.asarray(engine.pump_displacement)
        )
    )
    raised = np.asarray(engine.relief_setting) * setting / np.median(engine.relief_setting)
    every = [
        *([(NOW, now)] if now is not None else []),
        (RIGHT if now is not None else AS_IT_IS, engine),
        (RELIEF, replace(engine, relief_setting=raised)),
        (PUMP, resized),
    ]
    own = float(np.median(np.asarray(engine.pump_displacement)))
    return [_choice(id_, each, own, at) for id_, each in every]


def _choice(id_: str, engine: Engine, own: float, at: RunAt) -> Choice:
    states = solve(engine, np.array([at.idle, at.speed]), at.hot)
    chilled = solve(engine, np.array([at.idle, COLD_SPEED]), at.cold).pump_pressure
    cold = np.max(np.asarray(chilled), axis=-1, keepdims=True)
    pump = np.asarray(engine.pump_displacement)
    turns = at.speed / 60 * np.asarray(engine.pump_drive_ratio)
    outlet = column(states.pump_pressure, 1)
    power = shaft_power(pump, turns, outlet, HOT_EFFICIENCY)
    by_relief = outlet * column(states.flows.relief, 1)
    torque = drive_torque(pump, cold) / COLD_EFFICIENCY
    size = float(np.median(pump))
    return Choice(
        id=id_,
        relief_setting=float(np.median(np.asarray(engine.relief_setting))),
        displacement=size,
        larger=size / own,
        idle=Band.of(column(states.gallery_pressure, 0)),
        speed=Band.of(column(states.gallery_pressure, 1)),
        cold=Band.of(cold),
        power=Band.of(np.asarray(power)),
        relief_heat=Band.of(by_relief),
        torque=Band.of(np.asarray(torque)),
        fills_to=cavitates_from(engine, at.hot),
        fills_to_cold=cavitates_from(engine, at.cold),
    )
