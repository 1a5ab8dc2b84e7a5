"""Words and numbers of a text with their places, cut into sentences and clauses."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache
from itertools import pairwise
from typing import Protocol

from diagnose.lookup.tokens import stem
from diagnose.understanding.words.figures import figures
from diagnose.understanding.words.unmarked import openings
from diagnose.understanding.words.written_out import is_oil_pressure, written_out
from knowledge.lexicon.stance.stance import NOT
from knowledge.lexicon.words.spelling import COUNTED_PARTS, JOINED, NAMES_AND_DEEDS
from knowledge.lexicon.words.word_sets import set_of as _set
from knowledge.synonyms import IRREGULAR

_PIECE = re.compile(r"[^\W_]+(?:['’/][^\W_]+)*|[^\w\s]|_", re.UNICODE)
_HYPHENATED = re.compile(r"[^\W_]+(?:[-‐‑'’/][^\W_]+)+")
_ENDS = frozenset(".!?;")
_FULL = 40  #: characters of a line that may have been broken because it was full
_FILLED = 0.8  #: share of the width from which a line is full; few such lines are no broken text
_BULLETS = frozenset(["-", "–", "—", "*", "•", "·", ">"])  #: begin a line of a list
_COMMAS = frozenset(",:()-–—")
_DROPPED = str.maketrans("", "", "-‐‑'’")  #: inside a word
#: words that begin a clause of their own
_BEGINS = frozenset(["but", "however", "although", "though", "except", "whereas"])
#: before "now" these are of the present as well: "is now 30"
_BEFORE_NOW = _set(
    "is its was are and but then just right only to at reads read shows until till by up for"
)
#: after "and", these begin a clause of their own
_NEW_SUBJECT = _set(
    "i it its now then still we there when after if sometimes my ive runs is sounds "
    "has drops reads goes the gauge pressure oil light lamp lifters engine level no "
    "nothing zero not new lifter she shes they theyre theres he hes needle was had "
    "replaced changed cleaned since before at only a stays came"
)


@dataclass(frozen=True, slots=True)
class Token:
    """A word, number or mark; ``word``: lower case without apostrophe, ``stem``: to compare by."""

    start: int
    end: int
    word: str
    stem: str
    kinds: frozenset[str] = frozenset()  #: of a number; 'mark' of a punctuation mark
    value: str = ""  #: of a number, as a case file writes it

    @property
    def is_mark(self) -> bool:
        """Whether it is punctuation."""
        return "mark" in self.kinds

    @property
    def is_figure(self) -> bool:
        """Whether it is a number."""
        return bool(self.kinds) and not self.is_mark

    @property
    def heads(self) -> tuple[str, ...]:
        """The words under which a phrase that begins with it may be listed."""
        kinds = sorted(f"@{k}" for k in self.kinds)
        return tuple(dict.fromkeys((self.stem, self.word, *kinds)))

    @property
    def keys(self) -> tuple[str, ...]:
        """All that it may be looked for as.

        Its stem; ``=`` and the word; ``@`` and a kind; ``~`` and the stem where it is more than the
        bare noun ("plugged", not "plug"), ``~~`` where it is another form of the stem as well; and
        ``@not`` of a negation.
        """
        keys = [self.stem, f"={self.word}", *sorted(f"@{k}" for k in self.kinds)]
        if not is_bare_noun(self.word):
            keys.append(f"~{self.stem}")
            if self.word != self.stem:
                keys.append(f"~~{self.stem}")
        if self.stem in DENIES:
            keys.append("@not")
        return tuple(keys)


class Tokens(tuple[Token, ...]):
    """The tokens of a sentence, with what is looked up in them again and again."""

    @cached_property
    def keys(self) -> tuple[tuple[str, ...], ...]:
        """All that each may be looked for as."""
        return tuple(t.keys for t in self)

    @cached_property
    def every(self) -> frozenset[str]:
        """All that any of them may be looked for as."""
        return frozenset(k for keys in self.keys for k in keys)

    @cached_property
    def heads(self) -> tuple[tuple[str, ...], ...]:
        """The words under which a phrase that begins with each may be listed."""
        return tuple(t.heads for t in self)

    @cached_property
    def every_head(self) -> frozenset[str]:
        """The words under which a phrase that stands in them is listed."""
        return frozenset(k for heads in self.heads for k in heads)

    @cached_property
    def places(self) -> dict[str, list[int]]:
        """Where each word that may be looked for stands."""
        found: dict[str, list[int]] = {}
        for place, keys in enumerate(self.keys):
            for key in keys:
                found.setdefault(key, []).append(place)
        return found


@dataclass(frozen=True, slots=True)
class Clause:
    """Tokens ``first`` to before ``last`` of a sentence that state one thing."""

    first: int
    last: int


@dataclass(frozen=True, slots=True)
class Sentence:
    """The tokens between two full stops, and its clauses."""

    tokens: Tokens
    clauses: tuple[Clause, ...]
    asks: bool  #: ends with a question mark


@lru_cache(maxsize=20_000)
def stemmed(word: str) -> str:
    """The stem a word is compared by.

    >>> stemmed("leaking") == stemmed("leaks")
    True
    """
    return stem(IRREGULAR.get(word, word))


#: stems of negations
DENIES = frozenset(stemmed(w) for w in NOT.split("|"))


def is_done(word: str) -> bool:
    """Whether a word is what is done, in a form of its own: "plugged" is no plug.

    >>> is_done("plugged"), is_done("plugs"), is_done("leaking")
    (True, False, False)
    """
    return word.endswith(("ed", "ing")) and stemmed(word) in NAMES_AND_DEEDS


def is_bare_noun(word: str) -> bool:
    """Whether a word names a part that is also something one does: "plug", "plugs", "drain"."""
    return word in NAMES_AND_DEEDS or (word.endswith("s") and word[:-1] in COUNTED_PARTS)


def spelled(text: str) -> str:
    """A word in lower case, without apostrophes and hyphens.

    >>> spelled("Didn't"), spelled("pick-up")
    ('didnt', 'pickup')
    """
    return text.lower().translate(_DROPPED)


class Spelling(Protocol):
    """Which words are known, and what a misspelt one means."""

    def knows(self, word: str) -> bool:
        """Whether it is a word of the lexicon."""

    def right(self, word: str) -> str:
        """The word, or the one it is a misspelling of."""


def sentences(text: str, spelling: Spelling) -> list[Sentence]:
    """Cut a text into sentences of tokens, each word in its right spelling."""
    text = written_out(text)
    found: list[Sentence] = []
    current: list[Token] = []
    for token in _tokens(text, spelling):
        if token.is_mark and token.word in _ENDS:
            found.append(sentence_of(current, token.word == "?"))
            current = []
        else:
            current.append(token)
    found.append(sentence_of(current, False))
    return [s for s in found if s.tokens]


def _tokens(text: str, spelling: Spelling) -> list[Token]:
    out: list[Token] = []
    at = 0
    for figure in figures(_unbroken(text)):
        out += _words(text, at, figure.start, spelling)
        word = text[figure.start : figure.end].lower()
        out.append(Token(figure.start, figure.end, word, word, figure.kinds, figure.value))
        at = figure.end
    return _marked(_joined(out + _words(text, at, len(text), spelling)))


def _marked(tokens: list[Token]) -> list[Token]:
    """Tokens with a comma or a stop of no width, behind the word before, where a mark is missing."""
    for place, stops in reversed(list(openings(tokens))):
        at, mark = tokens[place - 1].end, "." if stops else ","
        tokens.insert(place, Token(at, at, mark, mark, frozenset({"mark"})))
    return tokens


def _joined(tokens: Iterable[Token]) -> list[Token]:
    """Tokens with two words made one where the trade writes them both ways: "dip stick"."""
    out: list[Token] = []
    for token in tokens:
        whole = JOINED.get((out[-1].word, token.word)) if out else None
        if whole is None:
            out.append(token)
        else:
            out[-1] = Token(out[-1].start, token.end, whole, stemmed(whole))
    return out


def _words(text: str, start: int, end: int, spelling: Spelling) -> list[Token]:
    out: list[Token] = []
    at = start
    while at < end:
        if text[at] == "\n" and at in _line_ends(text):
            out.append(Token(at, at + 1, ".", ".", frozenset({"mark"})))
        whole = _HYPHENATED.match(text, at, end)
        if whole and spelling.knows(joined := spelled(whole[0])):
            out.append(Token(at, whole.end(), joined, stemmed(joined)))
            at = whole.end()
            continue
        piece = _PIECE.match(text, at, end)
        if piece is None:
            at += 1
            continue
        word = piece[0].lower()
        if is_oil_pressure(text, piece):
            out.append(Token(at, at, "oil", stemmed("oil")))
            out.append(Token(at, piece.end(), "pressure", stemmed("pressure")))
        elif word[0].isalnum():
            word = spelling.right(spelled(word))
            out.append(Token(at, piece.end(), word, stemmed(word)))
        else:
            out.append(Token(at, piece.end(), word, word, frozenset({"mark"})))
        at = piece.end()
    return out


def _unbroken(text: str) -> str:
    """The text with a blank for each line break that only a full line made: "at\\n3000 rpm"."""
    ends = _line_ends(text)
    return "".join(" " if c == "\n" and i not in ends else c for i, c in enumerate(text))


@lru_cache(maxsize=4)
def _line_ends(text: str) -> frozenset[int]:
    """Where a line break is meant: the next word would have had room, or all lines are short.

    >>> sorted(_line_ends("level ok\\nno leaks"))
    [8]
    """
    lines = text.split("\n")
    width = max(len(line.rstrip()) for line in lines)
    full = sum(len(line.rstrip()) >= _FILLED * width for line in lines[:-1])
    uneven = len(lines) > len(("full", "last")) and 2 * full <= len(lines) - 1
    found, at = set(), -1
    for line, following in pairwise(lines):
        at += len(line) + 1
        word = following.split(maxsplit=1)
        if (
            width < _FULL
            or uneven
            or not word
            or word[0] in _BULLETS
            or len(line.rstrip()) + 1 + len(word[0]) <= width
        ):
            found.add(at)
    return frozenset(found)


def sentence_of(tokens: Sequence[Token], asks: bool) -> Sentence:
    """A sentence of these tokens, cut into clauses."""
    kept = Tokens(tokens)
    cuts = [0]
    for i, token in enumerate(kept):
        nxt = kept[i + 1].word if i + 1 < len(kept) else ""
        if token.is_mark and token.word in _COMMAS:
            cuts.append(i + 1)
        elif i and (
            token.word in _BEGINS
            or (token.word == "now" and _turns_to_now(kept, cuts[-1], i))
            or _turns_to_others(kept, i)
            or (token.word in ("and", "then", "so") and nxt in _NEW_SUBJECT)
        ):
            cuts.append(i)
    cuts.append(len(kept))
    pairs = pairwise(cuts)
    return Sentence(kept, tuple(Clause(a, b) for a, b in pairs if b > a), asks)


def _turns_to_now(tokens: Sequence[Token], first: int, now: int) -> bool:
    """Whether "now" turns from one figure to another: "was 25 now 12", "50 last season now 30"."""
    if tokens[now - 1].is_figure:
        return True
    after = tokens[now + 1 : now + 3]
    verb = tokens[now - 1].word in _BEFORE_NOW
    return (
        not verb and any(t.is_figure for t in after) and any(t.is_figure for t in tokens[first:now])
    )


def _turns_to_others(tokens: Sequence[Token], at: int) -> bool:
    """Whether the values of the others begin behind a figure: "rear main .007 the others .003"."""
    words = [t.word for t in tokens[at : at + 4]]
    ahead = next((k for k, word in enumerate(words) if word not in ("the", "all")), 0)
    before = at - 2 if tokens[at - 1].word == "and" else at - 1
    if not tokens[before].is_figure or words[ahead] not in ("others", "rest"):
        return False
    return any(t.is_figure for t in tokens[at + ahead + 1 : at + ahead + 4])


def clause_at(clauses: Iterable[Clause], at: int) -> Clause:
    """The clause that a token stands in; StopIteration where there is none."""
    return next(c for c in clauses if c.first <= at < c.last)
