"""Tests with a direct gauge, and the checks that show them."""

from knowledge import sources
from knowledge.model import EXCEPTIONAL, RARE, VERY_RARE, Finding, Measure, Stage, Station
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.instrument import findings_panel, quantities
from knowledge.work import Access, Caution, Inspection

PANEL_READS_TOO_LOW = Finding(
    id="panel_reads_too_low",
    station=Station.INSTRUMENT,
    says="the panel reads well below a trusted gauge",
    asks="Panel gauge well below a trusted gauge?",
    source=sources.GAUGE_MAKER_SENDERS,
    denies="the panel does not read below a trusted gauge",
    stage=Stage.OUTSIDE,
    normal="within about 5 psi at mid-scale",
    background=VERY_RARE,
    also=(
        "dash gauge reads 20 psi low",
        "mechanical gauge reads higher",
        "panel under-reads",
    ),
)
PANEL_OFF_BY_CONSTANT = Finding(
    id="panel_off_by_constant",
    station=Station.INSTRUMENT,
    says="the panel is off a trusted gauge by the same amount everywhere",
    asks="Panel off a trusted gauge by the same amount at all speeds?",
    source=idea_from(sources.GAUGE_MAKER_SENDERS),
    denies="no constant difference from a trusted gauge",
    stage=Stage.OUTSIDE,
    normal="within about 5 psi at mid-scale",
    background=RARE,
    also=("always 10 psi out", "constant offset", "reads 15 low all the time"),
)
PANEL_HALF_OR_DOUBLE = Finding(
    id="panel_half_or_double",
    station=Station.INSTRUMENT,
    says="the panel reads a fixed share, about half or double, of a trusted gauge",
    asks="Panel at a fixed share, about half or double, of a trusted gauge?",
    source=sources.GAUGE_MAKER_SENDERS,
    denies="the panel's scale agrees with a trusted gauge",
    stage=Stage.OUTSIDE,
    normal="within about 5 psi at mid-scale",
    background=EXCEPTIONAL,
    also=("reads half", "reads double", "half the real pressure"),
)
PANEL_READS_TOO_HIGH = Finding(
    id="panel_reads_too_high",
    station=Station.INSTRUMENT,
    says="the panel reads well above a trusted gauge",
    asks="Panel gauge well above a trusted gauge on the engine?",
    source=sources.GAUGE_MAKER_SENDERS,
    denies="the panel does not read high",
    stage=Stage.OUTSIDE,
    normal="within about 5 psi at mid-scale",
    why="a panel gauge that reads high hides a real fall",
    background=RARE,
    also=("dash says more than real gauge", "panel optimistic", "gauge lies high"),
)
FIT_A_DIRECT_GAUGE = Inspection(
    id="fit_a_direct_gauge",
    station=Station.INSTRUMENT,
    says="read the pressure on a trusted gauge screwed into the engine",
    steps=(
        "engine stopped; fit gauge, rated hose and snubber at the sender's port",
        "route the hose clear of fan, belts and exhaust, and tie it down",
        "if the panel showed too little: crank it with ignition or fuel off until the gauge moves",
        "start and look for leaks; stop at ten seconds if it shows nothing",
        (
            "read cold idle, hot idle, 2000 and 3000 rpm; note the oil temperature and the panel's "
            "reading each time"
        ),
    ),
    minutes=25,
    access=Access.GAUGE_PORT,
    reveals=(
        direct_gauge.DIRECT_GAUGE_LOW,
        direct_gauge.DIRECT_GAUGE_HIGH,
        direct_gauge.DIRECT_GAUGE_ZERO,
        direct_gauge.PRESSURE_SHOWN_SINCE,
        direct_gauge.DIRECT_GAUGE_UNSTEADY,
        patterns.SECOND_INSTRUMENT_DISAGREES,
        PANEL_OFF_BY_CONSTANT,
        PANEL_HALF_OR_DOUBLE,
        PANEL_READS_TOO_LOW,
        PANEL_READS_TOO_HIGH,
        patterns.GAUGE_READS_LOW,
        patterns.GAUGE_READS_ZERO,
        patterns.GAUGE_READS_HIGH,
        patterns.LAMP_COMES_ON,
        patterns.NEEDLE_FLICKERS,
        patterns_speed.FLICKERS_ONLY_AT_SPEED,
        patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE,
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
        patterns_speed.RISES_JUST_OFF_IDLE,
        patterns_speed.LOW_AT_ALL_SPEEDS,
        patterns_speed.LOW_EVEN_COLD,
        patterns_speed.FALLS_AS_REVS_RISE,
        patterns_speed.CAPPED_LOW,
        patterns_speed.NEVER_REACHES_SETTING_COLD,
        patterns_speed.CLIMBS_PAST_SETTING,
    ),
    source=sources.MARINE_SERVICE_MANUAL_1999,
    tools=("0 to 100 psi gauge", "adapter", "oil-rated hose", "snubber"),
    cautions=(*findings_panel.GAUGED, Caution.FIRE),
    destroys="how sender and plug sat",
    keep="photograph sender, thread and plug first",
    needs_running=True,
    takes_readings=True,
    also=("mechanical gauge", "master gauge", "pressure test", "screw in a gauge"),
)

