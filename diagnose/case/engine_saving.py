"""Save a case whose [engine] was changed, if nothing else was; for ``engine_writing`` and ``card_naming``."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

from diagnose.case.case import Case
from diagnose.case.disk import Place, atomic_write
from diagnose.case.files import named, parsed
from diagnose.case.loading import from_text
from diagnose.errors import BadCaseError, NotSavedError, UsageError
from knowledge.book import Book


def save_engine(
    place: Place, path: Path, book: Book, text: str, wanted: Mapping[str, Any], key: str
) -> Case:
    """Save the text of a case at its locked place, if it says just what is wanted.

    ``key``: of [engine], the one that was changed. Raises UsageError, CannotWriteError.
    """
    if _or_none(text) != wanted:
        value = wanted["engine"][key]
        raise UsageError(
            f'{named(path)}: not changed; write {key} = "{value}" under [engine] yourself'
        )
    try:
        case = from_text(text, path, book)
    except BadCaseError as bad:
        raise NotSavedError(bad.faults) from None
    atomic_write(place, text)
    return case


def _or_none(text: str) -> object:
    try:
        return parsed(text)
    except ValueError:
        return None
