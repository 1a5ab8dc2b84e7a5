"""Pressure that is said to be next to nothing: a loss, and a figure close to zero."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from diagnose.understanding.sentences.paragraph import Paragraph, places_of
from diagnose.understanding.words.facts import Fact, Span, Value
from knowledge.reports.words import LOSSES, Circumstance, Heat, Shows, Speed

HARDLY_ANY = "1 to 5 psi"  #: what "next to nothing" is taken for (judgement)
_LOSSES = frozenset(s.value for s in LOSSES)
_AT_IDLE = (None, Speed.IDLE.value)  #: speeds of a reading that may be the figure of these words
_HEAT = {
    Circumstance.HOT.value: Heat.HOT.value,
    Circumstance.COLD.value: Heat.COLD.value,
}
_SPEEDS = (Circumstance.IDLE.value, Circumstance.SPEED.value)


def with_near_zero(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with pressure at idle that is said to be next to nothing as low, and as a reading.

    At idle only: elsewhere the words say how bad it is, and the stop of a loss is the stricter one.
    """
    if any(f.table == "reading" and f.fields.get("rpm") in _AT_IDLE for f in facts):
        return list(facts)
    for k, fact in enumerate(facts):
        during = fact.fields.get("during")
        if fact.fields.get("shows") not in _LOSSES or not isinstance(during, list):
            continue
        if Circumstance.IDLE.value in during and (span := _said(fact, paragraph)):
            low = replace(fact, fields={**fact.fields, "shows": Shows.LOW.value})
            fields: dict[str, Value] = {"pressure": HARDLY_ANY, "rpm": Speed.IDLE.value}
            if heat := next((_HEAT[d] for d in during if d in _HEAT), ""):
                fields["oil"] = heat
            if rest := [d for d in during if d not in _HEAT and d not in _SPEEDS]:
                fields["during"] = rest
            spans = tuple(sorted({span, *fact.spans}))
            return [*facts[:k], low, *facts[k + 1 :], Fact("reading", fields, spans, fact.sure)]
    return list(facts)


def _said(fact: Fact, paragraph: Paragraph) -> Span | None:
    """Where the clause of a fact says "next to nothing"; None where it does not."""
    for line in paragraph.lines:
        clauses = {line.clause(k) for k in places_of(fact, line)}
        for mark in line.stated(line.lexicon.near_zero):
            if line.clause(mark.first) in clauses:
                return line.tokens[mark.first].start, line.tokens[mark.last - 1].end
    return None
