"""Whether words are of the gauge: what "it" does where it was named last, and an engine that stands."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.paragraph import LAMPS, Line, Paragraph
from diagnose.understanding.phrases import Mark
from knowledge.lexicon.other_things import ENGINE_TURNS, KEY, KEY_ON, STANDS, SWEEPS, TURNED
from knowledge.lexicon.pressure_words import GAUGE_WORDS
from knowledge.reports.words import Shows

_IT = frozenset(["it", "its", "this", "that", "which"])
#: between "it" and what it does
_BESIDE_IT = frozenset(
    [
        *("just", "only", "always", "then", "also", "still", "will", "sometimes", "often", "now"),
        *("usually", "does", "mostly", "suddenly", "really", "actually"),
    ]
)


def of_the_gauge(line: Line, paragraph: Paragraph) -> Iterator[Mark[Shows]]:
    """What "it" does where gauge, pressure or lamp was named last: "It goes to nothing in bends"."""
    marks = line.stated(line.lexicon.of_the_gauge)
    if not marks:
        return
    for mark in marks:
        at = mark.first - 1
        while line.word(at) in _BESIDE_IT:
            at -= 1
        named = named_last(line, at, paragraph) if line.word(at) in _IT else ""
        if named and not (mark.value is Shows.LOST and named in LAMPS):
            yield mark  # not "a warning that goes away"


def named_last(line: Line, at: int, paragraph: Paragraph) -> str:
    """The gauge, pressure or lamp that was named last before a place; none where it was a part."""
    before = [x for x in paragraph.lines if x.number == line.number - 1]
    for each, last in ((line, at), *((x, len(x.tokens)) for x in before)):
        parts = {k for m in each.find(each.lexicon.things) for k in range(m.first, m.last)}
        for k in range(last - 1, -1, -1):
            if each.word(k) in GAUGE_WORDS | LAMPS:
                return each.word(k)
            if k in parts:
                return ""
    return ""


def sweeps_at_key_on(line: Line) -> bool:
    """Whether the needle only sweeps as the key is turned: "flicks to 80 and falls to 0 at key on"."""
    words = {t.word for t in line.tokens}
    pairs = {(a.word, b.word) for a, b in pairwise(line.tokens)}
    turned = bool(words & KEY and (words & TURNED or pairs & KEY_ON))
    return turned and bool(words & SWEEPS) and not words & ENGINE_TURNS


def at_rest(line: Line) -> bool:
    """Whether it is said of an engine that stands: "engine off: needle at zero", "with it off"."""
    pairs = {(a.word, b.word): k for k, (a, b) in enumerate(pairwise(line.tokens))}
    pair, at = next(((p, k) for p, k in pairs.items() if p in STANDS), (("", ""), -1))
    if at < 0:
        return False
    leads = {"with", "on", "when"} if pair[1] == "off" else {"with", "on"}
    return bool(leads & {line.word(k) for k in range(at - 3, at)}) or line.word(at + 2) == ":"
