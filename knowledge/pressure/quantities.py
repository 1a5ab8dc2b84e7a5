"""Pressure and speed of the running engine, with the pressures it should show."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import TACHOMETER
from knowledge.limits import Figure, Limit, Printed, Side
from knowledge.model import Quantity
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
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

# Some writers call 10 psi of concern already and want 15 to 20; many engines live with 10.
HOT_IDLE_PRESSURE = Limit(
    id="hot_idle_pressure",
    says="lowest pressure allowed at hot idle",
    quantities=(OIL_PRESSURE,),
    side=Side.LEAST,
    typical=10 * PSI,
    source=COMMON_PRACTICE,
    # one maker's handbook of 1936 allows none at a hot idle; a gauge should show some
    on_layouts={
        "side_valve": Figure(
            5 * PSI, "side-valve engines", idea_from(sources.SIDE_VALVE_HANDBOOK_1936)
        )
    },
)
STOP_IDLE_PRESSURE = Limit(
    id="stop_idle_pressure",
    says="stop the engine below this at idle",
    quantities=(OIL_PRESSURE,),
    side=Side.LEAST,
    typical=7 * PSI,
    source=COMMON_PRACTICE,
    of="any engine",
    on_layouts={
        "side_valve": Figure(
            3 * PSI, "side-valve engines", idea_from(sources.SIDE_VALVE_HANDBOOK_1936)
        )
    },
    others=(
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
    on_layouts={
        "side_valve": Figure(
            10 * PSI, "side-valve engines", idea_from(sources.SIDE_VALVE_GENERATOR)
        )
    },
    others=(DIESEL_AT_SPEED,),
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
    on_layouts={
        "side_valve": Figure(
            15 * PSI, "side-valve engines", idea_from(sources.SIDE_VALVE_GENERATOR)
        )
    },
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
    on_layouts={"side_valve": Figure(400.0, "side-valve tractors", sources.TRACTOR_IDLE_LIST)},
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
