"""The quantities a sentence names, and the figures beside them that have no unit of their own."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.amounts import INCHES, Amount
from diagnose.understanding.words.phrases import Mark
from knowledge.book import Book
from knowledge.lexicon.values.beside_numbers import COUNTS
from knowledge.lexicon.values.quantities import (
    BARE_OF_PART,
    BETWEEN,
    ORDINALS,
    PLACES,
    SHARED,
    VAGUE,
)
from knowledge.model import Quantity

NUMBER_WORDS = frozenset(["no", "number", "num", "#", "nr"])
_BARE_FAR = 8  #: words from a name to a figure without a unit
_LENGTH = frozenset(["length"])
_SPEED, _LEADS_TO_SPEED = "speed", 3  #: dimension of an idle; words from it to its figure
_WHEN = frozenset(["when", "once", "as", "if", "whenever", "until", "till", "while"])
_SPRING = "relief_spring_length"
_SMALL = frozenset(["thou", "mil", "mm"])
_LEADS_BACK = frozenset(["on", "the", "at", "in"])  #: "9 on the side"
_IS = frozenset(["is", "was", "are", "were", "measures", "measured"])

_BEARINGS = {"mains": "main_clearance", "rods": "rod_clearance"}


@dataclass(frozen=True, slots=True)
class Name:
    """A quantity named in a sentence; ``alone``: by a word that may mean something else."""

    quantity: Quantity
    mark: Mark[str]
    alone: bool = False


def names_in(line: Line, book: Book, part: str) -> Iterator[Name]:
    """The quantities a sentence names; ``part``: named last in the sentences before."""
    clear = line.find(line.lexicon.values)
    yield from (Name(book.quantities[m.value], m) for m in clear)
    taken: list[Mark[str]] = [*clear]
    for vague in line.find(line.lexicon.vague_values):
        if any(t.overlaps(vague) for t in taken):
            continue
        id_ = _meant(vague.value, _nearest(line, vague, part))
        if id_:
            taken.append(vague)
            yield Name(book.quantities[id_], vague)
    for bare in line.find(line.lexicon.bare_values):
        if not any(t.overlaps(bare) for t in taken):
            taken.append(bare)
            yield Name(book.quantities[bare.value], bare, alone=True)
    for short in line.find(line.lexicon.short_values):
        id_ = BARE_OF_PART[short.value][1].get(_nearest(line, short, part), "")
        if id_ and not any(t.overlaps(short) for t in taken):
            taken.append(short)
            yield Name(book.quantities[id_], short, alone=True)
    for every in line.find(line.lexicon.shared_values):
        if not any(t.overlaps(every) for t in taken):
            yield from (Name(book.quantities[id_], every, alone=True) for id_ in _of(line, every))


def _of(line: Line, every: Mark[str]) -> tuple[str, ...]:
    """The quantities that "the shells" stands for: those of the bearings its clause goes on to name."""
    clause = line.clause(every.first)
    named = {
        p.value
        for p in line.find(line.lexicon.value_parts)
        if clause.first <= p.first < clause.last
    }
    return tuple(id_ for part, id_ in _BEARINGS.items() if part in named) or SHARED[1]


def _nearest(line: Line, mark: Mark[str], part: str) -> str:
    """The part named nearest in the sentence, else the one named last before it."""
    parts = line.find(line.lexicon.value_parts)
    near = min(parts, key=lambda p: line.distance(p, mark), default=None)
    return near.value if near else part


def _meant(vague: str, part: str) -> str | None:
    """The quantity a vague name stands for beside a part; None where that leaves it open."""
    meanings = VAGUE[vague][1]
    return meanings.get(part) or meanings.get("")


def with_bare(line: Line, every: list[Amount], names: list[Name], unit: str) -> list[Amount]:
    """The amounts, with bare figures beside a name in the unit used before: "rods about 2"."""
    found = [*every]
    places = [k for n in names if n.quantity.dimension == "length" for k in _beside(line, n)]
    for name in (n for n in names if n.quantity.dimension == _SPEED):
        if {line.word(name.mark.first - k) for k in (1, 2)} & _WHEN:
            continue  # "comes back when it idles at 600"
        for k in range(name.mark.last, min(name.mark.last + _LEADS_TO_SPEED, len(line.tokens))):
            if "rpm" in line.tokens[k].kinds and not any(a.first <= k < a.last for a in found):
                found.append(Amount(k, k + 1, (line.tokens[k].value,), frozenset([_SPEED])))
    for k in (*places, *_numbered(line)):
        token = line.tokens[k]
        said = next((u for a in reversed(every) if a.last <= k and (u := unit_of(a))), unit)
        if any(a.first <= k < a.last for a in found):
            continue
        small = re.fullmatch(r"0?\.\d+", token.value) is not None
        if _is_in_inches(line, k, names):
            found.append(Amount(k, k + 1, (f"{token.value} {INCHES}",), _LENGTH))
        elif not said:
            continue
        elif (
            token.kinds == {"number"} and small is (said == "mm") and line.word(k + 1) not in COUNTS
        ):
            found.append(Amount(k, k + 1, (f"{token.value} {said}",), _LENGTH))
    return sorted(found, key=lambda a: a.first)


def _is_in_inches(line: Line, at: int, names: list[Name]) -> bool:
    """Whether a bare figure is the length of a spring, to a hundredth of an inch: "2.02 free"."""
    token = line.tokens[at]
    spring = any(n.quantity.id == _SPRING and at in _beside(line, n) for n in names)
    return spring and token.kinds == {"number"} and bool(re.fullmatch(r"[1-4]\.\d\d", token.value))


def _beside(line: Line, name: Name) -> Iterator[int]:
    """The place of the figure that stands behind a name, or straight before it."""
    for k in range(name.mark.last, min(name.mark.last + _BARE_FAR, len(line.tokens))):
        token = line.tokens[k]
        if token.is_figure and line.word(k - 1) not in NUMBER_WORDS:
            if line.word(k - 1) in _IS or all(
                says_nothing(line, i) for i in range(name.mark.last, k)
            ):
                yield k
            break
        if token.is_mark and token.word != ":":
            break
    for k in range(name.mark.first - 1, max(-1, name.mark.first - 4), -1):
        if line.tokens[k].is_figure:
            yield k
        if line.word(k) not in _LEADS_BACK:
            break


def _numbered(line: Line) -> Iterator[int]:
    """Places of figures behind the number of a part: "no 3 0.15"."""
    for k in range(2, len(line.tokens)):
        if line.word(k - 2) in NUMBER_WORDS and line.tokens[k - 1].kinds == {"number"}:
            yield k


def unit_of(amount: Amount) -> str:
    """The small unit of an amount, which a bare figure behind it may be in; empty if it has none."""
    said = amount.texts[-1].rpartition(" ")[2].lower()
    return said if said in _SMALL else ""


def says_nothing(line: Line, at: int) -> bool:
    """Whether a word may stand between a name and its figure, or is part of a place."""
    token = line.tokens[at]
    if token.is_mark or token.is_figure or token.word in NUMBER_WORDS:
        return True
    return token.word in BETWEEN or token.word in PLACES or token.word in ORDINALS
