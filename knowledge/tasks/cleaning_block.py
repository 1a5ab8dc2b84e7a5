"""What is cleaned in block, crank, top end and all the oil feeds once debris was found."""

from knowledge.causes.assembly import (
    DIRT_IN_ASSEMBLY,
    PART_SHEDDING_INSIDE,
    SEALANT_DEBRIS,
)
from knowledge.causes.bearings import BEARING_WIPED
from knowledge.causes.delivery import (
    GALLERY_BLOCKED,
)
from knowledge.causes.instrument import GAUGE_LINE_BLOCKED
from knowledge.causes.relief import RELIEF_DEBRIS
from knowledge.causes.topend import (
    LIFTER_BORE_LEAK,
    PISTON_JET_OPEN,
    ROCKER_SHAFT_LEAK,
    TENSIONER_SEAL_LEAK,
    TURBO_FEED_RESTRICTED,
)
from knowledge.engines.features import (
    CHAIN_TENSIONERS,
    HYDRAULIC_LIFTERS,
    PISTON_JETS,
    TURBOCHARGED,
)
from knowledge.findings.delivery_galleries import GALLERY_FOUND_BLOCKED
from knowledge.findings.instrument_bench import GAUGE_LINE_SLUDGED, SENDER_PORT_CLOGGED
from knowledge.findings.topend_feeds import TURBO_FEED_FOUND_BLOCKED
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import (
    CUT,
    HB01,
    LFT,
    OPC,
    RV8,
    TOC,
)
from knowledge.tasks.found import (
    BLOWING,
    COOLANT,
    DEBRIS,
    HARD,
    METAL,
    PIECES,
    SEALER,
    SLUDGE,
    WASHING,
)
from knowledge.vocabulary import Caution, Hold, Phase, Task

# --------------------------------------------------------------- block, crank, what is fed

