"""Parts between pump and bearings: filter mount, cooler, galleries and their plugs."""

from knowledge.causes.assembly import DIRT_IN_ASSEMBLY, PART_SHEDDING_INSIDE
from knowledge.causes.delivery import (
    FILTER_BYPASS_STUCK,
    FILTER_WRONG,
    GALLERY_BLOCKED,
    GALLERY_CRACK,
    GALLERY_PLUG_MISSING,
    GALLERY_PLUG_TOO_DEEP,
    GALLERY_SEAL_LEAK,
    OIL_COOLER_BLOCKED,
)
from knowledge.engines.features import OIL_COOLER, REMOTE_FILTER
from knowledge.parts.shapes import Part
from knowledge.sources import AHS, MON
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access

FILTER_BYPASS_VALVE = Part(
    "filter_bypass_valve",
    "bypass valve of filter mount or cooler",
    "1",
    CP,
    measure_first="diameter, opening pressure, pressed or screwed in",
    for_causes=(FILTER_BYPASS_STUCK,),
    also=("bypass valve",),
)
FILTER_STEM = Part(
    "filter_stem",
    "filter stem or adapter with its ring",
    "1",
    CP,
    measure_first="both threads, length above the face, seal diameter",
    for_causes=(FILTER_WRONG,),
)
REMOTE_FILTER_HOSES = Part(
    "remote_filter_hoses",
    "oil hoses and unions of the remote filter, marked in and out",
    "1 set",
    CP,
    measure_first="bore, length, threads; rated for hot oil and cold-start pressure",
    for_causes=(FILTER_WRONG,),
    only_with=(REMOTE_FILTER,),
)
OIL_COOLER_NEW = Part(
    "oil_cooler_new",
    "oil cooler, new where metal has been through it",
    "1",
    CP,
    measure_first="unions, bore, size; whether it can be proved clean at all",
    for_causes=(OIL_COOLER_BLOCKED, PART_SHEDDING_INSIDE, DIRT_IN_ASSEMBLY),
    only_with=(OIL_COOLER,),
)
COOLER_LINES = Part(
    "cooler_lines",
    "oil cooler lines with union seals, and the oil thermostat",
    "1 set",
    CP,
    measure_first="bore, length, threads; opening temperature",
    for_causes=(OIL_COOLER_BLOCKED,),
)
GALLERY_PLUGS = Part(
    "gallery_plugs",
    "new gallery plugs, every size, by the count",
    "by the count, and 1 of each size to spare",
    MON,
    measure_first="bore or thread of each hole, taper or parallel, depth to the next drilling",
    for_causes=(
        GALLERY_PLUG_MISSING,
        GALLERY_PLUG_TOO_DEEP,
        GALLERY_BLOCKED,
        DIRT_IN_ASSEMBLY,
        PART_SHEDDING_INSIDE,
    ),
    for_places=(Access.PLUGS_OUT,),
    also=(
        "core plugs",
        "oil gallery plugs",
    ),
)
PROVING_ROD = Part(
    "proving_rod",
    "thin rod to prove each feed open past its plug",
    "1",
    CP,
    measure_first="drilling diameter and depth",
    for_causes=(GALLERY_PLUG_TOO_DEEP, GALLERY_BLOCKED),
)
GALLERY_SEALS = Part(
    "gallery_seals",
    "gallery rings, feed tube seals and cover gaskets, all of them",
    "1 set",
    AHS,
    measure_first="groove diameter and depth, tube diameter; the drawing's count",
    for_causes=(GALLERY_SEAL_LEAK,),
)
FEED_TUBE = Part(
    "feed_tube",
    "oil feed tube, where it is cracked or loose in its seat",
    "1",
    CP,
    measure_first="tube diameter, length, press or ring fit",
    for_causes=(GALLERY_SEAL_LEAK,),
)
TESTED_CASTING = Part(
    "tested_casting",
    "block or head, pressure-tested, where a repair will not hold",
    "1",
    CP,
    measure_first="the old one tested first; casting number, bores, deck height",
    for_causes=(GALLERY_CRACK,),
)
