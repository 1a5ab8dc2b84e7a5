"""Find where a statement begins in a long stretch of text without punctuation; for ``text`` alone.

"5 psi at hot idle 60 cold new sender no difference lifters ticking" is four statements. A cut that is
missed costs little, a wrong one may part a verb from its object: so a gap is cut only where the word
before can end a statement and the words behind begin one.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Protocol

from knowledge.lexicon.words import openings as words

LEAST = 7  #: words; shorter stretches are not cut
LONG = 25  #: words of a stretch that holds several sentences
_APART = 3  #: words of the shortest statement without a figure
_FRONTED = 7  #: words of a beginning that says when: "on the return road it ..."
_LONGEST_NAME = 3  #: modifiers before a noun
_SAID_WITHIN = 4  #: words from who said it to what was said


class Piece(Protocol):
    """A word or number of a text."""

    @property
    def word(self) -> str:
        """In lower case."""

    @property
    def kinds(self) -> frozenset[str]:
        """Of a number; 'mark' of punctuation."""


def openings(tokens: Sequence[Piece]) -> Iterator[tuple[int, bool]]:
    """Places, in order, of the words before which a mark is missing; whether it is a full stop."""
    begin = 0
    for end in [i for i, t in enumerate(tokens) if "mark" in t.kinds] + [len(tokens)]:
        if end - begin >= LEAST:
            stretch = tokens[begin:end]
            readings = set(_readings(stretch))
            last, stopped = 0, 0
            for i in range(2, len(stretch)):
                whole = _is_whole(stretch, last, i)
                firm = end - begin >= LONG and whole and _opens_firmly(stretch, i)
                if i in readings or firm or (whole and _opens(stretch, i)):
                    last = i
                    led = {stretch[k].word for k in range(max(stopped, i - _FRONTED), i)}
                    stops = firm and i - stopped >= LEAST and not led & words.LEADING_IN
                    stopped = i if stops else stopped
                    yield begin + i, stops
        begin = end + 1


def _is_whole(stretch: Sequence[Piece], last: int, i: int) -> bool:
    """Whether what was said since the last cut can stand alone."""
    fronted = stretch[last].word in words.FRONTING and i - last < _FRONTED
    has_figure = any(stretch[k].kinds for k in range(last, i))
    return (has_figure or i - last >= _APART) and not fronted


def _opens(stretch: Sequence[Piece], i: int) -> bool:
    """Whether a statement begins at a word."""
    before, word = stretch[i - 1], stretch[i].word
    behind = stretch[i + 1].word if i + 1 < len(stretch) else ""
    if word in words.PERSONS:
        return before.word not in words.JOINING | words.HOLDING
    if word in words.DENYING and not before.kinds:
        return before.word not in words.BEFORE_DENYING
    if not behind or not (before.kinds or before.word in words.ENDING):
        return False
    if not before.kinds and stretch[i - 2].word in words.PERSONS:
        return False  # "when I switch the engine off"
    if before.kinds and stretch[i - 2].word in words.NUMBERED:
        return False  # "main 4 clearance is 0.08 mm"
    if before.word == "on" and stretch[i - 2].word not in words.BEFORE_ON:
        return False  # "the o-ring on the pickup was cut"
    if before.word == "good" and stretch[i - 2].word == "known":
        return False  # "a known good gauge off my other engine"
    if before.word in words.DESCRIBING and stretch[i - 2].word in ("a", "an"):
        return False  # "fixed a broken wire"
    if before.word in ("light", "lamp", "warning") and word in words.OF_A_LAMP:
        return False  # "the oil light switch did not help"
    if before.word in words.PRAISING and stretch[i - 2].word in words.HAVING:
        return False  # "had good oil pressure right away"
    if word in words.POINTING:
        return behind in words.STATING
    if word in words.ADDING:
        return behind in words.BEGINNING
    if word in words.DOING:
        return before.word not in words.DOERS | words.SUBJECTS and behind in words.OBJECTS
    return before.word not in words.COMPOUNDS and _names_a_subject(stretch, i)


def _opens_firmly(stretch: Sequence[Piece], i: int) -> bool:
    """Whether a statement begins whatever ends before it: a subject with its verb.

    Not behind a word that such a noun belongs to, nor in what somebody says or thinks.
    """
    if i + 1 >= len(stretch):
        return False
    before, word, behind = stretch[i - 1].word, stretch[i].word, stretch[i + 1].word
    if before in words.HOLDING | words.COMPOUNDS | words.MODIFIERS | words.JOINING | words.OF_NEXT:
        return False
    if any(p.word in words.OF_A_MIND for p in stretch[max(0, i - _SAID_WITHIN) : i]):
        return False
    if word in words.PERSONS:
        return behind in words.DEEDS
    if word in words.POINTING:
        return behind in words.FINITE
    for k in range(i, min(i + _LONGEST_NAME + 1, len(stretch) - 1)):
        if stretch[k].word in words.SUBJECTS and stretch[k + 1].word in words.FINITE:
            return True
        if stretch[k].word not in words.MODIFIERS:
            return False
    return False


def _names_a_subject(stretch: Sequence[Piece], i: int) -> bool:
    """Whether a noun of the trade, with words before it, stands here, and something is said of it."""
    for k in range(i, min(i + _LONGEST_NAME + 1, len(stretch) - 1)):
        behind = stretch[k + 1]
        if stretch[k].word in words.SUBJECTS and (behind.kinds or behind.word in words.STATING):
            return True
        if stretch[k].word not in words.MODIFIERS:
            return False
    return False


def _readings(stretch: Sequence[Piece]) -> Iterator[int]:
    """Where one reading ends and the next begins: "5 psi hot 60 cold", "hot 5 cold 60"."""
    order = [(i, kind) for i in range(len(stretch)) if (kind := _part(stretch, i))]
    later = {stretch[i].word for i, _ in order[1:]}
    if order and _heads_a_list([kind for _, kind in order]) and not later & words.HEATS:
        order = order[1:]
    first = order[0][1] if order else ""
    for (a, kind), (b, following) in pairwise(order):
        if kind != following and following == first and not _idles_at(stretch, a, b):
            place = b
            while place - 1 > a and stretch[place - 1].word in words.LEADING:
                place -= 1
            if all(stretch[k].word in words.AROUND for k in range(a + 1, place)):
                yield place


def _idles_at(stretch: Sequence[Piece], a: int, b: int) -> bool:
    """Whether "idle" is what it does: "it used to idle at 20"."""
    does = a > 0 and stretch[a - 1].word in words.IDLES_AFTER
    return stretch[a].word == "idle" and does and b == a + 2 and stretch[a + 1].word == "at"


def _heads_a_list(kinds: Sequence[str]) -> bool:
    """Whether the first says of all when they were taken: "hot it's 12 at 2000 and 3 at idle"."""
    pairs = ["pressure", "when"] * (len(kinds) // 2)
    return len(kinds) > len(["when", "pressure", "when"]) and list(kinds) == ["when", *pairs]


def _part(stretch: Sequence[Piece], i: int) -> str:
    """What part of a reading a word is: its pressure, or when it was taken."""
    piece = stretch[i]
    if piece.kinds & {"pressure", "number"}:
        return "pressure"
    on_the = [p.word for p in stretch[max(0, i - 2) : i]] == [
        "on",
        "the",
    ] and piece.word in words.ON_THE
    return "when" if on_the or piece.kinds & {"rpm", "mph"} or piece.word in words.WHEN else ""
