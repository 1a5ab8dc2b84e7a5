"""Read the age of an engine from a mileage or hours that stand alone: "nearly new, 120,000 miles"."""

from __future__ import annotations

import re

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Token
from knowledge.lexicon.sights.exceptions import OF_SERVICE
from knowledge.lexicon.words.spelling import AGE_WORDS

_AN_AGE = (
    10_000.0  #: miles or km that are the age of an engine where nothing says of what (judgement)
)
AGE = "high_mileage"


def bare_ages(line: Line) -> tuple[list[Mark[str]], list[Mark[str]]]:
    """A mileage or hours that stand alone in a sentence, or first in a list: of an old or a young engine."""
    tokens = line.tokens
    figures = [i for i, t in enumerate(tokens) if t.is_figure]
    words = {t.word for t in tokens if not t.is_mark and not t.is_figure}
    if len(figures) != 1 or not words <= AGE_WORDS:
        figures = _listed_age(line)
    if not figures:
        return [], []
    kinds = tokens[figures[0]].kinds
    mark = Mark(AGE, figures[0], figures[0] + 1)
    old = bool(kinds & {"highmiles"} or ("hours" in kinds and "manyhours" in kinds))
    young = bool(kinds & {"lowmiles"} or ("hours" in kinds and kinds & {"fewhours"}))
    return [mark] * old, [mark] * (young and not old)


def _listed_age(line: Line) -> list[int]:
    """Where a long distance is a clause of a list: "32,000 miles, serviced on time"."""
    if {t.word for t in line.tokens} & OF_SERVICE:
        return []  # "last service a year ago, about 12k"
    for clause in line.sentence.clauses:
        places = range(clause.first, clause.last)
        figures = [i for i in places if line.tokens[i].is_figure]
        words = {line.word(i) for i in places if not line.tokens[i].is_mark} - {
            line.word(i) for i in figures
        }
        whole = clause.first == 0 and clause.last == len(line.tokens)
        long = len(figures) == 1 and _says_age(line.tokens[figures[0]])
        if long and words <= AGE_WORDS and not whole:
            return figures
    return []


def _says_age(token: Token) -> bool:
    """Whether a distance is so long that it is an engine's age, not what it ran since something."""
    if "distance" not in token.kinds:
        return False
    number = float(re.sub(r"[^\d.]", "", token.word).rstrip(".") or 0)
    return number * (1000 if re.search(r"\d\s*k\b|thousand", token.word) else 1) >= _AN_AGE
