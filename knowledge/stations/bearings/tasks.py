"""What must be right about crank, bearings and caps before the pump goes on."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import FEELER, MICROMETER, wrench
from knowledge.sources import COMMON_PRACTICE, FROM_MEMORY
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes, causes_geometry, quantities
from knowledge.units import INCH, MM, THOU
from knowledge.work import Band, Caution, Hold, Phase, SizeRange, Task

HOW_CLEARANCE = (
    "gauge strip (plastic thread): along the dry journal, cap to its full torque, crank not "
    "turned; good to about 0.0005 in",
    "or micrometer and bore gauge, cap to its full torque, in line with the cylinder; good to "
    "about 0.0001 in",
    "if a strip reading is within 0.0005 in of a limit, measure again with micrometers",
    "write down each bearing and how you measured it",
)
BY_SIZE = Band(
    low=2.0 * THOU,
    high=3.0 * THOU,
    source=sources.BEARING_MAKER_CLEARANCE,
    says="0.001 in for each inch of journal: here for journals of 2 to 3 in; work out your own",
)
USUAL = Band(
    low=2.0 * THOU,
    high=2.5 * THOU,
    source=sources.BEARING_CLEARANCE_INFO,
    says="usual aim for a pushrod V8",
    only_with=(features.VEE_ENGINE, features.PUSHROD_ENGINE),
    not_with=(features.DIESEL,),
)
SMALL, MIDDLING = 2.75 * INCH, 3.5 * INCH  #: main journals up to these sizes (FROM_MEMORY)
RIGID = Band(
    low=1.0 * THOU,
    high=2.0 * THOU,
    source=sources.ENGINE_BUILDER_2021,
    says="stiff block and crank, round bores, thin oil, all measured",
)
STOCK = Band(
    low=2.5 * THOU,
    high=3.5 * THOU,
    source=sources.ENGINE_BUILDER_2021,
    says="stock parts of the older kind, thicker oil",
)
MAIN_CLEARANCE_FITTED = Task(
    id="main_clearance_fitted",
    phase=Phase.BEARINGS,
    says="clearance of each main bearing, measured and not assumed",
    how=HOW_CLEARANCE,
    source=COMMON_PRACTICE,
    measures=quantities.MAIN_CLEARANCE,
    bands=(
        USUAL,
        BY_SIZE,
        RIGID,
        STOCK,
        Band(
            low=0.8 * THOU,
            high=2.5 * THOU,
            source=sources.V8_CRANKSHAFT_2005,
            says="one 6.0 V8 of 2005, in service",
            of_one=True,
        ),
        Band(
            low=None,
            high=0.08 * MM,
            source=sources.MAIN_CLEARANCE_V6_1998,
            says="one 3.2 V6: the limit",
            of_one=True,
        ),
    ),
    limits=(quantities.LEAST_BEARING_CLEARANCE, quantities.MOST_MAIN_CLEARANCE),
    remedy="fit shells of another size, or grind the journal; too tight is as bad as too wide",
    why=(
        "clearance decides how much oil escapes: half as much again leaks more than three times "
        "as much"
    ),
    guards=(causes.BEARING_WRONG_SIZE, causes.BEARING_WEAR_MAINS, causes.BEARING_WIPED),
    cautions=(Caution.HEAVY,),
    also=("plastic thread", "plastic gauge", "main clearance", "oil clearance", "mic the mains"),
)
ROD_CLEARANCE_FITTED = Task(
    id="rod_clearance_fitted",
    phase=Phase.BEARINGS,
    says="clearance of each rod bearing, measured and not assumed",
    how=HOW_CLEARANCE,
    source=COMMON_PRACTICE,
    measures=quantities.ROD_CLEARANCE,
    bands=(
        USUAL,
        BY_SIZE,
        RIGID,
        STOCK,
        Band(
            low=None,
            high=0.10 * MM,
            source=sources.ROD_CLEARANCE_V6_1990,
            says="one 3.0 V6: the limit",
            of_one=True,
        ),
    ),
    limits=(quantities.LEAST_BEARING_CLEARANCE, quantities.MOST_ROD_CLEARANCE),
    remedy="fit shells of another size, or grind the journal; too tight is as bad as too wide",
    guards=(causes.BEARING_WRONG_SIZE, causes.BEARING_WEAR_RODS, causes.BEARING_WIPED),
    also=("rod clearance", "big end clearance", "plastic thread on the rods"),
)
CRANK_END_FLOAT_SET = Task(
    id="crank_end_float_set",
    phase=Phase.BEARINGS,
    says="end float of the crank",
    how=(
        "thrust caps set: tap the crank both ways before the last torque",
        "dial gauge on the nose; pry gently both ways at a main cap; read three times",
        "repeat with the gearbox or converter bolted up",
    ),
    source=sources.BEARING_GUIDE_CEB1,
    measures=quantities.CRANK_END_FLOAT,
    bands=(
        Band(
            low=3 * THOU,
            high=7 * THOU,
            source=sources.BEARING_GUIDE_CEB1,
            says="bearing maker, small journals (to about 2 3/4 in, size from memory)",
            of_size=SizeRange(part=quantities.MAIN_DIAMETER, above=0.0, up_to=SMALL),
        ),
        Band(
            low=5 * THOU,
            high=9 * THOU,
            source=sources.BEARING_GUIDE_CEB1,
            says="bearing maker, medium journals (to about 3 1/2 in, size from memory)",
            of_size=SizeRange(part=quantities.MAIN_DIAMETER, above=SMALL, up_to=MIDDLING),
        ),
        Band(
            low=7 * THOU,
            high=11 * THOU,
            source=sources.BEARING_GUIDE_CEB1,
            says="bearing maker, bigger journals",
            of_size=SizeRange(part=quantities.MAIN_DIAMETER, above=MIDDLING, up_to=1.0),
        ),
        Band(
            low=4 * THOU,
            high=8 * THOU,
            source=sources.BUILD_ARTICLE_2020,
            says="aim of one V8 build",
            of_one=True,
        ),
        Band(
            low=1.5 * THOU,
            high=7.8 * THOU,
            source=sources.V8_CRANKSHAFT_2005,
            says="one 6.0 V8 of 2005",
            of_one=True,
        ),
        Band(
            low=None,
            high=0.42 * MM,
            source=sources.FOUR_THRUST_PLAY_1998,
            says="one 1.8 four of 1998: wear limit; 0.10 to 0.35 mm as fitted",
            of_one=True,
        ),
        Band(
            low=None,
            high=15 * THOU,
            source=sources.DIESEL_THRUST_CLEARANCE,
            says="a diesel: wear limit",
            of_one=True,
        ),
    ),
    limits=(None, quantities.MOST_CRANK_END_FLOAT),
    remedy=(
        "fit thrust washers or a shell of another width; dress the faces; find what pushes the "
        "crank"
    ),
    guards=(causes.THRUST_BEARING_WEAR,),
    cautions=(
        Caution.HAND_TURN,
        Caution.HEAVY,
    ),
    also=("end play", "thrust clearance", "crank endplay"),
)
JOURNALS_ROUND = Task(
    id="journals_round",
    phase=Phase.BEARINGS,
    says="journals round: greatest minus smallest of six readings at one place",
    how=(
        "micrometer, three places along the journal, two ways across at each",
        "taper: compare the two ends; write down all six",
    ),
    source=sources.BEARING_GUIDE_CEB1,
    dimension="length",
    bands=(
        Band(low=None, high=0.5 * THOU, source=sources.BEARING_GUIDE_CEB1, says="bearing maker"),
        Band(
            low=None,
            high=0.3 * THOU,
            source=sources.V8_CRANKSHAFT_2005,
            says="one 6.0 V8 of 2005, in service",
            of_one=True,
        ),
    ),
    spread=MICROMETER,
    remedy="grind and polish to the next size, then measure the clearance again",
    guards=(causes_geometry.JOURNAL_FINISH, causes_geometry.BENT_ROD_OR_CRANK),
    also=("out of round", "journal taper", "mic the crank"),
)
JOURNALS_SMOOTH = Task(
    id="journals_smooth",
    phase=Phase.BEARINGS,
    says="journal surface: roughness Ra",
    how=(
        "by tester, or ask the grinder for the figure: 15 µin Ra (0.38 µm) or finer",
        "without a tester: draw a copper coin along it; it must leave no copper",
        "polished last in the direction the crank turns; oil holes chamfered, no burr",
    ),
    source=sources.BEARING_GUIDE_CEB1,
    dimension="length",
    value="a roughness",
    like=("0.3 µm", "0.000012 in"),
    bands=(
        Band(
            low=None,
            high=0.015 * THOU,
            source=sources.BEARING_GUIDE_CEB1,
            says="bearing maker: 15 µin Ra",
        ),
    ),
    spread=0.001 * THOU,  # JUDGEMENT
    remedy="polish; then wash out every drilling",
    guards=(causes_geometry.JOURNAL_FINISH,),
    also=("crank finish", "polish the crank", "surface finish"),
)
MAIN_BORES_IN_LINE = Task(
    id="main_bores_in_line",
    phase=Phase.BEARINGS,
    says="main bores in line, all of them together",
    how=(
        "caps torqued, no shells: straightedge or ground bar along all bores, feeler under it",
        "in two planes; the crank must also spin freely in its oiled shells",
    ),
    source=sources.BEARING_GUIDE_CEB1,
    dimension="length",
    bands=(
        Band(
            low=None,
            high=2 * THOU,
            source=sources.BEARING_GUIDE_CEB1,
            says="bearing maker: over the whole length",
        ),
    ),
    spread=FEELER,
    remedy="line bore or line hone at a machine shop",
    guards=(causes_geometry.LINE_BORE_MISALIGNED,),
    also=("line bore", "main alignment", "tunnel bore"),
)
NEIGHBOUR_BORES_IN_LINE = Task(
    id="neighbour_bores_in_line",
    phase=Phase.BEARINGS,
    says="main bores in line, each with its neighbour",
    how=("as for all bores, with the bar over two neighbours",),
    source=sources.BEARING_GUIDE_CEB1,
    dimension="length",
    bands=(
        Band(
            low=None,
            high=1 * THOU,
            source=sources.BEARING_GUIDE_CEB1,
            says="bearing maker: between neighbours",
        ),
    ),
    spread=FEELER,
    remedy="line bore or line hone at a machine shop",
    guards=(causes_geometry.LINE_BORE_MISALIGNED,),
    also=("adjacent main alignment",),
)
SHELLS_IN_THEIR_PLACES = Task(
    id="shells_in_their_places",
    phase=Phase.BEARINGS,
    says="right shells, right half up, backs and seats clean and dry",
    how=(
        "read the number on the back of each; journals and shells of one undersize",
        "grooved or drilled half on the feed side; tangs in their notches",
        "no oil, no lint, no paint behind a shell; oil on its face only",
    ),
    source=COMMON_PRACTICE,
    remedy="take it out, clean it, fit it right",
    guards=(causes.BEARING_WRONG_SIZE, causes.BEARING_WIPED, assembly_causes.DIRT_IN_ASSEMBLY),
    also=("bearing shells", "check bearing numbers", "tang in notch"),
)
CAPS_IN_THEIR_PLACES = Task(
    id="caps_in_their_places",
    phase=Phase.BEARINGS,
    says="every cap in its numbered place and the right way round",
    how=(
        "numbers together, arrows to the front, rods and caps with numbers on one side",
        "no burr on cap or register; cap drops into its register without a hammer blow",
    ),
    source=sources.RECONDITIONER_BEARINGS,
    remedy="take it off again; inspect the shell before you use it",
    guards=(assembly_causes.CAP_SWAPPED,),
    also=("cap numbers", "main caps", "rod caps"),
)
_TIGHTENING = (
    "new bolts if the maker or bolt maker says so; threads clean; one lubricant throughout",
    "in the manual's steps and order; by angle or stretch if the manual gives it",
    "no thread locker on cap bolts unless the maker says so: it changes the clamp load",
    "paint a line across each when done",
)
_REMEDY = "slacken and tighten again in steps; renew overtightened bolts"
_WHY = (
    "an oiled-thread figure used on dry threads leaves the cap loose; a dry figure on oiled "
    "threads pulls its bore out of round"
)
_SLIP = "any engine: a check of the unit only; its maker's figure decides"
_GUARDS = (assembly_causes.CAP_SWAPPED, assembly_causes.FASTENER_LOOSE_INSIDE)
CAPS_TORQUED = Task(
    id="caps_torqued",
    phase=Phase.BEARINGS,
    says="main caps tightened in the maker's steps, with the lubricant the figure calls for",
    how=_TIGHTENING,
    source=COMMON_PRACTICE,
    remedy=_REMEDY,
    why=_WHY,
    guards=_GUARDS,
    dimension="torque",
    bands=(Band(low=20.0, high=400.0, source=FROM_MEMORY, says=_SLIP),),
    spread=wrench(100.0),
    also=("torque the mains", "main cap bolts", "cap bolts", "main bolts", "main caps torqued"),
)
ROD_CAPS_TORQUED = Task(
    id="rod_caps_torqued",
    phase=Phase.BEARINGS,
    says="rod caps tightened in the maker's steps, with the lubricant the figure calls for",
    how=_TIGHTENING,
    source=COMMON_PRACTICE,
    remedy=_REMEDY,
    why=_WHY,
    guards=_GUARDS,
    dimension="torque",
    bands=(Band(low=8.0, high=250.0, source=FROM_MEMORY, says=_SLIP),),
    spread=wrench(50.0),
    also=("torque the rods", "rod bolts", "big end bolts", "rod nuts", "rod caps torqued"),
)
CRANK_TURNS_FREELY = Task(
    id="crank_turns_freely",
    phase=Phase.BEARINGS,
    says="crank turns freely after you tighten each cap",
    how=(
        "turn it by hand after every cap, and again after every rod",
        "a tight spot belongs to the cap tightened last: take it off and inspect",
    ),
    source=COMMON_PRACTICE,
    remedy="find the tight cap and measure it; do not let it run itself free",
    guards=(
        causes.BEARING_WRONG_SIZE,
        assembly_causes.CAP_SWAPPED,
        causes_geometry.LINE_BORE_MISALIGNED,
        causes_geometry.BENT_ROD_OR_CRANK,
    ),
    cautions=(Caution.HAND_TURN,),
    also=("spin the crank", "does it turn over by hand"),
)
BEARINGS_OILED = Task(
    id="bearings_oiled",
    phase=Phase.BEARINGS,
    says="bearings wetted with clean oil or a thin film of assembly lube, no lumps of it anywhere",
    how=(
        "film on shell faces, cam bushes and thrust faces; heavy paste on cam lobes only",
        "none in oilways, none in the sump: thick grease blocks screen and filter",
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="wipe off the surplus",
    guards=(assembly_causes.ASSEMBLY_LUBE_CLOG, causes.BEARING_WIPED),
    also=("assembly lube", "build grease", "oil the bearings"),
)
