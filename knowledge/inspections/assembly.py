"""How to look for what the last hand inside left behind."""

from knowledge.findings.assembly import (
    CAP_BOLTS_SLACK,
    CAPS_MIXED,
    FASTENER_FOUND_LOOSE,
    FOREIGN_PART_FITTED,
    LEFTOVER_FOUND,
    PIECE_FOUND_INSIDE,
)
from knowledge.findings.bearings import ROD_THROUGH_BLOCK
from knowledge.sources import BTG, PE17
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import Access, Caution, Inspection, Station

LOOK_UP_AT_THE_BOTTOM_END = Inspection(
    "look_up_at_the_bottom_end",
    Station.ASSEMBLY,
    "look up at the bottom end: locks, marks, numbers",
    (
        "lamp over every bolt, nut, lock and witness mark; touch nothing yet",
        "read cap numbers and arrows against the maker's order",
        "look for loose pieces on ledges, tray and in ports, and for broken parts",
        "photograph before any spanner goes on",
    ),
    10,
    Access.SUMP_OFF,
    (FASTENER_FOUND_LOOSE, CAPS_MIXED, PIECE_FOUND_INSIDE, LEFTOVER_FOUND, ROD_THROUGH_BLOCK),
    BTG,
    tools=("lamp", "mirror", "camera"),
    cautions=(Caution.LIFTING, Caution.HOT, Caution.BATTERY, Caution.SHARP),
    keep="photograph marks and numbers as found",
    also=("inspect the bottom end", "look for loose bolts", "check cap numbers"),
)
FEEL_TORQUE_ON_LOOSENING = Inspection(
    "feel_torque_on_loosening",
    Station.ASSEMBLY,
    "torque on loosening: caps, through bolts, pump, pickup",
    (
        "mark every bolt head against its seat",
        "torque wrench, no air tools: read the torque at which it starts to move",
        "write it down by place; compare within one set",
    ),
    20,
    Access.SUMP_OFF,
    (CAP_BOLTS_SLACK, FASTENER_FOUND_LOOSE),
    PE17,
    tools=("torque wrench", "paint pen"),
    cautions=(Caution.LIFTING, Caution.HAND_TURN, Caution.BATTERY),
    destroys="the torque as found",
    keep="write down every figure before tightening anything",
    also=("check the torque", "are the bolts tight", "through bolt torque"),
)
COMPARE_PARTS_WITH_THE_LIST = Inspection(
    "compare_parts_with_the_list",
    Station.ASSEMBLY,
    "compare the parts inside with the maker's list",
    (
        "read part numbers and sizes, ask for the bill of the last work",
        "compare with the maker's list for this engine's number",
    ),
    15,
    Access.SUMP_OFF,
    (FOREIGN_PART_FITTED,),
    CP,
    tools=("parts list", "caliper"),
    cautions=(Caution.LIFTING,),
    keep="photograph numbers; keep the old parts",
    also=("check part numbers", "is it the right part"),
)
