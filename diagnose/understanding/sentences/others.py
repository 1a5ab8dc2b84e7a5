"""Which words of a sentence are said of another engine than the one in question."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from diagnose.understanding.sentences.sides import side_of
from diagnose.understanding.words.lexicon import Lexicon
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Clause, Sentence, Token
from knowledge.lexicon.shows.beside_pressure import GAUGE_WORDS
from knowledge.lexicon.shows.instruments_named import TEST_KINDS, TOOLS, USED
from knowledge.lexicon.stance.stance_words import (
    AGAINST,
    ASKED,
    BORROWED,
    GAVE,
    GOT,
    HELPED,
    HELPED_BY,
    HELPS,
    HOLES,
    LOOK,
    MACHINES,
    NORMS,
    OF_PERSONS,
    OWN_READING,
    OWN_SOURCES,
    PASSERS_BY,
    PERSONS,
    SPOKE,
)
from knowledge.reports.words import Done

_LENT = 3  #: words before a person in which it is said that his gauge was used
_TOOL_IN = 3  #: words behind him that may name his tool
_SOON = 4  #: words behind people in which it is said what they did
_MACHINE_IN = 4  #: words behind "my dad's" that may name the machine
#: before another engine: what was said so far is of it
_OF = frozenset(["on", "in", "with", "of", "from", "for"])
#: begin a sentence that goes on about another's engine
_GO_ON = frozenset(["his", "theirs", "hers", "that", "he", "they"])
#: after a person who lends a hand: the engine is not in question
_OWNS = frozenset(["his", "her", "hers", "their", "theirs"])


def of_others(
    sentence: Sentence, lexicon: Lexicon, elsewhere: bool, side: str, theirs: bool = False
) -> Iterator[tuple[int, int]]:
    """Runs of tokens said of another engine, each up to where the person comes back to this one.

    ``elsewhere``: the sentence before was of another; ``side``: that of two engines which is this one;
    ``theirs``: the engine in question is another person's.
    """
    tokens = sentence.tokens
    sides = lexicon.other_side.find(tokens)
    own = [m for m in sides if side_of(tokens, m) == side]
    sides = [m for m in sides if m not in own]
    swapped = bool(side and sides and not own)  #: "starboard fine, the other reads 10"
    the_other = [k for k, t in enumerate(tokens) if swapped and t.word == "other"]
    back = sorted([*(m.first for m in (*lexicon.this.find(tokens), *own)), *the_other])
    starts = [
        m.first
        for m in (*lexicon.other.find(tokens), *sides)
        if not (theirs and is_of_person(tokens, m))
        and not any(m.first <= k < m.last for k in the_other)
        and not (_is_a_hole(tokens, m.first) or _is_a_helper(tokens, m) or _gave_it(sentence, m))
        and not _is_a_part(tokens, m, lexicon)
        and not _is_a_tool(tokens, m)
        and not _passes_by(tokens, m)
    ]
    if elsewhere and tokens[0].word in _GO_ON:
        starts.append(0)
    starts += _theirs_beside_mine(tokens)
    for start in starts:
        last = next((b for b in back if b > start), len(tokens))
        if tokens[start].word in NORMS:
            last = next((k for k in range(start, last) if tokens[k].word == "but"), last)
        last = min(last, _ends_norm(sentence, start))
        clause = _clause(sentence, start)
        if tokens[min(start + 1, len(tokens) - 1)].word in SPOKE:
            last = min(last, _own_deed(sentence, clause.last) or last)
        off = start and tokens[start - 1].word in ("from", "off")
        if off and _fitted(sentence, lexicon, start):
            yield start, clause.last
            continue  # a part of another engine is on this one now
        behind = start and tokens[start - 1].word in _OF
        yield (_compared(sentence, clause, start) if behind else start), last


def _theirs_beside_mine(tokens: Sequence[Token]) -> list[int]:
    """Where another's gauge is named beside one's own: "his pressure is zero, mine is fine"."""
    words = [t.word for t in tokens]
    if "mine" not in words:
        return []
    return [
        k
        for k, word in enumerate(words)
        if word in ("his", "her", "their") and GAUGE_WORDS & set(words[k + 1 : k + _MACHINE_IN])
    ]


def _compared(sentence: Sentence, clause: Clause, start: int) -> int:
    """Where what is said of the other engine begins: behind "10 psi" in "10 psi against 25 on it"."""
    tokens = sentence.tokens
    for k in range(start - 1, clause.first, -1):
        figure = any(t.is_figure for t in tokens[clause.first : k])
        if tokens[k].word in AGAINST and figure:
            return k
    return clause.first


def _ends_norm(sentence: Sentence, start: int) -> int:
    """Where a norm ends: at the bracket behind it, or where it goes on with "I get", "mine does"."""
    tokens = sentence.tokens
    if start and tokens[start - 1].word == "(":
        return next((k for k in range(start, len(tokens)) if tokens[k].word == ")"), len(tokens))
    if tokens[start].word not in NORMS | ASKED:
        return len(tokens)
    behind = (c.first for c in sentence.clauses if c.first > start)
    return next((k for k in behind if tokens[k].word in OWN_READING), len(tokens))


def _own_deed(sentence: Sentence, first: int) -> int:
    """Where the person goes on about what he did himself: "my buddy said it lost prime, so I ..."."""
    words = [t.word for t in sentence.tokens]
    return next(
        (
            c.first
            for c in sentence.clauses
            if c.first >= first
            and {words[c.first], *words[c.first + 1 : c.first + 2]} & {"i", "we"}
        ),
        0,
    )


def _passes_by(tokens: Sequence[Token], mark: Mark[bool]) -> bool:
    """Whether people or boats only come by, or what is read or heard is of this engine."""
    behind = [t.word for t in tokens[mark.last : mark.last + _SOON]]
    last = tokens[mark.last - 1].word
    if tokens[mark.first].word == "according" or last in ("of", "about"):
        return bool(OWN_SOURCES & set(behind[:2])) and behind[:2] != ["this", "engine"]
    if "had" in (last, *behind[:1]):
        had = behind if last == "had" else behind[1:]
        return had[:1] in (["my"], ["our"], ["the"]) and bool(MACHINES & set(had[1:2]))
    if last in ("at", "in", "on"):
        return bool(PASSERS_BY & set(behind))
    return bool(PASSERS_BY & set(behind[:1]))


def is_of_person(tokens: Sequence[Token], mark: Mark[bool]) -> bool:
    """Whether a phrase names a machine as another person's: "my dad's tractor"."""
    behind = [t.word for t in tokens[mark.first + 1 : mark.last + _MACHINE_IN]]
    return bool(OF_PERSONS & set(behind)) and bool(MACHINES & set(behind))


