"""Values beside the numbers of their bearings: "no 1 main 2.5 thou, no 2 2.7", "1 2 3 are .002 ..."."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import NamedTuple

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.values.value_rows import Cell
from diagnose.understanding.values.values_named import NUMBER_WORDS, Name, says_nothing
from diagnose.understanding.words.amounts import Amount
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.words.joints import EXCEPT

_MOST = 16  #: the highest number of a bearing
_LEAST = 2  #: pairs of number and value that make a row
_GLUED = re.compile(r"(?:no|nr|number|num)\.?(\d{1,2})")
_VALUE = frozenset(["number", "length"])
_BESIDE = frozenset(["and", "&", "/", ";", ",", "all", "both", "respectively", "which", "rest"])
_NO_PART = frozenset(["plastigage", "plastigauge", "clearance", "clearances"])
_JOINED = frozenset([",", "and", "&", "/"])
_SMALL = frozenset(["thou", "mil", "mm", "in"])
_MEANT = frozenset(["new", "old", "other", "good", "the", "this", "that"])
_DECIMAL = frozenset(["mm", "in"])  #: no clearance is a whole number of these


class _Item(NamedTuple):
    """A number of a bearing, or a value where ``number`` is 0; the token it stands at."""

    number: int
    text: str
    at: int
    spared: bool  #: behind "except"


def glued_number(word: str) -> str:
    """The number in "no3"; empty where a word is none.

    >>> glued_number("no3"), glued_number("no"), glued_number("node3")
    ('3', '', '')
    """
    found = _GLUED.fullmatch(word)
    return found[1] if found else ""


def is_pronoun(line: Line, at: int) -> bool:
    """Whether "one" is a part named before, no number: "48 mm, the new one 52 mm"."""
    return line.word(at) == "one" and line.word(at - 1) in _MEANT


def is_except(line: Line, at: int) -> bool:
    """Whether one of several is set apart at a place: "all 2 thou except no 5", "but number 4"."""
    after = line.word(at + 1)
    numbered = after in NUMBER_WORDS or bool(glued_number(after))
    return line.word(at) in EXCEPT or (line.word(at) in ("but", "only") and numbered)


def by_number(line: Line, every: list[Amount], names: list[Name]) -> Iterator[Cell]:
    """The values of a kind of bearing that are given with the number of each."""
    before = [*_values_first(line, every, names)]
    yield from before
    for name in names if not before else ():
        ends = [n.mark.first for n in names if n.mark.first >= name.mark.last]
        last = min(ends, default=len(line.tokens))
        items = [*_items(line, name, last, every)]
        one = items if len(names) > 1 and _is_numbered(name, items) else []
        for place, value in [(one[0], one[1])] if one else _pairs(items):
            yield Cell(name, place.number, value.text, value.at, (_words_of(line, place),))


def _values_first(line: Line, every: list[Amount], names: list[Name]) -> Iterator[Cell]:
    """Values straight before the name and number of their bearing: "0.05 rod 1 and 0.055 rod 2"."""
    parts = (n for n in names if line.word(n.mark.first) not in _NO_PART)
    if not every or any(n.mark.first < every[0].first for n in parts):
        return
    for name in names:
        amount = next((a for a in every if a.last == name.mark.first), None)
        number = line.tokens[name.mark.last] if name.mark.last < len(line.tokens) else None
        whole = number is not None and number.kinds == {"number"} and number.value.isdecimal()
        if amount is not None and number is not None and whole and int(number.value) <= _MOST:
            place = Mark(True, name.mark.last, name.mark.last + 1)
            yield Cell(name, int(number.value), amount.texts[-1], amount.first, (place,))


def _items(line: Line, name: Name, last: int, every: list[Amount]) -> Iterator[_Item]:
    """Numbers and values from just before a name to the next name or a word that ends the row."""
    unit = _unit(line, name, last, every)
    spared, counted = False, False
    listed = _listed(line, name, last)
    for k in range(max(0, name.mark.first - 2), last):
        token, word = line.tokens[k], line.word(k)
        if name.mark.first <= k < name.mark.last:
            counted = True
            continue
        if is_pronoun(line, k):
            continue
        glued = glued_number(word)
        if glued and 1 <= int(glued) <= _MOST:
            yield _Item(int(glued), "", k, spared)
            continue
        if token.is_figure and token.kinds <= _VALUE:
            whole = token.kinds == {"number"} and token.value.isdecimal()
            number = int(token.value) if whole and 1 <= int(token.value) <= _MOST else 0
            led = line.word(k - 1) in NUMBER_WORDS
            led = led or k in listed or _is_the_number(line, name, k)
            if number and (led or (counted and unit in _DECIMAL)):
                yield _Item(number, "", k, spared)
                continue
            if k < name.mark.first:
                continue
            said = token.value if " " in token.value else f"{token.value} {unit}"
            if not unit and " " not in token.value:
                return
            yield _Item(0, said, k, spared)
        elif is_except(line, k):
            spared = True
        elif k > name.mark.first and not (word in _BESIDE or says_nothing(line, k)):
            if token.is_figure and "range" in token.kinds:
                continue
            return


def _is_the_number(line: Line, name: Name, at: int) -> bool:
    """Whether a figure straight behind one bearing's name, before a value, numbers it: "rod 2 3 thou"."""
    one = not line.word(name.mark.last - 1).endswith("s")
    valued = at + 1 < len(line.tokens) and " " in line.tokens[at + 1].value
    return one and valued and at == name.mark.last


