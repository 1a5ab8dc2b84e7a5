"""Pressures written without a unit: a small figure is of bar, another of psi."""

from __future__ import annotations

from diagnose.understanding.pressures.bare_numbers import MOST_BAR
from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.pressures.pressures import value_at
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from knowledge.units import PRESSURE, PSI, parse


def psi_of(line: Line, at: int) -> list[float]:
    """The pressures of a figure [psi]; none where it has another unit."""
    figures = pressures_at(line, at)
    if "pressure" in line.tokens[at].kinds:
        return figures
    return [parse(f"{f} bar", PRESSURE) / PSI if f <= MOST_BAR else f for f in figures]


def with_unit(line: Line, at: int) -> str:
    """A figure with its unit, as a case file writes it."""
    token = line.tokens[at]
    if "pressure" in token.kinds:
        return token.value
    return f"{token.value} {'bar' if float(token.value) <= MOST_BAR else 'psi'}"


def unit_of(paragraph: Paragraph) -> str:
    """The unit of the pressures that have one; psi where none has."""
    for line in paragraph.lines:
        for token in line.tokens:
            if "pressure" in token.kinds and "share" not in token.kinds:
                return token.value.rpartition(" ")[2]
    return "bar" if _all_small(paragraph) else "psi"


def _all_small(paragraph: Paragraph) -> bool:
    """Whether the figures that may be pressures are those of bar: "1.2 hot, 3.5 cold"."""
    spoken = paragraph.speaks_of_pressure
    figures = [
        token.word
        for line in paragraph.lines
        for k, token in enumerate(line.tokens)
        if token.kinds == {"number"} and value_at(line, k, "psi", spoken) is not None
    ]
    return any("." in f for f in figures) and all(float(f) <= MOST_BAR for f in figures)
