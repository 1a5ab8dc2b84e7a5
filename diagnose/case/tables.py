"""Check the raw tables of a case file one by one; every fault is collected.

Knows the shape of each table, nothing of the book.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any, TypeGuard, TypeVar

from diagnose.case.file_faults import Faults
from diagnose.case.schema import (
    ENTRIES,
    MOST_NUMBERED,
    TABLES,
    VERSION,
    AnyTable,
    BaselineEntry,
    BearingEntry,
    BehaviourEntry,
    Checked,
    ClosedEntry,
    EarlierEntry,
    Entry,
    FindingEntry,
    ReadingEntry,
    TrialEntry,
    WorkEntry,
    checked,
    seen,
)
from diagnose.errors import nearest, plain

AnyEntry = TypeVar("AnyEntry", bound=Entry)
#: entries that can be withdrawn
StatedEntry = (
    FindingEntry
    | ReadingEntry
    | BaselineEntry
    | WorkEntry
    | ClosedEntry
    | BehaviourEntry
    | TrialEntry
    | EarlierEntry
    | BearingEntry
)
#: names for messages, by kind and number, of entries that have no number yet
EntryNames = Mapping[tuple[str, int], str]


@dataclass(frozen=True, slots=True, kw_only=True)
class Entries:
    """The numbered entries of a case that no later entry replaces or withdraws."""

    findings: list[Checked[FindingEntry]]
    readings: list[Checked[ReadingEntry]]
    baseline: list[Checked[BaselineEntry]]
    work: list[Checked[WorkEntry]]
    closed: list[Checked[ClosedEntry]]
    behaviours: list[Checked[BehaviourEntry]]
    trials: list[Checked[TrialEntry]]
    earlier: list[Checked[EarlierEntry]]
    bearings: list[Checked[BearingEntry]]
    last_number: int  #: of all entries, replaced ones included

    @property
    def by_number(self) -> dict[int, Entry]:
        """Each entry by its number."""
        every: list[list[Any]] = [
            self.findings,
            self.readings,
            self.baseline,
            self.work,
            self.closed,
            self.behaviours,
            self.trials,
            self.earlier,
            self.bearings,
        ]
        return {each.table.no: each.table for kind in every for each in kind}


class TableReader:
    """The raw tables of one file, and the faults found in them."""

    def __init__(
        self,
        raw: Mapping[str, Any],
        faults: Faults,
        last: int | None = None,
        names: EntryNames | None = None,
    ) -> None:
        self.raw = raw
        self.faults = faults
        self.last = last  #: entries after this one are ignored
        self.names = names or {}

    def check_top(self) -> None:
        """Collect faults of the table names and of the schema's version."""
        known = {"schema", *TABLES, *ENTRIES}
        for key in self.raw:
            if key not in known:
                self.faults.add(f"{plain(key)}: no such table.{nearest(key, known)}")
        version = self.raw.get("schema")
        if version is None:
            self.faults.add(f"schema: missing; the file must begin with 'schema = {VERSION}'")
        elif type(version) is not int or version != VERSION:
            self.faults.add(f"schema: {seen(version)} is unknown here; this is {VERSION}")

    def table(self, name: str, model: type[AnyTable]) -> Checked[AnyTable]:
        """Check one table; an empty one where there is none."""
        raw = self.raw.get(name, {})
        if not isinstance(raw, dict):
            self.faults.add(f"{name}: must be a table, written [{name}]")
            raw = {}
        return self._collected(checked(raw, name, model))

    def entries(self) -> Entries:
        """Check all numbered entries, and drop those that others replace or withdraw."""
        findings = self._list("finding", FindingEntry)
        readings = self._list("reading", ReadingEntry)
        baseline = self._list("baseline", BaselineEntry)
        work = self._list("work", WorkEntry)
        closed = self._list("closed", ClosedEntry)
        behaviours = self._list("behaviour", BehaviourEntry)
        trials = self._list("trial", TrialEntry)
        earlier = self._list("earlier", EarlierEntry)
        bearings = self._list("bearing", BearingEntry)
        every: list[Checked[Any]] = [*findings, *readings, *baseline, *work, *closed]
        every += [*behaviours, *trials, *earlier, *bearings]
        kinds, replaced = replacements(every, self.faults)
        return Entries(
            findings=[f for f in findings if _stands(f.table, replaced)],
            readings=[r for r in readings if _stands(r.table, replaced)],
            baseline=[b for b in baseline if _stands(b.table, replaced)],
            work=[w for w in work if _stands(w.table, replaced)],
            closed=[c for c in closed if _stands(c.table, replaced)],
            behaviours=[b for b in behaviours if _stands(b.table, replaced)],
            trials=[t for t in trials if _stands(t.table, replaced)],
            earlier=[e for e in earlier if _stands(e.table, replaced)],
            bearings=[b for b in bearings if _stands(b.table, replaced)],
            last_number=max(kinds, default=0),
        )

    def name_of(self, kind: str, number: int) -> str:
        """Name an entry in a message."""
        return self.names.get((kind, number), f"{kind} no = {number}")

    def _list(self, kind: str, model: type[AnyEntry]) -> list[Checked[AnyEntry]]:
        raw = self.raw.get(kind, [])
        if not isinstance(raw, list):
            self.faults.add(f"{kind}: must be a list of tables, each written [[{kind}]]")
            return []
        if len(raw) > MOST_NUMBERED:
            self.faults.add(f"{kind}: {len(raw):,} entries; at most {MOST_NUMBERED:,}")
            return []
        found = []
        for i, one in enumerate(raw, 1):
            if not isinstance(one, dict):
                self.faults.add(f"{kind}[{i}]: must be a table, written [[{kind}]]")
                continue
            number = one.get("no")
            if self.last is not None and _is_number(number) and number > self.last:
                continue
            where = self.name_of(kind, number) if _is_number(number) else f"{kind}[{i}]"
            found.append(self._collected(checked(one, where, model)))
        return found

    def _collected(self, table: Checked[AnyTable]) -> Checked[AnyTable]:
        for fault in table.faults:
            self.faults.add(fault)
        return table


def replacements(
    entries: Iterable[Checked[Any]], faults: Faults
) -> tuple[dict[int, type[Entry]], set[int]]:
    """Return the kind of each numbered entry, and the numbers that later entries replace."""
    kinds: dict[int, type[Entry]] = {}
    replaced: set[int] = set()
    numbered = [e for e in entries if "no" not in e.broken]
    for entry in sorted(numbered, key=lambda e: int(e.table.no)):
        number, old = entry.table.no, entry.table.replaces
        if number in kinds:
            faults.add(f"entry no = {number}: the number is used twice")
        if old is not None and old not in kinds:
            faults.add(f"entry no = {number}: replaces = {old} names no earlier entry")
        elif old is not None and kinds[old] is not type(entry.table):
            faults.add(
                f"entry no = {number}: replaces = {old} is of another kind; "
                "an entry corrects one of its own kind"
            )
        if old is not None:
            replaced.add(old)
        kinds[number] = type(entry.table)
    return kinds, replaced


def _is_number(value: object) -> TypeGuard[int]:
    return type(value) is int and abs(value) < 10**9


def _stands(entry: StatedEntry, replaced: set[int]) -> bool:
    return entry.no not in replaced and entry.state != "withdrawn"
