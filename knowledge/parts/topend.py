"""Parts of camshaft, lifters, rockers, tensioner, jets and turbo."""

from knowledge.causes.assembly import BEARING_OIL_HOLE_MISALIGNED
from knowledge.causes.topend import (
    CAM_BEARING_WEAR,
    DIST_HOUSING_LEAK,
    LIFTER_BORE_LEAK,
    PISTON_JET_OPEN,
    RESTRICTOR_MISSING,
    ROCKER_SHAFT_LEAK,
    TENSIONER_SEAL_LEAK,
    TURBO_FEED_LEAK,
    TURBO_FEED_RESTRICTED,
)
from knowledge.engines.features import CHAIN_TENSIONERS
from knowledge.parts.shapes import Part
from knowledge.sources import AHS, TMC, TUR
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access

LIFTERS = Part(
    "lifters",
    "lifters of the right length and oil groove",
    "those found bad; a whole set with a new camshaft",
    CP,
    measure_first="bore and lifter diameter, length, height of the oil groove",
    for_causes=(LIFTER_BORE_LEAK,),
    also=("tappets",),
)
LIFTER_BUSHES = Part(
    "lifter_bushes",
    "bushes for worn lifter bores",
    "1 a worn bore",
    CP,
    measure_first="bore worn and to be cut; height of the oil hole; the machine shop fits them",
    for_causes=(LIFTER_BORE_LEAK,),
)
CAM_BEARINGS = Part(
    "cam_bearings",
    "cam bearings, whole set",
    "1 set",
    TMC,
    measure_first="each bore in the block and each cam journal; where every oil hole must lie",
    for_causes=(CAM_BEARING_WEAR, BEARING_OIL_HOLE_MISALIGNED),
    also=("cam bushes",),
)
ROCKER_SHAFT = Part(
    "rocker_shaft",
    "rocker shaft and bushes",
    "1 set",
    CP,
    measure_first="shaft diameter worn and unworn, bush bore, which side its holes face",
    for_causes=(ROCKER_SHAFT_LEAK,),
)
ROCKER_SHAFT_PLUGS = Part(
    "rocker_shaft_plugs",
    "rocker shaft end plugs and stand gaskets",
    "2 plugs a shaft, and the stand gaskets",
    CP,
    measure_first="bore or thread of the shaft's ends",
    for_causes=(ROCKER_SHAFT_LEAK,),
)
TENSIONER_SEALS = Part(
    "tensioner_seals",
    "tensioner seals",
    "1 set",
    AHS,
    measure_first="gasket or ring, and the right bolts with them",
    for_causes=(TENSIONER_SEAL_LEAK,),
    for_places=(Access.FRONT_COVER_OFF,),
    only_with=(CHAIN_TENSIONERS,),
)
TENSIONER_BOLTS = Part(
    "tensioner_bolts",
    "tensioner bolts and oil jet, where they are wrong or spoilt",
    "1 set",
    AHS,
    measure_first="thread, length, jet hole",
    for_causes=(TENSIONER_SEAL_LEAK,),
)
PISTON_JET_SET = Part(
    "piston_jet_set",
    "piston jets with their valves and bolts",
    "those found bad",
    CP,
    measure_first="opening pressure, seat diameter, aim",
    for_causes=(PISTON_JET_OPEN,),
)
METERING_RESTRICTOR = Part(
    "metering_restrictor",
    "metering restrictor or gasket with the right hole",
    "1 a feed",
    CP,
    measure_first="hole size by the drawing, thread or diameter of its seat",
    for_causes=(RESTRICTOR_MISSING,),
)
DISTRIBUTOR_RING = Part(
    "distributor_ring",
    "distributor gasket or ring",
    "1 set",
    CP,
    measure_first="groove diameter and depth, gasket thickness: it sets the depth",
    for_causes=(DIST_HOUSING_LEAK,),
    for_places=(Access.DISTRIBUTOR_OUT,),
)
DISTRIBUTOR_BODY = Part(
    "distributor_body",
    "distributor body or stub that fits this block, where it is worn or wrong",
    "1",
    CP,
    measure_first="body and bore diameter, depth from the clamp face to the gallery",
    for_causes=(DIST_HOUSING_LEAK,),
)
TURBO_FEED_PIPE = Part(
    "turbo_feed_pipe",
    "turbo feed pipe or hose",
    "1",
    TUR,
    measure_first="bore, length, union threads, distance from the exhaust",
    for_causes=(TURBO_FEED_LEAK, TURBO_FEED_RESTRICTED),
)
TURBO_GASKETS = Part(
    "turbo_gaskets",
    "turbo feed and drain gaskets and washers, no sealer",
    "1 set",
    TUR,
    measure_first="flange and hole: the gasket must not cover it",
    for_causes=(TURBO_FEED_LEAK, TURBO_FEED_RESTRICTED),
)
TURBO = Part(
    "turbo",
    "turbo, repaired or another, where its bearings are worn",
    "1",
    TUR,
    measure_first="shaft play both ways; maker's number on the plate",
    for_causes=(TURBO_FEED_LEAK,),
)
CAM_PLUG_AND_BOLTS = Part(
    "cam_plug_and_bolts",
    "new cam plug and retainer bolts where the manual calls for them",
    "1 set",
    CP,
    measure_first="plug bore and depth, bolt thread",
    for_places=(Access.CAM_OUT,),
)
