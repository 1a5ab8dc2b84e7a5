"""Gaskets and once-only bolts that close a place again, whatever the cause was."""

from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.work import Access, Part

SUMP_GASKET_SET = Part(
    id="sump_gasket_set",
    says="sump gasket set with end seals",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first=(
        "thickness: you set the pickup gap with this gasket; one piece or four, rail shape"
    ),
    for_causes=(
        assembly_causes.SEALANT_DEBRIS,
        suction_causes_sump.PICKUP_CLEARANCE_TIGHT,
        suction_causes_sump.PICKUP_CLEARANCE_WIDE,
    ),
    for_places=(Access.SUMP_OFF,),
    also=("oil pan gasket",),
)
STRAINER_COVER_GASKET = Part(
    id="strainer_cover_gasket",
    says="strainer cover gasket",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="print of the old one, thickness",
    for_places=(Access.PICKUP_OFF,),
    only_with=(features.PUMP_OUTSIDE,),
    not_with=(features.DRY_SUMP,),
)
VALVE_COVER_GASKET = Part(
    id="valve_cover_gasket",
    says="valve cover gasket and bolt seals",
    quantity="1 set per cover",
    source=COMMON_PRACTICE,
    measure_first="bolt pattern and rail height",
    for_places=(Access.VALVE_COVER_OFF,),
    also=("rocker cover gasket",),
)
INTAKE_GASKET_SET = Part(
    id="intake_gasket_set",
    says="intake or valley gasket set",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="port size, water passages, end gap to the block",
    for_places=(Access.VALLEY_OPEN,),
    only_with=(features.VEE_ENGINE,),
)
MANIFOLD_COOLANT = Part(
    id="manifold_coolant",
    says="coolant, if it runs through the manifold",
    quantity="as much as runs out",
    source=COMMON_PRACTICE,
    measure_first="the kind the engine maker names",
    for_places=(Access.VALLEY_OPEN,),
    only_with=(features.VEE_ENGINE,),
)
SIDE_COVER_GASKET = Part(
    id="side_cover_gasket",
    says="side cover gasket",
    quantity="1 per cover",
    source=COMMON_PRACTICE,
    measure_first="print of the old one, bolt seals",
    for_places=(Access.VALLEY_OPEN,),
    not_with=(features.VEE_ENGINE,),
)
FRONT_COVER_GASKET_SET = Part(
    id="front_cover_gasket_set",
    says="front cover gasket set",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="print of the old one, rings of any oil passage through the cover",
    for_causes=(leaks_causes.SHAFT_SEAL_LEAK,),
    for_places=(Access.FRONT_COVER_OFF,),
)
DAMPER_BOLT = Part(
    id="damper_bolt",
    says="new damper bolt, if the manual says single-use",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="thread and length",
    for_places=(Access.FRONT_COVER_OFF,),
)
MOUNT_BOLTS = Part(
    id="mount_bolts",
    says="new mount bolts, if the manual says single-use",
    quantity="by the count",
    source=COMMON_PRACTICE,
    measure_first="thread and length",
    for_places=(Access.ENGINE_EASED,),
    not_with=(features.STRESSED_SUMP,),
)
FRAME_BOLTS = Part(
    id="frame_bolts",
    says="frame bolts, if the manual says single-use",
    quantity="by the count",
    source=COMMON_PRACTICE,
    measure_first="thread, length, grade; dowels and their positions",
    for_places=(Access.ENGINE_EASED,),
    only_with=(features.STRESSED_SUMP,),
)
FLYWHEEL_BOLTS = Part(
    id="flywheel_bolts",
    says="new flywheel bolts, if the manual says single-use",
    quantity="by the count",
    source=COMMON_PRACTICE,
    measure_first="thread, length under the head",
    for_places=(Access.FLYWHEEL_OFF,),
)
