"""Further links at the crank bearings: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, effects_of, example, origins_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import findings as assembly_findings
from knowledge.stations.bearings import (
    causes,
    causes_geometry,
    findings,
    findings_measured,
    findings_shell_map,
    findings_shells,
)
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.oil import findings_analysis as oil_analysis

ALL_ALIKE_OR_WORST_FAR_FROM_THE_PUMP = LinkGroup(
    id="all_alike_or_worst_far_from_the_pump",
    station=Station.BEARINGS,
    says="All wiped alike, or worst far from the pump: the oil failed first, then the bearings.",
    parent=conditions.BEARINGS_STARVED,
    effects={
        findings_shells.SHELLS_WIPED: (MOSTLY, sources.RECONDITIONER_BEARINGS),
        findings_shell_map.ALL_BEARINGS_WIPED: (OFTEN, COMMON_PRACTICE),
        findings_shell_map.WORST_FAR_FROM_PUMP: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(findings_shell_map.ALL_BEARINGS_WIPED),
        example(findings_shells.SHELLS_WIPED, findings_shell_map.WORST_FAR_FROM_PUMP),
    ],
    non_matches=[
        example(
            findings_shell_map.ONE_BEARING_WIPED,
            lacks=[findings_shell_map.ALL_BEARINGS_WIPED, findings_shell_map.WORST_FAR_FROM_PUMP],
        )
    ],
)
ONE_ALONE_AND_THE_OTHERS_SOUND = LinkGroup(
    id="one_alone_and_the_others_sound",
    station=Station.BEARINGS,
    says="One wiped and the others sound: look at its oil hole, size and rod, not at the pump.",
    links=(
        *effects_of(
            conditions.JOURNAL_DRY,
            {
                findings_shell_map.ONE_BEARING_WIPED: (SOMETIMES, COMMON_PRACTICE),
                findings.BEARINGS_FAILED_AGAIN: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            delivery_causes_galleries.GALLERY_BLOCKED,
            {
                findings_shell_map.ONE_BEARING_WIPED: (SOMETIMES, COMMON_PRACTICE),
                findings.BEARINGS_FAILED_AGAIN: (SOMETIMES, JUDGEMENT),
            },
        ),
    ),
    matches=[
        example(findings_shell_map.ONE_BEARING_WIPED),
        example(findings_shells.SHELLS_WIPED, findings_shell_map.ONE_BEARING_WIPED),
    ],
    non_matches=[
        example(findings_shell_map.ALL_BEARINGS_WIPED, lacks=[findings_shell_map.ONE_BEARING_WIPED])
    ],
)
DIRT_PRESSED_INTO_THE_SHELLS = LinkGroup(
    id="dirt_pressed_into_the_shells",
    station=Station.BEARINGS,
    says=(
        "Dirt embedded in the loaded halves and scores round the shells: dirt came first, not "
        "lack of oil."
    ),
    parent=conditions.DIRT_IN_OIL,
    effects={
        findings_shells.SHELLS_EMBEDDED_DIRT: (MOSTLY, sources.BEARING_POSTER),
        findings_shell_map.LOWER_HALVES_EMBEDDED: (OFTEN, COMMON_PRACTICE),
        findings_shells.SHELLS_SCRATCHED: (MOSTLY, sources.BEARING_POSTER),
    },
    matches=[
        example(findings_shell_map.LOWER_HALVES_EMBEDDED),
        example(findings_shells.SHELLS_SCRATCHED, findings_shells.SHELLS_EMBEDDED_DIRT),
    ],
    non_matches=[
        example(
            findings_shells.SHELLS_WIPED,
            lacks=[findings_shells.SHELLS_EMBEDDED_DIRT, findings_shell_map.LOWER_HALVES_EMBEDDED],
        )
    ],
)
SHED_METAL_SCORES_THE_REST = LinkGroup(
    id="shed_metal_scores_the_rest",
    station=Station.BEARINGS,
    says=(
        "Metal shed by one part scores the shells of the others: such scores may be following "
        "damage."
    ),
    parent=conditions.METAL_SHED,
    effects={
        findings_shells.SHELLS_EMBEDDED_DIRT: (SOMETIMES, COMMON_PRACTICE),
        findings_shells.SHELLS_SCRATCHED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings_shells.SHELLS_SCRATCHED, debris_findings.METAL_IN_FILTER)],
    non_matches=[
        example(findings_shells.SHELLS_SCRATCHED, lacks=[debris_findings.METAL_IN_FILTER])
    ],
)
DARK_AND_ETCHED_SHELLS = LinkGroup(
    id="dark_and_etched_shells",
    station=Station.BEARINGS,
    says="Dark, spongy, etched shells were attacked by acid or by water in the oil.",
    child=findings_shells.SHELLS_ETCHED,
    origins={
        oil_causes_condition.OIL_DEGRADED: (SOMETIMES, idea_from(sources.BEARING_FAILURE_TYPES)),
        oil_causes_contamination.COOLANT_IN_OIL: (SOMETIMES, sources.LABORATORY_COOLANT),
    },
    matches=[example(findings_shells.SHELLS_ETCHED)],
    non_matches=[example(lacks=[findings_shells.SHELLS_ETCHED])],
)
PITS_ON_THE_UNLOADED_HALF = LinkGroup(
    id="pits_on_the_unloaded_half",
    station=Station.BEARINGS,
    says="Pits on the unloaded half come from air in the oil.",
    parent=conditions.OIL_AERATED,
    effects={
        findings_shell_map.SHELLS_PITTED_UNLOADED: (SOMETIMES, sources.BEARING_WEAR_ANALYSIS),
    },
    matches=[example(findings_shell_map.SHELLS_PITTED_UNLOADED)],
    non_matches=[example(lacks=[findings_shell_map.SHELLS_PITTED_UNLOADED])],
)
DAMAGED_BEARING_KNOCKS_AND_SHEDS = LinkGroup(
    id="damaged_bearing_knocks_and_sheds",
    station=Station.BEARINGS,
    says="A damaged bearing knocks and sheds copper and white metal, whatever damaged it.",
    parent=conditions.BEARINGS_DAMAGED,
    effects={
        findings.BEARING_KNOCK: (OFTEN, sources.CARLEY_1997),
        findings.DEEP_KNOCK_UNDER_LOAD: (SOMETIMES, COMMON_PRACTICE),
        findings.RAP_DULLED_BY_CUT_OUT: (SOMETIMES, COMMON_PRACTICE),
        findings.HARD_TO_TURN: (SOMETIMES, COMMON_PRACTICE),
        debris_findings.COPPER_FLAKES: (OFTEN, COMMON_PRACTICE),
        debris_findings.GREY_SOFT_FLAKES: (OFTEN, idea_from(sources.INSIDE_YOUR_FILTER)),
        debris_findings.LINING_STRIP: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings.BEARING_KNOCK),
        example(debris_findings.COPPER_FLAKES),
        example(debris_findings.LINING_STRIP),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[
                findings.BEARING_KNOCK,
                debris_findings.COPPER_FLAKES,
                debris_findings.GREY_SOFT_FLAKES,
            ],
        )
    ],
)
BEARING_THAT_LETS_GO_DROPS_PRESSURE = LinkGroup(
    id="bearing_that_lets_go_drops_pressure",
    station=Station.BEARINGS,
    says="A bearing that wipes or spins opens its clearance at once, and pressure falls with it.",
    parent=conditions.BEARINGS_DAMAGED,
    effects={patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE)},
    matches=[example(findings.BEARING_KNOCK, patterns.FELL_SUDDENLY)],
    non_matches=[example(findings.BEARING_KNOCK, lacks=[patterns.FELL_SUDDENLY])],
)
WIPED_SHELLS_AND_SCORED_CRANK = LinkGroup(
    id="wiped_shells_and_scored_crank",
    station=Station.BEARINGS,
    says="Wiped shells, a scored crank, wide clearances: that is damage, not yet its cause.",
    parent=conditions.BEARINGS_DAMAGED,
    effects={
        findings_shells.SHELLS_WIPED: (OFTEN, sources.RECONDITIONER_BEARINGS),
        findings_shells.CRANK_SCORED: (OFTEN, COMMON_PRACTICE),
        findings_shells.SHELL_SPUN: (SOMETIMES, COMMON_PRACTICE),
        findings_shell_map.MAIN_BEARING_SHIFTED: (SELDOM, JUDGEMENT),
        findings_measured.MAIN_CLEARANCE_TOO_WIDE: (SOMETIMES, COMMON_PRACTICE),
        findings_measured.ROD_CLEARANCE_TOO_WIDE: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings_shells.SHELLS_WIPED), example(findings_shells.CRANK_SCORED)],
    non_matches=[example(lacks=[findings_shells.SHELLS_WIPED, findings_shells.CRANK_SCORED])],
)
END_OF_THE_CHAIN = LinkGroup(
    id="end_of_the_chain",
    station=Station.BEARINGS,
    says=(
        "Seized, stopped, or a rod through the block: always the end of a chain of events, never "
        "the start."
    ),
    parent=conditions.ENGINE_FAILED,
    effects={
        findings.ENGINE_SEIZED: (OFTEN, sources.CARLEY_1997),
        findings.ROD_THROUGH_BLOCK: (SOMETIMES, COMMON_PRACTICE),
        findings.STOPPED_WITH_LOSS_OF_POWER: (OFTEN, COMMON_PRACTICE),
        findings.HARD_TO_TURN: (SOMETIMES, COMMON_PRACTICE),
        assembly_findings.PIECE_FOUND_INSIDE: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.ENGINE_SEIZED), example(findings.ROD_THROUGH_BLOCK)],
    non_matches=[
        example(
            findings.STOPPED_WITH_LOSS_OF_POWER,
            lacks=[findings.ENGINE_SEIZED, findings.ROD_THROUGH_BLOCK],
        )
    ],
)
SHELLS_PAST_USE = LinkGroup(
    id="shells_past_use",
    station=Station.BEARINGS,
    says="Ruined shells show that the oil film broke, not why.",
    child=findings_shells.SHELLS_FOUND_RUINED,
    origins={
        conditions.BEARINGS_DAMAGED: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WEAR_RODS: (OFTEN, COMMON_PRACTICE),
        causes.BEARING_WEAR_MAINS: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings_shells.SHELLS_FOUND_RUINED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_shells.SHELLS_FOUND_RUINED])],
)
SOME_JOURNALS_DRY = LinkGroup(
    id="some_journals_dry",
    station=Station.BEARINGS,
    says="Some journals dry and others not: oil was lost on the way, at a leak or a blocked feed.",
    child=findings_shells.SEVERAL_JOURNALS_DRY,
    origins={
        conditions.BEARINGS_STARVED: (SOMETIMES, COMMON_PRACTICE),
        conditions.JOURNAL_DRY: (SOMETIMES, COMMON_PRACTICE),
        conditions.OPEN_LEAK_INSIDE: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_shells.SEVERAL_JOURNALS_DRY)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_shells.SEVERAL_JOURNALS_DRY])],
)
LIGHT_WEAR_WITHOUT_HEAT = LinkGroup(
    id="light_wear_without_heat",
    station=Station.BEARINGS,
    says="Light wear without heat: the bearings had oil; at most they leak through wide clearance.",
    child=findings_shells.SHELLS_SMOOTH_LIGHT_WEAR,
    origins={
        causes.BEARING_WEAR_MAINS: (OFTEN, COMMON_PRACTICE),
        causes.BEARING_WEAR_RODS: (OFTEN, COMMON_PRACTICE),
        causes_geometry.LINE_BORE_MISALIGNED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings_shells.SHELLS_SMOOTH_LIGHT_WEAR)],
    non_matches=[example(findings_shells.SHELLS_WIPED)],
)
LEAD_FROM_THE_LINING = LinkGroup(
    id="lead_from_the_lining",
    station=Station.BEARINGS,
    says="Lead alone in the sample may be the bearings' overlay wearing off, before any copper.",
    note="Misleads with leaded fuel.",
    child=oil_analysis.LEAD_HIGH_ALONE,
    origins={
        causes.BEARING_WEAR_MAINS: (SOMETIMES, sources.OIL_ANALYSIS_TABLE),
        causes.BEARING_WEAR_RODS: (SOMETIMES, sources.OIL_ANALYSIS_TABLE),
    },
    matches=[example(oil_analysis.LEAD_HIGH_ALONE)],
    non_matches=[example(lacks=[oil_analysis.LEAD_HIGH_ALONE])],
)
BANG_AND_SHAKING = LinkGroup(
    id="bang_and_shaking",
    station=Station.BEARINGS,
    says="A bang or shaking is the engine breaking, not the root cause.",
    child=findings.ENGINE_BANGED_OR_SHOOK,
    origins={
        conditions.ENGINE_FAILED: (OFTEN, COMMON_PRACTICE),
        conditions.BEARINGS_DAMAGED: (SOMETIMES, COMMON_PRACTICE),
        causes_geometry.BENT_ROD_OR_CRANK: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings.ENGINE_BANGED_OR_SHOOK)],
    non_matches=[example(patterns.ENGINE_RUNS_NORMALLY)],
)
RATTLE_SOMEWHERE = LinkGroup(
    id="rattle_somewhere",
    station=Station.BEARINGS,
    says="A rattle that nobody can place is often valve gear or bearings running dry.",
    child=findings.RATTLE_OF_UNKNOWN_PLACE,
    origins={
        conditions.VALVE_GEAR_DRY: (SOMETIMES, JUDGEMENT),
        conditions.BEARINGS_DAMAGED: (SOMETIMES, JUDGEMENT),
        conditions.DRAINS_BACK: (SOMETIMES, COMMON_PRACTICE),  # at the start
    },
    matches=[example(findings.RATTLE_OF_UNKNOWN_PLACE)],
    non_matches=[example(patterns.ENGINE_RUNS_NORMALLY)],
)
LOCKED_HOT_FREE_COLD = LinkGroup(
    id="locked_hot_free_cold",
    station=Station.BEARINGS,
    says="Locked hot and free when cold: bearings or pistons picked up and let go.",
    child=findings.LOCKED_THEN_FREED,
    origins={
        conditions.BEARINGS_DAMAGED: (SOMETIMES, COMMON_PRACTICE),
        oil_causes_condition.OIL_OVERHEATED: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings.LOCKED_THEN_FREED)],
    non_matches=[example(patterns.ENGINE_RUNS_NORMALLY)],
)
BEARINGS_GONE_A_SECOND_TIME = LinkGroup(
    id="bearings_gone_a_second_time",
    station=Station.BEARINGS,
    says="Bearings failed a second time: the first repair cured the damage and left the cause.",
    parent=conditions.BEARINGS_STARVED,
    effects={
        findings.BEARINGS_FAILED_AGAIN: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(patterns.GAUGE_READS_LOW, findings.BEARINGS_FAILED_AGAIN)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.BEARINGS_FAILED_AGAIN])],
)
DEAD_ENGINE_DIMS_THE_REST = LinkGroup(
    id="dead_engine_dims_the_rest",
    station=Station.BEARINGS,
    says="An engine that stops also stops charging: the other gauges dim for that reason too.",
    parent=conditions.ENGINE_FAILED,
    effects={
        patterns.OTHER_GAUGES_ALSO_WRONG: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings.ENGINE_SEIZED, patterns.OTHER_GAUGES_ALSO_WRONG)],
    non_matches=[example(patterns.OTHER_GAUGES_ALSO_WRONG, patterns.ENGINE_RUNS_NORMALLY)],
)
WANT_OF_OIL_WRITTEN_ON_THE_METAL = LinkGroup(
    id="want_of_oil_written_on_the_metal",
    station=Station.BEARINGS,
    says="Heat colours and a seized shell show lack of oil; debris marks without heat do not.",
    links=(
        *effects_of(
            conditions.BEARINGS_DAMAGED,
            {
                findings_shells.BEARING_FOUND_SEIZED: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *origins_of(
            findings_shells.SIGNS_OF_STARVATION,
            {
                conditions.BEARINGS_STARVED: (MOSTLY, sources.RECONDITIONER_BEARINGS),
                conditions.JOURNAL_DRY: (OFTEN, sources.RECONDITIONER_BEARINGS),
            },
        ),
        *origins_of(
            findings_shells.DAMAGED_BY_DEBRIS_ONLY,
            {
                conditions.DIRT_IN_OIL: (SOMETIMES, idea_from(sources.BEARING_BROCHURE_PREFACE)),
                conditions.METAL_SHED: (SELDOM, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[example(findings_shells.SIGNS_OF_STARVATION, patterns.GAUGE_READS_ZERO)],
    non_matches=[example(patterns.GAUGE_READS_ZERO, lacks=[findings_shells.SIGNS_OF_STARVATION])],
)
