"""Root causes at the assembly, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.history import findings as history
from knowledge.model import (
    ALWAYS,
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
from knowledge.pressure import behaviour, course, direct_gauge, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import findings
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.bearings import findings_measured as bearings_measured
from knowledge.stations.bearings import findings_shell_map as bearings_shell_map
from knowledge.stations.bearings import findings_shells as bearings_shells
from knowledge.stations.oil import findings_analysis as oil_analysis
from knowledge.stations.suction import findings_sump as suction_sump

DIRT_IN_ASSEMBLY = Cause(
    id="dirt_in_assembly",
    station=Station.ASSEMBLY,
    says="grit, swarf or foreign pieces left inside at the build",
    mechanism=(
        "the pieces travel with the oil, score bearings and jam the relief valve, the pump or an "
        "oilway within hours"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP, raced_or_heeled=UP),
    remedy="strip it, take out the plugs, brush and flush every oilway",
    source=sources.BEARING_BROCHURE_PREFACE,
    follows="the relief valve sticks open, the pump jams or the bearings wipe",
    also=(
        "machining swarf left in the block",
        "blasting grit in the engine",
        "block not cleaned",
        "lint in the oilways",
        "foreign object in the oil",
        "plug or cap left in an oilway",
    ),
)
GRIT_FROM_THE_BUILD_GOES_ROUND = LinkGroup(
    id="grit_from_the_build_goes_round",
    station=Station.ASSEMBLY,
    says=(
        "Grit or pieces left in at the build circulate with the oil and damage the bearings "
        "within hours."
    ),
    parent=DIRT_IN_ASSEMBLY,
    effects={
        conditions.DIRT_IN_OIL: (ALWAYS, sources.BEARING_BROCHURE_PREFACE),
        debris_findings.HARD_CHIPS: (OFTEN, sources.RING_MAKER_CLEANING_MEDIA),
        findings.LEFTOVER_FOUND: (SOMETIMES, COMMON_PRACTICE),
        findings.PIECE_FOUND_INSIDE: (SELDOM, COMMON_PRACTICE),
        bearings_findings.BEARINGS_FAILED_AGAIN: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(debris_findings.HARD_CHIPS),
        example(bearings_shells.SHELLS_EMBEDDED_DIRT, debris_findings.HARD_CHIPS),
    ],
    non_matches=[
        example(
            bearings_shells.SHELLS_WIPED,
            lacks=[debris_findings.HARD_CHIPS, bearings_shells.SHELLS_EMBEDDED_DIRT],
        )
    ],
)

BEARING_OIL_HOLE_MISALIGNED = Cause(
    id="bearing_oil_hole_misaligned",
    station=Station.ASSEMBLY,
    says="a bearing's oil hole does not meet its oilway",
    mechanism="one bearing or shaft runs dry while the gauge reads good or even high",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="refit the bearing and check every hole with a rod",
    source=sources.CAM_BEARING_HOLES_BLOG,
    follows="that one bearing fails",
    also=(
        "bearing in backwards",
        "cam bearing turned",
        "shell without an oil hole",
        "oil hole not lined up",
        "upper and lower shells swapped",
    ),
)
HOLE_THAT_MEETS_NO_OILWAY = LinkGroup(
    id="hole_that_meets_no_oilway",
    station=Station.ASSEMBLY,
    says="A bearing whose hole meets no oilway runs dry behind a good gauge.",
    parent=BEARING_OIL_HOLE_MISALIGNED,
    effects={
        conditions.JOURNAL_DRY: (ALWAYS, sources.CAM_BEARING_HOLES_BLOG),
        bearings_shell_map.SHELL_HOLE_MISMATCH: (ALWAYS, COMMON_PRACTICE),
        bearings_shell_map.ONE_BEARING_WIPED: (OFTEN, COMMON_PRACTICE),
        bearings_findings.BEARINGS_FAILED_AGAIN: (SOMETIMES, JUDGEMENT),
        conditions.BRANCH_DRY: (
            SOMETIMES,
            COMMON_PRACTICE,
        ),  # a cam bearing that feeds the valve gear
    },
    matches=[
        example(bearings_shell_map.SHELL_HOLE_MISMATCH),
        example(direct_gauge.NOTHING_WARNED, bearings_shell_map.ONE_BEARING_WIPED),
    ],
    non_matches=[
        example(
            bearings_shell_map.ONE_BEARING_WIPED, lacks=[bearings_shell_map.SHELL_HOLE_MISMATCH]
        )
    ],
)

CAP_SWAPPED = Cause(
    id="cap_swapped",
    station=Station.ASSEMBLY,
    says="bearing caps mixed up, turned round or wrongly tightened",
    mechanism="the bore is no longer round: it grips in one place, wipes, then leaks",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="match caps to their numbers and direction; tighten as the manual says",
    source=sources.RECONDITIONER_BEARINGS,
    follows="the bearings wipe",
    also=(
        "caps mixed up",
        "main cap on backwards",
        "rod cap reversed",
        "caps not matched",
        "bearing cap on the wrong way",
    ),
)
WORN_BESIDE_THE_PARTING_LINES = LinkGroup(
    id="worn_beside_the_parting_lines",
    station=Station.ASSEMBLY,
    says="Wear beside the parting lines on opposite sides: a cap is in the wrong place.",
    parent=CAP_SWAPPED,
    effects={
        conditions.BEARINGS_DAMAGED: (OFTEN, sources.RECONDITIONER_BEARINGS),
        conditions.CLEARANCES_WIDE: (SOMETIMES, JUDGEMENT),
        findings.CAPS_MIXED: (MOSTLY, COMMON_PRACTICE),
        bearings_shell_map.WEAR_AT_PARTING_LINES: (MOSTLY, sources.RECONDITIONER_BEARINGS),
        bearings_shells.SHELL_BACKS_SHINY: (SOMETIMES, JUDGEMENT),
        bearings_findings.HARD_TO_TURN: (OFTEN, COMMON_PRACTICE),
        findings.CAP_BOLTS_SLACK: (SOMETIMES, COMMON_PRACTICE),
        bearings_shell_map.ONE_BEARING_WIPED: (SOMETIMES, COMMON_PRACTICE),
        bearings_measured.MAIN_CLEARANCE_TOO_WIDE: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings.CAPS_MIXED), example(bearings_shell_map.WEAR_AT_PARTING_LINES)],
    non_matches=[
        example(
            bearings_shells.SHELLS_WIPED,
            lacks=[findings.CAPS_MIXED, bearings_shell_map.WEAR_AT_PARTING_LINES],
        )
    ],
)

SEALANT_DEBRIS = Cause(
    id="sealant_debris",
    station=Station.ASSEMBLY,
    says="surplus sealer squeezed out inside and broke off",
    mechanism="rubbery crumbs collect on screen, relief seat or jets and hold the oil back",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=STRONG_UP),
    remedy="clean everything; seal with a thin bead or the proper gasket",
    source=sources.CLUB_SEALANT_STRAINER,
    follows="a blocked pickup screen",
    also=(
        "silicone in the pan",
        "rtv in the pickup",
        "gasket goo in the screen",
        "too much sealer",
        "sealant strings",
    ),
)
SEALER_GOES_WHERE_THE_OIL_GOES = LinkGroup(
    id="sealer_goes_where_the_oil_goes",
    station=Station.ASSEMBLY,
    says=(
        "Loose sealer goes where the oil goes: pickup screen first, then relief seat, filter or "
        "an oilway."
    ),
    parent=SEALANT_DEBRIS,
    effects={
        conditions.SUCTION_THROTTLED: (MOSTLY, sources.CLUB_SEALANT_STRAINER),
        # crumbs drop off the screen once the suction rests
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (SOMETIMES, COMMON_PRACTICE),
        conditions.RELIEF_HELD_OPEN: (SOMETIMES, COMMON_PRACTICE),
        conditions.FLOW_RESTRICTED: (SELDOM, JUDGEMENT),
        conditions.BRANCH_DRY: (SOMETIMES, sources.TURBO_MAKER_STARVATION),
        conditions.JOURNAL_DRY: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns_speed.FALLS_AS_REVS_RISE, suction_sump.SEALER_ON_SCREEN),
        example(patterns_speed.FALLS_AS_REVS_RISE, suction_sump.SEALER_IN_SUMP),
    ],
    non_matches=[
        example(
            patterns_speed.FALLS_AS_REVS_RISE,
            lacks=[suction_sump.SEALER_ON_SCREEN, suction_sump.SEALER_IN_SUMP],
        )
    ],
)
SEALER_SHOWS_IN_THE_SAMPLE = LinkGroup(
    id="sealer_shows_in_the_sample",
    station=Station.ASSEMBLY,
    says="Silicon in a sample from a fresh engine is sealer as often as dirt.",
    parent=SEALANT_DEBRIS,
    effects={
        oil_analysis.SILICON_HIGH: (SOMETIMES, sources.MARINE_ELEMENT_LIST),
    },
    matches=[example(oil_analysis.SILICON_HIGH)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[oil_analysis.SILICON_HIGH])],
)

ASSEMBLY_LUBE_CLOG = Cause(
    id="assembly_lube_clog",
    station=Station.ASSEMBLY,
    says="assembly grease or jelly clogs screen or filter",
    mechanism="pressure is slow and low for the first minutes, until it has dissolved",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="change oil and filter; pack and prime only as the maker says",
    source=sources.JOBBER_OIL_PUMPS,
    follows="a dry first start",
    also=(
        "assembly lube in the filter",
        "petroleum jelly in the pump",
        "grease plugged the screen",
        "packed with grease",
    ),
)
LOW_UNTIL_THE_GREASE_IS_GONE = LinkGroup(
    id="low_until_the_grease_is_gone",
    station=Station.ASSEMBLY,
    says="Slow and low for a new engine's first minutes, then good: assembly grease washing out.",
    parent=ASSEMBLY_LUBE_CLOG,
    effects={
        conditions.SUCTION_THROTTLED: (OFTEN, sources.JOBBER_OIL_PUMPS),
        conditions.FLOW_RESTRICTED: (SOMETIMES, COMMON_PRACTICE),
        behaviour.LOW_FIRST_MINUTES_THEN_GOOD: (MOSTLY, COMMON_PRACTICE),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, JUDGEMENT),
        course.GOES_AFTER_MINUTES: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(behaviour.LOW_FIRST_MINUTES_THEN_GOOD)],
    non_matches=[
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, lacks=[behaviour.LOW_FIRST_MINUTES_THEN_GOOD]
        )
    ],
)

TIMING_GEAR_SHEDDING = Cause(
    id="timing_gear_shedding",
    station=Station.ASSEMBLY,
    says="plastic or fibre timing teeth or chain guides break up",
    mechanism="the crumbs drop into the sump and cover the pickup screen",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=STRONG_UP, stood_long=UP),
    remedy="clean sump and screen, renew gear or guides; leave no crumbs behind",
    source=sources.CLUB_BLOCKED_SCREENS,
    follows="a blocked pickup screen, worn bearings after years of it",
    also=(
        "plastic timing gear teeth",
        "nylon gear teeth in the pan",
        "broken chain guide",
        "plastic bits in the oil pan",
        "fibre cam gear stripped",
    ),
)
CRUMBS_LEFT_FROM_AN_OLD_REPAIR = LinkGroup(
    id="crumbs_left_from_an_old_repair",
    station=Station.ASSEMBLY,
    says="Crumbs of teeth or guides cover the screen, even years after the gear was renewed.",
    parent=TIMING_GEAR_SHEDDING,
    effects={
        conditions.SUCTION_THROTTLED: (MOSTLY, sources.CLUB_BLOCKED_SCREENS),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (SOMETIMES, COMMON_PRACTICE),
        conditions.RELIEF_HELD_OPEN: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(patterns_speed.FALLS_AS_REVS_RISE, suction_sump.PLASTIC_ON_SCREEN),
        example(suction_sump.PLASTIC_ON_SCREEN, history.EARLIER_BREAKAGE),
    ],
    non_matches=[
        example(patterns_speed.FALLS_AS_REVS_RISE, lacks=[suction_sump.PLASTIC_ON_SCREEN])
    ],
)

FASTENER_LOOSE_INSIDE = Cause(
    id="fastener_loose_inside",
    station=Station.ASSEMBLY,
    says="a bolt inside loose, unlocked or overtightened",
    mechanism=(
        "pump, pickup, tray or bearing cap shifts and oil leaks at the gap, or a part drops off"
    ),
    rate=Rate.RARE,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, raced_or_heeled=UP),
    remedy="torque it, lock it and mark it",
    source=idea_from(sources.BUILD_ARTICLE_2017),
    follows="parts in the sump, pressure lost",
    also=(
        "bolt fell out inside",
        "pump bolts loose",
        "through bolts not torqued",
        "main cap bolts under-torqued",
        "rod nut came loose",
        "loose nut in the sump",
    ),
)
BOLT_THAT_WAS_NEVER_TIGHT = LinkGroup(
    id="bolt_that_was_never_tight",
    station=Station.ASSEMBLY,
    says=(
        "A bolt never tightened or never locked: a joint leaks, a bearing shifts, or the part "
        "drops off."
    ),
    parent=FASTENER_LOOSE_INSIDE,
    effects={
        conditions.OPEN_LEAK_INSIDE: (OFTEN, sources.PINPOINT_TEST_2012),
        conditions.AIR_IN_SUCTION: (SOMETIMES, COMMON_PRACTICE),
        conditions.CLEARANCES_WIDE: (SOMETIMES, COMMON_PRACTICE),
        conditions.BEARINGS_DAMAGED: (SOMETIMES, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SELDOM, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE),
        findings.FASTENER_FOUND_LOOSE: (MOSTLY, COMMON_PRACTICE),
        findings.CAP_BOLTS_SLACK: (OFTEN, COMMON_PRACTICE),
        findings.PIECE_FOUND_INSIDE: (OFTEN, COMMON_PRACTICE),
        bearings_shell_map.MAIN_BEARING_SHIFTED: (SOMETIMES, JUDGEMENT),
        bearings_shells.SHELL_BACKS_SHINY: (SOMETIMES, COMMON_PRACTICE),
        bearings_findings.ROD_THROUGH_BLOCK: (SOMETIMES, COMMON_PRACTICE),
        bearings_findings.ENGINE_BANGED_OR_SHOOK: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(findings.FASTENER_FOUND_LOOSE),
        example(patterns.FELL_SUDDENLY, findings.CAP_BOLTS_SLACK),
    ],
    non_matches=[
        example(
            patterns.FELL_SUDDENLY, lacks=[findings.FASTENER_FOUND_LOOSE, findings.CAP_BOLTS_SLACK]
        )
    ],
)

PART_SHEDDING_INSIDE = Cause(
    id="part_shedding_inside",
    station=Station.ASSEMBLY,
    says="a part inside wears away or breaks up and sheds metal into the oil",
    mechanism=(
        "its metal travels with the oil and clogs screen, valve and oilways, then scores bearings"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="find and renew the part; clean or renew everything the oil passes through",
    source=COMMON_PRACTICE,
    follows="blocked oilways, debris under the relief valve, scored and spun bearings",
    also=("piston pin plug wearing", "cam lobe wiped", "broken part making metal", "making metal"),
)
