"""Write into a case how its engine is built, once more; what stood there stays as a comment."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from pathlib import Path

from diagnose.case.case import Case
from diagnose.case.disk import locked
from diagnose.case.engine_saving import save_engine
from diagnose.case.files import parsed, read_text
from diagnose.case.loading import from_text
from diagnose.case.toml_lines import with_first_entry, without_entry
from knowledge.book import Book


def set_engine(
    path: Path, book: Book, layout: str, has: Sequence[str] = (), without: Collection[str] = ()
) -> Case:
    """Give the case in a file another layout.

    ``has``: features it has besides, by id; ``without``: those that do not stay of the old ones.

    Raises UsageError where the file is written so that it cannot be changed safely, NoCaseError,
    BadCaseError, CannotWriteError.
    """
    with locked(path) as place:
        old = read_text(path)
        from_text(old, path, book)
        tables = parsed(old)
        engine = {**tables.get("engine", {}), "layout": layout}
        stay = [f for f in engine.pop("has", ()) if f not in (*without, *has)]
        text = without_entry(without_entry(old, "engine", "layout"), "engine", "has")
        if has or stay:
            engine["has"] = [*has, *stay]
            text = with_first_entry(text, "engine", "has", engine["has"])
        text = with_first_entry(text, "engine", "layout", layout)
        return save_engine(place, path, book, text, {**tables, "engine": engine}, "layout")
