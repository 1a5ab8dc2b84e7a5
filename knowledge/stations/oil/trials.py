"""What is tried at the oil, and which causes it cures."""

from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import direct_gauge
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_geometry as bearings_causes_geometry
from knowledge.stations.bearings import causes_shafts as bearings_causes_shafts
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.instrument import causes_line as instrument_causes_line
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import (
    causes,
    causes_condition,
    causes_contamination,
    causes_feed,
    findings_drained,
    findings_record,
)
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.suction import findings as suction_findings
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.stations.topend import causes_phasers as topend_causes_phasers

TOPPED_UP = trial(
    id="topped_up",
    station=Station.OIL,
    says="the oil was topped up to the mark",
    asks="Oil topped up to the mark? If so, what did it do?",
    cures={
        causes.OIL_LEVEL_LOW: (MOSTLY, COMMON_PRACTICE),
        causes.DIPSTICK_WRONG: (SOMETIMES, JUDGEMENT),
        causes_feed.OWN_FEED_STOPPED: (OFTEN, COMMON_PRACTICE),
        leaks_causes.EXTERNAL_LEAK_MAJOR: (OFTEN, COMMON_PRACTICE),
        leaks_causes.FILTER_SEAL_LEAK: (OFTEN, COMMON_PRACTICE),
        leaks_causes.OIL_LINE_LEAK: (OFTEN, COMMON_PRACTICE),
        leaks_causes.DRAIN_PLUG_OUT: (SOMETIMES, JUDGEMENT),
        leaks_causes.SHAFT_SEAL_LEAK: (OFTEN, COMMON_PRACTICE),
        leaks_causes_openings.SENDER_LEAK: (OFTEN, COMMON_PRACTICE),
        leaks_causes_openings.BREATHER_BLOCKED: (OFTEN, COMMON_PRACTICE),
        leaks_causes_openings.PLUG_EXPELLED_OUTSIDE: (OFTEN, COMMON_PRACTICE),
        leaks_causes_openings.SUMP_HOLED: (SOMETIMES, JUDGEMENT),
        leaks_causes_openings.FILLER_CAP_OFF: (OFTEN, COMMON_PRACTICE),
        leaks_causes_openings.WRONG_GASKET_ON_ACCESSORY: (OFTEN, COMMON_PRACTICE),
        suction_causes_sump.PICKUP_CLEARANCE_WIDE: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.ATTITUDE_UNCOVERS_PICKUP: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.DRAINBACK_POOR: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    cured=direct_gauge.TOP_UP_CURES_FOR_A_WHILE,
    also=("added oil", "added a quart", "filled up the oil", "top up made no difference"),
)
OVERFILLED = trial(
    id="overfilled",
    station=Station.OIL,
    says="about a quart (1 l) was added over the full mark for a trial",
    asks="About a quart (1 l) added over the full mark? If so, what did it do?",
    cures={
        suction_causes.SUCTION_JOINT_AIR_LEAK: (MOSTLY, COMMON_PRACTICE),
        suction_causes.PICKUP_TUBE_CRACKED: (MOSTLY, COMMON_PRACTICE),
        suction_causes.PICKUP_TUBE_LOOSE: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.PICKUP_CLEARANCE_WIDE: (OFTEN, COMMON_PRACTICE),
        suction_causes_sump.ATTITUDE_UNCOVERS_PICKUP: (SOMETIMES, JUDGEMENT),
        causes.DIPSTICK_WRONG: (OFTEN, COMMON_PRACTICE),
        # too little oil alone is put right at the mark, without going over it
        causes.OIL_LEVEL_LOW: (SOMETIMES, COMMON_PRACTICE),
        suction_causes_sump.DRAINBACK_POOR: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.BAFFLE_MISSING: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    cured=suction_findings.OVERFILL_STEADIES_IT,
    also=("ran it a quart over full", "overfilled on purpose"),
)
DRAINED_TO_MARK = trial(
    id="drained_to_mark",
    station=Station.OIL,
    says="oil was drained or sucked out down to the mark",
    asks="Oil drained or sucked out down to the mark? If so, what did it do?",
    cures={
        causes.OIL_LEVEL_HIGH: (MOSTLY, COMMON_PRACTICE),
        causes.DIPSTICK_WRONG: (OFTEN, COMMON_PRACTICE),
        suction_causes_sump.WINDAGE_AERATION: (SOMETIMES, JUDGEMENT),
        causes_contamination.FUEL_DILUTION: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("drained the excess oil", "lowered the oil level", "let some oil out"),
)
RIGHT_OIL = trial(
    id="right_oil",
    station=Station.OIL,
    says="the oil was changed for fresh oil of the right grade",
    asks="Changed for fresh oil of the right grade? If so, what did it do?",
    cures={
        causes.VISCOSITY_TOO_LOW: (MOSTLY, COMMON_PRACTICE),
        causes.VISCOSITY_TOO_HIGH: (MOSTLY, COMMON_PRACTICE),
        causes_contamination.FUEL_DILUTION: (MOSTLY, COMMON_PRACTICE),
        causes_condition.OIL_DEGRADED: (MOSTLY, COMMON_PRACTICE),
        causes_condition.OIL_FOAM_PRONE: (MOSTLY, COMMON_PRACTICE),
        causes_contamination.COOLANT_IN_OIL: (SOMETIMES, JUDGEMENT),
        causes_condition.OIL_OVERHEATED: (SELDOM, JUDGEMENT),
        causes.OIL_LEVEL_LOW: (OFTEN, COMMON_PRACTICE),
        causes.OIL_LEVEL_HIGH: (MOSTLY, COMMON_PRACTICE),
        assembly_causes.ASSEMBLY_LUBE_CLOG: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SELDOM, JUDGEMENT),
        relief_causes.RELIEF_DEBRIS: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    cured=findings_drained.RIGHT_GRADE_CURES,
    also=("oil change cured it", "fresh oil", "changed the oil no difference", "new oil"),
)
THICKER_OIL = trial(
    id="thicker_oil",
    station=Station.OIL,
    says="thicker oil, or a thickener, was put in",
    asks="Thicker oil or a thickener put in? If so, what did it do?",
    cures={
        causes.VISCOSITY_TOO_LOW: (MOSTLY, PHYSICS),
        causes_contamination.FUEL_DILUTION: (OFTEN, PHYSICS),
        causes_condition.OIL_OVERHEATED: (OFTEN, PHYSICS),
        causes_condition.OIL_DEGRADED: (SOMETIMES, JUDGEMENT),
        bearings_causes.BEARING_WEAR_MAINS: (OFTEN, PHYSICS),
        bearings_causes.BEARING_WEAR_RODS: (OFTEN, PHYSICS),
        topend_causes.CAM_BEARING_WEAR: (OFTEN, PHYSICS),
        bearings_causes_shafts.BALANCE_SHAFT_WEAR: (OFTEN, PHYSICS),
        bearings_causes_shafts.AUXILIARY_SHAFT_WEAR: (OFTEN, PHYSICS),
        bearings_causes_shafts.IDLER_BUSH_WEAR: (OFTEN, PHYSICS),
        pump_causes.PUMP_GEAR_WEAR: (OFTEN, PHYSICS),
        pump_causes.PUMP_COVER_SCORED: (OFTEN, PHYSICS),
        topend_causes.LIFTER_BORE_LEAK: (OFTEN, PHYSICS),
        topend_causes.ROCKER_SHAFT_LEAK: (SOMETIMES, JUDGEMENT),
        bearings_causes.BEARING_WRONG_SIZE: (OFTEN, PHYSICS),
        bearings_causes_geometry.JOURNAL_FINISH: (SOMETIMES, JUDGEMENT),
        causes_condition.OIL_HOT_NORMAL: (MOSTLY, PHYSICS),
        instrument_causes_line.IDLE_TOO_SLOW: (SOMETIMES, JUDGEMENT),
        topend_causes.TENSIONER_SEAL_LEAK: (SOMETIMES, JUDGEMENT),
        topend_causes_feeds.RESTRICTOR_MISSING: (SOMETIMES, JUDGEMENT),
        topend_causes_phasers.CAM_PHASER_LEAK: (SOMETIMES, JUDGEMENT),
    },
    source=PHYSICS,
    cured=findings_record.THICKER_OIL_HELPED,
    also=("switched to 20W-50", "oil thickener", "heavier oil", "thicker oil no change"),
)
THINNER_OIL = trial(
    id="thinner_oil",
    station=Station.OIL,
    says="thinner oil was put in",
    asks="Thinner oil put in? If so, what did it do?",
    cures={
        causes.VISCOSITY_TOO_HIGH: (MOSTLY, PHYSICS),
        causes_condition.OIL_COLD_NORMAL: (OFTEN, PHYSICS),
        pump_causes_fitted.PUMP_CAVITATION: (SOMETIMES, JUDGEMENT),
        delivery_causes.OIL_COOLER_BLOCKED: (SOMETIMES, JUDGEMENT),
        suction_causes.PICKUP_SCREEN_BLOCKED: (SELDOM, JUDGEMENT),
        delivery_causes.FILTER_BLOCKED: (SELDOM, JUDGEMENT),
        suction_causes_sump.DRAINBACK_POOR: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_CLOSED: (SELDOM, JUDGEMENT),
        relief_causes.RELIEF_RETURN_PLUGGED: (SOMETIMES, JUDGEMENT),
    },
    source=PHYSICS,
    also=("switched to a lighter oil", "went to 5W-30"),
)
ENGINE_FLUSHED = trial(
    id="engine_flushed",
    station=Station.OIL,
    says="the engine was flushed, or run with a flush or detergent in the oil",
    asks="Engine flushed, or run with a flush in the oil? If so, what did it do?",
    cures={
        causes_condition.OIL_DEGRADED: (OFTEN, COMMON_PRACTICE),
        suction_causes.PICKUP_SCREEN_BLOCKED: (SOMETIMES, JUDGEMENT),
        delivery_causes_galleries.GALLERY_BLOCKED: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_CLOSED: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_DEBRIS: (SOMETIMES, JUDGEMENT),
        delivery_causes.FILTER_BYPASS_STUCK: (SELDOM, JUDGEMENT),
        topend_causes_feeds.TURBO_FEED_RESTRICTED: (SELDOM, JUDGEMENT),
        assembly_causes.ASSEMBLY_LUBE_CLOG: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("engine flush", "ran diesel through it", "detergent oil"),
)
OIL_COOLING_IMPROVED = trial(
    id="oil_cooling_improved",
    station=Station.OIL,
    says="the oil cooling was improved: cooler cleaned or fitted, air ducts put right",
    asks="Oil cooling improved? If so, what did it do?",
    cures={
        causes_condition.OIL_OVERHEATED: (MOSTLY, COMMON_PRACTICE),
        delivery_causes.OIL_COOLER_BLOCKED: (SOMETIMES, JUDGEMENT),
        causes_condition.OIL_HOT_NORMAL: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("fitted an oil cooler", "cleaned the cooler fins", "oil runs cooler now"),
)
FUEL_LEAK_MENDED = trial(
    id="fuel_leak_mended",
    station=Station.OIL,
    says="the way fuel got into the oil was closed, and the oil changed",
    asks="Fuel leak into the oil repaired and the oil changed? If so, what did it do?",
    cures={
        causes_contamination.FUEL_DILUTION: (MOSTLY, COMMON_PRACTICE),
        causes.VISCOSITY_TOO_LOW: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=(
        "new fuel pump and oil change",
        "injector replaced and oil changed",
        "float needle mended",
    ),
)
COOLANT_LEAK_MENDED = trial(
    id="coolant_leak_mended",
    station=Station.OIL,
    says="the way coolant or water got into the oil was closed, and the oil changed",
    asks="Coolant leak into the oil repaired and the oil changed? If so, what did it do?",
    cures={
        causes_contamination.COOLANT_IN_OIL: (MOSTLY, COMMON_PRACTICE),
        suction_causes_sump.ICE_IN_PICKUP: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new head gasket and oil change", "oil cooler renewed because of water in the oil"),
)
