"""What must be right where the pump meets the block: joint, bolts, chain, gear or crank nose."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import FEELER, IN_LB, LB_FT, around, wrench
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.pump import causes, causes_drive
from knowledge.units import THOU
from knowledge.work import Band, Caution, Hold, Phase, Task

PUMP_FACES_FLAT = Task(
    id="pump_faces_flat",
    phase=Phase.DRIVE,
    says="faces of pump and block flat: widest gap under a straightedge",
    how=(
        "remove old gasket and sealer without dry scraping; faces clean and dry",
        "straightedge over each face, four directions, feeler under it",
        "pump on without gasket or bolts: it does not rock",
    ),
    source=idea_from(sources.TRAINING_PUMP_TEST),
    dimension="length",
    bands=(
        Band(low=None, high=2 * THOU, source=COMMON_PRACTICE, says="no passage read for a figure"),
    ),
    spread=FEELER,
    remedy="stone the burr; face it at a machine shop",
    guards=(causes.PUMP_MOUNT_LEAK,),
    cautions=(Caution.ASBESTOS, Caution.EYES),
    also=("pump mounting face", "pump flange flat", "main cap face"),
)
PUMP_DOWELS_STRAIGHT = Task(
    id="pump_dowels_straight",
    phase=Phase.DRIVE,
    says="dowels straight and in place; pump pushed home by hand",
    how=(
        "look for a bent, missing or proud dowel; main caps from other makers may have none",
        "push the pump home by hand; never draw it down by its bolts",
    ),
    source=sources.TRAINING_PUMP_TEST,
    remedy="fit a new dowel; clear the hole",
    guards=(causes.PUMP_MOUNT_LEAK, causes_drive.PUMP_DRIVE_BIND),
    also=("dowel pins", "pump alignment"),
)
MOUNT_GASKET_RIGHT_WAY_ROUND = Task(
    id="mount_gasket_right_way_round",
    phase=Phase.DRIVE,
    says="pump mount gasket as specified, or none: right way round, every port open through it",
    how=(
        "read the pump's sheet: gasket or none, which thickness",
        "lay the gasket on the pump face, then on the block face: every port open both times",
        "mark the side that faces the block; one gasket only, no surplus sealer",
        "look through the port once more before you fit the pump",
    ),
    source=sources.OVERHAUL_MANUAL_5_101,
    remedy="fit the right gasket, turn it round or leave it out, as the sheet says",
    why=(
        "views differ: some builders and one vehicle maker use none, and a paper one has blown "
        "out; a pump maker's engineer says fit it, and leaving it out has lost oil. Follow the "
        "pump's own sheet"
    ),
    guards=(causes.PUMP_GASKET_WRONG, causes.PUMP_MOUNT_LEAK),
    cautions=(Caution.ASBESTOS,),
    also=("pump gasket", "gasket upside down", "gasket covers the port", "no gasket"),
)
PUMP_CHAIN_IN_LINE = Task(
    id="pump_chain_in_line",
    phase=Phase.DRIVE,
    says="pump chain and sprocket: in line, right way round, bolt tight, tensioner free",
    how=(
        "straightedge over both sprockets; chain running the same way as before",
        "sprocket bolt or nut new where the maker says so, torqued and locked",
        "tensioner moves and comes back; guide not worn through",
    ),
    source=COMMON_PRACTICE,
    remedy="fit a new chain, guide or bolt",
    guards=(
        causes_drive.PUMP_DRIVE_BROKEN,
        causes_drive.PUMP_DRIVE_SLIP,
        assembly_causes.TIMING_GEAR_SHEDDING,
    ),
    only_with=(features.PUMP_ON_CHAIN,),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("oil pump chain", "pump sprocket"),
)
CRANK_NOSE_DRIVE_ENGAGED = Task(
    id="crank_nose_drive_engaged",
    phase=Phase.DRIVE,
    says="pump on the crank nose: flats or key engaged, body centred, nothing rubbing",
    how=(
        "line the rotor's flats up with the crank nose; push it home by hand over a film of oil",
        "centre the body as the manual says before the bolts are tight",
        "turn the crank twice by hand: smooth, and the rotor turns with it",
    ),
    source=COMMON_PRACTICE,
    remedy="take it off again; look for a pinched rotor and a damaged seal lip",
    guards=(causes_drive.PUMP_DRIVE_BROKEN, causes_drive.PUMP_DRIVE_BIND),
    only_with=(features.PUMP_ON_CRANK_NOSE,),
    cautions=(Caution.HAND_TURN,),
    also=("front cover pump", "gerotor drive flats"),
)
OUTSIDE_DRIVE_SOUND = Task(
    id="outside_drive_sound",
    phase=Phase.DRIVE,
    says=(
        "drive of an outside, gear-train or cam-end pump: gear, key, tongue or belt sound and in "
        "line"
    ),
    how=(
        "gear teeth, key and nut; a little backlash felt at every tooth",
        "belt: toothed side, in line, tight, guard on; coupling and tang fully engaged",
        "turn the engine twice by hand and watch the pump turn",
    ),
    source=COMMON_PRACTICE,
    remedy="fit a new part; line it up",
    guards=(causes_drive.PUMP_DRIVE_BROKEN, causes_drive.PUMP_DRIVE_SLIP),
    only_with=(features.PUMP_OUTSIDE, features.PUMP_ON_CAM_NOSE),
    cautions=(Caution.HAND_TURN,),
    also=("pump belt", "pump gear", "pump coupling"),
)
PUMP_BOLTS_TORQUED = Task(
    id="pump_bolts_torqued",
    phase=Phase.DRIVE,
    says="torque of the bolts that hold the pump to the block",
    how=(
        "right length and thread: a bolt that bottoms does not clamp",
        "the maker's manual comes first; then thread size, as in the figures here",
        "oiled, dry or with locker: as stated with the figure",
        "a stud nut reached with an offset wrench: correct the setting for its length",
    ),
    source=COMMON_PRACTICE,
    dimension="torque",
    bands=(
        around(
            30 * LB_FT,
            COMMON_PRACTICE,
            "common practice, 30 lb-ft; big main-cap bolts take twice that",
        ),
        Band(
            low=26 * LB_FT,
            high=35 * LB_FT,
            source=sources.FOUR_PUMP_SERVICE_1988,
            says="one pushrod four, bolt to the main cap",
            of_one=True,
        ),
        around(
            65 * LB_FT,
            sources.VAN_PUMP_SERVICE_1997,
            "pushrod V6 and V8 of 1997, bolt to the main cap: 65 lb-ft",
            of_one=True,
        ),
        around(
            55 * LB_FT,
            sources.BUILD_ARTICLE_2017,
            "one V8 build, stud nut, lubricated: 55 lb-ft",
            of_one=True,
        ),
        around(
            25.0, sources.V8_PUMP_SERVICE_2006, "6.0 V8, front pump: 25 N·m (18 lb-ft)", of_one=True
        ),
        around(250 * IN_LB, sources.V6_TORQUES_2009, "3.7 V6, front pump: 250 in-lb", of_one=True),
        Band(
            low=20.0,
            high=28.0,
            source=sources.HEAVY_DIESEL_TORQUES,
            says="heavy in-line diesel: 24 ± 4 N·m",
            of_one=True,
        ),
    ),
    spread=wrench(30 * LB_FT),
    remedy="slacken, check length and thread, tighten again",
    guards=(assembly_causes.FASTENER_LOOSE_INSIDE, causes.PUMP_MOUNT_LEAK),
    also=("pump bolt torque", "oil pump to block", "oil pump mounting bolts"),
)
PUMP_BOLTS_LOCKED = Task(
    id="pump_bolts_locked",
    phase=Phase.DRIVE,
    says="pump bolts locked",
    how=(
        "as the maker locks them: washer, tab, wire, stud nut",
        "otherwise one drop of medium-strength (removable) thread locker on clean, dry threads",
        (
            "no locker if the manual prints an oiled torque for a main-cap bolt: it changes the "
            "clamp load"
        ),
        "none in an oil passage, none at the bottom of a blind hole",
    ),
    source=COMMON_PRACTICE,
    remedy="out, clean, lock, torque again",
    guards=(assembly_causes.FASTENER_LOOSE_INSIDE, causes.PUMP_MOUNT_LEAK),
    also=("thread locker", "thread lock", "blue thread locker", "safety wire"),
)
PUMP_TURNS_BOLTED = Task(
    id="pump_turns_bolted",
    phase=Phase.DRIVE,
    says="pump still turns freely with its bolts at full torque",
    how=(
        "turn its shaft or the engine one full pump turn by hand: no tight spot",
        "if it is tight now and was free before, the bolts distort the body",
    ),
    source=sources.BLOG_SHAFT_BOUND_2009,
    remedy="slacken and look: dowel, burr, gasket, bolt order",
    guards=(causes_drive.PUMP_DRIVE_BIND,),
    cautions=(Caution.HAND_TURN,),
    also=("pump binds when bolted",),
)
PAINT_LINES_DRAWN = Task(
    id="paint_lines_drawn",
    phase=Phase.DRIVE,
    says="paint line across every torqued bolt",
    how=(
        "one line over head and part, only after the wrench has clicked",
        "photograph them",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="torque every bolt without a line now",
    guards=(assembly_causes.FASTENER_LOOSE_INSIDE,),
    also=("witness marks", "torque stripe", "paint marks"),
)
