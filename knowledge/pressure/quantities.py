"""Pressure and speed of the running engine, with the pressures it should show."""

from knowledge import sources
from knowledge.engines import features, features_build, features_kinds
from knowledge.figures import TACHOMETER
from knowledge.limits import Figure, Limit, Printed, Side
from knowledge.model import Quantity, Source
from knowledge.sources import COMMON_PRACTICE, FROM_MEMORY, JUDGEMENT, idea_from
from knowledge.units import PSI

#: as a gauge shows it; its error depends on the gauge, see ``gauge.spread_of``
OIL_PRESSURE = Quantity(
    id="oil_pressure",
    says="oil pressure",
    dimension="pressure",
    plausible=(0.0, 300 * PSI),
    source=JUDGEMENT,
)
#: from being cranked to the fastest small engines
ENGINE_SPEED = Quantity(
    id="engine_speed",
    says="engine speed",
    dimension="speed",
    plausible=(50.0, 20_000.0),
    source=JUDGEMENT,
)
IDLE_SPEED = Quantity(
    id="idle_speed_counted",
    says="idle speed by a trusted counter",
    dimension="speed",
    plausible=(150.0, 2500.0),
    spread=TACHOMETER,
    source=JUDGEMENT,
)

#: layouts whose valves stand beside the cylinders
_SIDE_VALVES = ("side_valve", "side_valve_v8")


def _of_side_valves(psi: float, source: Source) -> dict[str, Figure]:
    return dict.fromkeys(_SIDE_VALVES, Figure(psi * PSI, "side-valve engines", source))


def _of_trough(psi: float) -> tuple[Printed, ...]:
    """A pump that fills troughs makes a few psi; where dippers alone do it, a gauge shows none."""
    of = "low-pressure pump that fills troughs"
    return tuple(
        Printed(value=psi * PSI, of=of, source=FROM_MEMORY, only_with=(kind,), before_layout=True)
        for kind in (features_kinds.TROUGH_FED, *features_kinds.UNPRESSURED)
    )


def _of_roller_crank(psi: float) -> Printed:
    return Printed(
        value=psi * PSI,
        of="V-twin motorcycles on rollers",
        source=idea_from(sources.ROLLER_V_TWIN_PRESSURES),
        only_with=(features_kinds.ROLLER_BIG_ENDS,),
        not_with=(features.DIESEL,),
        before_layout=True,
    )


#: two-stage pumps hold so much in their low stage, from 1000 to 2650 rpm
_LOW_STAGE = Printed(
    value=110e3,
    of="low stage of a two-stage pump",
    source=sources.VARIABLE_PUMP_2021,
    only_with=(features_build.VARIABLE_PUMP,),
    before_layout=True,
)
# Some writers call 10 psi of concern already and want 15 to 20; many engines live with 10.
HOT_IDLE_PRESSURE = Limit(
    id="hot_idle_pressure",
    says="lowest pressure allowed at hot idle",
    quantities=(OIL_PRESSURE,),
    side=Side.LEAST,
    typical=10 * PSI,
    source=COMMON_PRACTICE,
    of="any engine",
    # one maker's handbook of 1936 allows none at a hot idle; a gauge should show some
    on_layouts=_of_side_valves(5, idea_from(sources.SIDE_VALVE_HANDBOOK_1936)),
    others=(*_of_trough(1), _of_roller_crank(3)),
)
STOP_IDLE_PRESSURE = Limit(
    id="stop_idle_pressure",
    says="stop the engine below this at idle",
    quantities=(OIL_PRESSURE,),
    side=Side.LEAST,
    typical=7 * PSI,
    source=COMMON_PRACTICE,
    of="any engine",
    on_layouts=_of_side_valves(3, idea_from(sources.SIDE_VALVE_HANDBOOK_1936)),
    others=(
        *_of_trough(1),
        _of_roller_crank(2),
        Printed(
            value=41e3,
            of="variable pump, at any speed",
            source=sources.VARIABLE_PUMP_2011,
            only_with=(features_build.VARIABLE_PUMP,),
            before_layout=True,
        ),
        Printed(
            value=7 * PSI,
            of="small tractor diesel",
            source=sources.TRACTOR_WORKSHOP_MANUAL,
            only_with=(features.DIESEL, features.IN_A_TRACTOR),
        ),
        Printed(
            value=6 * PSI,
            of="diesel V8 truck",
            source=sources.ARMY_TM_280_LIMITS,
            only_with=(features.DIESEL, features.VEE_ENGINE),
        ),
    ),
)
DIESEL_AT_SPEED = Printed(
    value=0.2e6,
    of="diesel at working speed",
    source=sources.DIESEL_CASE_NOTE,
    only_with=(features.DIESEL,),
)
#: 10 psi for each 1000 rpm, at 2000 rpm
STOP_RUNNING_PRESSURE = Limit(
    id="stop_running_pressure",
    says="stop the engine below this at 2000 rpm or more",
    quantities=(OIL_PRESSURE,),
    side=Side.LEAST,
    typical=20 * PSI,
    source=sources.TEN_PSI_RULE_2009,
    of="rule of thumb, at 2000 rpm",
    on_layouts=_of_side_valves(10, idea_from(sources.SIDE_VALVE_GENERATOR)),
    others=(*_of_trough(1), _of_roller_crank(4), _LOW_STAGE, DIESEL_AT_SPEED),
)
#: the same rule; where a maker prints another figure, it is for 2000 rpm
HOT_RUNNING_PRESSURE = Limit(
    id="hot_running_pressure",
    says="lowest pressure allowed hot at 2000 rpm",
    quantities=(OIL_PRESSURE,),
    side=Side.LEAST,
    typical=20 * PSI,
    source=sources.TEN_PSI_RULE_2009,
    of="rule of thumb, at 2000 rpm",
    on_layouts=_of_side_valves(15, idea_from(sources.SIDE_VALVE_GENERATOR)),
    others=(
        *_of_trough(1),
        _of_roller_crank(4),
        _LOW_STAGE,
        # printed at 3000 rpm; its share at 2000 rpm
        Printed(
            value=2 / 3 * 350e3,
            of="rotary engine, two thirds of its figure at 3000 rpm",
            source=idea_from(sources.ROTARY_2004),
            only_with=(features_kinds.ROTARY_PISTON,),
        ),
    ),
)
# Manuals print 670 to 850 rpm for single engines.
USUAL_IDLE_SPEED = Limit(
    id="idle_speed",
    says="idle speed",
    quantities=(IDLE_SPEED,),
    side=Side.NOMINAL,
    typical=700.0,
    source=JUDGEMENT,
    of="any engine",
    on_layouts={
        "side_valve": Figure(400.0, "side-valve tractors", sources.TRACTOR_IDLE_LIST),
        "open_crank": Figure(450.0, "open-crank engines, at their one speed", FROM_MEMORY),
        "slow_diesel": Figure(300.0, "large slow diesels", FROM_MEMORY),
    },
    others=(
        Printed(
            value=600.0,
            of="heavy diesels, and large petrol engines in gear",
            source=COMMON_PRACTICE,
        ),
        Printed(
            value=475.0,
            of="petrol tractors of 1953 to 1964",
            source=sources.TRACTOR_IDLE_LIST,
            only_with=(features.IN_A_TRACTOR,),
            not_with=(features.DIESEL,),
        ),
        Printed(
            value=400.0,
            of="side-valve tractors of 1939 to 1952",
            source=sources.TRACTOR_IDLE_LIST,
            only_with=(features.IN_A_TRACTOR,),
            not_with=(features.DIESEL,),
        ),
    ),
)
