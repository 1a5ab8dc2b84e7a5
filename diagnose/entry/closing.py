"""The end of a job as an entry of its case: cause, how it was confirmed, what was done."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.case.writing import Appended, NewEntry, append_by
from diagnose.diagnosis import Diagnosis
from diagnose.entry.cause_named import confirmed_causes
from diagnose.entry.time_spent import minutes_spent
from diagnose.errors import UsageError
from diagnose.planning.choosing import SURE
from diagnose.signoff.closing import open_points
from diagnose.ways import Way, to
from knowledge.book import Book
from knowledge.engines.features import DIESEL, OVERHEAD_CAM, PUSHROD_ENGINE, VEE_ENGINE
from knowledge.model import State


@dataclass(frozen=True, slots=True, kw_only=True)
class ClosingInput:
    """What a person says at the end of a job; empty: not given."""

    causes: Sequence[str] = ()  #: ids or words; empty: those that are nearly certain
    how: str = ""  #: how the cause was confirmed
    remedy: str = ""  #: empty: the book's remedy for the causes
    minutes: str = ""  #: hands-on time with its unit: "140 min"
    reason: str = ""  #: why it may be closed although something is open
    comeback_of: str = ""  #: the file name of the earlier job
    by: str = ""


def close(path: Path, book: Book, given: ClosingInput) -> Appended:
    """Write the end of a job into its case file.

    Raises UsageError where something is wrong or still open without a reason; NoCaseError,
    BadCaseError, CannotWriteError.
    """
    return append_by(path, book, lambda case: [closing_entry(given, case, book)])


def closing_entry(given: ClosingInput, case: Case, book: Book) -> NewEntry:
    """The end of the job as an entry for ``case``. Raises UsageError."""
    answer = Diagnosis(book, case)
    reasoned = bool(given.reason.strip())
    faults: list[str] = []
    if case.closed is not None and not reasoned:
        number = case.closed.entry.no
        faults.append(
            f"already closed, entry {number}; to close it again, give a reason{to(Way.REASON)}"
        )
    causes: list[str] = []
    try:
        causes = confirmed_causes(given.causes, answer)
    except UsageError as fault:
        faults.append(str(fault))
    if not given.how.strip():
        faults.append(to(Way.HOW))
    spent = ""
    if given.minutes.strip():
        try:
            spent = f"{minutes_spent(given.minutes):g} min"
        except UsageError as fault:
            faults.append(str(fault))
    if given.comeback_of and case.path is not None:
        faults += other_engine(load(case.path.with_name(given.comeback_of), book), case)
    against = open_points(answer, SURE, [book.causes[c] for c in causes])
    if against and not reasoned:
        lines = "\n".join(f"- {a.said}" for a in against)
        faults.append(
            f"not closed; still open:\n{lines}\ndo it, or give a reason to leave it{to(Way.REASON)}"
        )
    if faults:
        raise UsageError("\n".join(faults))
    return NewEntry(
        "closed",
        {
            "when": date.today(),
            "by": given.by or None,
            "causes": causes,
            "how": given.how,
            "remedy": given.remedy or "; ".join(book.causes[c].remedy for c in causes),
            "minutes": spent or None,
            "planned": _planned_minutes(case, book),
            "reason": "; ".join((given.reason, *(a.says for a in against)))
            if against
            else given.reason or None,
            "comeback": given.comeback_of or None,
        },
    )


#: how an engine is built, which no repair changes
BUILT = (DIESEL, OVERHEAD_CAM, PUSHROD_ENGINE, VEE_ENGINE)


def other_engine(earlier: Case, case: Case) -> list[str]:
    """What shows that an earlier job was of another engine, in one line; empty where nothing does."""
    two = [one.known_features for one in (earlier, case)]
    differ = (f for f in BUILT if {one.get(f) for one in two} == {State.PRESENT, State.ABSENT})
    named = "" if earlier.path is None else earlier.path.name
    return [f"comeback-of: '{named}' is a job of another engine: {f.says}" for f in differ][:1]


def _planned_minutes(case: Case, book: Book) -> str | None:
    """The book's minutes for the checks that were made: kept for the shop's pace."""
    from diagnose.history.shop import minutes_planned

    minutes = minutes_planned(case, book)
    return None if minutes is None else f"{minutes:.0f} min"
