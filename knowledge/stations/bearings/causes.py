"""Root causes at the crank bearings, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
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
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.bearings import (
    findings,
    findings_measured,
    findings_shell_map,
    findings_shells,
)

BEARING_WEAR_MAINS = Cause(
    id="bearing_wear_mains",
    station=Station.BEARINGS,
    says="main bearings worn, clearance too wide",
    mechanism="wide main clearance lets oil out at every speed, most when hot and slow",
    rate=Rate.COMMON,
    shifts=Shifts(),
    remedy="measure every journal, regrind if needed, fit new shells",
    source=sources.ARMY_TM_347_CHART_1973,
    follows="the rods run short of oil and the crank is damaged",
    also=(
        "worn main bearings",
        "mains worn out",
        "sloppy bottom end",
        "tired crank bearings",
        "excessive main clearance",
    ),
)
SINKING_OVER_THE_YEARS = LinkGroup(
    id="sinking_over_the_years",
    station=Station.BEARINGS,
    says="Worn mains let pressure fall over the years: good cold, low hot, even wear without heat.",
    note=(
        "Misleads when another leak of the same kind, such as a loose cam bearing, was never "
        "measured."
    ),
    parent=BEARING_WEAR_MAINS,
    effects={
        conditions.CLEARANCES_WIDE: (ALWAYS, sources.CARLEY_1997),
        patterns.DECLINED_OVER_MONTHS: (OFTEN, sources.CARLEY_2000),
        findings_measured.MAIN_CLEARANCE_TOO_WIDE: (ALWAYS, COMMON_PRACTICE),
        findings_shells.SHELLS_WORN_EVENLY: (MOSTLY, COMMON_PRACTICE),
        findings_measured.JOURNAL_NOT_TRUE: (OFTEN, COMMON_PRACTICE),  # journals wear oval
        findings.BEARING_KNOCK: (SOMETIMES, sources.LOWER_ENGINE_NOISE_2006),
        findings.DEEP_KNOCK_UNDER_LOAD: (SOMETIMES, sources.LOWER_ENGINE_NOISE_2006),
        debris_findings.GREY_SOFT_FLAKES: (SELDOM, JUDGEMENT),
    },
    matches=[
        example(patterns_speed.GOOD_COLD_LOW_HOT, patterns.DECLINED_OVER_MONTHS),
        example(patterns_speed.GOOD_COLD_LOW_HOT, findings_measured.MAIN_CLEARANCE_TOO_WIDE),
    ],
    non_matches=[
        example(patterns_speed.GOOD_COLD_LOW_HOT, lacks=[findings_measured.MAIN_CLEARANCE_TOO_WIDE])
    ],
)

BEARING_WEAR_RODS = Cause(
    id="bearing_wear_rods",
    station=Station.BEARINGS,
    says="rod bearings worn, clearance too wide",
    mechanism="wide rod clearance leaks at idle and throws off more oil as the revs rise",
    rate=Rate.COMMON,
    shifts=Shifts(raced_or_heeled=UP),
    remedy="measure every crankpin, regrind if needed, fit new shells",
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    follows="a rod knocks, then fails",
    also=(
        "worn big ends",
        "worn rod bearings",
        "con rod bearings gone",
        "big end clearance",
        "conrod shells worn",
    ),
)
RODS_FLING_MORE_AS_REVS_RISE = LinkGroup(
    id="rods_fling_more_as_revs_rise",
    station=Station.BEARINGS,
    says=(
        "Worn rods throw off more oil the faster they turn: low at idle, disappointing with "
        "revs, finally a rap."
    ),
    parent=BEARING_WEAR_RODS,
    effects={
        conditions.CLEARANCES_WIDE: (ALWAYS, sources.PUMP_MAKER_PRESSURE_FLOW),
        patterns_speed.FALLS_AS_REVS_RISE: (SOMETIMES, sources.PUMP_MAKER_PRESSURE_FLOW),
        patterns.DECLINED_OVER_MONTHS: (OFTEN, idea_from(sources.CARLEY_2000)),
        findings_measured.ROD_CLEARANCE_TOO_WIDE: (ALWAYS, COMMON_PRACTICE),
        findings_shells.SHELLS_WORN_EVENLY: (MOSTLY, COMMON_PRACTICE),
        findings_measured.JOURNAL_NOT_TRUE: (OFTEN, COMMON_PRACTICE),  # journals wear oval
        findings.BEARING_KNOCK: (OFTEN, sources.LOWER_ENGINE_NOISE_2006),
        findings.RAP_DULLED_BY_CUT_OUT: (SOMETIMES, COMMON_PRACTICE),
        debris_findings.COPPER_FLAKES: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns_speed.GOOD_COLD_LOW_HOT, findings.RAP_DULLED_BY_CUT_OUT),
        example(patterns_speed.GOOD_COLD_LOW_HOT, findings_measured.ROD_CLEARANCE_TOO_WIDE),
    ],
    non_matches=[
        example(
            patterns_speed.GOOD_COLD_LOW_HOT,
            lacks=[findings_measured.ROD_CLEARANCE_TOO_WIDE, findings.RAP_DULLED_BY_CUT_OUT],
        )
    ],
)

BEARING_WIPED = Cause(
    id="bearing_wiped",
    station=Station.BEARINGS,
    says="a bearing wiped by itself: seized or overheated with oil present",
    mechanism="the lining melts or smears, clearance opens at once, and the pressure stays low",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(
        high_mileage=UP, freshly_rebuilt=STRONG_UP, stood_long=UP, raced_or_heeled=STRONG_UP
    ),
    remedy="stop; rule out lack of oil first, then repair the crank and fit shells to size",
    source=sources.BEARING_POSTER,
    follows="the shell spins in its seat, the engine seizes",
    also=(
        "wiped bearing",
        "melted bearing",
        "burnt big end",
        "ran a bearing",
        "smeared white metal",
        "bearing picked up",
    ),
)
FELL_AND_STAYED_DOWN_WITH_A_KNOCK = LinkGroup(
    id="fell_and_stayed_down_with_a_knock",
    station=Station.BEARINGS,
    says="When a bearing wipes, pressure falls at once and stays low, and then it knocks.",
    note=(
        "Misleads more often than not: most wiped bearings ran short of oil first. Rule that out "
        "before you blame the bearing."
    ),
    parent=BEARING_WIPED,
    effects={
        conditions.CLEARANCES_WIDE: (MOSTLY, sources.AIRCRAFT_FAULT_ISOLATION),
        conditions.BEARINGS_DAMAGED: (ALWAYS, sources.BEARING_POSTER),
        findings_shells.SHELLS_WIPED: (ALWAYS, COMMON_PRACTICE),  # what the cause is named after
        patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE),
        patterns.SANK_WHILE_RUNNING: (SOMETIMES, JUDGEMENT),
        findings_shell_map.ONE_BEARING_WIPED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(patterns.FELL_SUDDENLY, findings_shells.SHELLS_WIPED)],
    non_matches=[
        example(
            patterns.FELL_SUDDENLY, lacks=[findings_shells.SHELLS_WIPED, findings.BEARING_KNOCK]
        )
    ],
)

BEARING_SPUN = Cause(
    id="bearing_spun",
    station=Station.BEARINGS,
    says="a shell spun in its seat and closed its own oil hole",
    mechanism="that journal runs dry and knocks, while the gauge falls or hardly moves",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="stop; repair the seat and the journal, fit shells with the right grip",
    source=sources.BEARING_WEAR_ANALYSIS,
    follows="the rod breaks out through the block",
    also=("spun bearing", "spun shell", "turned shell", "bearing rotated", "spun rod bearing"),
)
SHELL_TURNED_IN_ITS_SEAT = LinkGroup(
    id="shell_turned_in_its_seat",
    station=Station.BEARINGS,
    says="A spun shell closes its own oil hole: that journal knocks while the gauge hardly moves.",
    note="Misleads when the shell spun because it had seized for lack of oil.",
    parent=BEARING_SPUN,
    effects={
        conditions.BEARINGS_DAMAGED: (ALWAYS, COMMON_PRACTICE),
        conditions.CLEARANCES_WIDE: (OFTEN, COMMON_PRACTICE),
        conditions.ENGINE_FAILED: (SOMETIMES, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (SOMETIMES, JUDGEMENT),
        findings.BEARING_KNOCK: (OFTEN, COMMON_PRACTICE),
        findings_shells.SHELL_SPUN: (ALWAYS, COMMON_PRACTICE),
        findings_shells.SHELL_BACKS_SHINY: (OFTEN, sources.BEARING_WEAR_ANALYSIS),
        findings_shell_map.MAIN_BEARING_SHIFTED: (SOMETIMES, JUDGEMENT),
        findings_shell_map.ONE_BEARING_WIPED: (SOMETIMES, JUDGEMENT),
        findings.ROD_THROUGH_BLOCK: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings.BEARING_KNOCK, findings_shells.SHELL_SPUN),
        example(findings_shells.SHELL_SPUN, findings_shells.SHELL_BACKS_SHINY),
    ],
    non_matches=[example(findings.BEARING_KNOCK, lacks=[findings_shells.SHELL_SPUN])],
)

THRUST_BEARING_WEAR = Cause(
    id="thrust_bearing_wear",
    station=Station.BEARINGS,
    says="thrust bearing worn, too much crank end float",
    mechanism="oil escapes past the worn thrust faces, more while the clutch pushes on the crank",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),
    remedy="find what pushes the crank endways, then renew the thrust bearing",
    source=sources.PINPOINT_TEST_2012,
    follows="the crank cheeks and the block are ruined",
    also=(
        "thrust washers worn",
        "crank end play",
        "too much end float",
        "crank walk",
        "thrust washer fell out",
    ),
)
CRANK_THAT_FLOATS_ENDWAYS = LinkGroup(
    id="crank_that_floats_endways",
    station=Station.BEARINGS,
    says="A crank with too much end float has worn thrust faces, and some oil escapes there.",
    parent=THRUST_BEARING_WEAR,
    effects={
        conditions.CLEARANCES_WIDE: (SOMETIMES, sources.PINPOINT_TEST_2012),
        conditions.METAL_SHED: (SOMETIMES, COMMON_PRACTICE),
        findings_measured.CRANK_END_FLOAT_OVER: (ALWAYS, COMMON_PRACTICE),
        findings.CRANK_MOVES_ENDWISE: (OFTEN, COMMON_PRACTICE),
        findings_shell_map.THRUST_FACE_PLOUGHED: (MOSTLY, COMMON_PRACTICE),
        debris_findings.BRIGHT_SOFT_METAL: (SOMETIMES, JUDGEMENT),
        debris_findings.COPPER_FLAKES: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(findings.CRANK_MOVES_ENDWISE),
        example(findings_measured.CRANK_END_FLOAT_OVER),
    ],
    non_matches=[
        example(patterns_speed.GOOD_COLD_LOW_HOT, lacks=[findings_measured.CRANK_END_FLOAT_OVER])
    ],
)

BEARING_WRONG_SIZE = Cause(
    id="bearing_wrong_size",
    station=Station.BEARINGS,
    says="shells of the wrong size, or mixed, were fitted",
    mechanism="too much clearance is low from the first start; too little reads high, then wipes",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="measure every journal and seat, fit shells to suit",
    source=sources.DIESEL_WORKSHOP_2015,
    follows="the bearings wipe",
    also=(
        "bearings set too loose",
        "clearances set too wide at the rebuild",
        "built too loose",
        "wrong bearings fitted",
        "standard shells on a reground crank",
        "wrong undersize",
        "mixed bearing sizes",
        "bearing clearance set wrong",
    ),
)
SHELLS_THAT_DO_NOT_SUIT_THE_CRANK = LinkGroup(
    id="shells_that_do_not_suit_the_crank",
    station=Station.BEARINGS,
    says=(
        "Shells that do not suit the crank: too loose, low from the first start; too tight, soon "
        "wiped."
    ),
    parent=BEARING_WRONG_SIZE,
    effects={
        conditions.CLEARANCES_WIDE: (OFTEN, sources.DIESEL_WORKSHOP_2015),
        conditions.PRESSURE_HIGH: (SELDOM, PHYSICS),  # where they are too tight
        conditions.BEARINGS_DAMAGED: (SOMETIMES, sources.BEARING_BROCHURE_PREFACE),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, sources.DIESEL_WORKSHOP_2015),
        findings_shell_map.WRONG_SHELLS_FITTED: (MOSTLY, COMMON_PRACTICE),
        findings_measured.MAIN_CLEARANCE_TOO_WIDE: (OFTEN, COMMON_PRACTICE),
        findings_measured.ROD_CLEARANCE_TOO_WIDE: (OFTEN, COMMON_PRACTICE),
        findings_measured.BEARING_CLEARANCE_TOO_TIGHT: (SOMETIMES, COMMON_PRACTICE),
        findings.HARD_TO_TURN: (SOMETIMES, COMMON_PRACTICE),
        findings.BEARING_KNOCK: (SOMETIMES, JUDGEMENT),
        findings_shell_map.ONE_BEARING_WIPED: (SOMETIMES, JUDGEMENT),
        findings.BEARINGS_FAILED_AGAIN: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(behaviour.LOW_FROM_FIRST_START, findings_shell_map.WRONG_SHELLS_FITTED),
        example(
            behaviour.LOW_FROM_FIRST_START,
            findings_measured.ROD_CLEARANCE_TOO_WIDE,
            findings_measured.MAIN_CLEARANCE_TOO_WIDE,
        ),
    ],
    non_matches=[
        example(
            behaviour.LOW_FROM_FIRST_START,
            lacks=[
                findings_shell_map.WRONG_SHELLS_FITTED,
                findings_measured.MAIN_CLEARANCE_TOO_WIDE,
                findings_measured.ROD_CLEARANCE_TOO_WIDE,
            ],
        )
    ],
)
