"""Rules at the relief valve: what follows from what is known."""

from knowledge import sources
from knowledge.model import Station
from knowledge.rule_api import Conclusions, Known, example, is_absent, rules_of
from knowledge.stations.relief import findings

rule = rules_of(Station.RELIEF)


@rule(
    source=sources.RELIEF_FREE_FALL,
    matches=[example(lacks=[findings.RELIEF_PLUNGER_STICKS])],
    non_matches=[example(findings.RELIEF_PLUNGER_STICKS)],
)
def plunger_that_drops_is_not_seized(known: Known) -> Conclusions:
    """A plunger that drops by its own weight was seized neither open nor shut.

    Misleads when the plunger was freed on the way out.
    """
    if known.lacks(findings.RELIEF_PLUNGER_STICKS):
        yield is_absent(findings.RELIEF_VALVE_STAYED_SHUT, sure=0.9)
