"""Further sights at filter, drain, covers and breather."""

from knowledge.model import OCCASIONAL, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE

FILTER_CAN_HOLED = Finding(
    id="filter_can_holed",
    station=Station.LEAKS,
    says="the filter's can is punctured, chafed or rusted through",
    asks="Filter can punctured, chafed through or rusted through?",
    source=COMMON_PRACTICE,
    denies="the filter's can is whole",
    stage=Stage.OUTSIDE,
    normal="whole",
    background=VERY_RARE,
    also=(
        "punctured oil filter",
        "hole in the filter can",
        "filter rubbed through",
        "rusted filter can",
    ),
)
DRAIN_VALVE_WRONG = Finding(
    id="drain_valve_wrong",
    station=Station.LEAKS,
    says="the drain plug or valve is wrong or too long",
    asks="Drain plug or drain valve wrong or too long?",
    source=COMMON_PRACTICE,
    denies="the drain plug is the right one",
    stage=Stage.OUTSIDE,
    normal="as listed",
    background=VERY_RARE,
    also=(
        "drain valve too long",
        "wrong drain plug",
        "aftermarket drain valve",
        "drain plug touches the pickup",
    ),
)
ROCKER_COVER_LOOSE = Finding(
    id="rocker_cover_loose",
    station=Station.LEAKS,
    says="a rocker or valve cover is loose, or its bolts missing",
    asks="Rocker or valve cover loose, or bolts missing?",
    source=COMMON_PRACTICE,
    denies="the valve covers are tight",
    stage=Stage.OUTSIDE,
    normal="tight and dry",
    background=VERY_RARE,
    also=(
        "loose valve cover",
        "rocker cover came loose",
        "valve cover bolts missing",
        "cam cover loose",
    ),
)
BREATHER_MISROUTED = Finding(
    id="breather_misrouted",
    station=Station.LEAKS,
    says="the crankcase breather is wrongly routed or connected",
    asks="Crankcase breather wrongly routed, or connected to the wrong place?",
    source=COMMON_PRACTICE,
    denies="the breather is routed as it should be",
    stage=Stage.OUTSIDE,
    normal="routed as the maker does",
    background=VERY_RARE,
    also=(
        "pcv hose on the wrong port",
        "breather to the wrong place",
        "breather hose mixed up",
        "breather under vacuum",
    ),
)
OIL_HOSES_AGED = Finding(
    id="oil_hoses_aged",
    station=Station.LEAKS,
    says="oil hoses are old, hardened, cracked or rubbed",
    asks="Oil hoses old, hardened, cracked or rubbed?",
    source=COMMON_PRACTICE,
    denies="the oil hoses are sound",
    stage=Stage.OUTSIDE,
    normal="supple, no cracks; renewed by age",
    background=OCCASIONAL,
    also=(
        "old oil hoses",
        "hardened hoses",
        "perished oil hose",
        "hose rubbed on the frame",
    ),
)