GALLERIES_CLEARED = Task(
    "galleries_cleared",
    Phase.CLEANING,
    "every gallery brushed with all plugs out",
    (
        "all plugs, jets, dowels with a hole and oil-fed fittings out of the block",
        "brush just wider than the passage, with solvent, from both ends and at every crossing",
        "rinse, blow dry, light or wire through to each bearing; white rag stays white",
    ),
    OPC,
    remedy="brush again; pressure washing alone leaves what sits at the crossings",
    guards=(GALLERY_BLOCKED, DIRT_IN_ASSEMBLY, BEARING_WIPED),
    after=(*HARD, *SEALER, GALLERY_FOUND_BLOCKED),
    cautions=BLOWING,
    also=("clean the galleries", "rifle brush", "all plugs out"),
)
CRANK_TRAPS_CLEARED = Task(
    "crank_traps_cleared",
    Phase.CLEANING,
    "crank drillings and sludge traps opened, brushed and plugged anew",
    (
        "plugs out of the webs; catch on white paper what comes with them",
        "brush each drilling from both ends, rinse, blow dry, wire from main to pin",
        "new plugs, sealed and staked as the maker has it",
    ),
    OPC,
    remedy="brush again; a crank whose traps were not opened is not clean",
    why="spinning packs chips into the traps, and fresh oil washes them out into new shells",
    guards=(GALLERY_BLOCKED, BEARING_WIPED, DIRT_IN_ASSEMBLY),
    after=(*HARD, *SLUDGE),
    cautions=(*BLOWING, Caution.HEAVY),
    also=("sludge traps", "crank drillings", "crank plugs"),
)
LIFTERS_CLEANED = Task(
    "lifters_cleaned",
    Phase.CLEANING,
    "hydraulic lifters stripped and washed, one by one, or renewed",
    (
        "one at a time; parts are paired and go back into their own bore",
        "wash, look at plunger, check ball and face; oil, and try that it leaks down slowly",
        "after metal or with a worn face: new lifters, and a look at every lobe",
    ),
    LFT,
    remedy="renew the lifter; a new one never on a wiped lobe",
    guards=(LIFTER_BORE_LEAK,),
    only_with=(HYDRAULIC_LIFTERS,),
    after=(*HARD, *SEALER, *SLUDGE),
    cautions=(*WASHING, Caution.SPRING),
    also=("clean the lifters", "tappets"),
)
ROCKER_GEAR_CLEANED = Task(
    "rocker_gear_cleaned",
    Phase.CLEANING,
    "rocker shafts, cam oilways and head feeds rinsed, end plugs out",
    (
        "order of rockers and pushrods kept; end plugs out of the shafts, rod and rinse",
        "hollow pushrods and spray bars blown through, light through each",
        "restrictors out, washed, back in with their size written down",
    ),
    CP,
    remedy="rinse again until each feed hole shows light",
    guards=(ROCKER_SHAFT_LEAK, GALLERY_BLOCKED),
    after=(*HARD, *SEALER, *SLUDGE),
    cautions=BLOWING,
    also=("rocker shaft", "pushrods", "top end oil feed"),
)
PISTON_JETS_CLEARED = Task(
    "piston_jets_cleared",
    Phase.CLEANING,
    "piston cooling jets out, washed, free, aimed again",
    (
        "each jet out with its place; rinse, blow through, wire of the jet's size",
        "ball or spring valve: seats and moves",
        "back in with new seals, aimed as the maker has it",
    ),
    OPC,
    remedy="renew a jet that is not clear or does not shut",
    guards=(PISTON_JET_OPEN,),
    only_with=(PISTON_JETS,),
    after=(*HARD, *SEALER, *SLUDGE),
    cautions=BLOWING,
    also=("oil squirters", "piston squirters"),
)
CHAIN_TENSIONERS_CLEARED = Task(
    "chain_tensioners_cleared",
    Phase.CLEANING,
    "chain tensioners and chain jets washed and free, or renewed",
    (
        "hold the plunger back with its pin, take it off; rinse, work it in clean oil",
        "its screen, feed hole and check valve clear; chain jet clear",
        "new gasket or ring behind it",
    ),
    CP,
    remedy="renew the tensioner where the plunger sticks or will not hold",
    guards=(TENSIONER_SEAL_LEAK,),
    only_with=(CHAIN_TENSIONERS,),
    after=(*HARD, *SEALER, *SLUDGE),
    cautions=(*WASHING, Caution.SPRING),
    also=("timing chain tensioner", "tensioner screen"),
)
TURBO_LINES_CLEANED = Task(
    "turbo_lines_cleaned",
    Phase.CLEANING,
    "turbo feed renewed or clean to bright metal, its drain clear",
    (
        "feed, banjo bolts and any screen off: renew a coked pipe, wash a clean one",
        "drain pipe rinsed, no kink, no sealer at its flange",
        "crank into a can before the turbo is joined up: a full stream; then oil into the turbo",
    ),
    TOC,
    remedy="fit a new feed pipe",
    guards=(TURBO_FEED_RESTRICTED,),
    only_with=(TURBOCHARGED,),
    after=(*DEBRIS, *COOLANT, TURBO_FEED_FOUND_BLOCKED),
    cautions=(
        *BLOWING,
        Caution.HOT,
        Caution.ROTATING,
        Caution.FIRE,
    ),
    also=("turbo oil feed", "turbo oil line"),
)
OIL_FED_FITTINGS_CLEANED = Task(
    "oil_fed_fittings_cleaned",
    Phase.CLEANING,
    "everything else the engine's oil runs through: opened and rinsed",
    (
        "list it: compressor, vacuum pump, injection pump, governor, cam phasers, hydraulic drive",
        "each off, its feed, screen and drain rinsed; one with bearings is stripped or renewed",
    ),
    OPC,
    remedy="open what was left out; it hands its chips back to the engine",
    guards=(DIRT_IN_ASSEMBLY,),
    after=METAL,
    cautions=(*WASHING, Caution.INJECTION),
    also=("air compressor oil feed", "vacuum pump", "cam phaser"),
)
SENDER_PORT_CLEARED = Task(
    "sender_port_cleared",
    Phase.CLEANING,
    "sender port, its restrictor and the gauge line clear",
    (
        "sender out; soft wire and syringe, drawing outwards, never pushing in",
        "gauge line blown through into a rag at low pressure, then filled with clean oil",
        "sender itself tried with a known pressure",
    ),
    HB01,
    remedy="renew line or sender that stays slow",
    guards=(GAUGE_LINE_BLOCKED,),
    after=(*HARD, *SLUDGE, *SEALER, SENDER_PORT_CLOGGED, GAUGE_LINE_SLUDGED),
    cautions=(
        Caution.EYES,
        Caution.PRESSURE,
        Caution.BATTERY,
    ),
    also=("oil pressure sender port", "gauge line"),
)
SEALER_PICKED_FROM_FEEDS = Task(
    "sealer_picked_from_feeds",
    Phase.CLEANING,
    "sealer and shreds looked for in every narrow place",
    (
        "tube of the pickup, relief bore, filter bypass, restrictors, lifter feeds, jets",
        "lamp and soft wire; no washing dissolves set sealer",
    ),
    RV8,
    remedy="pick it out by hand; renew what cannot be seen through",
    guards=(SEALANT_DEBRIS, RELIEF_DEBRIS, GALLERY_BLOCKED),
    after=SEALER,
    cautions=(Caution.EYES,),
    also=("silicone in the oilways",),
)
FILTER_CUT_AGAIN = Task(
    "filter_cut_again",
    Phase.CLEANING,
    "a date set to cut the first filter: after about an hour's running",
    (
        "write into the job: first filter off after an hour, cut and spread on white",
        "flakes or copper in it: stop, the source is still there or something was left dirty",
        "dust alone: next filter at the usual time",
    ),
    CUT,
    Hold.NOTE,
    remedy="set the date before the engine is handed over",
    guards=(DIRT_IN_ASSEMBLY, PART_SHEDDING_INSIDE),
    after=(*HARD, *PIECES),
    cautions=(
        Caution.SHARP,
        Caution.USED_OIL,
        Caution.WASTE,
    ),
    also=("cut the filter after first run",),
)
