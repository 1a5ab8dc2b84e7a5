"""What the last hand inside the engine left behind."""

from knowledge.sources import BTG, PE17
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.vocabulary import OCCASIONAL, VERY_RARE, Finding, Stage, Station

FASTENER_FOUND_LOOSE = Finding(
    "fastener_found_loose",
    Station.ASSEMBLY,
    "a bolt or nut inside was found slack",
    "Was a bolt or nut inside found slack, unlocked or gone?",
    PE17,
    denies="every fastener inside is tight and locked",
    stage=Stage.OPENED,
    normal="all tight, locked and marked",
    background=VERY_RARE,
    also=("loose bolt inside", "nut backed off", "bolt finger tight", "lock tab missing"),
)
CAP_BOLTS_SLACK = Finding(
    "cap_bolts_slack",
    Station.ASSEMBLY,
    "bearing cap or crankcase through bolts are below torque",
    "Were bearing cap bolts or crankcase through bolts below their torque?",
    CP,
    denies="cap and through bolts are at their torque",
    stage=Stage.OPENED,
    normal="the maker's figure, felt on loosening",
    why="a cap that is not clamped lets its shell move and the oil out",
    background=VERY_RARE,
    also=(
        "through bolts under torqued",
        "main cap bolts loose",
        "rod bolts loose",
        "crankcase bolts loose",
        "inadequate torque",
    ),
)
PIECE_FOUND_INSIDE = Finding(
    "piece_found_inside",
    Station.ASSEMBLY,
    "a loose bolt, nut or broken piece was found inside",
    "Was a bolt, nut, pin or broken piece found lying inside?",
    CP,
    denies="nothing loose lies inside",
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
    "leftover_found",
    Station.ASSEMBLY,
    "a plug, cap, rag or tool was left in at assembly",
    "Was a plug, cap, rag, tape or tool left in sump, port, line or oilway?",
    CP,
    denies="nothing was left in at assembly",
    stage=Stage.OPENED,
    normal="nothing",
    background=VERY_RARE,
    also=(
        "shipping plug left in",
        "rag in the pan",
        "cap left on the oil line",
        "masking tape in the port",
        "plastic cap in the sump",
        "left a socket inside",
    ),
)
FOREIGN_PART_FITTED = Finding(
    "foreign_part_fitted",
    Station.ASSEMBLY,
    "a part that does not belong to this engine was fitted",
    "Was a wrong or unapproved part fitted inside?",
    CP,
    denies="all parts are the right ones",
    stage=Stage.OPENED,
    normal="parts by the maker's list",
    background=OCCASIONAL,
    also=("wrong part fitted", "non-approved parts", "wrong part number", "homemade part"),
)
CAPS_MIXED = Finding(
    "caps_mixed",
    Station.ASSEMBLY,
    "bearing caps are in the wrong place or turned round",
    "Are bearing caps out of their numbers, or turned round?",
    BTG,
    denies="the caps are in their places",
    stage=Stage.OPENED,
    normal="numbers in order, arrows one way, tangs together",
    background=VERY_RARE,
    also=("caps swapped", "main caps out of order", "cap on backwards", "rod caps mixed"),
)
SMALL_PART_LEFT_OUT = Finding(
    "small_part_left_out",
    Station.ASSEMBLY,
    "a slinger, spacer, ring or baffle that belongs inside was left out",
    "Was a slinger, spacer, ring or baffle that belongs inside missing?",
    CP,
    denies="every small part is there",
    stage=Stage.OPENED,
    normal="all there",
    background=VERY_RARE,
    also=(
        "oil slinger missing",
        "spacer left out",
        "forgot the baffle",
    ),
)
