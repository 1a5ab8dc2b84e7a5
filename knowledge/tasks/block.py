"""What must be right in the block before the crank goes in: plugs, oilways, bores, feeds."""

from knowledge.causes.assembly import (
    BEARING_OIL_HOLE_MISALIGNED,
    DIRT_IN_ASSEMBLY,
    FASTENER_LOOSE_INSIDE,
)
from knowledge.causes.delivery import (
    GALLERY_BLOCKED,
    GALLERY_PLUG_MISSING,
    GALLERY_PLUG_TOO_DEEP,
    GALLERY_SEAL_LEAK,
)
from knowledge.causes.leaks import PLUG_EXPELLED_OUTSIDE
from knowledge.causes.topend import (
    LIFTER_BORE_LEAK,
    PISTON_JET_OPEN,
    RESTRICTOR_MISSING,
    TENSIONER_SEAL_LEAK,
    TURBO_FEED_LEAK,
    TURBO_FEED_RESTRICTED,
)
from knowledge.engines.features import (
    CHAIN_TENSIONERS,
    PISTON_JETS,
    PUSHROD_ENGINE,
    TURBOCHARGED,
)
from knowledge.sources import AHS, CEB2, CLV, LTK, MON, PBB, PE20, PF, PSP, TUR
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.tasks.figures import MICROMETER, THOU
from knowledge.vocabulary import Band, Caution, Hold, Phase, Task

