"""Root cause of a shut tap in the oil's way, and what it leads to."""

from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, course, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.suction import findings, findings_sights

OIL_TAP_SHUT = Cause(
    id="oil_tap_shut",
    station=Station.SUCTION,
    says="a tap or valve in the oil line was left shut",
    mechanism=(
        "no oil reaches the pump, or none passes cooler or filter: no pressure from the first turn"
    ),
    rate=Rate.RARE,
    shifts=Shifts(freshly_rebuilt=STRONG_UP, oil_just_changed=STRONG_UP, stood_long=STRONG_UP),
    remedy="open it, prime the pump, and wire it open or interlock it with the ignition",
    source=COMMON_PRACTICE,
    follows="bearings and cams run dry within seconds of the start",
    also=("oil tap left closed", "oil tank valve off", "forgot to open the oil valve"),
)
TAP_THAT_WAS_NOT_OPENED = LinkGroup(
    id="tap_that_was_not_opened",
    station=Station.SUCTION,
    says="With a tap shut there is no pressure from the start, and the oil tank stays full.",
    parent=OIL_TAP_SHUT,
    effects={
        conditions.PRESSURE_GONE: (MOSTLY, COMMON_PRACTICE),
        conditions.SUCTION_THROTTLED: (SOMETIMES, JUDGEMENT),
        behaviour.NONE_FROM_FIRST_START: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (SOMETIMES, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (SELDOM, JUDGEMENT),
        course.PRESSURE_LOST: (SOMETIMES, JUDGEMENT),
        findings.TANK_STILL_FULL: (MOSTLY, COMMON_PRACTICE),
        findings_sights.OIL_VALVE_FOUND_SHUT: (ALWAYS, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.NONE_FROM_FIRST_START, findings.TANK_STILL_FULL),
        example(findings_sights.OIL_VALVE_FOUND_SHUT),
    ],
    non_matches=[example(lacks=[findings_sights.OIL_VALVE_FOUND_SHUT])],
)
