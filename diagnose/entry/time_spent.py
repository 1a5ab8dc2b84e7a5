"""A time of work as a person types it: "45", "2.5 h", "2 and a half hours", "1 h 30"."""

from __future__ import annotations

import re

from diagnose.errors import UsageError, plain
from diagnose.ways import Way, to

_HOUR, _MINUTE = r"(?:h|hrs?|hours?)", r"(?:m|mins?|minutes?)"
_FIGURE = r"(\d+(?:[.,]\d+)?)"
_SHARES = {"1/2": 0.5, "1/4": 0.25, "3/4": 0.75, "½": 0.5, "¼": 0.25, "¾": 0.75}
_WORDS = (
    (r"three quarters of an?", "0.75"),
    (r"(?:a )?half (?:of )?an?", "0.5"),
    (r"(?:a )?quarter (?:of )?an?", "0.25"),
    (r"(\d+) ?(?:and|&) ?an? half", r"\1.5"),
    (r"(\d+) ?(?:and|&) ?an? quarter", r"\1.25"),
    (r"(\d+) ?(?:and|&) ?three quarters?", r"\1.75"),
    (r"an? " + _HOUR + r" and an? half", "1.5 h"),
    (r"half (?=hour)", "0.5 "),
    (r"\ban? (?=" + _HOUR + r"\b)", "1 "),
)
_COUNTED = {"one": "1", "two": "2", "three": "3", "four": "4", "five": "5", "six": "6"}


def minutes_spent(text: str) -> float:
    """Minutes; a bare figure is in minutes. Raises UsageError.

    >>> [minutes_spent(t) for t in ("45", "2.5 h", "2 and a half hours", "1 h 30", "1h 30min")]
    [45.0, 150.0, 150.0, 90.0, 90.0]
    >>> [minutes_spent(t) for t in ("half an hour", "two hours", "1 1/2 hours", "about 90 mins")]
    [30.0, 120.0, 90.0, 90.0]
    """
    said = " ".join(text.lower().replace("-", " ").split())
    said = re.sub(r"^(?:about|around|roughly|some|ca\.?|approx\.?|~) ?", "", said)
    for word, figure in _COUNTED.items():
        said = re.sub(rf"\b{word}\b", figure, said)
    for words, figure in _WORDS:
        said = re.sub(words, figure, said)
    for share, value in _SHARES.items():
        said = re.sub(rf"(?<!\d)(\d*) ?{share}(?!\d)", rf"\g<1>+{value}", said)
    said = re.sub(r"(\d*)\+(0\.\d+)", _added, said)
    hours = re.fullmatch(rf"{_FIGURE} ?{_HOUR}(?:(?: and)? ?(\d+)(?: ?{_MINUTE})?)?", said)
    clock = re.fullmatch(rf"(\d+):([0-5]\d)(?: ?{_HOUR})?", said)
    minutes = re.fullmatch(rf"{_FIGURE}(?: ?{_MINUTE})?", said)
    if hours:
        return 60.0 * _number(hours[1]) + float(hours[2] or 0)
    if clock:
        return 60.0 * float(clock[1]) + float(clock[2])
    if minutes:
        return _number(minutes[1])
    raise UsageError(
        f"{to(Way.MINUTES)}: '{plain(text, 40)}' is no time here; write minutes, like 45, or 2.5 h"
    )


def _added(match: re.Match[str]) -> str:
    return f"{int(match[1] or 0) + float(match[2]):g}"


def _number(figure: str) -> float:
    return float(figure.replace(",", "."))
