"""Words beside a number that say whether it is a pressure, and how it is meant."""

from __future__ import annotations


def _set(text: str) -> frozenset[str]:
    return frozenset(text.split())


#: before a pressure: nearly so
ABOUT = _set("about around roughly approximately approx near nearly maybe like")
#: before a pressure: it is more
OVER = _set("over above past more")
#: before a pressure: it is less
UNDER = _set("below under less")
#: after a number: it is a difference
MORE = _set(
    "low high short out off more less lower higher drop difference loss either increase apart range switch sender"
)
#: shortly before a number: it is a difference
BY = _set("loss difference differ differs lost gained within drop")
#: before "to" or "at" and a number: what a needle does
MOVES = _set(
    "drops drop dropped falls fell falling starts started sits stays goes went gets down up "
    "only just used"
)
#: turns "above" into a bound
NEVER = _set("never not wont doesnt cant dont no")
#: beside a pressure: it goes no higher
MOST = _set("max maximum most tops")
#: after a number: it counts something else
COUNTS = _set(
    "cylinder cylinders cyl liter litre times time ohm ohms gear gears th st nd rd amp volts "
    "volt degrees hp main mains rod rods bearing bearings quart quarts owners engines engine "
    "gauges senders filters pumps v valve valves inch mm plugs bolts percent more different "
    "new weight pot stroke ton speed or deg cc ci cu others"
)
#: before a number: it is a name or a count
NAMES = _set(
    "number no model mark mk type series part bearing rod main cylinder of the "
    "a page grade aged age sae since year in by gear"
)
