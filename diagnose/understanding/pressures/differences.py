"""Whether a figure says by how much, not what a gauge shows: "5 psi more", "a drop of 10 psi"."""

from __future__ import annotations

from diagnose.understanding.sentences.paragraph import Line
from knowledge.lexicon.shows.instruments_named import GAUGES, STATION_SIDES, STATION_WORDS
from knowledge.lexicon.values.beside_numbers import (
    ABOUT,
    BESIDE,
    BOTH_WAYS,
    BY,
    CHANGED,
    COMPARED,
    DOWN_EVERYWHERE,
    MORE,
    RATES,
    ROADS,
    SPANS,
    UP_AT,
    WAVERS,
    WHICH_FALL,
)
from knowledge.lexicon.work.beside_results import WON

_NO_MORE = frozenset(
    [("off", "idle"), ("low", "idle"), ("high", "idle"), ("out", "of"), ("low", "revs")]
)


def is_difference(line: Line, i: int) -> bool:
    """Whether a number says by how much: "5 psi more", "a drop of 10 psi"."""
    words = line.words(i - 3, i)
    clause = line.clause(i)
    said = line.words(clause.first, clause.last)
    if said & {"setting", "opens", "set", "reset"} or ("rated" in said and not _at_rated(line, i)):
        return True
    if line.word(i - 1) == "either" or (line.word(i + 1), line.word(i + 2)) == ("or", "zero"):
        return True
    at = i - 1 if line.word(i - 1) not in ABOUT else i - 2
    before, after, then = line.word(at), line.word(i + 1), line.word(i + 2)
    if before == "up" and line.word(i - 2) in ("warmed", "heated", "warm", "start", "starting"):
        before = ""
    if before == "up" and line.word(at - 1) in ("gauge", "gage", "it"):
        before = ""  # "hooked a gauge up 3.0 bar"
    if before == "about" and line.word(i - 2) == "down":
        return True  # "it's been down about 10 psi everywhere"
    autumn = before == "fall" and line.word(at - 1) in WHICH_FALL
    if (before in CHANGED and not autumn) or (line.word(at - 1), before) in (
        ("drop", "of"),
        ("fall", "of"),
    ):
        return True
    if after in ("each", "either") and then in ("way", "side"):
        return True
    if before in WAVERS and " to " not in line.tokens[i].value:
        return True  # "fluctuates 10 psi", "swings about 15 psi"
    if (after, line.word(i + 3)) in BOTH_WAYS and then == "and":
        return True  # "10 psi up and down"
    if after == "over" and line.word(i + 3) in SPANS:
        return False  # "from 4 bar to 2.6 over the watch"
    if (after, then) == ("down", "the") and line.word(i + 3) in ROADS:
        return False  # "60 psi down the highway"
    if after in BESIDE and (then in COMPARED or (after == "over" and not then)):
        return True
    rate = after in ("per", "each", "every") and then in RATES
    if rate or (after.startswith("a ") and after.removeprefix("a ") in RATES):
        return True  # "dropping about 5 psi a year"
    if after == "up" and then in UP_AT:
        return True  # "it's 10 up at speed"
    if after == "down" and then in DOWN_EVERYWHERE:
        return True  # "it's 10 psi down across the board"
    if (line.word(i - 2), before) in WON:
        return True  # "all the way in gets me 2 psi"
    if (after, then) in (("down", "from"), ("down", "on")) and line.word(i + 3) in COMPARED:
        return True
    if {"which", "gave"} <= line.words(i - 5, i):
        return True  # "thicker oil, which gave me maybe 3 psi"
    next_one = after in STATION_SIDES and then in STATION_WORDS | GAUGES
    if after in MORE and (after, then) not in _NO_MORE and not next_one:
        return True
    return bool(words & BY) or before in ("by", "within")


def _at_rated(line: Line, i: int) -> bool:
    """Whether "rated" is the speed of a reading: "1.9 bar rated", "40 psi at rated speed"."""
    near = [line.word(k) for k in range(i + 1, i + 4)]
    return near[:1] == ["rated"] or near[:2] == ["at", "rated"]
