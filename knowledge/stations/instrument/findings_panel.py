"""Gauge line, idle speed and second instruments, and the checks that show them."""

from knowledge import sources
from knowledge.cautions import RUNNING
from knowledge.model import (
    EXCEPTIONAL,
    HARDLY_EVER,
    OCCASIONAL,
    VERY_RARE,
    Finding,
    Measure,
    Stage,
    Station,
)
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.pressure import quantities as pressure_quantities
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import findings, findings_sender, quantities
from knowledge.work import Access, Caution, Inspection

GAUGE_LINE_LEAKING = Finding(
    id="gauge_line_leaking",
    station=Station.INSTRUMENT,
    says="the gauge line or its union is chafed, cracked, burst or leaks",
    asks="Thin oil line to the gauge chafed, cracked, burst or leaking at a union?",
    source=COMMON_PRACTICE,
    denies="the gauge line is whole and dry",
    stage=Stage.OUTSIDE,
    normal="whole, dry, clipped",
    why="it carries full oil pressure past hot parts",
    background=HARDLY_EVER,
    also=(
        "burst capillary",
        "oil pipe to gauge broke",
        "copper line cracked",
        "plastic tube split",
    ),
)
OIL_BEHIND_PANEL = Finding(
    id="oil_behind_panel",
    station=Station.INSTRUMENT,
    says="oil shows behind the panel, in the cabin or under the gauge line",
    asks="Oil behind the panel, in the cabin, or on parts under the gauge line?",
    source=COMMON_PRACTICE,
    denies="dry behind the panel and along the line",
    stage=Stage.OUTSIDE,
    normal="dry",
    background=EXCEPTIONAL,
    also=("oil dripping on my feet", "oil behind the dash", "oil on the carpet", "oil under dash"),
)
GAUGE_LINE_KINKED = Finding(
    id="gauge_line_kinked",
    station=Station.INSTRUMENT,
    says="the gauge line is kinked, pinched or flattened",
    asks="Gauge line kinked, pinched or flattened anywhere?",
    source=COMMON_PRACTICE,
    denies="the gauge line runs in easy bends",
    stage=Stage.OUTSIDE,
    normal="easy bends, round bore",
    background=VERY_RARE,
    also=("kinked capillary", "pinched oil line", "crushed gauge pipe"),
)
FOLLOW_THE_GAUGE_LINE = Inspection(
    id="follow_the_gauge_line",
    station=Station.INSTRUMENT,
    says="follow the oil line from the engine to the gauge",
    steps=(
        "engine stopped and cool",
        "look and feel along the line for chafing, cracks, kinks and wet unions",
        "look behind the panel and on hot parts under the line",
    ),
    minutes=10,
    access=Access.OUTSIDE,
    reveals=(
        GAUGE_LINE_LEAKING,
        OIL_BEHIND_PANEL,
        GAUGE_LINE_KINKED,
        findings_sender.GAUGE_PORT_MOVED,
    ),
    source=COMMON_PRACTICE,
    tools=("lamp", "clean rag"),
    cautions=(Caution.HOT, Caution.FIRE),
    keep="photograph wet places before you wipe",
    also=("check capillary", "inspect oil gauge pipe", "oil behind the dash"),
)

RIGHT_IDLE_CURED_IT = Finding(
    id="right_idle_cured_it",
    station=Station.INSTRUMENT,
    says="with the idle set to the maker's speed the pressure was right",
    asks="Idle set to the maker's speed, hot: was the pressure right then?",
    source=sources.DIESEL_WORKSHOP_2015,
    denies="setting the idle right did not cure it",
    stage=Stage.OUTSIDE,
    normal="within limits at the maker's idle speed, hot",
    background=VERY_RARE,
    also=("raised the idle and it was fine", "set idle, pressure ok", "turned up the idle"),
)
TACHOMETER_WRONG = Finding(
    id="tachometer_wrong",
    station=Station.INSTRUMENT,
    says="the tachometer reads higher than the engine turns",
    asks="Compared with a trusted counter: does the tachometer read high?",
    source=COMMON_PRACTICE,
    denies="the tachometer agrees with a trusted counter",
    stage=Stage.OUTSIDE,
    normal="within about 50 rpm at idle",
    background=OCCASIONAL,
    also=("tach off", "rev counter wrong", "rpm reading wrong"),
)
IDLE_SPEED_COUNTED = Measure(
    quantity=pressure_quantities.IDLE_SPEED,
    station=Station.INSTRUMENT,
    asks="Hot idle speed, by a trusted counter?",
    source=sources.PRESSURE_TEST_MANUAL_2005,
    also=("idle rpm", "tick-over speed"),
)
COUNT_THE_IDLE_SPEED = Inspection(
    id="count_the_idle_speed",
    station=Station.INSTRUMENT,
    says="idle speed by a trusted counter, hot",
    steps=(
        "warm engine, loads off; measure the idle speed and compare the panel's tachometer",
        "set the idle to the maker's figure if it is slow and read the pressure again",
        "raise it to about 1200 rpm for a moment and watch the needle",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(
        direct_gauge.IDLE_BELOW_SPEC,
        TACHOMETER_WRONG,
        RIGHT_IDLE_CURED_IT,
        patterns_speed.RISES_JUST_OFF_IDLE,
        patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE,
    ),
    source=sources.PRESSURE_TEST_MANUAL_2005,
    measures=(IDLE_SPEED_COUNTED,),
    tools=("counter or strobe",),
    cautions=RUNNING,
    needs_running=True,
    also=("check idle rpm", "tachometer check", "set the idle"),
)

COMPARE_TWO_INSTRUMENTS = Inspection(
    id="compare_two_instruments",
    station=Station.INSTRUMENT,
    says="compare lamp and gauge, or two gauges",
    steps=(
        "check the lamp first: it must light with the key on",
        "start and note when the lamp goes out and what the gauge shows at that moment",
        "stop at ten seconds if neither shows pressure",
    ),
    minutes=5,
    access=Access.OUTSIDE,
    reveals=(patterns.SECOND_INSTRUMENT_DISAGREES, findings.LAMP_DEAD_WITH_KEY_ON),
    source=COMMON_PRACTICE,
    cautions=RUNNING,
    needs_running=True,
    also=("lamp against gauge", "second gauge", "cross-check"),
)

DECAY_TIME = Measure(
    quantity=quantities.DECAY_TIME,
    station=Station.INSTRUMENT,
    asks="Seconds for the needle to fall to zero after stopping?",
    source=COMMON_PRACTICE,
    also=("seconds to drop to zero", "shutdown decay"),
)
TIME_THE_SHUTDOWN = Inspection(
    id="time_the_shutdown",
    station=Station.INSTRUMENT,
    says="watch the needle fall after stopping",
    steps=("stop the engine with the key left on", "time the needle down to zero"),
    minutes=2,
    access=Access.OUTSIDE,
    reveals=(behaviour.SLOW_NEEDLE, findings.NEEDLE_OFF_ZERO_AT_REST),
    source=COMMON_PRACTICE,
    measures=(DECAY_TIME,),
    tools=("stopwatch",),
    cautions=RUNNING,
    needs_running=True,
    also=("shutdown decay", "how fast does it drop"),
)

GAUGED = (*RUNNING, Caution.PRESSURE)  #: a hose under pressure beside a running engine
