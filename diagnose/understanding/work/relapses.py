"""Trouble that is there again after work: "it came back", "right back to 8"."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.sentences.stance import Stance
from knowledge.lexicon.work.beside_results import (
    ABOUT,
    AS_LOW,
    DID_IT,
    ENOUGH,
    IS_BACK,
    IS_DOWN,
    NEGATED,
    RETURNS,
    RIGHT_AGAIN,
    WENT_AGAIN,
)
from knowledge.reports.words import Shows

RELAPSE = 2  #: sentences from that of a result on in which the trouble may be back


def relapse(line: Line, first: int) -> int | None:
    """The place of the word from ``first`` on that says the trouble is there again."""
    shown = [m for m in line.stated(line.lexicon.shows) if m.value is not Shows.NORMAL]
    for k in range(first, len(line.tokens)):
        word, before = line.word(k), line.word(k - 1)
        if line.stances.of[k] & (Stance.SUPPOSED | Stance.DENIED):
            continue
        if _is_low_again(line, k) or (word == "again" and before in WENT_AGAIN):
            return k
        if word in RETURNS or (word == "back" and before in IS_BACK):
            clause = line.clause(k)
            said = line.words(clause.first, clause.last)
            trouble = any(clause.first <= m.first < clause.last for m in shown)
            if "life" in {line.word(k + 1), line.word(k + 2)}:
                continue  # "it came back to life"
            trouble = trouble or (word == "back" and line.word(k + 1) == "on")
            if (trouble or said & DID_IT) and not said & (RIGHT_AGAIN | NEGATED):
                return k
    return None


def says_again(lines: Sequence[Line]) -> bool:
    """Whether "again" or "back" says within the reach of a result that the trouble was there before."""
    for line in lines[: RELAPSE + 1]:
        at = relapse(line, 0)
        clause = line.clause(at) if at is not None else None
        said = {t.word for t in line.tokens[clause.first : clause.last]} if clause else set()
        if said & (RETURNS | {"back"}):
            return True
    return False


def _is_low_again(line: Line, at: int) -> bool:
    """Whether the pressure is said to be low or gone as before: "right back to 8", "zero again"."""
    word = line.word(at)
    if word == "again":
        return line.word(at - 1) in IS_DOWN or _is_low(line, at - 1)
    if word not in ("back", "down") or line.word(at + 1) != "to":
        return False
    place = at + 2
    while line.word(place) in ABOUT:
        place += 1
    return line.word(place) in AS_LOW or _is_low(line, place)


def _is_low(line: Line, at: int) -> bool:
    """Whether a figure is a pressure that is too little at any speed and heat."""
    if not 0 <= at < len(line.tokens):
        return False
    values = pressures_at(line, at)
    return bool(values) and values[0] < ENOUGH
