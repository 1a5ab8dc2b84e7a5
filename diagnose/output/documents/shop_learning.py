"""What a folder's closed jobs add to the answer on one case."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.loading import named
from diagnose.errors import UsageError
from diagnose.output.documents.shop_note import ShopNote
from diagnose.output.lines import as_typed
from knowledge.book import Book


@dataclass(frozen=True, kw_only=True)
class ShopLearning:
    """What closed jobs change; nothing where there are none."""

    note: ShopNote | None = None  #: for the document of the answer
    factors: Mapping[str, float] | None = None  #: on how common each cause is, by its id
    pace: float = 1.0  #: this shop's minutes for each minute of the book


def shop_learning(folder: Path | None, book: Book, case: Path, command: str) -> ShopLearning:
    """Learn from the closed jobs of ``folder`` without the case in hand; None: from none.

    ``command`` made the answer; the note says how to make it without the jobs.
    Raises UsageError where the folder has no closed job; NoCaseError where it cannot be read.
    """
    if folder is None:
        return ShopLearning()
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
    return ShopLearning(
        note=shop_note(shop, learned, own, without),
        factors=learned.factor,
        pace=pace(jobs).factor,
    )
