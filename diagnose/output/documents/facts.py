"""Facts that were read from words, as sentences."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.case.gauge_looks import said
from diagnose.case.reports import AT_ONCE
from diagnose.case.schema import BaselineEntry, ReadingEntry
from diagnose.entry.after_repair import is_of_the_repaired
from diagnose.entry.engine_said import EngineChange
from diagnose.output.documents.reported import (
    behaviour_sentence,
    earlier_sentence,
    trial_sentence,
)
from diagnose.understanding.words.facts import Fact
from knowledge.book import Book
from knowledge.engines.layouts import UNKNOWN
from knowledge.model import Gauge
from knowledge.reports.shapes import Behaviour, EarlierWork, TrialMade
from knowledge.reports.words import Circumstance, Course, Done, Hands, Onset, Result, Shows, Since
from knowledge.units import DIMENSIONS, parse


def fact_sentence(fact: Fact, book: Book) -> str:
    """Return a fact as a plain sentence without a full stop."""
    fields = fact.fields
    match fact.table:
        case "layout":
            return f"engine: {book.layouts[str(fields['layout'])].says}"
        case "oil":
            return f"oil in it: {fields['grade']}"
        case "limit":
            return f"by the book, {book.limits[str(fields['what'])].says}: {fields['value']}"
        case "finding" if "value" in fields:
            where = f", {fields['where']}" if "where" in fields else ""
            return f"{book.measures[str(fields['what'])].says}{where}: {fields['value']}"
        case "finding":
            finding = book.findings[str(fields["what"])]
            absent = fields["state"] == "absent"
            says = (finding.denies or f"not: {finding.says}") if absent else finding.says
            return says if fact.sure == 1.0 else f"{says} (perhaps)"
        case "reading":
            entry = ReadingEntry.model_validate({"no": 1, **fields})
            direct = ", on a trusted gauge" if fields.get("gauge") == "direct" else ""
            after = ", after the repair" if is_of_the_repaired(fact) else ""
            return f"reading: {said(entry)}{direct}{after}"
        case "baseline":
            return (
                f"when nothing was wrong: {said(BaselineEntry.model_validate({'no': 1, **fields}))}"
            )
        case "work":
            return f"{book.tasks[str(fields['what'])].says}: {fields['value']}"
        case "engine":
            return f"{book.quantities[str(fields['what'])].says}: {fields['value']}"
        case "bearing":
            count = fields["count"]
            mains = fields["what"] == "mains"
            return f"{count} main bearings" if mains else f"{count} cylinders: {count} rod bearings"
        case "behaviour":
            return behaviour_sentence(_behaviour(fact))
        case "trial":
            kind = book.trials[str(fields["what"])]
            return trial_sentence(TrialMade(kind, Result(str(fields["result"]))))
        case _:
            return earlier_sentence(_work(fact, book))


def engine_sentence(change: EngineChange) -> str:
    """Return what takes the place of the layout of a case."""
    no_longer = "" if change.was is UNKNOWN else f"; no longer: {change.was.says}"
    return f"the engine is now: {change.now.says}{no_longer}"


def _listed(fact: Fact, key: str) -> Sequence[str]:
    value = fact.fields.get(key)
    return value if isinstance(value, list) else ()


def _behaviour(fact: Fact) -> Behaviour:
    fields = fact.fields
    onset, since = fields.get("onset"), fields.get("since")
    return Behaviour(
        Shows(str(fields["shows"])),
        frozenset(Circumstance(c) for c in _listed(fact, "during")),
        frozenset(Circumstance(c) for c in _listed(fact, "never")),
        bool(fields.get("only")),
        Onset(str(onset)) if onset else None,
        frozenset(Course(c) for c in _listed(fact, "course")),
        Since(str(since)) if since else None,
        gauge=Gauge(str(fields.get("gauge") or Gauge.PANEL)),
    )


def _work(fact: Fact, book: Book) -> EarlierWork:
    fields = fact.fields
    before = str(fields.get("before") or "")
    seconds = 0.0 if before in AT_ONCE else None
    if before and seconds is None:
        seconds = parse(before, DIMENSIONS["time"])
    done, hands = fields.get("done"), fields.get("hands")
    return EarlierWork(
        book.areas[str(fields["what"])],
        Done(str(done)) if done else None,
        seconds,
        Hands(str(hands)) if hands else None,
    )
