"""Noises and lamps that are denied: "no knock" says that there is none."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.facts import Fact
from diagnose.understanding.paragraph import Line, new_now
from diagnose.understanding.phrases import Mark
from knowledge.lexicon.pressure_words import DENY, FINDING_OF
from knowledge.reports.words import NOISES


def denied(line: Line) -> Iterator[Fact]:
    """Noises and lamps that are denied."""
    for mark in line.stated(line.lexicon.shows):
        if not line.denied(mark) or mark.value not in FINDING_OF or line.guessed(mark):
            continue
        if any(line.tokens[k].word in DENY for k in range(mark.first, mark.last)):
            continue
        if any(s.overlaps(mark) for s in line.find(line.lexicon.sights)):
            continue
        clause = line.clause(mark.first)
        if new_now(line, mark.first, mark.last):
            continue  # "never had a knock before"
        if mark.value not in NOISES and any(
            clause.first <= c.first < clause.last for c in line.circumstances
        ):
            continue  # not then; of other times nothing is said
        start = mark.first
        while start > 0 and line.word(start - 1) and not line.tokens[start].is_mark:
            start -= 1
            if line.word(start) in DENY or line.word(start) in ("without", "nor", "neither"):
                break
        spans = line.span([Mark(True, start, mark.last)])
        yield Fact(
            "finding",
            {"what": FINDING_OF[mark.value], "state": "absent"},
            spans,
            line.stances.surety(mark),
        )
