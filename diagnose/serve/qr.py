"""An address as a QR code in the characters of a terminal; the only module that imports segno."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

QUIET = 2  #: light modules around the code
_BLACK_ON_WHITE, _PLAIN = "\x1b[30;47;107m", "\x1b[0m"
_BLACK, _WHITE = "\x1b[40m", "\x1b[47;107m"
#: whether the upper and the lower half of a character are inked
_HALVES = {(0, 0): " ", (0, 1): "▄", (1, 0): "▀", (1, 1): "█"}


@dataclass(frozen=True, slots=True)
class Terminal:
    """What a terminal can show."""

    columns: int
    blocks: bool = True  #: half blocks, as Unicode has them
    colours: bool = True


def drawn(text: str, terminal: Terminal) -> tuple[str, ...]:
    """The lines of a QR code; none where the terminal is too narrow or can show neither of both.

    With colours it is black on white whatever the colours of the terminal. Without them the light
    modules are inked, which is right on a dark screen; most telephones read it on a light one too.
    """
    if not (terminal.blocks or terminal.colours):
        return ()
    modules = _modules(text)
    if len(modules) * (1 if terminal.blocks else 2) > terminal.columns:
        return ()
    if not terminal.blocks:
        return tuple(_in_colours(row) for row in modules)
    return tuple(_in_blocks(modules, terminal.colours))


def _modules(text: str) -> list[list[int]]:
    """The rows of the code with its quiet zone: 1 is dark."""
    import segno

    code = segno.make(text, error="l", micro=False)
    return [list(row) for row in code.matrix_iter(border=QUIET)]


def _in_blocks(modules: list[list[int]], colours: bool) -> Iterator[str]:
    """Two rows a line."""
    light = [0] * len(modules)
    rows = modules if len(modules) % 2 == 0 else [*modules, light]
    for upper, lower in zip(rows[::2], rows[1::2], strict=True):
        if colours:
            inked = "".join(_HALVES[pair] for pair in zip(upper, lower, strict=True))
            yield f"{_BLACK_ON_WHITE}{inked}{_PLAIN}"
        else:
            yield "".join(_HALVES[1 - a, 1 - b] for a, b in zip(upper, lower, strict=True))


def _in_colours(row: Sequence[int]) -> str:
    """One row a line, two blanks a module."""
    return "".join(f"{_BLACK if dark else _WHITE}  " for dark in row) + _PLAIN
