"""Results and trials that are a sentence of their own: "New pump. 40 psi.", "Then the filter. Same."."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.sentences.stance import UNTRUE
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import Job
from diagnose.understanding.work.recaps import in_turn, rows, trial_of
from knowledge.lexicon.work.beside_results import (
    ALL_OFF,
    ANSWERS,
    BESIDE_A_FIGURE,
    ENOUGH,
    OF_A_LAMP,
    PLENTY,
    SO_LONG,
)
from knowledge.reports.words import Done, Result

_LONGEST = 6  #: words of a sentence that only says how long it lasted


def lone_result(line: Line) -> Mark[Result] | None:
    """What a sentence says that is no more than a pressure, or "off" of a lamp."""
    words = [k for k in range(len(line.tokens)) if not line.tokens[k].is_mark]
    if not words or any(line.stances.of[k] & UNTRUE for k in words):
        return None
    whole = Mark(Result.CURED, words[0], words[-1] + 1)
    if (said := ANSWERS.get(" ".join(line.word(k) for k in words))) is not None:
        return Mark(said, whole.first, whole.last)
    if all(line.word(k) in ALL_OFF | OF_A_LAMP for k in words):
        return whole if any(line.word(k) in ALL_OFF for k in words) else None
    figures = [k for k in words if line.tokens[k].is_figure]
    rest = {line.word(k) for k in words if k not in figures}
    values = [v for k in figures for v in pressures_at(line, k)]
    if len(figures) != 1 or len(values) != 1 or not rest <= BESIDE_A_FIGURE:
        return None
    cold = "cold" in {t.word for t in line.tokens} and values[0] >= ENOUGH  # which proves nothing
    if "pressure" not in line.tokens[figures[0]].kinds or ENOUGH <= values[0] < PLENTY or cold:
        return None
    value = Result.CURED if values[0] >= PLENTY else Result.NO_DIFFERENCE
    return Mark(value, whole.first, whole.last)


def only_for_a_while(line: Line) -> bool:
    """Whether a sentence only says for how long: "It was fine. For a week."."""
    words = [t.word for t in line.tokens if not t.is_mark]
    long = any("time" in t.kinds or t.word in SO_LONG for t in line.tokens)
    return long and words[:1] == ["for"] and len(words) <= _LONGEST


def named_in_turn(line: Line, own: Sequence[Job]) -> Iterator[Job]:
    """Trials of a sentence that only names their parts in turn: "Then the filter."."""
    for row in rows(line, own):
        behind = range(row[-1].last, len(line.tokens))
        if not in_turn(line, row[0].first) or any(not line.tokens[k].is_mark for k in behind):
            continue
        for part in row:
            trial = trial_of(part.value, ())
            if trial and not line.stances.at(part) & UNTRUE:
                yield Job(line, (part,), Done.RENEWED, trial, None)
