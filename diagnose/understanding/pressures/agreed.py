"""What a trusted gauge shows besides its figure: the same as the complaint, a needle that wavers."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from diagnose.understanding.sentences.paragraph import Line, Paragraph, places_of
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.values.beside_numbers import UNDER
from knowledge.model import Gauge
from knowledge.reports.words import LOSSES, Shows

_ALSO_LOW, _ALSO_HIGH = "direct_gauge_low", "direct_gauge_high"  #: findings
_DIRECT = Gauge.DIRECT.value
_PANEL = frozenset(["panel", "dash", "lamp", "light", "dashboard", "old", "other"])
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


def on_the_test_gauge(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with the needle that wavers in the sentence of a trusted gauge as that gauge's."""
    trusted = [f for f in facts if f.table == "reading" and f.fields.get("gauge") == _DIRECT]
    return [
        replace(f, fields={**f.fields, "gauge": _DIRECT})
        if f.fields.get("shows") == Shows.UNSTEADY.value
        and "gauge" not in f.fields
        and any(_goes_on(line, f, trusted) for line in paragraph.lines)
        else f
        for f in facts
    ]


def _goes_on(line: Line, fact: Fact, trusted: Sequence[Fact]) -> bool:
    """Whether a sentence goes on from a reading of the trusted gauge, and names no other."""
    here = [*places_of(fact, line)]
    before = [k for reading in trusted for k in places_of(reading, line)]
    said = {t.word for t in line.tokens}
    return bool(here and before) and max(before) < min(here) and not said & _PANEL


def _says_low(fact: Fact, paragraph: Paragraph) -> bool:
    return any(line.word(k) in _LOW for line in paragraph.lines for k in places_of(fact, line))
