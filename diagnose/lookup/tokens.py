"""Split text into stems that can be compared."""

from __future__ import annotations

import re
from collections.abc import Collection
from functools import lru_cache

from knowledge.synonyms import ALIKE, AS_THEY_ARE, IDLE, IRREGULAR, PHRASES, UNITS

_SPLIT = re.compile(r"[^a-z0-9]+")
_NOT = re.compile(
    r"\b(?:can|wo|do|does|did|is|are|was|were|has|have|had|could|would|should)n?'?t\b"
)
_PHRASE = re.compile(
    r"\b(" + "|".join(re.escape(p) for p in sorted(PHRASES, key=len, reverse=True)) + r")(s?)\b"
)
_GRADE = re.compile(r"\b[0-9]{1,2}w(?:-?[0-9]{2})?\b")  #: an oil's grade: 15W-40
_DOUBLED = frozenset("bdgmnprt")  #: doubled before an ending: plugged, slipping


def tokens(text: str) -> list[str]:
    """The stems of the significant words, one spelling for synonyms.

    >>> tokens("Won't leak?") == tokens("it does not leak")
    True
    >>> tokens("the rocker box gasket leaked") == tokens("valve cover gasket leaking")
    True
    """
    plain = _NOT.sub("not", text.lower().replace("’", "'"))
    plain = _GRADE.sub("grade", plain)
    words = [w for w in _SPLIT.split(plain.replace("'s ", " ")) if w]
    plain = _PHRASE.sub(lambda m: PHRASES[m[1]] + m[2], " ".join(words))
    out = []
    for raw in plain.split():
        word = ALIKE.get(raw, raw)
        word = ALIKE.get(stem(raw), word) if word == raw else word
        if word and raw not in IDLE and raw not in UNITS and not raw.isdigit() and len(raw) > 1:
            out.append(stem(IRREGULAR.get(word, word)))
    return out


@lru_cache(maxsize=20_000)
def stem(word: str) -> str:
    """A word without the endings of number and tense.

    >>> stem("leaking"), stem("galleries"), stem("slipped"), stem("gauges") == stem("gauge")
    ('leak', 'gallery', 'slip', True)
    """
    if len(word) > 4 and word.endswith("ies"):
        word = word[:-3] + "y"
    elif len(word) > 4 and word.endswith("s") and not word.endswith(("ss", "us", "is")):
        word = word[:-1]
    if word in AS_THEY_ARE:
        return word
    for ending in ("ing", "ed"):
        base = word.removesuffix(ending)
        if base != word and len(base) > 2 and re.search("[aeiouy]", base) and base[-1] != "e":
            double = base[-1] == base[-2] and base[-1] in _DOUBLED
            return base[:-1] if double else base.removesuffix("e")
    return word.removesuffix("e") if len(word) > 4 else word


#: stem of every synonym, and the stem that stands for it
OTHER_NAMES: dict[str, str] = {stem(k): stem(v) for k, v in ALIKE.items() if v}


def joined(words: list[str], known: Collection[str]) -> list[str]:
    """Join two words in a row that the book writes as one.

    >>> joined(["drain", "back", "valv"], {"drainback"})
    ['drainback', 'valv']
    """
    out: list[str] = []
    for word in words:
        if out and out[-1] + word in known:
            out[-1] += word
        else:
            out.append(word)
    return out
