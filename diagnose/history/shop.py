"""Every job of a folder: the closed ones as records, the open ones counted, the rest left out.

Only the folder itself is read, in the order of the file names; a link is not followed, since it may
lead out of the folder.
"""

from __future__ import annotations

import os
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from functools import cached_property
from pathlib import Path

from diagnose.case.card import holds_card
from diagnose.case.case import Case, Closing
from diagnose.case.files import is_toml
from diagnose.case.loading import load, named
from diagnose.errors import BadCaseError, FileError, NoCaseError, OutOfScopeError, plain
from knowledge.book import Book
from knowledge.model import Cause
from knowledge.work import Layout


@dataclass(frozen=True, slots=True)
class ClosedJob:
    """A closed job."""

    path: Path
    layout: Layout
    causes: tuple[Cause, ...]
    minutes_spent: float | None  #: hands-on, where they were written down
    minutes_planned: float | None  #: what the plan said at the start, where kept or asked for
    closed_on: date | None
    comeback: str  #: file name of the earlier job of which this is one; empty: of none
    case: Case = field(repr=False, compare=False)


@dataclass(frozen=True, slots=True)
class LeftOut:
    """A file that was not read, or of which a part does not count, and why."""

    name: str
    why: str


@dataclass(frozen=True)
class Shop:
    """The jobs of one folder."""

    folder: Path
    jobs: tuple[ClosedJob, ...]
    open: int
    left_out: tuple[LeftOut, ...]

    @cached_property
    def came_back(self) -> frozenset[str]:
        """Files of jobs that came back: what they were closed with was not the root cause."""
        known = {j.path.name for j in self.jobs}
        return frozenset(
            j.comeback for j in self.jobs if j.comeback in known and j.comeback != j.path.name
        )

    @property
    def remarks(self) -> Iterator[LeftOut]:
        """Comebacks that cannot be as they are written; the jobs count as far as they can."""
        earlier = {j.path.name: j.comeback for j in self.jobs}
        for job in self.jobs:
            name = job.path.name
            if job.comeback == name:
                yield LeftOut(name, "is called a comeback of itself; taken as none")
            elif job.comeback and job.comeback not in earlier:
                why = f"comeback of {plain(job.comeback)}, which is no closed job in this folder"
                yield LeftOut(name, why)
            elif name in _before(name, earlier):
                yield LeftOut(name, "its comebacks lead in a circle; none of them counts")

    def counted(self, but: Path | None = None) -> tuple[ClosedJob, ...]:
        """The jobs whose cause may be learnt from; without ``but``, the job in hand."""
        own = None if but is None else os.path.realpath(but)
        return tuple(
            j
            for j in self.jobs
            if j.path.name not in self.came_back and os.path.realpath(j.path) != own
        )


def _before(name: str, earlier: Mapping[str, str]) -> set[str]:
    """Every earlier job in the chain of comebacks."""
    found: set[str] = set()
    while (name := earlier.get(name, "")) and name not in found:
        found.add(name)
    return found


def read_shop(folder: Path, book: Book, planned: bool = False) -> Shop:
    """Every ``*.toml`` of the folder, not of folders in it. Raises NoCaseError.

    ``planned``: compute the first plan of every job again, about a third of a second each.
    """
    jobs: list[ClosedJob] = []
    left_out: list[LeftOut] = []
    still_open = 0
    for path in _files(folder):
        if holds_card(path):
            continue
        if why := _no_file(path):
            left_out.append(LeftOut(path.name, why))
            continue
        try:
            case = load(path, book)
        except (BadCaseError, NoCaseError, OutOfScopeError) as error:
            left_out.append(LeftOut(path.name, _first_fault(error)))
            continue
        if case.closed is None:
            still_open += 1
        else:
            jobs.append(_job(path, case, case.closed, book, planned))
    return Shop(folder, tuple(jobs), still_open, tuple(left_out))


def _files(folder: Path) -> list[Path]:
    try:
        names = [n for n in os.listdir(folder) if is_toml(n)]
    except FileNotFoundError:
        raise NoCaseError(named(folder), ["there is no such folder"]) from None
    except NotADirectoryError:
        raise NoCaseError(named(folder), ["is no folder; name the folder of the jobs"]) from None
    except PermissionError:
        raise NoCaseError(named(folder), ["no permission to read it"]) from None
    except OSError as error:
        raise NoCaseError(named(folder), [error.strerror or str(error)]) from None
    except ValueError:
        raise NoCaseError(named(folder), ["no such folder name"]) from None
    return [folder / n for n in sorted(names)]


def _no_file(path: Path) -> str:
    """Why this is not even tried; empty where it is."""
    if path.is_symlink():
        return "is a link; links are not followed"
    return "is a folder" if path.is_dir() else ""


def _first_fault(error: FileError) -> str:
    """The first fault of a file, without its name before it."""
    why = error.faults[0]
    return why if len(error.faults) == 1 else f"{why} (and more)"


def _job(path: Path, case: Case, closed: Closing, book: Book, planned: bool) -> ClosedJob:
    when = closed.entry.when
    earlier = closed.entry.comeback.strip().replace("\\", "/").rpartition("/")[2]
    if earlier and not is_toml(earlier):
        earlier += ".toml"
    return ClosedJob(
        path=path,
        layout=case.layout,
        causes=tuple(dict.fromkeys(closed.causes)),
        minutes_spent=closed.minutes,
        minutes_planned=_planned(case, closed, book, planned),
        closed_on=when.date() if isinstance(when, datetime) else when,
        comeback=earlier,
        case=case,
    )


def _planned(case: Case, closed: Closing, book: Book, compute: bool) -> float | None:
    """The minutes kept at closing; else computed where that is asked for."""
    if closed.planned is not None or not compute:
        return closed.planned
    return minutes_planned(case, book)


def minutes_planned(case: Case, book: Book) -> float | None:
    """Return the book's minutes for the checks that were made, to compare with those spent.

    None where no check is recorded.
    """
    from diagnose.diagnosis import Diagnosis
    from diagnose.history.work_done import minutes_of_checks

    return minutes_of_checks(Diagnosis(book, case))
