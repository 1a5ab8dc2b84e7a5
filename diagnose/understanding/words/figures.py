"""Numbers with their units, as people write them: pressures, temperatures, times, oil grades."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass

from diagnose.understanding.words.figure_patterns import PATTERNS, STARTS, TIMES, WORDS

_HIGH_MILES, _MANY_HOURS, _THICK, _THIN = 100_000, 2_000, 50, 20
#: miles of an engine that is no longer new, and not yet worn; hours of one that is due for overhaul,
#: and of one that is run in; months of a long rest (all judgement)
_OVERDUE_MILES = 15_000  #: oil in an engine for so long is overdue (judgement)
_ONE_RUN_MILES = 300  #: more are no length of one run (judgement)
_WELL_RUN_IN_MILES = 2_000  #: after these a rebuilt engine is no longer fresh (judgement)
_LEAST_MILES, _LOW_MILES, _OVERHAUL_HOURS, _RUN_IN_HOURS = 1_000, 70_000, 1_000, 25
_HOT_F, _BODY_F, _HOT_C = 88, 125, 30  #: air of a hot day; without a unit it is in °F (judgement)
_HOT_OIL_C, _HOT_OIL_F = 119, 246  #: oil hotter than about 120 °C, 250 °F
_FEW_YEARS, _LONG_MONTHS = 6, 9


@dataclass(frozen=True, slots=True)
class Figure:
    """A number in a text: where it stands, what kinds it is of, its value as a case file writes it."""

    start: int
    end: int
    kinds: frozenset[str]
    value: str  #: "5 psi", "10 min", "700"; the unit as the person meant it


def figures(text: str) -> list[Figure]:
    """Every number of a text, left to right; each character belongs to one at most.

    >>> [(f.value, sorted(f.kinds)) for f in figures("5 psi at 700 rpm, 20w50")]
    [('5 psi', ['pressure']), ('700 rpm', ['rpm']), ('20W-50', ['grade', 'thick'])]
    """
    found: list[Figure] = []
    at = 0
    while start := STARTS.search(text, at):
        begin = start.start()
        for kind, pattern in PATTERNS:
            match = pattern.match(text, begin)
            if match and match.end() > begin:
                found += _descending(kind, match) or [_figure(kind, match)]
                at = found[-1].end
                break
        else:
            at = begin + 1
    return found


def _descending(kind: str, match: re.Match[str]) -> list[Figure]:
    """The two ends of what is no range: "60 to 15 psi" comes down from one to the other."""
    parts = match.groupdict()
    if kind not in ("pressure", "range") or not parts.get("b"):
        return []
    ends = [_plain(parts["a"]), _plain(parts["b"])]
    if float(ends[0]) <= float(ends[1]):
        return []
    unit = f" {_unit(parts['unit'])}" if parts.get("unit") else ""
    one = "pressure" if unit else "number"
    places = (match.span("a"), (match.start("b"), match.end()))
    return [
        Figure(*place, frozenset({one}), f"{end}{unit}")
        for place, end in zip(places, ends, strict=True)
    ]


def _figure(kind: str, match: re.Match[str]) -> Figure:
    kinds, value = {kind}, " ".join(match[0].lower().split())
    parts = match.groupdict()
    match kind:
        case "pressure":
            kinds, value = _pressure(parts, value)
        case "share":
            kinds, value = {"pressure", "share"}, f"{_share(parts['share'])} of the dial"
        case "part":
            kinds, value = {"share"}, f"{_share(parts['share'])} of the dial"
        case "rpm":
            value = f"{float(_plain(parts['a'])) * (1000 if parts['k'] else 1):g} rpm"
        case "temperature":
            degrees = _plain(parts["a"])
            unit = (parts.get("unit") or ("F" if float(degrees) > 130 else "C")).upper()
            frost = bool(parts.get("minus"))
            value = f"-{degrees} {unit}" if frost else f"{degrees} {unit}"
            kinds = {"frost"} if frost else kinds | _of_weather(float(degrees), parts.get("unit"))
            kinds -= {"hotday"} if "by" in parts and parts["by"] is not None else set()
        case "grade":
            winter = parts.get("low")
            value = f"{winter}W-{parts['high']}" if winter else f"SAE {parts['high']}"
            high, low = int(parts["high"]), int(winter or 99)
            kinds |= (
                {"thick"} if high >= _THICK else {"thin"} if high <= _THIN or low == 0 else set()
            )
        case "distance":
            miles = float(_plain(parts["a"])) * (1000 if parts["k"] else 1)
            kinds |= {"highmiles"} if miles >= _HIGH_MILES else set()
            kinds |= {"toofar"} if miles >= _OVERDUE_MILES else set()
            kinds |= {"farther"} if miles >= _ONE_RUN_MILES else set()
            kinds |= {"thousands"} if miles >= _WELL_RUN_IN_MILES else set()
            kinds |= {"lowmiles"} if _LEAST_MILES <= miles <= _LOW_MILES else set()
        case "number" | "range":
            value = _plain(parts["a"]) + (f" to {_plain(parts['b'])}" if parts.get("b") else "")
        case _:
            unit = next((u for _, name, u in TIMES if name == kind), "")
            if unit:
                kinds |= {"time"}
                count = _count(parts["count"])
                kinds |= _long_or_short(kind, float(count))
                value = f"{count} {unit}"
    return Figure(match.start(), match.end(), frozenset(kinds), value)


def _pressure(parts: Mapping[str, str | None], text: str) -> tuple[set[str], str]:
    """The kinds and the value of a pressure; without a unit it is a range that may be one."""
    if part := parts.get("part"):
        word = part.split()[0].lower()
        if parts.get("tens") is None:
            low, high = (13, 19) if word == "teens" else (1, 9)
        else:
            tens = int(parts["tens"] or "")
            spread = {"l": (0, 3), "m": (4, 6), "h": (7, 9), "u": (7, 9)}[word[0]]
            low, high = (tens + each for each in spread)
        named = text.endswith("psi")
        return ({"pressure"} if named else {"range"}), f"{low} to {high}" + " psi" * named
    unit = _unit(str(parts["unit"]))
    if parts.get("half"):
        return {"pressure"}, f"0.5 {unit}"
    first = _plain(str(parts["a"]))
    if " and a half" in text or " 1/2" in text:
        first = f"{float(first) + 0.5:g}"
    if second := parts.get("b"):
        return {"pressure"}, f"{first} to {_plain(second)} {unit}"
    return {"pressure"}, f"{first} {unit}"


def _of_weather(degrees: float, unit: str | None) -> set[str]:
    """Whether a temperature is that of a hot day or of frost, if it is the air's, or of hot oil."""
    if unit is None:
        hot = {"hotoil"} if degrees >= _HOT_OIL_F else set()
        return hot | ({"hotday"} if _HOT_F <= degrees < _BODY_F else set())
    celsius = degrees if unit.upper() == "C" else (degrees - 32) / 1.8
    if celsius >= _HOT_OIL_C:
        return {"hotoil"}
    return {"hotday"} if celsius >= _HOT_C else {"frost"} if celsius <= 0 else set()


