"""What a sentence says only of a condition: "if it gave 40 I'd be happy", "had it failed ..."."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.words.text import Sentence, clause_at
from knowledge.lexicon.stance.stance import ANY_ONE, INVERTED, WOULD, WOULD_BE
from knowledge.lexicon.stance.stance_words import (
    CURES_IT,
    ID,
    KNOWN,
    MAY_THEN,
    MEANS,
    NOT_YET,
    OF_SUCH,
    PERSONS_BY_PRONOUN,
    SOUNDS_LIKE,
    THINKS,
    TO_LEARN,
    YOU_ARE,
)

_SOUNDS = 5  #: words before "like" in which a sound is named


def conditions(sentence: Sentence, supposed: bool) -> Iterator[tuple[int, int]]:
    """What a condition says, where the sentence goes on with what would be or with a question.

    ``supposed``: something else in the sentence is asked or planned.
    """
    words = [t.word for t in sentence.tokens]
    would = _would(words)
    plans = supposed or "ill" in words or would is not None  # "if it gives 40 I'll be happy"
    for i, word in enumerate(words):
        if word != "if":
            continue
        last = clause_at(sentence.clauses, i).last
        said = words[i:last]
        if (
            plans
            or (words[i + 1 : i + 2] == ["you"] and YOU_ARE & set(words[i:]))
            or any(a in NOT_YET and b in CURES_IT for a, b in pairwise(said))
        ):
            yield i, last  # "if a new pump doesn't fix it"
        if would is not None and would > i:
            yield would, clause_at(sentence.clauses, would).last


def _would(words: list[str]) -> int | None:
    """Where "I'd stop" says what one would do; "I'd say" gives an opinion, "I'd just" what was done."""
    return next(
        (k for k, (a, b) in enumerate(pairwise(words)) if a in ID and b not in THINKS), None
    )


def of_any_case(sentence: Sentence) -> Iterator[tuple[int, int]]:
    """What is said of any such case: "a stuck valve would ...", "had it failed I'd have ..."."""
    words = [t.word for t in sentence.tokens]
    for clause in sentence.clauses:
        first, rest = words[clause.first], words[clause.first : clause.last]
        if rest[1:3] == ["can", "of"]:
            continue  # "a can of flush"
        if first in ANY_ONE and WOULD_BE & set(rest):
            yield clause.first, clause.last
        if first in INVERTED:
            later = words[clause.first + 1 :]
            if any(a in WOULD and b == "have" for a, b in pairwise(later)):
                yield clause.first, clause.last


def purposes(sentence: Sentence) -> Iterator[tuple[int, int]]:
    """What was to become possible: "filled it so that I could drive it home"; not what one sees."""
    words = [t.word for t in sentence.tokens]
    for k, word in enumerate(words):
        at = k + 2 if words[k + 1 : k + 2] == ["that"] else k + 1
        who, may, does = (*words[at : at + 3], "", "", "")[:3]
        if word == "so" and who in PERSONS_BY_PRONOUN and may in MAY_THEN and does not in TO_LEARN:
            yield k, clause_at(sentence.clauses, k).last


def likened(sentence: Sentence) -> Iterator[tuple[int, int]]:
    """What something is only likened to: "like the sound when a car is low on oil"."""
    words = [t.word for t in sentence.tokens]
    for i, word in enumerate(words):
        if word != "like" or not SOUNDS_LIKE & set(words[max(0, i - _SOUNDS) : i]):
            continue
        last = clause_at(sentence.clauses, i).last
        when = next((k for k in range(i + 1, last) if words[k] in OF_SUCH), None)
        if when is not None:
            yield when, last


def concluded(sentence: Sentence) -> Iterator[tuple[int, int]]:
    """What a question takes for granted: "so that means the sender is bad?"."""
    for i, token in enumerate(sentence.tokens):
        if sentence.asks and token.word in MEANS:
            yield i, len(sentence.tokens)


def of_the_kind(sentence: Sentence) -> Iterator[tuple[int, int]]:
    """What a kind of engine is known for, which is not found on this one: "known for worn cam bushes"."""
    for i, (a, b) in enumerate(pairwise(t.word for t in sentence.tokens)):
        if a in KNOWN and b == "for":
            yield i + 2, clause_at(sentence.clauses, i).last


def of_no_fact(sentence: Sentence) -> Iterator[tuple[int, int]]:
    """What is said of any such case, hoped for, likened to or asked."""
    yield from of_any_case(sentence)
    yield from purposes(sentence)
    yield from likened(sentence)
    yield from concluded(sentence)
    yield from of_the_kind(sentence)
