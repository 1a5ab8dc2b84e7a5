"""What a hose joins is only named by it: "the hose from the pan to the pump is cracked"."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, Span
from knowledge.lexicon.meant.beside_what_shows import HOSES
from knowledge.lexicon.words.joints import ARTICLES, LINKS

_CARRY = HOSES | {"line", "lines", "tube", "tubes"}
_BEGINS = {"from": "to", "between": "and", "to": "from"}  #: and what leads to the second end
_LONGEST = 3  #: words of the name of an end, behind its article
_LEADS = ARTICLES | {"its", "oil", "main", "dry", "scavenge", "pressure"}


def without_ends_of_hoses(facts: Iterable[Fact], paragraph: Paragraph) -> list[Fact]:
    """Without states of the parts that a hose joins, where only the hose is said to be so."""
    ends = [span for line in paragraph.lines for span in _ends(line)]
    return [f for f in facts if f.table != "finding" or not _of_an_end(f, ends)]


def _of_an_end(fact: Fact, ends: Iterable[Span]) -> bool:
    """Whether the first words of a finding name an end, and others lie behind it."""
    first, last = fact.spans[0][0], fact.spans[-1][1]
    return any(a <= first < b < last for a, b in ends)


def _ends(line: Line) -> Iterator[Span]:
    """From the first end of each hose to its second."""
    for k, token in enumerate(line.tokens):
        second = _BEGINS.get(line.word(k + 1))
        if token.word not in _CARRY or second is None:
            continue
        joint = next((n for n in range(k + 2, k + 4 + _LONGEST) if line.word(n) == second), None)
        if joint is None or any(line.tokens[n].is_mark for n in range(k, joint)):
            continue
        last = joint + 1
        while line.word(last) in _LEADS:
            last += 1
        while last < len(line.tokens) and _names_on(line, last):
            last += 1
        if last > joint + 1:
            yield line.tokens[k + 1].start, line.tokens[last - 1].end


def _names_on(line: Line, at: int) -> bool:
    """Whether a word may still be of the name of an end: no verb, no mark, no state."""
    token = line.tokens[at]
    said = any(m.first <= at < m.last for m in line.find_alike(line.lexicon.states))
    return not (token.is_mark or token.is_figure or said or token.word in LINKS | {"had", "has"})
