"""Start an engine's card with every entry commented, and write figures into one.

What a person wrote stays as it is; only the lines of the figures given are changed.
"""

from __future__ import annotations

import os
import textwrap
from collections.abc import Callable, Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any, TypeAlias

from diagnose.case.baseline import MOST_ON_CARD, on_card, place_of
from diagnose.case.card import (
    BASELINE,
    VERSION,
    Card,
    card_from_text,
    figure_named,
    is_grade,
)
from diagnose.case.case import Case
from diagnose.case.disk import atomic_write, locked
from diagnose.case.file_faults import Faults
from diagnose.case.files import named, read_text
from diagnose.case.schema import BaselineEntry, ReadingEntry
from diagnose.case.toml_lines import quoted, with_block, with_entry, without_entry
from diagnose.errors import BadCaseError, CannotWriteError, NotSavedError
from diagnose.ids import normal_id
from knowledge.book import Book
from knowledge.card import CardFigure, Form, Section
from knowledge.engines.layouts import UNKNOWN
from knowledge.units import DIMENSIONS

_HEADS = {
    Section.PRESSURES: "oil pressures; oil hot unless it says otherwise",
    Section.CLEARANCES: "bearings: on the diameter. As fitted, and the wear limit where printed",
    Section.TORQUES: "as printed; for oiled threads unless the manual says otherwise",
    Section.SETTINGS: "running and valve settings",
    Section.OIL: "the oil itself",
    Section.SIZES: "standard sizes, and what the oil circuit is made of",
}
_UNITS = {"length": "in, mm or thou", "torque": "lb-ft, in-lb or N·m", "force": "lbf, N or kgf"}
_WIDE = 98
GRADE = "grade"
Sound: TypeAlias = Mapping[str, Any]  #: fields of one [[baseline]]
SOUND_FIELDS = ("rpm", "oil", "coolant", "during", "pressure", "tap", "error", "note")
WRITE_SOUND = "_ rpm _ C _ psi"
SOUND_SAYS = "what the gauge showed at a speed and oil temperature when this engine was sound"
SOUND_WHERE = "in no manual: from your own log, hot idle and 2500 rpm hot first"


def start_card(
    path: Path,
    book: Book,
    engine: Mapping[str, str] | None = None,
    figures: Mapping[str, str] | None = None,
    baseline: Sequence[Sound] = (),
) -> Card:
    """Write a new card in which every entry waits as a comment.

    ``engine``: ``name``, ``layout``, ``manual`` as far as they are known; figures that the layout
    cannot have are left out. ``figures`` by id are written in, and ``baseline``, pressures of the
    sound engine as fields of their table. Raises CannotWriteError where the file exists or cannot
    be made, UsageError where something given is not right.
    """
    known = {k: v for k, v in (engine or {}).items() if v}
    head = f"card = {VERSION}\n\n[engine]\n" + "".join(
        f"{k} = {quoted(v)}\n" for k, v in known.items()
    )
    blank = _checked(head, path, book)
    text = "\n".join(_lines(blank, known, book)) + "\n"
    for name, value in (figures or {}).items():
        text = with_entry(text, *_place_of(name, book), value)
    for fields in baseline:
        text = _with_sound(text, MOST_ON_CARD, fields)
    with locked(path) as place:
        if os.path.exists(place.target):
            raise CannotWriteError(f"{named(path)}: exists already; 'diagnose card' shows it")
        card = _checked(text, path, book)
        atomic_write(place, text)
    return card


def figures_of(case: Case, book: Book) -> dict[str, str]:
    """What a job states of its engine, as figures of a card: name, layout, oil and limits."""
    engine = case.engine
    found = {"name": engine.name, "layout": engine.layout}
    if is_grade(engine.oil):
        found["oil"] = engine.oil
    found = {k: v for k, v in found.items() if v and v != UNKNOWN.id}
    for figure in book.card_figures.values():
        least, most = (
            engine.limits.get(limit.id, "") if limit else ""
            for limit in (figure.least, figure.most)
        )
        if least and most:
            found[figure.id] = f"{least} to {most}"
        elif least or most:
            found[figure.id] = f"at least {least}" if least else f"at most {most}"
        if figure.nominal is not None and figure.nominal.id in engine.limits:
            found[figure.id] = engine.limits[figure.nominal.id]
    return found


def write_figures(
    path: Path,
    book: Book,
    given: Mapping[str, str],
    check: Callable[[Card], None] | None = None,
    baseline: Mapping[int, Sound] | None = None,
) -> Card:
    """Write figures, by id, into a card; nothing is written where one of them is wrong.

    An empty figure is taken out: its line becomes a comment. ``baseline``: pressures of the sound
    engine as fields of their table, by their place in the file, any place behind the last for one
    more; one without fields is taken out. ``check`` is called with the card as
    it is on disk while nobody else can write it; what it raises ends the work.
    Raises UsageError with the nearest right id or spelling, NoCaseError, BadCaseError,
    CannotWriteError.
    """
    with locked(path) as place:
        text = read_text(path, "card")
        found = card_from_text(text, path, book)
        if check is not None:
            check(found)
        for name, value in given.items():
            section, key = _place_of(name, book)
            if value:
                text = with_entry(text, section, key, value)
            else:
                text = without_entry(text, section, key)
        changed, count = baseline or {}, len(found.baseline)
        for at in sorted(changed, key=lambda i: (i >= count, -i if i < count else i)):
            text = _with_sound(text, at, changed[at])
        card = _checked(text, path, book)
        atomic_write(place, text)
    return card


