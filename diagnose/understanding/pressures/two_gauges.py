"""Read two gauges of one engine that disagree: "upper gauge nearly zero, the lower one normal"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, Span, Value, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.instruments_named import (
    FIRST_OF_TWO,
    GAUGES,
    OTHER_OF_TWO,
    READS_RIGHT,
)
from knowledge.lexicon.values.beside_numbers import LIGHTS
from knowledge.reports.words import Shows

_WRONG = frozenset([Shows.LOW, Shows.NONE, Shows.LOST, Shows.UNSTEADY, Shows.FALLING])
_WELL, _GONE = frozenset([Shows.NORMAL]), frozenset([Shows.NONE])
_SAYS = 4  #: words from the other gauge to what it shows


@reader(
    {
        "upper gauge falls to nearly zero once warm, lower one normal": [
            "finding second_instrument_disagrees present"
        ],
        "One gauge nearly zero once warm. The other gauge is normal all the time.": [
            "finding second_instrument_disagrees present"
        ],
        "the helm gauge drops to zero, the flybridge one stays steady": [
            "finding second_instrument_disagrees present"
        ],
        "Oil light goes off as it cranks. Gauge reads zero.": [
            "finding second_instrument_disagrees present"
        ],
        "Oil light goes off as it cranks. Gauge reads 40.": [],
        "one gauge nearly zero, the other one too": [],
        "upper gauge normal, lower one normal": [],
        "fuel gauge low, the other gauge normal": [],
        "the gauge drops to zero. The other engine is normal": [],
    }
)
def two_gauges(paragraph: Paragraph) -> Iterator[Fact]:
    """One gauge reads wrong, and the other, or the lamp, shows what it should."""
    for line, after in pairwise((*paragraph.lines, None)):
        if line is None or after is None:
            continue
        out, none = _shown(line, LIGHTS, _WELL), _shown(after, GAUGES, _GONE)
        if out and none:
            yield _disagree((*line.span([out]), *after.span([none])))
            return
    for line, after in pairwise((*paragraph.lines, None)):
        if line is None or (first := _first(line)) is None:
            continue
        for where in (line, after):
            if where is not None and (other := _other(where, first if where is line else 0)):
                spans = (*line.span([Mark(True, first - 1, first + 1)]), *where.span([other]))
                yield _disagree(spans)
                return


def _disagree(spans: tuple[Span, ...]) -> Fact:
    fields: dict[str, Value] = {"what": "second_instrument_disagrees", "state": "present"}
    return Fact("finding", fields, tuple(dict.fromkeys(spans)))


def _shown(line: Line, by: frozenset[str], shows: frozenset[Shows]) -> Mark[Shows] | None:
    """The words that say that such an instrument shows this; None where none does."""
    marks = (m for m in line.stated(line.lexicon.shows) if m.value in shows)
    return next((m for m in marks if by & line.words(m.first, m.last)), None)


def _first(line: Line) -> int | None:
    """The place of a gauge that is one of two, where what it shows is wrong."""
    for k, (which, noun) in enumerate(pairwise(_words(line))):
        marks = [m for m in line.stated(line.lexicon.shows) if m.value in _WRONG]
        clause = line.clause(k + 1)
        wrong = any(clause.first <= m.first < clause.last for m in marks)
        if which in FIRST_OF_TWO and noun in GAUGES and wrong:
            return k + 1
    return None


def _other(line: Line, start: int) -> Mark[object] | None:
    """The words that say that the other gauge reads right."""
    words = _words(line)
    for k in range(start + 1, len(words) - 1):
        if words[k] in OTHER_OF_TWO and words[k + 1] in (*GAUGES, "one"):
            for n in range(k + 2, min(k + 2 + _SAYS, len(words))):
                if line.tokens[n].is_mark:
                    break
                if words[n] in READS_RIGHT:
                    return Mark(True, k, n + 1)
    return None


def _words(line: Line) -> Sequence[str]:
    return [t.word for t in line.tokens]
