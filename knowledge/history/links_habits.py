"""What the habits of a model speak for: its design, its gauge, or a part known to be weak."""

from knowledge.history import findings_habits
from knowledge.model import OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.topend import causes as topend_causes

SEVERAL_ENGINES_ALIKE = LinkGroup(
    id="several_engines_alike",
    station=Station.ASSEMBLY,
    says=(
        "If several engines show the same, it is their design, their oil or their gauge, not wear."
    ),
    child=findings_habits.SEVERAL_ALIKE,
    origins={
        oil_causes_condition.OIL_HOT_NORMAL: (OFTEN, COMMON_PRACTICE),
        oil_causes_condition.OIL_COLD_NORMAL: (OFTEN, JUDGEMENT),
        instrument_causes.SENDER_MISMATCH: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.ATTITUDE_UNCOVERS_PICKUP: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.DRAINBACK_POOR: (SOMETIMES, JUDGEMENT),
        pump_causes_fitted.PUMP_CAVITATION: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.WINDAGE_AERATION: (SOMETIMES, JUDGEMENT),
        oil_causes.VISCOSITY_TOO_LOW: (SOMETIMES, JUDGEMENT),
        oil_causes.VISCOSITY_TOO_HIGH: (SELDOM, JUDGEMENT),
        delivery_causes.FILTER_DRAINBACK: (SOMETIMES, JUDGEMENT),
        delivery_causes.FILTER_WRONG: (SELDOM, JUDGEMENT),
        instrument_causes.SENDER_FAULTY: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_habits.SEVERAL_ALIKE)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_habits.SEVERAL_ALIKE])],
)
WEAK_PART_OF_THE_MODEL = LinkGroup(
    id="weak_part_of_the_model",
    station=Station.ASSEMBLY,
    says="Known for the model: a part that is weak by design, or a reading that owners ask about.",
    child=findings_habits.KNOWN_FOR_MODEL,
    origins={
        oil_causes_condition.OIL_HOT_NORMAL: (SOMETIMES, JUDGEMENT),
        instrument_causes.SENDER_FAULTY: (SOMETIMES, JUDGEMENT),
        delivery_causes_galleries.GALLERY_SEAL_LEAK: (SOMETIMES, JUDGEMENT),
        suction_causes.SUCTION_JOINT_AIR_LEAK: (SOMETIMES, JUDGEMENT),
        suction_causes.PICKUP_TUBE_LOOSE: (SOMETIMES, JUDGEMENT),
        suction_causes.PICKUP_SCREEN_BLOCKED: (SOMETIMES, JUDGEMENT),
        assembly_causes.TIMING_GEAR_SHEDDING: (SOMETIMES, JUDGEMENT),
        pump_causes_drive.PUMP_DRIVE_BROKEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        topend_causes.TENSIONER_SEAL_LEAK: (SOMETIMES, JUDGEMENT),
        delivery_causes.FILTER_DRAINBACK: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.DRAINBACK_POOR: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.ATTITUDE_UNCOVERS_PICKUP: (SOMETIMES, JUDGEMENT),
        pump_causes.PUMP_COVER_LOOSE: (SOMETIMES, JUDGEMENT),
        topend_causes.CAM_BEARING_WEAR: (SOMETIMES, JUDGEMENT),
        leaks_causes.OIL_LINE_LEAK: (SELDOM, JUDGEMENT),
        leaks_causes_openings.PLUG_EXPELLED_OUTSIDE: (SELDOM, JUDGEMENT),
        pump_causes_drive.PUMP_DRIVE_SLIP: (SOMETIMES, JUDGEMENT),
        topend_causes.LIFTER_BORE_LEAK: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_habits.KNOWN_FOR_MODEL)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_habits.KNOWN_FOR_MODEL])],
)
CALLED_NORMAL = LinkGroup(
    id="called_normal",
    station=Station.ASSEMBLY,
    says="A reading that the maker calls normal is mostly normal.",
    child=findings_habits.MAKER_CALLS_IT_NORMAL,
    origins={
        oil_causes_condition.OIL_HOT_NORMAL: (OFTEN, COMMON_PRACTICE),
        oil_causes_condition.OIL_COLD_NORMAL: (OFTEN, COMMON_PRACTICE),
        delivery_causes.FILTER_DRAINBACK: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_habits.MAKER_CALLS_IT_NORMAL)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_habits.MAKER_CALLS_IT_NORMAL])],
)
