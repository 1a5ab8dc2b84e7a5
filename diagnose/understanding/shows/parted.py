"""What shows where words for when part it from its subject: "pressure at hot idle is very low"."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.sentences.stance import UNTRUE
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.verdict_apart import (
    BEFORE_VERDICT,
    BEFORE_WHEN,
    IS_SO,
    NO_VERDICT_BEHIND,
    OTHER_PRESSURES,
    SHOWN,
    VERDICTS,
)
from knowledge.reports.words import Shows

_MOST = 9  #: words between the pressure and the verb


def parted(line: Line) -> Iterator[Mark[Shows]]:
    """A subject that shows the pressure, when it does, a verb and a verdict."""
    for k, token in enumerate(line.tokens):
        if token.word not in SHOWN or line.word(k - 1) in OTHER_PRESSURES:
            continue
        verb = _behind_when(line, k + 1)
        if verb is None or line.word(verb) not in IS_SO:
            continue
        at = verb + 1
        while line.word(at) in BEFORE_VERDICT:
            at += 1
        shows = VERDICTS.get(line.word(at))
        behind = line.word(at + 1)
        if shows is None or behind in NO_VERDICT_BEHIND:
            continue
        if shows is Shows.NORMAL and behind == "for":
            continue  # "good for this engine"
        mark = Mark(shows, k, at + 1)
        if not line.stances.at(mark) & UNTRUE and not line.usual(mark):
            yield mark


def _behind_when(line: Line, first: int) -> int | None:
    """The place behind the words for when that stand from a place on; None where none stand there."""
    when = {k for m in line.circumstances for k in range(m.first, m.last)}
    when |= {k for m in line.find(line.lexicon.speed) for k in range(m.first, m.last)}
    when |= {k for k, t in enumerate(line.tokens) if t.kinds & {"rpm", "temperature"}}
    at = first
    while at < first + _MOST and (at in when or line.word(at) in BEFORE_WHEN):
        at += 1
    return max((k + 1 for k in range(first, at) if k in when), default=None)
