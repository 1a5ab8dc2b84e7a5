"""Holes that belong where they are: "the hole in the block for the gallery" was knocked by no rod."""

from __future__ import annotations

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.words.word_sets import set_of as _set

BROKEN_OPEN = frozenset(["rod_through_block"])  #: findings of a hole that was knocked
_HOLES = frozenset(["hole", "holes"])
_KNOWN = _set("the its this that each every all those these his her their both any no one")
#: behind the block: what the hole is there for
_SERVES = _set(
    "for where that which is was are were lines lined feeding feeds to behind under beneath goes leads"
)
#: beside it in the clause: the hole belongs to these, or is made on purpose
_OF_WORK = _set(
    "drilled tapped threaded helicoil helicoiled thread plug plugs dowel dowels bolt bolts stud gallery "
    "galleries oilway drilling drillings bearing bearings shell shells cam camshaft sender dipstick "
    "distributor line lines lined aligned align aligns match matches matched register registers"
)


def known_hole(line: Line, mark: Mark[object]) -> bool:
    """Whether a hole in the block is one that everybody knows of, or that serves something."""
    hole = next((k for k in range(mark.first, mark.last) if line.word(k) in _HOLES), None)
    if hole is None:
        return False
    before = line.word(hole - 1)
    clause = line.clause(mark.first)
    rest = line.words(clause.first, clause.last)
    if "rod" in rest or "conrod" in rest:
        return False
    return before in _KNOWN or line.word(mark.last) in _SERVES or bool(rest & _OF_WORK)
