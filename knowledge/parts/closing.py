"""Gaskets and once-only bolts that close a place again, whatever the cause was."""

from knowledge.causes.assembly import SEALANT_DEBRIS
from knowledge.causes.leaks import SHAFT_SEAL_LEAK
from knowledge.causes.suction import PICKUP_CLEARANCE_TIGHT, PICKUP_CLEARANCE_WIDE
from knowledge.engines.features import DRY_SUMP, PUMP_OUTSIDE, STRESSED_SUMP, VEE_ENGINE
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access

SUMP_GASKET_SET = Part(
    "sump_gasket_set",
    "sump gasket set with end seals",
    "1 set",
    CP,
    measure_first="thickness: the pickup gap is set with this gasket; one piece or four, rail shape",
    for_causes=(SEALANT_DEBRIS, PICKUP_CLEARANCE_TIGHT, PICKUP_CLEARANCE_WIDE),
    for_places=(Access.SUMP_OFF,),
    also=("oil pan gasket",),
)
STRAINER_COVER_GASKET = Part(
    "strainer_cover_gasket",
    "strainer cover gasket",
    "1",
    CP,
    measure_first="print of the old one, thickness",
    for_places=(Access.PICKUP_OFF,),
    only_with=(PUMP_OUTSIDE,),
    not_with=(DRY_SUMP,),
)
VALVE_COVER_GASKET = Part(
    "valve_cover_gasket",
    "valve cover gasket and bolt seals",
    "1 set a cover",
    CP,
    measure_first="bolt pattern and rail height",
    for_places=(Access.VALVE_COVER_OFF,),
    also=("rocker cover gasket",),
)
INTAKE_GASKET_SET = Part(
    "intake_gasket_set",
    "intake or valley gasket set",
    "1 set",
    CP,
    measure_first="port size, water passages, end gap to the block",
    for_places=(Access.VALLEY_OPEN,),
    only_with=(VEE_ENGINE,),
)
MANIFOLD_COOLANT = Part(
    "manifold_coolant",
    "coolant where the manifold carries it",
    "what runs out",
    CP,
    measure_first="the kind the engine maker names",
    for_places=(Access.VALLEY_OPEN,),
    only_with=(VEE_ENGINE,),
)
SIDE_COVER_GASKET = Part(
    "side_cover_gasket",
    "side cover gasket",
    "1 a cover",
    CP,
    measure_first="print of the old one, bolt seals",
    for_places=(Access.VALLEY_OPEN,),
    not_with=(VEE_ENGINE,),
)
FRONT_COVER_GASKET_SET = Part(
    "front_cover_gasket_set",
    "front cover gasket set",
    "1 set",
    CP,
    measure_first="print of the old one, rings of any oil passage through the cover",
    for_causes=(SHAFT_SEAL_LEAK,),
    for_places=(Access.FRONT_COVER_OFF,),
)
DAMPER_BOLT = Part(
    "damper_bolt",
    "new damper bolt where the manual calls for a once-only bolt",
    "1",
    CP,
    measure_first="thread and length",
    for_places=(Access.FRONT_COVER_OFF,),
)
MOUNT_BOLTS = Part(
    "mount_bolts",
    "new mount bolts where the manual calls for once-only bolts",
    "by the count",
    CP,
    measure_first="thread and length",
    for_places=(Access.ENGINE_EASED,),
    not_with=(STRESSED_SUMP,),
)
FRAME_BOLTS = Part(
    "frame_bolts",
    "frame bolts where the manual calls for once-only bolts",
    "by the count",
    CP,
    measure_first="thread, length, grade; dowels and their places",
    for_places=(Access.ENGINE_EASED,),
    only_with=(STRESSED_SUMP,),
)
FLYWHEEL_BOLTS = Part(
    "flywheel_bolts",
    "new flywheel bolts where the manual calls for once-only bolts",
    "by the count",
    CP,
    measure_first="thread, length under the head",
    for_places=(Access.FLYWHEEL_OFF,),
)
