"""Match the phrases of the lexicon against tokens."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Generic, TypeVar

from diagnose.understanding.text import Token, is_bare_noun, is_done, spelled, stemmed
from knowledge.lexicon.stance import FILLERS, NEITHER, NOT
from knowledge.lexicon.stance_words import ENGINES, ON_ENGINE, WHICH_ENGINE

Value = TypeVar("Value")
Value_co = TypeVar("Value_co", covariant=True)
_ENGINE_WORDS = 4  #: most words between "on" and "engine"
GAP = 3  #: most words that ".." stands for
_NOT = frozenset(stemmed(w) for w in NOT.split("|"))
#: straight before "not", which then is one word with it: "does not" is "doesn't"
_HELPS = frozenset(
    [
        "do",
        "does",
        "did",
        "will",
        "would",
        "can",
        "could",
        "is",
        "was",
        "are",
        "were",
        "be",
        "has",
        "have",
        "had",
        "should",
        "might",
    ]
)


@dataclass(frozen=True, slots=True)
class Mark(Generic[Value_co]):
    """A phrase found in a sentence: tokens ``first`` to before ``last``."""

    value: Value_co
    first: int
    last: int

    def __len__(self) -> int:
        return self.last - self.first

    def overlaps(self, other: Mark[object]) -> bool:
        """Whether the two share a token."""
        return self.first < other.last and other.first < self.last


@dataclass(frozen=True, slots=True)
class _Element:
    words: frozenset[str]
    kinds: frozenset[str] = frozenset()
    exact: frozenset[str] = frozenset()  #: in no other form of the word
    done: frozenset[str] = frozenset()  #: in any form but the bare noun: "plugged", not "plug"
    optional: bool = False
    gap: bool = False
    denies: bool = False  #: "not", which a helping verb may stand before

    def fits(self, token: Token) -> bool:
        return (
            token.stem in self.words
            or token.word in self.words
            or token.word in self.exact
            or (token.stem in self.done and not is_bare_noun(token.word))
            or bool(token.kinds & self.kinds)
        )


class Phrases(Generic[Value]):
    """Phrases with what each means, ready to be looked for."""

    def __init__(self, phrases: Mapping[Value, Iterable[str]]) -> None:
        self.words: set[str] = set()
        self._by_word: dict[str, list[tuple[tuple[_Element, ...], Value]]] = {}
        for value, texts in phrases.items():
            for text in texts:
                self._add(value, _elements(text))

    def _add(self, value: Value, elements: tuple[_Element, ...]) -> None:
        for each in elements:
            self.words |= each.words | each.exact | each.done
        first = 0
        while True:
            head = elements[first]
            for key in {*head.words, *head.exact, *head.done, *(f"@{k}" for k in head.kinds)}:
                self._by_word.setdefault(key, []).append((elements[first:], value))
            if not head.optional or first + 1 >= len(elements):
                return
            first += 1

    def find(self, tokens: Sequence[Token]) -> list[Mark[Value]]:
        """Every phrase that stands in the tokens; of those within a longer one of them, none."""
        return longest(self._all(tokens))

    def find_alike(self, tokens: Sequence[Token]) -> list[Mark[Value]]:
        """As ``find``, but every meaning of the same words."""
        found = self._all(tokens)
        spans = {(m.first, m.last) for m in longest(found)}
        return list(dict.fromkeys(m for m in found if (m.first, m.last) in spans))

    def find_each(self, tokens: Sequence[Token]) -> list[Mark[Value]]:
        """As ``find`` for each value by itself: "ohc four" is both."""
        by_value: dict[Value, list[Mark[Value]]] = {}
        for mark in self._all(tokens):
            by_value.setdefault(mark.value, []).append(mark)
        return [m for marks in by_value.values() for m in longest(marks)]

    def _all(self, tokens: Sequence[Token]) -> list[Mark[Value]]:
        found: list[Mark[Value]] = []
        for i, token in enumerate(tokens):
            for key in dict.fromkeys((token.stem, token.word, *(f"@{k}" for k in token.kinds))):
                for elements, value in self._by_word.get(key, ()):
                    last = _match(elements, 0, tokens, i)
                    if last > i:
                        found.append(Mark(value, i, last))
        return found


def longest(marks: Iterable[Mark[Value]]) -> list[Mark[Value]]:
    """The marks without those inside a longer one, in the order of the text."""
    kept: list[Mark[Value]] = []
    for mark in sorted(marks, key=lambda m: (-len(m), m.first)):
        if not any(mark.first >= k.first and mark.last <= k.last for k in kept):
            kept.append(mark)
    return sorted(kept, key=lambda m: (m.first, m.last))


def _elements(text: str) -> tuple[_Element, ...]:
    return tuple(_element(piece) for piece in text.split())


@cache
def _element(piece: str) -> _Element:
    if piece == "..":
        return _Element(frozenset(), gap=True)
    optional = piece.endswith("?")
    words: set[str] = set()
    kinds: set[str] = set()
    exact: set[str] = set()
    done: set[str] = set()
    for word in piece.rstrip("?").split("|"):
        if word == "@not":
            words |= _NOT
        elif word.startswith("@"):
            kinds.add(word[1:])
        elif word.startswith("="):
            exact.add(spelled(word[1:]))
        elif word and is_done(spelled(word)):
            done.add(stemmed(spelled(word)))
        elif word:
            words.add(stemmed(spelled(word)))
    denies = words >= _NOT
    return _Element(
        frozenset(words),
        frozenset(kinds),
        frozenset(exact),
        frozenset(done),
        optional,
        denies=denies,
    )


def _match(elements: Sequence[_Element], k: int, tokens: Sequence[Token], i: int) -> int:
    """The end of the longest match of the elements from ``k`` at token ``i``; -1 where none."""
    if k == len(elements):
        return i
    element = elements[k]
    if element.gap:
        starts = {i, _past_engine(tokens, i) or i}
        return max((end for at in starts for end in _gaps(elements, k, tokens, at)), default=-1)
    best = -1
    if i < len(tokens) and element.fits(tokens[i]):
        best = _match(elements, k + 1, tokens, i + 1)
    if element.optional:
        best = max(best, _match(elements, k + 1, tokens, i))
    if best < 0 and k and i < len(tokens) and tokens[i].word in FILLERS:
        return _match(elements, k, tokens, i + 1)  # "the needle has very slowly fallen"
    if best < 0 and k and element.denies and _helps_not(tokens, i):
        return _match(elements, k, tokens, i + 1)
    if best < 0 and k and (behind := _past_engine(tokens, i)):
        return _match(elements, k, tokens, behind)  # "the pressure on that engine dropped"
    return best


def _helps_not(tokens: Sequence[Token], i: int) -> bool:
    """Whether a helping verb and "not" stand at a place: "does not"."""
    after = tokens[i + 1 : i + 2]
    return bool(after) and tokens[i].word in _HELPS and after[0].stem in _NOT


def _past_engine(tokens: Sequence[Token], i: int) -> int:
    """The place behind "on that same engine", "of the port diesel" at ``i``; 0 where it is none."""
    if i >= len(tokens) or tokens[i].word not in ON_ENGINE:
        return 0
    for k in range(i + 1, min(i + 2 + _ENGINE_WORDS, len(tokens))):
        if tokens[k].word in ENGINES:
            return k + 1 if k > i + 1 else 0
        if tokens[k].word not in WHICH_ENGINE and not tokens[k].is_figure:
            return 0
    return 0


def _gaps(elements: Sequence[_Element], k: int, tokens: Sequence[Token], i: int) -> Iterator[int]:
    for skip in range(min(GAP, len(tokens) - i) + 1):
        if any(t.is_mark or t.stem in _NOT or t.word in NEITHER for t in tokens[i : i + skip]):
            return  # "the light never flickers" is no flickering light
        yield _match(elements, k + 1, tokens, i + skip)
