"""Reads a QR code of one block (versions 1 to 5), without correcting errors; after ISO/IEC 18004."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

_ANSI = re.compile(r"\x1b\[([\d;]*)m")
_HALVES = {" ": (0, 0), "▄": (0, 1), "▀": (1, 0), "█": (1, 1)}
_FORMAT_MASK = 0b101010000010010


def from_blocks(lines: Sequence[str], *, inked: int) -> list[list[int]]:
    """The modules (1: dark) of a drawing in half blocks; ``inked``: what the ink stands for."""
    rows: list[list[int]] = []
    for line in lines:
        halves = [_HALVES[c] for c in _ANSI.sub("", line)]
        rows += [[half[i] if inked else 1 - half[i] for half in halves] for i in (0, 1)]
    return rows


def from_colours(lines: Sequence[str]) -> list[list[int]]:
    """The modules of a drawing in blanks on black or white, two a module."""
    rows = []
    for line in lines:
        parts = _ANSI.split(line)
        row = []
        for codes, blanks in zip(parts[1::2], parts[2::2], strict=True):
            row += [int(codes == "40")] * (len(blanks) // 2)
        rows.append(row)
    return rows


def read(modules: Sequence[Sequence[int]]) -> str:
    """The text a code holds in byte mode. Raises ValueError where it is none that this reads."""
    code = _without_border(modules)
    size = len(code)
    version, rest = divmod(size - 17, 4)
    if rest or not 1 <= version <= 5 or any(len(row) != size for row in code):
        raise ValueError(f"{size} modules are no version that is read here")
    mask = _mask(code)
    bits = [code[y][x] ^ _masked(mask, y, x) for y, x in _places(size, version)]
    number = int("".join(map(str, bits[:12])), 2)
    mode, length = number >> 8, number & 0xFF
    if mode != 4:
        raise ValueError(f"mode {mode} is not that of bytes")
    data = bits[12 : 12 + 8 * length]
    return bytes(
        int("".join(map(str, data[i : i + 8])), 2) for i in range(0, len(data), 8)
    ).decode()


def _without_border(modules: Sequence[Sequence[int]]) -> list[list[int]]:
    dark = [(y, x) for y, row in enumerate(modules) for x, on in enumerate(row) if on]
    ys, xs = [y for y, _ in dark], [x for _, x in dark]
    return [list(row[min(xs) : max(xs) + 1]) for row in modules[min(ys) : max(ys) + 1]]


def _mask(code: list[list[int]]) -> int:
    """The number of the mask, from the format beside the upper left corner. Raises ValueError."""
    places = [(8, x) for x in (0, 1, 2, 3, 4, 5, 7, 8)] + [(y, 8) for y in (7, 5, 4, 3, 2, 1, 0)]
    value = int("".join(str(code[y][x]) for y, x in places), 2) ^ _FORMAT_MASK
    rest = value
    for shift in range(14, 9, -1):
        if rest >> shift & 1:
            rest ^= 0b10100110111 << (shift - 10)
    if rest:
        raise ValueError("the format is damaged")
    return value >> 10 & 7


def _masked(mask: int, y: int, x: int) -> int:
    """Whether the mask turns a module over."""
    rest = (
        (y + x) % 2, y % 2, x % 3, (y + x) % 3, (y // 2 + x // 3) % 2,
        y * x % 2 + y * x % 3, (y * x % 2 + y * x % 3) % 2, ((y + x) % 2 + y * x % 3) % 2,
    )[mask]  # fmt: skip
    return int(rest == 0)


def _places(size: int, version: int) -> Iterator[tuple[int, int]]:
    """The modules that hold data, in their order: pairs of columns, up and down from the right."""
    up = True
    for right in (*range(size - 1, 6, -2), *range(5, 0, -2)):
        for y in range(size - 1, -1, -1) if up else range(size):
            for x in (right, right - 1):
                if not _is_pattern(y, x, size, version):
                    yield y, x
        up = not up


def _is_pattern(y: int, x: int, size: int, version: int) -> bool:
    """Whether a module belongs to a finder, a timing line, the format or the alignment pattern."""
    corner = (y < 9 and (x < 9 or x >= size - 8)) or (y >= size - 8 and x < 9)
    middle = size - 7
    aligned = version > 1 and abs(y - middle) <= 2 and abs(x - middle) <= 2
    return corner or y == 6 or x == 6 or aligned
