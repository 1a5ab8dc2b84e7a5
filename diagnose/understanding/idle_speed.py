"""Whether a speed in figures is that of the idle named beside it: "hot idle 750 rpm"."""

from __future__ import annotations

from collections.abc import Mapping

from diagnose.understanding.facts import Value
from diagnose.understanding.text import Token
from knowledge.reports.words import Speed
from knowledge.units import SPEED, parse

FASTEST = 1300.0  #: rev/min: a figure beside "idle" up to here is its speed (judgement)


def of_an_idle(said: object, fields: Mapping[str, Value]) -> bool:
    """Whether ``said`` is a speed in figures and the reading is at idle already."""
    if fields.get("rpm") != Speed.IDLE.value or not isinstance(said, Token):
        return False
    return "rpm" in said.kinds and parse(said.value, SPEED) <= FASTEST
