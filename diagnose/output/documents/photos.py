"""The photos of a job in its documents: what each is of, and where it lies."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.photos import album_of, photos_of
from knowledge.access import OPENINGS
from knowledge.book import the_book

SHOWN_TO_THE_OWNER = 3


@dataclass(frozen=True, kw_only=True)
class PhotoEntry:
    """One photo; ``says`` is the title of the step it was taken at and may be empty."""

    number: int
    file: str
    path: str  #: from the folder of the case file
    step: str
    says: str


def photo_entries(case: Path | None) -> tuple[PhotoEntry, ...]:
    """Every photo kept beside a case file, in the order they were taken."""
    if case is None:
        return ()
    folder = album_of(case).name
    return tuple(
        PhotoEntry(
            number=photo.number,
            file=photo.file,
            path=f"{folder}/{photo.file}",
            step=photo.step,
            says=step_title(photo.step),
        )
        for photo in photos_of(case)
    )


def step_title(step: str) -> str:
    """The title of a check, a task or the opening of a place by its id; empty where there is none.

    >>> step_title("")
    ''
    """
    book = the_book()
    if step in book.inspections:
        says = book.inspections[step].says
    elif step in book.tasks:
        says = book.tasks[step].says
    else:
        says = next((o.says for o in OPENINGS.values() if o.access.value == step), "")
    return says[:1].upper() + says[1:]


def for_the_owner(photos: Sequence[PhotoEntry], telling: Collection[str]) -> tuple[PhotoEntry, ...]:
    """The few photos that say most: of the steps in ``telling``, then of any step, the last first.

    In the order they were taken.
    """
    ranked = sorted(photos, key=lambda p: (p.step not in telling, not p.says, -p.number))
    return tuple(sorted(ranked[:SHOWN_TO_THE_OWNER], key=lambda p: p.number))
