"""Pressures that the pump gave on a drill, or with its control unplugged: none of the running engine."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, Span

_GOOD, _LITTLE, _NONE = "drill_gives_good", "drill_gives_little", "drill_gives_none"
_LEAST, _PLENTY = 25.0, 45.0  #: psi: less is little, more is not (judgement)
#: said of an engine that stands, or of one changed for a trial
_TRIALS = frozenset([_GOOD, _LITTLE, _NONE, "pump_rises_unplugged"])
#: what shows in the words that say what the drill gave
_SHOWN = frozenset(["low", "none", "lost", "high", "normal", "unsteady"])


def without_trial_pressures(facts: Iterable[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts without readings and behaviour in the clauses that say what a trial of the pump gave.

    "Drill test only 12 psi" is no reading of the engine, nor is what the gauge jumps to with the
    pump's control unplugged.
    """
    listed = list(facts)
    tried = [s for f in listed if _is_trial(f) for s in _clauses(f, paragraph)]
    return [f for f in listed if not (_is_pressure(f) and any(_starts_in(f, s) for s in tried))]


def _is_trial(fact: Fact) -> bool:
    return fact.name in _TRIALS and fact.is_present


def _is_pressure(fact: Fact) -> bool:
    return fact.table == "reading" or (
        fact.table == "behaviour" and fact.fields.get("shows") in _SHOWN
    )


def _starts_in(fact: Fact, span: Span) -> bool:
    return span[0] <= fact.spans[0][0] < span[1]


def _clauses(fact: Fact, paragraph: Paragraph) -> Iterator[Span]:
    """From the first clause that a fact has words in to the end of its last."""
    first, last = fact.spans[0][0], fact.spans[-1][1]
    for line in paragraph.lines:
        within = [k for k, t in enumerate(line.tokens) if first <= t.start < last]
        if within:
            start, end = line.clause(within[0]).first, line.clause(within[-1]).last
            yield line.tokens[start].start, line.tokens[end - 1].end


def by_drill(line: Line, finding: str, places: Iterable[int]) -> str:
    """What a drill gave by its figure, where one stands among its words; empty: neither."""
    made = [v for k in places for v in pressures_at(line, k)]
    if finding == _GOOD and made and max(made) < _LEAST:
        return _LITTLE if max(made) > 0 else _NONE  # "with a drill and got 15 psi"
    if finding == _LITTLE and made and min(made) >= _PLENTY:
        return ""  # "just rebuilt it and had 75 psi with the drill"
    return finding
