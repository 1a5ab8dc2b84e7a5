"""Find what a person meant by an everyday or misspelt phrase."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cached_property
from math import log

from diagnose.lookup.tokens import OTHER_NAMES, joined, stem, tokens
from knowledge.book import Book, made_once
from knowledge.faults import Fault
from knowledge.limits import Limit
from knowledge.model import Cause, Condition, Finding, Kind, Measure
from knowledge.reports.shapes import TrialKind, WorkArea
from knowledge.rule_api import InhibitorGroup, LinkGroup, Rule
from knowledge.synonyms import FAINT
from knowledge.work import Inspection, Layout, Part, Task

Word = (
    Cause
    | Condition
    | Fault
    | Finding
    | InhibitorGroup
    | Inspection
    | Layout
    | Limit
    | LinkGroup
    | Measure
    | Part
    | Rule
    | Task
    | TrialKind
    | WorkArea
)
#: kinds of word: type, and name of the table in the book
KINDS: dict[str, tuple[type, str]] = {
    "finding": (Finding, "findings"),
    "cause": (Cause, "causes"),
    "inspection": (Inspection, "inspections"),
    "measure": (Measure, "measures"),
    "task": (Task, "tasks"),
    "part": (Part, "parts"),
    "condition": (Condition, "conditions"),
    "layout": (Layout, "layouts"),
    "limit": (Limit, "limits"),
    "trial": (TrialKind, "trials"),
    "area": (WorkArea, "areas"),
    "fault": (Fault, "faults"),
    "rule": (Rule, "rules"),
    "links": (LinkGroup, "links"),
    "inhibitors": (InhibitorGroup, "inhibitors"),
}

_FOUND = 0.75  #: weight of a fault, beside the finding that proves it
_BUILD = 0.8  #: weight of how an engine is built, beside what is wrong with it
_FAINT = 0.5  #: weight of a common word beside another
_SWAPPED = 0.9  #: similarity, 0 to 1, of two words that differ by two swapped letters
STRETCH, PART = 3, 0.8  #: length of a part of a long text, and how far its score counts
_BEGINS, _LONGER = 0.85, 0.5  #: similarity of a word and its beginning: misspelt, or itself a word
_LEAST_SCORE = 0.25  #: of a hit, 0 to 1
_ASKED, _COVERED = 0.55, 0.45  #: shares of a score: what was asked for, and how much of the phrase
_MOST_TOKENS, _UNKNOWN = 40, 3.0  #: words of a text that are looked up; weight of an unknown one
_LEAST_BEGINNING = 4  #: letters of a word that others may begin with
_CLOSE = 82.0  #: least similarity, 0 to 100, of a misspelt word


@dataclass(frozen=True, slots=True)
class Hit:
    """A word of the book and how well it matches, 0 to 1."""

    word: Word
    score: float


@dataclass(frozen=True, slots=True)
class _Phrase:
    """One phrase for a word: its stems, and how far it is trusted to mean the word, 0 to 1."""

    word: Word
    stems: frozenset[str]
    trust: float


@dataclass(frozen=True, slots=True)
class _Stretch:
    """A part of what is looked for: its words by place, their weight, how far its score counts."""

    first: int
    end: int
    weight: float
    share: float


@dataclass(frozen=True)
class Finder:
    """An index over every phrase of the book."""

    book: Book

    @cached_property
    def _tokenised(self) -> list[tuple[Word, list[str], float]]:
        return [(w, tokens(text), trust) for w in self._words() for text, trust in _texts(w)]

    @cached_property
    def known(self) -> frozenset[str]:
        """Every stem used in the book."""
        return frozenset(token for _, text, _ in self._tokenised for token in text)

    @cached_property
    def _phrases(self) -> list[_Phrase]:
        phrases = (
            _Phrase(word, frozenset(joined(text, self.known)), trust)
            for word, text, trust in self._tokenised
        )
        return [phrase for phrase in phrases if phrase.stems]

    @cached_property
    def _places(self) -> dict[str, list[int]]:
        """Numbers of the phrases that contain each stem."""
        places: dict[str, list[int]] = {}
        for number, phrase in enumerate(self._phrases):
            for token in phrase.stems:
                places.setdefault(token, []).append(number)
        return places

    @cached_property
    def _weight(self) -> dict[str, float]:
        """Weights of stems; rare stems weigh more."""
        seen: Counter[str] = Counter()
        counted = [p.stems for p in self._phrases if not isinstance(p.word, Fault)]
        for found in counted:
            seen.update(found)
        for phrase in self._phrases:
            seen.update([t for t in phrase.stems if t not in seen])  # that only a fault has
        total = len(counted)
        faint = {stem(word) for word in FAINT}
        return {t: log(1 + total / n) * (_FAINT if t in faint else 1.0) for t, n in seen.items()}

    def _words(self) -> Iterable[Word]:
        for kind in KINDS:
            yield from words_of(self.book, kind)

    @cached_property
    def _names(self) -> dict[str, str]:
        """Stems of the book, and other names of them, with the stem that each means."""
        other = {k: w for k, w in OTHER_NAMES.items() if w in self._weight}
        return other | {w: w for w in self._weight}

    def _close(self, token: str) -> dict[str, float]:
        """Stems of the book that ``token`` may mean, with their similarity, 0 to 1."""
        if token in self._weight:
            return {token: 1.0, **dict.fromkeys(self._longer(token), _LONGER)}
        from rapidfuzz import fuzz, process

        names = self._names
        near = process.extract(token, list(names), scorer=fuzz.ratio, score_cutoff=_CLOSE, limit=12)
        close = dict.fromkeys(self._longer(token), _BEGINS)
        for name, likeness, _ in near:
            _raise(close, names[name], likeness / 100)
        for name, word in names.items():
            if len(token) >= 4 and _swapped(token, name):
                _raise(close, word, _SWAPPED)
        return close

    def _longer(self, token: str) -> list[str]:
        """Stems of the book that begin with ``token``, or that ``token`` begins with."""
        if len(token) < _LEAST_BEGINNING:
            return []
        known = (w for w in self._weight if len(w) >= _LEAST_BEGINNING)
        return [w for w in known if w != token and (w.startswith(token) or token.startswith(w))]

    def find(self, text: str, kinds: tuple[type, ...] = (), how_many: int = 8) -> list[Hit]:
        """The words that match best, best first: by the whole text, or by a part of a long one.

        ``kinds``: only words of these types.
        """
        asked = list(dict.fromkeys(joined(tokens(text), self.known)))[:_MOST_TOKENS]
        if not asked:
            return []
        close = {token: self._close(token) for token in asked}
        worth = [max((self._weight[w] for w in close[t]), default=_UNKNOWN) for t in asked]
        parts = _stretches(worth)
        best: dict[int, Hit] = {}
        alike = {w for t in asked for w in close[t]}
        for number in sorted({n for w in alike for n in self._places[w]}):
            phrase = self._phrases[number]
            word, found = phrase.word, phrase.stems
            if kinds and not isinstance(word, kinds):
                continue
            matches = [
                max(((s, w) for w, s in close[t].items() if w in found), default=None)
                for t in asked
            ]
            total_weight = sum(self._weight[w] for w in found)
            for part in parts:
                inside = enumerate(matches[part.first : part.end], part.first)
                here = [(worth[k], m) for k, m in inside if m]
                got = sum(value * m[0] for value, m in here)
                covers = sum(self._weight[w] for w in {m[1] for _, m in here}) / total_weight
                score = (
                    phrase.trust * part.share * (got / part.weight) * (_ASKED + _COVERED * covers)
                )
                old = best.get(id(word))
                if score and (old is None or score > old.score):
                    best[id(word)] = Hit(word, score)
        ranked = sorted(best.values(), key=_order)
        return [h for h in ranked[:how_many] if h.score >= _LEAST_SCORE]


finder_of = made_once(Finder)  #: the index of a book


def _order(hit: Hit) -> tuple[float, int, float, str]:
    """Best first; equal scores in the order of the kinds."""
    place = next(i for i, (sort, _) in enumerate(KINDS.values()) if isinstance(hit.word, sort))
    return -round(hit.score, 2), place, -hit.score, hit.word.id


def _raise(close: dict[str, float], word: str, likeness: float) -> None:
    close[word] = max(close.get(word, 0.0), likeness)


def _stretches(worth: list[float]) -> list[_Stretch]:
    """The whole text and, of a long one, every few words in a row; ``worth``: of each word."""
    count = len(worth)
    found = [_Stretch(0, count, sum(worth), 1.0)]
    for first in range(count - STRETCH + 1) if count > STRETCH else ():
        end = first + STRETCH
        found.append(_Stretch(first, end, sum(worth[first:end]), PART))
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


def words_of(book: Book, kind: str) -> list[Word]:
    """Return every word of one kind, in the book's order."""
    return list(getattr(book, KINDS[kind][1]).values())


def _texts(word: Word) -> Iterable[tuple[str, float]]:
    """Yield the phrases for a word, with how far each is trusted to mean it, 0 to 1."""
    if isinstance(word, Rule | LinkGroup | InhibitorGroup):
        yield word.id.replace("_", " "), 0.6
        yield word.says, 0.6
        return
    if isinstance(word, Fault):  # its proof says the same, and is what is recorded
        yield word.id.replace("_", " "), _FOUND
        yield word.says, _FOUND
        return
    if isinstance(word, Finding) and word.kind is Kind.LAYOUT:  # people look for faults first
        yield from ((text, _BUILD) for text in (word.id.replace("_", " "), word.says, word.asks))
        return
    yield word.id.replace("_", " "), 1.0
    yield word.says, 1.0 if isinstance(word, Finding) else 0.95
    if isinstance(word, Finding | Measure | TrialKind | WorkArea):
        yield word.asks, 0.9
    if isinstance(word, Cause | Condition):
        yield word.mechanism, 0.7
    for phrase in getattr(word, "also", ()):
        yield phrase, 1.0
