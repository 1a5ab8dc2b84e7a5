"""Drop findings whose words are said of another part: "the clutch cable snapped", "the roof leaks"."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line, Paragraph, places_of
from diagnose.understanding.words.facts import Fact
from diagnose.understanding.words.text import stemmed
from knowledge.lexicon.meant.beside_what_shows import HYDRAULIC, OF_HYDRAULICS
from knowledge.lexicon.meant.foreign_parts import (
    ARTICLES,
    BESIDE,
    BETWEEN,
    HANDS,
    INSTRUMENTS,
    LEADS,
    NO_NOISE,
    OF_AIR,
    OF_ALL,
    OF_HISTORY,
    OF_PRESSURE,
    OF_THE_ENGINE,
    OF_TURNING,
    OWN_OIL,
    OWNERS,
    SAME,
    STATES,
    TURNED_BY,
    WHERE,
)
from knowledge.model import Kind
from knowledge.reports.words import LOSSES, NOISES, Shows

#: shown by a needle or a lamp
_OF_NEEDLES = {s.value for s in (*LOSSES, Shows.HIGH, Shows.UNSTEADY, Shows.SLOW, Shows.NORMAL)}
_IT = frozenset(["it", "its", "which", "and"])  #: begin a clause on what was named before
_LEAD = 3  #: most words between the owner of a part and what is found of it
_BEHIND = 2  #: most words between an article and the owner of a part: "the outer front wheel"


def without_foreign_parts(facts: Iterable[Fact], paragraph: Paragraph) -> list[Fact]:
    """The facts without findings, and what shows, that the words beside them say of another part."""
    return [
        f
        for f in facts
        if not (f.table == "finding" and _is_foreign(f, paragraph))
        and not (f.fields.get("shows") in _OF_NEEDLES and _is_of_an_instrument(f, paragraph))
        and not (f.fields.get("shows") in NOISES and _is_of_its_subject(f, paragraph))
    ]


def _is_of_an_instrument(fact: Fact, paragraph: Paragraph) -> bool:
    """Whether what shows is of the needle or lamp named last: "the fuel gauge drops to zero"."""
    for line in paragraph.lines:
        places = places_of(fact, line)
        if places and not any(t.word in OF_PRESSURE for t in line.tokens):
            near = range(places[-1], 0, -1)
            hand = next((k for k in near if line.word(k) in HANDS), 0)
            return hand > 0 and line.word(hand - 1) in INSTRUMENTS
    return False


def _is_of_its_subject(fact: Fact, paragraph: Paragraph) -> bool:
    """Whether another part makes a noise: "the propshaft centre bearing is dry and squeals"."""
    for line in paragraph.lines:
        if places := places_of(fact, line):
            clause = line.clause(places[0])
            subject = set(_subject(line, clause.first, places[0]))
            said = line.words(clause.first, clause.last)
            return bool(subject & OWNERS - NO_NOISE) and not said & OF_THE_ENGINE
    return False


def _is_foreign(fact: Fact, paragraph: Paragraph) -> bool:
    finding = paragraph.lexicon.book.findings.get(fact.name)
    if finding is None or "state" not in fact.fields or fact.name in OF_ALL:
        return False
    if finding.kind is not Kind.SEEN and fact.name not in OF_HISTORY:
        return False
    named = paragraph.lexicon.named_by.get(fact.name, frozenset())
    for line in paragraph.lines:
        if places := places_of(fact, line):
            return any(_is_none_of(owner, fact, named) for owner in _owners(line, places))
    return False


def _is_none_of(owner: str, fact: Fact, named: frozenset[str]) -> bool:
    """Whether a finding is never said of an owner: fuel is among what thins the oil."""
    if (fact.name in OF_TURNING and owner in TURNED_BY) or (owner == "air" and fact.name in OF_AIR):
        return False
    return not {stemmed(owner), stemmed(SAME.get(owner, owner))} & named


def _owners(line: Line, places: list[int]) -> Iterator[str]:
    """The words that say of which other part a finding in these places is."""
    first, last = places[0], places[-1]
    head = line.clause(first).first
    yield from _before(line, first, head)
    if head and line.word(head) in _IT:
        before = [line.word(k) for k in range(line.clause(head - 1).first, head)]
        yield from (a for a, b in pairwise(before) if a in OWN_OIL and b in ("oil", "fluid"))
    within = [line.word(k) for k in range(first, last + 1)]
    for word, after in pairwise(within):
        if (word in OWN_OIL and after == "oil") or _is_hydraulic(word, after):
            yield word
    engines = OF_THE_ENGINE.intersection(within)
    if engines - {"oil"}:
        return
    owners = OWN_OIL if engines else OWNERS
    yield from (
        w for k in range(first, last + 1) if _is_owner(line, k) and (w := line.word(k)) in owners
    )
    if not engines or line.word(last + 1) != "on":  # "oil drips on the gearbox"
        yield from (w for w in _behind(line, last + 1) if w in owners)
    yield from (word for word in _subject(line, head, first) if word in owners)


def _subject(line: Line, head: int, first: int) -> list[str]:
    """The two words that name what a clause is about: "gear lever"; one where it is of the engine."""
    at = next((k for k in range(head, first) if line.word(k) not in LEADS), first)
    last = at + 1 if line.word(at) in OF_THE_ENGINE else at + 2
    return [line.word(k) for k in range(at, min(last, first))]


def _is_hydraulic(word: str, after: str) -> bool:
    """Whether two words name hydraulics, and not the lifters of the engine."""
    return word in HYDRAULIC and (after in OF_HYDRAULICS or after in ("oil", "fluid"))


def _is_owner(line: Line, at: int) -> bool:
    """Whether a word between those of a finding says whose part it is: not "on the exhaust"."""
    before = at - 2 if line.word(at - 1) in ARTICLES else at - 1
    return line.word(at) in OWNERS and line.word(before) not in BESIDE


def _before(line: Line, first: int, head: int) -> Iterator[str]:
    """The owner straight before: "brake light switch", "gearbox oil"."""
    own = OWN_OIL if line.word(first) == "oil" else OWNERS
    for k in range(first - 1, max(head, first - 1 - _LEAD) - 1, -1):
        word = line.word(k)
        if word in own or _is_hydraulic(word, line.word(k + 1)):
            yield word
        if line.word(k) not in BETWEEN:
            return


def _behind(line: Line, at: int) -> Iterator[str]:
    """The owner behind: "a vibration in the steering wheel", "very noisy heater"."""
    if line.word(at - 1) in STATES and line.word(at) in OWNERS:
        yield line.word(at)
    own = OWN_OIL if line.word(at) == "on" else OWNERS
    if line.word(at) not in (*WHERE, "on") or line.word(at + 1) not in ARTICLES:
        return
    for k in range(at + 2, min(at + 2 + _BEHIND, len(line.tokens))):
        if line.tokens[k].is_mark:
            return
        if line.word(k) in own:
            yield line.word(k)
