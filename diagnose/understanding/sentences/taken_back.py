"""What is taken back: "the 2 psi cold was wrong", "the knock was the air compressor, not the engine"."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.words.text import Clause, Sentence, Tokens
from knowledge.lexicon.meant.corrections import (
    BESIDE_WRONG,
    NOT_THE_ENGINE,
    OTHER_NOISE_MAKERS,
    SOUNDS,
    STRUCK,
    WAS,
    WRONG,
)

_SOURCE = 5  #: words from "was" to what made the noise
_FIGURES = frozenset(["pressure", "number", "range"])


def taken_back(sentence: Sentence) -> Iterator[tuple[int, int, int]]:
    """The first token of each clause that takes something back, that behind it, and the last of what.

    The third is where the words end that name it: 3 of "the 2 psi | was wrong".
    """
    if sentence.asks:
        return
    for clause in sentence.clauses:
        end = _struck(sentence.tokens, clause) or _was_wrong(sentence.tokens, clause)
        if end:
            yield clause.first, clause.last, end
        elif (was := _other_noise(sentence, clause)) is not None:
            yield clause.first, len(sentence.tokens), was


def _figure(tokens: Tokens, first: int, last: int) -> bool:
    return any(tokens[k].kinds & _FIGURES for k in range(first, last))


def _struck(tokens: Tokens, clause: Clause) -> int:
    """The end of "ignore the 2 psi"; 0 where nothing is struck out."""
    begins = tokens[clause.first].word in STRUCK
    return clause.last if begins and _figure(tokens, clause.first, clause.last) else 0


def _was_wrong(tokens: Tokens, clause: Clause) -> int:
    """Where "was wrong" begins behind a figure; 0 where it does not stand there."""
    for k in range(clause.first + 1, clause.last - 1):
        if tokens[k].word not in WAS:
            continue
        at = k + 1
        while at < clause.last - 1 and tokens[at].word in BESIDE_WRONG:
            at += 1
        after = tokens[at + 1].word if at + 1 < clause.last else ""
        if tokens[at].word in WRONG and after != "for" and _figure(tokens, clause.first, k):
            return k
    return 0


def _other_noise(sentence: Sentence, clause: Clause) -> int | None:
    """Where "was" stands between a noise and another machine that made it; None where it does not."""
    tokens = sentence.tokens
    words = [t.word for t in tokens]
    for k in range(clause.first + 1, clause.last):
        if words[k] not in WAS or k - clause.first > _SOURCE:
            continue
        if not any(w.startswith(SOUNDS) for w in words[clause.first : k]):
            continue  # "the pump is driven by the gearbox"
        behind = words[k + 1 : k + 1 + _SOURCE]
        pairs = {" ".join(p) for p in pairwise(behind)}
        if OTHER_NOISE_MAKERS & (set(behind) | pairs):
            return k
        if any(" ".join(words[n : n + 3]) in NOT_THE_ENGINE for n in range(k, len(words))):
            return k
    return None
