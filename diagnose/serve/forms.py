"""Fields of a form as what one would give to ``record``."""

from __future__ import annotations

from diagnose.entry.details import Details
from diagnose.entry.recording import Input
from diagnose.entry.sheets import FilledBlank
from diagnose.serve.exchange import Asked

ANSWERS = ("yes", "no", "unknown", "probably", "probably not")
MOST_TEXT = 2_000


def details(asked: Asked, note: str = "") -> Details:
    """Who writes, and the note."""
    said = "; ".join(filter(None, (asked.text("note")[:MOST_TEXT], note)))
    return Details(by=asked.text("by")[:60], note=said)


def blanks(asked: Asked, names: dict[str, str]) -> list[FilledBlank]:
    """Findings answered and values measured; ``names``: what each id is called in a message."""
    found = [
        FilledBlank(id_, answer, "", names.get(id_, id_))
        for id_, answer in asked.named("f:").items()
        if answer in ANSWERS
    ]
    units, places = asked.named("u:"), asked.named("w:")
    for id_, typed in asked.named("m:").items():
        value = with_unit(typed, units.get(id_, ""))
        found.append(FilledBlank(id_, value, places.get(id_, ""), names.get(id_, id_)))
    return found


def with_unit(typed: str, unit: str) -> str:
    """A figure with its unit, unless the unit was typed with it; a comma is a decimal point.

    >>> with_unit("4,5", "thou"), with_unit("3/8 in", "mm")
    ('4.5 thou', '3/8 in')
    """
    figure = typed.replace(",", ".").strip()
    return figure if any(c.isalpha() or c in '%"' for c in figure) else f"{figure} {unit}".strip()


def as_input(asked: Asked, names: dict[str, str], note: str = "") -> Input | None:
    """What a form of findings and values says; None where nothing is filled in."""
    filled = blanks(asked, names)
    return Input(blanks=filled, details=details(asked, note)) if filled else None
