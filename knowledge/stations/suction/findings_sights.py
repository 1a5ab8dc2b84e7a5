"""Further sights at pickup, screen, sump and tank."""

from knowledge.model import EXCEPTIONAL, HARDLY_EVER, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE

PICKUP_BENT = Finding(
    id="pickup_bent",
    station=Station.SUCTION,
    says="the pickup or its tube is bent",
    asks="Pickup, its tube or its bracket bent?",
    source=COMMON_PRACTICE,
    denies="the pickup is straight",
    stage=Stage.OPENED,
    normal="as listed for this sump",
    background=EXCEPTIONAL,
    also=(
        "bent pickup tube",
        "pickup pushed over",
        "pickup tube twisted",
        "pickup not straight",
    ),
)
SCREEN_CRUSHED = Finding(
    id="screen_crushed",
    station=Station.SUCTION,
    says="the pickup screen is crushed or sucked flat",
    asks="Pickup screen or its cage crushed or sucked flat?",
    source=COMMON_PRACTICE,
    denies="the screen has its shape",
    stage=Stage.OPENED,
    normal="its full height",
    background=HARDLY_EVER,
    also=(
        "crushed screen",
        "screen collapsed",
        "strainer squashed",
        "screen sucked in",
        "flattened strainer",
    ),
)
GASKET_COATING_SHED = Finding(
    id="gasket_coating_shed",
    station=Station.SUCTION,
    says="there are flakes of a gasket's coating in the sump or screen",
    asks="Flakes of gasket coating in the sump or screen?",
    source=COMMON_PRACTICE,
    denies="every gasket has kept its coating",
    stage=Stage.OPENED,
    normal="none",
    background=EXCEPTIONAL,
    also=(
        "gasket coating peeled",
        "flaking gasket coating",
        "black flakes of gasket",
        "rubber coating in the pan",
    ),
)
WATER_IN_SUMP = Finding(
    id="water_in_sump",
    station=Station.SUCTION,
    says="water or coolant lay in the opened sump",
    asks="Water or coolant in the sump when opened?",
    source=COMMON_PRACTICE,
    denies="no water in the sump",
    stage=Stage.OPENED,
    normal="none",
    background=HARDLY_EVER,
    also=(
        "water in the oil pan",
        "puddle of water in the sump",
        "coolant in the pan",
    ),
)
OIL_VALVE_FOUND_SHUT = Finding(
    id="oil_valve_found_shut",
    station=Station.SUCTION,
    says="a tap or valve in the oil line was found shut",
    asks="Tap or valve at oil tank, cooler or filter found shut?",
    source=COMMON_PRACTICE,
    denies="every tap and valve in the oil line is open",
    stage=Stage.OUTSIDE,
    normal="open",
    background=HARDLY_EVER,
    also=(
        "oil tank tap closed",
        "valve left closed",
        "oil tap off",
        "shut-off valve shut",
        "oil cock closed",
    ),
)
