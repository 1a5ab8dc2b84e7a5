"""``history``, and ``--with-history`` of the commands that take it: the shop's closed jobs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from diagnose.case.loading import named
from diagnose.cli import printing
from diagnose.errors import UsageError
from diagnose.output.documents.shop_note import ShopNote
from diagnose.output.lines import as_typed, wrapped
from knowledge.book import Book, the_book

if TYPE_CHECKING:  # the rest is loaded once there is a shop to remember
    from diagnose.history.learning import Learned
    from diagnose.history.shop import Shop


def show_history(folder: Path, planned: bool, json: bool) -> None:
    """Print what the folder's closed jobs were, and what they teach."""
    from diagnose.history.learning import learned_from
    from diagnose.history.shop import read_shop
    from diagnose.output import history as text

    book = the_book()
    shop = read_shop(folder, book, planned)
    learned = learned_from(shop.counted(), book)
    if json:
        printing.data(text.data(shop, learned, book))
    else:
        printing.answer(text.history(shop, learned, book))


@dataclass(frozen=True)
class Remembered:
    """What a shop's jobs add to one answer; nothing where none were asked for."""

    shop: Shop | None = None
    learned: Learned | None = None
    line: str = ""
    whole: tuple[str, ...] = ()  #: the path and the command in the line, never broken
    pace: float = 1.0  #: this shop's minutes for each minute of the book

    @property
    def factors(self) -> Mapping[str, float] | None:
        """On the rate of each cause."""
        return self.learned.factor if self.learned else None

    @property
    def note(self) -> ShopNote | None:
        """That the shop's jobs are part of the answer, for its document."""
        if self.shop is None or self.learned is None:
            return None
        return ShopNote(
            folder=str(self.shop.folder),
            jobs=self.learned.jobs,
            says=self.line,
            whole=self.whole,
        )

    def in_text(self, answer: str, form: str = "text") -> str:
        """The answer, with the line that says so."""
        if not self.line:
            return answer
        if form == "blanks":
            return f"# {' '.join(self.line.split())}\n{answer}"
        if form == "markdown":
            return f"{answer}\n\n{self.line[:1].upper()}{self.line[1:]}."
        return "\n".join([*wrapped(self.line, 0, 2, self.whole), "", answer])

    def in_data(self, answer: dict[str, Any]) -> dict[str, Any]:
        """The answer, with a key for it."""
        if self.shop is None or self.learned is None:
            return answer
        told = {"folder": str(self.shop.folder), "jobs": self.learned.jobs, "says": self.line}
        return {**answer, "history": told}


def remembered(folder: Path | None, book: Book, case: Path, command: str) -> Remembered:
    """What the closed jobs of the folder teach, but for the case in hand. Raises UsageError."""
    if folder is None:
        return Remembered()
    from diagnose.history.learning import learned_from, pace
    from diagnose.history.shop import read_shop
    from diagnose.output import history as text

    shop = read_shop(folder, book)
    jobs = shop.counted(case)
    own = len(jobs) < len(shop.counted())
    if not jobs:
        besides = " but this one" if own else ""
        raise UsageError(f"with-history: no closed job in {named(folder)}{besides}")
    learned = learned_from(jobs, book)
    without = f"diagnose {command} {as_typed(str(case))}"
    return Remembered(
        shop=shop,
        learned=learned,
        line=text.told(shop, learned, own, without),
        whole=(named(folder), without),
        pace=pace(jobs).factor,
    )
