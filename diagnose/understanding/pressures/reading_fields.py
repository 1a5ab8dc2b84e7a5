"""Which field of a reading the words beside a pressure fill: its speed, its oil, its gauge."""

from __future__ import annotations

from diagnose.understanding.pressures.gauges import direct_named
from diagnose.understanding.pressures.stations_named import StationName
from diagnose.understanding.sentences.paragraph import Line, heat_at
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Token
from knowledge.lexicon.shows.speeds import HEAT
from knowledge.reports.words import Circumstance, Heat, Speed

DIRECT = "direct"  #: a gauge on an oil line of its own
_BEFORE = 5  #: words before a temperature in which it is said of what
_COOLANT = frozenset(["coolant", "water", "radiator", "antifreeze"])


def field_of(mark: Mark[object], line: Line, at: int) -> tuple[str, str]:
    """The field of a reading at token ``at`` that a mark fills, and its word; empty where none."""
    value = mark.value
    match value:
        case Speed():
            return "rpm", value.value
        case Circumstance():
            return ("oil", heat_at(line, mark, at)) if value in HEAT else ("during", value.value)
        case Token():
            if "rpm" in value.kinds:
                return "rpm", value.value
            return ("oil" if _is_of_oil(line, mark) else "coolant"), value.value
        case True:
            return ("gauge", DIRECT) if mark in direct_named(line) else ("oil", Heat.ANY.value)
        case str():
            return "gauge", value
        case StationName():
            return "station", value.says
    return "", ""


def is_temperature(mark: Mark[object]) -> bool:
    """Whether a mark is a figure of heat."""
    return isinstance(mark.value, Token) and "temperature" in mark.value.kinds


def is_speed_figure(mark: Mark[object]) -> bool:
    """Whether a mark is a speed in figures."""
    return isinstance(mark.value, Token) and "rpm" in mark.value.kinds


def _is_of_oil(line: Line, mark: Mark[object]) -> bool:
    """Whether a temperature is that of the oil: "oil at 90 C", "80c oil 0.4 bar"."""
    words = line.words(mark.first - _BEFORE, mark.first)
    after = next((t.word for t in line.tokens[mark.last :] if t.end > t.start), "")
    return "oil" in words or (after == "oil" and not words & _COOLANT)
