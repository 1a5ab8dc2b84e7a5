"""How to look at the relief valve."""

from knowledge.cautions import RUNNING
from knowledge.findings.relief import (
    DEBRIS_ON_RELIEF_SEAT,
    RELIEF_ADJUSTER_NO_EFFECT,
    RELIEF_BENCH_OPENS_HIGH,
    RELIEF_BENCH_OPENS_LOW,
    RELIEF_CAP_LOOSE_OR_LEAKING,
    RELIEF_FOUND_STUCK,
    RELIEF_PART_ABSENT,
    RELIEF_PARTS_NOT_STANDARD,
    RELIEF_PLUNGER_STICKS,
    RELIEF_RETURN_BLOCKED,
    RELIEF_SEAT_SCORED,
    RELIEF_SPRING_LENGTH,
    RELIEF_SPRING_SHORT_OR_BROKEN,
    RELIEF_VALVE_STAYED_OPEN,
    RELIEF_VALVE_STAYED_SHUT,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import FBE, HB19, OLD, RVF
from knowledge.vocabulary import Access, Caution, Inspection, Station

PULL_THE_RELIEF_VALVE = Inspection(
    "pull_the_relief_valve",
    Station.RELIEF,
    "take the relief valve out and look before wiping",
    (
        "wear eye protection, cover the cap with a cloth, hold it with a deep socket and let the "
        "spring out slowly",
        "note whether the plunger follows its spring",
        "photograph seat, ball or plunger and order of parts before anything is moved",
        "catch debris on a magnet and a white tray, bag and label it",
    ),
    15,
    Access.RELIEF_CAP_OFF,
    (
        DEBRIS_ON_RELIEF_SEAT,
        RELIEF_FOUND_STUCK,
        RELIEF_VALVE_STAYED_OPEN,
        RELIEF_VALVE_STAYED_SHUT,
        RELIEF_PART_ABSENT,
        RELIEF_PARTS_NOT_STANDARD,
    ),
    FBE,
    tools=("deep socket", "magnet", "camera", "white tray", "bags"),
    cautions=(Caution.SPRING, Caution.EYES, Caution.HOT),
    destroys="the position of plunger and debris: first removal loses it",
    keep="photograph the valve where it stands, note which way it moved",
    also=("check relief valve", "pressure relief", "bypass spring"),
)
DROP_TEST_THE_PLUNGER = Inspection(
    "drop_test_the_plunger",
    Station.RELIEF,
    "drop test of the relief plunger",
    ("oil the plunger", "let it fall through its bore; it must slide the whole way"),
    5,
    Access.RELIEF_CAP_OFF,
    (RELIEF_PLUNGER_STICKS,),
    RVF,
    tools=("clean oil",),
)
LOOK_AT_RELIEF_SEAT = Inspection(
    "look_at_relief_seat",
    Station.RELIEF,
    "look at relief bore, seat and return",
    (
        "light and magnifier on bore and seat",
        "feel for burrs; never hone an aluminium bore",
        "blow through the return passage",
    ),
    5,
    Access.RELIEF_CAP_OFF,
    (RELIEF_SEAT_SCORED, RELIEF_RETURN_BLOCKED),
    CP,
    tools=("lamp", "magnifier"),
    cautions=(
        Caution.EYES,
        Caution.PRESSURE,
    ),
)
MEASURE_RELIEF_SPRING = Inspection(
    "measure_relief_spring",
    Station.RELIEF,
    "free length and load of the relief spring",
    ("measure the free length", "compare length and load with the manual; never stretch a spring"),
    10,
    Access.RELIEF_CAP_OFF,
    (RELIEF_SPRING_SHORT_OR_BROKEN, RELIEF_PARTS_NOT_STANDARD),
    CP,
    measures=(RELIEF_SPRING_LENGTH,),
    tools=("caliper", "spring scale"),
    cautions=(
        Caution.SPRING,
        Caution.EYES,
    ),
)
FEEL_THE_RELIEF_CAP = Inspection(
    "feel_the_relief_cap",
    Station.RELIEF,
    "relief cap: tight, locked, dry",
    (
        "engine stopped and cool",
        "look for oil at cap, pin and washer",
        "check it has not slackened",
    ),
    5,
    Access.OUTSIDE,
    (RELIEF_CAP_LOOSE_OR_LEAKING,),
    OLD,
    tools=("lamp", "socket"),
    cautions=(Caution.HOT, Caution.SPRING),
)
TURN_THE_RELIEF_ADJUSTER = Inspection(
    "turn_the_relief_adjuster",
    Station.RELIEF,
    "turn the relief adjuster a little and watch the gauge",
    ("count the turns and note where it stood", "stop the engine to turn it", "set it back"),
    15,
    Access.GAUGE_PORT,
    (RELIEF_ADJUSTER_NO_EFFECT,),
    CP,
    tools=("spanner", "trusted gauge"),
    cautions=(*RUNNING, Caution.SPRING),
    keep="write down where the adjuster stood",
    needs_running=True,
)
BENCH_TEST_RELIEF = Inspection(
    "bench_test_relief",
    Station.RELIEF,
    "opening pressure of the valve on the bench",
    ("hand pump and gauge on the pump outlet", "raise slowly until it lifts; say which oil"),
    20,
    Access.PUMP_RELIEF_OUT,
    (RELIEF_BENCH_OPENS_LOW, RELIEF_BENCH_OPENS_HIGH),
    HB19,
    tools=("hand pump", "gauge", "adapter"),
    cautions=(Caution.PRESSURE, Caution.EYES),
)
