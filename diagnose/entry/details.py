"""What goes with every entry of one command: note, place, name, date."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import get_args

from diagnose.case.schema import Learned
from diagnose.case.writing import Value
from diagnose.errors import UsageError, nearest, plain
from diagnose.ways import Way, to
from knowledge.model import Stage

#: what is typed for how it was learned, and the word for it in a case file
LEARNED = {"said" if word == Stage.KNOWN.value else word: word for word in get_args(Learned)}


@dataclass(frozen=True, slots=True)
class Details:
    """What goes with every entry of one command; empty text: not given."""

    note: str = ""
    where: str = ""  #: place on the engine: "rod 3"
    by: str = ""
    when: str = ""  #: as typed: "2026-05-01"; empty: today
    learned: str = ""  #: 'said', 'outside' or 'opened'; empty: the usual way for the entry
    replaces: int | None = None  #: the number of the entry that is corrected

    def faults(self) -> list[str]:
        """What is wrong with date and ``learned``, one line each."""
        out = []
        try:
            parse_date(self.when)
        except UsageError as fault:
            out.append(f"when: {fault}")
        if self.learned and self.learned not in {*LEARNED, *LEARNED.values()}:
            near = nearest(self.learned, tuple(LEARNED))
            out.append(f"learned: '{plain(self.learned)}' is not said, outside or opened.{near}")
        return out

    def fields(self) -> dict[str, Value | None]:
        """As fields of an entry. Raises UsageError for a wrong date."""
        return {
            "when": parse_date(self.when),
            "by": self.by or None,
            "note": self.note or None,
            "where": self.where or None,
            "learned": LEARNED.get(self.learned, self.learned) or None,
            "replaces": self.replaces,
        }

    def fields_without_place(self, what: str) -> dict[str, Value | None]:
        """As fields of an entry that has no place on the engine, named by ``what``.

        Raises UsageError where a place is given, or for a wrong date.
        """
        self.refuse_place(what)
        return {name: value for name, value in self.fields().items() if name != "where"}

    def refuse_place(self, what: str) -> None:
        """Raise UsageError where a place is given; ``what`` has none: "a reading"."""
        if self.where:
            raise UsageError(f"where: {what} has no place on the engine; {to(Way.PLACE)}")


def parse_date(text: str) -> date:
    """A day as typed; today where nothing was. Raises UsageError.

    >>> parse_date(" 2026-05-01 ")
    datetime.date(2026, 5, 1)
    """
    if not text:
        return date.today()
    try:
        return date.fromisoformat(text.strip())
    except ValueError:
        raise UsageError(
            f"'{plain(text, 30)}' is no date; write it like {date.today().isoformat()}"
        ) from None
