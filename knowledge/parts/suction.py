"""Parts of the suction side: pickup, its joint, sump, baffle and tray."""

from knowledge.causes.assembly import SEALANT_DEBRIS, TIMING_GEAR_SHEDDING
from knowledge.causes.leaks import SUMP_HOLED
from knowledge.causes.pump import PUMP_CAVITATION
from knowledge.causes.suction import (
    ATTITUDE_UNCOVERS_PICKUP,
    BAFFLE_MISSING,
    DRAINBACK_POOR,
    PAN_DENTED,
    PICKUP_CLEARANCE_TIGHT,
    PICKUP_CLEARANCE_WIDE,
    PICKUP_SCREEN_BLOCKED,
    PICKUP_SCREEN_BYPASS_OPEN,
    PICKUP_TUBE_CRACKED,
    PICKUP_TUBE_LOOSE,
    SUCTION_HOSE_COLLAPSED,
    SUCTION_JOINT_AIR_LEAK,
    WINDAGE_AERATION,
)
from knowledge.engines.features import DRY_SUMP, FLOATING_PICKUP, PRESSED_PICKUP, WINDAGE_TRAY
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FLT, GMC, ISS, P06, SLO, TM8
from knowledge.vocabulary import Access

_RENEWED_FOR = (
    PICKUP_SCREEN_BLOCKED,
    PICKUP_SCREEN_BYPASS_OPEN,
    PICKUP_TUBE_LOOSE,
    PICKUP_TUBE_CRACKED,
    PICKUP_CLEARANCE_TIGHT,
    PICKUP_CLEARANCE_WIDE,
    PAN_DENTED,
)

PRESSED_NEW_PICKUP = Part(
    "pressed_new_pickup",
    "new pickup where the tube is pressed in",
    "1",
    GMC,
    measure_first="tube diameter and the pump's bore; depth of the screen below the pump face; the "
    "sump it is made for",
    for_causes=(*_RENEWED_FOR, SEALANT_DEBRIS, TIMING_GEAR_SHEDDING),
    for_places=(Access.PICKUP_OFF,),
    only_with=(PRESSED_PICKUP,),
    note="one drawn out has lost its fit",
)
BOLTED_NEW_PICKUP = Part(
    "bolted_new_pickup",
    "bolted pickup with its screen, made for this pump and sump",
    "1",
    ISS,
    measure_first="tube diameter, bolt spacing, depth of the screen below the pump face; the sump "
    "it is made for",
    for_causes=(*_RENEWED_FOR, SEALANT_DEBRIS, TIMING_GEAR_SHEDDING),
    not_with=(PRESSED_PICKUP, DRY_SUMP),
    note="thin varnish can nearly halve the flow of a screen that looks clean",
)
TANK_STRAINER = Part(
    "tank_strainer",
    "strainer and feed pipe of the oil tank",
    "1",
    CP,
    measure_first="tube diameter, union threads, mesh",
    for_causes=(
        PICKUP_SCREEN_BLOCKED,
        PICKUP_SCREEN_BYPASS_OPEN,
        PICKUP_TUBE_LOOSE,
        PICKUP_TUBE_CRACKED,
    ),
    only_with=(DRY_SUMP,),
)
PICKUP_FLOAT = Part(
    "pickup_float",
    "float, swivel seal and split pin of a floating pickup",
    "1 set",
    TM8,
    measure_first="swivel diameter; a float with oil in it is spent",
    for_causes=(PICKUP_TUBE_LOOSE, SUCTION_JOINT_AIR_LEAK, PICKUP_CLEARANCE_WIDE),
    only_with=(FLOATING_PICKUP,),
)
PICKUP_BRACKET = Part(
    "pickup_bracket",
    "pickup bolt with its lock, and the bracket where it is cracked",
    "1 set",
    CP,
    measure_first="thread, length under the head, where the bracket is held",
    for_causes=(PICKUP_TUBE_LOOSE, PICKUP_TUBE_CRACKED),
)
SUCTION_RING = Part(
    "suction_ring",
    "new suction ring or gasket",
    "1 a joint, and 1 to spare",
    P06,
    measure_first="tube diameter and the groove's depth; ring, gasket or felt as it was made",
    for_causes=(
        SUCTION_JOINT_AIR_LEAK,
        PICKUP_TUBE_LOOSE,
        PICKUP_TUBE_CRACKED,
        PICKUP_SCREEN_BLOCKED,
        PICKUP_SCREEN_BYPASS_OPEN,
    ),
    for_places=(Access.PICKUP_OFF,),
    not_with=(DRY_SUMP,),
    also=("pickup o-ring",),
)
SUCTION_FELT = Part(
    "suction_felt",
    "felt seal of the pickup pipe, where it has one",
    "1",
    FLT,
    measure_first="tube diameter and the felt's room",
    for_causes=(SUCTION_JOINT_AIR_LEAK,),
    not_with=(DRY_SUMP,),
)
TANK_SEALS = Part(
    "tank_seals",
    "tank gasket and union seals",
    "1 set",
    CP,
    measure_first="union threads and seat angle",
    for_causes=(SUCTION_JOINT_AIR_LEAK, SUCTION_HOSE_COLLAPSED),
    for_places=(Access.PICKUP_OFF,),
    only_with=(DRY_SUMP,),
)
SUCTION_HOSE = Part(
    "suction_hose",
    "reinforced suction hose of the right bore, with clamps",
    "1, cut to length",
    CP,
    measure_first="bore of the unions, length, bends without kinks; rated for hot oil and vacuum",
    for_causes=(SUCTION_HOSE_COLLAPSED,),
)
LARGER_INLET = Part(
    "larger_inlet",
    "pickup with a larger tube and screen, made for this pump and sump",
    "1",
    CP,
    measure_first="the pump's own inlet bore, tube diameter, sump depth",
    for_causes=(PUMP_CAVITATION,),
)
SUMP = Part(
    "sump",
    "sump, repaired and checked or renewed",
    "1",
    CP,
    measure_first="depth at the pickup, flange flatness, drain thread; the pickup it is made for",
    for_causes=(PAN_DENTED, SUMP_HOLED),
    also=("oil pan",),
)
SUMP_GUARD = Part(
    "sump_guard",
    "sump guard, where stones or ground can reach the sump",
    "1",
    CP,
    measure_first="room below the sump, air past it",
    for_causes=(SUMP_HOLED, PAN_DENTED),
)
BAFFLED_SUMP = Part(
    "baffled_sump",
    "baffled or larger sump with the pickup that belongs to it",
    "1",
    SLO,
    measure_first="room under the engine, depth at the pickup, what the stick must read then",
    for_causes=(ATTITUDE_UNCOVERS_PICKUP, DRAINBACK_POOR),
)
SUMP_BAFFLE = Part(
    "sump_baffle",
    "sump baffle or trap door with its hinge",
    "1",
    SLO,
    measure_first="sump width and depth; the door swings towards the pickup",
    for_causes=(BAFFLE_MISSING, ATTITUDE_UNCOVERS_PICKUP),
)
TRAY_OR_SCRAPER = Part(
    "tray_or_scraper",
    "windage tray or scraper, with its studs, spacers and locks",
    "1",
    CP,
    measure_first="stroke, rod bolts and counterweights: clearance through two turns by hand",
    for_causes=(WINDAGE_AERATION,),
)
TRAY_NUTS = Part(
    "tray_nuts",
    "new tray nuts or locks",
    "by the count",
    CP,
    measure_first="thread",
    for_places=(Access.TRAY_OFF,),
    only_with=(WINDAGE_TRAY,),
)
