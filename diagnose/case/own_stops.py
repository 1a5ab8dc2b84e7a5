"""Stop limits of an engine whose own manual allows less than the rule of thumb would stop it at."""

from __future__ import annotations

from collections.abc import Mapping

from knowledge.limits import Figure, Limit
from knowledge.pressure import quantities

#: the least pressure a manual allows, and the stop it stands above as a rule
_STOPS = (
    (quantities.HOT_IDLE_PRESSURE, quantities.STOP_IDLE_PRESSURE),
    (quantities.HOT_RUNNING_PRESSURE, quantities.STOP_RUNNING_PRESSURE),
)


def with_own_stops(
    own: Mapping[Limit, float], of_layout: Mapping[Limit, Figure]
) -> dict[Limit, float]:
    """The engine's own limits, SI; what its manual allows is never stopped at.

    A manual that calls 5 psi enough gives the stop as well, unless it names one.
    """
    found = dict(own)
    for least, stop in _STOPS:
        allowed = own.get(least)
        usual = of_layout[stop].value if stop in of_layout else stop.typical
        if allowed is not None and stop not in own and usual is not None and allowed < usual:
            found[stop] = allowed
    return found
