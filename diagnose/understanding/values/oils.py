"""Read the grade of the oil in the engine, and whether it is thinner than what it had before."""

from __future__ import annotations

import re
from collections.abc import Iterator

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.values.grade_wanted import THINNER, hot_grade
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.engine.features import BOOK_SAYS, BOOKS
from knowledge.lexicon.engine.traits import NOT_IN_IT
from knowledge.lexicon.words.joints import UNTIL

_SURE = 0.75  #: that the old grade was the right one


@reader(
    {
        "running 20w50 in it": ["oil 20W-50"],
        "Fresh SAE 30 and a new filter.": ["oil SAE 30"],
        "went from 10w30 to 20w50": ["oil 20W-50"],
        "20w50, 5 psi at hot idle": ["oil 20W-50"],
        "the manual says 10w40": [],
        "it was on 10w40 before": [],
        "should I try 20w50?": [],
        "15w40 in one and 20w50 in the other": [],
        "my brother runs 20w50 in his": [],
    }
)
def oil_in_use(paragraph: Paragraph) -> Iterator[Fact]:
    """The grade of the oil in the engine; none where two of them may be meant."""
    if (now := _now(paragraph)) is not None:
        grade, line, mark = now
        yield Fact("oil", {"grade": grade}, line.span([mark]))


@reader(
    {
        "put 5w30 in it, always had 20w50 before": ["finding oil_grade_too_thin present"],
        "changed the oil to 5w30 instead of the usual 20w50": [
            "finding oil_grade_too_thin present"
        ],
        "switched from 20w50 to 5w30": ["finding oil_grade_too_thin present"],
        "it has 5w20 in it. Old oil was 10w40.": ["finding oil_grade_too_thin present"],
        "went from 10w30 to 20w50": [],
        "put 15w40 in, 10w40 before": [],
        "switched to 5w30, my brother runs 20w50": [],
        "should I go from 20w50 to 5w30?": [],
    }
)
def thinner_than_before(paragraph: Paragraph) -> Iterator[Fact]:
    """Oil of a thinner grade than the engine had before."""
    now = _now(paragraph)
    before = [_before(line, k) for line in paragraph.lines for k in _grades(line)]
    stated = [b for b in before if b is not None]
    if now is None or len(stated) != 1:
        return
    grade, line, mark = now
    ((old, where, place),) = stated
    if hot_grade(grade) + THINNER <= hot_grade(old):
        spans = dict.fromkeys((*line.span([mark]), *where.span([place])))
        yield Fact(
            "finding", {"what": "oil_grade_too_thin", "state": "present"}, tuple(spans), _SURE
        )


@reader(
    {
        "15W-40 in it, handbook says 5W-40": ["finding oil_grade_too_heavy present"],
        "20w50 in it, the book calls for SAE 30": ["finding oil_grade_too_heavy present"],
        "5w20 in it, the manual says 15w40": ["finding oil_grade_too_thin present"],
        "10w40 in it, the manual says 10w40": ["finding oil_grade_as_manual present"],
        "whatever was on the shelf, 10w40 i think, says 5w30 in the book": [
            "finding oil_grade_too_heavy present"
        ],
        "15W-40 in it, my brother says 5W-40": [],
        "15W-40 in it, is 5W-40 right?": [],
        "15W-40 in it, handbook says 5W-40 or 10W-40": [],
    }
)
def against_the_book(paragraph: Paragraph) -> Iterator[Fact]:
    """Oil thicker or thinner than the grade the manual names, or that grade."""
    now = _now(paragraph)
    named = [(line, k) for line in paragraph.lines for k in _grades(line) if _by_the_book(line, k)]
    if now is None or len(named) != 1:
        return
    grade, line, mark = now
    ((where, place),) = named
    if any(where.tokens[k].value != grade and k != place for k in _grades(where) if k > place):
        return  # "5W-40 or 10W-40"
    book = where.tokens[place].value
    hot, cold = hot_grade(grade) - hot_grade(book), _cold(grade) - _cold(book)
    if grade == book:
        what = "oil_grade_as_manual"
    elif hot >= THINNER or (hot == 0 and cold >= THINNER):
        what = "oil_grade_too_heavy"
    elif hot <= -THINNER:
        what = "oil_grade_too_thin"
    else:
        return
    spans = dict.fromkeys((*line.span([mark]), *where.span([Mark(True, place, place + 1)])))
    yield Fact("finding", {"what": what, "state": "present"}, tuple(spans))


