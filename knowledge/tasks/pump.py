"""What must be right about the pump on the bench: the right one, clean, its fits."""

from knowledge.causes.assembly import DIRT_IN_ASSEMBLY
from knowledge.causes.pump import (
    PUMP_BODY_CRACKED,
    PUMP_COVER_SCORED,
    PUMP_DEBRIS_LOCK,
    PUMP_GEAR_WEAR,
    PUMP_IDLER_PIN_MIGRATED,
    PUMP_OVERSIZED,
    PUMP_ROTOR_REVERSED,
    PUMP_WRONG_PART,
)
from knowledge.engines.features import PUMP_ON_DISTRIBUTOR_SHAFT
from knowledge.reference.limits import (
    PUMP_BACKLASH,
    PUMP_BUSH_CLEARANCE,
    PUMP_END_CLEARANCE,
    PUMP_SIDE_CLEARANCE,
)
from knowledge.sources import (
    AMC,
    DMX,
    GMI,
    HB07,
    HB19,
    MKP,
    MZP,
    OLD,
    ROT,
    TEB,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.tasks.figures import DIAL_GAUGE, FEELER, MM, THOU
from knowledge.vocabulary import Band, Caution, Hold, Phase, Task

END_CLEARANCE = (
    Band(2 * THOU, 6 * THOU, AMC, "small iron gear pumps; aim for the tight end"),
    Band(2 * THOU, 6 * THOU, OLD, "one V6, pump in the timing cover"),
    Band(2 * THOU, 6 * THOU, MKP, "heavy diesel, gear pump"),
    Band(2.5 * THOU, 4.3 * THOU, DMX, "diesel V8"),
    Band(None, 0.10 * MM, MZP, "diesel four: the limit"),
    Band(None, 0.095 * MM, ROT, "rotor pump: renew beyond this"),
)

RIGHT_PUMP = Task(
    "right_pump",
    Phase.PUMP,
    "the pump is the one for this engine and sump",
    (
        "part number, capacity, rotation, height, drive ratio against the build sheet",
        "beside the old pump: mount, ports, shaft, length over all",
        "more volume or a stiffer spring only with a reason; the suction must feed it",
    ),
    HB07,
    remedy="the right pump",
    guards=(PUMP_WRONG_PART, PUMP_OVERSIZED),
    also=("pump part number", "high volume pump", "is it the right oil pump"),
)
NEW_PUMP_OPENED = Task(
    "new_pump_opened",
    Phase.PUMP,
    "pump opened, cleaned and looked over, even a new one",
    (
        "mark meshing teeth and the way the rotor faces, then take it apart",
        "look for casting grit, burrs at ports and teeth, cracks, an idler pin that stands proud",
        "wash, blow dry, oil; clearances are taken on the clean pump",
    ),
    TEB,
    Hold.NOTE,
    remedy="stone the burr, wash again; send back a pump that is cracked or rough",
    guards=(DIRT_IN_ASSEMBLY, PUMP_DEBRIS_LOCK, PUMP_BODY_CRACKED, PUMP_IDLER_PIN_MIGRATED),
    cautions=(
        Caution.SOLVENT,
        Caution.EYES,
        Caution.SPRING,
        Caution.PRESSURE,
    ),
    also=("blueprint the pump", "strip a new pump", "deburr the oil pump"),
)
GEAR_END_CLEARANCE_FITTED = Task(
    "gear_end_clearance_fitted",
    Phase.PUMP,
    "end clearance over each pump gear or rotor",
    (
        "clean, dry, no gasket but the one the pump runs with",
        "straightedge across the body, feeler over each gear, in two directions",
        "below 0.002 in: measure gears and pocket, find the wrong part",
        "write down the widest",
    ),
    AMC,
    dimension="length",
    bands=END_CLEARANCE,
    limits=(None, PUMP_END_CLEARANCE),
    spread=FEELER,
    remedy="another gear set or pump; body lapped by a machine shop only where the maker allows it",
    why="end clearance leaks straight from outlet to inlet, most at hot idle",
    guards=(PUMP_GEAR_WEAR,),
    also=("gear end play", "pump end clearance", "pump clearance", "straightedge over the gears"),
)
END_CLEARANCE_WITH_GROOVE = Task(
    "end_clearance_with_groove",
    Phase.PUMP,
    "end clearance with the depth of the cover's groove added",
    (
        "depth of the worn pattern in the cover: straightedge across it, feeler under",
        "add it to the end clearance; the sum has to stay within the same figures",
        "a new or lapped cover adds nothing",
    ),
    GMI,
    dimension="length",
    bands=END_CLEARANCE,
    limits=(None, PUMP_END_CLEARANCE),
    spread=FEELER,
    remedy="lap or renew the cover",
    guards=(PUMP_COVER_SCORED, PUMP_GEAR_WEAR),
    also=("cover wear", "grooved cover"),
)
GEAR_SIDE_CLEARANCE_FITTED = Task(
    "gear_side_clearance_fitted",
    Phase.PUMP,
    "clearance gear to body, at every tooth",
    (
        "feeler between tooth and bore, away from the mesh; both gears, every tooth",
        "write down the widest and the tightest",
    ),
    AMC,
    dimension="length",
    bands=(
        Band(2 * THOU, 4 * THOU, AMC, "petrol six"),
        Band(2 * THOU, 5 * THOU, OLD, "one V6"),
        Band(None, 8.7 * THOU, DMX, "diesel V8: the limit"),
    ),
    limits=(None, PUMP_SIDE_CLEARANCE),
    spread=FEELER,
    remedy="another gear set or pump",
    guards=(PUMP_GEAR_WEAR,),
    also=("gear to body clearance", "body clearance", "pump side clearance"),
)
ROTOR_BODY_CLEARANCE_FITTED = Task(
    "rotor_body_clearance_fitted",
    Phase.PUMP,
    "rotor pump: clearance outer rotor to body",
    ("push the rotor to one side, feeler on the other", "no rotors in it: does not apply"),
    ROT,
    dimension="length",
    bands=(Band(None, 0.235 * MM, ROT, "renew beyond this"),),
    spread=FEELER,
    remedy="renew the pump",
    guards=(PUMP_GEAR_WEAR,),
    not_with=(PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("gerotor clearance", "outer rotor clearance"),
)
ROTOR_TIP_CLEARANCE_FITTED = Task(
    "rotor_tip_clearance_fitted",
    Phase.PUMP,
    "rotor pump: clearance tip to tip",
    ("feeler between the tips, in several positions", "no rotors in it: does not apply"),
    ROT,
    dimension="length",
    bands=(Band(None, 0.150 * MM, ROT, "renew beyond this"),),
    spread=FEELER,
    remedy="renew the pump",
    guards=(PUMP_GEAR_WEAR,),
    not_with=(PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("gerotor tip clearance",),
)
ROTOR_MARKS_MATCHED = Task(
    "rotor_marks_matched",
    Phase.PUMP,
    "gears or rotors the way round they came: chamfer side, marks together",
    (
        "outer rotor: chamfer to the side it lay on; marks of both rotors on one side",
        "worn gears back into the mesh that was marked",
    ),
    HB19,
    remedy="turn it round before the cover goes on",
    why="an outer rotor the wrong way round costs 40 to 60 % of what the pump gives",
    guards=(PUMP_ROTOR_REVERSED,),
    also=("rotor wrong way round", "index marks"),
)
PUMP_BACKLASH_FITTED = Task(
    "pump_backlash_fitted",
    Phase.PUMP,
    "backlash of the pump gears",
    ("feeler between the teeth where they mesh, in several places",),
    CP,
    Hold.NOTE,
    "length",
    (Band(None, 28 * THOU, CP, "widest still used"),),
    (None, PUMP_BACKLASH),
    FEELER,
    remedy="another gear set or pump",
    guards=(PUMP_GEAR_WEAR,),
    also=("gear backlash",),
)
PUMP_BUSH_FITTED = Task(
    "pump_bush_fitted",
    Phase.PUMP,
    "clearance of the pump shaft in its bush",
    ("dial gauge on the shaft, rock it across; or measure shaft and bore",),
    DMX,
    Hold.NOTE,
    "length",
    (Band(None, 5.5 * THOU, DMX, "diesel V8"),),
    (None, PUMP_BUSH_CLEARANCE),
    DIAL_GAUGE,
    remedy="new bush or pump",
    guards=(PUMP_GEAR_WEAR,),
    also=("pump shaft play",),
)
