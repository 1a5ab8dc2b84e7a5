"""Pressures that are called too little: "it only shows 10 psi at idle" is a complaint of low."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from diagnose.understanding.sentences.paragraph import Line, Paragraph, places_of
from diagnose.understanding.words.facts import Fact, Span, Value
from knowledge.lexicon.values.beside_numbers import (
    ABOUT,
    FALLS,
    IS,
    MOVES,
    OVER,
    RISES,
    SAYS,
    SCANT,
    TOWARDS,
    UNDER,
)
from knowledge.reports.words import LOSSES, Circumstance, Course, Heat, Shows, Speed

_FARTHEST = 5  #: words from "only" to the figure: "will only come up to about 10"
_FIGURES = frozenset(["pressure", "number", "range"])
_BETWEEN = (ABOUT | IS | MOVES | SAYS | TOWARDS | frozenset(["a", "the", "build"])) - FALLS
_DOWN_TO = ["down", "to"]
_IS_NOW = frozenset(["its", "is", "now", "was"])  #: before "down to 12"
_LOSSES = frozenset(s.value for s in LOSSES)
_AT = {
    ("rpm", Speed.IDLE.value): Circumstance.IDLE,
    ("rpm", Speed.CRUISE.value): Circumstance.SPEED,
    ("oil", Heat.HOT.value): Circumstance.HOT,
    ("oil", Heat.COLD.value): Circumstance.COLD,
}


def some_at_least(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with "it does not come up" as low where figures say that there is some."""
    some = any(
        f.table == "reading" and _is_some(str(f.fields["pressure"])) and "gauge" not in f.fields
        for f in facts
    )
    return [
        replace(f, fields={**f.fields, "shows": Shows.LOW.value})
        if some and f.fields.get("shows") == Shows.NONE.value and _comes_up(f, paragraph)
        else f
        for f in facts
    ]


def _is_some(pressure: str) -> bool:
    return pressure.split(" ")[0] != "0"


def _comes_up(fact: Fact, paragraph: Paragraph) -> bool:
    """Whether the words of a fact are of pressure that has to rise."""
    return "during" not in fact.fields and any(
        line.word(k) in RISES for line in paragraph.lines for k in places_of(fact, line)
    )


def fine_at_times(facts: Sequence[Fact]) -> list[Fact]:
    """The facts, with pressure that is fine only at times as low at others."""
    lost = any(f.fields.get("shows") in _LOSSES for f in facts)
    found = []
    for fact in facts:
        course = fact.fields.get("course")
        at_times = isinstance(course, list) and Course.COMES_AND_GOES.value in course
        if not (at_times and fact.fields.get("shows") == Shows.NORMAL.value):
            found.append(fact)
        elif not lost:
            fields = {k: v for k, v in fact.fields.items() if k != "during"}
            found.append(replace(fact, fields={**fields, "shows": Shows.LOW.value}))
    return found


def called_little(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, and low pressure where a reading is called little and nothing else says that."""
    return [*facts, *_called_little(facts, paragraph)]


def _called_little(facts: Sequence[Fact], paragraph: Paragraph) -> Iterator[Fact]:
    """Low pressure at the first reading that is called little, if none is missing elsewhere."""
    if any(f.fields.get("shows") in _LOSSES for f in facts):
        return
    for fact in facts:
        words = (w for line in paragraph.lines if (w := _scant(line, fact)))
        if fact.table != "reading" or (span := next(words, None)) is None:
            continue
        fields: dict[str, Value] = {"shows": Shows.LOW.value}
        during = [c.value for (key, word), c in _AT.items() if fact.fields.get(key) == word]
        if during:
            fields["during"] = during
        yield Fact("behaviour", fields, tuple(sorted({span, *fact.spans})), fact.sure)
        return


def _scant(line: Line, fact: Fact) -> Span | None:
    """From "only", "barely" or the like to the figure of a reading; None where none is there."""
    figures = (k for k in places_of(fact, line) if line.tokens[k].kinds & _FIGURES)
    at = next(figures, None)
    if at is None or line.word(at - 1) in OVER | UNDER:
        return None
    if [line.word(k) for k in (at - 2, at - 1)] == _DOWN_TO and line.word(at - 3) in _IS_NOW:
        return line.tokens[at - 3].start, line.tokens[at].end
    for k in range(at - 1, max(-1, at - 1 - _FARTHEST), -1):
        if line.word(k) in SCANT:
            return line.tokens[k].start, line.tokens[at].end
        if line.word(k) not in _BETWEEN:
            break
    return None
