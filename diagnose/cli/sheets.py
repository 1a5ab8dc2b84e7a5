"""A filled-in worksheet, Markdown or TOML, as what a person would have typed.

In Markdown every blank is a line that begins with the id in backquotes and a colon, usually in
a list; in TOML it is a key. An empty blank says nothing. ``id @ place`` tells where on the engine.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from diagnose.case.loading import parsed, read_text
from diagnose.errors import UsageError, plain

LONGEST_LINE = 2000  #: characters of a line that are read
READING = "reading"  #: the id of a blank for a gauge reading
_BLANK = re.compile(r"^\s*(?:[-*+•–]\s+)?`([^`]+)`\s*:(.*)$")
_NOTE = re.compile(r"(?:^|\s)·(?:\s.*)?$")  #: what the sheet says of the blank
_QUOTES = ('""', "''", "``", "“”", "‘’", "„“", "**")
_IN_QUOTES = "write what you found in quotes"
_IN_MARKDOWN = "write after the colon of a blank, for instance: - `needle_flickers`: yes"
_IN_TOML = 'write between the quotes of a blank, for instance: needle_flickers = "yes"'


@dataclass(frozen=True, slots=True)
class Filled:
    """One blank that was filled in, and where in the sheet."""

    what: str
    value: str
    where: str
    place: str  #: "line 12", for messages
    fault: str = ""  #: what is wrong, where it is no answer at all


def filled(path: Path) -> list[Filled]:
    """What a person filled in. Raises NoCaseError, BadCaseError, UsageError."""
    text = read_text(path, "sheet")
    name = plain(path, 4096)
    toml = path.suffix.lower() == ".toml"
    found = list(_toml(text, name) if toml else _markdown(text))
    if not found:
        raise UsageError(f"{name}: nothing is filled in; {_IN_TOML if toml else _IN_MARKDOWN}")
    return found


def _markdown(text: str) -> Iterator[Filled]:
    for number, line in enumerate(text.removeprefix("\ufeff").splitlines(), 1):
        blank = _BLANK.match(line[:LONGEST_LINE])
        value = _answer(_NOTE.sub("", blank[2])) if blank else ""
        if blank and value:
            yield _named(blank[1], value, f"line {number}")


def _toml(text: str, name: str) -> Iterator[Filled]:
    try:
        raw = parsed(text, "sheet")
    except ValueError as error:
        raise UsageError(f"{name}: {plain(error, 300)}") from None
    lines = _lines_of(text)
    for key, value in raw.items():
        place = lines.get(key, plain(key, 40))
        for one in value if isinstance(value, list) else [value]:
            found = _one(key, one, place)
            if found:
                yield found


def _one(key: str, value: Any, place: str) -> Filled | None:
    """One value of a key; None where it is an empty blank."""
    match value:
        case bool():
            return _named(key, "yes" if value else "no", place)
        case str():
            answer = _answer(value)
            return _named(key, answer, place) if answer else None
        case _:
            return _named(key, "", place, f"{plain(key, 40)}: {_IN_QUOTES}")


def _lines_of(text: str) -> dict[str, str]:
    """Where each key of a TOML sheet stands, the first time it does."""
    places: dict[str, str] = {}
    for number, line in enumerate(text.splitlines(), 1):
        key = line.partition("=")[0].strip(" \t[]\"'")
        places.setdefault(key, f"line {number}")
    return places


def _answer(text: str) -> str:
    """What was written into a blank, without the blank itself and quotes round it."""
    answer = text.replace("\\_", "_").replace("_", " ").strip()
    while len(answer) > 1 and answer[0] + answer[-1] in _QUOTES:
        answer = answer[1:-1].strip()
    return answer


def _named(key: str, value: str, place: str, fault: str = "") -> Filled:
    what, _, where = key.partition("@")
    return Filled(what.strip(), value, where.strip(), place, fault)
