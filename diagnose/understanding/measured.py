"""Read measured values: "mains 4.5 thou", "no 3 main 0.006 in", "relief spring 52 mm long"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.understanding.amounts import Amount, amounts
from diagnose.understanding.facts import Fact, Span, Value, reader
from diagnose.understanding.paragraph import Line, Paragraph
from diagnose.understanding.phrases import Mark
from diagnose.understanding.stance import Stance
from knowledge.book import Book
from knowledge.lexicon.values import (
    BETWEEN,
    BOUND,
    MACHINED,
    NEW_ONE,
    NOT_MEASURED_AFTER,
    NOT_MEASURED_BEFORE,
    OLD_ONE,
    ORDINALS,
    PLACES,
    SHARED,
    TASK_OF,
    VAGUE,
)
from knowledge.model import Quantity
from knowledge.units import DIMENSIONS, UnitError, parse

_FAR, _BEFORE, _AFTER = 12, 5, 3  #: words from a name to its figure; looked at beside a figure
_BEHIND = 1  #: how much farther a name is that comes after its figure
_MOST_PLACES = 16  #: the highest number of a bearing or cylinder
_NUMBER_WORDS = frozenset(["no", "number", "num", "#", "nr"])
_JOINS = frozenset(["and", "&", "+", ",", "plus"])
_UNTRUE = Stance.SUPPOSED | Stance.ELSEWHERE | Stance.USUAL | Stance.GUESSED
#: beside a pressure, a temperature or a speed belongs to the reading
_OF_A_READING = frozenset(["temperature", "speed"])
_SPRING = "relief_spring_length"
_NEXT, _BEHIND_IT = 10, 6  #: words from one length to another; looked at behind that
_SHORTER = 0.01  #: share by which a spring is shorter than the other (judgement)
#: how a place on the engine is called, by quantity
_PART = {"main_clearance": "main", "rod_clearance": "rod", "cam_bearing_clearance": "cam bearing"}


@dataclass(frozen=True, slots=True)
class _Name:
    """A quantity named in a sentence; ``alone``: by a word that may mean something else."""

    quantity: Quantity
    mark: Mark[str]
    alone: bool = False


@dataclass(frozen=True, slots=True)
class _Found:
    quantity: Quantity
    text: str
    value: float
    where: str
    spans: tuple[Span, ...]


@reader(
    {
        "mains 4.5 thou": ["finding main_clearance 4.5 thou"],
        "no 3 main 0.006 in": ["finding main_clearance 0.006 in main 3"],
        "mains ground 10 thou undersize": [],
        "main clearance should be 3 thou": [],
        "my brother's mains were 6 thou": [],
        "torqued the mains to 80 ft lbs": [],
        "mains 4 thou and rods 3 thou": [
            "finding main_clearance 4 thou",
            "finding rod_clearance 3 thou",
        ],
        "pump apart: end play 8 thou": ["finding pump_end_clearance 8 thou"],
        "5 psi at idle with the oil at 90 C": [],
        "relief spring came with it, measured it at 2.1 inches": [
            "finding relief_spring_length 2.1 inches"
        ],
        "relief spring is 2.1 inches long, the new one 2.3": [
            "finding relief_spring_length 2.1 inches",
            "finding relief_spring_short_or_broken present",
        ],
        "relief spring is 2.1 long, the new one 2.3": [
            "finding relief_spring_short_or_broken present"
        ],
        "new relief spring 2.1 inches against 2.3 for the old one": [
            "finding relief_spring_length 2.1 inches",
            "finding relief_parts_not_standard present",
        ],
        "relief spring is 2.3 inches, the new one 2.3": ["finding relief_spring_length 2.3 inches"],
        "relief spring came with it, the bolts are 2.1 inches long": [],
        "bearings all 3 to 3.5 thou": [
            "finding main_clearance 3.5 thou",
            "finding rod_clearance 3.5 thou",
        ],
        "all clearances 2 thou": [
            "finding main_clearance 2 thou",
            "finding rod_clearance 2 thou",
        ],
        "cam bearings 3 thou": ["finding cam_bearing_clearance 3 thou"],
        "bearings 10 thou undersize": [],
        "valve clearances 12 thou": [],
    }
)
def measured(paragraph: Paragraph) -> Iterator[Fact]:
    """Measured values; of several of one thing at one place, the worst."""
    book = paragraph.lexicon.book
    found: dict[tuple[str, str], list[_Found]] = {}
    part = ""
    for line in paragraph.lines:
        every = amounts(paragraph.text, line.tokens)
        names = [*_names(line, book, part)] if every else []
        for amount in every:
            for each in _values(line, amount, every, names):
                found.setdefault((each.quantity.id, each.where), []).append(each)
        parts = line.find(line.lexicon.value_parts)
        part = parts[-1].value if parts else part
        yield from _compared(line, names or [*_names(line, book, part)])
    for group in found.values():
        yield _fact(group, book)


def _compared(line: Line, names: list[_Name]) -> Iterator[Fact]:
    """What the relief spring's length beside that of another says: "2.1 long, the new one 2.3"."""
    for name in names:
        if name.quantity.id != _SPRING or name.alone:
            continue
        behind = range(name.mark.last, min(name.mark.last + _NEXT, len(line.tokens)))
        first = next((k for k in behind if _length(line, k)), None)
        if first is None:
            continue
        then = range(first + 1, min(first + _NEXT, len(line.tokens)))
        other = next((k for k in then if _length(line, k)), None)
        if other is None:
            continue
        said = {line.word(k) for k in (*then[: other - first], *range(other, other + _BEHIND_IT))}
        new_is_other = bool(said & NEW_ONE)
        if new_is_other == bool(said & OLD_ONE):
            continue  # which is which is not said
        what = "relief_spring_short_or_broken" if new_is_other else "relief_parts_not_standard"
        if _length(line, first) < _length(line, other) * (1.0 - _SHORTER):
            span = line.span([name.mark, Mark(True, first, other + 1)])
            yield Fact("finding", {"what": what, "state": "present"}, span)
            return


