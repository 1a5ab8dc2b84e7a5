"""Filled-in worksheets in Markdown or TOML, as the blanks that a person filled in.

In Markdown every blank is a line that begins with the id in backquotes and a colon, usually in
a list; in TOML it is a key. An empty blank counts as no answer. ``id @ place`` adds where on the
engine.
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
_NOTE = re.compile(r"(?:^|\s)·(?:\s.*)?$")  #: the sheet's own remark behind a blank
_QUOTES = ('""', "''", "``", "“”", "‘’", "„“", "**")
_IN_QUOTES = "write what you found in quotes"
_IN_MARKDOWN = "write after the colon of a blank, for instance: - `needle_flickers`: yes"
_IN_TOML = 'write between the quotes of a blank, for instance: needle_flickers = "yes"'


@dataclass(frozen=True, slots=True)
class FilledBlank:
    """One blank that was filled in, and where in the sheet."""

    id: str  #: of a finding, measure or task as written, or 'reading'
    value: str
    where: str  #: place on the engine; empty: not given
    place: str  #: place in the sheet, for messages: "line 12"
    fault: str = ""  #: what is wrong where the value cannot be read at all


def read_sheet(path: Path) -> list[FilledBlank]:
    """The filled-in blanks of a ``.toml`` or Markdown file, in order.

    Raises NoCaseError, BadCaseError where it cannot be read; UsageError where it is no TOML or
    nothing is filled in.
    """
    text = read_text(path, "sheet")
    name = plain(path, 4096)
    toml = path.suffix.lower() == ".toml"
    try:
        found = parse_toml(text) if toml else parse_markdown(text)
    except UsageError as fault:
        raise UsageError(f"{name}: {fault}") from None
    if not found:
        raise UsageError(f"{name}: nothing is filled in; {_IN_TOML if toml else _IN_MARKDOWN}")
    return found


def parse_markdown(text: str) -> list[FilledBlank]:
    """The filled-in blanks of a Markdown sheet.

    >>> [b.value for b in parse_markdown("- `fuel_smell`: __yes__ · smells of petrol")]
    ['yes']
    """
    found = []
    for number, line in enumerate(text.removeprefix("\ufeff").splitlines(), 1):
        blank = _BLANK.match(line[:LONGEST_LINE])
        value = _answer(_NOTE.sub("", blank[2])) if blank else ""
        if blank and value:
            found.append(_filled(blank[1], value, f"line {number}"))
    return found


def parse_toml(text: str) -> list[FilledBlank]:
    """The filled-in blanks of a TOML sheet. Raises UsageError where it is no TOML.

    A value that is neither text nor true or false becomes a blank with a ``fault``.
    """
    try:
        raw = parsed(text, "sheet")
    except ValueError as error:
        raise UsageError(plain(error, 300)) from None
    return list(_toml_blanks(raw, _lines_of(text)))


def _toml_blanks(raw: dict[str, Any], lines: dict[str, str]) -> Iterator[FilledBlank]:
    for key, value in raw.items():
        place = lines.get(key, plain(key, 40))
        for one in value if isinstance(value, list) else [value]:
            blank = _toml_blank(key, one, place)
            if blank:
                yield blank


def _toml_blank(key: str, value: Any, place: str) -> FilledBlank | None:
    """One value of a key; None where it is an empty blank."""
    match value:
        case bool():
            return _filled(key, "yes" if value else "no", place)
        case str():
            answer = _answer(value)
            return _filled(key, answer, place) if answer else None
        case _:
            return _filled(key, "", place, f"{plain(key, 40)}: {_IN_QUOTES}")


def _lines_of(text: str) -> dict[str, str]:
    """The line of each key of a TOML sheet, where it first stands."""
    places: dict[str, str] = {}
    for number, line in enumerate(text.splitlines(), 1):
        key = line.partition("=")[0].strip(" \t[]\"'")
        places.setdefault(key, f"line {number}")
    return places


def _answer(text: str) -> str:
    """The answer without the underscores of the blank and without quotes."""
    answer = text.replace("\\_", "_").replace("_", " ").strip()
    while len(answer) > 1 and answer[0] + answer[-1] in _QUOTES:
        answer = answer[1:-1].strip()
    return answer


def _filled(key: str, value: str, place: str, fault: str = "") -> FilledBlank:
    id_, _, where = key.partition("@")
    return FilledBlank(id_.strip(), value, where.strip(), place, fault)
