"""What further sights at pickup, screen and sump speak for."""

from knowledge.model import OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.suction import causes, causes_sump, findings_sights

BENT_PICKUP = LinkGroup(
    id="bent_pickup",
    station=Station.SUCTION,
    says="A bent pickup sits too low or too high, or was hit and may crack.",
    child=findings_sights.PICKUP_BENT,
    origins={
        causes_sump.PAN_DENTED: (OFTEN, JUDGEMENT),
        causes_sump.PICKUP_CLEARANCE_TIGHT: (SOMETIMES, JUDGEMENT),
        causes_sump.PICKUP_CLEARANCE_WIDE: (SOMETIMES, JUDGEMENT),
        causes.PICKUP_TUBE_LOOSE: (SOMETIMES, JUDGEMENT),
        causes.PICKUP_TUBE_CRACKED: (SELDOM, JUDGEMENT),
        causes.SUCTION_JOINT_AIR_LEAK: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.PICKUP_BENT)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.PICKUP_BENT])],
)
CRUSHED_SCREEN = LinkGroup(
    id="crushed_screen",
    station=Station.SUCTION,
    says="A crushed screen was pressed by the floor, or sucked flat because the mesh was blocked.",
    child=findings_sights.SCREEN_CRUSHED,
    origins={
        causes_sump.PAN_DENTED: (OFTEN, JUDGEMENT),
        causes_sump.PICKUP_CLEARANCE_TIGHT: (SOMETIMES, JUDGEMENT),
        causes.PICKUP_SCREEN_BLOCKED: (SOMETIMES, JUDGEMENT),
        causes.PICKUP_SCREEN_BYPASS_OPEN: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.SCREEN_CRUSHED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.SCREEN_CRUSHED])],
)
COATING_IN_THE_OIL = LinkGroup(
    id="coating_in_the_oil",
    station=Station.SUCTION,
    says="Gasket coating that flakes off ends up on the screen, like surplus sealer.",
    child=findings_sights.GASKET_COATING_SHED,
    origins={
        assembly_causes.SEALANT_DEBRIS: (SOMETIMES, JUDGEMENT),
        causes.PICKUP_SCREEN_BLOCKED: (SOMETIMES, JUDGEMENT),
        assembly_causes.PART_SHEDDING_INSIDE: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(findings_sights.GASKET_COATING_SHED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.GASKET_COATING_SHED])],
)
WATER_LIES_IN_THE_SUMP = LinkGroup(
    id="water_lies_in_the_sump",
    station=Station.SUCTION,
    says=(
        "Water in the sump comes from coolant, condensation or a flood; it freezes, and it foams "
        "the oil."
    ),
    child=findings_sights.WATER_IN_SUMP,
    origins={
        oil_causes_contamination.COOLANT_IN_OIL: (OFTEN, COMMON_PRACTICE),
        causes_sump.ICE_IN_PICKUP: (OFTEN, JUDGEMENT),
        oil_causes_condition.OIL_FOAM_PRONE: (SOMETIMES, JUDGEMENT),
        oil_causes.OIL_LEVEL_HIGH: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.WATER_IN_SUMP)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.WATER_IN_SUMP])],
)
