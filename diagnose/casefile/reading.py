"""Read a case file: every fault at once, each with where, what, and the nearest right thing."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable, Mapping
from difflib import get_close_matches
from pathlib import Path
from typing import Any, TypeVar

from pydantic import ValidationError

from diagnose.casefile.case import Case, Measured, Read, Sighting
from diagnose.casefile.schema import (
    ENTRIES,
    TABLES,
    VERSION,
    Engine,
    Entry,
    Expect,
    FindingEntry,
    Job,
    ReadingEntry,
    Table,
)
from diagnose.chaining import Report
from diagnose.errors import BadCaseError, NoCaseError
from knowledge.book import Book
from knowledge.units import DIMENSIONS, PRESSURE, SPEED, TEMPERATURE, UnitError, parse, show
from knowledge.vocabulary import Finding, Kind, Measure, Reading, Stage, State

AnyTable = TypeVar("AnyTable", bound=Table)
AnyEntry = TypeVar("AnyEntry", bound=Entry)
AnyWord = TypeVar("AnyWord")

LARGEST = 2_000_000  #: bytes; no job of a person's comes near
MOST_FAULTS = 40
_PLAUSIBLE = {  # what a gauge, thermometer or counter on an engine can really show
    "rpm": (50.0, 20_000.0),
    "oil": (223.15, 473.15),
    "pressure": (0.0, 300 * 6894.757),
    "error": (0.0, 30 * 6894.757),
}


def load(path: Path, book: Book) -> Case:
    """The case in a file. Raises NoCaseError, BadCaseError."""
    return from_text(slurp(path), path, book)


def slurp(path: Path) -> str:
    """The file's text. Raises NoCaseError, BadCaseError."""
    try:
        if not path.is_file():
            raise NoCaseError(_no_such(path))
        if path.stat().st_size > LARGEST:
            raise BadCaseError(
                str(path), [f"{path.stat().st_size:,} bytes; a case is at most {LARGEST:,}"]
            )
        return path.read_bytes().decode("utf-8")
    except UnicodeDecodeError as error:
        fault = f"byte {error.start} is not UTF-8 text; save the file as UTF-8"
        raise BadCaseError(str(path), [fault]) from None
    except PermissionError:
        raise NoCaseError(f"{path}: no permission to read it") from None
    except OSError as error:
        raise NoCaseError(f"{path}: {error.strerror or error}") from None
    except ValueError:
        raise NoCaseError(f"{str(path)!r}: no such file name") from None


def _no_such(path: Path) -> str:
    if path.is_dir():
        return f"{path}: is a folder; name a case file in it"
    if not path.parent.is_dir():
        return f"{path}: there is no folder {path.parent}"
    near = get_close_matches(path.name, [p.name for p in path.parent.glob("*.toml")], 1)
    hint = f"; did you mean {path.parent / near[0]}?" if near else "; 'diagnose ask' starts one"
    return f"{path}: no such case{hint}"


def from_text(text: str, path: Path | None, book: Book) -> Case:
    """The case in a text. Raises BadCaseError with every fault found."""
    where = str(path) if path else "case"
    try:
        raw = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise BadCaseError(where, [f"not a TOML file: {error}"]) from None
    except (RecursionError, ValueError):
        raise BadCaseError(where, ["nested too deep, or a number too long, for a case"]) from None
    faults: list[str] = []
    case = _Reader(raw, book, faults).case(path)
    if faults:
        kept = faults[:MOST_FAULTS]
        if len(faults) > MOST_FAULTS:
            kept.append(f"and {len(faults) - MOST_FAULTS} more")
        raise BadCaseError(where, kept)
    return case


def nearest(word: str, words: Iterable[str]) -> str:
    """' Did you mean …?', or nothing."""
    near = get_close_matches(word.lower().replace("-", "_"), list(words), 1, 0.55)
    return f" Did you mean '{near[0]}'?" if near else ""


