"""Work reported in words once the engine goes together again: tasks of its sign-off, no history."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

from diagnose.case.apart import is_apart
from diagnose.case.case import Case
from diagnose.diagnosis import Diagnosis
from diagnose.lookup.finder import finder_of
from diagnose.lookup.tokens import tokens
from diagnose.planning.choosing import SURE
from diagnose.signoff.judging import EngineFigures, bands_of
from diagnose.signoff.sheet import Signoff
from diagnose.understanding.reader import states, values_in
from diagnose.understanding.words.facts import Fact, Span, Understanding
from knowledge.book import Book
from knowledge.history.areas import NOTHING
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.reassembly import priming
from knowledge.units import DIMENSIONS, unit_in
from knowledge.work import Phase, Task

REPAIR = "repair"  #: where work of this repair was done
NAMED = 0.6  #: how well a task must fit the words to be taken as done
AHEAD = 0.08  #: by how much it must fit better than any other
LEAST_WORDS = 2  #: of a part of a list that names a task by itself
OFFERED = 0.3  #: from here on it is offered
_FIGURE = re.compile(r"\b\d+(?:[.,]\d+)?\b")
_PIECES = re.compile(r"[,;.\n]+(?!\d)|\band\b")
#: tables of facts that are kept, whatever work is named beside them
_OF_ITS_OWN = frozenset(["reading", "trial", "bearing", "work", "engine"])
#: words of priming, which the sight that it was not primed is about else
_PRIMED = frozenset(["primed", "priming", "prelubed"])
#: words that put work before the trouble
_EARLIER = frozenset(["ago", "before", "began", "earlier", "last", "previous", "previously"])


def repair_has_begun(case: Case) -> bool:
    """Whether the engine is apart, new parts were fitted, a task was recorded, or it ran again."""
    done = case.bearings.fitted or case.task_records or case.start_readings
    return bool(done) or is_apart(case)


def may_be_the_repair(understanding: Understanding, case: Case, book: Book) -> bool:
    """Whether a phrase may report work of the repair: nothing else was read of it, and no date."""
    text = understanding.text
    words = set(re.findall(r"[a-z']+", text.lower()))
    if not repair_has_begun(case) or words & (_EARLIER | set(NEGATION)) or not states(text, book):
        return False
    if words & _PRIMED and (
        "priming" in words or all(f.table != "trial" for f in understanding.facts)
    ):
        return True
    if any(f.table in _OF_ITS_OWN for f in understanding.facts):
        return False
    earlier = [f for f in understanding.facts if f.table == "earlier"]
    undated = all(not f.fields.get("before") for f in earlier)
    return undated and (bool(earlier) or not understanding.facts or _head(text) != text)


def done_in_words(understanding: Understanding, case: Case, book: Book) -> tuple[Fact, ...]:
    """The tasks of the sign-off that a phrase says are done; empty where it names none clearly."""
    return tuple(
        _with_value(f, understanding.text, case, book)
        for f in _ticked(understanding.text, case, book)
    )


def _with_value(done: Fact, text: str, case: Case, book: Book) -> Fact:
    """A task as done, by its figure where the words have one and some source says what it must be."""
    task = book.tasks[str(done.fields["what"])]
    if (
        "value" in done.fields
        or not task.dimension
        or not bands_of(task, EngineFigures.of(case))[0]
    ):
        return done
    said = " ".join(text[a:b] for a, b in done.spans)
    values = [v for v in values_in(said, book) if _is_of(v, task)]
    if len(values) != 1:
        return done
    return Fact("work", {"what": task.id, "value": values[0]}, done.spans)


def _ticked(text: str, case: Case, book: Book) -> tuple[Fact, ...]:
    """The tasks that a phrase says are done, none with its figure."""
    sheet = tasks_on_sheet(case, book)
    if _of_priming(text):
        return _priming(text, sheet, book)
    head = _head(text)
    if head != text:
        found = _named(head, sheet, book)
        return (_done(found, (0, len(text))),) if found else ()
    if several := _of_a_list(text, sheet, book):
        return several
    found = _named(text, sheet, book)
    return (_done(found, (0, len(text))),) if found else ()


def _priming(text: str, sheet: frozenset[Task], book: Book) -> tuple[Fact, ...]:
    """What was done to prime: how, the pressure it reached and after what time, and what was seen."""
    whole: Span = (0, len(text))
    found: dict[Task, Fact] = {}
    for start, end in _pieces(text):
        piece = text[start:end]
        task = _named(piece, sheet, book) if len(tokens(piece)) >= LEAST_WORDS else None
        if task is not None and (not task.dimension or task.phase is not Phase.PRIMING):
            found[task] = _done(task, (start, end))
    for task in sheet:
        if task.phase is not Phase.PRIMING or task is priming.CRANKED_TO_PRESSURE:
            continue
        values = [v for v in values_in(text, book) if _is_of(v, task)]
        if len(values) == 1:
            found[task] = Fact("work", {"what": task.id, "value": values[0]}, (whole,))
    return tuple(found.values())


def _of_priming(text: str) -> bool:
    return bool(set(re.findall(r"[a-z]+", text.lower())) & _PRIMED)


def _is_of(value: str, task: Task) -> bool:
    return bool(task.dimension and unit_in(value, DIMENSIONS[task.dimension]))


def _of_a_list(text: str, sheet: frozenset[Task], book: Book) -> tuple[Fact, ...]:
    """The tasks that the parts of a list name; empty where one of them names none clearly.

    A part of one word names the same thing elsewhere ("plugs in front and rear"), else it says how
    the part before it was done ("rod bolts 45 Nm, oiled threads").
    """
    found: list[tuple[Task, Span]] = []
    before = ""
    for start, end in _pieces(text):
        piece = text[start:end]
        words = tokens(_without_figures(piece, book))
        task = _named(piece, sheet, book) if len(words) >= LEAST_WORDS else None
        if task is not None and before and not found:  # "main and rod caps"
            first = _named(" ".join([before, *piece.split()[1:]]), sheet, book)
            found += [(first, (0, end))] if first is not None else []
        if task is None and before and words:
            other = _named(f"{before.rsplit(None, 1)[0]} {piece}", sheet, book)
            if other is not None and found and other is not found[-1][0]:
                task = other
        if task is not None:
            found.append((task, (start, end)))
        elif found and len(words) <= LEAST_WORDS:
            last, span = found[-1]
            found[-1] = last, (span[0], end)
        elif found or before or len(words) != 1:
            return ()
        before = piece if len(words) >= LEAST_WORDS or not found else before
    spans: dict[Task, list[Span]] = {}
    for task, span in found:
        spans.setdefault(task, []).append(span)
    return tuple(_done(task, (of[0][0], of[-1][1])) for task, of in spans.items())


def of_this_repair(understanding: Understanding) -> Understanding:
    """The same, with work of no stated age as part of this repair."""

    def made(fact: Fact) -> Fact:
        if fact.table != "earlier" or fact.fields.get("before") or fact.name == NOTHING.id:
            return fact
        return replace(fact, fields={**fact.fields, "at": REPAIR})

    return replace(understanding, facts=tuple(made(f) for f in understanding.facts))


def tasks_meant(text: str, case: Case, book: Book, most: int) -> tuple[Task, ...]:
    """The tasks of the sign-off that a phrase may mean, best first."""
    if _of_priming(text):
        return ()  # what is no task of it is a finding
    hits = finder_of(book).find(_without_figures(text, book), (Task,), len(book.tasks))
    sheet = tasks_on_sheet(case, book)
    named = [h.word for h in hits if isinstance(h.word, Task) and h.score >= OFFERED]
    return tuple(task for task in named if task in sheet)[:most]


def as_done(task: Task, text: str) -> Fact:
    """A task as done, all words of the phrase with it."""
    return _done(task, (0, len(text)))


def _done(task: Task, span: tuple[int, int]) -> Fact:
    return Fact("work", {"what": task.id, "state": "done"}, (span,))


def tasks_on_sheet(case: Case, book: Book) -> frozenset[Task]:
    """All tasks that the sign-off calls for, or may call for."""
    sheet = Signoff(Diagnosis(book, case), SURE)
    return frozenset(i.task for i in (*sheet.items, *sheet.maybe))


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
