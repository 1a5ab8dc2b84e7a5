"""Every entry of a case that stands, in a sentence, and what a value comes to."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from diagnose.case.case import Case
from diagnose.case.gauge_looks import said
from diagnose.case.schema import (
    BaselineEntry,
    BearingEntry,
    ClosedEntry,
    Entry,
    FindingEntry,
    ReadingEntry,
    TrialEntry,
    WorkEntry,
)
from diagnose.case.writing import Appended
from diagnose.output.documents.report_entries import day
from diagnose.output.documents.reported import reported_sentences
from diagnose.output.documents.verdicts import verdicts
from diagnose.signoff.judging import EngineFigures, Verdict, judged
from diagnose.signoff.measured import below_rule, measured_bounds, reading_bounds
from knowledge.book import Book

#: fields of a bearing that hold what was measured or goes for all of a kind
BEARING = tuple(
    BearingEntry.model_fields.keys() - Entry.model_fields.keys() - {"what", "at", "state"}
)
BAD = (Verdict.FAILED, Verdict.BORDERLINE)


@dataclass(frozen=True, kw_only=True)
class EntryLine:
    """One entry; texts may be empty."""

    number: int
    kind: str  #: the table it stands in
    known: bool  #: False: only that somebody was asked, and did not know
    says: str
    verdict: str  #: on a value or reading
    fits: bool | None  #: whether it keeps its limits; None: nothing to compare it with
    day: str
    by: str
    note: str


def entry_lines(case: Case, book: Book, since: int = 1) -> tuple[EntryLine, ...]:
    """Build the lines of the standing entries from the number ``since`` on, the latest first."""
    before = replace(case, last_number=max(0, since - 1))
    judgements = verdicts(Appended(before, case, ()), book)
    reported, fits = reported_sentences(case), dict(_limits_kept(case, book))
    lines = [
        EntryLine(
            number=number,
            kind=_kind(entry),
            known=not is_unknown(entry),
            says=reported.get(number) or _says(entry, book),
            verdict=judgements.get(number, ""),
            fits=fits.get(number),
            day=day(entry.when),
            by=entry.by,
            note=entry.note,
        )
        for number, entry in sorted(case.standing.items(), reverse=True)
        if number >= since
    ]
    return tuple(lines)


def is_unknown(entry: Entry) -> bool:
    """Whether an entry says only that somebody was asked and did not know."""
    return isinstance(entry, FindingEntry) and entry.state == "unknown"


def _kind(entry: Entry) -> str:
    return type(entry).__name__.removesuffix("Entry").lower()


def _says(entry: Entry, book: Book) -> str:
    """An entry in the book's words, with its value and place."""
    match entry:
        case FindingEntry() if entry.what in book.measures:
            return _with_place(f"{book.measures[entry.what].says}: {entry.value}", entry.where)
        case FindingEntry() if entry.what in book.findings:
            finding = book.findings[entry.what]
            if is_unknown(entry):
                return f"not known: {finding.says}"
            sure = "" if entry.sure is None else f" ({100 * entry.sure:.0f} % sure)"
            return _with_place(finding.stated(entry.state == "present") + sure, entry.where)
        case TrialEntry() if entry.what in book.trials:
            return f"not tried: {book.trials[entry.what].says}"
        case WorkEntry() if entry.what in book.tasks:
            result = entry.value or entry.state
            return _with_place(f"{book.tasks[entry.what].says}: {result}", entry.where)
        case BearingEntry():
            given = entry.model_dump(exclude_none=True, include=set(BEARING))
            return f"{entry.what}: " + ", ".join(
                f"{name.replace('_', ' ')} {value}" for name, value in given.items()
            )
        case ReadingEntry():
            gauge = ", on a trusted gauge" if entry.gauge == "direct" else ""
            start = ", first start" if entry.at else ""
            return f"gauge: {said(entry)}{gauge}{start}"
        case BaselineEntry():
            return f"when it was sound: {said(entry)}"
        case ClosedEntry():
            return "job closed: " + ", ".join(book.causes[c].says for c in entry.causes)
    return str(getattr(entry, "what", _kind(entry))).replace("_", " ")


def _with_place(text: str, where: str) -> str:
    return f"{text} ({where})" if where else text


def _limits_kept(case: Case, book: Book) -> Iterator[tuple[int, bool]]:
    """Whether each value and reading keeps its limits, by the number of its entry."""
    for measured in case.measurements:
        every = measured_bounds(measured.measure, measured.value, case, book)
        if every:
            yield measured.entry.no, not any(bounds[0].broken for bounds in every)
    for read in (*case.readings, *case.start_readings):
        if bounds := reading_bounds(read.reading, case):
            broken = any(each[0].broken for each in bounds)
            yield read.entry.no, not broken and below_rule(read.reading, case) is None
    for work in case.task_records:
        verdict = judged(work.task, work, EngineFigures.of(case)).verdict
        yield work.entry.no, verdict not in BAD
