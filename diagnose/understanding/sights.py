"""Read what was seen, smelt or known: "level is fine", "no leaks", "metal in the filter"."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.facts import Fact, reader
from diagnose.understanding.lexicon import book_stem
from diagnose.understanding.paragraph import Line, Paragraph
from diagnose.understanding.phrases import Mark, longest
from diagnose.understanding.stance import Stance
from knowledge.lexicon.sights_kinds import NEVER_DENIED
from knowledge.lexicon.stance import NEGATION
from knowledge.model import Kind, Stage

_SPARE = 1  #: words that may stand between those of a phrase of the book
_NEGATION = frozenset(NEGATION)


@reader(
    {
        "oil level is fine, no leaks": [
            "finding level_correct present",
            "finding oil_seen_outside absent",
        ],
        "I am worried about metal in the filter": [],
        "my brother's had metal in the pan": [],
        "probably a spun bearing": [],
        "haven't checked the oil level": [],
        "metal in the filter": ["finding metal_in_filter present"],
    }
)
def sights(paragraph: Paragraph) -> Iterator[Fact]:
    """Findings that are named as such, there or not there."""
    book = paragraph.lexicon.book
    for line in paragraph.lines:
        own = [m for m in line.find(paragraph.lexicon.sights) if m.value in book.findings]
        also = [m for m in _by_the_book(line) if not any(o.overlaps(m) for o in own)]
        for mark in (*own, *longest(also)):
            fact = _fact(line, mark)
            if fact is not None:
                yield fact


def _fact(line: Line, mark: Mark[str]) -> Fact | None:
    finding = line.lexicon.book.findings[mark.value]
    stance = line.stances.at(mark)
    if stance & (Stance.SUPPOSED | Stance.ELSEWHERE | Stance.USUAL):
        return None
    sure = line.stances.surety(mark)
    inside = finding.stage is Stage.OPENED
    if stance & Stance.GUESSED or (inside and sure < 1.0):
        return None
    own = {line.tokens[k].word for k in range(mark.first, mark.last)} & _NEGATION
    denied = bool(stance & Stance.DENIED) and not own
    if denied and (mark.value in NEVER_DENIED or finding.kind is not Kind.SEEN):
        return None
    first = mark.first
    if denied:
        while (
            first > 0 and line.word(first) not in _NEGATION and not line.tokens[first - 1].is_mark
        ):
            first -= 1
    spans = line.span([Mark(True, first, mark.last)])
    state = "absent" if denied else "present"
    return Fact("finding", {"what": mark.value, "state": state}, spans, sure)


def _by_the_book(line: Line) -> Iterator[Mark[str]]:
    """Phrases of the book's own findings, their words in order and near each other in a clause."""
    shows = line.find(line.lexicon.shows)
    for clause in line.sentence.clauses:
        stems = [
            "" if t.is_mark or t.is_figure else book_stem(t.word)
            for t in line.tokens[clause.first : clause.last]
        ]
        for first, stem in enumerate(stems):
            for phrase, finding in line.lexicon.also.get(stem, ()):
                last = _end(stems, first, phrase)
                mark = Mark(finding.id, clause.first + first, clause.first + last)
                if last and not any(s.overlaps(mark) for s in shows):
                    yield mark


def _end(stems: list[str], first: int, phrase: tuple[str, ...]) -> int:
    """Where a phrase ends that begins at ``first``; 0 where its words do not follow."""
    wanted, spare = 0, 0
    for k in range(first, len(stems)):
        if stems[k] == phrase[wanted]:
            wanted += 1
            if wanted == len(phrase):
                return k + 1
        elif stems[k]:
            spare += 1
            if spare > _SPARE or stems[k] in _NEGATION:
                break
    return 0
