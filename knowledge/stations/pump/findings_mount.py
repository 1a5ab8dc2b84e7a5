"""The pump off the engine: joint, oil bath, part number, and the checks that show them."""

from knowledge import sources
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.pump import findings_drive
from knowledge.work import Access, Caution, Inspection

MOUNT_GASKET_BLOWN = Finding(
    id="mount_gasket_blown",
    station=Station.PUMP,
    says="the gasket between pump and block is blown or torn, with oil wash beside it",
    asks="Gasket or seal between pump and block blown, torn or washed by a jet of oil?",
    source=sources.PUMP_GASKET_THREAD,
    denies="the gasket between pump and block is whole",
    stage=Stage.OPENED,
    normal="whole, with an even imprint",
    why="this gasket holds the full pump pressure",
    background=HARDLY_EVER,
    also=("pump gasket blew out", "torn oil pump gasket", "pump o-ring cut"),
)
MOUNT_GASKET_MISSING = Finding(
    id="mount_gasket_missing",
    station=Station.PUMP,
    says="the gasket or seal between pump and block was left out",
    asks="Pump to block: a gasket or seal that belongs there missing?",
    source=sources.DIESEL_CASE_NOTE,
    denies="gasket or seal between pump and block is there as specified",
    stage=Stage.OPENED,
    normal="as the maker specifies: a gasket, a seal, or none",
    background=HARDLY_EVER,
    also=("no gasket under the pump", "forgot the pump gasket", "o-ring left out at pump"),
)
MOUNT_FACE_NOT_FLAT = Finding(
    id="mount_face_not_flat",
    station=Station.PUMP,
    says="the joint face of pump or block is not flat, burred or scored",
    asks="Joint face of pump or block uneven, burred or scored?",
    source=COMMON_PRACTICE,
    denies="the joint faces of pump and block are flat",
    stage=Stage.OPENED,
    normal="flat within 0.002 in (0.05 mm)",
    background=RARE,
    also=("pump face warped", "burr on pump mounting", "pump doesn't sit flat"),
)
GASKET_MASKS_PORT = Finding(
    id="gasket_masks_port",
    station=Station.PUMP,
    says="a gasket covers part of a port of the pump",
    asks="Pump gasket laid on both faces: is part of a port covered?",
    source=sources.OVERHAUL_MANUAL_5_101,
    denies="every port is open through its gasket",
    stage=Stage.OPENED,
    normal="every port open through the gasket",
    background=EXCEPTIONAL,
    also=("gasket blocking the oil hole", "gasket upside down", "wrong gasket on oil pump"),
)
LOOK_AT_THE_PUMP_JOINT = Inspection(
    id="look_at_the_pump_joint",
    station=Station.PUMP,
    says="gasket, faces and bolts between pump and block",
    steps=(
        "note the torque at which each bolt comes loose",
        "photograph the gasket's imprint and any wash marks before scraping",
        "lay the gasket on both faces and mark the ports",
        "straightedge over both faces",
    ),
    minutes=10,
    access=Access.PUMP_OFF,
    reveals=(
        MOUNT_GASKET_BLOWN,
        MOUNT_GASKET_MISSING,
        MOUNT_FACE_NOT_FLAT,
        GASKET_MASKS_PORT,
        findings_drive.PUMP_BOLTS_LOOSE,
    ),
    source=COMMON_PRACTICE,
    tools=("straightedge", "feeler", "camera"),
    cautions=(Caution.ASBESTOS, Caution.USED_OIL),
    destroys="the gasket's imprint, once scraped",
    keep="photograph imprint and wash marks, keep the gasket",
    also=(
        "pump gasket",
        "pump mounting bolts",
    ),
)

DRAWS_NOTHING_IN_BATH = Finding(
    id="draws_nothing_in_bath",
    station=Station.PUMP,
    says="turned by hand in an oil bath, the pump does not draw and deliver",
    asks="Pump inlet in clean oil, turned by hand: does it fail to draw and push oil out?",
    source=COMMON_PRACTICE,
    denies="in an oil bath the pump draws and pushes strongly",
    stage=Stage.OPENED,
    normal="draws within a few turns and pushes against a thumb",
    background=VERY_RARE,
    also=("pump doesn't pump on the bench", "no suction by hand", "pump won't pull oil"),
)
PUMP_TURNS_ROUGHLY = Finding(
    id="pump_turns_roughly",
    station=Station.PUMP,
    says="the pump turns roughly or binds once in a turn",
    asks="Pump turned by hand: rough, or binding once per turn?",
    source=COMMON_PRACTICE,
    denies="the pump turns smoothly by hand",
    stage=Stage.OPENED,
    normal="smooth over the whole turn",
    background=RARE,
    also=("tight spot in the pump", "pump feels notchy", "pump binds"),
)
TURN_PUMP_IN_OIL_BATH = Inspection(
    id="turn_pump_in_oil_bath",
    station=Station.PUMP,
    says="turn the pump by hand in a bath of clean oil",
    steps=(
        "turn it dry first: free, smooth, no tight spot",
        "inlet under clean oil, turn it the way it runs",
        "it must draw within a few turns and push against a thumb on the outlet",
    ),
    minutes=10,
    access=Access.PUMP_OFF,
    reveals=(DRAWS_NOTHING_IN_BATH, PUMP_TURNS_ROUGHLY, findings_drive.PUMP_JAMMED),
    source=COMMON_PRACTICE,
    tools=("tray", "clean oil", "screwdriver"),
    destroys="turning moves debris in the pump; if it turns roughly, look inside first",
    keep="do not force a pump that binds",
    also=("bench test the oil pump", "spin pump in a bucket of oil"),
)

WRONG_PUMP_FITTED = Finding(
    id="wrong_pump_fitted",
    station=Station.PUMP,
    says="the pump is not the one listed for this engine, or its gears do not mesh properly",
    asks="Wrong pump (not the listed capacity, rotation, height, ratio or pan)?",
    source=sources.OVERHAUL_MANUAL_5_101,
    denies="the pump is the one listed for this engine",
    stage=Stage.OPENED,
    normal="part number and ratio as listed",
    background=HARDLY_EVER,
    also=("wrong part number pump", "pump for a different engine", "pump from another model"),
)
READ_THE_PUMP_NUMBER = Inspection(
    id="read_the_pump_number",
    station=Station.PUMP,
    says="check that it is the right pump: number, rotation, height, ratio",
    steps=(
        "compare part number, gear height and drive ratio with the list",
        "compare it with the old pump",
    ),
    minutes=10,
    access=Access.PUMP_OFF,
    reveals=(WRONG_PUMP_FITTED,),
    source=COMMON_PRACTICE,
    tools=("parts list", "caliper"),
)
