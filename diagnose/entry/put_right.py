"""Words that a fault is gone, said of the repaired engine: no evidence against what was found."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from diagnose.case.case import Case
from diagnose.diagnosis import Diagnosis
from diagnose.entry.repair_work import repair_has_begun
from diagnose.understanding.repaired import repaired, says_now
from diagnose.understanding.words.facts import Fact, Understanding
from knowledge.book import Book
from knowledge.model import Finding, Stage, State

GONE = "said of the repaired engine, no evidence of the fault: not recorded"


def gone_since(
    understanding: Understanding, case: Case, book: Book, said: bool = False
) -> tuple[Fact, ...]:
    """The facts that deny what the case has, and are of the engine after the repair.

    Where the person says that all is of the repaired engine (``said``), every denial is. Else of
    what was seen inside, the words must say that it is so now, or that work was done; once the
    repair has begun, whatever was there and is not there now is of the repaired engine.
    """
    denied = [f for f in understanding.facts if f.table == "finding" and _is_denial(f)]
    if not denied:
        return ()
    if said:
        return tuple(denied)
    begun = repair_has_begun(case)
    if not begun and not _is_said(understanding.text, book):
        return ()
    there = set(_there(case, book) if begun else _seen_inside(case))
    return tuple(f for f in denied if book.findings[str(f.fields["what"])] in there)


def without(understanding: Understanding, facts: tuple[Fact, ...]) -> Understanding:
    """The same without these facts; their words are read all the same."""
    return replace(understanding, facts=tuple(f for f in understanding.facts if f not in facts))


def _is_denial(fact: Fact) -> bool:
    return fact.fields.get("state") == "absent" and not fact.fields.get("value")


def _is_said(text: str, book: Book) -> bool:
    return repaired(text, book) is not None or says_now(text, book)


def _seen_inside(case: Case) -> Iterator[Finding]:
    for record in case.finding_records:
        seen = record.observation
        if seen is not None and seen.state is State.PRESENT and record.stage is Stage.OPENED:
            yield record.finding


def _there(case: Case, book: Book) -> Iterator[Finding]:
    """What was observed, or follows from what was reported."""
    known = Diagnosis(book, case).inference
    for finding, seen in known.facts.observations.items():
        if seen.state is State.PRESENT:
            yield finding
    yield from (d.finding for d in known.result.derived if d.state is State.PRESENT)
