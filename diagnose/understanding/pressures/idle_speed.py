"""Whether a speed in figures is that of the idle named beside it: "hot idle 750 rpm"."""

from __future__ import annotations

from collections.abc import Mapping

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.facts import Value
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Token
from knowledge.reports.words import Circumstance, Speed
from knowledge.units import SPEED, parse

_BETWEEN = frozenset(["at", "about", "in", "and", "with", "while", "when"])
FASTEST = 1300.0  #: rev/min: a figure beside "idle" up to here is its speed (judgement)


def of_an_idle(said: object, fields: Mapping[str, Value]) -> bool:
    """Whether ``said`` is a speed in figures and the reading is at idle already."""
    if fields.get("rpm") != Speed.IDLE.value or not isinstance(said, Token):
        return False
    return "rpm" in said.kinds and parse(said.value, SPEED) <= FASTEST


def without_standing(line: Line, marks: list[Mark[object]]) -> list[Mark[object]]:
    """The marks, an idle that only says that it stood beside a speed joined to that speed.

    "at 2000 rpm (parked in neutral) it reads 60" is at 2000 rpm.
    """
    speed = next((m for m in marks if "rpm" in line.tokens[m.first].kinds), None)
    stood = next((m for m in marks if m.value is Circumstance.IDLE and _stands(line, m)), None)
    if speed is None or stood is None:
        return marks
    first, last = min(speed.first, stood.first), max(speed.last, stood.last)
    between = range(min(speed.last, stood.last), max(speed.first, stood.first))
    if not all(line.tokens[k].is_mark or line.word(k) in _BETWEEN for k in between):
        return marks
    others = [m for m in marks if m not in (speed, stood)]
    return [*others, Mark(speed.value, first, last)]


def _stands(line: Line, mark: Mark[object]) -> bool:
    """Whether it is said that the car stood, not that it idled: "parked", "in neutral"."""
    words = (line.word(k) for k in range(mark.first, mark.last))
    return not any(w.startswith(("idl", "tick")) for w in words)