def _listed(line: Line, name: Name, last: int) -> list[int]:
    """Whole numbers listed behind a name before a value that is not of the list.

    "mains 3, 4 and 5 are 3.5 thou" and "mains 2 and 3 4 thou"; "mains 2 and 3 thou" lists values.
    """
    found: list[int] = []
    for k in range(name.mark.last, last):
        token = line.tokens[k]
        if token.kinds == {"number"} and token.value.isdecimal():
            found.append(k)
        elif token.is_figure:
            joined = line.word(k - 1) in _JOINED
            numbers = [int(line.tokens[n].value) for n in found]
            rises = all(a < b for a, b in pairwise(numbers))
            return found if len(found) > 1 and rises and not joined else []
        elif line.word(k) not in _BESIDE and not says_nothing(line, k):
            break
    return []


def _is_numbered(name: Name, items: Sequence[_Item]) -> bool:
    """Whether a name has one number straight behind it and one value: "rod 1 3 thou, rod 2 3 thou"."""
    kinds = [bool(i.number) for i in items]
    return kinds == [True, False] and items[0].at == name.mark.last


def _words_of(line: Line, place: _Item) -> Mark[object]:
    """The words for a number: "no 5", "except number 5"."""
    first = place.at
    while line.word(first - 1) in NUMBER_WORDS or (first > 0 and is_except(line, first - 1)):
        first -= 1
    return Mark(True, first, place.at + 1)


def _unit(line: Line, name: Name, last: int, every: list[Amount]) -> str:
    """The unit of the first amount behind a name, which bare values beside it are in."""
    for amount in every:
        if name.mark.last <= amount.first < last:
            said = amount.texts[-1].rpartition(" ")[2].lower()
            return said if said in _SMALL else ""
    return ""


def _pairs(items: Sequence[_Item]) -> Iterator[tuple[_Item, _Item]]:
    """Each number with its value: in turn, or first all numbers and then as many values, or one."""
    kinds = [bool(i.number) for i in items]
    turns = kinds[: 2 * (len(kinds) // 2)] == [True, False] * (len(kinds) // 2)
    half = len(kinds) // 2
    if len(kinds) >= 2 * _LEAST and turns:
        yield from zip(items[::2], items[1::2], strict=False)
    elif half >= _LEAST and kinds == [True] * half + [False] * half:
        yield from zip(items[:half], items[half:], strict=True)
    elif len(kinds) > _LEAST and kinds == [True] * (len(kinds) - 1) + [False]:
        yield from ((place, items[-1]) for place in items[:-1])  # "mains 3 and 4 .0035"
    else:
        for place, value in pairwise(items):
            if place.number and place.spared and not value.number:
                yield place, value
