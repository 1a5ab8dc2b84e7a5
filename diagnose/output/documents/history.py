"""The document of ``history``: closed jobs, what was found beside the book, what learning changes.

``shop_note`` is what a review or plan made ``--with-history`` says about them.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from diagnose.errors import plain
from diagnose.history.learning import PLAN_COUNTS, Learned, ShopPace, pace, prior_changes
from diagnose.history.shop import ClosedJob, LeftOut, Shop
from diagnose.output.as_json import NOT_IN_JSON, only
from diagnose.output.documents.named import Named, named
from diagnose.output.documents.shop_note import ShopNote
from knowledge.book import Book


@dataclass(frozen=True, kw_only=True)
class HistoryJob:
    """A closed job; minutes are None where they are not known."""

    file: str
    layout: str
    causes: tuple[Named, ...] = field(metadata=only("id"))
    minutes_spent: float | None
    minutes_planned: float | None
    closed_on: str | None  #: ISO date
    comeback: str | None  #: file of the earlier job of which this one is a comeback
    counted: bool  #: False where the engine came back and the later job counts


@dataclass(frozen=True, kw_only=True)
class FileRemark:
    """A file that was not read, or of which a part does not count, and why."""

    file: str
    why: str


@dataclass(frozen=True, kw_only=True)
class FoundCause:
    """How often a cause was found, and how often the book expects it in such jobs."""

    cause: str
    jobs: float  #: a job with two causes counts half for each
    expected: float
    book_share: float
    share: float
    factor: float
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class MovedPrior:
    """A prior that learning changes, on an engine of which nothing is known."""

    cause: str
    before: float
    after: float
    says: str = field(metadata=NOT_IN_JSON)


@dataclass(frozen=True, kw_only=True)
class Pace:
    """The shop's minutes to the minutes planned."""

    factor: float
    jobs: int
    spent: float = field(metadata=NOT_IN_JSON)  #: min
    planned: float = field(metadata=NOT_IN_JSON)  #: min
    prior_jobs: float = field(metadata=NOT_IN_JSON)  #: jobs that go to plan, counted in


@dataclass(frozen=True, kw_only=True)
class HistoryDocument:
    """Everything ``history`` answers."""

    folder: str
    jobs: tuple[HistoryJob, ...]
    counted: int  #: jobs that learning rests on
    open: int
    left_out: tuple[FileRemark, ...]
    remarks: tuple[FileRemark, ...]
    found: tuple[FoundCause, ...]  #: most often found first
    moved: tuple[MovedPrior, ...]  #: largest change first
    pace: Pace | None  #: None where no job has both minutes planned and minutes spent


def history_document(shop: Shop, learned: Learned, book: Book) -> HistoryDocument:
    """Build the document of a shop's jobs."""
    return HistoryDocument(
        folder=str(shop.folder),
        jobs=tuple(_job(j, shop) for j in shop.jobs),
        counted=learned.jobs,
        open=shop.open,
        left_out=_remarks(shop.left_out),
        remarks=_remarks(shop.remarks),
        found=tuple(
            FoundCause(
                cause=c,
                jobs=learned.found[c],
                expected=learned.expected[c],
                book_share=learned.book_share[c],
                share=learned.share[c],
                factor=learned.factor[c],
                says=book.causes[c].says,
            )
            for c in sorted(
                (c for c, n in learned.found.items() if n > 0),
                key=lambda c: (-learned.found[c], c),
            )
        ),
        moved=tuple(
            MovedPrior(
                cause=m.cause, before=m.before, after=m.after, says=book.causes[m.cause].says
            )
            for m in prior_changes(learned, book)
        ),
        pace=_pace(pace(shop.jobs)),
    )


def _job(job: ClosedJob, shop: Shop) -> HistoryJob:
    return HistoryJob(
        file=job.path.name,
        layout=job.layout.id,
        causes=named(job.causes),
        minutes_spent=job.minutes_spent,
        minutes_planned=job.minutes_planned,
        closed_on=job.closed_on.isoformat() if job.closed_on else None,
        comeback=job.comeback or None,
        counted=job.path.name not in shop.came_back,
    )


def _remarks(left_out: Iterable[LeftOut]) -> tuple[FileRemark, ...]:
    return tuple(FileRemark(file=each.name, why=each.why) for each in left_out)


def _pace(found: ShopPace) -> Pace | None:
    if not found.jobs:
        return None
    return Pace(
        factor=found.factor,
        jobs=found.jobs,
        spent=sum(found.spent),
        planned=sum(found.planned),
        prior_jobs=PLAN_COUNTS,
    )


def shop_note(shop: Shop, learned: Learned, own: bool, command: str) -> ShopNote:
    """Build the note of an answer; ``own``: the case in hand is one of the folder's jobs.

    ``command`` is what to type for the answer without the shop's jobs.
    """
    folder = plain(shop.folder, 4096)
    besides = " (this one apart)" if own else ""
    away = f"; {counted(len(shop.left_out), 'file')} there left out" if shop.left_out else ""
    jobs = counted(learned.jobs, "closed job")
    return ShopNote(
        folder=str(shop.folder),
        jobs=learned.jobs,
        says=f"with the shop's {jobs}{besides} in {folder}{away}; without it: {command}",
        whole=(folder, command),
    )


def counted(n: int, what: str) -> str:
    """Return a number with its noun.

    >>> counted(1, "file"), counted(2, "file")
    ('1 file', '2 files')
    """
    return f"{n} {what}{'' if n == 1 else 's'}"
