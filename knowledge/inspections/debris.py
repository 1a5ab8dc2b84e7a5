"""How to trace debris to where it lodged. Filter and sump have their own checks."""

from knowledge.findings.debris import (
    BEARING_PIECES_IN_PUMP,
    CRANK_TRAP_FULL,
    CRANK_TRAP_METAL,
    METAL_THROUGHOUT,
    PLUG_FUR_ONLY,
)
from knowledge.sources import BFP, THK
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access, Caution, Inspection, Station

LOOK_AT_THE_DRAIN_MAGNET = Inspection(
    "look_at_the_drain_magnet",
    Station.BEARINGS,
    "look at the drain plug's magnet",
    (
        "photograph the plug before wiping",
        "fur or slivers? rub it between the fingers, wearing gloves",
        "keep what was on it in a labelled bag",
    ),
    2,
    Access.DRAINED,
    (PLUG_FUR_ONLY,),
    CP,
    tools=("camera", "bag"),
    cautions=(Caution.HOT, Caution.USED_OIL, Caution.WASTE),
    keep="bag what the magnet held",
    also=("magnetic drain plug", "check the plug for metal"),
)
LOOK_FOR_PIECES_IN_THE_PUMP = Inspection(
    "look_for_pieces_in_the_pump",
    Station.BEARINGS,
    "look for pieces of bearing between the pump's gears",
    (
        "photograph the pump open, before wiping",
        "pick out what lies in the pockets, sort it by magnet and colour",
    ),
    5,
    Access.PUMP_COVER_OFF,
    (BEARING_PIECES_IN_PUMP,),
    THK,
    tools=("camera", "tweezers", "magnet", "bag"),
    cautions=(Caution.SHARP, Caution.USED_OIL),
    destroys="how the pieces lay",
    keep="bag and label them as from the pump",
    also=("bearing bits in the pump",),
)
OPEN_THE_CRANK_TRAPS = Inspection(
    "open_the_crank_traps",
    Station.BEARINGS,
    "open the crank's traps and look through its drillings",
    (
        "take out the plugs, catch on white paper what comes with them",
        "light and wire from main to pin: every drilling open?",
        "metal in block, head and crank oilways as well: it has gone all through",
    ),
    45,
    Access.CRANK_OUT,
    (CRANK_TRAP_METAL, CRANK_TRAP_FULL, METAL_THROUGHOUT),
    BFP,
    tools=("plug key", "wire", "lamp", "white paper"),
    cautions=(Caution.HEAVY, Caution.SOLVENT, Caution.EYES),
    destroys="the plugs, which are renewed",
    keep="bag and label what each trap held",
    also=("clean the sludge traps", "crank drillings", "pull the crank plugs"),
)