def _gave_it(sentence: Sentence, mark: Mark[bool]) -> bool:
    """Whether a clause says that another's engine is one's own now: "my brother left me his"."""
    clause, before = _clause(sentence, mark.first), sentence.tokens[mark.first - 1].word
    said = [t.word for t in sentence.tokens[clause.first : clause.last]]
    got = bool(set(said[: mark.first - clause.first]) & GOT) and before in ("from", "off")
    return got or any(a in GAVE and b in ("me", "us", "to") for a, b in pairwise(said))


def _is_a_part(tokens: Sequence[Token], mark: Mark[bool], lexicon: Lexicon) -> bool:
    """Whether a part is compared with the one before it: "spring 2.1 in, 2.3 for the old one"."""
    before = tokens[mark.first - 1].word if mark.first else ""
    old = [t.word for t in tokens[mark.first : mark.last]] == ["the", "old", "one"]
    named = any(p.last <= mark.first for p in lexicon.parts.find(tokens))
    return old and named and before in ("for", "than", "against", "of")


def _is_a_hole(tokens: Sequence[Token], at: int) -> bool:
    """Whether "port" is where a gauge is screwed in: "the gauge at the port reads 60"."""
    before = [t.word for t in tokens[max(0, at - 3) : at]]
    where = {"at", "in", "into", "on", "same"} & set(before) or HOLES & set(before[-1:])
    return tokens[at].word == "port" and bool(where)


def _is_a_tool(tokens: Sequence[Token], mark: Mark[bool]) -> bool:
    """Whether another person's tool was used: "my mate's thermometer", "his mechanical gauge"."""
    behind = [t.word for t in tokens[mark.last - 1 : mark.last + _TOOL_IN]]
    if TOOLS & set(behind):
        return True
    before = {t.word for t in tokens[max(0, mark.first - _LENT) : mark.first]}
    tried = bool(before & USED or TEST_KINDS & set(behind))
    return tried and bool(GAUGE_WORDS & set(behind))


def _is_a_helper(tokens: Sequence[Token], mark: Mark[bool]) -> bool:
    """Whether a person only lent a hand: "with my brother", "my mate yelled", no engine of his."""
    words = [t.word for t in tokens]
    if words[mark.last - 1] in ("had", "has"):  # "the neighbour had a look"
        return tuple(words[mark.last : mark.last + 2]) in LOOK
    whom = next((k for k in range(mark.first, mark.last) if words[k] in PERSONS), None)
    if whom is None:
        return False
    if HELPED & set(words[max(0, whom - 3) : whom]):
        return True  # "helped a fella with his flat four": it is said of that engine
    if words[mark.last - 1] not in PERSONS:
        return False
    before = words[mark.first - 1] if mark.first else ""
    after = [*words[mark.last : mark.last + 2], "", ""]
    if before in HELPED_BY:
        return after[0] not in ("had", "has")
    saw = after[0] in HELPS or (after[0] == "just" and after[1] in HELPS)
    return (saw and not _OWNS & set(words[mark.last :])) or after[:2] == ["and", "i"]


def _fitted(sentence: Sentence, lexicon: Lexicon, at: int) -> bool:
    """Whether the clause says before a place that something was fitted or renewed."""
    first = _clause(sentence, at).first
    words = {t.word for t in sentence.tokens[first:at]}
    return bool(words & BORROWED) or any(
        first <= a.first < at and a.value is Done.RENEWED
        for a in lexicon.actions.find(sentence.tokens)
    )


def _clause(sentence: Sentence, at: int) -> Clause:
    return next(c for c in sentence.clauses if c.first <= at < c.last)
