"""Patterns of pressure that cannot both be right: one of the two was seen wrongly, or it changed."""

from knowledge.findings.pressure import (
    GOOD_COLD_LOW_HOT,
    LOW_AT_ALL_SPEEDS,
    LOW_EVEN_COLD,
    LOW_HOT_IDLE_GOOD_SPEED,
)
from knowledge.rulebook import Conclusions, Contradiction, Known, case_of, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.vocabulary import Station

rule = rules_of(Station.INSTRUMENT)

APART = (
    (GOOD_COLD_LOW_HOT, LOW_EVEN_COLD, "good and low with cold oil", GOOD_COLD_LOW_HOT),
    (LOW_AT_ALL_SPEEDS, LOW_HOT_IDLE_GOOD_SPEED, "low and good at speed", LOW_AT_ALL_SPEEDS),
)


@rule(
    source=COMMON_PRACTICE,
    catches=[
        case_of(GOOD_COLD_LOW_HOT, LOW_EVEN_COLD),
        case_of(LOW_AT_ALL_SPEEDS, LOW_HOT_IDLE_GOOD_SPEED),
    ],
    spares=[
        case_of(GOOD_COLD_LOW_HOT, lacks=[LOW_EVEN_COLD]),
        case_of(LOW_AT_ALL_SPEEDS, LOW_EVEN_COLD),
    ],
)
def two_patterns_at_once(known: Known) -> Conclusions:
    """The pressure cannot be one thing and its opposite in the same state of running: read again.

    Misleads when the fault changed between the two observations; then the dates tell.
    """
    for one, other, both, again in APART:
        if known.has(one) and known.has(other):
            yield Contradiction(
                (one, other),
                f"the pressure is told as {both}: look again, or say which came later",
                again,
            )
