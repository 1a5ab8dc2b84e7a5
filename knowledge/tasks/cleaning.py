"""What is cleaned, proved or renewed on the oil's way once debris was found."""

from knowledge.causes.assembly import (
    ASSEMBLY_LUBE_CLOG,
    DIRT_IN_ASSEMBLY,
    PART_SHEDDING_INSIDE,
    SEALANT_DEBRIS,
    TIMING_GEAR_SHEDDING,
)
from knowledge.causes.bearings import BEARING_WIPED
from knowledge.causes.delivery import (
    FILTER_BLOCKED,
    FILTER_BYPASS_STUCK,
    OIL_COOLER_BLOCKED,
)
from knowledge.causes.pump import PUMP_DEBRIS_LOCK, PUMP_GEAR_WEAR, SCAVENGE_FAILURE
from knowledge.causes.relief import RELIEF_DEBRIS, RELIEF_RETURN_PLUGGED, RELIEF_STUCK_OPEN
from knowledge.causes.suction import (
    DRAINBACK_POOR,
    FOREIGN_BODY_IN_SUMP,
    PICKUP_SCREEN_BLOCKED,
    SUCTION_HOSE_COLLAPSED,
)
from knowledge.engines.features import (
    COOLER_ON_SUCTION,
    DRY_SUMP,
    OIL_COOLER,
    REMOTE_FILTER,
)
from knowledge.findings.assembly import LEFTOVER_FOUND, PIECE_FOUND_INSIDE
from knowledge.findings.bearings_bench import PISTON_OR_PIN_BROKEN
from knowledge.findings.delivery import COOLER_FOUND_BLOCKED
from knowledge.findings.delivery_galleries import GALLERY_PLUG_LIES_IN_SUMP
from knowledge.findings.relief import RELIEF_RETURN_BLOCKED
from knowledge.findings.suction import PICKUP_FELL_OFF, RETURNS_BLOCKED
from knowledge.findings.suction_debris import CLOTH_ON_SCREEN, PLASTIC_ON_SCREEN
from knowledge.sources import (
    CCI,
    GBC,
    GMC,
    GRT,
    GTL,
    HB01,
    JIO,
    OCE,
    OST,
    RMB,
    TM254,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.tasks.found import (
    BLOWING,
    COOLANT,
    DEBRIS,
    HARD,
    PIECES,
    SEALER,
    SLUDGE,
    WASHING,
)
from knowledge.tasks.found import GRIT as GRIT_FOUND
from knowledge.vocabulary import Caution, Hold, Phase, Task

# ----------------------------------------------------------------------- first of all

DEBRIS_SOURCE_CURED = Task(
    "debris_source_cured",
    Phase.CLEANING,
    "where the debris came from: found and cured",
    (
        "sort it by magnet, colour and hardness; hold it against every part that could shed it",
        "name the part it came from; for what came from outside, the way it got in",
        "renew or cure that first, then clean; write down what was found to be the source",
    ),
    CCI,
    remedy="look on: an engine cleaned with its source still inside sheds again",
    why="new shells in an engine that still sheds metal last as long as the old ones did",
    guards=(PART_SHEDDING_INSIDE, TIMING_GEAR_SHEDDING, BEARING_WIPED),
    after=DEBRIS,
    cautions=(Caution.USED_OIL,),
    also=("where did the metal come from", "source of debris"),
)
DEBRIS_KEPT = Task(
    "debris_kept",
    Phase.CLEANING,
    "debris bagged and labelled by place, kept until sign-off",
    (
        "one bag for each place: sump, screen, relief valve, pump, filter pleats, each trap",
        "photographs with a scale; filter and first and last half litre of the drain as well",
    ),
    CP,
    Hold.NOTE,
    remedy="write down what is lost, and from which place",
    why="a laboratory or a guarantee can only go by what was kept",
    after=DEBRIS,
    cautions=(Caution.USED_OIL, Caution.SHARP),
    also=("keep the metal", "bag the chips"),
)
PIECES_LAID_OUT_WHOLE = Task(
    "pieces_laid_out_whole",
    Phase.CLEANING,
    "every piece of what broke or was left inside: found, laid together, whole",
    (
        "lay the pieces out beside a new part or the packet: teeth, cloth, plug, bolt, ring",
        "what is missing is looked for in pickup tube, pump, relief valve, galleries and sump",
        "count until nothing is missing, or until every place was opened",
    ),
    CP,
    remedy="open the places not yet seen; a piece at large ends in pump or relief valve",
    guards=(PUMP_DEBRIS_LOCK, RELIEF_DEBRIS, FOREIGN_BODY_IN_SUMP),
    after=(
        PLASTIC_ON_SCREEN,
        CLOTH_ON_SCREEN,
        LEFTOVER_FOUND,
        PIECE_FOUND_INSIDE,
        PISTON_OR_PIN_BROKEN,
        PICKUP_FELL_OFF,
        GALLERY_PLUG_LIES_IN_SUMP,
    ),
    also=("missing pieces", "count the teeth"),
)
TIMING_TEETH_RENEWED = Task(
    "timing_teeth_renewed",
    Phase.CLEANING,
    "timing gear, chain and guides that shed plastic: renewed, none of the old crumbs left",
    (
        "front cover off: count teeth and guide ends against the pieces found",
        "metal-toothed gear where the maker lists one; guides and chain with it",
        "sump off as well: crumbs of an earlier repair lie there for years",
    ),
    JIO,
    remedy="take the sump off, clear sump, screen and pump of every crumb",
    why="engines had a new chain years ago and starved on the old teeth left in the sump",
    guards=(TIMING_GEAR_SHEDDING, PICKUP_SCREEN_BLOCKED),
    after=(PLASTIC_ON_SCREEN,),
    also=("nylon cam gear", "timing chain guides"),
)
OLD_SEALER_STRIPPED = Task(
    "old_sealer_stripped",
    Phase.CLEANING,
    "all joints freed of the old sealer and gasket, inside edges too",
    (
        "plastic scraper and gasket remover; no abrasive pads, no wire wheel",
        "feel along every inside edge for beads that still hang",
        "strings picked out of bolt holes, oilways and pickup tube",
    ),
    GRT,
    remedy="scrape again; open any oilway a bead could have gone into",
    why="the grit of an abrasive pad is finer than the filter and wears bearings out",
    guards=(SEALANT_DEBRIS, DIRT_IN_ASSEMBLY),
    after=SEALER,
    cautions=(*WASHING, Caution.ASBESTOS),
    also=("scrape off the silicone", "remove rtv"),
)
BLASTED_PARTS_WASHED = Task(
    "blasted_parts_washed",
    Phase.CLEANING,
    "every part that was blasted, ground or bored washed until no grit is felt",
    (
        "ask which parts were blasted with beads, sand or shot; look into baffled covers and sump",
        "plugs out; hot soapy water and brush, rinse, blow dry, again and again",
        "wipe with a white oiled cloth and roll it between the fingers: nothing gritty",
    ),
    RMB,
    remedy="wash again; a baffled cover or sump that still sheds beads is renewed or cut open",
    why="blasting drives the beads into every passage, and an engine that runs on them is lost",
    guards=(DIRT_IN_ASSEMBLY,),
    after=GRIT_FOUND,
    cautions=(Caution.EYES, Caution.PRESSURE, Caution.WASTE),
    also=("glass beads", "blasting sand", "machining chips", "hot tank"),
)

# ----------------------------------------------------------------------- sump and suction

SUMP_WASHED = Task(
    "sump_washed",
    Phase.CLEANING,
    "sump, baffles, trap doors and tray washed inside and out",
    (
        "baffles out where they unbolt; where they are welded, rinse from every side and tip it",
        "wash, rinse and blow dry until a white cloth comes out clean from under each plate",
        "drain plug and its magnet wiped",
    ),
    GBC,
    remedy="wash again; a double-skinned or baffled sump that keeps shedding is renewed",
    guards=(PICKUP_SCREEN_BLOCKED, FOREIGN_BODY_IN_SUMP, DIRT_IN_ASSEMBLY),
    after=(*DEBRIS, *COOLANT),
    cautions=(*BLOWING, Caution.SHARP),
    also=("clean the oil pan", "wash the pan"),
)
PICKUP_CLEARED = Task(
    "pickup_cleared",
    Phase.CLEANING,
    "pickup, tube and screen clean inside and out, or renewed",
    (
        "renew one that was pressed in and drawn, one with varnish, or one debris was driven into",
        "one that stays: soak, rinse against the flow, blow through from the pump's end",
        "lamp through mesh and tube: no shadow, no string, bypass flap shut",
    ),
    GMC,
    remedy="fit a new pickup; mesh that will not come clean is never made bigger",
    guards=(PICKUP_SCREEN_BLOCKED, ASSEMBLY_LUBE_CLOG),
    after=DEBRIS,
    cautions=BLOWING,
    also=("clean the strainer", "new pickup screen"),
)
RETURNS_CLEARED = Task(
    "returns_cleared",
    Phase.CLEANING,
    "oil returns of heads, valley and covers open, covers and breather trap washed",
    (
        "soft wire and lamp down each return; catch what comes, let none fall on the crank",
        "valve covers washed behind their baffles; breather, hose and trap rinsed and dried",
        "pour clean oil: it must run away at once",
    ),
    OST,
    remedy="open the return from below as well",
    guards=(DRAINBACK_POOR,),
    after=(RETURNS_BLOCKED, *SLUDGE, *SEALER, *GRIT_FOUND),
    cautions=BLOWING,
    also=("drain back holes", "clean valve covers", "clean the pcv"),
)

# ----------------------------------------------------------------------- pump and relief

PUMP_STRIPPED = Task(
    "pump_stripped",
    Phase.CLEANING,
    "oil pump stripped, washed and looked over for scores",
    (
        "mark the mesh, take gears or rotors and the relief valve out",
        "wash body, cover, shaft bush and the passage to the block; blow dry",
        "scored gears, bore or cover: measure them, or fit a new pump",
    ),
    CP,
    remedy="renew the pump where hard pieces went through it and the limits do not hold",
    guards=(PUMP_DEBRIS_LOCK, PUMP_GEAR_WEAR),
    after=(*HARD, *PIECES, *SLUDGE),
    cautions=(*BLOWING, Caution.SPRING),
    also=("take the pump apart", "clean the oil pump"),
)
RELIEF_FREED_OF_DEBRIS = Task(
    "relief_freed_of_debris",
    Phase.CLEANING,
    "relief valve out, bore, seat and return passage washed clear",
    (
        "plunger, spring and cap washed; wiped with a cloth that sheds no fluff",
        "bore and return rinsed and blown through both ways, lamp into the corner below the seat",
        "a second relief or pressure-regulating valve on the engine is done as well",
    ),
    CP,
    remedy="wash again; a plunger that picks up is renewed with its bore looked at",
    why="one chip under the valve undoes the whole rebuild",
    guards=(RELIEF_DEBRIS, RELIEF_STUCK_OPEN, RELIEF_RETURN_PLUGGED),
    after=(*DEBRIS, RELIEF_RETURN_BLOCKED),
    cautions=(*BLOWING, Caution.SPRING),
    also=("clean the relief valve", "pressure regulator"),
)

# ----------------------------------------------------------------- filter, cooler, lines

FILTER_AND_BYPASS_RENEWED = Task(
    "filter_and_bypass_renewed",
    Phase.CLEANING,
    "new filter; housing washed and its bypass valve proved or renewed",
    (
        "old filter cut and kept; a new listed one with its own seal",
        "housing, stem and both sides of the head washed; a remote head taken apart",
        "bypass valve: washed, pressed open with a blunt pick, comes back onto a clean seat",
    ),
    HB01,
    remedy="renew the bypass valve, or the head where it cannot be taken out",
    why="a bypass held open by a chip sends every later chip past the filter",
    guards=(FILTER_BLOCKED, FILTER_BYPASS_STUCK),
    after=(*DEBRIS, *COOLANT),
    cautions=(*WASHING, Caution.SHARP),
    also=("new oil filter", "clean the filter housing", "bypass valve"),
)
COOLER_FLUSHED_AND_PROVED = Task(
    "cooler_flushed_and_proved",
    Phase.CLEANING,
    "oil cooler flushed against the flow, its flow and tightness proved",
    (
        "solvent against the normal flow, turning it about, until a white cloth stays clean",
        "measured quantity through it in the time a new one takes, and both ways alike",
        "air at the maker's test pressure under water: no bubble",
        "dry it, then rinse with clean oil; none of this where the cooler is renewed",
    ),
    TM254,
    remedy="renew it: a cooler that cannot be proved clean is not put back",
    guards=(OIL_COOLER_BLOCKED,),
    only_with=(OIL_COOLER, COOLER_ON_SUCTION),
    after=(COOLER_FOUND_BLOCKED, *PIECES, *SLUDGE, *COOLANT),
    cautions=(*BLOWING, Caution.FIRE),
    also=("back flush the oil cooler", "flow test the cooler"),
)
COOLER_RENEWED = Task(
    "cooler_renewed",
    Phase.CLEANING,
    "oil cooler renewed after metal or grit",
    (
        "take the cooler out of the circuit before anything is flushed",
        "fit a new element; one that cannot be proved clean is not put back",
        "its thermostat and bypass valve taken out, washed and proved, or renewed too",
    ),
    OCE,
    remedy="fit a new cooler, or leave it out with the maker's blank until one is there",
    why="chips lie in its fins through any flushing and come out into the new bearings",
    guards=(BEARING_WIPED, OIL_COOLER_BLOCKED),
    only_with=(OIL_COOLER, COOLER_ON_SUCTION),
    after=HARD,
    cautions=(
        Caution.HOT,
        Caution.WASTE,
        Caution.SOLVENT,
        Caution.EYES,
    ),
    also=("replace the oil cooler", "clean the oil cooler"),
    covers=(COOLER_FLUSHED_AND_PROVED,),
)
OIL_LINES_RINSED = Task(
    "oil_lines_rinsed",
    Phase.CLEANING,
    "oil lines and hoses rinsed and looked through",
    (
        "off at both ends; solvent through, then blow dry",
        "light through each; bend hoses and feel for loose liner",
    ),
    CP,
    remedy="renew a hose that stays dirty, soft or narrow",
    guards=(OIL_COOLER_BLOCKED,),
    only_with=(OIL_COOLER, COOLER_ON_SUCTION, REMOTE_FILTER, DRY_SUMP),
    after=(*PIECES, *SLUDGE, *COOLANT),
    cautions=BLOWING,
    also=("flush the oil lines",),
)
OIL_HOSES_RENEWED = Task(
    "oil_hoses_renewed",
    Phase.CLEANING,
    "oil hoses renewed, rigid lines washed and looked through",
    (
        "hoses to cooler, remote filter and tank renewed after metal or grit",
        "rigid lines: brush or pull-through, solvent, blow dry, light from end to end",
        "fittings, check valves and adapters taken apart",
    ),
    GTL,
    remedy="renew any line light does not pass through",
    why="a hose liner holds chips in its weave where no flushing reaches",
    guards=(OIL_COOLER_BLOCKED, SUCTION_HOSE_COLLAPSED),
    only_with=(OIL_COOLER, COOLER_ON_SUCTION, REMOTE_FILTER, DRY_SUMP),
    after=HARD,
    cautions=BLOWING,
    also=("replace the oil lines", "cooler hoses"),
    covers=(OIL_LINES_RINSED,),
)
OIL_TANK_CLEANED = Task(
    "oil_tank_cleaned",
    Phase.CLEANING,
    "oil tank opened and washed to the last plate, or renewed",
    (
        "lid, strainer, swirl plates and breather out; wash from every side",
        "white cloth over the outlet, rinse: nothing on the cloth, three times running",
        "after a bearing failure a tank that cannot be opened is renewed",
    ),
    GTL,
    remedy="renew the tank, or have it cut open and welded up again",
    guards=(BEARING_WIPED, PUMP_DEBRIS_LOCK),
    only_with=(DRY_SUMP,),
    after=(*DEBRIS, *COOLANT),
    cautions=(*BLOWING, Caution.FIRE),
    also=("dry sump tank", "oil in frame"),
)
SCAVENGE_SIDE_CLEANED = Task(
    "scavenge_side_cleaned",
    Phase.CLEANING,
    "scavenge screens and stages opened and cleaned",
    (
        "screen of every pickup out: what lies on it tells which end of the engine shed it",
        "each stage of the pump opened; scores measured",
        "scavenge lines as the pressure lines",
    ),
    CP,
    remedy="renew a scored stage; debris went through it before any filter",
    guards=(SCAVENGE_FAILURE, PUMP_DEBRIS_LOCK),
    only_with=(DRY_SUMP,),
    after=(*HARD, *PIECES),
    cautions=WASHING,
    also=("scavenge pump", "dry sump screens"),
)
