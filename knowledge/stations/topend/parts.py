"""Parts for a repair of the top end."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.topend import causes, causes_feeds, causes_phasers
from knowledge.work import Access, Part

LIFTERS = Part(
    id="lifters",
    says="lifters of the right length and oil groove",
    quantity="those found bad; a whole set with a new camshaft",
    source=COMMON_PRACTICE,
    measure_first="bore and lifter diameter, length, height of the oil groove",
    for_causes=(causes.LIFTER_BORE_LEAK,),
    also=("tappets",),
)
LIFTER_BUSHES = Part(
    id="lifter_bushes",
    says="bushes for worn lifter bores",
    quantity="1 per worn bore",
    source=COMMON_PRACTICE,
    measure_first=(
        "bore as worn and as to be machined; height of the oil hole; the machine shop fits them"
    ),
    for_causes=(causes.LIFTER_BORE_LEAK,),
)
CAM_BEARINGS = Part(
    id="cam_bearings",
    says="cam bearings, whole set",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="each bore in the block and each cam journal; position of every oil hole",
    for_causes=(causes.CAM_BEARING_WEAR, assembly_causes.BEARING_OIL_HOLE_MISALIGNED),
    also=("cam bushes",),
)
ROCKER_SHAFT = Part(
    id="rocker_shaft",
    says="rocker shaft and bushes",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="shaft diameter worn and unworn, bush bore, which side its holes face",
    for_causes=(causes.ROCKER_SHAFT_LEAK,),
)
ROCKER_SHAFT_PLUGS = Part(
    id="rocker_shaft_plugs",
    says="rocker shaft end plugs and stand gaskets",
    quantity="2 plugs per shaft, and the stand gaskets",
    source=COMMON_PRACTICE,
    measure_first="bore or thread of the shaft's ends",
    for_causes=(causes.ROCKER_SHAFT_LEAK,),
)
TENSIONER_SEALS = Part(
    id="tensioner_seals",
    says="tensioner seals",
    quantity="1 set",
    source=sources.TENSIONER_GASKET_LEFT_OUT,
    measure_first="gasket or ring, and the right bolts with them",
    for_causes=(causes.TENSIONER_SEAL_LEAK,),
    for_places=(Access.FRONT_COVER_OFF,),
    only_with=(features.CHAIN_TENSIONERS,),
)
TENSIONER_BOLTS = Part(
    id="tensioner_bolts",
    says="tensioner bolts and oil jet, if wrong or damaged",
    quantity="1 set",
    source=sources.PINPOINT_TEST_2012,
    measure_first="thread, length, jet hole",
    for_causes=(causes.TENSIONER_SEAL_LEAK,),
)
CAM_PHASER = Part(
    id="cam_phaser",
    says="cam phaser and its oil control valve, with once-only bolts",
    quantity="those found bad",
    source=COMMON_PRACTICE,
    measure_first="which cam and bank, part number, bolts",
    for_causes=(causes_phasers.CAM_PHASER_LEAK,),
)
PISTON_JET_SET = Part(
    id="piston_jet_set",
    says="piston jets with their valves and bolts",
    quantity="those found bad",
    source=COMMON_PRACTICE,
    measure_first="opening pressure, seat diameter, aim",
    for_causes=(causes_feeds.PISTON_JET_OPEN,),
)
METERING_RESTRICTOR = Part(
    id="metering_restrictor",
    says="metering restrictor or gasket with the right hole",
    quantity="1 per feed",
    source=COMMON_PRACTICE,
    measure_first="hole size by the drawing, thread or diameter of its seat",
    for_causes=(causes_feeds.RESTRICTOR_MISSING,),
)
DISTRIBUTOR_RING = Part(
    id="distributor_ring",
    says="distributor gasket or ring",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="groove diameter and depth, gasket thickness: it sets the depth",
    for_causes=(causes_feeds.DIST_HOUSING_LEAK,),
    for_places=(Access.DISTRIBUTOR_OUT,),
)
DISTRIBUTOR_BODY = Part(
    id="distributor_body",
    says="distributor body or stub that fits this block, if worn or wrong",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="body and bore diameter, depth from the clamp face to the gallery",
    for_causes=(causes_feeds.DIST_HOUSING_LEAK,),
)
TURBO_FEED_PIPE = Part(
    id="turbo_feed_pipe",
    says="turbo feed pipe or hose",
    quantity="1",
    source=sources.TURBO_MAKER_STARVATION,
    measure_first="bore, length, union threads, distance from the exhaust",
    for_causes=(causes_feeds.TURBO_FEED_LEAK, causes_feeds.TURBO_FEED_RESTRICTED),
)
TURBO_GASKETS = Part(
    id="turbo_gaskets",
    says="turbo feed and drain gaskets and washers, no sealer",
    quantity="1 set",
    source=sources.TURBO_MAKER_STARVATION,
    measure_first="flange and hole: the gasket must not cover it",
    for_causes=(causes_feeds.TURBO_FEED_LEAK, causes_feeds.TURBO_FEED_RESTRICTED),
)
TURBO = Part(
    id="turbo",
    says="turbo, repaired or exchanged, if its bearings are worn",
    quantity="1",
    source=sources.TURBO_MAKER_STARVATION,
    measure_first="shaft play both ways; maker's number on the plate",
    for_causes=(causes_feeds.TURBO_FEED_LEAK,),
)
CAM_PLUG_AND_BOLTS = Part(
    id="cam_plug_and_bolts",
    says="new cam plug and retainer bolts, if the manual calls for them",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="plug bore and depth, bolt thread",
    for_places=(Access.CAM_OUT,),
)
