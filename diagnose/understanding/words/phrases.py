"""Match the phrases of the lexicon against tokens."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Generic, TypeVar

from diagnose.understanding.words.text import DENIES, Token, Tokens, is_done, spelled, stemmed
from knowledge.lexicon.stance.stance import FILLERS, NEITHER
from knowledge.lexicon.stance.stance_words import ENGINES, ON_ENGINE, WHICH_ENGINE

Value = TypeVar("Value")
Value_co = TypeVar("Value_co", covariant=True)
_ENGINE_WORDS = 4  #: most words between "on" and "engine"
GAP = 3  #: most words that ".." stands for
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
    heads: frozenset[str]  #: as ``Token.heads`` has them
    keys: frozenset[str]  #: as ``Token.keys`` has them
    optional: bool = False
    gap: bool = False
    denies: bool = False  #: "not", which a helping verb may stand before


@dataclass(frozen=True, slots=True)
class _Phrase(Generic[Value_co]):
    value: Value_co
    elements: tuple[_Element, ...]
    needs: tuple[frozenset[str], ...]  #: keys of the elements that it cannot do without


class Phrases(Generic[Value]):
    """Phrases with what each means, ready to be looked for."""

    def __init__(self, phrases: Mapping[Value, Iterable[str]]) -> None:
        self.words: set[str] = set()
        self._by_word: dict[str, list[_Phrase[Value]]] = {}
        for value, texts in phrases.items():
            for text in texts:
                self._add(value, _elements(text))

    def _add(self, value: Value, elements: tuple[_Element, ...]) -> None:
        for each in elements:
            self.words.update([w for w in each.heads if not w.startswith("@")])
        first = 0
        while True:
            head = elements[first]
            needs = (e.keys for e in elements[first + 1 :] if not e.optional and not e.gap)
            phrase = _Phrase(value, elements[first:], tuple(needs))
            for key in head.heads:
                self._by_word.setdefault(key, []).append(phrase)
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
        words = tokens if isinstance(tokens, Tokens) else Tokens(tokens)
        if words.every_head.isdisjoint(self._by_word):
            return found
        for i, heads in enumerate(words.heads):
            for key in heads:
                for phrase in self._by_word.get(key, ()):
                    if all_among(phrase.needs, words.every):
                        last = _match(phrase.elements, 0, words, i)
                        if last > i:
                            found.append(Mark(phrase.value, i, last))
        return found


def all_among(needs: Iterable[frozenset[str]], words: frozenset[str]) -> bool:
    """Whether one of each set is among the words."""
    for need in needs:  # noqa: SIM110 (a generator would take twice as long)
        if need.isdisjoint(words):
            return False
    return True


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
        return _Element(frozenset(), frozenset(), gap=True)
    heads: set[str] = set()
    keys: set[str] = set()
    for word in piece.rstrip("?").split("|"):
        if word:
            own_heads, own_keys = _of_word(word)
            heads |= own_heads
            keys |= own_keys
    denies = keys >= DENIES
    return _Element(frozenset(heads), frozenset(keys), piece.endswith("?"), denies=denies)


@cache
def _of_word(word: str) -> tuple[frozenset[str], frozenset[str]]:
    """The heads and keys of one word of an element."""
    if word == "@not":
        return DENIES, frozenset(k for w in DENIES for k in (w, f"={w}"))
    if word.startswith("@"):
        return frozenset([word]), frozenset([word])
    if word.startswith("="):  # in no other form of the word
        plain = spelled(word[1:])
        return frozenset([plain]), frozenset([f"={plain}"])
    plain = spelled(word)
    stem = stemmed(plain)
    if is_done(plain):  # in any form but the bare noun: "plugged", not "plug"
        return frozenset([stem]), frozenset([f"~{stem}"])
    return frozenset([stem]), frozenset([stem, f"={stem}"])


def _match(elements: Sequence[_Element], k: int, tokens: Tokens, i: int) -> int:
    """The end of the longest match of the elements from ``k`` at token ``i``; -1 where none."""
    if k == len(elements):
        return i
    element = elements[k]
    if element.gap:
        starts = {i, _past_engine(tokens, i) or i}
        return max((end for at in starts for end in _gaps(elements, k, tokens, at)), default=-1)
    best = -1
    if i < len(tokens) and not element.keys.isdisjoint(tokens.keys[i]):
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
    return bool(after) and tokens[i].word in _HELPS and after[0].stem in DENIES


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


def _gaps(elements: Sequence[_Element], k: int, tokens: Tokens, i: int) -> Iterator[int]:
    for skip in range(min(GAP, len(tokens) - i) + 1):
        if any(t.is_mark or t.stem in DENIES or t.word in NEITHER for t in tokens[i : i + skip]):
            return  # "the light never flickers" is no flickering light
        yield _match(elements, k + 1, tokens, i + skip)
