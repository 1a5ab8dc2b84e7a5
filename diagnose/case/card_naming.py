"""Write into a case which engine's card it goes by; all else in its file stays as it is."""

from __future__ import annotations

from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.disk import locked
from diagnose.case.engine_saving import save_engine
from diagnose.case.files import named, parsed, read_text
from diagnose.case.loading import from_text
from diagnose.case.toml_lines import with_entry
from diagnose.errors import UsageError
from knowledge.book import Book


def name_card(path: Path, book: Book, card: str, instead_of: str = "") -> Case:
    """Let the case in a file name a card; ``card``: its file, from the folder of the case.

    ``instead_of``: the card it names now, as the person saw it. Raises UsageError where it names
    another by now or cannot go by this one, NoCaseError, BadCaseError, CannotWriteError.
    """
    with locked(path) as place:
        old = read_text(path)
        from_text(old, path, book)
        tables = parsed(old)
        now = str(tables.get("engine", {}).get("card", ""))
        if now not in (instead_of, card):
            raise UsageError(f"{named(path)}: names the card {now} since; look at that first")
        text = with_entry(old, "engine", "card", card)
        wanted = {**tables, "engine": {**tables.get("engine", {}), "card": card}}
        return save_engine(place, path, book, text, wanted, "card")
