"""Words that set what is against what was: "it was fine until today, now it is low"."""

from __future__ import annotations


def _set(words: str) -> frozenset[str]:
    return frozenset(words.split())


#: what a pressure is now
LOWS = _set("low lower poor weak down")
#: say that it is so now
NOW = _set("now today lately nowadays recently currently")
#: all else that a clause may say beside "low": "and now it is always too low"
BESIDE_LOW_NOW = NOW | _set(
    "it its is was reads reading runs running sits gone and but so yet always very too quite far way a bit rather really "
    "still all the time just only right even so much stays has been gotten got"
)
#: before or in "fine": it was so
WAS = _set("was were used always had been ran showed read stayed held")
#: between "now" and a pressure
BESIDE_NOW = _set("now its it is at about only just around down to")
