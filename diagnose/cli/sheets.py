"""A filled-in worksheet, Markdown or TOML, as what a person would have typed.

In Markdown every blank is a list line that begins with the id in backquotes and a colon; in
TOML it is a key. An empty blank says nothing. ``id @ place`` tells where on the engine.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from diagnose.casefile.reading import slurp
from diagnose.errors import UsageError, plain

_BLANK = re.compile(r"^\s*[-*]\s+`([^`]{1,300})`\s*:(.*)$")
READING = "reading"  #: the id of a blank for a gauge reading


@dataclass(frozen=True, slots=True)
class Filled:
    """One blank that was filled in, and where in the sheet."""

    what: str
    value: str
    where: str
    place: str  #: "line 12", for messages


def filled(path: Path) -> list[Filled]:
    """What a person filled in. Raises NoCaseError, BadCaseError, UsageError."""
    text = slurp(path)
    found = list(_toml(text) if path.suffix.lower() == ".toml" else _markdown(text))
    if not found:
        raise UsageError(
            f"{plain(path, 4096)}: nothing is filled in; write after the colon of a blank, "
            "for instance: - `needle_flickers`: yes"
        )
    return found


def _markdown(text: str) -> Iterator[Filled]:
    for number, line in enumerate(text.splitlines(), 1):
        blank = _BLANK.match(line[:2000])
        if not blank:
            continue
        value = blank[2].split(" · ")[0].replace("_", " ").strip()
        if value:
            yield _named(blank[1], value, f"line {number}")


def _toml(text: str) -> Iterator[Filled]:
    try:
        raw = tomllib.loads(text)
    except (tomllib.TOMLDecodeError, RecursionError, ValueError) as error:
        raise UsageError(f"not a TOML sheet: {plain(error, 300)}") from None
    for key, value in raw.items():
        for one in value if isinstance(value, list) else [value]:
            if isinstance(one, bool):
                yield _named(key, "yes" if one else "no", plain(key, 40))
            elif not isinstance(one, str):
                raise UsageError(f"{plain(key, 40)}: write what you found in quotes")
            elif one.strip(" _"):
                yield _named(key, one.strip(), plain(key, 40))


def _named(key: str, value: str, place: str) -> Filled:
    what, _, where = key.partition("@")
    return Filled(what.strip(), value, where.strip(), place)
