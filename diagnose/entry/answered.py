"""What an answer says as entries of a case, and which entries of an earlier answer they replace."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace

from diagnose.case.case import Case
from diagnose.case.writing import Fields, NewEntry
from diagnose.entry.answers import Answer
from diagnose.entry.details import Details
from diagnose.entry.facts import FindingInput
from diagnose.entry.new_entry import fact_entry, reading_entry
from diagnose.entry.numbers import Readings
from diagnose.entry.picking import Picked
from diagnose.entry.questions import (
    CheckQuestion,
    ChoiceQuestion,
    EngineQuestion,
    FindingQuestion,
    Question,
    Said,
    TriedQuestion,
)
from diagnose.entry.trials import TrialInput
from diagnose.entry.withdrawing import withdrawal
from knowledge.book import Book
from knowledge.engines.layouts import UNKNOWN
from knowledge.model import Stage

_TOLD, _OUTSIDE = Stage.KNOWN.value, Stage.OUTSIDE.value


@dataclass(frozen=True, slots=True)
class Answered:
    """A question that was answered, and the numbers of the entries its answer made."""

    question: Question
    numbers: tuple[int, ...] = ()


def new_entries(
    question: Question, answer: Said, case: Case, book: Book, by: str, earlier: Answered | None
) -> list[NewEntry]:
    """The entries an answer makes; those of an earlier answer to the same question are withdrawn."""
    details = Details(by=by)
    made = list(_entries(question, answer, case, book, details))
    replaced = {e.fields.get("replaces") for e in made}
    for number in earlier.numbers if earlier else ():
        if number in case.standing and number not in replaced:
            made.append(withdrawal(number, case, details))
    return made


def engine_fields(question: EngineQuestion, answer: Picked) -> EngineQuestion | Fields:
    """The [engine] that an answer means; the next question where only its kind was chosen."""
    kind, place = question.of, answer.places[0] if answer.places else None
    if kind is None and place is not None:
        kind, place = question.kinds[place], 0
        if len(kind.layouts) > 1:
            return EngineQuestion("Which of these?", question.kinds, kind)
    if kind is None:
        return {"layout": UNKNOWN.id}
    if place is None:
        return {"layout": UNKNOWN.id, "has": list(kind.has) or None}
    return {"layout": kind.layouts[place][0]}


def _entries(
    question: Question, answer: Said, case: Case, book: Book, details: Details
) -> Iterator[NewEntry]:
    match question, answer:
        case FindingQuestion(), Answer():
            yield _finding(question.finding.id, answer, case, book, details)
        case _, TrialInput():
            yield fact_entry(answer, case, details)
        case _, Readings():
            for reading in answer.given:  # the panel's, by wire or by oil line, if not said
                yield reading_entry(reading, details)
        case ChoiceQuestion(), Picked():
            for id_, given in _chosen(question, answer):
                yield _finding(id_, given, case, book, details)
        case TriedQuestion(), Picked(places=tuple()):
            for place, trial in enumerate(question.trials):
                if place not in (answer.places or ()):
                    yield fact_entry(TrialInput(trial, None), case, details)
        case CheckQuestion(), Picked():
            for place, finding in enumerate(question.findings):
                given = _state_of(place, answer)
                there = details if given.state == "unknown" else replace(details, learned=_OUTSIDE)
                yield _finding(finding.id, given, case, book, there)


def _chosen(question: ChoiceQuestion, answer: Picked) -> Iterator[tuple[str, Answer]]:
    """Each finding that a choice says something of, once."""
    if answer.places is None:
        for id_ in _without_repeats(f for c in question.choices for f in c.there):
            yield id_, Answer("unknown")
        return
    chosen = [question.choices[place] for place in answer.places]
    there = _without_repeats(f for c in chosen for f in c.there)
    for id_ in there:
        yield id_, Answer("present")
    offered = {f for c in question.choices for f in c.there}
    for id_ in _without_repeats(f for c in chosen for f in question.menu.denied_by(c)):
        if id_ not in there and (id_ in offered or any(c.there for c in chosen)):
            yield id_, Answer("absent")


def _state_of(place: int, answer: Picked) -> Answer:
    if answer.places is None:
        return Answer("unknown")
    if not answer.places:
        return Answer("absent")
    return Answer("present" if place in answer.places else "unknown")


def _finding(id_: str, answer: Answer, case: Case, book: Book, details: Details) -> NewEntry:
    """One finding; what is not known was only asked, so that a check can still show it."""
    there = replace(details, learned=_TOLD) if answer.state == "unknown" else details
    return fact_entry(FindingInput(book.findings[id_], answer), case, there)


def _without_repeats(ids: Iterable[str]) -> list[str]:
    return list(dict.fromkeys(ids))
