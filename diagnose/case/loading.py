"""Read a case file: every fault at once, each with where, what, and the nearest right thing."""

from __future__ import annotations

import contextlib
import re
import stat
import tomllib
from collections.abc import Mapping
from difflib import get_close_matches
from pathlib import Path
from typing import Any

from diagnose.case.case import Case
from diagnose.case.faults import Faults, TooManyFaultsError
from diagnose.case.resolving import Resolver
from diagnose.case.tables import EntryNames, TableReader
from diagnose.errors import BadCaseError, NoCaseError, OutOfScopeError, nearest, plain
from knowledge.book import Book
from knowledge.cautions import AIRCRAFT

__all__ = ["LARGEST", "from_tables", "from_text", "load", "named", "nearest", "parsed", "read_text"]

LARGEST = 2_000_000  #: bytes; no job of a person's comes near
#: endings of each sort of file, and what to do where there is none of the name
_SORTS = {
    "case": ((".toml",), "'diagnose ask' starts one"),
    "sheet": ((".md", ".toml"), "'diagnose teardown CASE --markdown' makes one"),
}
MOST_SHOWN = 40  #: faults shown of one file
#: a key or header of more parts than any case has: reading it takes a time that grows squared
_LONG_KEY = re.compile(
    r"""^[ \t]*+(?:\[{1,2}[ \t]*+)?"""
    r"""(?:(?:[\w-]++|"(?:[^"\\\n]|\\.)*+"|'[^'\n]*+')[ \t]*+\.[ \t]*+){30}""",
    re.MULTILINE,
)


#: words of a person that point to an aircraft engine, for which nothing may be advised unless
#: the case says ``aircraft = false``; a hydroplane is a boat
_AIRCRAFT = re.compile(
    r"\b(aircraft|(aero|air|sea|float|bi|tri|mono|sail|gyro)[- ]?planes?|(light|war) ?planes?|"
    r"(motor[- ]?)?gliders?|helicopters?|rotorcraft|auto[- ]?g[iy]ros?|gyrocopters?|"
    r"aero[- ]?engines?|airships?|microlights?|ultra-?lights?|paramotors?)\b",
    re.IGNORECASE,
)


def load(path: Path, book: Book, last: int | None = None) -> Case:
    """The case in a file, up to the entry numbered ``last``. Raises NoCaseError, BadCaseError."""
    return from_text(read_text(path), path, book, last)


def named(path: Path | None) -> str:
    """The file's name in a message."""
    return plain(path, 4096) if path else "case"


def read_text(path: Path, sort: str = "case") -> str:
    """The text of a file, a case unless ``sort`` names another kind. Raises NoCaseError, BadCaseError."""
    try:
        if not stat.S_ISREG(path.stat().st_mode):
            raise NoCaseError(named(path), [_no_such(path, sort)])
        with path.open("rb") as file:
            data = file.read(LARGEST + 1)
        if len(data) > LARGEST:
            fault = f"{path.stat().st_size:,} bytes; a {sort} is at most {LARGEST:,}"
            raise BadCaseError(named(path), [fault])
        return data.decode("utf-8")
    except UnicodeDecodeError as error:
        fault = f"byte {error.start} is not UTF-8 text; save the file as UTF-8"
        raise BadCaseError(named(path), [fault]) from None
    except PermissionError:
        raise NoCaseError(named(path), ["no permission to read it"]) from None
    except (FileNotFoundError, NotADirectoryError):
        raise NoCaseError(named(path), [_no_such(path, sort)]) from None
    except OSError as error:
        raise NoCaseError(named(path), [error.strerror or str(error)]) from None
    except ValueError:
        raise NoCaseError(named(path), ["no such file name"]) from None


def _no_such(path: Path, sort: str) -> str:
    """Why there is no file of that name, and the nearest name."""
    if path.is_dir():
        return f"is a folder; name a {sort} file in it"
    if path.exists():
        return f"is no ordinary file, and so no {sort}"
    if path.is_symlink():
        return "is a link to a file that is not there"
    if not path.parent.is_dir():
        return f"there is no folder {named(path.parent)}"
    wanted, starts = _SORTS[sort]
    others = [p.name for p in path.parent.glob("*") if p.suffix.lower() in wanted]
    near = get_close_matches(path.name, others, 1)
    hint = f"did you mean {named(path.parent / near[0])}?" if near else starts
    return f"no such {sort}; {hint}"


def parsed(text: str, sort: str = "case") -> dict[str, Any]:
    """TOML as raw tables. Raises ValueError with what is wrong."""
    text = text.removeprefix("\ufeff")
    if _LONG_KEY.search(text):
        raise ValueError(f"nested too deep for a {sort}")
    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise ValueError(f"not a TOML file: {plain(error, 300)}") from None
    except (RecursionError, ValueError):
        raise ValueError(f"nested too deep, or a number too long, for a {sort}") from None


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
    faults = Faults()
    case = None
    with contextlib.suppress(TooManyFaultsError):
        case = Resolver(TableReader(raw, faults, last, names), book).case(path)
    if faults or case is None:
        raise BadCaseError(where, _shown(faults, complete=case is not None))
    if _is_aircraft(case):
        fault = (
            f"{AIRCRAFT.says}. Nothing is advised on it here. Where the engine is not "
            "installed in a certified aircraft, write aircraft = false under [engine]."
        )
        raise OutOfScopeError(where, [fault])
    return case


def _is_aircraft(case: Case) -> bool:
    """Whether the case says, or its free text suggests, that it is an aircraft engine."""
    if case.engine.aircraft is not None:
        return case.engine.aircraft
    texts = (case.job.title, case.job.complaint, case.job.note, case.engine.name, case.engine.note)
    return any(_AIRCRAFT.search(text) for text in texts)


def _shown(faults: list[str], complete: bool) -> list[str]:
    """As many faults as a person can use at once."""
    more = len(faults) - MOST_SHOWN
    if more <= 0:
        return faults
    return [*faults[:MOST_SHOWN], f"and {'' if complete else 'at least '}{more} more"]
