"""What a phrase that nothing was read of may mean, for a person to choose from."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from diagnose.lookup.finder import finder_of
from diagnose.understanding.reader import praises, values_in
from diagnose.understanding.words.facts import Fact, Value
from knowledge.book import Book
from knowledge.lexicon.shows.in_order import GOOD_NEWS, PRAISE
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.model import Finding, Kind, Measure
from knowledge.units import DIMENSIONS, UnitError, parse
from knowledge.work import Task

MOST = 6  #: candidates offered for one phrase
LEAST_SCORE = 0.3  #: how well a finding must fit the words to be offered
_BEYOND = 10  #: times what is accepted: more is not offered as the value of a task


@dataclass(frozen=True, slots=True)
class Candidate:
    """Something a phrase may mean, and how it is written with its id."""

    id: str
    says: str
    typed: str  #: "debris_on_relief_seat=yes"
    fact: Fact


def candidates(text: str, book: Book) -> tuple[Candidate, ...]:
    """What a phrase that nothing was read of may mean: measures or tasks for a value, else findings."""
    values = values_in(text, book)
    if values:
        return tuple(_measures(text, values, book))[:MOST]
    words = text.lower().replace("'", "").replace(",", " ").split()
    praised = praises(text, book)
    part = " ".join(w for w in words if w not in PRAISE) if praised else text
    hits = finder_of(book).find(part, (Finding,), 3 * MOST)
    denied = praised or any(word in NEGATION for word in words)
    found = []
    for hit in hits:
        word = hit.word
        if not isinstance(word, Finding) or word in book.shown_by_trial or hit.score < LEAST_SCORE:
            continue  # what came of a trial is only ever said, never meant
        absent = denied and not (praised and word.id in GOOD_NEWS)
        if word.kind is not Kind.LAYOUT:
            state = "absent" if absent else "present"
            says = (word.denies or f"not: {word.says}") if absent else word.says
            fields: dict[str, Value] = {"what": word.id, "state": state}
            fact = Fact("finding", fields, ((0, len(text)),))
            found.append(Candidate(word.id, says, f"{word.id}={'no' if absent else 'yes'}", fact))
    return tuple(found[:MOST])


def _measures(text: str, values: Sequence[str], book: Book) -> Iterator[Candidate]:
    """Measures and tasks that can have a value of the phrase: those it names, best first.

    Where it names none, every measure that can.
    """
    hits = finder_of(book).find(text, (Measure, Task), len(book.measures) + len(book.tasks))
    named = [h.word for h in hits if isinstance(h.word, Measure | Task)]
    named = [w for w in named if isinstance(w, Measure) or not _is_measured(w, book)]
    fitting = [(w, v) for w in named if (v := _value_of(w, values))]
    every = [(w, v) for w in book.measures.values() if (v := _value_of(w, values))]
    for word, value in fitting or every:
        table = "finding" if isinstance(word, Measure) else "work"
        fields: dict[str, Value] = {"what": word.id, "value": value}
        fact = Fact(table, fields, ((0, len(text)),))
        yield Candidate(word.id, f"{word.says}: {value}", f'{word.id}="{value}"', fact)


def _is_measured(task: Task, book: Book) -> bool:
    """Whether a measure has the quantity of a task; of the two it is the one that is offered."""
    return task.measures is not None and task.measures.id in book.measures


def _value_of(word: Measure | Task, values: Sequence[str]) -> str:
    """The first value that a measure or task can have; empty where it can have none."""
    return next((v for v in values if _can_be(v, word)), "")


def _can_be(value: str, word: Measure | Task) -> bool:
    if not word.dimension:
        return False
    try:
        si = parse(value, DIMENSIONS[word.dimension])
    except UnitError:
        return False
    quantity = word.quantity if isinstance(word, Measure) else word.measures
    if quantity is not None:
        return quantity.plausible[0] <= si <= quantity.plausible[1]
    bands = word.bands if isinstance(word, Task) else ()
    ends = [end for band in bands for end in (band.low, band.high) if end]
    return bool(ends) and 0 < si <= _BEYOND * max(ends)
