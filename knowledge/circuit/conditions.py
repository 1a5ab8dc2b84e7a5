"""The hidden states between causes and findings: what the oil circuit, or the engine, is doing.

Arrows between them run downwards in this file, so the graph stays acyclic: a loop of
reality (debris, valve, starvation, debris) is cut where damage begins.
"""

from knowledge import sources
from knowledge.model import STRONG_DOWN, STRONG_UP, Condition, Rate, Shifts, Station
from knowledge.sources import COMMON_PRACTICE, PHYSICS, idea_from

S = Station
WORN_BY_HOURS = Condition(
    id="worn_by_hours",
    station=S.BEARINGS,
    says="the engine is worn from long use",
    mechanism="the same hours, and the same oil, wear mains, rods, cam bearings and pump together",
    source=sources.CARLEY_2000,
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=STRONG_UP, freshly_rebuilt=STRONG_DOWN),
)
READING_FALSE = Condition(
    id="reading_false",
    station=S.INSTRUMENT,
    says="the instrument reads low or zero although the pressure is there",
    mechanism="sender, wire, line or gauge is at fault; the oil pressure is not affected",
    source=sources.NAVY_14075_INSTRUMENTS,
)
READING_ERRATIC = Condition(
    id="reading_erratic",
    station=S.INSTRUMENT,
    says="the instrument jumps by itself",
    mechanism="a loose contact steps at once; oil pressure cannot",
    source=COMMON_PRACTICE,
)
OIL_ESCAPING = Condition(
    id="oil_escaping",
    station=S.LEAKS,
    says="oil is leaving the engine",
    mechanism=(
        "an outside leak empties the sump; the pressure holds until the pickup is out of the oil"
    ),
    source=COMMON_PRACTICE,
)
OIL_SHORT = Condition(
    id="oil_short",
    station=S.OIL,
    says="too little oil over the pickup",
    mechanism=(
        "the pickup comes out of the oil and the pump draws air, at first now and then, in the "
        "end always"
    ),
    source=sources.UNDERSTANDING_OIL_PRESSURE,
)
PICKUP_UNCOVERED = Condition(
    id="pickup_uncovered",
    station=S.SUCTION,
    says="oil moves off the pickup in a bend, on a slope, under braking or with revs",
    mechanism="acceleration or tilt piles the oil up away from the pickup",
    source=COMMON_PRACTICE,
)
OIL_SLUDGED = Condition(
    id="oil_sludged",
    station=S.OIL,
    says="the oil has laid down sludge or varnish",
    mechanism=(
        "oxidised oil or oil with water in it leaves deposits that narrow screen and oilways and "
        "make valves stick"
    ),
    source=sources.CLUB_BLOCKED_SCREENS,
)
OIL_THIN = Condition(
    id="oil_thin",
    station=S.OIL,
    says="the oil is too thin at working temperature",
    mechanism="every running clearance leaks in inverse proportion to viscosity",
    source=PHYSICS,
)
OIL_THICK = Condition(
    id="oil_thick",
    station=S.OIL,
    says="the oil is too thick",
    mechanism="high pressure, much of it over the relief valve, and a starved suction when cold",
    source=PHYSICS,
)
OIL_AERATED = Condition(
    id="oil_aerated",
    station=S.OIL,
    says="air is whipped into the oil",
    mechanism=(
        "foam is compressible: the needle flutters, worse with speed, and settles when the "
        "engine slows"
    ),
    source=sources.OIL_AERATION_ARTICLE,
)
DIRT_IN_OIL = Condition(
    id="dirt_in_oil",
    station=S.ASSEMBLY,
    says="hard or foreign particles travel with the oil",
    mechanism="chips, grit, fibres or sealer reach screen, pump, relief valve and bearings",
    source=COMMON_PRACTICE,
)
AIR_IN_SUCTION = Condition(
    id="air_in_suction",
    station=S.SUCTION,
    says="the pump draws air through its suction side",
    mechanism="a leaking joint or tube lets air in; no oil shows outside",
    source=COMMON_PRACTICE,
)
SUCTION_THROTTLED = Condition(
    id="suction_throttled",
    station=S.SUCTION,
    says="the pump's suction is throttled",
    mechanism="enough oil passes at idle, not at speed; thick cold oil makes it worse",
    source=PHYSICS,
)
PUMP_SLIP = Condition(
    id="pump_slip",
    station=S.PUMP,
    says="too much oil leaks back inside the pump",
    mechanism="worn end and tip clearances; the share lost is greatest when slow and hot",
    source=PHYSICS,
)
PUMP_NOT_TURNING = Condition(
    id="pump_not_turning",
    station=S.PUMP,
    says="the pump is not being turned",
    mechanism="drive broken, stripped or disengaged: no flow at all",
    source=COMMON_PRACTICE,
)
PUMP_DRIVE_ERRATIC = Condition(
    id="pump_drive_erratic",
    station=S.PUMP,
    says="the pump's drive slips, binds or lags",
    mechanism="the pump slips with its drive; filings come off",
    source=COMMON_PRACTICE,
)
PUMP_DRY = Condition(
    id="pump_dry",
    station=S.PUMP,
    says="the pump has not drawn oil",
    mechanism="a dry pump cannot draw oil: no pressure until you wet it",
    source=COMMON_PRACTICE,
)
PUMP_CAVITATES = Condition(
    id="pump_cavitates",
    station=S.PUMP,
    says="the pump cannot fill at speed",
    mechanism="pressure climbs, then falls as the revs rise; the pump rattles or whines",
    source=sources.PUMP_CAVITATION_ANSWER,
)
DELIVERY_REDUCED = Condition(
    id="delivery_reduced",
    station=S.PUMP,
    says="the pump delivers less than this engine needs at every speed",
    mechanism="wrong, reversed or half-masked pump: low from its first start",
    source=sources.DIESEL_CASE_NOTE,
)
RELIEF_HELD_OPEN = Condition(
    id="relief_held_open",
    station=S.RELIEF,
    says="debris under the relief valve holds it off its seat",
    mechanism=(
        "a particle from a build, from the oil or from a worn part; it can move, so the fault "
        "comes and goes"
    ),
    source=sources.EHRESMAN_1998,
)
RELIEF_BLEEDS = Condition(
    id="relief_bleeds",
    station=S.RELIEF,
    says="oil bleeds past the relief valve when it should be shut",
    mechanism="like a hole near the pump: worst at idle, less so with revs, hardly changed by heat",
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
)
RELIEF_CAPS_LOW = Condition(
    id="relief_caps_low",
    station=S.RELIEF,
    says="the relief valve opens too early",
    mechanism="pressure is steady but never rises above a low ceiling; idle may be sound",
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
)
RELIEF_HOLDS_HIGH = Condition(
    id="relief_holds_high",
    station=S.RELIEF,
    says="the relief valve opens too late or not at all",
    mechanism="cold pressure climbs with revs far past the setting; filter and drive suffer",
    source=COMMON_PRACTICE,
)
OPEN_LEAK_INSIDE = Condition(
    id="open_leak_inside",
    station=S.DELIVERY,
    says="oil pours out of an opening inside the engine",
    mechanism="like an orifice: low at all speeds, hot and cold, and nothing shows outside",
    source=PHYSICS,
)
CLEARANCES_WIDE = Condition(
    id="clearances_wide",
    station=S.BEARINGS,
    says="oil escapes through wide running clearances",
    mechanism="the leak grows as the oil thins: good cold, low hot, worst at hot idle",
    source=PHYSICS,
)
FLOW_RESTRICTED = Condition(
    id="flow_restricted",
    station=S.DELIVERY,
    says="filter, cooler or a main oilway restricts the flow",
    mechanism="there is pressure ahead of the restriction and none behind it",
    source=PHYSICS,
)
DRAINS_BACK = Condition(
    id="drains_back",
    station=S.DELIVERY,
    says="oil drains back while the engine stands",
    mechanism="the oilways must refill at each start: late, then normal",
    source=COMMON_PRACTICE,
)
BRANCH_DRY = Condition(
    id="branch_dry",
    station=S.TOPEND,
    says="the valve gear gets no oil although the gauge looks good",
    mechanism="the gauge reads the gallery, not the branch",
    source=sources.CAM_BEARING_HOLES_BLOG,
)
JOURNAL_DRY = Condition(
    id="journal_dry",
    station=S.BEARINGS,
    says="one main, rod or cam bearing gets no oil although the gauge looks good",
    mechanism="its own feed is blocked or masked; the gauge reads the gallery",
    source=sources.ROTATED_GALLERY_PLUG,
)
PRESSURE_LOW = Condition(
    id="pressure_low",
    station=S.DELIVERY,
    says="the engine's true oil pressure is low",
    mechanism=(
        "the pump makes flow, the leaks set the pressure: too little flow or too much leakage"
    ),
    source=PHYSICS,
)
PRESSURE_GONE = Condition(
    id="pressure_gone",
    station=S.DELIVERY,
    says="the engine's true oil pressure is gone",
    mechanism="no flow at all, or none that the engine can hold",
    source=PHYSICS,
)
PRESSURE_UNSTEADY = Condition(
    id="pressure_unsteady",
    station=S.DELIVERY,
    says="the engine's true oil pressure is unsteady",
    mechanism="air comes through in slugs, or a relief valve or drive hunts",
    source=COMMON_PRACTICE,
)
PRESSURE_HIGH = Condition(
    id="pressure_high",
    station=S.DELIVERY,
    says="the engine's true oil pressure is too high",
    mechanism="the relief valve does not open, or the oil is too thick for it",
    source=PHYSICS,
)
BEARINGS_STARVED = Condition(
    id="bearings_starved",
    station=S.BEARINGS,
    says="the bearings ran short of oil",
    mechanism="with low, no or foaming oil the oil film breaks",
    source=sources.CARLEY_1997,
    damage=True,
)
BEARINGS_DAMAGED = Condition(
    id="bearings_damaged",
    station=S.BEARINGS,
    says="the bearings are wiped, scored or spun",
    mechanism="first damage or following damage: the pattern shows which",
    source=idea_from(sources.BEARING_WEAR_ANALYSIS),
    damage=True,
)
METAL_SHED = Condition(
    id="metal_shed",
    station=S.BEARINGS,
    says="damaged parts shed metal into the oil",
    mechanism="flakes settle in sump, screen, filter and relief valve",
    source=COMMON_PRACTICE,
    damage=True,
)
METAL_UNDER_RELIEF = Condition(
    id="metal_under_relief",
    station=S.RELIEF,
    says="metal shed by damaged parts is under the relief valve",
    mechanism="following damage: from then on the relief valve leaks too and the needle wavers",
    source=sources.AIRCRAFT_FAULT_ISOLATION,
    damage=True,
)
PUMP_SCORED = Condition(
    id="pump_scored",
    station=S.PUMP,
    says="the pump has been scored or jammed by debris",
    mechanism="following damage: a scored cover is not yet the root cause",
    source=COMMON_PRACTICE,
    damage=True,
)
VALVE_GEAR_DRY = Condition(
    id="valve_gear_dry",
    station=S.TOPEND,
    says="the valve gear runs short of oil",
    mechanism="lifters collapse and clatter; rockers and cams run dry",
    source=sources.CARLEY_1997,
    damage=True,
)
ENGINE_FAILED = Condition(
    id="engine_failed",
    station=S.BEARINGS,
    says="the engine stopped, seized or broke",
    mechanism="the end of every chain of events that nobody stopped in time",
    source=sources.CARLEY_1997,
    damage=True,
)

#: where loose pieces lodge and take the pressure away
LODGED = (SUCTION_THROTTLED, RELIEF_HELD_OPEN, FLOW_RESTRICTED)
