"""Resolve the words of a case file to those of the book; every fault is collected."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from pathlib import Path
from typing import TypeVar

from diagnose.case import reports
from diagnose.case.baseline import healthy_reading, with_those_on_card
from diagnose.case.bearings import bearing_table, journal_sizes, with_clearances
from diagnose.case.card import Card
from diagnose.case.card_text import CardValue
from diagnose.case.case import (
    BearingTable,
    Case,
    Closing,
    FindingRecord,
    Measurement,
    TaskRecord,
)
from diagnose.case.file_faults import Faults, quantity
from diagnose.case.own_stops import with_own_stops
from diagnose.case.schema import (
    Checked,
    ClosedEntry,
    Engine,
    Expect,
    FindingEntry,
    Job,
    OilInIt,
    ReadingEntry,
    WorkEntry,
)
from diagnose.case.tables import TableReader
from diagnose.case.values import (
    dimension_value,
    gauge_reading,
    limit_value,
    measured_value,
    task_value,
)
from diagnose.errors import nearest, plain
from diagnose.inference.chaining import Observation
from knowledge.book import Book
from knowledge.card import Section
from knowledge.engines.features import DIESEL
from knowledge.engines.layouts import UNKNOWN
from knowledge.engines.profiles import Profile
from knowledge.limits import Figure, Limit
from knowledge.model import Finding, Kind, Measure, Quantity, Stage, State
from knowledge.pressure.quantities import USUAL_IDLE_SPEED
from knowledge.reports.when import NEAR_IDLE, SLOWEST_IDLE, USUAL_IDLE, Speeds, speeds_of
from knowledge.stations.oil.grades import grade_named
from knowledge.units import DIMENSIONS
from knowledge.work import Layout

AnyWord = TypeVar("AnyWord")
NO_CARD = Card(path=None)  #: of an engine without one


class Resolver:
    """One pass over the tables of a case, collecting faults."""

    def __init__(self, tables: TableReader, book: Book, card: Card | None = None) -> None:
        self.tables = tables
        self.book = book
        self.card = card or NO_CARD  #: of the case's engine
        self.faults = tables.faults
        self.words: dict[str, Finding | Measure] = {**book.findings, **book.measures}

    def case(self, path: Path | None) -> Case:
        """Build the case, as far as it can be read. Raises TooManyFaultsError."""
        self.tables.check_top()
        job = self.tables.table("job", Job).table
        engine = with_card(_engine(self.tables), self.card)
        expect = self._expect() if "expect" in self.tables.raw else None
        entries = self.tables.entries()
        stated = self._word(engine.layout, self.book.layouts, "engine.layout", "layout")
        layout = stated or UNKNOWN
        own_features = self._features(engine)
        current, retired = reports.split_retired(entries.findings, self.book)
        finding_records, measured = self._finding_records(current)
        for each, kind in retired:
            self._check_state(each, kind.cured)
        stated_on_card = self.card.stated_features(self.book)
        features = {**_features_of(layout), **stated_on_card, **own_features}
        idle_read, speeds = _speeds(engine, self.card, features, entries.readings)
        read = [r for each in entries.readings for r in gauge_reading(each, self.faults, speeds)]
        sound = [b for e in entries.baseline for b in healthy_reading(e, self.faults, speeds)]
        profile = self._profile(engine)
        limits = self._figures(engine.limits, self.book.limits, "engine.limits", limit_value)
        dimensions = self._dimensions(engine, limits)
        bearings = bearing_table(entries.bearings, self.faults)
        sizes = _sizes(engine, layout, profile, dimensions, self.card, bearings)
        worked = [w for e in entries.earlier for w in reports.earlier(e, self.book, self.faults)]
        usual = self._layout_limits(layout, sizes)
        shown = [b for e in entries.behaviours for b in reports.behaviour(e, self.faults)]
        case = Case(
            path=path,
            job=job,
            engine=engine,
            layout=layout,
            finding_records=tuple(finding_records),
            measurements=tuple(measured),
            readings=tuple(r for r in read if r.entry.at is None),
            start_readings=tuple(r for r in read if r.entry.at == "start"),
            limits=with_own_stops({**self.card.limits, **limits}, usual),
            layout_limits=usual,
            sizes=sizes,
            idle_read=idle_read,
            card=None if self.card is NO_CARD else self.card,
            own_figures=_own_figures(self.card, limits),
            profile=profile,
            dimensions=dimensions,
            baseline=with_those_on_card(sound, self.card.baseline),
            features=features,
            task_records=tuple(w for each in entries.work for w in self._task_records(each)),
            behaviours=tuple(shown),
            trials=tuple(reports.trials(entries.trials, retired, self.book, self.faults)),
            earlier=tuple(e for e in worked if e.entry.at is None),
            repairs=tuple(e for e in worked if e.entry.at is not None),
            closed=[self._closed(each) for each in entries.closed][-1] if entries.closed else None,
            expect=expect,
            last_number=entries.last_number,
            standing=entries.by_number,
            has_engine="engine" in self.tables.raw,
            has_job="job" in self.tables.raw,
            has_oil="oil" in self.tables.raw,
            bearings=bearings,
        )
        return with_clearances(case, self.book)

    def _expect(self) -> Expect:
        expect = self.tables.table("expect", Expect).table
        for key in ("first", "among_three", "among_five"):
            for word in getattr(expect, key):
                self._word(word, self.book.causes, f"expect.{key}", "cause")
        return expect

    def _word(
        self, word: str, words: Mapping[str, AnyWord], where: str, sort: str
    ) -> AnyWord | None:
        found = words.get(word)
        if found is None:
            self.faults.add(f"{where}: no such {sort} '{plain(word)}'.{nearest(word, words)}")
        return found

    def _features(self, engine: Engine) -> dict[Finding, State]:
        known = {f.id: f for f in self.book.findings.values() if f.kind is Kind.LAYOUT}
        out: dict[Finding, State] = {}
        for key, state in (("has", State.PRESENT), ("lacks", State.ABSENT)):
            for word in getattr(engine, key):
                finding = self._word(word, known, f"engine.{key}", "feature")
                if finding and out.setdefault(finding, state) is not state:
                    self.faults.add(f"engine: '{word}' stands under both has and lacks")
        return out

    def _figures(
        self,
        texts: Mapping[str, str],
        words: Mapping[str, AnyWord],
        where: str,
        value_of: Callable[[str, AnyWord, str, Faults], float | None],
    ) -> dict[AnyWord, float]:
        """The figures of a table of the engine in SI; ``where``: the table, "engine.limits"."""
        out: dict[AnyWord, float] = {}
        sort = where.rpartition(".")[2].removesuffix("s")
        for name, text in texts.items():
            word = self._word(name, words, where, sort)
            if word is None:
                continue
            value = value_of(text, word, f"{where}.{plain(name)}", self.faults)
            if value is not None:
                out[word] = value
        return out

    def _layout_limits(self, layout: Layout, sizes: Mapping[str, float]) -> dict[Limit, Figure]:
        """What is typical of this layout, or of the sizes (SI, by id) of the engine's parts."""
        found = {x: x.figure_for(layout.id, sizes) for x in self.book.limits.values()}
        return {x: figure for x, figure in found.items() if figure is not None}

    def _profile(self, engine: Engine) -> Profile | None:
        """The circuit named, else the one that goes with the layout."""
        if engine.profile is not None:
            return self._word(engine.profile, self.book.profiles, "engine.profile", "profile")
        return self.book.profile_of(engine.layout)

    def _dimensions(self, engine: Engine, limits: Mapping[Limit, float]) -> dict[Quantity, float]:
        """The figures of the circuit in SI; the case's own go before those of the engine's card."""
        known = self.book.dimensions
        own = self._figures(engine.dimensions, known, "engine.dimensions", dimension_value)
        return {**_card_dimensions(self.card, limits, self.book), **own}

    def _finding_records(
        self, entries: list[Checked[FindingEntry]]
    ) -> tuple[list[FindingRecord], list[Measurement]]:
        finding_records: list[FindingRecord] = []
        measured: list[Measurement] = []
        for each in entries:
            if "what" in each.broken:
                continue
            entry, where = each.table, each.where
            word = self._word(entry.what, self.words, where, "finding")
            if isinstance(word, Measure):
                value = measured_value(each, word, self.faults)
                if value is not None:
                    measured.append(
                        Measurement(entry, word, value, Stage(entry.learned or "opened"))
                    )
            elif word is not None:
                self._check_state(each, word)
                observation = None
                unclear = word in self.book.unclear_absent and entry.state == "absent"
                if entry.state in ("present", "absent") and not unclear:
                    observation = Observation(State(entry.state), float(entry.sure or 1.0))
                finding_records.append(
                    FindingRecord(entry, word, observation, Stage(entry.learned or word.stage))
                )
        unsure = {id(e.table) for e in entries if e.broken & {"no", "replaces"}}
        self._clashes([s for s in finding_records if id(s.entry) not in unsure])
        return finding_records, measured

    def _task_records(self, each: Checked[WorkEntry]) -> Iterator[TaskRecord]:
        """The task and what was measured, or nothing and faults."""
        if "what" in each.broken:
            return
        entry = each.table
        task = self._word(entry.what, self.book.tasks, each.where, "task")
        if task is None:
            return
        if entry.value is not None and not task.dimension:
            self.faults.add(f"{each.where}: '{task.id}' is not measured; write state = \"done\"")
        elif entry.state == "skipped" and not entry.note.strip():
            self.faults.add(f"{each.where}: '{task.id}' is skipped; write the reason as its note")
        elif each.broken & {"state", "value"}:
            return
        elif entry.value is None and entry.state is None:
            right = "write value, or state" if task.dimension else 'write state = "done"'
            self.faults.add(f"{each.where}: '{task.id}' has no answer; {right}")
        else:
            value = task_value(entry.value, task, each.where, self.faults)
            yield TaskRecord(entry, task, value)

    def _closed(self, each: Checked[ClosedEntry]) -> Closing:
        entry, where = each.table, each.where
        causes = [self._word(c, self.book.causes, f"{where}.causes", "cause") for c in entry.causes]
        if not causes and "causes" not in each.broken:
            self.faults.add(f"{where}: no cause; name one of the book, or not_in_the_book")
        spent, planned = (
            self._minutes(text, f"{where}: {key}")
            for key, text in (("minutes", entry.minutes), ("planned", entry.planned))
        )
        return Closing(entry, tuple(c for c in causes if c), spent, planned)

    def _minutes(self, text: str | None, where: str) -> float | None:
        seconds = quantity(text, DIMENSIONS["time"], where, self.faults) if text else None
        return None if seconds is None else seconds / 60.0

    def _check_state(self, each: Checked[FindingEntry], word: Finding) -> None:
        if each.table.value is not None:
            right = 'write state = "present" or "absent"'
            self.faults.add(f"{each.where}: '{word.id}' is not measured; {right}")
        elif each.table.state is None and not each.broken & {"state", "value"}:
            right = 'write "present", "absent" or "unknown"'
            self.faults.add(f"{each.where}: state is missing; {right}")

    def _clashes(self, finding_records: list[FindingRecord]) -> None:
        first: dict[tuple[Finding, str], FindingRecord] = {}
        for s in finding_records:
            if s.observation is None:
                continue
            old = first.setdefault((s.finding, s.entry.where), s)
            if old.observation and old.observation.state is not s.observation.state:
                self.faults.add(
                    f"{self.tables.name_of('finding', s.entry.no)}: says {s.observation.state} where no = {old.entry.no} "
                    f"says {old.observation.state}; if it corrects that, add replaces = {old.entry.no}"
                )


