"""Compare the oil put in with the grade the engine wants: "put 10w30 in, it wants 20w50"."""

from __future__ import annotations

import re

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.facts import Fact
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.engine.features import BOOKS, PUT_IN, WANTED

THINNER = 10  #: least step of the hot grade that counts: 50 to 40
_NEAR = 6  #: words before a grade that say what it is
_JUDGED = ("oil_grade_too_heavy", "oil_grade_too_thin")
_NORMS = frozenset(["supposed", "should"])
_SUBJECTS = frozenset(["but", "and", "i", "we", "he", "it", "they", "you"])


def hot_grade(grade: str) -> int:
    """The number of a grade that says how thick it is hot: 50 of 20W-50.

    >>> hot_grade("20W-50"), hot_grade("SAE 30")
    (50, 30)
    """
    return int(re.findall(r"\d+", grade)[-1])


def by_the_grades(facts: list[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with what two grades say of each other in place of what single words said."""
    wanted = _grades(paragraph, wanted=True)
    filled = _grades(paragraph, wanted=False)
    if len({g for g, _, _ in wanted}) != 1 or len({g for g, _, _ in filled}) != 1:
        return facts
    (want, *_), (now, line, place) = wanted[0], filled[0]
    apart = hot_grade(now) - hot_grade(want)
    kept = [f for f in facts if not (f.name in _JUDGED and f.is_present)]
    if abs(apart) < THINNER:
        return facts
    judged = _JUDGED[0] if apart > 0 else _JUDGED[1]
    spans = dict.fromkeys(
        (
            *line.span([Mark(True, place, place + 1)]),
            *wanted[0][1].span([Mark(True, wanted[0][2], wanted[0][2] + 1)]),
        )
    )
    return [*kept, Fact("finding", {"what": judged, "state": "present"}, tuple(spans))]


def _grades(paragraph: Paragraph, *, wanted: bool) -> list[tuple[str, Line, int]]:
    """Each grade that the engine wants, or that was put in, with its place."""
    return [
        (token.value, line, k)
        for line in paragraph.lines
        if not line.sentence.asks
        for k, token in enumerate(line.tokens)
        if "grade" in token.kinds
        and not line.usual(Mark(True, k, k + 1))
        and not _of_another(line, k)
        and (_is_wanted(line, k) if wanted else _is_put_in(line, k))
    ]


def _of_another(line: Line, at: int) -> bool:
    """Whether it is the oil of another engine; what the book asks for is of this one."""
    elsewhere = bool(line.stances.of[at] & Stance.ELSEWHERE)
    return elsewhere and not (BOOKS | _NORMS) & line.words(0, len(line.tokens))


def _lead(line: Line, at: int) -> set[str]:
    """The words of its clause before a grade, back to another grade or another subject."""
    words: set[str] = set()
    for k in range(at - 1, max(0, at - _NEAR) - 1, -1):
        token = line.tokens[k]
        if token.is_mark or "grade" in token.kinds or token.word in _SUBJECTS:
            break
        words.add(token.word)
    return words


def _is_wanted(line: Line, at: int) -> bool:
    lead = _lead(line, at)
    return bool(lead & WANTED) or ("says" in lead and bool(BOOKS & lead))


def _is_put_in(line: Line, at: int) -> bool:
    lead = _lead(line, at)
    return bool(lead & PUT_IN) and not lead & (WANTED | {"not", "from"})
