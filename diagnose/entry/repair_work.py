"""Work reported in words once the engine goes together again: tasks of its sign-off, no history.

Imported by ``spoken``.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from diagnose.case.case import Case
from diagnose.diagnosis import Diagnosis
from diagnose.lookup.finder import finder_of
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from diagnose.understanding.facts import Fact, Understanding
from diagnose.understanding.reader import states, values_in
from knowledge.book import Book
from knowledge.lexicon.stance import NEGATION
from knowledge.work import Task

NAMED = 0.6  #: how well a task must fit the words to be taken as done
AHEAD = 0.08  #: by how much it must fit better than any other
OFFERED = 0.3  #: from here on it is offered
_FIGURE = re.compile(r"\b\d+(?:[.,]\d+)?\b")
_PIECES = re.compile(r"[,;.\n]+(?!\d)|\band\b")
#: tables of facts that are kept, whatever work is named beside them
_OF_ITS_OWN = frozenset(["reading", "trial", "bearing", "work", "engine"])
#: words that put work before the trouble
_EARLIER = frozenset(["ago", "before", "began", "earlier", "last", "previous", "previously"])


def repair_has_begun(case: Case) -> bool:
    """Whether new parts were measured as fitted, a task was recorded, or the engine ran again."""
    return bool(case.bearings.fitted or case.task_records or case.start_readings)


def may_be_the_repair(understanding: Understanding, case: Case, book: Book) -> bool:
    """Whether a phrase may report work of the repair: nothing else was read of it, and no date."""
    text = understanding.text
    words = set(re.findall(r"[a-z']+", text.lower()))
    if not repair_has_begun(case) or words & (_EARLIER | set(NEGATION)) or not states(text, book):
        return False
    if any(f.table in _OF_ITS_OWN for f in understanding.facts):
        return False
    earlier = [f for f in understanding.facts if f.table == "earlier"]
    undated = all(not f.fields.get("before") for f in earlier)
    return undated and (bool(earlier) or not understanding.facts or _head(text) != text)


def done_in_words(understanding: Understanding, case: Case, book: Book) -> tuple[Fact, ...]:
    """The tasks of the sign-off that a phrase says are done; empty where it names none clearly."""
    text = understanding.text
    sheet = _tasks(case, book)
    head = _head(text)
    if head != text:
        found = _named(head, sheet, book)
        return (_done(found, (0, len(text))),) if found else ()
    if found := _named(text, sheet, book):
        return (_done(found, (0, len(text))),)
    each = [(_named(text[a:b], sheet, book), (a, b)) for a, b in _pieces(text)]
    if not each or not all(task for task, _ in each):
        return ()
    return tuple({task.id: _done(task, span) for task, span in each if task}.values())


def tasks_meant(text: str, case: Case, book: Book, most: int) -> tuple[Task, ...]:
    """The tasks of the sign-off that a phrase may mean, best first."""
    hits = finder_of(book).find(_without_figures(text, book), (Task,), len(book.tasks))
    sheet = _tasks(case, book)
    named = [h.word for h in hits if isinstance(h.word, Task) and h.score >= OFFERED]
    return tuple(task for task in named if task in sheet)[:most]


def as_done(task: Task, text: str) -> Fact:
    """A task as done, all words of the phrase with it."""
    return _done(task, (0, len(text)))


def _done(task: Task, span: tuple[int, int]) -> Fact:
    return Fact("work", {"what": task.id, "state": "done"}, (span,))


def _tasks(case: Case, book: Book) -> frozenset[Task]:
    return frozenset(i.task for i in Signoff(Diagnosis(book, case), SURE).items)


def _head(text: str) -> str:
    """What stands before a colon, which names what follows."""
    head, colon, rest = text.partition(": ")
    return head if colon and rest.strip() else text


def _pieces(text: str) -> Iterator[tuple[int, int]]:
    """Where each part of a list stands."""
    at = 0
    for cut in [*_PIECES.finditer(text), None]:
        end = cut.start() if cut else len(text)
        if any(c.isalpha() for c in text[at:end]):
            yield at, end
        at = cut.end() if cut else end


def _without_figures(text: str, book: Book) -> str:
    for value in values_in(text, book):
        text = text.replace(value, " ")
    return _FIGURE.sub(" ", text)


def _named(text: str, sheet: frozenset[Task], book: Book) -> Task | None:
    """The one task of the sheet that a piece of text names; a figure in it is no word."""
    wanted = _without_figures(text, book)
    hits = [h for h in finder_of(book).find(wanted, (Task,), len(book.tasks)) if h.word in sheet]
    if not hits or hits[0].score < NAMED or not isinstance(hits[0].word, Task):
        return None
    if len(hits) > 1 and hits[0].score - hits[1].score < AHEAD:
        return None
    return hits[0].word