def _length(line: Line, at: int) -> float:
    """The figure of a token that may be a length, whatever its unit; 0 where it is none."""
    said = re.match(r"\d*\.?\d+", line.word(at)) if line.tokens[at].is_figure else None
    other = line.tokens[at].kinds - {"number", "length"}
    return float(said[0]) if said and not other else 0.0


def worst(quantity: Quantity, values: list[float], book: Book) -> int:
    """The place of the worst of several values: the largest where too much is wrong."""
    least, most = book.limits_of(quantity)
    largest = most is not None or least is None
    pick = max if largest and quantity.id != "relief_spring_length" else min
    return values.index(pick(values))


def _names(line: Line, book: Book, part: str) -> Iterator[_Name]:
    """The quantities a sentence names; ``part``: named last in the sentences before."""
    clear = line.find(line.lexicon.values)
    yield from (_Name(book.quantities[m.value], m) for m in clear)
    taken: list[Mark[str]] = [*clear]
    for vague in line.find(line.lexicon.vague_values):
        if any(t.overlaps(vague) for t in taken):
            continue
        parts = line.find(line.lexicon.value_parts)
        near = min(parts, key=lambda p: line.distance(p, vague), default=None)
        id_ = _meant(vague.value, near.value if near else part)
        if id_:
            taken.append(vague)
            yield _Name(book.quantities[id_], vague)
    for bare in line.find(line.lexicon.bare_values):
        if not any(t.overlaps(bare) for t in taken):
            taken.append(bare)
            yield _Name(book.quantities[bare.value], bare, alone=True)
    for every in line.find(line.lexicon.shared_values):
        if not any(t.overlaps(every) for t in taken):
            yield from (_Name(book.quantities[id_], every, alone=True) for id_ in SHARED[1])


def _meant(vague: str, part: str) -> str | None:
    """The quantity a vague name stands for beside a part; None where that leaves it open."""
    meanings = VAGUE[vague][1]
    return meanings.get(part) or meanings.get("")


def _values(
    line: Line, amount: Amount, every: list[Amount], names: list[_Name]
) -> Iterator[_Found]:
    """What an amount is a value of; of two names joined by "and", both."""
    mark = Mark("", amount.first, amount.last)
    if line.stances.at(mark) & (_UNTRUE | Stance.DENIED) or _is_no_value(line, amount, every):
        return
    fitting = [n for n in names if _fits(line, n, amount)]
    best = min(fitting, key=lambda n: _distance(line, n, amount), default=None)
    if best is None:
        return
    of = [best]
    for name in (n for n in names if n is not best):
        if name.mark == best.mark or _joined(line, name.mark, best.mark):
            of.append(name)
    for name in of:
        values = {t: v for t in amount.texts if (v := _si(t, name.quantity)) is not None}
        if not values:
            continue
        at = worst(name.quantity, list(values.values()), line.lexicon.book)
        text = list(values)[at]
        where, marks = _place(line, name, amount, every)
        spans = line.span([name.mark, mark, *marks])
        yield _Found(name.quantity, text, values[text], where, spans)


def _si(text: str, quantity: Quantity) -> float | None:
    """A value in SI units; None where the quantity cannot have it."""
    try:
        value = parse(text, DIMENSIONS[quantity.dimension])
    except UnitError:
        return None
    low, high = quantity.plausible
    return value if low <= value <= high else None


