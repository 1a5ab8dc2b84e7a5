"""What is tried at crank and bearings, and which causes it cures."""

from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.reports.trials import trial
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import causes, causes_geometry, causes_poured, causes_shafts
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.topend import causes as topend_causes

NEW_BEARINGS = trial(
    id="new_bearings",
    station=Station.BEARINGS,
    says="new main and rod bearings were fitted",
    asks="New main and rod bearings fitted? If so, what did it do?",
    cures={
        assembly_causes_left_out.CLEARANCE_SET_WIDE: (OFTEN, COMMON_PRACTICE),
        causes.BEARING_WEAR_MAINS: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WEAR_RODS: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WIPED: (OFTEN, COMMON_PRACTICE),
        causes.BEARING_SPUN: (OFTEN, COMMON_PRACTICE),
        causes.THRUST_BEARING_WEAR: (OFTEN, COMMON_PRACTICE),
        causes.BEARING_WRONG_SIZE: (OFTEN, COMMON_PRACTICE),
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED: (OFTEN, COMMON_PRACTICE),
        assembly_causes.CAP_SWAPPED: (SOMETIMES, JUDGEMENT),
        causes_geometry.JOURNAL_FINISH: (SOMETIMES, JUDGEMENT),
        causes_geometry.OVERLOAD_LUGGING: (OFTEN, COMMON_PRACTICE),
        causes_geometry.LINE_BORE_MISALIGNED: (SELDOM, JUDGEMENT),
        causes_poured.POURED_BEARING_BROKEN_UP: (OFTEN, COMMON_PRACTICE),
        causes_geometry.BENT_ROD_OR_CRANK: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    retired=("no_better_with_new_bearings",),
    also=(
        "already changed the bearings",
        "new shells did not help",
        "bearings replaced still low",
        "new crank bearings",
        "bearings renewed",
        "new shells",
        "new bearings did nothing",
        "still low after new bearings",
    ),
)
NEW_MAIN_BEARINGS = trial(
    id="new_main_bearings",
    station=Station.BEARINGS,
    says="new main bearings were fitted, but not new rod bearings",
    asks="New main bearings fitted, but not new rod bearings? If so, what did it do?",
    cures={
        causes.BEARING_WEAR_MAINS: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WIPED: (SOMETIMES, JUDGEMENT),
        causes.BEARING_SPUN: (SOMETIMES, JUDGEMENT),
        causes.THRUST_BEARING_WEAR: (OFTEN, COMMON_PRACTICE),
        causes.BEARING_WRONG_SIZE: (SOMETIMES, JUDGEMENT),
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED: (OFTEN, COMMON_PRACTICE),
        causes_geometry.JOURNAL_FINISH: (SELDOM, JUDGEMENT),
        causes_geometry.OVERLOAD_LUGGING: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("mains renewed",),
)
NEW_ROD_BEARINGS = trial(
    id="new_rod_bearings",
    station=Station.BEARINGS,
    says="new rod bearings were fitted, but not new main bearings",
    asks="New rod bearings fitted, but not new main bearings? If so, what did it do?",
    cures={
        causes.BEARING_WEAR_RODS: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WIPED: (SOMETIMES, JUDGEMENT),
        causes.BEARING_SPUN: (SOMETIMES, JUDGEMENT),
        causes_geometry.OVERLOAD_LUGGING: (SOMETIMES, JUDGEMENT),
        causes.BEARING_WRONG_SIZE: (SOMETIMES, JUDGEMENT),
        causes_geometry.JOURNAL_FINISH: (SELDOM, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("big ends renewed", "new big end shells"),
)
CRANK_REGROUND = trial(
    id="crank_reground",
    station=Station.BEARINGS,
    says="the crank was reground or exchanged, with bearings to suit",
    asks="Crank reground or exchanged? If so, what did it do?",
    cures={
        assembly_causes_left_out.CRANK_PLUG_MISSING: (OFTEN, COMMON_PRACTICE),
        assembly_causes_left_out.CLEARANCE_SET_WIDE: (OFTEN, COMMON_PRACTICE),
        causes_geometry.JOURNAL_FINISH: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WEAR_MAINS: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WEAR_RODS: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WIPED: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_SPUN: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WRONG_SIZE: (MOSTLY, COMMON_PRACTICE),
        causes.THRUST_BEARING_WEAR: (MOSTLY, COMMON_PRACTICE),
        causes_geometry.BENT_ROD_OR_CRANK: (OFTEN, COMMON_PRACTICE),
        causes_geometry.OVERLOAD_LUGGING: (OFTEN, COMMON_PRACTICE),
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED: (OFTEN, COMMON_PRACTICE),
        assembly_causes.CAP_SWAPPED: (SOMETIMES, JUDGEMENT),
    },
    source=COMMON_PRACTICE,
    also=("crank ground undersize", "new crankshaft"),
)
NEW_SHAFT_BEARINGS = trial(
    id="new_shaft_bearings",
    station=Station.BEARINGS,
    says="new bearings were fitted to a balance shaft, auxiliary shaft or idler gear",
    asks="Balance shaft, auxiliary shaft or idler gear renewed or rebushed? If so, what did it do?",
    cures={
        causes_shafts.BALANCE_SHAFT_WEAR: (MOSTLY, COMMON_PRACTICE),
        causes_shafts.AUXILIARY_SHAFT_WEAR: (MOSTLY, COMMON_PRACTICE),
        causes_shafts.IDLER_BUSH_WEAR: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("new balance shaft bearings", "new jackshaft bearings", "idler gear rebushed"),
)
LINE_BORED = trial(
    id="line_bored",
    station=Station.BEARINGS,
    says="the main bearing bores were line-bored, or caps put right",
    asks="Main bores line-bored or caps put right? If so, what did it do?",
    cures={
        causes_geometry.LINE_BORE_MISALIGNED: (MOSTLY, COMMON_PRACTICE),
        assembly_causes.CAP_SWAPPED: (MOSTLY, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("line honed", "caps put in their places"),
)
ENGINE_REBUILT = trial(
    id="engine_rebuilt",
    station=Station.BEARINGS,
    says="the whole engine was rebuilt",
    asks="Whole engine rebuilt because of it? If so, what did it do?",
    cures={
        causes.BEARING_WEAR_MAINS: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WEAR_RODS: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_WIPED: (MOSTLY, COMMON_PRACTICE),
        causes.BEARING_SPUN: (MOSTLY, COMMON_PRACTICE),
        causes.THRUST_BEARING_WEAR: (MOSTLY, COMMON_PRACTICE),
        causes_geometry.JOURNAL_FINISH: (MOSTLY, COMMON_PRACTICE),
        topend_causes.CAM_BEARING_WEAR: (MOSTLY, COMMON_PRACTICE),
        causes_shafts.BALANCE_SHAFT_WEAR: (OFTEN, COMMON_PRACTICE),
        causes_shafts.AUXILIARY_SHAFT_WEAR: (SOMETIMES, COMMON_PRACTICE),
        causes_shafts.IDLER_BUSH_WEAR: (SOMETIMES, COMMON_PRACTICE),
        causes.BEARING_WRONG_SIZE: (OFTEN, COMMON_PRACTICE),
        causes_geometry.OVERLOAD_LUGGING: (MOSTLY, COMMON_PRACTICE),
        causes_geometry.BENT_ROD_OR_CRANK: (MOSTLY, COMMON_PRACTICE),
        pump_causes.PUMP_GEAR_WEAR: (OFTEN, COMMON_PRACTICE),
        pump_causes.PUMP_COVER_SCORED: (OFTEN, COMMON_PRACTICE),
        suction_causes.PICKUP_SCREEN_BLOCKED: (OFTEN, COMMON_PRACTICE),
        relief_causes.RELIEF_DEBRIS: (OFTEN, COMMON_PRACTICE),
        relief_causes.RELIEF_STUCK_OPEN: (OFTEN, COMMON_PRACTICE),
        delivery_causes_galleries.GALLERY_BLOCKED: (OFTEN, COMMON_PRACTICE),
        delivery_causes_galleries.GALLERY_PLUG_MISSING: (SOMETIMES, JUDGEMENT),
        topend_causes.LIFTER_BORE_LEAK: (SOMETIMES, JUDGEMENT),
        topend_causes.ROCKER_SHAFT_LEAK: (OFTEN, COMMON_PRACTICE),
        assembly_causes.DIRT_IN_ASSEMBLY: (OFTEN, COMMON_PRACTICE),
        oil_causes_condition.OIL_DEGRADED: (OFTEN, COMMON_PRACTICE),
        assembly_causes.PART_SHEDDING_INSIDE: (OFTEN, COMMON_PRACTICE),
        assembly_causes.TIMING_GEAR_SHEDDING: (OFTEN, COMMON_PRACTICE),
    },
    source=COMMON_PRACTICE,
    also=("rebuilt twice", "second rebuild", "full overhaul"),
)
