"""Errors a person can act on, each with its exit code."""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches

from diagnose.ids import normal_id

_JOINERS = "\u200c\u200d"  #: zero-width characters that the spelling of some scripts needs


class UserError(Exception):
    """One clear line a person can act on, or one for each fault; ``code`` is the exit code."""

    code = 70

    @property
    def lines(self) -> tuple[str, ...]:
        """What is wrong, one fault a line."""
        return tuple(str(self).splitlines())


class UsageError(UserError):
    """The command or its arguments are invalid."""

    code = 2


class NotSavedError(UsageError):
    """What was to be written makes no valid file; ``faults``: what would be wrong with it."""

    def __init__(self, faults: Iterable[str]) -> None:
        self.faults = tuple(faults)
        super().__init__("\n".join(f"not saved: {fault}" for fault in self.faults))


class FileError(UserError):
    """What is wrong with one file or folder, one fault a line.

    ``where``: its name; ``faults``: what is wrong, without the name.
    """

    def __init__(self, where: str, faults: Iterable[str]) -> None:
        self.where = where
        self.faults = tuple(faults)
        super().__init__("\n".join(f"{where}: {fault}" for fault in self.faults))


class BadCaseError(FileError):
    """The file cannot be read as a case; holds every fault found."""

    code = 65


class OutOfScopeError(FileError):
    """An engine this book may not advise on."""

    code = 65


class NoCaseError(FileError):
    """There is no such case, or it cannot be opened."""

    code = 66


class PartlySavedError(UserError):
    """Some lines of a sheet are wrong, or words not clear; the others are saved."""

    code = 65


class CannotWriteError(UserError):
    """The case could not be saved; what was saved before is kept."""

    code = 73


def clean(text: str) -> str:
    """Replace control characters in what a person typed by blanks; line ends stay.

    >>> clean("red\\x1b[31m")
    'red [31m'
    """
    return "".join(c if c.isprintable() or c == "\n" or c in _JOINERS else " " for c in text)


def plain(text: object, most: int = 60) -> str:
    """Escape what a person typed for one line of a message, and cut it if it is long.

    >>> plain("two\\nlines")
    'two\\\\nlines'
    >>> plain("a" * 70)[-3:]
    'aa…'

    A zero-width joiner is kept after a letter of a script that has them, and escaped elsewhere.
    """
    whole = str(text)
    cut = whole if len(whole) <= most else whole[:most] + "…"
    before = ("", *cut)
    return "".join(
        c if c.isprintable() or _joins(c, b) else c.encode("unicode_escape").decode()
        for b, c in zip(before, cut, strict=False)
    )


def _joins(c: str, before: str) -> bool:
    return c in _JOINERS and before.isalpha() and not before.isascii()


ALIKE = 0.55  #: least similarity, 0 to 1, of a misspelt word; any lower, and short words match all


def nearest_word(word: str, words: Iterable[str], alike: float = ALIKE) -> str | None:
    """Return the word that was most likely meant, or None; ``alike``: at least so much, 0 to 1."""
    wanted = normal_id(word[:100])
    near = get_close_matches(wanted, list(words), 1, alike)
    return near[0] if near else None


def nearest(word: str, words: Iterable[str]) -> str:
    """Return ' Did you mean …?', or an empty string."""
    near = nearest_word(word, words)
    return f" Did you mean '{near}'?" if near else ""
