"""A trusted gauge that shows the same: low where the complaint is low, high where it is high."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from diagnose.understanding.sentences.paragraph import Paragraph, places_of
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.values.beside_numbers import UNDER
from knowledge.reports.words import LOSSES, Shows

_ALSO_LOW, _ALSO_HIGH = "direct_gauge_low", "direct_gauge_high"  #: findings
_LOW = UNDER | frozenset(["low", "lower", "poor", "bad"])
_LOSSES = frozenset(s.value for s in LOSSES)


def agreed_on_high(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with "the test gauge says the same" as high where the complaint is high alone."""
    shows = {f.fields.get("shows") for f in facts}
    if Shows.HIGH.value not in shows or shows & _LOSSES:
        return list(facts)
    return [
        replace(f, fields={**f.fields, "what": _ALSO_HIGH})
        if f.name == _ALSO_LOW and f.is_present and not _says_low(f, paragraph)
        else f
        for f in facts
    ]


def _says_low(fact: Fact, paragraph: Paragraph) -> bool:
    return any(line.word(k) in _LOW for line in paragraph.lines for k in places_of(fact, line))
