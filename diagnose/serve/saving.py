"""Save what a form says, unless the same thing was entered since the form was made."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.writing import Appended, NewEntry, append_by
from diagnose.entry.closing import ClosingInput, closing_entry
from diagnose.entry.recording import Input, taken, with_engine
from diagnose.entry.spoken import Spoken
from diagnose.errors import UserError
from diagnose.serve.diagnoses import Version
from knowledge.book import the_book


class MeanwhileError(UserError):
    """The same thing was entered in another place since the form was made."""

    def __init__(self, numbers: Sequence[int], closed: bool) -> None:
        """``numbers``: of the entries of the others; ``closed``: the job was closed."""
        self.numbers = tuple(numbers)
        self.closed = closed
        super().__init__("changed meanwhile")


def save(path: Path, given: Sequence[Input], seen: Version, *, insist: bool = False) -> Appended:
    """Append everything in ``given`` or, where anything is wrong, nothing.

    ``seen``: the state of the file the person saw. An entry that would replace one made since
    then is not saved unless ``insist``; entries about other things are, whoever else writes.
    Raises MeanwhileError; UsageError with all that is wrong; NoCaseError, BadCaseError,
    CannotWriteError.
    """
    book = the_book()
    spoken: list[Spoken] = []

    def made(case: Case) -> list[NewEntry]:
        read = [taken(each, case, book) for each in given]
        spoken[:] = [phrase for each in read for phrase in each.spoken]
        entries = [entry for each in read for entry in each.entries]
        if not insist:
            check_unchanged(entries, case, seen)
        return entries

    saved = append_by(path, book, made)
    return with_engine(saved, path, book, spoken, given[0].details.by if given else "")


def check_unchanged(entries: Sequence[NewEntry], case: Case, seen: Version) -> None:
    """Raise MeanwhileError where an entry replaces one the person has not seen."""
    replaced = [e.fields.get("replaces") for e in entries]
    newer = [n for n in replaced if isinstance(n, int) and n > seen.last]
    closed = case.closed is not None and case.closed.entry.no > seen.last
    if newer or closed:
        raise MeanwhileError(newer, closed)


def end(path: Path, given: ClosingInput, seen: Version, *, insist: bool = False) -> Appended:
    """Write the end of a job unless anything was entered since the person saw it.

    Raises MeanwhileError unless ``insist``; UsageError where something is wrong or still open
    without a reason; NoCaseError, BadCaseError, CannotWriteError.
    """
    book = the_book()

    def made(case: Case) -> list[NewEntry]:
        newer = [number for number in case.standing if number > seen.last]
        if newer and not insist:
            raise MeanwhileError(newer, case.closed is not None)
        return [closing_entry(given, case, book)]

    return append_by(path, book, made)
