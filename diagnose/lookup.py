"""Find what a person meant by an everyday or misspelt phrase; imported by ``cli``."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from math import log

from knowledge.book import Book
from knowledge.rulebook import Rule
from knowledge.vocabulary import Cause, Condition, Finding, Inspection, Layout, Limit, Measure

Word = Cause | Condition | Finding | Inspection | Layout | Limit | Measure | Rule

_SPLIT = re.compile(r"[^a-z0-9]+")
_IDLE_WORDS = frozenset(
    [
        "a",
        "an",
        "and",
        "are",
        "as",
        "at",
        "be",
        "been",
        "but",
        "by",
        "did",
        "do",
        "does",
        "for",
        "from",
        "get",
        "gets",
        "got",
        "had",
        "has",
        "have",
        "i",
        "in",
        "is",
        "it",
        "its",
        "my",
        "of",
        "on",
        "or",
        "our",
        "so",
        "than",
        "that",
        "the",
        "then",
        "there",
        "they",
        "this",
        "to",
        "too",
        "very",
        "was",
        "we",
        "were",
        "when",
        "while",
        "with",
        "you",
        "your",
    ]
)
_CLOSE = 82.0  #: how alike two words must be, of 100, to be one misspelt
_ALIKE = {  # one word for one thing
    "pan": "sump",
    "oilpan": "sump",
    "strainer": "screen",
    "mesh": "screen",
    "light": "lamp",
    "engine": "",
    "motor": "",
    "oil": "",
    "meter": "gauge",
    "gage": "gauge",
    "guage": "gauge",
    "tappet": "lifter",
    "lifters": "lifter",
    "tappets": "lifter",
    "sending": "sender",
    "transmitter": "sender",
    "switch": "sender",
    "piston": "plunger",
    "hose": "line",
    "pipe": "line",
    "capillary": "line",
    "revs": "rpm",
    "rpm": "rpm",
    "shim": "shims",
    "petrol": "fuel",
    "gasoline": "fuel",
    "gas": "fuel",
    "bits": "pieces",
    "swarf": "metal",
    "shavings": "metal",
    "filings": "metal",
    "flakes": "metal",
    "chips": "metal",
    "chocolate": "milky",
    "antifreeze": "coolant",
    "water": "coolant",
    "noise": "noise",
    "knocks": "knock",
    "knocking": "knock",
    "banging": "knock",
    "ticking": "clatter",
    "tick": "clatter",
    "tapping": "clatter",
    "clattering": "clatter",
    "rattle": "rattle",
    "rattling": "rattle",
    "fluctuates": "wavers",
    "fluctuating": "wavers",
    "fluctuation": "wavers",
    "flickers": "wavers",
    "flickering": "wavers",
    "flicker": "wavers",
    "dances": "wavers",
    "bounces": "wavers",
    "bouncing": "wavers",
    "corner": "bends",
    "corners": "bends",
    "cornering": "bends",
    "turns": "bends",
    "seized": "seized",
    "locked": "seized",
    "warm": "hot",
}


def tokens(text: str) -> list[str]:
    """The words that matter, folded onto one spelling each."""
    out = []
    for raw in _SPLIT.split(text.lower()):
        word = _ALIKE.get(raw, raw)
        if not word or raw in _IDLE_WORDS:
            continue
        if len(word) > 4 and word.endswith("s") and not word.endswith("ss"):
            word = word[:-1]
        out.append(word)
    return out


@dataclass(frozen=True, slots=True)
class Hit:
    """A word of the book and how well it fits, 0 to 1."""

    word: Word
    score: float


@dataclass(frozen=True)
class Finder:
    """An index over every phrase of the book."""

    book: Book

    @cached_property
    def _phrases(self) -> list[tuple[Word, frozenset[str], float]]:
        out = []
        for word in self._words():
            for text, trust in _texts(word):
                found = frozenset(tokens(text))
                if found:
                    out.append((word, found, trust))
        return out

    @cached_property
    def _weight(self) -> dict[str, float]:
        """Rare words tell more."""
        seen: Counter[str] = Counter()
        for _, found, _ in self._phrases:
            seen.update(found)
        total = len(self._phrases)
        return {t: log(1 + total / n) for t, n in seen.items()}

    def _words(self) -> Iterable[Word]:
        b = self.book
        yield from b.findings.values()
        yield from b.causes.values()
        yield from b.inspections.values()
        yield from b.measures.values()
        yield from b.conditions.values()
        yield from b.layouts.values()
        yield from b.limits.values()
        yield from b.rules.values()

    def find(self, text: str, kinds: tuple[type, ...] = (), how_many: int = 8) -> list[Hit]:
        """The words that fit best, best first."""
        from rapidfuzz import fuzz, process

        asked = list(dict.fromkeys(tokens(text)))[:40]
        if not asked:
            return []
        vocabulary = list(self._weight)
        close: dict[str, dict[str, float]] = {}
        for token in asked:
            near = process.extract(
                token, vocabulary, scorer=fuzz.ratio, score_cutoff=_CLOSE, limit=12
            )
            close[token] = {w: s / 100 for w, s, _ in near}
            if len(token) >= 4:
                for w in vocabulary:
                    if len(w) >= 4 and (w.startswith(token) or token.startswith(w)):
                        close[token][w] = max(close[token].get(w, 0.0), 0.85)
        worth = {t: max((self._weight[w] for w in close[t]), default=3.0) for t in asked}
        total = sum(worth.values())
        best: dict[int, Hit] = {}
        for word, found, trust in self._phrases:
            if kinds and not isinstance(word, kinds):
                continue
            got = 0.0
            met: set[str] = set()
            for token in asked:
                match = max(((s, w) for w, s in close[token].items() if w in found), default=None)
                if match:
                    got += worth[token] * match[0]
                    met.add(match[1])
            if not met:
                continue
            said = sum(self._weight[w] for w in found)
            covers = sum(self._weight[w] for w in met) / said
            score = trust * (got / total) * (0.55 + 0.45 * covers)
            old = best.get(id(word))
            if old is None or score > old.score:
                best[id(word)] = Hit(word, score)
        ranked = sorted(best.values(), key=lambda h: (-h.score, h.word.id))
        return [h for h in ranked[:how_many] if h.score >= 0.25]


def _texts(word: Word) -> Iterable[tuple[str, float]]:
    """The phrases a word goes by, with how far each can be trusted to mean it."""
    yield word.id.replace("_", " "), 1.0
    if isinstance(word, Rule):
        yield word.says, 0.6
        return
    yield word.says, 1.0 if isinstance(word, Finding) else 0.95
    if isinstance(word, Finding | Measure):
        yield word.asks, 0.9
    if isinstance(word, Cause | Condition):
        yield word.mechanism, 0.7
    for phrase in getattr(word, "also", ()):
        yield phrase, 1.0
