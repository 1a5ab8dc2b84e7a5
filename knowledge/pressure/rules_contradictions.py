"""Patterns of pressure that cannot both be right."""

from knowledge.alarm import Contradiction
from knowledge.model import Station
from knowledge.pressure import direct_gauge, patterns_speed
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE

rule = rules_of(Station.INSTRUMENT)


APART = (
    (
        patterns_speed.GOOD_COLD_LOW_HOT,
        patterns_speed.LOW_EVEN_COLD,
        "good and low with cold oil",
        patterns_speed.GOOD_COLD_LOW_HOT,
    ),
    (
        patterns_speed.LOW_AT_ALL_SPEEDS,
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
        "low and good at speed",
        patterns_speed.LOW_AT_ALL_SPEEDS,
    ),
    (
        direct_gauge.PUMP_PORT_LOW,
        direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY,
        "low and good at the pump outlet",
        direct_gauge.PUMP_PORT_LOW,
    ),
)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(patterns_speed.GOOD_COLD_LOW_HOT, patterns_speed.LOW_EVEN_COLD),
        example(patterns_speed.LOW_AT_ALL_SPEEDS, patterns_speed.LOW_HOT_IDLE_GOOD_SPEED),
        example(direct_gauge.PUMP_PORT_LOW, direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY),
    ],
    non_matches=[
        example(direct_gauge.PUMP_PORT_LOW, direct_gauge.DIRECT_GAUGE_LOW),
        example(patterns_speed.GOOD_COLD_LOW_HOT, lacks=[patterns_speed.LOW_EVEN_COLD]),
        example(patterns_speed.LOW_AT_ALL_SPEEDS, patterns_speed.LOW_EVEN_COLD),
    ],
)
def two_patterns_at_once(known: Known) -> Conclusions:
    """The pressure cannot be one thing and its opposite in the same running state: read again.

    Misleads when the fault changed between the two observations; then the dates tell.
    """
    for one, other, both, again in APART:
        if known.has(one) and known.has(other):
            yield Contradiction(
                (one, other),
                f"the pressure is recorded as {both}: check again, or note which came later",
                again,
            )