TEST_GAUGE_DOUBTFUL = Finding(
    id="test_gauge_doubtful",
    station=Station.INSTRUMENT,
    says="the test gauge itself disagrees with a second one",
    asks="Same port: does the test gauge disagree with a second good gauge?",
    source=COMMON_PRACTICE,
    denies="two test gauges agree",
    stage=Stage.OUTSIDE,
    normal="within 2 or 3 psi",
    background=RARE,
    also=("test gauge is off", "two test gauges differ"),
)
PROVE_THE_TEST_GAUGE = Inspection(
    id="prove_the_test_gauge",
    station=Station.INSTRUMENT,
    says="try a second good gauge on the same port",
    steps=(
        "engine stopped; change the gauge, leave port and hose",
        "read at the same speed and temperature",
    ),
    minutes=10,
    access=Access.GAUGE_PORT,
    reveals=(TEST_GAUGE_DOUBTFUL, direct_gauge.DIRECT_GAUGE_LOW, direct_gauge.DIRECT_GAUGE_ZERO),
    source=COMMON_PRACTICE,
    tools=("second gauge",),
    cautions=findings_panel.GAUGED,
    needs_running=True,
    also=("check the gauge", "second opinion", "swap gauges"),
)

READ_TWO_PORTS = Inspection(
    id="read_two_ports",
    station=Station.INSTRUMENT,
    says="read two trusted gauges, at the pump outlet and in the gallery",
    steps=(
        "fit one gauge at the pump outlet or filter head and one in the main gallery",
        "read both at idle, 2000 and 3000 rpm",
        "swap the gauges and read again",
    ),
    minutes=25,
    access=Access.GAUGE_PORT,
    reveals=(
        direct_gauge.PORTS_DIFFER,
        direct_gauge.PUMP_PORT_LOW,
        direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY,
    ),
    source=idea_from(sources.ARMY_TM_272_TABLE),
    tools=("two gauges", "adapters", "oil-rated hoses"),
    cautions=findings_panel.GAUGED,
    needs_running=True,
    takes_readings=True,
    also=("second port", "pump against gallery", "before and after filter"),
)

LOG_PRESSURE_AND_HEAT = Inspection(
    id="log_pressure_and_heat",
    station=Station.INSTRUMENT,
    says="write down pressure and oil temperature from cold to hot",
    steps=(
        "from a cold start, note speed, oil temperature and pressure every two minutes",
        "at each step read idle and 2000 rpm; go on until the oil is fully hot",
        "plot pressure against oil temperature; stop at the maker's limit",
    ),
    minutes=40,
    access=Access.GAUGE_PORT,
    reveals=(
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
        patterns_speed.GOOD_COLD_LOW_HOT,
        patterns_speed.LOW_AT_ALL_SPEEDS,
        patterns_speed.LOW_EVEN_COLD,
        patterns_speed.FALLS_AS_REVS_RISE,
        patterns_speed.CAPPED_LOW,
        patterns_speed.NEVER_REACHES_SETTING_COLD,
        patterns_speed.CLIMBS_PAST_SETTING,
        patterns.SANK_WHILE_RUNNING,
        behaviour.SAGS_AS_OIL_HEATS,
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST,
    ),
    source=COMMON_PRACTICE,
    tools=("trusted gauge", "oil thermometer", "counter", "paper"),
    cautions=findings_panel.GAUGED,
    keep="do not change the oil until you have this baseline and an oil sample",
    needs_running=True,
    takes_readings=True,
    also=("warm-up log", "pressure chart", "cold and hot readings"),
)

REPEAT_THE_MANOEUVRE = Inspection(
    id="repeat_the_manoeuvre",
    station=Station.INSTRUMENT,
    says="repeat the bend, slope, braking or heel and watch the gauge",
    steps=(
        "safe, closed ground or open water; a second person watches the gauge",
        "note direction, duration, speed and oil level each time",
        "stop at once if the pressure falls below the limit",
    ),
    minutes=30,
    access=Access.GAUGE_PORT,
    reveals=(behaviour.FALLS_IN_A_MANOEUVRE, patterns.NEEDLE_FLICKERS),
    source=COMMON_PRACTICE,
    tools=("gauge with tell-tale", "a helper"),
    cautions=findings_panel.GAUGED,
    needs_running=True,
    takes_readings=True,
    also=("corner test", "slope test", "tilt test", "brake test"),
)

BUILD_UP_TIME = Measure(
    quantity=quantities.BUILD_UP_TIME,
    station=Station.INSTRUMENT,
    asks="Seconds from the start until pressure shows?",
    source=COMMON_PRACTICE,
    also=("seconds to build pressure", "delay at start"),
)
TIME_THE_START = Inspection(
    id="time_the_start",
    station=Station.INSTRUMENT,
    says="time the pressure from the start, cold",
    steps=(
        "after standing at least twelve hours, start and time the first pressure",
        "stop at ten seconds if there is none",
        "repeat warm and compare",
    ),
    minutes=5,
    access=Access.GAUGE_PORT,
    reveals=(behaviour.SLOW_AFTER_STANDING, behaviour.TEN_SECONDS_OR_MORE),
    source=COMMON_PRACTICE,
    measures=(BUILD_UP_TIME,),
    tools=("stopwatch", "trusted gauge"),
    cautions=findings_panel.GAUGED,
    needs_running=True,
    waits_minutes=720,
    also=("start delay", "cold start test", "how long to build"),
)
