"""What is said of another part of the machine than its engine: "the gearbox oil was low"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Clause, Sentence, Token
from knowledge.lexicon.engine.traits import KINDS
from knowledge.lexicon.meant.beside_what_shows import (
    DROPPED,
    HYDRAULIC,
    LEADS_IN,
    NOISY_THINGS,
    OBJECTS,
    OF_HYDRAULICS,
    OTHER_SYSTEMS,
)
from knowledge.lexicon.meant.foreign_parts import BETWEEN, COPULAS, OWNERS
from knowledge.reports.words import Shows

_SUBJECT = 3  #: words of a clause in which its subject is named
_FAR_SOURCE = 5  #: words between a noise and "from", where it is said when it is heard
_INTO = 4  #: words from "in" to what it went into
_SOURCE = 3  #: words between a noise and what makes it


def of_other_systems(sentence: Sentence) -> Iterator[tuple[int, int]]:
    """The first token, and the one behind the last, of each clause about another system."""
    for clause in sentence.clauses:
        if any(_names_one(sentence, k) for k in _subject(sentence, clause)):
            yield clause.first, clause.last


def _names_one(sentence: Sentence, at: int) -> bool:
    """Whether a word names another system, and not the engine by it: "sterndrive V6"."""
    after = sentence.tokens[at + 1].word if at + 1 < len(sentence.tokens) else ""
    if sentence.tokens[at].word in HYDRAULIC:
        return after in OF_HYDRAULICS  # not the hydraulic lifters of the engine
    other = sentence.tokens[at].word in OTHER_SYSTEMS and after not in KINDS
    return other and not (after == "oil" and _in_the_engine(sentence, at + 2))


def _in_the_engine(sentence: Sentence, at: int) -> bool:
    """Whether "in the engine" follows: "gearbox oil in the engine by mistake"."""
    words = [t.word for t in sentence.tokens[at : at + _INTO]]
    return words[:1] in (["in"], ["into"]) and bool({"engine", "motor", "sump"} & set(words))


def _subject(sentence: Sentence, clause: Clause) -> Iterator[int]:
    """The places at the head of a clause that may name what it is about."""
    for k in range(clause.first, min(clause.last, clause.first + _SUBJECT)):
        yield k
        if sentence.tokens[k].word not in LEADS_IN:
            return


def made_elsewhere(tokens: Sequence[Token], noise: Mark[Shows]) -> bool:
    """Whether a noise comes from no part of the engine: "the door rattles"."""
    words = [t.word for t in tokens]
    subject = noise.first - 1
    while subject > 0 and words[subject] in COPULAS:
        subject -= 1
    if subject >= 0 and words[subject] in NOISY_THINGS:
        return True
    if subject > 0 and words[subject] in BETWEEN and words[subject - 1] in OWNERS:
        return True  # "the fuel pump was whining"
    if ("turned", "out") in pairwise(words[noise.last :]):
        out = words.index("out", noise.last)
        return bool(
            (NOISY_THINGS | {"fuel"}) & set(words[out:])
        )  # "turned out it was the fuel pump"
    if words[noise.last : noise.last + 2] in (["on", "the"], ["at", "the"]):
        return words[noise.last + 2 : noise.last + 3] in (["door"], ["window"])
    behind = words[noise.last : noise.last + _FAR_SOURCE]
    if "from" in behind:
        source = noise.last + behind.index("from")
        if NOISY_THINGS & set(words[source : source + _SOURCE + 2]):
            return True  # "a knock at low speed from the front suspension"
    behind = words[noise.last : noise.last + _SOURCE]
    return behind[:1] in (["from"], ["in"], ["of"]) and bool(NOISY_THINGS & set(behind[1:]))


def takes_an_object(tokens: Sequence[Token], mark: Mark[Shows]) -> bool:
    """Whether somebody did so to a thing: "dropped the sump"."""
    after = tokens[mark.last].word if mark.last < len(tokens) else ""
    return tokens[mark.last - 1].word in DROPPED and after in OBJECTS
