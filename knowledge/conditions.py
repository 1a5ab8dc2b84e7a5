"""The hidden states between causes and findings: what the oil's circuit, or the engine, is doing.

Arrows between them run downwards in this file, so the graph stays acyclic: a loop of
reality (debris, valve, starvation, debris) is cut where damage begins.
"""

from knowledge.sources import AA97, BTG, CAV, COMMON_PRACTICE, HB19, INL, NE2, PBB, PF, PHYSICS, TUR
from knowledge.vocabulary import Condition, Station

S = Station

# ------------------------------------------------------------------------- the instrument

READING_FALSE = Condition(
    "reading_false",
    S.INSTRUMENT,
    "the instrument reads low or nothing while the pressure is there",
    "sender, wire, line or gauge is at fault; the oil does not know",
    NE2,
)
READING_ERRATIC = Condition(
    "reading_erratic",
    S.INSTRUMENT,
    "the instrument jumps by itself",
    "a loose contact steps at once; an oil column cannot",
    COMMON_PRACTICE,
)

# -------------------------------------------------------------------------------- the oil

OIL_ESCAPING = Condition(
    "oil_escaping",
    S.LEAKS,
    "oil is leaving the engine",
    "an outside leak empties the sump; the pressure holds until the pickup uncovers",
    COMMON_PRACTICE,
)
OIL_SHORT = Condition(
    "oil_short",
    S.OIL,
    "too little oil stands over the pickup",
    "the pickup uncovers and the pump draws air, first now and then, at last always",
    INL,
)
PICKUP_UNCOVERED = Condition(
    "pickup_uncovered",
    S.SUCTION,
    "oil moves off the pickup in a bend, on a slope, under braking or with revs",
    "acceleration or tilt piles the oil up away from the pickup",
    COMMON_PRACTICE,
)
OIL_SLUDGED = Condition(
    "oil_sludged",
    S.OIL,
    "the oil has laid down sludge or varnish",
    "oxidised or watered oil leaves deposits that narrow mesh and oilways and stick valves",
    INL,
)
OIL_THIN = Condition(
    "oil_thin",
    S.OIL,
    "the oil is too thin where it works",
    "every running clearance leaks in inverse proportion to viscosity",
    PHYSICS,
)
OIL_THICK = Condition(
    "oil_thick",
    S.OIL,
    "the oil is too thick",
    "high pressure, much of it over the relief valve, and a starved suction when cold",
    PHYSICS,
)
OIL_AERATED = Condition(
    "oil_aerated",
    S.OIL,
    "air is whipped into the oil",
    "foam is compressible: the needle flutters, worse with speed, and settles when it rests",
    CAV,
)
DIRT_IN_OIL = Condition(
    "dirt_in_oil",
    S.ASSEMBLY,
    "hard or foreign particles travel with the oil",
    "chips, grit, fibres or sealer reach mesh, pump, valve and bearings",
    COMMON_PRACTICE,
)

# ---------------------------------------------------------------------------- the suction

AIR_IN_SUCTION = Condition(
    "air_in_suction",
    S.SUCTION,
    "the pump draws air through its suction side",
    "a leaking joint or tube lets air in; no oil shows outside",
    COMMON_PRACTICE,
)
SUCTION_THROTTLED = Condition(
    "suction_throttled",
    S.SUCTION,
    "the pump's suction is throttled",
    "enough oil passes at idle, not at speed; thick cold oil makes it worse",
    PHYSICS,
)

# ------------------------------------------------------------------------------- the pump

PUMP_SLIP = Condition(
    "pump_slip",
    S.PUMP,
    "too much oil slips back inside the pump",
    "worn end and tip clearances; the share lost is greatest when slow and hot",
    PHYSICS,
)
PUMP_NOT_TURNING = Condition(
    "pump_not_turning",
    S.PUMP,
    "the pump is not being turned",
    "drive broken, stripped or disengaged: no flow at all",
    COMMON_PRACTICE,
)
PUMP_DRIVE_ERRATIC = Condition(
    "pump_drive_erratic",
    S.PUMP,
    "the pump's drive slips, binds or lags",
    "delivery comes and goes with the drive; filings are shed",
    COMMON_PRACTICE,
)
PUMP_DRY = Condition(
    "pump_dry",
    S.PUMP,
    "the pump has not taken up its oil",
    "dry clearances do not draw: no pressure until it is wetted",
    COMMON_PRACTICE,
)
PUMP_CAVITATES = Condition(
    "pump_cavitates",
    S.PUMP,
    "the pump cannot fill at speed",
    "pressure climbs, then falls as the revs rise; the pump rattles or whines",
    CAV,
)
DELIVERY_REDUCED = Condition(
    "delivery_reduced",
    S.PUMP,
    "the pump delivers less than this engine needs at every speed",
    "wrong, reversed or half-masked pump: low from its first start",
    HB19,
)

