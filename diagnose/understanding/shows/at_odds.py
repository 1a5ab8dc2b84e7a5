"""A lamp or trip that warns while the gauge shows what it should, in one sentence."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import permutations

from diagnose.understanding.shows.heads import Head
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.shows.instruments_named import AT_ODDS, LATER
from knowledge.reports.words import Shows

_LAMP = "lamp"  #: the instrument of a behaviour that the lamp shows
_DISAGREE = "second_instrument_disagrees"


def at_odds(heads: Sequence[Head]) -> Iterator[Fact]:
    """That two instruments disagree: "the light flickers but the pressure is where it should be".

    Nothing is said of it where the pressure is good at another time: "but it is fine at speed".
    """
    for lamp, good in permutations(heads, 2):
        line = lamp.line
        warns = lamp.mark.value is Shows.LAMP or lamp.gauge == _LAMP
        if not warns or good.mark.value is not Shows.NORMAL or good.line is not line or good.during:
            continue
        first, last = sorted((lamp.mark, good.mark), key=lambda m: m.first)
        turns = [k for k in range(first.first, last.first + 1) if line.word(k) in AT_ODDS]
        if turns and not LATER & line.words(turns[0], last.first + 1):
            spans = line.span([lamp.mark, good.mark])
            yield Fact("finding", {"what": _DISAGREE, "state": "present"}, spans)
