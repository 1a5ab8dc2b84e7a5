"""A case with gauge readings that are tried, not written."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.loading import load
from diagnose.case.schema import MOST_NUMBERED
from diagnose.entry.readings import parse_reading
from diagnose.errors import UsageError
from knowledge.book import Book


def load_with_readings(path: Path, book: Book, readings: Sequence[str]) -> Case:
    """The case of a file with more gauge readings; the file stays as it is.

    Raises UsageError for a reading that is wrong; NoCaseError, BadCaseError.
    """
    return with_readings(load(path, book), readings)


def with_readings(case: Case, readings: Sequence[str]) -> Case:
    """The case with more gauge readings, numbered behind its last entry. Raises UsageError."""
    if len(case.readings) + len(case.start_readings) + len(readings) > MOST_NUMBERED:
        raise UsageError(f"reading: at most {MOST_NUMBERED:,} in a case")
    numbered = enumerate(readings, case.last_number + 1)
    today, speeds = date.today(), case.speeds
    more = [parse_reading(text).numbered(number, today, speeds) for number, text in numbered]
    return replace(
        case,
        readings=(*case.readings, *(r for r in more if r.entry.at is None)),
        start_readings=(*case.start_readings, *(r for r in more if r.entry.at == "start")),
        last_number=case.last_number + len(more),
        standing={**case.standing, **{r.entry.no: r.entry for r in more}},
    )
