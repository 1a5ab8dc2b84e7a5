"""Root causes at pumps of later engines: a control stuck in its low stage, a rotor that shatters."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.debris import findings as debris_findings
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.pump import findings_variable, findings_wear

PUMP_CONTROL_STUCK = Cause(
    id="pump_control_stuck",
    station=Station.PUMP,
    says="variable oil pump stuck in its low stage: control solenoid, its wiring, or the slide",
    mechanism="idle is right, but the pump never changes to full delivery: low at speed, steady",
    rate=Rate.VERY_RARE,
    shifts=Shifts(high_mileage=UP),
    remedy="read the fault codes, test solenoid and wiring, free the slide or renew the pump",
    source=sources.VARIABLE_PUMP_2021,
    follows="bearings short of oil at full load",
    also=("oil pump solenoid", "two stage oil pump stuck low", "oil pressure control solenoid"),
)
LOW_STAGE_AT_ANY_SPEED = LinkGroup(
    id="low_stage_at_any_speed",
    station=Station.PUMP,
    says="A variable pump stuck in its low stage is right at idle and low, but steady, at speed.",
    parent=PUMP_CONTROL_STUCK,
    effects={
        conditions.PRESSURE_LOW: (MOSTLY, idea_from(sources.VARIABLE_PUMP_2021)),
        patterns_speed.CAPPED_LOW: (OFTEN, idea_from(sources.VARIABLE_PUMP_2021)),
        patterns.FELL_SUDDENLY: (SELDOM, JUDGEMENT),
        findings_variable.PUMP_STAYS_LOW: (ALWAYS, sources.VARIABLE_PUMP_2021),
        findings_variable.PUMP_RISES_UNPLUGGED: (OFTEN, idea_from(sources.VARIABLE_PUMP_2021)),
    },
    matches=[
        example(findings_variable.PUMP_STAYS_LOW),
        example(patterns_speed.CAPPED_LOW, findings_variable.PUMP_STAYS_LOW),
        example(patterns_speed.CAPPED_LOW, findings_variable.PUMP_RISES_UNPLUGGED),
    ],
    non_matches=[
        example(patterns_speed.CAPPED_LOW, lacks=[findings_variable.PUMP_STAYS_LOW]),
        example(findings_variable.PUMP_STAYS_LOW, lacks=[findings_variable.PUMP_RISES_UNPLUGGED]),
    ],
)

PUMP_ROTOR_SHATTERED = Cause(
    id="pump_rotor_shattered",
    station=Station.PUMP,
    says="pump rotor or gear cracked by crank vibration, a bad damper or over-revving",
    mechanism="a sintered rotor on the crank breaks up: no pressure from one moment to the next",
    rate=Rate.VERY_RARE,
    shifts=Shifts(freshly_rebuilt=UP, raced_or_heeled=STRONG_UP),
    remedy="steel gears or a new pump, a sound crank damper at torque; find every piece",
    source=COMMON_PRACTICE,
    follows="bearings wiped at once, pieces in the oilways",
    also=("oil pump gears shattered", "gerotor cracked", "oil pump exploded"),
)
ROTOR_IN_PIECES = LinkGroup(
    id="rotor_in_pieces",
    station=Station.PUMP,
    says="A rotor that shatters leaves no pressure at once, steel chips and no jammed piece.",
    parent=PUMP_ROTOR_SHATTERED,
    effects={
        conditions.PUMP_NOT_TURNING: (OFTEN, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (MOSTLY, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (MOSTLY, COMMON_PRACTICE),
        findings_wear.PUMP_GEAR_BROKEN: (MOSTLY, COMMON_PRACTICE),
        debris_findings.MAGNETIC_METAL: (SOMETIMES, COMMON_PRACTICE),
        debris_findings.HARD_CHIPS: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.FELL_SUDDENLY, findings_wear.PUMP_GEAR_BROKEN),
        example(findings_wear.PUMP_GEAR_BROKEN),
    ],
    non_matches=[example(patterns.FELL_SUDDENLY, lacks=[findings_wear.PUMP_GEAR_BROKEN])],
)
