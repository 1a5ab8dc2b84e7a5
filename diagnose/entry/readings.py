"""Gauge readings as typed: "700 rpm 95 C 8 psi direct"."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from datetime import date
from typing import Literal, NoReturn

from diagnose.case.case import GaugeReading
from diagnose.case.schema import Checked, ReadingEntry
from diagnose.case.values import Faults, gauge_reading
from diagnose.errors import UsageError, plain
from knowledge.model import Reading
from knowledge.units import PRESSURE, SPEED, TEMPERATURE, unit_named

LONGEST_READING = 500  #: characters that are read
_NUMBER = r"(?:\d+(?:\.\d*)?|\.\d+)"
_ERROR = re.compile(rf"(?:\+/?-|±)\s*({_NUMBER})\s*([^\d\s]\S*)")
_FIGURE = re.compile(rf"([+-]?{_NUMBER})\s*([^\d\s]\S*)")
_FIELDS = (("rpm", SPEED), ("oil", TEMPERATURE), ("pressure", PRESSURE))
_WORDS = {  # what a word says of the reading
    "direct": "gauge",
    "panel": "gauge",
    "gallery": "tap",
    "pump": "tap",
    "start": "at",
}
_LIKE = 'write it like "700 rpm 95 C 8 psi", "2500 rpm 60 C 3.1 bar direct" or "800 rpm 15 psi"'


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingInput:
    """One reading; figures are text with the unit the person used."""

    rpm: str
    oil: str | None = None  #: oil temperature
    pressure: str
    error: str | None = None  #: the gauge's own error, a pressure
    gauge: Literal["panel", "direct"] | None = None  #: None: not given, taken as 'panel'
    tap: Literal["gallery", "pump"] | None = None  #: None: not given, taken as 'gallery'
    at: Literal["start"] | None = None  #: 'start': of the repaired engine's first start

    def fields(self) -> dict[str, str | None]:
        """As fields of a ``[[reading]]``."""
        return asdict(self)

    def in_si(self) -> Reading:
        """Speed in rpm, temperature in K, pressure and error in Pa.

        Raises UsageError where a figure is outside what gauges on an engine can show.
        """
        return self.numbered(1).reading

    def numbered(self, number: int, when: date | None = None) -> GaugeReading:
        """The reading as the entry of that number. Raises UsageError as ``in_si``."""
        given = {k: v for k, v in self.fields().items() if v is not None}
        entry = ReadingEntry.model_validate({"no": number, "when": when, **given})
        faults = Faults()
        found = list(gauge_reading(Checked(entry, "reading"), faults))
        if faults:
            raise UsageError("\n".join(faults))
        return found[0]


def parse_reading(text: str) -> ReadingInput:
    """Speed and pressure with units in any order; temperature, error and words may be added.

    >>> parse_reading("700 rpm, 95 C, 8 psi direct").in_si().gauge
    'direct'
    >>> parse_reading("3.1 bar 2500 rev/min").rpm
    '2500 rev/min'

    Raises UsageError.
    """
    got: dict[str, str] = {}
    spaced = re.sub(r"(?<!\d)[,;]|[,;](?!\d)", " ", text[:LONGEST_READING])
    without_error = _ERROR.sub(lambda piece: _take_error(piece, got), spaced)
    words = _FIGURE.sub(lambda piece: _take_figure(piece, got), without_error).split()
    for word in words:
        _take_word(word, got, text)
    if not {"rpm", "pressure"} <= got.keys():
        raise UsageError(f"reading '{plain(text)}': needs speed and pressure with units; {_LIKE}")
    return _reading_input(got)


def _reading_input(got: Mapping[str, str]) -> ReadingInput:
    return ReadingInput(**got)  # type: ignore[arg-type]  # _WORDS holds the literals


def _take_error(piece: re.Match[str], got: dict[str, str]) -> str:
    """Keep the first gauge error; return what stays in the text."""
    if unit_named(piece[2], PRESSURE) and "error" not in got:
        got["error"] = f"{piece[1]} {piece[2]}"
        return " "
    return piece[0]


def _take_figure(piece: re.Match[str], got: dict[str, str]) -> str:
    """Keep the first figure of each dimension; return what stays in the text."""
    for key, dimension in _FIELDS:
        if unit_named(piece[2], dimension) and key not in got:
            got[key] = f"{piece[1]} {piece[2]}"
            return " "
    return piece[0]


def _take_word(word: str, got: dict[str, str], text: str) -> None:
    """Keep a word about gauge, tap or occasion. Raises UsageError for any other."""
    key = _WORDS.get(word.lower())
    if key is None or key in got:
        _refuse(word, text)
    got[key] = word.lower()


def _refuse(word: str, text: str) -> NoReturn:
    if word.lower() in ("cold", "hot"):
        raise UsageError(f"reading '{plain(text)}': give the oil temperature, for instance 95 C")
    raise UsageError(f"reading '{plain(text)}': '{plain(word, 20)}' is not understood; {_LIKE}")
