"""Which words of a sentence are asked, and so state nothing."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from diagnose.understanding.sentences.manner import did_it_again, meaning_asked
from diagnose.understanding.words.lexicon import Lexicon
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Sentence, Token, clause_at
from knowledge.lexicon.stance.stance import RESULT_BEGINS, SAYS_WHAT_IT_READS
from knowledge.lexicon.stance.stance_words import (
    ANYBODY,
    AUXILIARIES,
    HAS_DONE,
    JUDGES,
    WHAT_WAS,
    WORK_ENDS,
    WORK_LEADS,
)

_HEAD = 7  #: words from "what" to the colon before a list
_SHORT_QUESTION = 7  #: words of a question without a verb
_WHY = frozenset(["why", "how"])


def asked(sentence: Sentence, lexicon: Lexicon) -> Iterator[tuple[int, int]]:
    """The places of the words that are asked: first, and behind the last."""
    tokens, clauses = sentence.tokens, sentence.clauses
    reads = any(t.word in SAYS_WHAT_IT_READS for t in tokens)  # "stick says its over full??"
    head = max((k + 1 for k, t in enumerate(tokens) if t.word == ":"), default=0)
    alone = sum(c.last > head for c in clauses) == 1  # "covers off: oil floods the cam?"
    short = sentence.asks and alone and 0 < len(tokens) - head <= _SHORT_QUESTION
    if short and not reads and _judged_from(tokens, head) == head:
        yield head, len(tokens)  # "Oil leak somewhere?"
    if (meaning := meaning_asked(sentence)) is not None:
        yield meaning, len(tokens)
    for mark in _questions(sentence, lexicon):
        last = len(tokens) if sentence.asks else clause_at(clauses, mark.first).last
        yield _judged_from(tokens, mark.first), last


def _questions(sentence: Sentence, lexicon: Lexicon) -> list[Mark[bool]]:
    """Phrases that begin a clause as a question does; "why is it low" states that it is low."""
    begins = {c.first for c in sentence.clauses} | {
        c.first + 1
        for c in sentence.clauses
        if sentence.tokens[c.first].word in ("and", "but", "so", "or", "also", "just")
    }
    asked = [
        Mark(True, k, k + 1)
        for k in sorted(begins)
        if sentence.asks and k < len(sentence.tokens) and sentence.tokens[k].word in AUXILIARIES
    ]
    return asked + [
        m
        for m in lexicon.asks.find(sentence.tokens)
        if (m.first in begins or _after_if(sentence, m.first))
        and sentence.tokens[m.first].word not in _WHY
        and not _what_was(sentence, m)
        and not _goes_on_with_has(sentence, m)
        and not _did_work(sentence, lexicon, m.first)
        and not did_it_again(sentence, m)
        and not in_a_result(sentence, lexicon, m)
    ]


def _judged_from(tokens: Sequence[Token], asks: int) -> int:
    """Where a question begins: behind the figure of "is 15 psi at hot idle too low?", a reading."""
    if tokens[asks].word != "is" or not any(
        "pressure" in t.kinds for t in tokens[asks + 1 : asks + 2]
    ):
        return asks
    return next((k for k in range(asks + 3, len(tokens)) if tokens[k].word in JUDGES), asks)


def _what_was(sentence: Sentence, mark: Mark[bool]) -> bool:
    """Whether "what" begins what was: "what used to be 40 is 20", "what I've done so far: ..."."""
    after = [t.word for t in sentence.tokens[mark.first + 1 : mark.first + 3]]
    what = sentence.tokens[mark.first].word == "what"
    heads_a_list = any(t.word == ":" for t in sentence.tokens[mark.first : mark.first + _HEAD])
    was = any(w in WHAT_WAS or (heads_a_list and w in HAS_DONE) for w in after[:1])
    was = was or after in (["happens", "is"], ["happened", "is"])
    return what and not sentence.asks and was


def _goes_on_with_has(sentence: Sentence, mark: Mark[bool]) -> bool:
    """Whether "has" goes on about what was named: "it misfires and has the oil light on".

    Nobody asks "has a cooler" either.
    """
    has = sentence.tokens[mark.first].word in ("has", "have")
    after = sentence.tokens[mark.first + 1 : mark.first + 2]
    goes_on = mark.first > 0 or any(t.word in ("a", "an", "the", "no", "two") for t in after)
    return has and goes_on and not sentence.asks and not ANYBODY & _words(sentence, mark)


def _words(sentence: Sentence, mark: Mark[bool]) -> set[str]:
    return {t.word for t in sentence.tokens[mark.first : mark.last]}


def _did_work(sentence: Sentence, lexicon: Lexicon, at: int) -> bool:
    """Whether "did" says what was done: "did the head gasket last week"; no verb follows."""
    tokens = sentence.tokens
    if tokens[at].word != "did" or sentence.asks:
        return False
    for part in (
        *lexicon.parts.find(tokens),
        *lexicon.areas.find(tokens),
        *lexicon.trials.find(tokens),
    ):
        lead = (tokens[k].word for k in range(at + 1, part.first))
        if part.last > at + 1 and all(w in WORK_LEADS for w in lead):
            after = tokens[part.last] if part.last < len(tokens) else None
            if after is None or after.is_mark or after.is_figure or after.word in WORK_ENDS:
                return True
            if any(p.first == part.last for p in lexicon.parts.find(tokens)):
                return True  # "did the points plugs and battery"
    return False


def in_a_result(sentence: Sentence, lexicon: Lexicon, mark: Mark[bool]) -> bool:
    """Whether the words begin what came of a trial: "did the trick", "never had trouble since"."""
    if sentence.asks or sentence.tokens[mark.first].word not in RESULT_BEGINS:
        return False
    results = lexicon.results.find(sentence.tokens)
    return any(
        r.first <= mark.first and mark.last <= r.last and len(r) > len(mark) for r in results
    )


def _after_if(sentence: Sentence, at: int) -> bool:
    """Whether the clause begins with "if", as "if I overfill it does that hurt" does."""
    return sentence.tokens[clause_at(sentence.clauses, at).first].word == "if"
