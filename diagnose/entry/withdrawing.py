"""Take back an entry of a case: what it said no longer counts, and stays to be read."""

from __future__ import annotations

from diagnose.case.case import Case
from diagnose.case.schema import BearingEntry, EarlierEntry, FindingEntry, TrialEntry, WorkEntry
from diagnose.case.writing import NewEntry
from diagnose.entry.conflicts import kind_of
from diagnose.entry.details import Details
from diagnose.errors import UsageError


def withdrawal(number: int, case: Case, details: Details) -> NewEntry:
    """An entry that takes back the one of that number. Raises UsageError where none stands."""
    entry = case.standing.get(number)
    if entry is None:
        raise UsageError(f"no entry {number} stands in this case")
    fields = {**details.fields(), "state": "withdrawn", "replaces": number}
    if isinstance(entry, FindingEntry | WorkEntry):
        return NewEntry(kind_of(entry), {"what": entry.what, **fields})
    del fields["where"]
    if isinstance(entry, TrialEntry | EarlierEntry | BearingEntry):
        return NewEntry(kind_of(entry), {"what": entry.what, **fields})
    return NewEntry(kind_of(entry), fields)
