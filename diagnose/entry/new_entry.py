"""One fact, reading, behaviour or piece of earlier work as an entry of its case."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from diagnose.case.case import Case, TrialRecord
from diagnose.case.schema import LONGEST, TrialEntry
from diagnose.case.writing import NewEntry
from diagnose.entry.answers import Answer, parse_task_state
from diagnose.entry.behaviours import BehaviourInput
from diagnose.entry.details import Details
from diagnose.entry.earlier import EarlierInput
from diagnose.entry.facts import FactInput, FindingInput, MeasureInput, TaskInput, parse_value
from diagnose.entry.readings import ReadingInput
from diagnose.entry.trials import TrialInput
from diagnose.errors import UsageError
from diagnose.understanding.words.facts import Fact
from diagnose.ways import Way, to
from knowledge.book import Book
from knowledge.reports.words import Result


def fact_entry(fact: FactInput, case: Case, details: Details) -> NewEntry:
    """An entry for one fact; it replaces an earlier one of the same thing at the same place.

    Raises UsageError for a skipped task without a note.
    """
    if isinstance(fact, TaskInput) and fact.why:
        details = replace(details, note=details.note or fact.why)
    skipped = isinstance(fact, TaskInput) and fact.state == "skipped"
    if skipped and not details.note.strip():
        raise UsageError(f"{to(Way.WORD, id=fact.word.id)}skipped; give the reason {to(Way.NOTE)}")
    is_trial = isinstance(fact, TrialInput)
    fields = details.fields_without_place("a trial") if is_trial else details.fields()
    if details.replaces is None:
        fields["replaces"] = _standing_number(fact, case, details.where)
    bare = isinstance(fact, MeasureInput | TaskInput) and fact.bare
    return NewEntry(table_of(fact), {"what": fact.word.id, **fact.fields(), **fields}, bare=bare)


def table_of(fact: FactInput) -> str:
    """The table a fact is written in."""
    match fact:
        case TaskInput():
            return "work"
        case TrialInput():
            return "trial"
        case _:
            return "finding"


def reading_entry(reading: ReadingInput, details: Details) -> NewEntry:
    """An entry for one reading. Raises UsageError where ``details`` name a place."""
    fields = details.fields_without_place("a reading")
    return NewEntry("reading", {**reading.fields(), **fields})


def behaviour_entry(behaviour: BehaviourInput, details: Details) -> NewEntry:
    """An entry for one reported behaviour. Raises UsageError where ``details`` name a place."""
    fields = details.fields_without_place("a behaviour")
    return NewEntry("behaviour", {**behaviour.fields(), **fields})


def earlier_entry(work: EarlierInput, details: Details) -> NewEntry:
    """An entry for earlier work. Raises UsageError where ``details`` name a place."""
    fields = details.fields_without_place("earlier work")
    return NewEntry("earlier", {**work.fields(), **fields})


def spoken_entry(fact: Fact, words: str, case: Case, book: Book, details: Details) -> NewEntry:
    """One fact that was read, as an entry; its words are the note.

    It replaces what stands of the same thing at the same place. Raises UsageError.
    """
    return replace(_of_fact(fact, words, case, book, details), said=words)


def _of_fact(fact: Fact, words: str, case: Case, book: Book, details: Details) -> NewEntry:
    note = f"{details.note}; {words}" if details.note else words
    where = details.where or str(fact.fields.get("where", ""))
    details = replace(details, note=note[:LONGEST], where=where)
    fields = dict(fact.fields)
    what, value = str(fields.get("what", "")), str(fields.get("value", ""))
    match fact.table:
        case "finding" if value:
            measure = book.measures[what]
            return fact_entry(
                MeasureInput(measure, value, parse_value(value, measure)), case, details
            )
        case "finding":
            sure = fact.sure if fact.sure < 1.0 else None
            answer = Answer("present" if fields["state"] == "present" else "absent", sure)
            return fact_entry(FindingInput(book.findings[what], answer), case, details)
        case "trial":
            trial = TrialInput(book.trials[what], Result(str(fields["result"])))
            return fact_entry(trial, case, details)
        case "work" if not value:
            done = TaskInput(book.tasks[what], state=parse_task_state(str(fields["state"])))
            return fact_entry(done, case, details)
        case "work":
            task = book.tasks[what]
            done = TaskInput(task, text=value, value=parse_value(value, task))
            return fact_entry(done, case, details)
    more: dict[str, Any] = details.fields_without_place(f"a {fact.table}")
    return NewEntry(fact.table, {**fields, **more})


def _standing_number(fact: FactInput, case: Case, where: str) -> int | None:
    """The number of the last standing entry of the same thing at the same place."""
    found: list[tuple[int, str]]
    match fact:
        case FindingInput():
            entries = [s.entry for s in case.finding_records if s.finding is fact.word]
            found = [(e.no, e.where) for e in entries]
        case MeasureInput():
            entries = [m.entry for m in case.measurements if m.measure is fact.word]
            found = [(e.no, e.where) for e in entries]
        case TrialInput():
            found = [(t.entry.no, "") for t in case.trials if _is_trial(t, fact)]
        case TaskInput():
            found = [(w.entry.no, w.entry.where) for w in case.task_records if w.task is fact.word]
    numbers = [number for number, place in found if place == where]
    return numbers[-1] if numbers else None


def _is_trial(record: TrialRecord, fact: TrialInput) -> bool:
    """Whether a record is of the same trial, and written as one."""
    return record.trial is fact.word and isinstance(record.entry, TrialEntry)
