"""Match sets of words that stand together in a clause or sentence, in whatever order."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from diagnose.understanding.words.phrases import all_among
from diagnose.understanding.words.text import (
    DENIES,
    Clause,
    Sentence,
    Token,
    Tokens,
    is_done,
    spelled,
    stemmed,
)
from knowledge.lexicon.meant.beside_what_shows import NOT_THE_OIL
from knowledge.lexicon.stance.stance import NEGATION

_NEAR, _FAR = 10, 20  #: most words from the first of a group to the last: in a clause, a sentence
_JOINS = frozenset(["and", "but", "with", "plus"])
_NOT_GAP = 2  #: most words between a negation and what it denies
_LONG = 5  #: letters of a form in "ed" that is not the noun of the same stem: "drained", "drain"
_DONE = "~~"  #: before the stem of such a form
_BESIDE = 5  #: the same, where one of the words is "it" or "they", which may mean anything
_PRONOUNS = frozenset(["it", "its", "she", "they", "them", "thing"])
_NEGATION = frozenset(NEGATION)
_Row = tuple[str, ...]  #: words that follow each other, as ``Token.keys`` has them


@dataclass(frozen=True, slots=True)
class Together:
    """A group found: its finding, whether that is there, and the places of its words."""

    finding: str
    there: bool
    places: tuple[int, ...]
    negates: bool  #: a negation is part of the group itself
    narrow: bool  #: all in one clause

    @property
    def first(self) -> int:
        """The first place."""
        return self.places[0]

    @property
    def last(self) -> int:
        """The place after the last."""
        return self.places[-1] + 1


@dataclass(frozen=True, slots=True)
class _Group:
    finding: str
    there: bool
    sets: tuple[tuple[_Row, ...], ...]  #: alternatives, each a row of words
    wide: tuple[bool, ...]  #: of each set: it may stand anywhere in the sentence
    without: tuple[_Row, ...]
    begin: tuple[frozenset[str], ...]  #: the first words of each set but the first


class Groups:
    """Groups of words by what they mean, ready to be looked for."""

    def __init__(
        self, there: Mapping[str, Iterable[str]], absent: Mapping[str, Iterable[str]]
    ) -> None:
        self.words: set[str] = set()
        self._by_word: dict[str, list[_Group]] = {}
        for said, table in ((True, there), (False, absent)):
            for finding, texts in table.items():
                for text in texts:
                    self._add(_group(finding, said, text))

    def _add(self, group: _Group) -> None:
        for row in (r for alternatives in group.sets for r in alternatives):
            self.words.update(w.lstrip("=~") for w in row if not w.startswith("@"))
        for row in group.sets[0]:
            listed = self._by_word.setdefault(row[0], [])
            if not listed or listed[-1] is not group:
                listed.append(group)

    def find(self, sentence: Sentence) -> Iterator[Together]:
        """Every group that stands in a sentence, once for each clause."""
        tokens = sentence.tokens
        search = _Search(tokens)
        seen: set[tuple[str, bool, int]] = set()
        for clause in sentence.clauses:
            for i in range(clause.first, clause.last):
                for group in (g for k in tokens.keys[i] for g in self._by_word.get(k, ())):
                    what = (group.finding, group.there, clause.first)
                    if what in seen or not all_among(group.begin, tokens.every):
                        continue
                    found = _match(group, search, i, clause)
                    if found is not None:
                        seen.add(what)
                        yield found


class _Search:
    """Where rows of words stand in a sentence; each is looked for once."""

    def __init__(self, tokens: Tokens) -> None:
        self.tokens = tokens
        self._rows: dict[tuple[int, int, int], list[tuple[int, ...]]] = {}

    def starts(self, rows: tuple[_Row, ...], region: Clause) -> list[int]:
        """The places of a region at which one of the rows may begin."""
        places = self.tokens.places
        found = {i for row in rows for i in places.get(row[0], ())}
        return sorted(i for i in found if region.first <= i < region.last)

    def rows(self, rows: tuple[_Row, ...], at: int, last: int) -> list[tuple[int, ...]]:
        """The places of those of the rows that stand at a place, the longest first."""
        key = (id(rows), at, last)
        if key not in self._rows:
            found = (_row(row, self.tokens, at, last) for row in rows)
            self._rows[key] = sorted((r for r in found if r), key=len, reverse=True)
        return self._rows[key]


def _match(group: _Group, search: _Search, at: int, clause: Clause) -> Together | None:
    """A group whose first set stands at a place, the nearest words of the others."""
    tokens = search.tokens
    places = _places(group, search, at, clause, ())
    narrow = not any(group.wide)
    if places is None:
        return None
    whole = not narrow or any(tokens[p].word in _PRONOUNS for p in places)
    region = Clause(0, len(tokens)) if whole else clause
    without = search.starts(group.without, region)
    if any(search.rows(group.without, i, region.last) for i in without):
        return None
    negates = any(_is_negation(tokens[p]) for p in places)
    return Together(group.finding, group.there, tuple(sorted(places)), negates, narrow)


def _places(
    group: _Group,
    search: _Search,
    at: int,
    clause: Clause,
    taken: tuple[int, ...],
    k: int = 0,
) -> tuple[int, ...] | None:
    """The places of words of the sets from ``k`` on, none used twice; None where they do not stand."""
    if k == len(group.sets):
        return taken
    tokens = search.tokens
    region = Clause(0, len(tokens)) if group.wide[k] else clause
    starts: Iterable[int] = [at]
    if k:
        starts = sorted(search.starts(group.sets[k], region), key=lambda i: abs(i - at))
    most = _FAR if any(group.wide) else _NEAR
    for i in starts:
        if k and abs(i - at) > most:
            break
        for found in search.rows(group.sets[k], i, region.last):
            every = (*taken, *found)
            near = _BESIDE if any(_may_be_any(tokens, i, every) for i in every) else most
            if set(found) & set(taken) or max(every) - min(every) > near:
                continue
            places = _places(group, search, at, clause, every, k + 1)
            if places is not None:
                return places
    return None


def _may_be_any(tokens: Sequence[Token], at: int, places: Sequence[int]) -> bool:
    """Whether a place holds a pronoun that is not inside a row of words: "shut it down" has one."""
    inside = at - 1 in places and at + 1 in places
    return tokens[at].word in _PRONOUNS and not inside


def _row(row: _Row, tokens: Tokens, at: int, last: int) -> tuple[int, ...]:
    """The places of words in a row from a place on; empty where they do not stand there."""
    places: list[int] = []
    keys = tokens.keys
    for word in row:
        spare = _NOT_GAP if places and "@not" in keys[places[-1]] else 0
        begin = at if not places else places[-1] + 1
        for i in range(begin, min(begin + spare + 1, last)):
            if tokens[i].is_mark or (spare and tokens[i].word in _JOINS):
                return ()  # "no pressure and metal in the filter"
            if word in keys[i] and not (word == "oil" and _names_another(row, tokens, i)):
                places.append(i)
                break
        else:
            return ()
    return tuple(places)


def _names_another(row: _Row, tokens: Sequence[Token], at: int) -> bool:
    """Whether "oil" only begins the name of something else: "oil pressure", "oil passages"."""
    after = tokens[at + 1].word if at + 1 < len(tokens) else ""
    return row[-1] == "oil" and after in NOT_THE_OIL


def _is_negation(token: Token) -> bool:
    return token.stem in DENIES or token.word in _NEGATION


def _group(finding: str, there: bool, text: str) -> _Group:
    """A group from its text."""
    wanted, _, without = text.partition(" - ")
    pieces = re.split(r" ([+&]) ", wanted)
    sets = tuple(_alternatives(piece) for piece in pieces[::2])
    return _Group(
        finding,
        there,
        sets,
        (False, *(joint == "&" for joint in pieces[1::2])),
        _alternatives(without) if without else (),
        tuple(frozenset(row[0] for row in rows) for rows in sets[1:]),
    )


@cache
def _alternatives(text: str) -> tuple[_Row, ...]:
    return tuple(
        tuple(_word(w) for w in each.split("_") if w) for each in text.strip().split("|") if each
    )


@cache
def _word(word: str) -> str:
    if word.startswith("@"):
        return word
    if word.startswith("="):
        return "=" + spelled(word[1:])
    done = len(word) > _LONG and word.endswith("ed") and stemmed(spelled(word)) + "ed" == word
    done = done or is_done(spelled(word))
    return (_DONE if done else "") + stemmed(spelled(word))
