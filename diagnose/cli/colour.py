"""Colour on a terminal: what stops the work in red, cautions in yellow, what is done in green.

Only the look of lines depends on it; every line reads the same without.
"""

from __future__ import annotations

import os
import re
import sys

import typer

from knowledge.model import Severity

#: heads of lines, and how typer styles them; the first that fits counts
STYLES: tuple[tuple[str, dict[str, bool | str]], ...] = (
    (Severity.STOP.value.upper(), {"fg": "red", "bold": True}),
    ("DO NOT START", {"fg": "red", "bold": True}),
    ("FAILED", {"fg": "red"}),
    ("[!]", {"fg": "red"}),
    (Severity.CARE.value.upper(), {"fg": "yellow", "bold": True}),
    ("caution:", {"fg": "yellow"}),
    ("[~]", {"fg": "yellow"}),
    ("[x]", {"fg": "green"}),
    ("Closed", {"fg": "green"}),
    ("Next", {"bold": True}),
    ("Write", {"bold": True}),
)
_HEAD = re.compile("|".join(re.escape(head) for head, _ in STYLES))
_STYLE = dict(STYLES)


def wanted() -> bool:
    """Whether the answer goes to a terminal that shows colours and nobody has asked for none."""
    return (
        sys.stdout.isatty() and not os.environ.get("NO_COLOR") and os.environ.get("TERM") != "dumb"
    )


def painted(text: str) -> str:
    """Style each line by its head, and the lines that go on from it further in."""
    out: list[str] = []
    style: dict[str, bool | str] | None = None
    depth = 0
    for line in text.split("\n"):
        bare = line.lstrip()
        inset = len(line) - len(bare)
        if found := _HEAD.match(bare):
            style, depth = _STYLE[found[0]], inset
        elif not bare or inset <= depth:
            style = None
        out.append(typer.style(line, **style) if style and bare else line)  # type: ignore[arg-type]
    return "\n".join(out)