FRONT_PLUGS_IN = Task(
    "front_plugs_in",
    Phase.BEARINGS,
    "gallery plugs at the front of the block: counted, in, sealed",
    (
        "count the holes against the plug map of this block; those behind the timing gear too",
        "screwed plugs: clean thread, a little sealer, none on the first two turns",
        "pressed cups: driven to their depth, staked where they were staked before",
        "write down each one; photograph the face",
    ),
    MON,
    remedy="fit the plug, then count all of them again",
    why="one plug left out behind the gear gave 10 psi at idle, and no oil showed outside",
    guards=(GALLERY_PLUG_MISSING,),
    cautions=(Caution.EYES,),
    also=("galley plugs", "front oil gallery plugs", "cam plate plugs"),
)
REAR_PLUGS_IN = Task(
    "rear_plugs_in",
    Phase.BEARINGS,
    "gallery plugs at the rear of the block, the hidden one too: counted, in, sealed",
    (
        "count against the plug map; look under the rear main cap and behind the flywheel",
        "lamp in every hole: some blocks carry one more plug deep inside",
        "write down each one; photograph the face before the flywheel covers it",
    ),
    PSP,
    remedy="fit the plug; the gearbox has to come off to do it later",
    guards=(GALLERY_PLUG_MISSING, PLUG_EXPELLED_OUTSIDE),
    cautions=(Caution.EYES,),
    also=("rear galley plug", "hidden plug", "plug behind the flywheel"),
)
VALLEY_PLUGS_IN = Task(
    "valley_plugs_in",
    Phase.BEARINGS,
    "plugs of the lifter gallery: counted, in, sealed",
    (
        "count those in the valley and at both ends of the lifter gallery",
        "look past the distributor hole: a plug may stand behind it",
    ),
    CLV,
    remedy="fit the plug before the inlet manifold closes the valley",
    guards=(GALLERY_PLUG_MISSING,),
    only_with=(PUSHROD_ENGINE,),
    also=("lifter valley plugs", "lifter gallery plug"),
)
PLUGS_CLEAR_OF_FEEDS = Task(
    "plugs_clear_of_feeds",
    Phase.BEARINGS,
    "every plug at its depth, covering no feed and touching no neighbour",
    (
        "wire or lamp through each cross passage next to a plug: it must pass",
        "plugs with a slot or a groove: turned the way they were made to stand",
        "front plugs low enough for the timing cover, gear and plate",
    ),
    PBB,
    remedy="set the plug back, or shorten it; never drive it deeper to seal it",
    why="a rear plug turned in its hole left the rear main's feed one third open",
    guards=(GALLERY_PLUG_TOO_DEEP, GALLERY_BLOCKED),
    also=("plug too deep", "plug blocks the feed"),
)
BLEEDS_WRITTEN_DOWN = Task(
    "bleeds_written_down",
    Phase.BEARINGS,
    "bleeds and restrictors meant to be there: known, of the right bore, written down",
    (
        "list every hole drilled on purpose, as the 0.030 in one some blocks have to the gear",
        "drill shank through each restrictor to the heads, chain or turbo; write the size down",
    ),
    MON,
    Hold.NOTE,
    remedy="fit the restrictor of the drawing; plug and drill anew where it was bored out",
    guards=(RESTRICTOR_MISSING,),
    also=("restrictors", "oil jets to the timing gear", "metering plugs"),
)
OILWAYS_BRUSHED_CLEAN = Task(
    "oilways_brushed_clean",
    Phase.BEARINGS,
    "oilways of block, crank and heads brushed, rinsed and clean to a white rag",
    (
        "every plug out; brush each passage from both ends, crank drillings too",
        "rinse through with clean solvent or hot soapy water, then blow dry",
        "draw a white lint-free rag through; repeat until it comes out white",
        "oil the bores at once, bag the block until it is built",
    ),
    CEB2,
    remedy="brush and rinse again; fit no bearing until the rag stays white",
    why="dirt is the first cause of early bearing failure, near half of all in one maker's count",
    guards=(DIRT_IN_ASSEMBLY, GALLERY_BLOCKED),
    cautions=(Caution.SOLVENT, Caution.EYES, Caution.PRESSURE, Caution.WASTE),
    also=("clean the galleries", "wash the block", "oil passages clean", "cleanliness"),
)
OIL_HOLES_MEET = Task(
    "oil_holes_meet",
    Phase.BEARINGS,
    "oil hole of every shell and bush meets its oilway",
    (
        "upper main shells: look or push a rod through shell and block, one after the other",
        "cam bushes: a rod through each hole from the main below; note how each is clocked",
        "rocker shafts and small-end bushes too, where they are fed",
    ),
    LTK,
    remedy="turn or renew the bush; never drill a shell in place",
    why="cam bushes a few degrees out left one engine's rockers dry",
    guards=(BEARING_OIL_HOLE_MISALIGNED,),
    also=("line up oil holes", "cam bearing holes", "bearing oil holes"),
)
LIFTER_BORES_SOUND = Task(
    "lifter_bores_sound",
    Phase.BEARINGS,
    "lifter bores sound, each lifter the right one and falling freely",
    (
        "look for scores, cracks and wear where the gallery crosses the bore",
        "oil each lifter: it must sink by itself and not rock in its bore",
        "at full lift and on the base circle its oil band must stay inside the bore",
    ),
    PF,
    remedy="bush the bore, or fit the lifter that belongs there",
    why="a lifter that uncovers the gallery, or a worn bore, lets oil out at the top of the feed",
    guards=(LIFTER_BORE_LEAK,),
    only_with=(PUSHROD_ENGINE,),
    also=("tappet bores", "lifters", "cam followers"),
)
LIFTER_BORE_TAPER_CHECKED = Task(
    "lifter_bore_taper_checked",
    Phase.BEARINGS,
    "taper of the lifter bores",
    ("bore gauge at top and bottom of each bore; write down the difference",),
    PE20,
    Hold.NOTE,
    "length",
    (Band(None, 0.2 * THOU, PE20, "what one lifter maker asks for new bores"),),
    spread=MICROMETER,
    remedy="hone or bush the bore",
    guards=(LIFTER_BORE_LEAK,),
    only_with=(PUSHROD_ENGINE,),
    also=("lifter bore wear",),
)
GALLERY_SEALS_FITTED = Task(
    "gallery_seals_fitted",
    Phase.BEARINGS,
    "seals, tubes and gaskets of the oilways: all there, new, in their grooves",
    (
        "list every ring, feed tube and cover gasket that seals a passage, from the drawing",
        "front cover and filter housing: gasket the right way, each port open through it",
        "oil the rings; none cut, none rolled out of its groove",
    ),
    AHS,
    remedy="take the cover off again and fit the seal",
    guards=(GALLERY_SEAL_LEAK,),
    also=("front cover seals", "oil feed o-rings", "gallery o-rings"),
)
TENSIONER_SEALED = Task(
    "tensioner_sealed",
    Phase.BEARINGS,
    "chain tensioners: gasket behind each, jets clear, bolts tight",
    (
        "gasket or ring behind each tensioner and oil jet, old ones off",
        "jet clear to a thin wire; oil in the tensioner where the maker says so",
        "bolts to the manual's torque; lock pins out last",
    ),
    AHS,
    remedy="gasket in, bolts tightened anew",
    why="a tensioner without its gasket gave nothing at idle and 40 psi at 2000 rpm",
    guards=(TENSIONER_SEAL_LEAK,),
    only_with=(CHAIN_TENSIONERS,),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("timing chain tensioner gasket", "chain oil jet"),
)
PISTON_JETS_AIMED = Task(
    "piston_jets_aimed",
    Phase.BEARINGS,
    "piston cooling jets: all there, clear, aimed, their valves shut",
    (
        "count them; wire through each; its valve must close by itself",
        "aim as the manual's tool shows; turn the crank by hand: nothing touches a jet",
        "bolts locked as the manual says",
    ),
    CP,
    remedy="renew a bent or open jet",
    guards=(PISTON_JET_OPEN, FASTENER_LOOSE_INSIDE),
    only_with=(PISTON_JETS,),
    cautions=(Caution.HAND_TURN, Caution.EYES),
    also=("oil squirters", "piston squirters", "piston oil jets"),
)
TURBO_LINES_CLEAR = Task(
    "turbo_lines_clear",
    Phase.BEARINGS,
    "turbo feed and drain clear, washers and gaskets new, no silicone",
    (
        "look through feed pipe, banjo bolt, screen and drain; renew a coked pipe",
        "lay each gasket on both faces: no hole covered",
        "drain falls all the way to the sump, no kink, no dip",
        "no silicone on these joints: a shred of it shuts the feed",
    ),
    TUR,
    remedy="new pipe, new gasket",
    guards=(TURBO_FEED_RESTRICTED, TURBO_FEED_LEAK),
    only_with=(TURBOCHARGED,),
    also=("turbo oil feed", "turbo drain", "banjo bolt"),
)
BUILD_KEPT_CLEAN = Task(
    "build_kept_clean",
    Phase.BEARINGS,
    "clean hands, clean bench, engine covered whenever nobody works on it",
    (
        "no grinding, blasting or filing in the room while the engine is open",
        "wash and wipe each part just before it goes in; lint-free rags only",
        "bag over the engine at every break; ports and tubes stopped with bright plugs, counted",
    ),
    CP,
    Hold.NOTE,
    remedy="wipe down, look into every open hole, go on",
    guards=(DIRT_IN_ASSEMBLY,),
    cautions=(Caution.SOLVENT,),
    also=("keep it clean", "cleanliness", "cover the engine"),
)
