"""Findings at the assembly, and the checks that show them."""

from knowledge import sources
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, OCCASIONAL, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.bearings import findings as bearings_findings
from knowledge.stations.bearings import findings_sights as bearings_sights
from knowledge.work import Access, Caution, Inspection

SMALL_PART_LEFT_OUT = Finding(
    id="small_part_left_out",
    station=Station.ASSEMBLY,
    says="a slinger, spacer, ring or baffle that belongs inside was left out",
    asks="Slinger, spacer, ring or baffle missing inside?",
    source=COMMON_PRACTICE,
    denies="every small part is in place",
    stage=Stage.OPENED,
    normal="all in place",
    background=EXCEPTIONAL,
    also=(
        "oil slinger missing",
        "spacer left out",
        "forgot the baffle",
    ),
)
FASTENER_FOUND_LOOSE = Finding(
    id="fastener_found_loose",
    station=Station.ASSEMBLY,
    says="a bolt or nut inside was found loose",
    asks="Bolt or nut inside found loose, unlocked or gone?",
    source=COMMON_PRACTICE,
    denies="every fastener inside is tight and locked",
    stage=Stage.OPENED,
    normal="all tight, locked and marked",
    background=HARDLY_EVER,
    also=("loose bolt inside", "nut backed off", "bolt finger tight", "lock tab missing"),
)
PIECE_FOUND_INSIDE = Finding(
    id="piece_found_inside",
    station=Station.ASSEMBLY,
    says="a loose bolt, nut or broken piece was found inside",
    asks="Bolt, nut, pin or broken piece found lying inside?",
    source=COMMON_PRACTICE,
    denies="there is nothing loose inside",
    stage=Stage.OPENED,
    normal="nothing",
    background=VERY_RARE,
    also=(
        "bolt in the oil pan",
        "broken piece in sump",
        "found a nut in the pan",
        "piece of piston in the pan",
    ),
)
LEFTOVER_FOUND = Finding(
    id="leftover_found",
    station=Station.ASSEMBLY,
    says="a plug, cap, rag or tool was left in at assembly",
    asks="Plug, cap, rag, tape or tool left in sump, port, line or oilway?",
    source=COMMON_PRACTICE,
    denies="nothing was left in at assembly",
    stage=Stage.OPENED,
    normal="nothing",
    background=EXCEPTIONAL,
    also=(
        "shipping plug left in",
        "rag in the pan",
        "cap left on the oil line",
        "masking tape in the port",
        "plastic cap in the sump",
        "left a socket inside",
    ),
)
CAPS_MIXED = Finding(
    id="caps_mixed",
    station=Station.ASSEMBLY,
    says="bearing caps are in the wrong place or turned round",
    asks="Bearing caps out of their numbers, or turned round?",
    source=sources.RECONDITIONER_BEARINGS,
    denies="the caps are in their places",
    stage=Stage.OPENED,
    normal="numbers in order, arrows one way, tangs together",
    background=HARDLY_EVER,
    also=("caps swapped", "main caps out of order", "cap on backwards", "rod caps mixed"),
)
LOOK_UP_AT_THE_BOTTOM_END = Inspection(
    id="look_up_at_the_bottom_end",
    station=Station.ASSEMBLY,
    says="look up at the bottom end: locks, marks, numbers",
    steps=(
        "light over every bolt, nut, lock and witness mark; touch nothing yet",
        "read cap numbers and arrows against the maker's order",
        "look for loose pieces on ledges, tray and in ports, and for broken parts",
        "photograph before you put a wrench on anything",
    ),
    minutes=10,
    access=Access.SUMP_OFF,
    reveals=(
        FASTENER_FOUND_LOOSE,
        CAPS_MIXED,
        PIECE_FOUND_INSIDE,
        LEFTOVER_FOUND,
        bearings_findings.ROD_THROUGH_BLOCK,
        bearings_sights.ROD_BROKEN,
        bearings_sights.BORES_OR_PISTONS_SCORED,
        bearings_sights.CRANK_BROKEN,
        bearings_sights.LINER_BROKEN,
        bearings_sights.BLOCK_CRACKED,
        bearings_sights.WITNESS_MARKS,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "mirror", "camera"),
    cautions=(Caution.LIFTING, Caution.HOT, Caution.BATTERY, Caution.SHARP),
    keep="photograph marks and numbers as found",
    also=("inspect the bottom end", "look for loose bolts", "check cap numbers"),
)

CAP_BOLTS_SLACK = Finding(
    id="cap_bolts_slack",
    station=Station.ASSEMBLY,
    says="bearing cap or crankcase through bolts are below torque",
    asks="Bearing cap bolts or crankcase through bolts below their torque?",
    source=COMMON_PRACTICE,
    denies="cap and through bolts are at their torque",
    stage=Stage.OPENED,
    normal="the maker's figure, checked as you undo them",
    why="a cap that is not clamped lets its shell move and the oil escape",
    background=EXCEPTIONAL,
    also=(
        "through bolts under torqued",
        "main cap bolts loose",
        "rod bolts loose",
        "crankcase bolts loose",
        "inadequate torque",
    ),
)
FEEL_TORQUE_ON_LOOSENING = Inspection(
    id="feel_torque_on_loosening",
    station=Station.ASSEMBLY,
    says="loosening torque: caps, through bolts, pump, pickup",
    steps=(
        "mark every bolt head against its seat",
        "torque wrench, no air tools: read the torque at which it starts to move",
        "write it down by position; compare within one set",
    ),
    minutes=20,
    access=Access.SUMP_OFF,
    reveals=(CAP_BOLTS_SLACK, FASTENER_FOUND_LOOSE),
    source=COMMON_PRACTICE,
    tools=("torque wrench", "paint pen"),
    cautions=(Caution.LIFTING, Caution.HAND_TURN, Caution.BATTERY),
    destroys="the torque as found",
    keep="write down every figure before you tighten anything",
    also=("check the torque", "are the bolts tight", "through bolt torque"),
)

FOREIGN_PART_FITTED = Finding(
    id="foreign_part_fitted",
    station=Station.ASSEMBLY,
    says="a part that does not belong to this engine was fitted",
    asks="Wrong or unapproved part fitted?",
    source=COMMON_PRACTICE,
    denies="all parts are the right ones",
    stage=Stage.KNOWN,
    normal="parts by the maker's list",
    background=OCCASIONAL,
    also=("wrong part fitted", "non-approved parts", "wrong part number", "homemade part"),
)
COMPARE_PARTS_WITH_THE_LIST = Inspection(
    id="compare_parts_with_the_list",
    station=Station.ASSEMBLY,
    says="compare the parts inside with the maker's list",
    steps=(
        "read part numbers and sizes; ask for the bill of the last work",
        "compare with the maker's list for this engine's number",
    ),
    minutes=15,
    access=Access.SUMP_OFF,
    reveals=(FOREIGN_PART_FITTED,),
    source=COMMON_PRACTICE,
    tools=("parts list", "caliper"),
    cautions=(Caution.LIFTING,),
    keep="photograph numbers; keep the old parts",
    also=("check part numbers", "is it the right part"),
)
