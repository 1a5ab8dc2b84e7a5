"""Readings of bearings as typed or filled into a sheet, as entries of a case.

"main 3 journal 2.4482 2.4481 in", "rod 1 strip 2.2 thou", "mains use hard". Of a sheet, the good
lines are kept and the bad ones named.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from diagnose.case.bearing_counts import count_of
from diagnose.case.bearing_values import (
    FIELDS,
    FieldError,
    count_in,
    grid_of,
    numbers_and_unit,
    place_of,
    wrong_count,
)
from diagnose.case.case import Case
from diagnose.case.writing import Appended, NewEntry, append_by
from diagnose.entry.details import Details
from diagnose.entry.sheets import FilledBlank
from diagnose.errors import UsageError, nearest, plain
from diagnose.fits.bearing import Kind, Place
from diagnose.ids import normal_id
from knowledge.book import Book
from knowledge.stations.bearings.sizes import Use
from knowledge.units import LENGTH, unit_named

UNIT = "unit"  #: the blank of a sheet that gives the unit of figures without one
USE = "use"
COUNT = "count"  #: how many the engine has
ALSO = {
    "housing": "bore",
    "id": "inside",
    "fitted_bore": "inside",
    "crankpin": "journal",
    "pin": "journal",
    "wall": "shell",
    "shells": "shell",
    "thickness": "shell",
    "clearance": "strip",
    "thread": "strip",
    "plastigage": "strip",
    "plastigauge": "strip",
    "under": "undersize",
    "journal_new": "new_journal",
    "bore_new": "new_bore",
    "shell_new": "new_shell",
    "target": "wanted",
}
_NAMES = (*FIELDS, USE, COUNT)
_KINDS = r"(?:mains?|rods?|big[ -]?ends?)"
_START = re.compile(
    rf"(?:\bno\.?\s*|\#\s*)\d{{1,2}}\s+{_KINDS}\b(?:\s+bearings?\b)?|\b[mr]\d{{1,2}}\b|"
    rf"(?:\ball\s+)?\b{_KINDS}\b(?:\s*(?:no\.?|\#)?\s*\d{{1,2}}(?![\d.]))?",
    re.IGNORECASE,
)
_SHORT = re.compile(r"([mr])(\d+)", re.IGNORECASE)  #: "m3", as on a shop's sheet
_FIELD = re.compile(r"([a-z][a-z_]*)\s*[=:]?\s*", re.IGNORECASE)
_STANDARD = ("0", "std", "standard", "none")
_USUAL = ("in", "thou", "mm")
LEAST_SEEN = 5e-6  #: m: nobody writes down a smaller figure of a bearing
LIKE = "main 3 journal 2.4482 2.4481 in, or rod 1 strip 2.2 thou"


@dataclass(frozen=True, slots=True)
class BearingInput:
    """One field of one bearing, or of all of a kind."""

    place: Place | Kind
    name: str
    text: str
    where: str = ""  #: in a sheet, for messages


@dataclass(frozen=True, slots=True)
class ReadSheet:
    """What a sheet gave: readings, and a line for each blank that could not be read."""

    given: tuple[BearingInput, ...]
    bad: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class BearingsInput:
    """What a person gives in one go."""

    given: Sequence[BearingInput] = ()
    fitted: bool = False  #: measured with the new parts
    details: Details = field(default_factory=Details)
    #: how many the engine has, where the case is silent or wrong
    counts: Mapping[Kind, int | None] = field(default_factory=dict)


def parse_words(words: Sequence[str]) -> tuple[BearingInput, ...]:
    """Read what was typed, quoted or not.

    >>> [(i.place.says, i.name, i.text) for i in parse_words(["rod 1 strip 2.2 thou"])]
    [('rod 1', 'strip', '2.2 thou')]
    >>> [i.text for i in parse_words(["main 1 .003", "main 2 .011"])]
    ['.003 in', '.011 in']

    Raises UsageError with all that is wrong, one fault a line.
    """
    phrases = list(_phrases(words))
    read = [_or_fault(phrase) for phrase in phrases]
    units = {
        unit for each in read if isinstance(each, list) for unit in map(_unit_of, each) if unit
    }
    for k, phrase in enumerate(phrases):  # "main 1 .003 main 2 .011": one hand wrote them
        if isinstance(read[k], str):
            able = [r for u in sorted(units) if isinstance(r := _or_fault(phrase, u), list)]
            read[k] = able[0] if len(able) == 1 else read[k]
    faults = [each for each in read if isinstance(each, str)]
    if faults:
        raise UsageError("\n".join(faults))
    return tuple(one for each in read if isinstance(each, list) for one in each)


def _or_fault(phrase: str, unit: str = "") -> list[BearingInput] | str:
    try:
        return _phrase(phrase, unit)
    except UsageError as fault:
        return f"'{plain(phrase, 50)}': {fault}"


def _unit_of(one: BearingInput) -> str:
    """The unit of a length; empty where it has none."""
    return numbers_and_unit(one.text)[1] if one.name in FIELDS else ""


def _phrases(words: Sequence[str]) -> Iterator[str]:
    """Phrases that each begin with a bearing; loose words are put together first."""
    joined: list[str] = []
    loose = False
    for word in words:
        whole = " " in word.strip() and word.strip()[0].isalpha()
        if loose and not whole:
            joined[-1] += f" {word}"
        else:
            joined.append(word)
        loose = not whole
    for text in joined:
        starts = [m.start() for m in _START.finditer(text)]
        if not starts or text[: starts[0]].strip():
            starts = [0]
        for begin, end in zip(starts, [*starts[1:], len(text)], strict=True):
            yield text[begin:end].strip()


def _phrase(text: str, unit: str = "") -> list[BearingInput]:
    start = _START.match(text)
    place = _place_named(start[0]) if start else None
    if start is None or place is None:
        word = text.split()[0] if text.split() else ""
        near = nearest(word, ("main", "rod", "mains", "rods"))
        raise UsageError(f"no bearing named; write it like {LIKE}.{near}")
    rest = text[start.end() :].strip()
    parts = _parts(rest)
    if not parts:
        raise UsageError(f"nothing of {_name(place)}; write it like {LIKE}")
    return [_checked(BearingInput(place, name, value), unit) for name, value in parts]


def _place_named(text: str) -> Place | Kind | None:
    """The bearing of the first words of a phrase.

    >>> _place_named("m3") == _place_named("#3 main"), _place_named("all mains")
    (True, <Kind.MAIN: 'main'>)
    """
    short = _SHORT.fullmatch(text)
    if short:
        return place_of(f"{'main' if short[1].lower() == 'm' else 'rod'} {short[2]}")
    return place_of(re.sub(r"^all\s+", "", text, flags=re.IGNORECASE))


def _parts(text: str) -> list[tuple[str, str]]:
    """Fields with what stands behind each; a clearance without a field is by gauge strip."""
    if re.match(r"[\d.]", text):
        return [("strip", text)]
    parts: list[tuple[str, str]] = []
    at = 0
    while at < len(text):
        head = _FIELD.match(text, at)
        if head is None:
            raise UsageError(f"'{plain(text[at:], 30)}' is no reading; write it like {LIKE}")
        name = field_named(head[1])
        end = _end_of_value(text, head.end())
        parts.append((name, text[head.end() : end].strip()))
        at = end
    return parts


def _end_of_value(text: str, begin: int) -> int:
    """Where the next field begins: a word behind a value that is no unit."""
    for word in re.finditer(r"[^\s=:]+", text[begin:]):
        name = normal_id(word[0])
        if word.start() and (name in _NAMES or name in ALSO):
            return begin + word.start()
    return len(text)


def field_named(word: str) -> str:
    """The field a word means. Raises UsageError with the nearest."""
    name = normal_id(word)
    name = ALSO.get(name, name)
    if name not in _NAMES:
        near = nearest(name, [*_NAMES, *ALSO])
        known = "" if near else f" It may be: {', '.join(_NAMES)}."
        raise UsageError(f"nothing called '{plain(word, 30)}' of a bearing.{near}{known}")
    return name


def _checked(one: BearingInput, unit: str = "") -> BearingInput:
    """The same with its unit, if its value can be of its field. Raises UsageError."""
    if one.name == USE:
        if one.text.strip().lower() not in list(Use):
            raise UsageError(f"use: '{plain(one.text, 30)}' is not {' or '.join(Use)}")
        if isinstance(one.place, Place):
            raise UsageError(f"use is of all {one.place.kind.plural}, not of {one.place.says}")
        return BearingInput(one.place, USE, one.text.strip().lower(), one.where)
    if one.name == COUNT:
        if isinstance(one.place, Place) or count_in(one.text) is None:
            raise UsageError(f"count: {wrong_count(one.text, one.place)}")
        return replace(one, text=one.text.strip())
    rule = FIELDS[one.name]
    if isinstance(one.place, Place) and not rule.each:
        raise UsageError(f"{one.name} is of all {one.place.kind.plural}, not of {one.place.says}")
    if isinstance(one.place, Kind) and not rule.group:
        raise UsageError(f"{one.name} is of one bearing; write {one.place.value} 1 {one.name} ...")
    text = with_unit(one.name, one.text, unit)
    try:
        grid_of(one.name, text)
    except FieldError as fault:
        raise UsageError(f"{one.name}: {fault}") from None
    return replace(one, text=text)


def read_blanks(blanks: Sequence[FilledBlank]) -> ReadSheet:
    """The readings of a filled-in sheet, ``field @ bearing`` each; what is wrong is named.

    Figures without a unit are in that of the blank ``unit``, else in the one they can be in.
    """
    units = [b.value.strip() for b in blanks if b.id.lower() == UNIT]
    unit = units[-1] if units else ""
    bad = []
    if unit and unit_named(unit, LENGTH) is None:
        bad.append(f"unit: '{plain(unit, 20)}' is no length; write in, thou or mm")
        unit = ""
    given = []
    for blank in blanks:
        if blank.id.lower() == UNIT:
            continue
        try:
            given.append(_from_blank(blank, unit))
        except UsageError as fault:
            bad.append(f"{blank.place}: {plain(blank.id, 30)} @ {plain(blank.where, 30)}: {fault}")
    return ReadSheet(tuple(given), tuple(bad))


def _from_blank(blank: FilledBlank, unit: str) -> BearingInput:
    if blank.fault:
        raise UsageError(blank.fault)
    place = place_of(blank.where) if blank.where else None
    if place is None:
        raise UsageError("no such bearing; write main 1, rod 1, mains or rods")
    name = field_named(blank.id)
    return _checked(BearingInput(place, name, blank.value, blank.place), unit)


def with_unit(name: str, text: str, unit: str = "") -> str:
    """Figures with a unit: their own, else ``unit``, else the one usual unit in which they can be.

    >>> with_unit("strip", "2.2"), with_unit("journal", "62.18 62.17"), with_unit("strip", "2.2 thou")
    ('2.2 thou', '62.18 62.17 mm', '2.2 thou')
    """
    if name == "undersize" and text.strip().lower() in _STANDARD:
        return "0 in"
    figures, given = numbers_and_unit(text)
    if not figures or given:
        return text
    if unit:
        return f"{text} {unit}"
    possible = [f"{text} {u}" for u in _USUAL if _can_be(name, f"{text} {u}")]
    if len(possible) > 1:
        raise UsageError(f"'{plain(text, 40)}': in which unit? Write {' or '.join(possible)}")
    return possible[0] if possible else text


def _can_be(name: str, text: str) -> bool:
    try:
        grid = grid_of(name, text)
    except FieldError:
        return False
    return all(v >= LEAST_SEEN for place in grid for v in place)


def record_bearings(path: Path, book: Book, given: BearingsInput) -> Appended:
    """Append readings to a case, one entry for each bearing.

    Raises UsageError where the case refuses them; NoCaseError, BadCaseError, CannotWriteError.
    """
    wrong = given.details.faults()
    if wrong:
        raise UsageError("\n".join(wrong))
    return append_by(path, book, lambda case: _entries(given, case))


def _entries(given: BearingsInput, case: Case) -> list[NewEntry]:
    counts = {k: count_of(case, k) for k in Kind}
    counts |= {k: n for k, n in given.counts.items() if n is not None}
    stated = [one for one in given.given if one.name == COUNT and isinstance(one.place, Kind)]
    counts |= {k: count_in(o.text) for o in stated for k in Kind if k is o.place}
    beyond = [
        _beyond(p, counts[p.kind])
        for p in {o.place: 0 for o in given.given}
        if isinstance(p, Place)
    ]
    if any(beyond):
        raise UsageError("\n".join(filter(None, beyond)))
    by_place: dict[Place | Kind, dict[str, BearingInput]] = {}
    for one in given.given:
        by_place.setdefault(one.place, {})[one.name] = one
    common = {k: v for k, v in given.details.fields().items() if k not in ("where", "replaces")}
    entries = []
    for place, fields in by_place.items():
        built = "build" if given.fitted and isinstance(place, Place) else None
        texts = {name: one.text for name, one in fields.items()}
        where = next((one.where for one in fields.values()), "")
        made = {"what": _name(place), **texts, "at": built, **common}
        entries.append(NewEntry("bearing", made, where))
    return entries


def _beyond(place: Place, count: int | None) -> str:
    """What is wrong with a bearing that the engine does not have; empty where it may have it."""
    if count is None or place.number <= count:
        return ""
    kinds = place.kind.plural
    return (
        f"{place.says}: this engine has {count} {kinds} as far as its job says; if it has more, "
        f'say so first: "{kinds} count {place.number}"'
    )


def _name(place: Place | Kind) -> str:
    return place.says if isinstance(place, Place) else place.plural
