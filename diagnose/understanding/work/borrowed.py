"""Read that a part is off another engine: "the dipstick is off another tractor"."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.work.borrowed import (
    ANOTHER,
    BORROWED_PARTS,
    ENGINES,
    FROM,
    NOT_SO,
    PUT,
    WHOSE,
)

_BETWEEN = 3  #: most words between a part and where it comes from


@reader(
    {
        "dipstick is off another tractor": ["finding dipstick_not_its_own present"],
        "the dipstick came from a different engine": ["finding dipstick_not_its_own present"],
        "put the dipstick from the other tractor in it": ["finding dipstick_not_its_own present"],
        "the stick is out of an old engine": ["finding dipstick_not_its_own present"],
        "the dipstick of the other engine is dry": [],
        "the dipstick is not off another engine": [],
        "is the dipstick off another engine?": [],
        "checked the dipstick from the other side": [],
    }
)
def borrowed_parts(paragraph: Paragraph) -> Iterator[Fact]:
    """A part that came from another engine, though what else is said of that engine is of it."""
    for line in paragraph.lines:
        for k, token in enumerate(line.tokens):
            if token.word in BORROWED_PARTS and (last := _last(line, k)):
                mark = Mark(True, k, last)
                head = line.clause(k).first
                said = line.words(head, last)
                untrue = line.stances.at(Mark(True, k, k + 1)) & Stance.SUPPOSED
                if not untrue and not said & NOT_SO:
                    what = {"what": BORROWED_PARTS[token.word], "state": "present"}
                    yield Fact("finding", what, line.span([mark]))


def _last(line: Line, at: int) -> int:
    """Behind the engine that the part in a place is said to come from; 0: none is."""
    k = at + 1
    while k <= at + _BETWEEN and line.word(k) in PUT:
        k += 1
    if line.word(k) == "out":
        k += 1
    if line.word(k) not in FROM or (line.word(k) == "of" and line.word(k - 1) != "out"):
        return 0
    k += 1
    k += line.word(k) in WHOSE
    if line.word(k) in ANOTHER and line.word(k + 1) in ENGINES:
        return k + 2
    return 0
