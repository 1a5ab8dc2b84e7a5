"""Parts for a repair of the crank bearings."""

from knowledge import sources
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import causes, causes_geometry, causes_poured, causes_shafts
from knowledge.work import Access, Part

_BOTH = (
    causes.BEARING_WIPED,
    causes.BEARING_SPUN,
    causes.BEARING_WRONG_SIZE,
    assembly_causes_left_out.CLEARANCE_SET_WIDE,
    causes_geometry.JOURNAL_FINISH,
    causes_geometry.BENT_ROD_OR_CRANK,
    causes_geometry.OVERLOAD_LUGGING,
)
MAIN_SHELLS = Part(
    id="main_shells",
    says="main bearing shells, whole set",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="every journal and its bore with caps torqued; undersize stamped on the shell; "
    "order after any grinding or boring",
    for_causes=(causes.BEARING_WEAR_MAINS, causes_geometry.LINE_BORE_MISALIGNED, *_BOTH),
    also=("main bearing set",),
)
ROD_SHELLS = Part(
    id="rod_shells",
    says="rod bearing shells, whole set",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="every crankpin and rod bore with caps torqued; undersize stamped on the shell; "
    "order after any grinding",
    for_causes=(causes.BEARING_WEAR_RODS, *_BOTH),
    also=(
        "big end shells",
        "conrod bearings",
    ),
)
SUFFERED_SHELLS = Part(
    id="suffered_shells",
    says="shells for every bearing found wiped, scored or run dry",
    quantity="both halves for each one found",
    source=COMMON_PRACTICE,
    measure_first="journal and bore of each; undersize stamped on the shell; where its oil hole "
    "must lie",
    for_causes=(
        assembly_causes.CAP_SWAPPED,
        assembly_causes.BEARING_OIL_HOLE_MISALIGNED,
        assembly_causes.DIRT_IN_ASSEMBLY,
        assembly_causes.PART_SHEDDING_INSIDE,
    ),
)
THRUST_BEARING = Part(
    id="thrust_bearing",
    says="thrust bearing or thrust washers",
    quantity="1 set",
    source=sources.PINPOINT_TEST_2012,
    measure_first=(
        "end float, cheek width and finish; thickness, oversize if the cheek was machined"
    ),
    for_causes=(causes.THRUST_BEARING_WEAR,),
)
CRANK_REGROUND = Part(
    id="crank_reground",
    says="crankshaft, reground and polished, or another",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="every journal for size, taper, round and cracks; the machine shop decides",
    for_causes=(
        causes.BEARING_WIPED,
        causes.BEARING_SPUN,
        causes_geometry.JOURNAL_FINISH,
        causes_geometry.BENT_ROD_OR_CRANK,
    ),
    also=("reground crank",),
)
CONNECTING_ROD = Part(
    id="connecting_rod",
    says="connecting rod, straight and of the same weight",
    quantity="1 for each that is bent or has a damaged seat",
    source=idea_from(sources.BEARING_WEAR_ANALYSIS),
    measure_first="twist and bend, bore round with the cap torqued, length, weight",
    for_causes=(causes_geometry.BENT_ROD_OR_CRANK, causes.BEARING_SPUN),
)
CAP_DOWELS = Part(
    id="cap_dowels",
    says="cap dowels or fitted bolts, if the old ones are loose or lost",
    quantity="by the count",
    source=COMMON_PRACTICE,
    measure_first="diameter and length",
    for_causes=(assembly_causes.CAP_SWAPPED, causes_geometry.LINE_BORE_MISALIGNED),
)
BEARING_BOLTS = Part(
    id="bearing_bolts",
    says="new bearing bolts, if the manual says single-use",
    quantity="as many as were undone",
    source=COMMON_PRACTICE,
    measure_first="thread, length under the head; stretch limit if the manual gives one",
    for_causes=(causes.BEARING_SPUN, assembly_causes.CAP_SWAPPED),
    for_places=(Access.CAP_OFF,),
)
MAIN_BOLTS = Part(
    id="main_bolts",
    says="new main bolts, if the manual says single-use",
    quantity="by the count",
    source=COMMON_PRACTICE,
    measure_first="thread, length under the head; stretch limit if the manual gives one",
    for_causes=(causes_geometry.LINE_BORE_MISALIGNED,),
    for_places=(Access.CRANK_OUT,),
)
BALANCE_SHAFT_BEARINGS = Part(
    id="balance_shaft_bearings",
    says="balance shaft bearings, or the unit, with the seal of its oil feed",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="every journal and housing; grade marks on shaft and housing; bolts once-only?",
    for_causes=(causes_shafts.BALANCE_SHAFT_WEAR,),
    also=("balancer bushes",),
)
AUXILIARY_SHAFT_BEARINGS = Part(
    id="auxiliary_shaft_bearings",
    says="auxiliary (jack) shaft bearings, whole set",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="each bore in the block and each journal; position of every oil hole",
    for_causes=(causes_shafts.AUXILIARY_SHAFT_WEAR,),
    also=("jackshaft bushes", "intermediate shaft bushes"),
)
IDLER_BUSH = Part(
    id="idler_bush",
    says="idler gear bush and hub, or the gear with its bush",
    quantity="1 for each idler found worn",
    source=sources.MARINE_IDLER_BUSH,
    measure_first="hub diameter, bush bore and width, where the oil hole lies",
    for_causes=(causes_shafts.IDLER_BUSH_WEAR,),
    also=("timing idler bush",),
)
POURED_BEARING = Part(
    id="poured_bearing",
    says="bearing poured, bored and fitted again, with shims for its cap",
    quantity="each one cracked, loose or over its clearance",
    source=COMMON_PRACTICE,
    measure_first="journal size, round and taper; the machine shop pours and bores to it",
    for_causes=(causes_poured.POURED_BEARING_BROKEN_UP,),
    also=("rebabbitting", "babbitt repour", "line boring of poured bearings"),
)
