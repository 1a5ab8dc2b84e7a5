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
#: "oil pressure" in two letters
_OIL_PRESSURE = frozenset(["op", "o/p"])
#: behind "OP" where that is who began a thread
_PERSON_SAYS = re.compile(
    r"[ \t]*(?:said|says|wrote|posted|asked|asks|mentioned|needs|should|never|did|does)\b", re.I
)
#: "at tick over", no lifters that "tick over 3000 rpm"
_TICKOVER = re.compile(
    r"\b((?:at|on|hot|cold|the|of|fast|slow|normal|psi|bar|lbs?|pounds|\d+) )tick(?: |-)over\b"
    r"(?! (?:about |around )?\d{4})",
    re.I,
)
#: "two-stroke", "2-stage": the number is no hyphenated word's
_SO_MANY = re.compile(r"\b(two|2|four|4|three|3)-(?=strokes?\b|stage\b|cycle\b|rotors?\b)", re.I)
#: who wrote a passage of a thread: "> by dave_66:", "turbo_nut wrote:", "thanks @diesel_dan"
_WROTE = re.compile(
    r"^[>\s]*(?:by|(?:posted|written|post|quote) (?:by|from)):? "
    r"(?!(?:the|a|an|my|our|his|her|hand|ear|eye|feel|drill|starter|itself|myself|mistake|design)\b)"
    r"[^\s:,]+(?: [^\s:,]+)?(?:\s*[:»]|,? on [a-z]{3,9},? \d[\d ,:]*(?:am|pm)?:?)"
    r"|^[>\s]*[^\s:,]+(?: [^\s:,]+)? wrote:"
    r"|(?:\b(?:thanks|thankyou|thank you|cheers|hi|hello|hey|ta|regards),? )@?\w+_\w+\b"
    r"|(?<!\w)@[A-Za-z]\w+",
    re.I | re.M,
)
#: a name somebody goes by, which says nothing of an engine: "turbo_nut reckons", "dieseldave66"
_HANDLE = re.compile(r"(?<=[^\W\d_])_(?=\w)|(?<=\w)_(?=[^\W\d_])")


def written_out(text: str) -> str:
    """The text with short forms written out and names of writers left out, each character in its place.

    >>> written_out("No. 4 main, mech. gauge 15 at tick over")
    'nr  4 main, mech  gauge 15 at tickover '
    >>> written_out("by turbo_nut: low oil").strip(), written_out("as turbo_nut says")
    ('low oil', 'as turboxnut says')
    """
    text = _WROTE.sub(lambda m: re.sub(r"[^\n]", " ", m[0]), text)
    if len(text.split()) > 1:
        text = _HANDLE.sub("x", text)
    text = _NUMBERED.sub(lambda m: "nr" + " " * (len(m[0]) - 2), text)
    text = _SO_MANY.sub(lambda m: m[1] + " ", text)
    text = _SHORTENED.sub(lambda m: m[1] + " ", text)
    return _TICKOVER.sub(lambda m: m[1] + "tickover ", text)


def is_oil_pressure(text: str, piece: re.Match[str]) -> bool:
    """Whether a word is short for the oil pressure.

    >>> is_oil_pressure("OP 28", re.compile(r"OP").match("OP 28"))
    True
    >>> is_oil_pressure("OP says", re.compile(r"OP").match("OP says"))
    False
    """
    return piece[0].lower() in _OIL_PRESSURE and not _PERSON_SAYS.match(text, piece.end())
