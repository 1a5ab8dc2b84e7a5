"""What a finding takes the place of: other answers to the question that it answers again."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.case.case import Case
from diagnose.case.writing import NewEntry
from diagnose.entry.details import Details
from diagnose.entry.withdrawing import withdrawal
from diagnose.understanding.corrected import corrects
from knowledge.book import Book
from knowledge.model import State
from knowledge.questions.essentials import ESSENTIALS
from knowledge.questions.groups import GROUPS
from knowledge.questions.shapes import Choice, Menu


def answered_again(
    entries: Sequence[NewEntry], case: Case, book: Book, texts: Sequence[str], details: Details
) -> list[NewEntry]:
    """A withdrawal of each standing finding that one of ``entries`` takes the place of.

    What may have changed since (the level, the oil) stays, unless ``texts`` say that it was wrong.
    """
    corrected = any(corrects(text, book) for text in texts)
    gone = {e.fields.get("replaces") for e in entries}
    new = [e for e in entries if e.kind == "finding"]
    said = {str(e.fields["what"]) for e in new}
    out = {id_ for entry in new for id_ in _put_out(entry, corrected)} - said
    found = [
        seen.entry.no
        for seen in case.finding_records
        if seen.finding.id in out
        and seen.observation is not None
        and seen.observation.state is State.PRESENT
        and seen.entry.no not in gone
    ]
    own = Details(by=details.by)
    return [withdrawal(number, case, own) for number in found]


def _put_out(entry: NewEntry, corrected: bool) -> Iterator[str]:
    """The findings that are not there if this one is as the entry says."""
    what, state = str(entry.fields["what"]), entry.fields.get("state")
    for menu in (*ESSENTIALS, *GROUPS):
        if menu.changes and not corrected:
            continue
        if state == "present":
            for choice in menu.choices:
                if what in choice.there:
                    yield from _others(menu, choice)
        elif state == "absent":
            yield from (f for c in menu.choices if what in c.beyond for f in c.there)


def _others(menu: Menu, choice: Choice) -> Iterator[str]:
    """What is not there if this choice is true; of a question with one answer, all else."""
    yield from choice.not_there
    if not menu.many:
        yield from (f for c in menu.choices for f in c.there if f not in choice.there)
