"""Work that brought the pressure back began no trouble: "changed the oil, now 34 psi"."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.understanding.words.facts import Fact, Span
from knowledge.reports.words import Result

_HELPED = frozenset({Result.HELPED.value, Result.CURED.value})


def without_what_helped(facts: Sequence[Fact]) -> list[Fact]:
    """The facts without earlier work of no stated age whose words are those of a trial that helped."""
    helped = [
        s
        for f in facts
        if f.table == "trial" and f.fields.get("result") in _HELPED
        for s in f.spans
    ]
    return [f for f in facts if not (_is_work_at_once(f) and _shares(f.spans, helped))]


def _is_work_at_once(fact: Fact) -> bool:
    return fact.table == "earlier" and fact.fields.get("before") in (None, "straight before")


def _shares(spans: Sequence[Span], helped: Sequence[Span]) -> bool:
    return any(a < d and c < b for a, b in spans for c, d in helped)