class _Reader:
    """One pass over the raw tables, collecting faults."""

    def __init__(self, raw: Mapping[str, Any], book: Book, faults: list[str]) -> None:
        self.raw = raw
        self.book = book
        self.faults = faults

    def case(self, path: Path | None) -> Case:
        self._top()
        job = self._table("job", Job)
        engine = self._table("engine", Engine)
        expect = self._table("expect", Expect) if "expect" in self.raw else None
        findings = self._entries("finding", FindingEntry)
        readings = self._entries("reading", ReadingEntry)
        every: list[Entry] = [*findings, *readings]
        replaced = self._replaced(every)
        standing = [f for f in findings if f.no not in replaced and f.state != "withdrawn"]
        layout = self._word(engine.layout, self.book.layouts, "engine.layout", "layout")
        if expect:
            for key in ("first", "among_three", "among_five"):
                for word in getattr(expect, key):
                    self._word(word, self.book.causes, f"expect.{key}", "cause")
        features = self._features(engine)
        if layout:
            features = {
                **dict.fromkeys(layout.has, State.PRESENT),
                **dict.fromkeys(layout.lacks, State.ABSENT),
                **features,
            }
        sightings, measured = self._sightings(standing)
        return Case(
            path=path,
            job=job,
            engine=engine,
            layout=layout or self.book.layouts["unknown"],
            sightings=tuple(sightings),
            measured=tuple(measured),
            readings=tuple(
                r
                for e in readings
                if e.no not in replaced and e.state != "withdrawn"
                for r in self._reading(e)
            ),
            limits=self._limits(engine),
            features=features,
            expect=expect,
            last_number=max((e.no for e in every), default=0),
        )

    def _top(self) -> None:
        known = {"schema", *TABLES, *ENTRIES}
        for key in self.raw:
            if key not in known:
                self.faults.append(f"{key}: no such table.{nearest(key, known)}")
        version = self.raw.get("schema")
        if version is None:
            self.faults.append(f"schema: missing; the file must begin with 'schema = {VERSION}'")
        elif version != VERSION:
            self.faults.append(f"schema: {str(version)[:20]!r} is unknown here; this is {VERSION}")

    def _table(self, name: str, model: type[AnyTable]) -> AnyTable:
        raw = self.raw.get(name, {})
        if not isinstance(raw, dict):
            self.faults.append(f"{name}: must be a table, written [{name}]")
            return model()
        return self._valid(raw, name, model) or model()

    def _entries(self, name: str, model: type[AnyEntry]) -> list[AnyEntry]:
        raw = self.raw.get(name, [])
        if not isinstance(raw, list):
            self.faults.append(f"{name}: must be a list of tables, each written [[{name}]]")
            return []
        found = []
        for i, one in enumerate(raw, 1):
            if not isinstance(one, dict):
                self.faults.append(f"{name}[{i}]: must be a table, written [[{name}]]")
                continue
            entry = self._valid(one, f"{name}[{i}]", model)
            if entry:
                found.append(entry)
        return found

    def _valid(self, raw: dict[str, Any], where: str, model: type[AnyTable]) -> AnyTable | None:
        try:
            return model.model_validate(raw)
        except ValidationError as error:
            for fault in error.errors():
                self.faults.append(_told(fault, where, model))
        except RecursionError:
            self.faults.append(f"{where}: nested too deep")
        return None

    def _replaced(self, entries: list[Entry]) -> set[int]:
        numbers: set[int] = set()
        replaced: set[int] = set()
        for entry in sorted(entries, key=lambda e: e.no):
            if entry.no in numbers:
                self.faults.append(f"entry no = {entry.no}: the number is used twice")
            if entry.replaces is not None:
                if entry.replaces not in numbers:
                    self.faults.append(
                        f"entry no = {entry.no}: replaces = {entry.replaces} names no earlier entry"
                    )
                replaced.add(entry.replaces)
            numbers.add(entry.no)
        return replaced

    def _word(
        self, word: str, words: Mapping[str, AnyWord], where: str, sort: str
    ) -> AnyWord | None:
        found = words.get(word.lower().replace("-", "_"))
        if found is None:
            self.faults.append(f"{where}: no such {sort} '{word[:60]}'.{nearest(word, words)}")
        return found

    def _features(self, engine: Engine) -> dict[Finding, State]:
        known = {f.id: f for f in self.book.findings.values() if f.kind is Kind.LAYOUT}
        out: dict[Finding, State] = {}
        for key, state in (("has", State.PRESENT), ("lacks", State.ABSENT)):
            for word in getattr(engine, key):
                finding = self._word(word, known, f"engine.{key}", "feature")
                if finding and out.get(finding, state) is not state:
                    self.faults.append(f"engine: '{word}' stands under both has and lacks")
                elif finding:
                    out[finding] = state
        return out

    def _limits(self, engine: Engine) -> dict[Any, float]:
        out = {}
        for name, text in engine.limits.items():
            limit = self._word(name, self.book.limits, "engine.limits", "limit")
            if limit:
                value = self._quantity(text, limit.dimension, f"engine.limits.{name}")
                if value is not None and value <= 0:
                    self.faults.append(f"engine.limits.{name}: '{text}' must be above zero")
                elif value is not None:
                    out[limit] = value
        return out

    def _quantity(self, text: str, dimension: str, where: str) -> float | None:
        try:
            return parse(text, DIMENSIONS[dimension])
        except UnitError as error:
            self.faults.append(f"{where}: {error}")
            return None

    def _sightings(self, entries: list[FindingEntry]) -> tuple[list[Sighting], list[Measured]]:
        sightings: list[Sighting] = []
        measured: list[Measured] = []
        for entry in entries:
            where = f"finding no = {entry.no}"
            words: dict[str, Finding | Measure] = {**self.book.findings, **self.book.measures}
            word = self._word(entry.what, words, where, "finding")
            if isinstance(word, Measure):
                value = self._measure(entry, word, where)
                if value is not None:
                    stage = Stage(entry.learned or "opened")
                    measured.append(Measured(entry, word, value, stage))
            elif word is not None:
                self._check_state(entry, word, where)
                report = None
                if entry.state in ("present", "absent"):
                    report = Report(State(entry.state), float(entry.sure or 1.0))
                sightings.append(Sighting(entry, word, report, Stage(entry.learned or word.stage)))
        self._clashes(sightings)
        return sightings, measured

    def _check_state(self, entry: FindingEntry, word: Finding, where: str) -> None:
        if entry.value is not None:
            self.faults.append(
                f'{where}: \'{word.id}\' is not measured; write state = "present" or "absent"'
            )
        elif entry.state is None:
            self.faults.append(f'{where}: state is missing; write "present", "absent" or "unknown"')

    def _measure(self, entry: FindingEntry, word: Measure, where: str) -> float | None:
        if entry.value is None:
            if entry.state == "unknown":
                return None
            spelling = DIMENSIONS[word.dimension].spellings[0]
            self.faults.append(f"{where}: '{word.id}' is measured; write value = \"{spelling}\"")
            return None
        value = self._quantity(entry.value, word.dimension, where)
        if value is not None and not word.plausible[0] <= value <= word.plausible[1]:
            low, high = (show(v, DIMENSIONS[word.dimension]) for v in word.plausible)
            self.faults.append(
                f"{where}: '{entry.value}' cannot be a {word.says}; expected {low} to {high}"
            )
            return None
        return value

    def _clashes(self, sightings: list[Sighting]) -> None:
        first: dict[tuple[Finding, str], Sighting] = {}
        for s in sightings:
            if s.report is None:
                continue
            key = (s.finding, s.entry.where)
            old = first.setdefault(key, s)
            if old.report and old.report.state is not s.report.state:
                self.faults.append(
                    f"finding no = {s.entry.no}: says {s.report.state} where no = {old.entry.no} "
                    f"says {old.report.state}; if it corrects that, add replaces = {old.entry.no}"
                )

    def _reading(self, entry: ReadingEntry) -> list[Read]:
        where = f"reading no = {entry.no}"
        got: dict[str, float] = {}
        for key, dimension in (
            ("rpm", SPEED),
            ("pressure", PRESSURE),
            ("oil", TEMPERATURE),
            ("error", PRESSURE),
        ):
            text = getattr(entry, key)
            if text is None:
                if key in ("rpm", "pressure"):
                    self.faults.append(f"{where}: {key} is missing")
                continue
            value = self._quantity(text, dimension.id, f"{where}: {key}")
            if value is None:
                continue
            low, high = _PLAUSIBLE[key]
            if not low <= value <= high:
                bounds = f"{show(low, dimension)} to {show(high, dimension, digits=5)}"
                self.faults.append(f"{where}: {key} '{text}' cannot be right; expected {bounds}")
                continue
            got[key] = value
        if not {"rpm", "pressure"} <= got.keys():
            return []
        reading = Reading(
            got["rpm"], got.get("oil"), got["pressure"], entry.gauge, entry.tap, got.get("error")
        )
        stage = Stage(entry.learned or ("told" if entry.gauge == "panel" else "outside"))
        return [Read(entry, reading, stage)]


def _told(fault: Any, where: str, model: type[Table]) -> str:
    """A pydantic fault in plain words."""
    place = ".".join([where, *(str(p) for p in fault["loc"] if not _is_branch(str(p)))])
    if fault["type"] == "extra_forbidden":
        key = str(fault["loc"][-1])
        return f"{place}: no such field.{nearest(key, model.model_fields)}"
    if fault["type"] == "missing":
        return f"{place}: missing"
    if fault["type"] == "literal_error":
        return f"{place}: {str(fault['input'])[:40]!r} is not {fault['ctx']['expected']}"
    message = re.sub(r"^Input should be ", "should be ", str(fault["msg"]))
    return f"{place}: {str(fault['input'])[:40]!r} {message}"


def _is_branch(part: str) -> bool:
    return part in {"datetime", "date", "float", "int"} or "[" in part
