"""Further links at the top end: one finding of several causes, states of the circuit."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import LinkGroup, effects_of, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.topend import findings, findings_cam

FLOODED_ABOVE_EMPTY_BELOW = LinkGroup(
    id="flooded_above_empty_below",
    station=Station.TOPEND,
    says="Oil held up around the rockers is missing from the sump.",
    parent=suction_causes_sump.DRAINBACK_POOR,
    effects={
        findings.ROCKERS_FLOODED: (OFTEN, idea_from(sources.OIL_STARVATION_ARTICLE)),
    },
    matches=[example(findings.ROCKERS_FLOODED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.ROCKERS_FLOODED])],
)
VALVE_GEAR_CRIES_FIRST = LinkGroup(
    id="valve_gear_cries_first",
    station=Station.TOPEND,
    says="The valve gear is the far end of the oil circuit: short of oil, it clatters first.",
    note="Misleads with an exhaust leak that ticks, and with solid lifters that need adjusting.",
    parent=conditions.VALVE_GEAR_DRY,
    effects={
        findings.LIFTERS_CLATTER: (MOSTLY, sources.CARLEY_1997),
        findings.NO_OIL_AT_ROCKERS: (OFTEN, COMMON_PRACTICE),
        findings.VALVE_GEAR_FOUND_DRY: (OFTEN, COMMON_PRACTICE),
        findings.LIFTERS_FOUND_DRAINED: (SOMETIMES, COMMON_PRACTICE),
        findings.TIMING_COVER_RATTLES: (SOMETIMES, JUDGEMENT),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings.LIFTERS_CLATTER),
        example(findings.LIFTERS_CLATTER),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.LIFTERS_CLATTER])],
)
WHAT_A_DRY_TOP_END_LEAVES_BEHIND = LinkGroup(
    id="what_a_dry_top_end_leaves_behind",
    station=Station.TOPEND,
    says="A top end run dry wipes lobes and scores journals, then parts seize and bend.",
    parent=conditions.VALVE_GEAR_DRY,
    effects={
        findings_cam.CAM_LOBES_WIPED: (SOMETIMES, COMMON_PRACTICE),
        findings_cam.CAM_JOURNALS_WORN: (SOMETIMES, COMMON_PRACTICE),
        findings_cam.CAM_BEARING_FOUND_BAD: (SELDOM, COMMON_PRACTICE),
        findings.CAMSHAFT_BROKEN: (SELDOM, COMMON_PRACTICE),
        findings.PUSHROD_OFF_OR_BENT: (SELDOM, COMMON_PRACTICE),
    },
    matches=[example(findings.VALVE_GEAR_FOUND_DRY, findings_cam.CAM_LOBES_WIPED)],
    non_matches=[example(lacks=[findings.VALVE_GEAR_FOUND_DRY, findings_cam.CAM_LOBES_WIPED])],
)
CAM_DAMAGE_THAT_FOLLOWED = LinkGroup(
    id="cam_damage_that_followed",
    station=Station.TOPEND,
    says=(
        "Lack of oil and dirt ruin cam bearings along with the others: they need not be the root "
        "cause."
    ),
    links=(
        *effects_of(
            conditions.BEARINGS_STARVED,
            {
                findings_cam.CAM_BEARING_FOUND_BAD: (SELDOM, COMMON_PRACTICE),
                findings_cam.CAM_JOURNALS_WORN: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.DIRT_IN_OIL,
            {
                findings_cam.CAM_JOURNALS_WORN: (SOMETIMES, COMMON_PRACTICE),
                findings_cam.CAM_BEARING_FOUND_BAD: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.METAL_SHED,
            {
                findings_cam.CAM_JOURNALS_WORN: (SELDOM, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.ENGINE_FAILED,
            {
                findings.CAMSHAFT_BROKEN: (SELDOM, JUDGEMENT),
                findings.PUSHROD_OFF_OR_BENT: (SOMETIMES, JUDGEMENT),
            },
        ),
    ),
    matches=[example(findings_cam.CAM_BEARING_FOUND_BAD, findings_cam.CAM_JOURNALS_WORN)],
    non_matches=[
        example(lacks=[findings_cam.CAM_BEARING_FOUND_BAD, findings_cam.CAM_JOURNALS_WORN])
    ],
)
LIFTERS_FULL_OF_FOAM = LinkGroup(
    id="lifters_full_of_foam",
    station=Station.TOPEND,
    says="Aerated oil collapses the lifters at high revs, especially with an overfilled sump.",
    child=findings.CLATTERS_ONLY_AT_HIGH_REVS,
    origins={
        conditions.OIL_AERATED: (OFTEN, COMMON_PRACTICE),
        oil_causes.OIL_LEVEL_HIGH: (OFTEN, sources.MARINE_SERVICE_MANUAL_1999),
    },
    matches=[example(findings.CLATTERS_ONLY_AT_HIGH_REVS)],
    non_matches=[example(lacks=[findings.CLATTERS_ONLY_AT_HIGH_REVS])],
)
RATTLE_UNTIL_THE_LINE_IS_FULL = LinkGroup(
    id="rattle_until_the_line_is_full",
    station=Station.TOPEND,
    says=(
        "After the oil has drained back, chain and lifters rattle at the start until the line is "
        "full."
    ),
    parent=conditions.DRAINS_BACK,
    effects={
        findings.TIMING_COVER_RATTLES: (OFTEN, COMMON_PRACTICE),
        findings.LIFTERS_CLATTER: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(behaviour.SLOW_AFTER_STANDING, findings.TIMING_COVER_RATTLES)],
    non_matches=[
        example(
            behaviour.SLOW_AFTER_STANDING,
            lacks=[findings.TIMING_COVER_RATTLES, findings.LIFTERS_CLATTER],
        )
    ],
)
TOP_END_DRY_THOUGH_THE_GALLERY_IS_FULL = LinkGroup(
    id="top_end_dry_though_the_gallery_is_full",
    station=Station.TOPEND,
    says=(
        "Dry rockers with a good gauge: the branch to the head is blocked, often at a cam bearing."
    ),
    child=findings.NO_OIL_AT_ROCKERS,
    origins={
        conditions.BRANCH_DRY: (MOSTLY, COMMON_PRACTICE),
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED: (OFTEN, sources.CAM_BEARING_HOLES_BLOG),
    },
    matches=[example(findings.NO_OIL_AT_ROCKERS)],
    non_matches=[example(lacks=[findings.NO_OIL_AT_ROCKERS])],
)