def _long_or_short(kind: str, count: float) -> set[str]:
    """What a time says of an engine's age or rest; kinds of limits of common practice."""
    if kind == "hours":
        found = {"highmiles"} if count >= _MANY_HOURS else set()
        found |= {"manyhours"} if count >= _OVERHAUL_HOURS else {"fewhours"}
        return found | ({"hundreds"} if count >= _RUN_IN_HOURS else {"runin"})
    if kind == "years":
        return {"longtime"} | ({"fewyears"} if count <= _FEW_YEARS else set())
    return {"longtime"} if kind == "months" and count >= _LONG_MONTHS else set()


def _plain(number: str) -> str:
    """The digits of a number."""
    word = number.lower()
    if word == "zero":
        return "0"
    return str(WORDS[word]) if word in WORDS else f"{float(number.replace(',', '')):g}"


def _count(words: str) -> str:
    """The number that a count means: "a few" is three, "a couple of" two."""
    text = " ".join(words.lower().split())
    if text[0].isdigit() or text in WORDS or text[0] == ".":
        return _plain(text)
    if "half" in text:
        return "0.5"
    return "3" if "few" in text or "several" in text else "2" if "couple" in text else "1"


def _unit(name: str) -> str:
    word = name.lower()
    if word.startswith("k") and word != "kpa":
        return "kg/cm2"
    if word in ("kpa", "mpa"):
        return "kPa" if word == "kpa" else "MPa"
    return "bar" if word.startswith("bar") else "psi"


def _share(text: str) -> str:
    word = " ".join(text.lower().replace("-", " ").split())
    return "half" if "way" in word else word
