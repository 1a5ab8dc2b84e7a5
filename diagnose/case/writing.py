"""Append whole tables to a case file; a power cut leaves the old file or the new one.

The new text is written beside the file, forced to disk and renamed over it, under a lock
on the folder, so that two commands writing at once lose nothing. What stood in a file is
always the beginning of what stands there next.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from functools import partial
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.disk import atomic_write, locked
from diagnose.case.loading import LARGEST, from_text, named, read_text
from diagnose.case.schema import VERSION
from diagnose.case.tables import EntryNames
from diagnose.errors import BadCaseError, CannotWriteError, NotSavedError, UsageError
from knowledge.book import Book
from knowledge.work import Layout

Value = str | int | float | bool | date | datetime | list[str] | dict[str, str]
Fields = Mapping[str, Value | None]


@dataclass(frozen=True, slots=True)
class NewEntry:
    """An entry to append: its table, its fields without ``no``, and its place in a sheet."""

    kind: str  #: 'finding', 'reading', 'baseline', 'work' or 'closed'
    fields: Fields
    place: str = ""  #: where the person wrote it, for messages: "line 12"
    said: str = ""  #: the words it was read from; empty where it was given by its id
    bare: bool = False  #: whether the value was typed without its unit

    @property
    def label(self) -> str:
        """The entry in a message, while it has no number: "line 12: main_clearance"."""
        name = str(self.fields.get("what") or self.kind)
        return f"{self.place}: {name}" if self.place else name


@dataclass(frozen=True, slots=True)
class Appended:
    """What one append did: the case before and after it, and the entries in between."""

    before: Case
    after: Case
    entries: tuple[NewEntry, ...]
    not_read: tuple[str, ...] = ()  #: of words, what nothing was made of
    refused: tuple[str, ...] = ()  #: what is wrong with the lines of a sheet that were not saved
    stood: int = 0  #: lines of a sheet that say what stands in the case already
    unclear: tuple[str, ...] = ()  #: a line for each phrase nothing could be recorded of
    left_out: tuple[str, ...] = ()  #: a line for each phrase of which the person chose nothing
    engine_was: Layout | None = None  #: the layout that gave way to another

    @property
    def first_number(self) -> int:
        """The number of the first new entry."""
        return self.before.last_number + 1


def table_text(header: str, fields: Fields) -> str:
    """One table as TOML; None values are left out.

    >>> print(table_text("[[finding]]", {"no": 1, "what": "needle_flickers"}), end="")
    [[finding]]
    no = 1
    what = "needle_flickers"
    """
    import tomli_w

    kept = {k: v for k, v in fields.items() if v is not None}
    inner = {k: v for k, v in kept.items() if isinstance(v, dict)}
    flat = {k: v for k, v in kept.items() if not isinstance(v, dict)}
    text = f"{header}\n{tomli_w.dumps(flat)}"
    for key, table in inner.items():
        text += f"\n[{header.strip('[]')}.{key}]\n{tomli_w.dumps(table)}"
    return text


def start(path: Path, book: Book, job: Fields | None, engine: Fields | None = None) -> Case:
    """A new case file; ``job`` or ``engine``, where it is None, can be appended later, once.

    Raises CannotWriteError where the file exists or cannot be made, UsageError where a field
    is not right.
    """
    text = f"schema = {VERSION}\n"
    if job is not None:
        text += f"\n{table_text('[job]', job)}"
    if engine:
        text += f"\n{table_text('[engine]', engine)}"
    with locked(path) as place:
        if os.path.exists(place.target):  # blind to rights, as Path is not
            raise CannotWriteError(f"{named(path)}: exists already; 'diagnose record' adds to it")
        case = _checked(text, path, book, {})
        atomic_write(place, text)
    return case


def append(path: Path, book: Book, entries: Sequence[tuple[str, Fields]]) -> Case:
    """Add entries of ('finding' | 'reading', fields without ``no``); numbers are given here.

    The file as it would become is checked whole before anything is written.
    Raises NoCaseError, BadCaseError, CannotWriteError; UsageError where an entry is not right.
    """
    return append_by(path, book, lambda _: [NewEntry(k, fields) for k, fields in entries]).after


def append_by(path: Path, book: Book, make: Callable[[Case], Sequence[NewEntry]]) -> Appended:
    """Add what ``make`` returns, given the case as it stands under the lock.

    Of a sheet, the entries that the case cannot take are left out and named. Raises as ``append``,
    and whatever ``make`` raises; then nothing is written.
    """
    with locked(path) as place:
        old = read_text(path)
        before = from_text(old, path, book)
        entries = tuple(make(before))
        add = partial(_with_entries, old, before.last_number, path, book)
        try:
            text, after = add(entries)
            refused: tuple[str, ...] = ()
        except UsageError:
            if not any(entry.place for entry in entries):
                raise
            entries, refused = _taken(entries, add)
            text, after = add(entries)
        atomic_write(place, text)
    return Appended(before, after, entries, refused=refused)


def made_of(text: str, path: Path, book: Book, entries: Sequence[NewEntry]) -> Case:
    """The case that a text without entries would be with these; nothing is written or read.

    Raises UsageError where it is none.
    """
    return _with_entries(text, 0, path, book, entries)[1]


def tried(path: Path, book: Book, make: Callable[[Case], Sequence[NewEntry]]) -> Appended:
    """What ``append_by`` would make of a case; nothing is written. Raises as ``append_by``."""
    old = read_text(path)
    before = from_text(old, path, book)
    entries = tuple(make(before))
    _, after = _with_entries(old, before.last_number, path, book, entries)
    return Appended(before, after, entries)


def _with_entries(
    old: str, last: int, path: Path, book: Book, entries: Sequence[NewEntry]
) -> tuple[str, Case]:
    """The text of a file with more entries, numbered from ``last``, and its case.

    Raises UsageError where it is none.
    """
    text, names = _closed(old), {}
    for number, entry in enumerate(entries, last + 1):
        text += "\n" + table_text(f"[[{entry.kind}]]", {"no": number, **entry.fields})
        names[entry.kind, number] = entry.label
    return text, _checked(text, path, book, names)


def _taken(
    entries: tuple[NewEntry, ...], add: Callable[[Sequence[NewEntry]], object]
) -> tuple[tuple[NewEntry, ...], tuple[str, ...]]:
    """The entries the case takes, and what is wrong with lines of a sheet that it does not.

    Raises UsageError where an entry of no sheet is wrong too, or nothing is left.
    """
    typed = [entry for entry in entries if not entry.place]
    if typed:
        add(typed)
    kept: list[NewEntry] = []
    refused: list[str] = []
    for entry in entries:
        try:
            add([entry])
        except UsageError as fault:
            refused += fault.lines
        else:
            kept.append(entry)
    if not kept:
        raise UsageError("\n".join(refused))
    return tuple(kept), tuple(refused)


def append_engine(path: Path, book: Book, engine: Fields) -> Case:
    """Append the [engine] of a case that has none yet.

    Raises NoCaseError, BadCaseError, CannotWriteError, UsageError.
    """
    return _append_once(path, book, "engine", engine)


def append_oil(path: Path, book: Book, oil: Fields) -> Case:
    """Append the [oil] of a case that has none yet. Raises as ``append_engine``."""
    return _append_once(path, book, "oil", oil)


def append_job(path: Path, book: Book, job: Fields) -> Case:
    """Append the [job] of a case that has none yet. Raises as ``append_engine``."""
    return _append_once(path, book, "job", job)


def _append_once(path: Path, book: Book, name: str, fields: Fields) -> Case:
    with locked(path) as place:
        old = read_text(path)
        case = from_text(old, path, book)
        has = {"engine": case.has_engine, "oil": case.has_oil, "job": case.has_job}
        if has[name]:
            raise UsageError(f"{named(path)}: has its [{name}] already; change it in the file")
        text = f"{_closed(old)}\n{table_text(f'[{name}]', fields)}"
        case = _checked(text, path, book, {})
        atomic_write(place, text)
    return case


def _closed(text: str) -> str:
    """The text with a line end, which the last line may lack."""
    return text if text.endswith("\n") else text + "\n"


def _checked(text: str, path: Path, book: Book, names: EntryNames) -> Case:
    """The case a text would make.

    Raises NotSavedError, with the person's names of the entries; CannotWriteError for a large one.
    """
    if len(text.encode("utf-8", "replace")) > LARGEST:
        raise CannotWriteError(
            f"{named(path)}: not saved, it would be larger than {LARGEST:,} bytes; start another"
        )
    try:
        return from_text(text, path, book, names=names)
    except BadCaseError as bad:
        raise NotSavedError(bad.faults) from None
