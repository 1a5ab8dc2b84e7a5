"""Short forms and words written apart, made what they stand for, of the same length; for ``text`` alone."""

from __future__ import annotations

import re

#: "No. 2", "no 4 main" end no sentence and deny nothing
_NUMBERED = re.compile(
    r"\b[Nn]o(?:\. ?(?=\d)| (?=\d{1,2} (?!psi|bar|lbs?\b|pounds|kpa|rpm|miles|min|sec|hours|days|degrees|thou|mm)[a-z]))"
)
#: a short form whose point ends no sentence: "mech. gauge", "approx. 20 psi"
_SHORTENED = re.compile(
    r"\b(mech|approx|eng|cyl|incl|elec|press|temp|op|min|max)\.(?= (?:[a-z]|\d))", re.I
)
#: "at tick over", no lifters that "tick over 3000 rpm"
_TICKOVER = re.compile(
    r"\b((?:at|on|hot|cold|the|of|fast|slow|normal|psi|bar|lbs?|pounds|\d+) )tick(?: |-)over\b"
    r"(?! (?:about |around )?\d{4})",
    re.I,
)


def written_out(text: str) -> str:
    """The text with short forms written out, each character in its place.

    >>> written_out("No. 4 main, mech. gauge 15 at tick over")
    'nr  4 main, mech  gauge 15 at tickover '
    """
    text = _NUMBERED.sub(lambda m: "nr" + " " * (len(m[0]) - 2), text)
    text = _SHORTENED.sub(lambda m: m[1] + " ", text)
    return _TICKOVER.sub(lambda m: m[1] + "tickover ", text)
