"""Figures an engine maker prints, with a typical value where the case gives none."""

from knowledge import sources
from knowledge.model import Limit
from knowledge.sources import COMMON_PRACTICE
from knowledge.units import INCH, PSI

HOT_IDLE_PRESSURE = Limit(
    id="hot_idle_pressure",
    says="least pressure at hot idle",
    dimension="pressure",
    typical=10 * PSI,
    source=sources.NEWSPAPER_GAUGE_2010,
)
STOP_IDLE_PRESSURE = Limit(
    id="stop_idle_pressure",
    says="stop the engine below this at idle",
    dimension="pressure",
    typical=7 * PSI,
    source=sources.TRACTOR_WORKSHOP_MANUAL,
)
STOP_RUNNING_PRESSURE = Limit(
    id="stop_running_pressure",
    says="stop the engine below this at 2000 rpm or more",
    dimension="pressure",
    typical=20 * PSI,
    source=sources.ENGINE_BUILDER_2009,
)
RELIEF_SETTING = Limit(
    id="relief_setting",
    says="pressure the relief valve holds",
    dimension="pressure",
    typical=55 * PSI,
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
)
IDLE_SPEED = Limit(
    id="idle_speed",
    says="idle speed",
    dimension="speed",
    typical=700.0,
    source=sources.PRESSURE_TEST_MANUAL_2005,
)
OIL_TEMPERATURE = Limit(
    id="oil_temperature",
    says="highest oil temperature",
    dimension="temperature",
    typical=394.15,
    source=sources.ARMY_TM_272_TABLE,
)
MAIN_CLEARANCE = Limit(
    id="main_clearance",
    says="widest main bearing clearance, on the diameter",
    dimension="length",
    typical=0.0035 * INCH,
    source=sources.ENGINE_BUILDER_2021,
)
ROD_CLEARANCE = Limit(
    id="rod_clearance",
    says="widest rod bearing clearance, on the diameter",
    dimension="length",
    typical=0.0035 * INCH,
    source=sources.ENGINE_BUILDER_2021,
)
LEAST_BEARING_CLEARANCE = Limit(
    id="least_bearing_clearance",
    says="tightest main or rod clearance, on the diameter",
    dimension="length",
    typical=0.0010 * INCH,
    source=sources.ENGINE_BUILDER_2021,
)
CAM_CLEARANCE = Limit(
    id="cam_clearance",
    says="widest cam bearing clearance, on the diameter",
    dimension="length",
    typical=0.008 * INCH,
    source=sources.ARMY_TM_347_CAMSHAFT,
)
CRANK_END_FLOAT = Limit(
    id="crank_end_float",
    says="most crank end float",
    dimension="length",
    typical=0.011 * INCH,
    source=sources.BEARING_GUIDE_CEB1,
)
PUMP_END_CLEARANCE = Limit(
    id="pump_end_clearance",
    says="most end clearance of the pump gears",
    dimension="length",
    typical=0.006 * INCH,
    source=sources.STRAIGHT_SIX_MANUAL,
)
PUMP_SIDE_CLEARANCE = Limit(
    id="pump_side_clearance",
    says="most clearance gear to body",
    dimension="length",
    typical=0.005 * INCH,
    source=sources.PUMP_INSTALLATION_1983,
)
PUMP_BACKLASH = Limit(
    id="pump_backlash",
    says="most backlash of the pump gears",
    dimension="length",
    typical=0.028 * INCH,
    source=COMMON_PRACTICE,
)
PUMP_BUSH_CLEARANCE = Limit(
    id="pump_bush_clearance",
    says="most clearance of the pump shaft in its bush",
    dimension="length",
    typical=0.0055 * INCH,
    source=sources.DIESEL_V8_PUMP_LIMITS,
)
COVER_FLATNESS = Limit(
    id="cover_flatness",
    says="most hollow or groove in the pump cover",
    dimension="length",
    typical=0.001 * INCH,
    source=sources.PUMP_INSTALLATION_1983,
)
LEAST_PICKUP_GAP = Limit(
    id="least_pickup_gap",
    says="least gap from pickup to sump floor",
    dimension="length",
    typical=0.1875 * INCH,
    source=COMMON_PRACTICE,
)
MOST_PICKUP_GAP = Limit(
    id="most_pickup_gap",
    says="most gap from pickup to sump floor",
    dimension="length",
    typical=0.5 * INCH,
    source=COMMON_PRACTICE,
)
PANEL_ERROR = Limit(
    id="panel_error",
    says="most difference between panel and trusted gauge",
    dimension="pressure",
    typical=5 * PSI,
    source=sources.GAUGE_MAKER_SENDERS,
)
SENDER_OHMS_AT_REST = Limit(
    id="sender_ohms_at_rest",
    says="sender resistance without pressure",
    dimension="resistance",
    typical=240.0,
    source=sources.GAUGE_MAKER_SENDERS,
)
SENDER_GROUND_OHMS = Limit(
    id="sender_ground_ohms",
    says="most resistance from sender to ground",
    dimension="resistance",
    typical=1.0,
    source=COMMON_PRACTICE,
)
SWITCH_OPENS_AT = Limit(
    id="switch_opens_at",
    says="lamp switch opens by",
    dimension="pressure",
    typical=10 * PSI,
    source=sources.SMALL_ENGINE_MANUAL,
)
FUEL_SHARE = Limit(
    id="fuel_share_limit",
    says="most fuel in the oil",
    dimension="fraction",
    typical=0.04,
    source=sources.LABORATORY_FUEL,
)
