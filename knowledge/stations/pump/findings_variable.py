"""Whether a variable pump changes to full delivery, and the check that shows it."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.engines import features_build
from knowledge.model import HARDLY_EVER, VERY_RARE, Finding, Stage, Station
from knowledge.sources import idea_from
from knowledge.work import Access, Inspection

PUMP_STAYS_LOW = Finding(
    id="pump_stays_low",
    station=Station.PUMP,
    says="the variable oil pump does not change to its high stage",
    asks="Variable oil pump: does pressure stay low with its control solenoid unplugged?",
    source=sources.VARIABLE_PUMP_2021,
    denies="the variable pump changes to its high stage",
    stage=Stage.OUTSIDE,
    normal="one maker: 12 to 23 psi at idle, 45 to 57 psi above 2800 rpm, solenoid off",
    why="unplugged, most of these pumps deliver in full: no rise means solenoid, wiring or slide",
    background=HARDLY_EVER,
    also=("oil pump stuck in low mode", "pump does not switch to high pressure"),
)
PUMP_RISES_UNPLUGGED = Finding(
    id="pump_rises_unplugged",
    station=Station.PUMP,
    says="with its control solenoid unplugged, the variable pump's pressure jumps up",
    asks="Variable oil pump: does pressure jump up as its control solenoid is unplugged?",
    source=idea_from(sources.VARIABLE_PUMP_2021),
    denies="unplugging the pump's control solenoid changes nothing",
    stage=Stage.OUTSIDE,
    normal="the high stage from about 2800 rpm on, plugged in or not",
    why="low at speed until it is unplugged: solenoid or its control holds the low stage",
    background=VERY_RARE,
    also=("pressure comes up with the pump solenoid unplugged",),
)
UNPLUG_THE_PUMP_CONTROL = Inspection(
    id="unplug_the_pump_control",
    station=Station.PUMP,
    says="unplug the variable pump's control solenoid and watch the gauge",
    steps=(
        "read the fault codes first, and what the maker says the pump does when unplugged",
        "trusted gauge on, engine warm: note the pressure at idle and at 3000 rpm",
        "solenoid unplugged: it should rise to the high stage; stop if it falls",
    ),
    minutes=20,
    access=Access.OUTSIDE,
    reveals=(PUMP_STAYS_LOW, PUMP_RISES_UNPLUGGED),
    source=sources.VARIABLE_PUMP_2021,
    tools=("trusted gauge", "scan tool"),
    cautions=RUNNING,
    needs_running=True,
    only_with=(features_build.VARIABLE_PUMP,),
    also=("oil pump solenoid test",),
)
