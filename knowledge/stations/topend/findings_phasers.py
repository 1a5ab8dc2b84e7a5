"""Cam phasers and their oil control valves, and the check that shows them leaking."""

from knowledge.model import EXCEPTIONAL, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.work import Access, Inspection

PHASER_LEAKS = Finding(
    id="phaser_leaks",
    station=Station.TOPEND,
    says="a cam phaser rattles by hand, or it or its valve lets oil past",
    asks="Cam phaser rocking by hand, or oil running past it or its control valve?",
    source=COMMON_PRACTICE,
    denies="the cam phasers are tight and locked at rest",
    stage=Stage.OPENED,
    normal="locked at rest, no play, at most a drip",
    background=EXCEPTIONAL,
    also=("bad cam phaser", "vct phaser loose", "vvt actuator leaks", "phaser play"),
)
ROCK_THE_PHASERS = Inspection(
    id="rock_the_phasers",
    station=Station.TOPEND,
    says="covers off: rock each cam phaser by hand and look at its oil valve",
    steps=(
        "engine stopped: hold the cam, try to turn the phaser against it: no play, no click",
        (
            "take its oil valve out: screens whole, spool free, no scores; a bad one lets oil pour "
            "past"
        ),
    ),
    minutes=30,
    access=Access.VALVE_COVER_OFF,
    reveals=(PHASER_LEAKS,),
    source=COMMON_PRACTICE,
    tools=("lamp", "spanner for the cam"),
    also=("check the phasers", "vvt solenoid check"),
)
