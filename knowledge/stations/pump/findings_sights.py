"""Further sights at the pump and its drive, and a check of the scavenge pump."""

from knowledge.engines import features
from knowledge.model import EXCEPTIONAL, HARDLY_EVER, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.work import Access, Caution, Inspection

GEAR_SLIPS_ON_SHAFT = Finding(
    id="gear_slips_on_shaft",
    station=Station.PUMP,
    says="a gear of the pump or of its drive turns on its shaft",
    asks="Does a gear of the pump or its drive slip on its own shaft?",
    source=COMMON_PRACTICE,
    denies="every gear is fast on its shaft",
    stage=Stage.OPENED,
    normal="pressed, keyed or pinned fast",
    background=HARDLY_EVER,
    also=(
        "gear turns on its shaft",
        "gear slipping on the shaft",
        "press fit of the gear lost",
        "drive gear spins on shaft",
    ),
)
DRIVE_FLATS_WORN = Finding(
    id="drive_flats_worn",
    station=Station.PUMP,
    says="the flats, key or splines that turn the pump are worn",
    asks="Flats, key or splines that turn the pump: worn or rounded?",
    source=COMMON_PRACTICE,
    denies="flats, key and splines are square",
    stage=Stage.OPENED,
    normal="square, close fit",
    background=EXCEPTIONAL,
    also=(
        "flats worn on crank",
        "rounded drive flats",
        "splines worn away",
        "key sheared partly",
        "worn crank snout flats",
    ),
)
SCAVENGE_PUMP_JAMMED = Finding(
    id="scavenge_pump_jammed",
    station=Station.PUMP,
    says="a scavenge pump is jammed, or does not turn",
    asks="A scavenge pump jammed, or not turning?",
    source=COMMON_PRACTICE,
    denies="the scavenge pumps turn freely",
    stage=Stage.OPENED,
    normal="turns by hand",
    background=HARDLY_EVER,
    also=(
        "scavenge pump seized",
        "scavenge stage locked up",
        "return pump jammed",
    ),
)
TURN_THE_SCAVENGE_PUMP = Inspection(
    id="turn_the_scavenge_pump",
    station=Station.PUMP,
    says="turn each scavenge stage by hand",
    steps=(
        "belt or drive off, turn each stage by hand",
        "look in the inlet and outlet for pieces",
    ),
    minutes=15,
    access=Access.PUMP_OFF,
    reveals=(SCAVENGE_PUMP_JAMMED,),
    only_with=(features.DRY_SUMP,),
    source=COMMON_PRACTICE,
    tools=("lamp",),
    cautions=(Caution.USED_OIL,),
    also=("scavenge pump turns freely",),
)
