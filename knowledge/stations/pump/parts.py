"""Parts for a repair of the pump."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.pump import causes, causes_drive, causes_fitted, causes_variable
from knowledge.work import Access, Part

#: besides a jammed pump, which also needs its drive
_NEW_PUMP = (
    causes.PUMP_GEAR_WEAR,
    causes_fitted.PUMP_WRONG_PART,
    causes_fitted.PUMP_CAVITATION,
    causes_fitted.PUMP_OVERSIZED,
    causes_fitted.PUMP_BODY_CRACKED,
    causes_fitted.PUMP_IDLER_PIN_MIGRATED,
)
_DRIVE = (
    causes_drive.PUMP_DRIVE_BROKEN,
    causes_drive.PUMP_DRIVE_SLIP,
    causes_drive.PUMP_DRIVE_BIND,
    assembly_causes_left_out.PUMP_DRIVE_LEFT_OUT,
    causes.PUMP_DEBRIS_LOCK,
)
OIL_PUMP = Part(
    id="oil_pump",
    says="oil pump listed for this engine and sump, of standard volume",
    quantity="1",
    source=idea_from(sources.ENGINE_BUILDERS_2020),
    measure_first=(
        "end and side clearance of the old pump; rotation, gear length, height, mount, drive "
        "slot or hex, pickup bore, compared with the list; open and measure the new one too"
    ),
    for_causes=(*_NEW_PUMP, causes.PUMP_DEBRIS_LOCK),
    also=("new oil pump",),
)
PUMP_COVER = Part(
    id="pump_cover",
    says="flat pump cover, if the old one cannot be lapped",
    quantity="1",
    source=idea_from(sources.PUMP_INSPECTION_2006),
    measure_first="depth of the groove, gear end clearance with it, thickness, screw spacing",
    for_causes=(causes.PUMP_COVER_SCORED, causes.PUMP_COVER_LOOSE),
)
PUMP_COVER_SCREWS = Part(
    id="pump_cover_screws",
    says="pump cover screws with their locks",
    quantity="1 set",
    source=idea_from(sources.MARINE_DIESEL_MANUAL),
    measure_first="thread and length: none may bottom; the body's threads whole",
    for_causes=(causes.PUMP_COVER_LOOSE, causes.PUMP_COVER_SCORED),
)
PUMP_COVER_GASKET = Part(
    id="pump_cover_gasket",
    says="pump cover gasket of the right thickness, if one is fitted",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="thickness of the old one: it sets the end clearance of the gears",
    for_causes=(
        causes_fitted.PUMP_ROTOR_REVERSED,
        causes.PUMP_COVER_SCORED,
        causes.PUMP_COVER_LOOSE,
        causes.PUMP_GASKET_WRONG,
    ),
    for_places=(Access.PUMP_COVER_OFF, Access.PUMP_RELIEF_OUT),
)
PUMP_MOUNT_GASKET = Part(
    id="pump_mount_gasket",
    says="pump mount gasket or ring, if one is fitted",
    quantity="1, and 1 to spare",
    source=idea_from(sources.OVERHAUL_MANUAL_5_101),
    measure_first=(
        "lay it on both faces: every port open through it; check whether the maker fits any"
    ),
    for_causes=(
        *_NEW_PUMP,
        causes.PUMP_DEBRIS_LOCK,
        causes.PUMP_MOUNT_LEAK,
        causes.PUMP_GASKET_WRONG,
    ),
    for_places=(Access.PUMP_OFF,),
)
PUMP_BOLTS = Part(
    id="pump_bolts",
    says="new pump bolts, if the manual says single-use",
    quantity="by the count",
    source=COMMON_PRACTICE,
    measure_first="thread and length: none may bottom",
    for_causes=(causes.PUMP_MOUNT_LEAK,),
    for_places=(Access.PUMP_OFF,),
)
PUMP_DRIVE_SHAFT = Part(
    id="pump_drive_shaft",
    says="new pump drive shaft with a steel collar",
    quantity="1 with every new pump",
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    measure_first="length, drive slot or hex at both ends and how far each engages, free end play "
    "with the pump bolted up",
    for_causes=(*_DRIVE, *_NEW_PUMP),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("oil pump drive rod",),
)
DISTRIBUTOR_GEAR = Part(
    id="distributor_gear",
    says="distributor drive gear of the material the camshaft needs, with its pin",
    quantity="1",
    source=sources.DRIVE_SHAFT_EARS_THREAD,
    measure_first="shaft diameter, teeth and their wear, camshaft material, end play",
    for_causes=(
        causes_drive.PUMP_DRIVE_SLIP,
        causes_drive.PUMP_DRIVE_BROKEN,
        causes_fitted.PUMP_OVERSIZED,
    ),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("skew gear of the distributor",),
)
DRIVE_SHIMS = Part(
    id="drive_shims",
    says="shims for the end play of distributor or pump drive",
    quantity="a few thicknesses",
    source=idea_from(sources.DISTRIBUTOR_PRACTICES_2016),
    measure_first="end play with the pump bolted up, shaft diameter",
    for_causes=(causes_drive.PUMP_DRIVE_BIND, causes_drive.PUMP_DRIVE_SLIP),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR),
)
SKEW_GEAR = Part(
    id="skew_gear",
    says="skew drive gear and bush of the pump, and its mate on the camshaft where that is worn",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="teeth and their hand, shaft diameter, slot position, end play",
    for_causes=_DRIVE,
    only_with=(features.PUMP_ON_SKEW_GEAR,),
)
CRANK_NOSE_DRIVE = Part(
    id="crank_nose_drive",
    says="drive key, collar or inner rotor of the pump on the crank nose",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="nose diameter, flats or keyway, damper bolt's clamping length",
    for_causes=_DRIVE,
    only_with=(features.PUMP_ON_CRANK_NOSE,),
)
PUMP_COUPLING = Part(
    id="pump_coupling",
    says="drive gear, key, coupling or tongue of a pump outside or on the camshaft's end",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="shaft diameter and taper, key, teeth, tang or belt pitch",
    for_causes=_DRIVE,
    only_with=(features.PUMP_OUTSIDE, features.PUMP_ON_CAM_NOSE),
)
PUMP_CHAIN = Part(
    id="pump_chain",
    says="pump chain with sprockets and tensioner blade",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="links, pitch, wear of the teeth, shaft diameter and flats",
    for_causes=_DRIVE,
    only_with=(features.PUMP_ON_CHAIN,),
    also=("oil pump chain",),
)
STANDARD_RELIEF_SPRING = Part(
    id="standard_relief_spring",
    says="relief spring of the maker's standard rate, if a stiff one was fitted",
    quantity="1",
    source=idea_from(sources.ENGINE_BUILDER_2010),
    measure_first="free length, wire and coils of the spring that is in it",
    for_causes=(causes_fitted.PUMP_OVERSIZED,),
)
SCAVENGE_DRIVE = Part(
    id="scavenge_drive",
    says="scavenge pump belt or drive, with stage seals and hose unions",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="belt pitch, width and length; key and shaft diameter; union threads",
    for_causes=(causes_fitted.SCAVENGE_FAILURE,),
)
PUMP_CONTROL_SOLENOID = Part(
    id="pump_control_solenoid",
    says="control solenoid of the variable oil pump, with its seal",
    quantity="1",
    source=sources.VARIABLE_PUMP_2021,
    measure_first="its resistance and plug against the manual; whether the pump takes it alone",
    for_causes=(causes_variable.PUMP_CONTROL_STUCK,),
)
PUMP_ROTORS = Part(
    id="pump_rotors",
    says="pump rotors or gears of steel, or a new pump, if they shattered",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="rotor width and body depth; crank damper: bond, bolt and torque",
    for_causes=(causes_variable.PUMP_ROTOR_SHATTERED,),
)
