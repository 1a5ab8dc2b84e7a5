"""Pressures that one followed another: "60 then 50 then 40 by the third day"."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.words.facts import Fact, Value, reader
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.beside_pressure import LONG_KINDS, LONG_TIMES
from knowledge.lexicon.values.beside_numbers import (
    COUNTS,
    NAMES,
    NOT_IN_A_ROW,
    ROW_OF_ONE_RUN,
    ROW_OF_RUNS,
)
from knowledge.reports.words import Course, Onset, Shows

_FEWEST, _APART = 3, 5  #: figures of a row, most words between two of them
_MOST = 150.0  #: a larger number is no pressure
_FIGURES = frozenset(["number", "pressure"])


@lru_cache(maxsize=256)
def row_of(line: Line) -> tuple[int, ...]:
    """The places of figures that fall one after another; empty where there are fewer than three."""
    if any(t.word in NOT_IN_A_ROW for t in line.tokens):
        return ()
    row: list[int] = []
    for k, token in enumerate(line.tokens):
        if not _may_be_one(line, k):
            if token.is_figure and not token.kinds & (LONG_KINDS | {"days", "time"}):
                if len(row) >= _FEWEST:
                    break
                row = []
            continue
        if row and not _follows(line, row[-1], k):
            if len(row) >= _FEWEST:
                break
            row = []
        row.append(k)
    if len(row) < _FEWEST or _number(line, row[0]) == _number(line, row[-1]):
        return ()
    return tuple(row)


def _may_be_one(line: Line, at: int) -> bool:
    """Whether a token is a number that may be a pressure."""
    token = line.tokens[at]
    if not token.kinds & _FIGURES or "share" in token.kinds or " to " in token.value:
        return False
    counted = line.word(at + 1) in COUNTS or line.word(at - 1) in NAMES - {"by", "year"}
    return not counted and 0.0 < _number(line, at) <= _MOST


def _number(line: Line, at: int) -> float:
    first = line.tokens[at].value.split(" ")[0]
    try:
        return float(first)
    except ValueError:
        return 0.0


def _follows(line: Line, one: int, other: int) -> bool:
    """Whether a figure is no more than the one before it, and nothing says at what else it was read."""
    between = range(one + 1, other)
    words = [k for k in between if not line.tokens[k].is_mark]
    if len(words) > _APART or not between or _number(line, other) > _number(line, one):
        return False
    whole = Mark(True, one + 1, other)
    said = (*line.circumstances, *line.find(line.lexicon.speed), *line.find(line.lexicon.panel))
    return not any(m.overlaps(whole) for m in said)


def goes_by(line: Line, at: int) -> bool:
    """Whether a figure is one of a row and not its last: it was shown on the way."""
    row = row_of(line)
    return at in row[:-1] and not (at == row[0] and over_days(line))


def was_first(line: Line, at: int) -> bool:
    """Whether a figure is the first of a row over days or longer, which then is the usual one."""
    return at in row_of(line)[:1] and over_days(line)


def over_days(line: Line) -> bool:
    """Whether a sentence speaks of several runs, or of days and longer, and of no single run."""
    if any(t.word in ROW_OF_ONE_RUN or t.kinds & {"minutes", "hours"} for t in line.tokens):
        return False
    return _over_months(line) or any(
        t.word in ROW_OF_RUNS or "days" in t.kinds for t in line.tokens
    )


def _over_months(line: Line) -> bool:
    return any(t.word in LONG_TIMES or t.kinds & LONG_KINDS for t in line.tokens)


@reader(
    {
        "oil pressure was 60 then 50 then 40 by the third day": ["behaviour low worsening"],
        "oil pressure went 55, 48, 40, 32 over the season": ["behaviour low gradual"],
        "gauge read 40 then 30 then 20 in an hour of running": ["behaviour falling"],
        "gauge went 50, 40, 30": ["behaviour falling"],
        "compression 150, 140, 130": [],
        "oil pressure 55 cold, 40 warm, 20 hot": [],
        "oil pressure 20, 30, 40 as the revs rise": [],
        "would the gauge go 50, 40, 30?": [],
        "my brother's gauge went 50, 40, 30": [],
    }
)
def fell_in_steps(paragraph: Paragraph) -> Iterator[Fact]:
    """How a row of pressures came down: in one run, from run to run, or over months."""
    for line in paragraph.lines:
        row = row_of(line)
        if not row or not paragraph.speaks_of_pressure:
            continue
        if any(line.stances.of[k] & (UNTRUE | Stance.DENIED | Stance.USUAL) for k in row):
            continue
        fields: dict[str, Value] = {"shows": Shows.FALLING.value}
        if over_days(line) and _over_months(line):
            fields = {"shows": Shows.LOW.value, "onset": Onset.GRADUAL.value}
        elif over_days(line):
            fields = {"shows": Shows.LOW.value, "course": [Course.WORSENING.value]}
        yield Fact("behaviour", fields, line.span([Mark(True, row[0], row[-1] + 1)]))
