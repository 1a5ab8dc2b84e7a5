"""What a rebuild left out or set wide, and the checks that show it."""

from knowledge.model import HARDLY_EVER, VERY_RARE, Finding, Stage, Station
from knowledge.sources import COMMON_PRACTICE
from knowledge.work import Access, Caution, Inspection

DRIVE_SHAFT_ABSENT = Finding(
    id="drive_shaft_absent",
    station=Station.ASSEMBLY,
    says="there is no drive shaft between the pump and what turns it",
    asks="Pump drive shaft missing altogether?",
    source=COMMON_PRACTICE,
    denies="the pump's drive shaft is there",
    stage=Stage.OPENED,
    normal="shaft in place, engaged at both ends",
    background=HARDLY_EVER,
    also=("forgot the oil pump shaft", "no intermediate shaft", "drive rod left out"),
)
LOOK_FOR_THE_DRIVE_SHAFT = Inspection(
    id="look_for_the_drive_shaft",
    station=Station.ASSEMBLY,
    says="distributor out: see and feel that the pump drive shaft is there and reaches the pump",
    steps=(
        "light down the hole: the end of the shaft must show",
        "turn it with a long tool: it must drag, not spin free; if there is no shaft, stop here",
    ),
    minutes=10,
    access=Access.DISTRIBUTOR_OUT,
    reveals=(DRIVE_SHAFT_ABSENT,),
    source=COMMON_PRACTICE,
    tools=("lamp", "long screwdriver"),
    keep="photograph rotor and distributor body before you lift them",
    also=("is the pump shaft in", "intermediate shaft in place"),
)
CRANK_PLUG_FOUND_MISSING = Finding(
    id="crank_plug_found_missing",
    station=Station.ASSEMBLY,
    says="a plug of the crank's oilways is missing or loose",
    asks="Plug of the crankshaft's oil drillings missing or loose?",
    source=COMMON_PRACTICE,
    denies="every plug of the crank's oilways is in and tight",
    stage=Stage.OPENED,
    normal="every drilling plugged and staked",
    background=HARDLY_EVER,
    also=("crank plug left out", "oil passage plug in crankshaft", "sludge trap plug missing"),
)
COUNT_THE_CRANK_PLUGS = Inspection(
    id="count_the_crank_plugs",
    station=Station.ASSEMBLY,
    says="count the plugs of the crank's oilways from below",
    steps=(
        "turn the crank by hand, look at every web and pin with a light",
        "compare with the drawing or the old crank; push each plug: it must not move",
    ),
    minutes=15,
    access=Access.SUMP_OFF,
    reveals=(CRANK_PLUG_FOUND_MISSING,),
    source=COMMON_PRACTICE,
    tools=("lamp", "mirror"),
    cautions=(Caution.HAND_TURN,),
    also=("crank oil plugs", "crankshaft drilling plugs"),
)
CLEARANCES_BUILT_WIDE = Finding(
    id="clearances_built_wide",
    station=Station.ASSEMBLY,
    says="the bearings were built with wide clearances",
    asks="Bearing clearances set wide at the rebuild?",
    source=COMMON_PRACTICE,
    denies="clearances were measured at the rebuild and within limits",
    stage=Stage.KNOWN,
    normal="measured and written down",
    background=VERY_RARE,
    also=("built loose", "race clearances", "loose bearings"),
)
