"""Match sets of words that stand together in a clause or sentence, in whatever order."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from diagnose.understanding.text import (
    Clause,
    Sentence,
    Token,
    is_bare_noun,
    is_done,
    spelled,
    stemmed,
)
from knowledge.lexicon.other_things import NOT_THE_OIL
from knowledge.lexicon.stance import NEGATION, NOT

_NEAR, _FAR = 10, 20  #: most words from the first of a group to the last: in a clause, a sentence
_NOT_GAP = 2  #: most words between a negation and what it denies
_LONG = 5  #: letters of a form in "ed" that is not the noun of the same stem: "drained", "drain"
_DONE = "~"  #: before the stem of such a form
_BESIDE = 5  #: the same, where one of the words is "it" or "they", which may mean anything
_PRONOUNS = frozenset(["it", "its", "she", "they", "them", "thing"])
_NEGATION = frozenset(NEGATION)
_NOT = frozenset(stemmed(w) for w in NOT.split("|"))


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
    sets: tuple[tuple[tuple[str, ...], ...], ...]  #: alternatives, each a row of words
    wide: tuple[bool, ...]  #: of each set: it may stand anywhere in the sentence
    without: tuple[tuple[str, ...], ...]


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
            if group not in listed:
                listed.append(group)

    def find(self, sentence: Sentence) -> Iterator[Together]:
        """Every group that stands in a sentence, once for each clause."""
        tokens = sentence.tokens
        seen: set[tuple[str, bool, int]] = set()
        for i, token in enumerate(tokens):
            keys = {token.stem, f"={token.word}", *(f"@{k}" for k in token.kinds)}
            if token.word != token.stem:
                keys.add(_DONE + token.stem)
            if token.stem in _NOT:
                keys.add("@not")
            for group in (g for key in keys for g in self._by_word.get(key, ())):
                clause = next(c for c in sentence.clauses if c.first <= i < c.last)
                found = _match(group, tokens, i, clause)
                if found is None or (group.finding, group.there, clause.first) in seen:
                    continue
                seen.add((group.finding, group.there, clause.first))
                yield found


def _match(group: _Group, tokens: Sequence[Token], at: int, clause: Clause) -> Together | None:
    """A group whose first set stands at a place, the nearest words of the others."""
    places = _places(group, tokens, at, clause, ())
    narrow = not any(group.wide)
    if places is None:
        return None
    whole = not narrow or any(tokens[p].word in _PRONOUNS for p in places)
    region = Clause(0, len(tokens)) if whole else clause
    if any(
        _row(row, tokens, i, region.last)
        for i in range(region.first, region.last)
        for row in group.without
    ):
        return None
    negates = any(_is_negation(tokens[p]) for p in places)
    return Together(group.finding, group.there, tuple(sorted(places)), negates, narrow)


def _places(
    group: _Group,
    tokens: Sequence[Token],
    at: int,
    clause: Clause,
    taken: tuple[int, ...],
    k: int = 0,
) -> tuple[int, ...] | None:
    """The places of words of the sets from ``k`` on, none used twice; None where they do not stand."""
    if k == len(group.sets):
        return taken
    region = Clause(0, len(tokens)) if group.wide[k] else clause
    starts: Iterable[int] = [at]
    if k:
        starts = sorted(range(region.first, region.last), key=lambda i: abs(i - at))
    most = _FAR if any(group.wide) else _NEAR
    for i in starts:
        if k and abs(i - at) > most:
            break
        rows = (_row(row, tokens, i, region.last) for row in group.sets[k])
        for found in sorted((r for r in rows if r), key=len, reverse=True):
            every = (*taken, *found)
            near = _BESIDE if any(_may_be_any(tokens, i, every) for i in every) else most
            if set(found) & set(taken) or max(every) - min(every) > near:
                continue
            places = _places(group, tokens, at, clause, every, k + 1)
            if places is not None:
                return places
    return None


def _may_be_any(tokens: Sequence[Token], at: int, places: Sequence[int]) -> bool:
    """Whether a place holds a pronoun that is not inside a row of words: "shut it down" has one."""
    inside = at - 1 in places and at + 1 in places
    return tokens[at].word in _PRONOUNS and not inside


def _row(row: tuple[str, ...], tokens: Sequence[Token], at: int, last: int) -> tuple[int, ...]:
    """The places of words in a row from a place on; empty where they do not stand there."""
    places: list[int] = []
    for word in row:
        spare = _NOT_GAP if places and tokens[places[-1]].stem in _NOT else 0
        begin = at if not places else places[-1] + 1
        for i in range(begin, min(begin + spare + 1, last)):
            if tokens[i].is_mark:
                return ()
            if _fits(word, tokens[i]) and not (word == "oil" and _names_another(row, tokens, i)):
                places.append(i)
                break
        else:
            return ()
    return tuple(places)


def _names_another(row: tuple[str, ...], tokens: Sequence[Token], at: int) -> bool:
    """Whether "oil" only begins the name of something else: "oil pressure", "oil passages"."""
    after = tokens[at + 1].word if at + 1 < len(tokens) else ""
    return row[-1] == "oil" and after in NOT_THE_OIL


def _is_negation(token: Token) -> bool:
    return token.stem in _NOT or token.word in _NEGATION


def _fits(word: str, token: Token) -> bool:
    if word == "@not":
        return token.stem in _NOT
    if word.startswith("@"):
        return word[1:] in token.kinds
    if word.startswith("="):
        return token.word == word[1:]
    if word.startswith(_DONE):
        verb = token.word != token.stem and not is_bare_noun(token.word)
        return token.stem == word[len(_DONE) :] and verb
    return token.stem == word


def _group(finding: str, there: bool, text: str) -> _Group:
    """A group from its text."""
    wanted, _, without = text.partition(" - ")
    pieces = re.split(r" ([+&]) ", wanted)
    return _Group(
        finding,
        there,
        tuple(_alternatives(piece) for piece in pieces[::2]),
        (False, *(joint == "&" for joint in pieces[1::2])),
        _alternatives(without) if without else (),
    )


def _alternatives(text: str) -> tuple[tuple[str, ...], ...]:
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
