"""Read measured values: "mains 4.5 thou", "no 3 main 0.006 in", "relief spring 52 mm long"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.values.numbered_values import (
    by_number,
    is_except,
)
from diagnose.understanding.values.places import PART_OF, place_of
from diagnose.understanding.values.springs_compared import springs_compared
from diagnose.understanding.values.value_rows import Cell, in_a_row, metric
from diagnose.understanding.values.values_named import (
    Name,
    names_in,
    says_nothing,
    unit_of,
    with_bare,
)
from diagnose.understanding.words.amounts import Amount, amounts, in_millimetres
from diagnose.understanding.words.facts import Fact, Span, Value, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.book import Book
from knowledge.lexicon.values.quantities import (
    BOUND,
    LESS_OR_MORE,
    MACHINED,
    MEASURES,
    NOT_MEASURED_AFTER,
    NOT_MEASURED_BEFORE,
    OTHERS,
    PRESSED_TO,
    TASK_OF,
    WEIGHTS,
    WENT_IN,
)
from knowledge.model import Quantity
from knowledge.units import DIMENSIONS, UnitError, parse

_FAR, _BEFORE, _AFTER = 12, 5, 3  #: words from a name to its figure; looked at beside a figure
_BEHIND = 1  #: how much farther a name is that comes after its figure
_JOINS = frozenset(["and", "&", "+", ",", "plus"])
_IDLE, _SPRING = "idle_speed_counted", "relief_spring_length"
_UNTRUE = Stance.SUPPOSED | Stance.ELSEWHERE | Stance.USUAL | Stance.GUESSED
#: beside a pressure, a temperature or a speed belongs to the reading
_OF_A_READING = frozenset(["temperature", "speed"])


@dataclass(frozen=True, slots=True)
class _Found:
    quantity: Quantity
    text: str
    value: float
    where: str
    spans: tuple[Span, ...]
    line: int  #: the number of its sentence


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
        "relief spring 12 lbs at 1.5 in": [],
        "bearings all 3 to 3.5 thou": [
            "finding main_clearance 3.5 thou",
            "finding rod_clearance 3.5 thou",
        ],
        "all clearances 2 thou": [
            "finding main_clearance 2 thou",
            "finding rod_clearance 2 thou",
        ],
        "Clearances were 2.5 thou on mains and rods": [
            "finding main_clearance 2.5 thou",
            "finding rod_clearance 2.5 thou",
        ],
        "cam bearings 3 thou": ["finding cam_bearing_clearance 3 thou"],
        "bearings 10 thou undersize": [],
        "mains 2.5 thou and rods about 2": [
            "finding main_clearance 2.5 thou",
            "finding rod_clearance 2 thou",
        ],
        "mains 2.5 thou and 2 rods replaced": ["finding main_clearance 2.5 thou"],
        "no 2 rod .006 on the plastigauge, the others .003": [
            "finding rod_clearance 0.006 in rod 2",
            "finding rod_clearance 0.003 in",
        ],
        "no 2 rod .006 on the plastigauge, the piston .003 under": [
            "finding rod_clearance 0.006 in rod 2"
        ],
        "had the pump apart. .002 end, .005 side": [
            "finding pump_end_clearance 0.002 in",
            "finding pump_side_clearance 0.005 in",
        ],
        "the crank moved 40 thou front to back": ["finding crank_end_float 40 thou"],
        "valve clearances 12 thou": [],
        "mains 2.5 3 2.8 2.6 thou, rods all 2": [
            "finding main_clearance 2.5 thou main 1",
            "finding main_clearance 3 thou main 2",
            "finding main_clearance 2.8 thou main 3",
            "finding main_clearance 2.6 thou main 4",
            "finding rod_clearance 2 thou",
        ],
        "mains front .011 center .003 rear .0035": [
            "finding main_clearance 0.011 in front main",
            "finding main_clearance 0.003 in center main",
            "finding main_clearance 0.0035 in rear main",
        ],
        "rods 1-8 all .0022 except number 5 .0041": [
            "finding rod_clearance 0.0041 in rod 5",
            "finding rod_clearance 0.0022 in",
        ],
        "no1 main 2.5 thou no2 2.7 no3 4.1 thou": [
            "finding main_clearance 2.5 thou main 1",
            "finding main_clearance 2.7 thou main 2",
            "finding main_clearance 4.1 thou main 3",
        ],
        "main 1 2 3 are .0021 .0024 .0026": [
            "finding main_clearance 0.0021 in main 1",
            "finding main_clearance 0.0024 in main 2",
            "finding main_clearance 0.0026 in main 3",
        ],
        "all mains 2.5 thou but number 4 is 5 thou": [
            "finding main_clearance 2.5 thou",
            "finding main_clearance 5 thou main 4",
        ],
        "new shells .05 mm on the rods": ["finding rod_clearance 0.05 mm"],
        "goes out at 1100 rpm and comes back when it idles at 600": [],
        "never checked the clearance on the mains, rods .0020": ["finding rod_clearance 0.0020 in"],
    }
)
def measured(paragraph: Paragraph) -> Iterator[Fact]:
    """Measured values; of several of one thing at one place, the worst."""
    book = paragraph.lexicon.book
    found: dict[tuple[str, str], list[_Found]] = {}
    part, unit = "", ""
    last: list[_Found] = []
    for line in paragraph.lines:
        every = amounts(paragraph.text, line.tokens)
        names = [n for n in names_in(line, book, part) if not _unmeasured(line, n)]
        rows = [*by_number(line, every, names)] or in_a_row(line, every, names)
        row = [metric(c, every) for c in rows if c.name.quantity.id in PART_OF]
        last = [*_in_row(line, row)] or last
        unit = row[-1].text.rpartition(" ")[2] if row else unit
        for each in last if row else ():
            found.setdefault((each.quantity.id, each.where), []).append(each)
        every = [a for a in every if not any(a.first <= c.at < a.last for c in row)]
        names = [n for n in names if _spare(line, n, every) or not any(c.name == n for c in row)]
        every = with_bare(line, every, names, unit)
        every = [a for a in every if not any(a.first <= c.at < a.last for c in row)]
        goes_on = bool(last) and last[-1].line == line.number - 1
        for amount in every:
            these = [*_values(line, amount, every, names)]
            if not these and (goes_on or (last and last[-1].line == line.number)):
                these = [*_more_of(line, amount, every, last)]
            for each in these:
                found.setdefault((each.quantity.id, each.where), []).append(each)
            last = these or last
            unit = unit_of(amount) or unit
        parts = line.find(line.lexicon.value_parts)
        part = parts[-1].value if parts else part
        yield from springs_compared(line, names)
    for group in found.values():
        yield _fact(group, book)


def _in_row(line: Line, row: list[Cell]) -> Iterator[_Found]:
    """The values of a row, each of its bearing; none where one of them cannot be such a value."""
    values = [_si(c.text, c.name.quantity) for c in row]
    for cell, value in zip(row, values, strict=True):
        if value is not None and None not in values:
            where = f"{PART_OF[cell.name.quantity.id]} {cell.number}"
            value_at = Mark(True, cell.at, cell.at + 1)
            spans = line.span([cell.name.mark, *cell.led_by, value_at])
            yield _Found(cell.name.quantity, cell.text, value, where, spans, line.number)


def _spare(line: Line, name: Name, every: list[Amount]) -> bool:
    """Whether a name has a value besides those of a row: "rods all .0022 except number 5 .0041"."""
    behind = range(name.mark.last, len(line.tokens))
    at = next((k for k in behind if is_except(line, k)), 0)
    return any(name.mark.last <= a.first < at for a in every)


def _unmeasured(line: Line, name: Name) -> bool:
    """Whether it is said that nobody measured it: "never checked the clearance on the mains"."""
    clause = line.clause(name.mark.first)
    before = line.words(clause.first, name.mark.first)
    return line.denied(name.mark) and bool(before & MEASURES)


def worst(quantity: Quantity, values: list[float], book: Book) -> int:
    """The place of the worst of several values: the largest where too much is wrong."""
    least, most = book.limits_of(quantity)
    largest = most is not None or least is None
    pick = max if largest and quantity.id != "relief_spring_length" else min
    return values.index(pick(values))


def _values(line: Line, amount: Amount, every: list[Amount], names: list[Name]) -> Iterator[_Found]:
    """What an amount is a value of; of two names joined by "and", both."""
    mark = Mark("", amount.first, amount.last)
    if line.stances.at(mark) & (_UNTRUE | Stance.DENIED) or _is_no_value(line, amount, every):
        return
    fitting = [n for n in names if _fits(line, n, amount)]
    best = min(
        fitting,
        key=lambda n: _distance(line, n, amount) + (not _is_nearest(line, n, amount, every)),
        default=None,
    )
    if best is None:
        return
    of = [best]
    for name in (n for n in names if n is not best):
        # "clearances 2 thou on mains and rods": named twice, the second time beside the rods
        again = [n for n in names if n.quantity is best.quantity]
        joined = any(_joined(line, name.mark, n.mark) for n in again)
        joined = joined and _is_nearest(line, name, amount, every)
        if name.mark == best.mark or joined:
            of.append(name)
    for name in of:
        texts = in_millimetres(amount, name.quantity)
        values = {t: v for t in texts if (v := _si(t, name.quantity)) is not None}
        if not values:
            continue
        at = worst(name.quantity, list(values.values()), line.lexicon.book)
        text = list(values)[at]
        where, marks = place_of(line, name, amount, every)
        spans = line.span([name.mark, mark, *marks])
        yield _Found(name.quantity, text, values[text], where, spans, line.number)


def _more_of(
    line: Line, amount: Amount, every: list[Amount], last: list[_Found]
) -> Iterator[_Found]:
    """Values of what was measured last: "no 1 main 2 thou, no 2 3 thou, the others 2"."""
    before = range(line.clause(amount.first).first, amount.first)
    if all(says_nothing(line, k) or line.word(k) in OTHERS for k in before):
        place = Mark("", amount.first, amount.last)
        for quantity in dict.fromkeys(f.quantity for f in last):
            yield from _values(line, amount, every, [Name(quantity, place)])


def _si(text: str, quantity: Quantity) -> float | None:
    """A value in SI units; None where the quantity cannot have it."""
    try:
        value = parse(text, DIMENSIONS[quantity.dimension])
    except UnitError:
        return None
    low, high = quantity.plausible
    return value if low <= value <= high else None


def _is_nearest(line: Line, name: Name, amount: Amount, every: list[Amount]) -> bool:
    """Whether no other amount stands nearer to a name."""
    return min(every, key=lambda a: _distance(line, name, a)) is amount


def _distance(line: Line, name: Name, amount: Amount) -> float:
    mark = Mark("", amount.first, amount.last)
    behind = _BEHIND if name.mark.first > amount.first else 0
    return line.distance(name.mark, mark) + behind - len(name.mark) / 100


def _fits(line: Line, name: Name, amount: Amount) -> bool:
    """Whether an amount can be a value of what is named there."""
    if not any(_si(t, name.quantity) is not None for t in amount.texts):
        return False
    clause = line.clause(amount.first)
    dimension = name.quantity.dimension
    if dimension in _OF_A_READING and any("pressure" in t.kinds for t in line.tokens):
        return False
    if name.quantity.id == _SPRING and _is_test_height(line, amount):
        return False
    first, last = sorted([(name.mark.first, name.mark.last), (amount.first, amount.last)])
    between = range(first[1], last[0])
    if name.quantity.id == _IDLE and amount.last < name.mark.first:
        return False  # "out at 1100 rpm and back when it idles at 600"
    if name.alone and not all(says_nothing(line, k) for k in between):
        return False
    if clause.first <= name.mark.first < clause.last:
        return line.distance(name.mark, Mark("", amount.first, amount.last)) <= _FAR
    before = range(clause.first, amount.first)
    if name.mark.first >= amount.first:
        return False
    return all(says_nothing(line, k) or line.word(k) == "it" for k in before)


def _is_test_height(line: Line, amount: Amount) -> bool:
    """Whether a spring was pressed to it: "12 lbs at 1.5 in"."""
    clause = line.clause(amount.first)
    weighed = any(set(line.word(k).split()) & WEIGHTS for k in range(clause.first, clause.last))
    return weighed and line.word(amount.first - 1) in PRESSED_TO


def _joined(line: Line, a: Mark[str], b: Mark[str]) -> bool:
    first, last = (a, b) if a.first < b.first else (b, a)
    words = [line.word(k) for k in range(first.last, last.first)]
    return 0 < len(words) <= 2 and set(words) <= _JOINS | {"the"}


def _is_no_value(line: Line, amount: Amount, every: list[Amount]) -> bool:
    """Whether a figure is a limit, a bound, a size that was bought or metal taken off."""
    clause = line.clause(amount.first)
    words = line.words(clause.first, clause.last)
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
        or ("volume" in amount.dimensions and "out" not in before and set(before[-3:]) & WENT_IN)
        or (before[-1:] == ["by"] and words & LESS_OR_MORE)
        or set(after[:1]) & NOT_MEASURED_AFTER
        or ("the" in after and set(after) & {"limit", "spec", "maximum"})
    )


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
