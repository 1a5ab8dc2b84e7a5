"""Whether words are of the gauge: what "it" does where it was named last, and an engine that stands."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import LAMPS, Line, Paragraph
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.meant.beside_what_shows import (
    ENGINE_TURNS,
    KEY,
    KEY_ON,
    STANDS,
    SWEEPS,
    TURNED,
)
from knowledge.lexicon.shows.beside_pressure import GAUGE_WORDS
from knowledge.lexicon.values.beside_numbers import STARTED
from knowledge.lexicon.work.beside_work import BY_DRILL
from knowledge.reports.words import Shows

_ENGINE = frozenset(["engine", "motor", "key", "ignition", "switched", "turned", "its"])
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
    return bool(leads & line.words(at - 3, at)) or line.word(at + 2) == ":"


def not_running(line: Line, i: int) -> bool:
    """Whether a drill turned the pump, or the engine stood."""
    clause = line.clause(i)
    words = [line.word(k) for k in range(max(0, clause.first - 8), clause.last)]
    if (BY_DRILL & set(words) or _spun_pump(words)) and not STARTED & set(words):
        return True
    if sweeps_at_key_on(line):
        return True
    stood = pairwise(line.word(k) for k in range(i, min(i + 8, len(line.tokens))))
    return any(a in _ENGINE and b in ("off", "stopped", "stationary") for a, b in stood)


def _spun_pump(words: Sequence[str]) -> bool:
    """Whether the pump was turned by itself: "spun the pump, 60 psi"."""
    turned = (k for k, word in enumerate(words) if word in ("spun", "spin", "spinning"))
    return any("pump" in words[k + 1 : k + 4] for k in turned)