def baseline_of(case: Case) -> tuple[Sound, ...]:
    """The pressures of the sound engine that a job states, as fields of a card's tables."""
    stated = [_sound_of(b.entry) for b in case.baseline]
    beside = [
        {k: v for k, v in _sound_of(r.entry).items() if k != "gauge"} | {"pressure": r.entry.usual}
        for r in case.readings
        if r.entry.usual  # "20 psi before, now 6": at the speed and heat of the reading
    ]
    return (*stated, *beside)


def _sound_of(entry: BaselineEntry | ReadingEntry) -> Sound:
    return entry.model_dump(include=set(SOUND_FIELDS), exclude_none=True, exclude_defaults=True)


def places_of(card: Card, sound: Sequence[Sound], book: Book) -> dict[int, Sound]:
    """Each pressure by the place in the card where it is to be written.

    That of the same speed, oil and tap, else behind the last.
    """
    count = len(card.baseline)
    found: dict[int, Sound] = {}
    for i, fields in enumerate(sound):
        read = next(on_card([_in_order(fields)], card.speeds(book), Faults()), None)
        at = place_of(read.reading, card.baseline) if read else count
        found[at if at < count else count + i] = fields
    return found


def _in_order(fields: Sound) -> dict[str, Any]:
    """The fields that are filled in, in the order they are written."""
    return {k: fields[k] for k in SOUND_FIELDS if fields.get(k)}


def _with_sound(text: str, place: int, fields: Sound) -> str:
    """The text of a card with one [[baseline]] set, added, or taken out where it has no fields."""
    return with_block(text, BASELINE, place, _in_order(fields))


def how_to_write(figure: CardFigure, unit: str | None = None) -> str:
    """The form of a figure with blanks: "_ to _ in, limit _ in"."""
    own = figure.quantity.unit if figure.quantity else None
    usual = unit or own or DIMENSIONS[figure.dimension].spellings[0].partition(" ")[2]
    blank = f"_ {usual}".strip()
    return f"_ to {blank}, limit {blank}" if figure.form is Form.FITTED else blank


def _lines(card: Card, known: Mapping[str, str], book: Book) -> Iterator[str]:
    """The lines of a new card."""
    yield from (
        "# The card of one engine: its maker's own figures, entered once. A job uses them with",
        "#   [engine]",
        f'#   card = "{card.path.name if card.path else "engine.toml"}"',
        "# Take away the # before a line and write the figure for each _, with its unit. The unit you",
        '# write is the unit you are shown. A fit is "_ to _ in", a bound "at most _ in" or',
        '# "at least _ psi", a tolerance "_ ± _ N·m"; ", limit _ in" adds the wear limit.',
        "# Leave out what you do not have.",
        f"card = {VERSION}",
        "",
        "[engine]",
    )
    says = {
        "name": "what you call this engine",
        "manual": "the manual its figures are from: title, edition, pages",
        "layout": "how it is built: diagnose lookup --kind layout",
    }
    for key, comment in says.items():
        yield f"{key} = {quoted(known[key])}" if key in known else f'# {key} = "_"  # {comment}'
    yield "# has = []  # features that differ from the layout: diagnose lookup --kind finding"
    yield "# lacks = []"
    yield from ("", "[units]  # of figures without a unit", '# length = "in"', '# pressure = "psi"')
    yield '# torque = "lb-ft"'
    wanted = {f.id for f in card.missing(book)}
    for section in Section:
        yield from ("", f"[{section.value}]  # {_HEADS[section]}")
        if section is Section.OIL:
            yield "# the oil its maker asks for. Manual: oils and capacities"
            yield f'# {GRADE} = "_"  # like 20W-50 or SAE 30'
        for figure in book.card_figures.values():
            if figure.section is section and figure.id in wanted:
                yield from _entry(figure)
    yield from (
        "",
        f"# [[{BASELINE}]]  # {SOUND_SAYS};",
        f"#   {SOUND_WHERE}; once for each reading",
        '# rpm = "_ rpm"',
        '# oil = "_ C"',
        '# pressure = "_ psi"',
    )


def _entry(figure: CardFigure) -> Iterator[str]:
    about = f"{figure.says}. Manual: {figure.manual}"
    yield from textwrap.wrap(about, _WIDE, initial_indent="# ", subsequent_indent="#   ")
    units = _UNITS.get(figure.dimension)
    remark = f"  # {units}" if units else ""
    yield f'# {figure.id} = "{how_to_write(figure)}"{remark}'


def _place_of(name: str, book: Book) -> tuple[str, str]:
    """The table and key of a figure, or of the oil's grade and the [engine]. Raises UsageError."""
    key = normal_id(name)
    if key in ("name", "manual", "layout", "profile", "note"):
        return "engine", key
    if key in (GRADE, "oil", "oil_grade"):
        return Section.OIL.value, GRADE
    figure = figure_named(key, book)
    return figure.section.value, figure.id


def _checked(text: str, path: Path, book: Book) -> Card:
    """The card a text would make. Raises NotSavedError."""
    try:
        return card_from_text(text, path, book)
    except BadCaseError as bad:
        raise NotSavedError(bad.faults) from None