# ---------------------------------------------------------------------- the relief valve

RELIEF_BLEEDS = Condition(
    "relief_bleeds",
    S.RELIEF,
    "oil bleeds past the relief valve when it should be shut",
    "like a hole near the pump: worst at idle, less felt with revs, hardly changed by heat",
    PF,
)
RELIEF_CAPS_LOW = Condition(
    "relief_caps_low",
    S.RELIEF,
    "the relief valve opens too early",
    "pressure is steady but never gets past a low ceiling; idle may be sound",
    PF,
)
RELIEF_HOLDS_HIGH = Condition(
    "relief_holds_high",
    S.RELIEF,
    "the relief valve opens too late or not at all",
    "cold pressure climbs with revs far past the setting; filter and drive suffer",
    PF,
)

# -------------------------------------------------------------------------- the delivery

OPEN_LEAK_INSIDE = Condition(
    "open_leak_inside",
    S.DELIVERY,
    "oil pours out of an opening inside the engine",
    "like an orifice: low at all speeds, hot and cold, and nothing shows outside",
    PHYSICS,
)
CLEARANCES_WIDE = Condition(
    "clearances_wide",
    S.BEARINGS,
    "oil runs out through wide running clearances",
    "the leak grows as the oil thins: good cold, low hot, worst at hot idle",
    PHYSICS,
)
FLOW_RESTRICTED = Condition(
    "flow_restricted",
    S.DELIVERY,
    "filter, cooler or a main oilway holds the flow back",
    "pressure is there before the restriction and missing behind it",
    PHYSICS,
)
DRAINS_BACK = Condition(
    "drains_back",
    S.DELIVERY,
    "oil runs out of the system while the engine stands",
    "the system must be refilled at each start: late, then normal",
    COMMON_PRACTICE,
)
BRANCH_DRY = Condition(
    "branch_dry",
    S.TOPEND,
    "the valve gear's or the turbo's branch gets no oil although the gauge looks good",
    "the gauge taps the gallery, not the branch",
    TUR,
)
JOURNAL_DRY = Condition(
    "journal_dry",
    S.BEARINGS,
    "one main, rod or cam bearing gets no oil although the gauge looks good",
    "its own feed is closed or masked; the gauge taps the gallery",
    PBB,
)

# -------------------------------------------------------------------- what comes of it

PRESSURE_LOW = Condition(
    "pressure_low",
    S.DELIVERY,
    "the engine's true oil pressure is low",
    "the pump makes flow, the leaks make the pressure: flow short or leaks large",
    PHYSICS,
)
PRESSURE_GONE = Condition(
    "pressure_gone",
    S.DELIVERY,
    "the engine's true oil pressure is gone",
    "no flow at all, or none that the engine can hold",
    PHYSICS,
)
PRESSURE_UNSTEADY = Condition(
    "pressure_unsteady",
    S.DELIVERY,
    "the engine's true oil pressure is unsteady",
    "air comes through in slugs, or a valve or drive hunts",
    COMMON_PRACTICE,
)
PRESSURE_HIGH = Condition(
    "pressure_high",
    S.DELIVERY,
    "the engine's true oil pressure is too high",
    "nothing relieves the pump, or the oil is too thick to be relieved",
    PHYSICS,
)

# ------------------------------------------------------------------------ damage follows

BEARINGS_STARVED = Condition(
    "bearings_starved",
    S.BEARINGS,
    "the bearings ran short of oil",
    "low, absent or foaming oil lets the film break",
    AA97,
    damage=True,
)
BEARINGS_DAMAGED = Condition(
    "bearings_damaged",
    S.BEARINGS,
    "the bearings are wiped, scored or turned",
    "first damage or following damage: the pattern tells which",
    BTG,
    damage=True,
)
METAL_SHED = Condition(
    "metal_shed",
    S.BEARINGS,
    "damaged parts shed metal into the oil",
    "flakes settle in pan, screen, filter and relief valve",
    COMMON_PRACTICE,
    damage=True,
)
PUMP_SCORED = Condition(
    "pump_scored",
    S.PUMP,
    "the pump has been scored or jammed by what came through it",
    "following damage: a scored cover is not yet the root",
    COMMON_PRACTICE,
    damage=True,
)
VALVE_GEAR_DRY = Condition(
    "valve_gear_dry",
    S.TOPEND,
    "the valve gear runs short of oil",
    "lifters collapse and clatter; rockers and cams dry",
    AA97,
    damage=True,
)
ENGINE_FAILED = Condition(
    "engine_failed",
    S.BEARINGS,
    "the engine stopped, seized or broke",
    "the end of every chain that was not stopped in time",
    AA97,
    damage=True,
)
