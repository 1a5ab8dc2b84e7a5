"""What the debris shows: links from causes and damage to debris."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings
from knowledge.model import MOSTLY, OFTEN, RARELY, SELDOM, SOMETIMES, Station
from knowledge.rule_api import LinkGroup, effects_of, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_geometry as bearings_causes_geometry
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import findings_wear as pump_wear
from knowledge.stations.relief import findings as relief_findings
from knowledge.stations.topend import causes as topend_causes

METAL_GOES_TO_THE_FILTER = LinkGroup(
    id="metal_goes_to_the_filter",
    station=Station.BEARINGS,
    says="Shed metal goes to the filter, to every trap and, in the end, everywhere.",
    note="Misleads when metal is taken for the root cause: it shows that a part broke up, not why.",
    links=(
        *effects_of(
            conditions.METAL_SHED,
            {
                findings.METAL_IN_FILTER: (MOSTLY, sources.INSIDE_YOUR_FILTER),
                findings.METAL_IN_PAN: (MOSTLY, COMMON_PRACTICE),
                findings.METAL_THROUGHOUT: (OFTEN, sources.SERVICE_BULLETIN_22_NA_074),
                findings.BEARING_PIECES_IN_PUMP: (SOMETIMES, JUDGEMENT),
                findings.CRANK_TRAP_METAL: (SOMETIMES, COMMON_PRACTICE),
                findings.MAGNETIC_METAL: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            conditions.BEARINGS_DAMAGED,
            {
                findings.BRIGHT_SOFT_METAL: (SOMETIMES, idea_from(sources.INSIDE_YOUR_FILTER)),
            },
        ),
    ),
    matches=[example(findings.METAL_IN_FILTER), example(findings.METAL_THROUGHOUT)],
    non_matches=[example(lacks=[findings.METAL_IN_FILTER])],
)
WHAT_THE_MAGNET_PICKS_UP = LinkGroup(
    id="what_the_magnet_picks_up",
    station=Station.BEARINGS,
    says="What the magnet picks up is steel: gears, shafts, drives, not bearing lining.",
    child=findings.MAGNETIC_METAL,
    origins={
        pump_causes.PUMP_GEAR_WEAR: (SELDOM, JUDGEMENT),
        pump_causes.PUMP_DEBRIS_LOCK: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_DRIVE_ERRATIC: (OFTEN, COMMON_PRACTICE),
    },
    matches=[example(findings.MAGNETIC_METAL)],
    non_matches=[example(findings.METAL_IN_FILTER, lacks=[findings.MAGNETIC_METAL])],
)
METAL_SHED_FIRST_HOLDS_THE_VALVE = LinkGroup(
    id="metal_shed_first_holds_the_valve",
    station=Station.BEARINGS,
    says="A part that sheds metal before anything ran dry can put a sliver under the relief valve.",
    child=conditions.RELIEF_HELD_OPEN,
    origins={
        pump_causes.PUMP_GEAR_WEAR: (SELDOM, JUDGEMENT),
        pump_causes.PUMP_COVER_SCORED: (RARELY, JUDGEMENT),
        pump_causes.PUMP_DEBRIS_LOCK: (SELDOM, sources.JOBBER_OIL_PUMPS),
        conditions.PUMP_DRIVE_ERRATIC: (RARELY, JUDGEMENT),
        bearings_causes.BEARING_WIPED: (RARELY, JUDGEMENT),
        bearings_causes.BEARING_SPUN: (RARELY, JUDGEMENT),
        bearings_causes.THRUST_BEARING_WEAR: (SELDOM, JUDGEMENT),
        bearings_causes_geometry.OVERLOAD_LUGGING: (SELDOM, JUDGEMENT),
        topend_causes.CAM_BEARING_WEAR: (RARELY, JUDGEMENT),
    },
    matches=[
        example(relief_findings.DEBRIS_ON_RELIEF_SEAT, pump_wear.GEARS_WORN_OUT),
        example(relief_findings.DEBRIS_ON_RELIEF_SEAT, findings.MAGNETIC_METAL),
    ],
    non_matches=[example(lacks=[relief_findings.DEBRIS_ON_RELIEF_SEAT])],
)
COPPER_NEED_NOT_BE_THE_CRANK = LinkGroup(
    id="copper_need_not_be_the_crank",
    station=Station.BEARINGS,
    says=(
        "Copper or grey flakes need not come from the crank: cam bearings are made of the same "
        "metal."
    ),
    parent=topend_causes.CAM_BEARING_WEAR,
    effects={
        findings.COPPER_FLAKES: (SOMETIMES, COMMON_PRACTICE),
        findings.GREY_SOFT_FLAKES: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings.COPPER_FLAKES)],
    non_matches=[example(lacks=[findings.COPPER_FLAKES])],
)
GRIT_FROM_THE_WORKSHOP = LinkGroup(
    id="grit_from_the_workshop",
    station=Station.BEARINGS,
    says="Sand, shot, swarf and bristle come from a workshop and travel with the oil.",
    parent=conditions.DIRT_IN_OIL,
    effects={
        findings.HARD_CHIPS: (SOMETIMES, sources.RING_MAKER_CLEANING_MEDIA),
        findings.CRANK_TRAP_METAL: (SOMETIMES, COMMON_PRACTICE),
        findings.METAL_IN_FILTER: (SOMETIMES, COMMON_PRACTICE),
        findings.METAL_IN_SCREEN: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.HARD_CHIPS), example(findings.CRANK_TRAP_METAL, findings.HARD_CHIPS)],
    non_matches=[example(lacks=[findings.HARD_CHIPS])],
)
WHAT_OLD_OIL_LAYS_DOWN = LinkGroup(
    id="what_old_oil_lays_down",
    station=Station.BEARINGS,
    says="Old oil leaves hard carbon, and sludge in the crank's traps.",
    links=(
        *effects_of(
            conditions.OIL_SLUDGED,
            {
                findings.CRANK_TRAP_FULL: (SOMETIMES, COMMON_PRACTICE),
                findings.CARBON_FLAKES: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
        *effects_of(
            oil_causes_condition.OIL_DEGRADED,
            {
                findings.CARBON_FLAKES: (SOMETIMES, COMMON_PRACTICE),
            },
        ),
    ),
    matches=[
        example(findings.CARBON_FLAKES),
        example(findings.CARBON_FLAKES, findings.CRANK_TRAP_FULL),
    ],
    non_matches=[example(lacks=[findings.CRANK_TRAP_FULL, findings.CARBON_FLAKES])],
)
DRILLING_PACKED_FULL = LinkGroup(
    id="drilling_packed_full",
    station=Station.BEARINGS,
    says=(
        "A crank drilling packed full is a blocked oilway like any other: the rods behind it run "
        "dry."
    ),
    parent=delivery_causes_galleries.GALLERY_BLOCKED,
    effects={
        findings.CRANK_TRAP_FULL: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings.CRANK_TRAP_FULL)],
    non_matches=[example(lacks=[findings.CRANK_TRAP_FULL])],
)
