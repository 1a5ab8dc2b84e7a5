"""A set of words from a line of them, as the lexicon writes its lists."""

from __future__ import annotations


def set_of(text: str) -> frozenset[str]:
    """The words of a text, whatever blanks stand between them.

    >>> sorted(set_of("over  above past"))
    ['above', 'over', 'past']
    """
    return frozenset(text.split())
