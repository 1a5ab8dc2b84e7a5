"""What a pressure did between two figures: "went from 12 to 30", "25 now instead of 9"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Token
from knowledge.lexicon.values.beside_numbers import COUNTS, WENT
from knowledge.lexicon.work.beside_results import (
    BECAME,
    COUNTED,
    FROM_TO,
    INSTEAD_OF,
    IS_NOW,
    MUCH,
    OVER,
    WAS,
)
from knowledge.reports.words import Result
from knowledge.units import PRESSURE, PSI, unit_named

_FAR = 6  #: words between the figures
_AGAIN_AS_MUCH, _ENOUGH = 1.8, 20.0  #: ratio and psi from which the trouble is gone (judgement)
_WELL_BELOW = 0.8  #: share of too much pressure below which it is no longer too much
_SAME = 0.05  #: share of the first within which it is the same


def changes(line: Line) -> Iterator[Mark[Result]]:
    """What each pair of pressures says a trial did, over both and the words between."""
    places = [k for k, t in enumerate(line.tokens) if pressures_at(line, k)]
    for k in places:
        values = pressures_at(line, k)
        if len(values) > 1 and line.word(k - 1) in WENT | {"from", "was"}:
            yield Mark(result_between(values[0], values[-1]), k - 1, k + 1)
    for a, b in pairwise(places):
        then, now = pressures_at(line, a)[-1], pressures_at(line, b)[0]
        words = [line.word(k) for k in range(a + 1, b)]
        if len(words) > _FAR or len(pressures_at(line, a)) > 1:
            continue
        text = " ".join(words)
        if re.fullmatch(FROM_TO, text) and line.word(a - 1) == "from":
            came = _too_much(line, then, now) or result_between(then, now)
            yield Mark(came, a - 1, b + 1)  # "went from 45 to 30", "from 12 hot to 4"
            continue
        if any(re.search(rf"\b{said}$", text) for said in INSTEAD_OF):
            came = _too_much(line, now, then) or result_between(now, then)
            yield Mark(came, a, a + 1)  # the other is not so now
        elif _is_now(line, a, text) or (
            any(re.search(rf"\b{said}$", text) for said in BECAME) and "," not in words[:1]
        ):
            yield Mark(result_between(then, now), a, b + 1)


def _too_much(line: Line, then: float, now: float) -> Result | None:
    """What came of work against too much pressure: "60 cold instead of 110"; None of any other."""
    if not {t.word for t in line.tokens} & OVER or not then >= MUCH > now:
        return None
    return Result.CURED if now < MUCH * _WELL_BELOW else Result.HELPED


def _is_now(line: Line, at: int, between: str) -> bool:
    """Whether the first pressure was, and the second is: "was 50 hot, now 25"."""
    was = line.word(at - 1) in WAS or line.usual(Mark(True, at, at + 1))
    return was and re.search(rf"\b{IS_NOW}$", between) is not None


def pressures_at(line: Line, at: int) -> list[float]:
    """The pressure or pressures of a token, psi; none where it is something else."""
    token = line.tokens[at]
    if not token.kinds & {"pressure", "number", "range"} or "share" in token.kinds:
        return []
    if line.word(at + 1) in COUNTS | COUNTED:
        return []
    return [v * _unit(token) for v in map(float, re.findall(r"\d+(?:\.\d+)?", token.value))]


def _unit(token: Token) -> float:
    """How many psi the unit is that stands last; a bare figure is in psi."""
    unit = unit_named(token.value.rpartition(" ")[2], PRESSURE)
    return unit.factor / PSI if unit else 1.0


def result_between(then: float, now: float) -> Result:
    """What a trial did that brought a pressure from one figure to another, psi.

    >>> result_between(12, 30), result_between(10, 15), result_between(20, 8)
    (<Result.CURED: 'cured'>, <Result.HELPED: 'helped'>, <Result.WORSE: 'worse'>)
    """
    if abs(now - then) <= _SAME * then:
        return Result.NO_DIFFERENCE
    if now < then:
        return Result.WORSE
    return Result.CURED if now >= max(_AGAIN_AS_MUCH * then, _ENOUGH) else Result.HELPED