def _engine(tables: TableReader) -> Engine:
    """The [engine]; the grade under [oil] goes before its own."""
    engine = tables.table("engine", Engine).table
    grade = tables.table("oil", OilInIt).table.grade.strip()
    if grade:
        try:
            grade_named(grade)
        except ValueError as error:
            tables.faults.add(f"oil.grade: {error}")
    return engine.model_copy(update={"oil": grade or engine.oil})


def with_card(engine: Engine, card: Card) -> Engine:
    """The [engine] of a case with what its card says besides; the case goes first."""
    on_card = card.engine
    return engine.model_copy(
        update={
            "layout": on_card.layout if engine.layout == UNKNOWN.id else engine.layout,
            "profile": engine.profile or on_card.profile,
            "name": engine.name or on_card.name,
            "aircraft": on_card.aircraft if engine.aircraft is None else engine.aircraft,
            "oil": engine.oil or card.oil_grade,
        }
    )


def _card_dimensions(
    card: Card, stated: Mapping[Limit, float], book: Book
) -> dict[Quantity, float]:
    """The circuit's figures on the card, but for those whose limit the case states itself."""
    again = {
        value.figure.quantity
        for value in card.values.values()
        if any(limit in stated for limit in value.figure.limits)
    }
    every = card.dimensions(book.dimensions)
    return {q: value for q, value in every.items() if q not in again}


