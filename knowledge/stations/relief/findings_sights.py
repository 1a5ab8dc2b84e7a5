"""Further sights at the relief valve."""

from knowledge.model import EXCEPTIONAL, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE

RELIEF_PISTON_LOOSE = Finding(
    id="relief_piston_loose",
    station=Station.RELIEF,
    says="the relief plunger is loose in its bore",
    asks="Does the relief plunger rock or rattle in its bore?",
    source=COMMON_PRACTICE,
    denies="the relief plunger fits its bore",
    stage=Stage.OPENED,
    normal="a close sliding fit",
    background=EXCEPTIONAL,
    also=(
        "relief piston sloppy",
        "relief valve loose in bore",
        "worn relief plunger",
        "plunger rattles in its bore",
    ),
)
