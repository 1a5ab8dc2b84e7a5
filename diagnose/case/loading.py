"""Read a case file: every fault at once, each with where, what, and the nearest right thing."""

from __future__ import annotations

import contextlib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from diagnose.case.aircraft import speaks_of_aircraft
from diagnose.case.card import Card, is_card, load_card
from diagnose.case.case import Case
from diagnose.case.file_faults import Faults, TooManyFaultsError
from diagnose.case.files import LARGEST, is_toml, named, parsed, read_text
from diagnose.case.resolving import Resolver
from diagnose.case.tables import EntryNames, TableReader
from diagnose.errors import BadCaseError, NoCaseError, OutOfScopeError, nearest
from diagnose.ways import Way, to
from knowledge.book import Book
from knowledge.cautions import AIRCRAFT

__all__ = ["LARGEST", "from_tables", "from_text", "load", "named", "nearest", "parsed", "read_text"]

MOST_SHOWN = 40  #: faults shown of one file


def load(path: Path, book: Book, last: int | None = None) -> Case:
    """The case in a file, up to the entry numbered ``last``. Raises NoCaseError, BadCaseError."""
    return from_text(read_text(path), path, book, last)


def from_text(
    text: str,
    path: Path | None,
    book: Book,
    last: int | None = None,
    names: EntryNames | None = None,
) -> Case:
    """Read the case in a text, up to the entry numbered ``last``.

    ``names``: what to call entries in messages, by kind and number, instead of their number.
    Raises BadCaseError with every fault found, OutOfScopeError.
    """
    try:
        raw = parsed(text)
    except ValueError as error:
        raise BadCaseError(named(path), [str(error)]) from None
    return from_tables(raw, path, book, last, names)


def from_tables(
    raw: Mapping[str, Any],
    path: Path | None,
    book: Book,
    last: int | None = None,
    names: EntryNames | None = None,
) -> Case:
    """The case in tables as a TOML parser returns them.

    Raises BadCaseError with every fault found, OutOfScopeError.
    """
    where = named(path)
    if is_card(raw):
        raise BadCaseError(where, [f"is an engine's card, no case; {to(Way.NAME_CARD)}"])
    faults = Faults()
    case = None
    with contextlib.suppress(TooManyFaultsError):
        card = _card_named(raw, path, book, faults)
        case = Resolver(TableReader(raw, faults, last, names), book, card).case(path)
    if faults or case is None:
        raise BadCaseError(where, _shown(faults, complete=case is not None))
    if _is_aircraft(case):
        fault = (
            f"{AIRCRAFT.says}. Nothing is advised on it here. Where the engine is not "
            "installed in a certified aircraft, write aircraft = false under [engine]."
        )
        raise OutOfScopeError(where, [fault])
    return case


def _card_named(
    raw: Mapping[str, Any], path: Path | None, book: Book, faults: Faults
) -> Card | None:
    """The card that [engine] names, a file beside the case; None, and faults, where it is bad.

    A case without a file looks in the working folder.
    """
    engine = raw.get("engine")
    name = engine.get("card") if isinstance(engine, dict) else None
    if not isinstance(name, str) or not name.strip():
        return None  # other faults of the field are found with its table
    name = name.strip()
    file = name if is_toml(name) else f"{name}.toml"
    try:
        return load_card((path.parent if path else Path()) / file, book)
    except (BadCaseError, NoCaseError) as error:
        for fault in error.faults:
            faults.add(f"engine.card: {error.where}: {fault}")
    return None


def _is_aircraft(case: Case) -> bool:
    """Whether the case says, or its free text suggests, that it is an aircraft engine."""
    if case.engine.aircraft is not None:
        return case.engine.aircraft
    texts = (case.job.title, case.job.complaint, case.job.note, case.engine.name, case.engine.note)
    return any(speaks_of_aircraft(text) for text in texts)


def _shown(faults: list[str], complete: bool) -> list[str]:
    """As many faults as a person can use at once."""
    more = len(faults) - MOST_SHOWN
    if more <= 0:
        return faults
    return [*faults[:MOST_SHOWN], f"and {'' if complete else 'at least '}{more} more"]
