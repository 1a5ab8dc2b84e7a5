"""Parts of the oil pump and of what drives it."""

from knowledge.causes.pump import (
    PUMP_BODY_CRACKED,
    PUMP_CAVITATION,
    PUMP_COVER_LOOSE,
    PUMP_COVER_SCORED,
    PUMP_DEBRIS_LOCK,
    PUMP_DRIVE_BIND,
    PUMP_DRIVE_BROKEN,
    PUMP_DRIVE_SLIP,
    PUMP_GASKET_WRONG,
    PUMP_GEAR_WEAR,
    PUMP_IDLER_PIN_MIGRATED,
    PUMP_MOUNT_LEAK,
    PUMP_OVERSIZED,
    PUMP_ROTOR_REVERSED,
    PUMP_WRONG_PART,
    SCAVENGE_FAILURE,
)
from knowledge.engines.features import (
    PUMP_ON_CHAIN,
    PUMP_ON_CRANK_NOSE,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    PUMP_OUTSIDE,
)
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import CTD, EB10, GMI, HB07, HB11, ISS, PJM, TEB
from knowledge.vocabulary import Access

#: besides a jammed pump, which also needs its drive
_NEW_PUMP = (
    PUMP_GEAR_WEAR,
    PUMP_WRONG_PART,
    PUMP_CAVITATION,
    PUMP_OVERSIZED,
    PUMP_BODY_CRACKED,
    PUMP_IDLER_PIN_MIGRATED,
)
_DRIVE = (PUMP_DRIVE_BROKEN, PUMP_DRIVE_SLIP, PUMP_DRIVE_BIND, PUMP_DEBRIS_LOCK)

OIL_PUMP = Part(
    "oil_pump",
    "oil pump listed for this engine and sump, of standard volume",
    "1",
    TEB,
    measure_first="the old pump's end and side clearance first; rotation, gear length, height, "
    "mount, drive slot or hex, pickup bore against the list; open and measure the new one too",
    for_causes=(*_NEW_PUMP, PUMP_DEBRIS_LOCK),
    also=("new oil pump",),
)
PUMP_COVER = Part(
    "pump_cover",
    "flat pump cover, where it cannot be lapped",
    "1",
    GMI,
    measure_first="depth of the groove, gear end clearance with it, thickness, screw spacing",
    for_causes=(PUMP_COVER_SCORED, PUMP_COVER_LOOSE),
)
PUMP_COVER_SCREWS = Part(
    "pump_cover_screws",
    "pump cover screws with their locks",
    "1 set",
    HB11,
    measure_first="thread and length: none may bottom; the body's threads whole",
    for_causes=(PUMP_COVER_LOOSE, PUMP_COVER_SCORED),
)
PUMP_COVER_GASKET = Part(
    "pump_cover_gasket",
    "pump cover gasket of the right thickness, where one is fitted",
    "1",
    CP,
    measure_first="thickness of the old one: it sets the gears' end clearance",
    for_causes=(PUMP_ROTOR_REVERSED, PUMP_COVER_SCORED, PUMP_COVER_LOOSE, PUMP_GASKET_WRONG),
    for_places=(Access.PUMP_COVER_OFF, Access.PUMP_RELIEF_OUT),
)
PUMP_MOUNT_GASKET = Part(
    "pump_mount_gasket",
    "pump mount gasket or ring where one is fitted",
    "1, and 1 to spare",
    HB07,
    measure_first="laid on both faces: every port open through it; whether the maker fits any",
    for_causes=(*_NEW_PUMP, PUMP_DEBRIS_LOCK, PUMP_MOUNT_LEAK, PUMP_GASKET_WRONG),
    for_places=(Access.PUMP_OFF,),
)
PUMP_BOLTS = Part(
    "pump_bolts",
    "new pump bolts where the manual calls for once-only bolts",
    "by the count",
    CP,
    measure_first="thread and length: none may bottom",
    for_causes=(PUMP_MOUNT_LEAK,),
    for_places=(Access.PUMP_OFF,),
)
PUMP_DRIVE_SHAFT = Part(
    "pump_drive_shaft",
    "new pump drive shaft with a steel collar",
    "1, and with every new pump",
    ISS,
    measure_first="length, drive slot or hex at both ends and how far each engages, free end play "
    "with the pump bolted up",
    for_causes=(*_DRIVE, *_NEW_PUMP),
    only_with=(PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("oil pump drive rod",),
)
DISTRIBUTOR_GEAR = Part(
    "distributor_gear",
    "distributor drive gear of the material the camshaft calls for, with its pin",
    "1",
    PJM,
    measure_first="shaft diameter, teeth and their wear, camshaft material, end play",
    for_causes=(PUMP_DRIVE_SLIP, PUMP_DRIVE_BROKEN, PUMP_OVERSIZED),
    only_with=(PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("skew gear of the distributor",),
)
DRIVE_SHIMS = Part(
    "drive_shims",
    "shims for the end play of distributor or pump drive",
    "a few thicknesses",
    CTD,
    measure_first="end play with the pump bolted up, shaft diameter",
    for_causes=(PUMP_DRIVE_BIND, PUMP_DRIVE_SLIP),
    only_with=(PUMP_ON_DISTRIBUTOR_SHAFT, PUMP_ON_SKEW_GEAR),
)
SKEW_GEAR = Part(
    "skew_gear",
    "skew drive gear and bush of the pump, and its mate on the camshaft where that is worn",
    "1 set",
    CP,
    measure_first="teeth and their hand, shaft diameter, slot position, end play",
    for_causes=_DRIVE,
    only_with=(PUMP_ON_SKEW_GEAR,),
)
CRANK_NOSE_DRIVE = Part(
    "crank_nose_drive",
    "drive key, collar or inner rotor of the pump on the crank nose",
    "1 set",
    CP,
    measure_first="nose diameter, flats or keyway, damper bolt's clamping length",
    for_causes=_DRIVE,
    only_with=(PUMP_ON_CRANK_NOSE,),
)
PUMP_COUPLING = Part(
    "pump_coupling",
    "drive gear, key or coupling of an outside pump",
    "1",
    CP,
    measure_first="shaft diameter and taper, key, teeth, tang or belt pitch",
    for_causes=_DRIVE,
    only_with=(PUMP_OUTSIDE,),
)
PUMP_CHAIN = Part(
    "pump_chain",
    "pump chain with sprockets and tensioner blade",
    "1 set",
    CP,
    measure_first="links, pitch, wear of the teeth, shaft diameter and flats",
    for_causes=_DRIVE,
    only_with=(PUMP_ON_CHAIN,),
    also=("oil pump chain",),
)
STANDARD_RELIEF_SPRING = Part(
    "standard_relief_spring",
    "relief spring of the maker's standard rate, where a stiff one was fitted",
    "1",
    EB10,
    measure_first="free length, wire and coils of the spring that is in it",
    for_causes=(PUMP_OVERSIZED,),
)
SCAVENGE_DRIVE = Part(
    "scavenge_drive",
    "scavenge pump belt or drive, with stage seals and hose unions",
    "1 set",
    CP,
    measure_first="belt pitch, width and length; key and shaft diameter; union threads",
    for_causes=(SCAVENGE_FAILURE,),
)
