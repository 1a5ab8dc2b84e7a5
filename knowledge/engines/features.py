"""How an engine is arranged: facts that decide which causes it can have at all."""

from knowledge import sources
from knowledge.model import Finding, Kind, Source, Stage, Station
from knowledge.sources import COMMON_PRACTICE


def feature(id_: str, says: str, asks: str, source: Source = COMMON_PRACTICE) -> Finding:
    """A fact of layout; absent unless the layout profile or the person says otherwise."""
    return Finding(
        id=id_,
        station=Station.ASSEMBLY,
        says=says,
        asks=asks,
        source=source,
        kind=Kind.LAYOUT,
        stage=Stage.KNOWN,
    )


PUMP_ON_DISTRIBUTOR_SHAFT = feature(
    "pump_on_distributor_shaft",
    "an in-sump gear pump turned through the distributor or cam shaft",
    "Does the distributor (or a stub shaft in its place) turn the oil pump?",
    sources.ENGINE_BUILDER_2009,
)
PUMP_ON_SKEW_GEAR = feature(
    "pump_on_skew_gear",
    "a pump on a skew gear from the camshaft of an in-line engine",
    "Is the pump driven by its own skew gear on the camshaft?",
)
PUMP_ON_CRANK_NOSE = feature(
    "pump_on_crank_nose",
    "a gear or gerotor pump in the front cover, on the crank or cam nose",
    "Does the pump sit in or behind the front cover, around the crankshaft?",
    sources.PRE_OILING_ARTICLE,
)
PUMP_OUTSIDE = feature(
    "pump_outside",
    "an external or gear-train pump",
    "Is the pump bolted outside the block, or driven by the timing gears?",
)
PUMP_ON_CHAIN = feature(
    "pump_on_chain", "a pump driven by its own chain", "Is the pump driven by a chain and sprocket?"
)
DRY_SUMP = feature(
    "dry_sump", "a dry sump or remote oil tank", "Does the engine keep its oil in a separate tank?"
)
CHAIN_TENSIONERS = feature(
    "chain_tensioners",
    "overhead cams with oil-fed chain tensioners",
    "Are there oil-fed timing-chain tensioners?",
)
OVERHEAD_CAM = feature("overhead_cam", "an overhead camshaft", "Is the camshaft in the head?")
TURBOCHARGED = feature("turbocharged", "a turbocharger", "Is there a turbocharger?")
TILTS = feature(
    "tilts",
    "an inclined or heeling installation",
    "Does the engine sit inclined, heel, or work on slopes (boat, tractor)?",
)
STRESSED_SUMP = feature(
    "stressed_sump",
    "a sump that carries the front axle or the gearbox",
    "Does the sump carry the front axle or the gearbox, as on many tractors?",
)
ELECTRIC_GAUGE = feature(
    "electric_gauge",
    "an electric gauge with a sender",
    "Is the oil gauge electric, with a sender on the engine?",
)
DIRECT_GAUGE = feature(
    "direct_gauge",
    "a direct gauge fed by an oil line",
    "Does a thin oil line run up to the gauge?",
)
LAMP_ONLY = feature(
    "lamp_only", "a warning lamp and no gauge", "Is there only a warning lamp or buzzer?"
)
HYDRAULIC_LIFTERS = feature(
    "hydraulic_lifters", "hydraulic lifters", "Are the lifters (tappets) hydraulic?"
)
PUSHROD_ENGINE = feature(
    "pushrod_engine", "a camshaft in the block", "Is the camshaft in the block, with pushrods?"
)
VEE_ENGINE = feature("vee_engine", "cylinders in a vee", "Is it a vee engine?")
IN_A_BOAT = feature("in_a_boat", "an engine in a boat", "Is the engine in a boat?")
IN_A_TRACTOR = feature("in_a_tractor", "an engine in a tractor", "Is the engine in a tractor?")
IN_A_VEHICLE = feature(
    "in_a_vehicle",
    "an engine in a road vehicle",
    "Is the engine in a car, truck or motorcycle?",
)
STATIONARY = feature(
    "stationary",
    "a stationary engine",
    "Does the engine stand in one place, as in a generator set or a winch?",
)
#: where an engine works: one of these rules out the others
PLACES = (IN_A_BOAT, IN_A_TRACTOR, IN_A_VEHICLE, STATIONARY)
DIESEL = feature("diesel", "a diesel engine", "Is it a diesel?")
WATER_COOLED = feature("water_cooled", "water cooling", "Is the engine water-cooled?")
OIL_COOLER = feature("oil_cooler", "an oil cooler", "Is there an oil cooler?")
REMOTE_FILTER = feature(
    "remote_filter", "a remote filter on hoses", "Is the filter mounted away, on hoses?"
)
MECHANICAL_LIFT_PUMP = feature(
    "mechanical_lift_pump",
    "a fuel pump with a diaphragm on the block",
    "Is there a mechanical fuel pump on the block?",
)
RELIEF_OUTSIDE = feature(
    "relief_outside",
    "a relief valve reached from outside",
    "Can the relief valve be taken out without opening the engine?",
)
PLASTIC_TIMING_GEAR = feature(
    "plastic_timing_gear",
    "plastic- or fibre-toothed timing gear",
    "Has this engine family plastic or fibre teeth on a timing gear?",
)
PRESSED_PICKUP = feature(
    "pressed_pickup",
    "a pickup tube pressed into the pump",
    "Is the pickup tube a press fit?",
    sources.TRUCK_SERVICE_1994,
)
WINDAGE_TRAY = feature("windage_tray", "a windage tray", "Is there a windage tray?")
PISTON_JETS = feature("piston_jets", "piston cooling jets", "Are there piston cooling jets?")
FLOATING_PICKUP = feature(
    "floating_pickup",
    "a floating pickup",
    "Does the pickup float on the oil?",
    sources.ARMY_TM_8000_PUMPS,
)
GAUGE_LIKE_A_LAMP = feature(
    "gauge_like_a_lamp",
    "a panel gauge that only shows mid-scale above a few psi, like a lamp",
    "Is the panel gauge built to show mid-scale at any pressure above a few psi?",
)
COOLER_ON_SUCTION = feature(
    "cooler_on_suction",
    "a cooler or filter on the suction side of the pump",
    "Does the pump suck its oil through a cooler or filter?",
)
