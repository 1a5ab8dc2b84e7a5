"""The folder of case files that is served: its jobs, in short, and nothing beside them."""

from __future__ import annotations

import os
import re
import unicodedata
from dataclasses import dataclass
from datetime import date, datetime
from pathlib import Path
from typing import Any

from diagnose.case.card import is_card
from diagnose.case.files import is_toml
from diagnose.case.loading import parsed, read_text
from diagnose.entry.interview import new_case_path
from diagnose.entry.titles import first_words
from diagnose.errors import FileError, NoCaseError, plain
from diagnose.output.documents.folder import toml_files
from diagnose.serve.exchange import NotHereError
from knowledge.book import the_book

LONGEST_NAME = 40  #: characters of the name of a new file
MOST_LISTED = 2_000  #: files of a folder that are looked at
_BAD = ("/", "\\", "\0")


@dataclass(frozen=True, slots=True)
class JobLine:
    """One job in the list; texts may be empty."""

    file: str
    title: str
    says: str  #: the complaint
    opened: str
    closed: str  #: the day it was closed, or "closed"
    causes: tuple[str, ...] = ()  #: of a closed job, as the book calls them
    fault: str = ""  #: why the file cannot be read
    is_card: bool = False  #: an engine's card, which is no job


class JobFolder:
    """A folder; every path it returns lies in it."""

    def __init__(self, root: Path) -> None:
        """Serve the folder ``root``. Raises NoCaseError where it is none."""
        if not root.is_dir():
            raise NoCaseError(plain(root, 4096), ["is no folder; name a folder of case files"])
        self.root = Path(os.path.realpath(root))
        self._lines: dict[str, tuple[tuple[int, int], JobLine]] = {}

    def path(self, name: str) -> Path:
        """The case file of that name. Raises NotHereError where the folder has none."""
        if not _is_plain(name) or not is_toml(name):
            raise NotHereError("There is no such job here.")
        path = self.root / name
        if Path(os.path.realpath(path)).parent != self.root or not path.is_file():
            raise NotHereError("There is no such job here.")
        return path

    def lines(self, words: str = "", state: str = "") -> tuple[JobLine, ...]:
        """The jobs that fit, those changed last first; ``state``: "open" or "closed"."""
        wanted = words.lower().split()
        found = []
        for path in toml_files(self.root)[:MOST_LISTED]:
            line = self._line(path)
            if (
                line is None
                or line[1].is_card
                or (state and bool(line[1].closed) != (state == "closed"))
            ):
                continue
            text = f"{line[1].file} {line[1].title} {line[1].says} {' '.join(line[1].causes)}"
            text = text.lower().replace("_", " ")
            if all(w in text for w in wanted):
                found.append(line)
        return tuple(line for _, line in sorted(found, key=lambda f: (-f[0], f[1].file)))

    def new_path(self, story: str) -> Path:
        """A file name that is free, after how a story begins. Raises UsageError."""
        name = as_file_name(first_words(story.partition(",")[0]))
        for number in range(1, 100) if name else ():
            path = self.root / (f"{name}.toml" if number == 1 else f"{name}-{number}.toml")
            if not os.path.lexists(path):
                return path
        return new_case_path(self.root)

    def _line(self, path: Path) -> tuple[int, JobLine] | None:
        """A job in short, with when it was changed; None for what is no file of this folder."""
        try:
            path = self.path(path.name)
            stat = path.stat()
        except (NotHereError, OSError):
            return None
        state = stat.st_mtime_ns, stat.st_size
        kept = self._lines.get(path.name)
        if kept is None or kept[0] != state:
            kept = state, _read_line(path)
            self._lines[path.name] = kept
        return stat.st_mtime_ns, kept[1]


def _is_plain(name: str) -> bool:
    return bool(name) and not name.startswith(".") and not any(bad in name for bad in _BAD)


def as_file_name(words: str) -> str:
    """Plain letters, digits and hyphens.

    >>> as_file_name("Größe 4, Tern's launch")
    'grosse-4-tern-s-launch'
    """
    plain_letters = unicodedata.normalize("NFKD", words.lower().replace("ß", "ss"))
    name = re.sub(r"[^a-z0-9]+", "-", plain_letters.encode("ascii", "ignore").decode()).strip("-")
    return name if len(name) <= LONGEST_NAME else name[:LONGEST_NAME].rpartition("-")[0]


def _read_line(path: Path) -> JobLine:
    """A job in short, from its tables alone."""
    try:
        tables = parsed(read_text(path))
    except (FileError, ValueError) as error:
        fault = error.faults[0] if isinstance(error, FileError) else str(error)
        return JobLine(path.name, "", "", "", "", fault=plain(fault, 160))
    if is_card(tables):
        return JobLine(path.name, "", "", "", "", is_card=True)
    job = _table(tables.get("job"))
    closings = tables.get("closed")
    ends = [_table(e) for e in closings] if isinstance(closings, list) else []
    withdrawn = {e.get("replaces") for e in ends if e.get("state") == "withdrawn"}
    ends = [e for e in ends if e.get("state") != "withdrawn" and e.get("no") not in withdrawn]
    end = ends[-1] if ends else {}
    causes = end.get("causes")
    complaint = _text(job.get("complaint"))
    return JobLine(
        file=path.name,
        title=_text(job.get("title")) or first_words(complaint) or path.stem,
        says=complaint,
        opened=_day(job.get("opened")),
        closed=(_day(end.get("when")) or "closed") if ends else "",
        causes=tuple(map(_cause, causes)) if isinstance(causes, list) else (),
    )


def _cause(written: Any) -> str:
    """A cause by its name; what the book does not have, as it is written."""
    cause = the_book().causes.get(str(written))
    return cause.says if cause else str(written)


def _table(value: Any) -> dict[str, Any]:
    return value if isinstance(value, dict) else {}


def _text(value: Any) -> str:
    return " ".join(value.split()) if isinstance(value, str) else ""


def _day(value: Any) -> str:
    if isinstance(value, datetime):
        value = value.date()
    return value.isoformat() if isinstance(value, date) else ""
