"""What fits one screen: blocks of lines, of which some can be left out."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from diagnose.output.lines import as_typed, columns, width, wrapped

if TYPE_CHECKING:  # a text of the book alone has no alarm, and needs no diagnosis
    from diagnose.output.documents.alarms import AlarmNotice

MOST = 30  #: lines of one screen


@dataclass(frozen=True, slots=True)
class Block:
    """Lines that belong together; the highest ``spare`` is left out first, 0 never."""

    lines: list[str]
    spare: int = 0
    space: bool = True  #: whether an empty line stands before it


def on_screen(blocks: Sequence[Block], most: int = MOST, *, tight: bool = False) -> str:
    """Leave out what can be spared, first what can be spared most, until the rest fits ``most``.

    ``tight``: then leave out empty lines too, from the top, if the rest fits without them.

    >>> four = [Block(["a"]), Block(["b"]), Block(["c"]), Block(["d"])]
    >>> on_screen(four, 6, tight=True), on_screen(four, 3, tight=True)
    ('a\\nb\\n\\nc\\n\\nd', 'a\\n\\nb\\n\\nc\\n\\nd')
    """
    kept = [b for b in blocks if b.lines]
    for block in sorted(kept, key=lambda b: -b.spare):
        if len(_joined(kept)) <= most or not block.spare:
            break
        kept.remove(block)
    spaces = len(_joined(kept)) - most if tight else 0
    if 0 < spaces <= sum(b.space for b in kept[1:]):
        for i, block in enumerate(kept[1:], 1):
            kept[i] = replace(block, space=block.space and spaces <= 0)
            spaces -= block.space
    return "\n".join(_joined(kept))


def _joined(blocks: Sequence[Block]) -> list[str]:
    lines: list[str] = []
    for block in blocks:
        lines += [""] if block.space and lines else []
        lines += block.lines
    return lines


def gravest_lines(alarms: Sequence[AlarmNotice], more: str = "--full") -> list[str]:
    """The first alarm, the gravest, in full, the others as a number; ``more``: what shows them."""
    if not alarms:
        return []
    first, rest = alarms[0], len(alarms) - 1
    lines = wrapped(f"{first.severity.value.upper()}: {first.says}", 0, 2)
    return [*lines, f"  and {rest} more: {more}"] if rest else lines


def command_lines(label: str, command: str, indent: int = 0) -> list[str]:
    """A command after its label, in a line of its own where both do not fit, never broken."""
    head = f"{' ' * indent}{label}: "
    if columns(head) + columns(command) <= width():
        return [head + command]
    return [head.rstrip(), f"{' ' * (indent + 2)}{command}"]


def report_lines(path: str) -> list[str]:
    """What to do once a job is closed; ``path``: of the case file, as typed."""
    command = f"diagnose report {as_typed(path)} --out report.html"
    return command_lines("The owner's page", command)


def cut(text: str, room: int) -> str:
    """So many columns of the text, with a mark where it is longer.

    >>> cut("relief valve", 8)
    'relief …'
    """
    if columns(text) <= room:
        return text
    while columns(text) > room - 1:
        text = text[:-1]
    return f"{text}…"
