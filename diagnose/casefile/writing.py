"""Append whole tables to a case file; a power cut leaves the old file or the new one.

The new text is written beside the file, forced to disk and renamed over it, under a lock
on the folder, so that two commands writing at once lose nothing.
"""

from __future__ import annotations

import contextlib
import os
import tempfile
from collections.abc import Iterator, Mapping
from datetime import date, datetime
from pathlib import Path

from diagnose.casefile.case import Case
from diagnose.casefile.reading import from_text, slurp
from diagnose.casefile.schema import VERSION
from diagnose.errors import CannotWriteError
from knowledge.book import Book

Value = str | int | float | bool | date | datetime | list[str] | dict[str, str]
Fields = Mapping[str, Value | None]


def table_text(header: str, fields: Fields) -> str:
    """One table as TOML; None values are left out.

    >>> print(table_text("[[finding]]", {"no": 1, "what": "needle_flickers"}), end="")
    [[finding]]
    no = 1
    what = "needle_flickers"
    """
    import tomli_w

    kept = {k: v for k, v in fields.items() if v is not None}
    inner = {k: v for k, v in kept.items() if isinstance(v, dict)}
    flat = {k: v for k, v in kept.items() if not isinstance(v, dict)}
    text = f"{header}\n{tomli_w.dumps(flat)}"
    for key, table in inner.items():
        text += f"\n[{header.strip('[]')}.{key}]\n{tomli_w.dumps(table)}"
    return text


def start(path: Path, book: Book, job: Fields, engine: Fields) -> Case:
    """A new case file. Raises CannotWriteError where the file exists or cannot be made."""
    text = f"schema = {VERSION}\n\n{table_text('[job]', job)}\n{table_text('[engine]', engine)}"
    with _locked(path.parent):
        if path.exists():
            raise CannotWriteError(f"{path}: exists already; 'diagnose record' adds to it")
        case = from_text(text, path, book)
        _replace(path, text)
    return case


def append(path: Path, book: Book, entries: list[tuple[str, Fields]]) -> Case:
    """Add entries of ('finding' | 'reading', fields without ``no``); numbers are given here.

    The file as it would become is checked whole before anything is written.
    Raises NoCaseError, BadCaseError, CannotWriteError.
    """
    with _locked(path.parent):
        old = slurp(path)
        number = from_text(old, path, book).last_number
        text = old if old.endswith("\n") else old + "\n"
        for kind, fields in entries:
            number += 1
            text += "\n" + table_text(f"[[{kind}]]", {"no": number, **fields})
        case = from_text(text, path, book)
        _replace(path, text)
    return case


def set_layout(path: Path, book: Book, layout: str) -> Case:
    """Name the layout of a case that has none yet: the one line ever written in place.

    Raises NoCaseError, BadCaseError, CannotWriteError.
    """
    with _locked(path.parent):
        text = slurp(path).replace('layout = "unknown"', f'layout = "{layout}"', 1)
        case = from_text(text, path, book)
        _replace(path, text)
    return case


@contextlib.contextmanager
def _locked(folder: Path) -> Iterator[None]:
    """Hold the folder's lock; waits for another command that is writing."""
    try:
        import fcntl
    except ImportError:  # no such lock on this system: the rename alone still keeps files whole
        yield
        return
    try:
        handle = os.open(folder, os.O_RDONLY)
    except OSError as error:
        raise CannotWriteError(f"{folder}: {error.strerror}") from None
    try:
        fcntl.flock(handle, fcntl.LOCK_EX)
        yield
    finally:
        os.close(handle)


def _replace(path: Path, text: str) -> None:
    target = path.resolve()
    name = None
    try:
        handle, name = tempfile.mkstemp(prefix=f".{target.name}.", suffix=".new", dir=target.parent)
        with os.fdopen(handle, "wb") as file:
            file.write(text.encode("utf-8"))
            file.flush()
            os.fsync(file.fileno())
        mode = target.stat().st_mode & 0o777 if target.exists() else 0o644
        os.chmod(name, mode)
        os.replace(name, target)
        name = None
        _settle(target.parent)
    except (OSError, UnicodeEncodeError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise CannotWriteError(
            f"{path}: not saved, {reason}; what was there still stands"
        ) from None
    finally:
        if name is not None:
            with contextlib.suppress(OSError):
                os.unlink(name)


def _settle(folder: Path) -> None:
    """Force the rename itself to disk."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
