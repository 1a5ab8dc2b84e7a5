"""Debris in drain, pump and crank traps, and the checks that show it."""

from knowledge import sources
from knowledge.model import COMMON, OCCASIONAL, RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.work import Access, Caution, Inspection

METAL_IN_FILTER = Finding(
    id="metal_in_filter",
    station=Station.BEARINGS,
    says="there is metal in the filter",
    asks="Metal in the filter, more than fine grey dust?",
    source=sources.INSIDE_YOUR_FILTER,
    denies="no metal in the filter",
    stage=Stage.OPENED,
    normal="fine grey dust at most, and only while running in",
    why=(
        "metal in the filter means a part is breaking up now; a clean one is a good sign for the "
        "bearings"
    ),
    background=RARE,
    also=(
        "metal in the oil filter",
        "shavings in filter",
        "glitter in the filter",
        "filter full of metal",
        "chips in the filter",
    ),
)
METAL_IN_PAN = Finding(
    id="metal_in_pan",
    station=Station.BEARINGS,
    says="there is metal in the sump",
    asks="Metal flakes, slivers or glitter in the sump?",
    source=COMMON_PRACTICE,
    denies="no metal in the sump",
    stage=Stage.OPENED,
    normal="a trace of fine dust on the magnet",
    why="heavy flakes settle in the sump and never reach the filter",
    background=RARE,
    also=(
        "metal in the oil pan",
        "flakes in the sump",
        "filings in the pan",
        "swarf in the sump",
        "bearing material in the pan",
    ),
)
METAL_IN_SCREEN = Finding(
    id="metal_in_screen",
    station=Station.BEARINGS,
    says="there is metal on the pickup screen",
    asks="Metal flakes, slivers or chips on the pickup screen?",
    source=sources.AIRCRAFT_FAULT_ISOLATION,
    denies="no metal on the pickup screen",
    stage=Stage.OPENED,
    normal="none",
    background=VERY_RARE,
    also=(
        "metal in the strainer",
        "flakes in the pickup",
        "shavings in oil screen",
        "bearing material in pickup",
    ),
)
FINE_DUST_ONLY = Finding(
    id="fine_dust_only",
    station=Station.BEARINGS,
    says="there is only fine grey dust in the filter, no flakes",
    asks="Only a little fine grey dust in the filter, no flakes?",
    source=sources.CUT_FILTER_ANALYSIS_2026,
    denies="there is more than fine dust",
    stage=Stage.OPENED,
    normal="fine dust while running in, less later",
    background=COMMON,
    also=("grey paste in the filter", "just fine dust", "normal wear metal"),
)
MAGNETIC_METAL = Finding(
    id="magnetic_metal",
    station=Station.BEARINGS,
    says="there are slivers or flakes that a magnet picks up",
    asks="Does a magnet pick up slivers or flakes?",
    source=sources.READING_THE_FILTER,
    denies="nothing sticks to the magnet",
    stage=Stage.OPENED,
    normal="very few",
    why="a magnet finds steel and iron: pump, gears, rings, crank, never bearing lining",
    background=OCCASIONAL,
    also=("steel slivers", "iron filings", "ferrous metal", "magnetic shavings"),
)
BRIGHT_SOFT_METAL = Finding(
    id="bright_soft_metal",
    station=Station.BEARINGS,
    says="there is bright soft metal that a magnet does not pick up",
    asks="Bright metal that bends in the fingers and that a magnet does not pick up?",
    source=sources.READING_THE_FILTER,
    denies="no bright soft metal",
    stage=Stage.OPENED,
    normal="none",
    why="aluminium (aluminum) shells, thrust washers and pistons shed it",
    background=VERY_RARE,
    also=("non-ferrous metal", "shiny aluminium flakes", "silver flakes", "non magnetic metal"),
)
COPPER_FLAKES = Finding(
    id="copper_flakes",
    station=Station.BEARINGS,
    says="there are copper or bronze coloured flakes",
    asks="Copper or bronze coloured flakes?",
    source=idea_from(sources.INSIDE_YOUR_FILTER),
    denies="no copper flakes",
    stage=Stage.OPENED,
    normal="none",
    why="the copper layer is under a bearing's lining: the lining is gone",
    background=VERY_RARE,
    also=("copper in the filter", "bronze flakes", "gold coloured flakes", "brass in the oil"),
)
GREY_SOFT_FLAKES = Finding(
    id="grey_soft_flakes",
    station=Station.BEARINGS,
    says="there are soft grey flakes that look melted",
    asks="Soft grey-white flakes that look melted and ignore a magnet?",
    source=idea_from(sources.CUT_FILTER_ANALYSIS_2026),
    denies="no soft grey flakes",
    stage=Stage.OPENED,
    normal="none",
    why="that is bearing lining, melted off",
    background=VERY_RARE,
    also=(
        "babbitt in the filter",
        "white metal flakes",
        "bearing material",
        "lead coloured flakes",
    ),
)
LINING_STRIP = Finding(
    id="lining_strip",
    station=Station.BEARINGS,
    says="strips or foil of bearing lining were found",
    asks="Flat strips or foil of bearing lining?",
    source=idea_from(sources.CUT_FILTER_ANALYSIS_2026),
    denies="no strips of lining",
    stage=Stage.OPENED,
    normal="none",
    background=VERY_RARE,
    also=("pieces of bearing", "bearing foil", "bits of shell in the pan"),
)
CARBON_FLAKES = Finding(
    id="carbon_flakes",
    station=Station.BEARINGS,
    says="there are hard black carbon flakes",
    asks="Hard black flakes of carbon?",
    source=COMMON_PRACTICE,
    denies="hardly any carbon",
    stage=Stage.OPENED,
    normal="a few",
    background=RARE,
    also=("carbon in the pan", "black chunks", "coked oil bits"),
)
HARD_CHIPS = Finding(
    id="hard_chips",
    station=Station.BEARINGS,
    says="there is grit, casting sand, shot, swarf or brush bristle",
    asks="Casting sand, shot, swarf, lint or brush bristle in it?",
    source=sources.JOBBER_OIL_PUMPS,
    denies="no grit, shot or bristle",
    stage=Stage.OPENED,
    normal="none, least of all after a rebuild",
    why="these come from the workshop, not from the engine",
    background=VERY_RARE,
    also=(
        "casting sand in the pan",
        "glass beads",
        "wire brush bristles",
        "machining chips",
        "drill shavings",
    ),
)
PLUG_FUR_ONLY = Finding(
    id="plug_fur_only",
    station=Station.BEARINGS,
    says="only thin fur sits on the magnetic drain plug",
    asks="Only thin grey fur on the magnetic drain plug?",
    source=COMMON_PRACTICE,
    denies="there is more than fur on the drain plug",
    stage=Stage.OPENED,
    normal="thin fur",
    background=COMMON,
    also=("fuzz on drain plug", "paste on the magnet", "magnet plug clean"),
)
LOOK_AT_THE_DRAIN_MAGNET = Inspection(
    id="look_at_the_drain_magnet",
    station=Station.BEARINGS,
    says="look at the drain plug's magnet",
    steps=(
        "photograph the plug before you wipe it",
        "fur or slivers? rub it between the fingers, wearing gloves",
        "keep what was on it in a labelled bag",
    ),
    minutes=2,
    access=Access.DRAINED,
    reveals=(PLUG_FUR_ONLY,),
    source=COMMON_PRACTICE,
    tools=("camera", "bag"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    keep="bag what the magnet held",
    also=("magnetic drain plug", "check the plug for metal"),
)

BEARING_PIECES_IN_PUMP = Finding(
    id="bearing_pieces_in_pump",
    station=Station.BEARINGS,
    says="pieces of bearing were found in the oil pump",
    asks="Pieces of bearing in the oil pump?",
    source=COMMON_PRACTICE,
    denies="no pieces of bearing in the pump",
    stage=Stage.OPENED,
    normal="none",
    background=VERY_RARE,
    also=("bearing fragments in oil pump", "metal in the pump", "babbitt in the pump gears"),
)
LOOK_FOR_PIECES_IN_THE_PUMP = Inspection(
    id="look_for_pieces_in_the_pump",
    station=Station.BEARINGS,
    says="look for pieces of bearing between the pump's gears",
    steps=(
        "photograph the pump open, before you wipe",
        "pick out the pieces in the pockets, sort it by magnet and colour",
    ),
    minutes=5,
    access=Access.PUMP_COVER_OFF,
    reveals=(BEARING_PIECES_IN_PUMP,),
    source=COMMON_PRACTICE,
    tools=("camera", "tweezers", "magnet", "bag"),
    cautions=(Caution.SHARP, Caution.USED_OIL),
    destroys="how the pieces lay",
    keep="bag and label them as from the pump",
    also=("bearing bits in the pump",),
)

METAL_THROUGHOUT = Finding(
    id="metal_throughout",
    station=Station.BEARINGS,
    says="metal has gone all through the oil system",
    asks="Metal all through the engine's oil system?",
    source=COMMON_PRACTICE,
    denies="metal has not spread through the engine",
    stage=Stage.OPENED,
    normal="none",
    background=VERY_RARE,
    also=(
        "metal shavings everywhere",
        "metal all through the engine",
        "metal contamination throughout",
    ),
)
CRANK_TRAP_METAL = Finding(
    id="crank_trap_metal",
    station=Station.BEARINGS,
    says="there is metal or grit in the crank's sludge traps",
    asks="Metal or grit in the crank's drillings or sludge traps?",
    source=COMMON_PRACTICE,
    denies="the crank's drillings are free of metal",
    stage=Stage.OPENED,
    normal="clean",
    background=VERY_RARE,
    also=("debris in the crank", "chips in crank drillings", "metal in the sludge trap"),
)
CRANK_TRAP_FULL = Finding(
    id="crank_trap_full",
    station=Station.BEARINGS,
    says="the crank's sludge traps or drillings are packed full",
    asks="Crank sludge traps or drillings packed full?",
    source=COMMON_PRACTICE,
    denies="the crank's drillings are open",
    stage=Stage.OPENED,
    normal="open from end to end",
    why="a full trap cuts the rods off while the gauge looks good",
    background=VERY_RARE,
    also=("sludge trap full", "crankshaft plugged with sludge", "blocked crank drilling"),
)
OPEN_THE_CRANK_TRAPS = Inspection(
    id="open_the_crank_traps",
    station=Station.BEARINGS,
    says="open the crank's traps and look through its drillings",
    steps=(
        "take out the plugs, catch on white paper what comes out",
        "light and wire from main to pin: every drilling open?",
        "metal in block, head and crank oilways too: it has gone all through",
    ),
    minutes=45,
    access=Access.CRANK_OUT,
    reveals=(CRANK_TRAP_METAL, CRANK_TRAP_FULL, METAL_THROUGHOUT),
    source=sources.OIL_PASSAGE_CLEANING,
    tools=("plug key", "wire", "lamp", "white paper"),
    cautions=(Caution.HEAVY, Caution.SOLVENT, Caution.EYES),
    destroys="the plugs, which you renew",
    keep="bag and label what each trap held",
    also=("clean the sludge traps", "crank drillings", "pull the crank plugs"),
)
