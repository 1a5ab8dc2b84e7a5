"""What is tried at sump, pickup and suction, and which causes it cures."""

from knowledge.model import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.suction import causes, causes_sump, causes_tap

PICKUP_CLEANED = trial(
    id="pickup_cleaned",
    station=Station.SUCTION,
    says="the sump was taken off and the pickup screen cleaned",
    asks="Pickup screen cleaned? If so, what did it do?",
    cures={
        causes.PICKUP_SCREEN_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        causes_sump.FOREIGN_BODY_IN_SUMP: (MOSTLY, COMMON_PRACTICE),
        assembly_causes.ASSEMBLY_LUBE_CLOG: (MOSTLY, COMMON_PRACTICE),
        assembly_causes.SEALANT_DEBRIS: (OFTEN, COMMON_PRACTICE),
        assembly_causes.TIMING_GEAR_SHEDDING: (OFTEN, COMMON_PRACTICE),
        causes_sump.ICE_IN_PICKUP: (SOMETIMES, JUDGEMENT),
        oil_causes_condition.OIL_DEGRADED: (SELDOM, JUDGEMENT),
        assembly_causes.DIRT_IN_ASSEMBLY: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=(
        "cleaned the strainer",
        "dropped the pan and cleaned the pickup",
        "cleaned the screen no change",
        "washed the sump out",
    ),
)
NEW_PICKUP = trial(
    id="new_pickup",
    station=Station.SUCTION,
    says="a new pickup with its tube and screen was fitted",
    asks="New pickup fitted? If so, what did it do?",
    cures={
        causes.PICKUP_SCREEN_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        causes.PICKUP_TUBE_LOOSE: (MOSTLY, COMMON_PRACTICE),
        causes.PICKUP_TUBE_CRACKED: (ALWAYS, COMMON_PRACTICE),
        causes.PICKUP_SCREEN_BYPASS_OPEN: (ALWAYS, COMMON_PRACTICE),
        causes.SUCTION_JOINT_AIR_LEAK: (OFTEN, COMMON_PRACTICE),
        causes_sump.PICKUP_CLEARANCE_TIGHT: (OFTEN, COMMON_PRACTICE),
        causes_sump.PICKUP_CLEARANCE_WIDE: (OFTEN, COMMON_PRACTICE),
        causes_sump.PAN_DENTED: (SOMETIMES, JUDGEMENT),
        causes_sump.FOREIGN_BODY_IN_SUMP: (OFTEN, COMMON_PRACTICE),
        assembly_causes.ASSEMBLY_LUBE_CLOG: (OFTEN, COMMON_PRACTICE),
        assembly_causes.SEALANT_DEBRIS: (SOMETIMES, JUDGEMENT),
        assembly_causes.TIMING_GEAR_SHEDDING: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("replaced the pickup tube", "new oil pickup", "new strainer"),
)
PICKUP_SEAL_RENEWED = trial(
    id="pickup_seal_renewed",
    station=Station.SUCTION,
    says="the pickup's O-ring or gasket was renewed, or the pickup refitted tight",
    asks="Pickup O-ring or gasket renewed? If so, what did it do?",
    cures={
        causes.SUCTION_JOINT_AIR_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes.PICKUP_TUBE_LOOSE: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=(
        "new pickup o-ring",
        "new pickup gasket",
        "new seal on the suction pipe",
        "tightened the suction joint",
    ),
)
PICKUP_GAP_SET = trial(
    id="pickup_gap_set",
    station=Station.SUCTION,
    says="the gap between pickup and sump floor was set",
    asks="Gap between pickup and sump floor set? If so, what did it do?",
    cures={
        causes_sump.PICKUP_CLEARANCE_TIGHT: (MOSTLY, COMMON_PRACTICE),
        causes_sump.PICKUP_CLEARANCE_WIDE: (MOSTLY, COMMON_PRACTICE),
        causes_sump.PAN_DENTED: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("set the pickup height", "raised the pickup", "lowered the pickup"),
)
OTHER_SUMP = trial(
    id="other_sump",
    station=Station.SUCTION,
    says="another or repaired sump was fitted",
    asks="Another or repaired sump fitted? If so, what did it do?",
    cures={
        causes_sump.PAN_DENTED: (MOSTLY, COMMON_PRACTICE),
        leaks_causes_openings.SUMP_HOLED: (MOSTLY, COMMON_PRACTICE),
        causes_sump.ATTITUDE_UNCOVERS_PICKUP: (OFTEN, COMMON_PRACTICE),
        causes_sump.BAFFLE_MISSING: (OFTEN, COMMON_PRACTICE),
        causes_sump.WINDAGE_AERATION: (SOMETIMES, JUDGEMENT),
        causes_sump.PICKUP_CLEARANCE_TIGHT: (SOMETIMES, JUDGEMENT),
        causes_sump.PICKUP_CLEARANCE_WIDE: (SOMETIMES, JUDGEMENT),
        causes_sump.FOREIGN_BODY_IN_SUMP: (SOMETIMES, JUDGEMENT),
        causes_sump.DRAINBACK_POOR: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("new oil pan", "deeper sump", "hammered the pan out"),
)
SUMP_BAFFLED = trial(
    id="sump_baffled",
    station=Station.SUCTION,
    says="baffles, a trap door or a windage tray were fitted or put right",
    asks="Baffles or a windage tray fitted or put right? If so, what did it do?",
    cures={
        causes_sump.ATTITUDE_UNCOVERS_PICKUP: (OFTEN, COMMON_PRACTICE),
        causes_sump.BAFFLE_MISSING: (MOSTLY, COMMON_PRACTICE),
        causes_sump.WINDAGE_AERATION: (OFTEN, COMMON_PRACTICE),
        causes_sump.DRAINBACK_POOR: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("baffled the pan", "fitted a windage tray", "trap door in the sump"),
)
SUCTION_HOSE_RENEWED = trial(
    id="suction_hose_renewed",
    station=Station.SUCTION,
    says="the hose or pipe from tank to pump was renewed or tightened",
    asks="Suction hose or pipe renewed or tightened? If so, what did it do?",
    cures={
        causes_sump.SUCTION_HOSE_COLLAPSED: (MOSTLY, COMMON_PRACTICE),
        causes.SUCTION_JOINT_AIR_LEAK: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new suction hose", "new hose from the oil tank"),
)
OIL_RETURNS_OPENED = trial(
    id="oil_returns_opened",
    station=Station.SUCTION,
    says="the oil returns of heads or valley were cleared",
    asks="Oil returns of heads or valley cleared? If so, what did it do?",
    cures={
        causes_sump.DRAINBACK_POOR: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("opened the drain back holes", "cleaned the oil return holes"),
)
TANK_TAP_OPENED = trial(
    id="tank_tap_opened",
    station=Station.SUCTION,
    says="a tap found shut between oil tank and pump was opened",
    asks="Tap between oil tank and pump found shut and opened? If so, what did it do?",
    cures={causes_tap.OIL_TAP_SHUT: (ALWAYS, COMMON_PRACTICE)},
    source=COMMON_PRACTICE,
    also=("oil tap opened", "shut-off valve opened"),
)
