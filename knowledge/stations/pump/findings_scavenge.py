"""The scavenge side of a dry sump from outside: air it takes, a tank that foams; a check of its hoses."""

from knowledge.engines import features
from knowledge.model import RARE, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.work import Access, Caution, Inspection

SCAVENGE_SIDE_TAKES_AIR = Finding(
    id="scavenge_side_takes_air",
    station=Station.PUMP,
    says="the scavenge side takes air: hose cracked or soft, union or pickup seal loose",
    asks="Dry sump: scavenge hose cracked, soft or chafed, or its union or seal loose?",
    source=COMMON_PRACTICE,
    denies="scavenge hoses and unions are whole and tight",
    stage=Stage.OUTSIDE,
    normal="hoses whole and stiff, unions tight, no bubbles of soap drawn in",
    background=VERY_RARE,
    also=(
        "scavenge hose cracked",
        "scavenge pump sucks air",
        "scavenge line takes air",
        "return hose cracked at the fitting",
    ),
)
TANK_FOAMS = Finding(
    id="tank_foams",
    station=Station.PUMP,
    says="the oil in the tank foams, or comes out at the tank's breather",
    asks="Dry sump: after a run, does the oil in the tank foam or come out at its breather?",
    source=COMMON_PRACTICE,
    denies="the oil in the tank stays clear of foam",
    normal="some bubbles on top that go in a minute",
    why="a scavenge side that takes air, a full crankcase or too much oil whips the tank to foam",
    background=RARE,
    also=(
        "tank full of foam",
        "oil tank foaming",
        "tank breather pukes oil",
        "catch tank fills with oil",
        "milkshake in the oil tank",
    ),
)
LOOK_AT_THE_SCAVENGE_HOSES = Inspection(
    id="look_at_the_scavenge_hoses",
    station=Station.PUMP,
    says="dry sump: scavenge hoses, unions and pickup seals",
    steps=(
        "bend each hose at its ends and look for cracks, soft and chafed places",
        "try each union and clip for tightness; soap on the joints, each stage turned: bubbles go in",
        "turn the belt by hand: every stage must pull at its inlet",
    ),
    minutes=15,
    access=Access.OUTSIDE,
    reveals=(SCAVENGE_SIDE_TAKES_AIR,),
    only_with=(features.DRY_SUMP,),
    source=COMMON_PRACTICE,
    tools=("lamp", "spanners", "soap water"),
    cautions=(Caution.HOT, Caution.HAND_TURN, Caution.PRESSURE),
    also=("scavenge hoses", "dry sump hoses"),
)
