"""From raw tables to the book's own words: every entry resolved, every fault collected."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, TypeGuard, TypeVar

from diagnose.case.case import Case, Closing, Measurement, Sighting, TaskRecord
from diagnose.case.schema import (
    ENTRIES,
    MOST_NUMBERED,
    TABLES,
    VERSION,
    AnyTable,
    BaselineEntry,
    Checked,
    ClosedEntry,
    Engine,
    Entry,
    Expect,
    FindingEntry,
    Job,
    ReadingEntry,
    WorkEntry,
    checked,
    seen,
)
from diagnose.case.values import (
    Faults,
    dimension_value,
    gauge_reading,
    healthy_reading,
    limit_value,
    measured_value,
    quantity,
    task_value,
)
from diagnose.errors import nearest, plain
from diagnose.inference.chaining import Observation
from knowledge.book import Book
from knowledge.engines.profiles import Profile
from knowledge.model import Finding, Kind, Limit, Measure, Quantity, Stage, State
from knowledge.units import DIMENSIONS

AnyEntry = TypeVar("AnyEntry", bound=Entry)
AnyWord = TypeVar("AnyWord")


class Resolver:
    """One pass over the raw tables, collecting faults."""

    def __init__(
        self, raw: Mapping[str, Any], book: Book, faults: Faults, last: int | None = None
    ) -> None:
        self.raw = raw
        self.last = last  #: entries after this one are as if not there
        self.book = book
        self.faults = faults
        self.words: dict[str, Finding | Measure] = {**book.findings, **book.measures}

    def case(self, path: Path | None) -> Case:
        """The case, as far as it can be read. Raises EnoughError."""
        self._top()
        job = self._table("job", Job).table
        engine = self._table("engine", Engine)
        expect = self._expect() if "expect" in self.raw else None
        findings = self._entries("finding", FindingEntry)
        readings = self._entries("reading", ReadingEntry)
        baseline = self._entries("baseline", BaselineEntry)
        work = self._entries("work", WorkEntry)
        closed = self._entries("closed", ClosedEntry)
        every: list[Checked[Any]] = [*findings, *readings, *baseline, *work, *closed]
        replaced = self._replaced(every)
        findings = [f for f in findings if _stands(f.table, replaced)]
        readings = [r for r in readings if _stands(r.table, replaced)]
        baseline = [b for b in baseline if _stands(b.table, replaced)]
        work = [w for w in work if _stands(w.table, replaced)]
        closed = [c for c in closed if _stands(c.table, replaced)]
        word = engine.table.layout
        layout = self._word(word, self.book.layouts, "engine.layout", "layout")
        features = self._features(engine.table)
        if layout:
            of_layout = {
                **dict.fromkeys(layout.has, State.PRESENT),
                **dict.fromkeys(layout.lacks, State.ABSENT),
            }
            features = {**of_layout, **features}
        sightings, measured = self._sightings(findings)
        read = [r for each in readings for r in gauge_reading(each, self.faults)]
        return Case(
            path=path,
            job=job,
            engine=engine.table,
            layout=layout or self.book.layouts["unknown"],
            sightings=tuple(sightings),
            measured=tuple(measured),
            readings=tuple(r for r in read if r.entry.at is None),
            started=tuple(r for r in read if r.entry.at == "start"),
            limits=self._limits(engine.table),
            profile=self._profile(engine.table),
            dimensions=self._dimensions(engine.table),
            baseline=tuple(b for each in baseline for b in healthy_reading(each, self.faults)),
            features=features,
            works=tuple(w for each in work for w in self._works(each)),
            closed=[self._closed(each) for each in closed][-1] if closed else None,
            expect=expect,
            last_number=max(self.numbers, default=0),
            standing={e.table.no: e.table for e in every if _stands(e.table, replaced)},
            engine_told="engine" in self.raw,
        )

    def _top(self) -> None:
        known = {"schema", *TABLES, *ENTRIES}
        for key in self.raw:
            if key not in known:
                self.faults.add(f"{plain(key)}: no such table.{nearest(key, known)}")
        version = self.raw.get("schema")
        if version is None:
            self.faults.add(f"schema: missing; the file must begin with 'schema = {VERSION}'")
        elif type(version) is not int or version != VERSION:
            self.faults.add(f"schema: {seen(version)} is unknown here; this is {VERSION}")

    def _table(self, name: str, model: type[AnyTable]) -> Checked[AnyTable]:
        raw = self.raw.get(name, {})
        if not isinstance(raw, dict):
            self.faults.add(f"{name}: must be a table, written [{name}]")
            raw = {}
        return self._told(checked(raw, name, model))

    def _told(self, table: Checked[AnyTable]) -> Checked[AnyTable]:
        for fault in table.faults:
            self.faults.add(fault)
        return table

    def _expect(self) -> Expect:
        expect = self._table("expect", Expect).table
        for key in ("first", "among_three", "among_five"):
            for word in getattr(expect, key):
                self._word(word, self.book.causes, f"expect.{key}", "cause")
        return expect

    def _entries(self, name: str, model: type[AnyEntry]) -> list[Checked[AnyEntry]]:
        raw = self.raw.get(name, [])
        if not isinstance(raw, list):
            self.faults.add(f"{name}: must be a list of tables, each written [[{name}]]")
            return []
        if len(raw) > MOST_NUMBERED:
            self.faults.add(f"{name}: {len(raw):,} entries; at most {MOST_NUMBERED:,}")
            return []
        found = []
        for i, one in enumerate(raw, 1):
            if not isinstance(one, dict):
                self.faults.add(f"{name}[{i}]: must be a table, written [[{name}]]")
                continue
            number = one.get("no")
            if self.last is not None and _is_number(number) and number > self.last:
                continue
            where = f"{name} no = {number}" if _is_number(number) else f"{name}[{i}]"
            found.append(self._told(checked(one, where, model)))
        return found

    def _replaced(self, entries: list[Checked[Any]]) -> set[int]:
        """Numbers that a later entry corrects; ``numbers`` holds all of them by kind."""
        self.numbers: dict[int, type[Entry]] = {}
        replaced: set[int] = set()
        numbered = [e for e in entries if "no" not in e.broken]
        for entry in sorted(numbered, key=lambda e: int(e.table.no)):
            number, old = entry.table.no, entry.table.replaces
            if number in self.numbers:
                self.faults.add(f"entry no = {number}: the number is used twice")
            if old is not None and old not in self.numbers:
                self.faults.add(f"entry no = {number}: replaces = {old} names no earlier entry")
            elif old is not None and self.numbers[old] is not type(entry.table):
                self.faults.add(
                    f"entry no = {number}: replaces = {old} is of another kind; "
                    "an entry corrects one of its own kind"
                )
            if old is not None:
                replaced.add(old)
            self.numbers[number] = type(entry.table)
        return replaced

    def _word(
        self, word: str, words: Mapping[str, AnyWord], where: str, sort: str
    ) -> AnyWord | None:
        found = words.get(word.lower().replace("-", "_"))
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

    def _limits(self, engine: Engine) -> dict[Limit, float]:
        out: dict[Limit, float] = {}
        for name, text in engine.limits.items():
            where = f"engine.limits.{plain(name)}"
            limit = self._word(name, self.book.limits, "engine.limits", "limit")
            value = limit_value(text, limit, where, self.faults) if limit else None
            if limit and value is not None:
                out[limit] = value
        return out

    def _profile(self, engine: Engine) -> Profile | None:
        """The circuit named, else the one that goes with the layout."""
        if engine.profile is not None:
            return self._word(engine.profile, self.book.profiles, "engine.profile", "profile")
        return self.book.profile_of(engine.layout.lower().replace("-", "_"))

    def _dimensions(self, engine: Engine) -> dict[Quantity, float]:
        out: dict[Quantity, float] = {}
        for name, text in engine.dimensions.items():
            where = f"engine.dimensions.{plain(name)}"
            what = self._word(name, self.book.dimensions, "engine.dimensions", "dimension")
            value = dimension_value(text, what, where, self.faults) if what else None
            if what and value is not None:
                out[what] = value
        return out

    def _sightings(
        self, entries: list[Checked[FindingEntry]]
    ) -> tuple[list[Sighting], list[Measurement]]:
        sightings: list[Sighting] = []
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
                if entry.state in ("present", "absent"):
                    observation = Observation(State(entry.state), float(entry.sure or 1.0))
                sightings.append(
                    Sighting(entry, word, observation, Stage(entry.learned or word.stage))
                )
        unsure = {id(e.table) for e in entries if e.broken & {"no", "replaces"}}
        self._clashes([s for s in sightings if id(s.entry) not in unsure])
        return sightings, measured

    def _works(self, each: Checked[WorkEntry]) -> Iterator[TaskRecord]:
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

    def _clashes(self, sightings: list[Sighting]) -> None:
        first: dict[tuple[Finding, str], Sighting] = {}
        for s in sightings:
            if s.observation is None:
                continue
            old = first.setdefault((s.finding, s.entry.where), s)
            if old.observation and old.observation.state is not s.observation.state:
                self.faults.add(
                    f"finding no = {s.entry.no}: says {s.observation.state} where no = {old.entry.no} "
                    f"says {old.observation.state}; if it corrects that, add replaces = {old.entry.no}"
                )


def _is_number(value: object) -> TypeGuard[int]:
    return type(value) is int and abs(value) < 10**9


def _stands(
    entry: FindingEntry | ReadingEntry | BaselineEntry | WorkEntry | ClosedEntry,
    replaced: set[int],
) -> bool:
    return entry.no not in replaced and entry.state != "withdrawn"
