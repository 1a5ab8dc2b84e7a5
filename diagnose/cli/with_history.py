"""``--with-history`` of the commands that take it: a folder's closed jobs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.loading import named
from diagnose.errors import UsageError
from diagnose.output.documents.shop_note import ShopNote
from diagnose.output.lines import as_typed
from knowledge.book import Book


@dataclass(frozen=True)
class Remembered:
    """What a shop's jobs add to one answer; nothing where none were asked for."""

    note: ShopNote | None = None  #: for the document of the answer
    factors: Mapping[str, float] | None = None  #: on the rate of each cause
    pace: float = 1.0  #: this shop's minutes for each minute of the book


def remembered(folder: Path | None, book: Book, case: Path, command: str) -> Remembered:
    """What the closed jobs of the folder teach, but for the case in hand. Raises UsageError."""
    if folder is None:
        return Remembered()
    from diagnose.history.learning import learned_from, pace
    from diagnose.history.shop import read_shop
    from diagnose.output.documents.history import shop_note

    shop = read_shop(folder, book)
    jobs = shop.counted(case)
    own = len(jobs) < len(shop.counted())
    if not jobs:
        besides = " but this one" if own else ""
        raise UsageError(f"with-history: no closed job in {named(folder)}{besides}")
    learned = learned_from(jobs, book)
    without = f"diagnose {command} {as_typed(str(case))}"
    return Remembered(shop_note(shop, learned, own, without), learned.factor, pace(jobs).factor)
