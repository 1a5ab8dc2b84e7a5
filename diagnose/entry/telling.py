"""Facts read from a person's words as entries of a case; the words are kept with them."""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path
from typing import Any

from diagnose.case.card import is_grade
from diagnose.case.case import Case
from diagnose.case.disk import DASH, NO_NAME
from diagnose.case.loading import from_text, load
from diagnose.case.schema import LONGEST
from diagnose.case.writing import (
    Fields,
    NewEntry,
    append_by,
    append_oil,
    made_of,
    start,
    table_text,
)
from diagnose.entry.after_repair import of_the_repaired
from diagnose.entry.answered_again import answered_again
from diagnose.entry.conflicts import said_before
from diagnose.entry.details import Details
from diagnose.entry.engine_said import EngineChange, engine_change, recorded_features, write_engine
from diagnose.entry.fitted_values import values_as_fitted
from diagnose.entry.new_entry import spoken_entry
from diagnose.entry.numbers import Readings
from diagnose.entry.readings import ReadingInput
from diagnose.entry.titles import title_of
from diagnose.errors import UsageError, plain
from diagnose.understanding.reader import read
from diagnose.understanding.words.facts import Fact, Understanding
from knowledge.book import Book
from knowledge.engines.layouts import UNKNOWN
from knowledge.history.findings_apart import ENGINE_APART

_NOTHING: Mapping[str, str] = {}
_NO_ENTRY = ("layout", "oil", "limit")  #: tables of facts that are written once, into no entry


@dataclass(frozen=True, slots=True)
class Account:
    """What a text said: the facts that can be written into the case, and what else it holds."""

    path: Path
    text: str
    understanding: Understanding
    is_new: bool  #: there is no such case yet
    has: Mapping[str, str] = field(default_factory=dict)  #: "layout" and "oil" as the case has them
    features: frozenset[str] = frozenset()  #: parts of the engine that the case has entries of
    struck: frozenset[int] = frozenset()  #: facts that are not to be written, by place from 0

    @classmethod
    def empty(cls) -> Account:
        """Nothing said of a new case."""
        return cls(Path(), "", Understanding(""), True)

    @property
    def kept(self) -> tuple[tuple[int, Fact], ...]:
        """The facts to be written, each with its number from 1; numbers never change."""
        facts = enumerate(self.understanding.facts)
        return tuple((i + 1, fact) for i, fact in facts if i not in self.struck)

    def engine_change(self, book: Book) -> EngineChange | None:
        """The layout that takes the place of the one in the case; None where it stays."""
        if "layout" not in self.has:
            return None
        kept = [fact for _, fact in self.kept]
        return engine_change(book.layouts[self.has["layout"]], kept, book, self.features)


def understand(path: Path, text: str, book: Book) -> Account:
    """Read a text for a case, which is not changed.

    Raises UsageError for an empty or too long text or one that is no text; NoCaseError and
    BadCaseError for a file that is no case.
    """
    wanted = text.strip()
    if not any(c.isalnum() for c in wanted):
        raise UsageError('nothing was said; write for instance: "5 psi at hot idle, 60 cold"')
    if len(wanted) > LONGEST:
        raise UsageError(f"that is too long: {len(wanted):,} characters, at most {LONGEST:,}")
    if wanted != wanted.encode("utf-8", "replace").decode("utf-8"):
        raise UsageError(f"'{plain(wanted, 40)}' is no UTF-8 text")
    is_new = not os.path.lexists(path)
    if is_new and path == DASH:
        raise UsageError(f"'-': {NO_NAME}")
    case = None if is_new else load(path, book)
    has = {} if case is None else _written_once(case)
    features = frozenset[str]() if case is None else recorded_features(case)
    understanding = _possible(read(wanted, book), has, book, is_new, features)
    if case is not None:
        understanding = values_as_fitted(understanding, case, book)
        understanding = of_the_repaired(understanding, case, book)
    return Account(path, wanted, _entries_first(understanding), is_new, has, features)


def _entries_first(understanding: Understanding) -> Understanding:
    """The same, with what becomes no entry last: so facts have the numbers of their entries.

    That the engine is apart now comes behind how it ran before.
    """

    def order(fact: Fact) -> tuple[bool, bool]:
        return fact.table in _NO_ENTRY, fact.name == ENGINE_APART.id

    facts = sorted(understanding.facts, key=order)
    return replace(understanding, facts=tuple(facts))


def understood(
    text: str, book: Book, has: Mapping[str, str] = _NOTHING, *, is_new: bool = True
) -> Understanding:
    """Read a text; ``has``: "layout" and "oil" as the case has them already.

    ``is_new``: there is no case yet, so that limits of its engine can be written into it.

    What no gauge can show counts as not understood.
    """
    return _possible(read(text, book), has, book, is_new)


def read_readings(text: str, book: Book) -> Readings | None:
    """The gauge readings in a text; None where it holds none."""
    facts = understood(text, book).facts
    found = tuple(_reading(f) for f in facts if f.table == "reading")
    return Readings(found) if found else None


def write(account: Account, book: Book, by: str = "", text_kept: str = "") -> Case:
    """Write every fact but those struck out and those the case has; a new case keeps the text.

    ``text_kept``: how the text begins as far as the case has it already.

    Raises UsageError where nothing is left to write into a case that is there, NoCaseError,
    BadCaseError, OutOfScopeError, CannotWriteError.
    """
    kept = [fact for _, fact in account.kept]
    layout = next((f.value for f in kept if f.table == "layout"), None)
    grade = next((f.value for f in kept if f.table == "oil"), None)
    entries = [f for f in kept if f.table not in _NO_ENTRY]
    layout_id = str(layout) if layout else ""
    begin = _begun if account.is_new else _with_engine
    case = begin(account, book, layout_id, by)
    if grade and "oil" not in _written_once(case):
        case = append_oil(account.path, book, {"grade": grade})
    if not entries:
        return case
    return _with_entries(account, entries, book, by, text_kept)


