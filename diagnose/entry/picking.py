"""What a typed line may be in answer to any question, and the choices it picks."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

HELP = "y yes, n no, d don't know, why, back, stop here"
STOP = ("stop", "stop here", "quit", "exit")
BACK = ("back", "b")
WHY = ("why", "why do you ask", "w")
DONT_KNOW = frozenset(
    [
        *("", "d", "u", "dont know", "don't know", "unknown", "dunno", "idk", "no idea", "no clue"),
        *("not sure", "unsure", "pass", "skip", "can't say", "cant say", "can't tell", "cant tell"),
        *("don't remember", "dont remember", "can't remember", "cant remember", "who knows"),
        *("haven't a clue", "havent a clue", "haven't looked", "not looked", "never looked"),
    ]
)
NO = ("n", "no", "none", "0", "nothing")
YES = ("y", "yes")


class Reply(Enum):
    """What a line was, where it was no answer."""

    STOP = "stop"
    BACK = "back"
    FIRST = "first"  #: 'back' where there is no question before
    WHY = "why"
    UNCLEAR = "unclear"
    TOO_LONG = "too long"
    CHANGED = "changed"  #: what was understood has changed; it is asked again whether it is right


@dataclass(frozen=True, slots=True)
class Picked:
    """Choices by their place from 0; None: the person does not know."""

    places: tuple[int, ...] | None


def is_dont_know(line: str) -> bool:
    """Whether a line says that the person does not know, or nothing.

    >>> is_dont_know("I don’t know."), is_dont_know("dunno"), is_dont_know("no")
    (True, True, False)
    """
    bare = line.lower().replace("’", "'").strip(" .,;:!?")
    return bare.removeprefix("i ").removeprefix("sorry, ") in DONT_KNOW


def aside(word: str) -> Reply | None:
    """ "why" or "back", which every question takes; None where the word may be an answer."""
    if word in WHY:
        return Reply.WHY
    return Reply.BACK if word in BACK else None


def picked(line: str, choices: int, many: bool) -> Picked | Reply:
    """Numbers of choices, 'd' or another word that all these questions take."""
    word = line.lower()
    if reply := aside(word):
        return reply
    if is_dont_know(word):
        return Picked(None)
    places = _places(word, choices)
    return Picked(places) if places and (many or len(places) == 1) else Reply.UNCLEAR


def _places(word: str, choices: int) -> tuple[int, ...] | None:
    """Numbers from 1 as places from 0, each once; None where one is wrong."""
    numbers = word.replace(",", " ").split()
    if not all(n.isdecimal() and len(n) < 5 and 1 <= int(n) <= choices for n in numbers):
        return None
    return tuple(dict.fromkeys(int(n) - 1 for n in numbers))
