"""When the words for what a pressure does say something else: of the idle speed, of one step up."""

from __future__ import annotations

import re
from itertools import pairwise

from diagnose.understanding.paragraph import Line
from diagnose.understanding.phrases import Mark
from diagnose.understanding.the_gauge import sweeps_at_key_on
from knowledge.lexicon.now_words import LOWS
from knowledge.lexicon.other_things import (
    AND_WARM,
    JUMPED,
    OF_SPEED,
    PARTS_DROPPED,
    PROVING,
    SHUT,
    STOPPED,
    UPWARDS,
)
from knowledge.lexicon.results_words import WON
from knowledge.reports.words import Shows

_LEAST_SPEED = 200.0  #: a figure from this on is a speed of the engine, no pressure (judgement)
_OF_A_NEEDLE = frozenset([Shows.NONE, Shows.LOW, Shows.LOST, Shows.UNSTEADY, Shows.FALLING])
_NEAR = 2  #: words behind the words for what shows in which their figure stands


def means_otherwise(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it is no behaviour of the pressure.

    "idle dropped to 500" is a speed, "it jumped from 8 to 17" one step, "good and warm" the heat.
    """
    if mark.value in _OF_A_NEEDLE and sweeps_at_key_on(line):
        return True
    after = (line.word(mark.last), line.word(mark.last + 1))
    match mark.value:
        case Shows.NONE if line.word(mark.first) == "nothing":
            return _no_gain(line, mark.first)
        case Shows.UNSTEADY if STOPPED & {line.word(k) for k in range(mark.first - 1, mark.last)}:
            return True  # "made the gauge stop jumping about"
        case Shows.LOW | Shows.LOST | Shows.FALLING:
            subject = {line.word(mark.first), line.word(mark.first - 1)} & OF_SPEED
            dropped = after[0] in ("a", "an") and after[1] in PARTS_DROPPED
            return dropped or (bool(subject) and _names_a_speed(line, mark))
        case Shows.UNSTEADY:
            said = {line.word(k) for k in range(mark.first, mark.last)}
            up = {after[0], line.word(mark.last - 1)} & UPWARDS
            to_figure = after[0] == "to" and after[1][:1].isdigit()
            jumped = said & JUMPED or (to_figure and "jumps" in said)  # "pressure jumps to 3.5"
            return bool(jumped and up) and "back" not in {t.word for t in line.tokens}
        case Shows.TRIPS:
            begins = mark.first == line.clause(mark.first).first
            return begins and line.word(mark.first) in SHUT  # "Shut off after 15 seconds": I did
        case Shows.NORMAL:
            rest = {line.word(k) for k in range(mark.last, len(line.tokens))}
            if line.word(mark.last - 1) == "steady" and rest & LOWS:
                return True  # "steady at all speeds but much lower than before"
            lead = {line.word(k) for k in range(mark.first - 3, mark.first)}
            if line.word(mark.first) in ("gauge", "needle") and lead & PROVING:
                return True  # "so the gauge is right"
            return line.word(mark.last - 1) == "warm" or (
                after[0] == "and" and after[1] in AND_WARM
            )
    return False


def _no_gain(line: Line, at: int) -> bool:
    """Whether it is what work did not win: "bought me 4 psi at idle and nothing at speed"."""
    before = [line.word(k) for k in range(at)]
    return any(pair in WON for pair in pairwise(before))


def _names_a_speed(line: Line, mark: Mark[Shows]) -> bool:
    """Whether the figure in the words, or straight behind them, is too high for a pressure."""
    near = line.tokens[mark.first : mark.last + _NEAR]
    numbers = [n for t in near if t.is_figure for n in re.findall(r"\d+(?:\.\d+)?", t.value)]
    return any(float(n) >= _LEAST_SPEED for n in numbers)
