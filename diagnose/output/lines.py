"""Plain text for a terminal 80 columns wide."""

from __future__ import annotations

import re
import shutil
from collections.abc import Collection, Iterable, Iterator
from unicodedata import combining, east_asian_width

from diagnose.errors import clean

__all__ = [
    "as_typed",
    "clean",
    "columns",
    "duration",
    "headed",
    "labelled",
    "percent",
    "together",
    "width",
    "wrapped",
]

WIDEST = 80
_TIED = "\ue000"  #: stands for a blank where no line may end
_FIGURE = re.compile(
    r"(?<=[0-9]) (?=(?:%|psi|bar|kPa|rpm|C|F|K|mm|in|thou|min|h|s|lb|dB)(?![\w/-]))"
)


def width() -> int:
    """Columns to use: never more than eighty."""
    return max(40, min(WIDEST, shutil.get_terminal_size((WIDEST, 24)).columns))


def columns(text: str) -> int:
    """Columns a text takes on the screen.

    >>> columns("oil"), columns("油圧")
    (3, 4)
    """
    if text.isascii():
        return len(text)
    return sum(0 if combining(c) else 1 + (east_asian_width(c) in "WF") for c in text)


def wrapped(
    text: str,
    indent: int = 0,
    hang: int | None = None,
    whole: Collection[str] = (),
    beside: int = 0,
) -> list[str]:
    """Break a text into lines, later ones indented by ``hang``; web addresses stay whole.

    ``whole``: commands and paths in the text that are never broken, however long, so that they
    can be pasted. ``beside``: columns that stay free at the right.

    >>> wrapped("say so: diagnose signoff 'my boat.toml'", whole=["diagnose signoff 'my boat.toml'"])
    ["say so: diagnose signoff 'my boat.toml'"]
    """
    kept = sorted((_tied(clean(each)) for each in whole if each.strip()), key=len, reverse=True)
    first, later = " " * indent, " " * (indent if hang is None else hang)
    wide = width() - beside
    room = wide - max(len(first), len(later))
    lines, line = [], first
    for word in _FIGURE.sub(_TIED, _with_tied(clean(text), kept)).split():
        for piece in [word] if any(k in word for k in kept) else _pieces(word, room):
            if not line.strip():
                line += piece
            elif columns(line) + 1 + columns(piece) <= wide:
                line += " " + piece
            else:
                lines.append(line)
                line = later + piece
    return [one.replace(_TIED, " ") for one in (*lines, line.rstrip())]


def _tied(text: str) -> str:
    return text.replace(" ", _TIED)


def _with_tied(text: str, kept: Iterable[str]) -> str:
    for each in kept:
        text = text.replace(each.replace(_TIED, " "), each)
    return text


def _pieces(word: str, room: int) -> Iterator[str]:
    """A word that fits no line, in pieces that do."""
    piece = ""
    for c in word if columns(word) > room and "://" not in word else ():
        if columns(piece + c) > room:
            yield piece
            piece = ""
        piece += c
    yield piece or word


def headed(head: str, text: str) -> list[str]:
    """A text beside its head, however far in that is."""
    first, *rest = wrapped(text, columns(head))
    return [head + first.lstrip(), *rest]


def labelled(label: str, text: str, indent: int = 2, column: int = 14) -> list[str]:
    """A label and a text beside it."""
    lines = wrapped(text, column)
    lines[0] = f"{' ' * indent}{label}".ljust(column - 1) + " " + lines[0].lstrip()
    return lines


def as_typed(path: str) -> str:
    """A path as one may type it in a command.

    >>> as_typed("my boat.toml"), as_typed("-x.toml")
    ("'my boat.toml'", './-x.toml')
    """
    import shlex

    return shlex.quote(clean(f"./{path}" if path.startswith("-") else path).replace("\n", " "))


def percent(p: float) -> str:
    """A probability in words and figures, never 0 or 100 %."""
    if p < 0.005:
        return "< 1 %"
    if p > 0.995:
        return "> 99 %"
    return f"{100 * p:.0f} %"


def duration(minutes: float) -> str:
    """Return minutes, or whole hours where they are many.

    >>> duration(7.4), duration(95), duration(720)
    ('7 min', '95 min', '12 h')
    """
    whole_hours = minutes >= 240 and minutes % 60 == 0
    return f"{minutes / 60:.0f} h" if whole_hours else f"{minutes:.0f} min"


def about(minutes: float) -> str:
    """Return minutes, or hours where they are many, as an estimate is said.

    >>> about(95), about(1146)
    ('95 min', '19 h')
    """
    return duration(60 * round(minutes / 60) if minutes >= 240 else minutes)


def together(blocks: Iterable[list[str]]) -> str:
    """Blocks of lines with an empty line between them."""
    return "\n\n".join("\n".join(b) for b in blocks if b)
