"""Root causes at the pump, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    DOWN,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_DOWN,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.pump import (
    findings,
    findings_bench,
    findings_drive,
    findings_mount,
    findings_wear,
)

PUMP_GEAR_WEAR = Cause(
    id="pump_gear_wear",
    station=Station.PUMP,
    says="pump worn out: gears or rotors, bores and shaft bushes",
    mechanism=(
        "oil leaks back inside the pump: low at hot idle, near normal with revs, slow to prime"
    ),
    rate=Rate.COMMON,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=DOWN),
    remedy="fit a new pump, its clearances checked first against the maker's",
    source=sources.ENGINE_BUILDER_2009,
    follows="slow bearing wear",
    also=("worn oil pump", "bad oil pump", "tired pump", "oil pump worn out", "weak pump"),
)
WIDE_CLEARANCES_ALL_THROUGH_THE_PUMP = LinkGroup(
    id="wide_clearances_all_through_the_pump",
    station=Station.PUMP,
    says="A worn pump leaks oil back inside: low at hot idle, nearly right with revs.",
    note=(
        "It comes on over months or years, and the pump is slow to pick up oil after standing. "
        "Misleads when the bearings are just as worn: then a new pump helps little."
    ),
    parent=PUMP_GEAR_WEAR,
    effects={
        conditions.PUMP_SLIP: (ALWAYS, sources.ENGINE_BUILDER_2009),
        patterns.DECLINED_OVER_MONTHS: (OFTEN, COMMON_PRACTICE),
        findings_wear.GEARS_WORN_OUT: (MOSTLY, COMMON_PRACTICE),
        findings_bench.END_CLEARANCE_WIDE: (MOSTLY, sources.ENGINE_BUILDERS_2020),
        findings_bench.SIDE_CLEARANCE_WIDE: (OFTEN, sources.ENGINE_BUILDERS_2020),
        findings_bench.ROTOR_TIP_WIDE: (OFTEN, idea_from(sources.ROTOR_PUMP_LIMITS_2023)),
        findings_wear.GEAR_BACKLASH_WIDE: (SOMETIMES, sources.ENGINE_BUILDERS_2020),
        findings_wear.PUMP_SHAFT_PLAY: (OFTEN, COMMON_PRACTICE),
        findings_bench.COVER_GROOVED: (OFTEN, idea_from(sources.ENGINE_BUILDERS_2020)),
        findings.PUMP_NOISE: (SOMETIMES, COMMON_PRACTICE),
        findings_mount.DRAWS_NOTHING_IN_BATH: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, findings_bench.END_CLEARANCE_WIDE),
        example(patterns.DECLINED_OVER_MONTHS, findings_wear.GEARS_WORN_OUT),
        example(
            patterns.GAUGE_READS_LOW,
            findings_bench.SIDE_CLEARANCE_WIDE,
            findings_wear.PUMP_SHAFT_PLAY,
        ),
    ],
    non_matches=[
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
            lacks=[findings_bench.END_CLEARANCE_WIDE, findings_wear.GEARS_WORN_OUT],
        ),
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings_bench.SIDE_CLEARANCE_WIDE, findings_wear.GEARS_WORN_OUT],
        ),
    ],
)

PUMP_COVER_SCORED = Cause(
    id="pump_cover_scored",
    station=Station.PUMP,
    says="groove worn into the pump cover or end plate by the gear ends",
    mechanism="oil leaks across the gear ends from outlet to inlet, most when thin and at low revs",
    # the gears wear the cover: alone, or first, it is less common than their wear (judgement)
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP),
    remedy="lap the cover flat or renew it; renew the pump if its body or gears are worn too",
    source=sources.PUMP_INSPECTION_2006,
    follows="slow bearing wear",
    also=("scored oil pump cover", "grooved end plate", "worn pump cover", "hollow pump cover"),
)
GROOVE_IN_THE_END_PLATE = LinkGroup(
    id="groove_in_the_end_plate",
    station=Station.PUMP,
    says="A groove worn in the cover adds to the end clearance: it acts like a worn pump.",
    parent=PUMP_COVER_SCORED,
    effects={
        conditions.PUMP_SLIP: (ALWAYS, sources.PUMP_INSPECTION_2006),
        findings_bench.COVER_GROOVED: (ALWAYS, COMMON_PRACTICE),
        findings_bench.END_CLEARANCE_WIDE: (OFTEN, sources.PUMP_INSPECTION_2006),
        patterns.DECLINED_OVER_MONTHS: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, findings_bench.COVER_GROOVED),
        example(findings_bench.COVER_GROOVED),
    ],
    non_matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, lacks=[findings_bench.COVER_GROOVED])
    ],
)

PUMP_COVER_LOOSE = Cause(
    id="pump_cover_loose",
    station=Station.PUMP,
    says="pump cover loose, warped or too thin, so that its joint opens",
    mechanism="the leak at the cover grows with pressure: the relief setting is never reached",
    rate=Rate.RARE,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="tighten and lock the screws, or fit a flat, stiffer cover",
    source=sources.MARINE_DIESEL_MANUAL,
    follows="air drawn in at the joint, then a screw or the cover in the sump",
    also=("oil pump cover loose", "pump back plate screws loose", "pump cover flexing"),
)
COVER_THAT_GAPES_UNDER_PRESSURE = LinkGroup(
    id="cover_that_gapes_under_pressure",
    station=Station.PUMP,
    says=(
        "A thin, warped or loose cover opens as pressure rises: the relief setting is never "
        "reached."
    ),
    note=(
        "The same gap may draw air on the inlet side. Renew a thin or flexing cover with gaps at "
        "its joint."
    ),
    parent=PUMP_COVER_LOOSE,
    effects={
        conditions.PUMP_SLIP: (MOSTLY, COMMON_PRACTICE),
        conditions.DELIVERY_REDUCED: (SOMETIMES, COMMON_PRACTICE),
        conditions.AIR_IN_SUCTION: (SOMETIMES, sources.MARINE_DIESEL_MANUAL),
        patterns_speed.NEVER_REACHES_SETTING_COLD: (OFTEN, COMMON_PRACTICE),
        patterns_speed.CAPPED_LOW: (SOMETIMES, JUDGEMENT),
        patterns.FELL_SUDDENLY: (SELDOM, JUDGEMENT),
        findings_bench.COVER_WARPED: (MOSTLY, COMMON_PRACTICE),
        findings_bench.COVER_SCREWS_LOOSE: (OFTEN, COMMON_PRACTICE),
        findings_wear.AIR_AT_PUMP_COVER: (OFTEN, sources.MARINE_DIESEL_MANUAL),
        findings_mount.DRAWS_NOTHING_IN_BATH: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings_bench.COVER_WARPED),
        example(patterns_speed.NEVER_REACHES_SETTING_COLD, findings_bench.COVER_SCREWS_LOOSE),
    ],
    non_matches=[
        example(
            patterns_speed.NEVER_REACHES_SETTING_COLD,
            lacks=[findings_bench.COVER_WARPED, findings_bench.COVER_SCREWS_LOOSE],
        )
    ],
)

PUMP_DEBRIS_LOCK = Cause(
    id="pump_debris_lock",
    station=Station.PUMP,
    says="hard piece jammed between the pump's gears",
    mechanism="the pump stops and its drive shears, or it turns in jerks: often sudden zero",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=STRONG_UP, raced_or_heeled=UP),
    remedy="strip and renew the pump, renew its drive, find out where the piece came from",
    source=sources.JOBBER_OIL_PUMPS,
    follows="a broken pump drive, then the bearings",
    also=("oil pump jammed", "pump locked up", "something in the oil pump", "seized oil pump"),
)
PIECE_BETWEEN_THE_GEARS = LinkGroup(
    id="piece_between_the_gears",
    station=Station.PUMP,
    says="A hard piece between the gears jams the pump and usually shears its drive.",
    note=(
        "Misleads when the piece came from an engine already failing: then it is a result, not "
        "the cause."
    ),
    parent=PUMP_DEBRIS_LOCK,
    effects={
        conditions.PUMP_NOT_TURNING: (MOSTLY, sources.JOBBER_OIL_PUMPS),
        conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, JUDGEMENT),
        patterns.FELL_SUDDENLY: (SOMETIMES, sources.JOBBER_OIL_PUMPS),
        findings_bench.PIECE_IN_PUMP: (MOSTLY, COMMON_PRACTICE),
        findings_drive.PUMP_JAMMED: (MOSTLY, COMMON_PRACTICE),
        findings_wear.PUMP_GEAR_BROKEN: (OFTEN, COMMON_PRACTICE),
        findings_wear.PUMP_SCORED_SEEN: (OFTEN, COMMON_PRACTICE),
        findings_mount.PUMP_TURNS_ROUGHLY: (OFTEN, COMMON_PRACTICE),
        findings_bench.STEEL_SLIVERS_IN_PUMP: (SOMETIMES, JUDGEMENT),
        findings.PUMP_NOISE: (SELDOM, JUDGEMENT),
        findings_drive.DRIVE_SHAFT_BROKEN: (OFTEN, sources.JOBBER_OIL_PUMPS),
        findings_drive.DRIVE_COUPLING_SHEARED: (SOMETIMES, COMMON_PRACTICE),
        findings_drive.DRIVE_GEAR_STRIPPED: (SOMETIMES, COMMON_PRACTICE),
        findings.DRIVE_PARTNER_STOPPED: (SELDOM, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.FELL_SUDDENLY, findings_drive.PUMP_JAMMED),
        example(findings_bench.PIECE_IN_PUMP),
        example(findings_drive.DRIVE_SHAFT_BROKEN, findings_wear.PUMP_GEAR_BROKEN),
    ],
    non_matches=[
        example(
            patterns.FELL_SUDDENLY, lacks=[findings_drive.PUMP_JAMMED, findings_bench.PIECE_IN_PUMP]
        ),
        example(
            findings_drive.DRIVE_SHAFT_BROKEN,
            lacks=[
                findings_drive.PUMP_JAMMED,
                findings_bench.PIECE_IN_PUMP,
                findings_wear.PUMP_GEAR_BROKEN,
            ],
        ),
    ],
)

PUMP_MOUNT_LEAK = Cause(
    id="pump_mount_leak",
    station=Station.PUMP,
    says="joint between pump and block leaks (gasket, face or bolts)",
    mechanism="oil under pressure escapes into the sump: low at every speed, worst at hot idle",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=STRONG_UP),
    remedy="dress both faces; fit a gasket or none, as the maker says; check that no bolt bottoms",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="blown gasket and a sudden fall",
    also=("oil pump gasket blown", "leak between pump and block", "pump bolts loose"),
)
OIL_ESCAPES_BETWEEN_PUMP_AND_BLOCK = LinkGroup(
    id="oil_escapes_between_pump_and_block",
    station=Station.PUMP,
    says="A leak between pump and block pours oil back into the sump; nothing shows outside.",
    parent=PUMP_MOUNT_LEAK,
    effects={
        conditions.OPEN_LEAK_INSIDE: (ALWAYS, sources.DIESEL_WORKSHOP_2015),
        conditions.AIR_IN_SUCTION: (SELDOM, sources.AIRCRAFT_FAULT_ISOLATION),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, JUDGEMENT),
        behaviour.CHANGED_WITH_NEW_PUMP: (OFTEN, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (SELDOM, JUDGEMENT),
        findings_mount.MOUNT_GASKET_BLOWN: (OFTEN, sources.PUMP_GASKET_THREAD),
        findings_mount.MOUNT_GASKET_MISSING: (SOMETIMES, sources.DIESEL_CASE_NOTE),
        findings_mount.MOUNT_FACE_NOT_FLAT: (SOMETIMES, COMMON_PRACTICE),
        findings_drive.PUMP_BOLTS_LOOSE: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings_mount.MOUNT_GASKET_BLOWN),
        example(findings_mount.MOUNT_GASKET_MISSING),
        example(behaviour.LOW_FROM_FIRST_START, findings_mount.MOUNT_FACE_NOT_FLAT),
    ],
    non_matches=[
        example(
            behaviour.LOW_FROM_FIRST_START,
            lacks=[
                findings_mount.MOUNT_GASKET_BLOWN,
                findings_mount.MOUNT_GASKET_MISSING,
                findings_mount.MOUNT_FACE_NOT_FLAT,
            ],
        )
    ],
)

PUMP_GASKET_WRONG = Cause(
    id="pump_gasket_wrong",
    station=Station.PUMP,
    says="pump gasket upside down, wrong, or one too many",
    mechanism=(
        "a port is half covered, or the gears get too much end clearance: low or no pressure "
        "from the start"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="lay the right gasket on both faces and check that every port is open through it",
    source=sources.OVERHAUL_MANUAL_5_101,
    follows="a dry first start",
    also=("oil pump gasket on wrong", "gasket covers the hole", "gasket blocking oil passage"),
)
PORT_COVERED_OR_GEARS_LIFTED = LinkGroup(
    id="port_covered_or_gears_lifted",
    station=Station.PUMP,
    says=(
        "A gasket that masks a port, or an extra one under the cover: low or no pressure since "
        "it was fitted."
    ),
    parent=PUMP_GASKET_WRONG,
    effects={
        conditions.DELIVERY_REDUCED: (MOSTLY, COMMON_PRACTICE),
        conditions.PUMP_SLIP: (SOMETIMES, sources.DIESEL_CASE_NOTE),
        conditions.SUCTION_THROTTLED: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_GONE: (SOMETIMES, COMMON_PRACTICE),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, sources.OVERHAUL_MANUAL_5_101),
        behaviour.NONE_FROM_FIRST_START: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_NEW_PUMP: (OFTEN, COMMON_PRACTICE),
        findings_mount.GASKET_MASKS_PORT: (OFTEN, COMMON_PRACTICE),
        findings_bench.EXTRA_PUMP_GASKET: (SOMETIMES, sources.DIESEL_CASE_NOTE),
        findings_bench.END_CLEARANCE_WIDE: (SOMETIMES, sources.DIESEL_CASE_NOTE),
        findings_mount.MOUNT_GASKET_BLOWN: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(behaviour.NONE_FROM_FIRST_START, findings_mount.GASKET_MASKS_PORT),
        example(behaviour.CHANGED_WITH_NEW_PUMP, findings_bench.EXTRA_PUMP_GASKET),
    ],
    non_matches=[
        example(
            behaviour.CHANGED_WITH_NEW_PUMP,
            lacks=[findings_mount.GASKET_MASKS_PORT, findings_bench.EXTRA_PUMP_GASKET],
        )
    ],
)
