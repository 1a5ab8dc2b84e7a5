"""What must be right in the block before the crank goes in: plugs, oilways, bores, feeds."""

from knowledge import sources
from knowledge.engines import features
from knowledge.figures import MICROMETER
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.delivery import causes_crank_feed as delivery_causes_crank_feed
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.units import THOU
from knowledge.work import Band, Caution, Hold, Phase, Task

FRONT_PLUGS_IN = Task(
    id="front_plugs_in",
    phase=Phase.BEARINGS,
    says="gallery plugs at the front of the block: counted, in, sealed",
    how=(
        "count the holes against the plug map of this block, also those behind the timing gear",
        "screwed plugs: clean thread, a little sealer, none on the first two turns",
        "pressed cups: drive to their depth, stake where they were staked before",
        "write down each one; photograph the face",
    ),
    source=sources.GALLERY_PLUG_LEFT_OUT,
    remedy="fit the plug, then count all of them again",
    why="one plug left out behind the gear gave 10 psi at idle, and no oil showed outside",
    guards=(delivery_causes_galleries.GALLERY_PLUG_MISSING,),
    cautions=(Caution.EYES,),
    also=("galley plugs", "front oil gallery plugs", "cam plate plugs"),
)
REAR_PLUGS_IN = Task(
    id="rear_plugs_in",
    phase=Phase.BEARINGS,
    says="gallery plugs at the rear of the block, the hidden one too: counted, in, sealed",
    how=(
        "count against the plug map; look under the rear main cap and behind the flywheel",
        "light in every hole: some blocks have one more plug deep inside",
        "write down each one; photograph the face before the flywheel covers it",
    ),
    source=sources.REAR_GALLERY_PLUG_ARTICLE,
    remedy="fit the plug; doing it later means taking the gearbox off",
    guards=(
        delivery_causes_galleries.GALLERY_PLUG_MISSING,
        leaks_causes_openings.PLUG_EXPELLED_OUTSIDE,
    ),
    cautions=(Caution.EYES,),
    also=("rear galley plug", "hidden plug", "plug behind the flywheel"),
)
VALLEY_PLUGS_IN = Task(
    id="valley_plugs_in",
    phase=Phase.BEARINGS,
    says="plugs of the lifter gallery: counted, in, sealed",
    how=(
        "count those in the valley and at both ends of the lifter gallery",
        "look past the distributor hole: there may be a plug behind it",
    ),
    source=sources.GALLERY_PLUG_LEFT_OUT,
    remedy="fit the plug before the intake manifold closes the valley",
    guards=(delivery_causes_galleries.GALLERY_PLUG_MISSING,),
    only_with=(features.PUSHROD_ENGINE,),
    also=("lifter valley plugs", "lifter gallery plug"),
)
PLUGS_CLEAR_OF_FEEDS = Task(
    id="plugs_clear_of_feeds",
    phase=Phase.BEARINGS,
    says="every plug at its depth, covering no feed and touching no neighbour",
    how=(
        "wire or light through each cross passage next to a plug: it must pass",
        "plugs with a slot or a groove: turned the way they belong",
        "front plugs low enough for the timing cover, gear and plate",
    ),
    source=sources.ROTATED_GALLERY_PLUG,
    remedy="set the plug back, or shorten it; never drive it deeper to seal it",
    why="a rear plug turned in its hole left the feed of the rear main only one third open",
    guards=(
        delivery_causes_galleries.GALLERY_PLUG_TOO_DEEP,
        delivery_causes_galleries.GALLERY_BLOCKED,
    ),
    also=("plug too deep", "plug blocks the feed"),
)
BLEEDS_WRITTEN_DOWN = Task(
    id="bleeds_written_down",
    phase=Phase.BEARINGS,
    says="intended bleeds and restrictors: known, of the right bore, written down",
    how=(
        "list every hole drilled on purpose, such as the 0.030 in one to the gear in some blocks",
        "drill shank through each restrictor to the heads, chain or turbo; write the size down",
    ),
    source=sources.GALLERY_PLUG_LEFT_OUT,
    hold=Hold.NOTE,
    remedy="fit the restrictor in the drawing; plug and redrill one that was bored out",
    guards=(topend_causes_feeds.RESTRICTOR_MISSING,),
    also=("restrictors", "oil jets to the timing gear", "metering plugs"),
)
OILWAYS_BRUSHED_CLEAN = Task(
    id="oilways_brushed_clean",
    phase=Phase.BEARINGS,
    says="oilways of block, crank and heads brushed, rinsed and clean to a white rag",
    how=(
        "every plug out; brush each passage from both ends, also the crank drillings",
        "rinse through with clean solvent or hot soapy water, then blow dry",
        "draw a white lint-free rag through; repeat until it comes out white",
        "oil the bores at once; bag the block until you build it",
    ),
    source=idea_from(sources.JOBBER_OIL_PUMPS),
    remedy="brush and rinse again; fit no bearing until the rag stays white",
    why="dirt is the first cause of early bearing failure, nearly half of all by one maker's count",
    guards=(assembly_causes.DIRT_IN_ASSEMBLY, delivery_causes_galleries.GALLERY_BLOCKED),
    cautions=(Caution.SOLVENT, Caution.EYES, Caution.PRESSURE, Caution.WASTE),
    also=("clean the galleries", "wash the block", "oil passages clean", "cleanliness"),
)
OIL_HOLES_MEET = Task(
    id="oil_holes_meet",
    phase=Phase.BEARINGS,
    says="oil hole of every shell and bush meets its oilway",
    how=(
        "upper main shells: look or push a rod through shell and block, one after the other",
        "cam bushes: a rod through each hole from the main below; note the clock position of each",
        "rocker shafts and small-end bushes too, if oil-fed",
    ),
    source=sources.CAM_BEARING_HOLES_BLOG,
    remedy="turn or renew the bush; never drill a shell in place",
    why="cam bushes a few degrees off left one engine's rockers dry",
    guards=(assembly_causes.BEARING_OIL_HOLE_MISALIGNED,),
    also=("line up oil holes", "cam bearing holes", "bearing oil holes"),
)
LIFTER_BORES_SOUND = Task(
    id="lifter_bores_sound",
    phase=Phase.BEARINGS,
    says="lifter bores sound, each lifter the right one and falling freely",
    how=(
        "look for scores, cracks and wear where the gallery crosses the bore",
        "oil each lifter: it must sink by itself and not rock in its bore",
        "at full lift and on the base circle its oil band must stay inside the bore",
    ),
    source=COMMON_PRACTICE,
    remedy="bush the bore, or fit the lifter that belongs there",
    why="a lifter that uncovers the gallery, or a worn bore, leaks oil early in the feed",
    guards=(topend_causes.LIFTER_BORE_LEAK,),
    only_with=(features.PUSHROD_ENGINE,),
    also=("tappet bores", "lifters", "cam followers"),
)
LIFTER_BORE_TAPER_CHECKED = Task(
    id="lifter_bore_taper_checked",
    phase=Phase.BEARINGS,
    says="taper of the lifter bores",
    how=("bore gauge at top and bottom of each bore; write down the difference",),
    source=sources.BUILD_ARTICLE_2020,
    hold=Hold.NOTE,
    dimension="length",
    bands=(
        Band(
            low=None,
            high=0.2 * THOU,
            source=sources.BUILD_ARTICLE_2020,
            says="what one lifter maker asks for new bores",
        ),
    ),
    spread=MICROMETER,
    remedy="hone or bush the bore",
    guards=(topend_causes.LIFTER_BORE_LEAK,),
    only_with=(features.PUSHROD_ENGINE,),
    also=("lifter bore wear",),
)
GALLERY_SEALS_FITTED = Task(
    id="gallery_seals_fitted",
    phase=Phase.BEARINGS,
    says="seals, tubes and gaskets of the oilways: all fitted, new, in their grooves",
    how=(
        "list every ring, feed tube and cover gasket that seals a passage, from the drawing",
        "front cover and filter housing: gasket the right way, each port open through it",
        "oil the rings; none cut, none rolled out of its groove",
    ),
    source=idea_from(sources.TENSIONER_GASKET_LEFT_OUT),
    remedy="take the cover off again and fit the seal",
    guards=(delivery_causes_galleries.GALLERY_SEAL_LEAK,),
    also=("front cover seals", "oil feed o-rings", "gallery o-rings"),
)
TENSIONER_SEALED = Task(
    id="tensioner_sealed",
    phase=Phase.BEARINGS,
    says="chain tensioners: gasket behind each, jets clear, bolts tight",
    how=(
        "gasket or ring behind each tensioner and oil jet, old ones off",
        "jet clear by a thin wire; oil in the tensioner if the maker says so",
        "bolts to the manual's torque; lock pins out last",
    ),
    source=sources.TENSIONER_GASKET_LEFT_OUT,
    remedy="fit the gasket, tighten the bolts again",
    why="a tensioner without its gasket gave zero at idle and 40 psi at 2000 rpm",
    guards=(topend_causes.TENSIONER_SEAL_LEAK,),
    only_with=(features.CHAIN_TENSIONERS,),
    cautions=(Caution.SPRING, Caution.EYES),
    also=("timing chain tensioner gasket", "chain oil jet"),
)
CRANK_FEED_SEAL_NEW = Task(
    id="crank_feed_seal_new",
    phase=Phase.BEARINGS,
    says="crank fed at its end: seal in the timing cover new, right way round, lip not folded",
    how=(
        "crank's end smooth where the lip runs; seal square to the stop, its clip in",
        "oil the lip; push the cover straight on over the crank's end, best with a taper sleeve",
        "take the cover off once more and look: the lip must not be folded",
    ),
    source=COMMON_PRACTICE,
    remedy="fit another seal; a grooved crank end: polish or sleeve it",
    guards=(delivery_causes_crank_feed.CRANK_FEED_SEAL_LEAK,),
    only_with=(features.DRY_SUMP,),
    also=("crank end seal", "timing cover oil seal", "quill seal"),
)
PISTON_JETS_AIMED = Task(
    id="piston_jets_aimed",
    phase=Phase.BEARINGS,
    says="piston cooling jets: all fitted, clear, aimed, their valves shut",
    how=(
        "count them; wire through each; its valve must close by itself",
        "aim as the manual's tool shows; turn the crank by hand: nothing touches a jet",
        "bolts locked as the manual says",
    ),
    source=COMMON_PRACTICE,
    remedy="renew a bent or open jet",
    guards=(topend_causes_feeds.PISTON_JET_OPEN, assembly_causes.FASTENER_LOOSE_INSIDE),
    only_with=(features.PISTON_JETS,),
    cautions=(Caution.HAND_TURN, Caution.EYES),
    also=("oil squirters", "piston squirters", "piston oil jets"),
)
TURBO_LINES_CLEAR = Task(
    id="turbo_lines_clear",
    phase=Phase.BEARINGS,
    says="turbo feed and drain clear, washers and gaskets new, no silicone",
    how=(
        "look through feed pipe, banjo bolt, screen and drain; renew a coked pipe",
        "lay each gasket on both faces: no hole covered",
        "drain falls all the way to the sump, no kink, no dip",
        "no silicone on these joints: a shred of it blocks the feed",
    ),
    source=sources.TURBO_MAKER_STARVATION,
    remedy="fit a new pipe and gasket",
    guards=(topend_causes_feeds.TURBO_FEED_RESTRICTED, topend_causes_feeds.TURBO_FEED_LEAK),
    only_with=(features.TURBOCHARGED,),
    also=("turbo oil feed", "turbo drain", "banjo bolt"),
)
BUILD_KEPT_CLEAN = Task(
    id="build_kept_clean",
    phase=Phase.BEARINGS,
    says="clean hands, clean bench, engine covered whenever nobody is working on it",
    how=(
        "no grinding, blasting or filing in the room while the engine is open",
        "wash and wipe each part just before it goes in; only lint-free rags",
        (
            "bag over the engine at every break; plug ports and tubes with bright plugs, and count "
            "them"
        ),
    ),
    source=COMMON_PRACTICE,
    hold=Hold.NOTE,
    remedy="wipe down, look in every open hole, carry on",
    guards=(assembly_causes.DIRT_IN_ASSEMBLY,),
    cautions=(Caution.SOLVENT,),
    also=("keep it clean", "cleanliness", "cover the engine"),
)
