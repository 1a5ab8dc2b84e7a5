"""What can go wrong for the person, with the exit code it ends in; imported by every room."""

from __future__ import annotations

from collections.abc import Iterable
from difflib import get_close_matches

_JOINERS = "\u200c\u200d"  #: belong to the spelling of some scripts, and hide nothing


class UserError(Exception):
    """One clear line a person can act on; ``code`` is the command's exit code."""

    code = 70


class UsageError(UserError):
    """The command's words are off."""

    code = 2


class BadCaseError(UserError):
    """The case file cannot be read as a case; holds every error found, one a line."""

    code = 65

    def __init__(self, where: str, faults: Iterable[str]) -> None:
        self.faults = tuple(faults)
        super().__init__("\n".join(f"{where}: {f}" for f in self.faults))


class OutOfScopeError(UserError):
    """An engine this book may not advise on."""

    code = 65


class NoCaseError(UserError):
    """There is no such case."""

    code = 66


class CannotWriteError(UserError):
    """The case could not be saved; what was saved before still stands."""

    code = 73


def clean(text: str) -> str:
    """What a person typed, without control characters; line ends stay.

    >>> clean("red\\x1b[31m")
    'red [31m'
    """
    return "".join(c if c.isprintable() or c == "\n" or c in _JOINERS else " " for c in text)


def plain(text: object, most: int = 60) -> str:
    """What a person typed, fit for one line of a message: escaped and, if long, cut.

    >>> plain("two\\nlines")
    'two\\\\nlines'
    >>> plain("a" * 70)[-3:]
    'aa…'

    A joiner is shown as it is behind a letter of a script that has them, and escaped elsewhere.
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


def nearest_word(word: str, words: Iterable[str]) -> str | None:
    """The word that was most likely meant."""
    wanted = word[:100].lower().replace("-", "_").replace(" ", "_")
    near = get_close_matches(wanted, list(words), 1, 0.55)
    return near[0] if near else None


def nearest(word: str, words: Iterable[str]) -> str:
    """' Did you mean …?', or nothing."""
    near = nearest_word(word, words)
    return f" Did you mean '{near}'?" if near else ""
