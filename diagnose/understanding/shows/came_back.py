"""Pressure that came back in words of their own: "No pressure. I stopped, and it came back"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.words.facts import Fact
from knowledge.reports.words import LOSSES, Course

_LOSSES = frozenset(s.value for s in LOSSES)
_WORK = frozenset(["trial", "earlier", "work"])


def came_back(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, the last loss before such words as one that recovered by itself.

    Work that was done between the two brought it back, not the engine itself.
    """
    found = list(facts)
    for line in paragraph.lines:
        for mark in line.find(line.lexicon.came_back):
            if line.stances.at(mark) & (UNTRUE | Stance.DENIED | Stance.USUAL):
                continue
            start = line.tokens[mark.first].start
            before = [(f.spans[0][0], k) for k, f in enumerate(found) if _is_loss(f)]
            at, k = max((b for b in before if b[0] < start), default=(0, -1))
            if k >= 0 and not any(
                f.table in _WORK and at < f.spans[-1][1] <= _end(line) for f in found
            ):
                found[k] = _recovered(found[k], line.span([mark])[0])
    return found


def _is_loss(fact: Fact) -> bool:
    return fact.fields.get("shows") in _LOSSES


def _end(line: Line) -> int:
    return line.tokens[-1].end


def _recovered(fact: Fact, span: tuple[int, int]) -> Fact:
    course = fact.fields.get("course", [])
    listed = list(course) if isinstance(course, list) else []
    if Course.RECOVERED.value in listed:
        return fact
    fields = {**fact.fields, "course": [*listed, Course.RECOVERED.value]}
    return replace(fact, fields=fields, spans=(*fact.spans, span))
