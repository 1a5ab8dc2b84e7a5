"""What is told, heard and tried at the pump, and what shows at its joint."""

from knowledge.sources import (
    CAV,
    CDX,
    EB10,
    HB07,
    HB14,
    HB19,
    HPA,
    OL2,
    OLD,
    PGN,
    POI,
    PRM,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import (
    COMMON,
    OCCASIONAL,
    RARE,
    VERY_RARE,
    Finding,
    Stage,
    Station,
)

# --------------------------------------------------------------------- heard and told

PUMP_NOISE = Finding(
    "pump_noise",
    Station.PUMP,
    "a whine or rattle comes from the pump and rises with revs",
    "Listening at the pump: is there a whine or rattle that rises with the revs?",
    CAV,
    denies="the pump is quiet",
    normal="no whine or rattle of its own",
    why="a pump that cannot fill, or draws air, is heard before it is seen",
    background=RARE,
    also=("oil pump whining", "rattling oil pump", "howling noise from the sump", "pump noisy"),
)
HIGH_VOLUME_PUMP_FITTED = Finding(
    "high_volume_pump_fitted",
    Station.PUMP,
    "a high-volume pump or a stiffer relief spring has been fitted",
    "Has a high-volume pump, or a stiffer relief spring, been fitted?",
    EB10,
    denies="pump and spring are the standard ones",
    normal="standard pump and spring",
    background=OCCASIONAL,
    also=("high volume oil pump", "HV pump", "high pressure spring", "big block pump"),
)
DRIVE_PARTNER_STOPPED = Finding(
    "drive_partner_stopped",
    Station.PUMP,
    "what shares the pump's drive stopped with it (ignition, tachometer, injection pump)",
    "Did anything on the same drive (distributor, tachometer, injection pump) stop as well?",
    HB14,
    denies="all that shares the pump's drive still turns",
    normal="all of them turn",
    why="two things on one shaft that stop together point at the shaft",
    background=VERY_RARE,
    also=(
        "engine cut out when pressure went",
        "rev counter died at the same time",
        "tach stopped working too",
        "lost spark and oil pressure together",
    ),
)
ROTOR_STILL_WHEN_CRANKED = Finding(
    "rotor_still_when_cranked",
    Station.PUMP,
    "the distributor rotor does not turn when the engine is cranked",
    "With the distributor cap off: does the rotor stand still while the engine is cranked?",
    CP,
    denies="the rotor turns when cranked",
    stage=Stage.OUTSIDE,
    normal="turns at half engine speed",
    why="five minutes' work that shows whether the upper half of the drive is whole",
    background=VERY_RARE,
    also=("rotor not turning", "rotor button doesn't spin", "distributor not turning"),
)
IGNITION_SCATTERS = Finding(
    "ignition_scatters",
    Station.PUMP,
    "ignition timing scatters, or the rotor turns by jerks",
    "Under the strobe, or cranked with the cap off: does timing scatter or the rotor jerk?",
    CP,
    denies="ignition timing is steady",
    stage=Stage.OUTSIDE,
    normal="steady marks",
    background=RARE,
    also=("timing jumps around", "spark scatter", "timing mark wanders", "slop in distributor"),
)
NO_OIL_WHEN_CRANKED = Finding(
    "no_oil_when_cranked",
    Station.PUMP,
    "no oil comes from the pump's outlet or the filter's place when cranked",
    "With the filter or the outlet union off and the engine cranked: does no oil come?",
    PRM,
    denies="oil comes in a strong stream when cranked",
    stage=Stage.OUTSIDE,
    normal="a strong stream within half a minute",
    why="it parts a pump that moves no oil from an engine that does not hold it",
    background=VERY_RARE,
    also=(
        "no oil out of the filter housing",
        "filter stays empty",
        "new filter still dry",
        "cranked with filter off and nothing came out",
    ),
)
TANK_EMPTIES_RUNNING = Finding(
    "tank_empties_running",
    Station.PUMP,
    "the oil tank empties into the crankcase while running",
    "Dry sump: does the tank empty, and the crankcase fill, while it runs?",
    HPA,
    denies="the tank keeps its level running",
    stage=Stage.OUTSIDE,
    normal="a steady stream back into the tank",
    background=VERY_RARE,
    also=("dry sump tank goes empty", "no return to the tank", "oil piles up in the crankcase"),
)
PUMP_BELT_OFF = Finding(
    "pump_belt_off",
    Station.PUMP,
    "the belt of an outside pump is off, slack or stripped",
    "Is the belt that turns the outside oil pump off, slack or stripped?",
    HPA,
    denies="the pump's belt is whole and tight",
    stage=Stage.OUTSIDE,
    normal="whole, aligned and tight",
    background=VERY_RARE,
    also=("dry sump belt came off", "oil pump belt broken", "threw the pump belt"),
)

# -------------------------------------------------------------------------- priming

FORCED_OIL_BROUGHT_PRESSURE = Finding(
    "forced_oil_brought_pressure",
    Station.PUMP,
    "forcing oil into the dry pump brought the pressure",
    "Did filling or forcing oil into the pump bring the pressure?",
    PRM,
    denies="forcing oil into the pump made no difference",
    stage=Stage.OUTSIDE,
    normal="not needed",
    why="a pump that works once it is wetted was only dry",
    background=VERY_RARE,
    also=(
        "primed it and pressure came up",
        "squirted oil into the pump and it worked",
        "pumped oil in the gallery then it picked up",
    ),
)
PACKED_STILL_NONE = Finding(
    "packed_still_none",
    Station.PUMP,
    "primed or packed with petroleum jelly, the pump still gives nothing",
    "Was the pump primed, or packed with petroleum jelly, and still gives no pressure?",
    OLD,
    denies="once primed or packed, the pump drew",
    stage=Stage.OUTSIDE,
    normal="a packed pump draws within seconds",
    why="dryness is ruled out: look at drive, suction and open oilways",
    background=VERY_RARE,
    also=(
        "packed with vaseline still no pressure",
        "primed it twice still nothing",
        "filled pump with oil no pressure",
    ),
)
DRILL_GIVES_NONE = Finding(
    "drill_gives_none",
    Station.PUMP,
    "turned by a drill, the pump gives no pressure",
    "With the pump turned by a drill the right way round: is there no pressure at all?",
    POI,
    denies="turned by a drill, some pressure comes",
    stage=Stage.OPENED,
    normal="pressure, and load on the drill, within seconds",
    why="the engine's own drive is out of the question: pump, suction or an open way is left",
    background=VERY_RARE,
    also=("primed with drill nothing", "drill spins free no oil", "priming tool no pressure"),
)
DRILL_GIVES_LITTLE = Finding(
    "drill_gives_little",
    Station.PUMP,
    "turned by a drill, the pump gives only little pressure",
    "With the pump turned by a drill: does it give only a little pressure (well below the usual)?",
    CP,
    denies="turned by a drill, the pressure is not low",
    stage=Stage.OPENED,
    normal="30 to 60 psi is usual with cold oil and a strong drill",
    background=RARE,
    also=("drill only makes 10 psi", "low pressure when priming", "barely builds with drill"),
)
DRILL_GIVES_GOOD = Finding(
    "drill_gives_good",
    Station.PUMP,
    "turned by a drill, the pump gives good pressure",
    "With the pump turned by a drill: is the pressure good?",
    CP,
    denies="turned by a drill, the pressure is not good",
    stage=Stage.OPENED,
    normal="30 to 60 psi is usual with cold oil and a strong drill",
    background=COMMON,
    also=("drill makes 50 psi", "pumps fine with a drill", "good pressure when priming"),
)
PUMP_DRY_INSIDE = Finding(
    "pump_dry_inside",
    Station.PUMP,
    "the pump was found dry inside",
    "With the pump just opened: was it dry inside?",
    PRM,
    denies="the pump was wet with oil inside",
    stage=Stage.OPENED,
    normal="wet with oil, even after standing",
    background=RARE,
    also=("oil pump bone dry", "no oil in the pump", "dry pump"),
)
DRAWS_NOTHING_IN_BATH = Finding(
    "draws_nothing_in_bath",
    Station.PUMP,
    "turned by hand in an oil bath, the pump does not draw and deliver",
    "With inlet in clean oil and turned by hand: does the pump fail to draw and push oil out?",
    CP,
    denies="in an oil bath the pump draws and pushes strongly",
    stage=Stage.OPENED,
    normal="draws within a few turns and pushes against a thumb",
    background=VERY_RARE,
    also=("pump doesn't pump on the bench", "no suction by hand", "pump won't pull oil"),
)

# ------------------------------------------------------------------ pump as a whole part

WRONG_PUMP_FITTED = Finding(
    "wrong_pump_fitted",
    Station.PUMP,
    "the pump is not the one listed for this engine, or its gears do not mesh rightly",
    "Is the pump another than the one listed (capacity, rotation, height, ratio, pan)?",
    HB07,
    denies="the pump is the one listed for this engine",
    stage=Stage.OPENED,
    normal="part number and ratio as listed",
    background=VERY_RARE,
    also=("wrong part number pump", "pump for a different engine", "pump from another model"),
)
PUMP_HOUSING_BURST = Finding(
    "pump_housing_burst",
    Station.PUMP,
    "the pump's housing is broken or burst",
    "Is the pump's housing broken or burst?",
    CP,
    denies="the pump's housing is whole",
    stage=Stage.OPENED,
    normal="whole",
    background=VERY_RARE,
    also=("oil pump housing broken", "pump snapped off", "pump casting broke", "burst pump"),
)
PUMP_CASTING_CRACKED = Finding(
    "pump_casting_cracked",
    Station.PUMP,
    "the pump's casting is cracked",
    "By dye, or solvent seeping through: is there a crack in the pump's casting?",
    CDX,
    denies="no crack in the pump's casting",
    stage=Stage.OPENED,
    normal="no crack; a casting line is none",
    background=VERY_RARE,
    also=("hairline crack in pump", "cracked pump body", "split pump outlet"),
)

# --------------------------------------------------------------------- the pump's joint

MOUNT_GASKET_BLOWN = Finding(
    "mount_gasket_blown",
    Station.PUMP,
    "the gasket between pump and block is blown or torn, with oil wash beside it",
    "Is the gasket or seal between pump and block blown or torn, or washed by a jet of oil?",
    PGN,
    denies="the gasket between pump and block is whole",
    stage=Stage.OPENED,
    normal="whole, with an even imprint",
    why="all the pump's pressure stands behind this gasket",
    background=VERY_RARE,
    also=("pump gasket blew out", "torn oil pump gasket", "pump o-ring cut"),
)
MOUNT_GASKET_MISSING = Finding(
    "mount_gasket_missing",
    Station.PUMP,
    "the gasket or seal between pump and block was left out",
    "Is a gasket or seal that belongs between pump and block missing?",
    HB19,
    denies="gasket or seal between pump and block is there as specified",
    stage=Stage.OPENED,
    normal="as the maker specifies: a gasket, a seal, or none",
    background=VERY_RARE,
    also=("no gasket under the pump", "forgot the pump gasket", "o-ring left out at pump"),
)
MOUNT_FACE_NOT_FLAT = Finding(
    "mount_face_not_flat",
    Station.PUMP,
    "the joint face of pump or block is not flat, burred or scored",
    "Is the joint face of pump or block uneven, burred or scored?",
    CP,
    denies="the joint faces of pump and block are flat",
    stage=Stage.OPENED,
    normal="flat within 0.002 in (0.05 mm)",
    background=RARE,
    also=("pump face warped", "burr on pump mounting", "pump doesn't sit flat"),
)
PUMP_BOLTS_LOOSE = Finding(
    "pump_bolts_loose",
    Station.PUMP,
    "the pump's mounting bolts are loose, missing or bottomed",
    "Are the bolts that hold the pump loose, missing or bottomed in their holes?",
    CP,
    denies="the pump's mounting bolts are tight",
    stage=Stage.OPENED,
    normal="tight to the maker's torque and locked",
    background=VERY_RARE,
    also=("oil pump bolts backed out", "pump hanging loose", "pump bolt in the pan"),
)
GASKET_MASKS_PORT = Finding(
    "gasket_masks_port",
    Station.PUMP,
    "a gasket covers part of a port of the pump",
    "Laid on both faces: does the pump's gasket cover part of a port?",
    HB07,
    denies="every port is open through its gasket",
    stage=Stage.OPENED,
    normal="every port open through the gasket",
    background=VERY_RARE,
    also=("gasket blocking the oil hole", "gasket upside down", "wrong gasket on oil pump"),
)
EXTRA_PUMP_GASKET = Finding(
    "extra_pump_gasket",
    Station.PUMP,
    "a gasket too many or too thick lies under the pump's cover",
    "Is there a gasket, or a thicker one, under a pump cover that should have none or a thin one?",
    HB19,
    denies="under the pump's cover all is as built",
    stage=Stage.OPENED,
    normal="metal to metal, or the maker's thin gasket",
    background=VERY_RARE,
    also=("paper gasket under pump cover", "home made pump gasket", "thick pump cover gasket"),
)
PUMP_FOUND_SOUND = Finding(
    "pump_found_sound",
    Station.PUMP,
    "the pump was opened and measured and is within its limits",
    "Was the pump opened and measured, and all found within limits?",
    OL2,
    denies="the pump did not pass its measuring",
    stage=Stage.OPENED,
    normal="all clearances within the maker's figures",
    why="a pump that measures well sends the search to suction, relief valve and engine",
    background=COMMON,
    also=("pump checked out fine", "oil pump looked good", "nothing wrong with the pump"),
)
