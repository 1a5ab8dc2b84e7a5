"""Resolve what was reported: behaviour, trials, earlier work; every fault is collected."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from enum import StrEnum
from typing import TypeVar

from diagnose.case.case import BehaviourRecord, EarlierRecord, TrialRecord
from diagnose.case.file_faults import Faults, quantity
from diagnose.case.schema import (
    BehaviourEntry,
    Checked,
    EarlierEntry,
    FindingEntry,
    TrialEntry,
)
from diagnose.errors import nearest, plain
from knowledge.book import Book
from knowledge.model import Gauge, Stage
from knowledge.reports.shapes import Behaviour, EarlierWork, TrialKind
from knowledge.reports.words import (
    Circumstance,
    Course,
    Done,
    Hands,
    Onset,
    Result,
    Shows,
    Since,
)
from knowledge.units import DIMENSIONS

AnyEnum = TypeVar("AnyEnum", bound=StrEnum)
#: the result of a trial that was asked about and not made
NOT_TRIED = "not tried"
#: how "no time before" is written in ``before``; the first is what commands write
AT_ONCE = ("straight before", "just before", "at once")


def behaviour(each: Checked[BehaviourEntry], faults: Faults) -> Iterator[BehaviourRecord]:
    """The behaviour, or nothing and faults."""
    entry, where = each.table, each.where
    if entry.shows is None:
        if "shows" not in each.broken:
            faults.add(f"{where}: shows is missing; write one of {_list(Shows)}")
        return
    shows = _word(entry.shows, Shows, f"{where}: shows", faults)
    if shows is None:
        return
    report = Behaviour(
        shows,
        frozenset(_words(entry.during, Circumstance, f"{where}: during", faults)),
        frozenset(_words(entry.never, Circumstance, f"{where}: never", faults)),
        bool(entry.only),
        _word(entry.onset, Onset, f"{where}: onset", faults),
        frozenset(_words(entry.course, Course, f"{where}: course", faults)),
        _word(entry.since, Since, f"{where}: since", faults),
        _seconds(entry.lasts, f"{where}: lasts", faults),
        bool(entry.with_pressure),
        Gauge(entry.gauge),
    )
    if both := report.during & report.never:
        faults.add(f"{where}: '{sorted(both)[0]}' stands under both during and never")
    yield BehaviourRecord(entry, report, _stage(entry.learned))


def trial(each: Checked[TrialEntry], book: Book, faults: Faults) -> Iterator[TrialRecord]:
    """The trial and its result, or nothing and faults."""
    entry, where = each.table, each.where
    if "what" in each.broken:
        return
    kind = book.trials.get(entry.what)
    if kind is None:
        faults.add(
            f"{where}: no such trial '{plain(entry.what)}'.{nearest(entry.what, book.trials)}"
        )
    if entry.result is None:
        if "result" not in each.broken:
            faults.add(f"{where}: result is missing; write one of {_list(Result)}, '{NOT_TRIED}'")
        return
    tried = _wanted(entry.result) != NOT_TRIED
    result = _word(entry.result, Result, f"{where}: result", faults) if tried else None
    if kind is not None and (result is not None or not tried):
        yield TrialRecord(entry, kind, result, _stage(entry.learned))


def split_retired(
    entries: Iterable[Checked[FindingEntry]], book: Book
) -> tuple[list[Checked[FindingEntry]], list[tuple[Checked[FindingEntry], TrialKind]]]:
    """Findings of this book; and those of an earlier one, each with the trial it means."""
    current, retired = [], []
    for each in entries:
        kind = book.retired.get(each.table.what)
        if kind is None:
            current.append(each)
        else:
            retired.append((each, kind))
    return current, retired


def trials(
    entries: Iterable[Checked[TrialEntry]],
    retired: Iterable[tuple[Checked[FindingEntry], TrialKind]],
    book: Book,
    faults: Faults,
) -> Iterator[TrialRecord]:
    """What was tried, and what came of it; ``retired``: as findings of an earlier book said it."""
    for each in entries:
        yield from trial(each, book, faults)
    for finding, kind in retired:
        yield tried_in_vain(finding, kind)


def tried_in_vain(each: Checked[FindingEntry], kind: TrialKind) -> TrialRecord:
    """A finding of an earlier book, "tried, and made no difference", as the trial it means.

    Its "absent" can mean that nothing was tried, so it says nothing.
    """
    entry = each.table
    result = Result.NO_DIFFERENCE if entry.state == "present" else None
    return TrialRecord(entry, kind, result, _stage(entry.learned))


def earlier(each: Checked[EarlierEntry], book: Book, faults: Faults) -> Iterator[EarlierRecord]:
    """The work and how long before the trouble it was done, or nothing and faults."""
    entry, where = each.table, each.where
    if "what" in each.broken:
        return
    area = book.areas.get(entry.what)
    if area is None:
        faults.add(
            f"{where}: no such place '{plain(entry.what)}'.{nearest(entry.what, book.areas)}"
        )
        return
    before = None
    if entry.before is not None:
        at_once = entry.before.strip().lower() in AT_ONCE
        before = 0.0 if at_once else _seconds(entry.before, f"{where}: before", faults)
    work = EarlierWork(
        area,
        _word(entry.done, Done, f"{where}: done", faults),
        before,
        _word(entry.hands, Hands, f"{where}: hands", faults),
    )
    yield EarlierRecord(entry, work, _stage(entry.learned))


def _stage(learned: str | None) -> Stage:
    return Stage(learned) if learned else Stage.KNOWN


def _list(kind: type[StrEnum]) -> str:
    return ", ".join(f"'{word}'" for word in kind)


def _word(text: str | None, kind: type[AnyEnum], where: str, faults: Faults) -> AnyEnum | None:
    """The word of a closed list, or None and a fault."""
    if text is None:
        return None
    wanted = _wanted(text)
    for word in kind:
        if word.value == wanted:
            return word
    known = [word.value for word in kind]
    faults.add(f"{where}: '{plain(text)}' is not known.{nearest(wanted, known)}")
    return None


def _wanted(text: str) -> str:
    """A word as the closed lists write it."""
    return text.strip().lower().replace("_", " ").replace("-", " ")


def _words(
    texts: Iterable[str], kind: type[AnyEnum], where: str, faults: Faults
) -> Iterator[AnyEnum]:
    for text in texts:
        word = _word(text, kind, where, faults)
        if word is not None:
            yield word


def _seconds(text: str | None, where: str, faults: Faults) -> float | None:
    if text is None:
        return None
    value = quantity(text, DIMENSIONS["time"], where, faults)
    if value is not None and value < 0.0:
        faults.add(f"{where}: '{plain(text)}' cannot be below zero")
        return None
    return value