def _sizes(
    engine: Engine,
    layout: Layout,
    profile: Profile | None,
    dimensions: Mapping[Quantity, float],
    card: Card,
    bearings: BearingTable,
) -> dict[str, float]:
    """Sizes of the engine's parts by id, SI: of its circuit, as measured, its card, the case."""
    sizes: dict[str, float] = {}
    if profile is not None and (layout is not UNKNOWN or engine.profile is not None):
        sizes = {name: value for name, (value, _) in profile.numbers.items()}
    sizes |= journal_sizes(bearings)
    for value in card.values.values():
        if value.figure.section is Section.SIZES and value.middle is not None:
            sizes[value.figure.id] = value.middle
    return sizes | {q.id: value for q, value in dimensions.items()}


def _own_figures(card: Card, stated: Mapping[Limit, float]) -> dict[str, tuple[CardValue, ...]]:
    """The card's figures by task, without those whose limit the case states itself."""
    found = {}
    for task, values in card.by_task.items():
        kept = tuple(v for v in values if not any(x in stated for x in v.figure.limits))
        if kept:
            found[task] = kept
    return found


def _features_of(layout: Layout) -> dict[Finding, State]:
    """The features that a layout has and lacks."""
    return {
        **dict.fromkeys(layout.has, State.PRESENT),
        **dict.fromkeys(layout.lacks, State.ABSENT),
    }


