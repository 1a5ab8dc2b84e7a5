"""Oil that is out of the engine: "changed it, it came out like treacle" says nothing of the new oil."""

from __future__ import annotations

from collections.abc import Iterable

from diagnose.understanding.sentences.paragraph import Paragraph
from diagnose.understanding.words.facts import Fact
from knowledge.lexicon.words.word_sets import set_of as _set

_OF_WHAT_IS_IN_IT = frozenset(["oil_thick_on_stick", "oil_thin_on_stick"])
_CAME = _set("came ran comes runs poured drained draining")
_CHANGED = _set("changed change changes refilled renewed replaced fresh flushed")


def without_old_oil(facts: Iterable[Fact], paragraph: Paragraph) -> list[Fact]:
    """Without how thick the oil is, where it is said of oil that was drained and changed."""
    changed = any(t.word in _CHANGED for line in paragraph.lines for t in line.tokens)
    return [
        f for f in facts if f.name not in _OF_WHAT_IS_IN_IT or not (changed and _out(f, paragraph))
    ]


def _out(fact: Fact, paragraph: Paragraph) -> bool:
    """Whether the clause of a fact speaks of oil that came out, or of the old oil."""
    first = fact.spans[0][0]
    for line in paragraph.lines:
        at = next((k for k, t in enumerate(line.tokens) if t.start <= first < t.end), None)
        if at is not None:
            clause = line.clause(at)
            words = [line.word(k) for k in range(clause.first, clause.last)]
            came = any(a in _CAME for a in words) and ("out" in words or "drained" in words)
            return came or "old" in words
    return False
