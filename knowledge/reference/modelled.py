"""Links whose strength is computed from the circuit model, not judged.

Imported by rules; reads the table ``pattern_strengths``, which a script writes.
"""

from collections.abc import Iterator

from knowledge.reference.pattern_strengths import SHOWN
from knowledge.rulebook import Computed, Link, leads_to
from knowledge.sources import CIRCUIT_MODEL
from knowledge.vocabulary import Condition, Finding


def shown_by_the_model(condition: Condition, *findings: Finding) -> Iterator[Link]:
    """The condition shows each of these patterns as often as the circuit model says.

    >>> from knowledge.conditions import OIL_THIN
    >>> from knowledge.findings.pressure import GOOD_COLD_LOW_HOT
    >>> (link,) = shown_by_the_model(OIL_THIN, GOOD_COLD_LOW_HOT)
    >>> link.strength.value > 0.5
    True

    Raises KeyError for a pair the model was not asked about.
    """
    for finding in findings:
        strength = Computed(SHOWN[condition.id, finding.id], CIRCUIT_MODEL)
        yield leads_to(condition, finding, strength)
