"""Further links at the assembly: one finding of several causes, states of the circuit."""

from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.model import ALWAYS, OFTEN, RARELY, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, effects_of, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes, findings
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.stations.topend import findings as topend_findings
from knowledge.stations.topend import findings_cam as topend_cam

PART_THAT_DOES_NOT_BELONG = LinkGroup(
    id="part_that_does_not_belong",
    station=Station.ASSEMBLY,
    says="A part that does not belong there: ask what it blocks, leaks or lets slip.",
    child=findings.FOREIGN_PART_FITTED,
    origins={
        bearings_causes.BEARING_WRONG_SIZE: (OFTEN, COMMON_PRACTICE),
        pump_causes_fitted.PUMP_WRONG_PART: (OFTEN, COMMON_PRACTICE),
        relief_causes.RELIEF_SPRING_WRONG: (SOMETIMES, COMMON_PRACTICE),
        instrument_causes.SENDER_MISMATCH: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings.FOREIGN_PART_FITTED)],
    non_matches=[example(lacks=[findings.FOREIGN_PART_FITTED])],
)
PLUG_LEFT_WHERE_OIL_SHOULD_GO = LinkGroup(
    id="plug_left_where_oil_should_go",
    station=Station.ASSEMBLY,
    says="A plug or cap left in an oilway shuts off everything behind it.",
    parent=delivery_causes_galleries.GALLERY_BLOCKED,
    effects={
        findings.LEFTOVER_FOUND: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.LEFTOVER_FOUND)],
    non_matches=[example(lacks=[findings.LEFTOVER_FOUND])],
)
PART_THAT_GRINDS_ITSELF_AWAY = LinkGroup(
    id="part_that_grinds_itself_away",
    station=Station.ASSEMBLY,
    says=(
        "A part that grinds itself away sends its metal round with the oil: screen, relief "
        "valve, oilways, bearings."
    ),
    links=(
        *effects_of(
            causes.PART_SHEDDING_INSIDE,
            {
                conditions.DIRT_IN_OIL: (ALWAYS, COMMON_PRACTICE),
                bearings_findings.PISTON_OR_PIN_BROKEN: (SOMETIMES, COMMON_PRACTICE),
                findings.PIECE_FOUND_INSIDE: (OFTEN, COMMON_PRACTICE),
                debris_findings.METAL_THROUGHOUT: (OFTEN, COMMON_PRACTICE),
                topend_cam.CAM_LOBES_WIPED: (SOMETIMES, COMMON_PRACTICE),
                topend_findings.LIFTERS_CLATTER: (
                    SOMETIMES,
                    JUDGEMENT,
                ),  # a lifter or lobe breaking up
            },
        ),
        *effects_of(
            conditions.ENGINE_FAILED,
            {
                bearings_findings.PISTON_OR_PIN_BROKEN: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            causes.PART_SHEDDING_INSIDE,
            {
                findings.FOREIGN_PART_FITTED: (SOMETIMES, JUDGEMENT),
            },
        ),
    ),
    matches=[example(bearings_findings.PISTON_OR_PIN_BROKEN, debris_findings.METAL_THROUGHOUT)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[debris_findings.METAL_THROUGHOUT])],
)
SOMETHING_SMALL_LEFT_OUT = LinkGroup(
    id="something_small_left_out",
    station=Station.ASSEMBLY,
    says="If one small part was left out, check for others.",
    child=findings.SMALL_PART_LEFT_OUT,
    origins={
        suction_causes_sump.BAFFLE_MISSING: (SOMETIMES, COMMON_PRACTICE),
        topend_causes_feeds.RESTRICTOR_MISSING: (SOMETIMES, COMMON_PRACTICE),
        delivery_causes_galleries.GALLERY_SEAL_LEAK: (SELDOM, COMMON_PRACTICE),
        delivery_causes_galleries.GALLERY_PLUG_TOO_DEEP: (RARELY, JUDGEMENT),
    },
    matches=[example(findings.SMALL_PART_LEFT_OUT)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.SMALL_PART_LEFT_OUT])],
)
