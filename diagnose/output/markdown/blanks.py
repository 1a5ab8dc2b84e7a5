"""Blanks of a sheet to fill in, and text that Markdown does not take for its own marks."""

from __future__ import annotations

from diagnose.output.lines import clean

BLANK = "______"
_MARKS = str.maketrans(dict.fromkeys("`*_#<>|[]", " "))


def one_line(text: str) -> str:
    """Return the text in one line, without the characters that Markdown reads as marks.

    >>> one_line("the *old* [boat]")
    'the  old   boat'
    """
    return clean(text).translate(_MARKS).replace("\n", " ").strip()
