"""Links whose strength the circuit model gives.

Imported by files of links; reads the table ``pattern_strengths``, which a script writes.
"""

from collections.abc import Iterator

from knowledge.model import Condition, Finding
from knowledge.pressure.pattern_strengths import SHOWN
from knowledge.rule_api import Computed, Link
from knowledge.sources import CIRCUIT_MODEL


def computed_effects(condition: Condition, *findings: Finding) -> Iterator[Link]:
    """Yield a link to each of these patterns, as strong as the circuit model computes.

    >>> from knowledge.circuit.conditions import OIL_THIN
    >>> from knowledge.pressure.patterns_speed import GOOD_COLD_LOW_HOT
    >>> (link,) = computed_effects(OIL_THIN, GOOD_COLD_LOW_HOT)
    >>> link.strength.value > 0.5
    True

    Raises KeyError for a pair that was not computed.
    """
    for finding in findings:
        strength = Computed(SHOWN[condition.id, finding.id])
        yield Link(condition, finding, strength, CIRCUIT_MODEL)
