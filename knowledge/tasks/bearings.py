"""What must be right about crank, bearings and caps before the pump is thought of."""

from knowledge.causes.assembly import (
    ASSEMBLY_LUBE_CLOG,
    CAP_SWAPPED,
    DIRT_IN_ASSEMBLY,
    FASTENER_LOOSE_INSIDE,
)
from knowledge.causes.bearings import (
    BEARING_WEAR_MAINS,
    BEARING_WEAR_RODS,
    BEARING_WIPED,
    BEARING_WRONG_SIZE,
    BENT_ROD_OR_CRANK,
    JOURNAL_FINISH,
    LINE_BORE_MISALIGNED,
    THRUST_BEARING_WEAR,
)
from knowledge.causes.topend import CAM_BEARING_WEAR
from knowledge.reference.limits import (
    CAM_CLEARANCE,
    CRANK_END_FLOAT,
    LEAST_BEARING_CLEARANCE,
    MAIN_CLEARANCE,
    ROD_CLEARANCE,
)
from knowledge.sources import (
    C60,
    CEB1,
    CEB2,
    CLR,
    EB21,
    ISZ,
    KNG,
    MRG,
    MZR,
    PE20,
    RUS,
    TMC,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.tasks.figures import DIAL_GAUGE, FEELER, GAUGE_STRIP, MICROMETER, MM, THOU
from knowledge.vocabulary import Band, Caution, Hold, Phase, Task

HOW_CLEARANCE = (
    "gauge strip: across the dry journal, cap to its full torque, crank not turned; good to "
    "about 0.0005 in",
    "or micrometer and bore gauge, cap to its full torque, in line with the cylinder; good to "
    "about 0.0001 in",
    "a strip reading within 0.0005 in of a limit is settled by micrometers",
    "write down each bearing, and which way it was measured",
)
BY_SIZE = Band(
    2.0 * THOU,
    3.0 * THOU,
    KNG,
    "0.001 in for each inch of journal: here journals of 2 to 3 in; work out your own",
)
USUAL = Band(
    2.0 * THOU, 2.5 * THOU, CLR, "usual aim for a pushrod V8; add about 0.0005 in for hard use"
)
RIGID = Band(
    1.0 * THOU, 2.0 * THOU, EB21, "stiff block and crank, round bores, thin oil, all measured"
)
STOCK = Band(2.5 * THOU, 3.5 * THOU, EB21, "stock parts of the older kind, thicker oil")

MAIN_CLEARANCE_FITTED = Task(
    "main_clearance_fitted",
    Phase.BEARINGS,
    "clearance of each main bearing, measured and not assumed",
    HOW_CLEARANCE,
    CLR,
    dimension="length",
    bands=(
        USUAL,
        BY_SIZE,
        RIGID,
        STOCK,
        Band(0.8 * THOU, 2.5 * THOU, C60, "one 6.0 V8 of 2005, in service"),
        Band(None, 0.08 * MM, ISZ, "one 3.2 V6: the limit"),
    ),
    limits=(LEAST_BEARING_CLEARANCE, MAIN_CLEARANCE),
    spread=GAUGE_STRIP,
    remedy="shells of another size, or the journal ground; too tight is as bad as too wide",
    why="clearance sets how much oil leaves: half as much again leaks more than three times as much",
    guards=(BEARING_WRONG_SIZE, BEARING_WEAR_MAINS, BEARING_WIPED),
    cautions=(Caution.HEAVY,),
    also=("plastic thread", "plastic gauge", "main clearance", "oil clearance", "mic the mains"),
)
ROD_CLEARANCE_FITTED = Task(
    "rod_clearance_fitted",
    Phase.BEARINGS,
    "clearance of each rod bearing, measured and not assumed",
    HOW_CLEARANCE,
    CLR,
    dimension="length",
    bands=(
        USUAL,
        BY_SIZE,
        RIGID,
        STOCK,
        Band(None, 0.10 * MM, MZR, "one 3.0 V6: the limit"),
    ),
    limits=(LEAST_BEARING_CLEARANCE, ROD_CLEARANCE),
    spread=GAUGE_STRIP,
    remedy="shells of another size, or the journal ground; too tight is as bad as too wide",
    guards=(BEARING_WRONG_SIZE, BEARING_WEAR_RODS, BEARING_WIPED),
    also=("rod clearance", "big end clearance", "plastic thread on the rods"),
)
CRANK_END_FLOAT_SET = Task(
    "crank_end_float_set",
    Phase.BEARINGS,
    "end float of the crank",
    (
        "thrust caps set: tap the crank both ways before the last torque",
        "dial gauge on the nose; pry gently both ways at a main cap; read three times",
        "again with the gearbox or converter bolted up",
    ),
    CEB1,
    dimension="length",
    bands=(
        Band(
            3 * THOU,
            7 * THOU,
            CEB1,
            "bearing maker, small journals (to about 2 3/4 in, size from memory)",
        ),
        Band(
            5 * THOU,
            9 * THOU,
            CEB1,
            "bearing maker, middling journals (to about 3 1/2 in, size from memory)",
        ),
        Band(7 * THOU, 11 * THOU, CEB1, "bearing maker, bigger journals"),
        Band(4 * THOU, 8 * THOU, PE20, "aim of one V8 build"),
        Band(1.5 * THOU, 7.8 * THOU, C60, "one 6.0 V8 of 2005"),
    ),
    limits=(None, CRANK_END_FLOAT),
    spread=DIAL_GAUGE,
    remedy="thrust washers or shell of another width; faces dressed; find what pushes the crank",
    guards=(THRUST_BEARING_WEAR,),
    cautions=(
        Caution.HAND_TURN,
        Caution.HEAVY,
    ),
    also=("end play", "thrust clearance", "crank endplay"),
)
JOURNALS_ROUND = Task(
    "journals_round",
    Phase.BEARINGS,
    "journals round: most minus least of six readings at one place",
    (
        "micrometer, three places along the journal, two ways across at each",
        "taper: compare the two ends; write down all six",
    ),
    CEB1,
    dimension="length",
    bands=(
        Band(None, 0.5 * THOU, CEB1, "bearing maker"),
        Band(None, 0.3 * THOU, C60, "one 6.0 V8 of 2005, in service"),
    ),
    spread=MICROMETER,
    remedy="grind and polish to the next size, then measure the clearance again",
    guards=(JOURNAL_FINISH, BENT_ROD_OR_CRANK),
    also=("out of round", "journal taper", "mic the crank"),
)
JOURNALS_SMOOTH = Task(
    "journals_smooth",
    Phase.BEARINGS,
    "journal surface: roughness Ra",
    (
        "by tester, or ask the grinder for the figure: 15 µin Ra (0.38 µm) or finer",
        "without a tester: draw a copper coin along it; it must leave no copper",
        "polished last in the way the crank turns; oil holes chamfered, no burr",
    ),
    CEB1,
    dimension="length",
    bands=(Band(None, 0.015 * THOU, CEB1, "bearing maker: 15 µin Ra"),),
    spread=0.001 * THOU,  # JUDGEMENT
    remedy="polish; wash every drilling out afterwards",
    guards=(JOURNAL_FINISH,),
    also=("crank finish", "polish the crank", "surface finish"),
)
MAIN_BORES_IN_LINE = Task(
    "main_bores_in_line",
    Phase.BEARINGS,
    "main bores in line, all of them together",
    (
        "caps torqued, no shells: straightedge or ground bar along all bores, feeler under it",
        "in two planes; the crank must also spin freely in its oiled shells",
    ),
    CEB1,
    dimension="length",
    bands=(Band(None, 2 * THOU, CEB1, "bearing maker: over the whole length"),),
    spread=FEELER,
    remedy="line bore or line hone at a machine shop",
    guards=(LINE_BORE_MISALIGNED,),
    also=("line bore", "main alignment", "tunnel bore"),
)
NEIGHBOUR_BORES_IN_LINE = Task(
    "neighbour_bores_in_line",
    Phase.BEARINGS,
    "main bores in line, one to the next",
    ("as for all bores, with the bar over two neighbours",),
    CEB1,
    dimension="length",
    bands=(Band(None, 1 * THOU, CEB1, "bearing maker: between neighbours"),),
    spread=FEELER,
    remedy="line bore or line hone at a machine shop",
    guards=(LINE_BORE_MISALIGNED,),
    also=("adjacent main alignment",),
)
SHELLS_IN_THEIR_PLACES = Task(
    "shells_in_their_places",
    Phase.BEARINGS,
    "shells the right ones, right half up, backs and seats clean and dry",
    (
        "read the number on the back of each; journals and shells of one undersize",
        "grooved or drilled half where the feed is; tangs in their notches",
        "no oil, no lint, no paint behind a shell; oil on its face only",
    ),
    CEB2,
    remedy="take it out, clean it, fit it right",
    guards=(BEARING_WRONG_SIZE, BEARING_WIPED, DIRT_IN_ASSEMBLY),
    also=("bearing shells", "check bearing numbers", "tang in notch"),
)
CAPS_IN_THEIR_PLACES = Task(
    "caps_in_their_places",
    Phase.BEARINGS,
    "every cap by its number and the right way round",
    (
        "numbers met, arrows to the front, rods and caps with numbers on one side",
        "no burr on cap or register; cap drops into its register without a hammer blow",
    ),
    RUS,
    remedy="take it off again; look at the shell before it is used",
    guards=(CAP_SWAPPED,),
    also=("cap numbers", "main caps", "rod caps"),
)
CAPS_TORQUED = Task(
    "caps_torqued",
    Phase.BEARINGS,
    "main and rod caps tightened in the maker's steps, with the lubricant the figure is for",
    (
        "bolts new where the maker or bolt maker says so; threads clean; one lubricant throughout",
        "in steps and order of the manual; angle or stretch where it is given",
        "no thread locker on cap bolts unless the maker says so: it changes the grip",
        "paint a line across each when it is done",
    ),
    CEB2,
    remedy="slacken and tighten again in steps; renew bolts that were overdone",
    why="a figure for oiled threads used dry, or the other way about, leaves the cap slack or its bore out of round",
    guards=(CAP_SWAPPED, FASTENER_LOOSE_INSIDE),
    also=("torque the mains", "torque the rods", "rod bolts", "cap bolts"),
)
CRANK_TURNS_FREELY = Task(
    "crank_turns_freely",
    Phase.BEARINGS,
    "crank turns freely after each cap is tightened",
    (
        "turn it by hand after every cap, and again after every rod",
        "a tight spot belongs to the cap tightened last: take it off and look",
    ),
    CP,
    remedy="find the tight cap; measure it; do not run it free",
    guards=(BEARING_WRONG_SIZE, CAP_SWAPPED, LINE_BORE_MISALIGNED, BENT_ROD_OR_CRANK),
    cautions=(Caution.HAND_TURN,),
    also=("spin the crank", "does it turn over by hand"),
)
BEARINGS_OILED = Task(
    "bearings_oiled",
    Phase.BEARINGS,
    "bearings wetted with clean oil or a thin film of build lubricant, no lump of it anywhere",
    (
        "film on shell faces, cam bushes and thrust faces; heavy paste on cam lobes alone",
        "none in oilways, none in the sump: thick grease finds screen and filter",
    ),
    CP,
    Hold.NOTE,
    remedy="wipe the surplus off",
    guards=(ASSEMBLY_LUBE_CLOG, BEARING_WIPED),
    also=("assembly lube", "build grease", "oil the bearings"),
)
CAM_CLEARANCE_FITTED = Task(
    "cam_clearance_fitted",
    Phase.BEARINGS,
    "clearance of the cam bearings",
    (
        "bore gauge in each fitted bush, micrometer on each cam journal; middle ones too",
        "the cam must turn by two fingers and not rock",
    ),
    TMC,
    Hold.NOTE,
    "length",
    (
        Band(None, 8.0 * THOU, TMC, "one diesel: the most it may wear to"),
        Band(4.5 * THOU, 6.0 * THOU, TMC, "the same diesel, new"),
        Band(
            1.0 * THOU,
            3.0 * THOU,
            MRG,
            "small pushrod four: about 0.002 in is normal; half of it either side is judgement",
        ),
    ),
    (None, CAM_CLEARANCE),
    MICROMETER,
    remedy="new bushes, oil holes lined up, reamed where they are not made to size",
    why="a middle bush at ten times its clearance took one engine's hot pressure",
    guards=(CAM_BEARING_WEAR,),
    also=("cam bearings", "cam bushes", "cam journal clearance"),
)
