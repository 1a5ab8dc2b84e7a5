"""Pressures that the pump gave on a drill, or with its control unplugged: none of the running engine."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from diagnose.understanding.facts import Fact, Span
from diagnose.understanding.paragraph import Paragraph

#: said of an engine that stands, or of one changed for a trial
_TRIALS = frozenset(
    ["drill_gives_good", "drill_gives_little", "drill_gives_none", "pump_rises_unplugged"]
)
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
