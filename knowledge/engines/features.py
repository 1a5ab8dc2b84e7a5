"""How an engine is arranged: facts that decide which causes it can have at all."""

from knowledge import sources
from knowledge.model import Finding, Kind, Source, Stage, Station
from knowledge.sources import COMMON_PRACTICE


def feature(*, id: str, says: str, asks: str, source: Source = COMMON_PRACTICE) -> Finding:
    """Build a fact of layout; absent unless the layout or the case states it."""
    return Finding(
        id=id,
        station=Station.ASSEMBLY,
        says=says,
        asks=asks,
        source=source,
        kind=Kind.LAYOUT,
        stage=Stage.KNOWN,
    )


PUMP_ON_DISTRIBUTOR_SHAFT = feature(
    id="pump_on_distributor_shaft",
    says="an in-sump gear pump turned through the distributor or cam shaft",
    asks="Does the distributor (or a stub shaft in its place) turn the oil pump?",
    source=sources.ENGINE_BUILDER_2009,
)
PUMP_ON_SKEW_GEAR = feature(
    id="pump_on_skew_gear",
    says="a pump on a skew gear from the camshaft of an in-line engine",
    asks="Is the pump driven by its own skew gear on the camshaft?",
)
PUMP_ON_CRANK_NOSE = feature(
    id="pump_on_crank_nose",
    says="a gear or gerotor pump in the front cover, on the crank nose",
    asks="Does the pump sit in or behind the front cover, around the crankshaft?",
    source=sources.PRE_OILING_ARTICLE,
)
PUMP_ON_CAM_NOSE = feature(
    id="pump_on_cam_nose",
    says="a gear pump on the end of the camshaft, turned by a tongue",
    asks="Is the pump turned by a tongue in the end of the camshaft, as on a flat four?",
)
PUMP_OUTSIDE = feature(
    id="pump_outside",
    says="an external or gear-train pump",
    asks="Is the pump bolted outside the block, or driven by the timing gears?",
)
PUMP_ON_CHAIN = feature(
    id="pump_on_chain",
    says="a pump driven by its own chain",
    asks="Is the pump driven by a chain and sprocket?",
)
PUMP_ON_AUXILIARY_DRIVE = feature(
    id="pump_on_auxiliary_drive",
    says="a pump turned by the gearbox or an auxiliary drive",
    asks="Does the gearbox or an auxiliary drive turn the oil pump?",
)
DRY_SUMP = feature(
    id="dry_sump",
    says="a dry sump or remote oil tank",
    asks="Does the engine keep its oil in a separate tank?",
)
CHAIN_TENSIONERS = feature(
    id="chain_tensioners",
    says="overhead cams with oil-fed chain tensioners",
    asks="Are there oil-fed timing-chain tensioners?",
)
OVERHEAD_CAM = feature(
    id="overhead_cam", says="an overhead camshaft", asks="Is the camshaft in the head?"
)
TURBOCHARGED = feature(id="turbocharged", says="a turbocharger", asks="Is there a turbocharger?")
TILTS = feature(
    id="tilts",
    says="an inclined or heeling installation",
    asks="Does the engine sit at an angle, heel, or work on slopes (boat, tractor)?",
)
STRESSED_SUMP = feature(
    id="stressed_sump",
    says="a sump that carries the front axle or the gearbox",
    asks="Does the sump carry the front axle or the gearbox, as on many tractors?",
)
ELECTRIC_GAUGE = feature(
    id="electric_gauge",
    says="an electric gauge with a sender",
    asks="Is the oil gauge electric, with a sender on the engine?",
)
DIRECT_GAUGE = feature(
    id="direct_gauge",
    says="a direct gauge fed by an oil line",
    asks="Does a thin oil line run up to the gauge?",
)
LAMP_ONLY = feature(
    id="lamp_only",
    says="a warning lamp and no gauge",
    asks="Is there only a warning lamp or buzzer?",
)
GAUGES_AT_TWO_STATIONS = feature(
    id="gauges_at_two_stations",
    says="oil gauges at two stations, such as flybridge and wheelhouse",
    asks="Does each of two stations, such as flybridge and wheelhouse, have an oil gauge?",
)
ONE_SENDER_FOR_TWO_GAUGES = feature(
    id="one_sender_for_two_gauges",
    says="two gauges on one sender, such as a dual-station sender",
    asks="Do the gauges of two stations hang on one sender?",
    source=sources.GAUGE_MAKER_SENDERS,
)
HYDRAULIC_LIFTERS = feature(
    id="hydraulic_lifters", says="hydraulic lifters", asks="Are the lifters (tappets) hydraulic?"
)
PUSHROD_ENGINE = feature(
    id="pushrod_engine",
    says="a camshaft in the block",
    asks="Is the camshaft in the block, with pushrods?",
)
VEE_ENGINE = feature(id="vee_engine", says="cylinders in a vee", asks="Is it a vee engine?")
IN_A_BOAT = feature(id="in_a_boat", says="an engine in a boat", asks="Is the engine in a boat?")
IN_A_TRACTOR = feature(
    id="in_a_tractor", says="an engine in a tractor", asks="Is the engine in a tractor?"
)
IN_A_VEHICLE = feature(
    id="in_a_vehicle",
    says="an engine in a road vehicle",
    asks="Is the engine in a car, truck or motorcycle?",
)
STATIONARY = feature(
    id="stationary",
    says="a stationary engine",
    asks="Does the engine stand in one place, as in a generator set or a winch?",
)
#: where an engine works: one of these rules out the others
PLACES = (IN_A_BOAT, IN_A_TRACTOR, IN_A_VEHICLE, STATIONARY)
DIESEL = feature(id="diesel", says="a diesel engine", asks="Is it a diesel?")
WATER_COOLED = feature(id="water_cooled", says="water cooling", asks="Is the engine water-cooled?")
OIL_COOLER = feature(id="oil_cooler", says="an oil cooler", asks="Is there an oil cooler?")
REMOTE_FILTER = feature(
    id="remote_filter",
    says="a remote filter on hoses",
    asks="Is the filter mounted away, on hoses?",
)
MECHANICAL_LIFT_PUMP = feature(
    id="mechanical_lift_pump",
    says="a fuel pump with a diaphragm on the block",
    asks="Is there a mechanical fuel pump on the block?",
)
RELIEF_OUTSIDE = feature(
    id="relief_outside",
    says="a relief valve reached from outside",
    asks="Can the relief valve be taken out without opening the engine?",
)
PLASTIC_TIMING_GEAR = feature(
    id="plastic_timing_gear",
    says="plastic- or fibre-toothed timing gear",
    asks="Does this engine family have plastic or fibre teeth on a timing gear?",
)
PRESSED_PICKUP = feature(
    id="pressed_pickup",
    says="a pickup tube pressed into the pump",
    asks="Is the pickup tube a press fit?",
    source=sources.TRUCK_SERVICE_1994,
)
WINDAGE_TRAY = feature(id="windage_tray", says="a windage tray", asks="Is there a windage tray?")
PISTON_JETS = feature(
    id="piston_jets", says="piston cooling jets", asks="Are there piston cooling jets?"
)
FLOATING_PICKUP = feature(
    id="floating_pickup",
    says="a floating pickup",
    asks="Does the pickup float on the oil?",
    source=sources.ARMY_TM_8000_PUMPS,
)
GAUGE_LIKE_A_LAMP = feature(
    id="gauge_like_a_lamp",
    says="a panel gauge that only shows mid-scale above a few psi, like a lamp",
    asks="Is the panel gauge built to show mid-scale at any pressure above a few psi?",
)
COOLER_ON_SUCTION = feature(
    id="cooler_on_suction",
    says="a cooler or filter on the suction side of the pump",
    asks="Does the pump draw its oil through a cooler or filter?",
)
