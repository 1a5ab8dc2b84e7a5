"""An engine's card: one engine's own figures in one TOML file that several jobs name.

A card begins with ``card = 1``. Its [engine] says how the engine is built; its other tables hold
figures by their ids in ``knowledge.engines.card_figures``, its [[baseline]] what the gauge showed
when the engine was sound. Knows no case.
"""

from __future__ import annotations

import contextlib
import os
import re
import stat
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property
from pathlib import Path
from typing import Any

from diagnose.case.baseline import BaselineReading, on_card
from diagnose.case.card_text import CardValue, card_value, is_unit
from diagnose.case.file_faults import Faults, TooManyFaultsError
from diagnose.case.files import named, parsed, read_text
from diagnose.case.schema import CardEngine, OilInIt, checked, seen
from diagnose.errors import BadCaseError, UsageError, nearest, plain
from diagnose.ids import normal_id
from knowledge.book import Book
from knowledge.card import CardFigure, Section
from knowledge.engines.features import DIESEL
from knowledge.limits import Limit
from knowledge.model import Finding, Kind, Quantity, State
from knowledge.pressure.quantities import USUAL_IDLE_SPEED
from knowledge.reports.when import Speeds, speeds_of
from knowledge.stations.oil.grades import grade_named
from knowledge.stations.relief.quantities import RELIEF_RATE
from knowledge.units import DIMENSIONS

VERSION = 1
BEGINNING = 20_000  #: bytes of a file in which a card says what it is
_CARD_LINE = re.compile(rb"(?:\xef\xbb\xbf)?(?:[ \t]*+(?:#[^\n]*+)?\r?\n)*+[ \t]*+card[ \t]*=")
UNITS = ("pressure", "length", "torque", "temperature", "volume", "force")  #: of [units]
BASELINE = "baseline"  #: its tables of pressures when the engine was sound
_TABLES = ("engine", "units", *(s.value for s in Section), BASELINE)


@dataclass(frozen=True)
class Card:
    """The card of one engine, as far as it is filled in.

    ``values`` by the id of their figure, in SI; ``units``: the unit of each dimension that the
    card names for figures without one, and for what is shown; ``baseline``: pressures of the sound
    engine in the order of the file, of which the last of each state counts.
    """

    path: Path | None
    engine: CardEngine = field(default_factory=CardEngine)
    oil_grade: str = ""
    values: Mapping[str, CardValue] = field(default_factory=dict)
    units: Mapping[str, str] = field(default_factory=dict)
    baseline: tuple[BaselineReading, ...] = ()

    @property
    def name(self) -> str:
        """The engine's name, else the file's."""
        return self.engine.name or (self.path.stem if self.path else "card")

    @property
    def filled(self) -> int:
        """How much of it is filled in: its figures, the oil's grade, pressures when sound."""
        return len(self.values) + bool(self.oil_grade) + bool(self.baseline)

    @cached_property
    def limits(self) -> dict[Limit, float]:
        """The limits it sets, SI: a wear limit before the widest fit, the tighter of two leasts."""
        found: dict[Limit, float] = {}
        for value in self.values.values():
            figure, most = value.figure, value.worn if value.worn is not None else value.high
            if figure.least is not None and value.low is not None:
                found[figure.least] = min(value.low, found.get(figure.least, value.low))
            if figure.most is not None and most is not None:
                found[figure.most] = most
            if figure.nominal is not None and value.middle is not None:
                found[figure.nominal] = value.middle
        return {x: value for x, value in found.items() if value > 0.0}

    def dimensions(self, of_circuit: Mapping[str, Quantity]) -> dict[Quantity, float]:
        """What it states of the oil circuit, SI; of a range the middle."""
        found: dict[Quantity, float] = {}
        for value in self.values.values():
            quantity = value.figure.quantity
            if quantity is not None and quantity.id in of_circuit and value.middle is not None:
                found[quantity] = value.middle
        rate = self.spring_rate
        return found if rate is None else {**found, RELIEF_RATE: rate}

    @property
    def spring_rate(self) -> float | None:
        """Rate of the relief spring [N/m], from its free length and its load at another length."""
        free, length, load = (
            self.values[name].middle if name in self.values else None
            for name in ("relief_spring_length", "relief_spring_test_length", "relief_spring_load")
        )
        if free is None or length is None or load is None or free <= length:
            return None
        return load / (free - length)

    @cached_property
    def by_task(self) -> dict[str, tuple[CardValue, ...]]:
        """The figures that decide each sign-off task, by its id."""
        found: dict[str, tuple[CardValue, ...]] = {}
        for value in self.values.values():
            for task in value.figure.tasks:
                found[task] = (*found.get(task, ()), value)
        return found

    def unit(self, dimension: str, quantity: str = "") -> str | None:
        """The unit this card is written in: for a figure its own, else that of the dimension.

        A dimension for which [units] names none goes by the first figure of it.
        """
        own = self.values.get(quantity)
        if own is not None and own.unit and own.figure.dimension == dimension:
            return own.unit
        if dimension in self.units:
            return self.units[dimension]
        of_it = (v.unit for v in self.values.values() if v.figure.dimension == dimension)
        return next(filter(None, of_it), None)

    def features(self, book: Book) -> dict[Finding, State]:
        """What it says of how the engine is built: of its layout, then what differs from it."""
        layout = book.layouts.get(self.engine.layout)
        known: dict[Finding, State] = {}
        if layout is not None:
            known |= dict.fromkeys(layout.has, State.PRESENT)
            known |= dict.fromkeys(layout.lacks, State.ABSENT)
        return known | self.stated_features(book)

    def stated_features(self, book: Book) -> dict[Finding, State]:
        """The features it says the engine has or lacks, whatever its layout."""
        known: dict[Finding, State] = {}
        for words, state in ((self.engine.has, State.PRESENT), (self.engine.lacks, State.ABSENT)):
            known |= {book.findings[w]: state for w in words if w in book.findings}
        return known

    def speeds(self, book: Book) -> Speeds:
        """Idle and top speed of the engine."""
        diesel = self.features(book).get(DIESEL) is State.PRESENT
        return speeds_of(self.limits.get(USUAL_IDLE_SPEED), diesel)

    def missing(self, book: Book) -> tuple[CardFigure, ...]:
        """The figures this engine can have and the card lacks, the most useful first."""
        known = self.features(book)

        def has(feature: Finding) -> bool | None:
            state = known.get(feature)
            return None if state is None else state is State.PRESENT

        open_ = [f for f in book.card_figures.values() if f.id not in self.values and f.fits(has)]
        return tuple(sorted(open_, key=lambda f: f.rank))