def _distance(line: Line, name: _Name, amount: Amount) -> float:
    mark = Mark("", amount.first, amount.last)
    behind = _BEHIND if name.mark.first > amount.first else 0
    return line.distance(name.mark, mark) + behind - len(name.mark) / 100


def _fits(line: Line, name: _Name, amount: Amount) -> bool:
    """Whether an amount can be a value of what is named there."""
    if not any(_si(t, name.quantity) is not None for t in amount.texts):
        return False
    clause = line.clause(amount.first)
    dimension = name.quantity.dimension
    if dimension in _OF_A_READING and any("pressure" in t.kinds for t in line.tokens):
        return False
    first, last = sorted([(name.mark.first, name.mark.last), (amount.first, amount.last)])
    between = range(first[1], last[0])
    if name.alone and not all(_says_nothing(line, k) for k in between):
        return False
    if clause.first <= name.mark.first < clause.last:
        return line.distance(name.mark, Mark("", amount.first, amount.last)) <= _FAR
    before = range(clause.first, amount.first)
    if name.mark.first >= amount.first:
        return False
    return all(_says_nothing(line, k) or line.word(k) == "it" for k in before)


def _says_nothing(line: Line, at: int) -> bool:
    """Whether a word may stand between a name and its figure, or is part of a place."""
    token = line.tokens[at]
    return token.is_mark or token.is_figure or token.word in BETWEEN | PLACES | ORDINALS.keys()


def _joined(line: Line, a: Mark[str], b: Mark[str]) -> bool:
    first, last = (a, b) if a.first < b.first else (b, a)
    words = [line.word(k) for k in range(first.last, last.first)]
    return 0 < len(words) <= 2 and set(words) <= _JOINS | {"the"}


def _is_no_value(line: Line, amount: Amount, every: list[Amount]) -> bool:
    """Whether a figure is a limit, a bound, a size that was bought or metal taken off."""
    clause = line.clause(amount.first)
    words = {line.word(k) for k in range(clause.first, clause.last)}
    earlier = max((a.last for a in every if a.last <= amount.first), default=clause.first)
    before = [line.word(k) for k in range(max(earlier, amount.first - _BEFORE), amount.first)]
    after = []
    for k in range(amount.last, min(amount.last + _AFTER, len(line.tokens))):
        if line.tokens[k].is_mark or line.tokens[k].is_figure:
            break
        after.append(line.word(k))
    return bool(
        ("length" in amount.dimensions and words & MACHINED)
        or set(before) & NOT_MEASURED_BEFORE
        or set(before[-2:]) & BOUND
        or set(after[:1]) & NOT_MEASURED_AFTER
        or ("the" in after and set(after) & {"limit", "spec", "maximum"})
    )


def _place(
    line: Line, name: _Name, amount: Amount, every: list[Amount]
) -> tuple[str, list[Mark[object]]]:
    """Where on the engine it was measured, and the words for it; empty where that is not said."""
    taken = {k for a in every for k in range(a.first, a.last)}
    near = [amount.first - 1, *range(amount.last, amount.last + 4)]
    if line.clause(amount.first) == line.clause(name.mark.first):
        behind = range(name.mark.last, min(name.mark.last + 3, amount.first))
        near = [name.mark.first - 1, *behind, *near]
    for k in near:
        if not 0 <= k < len(line.tokens) or k in taken:
            continue
        token = line.tokens[k]
        label = PLACE_OF.get(token.word) or ORDINALS.get(token.word) or ""
        if token.kinds == {"number"} and token.value.isdecimal():
            label = token.value if 1 <= int(token.value) <= _MOST_PLACES else ""
            beside = line.word(k - 1) in _NUMBER_WORDS or line.word(k - 1) in ("on", "at", "in")
            if k >= amount.last and not beside:
                label = ""
        if not label:
            continue
        first = k - 1 if line.word(k - 1) in _NUMBER_WORDS else k
        part = _PART.get(name.quantity.id, "no" if label.isdecimal() else "")
        where = f"{part} {label}" if label.isdecimal() else f"{label} {part}".strip()
        return where, [Mark(True, first, k + 1)]
    return "", []


PLACE_OF = {word: word for word in PLACES}


def _fact(group: list[_Found], book: Book) -> Fact:
    """The worst of a group as a fact, with the words of all."""
    quantity = group[0].quantity
    found = group[worst(quantity, [f.value for f in group], book)]
    spans = tuple(sorted({s for f in group for s in f.spans}))
    fields: dict[str, Value] = {"what": quantity.id, "value": found.text}
    if found.where:
        fields["where"] = found.where
    if quantity.id in book.measures:
        return Fact("finding", fields, spans)
    if quantity.id in TASK_OF:
        return Fact("work", {**fields, "what": TASK_OF[quantity.id]}, spans)
    return Fact("engine", fields, spans)