def foreseen(account: Account, book: Book) -> Case:
    """The new case that the kept facts would make; nothing is written. Raises UsageError."""
    kept = [fact for _, fact in account.kept]
    layout = next((str(f.value) for f in kept if f.table == "layout"), "")
    text = "schema = 1\n" + (table_text("[engine]", {"layout": layout}) if layout else "")
    empty = from_text(text, account.path, book)
    entries = [
        spoken_entry(f, account.understanding.words(f), empty, book, Details())
        for f in kept
        if f.table not in _NO_ENTRY
    ]
    return made_of(text, account.path, book, entries)


def _begun(account: Account, book: Book, layout: str, by: str) -> Case:
    """A new case that keeps the text; ``layout``: id of how the engine is built, where known."""
    job: Fields = {
        "title": title_of(account.text, account.path, account.understanding, book),
        "opened": date.today(),
        "by": by or None,
        "complaint": account.text,
    }
    limits = {f.name: f.value for _, f in account.kept if f.table == "limit"}
    engine = {"layout": layout or None, "limits": limits or None}
    return start(account.path, book, job, engine if layout or limits else None)


def _with_engine(account: Account, book: Book, layout: str, by: str) -> Case:
    """The case that is there, with what is said of how its engine is built."""
    kept = [fact for _, fact in account.kept]
    if not kept:
        raise UsageError("nothing of it was understood; nothing is written")
    case = load(account.path, book)
    change = account.engine_change(book)
    if change is not None:
        return write_engine(account.path, book, change.now.id, facts=kept, by=by)
    if layout and not case.has_engine:
        return write_engine(account.path, book, layout, by=by)
    return case


def _with_entries(
    account: Account, entries: Sequence[Fact], book: Book, by: str, text_kept: str
) -> Case:
    """The case with an entry for each fact that it has not; the first carries the text."""
    more = "" if account.is_new else account.text.removeprefix(text_kept).strip()
    said = f"; said: {more}" if more else ""

    def made(now: Case) -> Sequence[NewEntry]:
        def entry(fact: Fact, more: str = "", replaces: int | None = None) -> NewEntry:
            words = f"{account.understanding.words(fact)}{more}"
            return spoken_entry(fact, words, now, book, Details(by=by, replaces=replaces))

        before = [said_before(entry(f), now, date.today()) for f in entries]
        new = [f for f, no in zip(entries, before, strict=True) if no is None]
        if not new:  # the first is written again in place of its like, to carry the words
            return [entry(entries[0], said, before[0])]
        made = [entry(f, "" if i else said) for i, f in enumerate(new)]
        return [*made, *answered_again(made, now, book, [account.text], Details(by=by))]

    return append_by(account.path, book, made).after


def entry_numbers(account: Account, case: Case, book: Book) -> Mapping[int, int]:
    """The entry of ``case`` that says each fact, by the number of the fact in the account."""
    found = {}
    for number, fact in account.kept:
        if fact.table not in ("layout", "oil"):
            words = account.understanding.words(fact)
            entry = spoken_entry(fact, words, case, book, Details())
            if (no := said_before(entry, case, date.today())) is not None:
                found[number] = no
    return found


def _written_once(case: Case) -> dict[str, str]:
    """What the case has of the facts that are no entries."""
    has = {"layout": case.layout.id} if case.has_engine else {}
    return has | ({"oil": case.engine.oil} if case.engine.oil or case.has_oil else {})


def _possible(
    understanding: Understanding,
    has: Mapping[str, str],
    book: Book,
    is_new: bool,
    features: frozenset[str] = frozenset(),
) -> Understanding:
    """Without what no gauge can show, figures a case has no entry for, a second oil.

    A layout stays where it changes the one in the case.

    All but the layout, and the oil that is known, is left over.
    """
    facts, unread = [], list(understanding.unread)
    for fact in understanding.facts:
        if _unchanged(fact, has, understanding.facts, book, features):
            continue
        no_entry = fact.table in ("work", "engine") or (fact.table == "limit" and not is_new)
        if no_entry or not _can_be(fact):
            unread += fact.spans
            continue
        if fact.table == "oil" and "oil" in has:
            unread += fact.spans
            continue
        facts.append(fact)
    return replace(understanding, facts=tuple(facts), unread=tuple(sorted(unread)))


def _unchanged(
    fact: Fact,
    has: Mapping[str, str],
    facts: Sequence[Fact],
    book: Book,
    features: frozenset[str],
) -> bool:
    """Whether the case has a layout or oil already that a fact does not change."""
    if fact.table == "layout":
        was = book.layouts[has.get("layout", UNKNOWN.id)]
        return engine_change(was, facts, book, features) is None
    return fact.table == "oil" and fact.value == has.get("oil")


def _can_be(fact: Fact) -> bool:
    """Whether a gauge can show the reading, or the oil has such a grade."""
    if fact.table == "oil":
        return is_grade(fact.value)
    try:
        if fact.table in ("reading", "baseline"):
            _reading(fact).in_si()
    except UsageError:
        return False
    return True


def _reading(fact: Fact) -> ReadingInput:
    fields: dict[str, Any] = dict(fact.fields)
    fields["during"] = tuple(fields.get("during", ()))
    return ReadingInput(**fields)
