"""Parts for a repair of the suction side."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.suction import causes, causes_sump
from knowledge.work import Access, Part

_RENEWED_FOR = (
    causes.PICKUP_SCREEN_BLOCKED,
    causes.PICKUP_SCREEN_BYPASS_OPEN,
    causes.PICKUP_TUBE_LOOSE,
    causes.PICKUP_TUBE_CRACKED,
    causes_sump.PICKUP_CLEARANCE_TIGHT,
    causes_sump.PICKUP_CLEARANCE_WIDE,
    causes_sump.PAN_DENTED,
)
PRESSED_NEW_PICKUP = Part(
    id="pressed_new_pickup",
    says="new pickup, if its tube is pressed in",
    quantity="1",
    source=sources.TRUCK_SERVICE_1994,
    measure_first="tube diameter and the pump's bore; depth of the screen below the pump face; the "
    "sump it is made for",
    for_causes=(
        *_RENEWED_FOR,
        assembly_causes.SEALANT_DEBRIS,
        assembly_causes.TIMING_GEAR_SHEDDING,
    ),
    for_places=(Access.PICKUP_OFF,),
    only_with=(features.PRESSED_PICKUP,),
    note="one that was pulled out no longer fits tight",
)
BOLTED_NEW_PICKUP = Part(
    id="bolted_new_pickup",
    says="bolted pickup with its screen, made for this pump and sump",
    quantity="1",
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    measure_first="tube diameter, bolt spacing, depth of the screen below the pump face; the sump "
    "it is made for",
    for_causes=(
        *_RENEWED_FOR,
        assembly_causes.SEALANT_DEBRIS,
        assembly_causes.TIMING_GEAR_SHEDDING,
    ),
    not_with=(features.PRESSED_PICKUP, features.DRY_SUMP),
    note="thin varnish can nearly halve the flow of a screen that looks clean",
)
TANK_STRAINER = Part(
    id="tank_strainer",
    says="strainer and feed pipe of the oil tank",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="tube diameter, union threads, mesh",
    for_causes=(
        causes.PICKUP_SCREEN_BLOCKED,
        causes.PICKUP_SCREEN_BYPASS_OPEN,
        causes.PICKUP_TUBE_LOOSE,
        causes.PICKUP_TUBE_CRACKED,
    ),
    only_with=(features.DRY_SUMP,),
)
PICKUP_FLOAT = Part(
    id="pickup_float",
    says="float, swivel seal and split pin (cotter pin) of a floating pickup",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="swivel diameter; replace a float with oil in it",
    for_causes=(
        causes.PICKUP_TUBE_LOOSE,
        causes.SUCTION_JOINT_AIR_LEAK,
        causes_sump.PICKUP_CLEARANCE_WIDE,
    ),
    only_with=(features.FLOATING_PICKUP,),
)
PICKUP_BRACKET = Part(
    id="pickup_bracket",
    says="pickup bolt with its lock, and the bracket if cracked",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="thread, length under the head, where the bracket is held",
    for_causes=(causes.PICKUP_TUBE_LOOSE, causes.PICKUP_TUBE_CRACKED),
)
SUCTION_RING = Part(
    id="suction_ring",
    says="new suction ring or gasket",
    quantity="1 per joint, and 1 spare",
    source=sources.V8_PUMP_SERVICE_2006,
    measure_first=(
        "tube diameter and depth of the groove; ring, gasket or felt as originally fitted"
    ),
    for_causes=(
        causes.SUCTION_JOINT_AIR_LEAK,
        causes.PICKUP_TUBE_LOOSE,
        causes.PICKUP_TUBE_CRACKED,
        causes.PICKUP_SCREEN_BLOCKED,
        causes.PICKUP_SCREEN_BYPASS_OPEN,
    ),
    for_places=(Access.PICKUP_OFF,),
    not_with=(features.DRY_SUMP,),
    also=("pickup o-ring",),
)
SUCTION_FELT = Part(
    id="suction_felt",
    says="felt seal of the pickup pipe, if it has one",
    quantity="1",
    source=sources.DIARY_FELT_SEAL,
    measure_first="tube diameter and the space for the felt",
    for_causes=(causes.SUCTION_JOINT_AIR_LEAK,),
    not_with=(features.DRY_SUMP,),
)
TANK_SEALS = Part(
    id="tank_seals",
    says="tank gasket and union seals",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="union threads and seat angle",
    for_causes=(causes.SUCTION_JOINT_AIR_LEAK, causes_sump.SUCTION_HOSE_COLLAPSED),
    for_places=(Access.PICKUP_OFF,),
    only_with=(features.DRY_SUMP,),
)
SUCTION_HOSE = Part(
    id="suction_hose",
    says="reinforced suction hose of the right bore, with clamps",
    quantity="1, cut to length",
    source=COMMON_PRACTICE,
    measure_first="bore of the unions, length, routed without kinks; rated for hot oil and vacuum",
    for_causes=(causes_sump.SUCTION_HOSE_COLLAPSED,),
)
LARGER_INLET = Part(
    id="larger_inlet",
    says="pickup with a larger tube and screen, made for this pump and sump",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="the pump's own inlet bore, tube diameter, sump depth",
    for_causes=(pump_causes_fitted.PUMP_CAVITATION,),
)
SUMP = Part(
    id="sump",
    says="sump, repaired and checked or renewed",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="depth at the pickup, flange flatness, drain thread; the pickup it is made for",
    for_causes=(causes_sump.PAN_DENTED, leaks_causes_openings.SUMP_HOLED),
    also=("oil pan",),
)
SUMP_GUARD = Part(
    id="sump_guard",
    says="sump guard, if stones or ground can reach the sump",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="space below the sump, air flow past it",
    for_causes=(leaks_causes_openings.SUMP_HOLED, causes_sump.PAN_DENTED),
)
BAFFLED_SUMP = Part(
    id="baffled_sump",
    says="baffled or larger sump with the pickup that belongs to it",
    quantity="1",
    source=idea_from(sources.SUMP_TILT_TEST),
    measure_first="space under the engine, depth at the pickup, where the stick must then read",
    for_causes=(causes_sump.ATTITUDE_UNCOVERS_PICKUP, causes_sump.DRAINBACK_POOR),
)
SUMP_BAFFLE = Part(
    id="sump_baffle",
    says="sump baffle or trap door with its hinge",
    quantity="1",
    source=sources.SUMP_TILT_TEST,
    measure_first="sump width and depth; the door swings towards the pickup",
    for_causes=(causes_sump.BAFFLE_MISSING, causes_sump.ATTITUDE_UNCOVERS_PICKUP),
)
TRAY_OR_SCRAPER = Part(
    id="tray_or_scraper",
    says="windage tray or scraper, with its studs, spacers and locks",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="stroke, rod bolts and counterweights: clearance through two turns by hand",
    for_causes=(causes_sump.WINDAGE_AERATION,),
)
TRAY_NUTS = Part(
    id="tray_nuts",
    says="new tray nuts or locks",
    quantity="by the count",
    source=COMMON_PRACTICE,
    measure_first="thread",
    for_places=(Access.TRAY_OFF,),
    only_with=(features.WINDAGE_TRAY,),
)