def is_card(raw: Mapping[str, Any]) -> bool:
    """Whether the tables of a TOML file are those of a card."""
    return "card" in raw and "schema" not in raw


def holds_card(path: Path) -> bool:
    """Whether a file of a folder is a card, by its first lines; False where it cannot be read."""
    try:
        if not stat.S_ISREG(os.lstat(path).st_mode):
            return False
        with path.open("rb") as file:
            return _CARD_LINE.match(file.read(BEGINNING)) is not None
    except (OSError, ValueError):
        return False


def load_card(path: Path, book: Book) -> Card:
    """Read the card in a file. Raises NoCaseError, BadCaseError with every fault found."""
    return card_from_text(read_text(path, "card"), path, book)


def card_from_text(text: str, path: Path, book: Book) -> Card:
    """Read the card in a text. Raises BadCaseError with every fault found."""
    try:
        raw = parsed(text, "card")
    except ValueError as error:
        raise BadCaseError(named(path), [str(error)]) from None
    faults = Faults()
    card: Card | None = None
    with contextlib.suppress(TooManyFaultsError):
        card = _Reader(raw, book, faults).card(path)
    if faults or card is None:
        raise BadCaseError(named(path), faults)
    return card


def is_grade(oil: str) -> bool:
    """Whether a text is one grade of oil, as a card has it."""
    try:
        grade_named(oil)
    except ValueError:
        return False
    return True


def figure_named(name: str, book: Book) -> CardFigure:
    """The figure of that id or other name. Raises UsageError with the nearest."""
    names = _names(book)
    figure = names.get(normal_id(name))
    if figure is None:
        raise UsageError(f"{plain(name)}: no such figure of a card.{nearest(name, names)}")
    return figure


def _names(book: Book) -> dict[str, CardFigure]:
    """Every figure by its id and its other names."""
    return {n: f for f in book.card_figures.values() for n in (f.id, *f.also)}