def _speeds(
    engine: Engine,
    card: Card,
    features: Mapping[Finding, State],
    readings: Sequence[Checked[ReadingEntry]],
) -> tuple[float | None, Speeds]:
    """The idle speed that readings show [rpm], and the speeds of the engine by it."""
    stated = _idle_stated(engine, card)
    speeds = speeds_of(stated, features.get(DIESEL) is State.PRESENT)
    read = _idle_read(readings, speeds)
    return read, speeds if read is None or stated else replace(speeds, idle=read)


def _idle_stated(engine: Engine, card: Card) -> float | None:
    """The idle speed of the case or its card [rpm]; a fault in it is found with the limits."""
    text = engine.limits.get(USUAL_IDLE_SPEED.id)
    if text:
        return limit_value(text, USUAL_IDLE_SPEED, "", Faults())
    return card.limits.get(USUAL_IDLE_SPEED)


def _idle_read(readings: Iterable[Checked[ReadingEntry]], speeds: Speeds) -> float | None:
    """The slowest speed near idle that a reading gives in figures [rpm]; None where none does."""
    _, high = NEAR_IDLE
    looks = [
        r.reading.rpm
        for each in readings
        if each.table.rpm and any(c.isdigit() for c in each.table.rpm)
        for r in gauge_reading(each, Faults(), speeds)
    ]
    near = [n for n in looks if SLOWEST_IDLE <= n <= high * USUAL_IDLE]
    return min(near, default=None)
