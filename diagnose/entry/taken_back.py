"""The entries that words take back: "the 2 psi cold was wrong", "the knock was the compressor"."""

from __future__ import annotations

from diagnose.case.case import Case
from diagnose.case.schema import BehaviourEntry, Entry, FindingEntry, ReadingEntry
from diagnose.errors import UsageError, plain
from diagnose.understanding.corrected import facts_taken_back
from diagnose.understanding.words.facts import Fact
from knowledge.book import Book
from knowledge.lexicon.shows.beside_pressure import FINDING_OF
from knowledge.reports.words import Shows

_OF_A_READING = ("pressure", "oil", "rpm", "gauge")


def entries_taken_back(text: str, case: Case, book: Book) -> tuple[int, ...]:
    """The numbers of the standing entries that a text takes back; none where it takes nothing back.

    Raises UsageError where it takes back what no entry says.
    """
    wrong = facts_taken_back(text, book)
    found = [no for no, entry in case.standing.items() if any(_says(entry, f) for f in wrong)]
    if wrong and not found:
        raise UsageError(f"'{plain(text)}': no entry says what this takes back")
    return tuple(found)


def _says(entry: Entry, fact: Fact) -> bool:
    """Whether an entry says what a fact does, as far as the fact says it."""
    if fact.table == "reading" and isinstance(entry, ReadingEntry):
        said = [k for k in _OF_A_READING if k in fact.fields]
        return all(getattr(entry, k) == fact.fields[k] for k in said)
    if fact.table == "behaviour" and isinstance(entry, BehaviourEntry):
        return entry.shows == fact.fields["shows"]
    if not isinstance(entry, FindingEntry) or entry.state != "present":
        return False
    if fact.table == "behaviour":
        return entry.what == FINDING_OF.get(Shows(str(fact.fields["shows"])))
    return fact.table == "finding" and entry.what == fact.name