class _Reader:
    """One pass over the tables of a card, collecting faults."""

    def __init__(self, raw: Mapping[str, Any], book: Book, faults: Faults) -> None:
        self.raw = raw
        self.book = book
        self.faults = faults
        self.names = _names(book)

    def card(self, path: Path) -> Card:
        """Build the card as far as it can be read. Raises TooManyFaultsError."""
        self._check_top()
        engine = self._engine()
        units = dict(self._units())
        values = {v.figure.id: v for v in self._values(units)}
        card = Card(path, engine, self._oil_grade(), values, units)
        sound = on_card(self.raw.get(BASELINE, []), card.speeds(self.book), self.faults)
        return replace(card, baseline=tuple(sound))

    def _check_top(self) -> None:
        version = self.raw.get("card")
        if version is None:
            kind = "this is a case" if "schema" in self.raw else f"it must begin 'card = {VERSION}'"
            self.faults.add(f"card: missing; {kind}")
            if "schema" in self.raw:
                raise TooManyFaultsError
        elif type(version) is not int or version != VERSION:
            self.faults.add(f"card: {seen(version)} is unknown here; this is {VERSION}")
        for key in self.raw:
            if key not in ("card", *_TABLES):
                figure = self.names.get(normal_id(key))
                right = f" It belongs under [{figure.section.value}]." if figure else ""
                self.faults.add(f"{plain(key)}: no such table.{right or nearest(key, _TABLES)}")

    def _table(self, name: str) -> Mapping[str, Any]:
        table = self.raw.get(name, {})
        if isinstance(table, dict):
            return table
        self.faults.add(f"{name}: must be a table, written [{name}]")
        return {}

    def _engine(self) -> CardEngine:
        found = checked(self._table("engine"), "engine", CardEngine)
        for fault in found.faults:
            self.faults.add(fault)
        engine = found.table
        self._known(engine.layout, self.book.layouts, "engine.layout", "layout")
        if engine.profile is not None:
            self._known(engine.profile, self.book.profiles, "engine.profile", "profile")
        features = {f.id: f for f in self.book.findings.values() if f.kind is Kind.LAYOUT}
        for key in ("has", "lacks"):
            for word in getattr(engine, key):
                self._known(word, features, f"engine.{key}", "feature")
        both = {*engine.has} & {*engine.lacks}
        for word in sorted(both):
            self.faults.add(f"engine: '{plain(word)}' stands under both has and lacks")
        return engine

    def _known(self, word: str, words: Mapping[str, object], where: str, sort: str) -> None:
        if word not in words:
            listed = f" 'diagnose lookup --kind {sort}' lists them." if sort == "layout" else ""
            near = nearest(word, words) or listed
            self.faults.add(f"{where}: no such {sort} '{plain(word)}'.{near}")

    def _units(self) -> Iterator[tuple[str, str]]:
        for key, unit in self._table("units").items():
            if key not in UNITS:
                self.faults.add(f"units.{plain(key)}: no such unit to set.{nearest(key, UNITS)}")
            elif not isinstance(unit, str) or not is_unit(unit, DIMENSIONS[key]):
                names = [u.names[0] for u in DIMENSIONS[key].units]
                right = f"write one of {', '.join(names)}"
                self.faults.add(f"units.{key}: {seen(unit)} is no unit of {key}; {right}")
            else:
                yield key, unit

    def _oil_grade(self) -> str:
        table = {k: v for k, v in self._table("oil").items() if k == "grade"}
        found = checked(table, "oil", OilInIt)
        for fault in found.faults:
            self.faults.add(fault)
        grade = found.table.grade.strip()
        if not grade:
            return ""
        try:
            grade_named(grade)
        except ValueError as error:
            self.faults.add(f"oil.grade: {error}")
        return grade

    def _values(self, units: Mapping[str, str]) -> Iterator[CardValue]:
        for section in Section:
            for key, raw in self._table(section.value).items():
                if section is Section.OIL and key == "grade":
                    continue
                where = f"{section.value}.{plain(key)}"
                figure = self.names.get(normal_id(key))
                if figure is None:
                    self.faults.add(f"{where}: no such figure.{self._near(key, section)}")
                elif figure.section is not section:
                    self.faults.add(f"{where}: belongs under [{figure.section.value}]")
                elif isinstance(raw, bool) or not isinstance(raw, str | int | float):
                    self.faults.add(f"{where}: {seen(raw)} must be text, in quotes, with its unit")
                elif "_" in str(raw):
                    self.faults.add(f"{where}: still to be filled in; write a figure for each _")
                else:
                    unit = units.get(figure.dimension)
                    value = card_value(str(raw), figure, unit, where, self.faults)
                    if value is not None:
                        yield value

    def _near(self, key: str, section: Section) -> str:
        """The nearest name, of this table before the others."""
        here = [n for n, f in self.names.items() if f.section is section]
        return nearest(key, here) or nearest(key, self.names)
