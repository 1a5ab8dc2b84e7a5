"""Links between states of the oil circuit, and to damage."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import ALWAYS, MOSTLY, OFTEN, RARELY, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.relief import findings as relief_findings

OIL_THAT_LEAVES_IS_MISSED_BELOW = LinkGroup(
    id="oil_that_leaves_is_missed_below",
    station=Station.DELIVERY,
    says="Oil that leaves the engine is missing at the pickup: pressure holds, wavers, then goes.",
    parent=conditions.OIL_ESCAPING,
    effects={
        conditions.OIL_SHORT: (MOSTLY, sources.OVERHAUL_MANUAL_5_101),
    },
    matches=[example(direct_gauge.TOP_UP_CURES_FOR_A_WHILE, patterns.FELL_SUDDENLY)],
    non_matches=[example(patterns_speed.FALLS_AS_REVS_RISE)],
)
PUMP_THAT_SWALLOWS_AIR = LinkGroup(
    id="pump_that_swallows_air",
    station=Station.DELIVERY,
    says=(
        "Too little oil over the pickup: the pump draws air, at first now and then, in the end "
        "always."
    ),
    parent=conditions.OIL_SHORT,
    effects={
        conditions.PICKUP_UNCOVERED: (OFTEN, sources.SUMP_TILT_TEST),
        conditions.PRESSURE_LOW: (OFTEN, sources.MARINE_SERVICE_MANUAL_1999),
        conditions.PRESSURE_GONE: (OFTEN, sources.CROSSOVER_V6_MANUAL_2007),
        conditions.PRESSURE_UNSTEADY: (OFTEN, sources.MARINE_SERVICE_MANUAL_1999),
    },
    matches=[example(direct_gauge.TOP_UP_CURES_FOR_A_WHILE, patterns.GAUGE_READS_LOW)],
    non_matches=[example(patterns.GAUGE_READS_LOW, patterns.ENGINE_RUNS_NORMALLY)],
)
OIL_THROWN_OFF_THE_PICKUP = LinkGroup(
    id="oil_thrown_off_the_pickup",
    station=Station.DELIVERY,
    says="Oil thrown away from the pickup drops the pressure as long as the manoeuvre lasts.",
    parent=conditions.PICKUP_UNCOVERED,
    effects={
        conditions.PRESSURE_UNSTEADY: (OFTEN, sources.SUMP_TILT_TEST),
        conditions.PRESSURE_LOW: (SOMETIMES, sources.SUMP_TILT_TEST),
        conditions.PRESSURE_GONE: (SELDOM, sources.NEWSPAPER_BRAKING_2005),
    },
    matches=[example(behaviour.FALLS_IN_A_MANOEUVRE)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
SLUDGE_SETTLES_WHERE_OIL_IS_SLOW = LinkGroup(
    id="sludge_settles_where_oil_is_slow",
    station=Station.DELIVERY,
    says=(
        "Sludge settles on the pickup screen first, then in filter and oilways, and makes valves "
        "stick."
    ),
    parent=conditions.OIL_SLUDGED,
    effects={
        conditions.SUCTION_THROTTLED: (OFTEN, sources.CLUB_BLOCKED_SCREENS),
        conditions.FLOW_RESTRICTED: (SOMETIMES, sources.DIESEL_WORKSHOP_2015),
        conditions.RELIEF_BLEEDS: (SELDOM, COMMON_PRACTICE),
        conditions.BRANCH_DRY: (SELDOM, COMMON_PRACTICE),
        conditions.JOURNAL_DRY: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(behaviour.FADES_AT_SPEED_BACK_AFTER_REST)],
    non_matches=[example(patterns_speed.CAPPED_LOW)],
)
THIN_OIL_LEAKS_EVERYWHERE = LinkGroup(
    id="thin_oil_leaks_everywhere",
    station=Station.DELIVERY,
    says="Thin oil leaks from every clearance alike, so pressure falls although nothing is broken.",
    parent=conditions.OIL_THIN,
    effects={
        conditions.PRESSURE_LOW: (MOSTLY, PHYSICS),
        conditions.PRESSURE_GONE: (RARELY, JUDGEMENT),
    },
    matches=[example(patterns_speed.GOOD_COLD_LOW_HOT, behaviour.SAGS_AS_OIL_HEATS)],
    non_matches=[example(patterns_speed.LOW_EVEN_COLD)],
)
THICK_OIL_SHOWS_HIGH = LinkGroup(
    id="thick_oil_shows_high",
    station=Station.DELIVERY,
    says="Thick oil gives a high reading while far bearings and a small suction run short.",
    parent=conditions.OIL_THICK,
    effects={
        conditions.PRESSURE_HIGH: (OFTEN, sources.DIESEL_TESTING_MANUAL),
        conditions.PUMP_CAVITATES: (SELDOM, PHYSICS),
        conditions.VALVE_GEAR_DRY: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(patterns.GAUGE_READS_HIGH)],
    non_matches=[example(patterns_speed.GOOD_COLD_LOW_HOT)],
)
FOAM_CANNOT_HOLD_PRESSURE = LinkGroup(
    id="foam_cannot_hold_pressure",
    station=Station.DELIVERY,
    says=(
        "Oil whipped full of air cannot hold pressure: the pump cavitates, lifters collapse, "
        "bearings run short."
    ),
    parent=conditions.OIL_AERATED,
    effects={
        conditions.PRESSURE_UNSTEADY: (MOSTLY, sources.MARINE_SERVICE_MANUAL_1999),
        conditions.PRESSURE_LOW: (OFTEN, sources.MARINE_OWNERS_MANUAL_2008),
        conditions.PUMP_CAVITATES: (SOMETIMES, COMMON_PRACTICE),
        conditions.VALVE_GEAR_DRY: (OFTEN, sources.MARINE_SERVICE_MANUAL_1999),
        conditions.BEARINGS_STARVED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(patterns_speed.FLICKERS_ONLY_AT_SPEED)],
    non_matches=[example(patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE)],
)
DIRT_GOES_WHERE_OIL_GOES = LinkGroup(
    id="dirt_goes_where_oil_goes",
    station=Station.DELIVERY,
    says="Dirt goes where the oil goes: screen, pump, relief valve, oilways, bearings.",
    parent=conditions.DIRT_IN_OIL,
    effects={
        conditions.SUCTION_THROTTLED: (SOMETIMES, COMMON_PRACTICE),
        conditions.RELIEF_HELD_OPEN: (SOMETIMES, sources.TRACTOR_WORKSHOP_MANUAL),
        conditions.PUMP_SCORED: (SOMETIMES, sources.PUMP_MAKER_SHAFTS_SCREENS),
        conditions.BRANCH_DRY: (SELDOM, COMMON_PRACTICE),
        conditions.JOURNAL_DRY: (SOMETIMES, COMMON_PRACTICE),
        conditions.FLOW_RESTRICTED: (SELDOM, COMMON_PRACTICE),
        conditions.BEARINGS_DAMAGED: (OFTEN, sources.BEARING_BROCHURE_PREFACE),
    },
    matches=[example(relief_findings.DEBRIS_ON_RELIEF_SEAT)],
    non_matches=[example(patterns_speed.CAPPED_LOW)],
)
AIR_SUCKED_IN_COMES_THROUGH_IN_SLUGS = LinkGroup(
    id="air_sucked_in_comes_through_in_slugs",
    station=Station.DELIVERY,
    says=(
        "Air sucked in at a joint comes through in slugs: the needle wavers, and no oil shows "
        "outside."
    ),
    parent=conditions.AIR_IN_SUCTION,
    effects={
        conditions.PRESSURE_UNSTEADY: (MOSTLY, COMMON_PRACTICE),
        conditions.PRESSURE_LOW: (OFTEN, sources.ARMY_TM_347_CHART_1973),
        conditions.PRESSURE_GONE: (SOMETIMES, sources.CROSSOVER_V6_MANUAL_2007),
        conditions.PUMP_DRY: (SOMETIMES, sources.FILTER_MAKER_PRIME),
        conditions.OIL_AERATED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(direct_gauge.DIRECT_GAUGE_UNSTEADY, behaviour.SLOW_AFTER_STANDING)],
    non_matches=[example(patterns_speed.CAPPED_LOW)],
)
PUMP_THAT_CANNOT_DRINK = LinkGroup(
    id="pump_that_cannot_drink",
    station=Station.DELIVERY,
    says=(
        "A throttled suction is enough at idle but not at speed; the pump cavitates and pressure "
        "falls as revs rise."
    ),
    parent=conditions.SUCTION_THROTTLED,
    effects={
        conditions.PRESSURE_LOW: (MOSTLY, PHYSICS),
        conditions.PUMP_CAVITATES: (OFTEN, PHYSICS),
        conditions.PRESSURE_UNSTEADY: (SOMETIMES, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SOMETIMES, sources.CROSSOVER_V6_MANUAL_2007),
    },
    matches=[example(patterns_speed.FALLS_AS_REVS_RISE)],
    non_matches=[example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED)],
)
OIL_SLIPS_BACK_INSIDE_THE_PUMP = LinkGroup(
    id="oil_slips_back_inside_the_pump",
    station=Station.DELIVERY,
    says=("Leakage inside a worn pump costs most when the pump turns slowly and the oil is thin."),
    parent=conditions.PUMP_SLIP,
    effects={
        conditions.PRESSURE_LOW: (MOSTLY, PHYSICS),
        conditions.PRESSURE_GONE: (SELDOM, sources.CROSSOVER_V6_MANUAL_2007),
    },
    matches=[example(patterns_speed.RISES_JUST_OFF_IDLE)],
    non_matches=[example(patterns_speed.FALLS_AS_REVS_RISE)],
)
PUMP_THAT_STANDS_STILL = LinkGroup(
    id="pump_that_stands_still",
    station=Station.DELIVERY,
    says="A pump that stands still gives no pressure, at once.",
    parent=conditions.PUMP_NOT_TURNING,
    effects={
        conditions.PRESSURE_GONE: (ALWAYS, sources.MOTORCYCLE_MANUAL),
    },
    matches=[example(patterns.FELL_SUDDENLY, direct_gauge.DIRECT_GAUGE_ZERO)],
    non_matches=[example(patterns_speed.GOOD_COLD_LOW_HOT)],
)
DRIVE_THAT_SLIPS_OR_BINDS = LinkGroup(
    id="drive_that_slips_or_binds",
    station=Station.DELIVERY,
    says=(
        "A drive that slips or binds gives pressure that comes and goes, sheds filings and "
        "finally breaks."
    ),
    parent=conditions.PUMP_DRIVE_ERRATIC,
    effects={
        conditions.PRESSURE_UNSTEADY: (OFTEN, idea_from(sources.WORN_GEAR_THREAD)),
        conditions.PRESSURE_LOW: (OFTEN, sources.OVERHAUL_MANUAL_5_101),
        conditions.PUMP_NOT_TURNING: (SOMETIMES, sources.PUMP_MAKER_SHAFTS_SCREENS),
        conditions.METAL_SHED: (SOMETIMES, idea_from(sources.WORN_GEAR_THREAD)),
    },
    matches=[example(patterns.NEEDLE_FLICKERS, direct_gauge.DIRECT_GAUGE_UNSTEADY)],
    non_matches=[example(patterns_speed.CAPPED_LOW)],
)
DRY_PUMP_DOES_NOT_DRAW = LinkGroup(
    id="dry_pump_does_not_draw",
    station=Station.DELIVERY,
    says="A dry pump does not draw: no pressure until you wet it.",
    parent=conditions.PUMP_DRY,
    effects={
        conditions.PRESSURE_GONE: (ALWAYS, sources.FILTER_MAKER_PRIME),
    },
    matches=[example(behaviour.NONE_FROM_FIRST_START)],
    non_matches=[example(patterns_speed.GOOD_COLD_LOW_HOT)],
)
PUMP_THAT_RATTLES_AT_SPEED = LinkGroup(
    id="pump_that_rattles_at_speed",
    station=Station.DELIVERY,
    says="A cavitating pump delivers less the faster it turns.",
    parent=conditions.PUMP_CAVITATES,
    effects={
        conditions.PRESSURE_LOW: (OFTEN, PHYSICS),
        conditions.PRESSURE_UNSTEADY: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(patterns_speed.FALLS_AS_REVS_RISE)],
    non_matches=[example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED)],
)
WRONG_PUMP_IS_SHORT_FROM_NEW = LinkGroup(
    id="wrong_pump_is_short_from_new",
    station=Station.DELIVERY,
    says="A wrong, reversed or masked pump delivers too little from its first turn.",
    parent=conditions.DELIVERY_REDUCED,
    effects={
        conditions.PRESSURE_LOW: (ALWAYS, PHYSICS),
        conditions.PRESSURE_GONE: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(behaviour.LOW_FROM_FIRST_START)],
    non_matches=[example(patterns.DECLINED_OVER_MONTHS)],
)
PARTICLE_UNDER_THE_VALVE = LinkGroup(
    id="particle_under_the_valve",
    station=Station.DELIVERY,
    says="A particle under the relief valve holds it open: oil bleeds past, and the needle may waver.",
    note="Its shape shows what it is and where it came from.",
    parent=conditions.RELIEF_HELD_OPEN,
    effects={
        conditions.RELIEF_BLEEDS: (ALWAYS, sources.EHRESMAN_1998),
        conditions.PRESSURE_UNSTEADY: (OFTEN, JUDGEMENT),
        relief_findings.DEBRIS_ON_RELIEF_SEAT: (MOSTLY, COMMON_PRACTICE),
        relief_findings.RELIEF_VALVE_STAYED_OPEN: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(relief_findings.DEBRIS_ON_RELIEF_SEAT),
        example(patterns.NEEDLE_FLICKERS, relief_findings.DEBRIS_ON_RELIEF_SEAT),
    ],
    non_matches=[
        example(patterns.NEEDLE_FLICKERS, lacks=[relief_findings.DEBRIS_ON_RELIEF_SEAT]),
    ],
)
VALVE_THAT_NEVER_QUITE_SHUTS = LinkGroup(
    id="valve_that_never_quite_shuts",
    station=Station.DELIVERY,
    says="A relief valve that never quite shuts loses oil all the time, most at idle.",
    parent=conditions.RELIEF_BLEEDS,
    effects={
        conditions.PRESSURE_LOW: (ALWAYS, PHYSICS),
        conditions.PRESSURE_UNSTEADY: (SOMETIMES, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SELDOM, sources.MOTORCYCLE_MANUAL),
    },
    matches=[example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, direct_gauge.PUMP_PORT_LOW)],
    non_matches=[example(patterns_speed.FALLS_AS_REVS_RISE)],
)
VALVE_THAT_OPENS_EARLY = LinkGroup(
    id="valve_that_opens_early",
    station=Station.DELIVERY,
    says="A relief valve that opens early sets a low ceiling and does not affect idle.",
    parent=conditions.RELIEF_CAPS_LOW,
    effects={
        conditions.PRESSURE_LOW: (MOSTLY, PHYSICS),
    },
    matches=[example(patterns_speed.CAPPED_LOW)],
    non_matches=[example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED)],
)
VALVE_THAT_DOES_NOT_RELIEVE = LinkGroup(
    id="valve_that_does_not_relieve",
    station=Station.DELIVERY,
    says="A relief valve that does not open lets cold pressure climb with the revs.",
    parent=conditions.RELIEF_HOLDS_HIGH,
    effects={
        conditions.PRESSURE_HIGH: (ALWAYS, sources.MOTORCYCLE_MANUAL),
    },
    matches=[example(patterns_speed.CLIMBS_PAST_SETTING)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
OPENING_INSIDE_THE_ENGINE = LinkGroup(
    id="opening_inside_the_engine",
    station=Station.DELIVERY,
    says="An opening inside the engine leaks like a hole: low at all speeds, hot or cold.",
    parent=conditions.OPEN_LEAK_INSIDE,
    effects={
        conditions.PRESSURE_LOW: (MOSTLY, sources.GALLERY_PLUG_LEFT_OUT),
        conditions.PRESSURE_GONE: (SOMETIMES, sources.MOTORCYCLE_MANUAL),
    },
    matches=[example(patterns_speed.LOW_AT_ALL_SPEEDS, patterns_speed.LOW_EVEN_COLD)],
    non_matches=[example(patterns_speed.FALLS_AS_REVS_RISE)],
)
WIDE_CLEARANCES_DRAIN_THE_GALLERY = LinkGroup(
    id="wide_clearances_drain_the_gallery",
    station=Station.DELIVERY,
    says="Wide running clearances empty the gallery as soon as the oil is hot.",
    parent=conditions.CLEARANCES_WIDE,
    effects={
        conditions.PRESSURE_LOW: (ALWAYS, PHYSICS),
        conditions.PRESSURE_GONE: (SELDOM, sources.CROSSOVER_V6_MANUAL_2007),
    },
    matches=[example(patterns_speed.GOOD_COLD_LOW_HOT)],
    non_matches=[example(patterns_speed.LOW_EVEN_COLD)],
)
FLOW_HELD_BACK = LinkGroup(
    id="flow_held_back",
    station=Station.DELIVERY,
    says="A blocked filter, cooler or oilway leaves everything behind it short of oil.",
    parent=conditions.FLOW_RESTRICTED,
    effects={
        conditions.PRESSURE_LOW: (OFTEN, sources.MARINE_DIESEL_MANUAL),
        conditions.BRANCH_DRY: (SOMETIMES, COMMON_PRACTICE),
        conditions.JOURNAL_DRY: (SOMETIMES, sources.ROTATED_GALLERY_PLUG),
        conditions.PRESSURE_GONE: (SELDOM, sources.CROSSOVER_V6_MANUAL_2007),
    },
    matches=[example(direct_gauge.PORTS_DIFFER)],
    non_matches=[example(patterns_speed.RISES_JUST_OFF_IDLE)],
)
