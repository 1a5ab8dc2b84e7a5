"""Parts for a repair of the filter, cooler and galleries."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.delivery import causes, causes_crank_feed, causes_galleries
from knowledge.work import Access, Part

FILTER_BYPASS_VALVE = Part(
    id="filter_bypass_valve",
    says="bypass valve of filter mount or cooler",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="diameter, opening pressure, pressed or screwed in",
    for_causes=(causes.FILTER_BYPASS_STUCK,),
    also=("bypass valve",),
)
FILTER_STEM = Part(
    id="filter_stem",
    says="filter stem or adapter with its ring",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="both threads, length above the face, seal diameter",
    for_causes=(causes.FILTER_WRONG,),
)
REMOTE_FILTER_HOSES = Part(
    id="remote_filter_hoses",
    says="oil hoses and unions of the remote filter, marked in and out",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="bore, length, threads; rated for hot oil and cold-start pressure",
    for_causes=(causes.FILTER_WRONG,),
    only_with=(features.REMOTE_FILTER,),
)
OIL_COOLER_NEW = Part(
    id="oil_cooler_new",
    says="new oil cooler, if metal has been through it",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="unions, bore, size; whether you can prove it clean at all",
    for_causes=(
        causes.OIL_COOLER_BLOCKED,
        assembly_causes.PART_SHEDDING_INSIDE,
        assembly_causes.DIRT_IN_ASSEMBLY,
    ),
    only_with=(features.OIL_COOLER,),
)
COOLER_LINES = Part(
    id="cooler_lines",
    says="oil cooler lines with union seals, and the oil thermostat",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="bore, length, threads; opening temperature",
    for_causes=(causes.OIL_COOLER_BLOCKED,),
)
GALLERY_PLUGS = Part(
    id="gallery_plugs",
    says="new gallery plugs, every size, by the count",
    quantity="by the count, and 1 spare of each size",
    source=sources.GALLERY_PLUG_LEFT_OUT,
    measure_first="bore or thread of each hole, taper or parallel, depth to the next drilling",
    for_causes=(
        causes_galleries.GALLERY_PLUG_MISSING,
        assembly_causes_left_out.CRANK_PLUG_MISSING,
        causes_galleries.GALLERY_PLUG_TOO_DEEP,
        causes_galleries.GALLERY_BLOCKED,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.PART_SHEDDING_INSIDE,
    ),
    for_places=(Access.PLUGS_OUT,),
    also=(
        "core plugs",
        "oil gallery plugs",
    ),
)
PROVING_ROD = Part(
    id="proving_rod",
    says="thin rod to check each feed past its plug",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="drilling diameter and depth",
    for_causes=(causes_galleries.GALLERY_PLUG_TOO_DEEP, causes_galleries.GALLERY_BLOCKED),
)
GALLERY_SEALS = Part(
    id="gallery_seals",
    says="gallery rings, feed tube seals and cover gaskets, all of them",
    quantity="1 set",
    source=idea_from(sources.TENSIONER_GASKET_LEFT_OUT),
    measure_first="groove diameter and depth, tube diameter; number as in the drawing",
    for_causes=(causes_galleries.GALLERY_SEAL_LEAK,),
)
FEED_TUBE = Part(
    id="feed_tube",
    says="oil feed tube, if it is cracked or loose in its seat",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="tube diameter, length, press or ring fit",
    for_causes=(causes_galleries.GALLERY_SEAL_LEAK,),
)
TESTED_CASTING = Part(
    id="tested_casting",
    says="block or head, pressure-tested, if a repair will not hold",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="test the old one first; casting number, bores, deck height",
    for_causes=(causes_galleries.GALLERY_CRACK,),
)
CRANK_FEED_SEAL = Part(
    id="crank_feed_seal",
    says="oil seal of the crank's end in the timing cover, with its clip",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="crank end diameter and the wear on it; housing bore and depth",
    for_causes=(causes_crank_feed.CRANK_FEED_SEAL_LEAK,),
)