def without_thicker(facts: list[Fact]) -> list[Fact]:
    """Oil thinner than before is no trial of thicker oil, whatever "changed the oil to" may say."""
    thin = [f for f in facts if f.name == "oil_grade_too_thin" and f.state == "present"]
    return [_as_change(f) if any(_is_of(f, t) for t in thin) else f for f in facts]


def _is_of(trial: Fact, thin: Fact) -> bool:
    """Whether a trial of thicker oil has words of the change to thinner oil."""
    if trial.table != "trial" or trial.name != "thicker_oil":
        return False
    return any(a < d and c < b for a, b in trial.spans for c, d in thin.spans)


def _as_change(trial: Fact) -> Fact:
    """The change of oil that was taken for a trial."""
    return Fact("earlier", {"what": "oil_change", "done": "renewed"}, trial.spans, trial.sure)


def _by_the_book(line: Line, place: int) -> bool:
    """Whether a grade is the one that manual or maker gives."""
    clause = line.clause(place)
    lead = line.words(clause.first, place)
    near = lead | line.words(place + 1, clause.last)  # "says 5w30 in the book"
    return bool(near & BOOKS) and bool(lead & BOOK_SAYS) and not line.sentence.asks


def _cold(grade: str) -> int:
    """The number of a grade that says how thick it is cold: 20 of 20W-50; a single grade's own."""
    return int(re.findall(r"\d+", grade)[0])


def _now(paragraph: Paragraph) -> tuple[str, Line, Mark[bool]] | None:
    """The one grade that is said to be in the engine."""
    found: dict[str, tuple[Line, Mark[bool]]] = {}
    for line in paragraph.lines:
        for mark in line.stated(line.lexicon.oil_in_it):
            place = next(k for k in range(mark.first, mark.last) if "grade" in line.tokens[k].kinds)
            if not line.denied(mark) and not line.usual(mark) and _is_in_it(line, place):
                found.setdefault(line.tokens[place].value, (line, mark))
    if len(found) != 1:
        return None
    ((grade, (line, mark)),) = found.items()
    return grade, line, mark


def _grades(line: Line) -> Iterator[int]:
    """The places of grades in a sentence."""
    return (k for k, token in enumerate(line.tokens) if "grade" in token.kinds)


def _before(line: Line, place: int) -> tuple[str, Line, Mark[bool]] | None:
    """The grade at a place, where it is what the engine had before."""
    mark = Mark(True, place, place + 1)
    lead = line.words(max(0, place - 3), place)
    instead = "instead" in line.words(0, place) and bool(lead & {"usual", "of"})
    if not (line.is_stated(mark) or instead):
        return None
    old = line.word(place - 1) in ("was", ":") and bool(lead & {"oil", "grade", "before"})
    old = old and bool(line.words(line.clause(place).first, place) & {"old", "previous", "last"})
    usual = line.usual(mark) or instead or old or line.word(place - 1) == "from"
    return (line.tokens[place].value, line, mark) if usual else None


def _is_in_it(line: Line, place: int) -> bool:
    """Whether no word before the grade, back to another grade or the start of its clause, denies it."""
    for k in range(place - 1, line.clause(place).first - 1, -1):
        if "grade" in line.tokens[k].kinds or line.word(k) in UNTIL:
            break  # "was fine until I put 0W-20 in"
        if line.word(k) in NOT_IN_IT and line.word(k - 1) != "whatever":
            return False  # not "whatever was on the shelf"
    return True
