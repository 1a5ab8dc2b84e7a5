"""Root causes at the assembly station: what a rebuild or repair left behind."""

from knowledge.sources import CEB2, JIO, LTK, PE17, RUS, RV8, THK
from knowledge.vocabulary import Cause, Rate, Station

DIRT_IN_ASSEMBLY = Cause(
    "dirt_in_assembly",
    Station.ASSEMBLY,
    "grit, swarf or foreign pieces left inside at the build",
    "the pieces travel with the oil, score bearings and jam valve, pump or oilway within hours",
    Rate.OCCASIONAL,
    "-- ++ 0 0 +",
    "strip, take out the plugs, brush and flush every oilway",
    CEB2,
    follows="the relief valve hangs open, the pump jams or the bearings wipe",
    also=(
        "machining swarf left in the block",
        "blasting grit in the engine",
        "block not cleaned",
        "lint in the oilways",
        "foreign object in the oil",
        "plug or cap left in an oilway",
    ),
)
BEARING_OIL_HOLE_MISALIGNED = Cause(
    "bearing_oil_hole_misaligned",
    Station.ASSEMBLY,
    "a bearing's oil hole does not meet its oilway",
    "one bearing or shaft runs dry while the gauge reads good or even high",
    Rate.RARE,
    "-- ++ 0 0 0",
    "refit the bearing and prove every hole with a rod",
    LTK,
    follows="that one bearing fails",
    also=(
        "bearing in backwards",
        "cam bearing turned",
        "shell without an oil hole",
        "oil hole not lined up",
        "upper and lower shells swapped",
    ),
)
CAP_SWAPPED = Cause(
    "cap_swapped",
    Station.ASSEMBLY,
    "bearing caps mixed up, turned round or wrongly tightened",
    "the bore is no longer round: it grips in one place, wipes, and leaks after",
    Rate.RARE,
    "-- ++ 0 0 0",
    "match caps to their numbers and direction, tighten as the manual says",
    RUS,
    follows="the bearings wipe",
    also=(
        "caps mixed up",
        "main cap on backwards",
        "rod cap reversed",
        "caps not matched",
        "bearing cap on the wrong way",
    ),
)
SEALANT_DEBRIS = Cause(
    "sealant_debris",
    Station.ASSEMBLY,
    "surplus sealer squeezed inside and broke off",
    "rubbery crumbs gather on mesh, relief seat or jets and hold the oil back",
    Rate.OCCASIONAL,
    "0 ++ 0 0 0",
    "clean everything; seal with a thin bead or the proper gasket",
    RV8,
    follows="a blocked pickup screen",
    also=(
        "silicone in the pan",
        "rtv in the pickup",
        "gasket goo in the screen",
        "too much sealer",
        "sealant strings",
    ),
)
ASSEMBLY_LUBE_CLOG = Cause(
    "assembly_lube_clog",
    Station.ASSEMBLY,
    "build grease or jelly clogs screen or filter",
    "the first minutes are slow and low, until it has dissolved",
    Rate.RARE,
    "-- ++ 0 0 0",
    "change oil and filter; pack and prime only as the maker says",
    THK,
    follows="a dry first start",
    also=(
        "assembly lube in the filter",
        "petroleum jelly in the pump",
        "grease plugged the screen",
        "packed with grease",
    ),
)
TIMING_GEAR_SHEDDING = Cause(
    "timing_gear_shedding",
    Station.ASSEMBLY,
    "plastic or fibre timing teeth or chain guides break up",
    "the crumbs drop into the sump and cover the pickup screen",
    Rate.OCCASIONAL,
    "++ 0 0 + 0",
    "clean sump and screen, renew gear or guides; leave no crumbs behind",
    JIO,
    follows="a blocked pickup screen, worn bearings after years of it",
    also=(
        "plastic timing gear teeth",
        "nylon gear teeth in the pan",
        "broken chain guide",
        "plastic bits in the oil pan",
        "fibre cam gear stripped",
    ),
)
FASTENER_LOOSE_INSIDE = Cause(
    "fastener_loose_inside",
    Station.ASSEMBLY,
    "a bolt inside slack, unlocked or over-tight",
    "pump, pickup, tray or bearing cap shifts and the oil finds a gap, or a part drops off",
    Rate.RARE,
    "0 ++ 0 0 +",
    "tighten to the figure, lock it and mark it",
    PE17,
    follows="parts in the sump, pressure lost",
    also=(
        "bolt fell out inside",
        "pump bolts loose",
        "through bolts not torqued",
        "main cap bolts under-torqued",
        "rod nut came loose",
        "loose nut in the sump",
    ),
)
PART_SHEDDING_INSIDE = Cause(
    "part_shedding_inside",
    Station.ASSEMBLY,
    "a part inside wears away or breaks up and sheds metal into the oil",
    "its metal travels with the oil and clogs mesh, valve and oilways, then scores bearings",
    Rate.OCCASIONAL,
    "+ + 0 0 +",
    "find and renew the part; clean or renew everything the oil passes through",
    CEB2,
    follows="blocked oilways, debris under the relief valve, scored and turned bearings",
    also=("piston pin plug wearing", "cam lobe wiped", "broken part making metal", "making metal"),
)
