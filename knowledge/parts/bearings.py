"""Parts of the bottom end."""

from knowledge.causes.assembly import (
    BEARING_OIL_HOLE_MISALIGNED,
    CAP_SWAPPED,
    DIRT_IN_ASSEMBLY,
    PART_SHEDDING_INSIDE,
)
from knowledge.causes.bearings import (
    BEARING_SPUN,
    BEARING_WEAR_MAINS,
    BEARING_WEAR_RODS,
    BEARING_WIPED,
    BEARING_WRONG_SIZE,
    BENT_ROD_OR_CRANK,
    JOURNAL_FINISH,
    LINE_BORE_MISALIGNED,
    OVERLOAD_LUGGING,
    THRUST_BEARING_WEAR,
)
from knowledge.parts.shapes import Part
from knowledge.sources import BTG, CEB1, HB04, HB16
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access

_BOTH = (
    BEARING_WIPED,
    BEARING_SPUN,
    BEARING_WRONG_SIZE,
    JOURNAL_FINISH,
    BENT_ROD_OR_CRANK,
    OVERLOAD_LUGGING,
)

MAIN_SHELLS = Part(
    "main_shells",
    "main bearing shells, whole set",
    "1 set",
    HB04,
    measure_first="every journal and its bore with caps torqued; undersize stamped on the shell; "
    "order after any grinding or boring",
    for_causes=(BEARING_WEAR_MAINS, LINE_BORE_MISALIGNED, *_BOTH),
    also=("main bearing set",),
)
ROD_SHELLS = Part(
    "rod_shells",
    "rod bearing shells, whole set",
    "1 set",
    HB04,
    measure_first="every crankpin and rod bore with caps torqued; undersize stamped on the shell; "
    "order after any grinding",
    for_causes=(BEARING_WEAR_RODS, *_BOTH),
    also=(
        "big end shells",
        "conrod bearings",
    ),
)
SUFFERED_SHELLS = Part(
    "suffered_shells",
    "shells for every bearing found wiped, scored or run dry",
    "those found so, always both halves",
    CP,
    measure_first="journal and bore of each; undersize stamped on the shell; where its oil hole "
    "must lie",
    for_causes=(
        CAP_SWAPPED,
        BEARING_OIL_HOLE_MISALIGNED,
        DIRT_IN_ASSEMBLY,
        PART_SHEDDING_INSIDE,
    ),
)
THRUST_BEARING = Part(
    "thrust_bearing",
    "thrust bearing or thrust washers",
    "1 set",
    HB16,
    measure_first="end float, cheek width and finish; thickness, oversize where the cheek was cut",
    for_causes=(THRUST_BEARING_WEAR,),
)
CRANK_REGROUND = Part(
    "crank_reground",
    "crankshaft, reground and polished, or another",
    "1",
    CEB1,
    measure_first="every journal for size, taper, round and cracks; the machine shop decides",
    for_causes=(BEARING_WIPED, BEARING_SPUN, JOURNAL_FINISH, BENT_ROD_OR_CRANK),
    also=("reground crank",),
)
CONNECTING_ROD = Part(
    "connecting_rod",
    "connecting rod, straight and of the same weight",
    "1 for each one bent or with a spoilt seat",
    BTG,
    measure_first="twist and bend, bore round with the cap torqued, length, weight",
    for_causes=(BENT_ROD_OR_CRANK, BEARING_SPUN),
)
CAP_DOWELS = Part(
    "cap_dowels",
    "cap dowels or fitted bolts, where the old ones are loose or lost",
    "by the count",
    CP,
    measure_first="diameter and length",
    for_causes=(CAP_SWAPPED, LINE_BORE_MISALIGNED),
)
BEARING_BOLTS = Part(
    "bearing_bolts",
    "new bearing bolts where the manual calls for once-only bolts",
    "by the count of what was undone",
    CP,
    measure_first="thread, length under the head; stretch limit where the manual gives one",
    for_causes=(BEARING_SPUN, CAP_SWAPPED),
    for_places=(Access.CAP_OFF,),
)
MAIN_BOLTS = Part(
    "main_bolts",
    "new main bolts where the manual calls for once-only bolts",
    "by the count",
    CP,
    measure_first="thread, length under the head; stretch limit where the manual gives one",
    for_causes=(LINE_BORE_MISALIGNED,),
    for_places=(Access.CRANK_OUT,),
)
