"""Readings taken after the repair: kept as the first start's, not as evidence of the fault."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from diagnose.case.case import Case
from diagnose.case.mended import limits_at
from diagnose.entry.readings import ReadingInput
from diagnose.errors import UsageError
from diagnose.understanding.repaired import repaired
from diagnose.understanding.words.facts import Fact, Span, Understanding
from knowledge.book import Book
from knowledge.model import Reading, Stage, State
from knowledge.pressure.gauge import RISEN, state_of, states_agree
from knowledge.reports.words import Circumstance, Result

START = "start"  #: where a reading of the repaired engine was taken
_STAYS = ("reading", "trial", "layout", "oil", "work")  #: tables that are kept of what is said
_NO_CURE = (Result.NO_DIFFERENCE.value, Result.WORSE.value)


def of_the_repaired(
    understanding: Understanding, case: Case, book: Book, said: bool = False
) -> Understanding:
    """The same, with readings after the repair as such, where the words or the person say so.

    What else was seen of the repaired engine is no evidence of the fault: it is left over.
    Words alone say so only where something wrong was found inside already, or where the case has
    a reading of the fault and the new one is well above it: until then work that was done is
    history. Where they only name the work, its readings must keep every limit.
    """
    readings = [f for f in understanding.facts if f.table == "reading"]
    found = repaired(understanding.text, book) if readings else None
    if not readings or not (said or found):
        return understanding
    at = 0 if said or found is None else found.at
    after = [f for f in understanding.facts if f.spans[-1][1] > at]
    if not said and not (_found_inside(case) or _is_cured(after, case)):
        return understanding
    if not said and found is not None and not found.outright and not _is_good(after, case):
        return understanding
    dropped = [f for f in after if f.table not in _STAYS]
    facts = [_at_start(f) if f in after else f for f in understanding.facts if f not in dropped]
    read = [s for f in facts for s in f.spans]
    left = {*understanding.unread, *(s for f in dropped for s in f.spans if not _within(s, read))}
    said_so = (0, 0) if found is None else (found.at, found.end)
    unread = tuple(sorted(s for s in left if not said_so[0] <= s[0] < said_so[1]))
    return replace(understanding, facts=tuple(facts), unread=unread)


def _within(span: Span, spans: list[Span]) -> bool:
    """Whether most of a span belongs to one of these, so that its words were read."""
    return any(
        min(span[1], last) - max(span[0], first) > (span[1] - span[0]) / 2 for first, last in spans
    )


def is_of_the_repaired(fact: Fact) -> bool:
    """Whether a fact is a reading of the repaired engine."""
    return fact.fields.get("at") == START


def _found_inside(case: Case) -> bool:
    """Whether the engine was opened and something was seen there, or measured."""
    seen = any(
        r.stage is Stage.OPENED and r.observation and r.observation.state is State.PRESENT
        for r in case.finding_records
    )
    return seen or bool(case.measurements) or case.closed is not None


def _is_good(facts: list[Fact], case: Case) -> bool:
    """Whether no reading breaks a limit and no trial was without effect."""
    if any(f.table == "trial" and f.state in _NO_CURE for f in facts):
        return False
    return not any(_breaks(f, case) for f in facts if f.table == "reading")


def _is_cured(facts: list[Fact], case: Case) -> bool:
    """Whether a reading is well above one that the case has, at about the same speed and heat."""
    new = [r for f in facts if f.table == "reading" and (r := _reading(f)) is not None]
    old = [r.reading for r in case.readings]
    return any(
        states_agree(state_of(n), state_of(o)) and n.pressure >= RISEN * o.pressure
        for n in new
        for o in old
    )


def _breaks(fact: Fact, case: Case) -> bool:
    reading = _reading(fact)
    return reading is not None and any(
        reading.pressure < case.limit(limit) for limit in limits_at(reading, case)
    )


def _reading(fact: Fact) -> Reading | None:
    """The reading that a fact states; None where it is none."""
    fields: dict[str, Any] = dict(fact.fields)
    fields["during"] = tuple(fields.get("during", ()))
    try:
        return ReadingInput(**fields).in_si()
    except UsageError:
        return None


def _at_start(fact: Fact) -> Fact:
    """A reading as one of the first start; "at start" said no more than that."""
    if fact.table != "reading":
        return fact
    fields = {k: v for k, v in fact.fields.items() if k != "during"}
    during = fact.fields.get("during")
    kept = [d for d in during if d != Circumstance.START] if isinstance(during, list) else []
    return replace(fact, fields={**fields, **({"during": kept} if kept else {}), "at": START})
