"""Pressures written without a unit: a small figure is of bar, another of psi."""

from __future__ import annotations

from diagnose.understanding.bare_numbers import MOST_BAR
from diagnose.understanding.changes import pressures_at
from diagnose.understanding.paragraph import Line
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
