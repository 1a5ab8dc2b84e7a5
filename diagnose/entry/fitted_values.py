"""Values measured after the repair: those of their sign-off tasks, beside the ones that were found."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from diagnose.case.case import Case
from diagnose.diagnosis import Diagnosis
from diagnose.entry.facts import FactInput, MeasureInput, TaskInput
from diagnose.entry.repair_work import REPAIR
from diagnose.errors import UsageError, plain
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from diagnose.understanding.repaired import repaired
from diagnose.understanding.words.facts import Fact, Understanding
from knowledge.book import Book
from knowledge.model import Measure
from knowledge.work import Task


def values_as_fitted(
    understanding: Understanding, case: Case, book: Book, said: bool = False
) -> Understanding:
    """The same, with each value of the repaired engine as one of its sign-off.

    ``said``: the person says so; words alone do where a value of the same thing was found before,
    which the new one would take the place of.
    """
    values = [f for f in understanding.facts if _measure(f, book) is not None]
    if not values or not (said or repaired(understanding.text, book) is not None):
        return understanding
    found = {(m.measure.id, m.entry.where) for m in case.measurements}

    def made(fact: Fact) -> Fact:
        measure = _measure(fact, book)
        if measure is None or not (
            said or (measure.id, str(fact.fields.get("where", ""))) in found
        ):
            return fact
        task = task_of(measure, case, book)
        return fact if task is None else _as_work(fact, task)

    return replace(understanding, facts=tuple(made(f) for f in understanding.facts))


def fitted(fact: FactInput, case: Case, book: Book) -> FactInput:
    """A typed value as one of the repaired engine. Raises UsageError where no task has such a value."""
    if not isinstance(fact, MeasureInput):
        return fact
    task = task_of(fact.word, case, book)
    if task is None:
        raise UsageError(f"{plain(fact.word.says)}: nothing of it is measured after a repair")
    return TaskInput(task, text=fact.text, value=fact.value, bare=fact.bare)


def task_of(measure: Measure, case: Case, book: Book) -> Task | None:
    """The task at which a quantity is measured as the engine goes together; the sheet's own first."""
    fitting = [t for t in book.tasks.values() if t.measures is measure.quantity]
    if len(fitting) < 2:
        return next(iter(fitting), None)
    sheet = Signoff(Diagnosis(book, case), SURE)
    return _first(fitting, {i.task for i in (*sheet.items, *sheet.maybe)})


def _first(fitting: Iterable[Task], sheet: set[Task]) -> Task:
    return min(fitting, key=lambda task: task not in sheet)


def _measure(fact: Fact, book: Book) -> Measure | None:
    if fact.table != "finding" or not fact.fields.get("value"):
        return None
    return book.measures.get(str(fact.fields["what"]))


def _as_work(fact: Fact, task: Task) -> Fact:
    kept = {k: v for k, v in fact.fields.items() if k in ("value", "where")}
    return replace(fact, table="work", fields={"what": task.id, **kept, "at": REPAIR})
