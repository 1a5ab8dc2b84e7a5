"""Numbers that are no pressures: an engine's size, a year, an hour, what another gauge shows."""

from __future__ import annotations

import re

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.text import Token
from knowledge.lexicon.engine.traits import KINDS
from knowledge.lexicon.shows.beside_pressure import GAUGE_WORDS
from knowledge.lexicon.values.beside_numbers import (
    FOLLOWS,
    NO_UNITS,
    OTHER_GAUGES,
    PARTS_OF_DAY,
    SIZED,
    TEMPERATURES,
    VOLTS,
    WHOSE,
)

_POUNDS = frozenset(["lb", "lbs", "pound", "pounds"])
_TALLEST = 6.0  #: inches: no relief spring is so long (judgement)


def is_a_size(line: Line, i: int) -> bool:
    """Whether a number is the litres of an engine, or a year: "my 1.2 supermini", "the 72 truck"."""
    token = line.tokens[i]
    led = line.word(i - 1) in WHOSE or "year" in line.tokens[i - 1].kinds or not i
    if line.number == 0 and _stands_alone(line, i) and not _named_ahead(line, i):
        return bool(re.fullmatch(r"\d\.\d", token.word))  # "1989 pickup, 5.0, gaskets replaced"
    if not led or not re.fullmatch(r"\d\.\d|[5-9]\d|0\d", token.word):
        return False
    kinds = line.lexicon.traits.find_each(line.tokens)
    return line.word(i + 1) in KINDS | SIZED or any(m.first - i in (1, 2) for m in kinds)


def _stands_alone(line: Line, i: int) -> bool:
    """Whether a number is a clause of its own."""
    clause = line.clause(i)
    return clause.first == i and clause.last - i <= 2 and len(line.sentence.clauses) > 1


def _named_ahead(line: Line, i: int) -> bool:
    """Whether an instrument or a pressure is named before a number, or its speed behind it."""
    if any("pressure" in t.kinds for t in line.tokens[:i]):
        return True
    named = any(m.first < i for m in line.find(line.lexicon.instrument))
    return named or any(m.first == i + 1 for m in line.find(line.lexicon.speed))


def is_in_another_row(line: Line, i: int) -> bool:
    """Whether figures before it lead back to what another gauge shows: "compression 150, 140, 130"."""
    at = i - 1
    while at >= 0 and (line.tokens[at].is_figure or line.word(at) in (",", "and", "/")):
        at -= 1
    return at < i - 1 and line.word(at) in OTHER_GAUGES


def has_another_unit(line: Line, i: int) -> bool:
    """Whether what a number counts follows it and is no word of the trade: "5 apples"."""
    word = line.word(i + 1)
    counted = word.isalpha() and word.endswith("s") and word not in FOLLOWS
    return counted and (word in NO_UNITS or not line.lexicon.spelling.knows(word))


def of_another_gauge(line: Line, i: int) -> bool:
    """Whether a number is what a thermometer or the like shows, volts in the whole clause."""
    clause = line.clause(i)
    said = line.words(clause.first, clause.last)
    named = line.find(line.lexicon.instrument)
    volts = said | {t.word for t in line.tokens} if not _says_pressure(line) else said
    if volts & VOLTS and not any(clause.first <= m.first < clause.last for m in named):
        return True
    if _named_as_heat(line, clause.first, i):
        return True
    far = line.words(max(clause.first, i - 5), i)
    steady = "gauge" in far and far & {"temp", "temperature"} and not far & {"oil", "pressure"}
    return bool(steady or line.words(i - 3, i) & OTHER_GAUGES)


def _named_as_heat(line: Line, first: int, i: int) -> bool:
    """Whether a temperature is what a clause named last before a number: "temp of oil showed 135"."""
    for k in range(i - 1, first - 1, -1):
        if line.word(k) in TEMPERATURES:
            return True
        if line.word(k) in GAUGE_WORDS or line.tokens[k].is_figure:
            return False
    return False


def _says_pressure(line: Line) -> bool:
    """Whether a figure of a sentence has a unit of pressure."""
    return any("pressure" in t.kinds for t in line.tokens)


def is_of_the_clock(line: Line, i: int) -> bool:
    """Whether a number is an hour of the day: "next morning about 11 the buzzer went"."""
    before = [line.word(k) for k in range(i - 2, i)]
    return before[-1:] in (["about"], ["around"], ["at"]) and before[0] in PARTS_OF_DAY


def is_gain(line: Line, i: int) -> bool:
    """Whether a plus stands straight before a number: "straight 40 gave +3 psi"."""
    plus = line.word(i - 1) == "+" and not line.tokens[i - 2].is_figure
    return bool(i) and plus and line.tokens[i - 1].end == line.tokens[i].start


def of_a_spring(line: Line, i: int) -> bool:
    """Whether pounds are the load of a spring: "spring 41 mm long, 12 lbs"."""
    if line.tokens[i].word.lstrip("0123456789. ") not in _POUNDS:
        return False
    behind = line.tokens[i + 1 : i + 3]
    at_length = any("length" in t.kinds or _is_inches(t) for t in behind)
    when = line.word(i + 1) in ("at", "hot", "cold", "on") and not at_length
    return not when and "spring" in line.words(0, i)


def _is_inches(token: Token) -> bool:
    """Whether a bare number can be a spring's height in inches: "10 lb at 1 1/8"."""
    bare = token.kinds == {"number"} and token.value.replace(".", "", 1).isdigit()
    return bare and float(token.value) < _TALLEST


def is_negative(line: Line, i: int) -> bool:
    """Whether a minus stands straight before a number, and a space before that: "start at -20"."""
    if not i or line.word(i - 1) not in ("-", "–"):
        return False
    apart = i < 2 or line.tokens[i - 2].end < line.tokens[i - 1].start
    return apart and line.tokens[i - 1].end == line.tokens[i].start


#: each says of a number that it is no pressure
NO_PRESSURES = (is_a_size, has_another_unit, is_in_another_row)
