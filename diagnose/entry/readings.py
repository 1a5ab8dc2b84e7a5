"""Gauge readings as typed: "700 rpm 95 C 8 psi direct", "5 psi at hot idle".

A reading is parts in any order: a pressure (a figure, a range, a bound, a share of the dial), the
usual pressure, speed and oil temperature as figures or words, coolant, circumstances, the gauge.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import asdict, dataclass
from datetime import date
from enum import StrEnum
from typing import Any, Literal

from diagnose.case.case import GaugeReading
from diagnose.case.file_faults import Faults
from diagnose.case.gauge_looks import HEATS, HOT_IDLE, SPEEDS, USUAL_SPEEDS
from diagnose.case.pressures import (
    APPROXIMATE,
    BOUNDED,
    NOTHING,
    NUMBER,
    OFF_THE_TOP,
    RANGE,
    SHARE_OF_DIAL,
    UNIT,
    pressure_unit,
)
from diagnose.case.schema import Checked, ReadingEntry
from diagnose.case.values import gauge_reading
from diagnose.errors import UsageError, nearest_word, plain
from knowledge.model import Reading
from knowledge.reports.when import Speeds
from knowledge.reports.words import Circumstance, Heat, Speed
from knowledge.units import PRESSURE, SPEED, TEMPERATURE, pointed, unit_named

LONGEST_READING = 500  #: characters of one reading
_ERROR = re.compile(rf"(?:\+/?-|±)\s*({NUMBER})\s*([^\d\s]\S*)")
_FIGURE = re.compile(rf"([+-]?(?:\d{{1,3}},\d{{3}}|{NUMBER}))\s*([^\d\s]\S*)")
_FIELDS = (("rpm", SPEED), ("oil", TEMPERATURE), ("pressure", PRESSURE))
_FIGURE_OF = rf"{NUMBER} ?{UNIT}"
_USUALLY = "usually|usual|normally|normal|used to show|used to be|was always"
_BOUND_OR_ABOUT_PARTS = tuple(
    p.replace("(?P<rest>.+)", rf"(?:{RANGE}|{_FIGURE_OF})") for p in (BOUNDED, APPROXIMATE)
)
_WORDS = {  # what a word says of the reading
    "direct": "gauge",
    "panel": "gauge",
    "gallery": "tap",
    "pump": "tap",
    "start": "at",
}
#: words that say nothing of their own
_FILLERS = (
    "a about an and at by but engine gauge has in is it now on once only read reads revs "
    "showed shows speed temperature temp that the then to was when while with"
)
_LIKE = 'write it like "700 rpm 95 C 8 psi", "5 psi at hot idle" or "usually 80 psi, now 40 psi"'


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadingInput:
    """One reading; figures are text with the unit the person used, words those of a case file."""

    rpm: str | None = None  #: a figure, or a word as "idle"
    oil: str | None = None  #: oil temperature: a figure, or a word as "hot"
    pressure: str
    error: str | None = None  #: the gauge's own error, a pressure
    gauge: Literal["panel", "direct"] | None = None  #: None: not given, taken as 'panel'
    station: str | None = None  #: where a panel gauge sits, where there are several
    tap: Literal["gallery", "pump"] | None = None  #: None: not given, taken as 'gallery'
    at: Literal["start"] | None = None  #: 'start': of the repaired engine's first start
    coolant: str | None = None  #: coolant temperature
    usual: str | None = None  #: what this gauge usually shows then
    during: tuple[str, ...] = ()  #: circumstances

    def fields(self) -> dict[str, Any]:
        """As fields of a ``[[reading]]``."""
        given = asdict(self)
        return {**given, "during": list(self.during) or None}

    def in_si(self) -> Reading:
        """Speed in rpm, temperature in K, pressure and error in Pa, with what words leave open.

        Raises UsageError where a figure is outside what gauges on an engine can show.
        """
        return self.numbered(1).reading

    def numbered(
        self, number: int, when: date | None = None, of: Speeds = USUAL_SPEEDS
    ) -> GaugeReading:
        """The reading as the entry of that number; ``of``: the speeds of the engine.

        Raises UsageError as ``in_si``.
        """
        given = {k: v for k, v in self.fields().items() if v is not None}
        entry = ReadingEntry.model_validate({"no": number, "when": when, **given})
        faults = Faults()
        found = list(gauge_reading(Checked(entry, "reading"), faults, of))
        if faults:
            raise UsageError("\n".join(faults))
        return found[0]


def parse_reading(text: str) -> ReadingInput:
    """A pressure, and whatever is known of when it was read, in any order.

    >>> parse_reading("700 rpm, 95 C, 8 psi direct").in_si().gauge
    <Gauge.DIRECT: 'direct'>
    >>> parse_reading("5 psi at hot idle").oil
    'hot'
    >>> parse_reading("usually 80 psi now 40 psi").usual
    '80 psi'

    Raises UsageError.
    """
    return _Typed(text).reading()


def parse_baseline(text: str) -> dict[str, Any]:
    """A pressure of the sound engine as fields of a ``[[baseline]]``: "700 rpm 90 C 22 psi".

    Raises UsageError, also for words on the gauge, the usual pressure or the first start.
    """
    fields = parse_reading(text).fields()
    extra = next((k for k in ("gauge", "at", "usual") if fields.pop(k, None)), None)
    if extra:
        raise UsageError(f"baseline '{plain(text)}': needs no word for {extra}")
    return fields


class _Typed:
    """One typed reading while its parts are taken out of the text."""

    def __init__(self, text: str) -> None:
        self.text = text
        self.got: dict[str, str] = {}
        self.during: list[str] = []

    def reading(self) -> ReadingInput:
        """Take part after part. Raises UsageError for what is left."""
        if len(self.text) > LONGEST_READING:
            fault = f"{len(self.text):,} characters; at most {LONGEST_READING}"
            raise UsageError(f"reading '{plain(self.text)}': {fault}; {_LIKE}")
        rest = re.sub(r"(?<!\d)[,;]|[,;](?!\d)", " ", pointed(self.text))
        rest = _ERROR.sub(self._error, rest)
        for pattern, take in _PHRASES:
            rest = pattern.sub(lambda piece, take=take: take(self, piece), rest)  # type: ignore[misc]
        rest = _FIGURE.sub(self._figure, rest)
        self._words(rest.split())
        if "pressure" not in self.got:
            raise UsageError(
                f"reading '{plain(self.text)}': needs a pressure with its unit; {_LIKE}"
            )
        self._give_usual_its_unit()
        return ReadingInput(**self.got, during=tuple(self.during))  # type: ignore[arg-type]

    def take(self, key: str, value: str, piece: re.Match[str]) -> str:
        """Keep the first part of a kind; return what stays in the text."""
        if key in self.got:
            return piece[0]
        self.got[key] = " ".join(value.split())
        return " "

    def _error(self, piece: re.Match[str]) -> str:
        if not unit_named(piece[2], PRESSURE):
            return piece[0]
        return self.take("error", f"{piece[1]} {piece[2]}", piece)

    def _figure(self, piece: re.Match[str]) -> str:
        for key, dimension in _FIELDS:
            if unit_named(piece[2], dimension) and key not in self.got:
                return self.take(key, f"{piece[1]} {piece[2]}", piece)
        return piece[0]

    def _words(self, words: list[str]) -> None:
        """Take the words, the longest phrase first. Raises UsageError for one not understood."""
        i = 0
        while i < len(words):
            for size in range(min(5, len(words) - i), 0, -1):
                if self._phrase(" ".join(words[i : i + size]).lower()):
                    i += size
                    break
            else:
                self._refuse(words[i])

    def _phrase(self, phrase: str) -> bool:
        """Whether this is a word of the list, and its place is free."""
        for key, value in _MEANINGS.get(phrase, ()):
            if key not in self.got:
                self.got[key] = value
                return True
        if phrase in _CIRCUMSTANCES and phrase not in self.during:
            self.during.append(phrase)
            return True
        if phrase in NOTHING and "pressure" not in self.got:
            self.got["pressure"] = "0"
            return True
        return phrase in _FILLERS.split()

    def _refuse(self, word: str) -> None:
        near = nearest_word(word, [*_MEANINGS, *_CIRCUMSTANCES]) if word.isalpha() else None
        hint = f"did you mean '{near}'?" if near else _LIKE
        raise UsageError(
            f"reading '{plain(self.text)}': '{plain(word, 20)}' is not understood; {hint}"
        )

    def _give_usual_its_unit(self) -> None:
        """ "usually 80 now 40 psi": the usual pressure has the unit of the pressure."""
        usual = self.got.get("usual")
        if usual and re.fullmatch(rf"{NUMBER}(?: to {NUMBER})?", usual):
            self.got["usual"] = f"{usual} {pressure_unit(self.got['pressure']) or 'psi'}"


def _usual(typed: _Typed, piece: re.Match[str]) -> str:
    unit = piece["u"] or ""
    if unit and not unit_named(unit, PRESSURE):
        if piece["space"] == "":
            return piece[0]
        return typed.take("usual", piece["value"], piece) + piece["u"]
    return typed.take("usual", f"{piece['value']} {unit}", piece)


def _coolant(typed: _Typed, piece: re.Match[str]) -> str:
    figure, unit = piece["figure"], piece["u"]
    if not unit_named(unit, TEMPERATURE):
        return piece[0]
    return typed.take("coolant", f"{figure} {unit}", piece)


def _pressure(typed: _Typed, piece: re.Match[str]) -> str:
    unit = pressure_unit(piece[0])
    if (
        unit is None
        and any(c.isdigit() for c in piece[0])
        and not re.search("dial|scale", piece[0])
    ):
        return piece[0]
    return typed.take("pressure", piece[0], piece)


Take = Callable[[_Typed, "re.Match[str]"], str]


def _phrases() -> Iterator[tuple[re.Pattern[str], Take]]:
    """Patterns of more than one word, each with what takes it; the order is that of the text."""
    figure = rf"(?P<value>{NUMBER}(?: to {NUMBER})?)(?P<space> ?)(?P<u>{UNIT})?"
    yield _compiled(rf"(?:{_USUALLY}) (?:about |around )?{figure}"), _usual
    temperature = rf"(?P<figure>-?{NUMBER}) ?(?P<u>°?{UNIT})"
    yield _compiled(rf"(?:coolant|water)(?: at| is| temperature| temp)* {temperature}"), _coolant
    yield _compiled(rf"(?:(?:about|under|over|below|above) )?{SHARE_OF_DIAL}"), _pressure
    yield _compiled(OFF_THE_TOP), _pressure
    for pattern in _BOUND_OR_ABOUT_PARTS:
        yield _compiled(pattern), _pressure
    yield _compiled(RANGE), _pressure


def _compiled(pattern: str) -> re.Pattern[str]:
    """The pattern between blanks, with any number of blanks where it has one."""
    spaced = re.sub(r" (\??)", lambda m: r"\s*" if m[1] else r"\s+", pattern)
    return re.compile(rf"(?<!\S)(?:{spaced})(?!\S)", re.I)


_PHRASES = tuple(_phrases())


def _meanings() -> dict[str, tuple[tuple[str, str], ...]]:
    """What each word or phrase says of a reading: pairs of field and word of the case file."""
    found: dict[str, tuple[tuple[str, str], ...]] = {}
    lists: tuple[tuple[str, Mapping[str, StrEnum]], ...] = (
        ("rpm", {**{w.value: w for w in Speed}, **SPEEDS}),
        ("oil", {**{w.value: w for w in Heat}, **HEATS}),
    )
    for key, words in lists:
        for phrase, word in words.items():
            if phrase != HOT_IDLE:
                found[phrase] = ((key, word.value),)
                if key == "oil":
                    found[f"oil {phrase}"] = found[f"{phrase} oil"] = found[phrase]
    for said, key in _WORDS.items():
        found[said] = ((key, said),)
    return found


_MEANINGS = _meanings()
_CIRCUMSTANCES = frozenset(c.value for c in Circumstance) - _MEANINGS.keys()
