"""Figures with any unit of the book, as people write them: "4.5 thou", "1/4 in", ".004"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.understanding.words.figure_patterns import WORDS
from diagnose.understanding.words.text import Token
from knowledge.lexicon.values.units_typed import SPELLINGS
from knowledge.model import Quantity
from knowledge.units import DIMENSIONS, unit_named

#: clearances of which bare decimals beyond this many inches are millimetres (judgement)
_RUNNING, _MOST_INCHES = frozenset(["main_clearance", "rod_clearance"]), 0.019
INCHES = "in"  #: what three to five decimals without a unit are (common practice)
_FRACTION = r"(?:\d+\s+)?\d+/(?:2|4|8|16|32|64)(?!\d)"
_NUMBER = r"(?:\d{1,3}(?:,\d{3})+|\d*\.\d+|\d+)"
_WORD = "|".join(sorted(WORDS, key=len, reverse=True))
_ONE = rf"(?:{_FRACTION}|{_NUMBER}(?:\s+and\s+a\s+half)?|(?:{_WORD})\b(?:\s+and\s+a\s+half)?"
_ONE += r"|half\s+an?\b)"
_TO = r"\s*(?:-|–|/|\bto\b|\bor\b|\band\b|&)\s*"
_LIST = rf"{_ONE}(?:(?:\s*,\s*{_ONE})+{_TO}{_ONE}|(?:\s*,\s*{_ONE}){{2,}}|(?:{_TO}{_ONE})+)?"
_NO_UNIT = r"(?!\s+(?:the|a|an|my|it|and|oil|there|this|that)\b)"  #: "4 in the pump"
_DECIMALS = re.compile(rf"(?P<list>0?\.\d{{3,5}}(?:{_TO}0?\.\d{{3,5}})?)(?![\w%]|\.\d)")
#: two decimals without a unit are millimetres: "main 4 0.09"
_HUNDREDTHS = re.compile(r"(?P<list>0?\.[0-2]\d)(?P<mm>)(?![\w%/]|\.\d|\s*[-–])")


def _names() -> Iterator[str]:
    for dimension in DIMENSIONS.values():
        for unit in dimension.units:
            yield from (name for name in unit.names if name and dimension.id != "count")
    yield from SPELLINGS


def _pattern() -> re.Pattern[str]:
    names = sorted({re.escape(n) for n in _names()}, key=len, reverse=True)
    units = "|".join(rf"{n}{_NO_UNIT}" if n == "in" else n for n in names)
    return re.compile(rf"(?P<list>{_LIST})\s*-?\s*(?P<unit>{units})(?![\w/])", re.I)


_WITH_UNIT = _pattern()
_PATTERNS = (_WITH_UNIT, _DECIMALS, _HUNDREDTHS)
_COUNTS = frozenset((*WORDS, "half"))
_VISCOSITY, _IS = (
    frozenset(["viscosity", "visc", "kv100"]),
    frozenset(["is", "was", "of", "=", ":"]),
)
_TENTHS = re.compile(r"\d{1,2}\.\d{1,2}")
_EACH = re.compile(_ONE, re.I)


@dataclass(frozen=True, slots=True)
class Amount:
    """One figure or several with one unit: tokens ``first`` to before ``last``, and each value.

    ``texts``: "4.5 thou", as a case file writes it. ``dimensions``: what it can be a figure of.
    """

    first: int
    last: int
    texts: tuple[str, ...]
    dimensions: frozenset[str]
    bare: bool = False  #: decimals without a unit, taken as inches


def amounts(text: str, tokens: tuple[Token, ...]) -> list[Amount]:
    """Every figure with a unit in the tokens of a text, left to right.

    >>> from diagnose.understanding.words.text import sentences
    >>> class Spelling:
    ...     def knows(self, word): return True
    ...     def right(self, word): return word
    >>> said = "mains 4.5 thou, cover .004"
    >>> [a.texts for s in sentences(said, Spelling()) for a in amounts(said, s.tokens)]
    [('4.5 thou',), ('0.004 in',)]
    """
    found: list[Amount] = []
    end = 0
    for i, token in enumerate(tokens):
        if token.start < end or not (token.is_figure or token.word in _COUNTS):
            continue
        match = next((m for p in _PATTERNS if (m := p.match(text, token.start))), None)
        if match is None and _is_of_a_laboratory(tokens, i):
            value = f"{_plain(token.word)} cSt"
            found.append(Amount(i, i + 1, (value,), frozenset(["viscosity"])))
        if match is None:
            continue
        unit = match.groupdict().get("unit") or ("mm" if "mm" in match.groupdict() else INCHES)
        last = next((k for k, t in enumerate(tokens[i:], i) if t.start >= match.end()), len(tokens))
        names = {unit.lower(), SPELLINGS.get(unit.lower(), unit.lower())}
        known = {
            d.id: name for d in DIMENSIONS.values() for name in sorted(names) if unit_named(name, d)
        }
        if last <= i or not known:
            continue
        each = tuple(f"{_plain(one[0])} {_shown(unit)}" for one in _EACH.finditer(match["list"]))
        bare = match.re is _DECIMALS
        found.append(Amount(i, last, each, frozenset(known), bare))
        end = match.end()
    return found


def _is_of_a_laboratory(tokens: tuple[Token, ...], at: int) -> bool:
    """Whether a decimal is a viscosity as laboratories print it, in cSt: "viscosity 9.8"."""
    k = at - 1
    while k >= 0 and tokens[k].word in _IS:
        k -= 1
    return k >= 0 and tokens[k].word in _VISCOSITY and bool(_TENTHS.fullmatch(tokens[at].word))


def _shown(unit: str) -> str:
    """A unit as the book reads it, else as it was typed."""
    name = SPELLINGS.get(unit.lower(), unit)
    return "in" if name == '"' else name


def _plain(number: str) -> str:
    """The digits of a number: "four" is 4, ".5" is 0.5, "2 and a half" is 2.5."""
    if number.lower().startswith("half"):
        return "0.5"
    half = re.sub(r"\s+and\s+a\s+half$", "", number.lower())
    word = str(WORDS.get(half, half)).replace(",", "")
    if half != number.lower():
        return f"{float(word) + 0.5:g}"
    return f"0{word}" if word.startswith(".") else " ".join(word.split())


def in_millimetres(amount: Amount, quantity: Quantity) -> tuple[str, ...]:
    """The values of an amount; of bare decimals no bearing has in inches, in millimetres.

    "rods 0.045" would be 45 thou: it is 0.045 mm.
    """
    if not amount.bare or quantity.id not in _RUNNING:
        return amount.texts
    far = any(float(t.split()[0]) > _MOST_INCHES for t in amount.texts)
    return tuple(t.replace(f" {INCHES}", " mm") for t in amount.texts) if far else amount.texts
