"""Readings of a generating set that name no speed: its governor holds one, said once anywhere."""

from __future__ import annotations

from dataclasses import replace

from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.words.facts import Fact

#: speeds that sets are governed at, rev/min: 50 and 60 Hz with two to six poles
SET_SPEEDS = frozenset(["1000 rpm", "1200 rpm", "1500 rpm", "1800 rpm", "3000 rpm", "3600 rpm"])
_SETS = frozenset(["generator_diesel", "generator_petrol"])


def at_its_speed(facts: list[Fact], paragraph: Paragraph) -> list[Fact]:
    """Give each reading of a set without a speed the one speed that is said of the set.

    "1500 rpm set, 4 bar cold, 2.4 hot": both are at 1500 rpm. Nothing where another speed is said.
    """
    if not any(f.fields.get("layout") in _SETS for f in facts):
        return facts
    said = {
        t.value: (t.start, t.end)
        for line in paragraph.lines
        for t in line.tokens
        if "rpm" in t.kinds
    }
    if len(said) != 1 or not said.keys() <= SET_SPEEDS:
        return facts
    ((speed, span),) = said.items()
    return [
        replace(f, fields={**f.fields, "rpm": speed}, spans=tuple(sorted({*f.spans, span})))
        if f.table == "reading" and "rpm" not in f.fields
        else f
        for f in facts
    ]
