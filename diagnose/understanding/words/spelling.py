"""Misspelt words: the nearest word of the lexicon, where it is near enough."""

from __future__ import annotations

from collections.abc import Collection

from diagnose.understanding.words.text import stemmed
from knowledge.lexicon.words.spelling import PLAIN, PLAIN_WORDS, TYPED

_CLOSE = 86.0  #: least similarity, 0 to 100
_SHORTEST = 5  #: letters of a word that is mended; shorter ones are too like each other
_LONGEST = 24  #: letters of a word that is looked at


class LexiconSpelling:
    """Mends words against the words of the lexicon and of the book."""

    def __init__(self, words: Collection[str]) -> None:
        self._words = frozenset(words)
        self._mended: dict[str, str] = {}

    def knows(self, word: str) -> bool:
        """Whether the lexicon has the word."""
        return word in self._words or stemmed(word) in self._words

    def right(self, word: str) -> str:
        """The word itself where it is known, short, long or like no other; else the nearest."""
        word = TYPED.get(word, word)
        if not _SHORTEST <= len(word) <= _LONGEST or not word.isascii() or not word.isalpha():
            return word
        if word in PLAIN or word in PLAIN_WORDS or self.knows(word):
            return word
        if word not in self._mended:
            self._mended[word] = self._nearest(word)
        return self._mended[word]

    def _nearest(self, word: str) -> str:
        from rapidfuzz import fuzz, process

        likely = [w for w in self._words if w[:1] == word[0] and abs(len(w) - len(word)) <= 3]
        found = process.extractOne(
            stemmed(word),
            [w for w in likely if len(w) >= 4],
            scorer=fuzz.ratio,
            score_cutoff=_CLOSE,
        )
        return found[0] if found else word
