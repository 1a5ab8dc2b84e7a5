"""What must be right about a pump's drive shaft, skew gear and the distributor above it."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import DIAL_GAUGE, FEELER
from knowledge.reassembly.places import DISTRIBUTOR
from knowledge.stations.pump import causes_drive
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.units import THOU
from knowledge.work import Band, Caution, Hold, Phase, Task

DRIVE_SHAFT_SOUND = Task(
    id="drive_shaft_sound",
    phase=Phase.DRIVE,
    says="pump drive shaft new or like new: right length, steel collar, corners sharp",
    how=(
        "a new pump gets a new shaft; compare an old one with a new one",
        "compare the length with the old shaft and the list; block, pump and distributor decide it",
        "look along it for twist; hex, slot or tang not rounded; collar of steel, not plastic",
    ),
    source=sources.PUMP_MAKER_SHAFTS_SCREENS,
    remedy="new shaft",
    guards=(
        causes_drive.PUMP_DRIVE_SLIP,
        causes_drive.PUMP_DRIVE_BROKEN,
        causes_drive.PUMP_DRIVE_BIND,
    ),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR),
    also=("intermediate shaft", "oil pump drive rod", "pump shaft", "new drive shaft"),
)
DRIVE_SHAFT_RIGHT_END_DOWN = Task(
    id="drive_shaft_right_end_down",
    phase=Phase.DRIVE,
    says="drive shaft right end to the pump, fully engaged at both ends",
    how=(
        "the ends can differ: compare each with its slot before fitting",
        "stop ring or clip: try the shaft in the distributor's socket, set the stop, then take it "
        "out and fit it together with the pump",
        "collar over pump tang and shaft; feel a snap-on sleeve snap home",
        "do not force the pump up: turn the shaft until it drops in",
    ),
    source=sources.PUMP_FITTING_NOTES,
    remedy="take it out, turn it round, try again",
    why="if the shaft can lift out of the pump, the pump stops",
    guards=(
        causes_drive.PUMP_DRIVE_SLIP,
        causes_drive.PUMP_DRIVE_BROKEN,
        causes_drive.PUMP_DRIVE_BIND,
    ),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("which end up", "shaft upside down", "shaft collar"),
)
DRIVE_SHAFT_FLOATS = Task(
    id="drive_shaft_floats",
    phase=Phase.DRIVE,
    says="drive shaft turns and has end float, with the pump at full torque",
    how=(
        "bolt the pump down first, then lift the shaft: you must see it move up and down",
        "screwdriver in its slot: it turns the pump, no tight spot anywhere",
        "do this before the sump goes on",
    ),
    source=sources.BLOG_SHAFT_BOUND_2009,
    remedy="slacken the pump: if it is free then, the shaft is too long or the pump out of line",
    why=(
        "in one engine, a shaft bound by a new pump showed only when the distributor would not seat"
    ),
    guards=(causes_drive.PUMP_DRIVE_BIND,),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("shaft end play", "shaft binds", "pump shaft bound"),
)
SKEW_GEAR_END_FLOAT_SET = Task(
    id="skew_gear_end_float_set",
    phase=Phase.DRIVE,
    says="end float of the skew drive gear",
    how=(
        "thick washer of known size over the shaft, pedestal on without packing",
        "feeler under the pedestal; washer minus gap is the float; packing makes up the rest",
        "look at the tooth pattern: wear in the middle of the tooth",
    ),
    source=sources.DISTRIBUTOR_FLOAT_EXTRACT,
    dimension="length",
    bands=(
        Band(
            low=3 * THOU,
            high=7 * THOU,
            source=sources.DISTRIBUTOR_FLOAT_EXTRACT,
            says="one classic four",
        ),
    ),
    spread=FEELER,
    remedy="more or less packing under the pedestal",
    guards=(causes_drive.PUMP_DRIVE_BIND, causes_drive.PUMP_DRIVE_SLIP),
    only_with=(features.PUMP_ON_SKEW_GEAR,),
    also=("distributor drive gear end float", "drive gear end play"),
)
DISTRIBUTOR_TRIED_FIRST = Task(
    id="distributor_tried_first",
    phase=Phase.DRIVE,
    opened=DISTRIBUTOR,
    says="distributor tried in before the engine is closed: seats by hand, nothing bottoms",
    how=(
        "pump bolted, sump still off: drop the distributor in until its flange touches",
        "by hand only; a gap under the flange means the shaft holds it up",
        "a machined head, block or manifold lowers it: try it with the manifold bolted on",
        "turn the engine twice by hand with it clamped; then lift the shaft from below: still free",
    ),
    source=sources.DISTRIBUTOR_PRACTICES_2016,
    remedy="fit a shorter shaft, or shims under the flange; never pull it down with the clamp",
    why="pulled down, it pushes shaft and gears on to the pump cover and wears both",
    guards=(causes_drive.PUMP_DRIVE_BIND, topend_causes_feeds.DIST_HOUSING_LEAK),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT,),
    cautions=(
        Caution.HAND_TURN,
        Caution.LIFTING,
    ),
    also=("distributor will not seat", "distributor fit", "distributor bottoms"),
)
DISTRIBUTOR_END_PLAY_SET = Task(
    id="distributor_end_play_set",
    phase=Phase.DRIVE,
    opened=DISTRIBUTOR,
    says="end play of the distributor shaft",
    how=("dial gauge on the shaft, pull and push; shim under the gear or collar",),
    source=sources.DISTRIBUTOR_GEAR_THREAD,
    hold=Hold.NOTE,
    dimension="length",
    bands=(
        Band(
            low=24 * THOU,
            high=35 * THOU,
            source=sources.DISTRIBUTOR_GEAR_THREAD,
            says="one V8 family; for others see the gear's sheet",
            of_one=True,
        ),
    ),
    spread=DIAL_GAUGE,
    remedy="shims",
    guards=(causes_drive.PUMP_DRIVE_BIND,),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT,),
    also=("distributor end play", "distributor shims"),
)
DRIVE_GEAR_SUITS_CAM = Task(
    id="drive_gear_suits_cam",
    phase=Phase.DRIVE,
    opened=DISTRIBUTOR,
    says="drive gear of the material the camshaft maker asks for",
    how=(
        "read the cam card: iron, steel, bronze or plastic gear",
        "a steel roller cam wears an iron gear to filings",
    ),
    source=sources.DRIVE_SHAFT_EARS_THREAD,
    hold=Hold.NOTE,
    remedy="fit the gear the cam card names",
    guards=(causes_drive.PUMP_DRIVE_SLIP,),
    only_with=(features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR),
    also=("distributor gear", "bronze gear"),
)
