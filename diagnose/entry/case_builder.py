"""Build a case in Python, entry by entry, without a file."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from os import PathLike
from typing import Any, TypedDict, Unpack

from diagnose.case.case import Case
from diagnose.case.loading import from_tables
from diagnose.case.schema import VERSION, Learned
from diagnose.case.writing import table_text
from diagnose.entry.behaviours import parse_behaviour
from diagnose.entry.earlier import parse_earlier
from diagnose.entry.facts import (
    FactInput,
    FindingInput,
    MeasureInput,
    TaskInput,
    fact_about,
    find_word,
)
from diagnose.entry.new_entry import table_of
from diagnose.entry.readings import parse_baseline, parse_reading
from diagnose.entry.trials import TrialInput
from diagnose.errors import UsageError
from knowledge.book import Book, the_book
from knowledge.engines.layouts import UNKNOWN

_METHOD: dict[type[FactInput], str] = {
    FindingInput: "finding",
    MeasureInput: "measurement",
    TaskInput: "task",
    TrialInput: "trial",
}


class EntryDetails(TypedDict, total=False):
    """What any entry may carry besides its observation."""

    note: str
    by: str
    when: date
    learned: Learned  #: 'told', 'outside' or 'opened'; default: as usual for the finding
    replaces: int  #: the number of the entry that this one corrects


class CaseBuilder:
    """A case under construction; entries are numbered from 1 in the order they are added.

    Ids are those of the book (``diagnose lookup``); figures are text with their unit, as
    ``"0.11 mm"`` or ``"15 psi"``. Every method that adds an entry returns its number and raises
    UsageError, with the nearest right id or spelling, where the entry cannot be read.
    """

    def __init__(
        self,
        *,
        title: str = "",
        complaint: str = "",
        opened: date | None = None,
        by: str = "",
        note: str = "",
        layout: str = UNKNOWN.id,
        profile: str | None = None,
        card: str | PathLike[str] | None = None,
        has: Sequence[str] = (),
        lacks: Sequence[str] = (),
        oil: str = "",
        limits: Mapping[str, str] | None = None,
        dimensions: Mapping[str, str] | None = None,
        aircraft: bool | None = None,
        engine_name: str = "",
        engine_note: str = "",
        book: Book | None = None,
    ) -> None:
        """Begin a case.

        ``layout``: how the engine is built. ``card``: the file of the engine's card, from the
        working folder, whose figures count as far as the case states none. ``profile``: figures of
        the oil circuit, default those of the layout. ``has``, ``lacks``: features that differ from
        the layout. ``limits``: the engine maker's limits. ``dimensions``: figures of the oil
        circuit that differ from the profile. ``aircraft``: whether the engine is installed in a
        certified aircraft.
        """
        self.book = book or the_book()
        self._job = _without_empty(
            {"title": title, "opened": opened, "by": by, "complaint": complaint, "note": note}
        )
        self._engine = _without_empty(
            {
                "layout": layout,
                "profile": profile,
                "card": None if card is None else str(card),
                "name": engine_name,
                "aircraft": aircraft,
                "has": list(has),
                "lacks": list(lacks),
                "oil": oil,
                "note": engine_note,
                "limits": dict(limits or {}),
                "dimensions": dict(dimensions or {}),
            }
        )
        self._entries: list[tuple[str, dict[str, Any]]] = []

    def finding(
        self,
        what: str,
        answer: str | bool = True,
        *,
        where: str = "",
        **details: Unpack[EntryDetails],
    ) -> int:
        """Add an observation.

        ``answer``: True or False, or text as ``"yes"``, ``"no"``, ``"unknown"``, ``"probably"``,
        ``"70 %"``. ``where``: the place on the engine, as ``"rod 3"``.
        """
        text = ("yes" if answer else "no") if isinstance(answer, bool) else answer
        return self._add_fact(what, text, FindingInput, where, details)

    def measurement(
        self, what: str, value: str, *, where: str = "", **details: Unpack[EntryDetails]
    ) -> int:
        """Add a measured value, as ``measurement("main_clearance", "0.11 mm", where="main 2")``."""
        return self._add_fact(what, value, MeasureInput, where, details)

    def task(
        self, what: str, result: str, *, where: str = "", **details: Unpack[EntryDetails]
    ) -> int:
        """Add a task of reassembly: ``"done"``, ``"failed"``, ``"skipped"`` or a measured value."""
        return self._add_fact(what, result, TaskInput, where, details)

    def trial(self, what: str, result: str, **details: Unpack[EntryDetails]) -> int:
        """Add something that was tried, as ``trial("new_pump", "no difference")``.

        ``result``: ``"cured"``, ``"helped"``, ``"cured for a while"``, ``"no difference"``,
        ``"worse"`` or ``"not tried"``, which says nothing.
        """
        return self._add_fact(what, result, TrialInput, "", details)

    def reading(self, text: str, **details: Unpack[EntryDetails]) -> int:
        """Add a gauge reading: ``"700 rpm 95 C 8 psi direct"``, or ``"5 psi at hot idle"``.

        Only the pressure is needed. ``direct``: a trusted test gauge, else the panel's; ``start``:
        a reading of the first start after the repair.
        """
        return self._add("reading", parse_reading(text).fields(), details)

    def baseline(self, text: str, **details: Unpack[EntryDetails]) -> int:
        """Add a pressure of this engine without fault, as ``"700 rpm 90 C 22 psi"``."""
        return self._add("baseline", parse_baseline(text), details)

    def behaviour(self, text: str, **details: Unpack[EntryDetails]) -> int:
        """Add a reported behaviour, as ``"low during hot, idle only gradual"``."""
        return self._add("behaviour", parse_behaviour(text).fields(), details)

    def earlier(self, text: str, **details: Unpack[EntryDetails]) -> int:
        """Add work done before the trouble began, as ``"oil pump renewed 2 weeks before"``."""
        return self._add("earlier", parse_earlier(text, self.book).fields(), details)

    def withdraw(self, number: int) -> int:
        """Take an entry back; the withdrawal is an entry of its own.

        Raises UsageError where there is no entry of that number.
        """
        if not 1 <= number <= len(self._entries):
            last = len(self._entries)
            has = f"they go from 1 to {last}" if last else "it has none yet"
            raise UsageError(f"no entry {number} in this case; {has}")
        kind, old = self._entries[number - 1]
        named = {"what": old["what"]} if "what" in old else {}
        return self._add(kind, {**named, "state": "withdrawn"}, {"replaces": number})

    def build(self) -> Case:
        """The case so far.

        Raises BadCaseError with every fault found, OutOfScopeError for a certified aircraft
        engine.
        """
        return from_tables(self._tables(), None, self.book)

    def toml(self) -> str:
        """The text of a case file with the same content."""
        tables = [f"schema = {VERSION}\n"]
        tables += [
            table_text(f"[{name}]", table)
            for name, table in (("job", self._job), ("engine", self._engine))
            if table
        ]
        tables += [table_text(f"[[{kind}]]", fields) for kind, fields in self._entries]
        return "\n".join(tables)

    def _tables(self) -> dict[str, Any]:
        tables: dict[str, Any] = {"schema": VERSION, "job": self._job, "engine": self._engine}
        for kind, fields in self._entries:
            tables.setdefault(kind, []).append(fields)
        return tables

    def _add_fact(
        self,
        what: str,
        text: str,
        kind: type[FactInput],
        where: str,
        details: EntryDetails,
    ) -> int:
        fact = fact_about(find_word(what, self.book), text, self.book)
        if not isinstance(fact, kind):
            right = _METHOD[type(fact)]
            raise UsageError(f"{fact.word.id}: is a {right}; use {right}()")
        return self._add(
            table_of(fact), {"what": fact.word.id, **fact.fields(), "where": where}, details
        )

    def _add(self, kind: str, fields: Mapping[str, Any], details: EntryDetails) -> int:
        number = len(self._entries) + 1
        self._entries.append((kind, _without_empty({"no": number, **fields, **details})))
        return number


def _without_empty(fields: Mapping[str, Any]) -> dict[str, Any]:
    """The fields that are not empty."""
    return {k: v for k, v in fields.items() if v is not None and v not in ("", [], {})}
