"""Figures an engine maker prints, with a typical value where the case gives none."""

from knowledge.sources import (
    AMC,
    CEB1,
    COL,
    COMMON_PRACTICE,
    DMX,
    EB09,
    EB21,
    HB02,
    HB06,
    HB10,
    HB13,
    LCF,
    OLD,
    PF,
    TEL,
    TMC,
)
from knowledge.units import INCH, PSI
from knowledge.vocabulary import Limit

HOT_IDLE_PRESSURE = Limit(
    "hot_idle_pressure", "least pressure at hot idle", "pressure", 10 * PSI, COL
)
STOP_IDLE_PRESSURE = Limit(
    "stop_idle_pressure", "stop the engine below this at idle", "pressure", 7 * PSI, HB13
)
STOP_RUNNING_PRESSURE = Limit(
    "stop_running_pressure",
    "stop the engine below this at 2000 rpm or more",
    "pressure",
    20 * PSI,
    EB09,
)
RELIEF_SETTING = Limit(
    "relief_setting", "pressure the relief valve holds", "pressure", 55 * PSI, PF
)
IDLE_SPEED = Limit("idle_speed", "idle speed", "speed", 700.0, HB06)
OIL_TEMPERATURE = Limit("oil_temperature", "highest oil temperature", "temperature", 394.15, HB02)
MAIN_CLEARANCE = Limit(
    "main_clearance",
    "widest main bearing clearance, on the diameter",
    "length",
    0.0035 * INCH,
    EB21,
)
ROD_CLEARANCE = Limit(
    "rod_clearance", "widest rod bearing clearance, on the diameter", "length", 0.0035 * INCH, EB21
)
LEAST_BEARING_CLEARANCE = Limit(
    "least_bearing_clearance",
    "tightest main or rod clearance, on the diameter",
    "length",
    0.0010 * INCH,
    EB21,
)
CAM_CLEARANCE = Limit(
    "cam_clearance", "widest cam bearing clearance, on the diameter", "length", 0.008 * INCH, TMC
)
CRANK_END_FLOAT = Limit("crank_end_float", "most crank end float", "length", 0.011 * INCH, CEB1)
PUMP_END_CLEARANCE = Limit(
    "pump_end_clearance", "most end clearance of the pump gears", "length", 0.006 * INCH, AMC
)
PUMP_SIDE_CLEARANCE = Limit(
    "pump_side_clearance", "most clearance gear to body", "length", 0.005 * INCH, OLD
)
PUMP_BACKLASH = Limit(
    "pump_backlash", "most backlash of the pump gears", "length", 0.028 * INCH, COMMON_PRACTICE
)
PUMP_BUSH_CLEARANCE = Limit(
    "pump_bush_clearance",
    "most clearance of the pump shaft in its bush",
    "length",
    0.0055 * INCH,
    DMX,
)
COVER_FLATNESS = Limit(
    "cover_flatness", "most hollow or groove in the pump cover", "length", 0.001 * INCH, OLD
)
LEAST_PICKUP_GAP = Limit(
    "least_pickup_gap",
    "least gap from pickup to sump floor",
    "length",
    0.1875 * INCH,
    COMMON_PRACTICE,
)
MOST_PICKUP_GAP = Limit(
    "most_pickup_gap", "most gap from pickup to sump floor", "length", 0.5 * INCH, COMMON_PRACTICE
)
PANEL_ERROR = Limit(
    "panel_error", "most difference between panel and trusted gauge", "pressure", 5 * PSI, TEL
)
SENDER_OHMS_AT_REST = Limit(
    "sender_ohms_at_rest", "sender resistance without pressure", "resistance", 240.0, TEL
)
SENDER_GROUND_OHMS = Limit(
    "sender_ground_ohms",
    "most resistance from sender to ground",
    "resistance",
    1.0,
    COMMON_PRACTICE,
)
SWITCH_OPENS_AT = Limit("switch_opens_at", "lamp switch opens by", "pressure", 10 * PSI, HB10)
FUEL_SHARE = Limit("fuel_share_limit", "most fuel in the oil", "fraction", 0.04, LCF)
