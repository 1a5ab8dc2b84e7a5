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
#: the sorts of word there are, and the shelf of the book each stands on
KINDS: dict[str, tuple[type, str]] = {
    "finding": (Finding, "findings"),
    "cause": (Cause, "causes"),
    "inspection": (Inspection, "inspections"),
    "measure": (Measure, "measures"),
    "condition": (Condition, "conditions"),
    "layout": (Layout, "layouts"),
    "limit": (Limit, "limits"),
    "rule": (Rule, "rules"),
}

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
_SWAPPED = 0.9  #: how alike two words are, of 1, of which one has two letters swapped
STRETCH, PART = 3, 0.8  #: words in a row looked up by themselves, and how far that is trusted
_CLOSE = 82.0  #: how alike two words must be, of 100, to be one misspelt
_ALIKE = {  # one word for one thing
    "pan": "sump",
    "oilpan": "sump",
    "strainer": "screen",
    "mesh": "screen",
    "light": "lamp",
    "lights": "lamp",
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
        for kind in KINDS:
            yield from shelf(self.book, kind)

    def _close(self, token: str) -> dict[str, float]:
        """Words of the book that ``token`` may be, and how alike they are, 0 to 1."""
        from rapidfuzz import fuzz, process

        vocabulary = list(self._weight)
        near = process.extract(token, vocabulary, scorer=fuzz.ratio, score_cutoff=_CLOSE, limit=12)
        close = {w: s / 100 for w, s, _ in near}
        if len(token) >= 4:
            for w in vocabulary:
                if len(w) >= 4 and (w.startswith(token) or token.startswith(w)):
                    close[w] = max(close.get(w, 0.0), 0.85)
                elif _swapped(token, w):
                    close[w] = max(close.get(w, 0.0), _SWAPPED)
        return close

    def find(self, text: str, kinds: tuple[type, ...] = (), how_many: int = 8) -> list[Hit]:
        """The words that fit best, best first: the whole text, or a stretch of a long one."""
        asked = list(dict.fromkeys(tokens(text)))[:40]
        if not asked:
            return []
        close = {token: self._close(token) for token in asked}
        worth = [max((self._weight[w] for w in close[t]), default=3.0) for t in asked]
        parts = _stretches(worth)
        best: dict[int, Hit] = {}
        for word, found, trust in self._phrases:
            if kinds and not isinstance(word, kinds):
                continue
            matches = [
                max(((s, w) for w, s in close[t].items() if w in found), default=None)
                for t in asked
            ]
            if not any(matches):
                continue
            said = sum(self._weight[w] for w in found)
            for first, last, total, share in parts:
                here = [(worth[k], m) for k, m in enumerate(matches[first:last], first) if m]
                got = sum(value * m[0] for value, m in here)
                covers = sum(self._weight[w] for w in {m[1] for _, m in here}) / said
                score = trust * share * (got / total) * (0.55 + 0.45 * covers)
                old = best.get(id(word))
                if score and (old is None or score > old.score):
                    best[id(word)] = Hit(word, score)
        ranked = sorted(best.values(), key=lambda h: (-h.score, h.word.id))
        return [h for h in ranked[:how_many] if h.score >= 0.25]


def _stretches(worth: list[float]) -> list[tuple[int, int, float, float]]:
    """The whole, and every few words in a row of a longer text: from, to, worth, trust."""
    count = len(worth)
    found = [(0, count, sum(worth), 1.0)]
    if count > STRETCH:
        found += [
            (k, k + STRETCH, sum(worth[k : k + STRETCH]), PART) for k in range(count - STRETCH + 1)
        ]
    return found


def _swapped(a: str, b: str) -> bool:
    """Whether two neighbouring letters changed places.

    >>> _swapped("idel", "idle")
    True
    """
    if len(a) != len(b):
        return False
    off = [i for i, (x, y) in enumerate(zip(a, b, strict=True)) if x != y]
    return len(off) == 2 and off[1] == off[0] + 1 and a[off[0]] + a[off[1]] == b[off[1]] + b[off[0]]


def shelf(book: Book, kind: str) -> list[Word]:
    """Every word of one kind, in the book's order."""
    return list(getattr(book, KINDS[kind][1]).values())


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
