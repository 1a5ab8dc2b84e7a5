"""Plain text for a terminal 80 columns wide; imported by the other reports."""

from __future__ import annotations

import shutil
import textwrap
from collections.abc import Iterable

WIDEST = 80


def width() -> int:
    """Columns to use: never more than eighty."""
    return max(40, min(WIDEST, shutil.get_terminal_size((WIDEST, 24)).columns))


def wrapped(text: str, indent: int = 0, hang: int | None = None) -> list[str]:
    """The text in lines, later ones hanging under ``hang`` blanks."""
    text = " ".join(clean(text).split())
    return textwrap.wrap(
        text,
        width(),
        initial_indent=" " * indent,
        subsequent_indent=" " * (indent if hang is None else hang),
        break_on_hyphens=False,
    ) or [""]


def labelled(label: str, text: str, indent: int = 2, column: int = 14) -> list[str]:
    """A label and a text beside it."""
    lines = wrapped(text, column)
    lines[0] = f"{' ' * indent}{label}".ljust(column - 1) + " " + lines[0].lstrip()
    return lines


def clean(text: str) -> str:
    """What a person typed, without control characters."""
    return "".join(c if c.isprintable() or c == "\n" else " " for c in text)


def percent(p: float) -> str:
    """A probability in words and figures, never 0 or 100 %."""
    if p < 0.005:
        return "< 1 %"
    if p > 0.995:
        return "> 99 %"
    return f"{100 * p:.0f} %"


def together(blocks: Iterable[list[str]]) -> str:
    """Blocks of lines with an empty line between them."""
    return "\n\n".join("\n".join(b) for b in blocks if b)
