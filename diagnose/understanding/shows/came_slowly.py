"""Pressure that is missing at the start and comes: "0 psi at start, then it gradually rises"."""

from __future__ import annotations

import re
from collections.abc import Sequence

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.words.facts import Fact, Value
from knowledge.reports.words import Circumstance, Shows, Speed

_START = Circumstance.START.value
_NOT_SO = UNTRUE | Stance.DENIED | Stance.USUAL
_FASTER = frozenset([Speed.OFF_IDLE, Speed.CRUISE, Speed.HALF, Speed.FULL])
_REVS = frozenset(["rev", "revs", "revved", "revving", "rpm", "throttle", "driving", "drive"])
_NEAR = 60  #: characters from what was missing to where it comes (judgement)
_NONE = re.compile(r"0+(?:\.0+)?(?: [a-zA-Z]+)?")


def came_slowly(facts: Sequence[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts, with no pressure at the start as slow to build where it then comes."""
    found = list(facts)
    for line in paragraph.lines:
        for mark in line.find(line.lexicon.comes_slowly):
            if line.stances.at(mark) & _NOT_SO:
                continue
            at = line.tokens[mark.first].start
            missing = [f for f in found if _is_none_at_start(f) and 0 < at - f.hull[1] <= _NEAR]
            if missing and not _runs(line):
                found = [f for f in found if f not in missing and not _is_slow(f)]
                spans = {*(s for f in missing for s in f.spans), *line.span([mark])}
                during = missing[0].fields["during"]
                fields: dict[str, Value] = {"shows": Shows.SLOW.value, "during": during}
                found.append(Fact("behaviour", fields, tuple(sorted(spans))))
    return found


def _is_none_at_start(fact: Fact) -> bool:
    during = fact.fields.get("during", [])
    if not isinstance(during, list) or _START not in during:
        return False
    return fact.fields.get("shows") == Shows.NONE.value or (
        fact.table == "reading" and _NONE.fullmatch(fact.value) is not None
    )


def _is_slow(fact: Fact) -> bool:
    return fact.fields.get("shows") == Shows.SLOW.value


def _runs(line: Line) -> bool:
    """Whether it comes only with the revs, which is no matter of time."""
    fast = any(m.value in _FASTER for m in line.find(line.lexicon.speed))
    return fast or bool(_REVS & line.words(0, len(line.tokens)))
