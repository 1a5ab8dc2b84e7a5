"""What a sentence says shows: low, lamp, knock ..., stated of this engine now."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field

from diagnose.understanding.pressures.the_gauge import of_the_gauge
from diagnose.understanding.sentences.other_systems import takes_an_object
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.shows.low_now import is_past, low_now, noise_before
from diagnose.understanding.shows.parted import parted
from diagnose.understanding.shows.shows_otherwise import is_another_thing
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.beside_pressure import (
    BESIDE_NONE,
    NO_MORE,
    NO_PRESSURE,
    NONE_BY_STARTER,
    VAGUE,
)
from knowledge.lexicon.sights.exceptions import INSTEAD
from knowledge.lexicon.sights.of_another_part import MADE_ANOTHER
from knowledge.lexicon.values.beside_numbers import NEARLY, STARTED
from knowledge.reports.words import NOISES, SHOWN_BY_THE_ENGINE, Shows, Speed

_SINCE = frozenset(["since", "ever"])  #: behind "low": since when
_TURNS = frozenset(["but", "however", "although", "whereas"])
#: before what begins a clause
_LEADS = frozenset(
    [
        "and",
        "but",
        "then",
        "it",
        "also",
        "just",
        "now",
        "which",
        "that",
        "always",
        "so",
        "only",
        ",",
        "still",
        "they",
    ]
)
#: shown by themselves: who says so has seen it
_WITNESSED = {Shows.LAMP, Shows.UNSTEADY, Shows.TRIPS, Shows.SMOKE}


@dataclass(slots=True)
class Head:
    """Something that shows, and what was said of it."""

    mark: Mark[Shows]
    line: Line
    during: list[str] = field(default_factory=list)
    never: list[str] = field(default_factory=list)
    course: list[str] = field(default_factory=list)
    onset: str = ""
    since: str = ""
    lasts: str = ""
    gauge: str = ""
    only: bool = False
    used: list[tuple[Line, Mark[object]]] = field(default_factory=list)

    @property
    def is_pressure(self) -> bool:
        """Whether it is said of the pressure, not of a noise or how the engine runs."""
        return self.mark.value not in SHOWN_BY_THE_ENGINE


def heads_of(line: Line, before: list[Head], paragraph: Paragraph) -> list[Head]:
    """What a sentence says shows, stated of this engine now."""
    found: list[Head] = []
    past: list[tuple[Line, Mark[object]]] = []
    seen = [
        m
        for m in (*line.find(line.lexicon.sights), *line.find(line.lexicon.sights_absent))
        if m.value in INSTEAD and line.word(m.last) not in MADE_ANOTHER.get(m.value, ())
    ]
    marks = line.stated(line.lexicon.shows)
    marks += [m for m in parted(line) if not any(m.overlaps(x) for x in marks)]
    spoken = paragraph.speaks_of_pressure or any(h.is_pressure for h in before)
    marks += [
        m
        for m in (*_bare(line), *_none_by_starter(line, paragraph), *low_now(line, paragraph))
        if not any(m.overlaps(x) for x in marks)
        and not noise_before(line, m, marks)
        and not (m.value is Shows.LOW and line.word(m.last - 1) == "off" and paragraph.names_lamp)
        and (spoken or _says_since(line, m) or (paragraph.names_no_other and _when(line, m)))
    ]
    marks += [m for m in of_the_gauge(line, paragraph) if not any(m.overlaps(x) for x in marks)]
    for mark in marks:
        if line.denied(mark) or _was_so(line, mark) or is_another_thing(line, mark):
            continue
        if is_past(line, mark, paragraph):
            past.append((line, mark))
            continue
        turned = any(line.word(k) in _TURNS for k in range(mark.first + 1, mark.last))
        if turned and mark.value not in SHOWN_BY_THE_ENGINE:
            continue  # "good pressure cold but drops to nothing"
        if line.guessed(mark) and mark.value not in NOISES | _WITNESSED:
            continue
        if any(s.overlaps(mark) and len(s) > len(mark) for s in seen):
            continue
        if any(h.mark.overlaps(mark) and _outdoes(h.mark, mark) for h in found):
            continue
        if mark.value in VAGUE and not _of_pressure(line, mark, marks, [*before, *found]):
            continue
        found = [h for h in found if not h.mark.overlaps(mark)]
        found.append(Head(mark, line, used=[(line, mark), *past]))
    return [h for h in found if not _in_a_trial(h) and not _only_names_it(h, found)]


def _was_so(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it is said of the time before; "lower than normal" only compares with that."""
    after = " ".join(line.word(k) for k in range(mark.last, mark.last + 4)).removeprefix("but ")
    return line.usual(Mark(True, mark.first, mark.first + 1)) or after.startswith(NO_MORE)


def _outdoes(one: Mark[Shows], other: Mark[Shows]) -> bool:
    """Whether the first of two overlapping marks holds: the longer, but none rather than low."""
    if {one.value, other.value} == {Shows.NONE, Shows.LOW}:
        return one.value is Shows.NONE
    return len(one) >= len(other)


def _when(line: Line, mark: Mark[Shows]) -> bool:
    """Whether what shows is followed by when it does: "fades at high revs"."""
    return any(-1 <= c.first - mark.last <= 1 for c in line.circumstances)


def _bare(line: Line) -> Iterator[Mark[Shows]]:
    """What a clause begins with that is said of the pressure without naming it."""
    begins = set()
    for clause in line.sentence.clauses:
        at = clause.first
        while at < clause.last and line.word(at) in _LEADS:
            at += 1
        begins.add(at)
    bare = [m for m in line.stated(line.lexicon.bare) if m.first in begins]
    yield from (m for m in bare if not takes_an_object(line.tokens, m))
    for clause in line.sentence.clauses:
        words = [k for k in range(clause.first, clause.last) if not line.tokens[k].is_mark]
        when = {k for m in line.circumstances for k in range(m.first - 1, m.last)}
        lead = {line.word(k) for k in words[:-1] if k not in when} - (NEARLY - {"still"})
        led = len(words) > 1 and lead <= _LEADS and "still" not in lead
        if led and line.word(words[-1]) in NO_PRESSURE:
            yield Mark(Shows.NONE, words[-1], words[-1] + 1)  # "60 at first, then zero"


def by_starter(head: Head, paragraph: Paragraph) -> bool:
    """Whether it is said of an engine that the starter turned: "cranked it, no pressure"."""
    line, at = head.line, head.mark.first
    if head.mark.value is not Shows.NONE or STARTED & {t.word for t in line.tokens}:
        return False
    bare = line.word(at) in NONE_BY_STARTER and len(head.mark) == 1
    return bool(_cranked(line, len(line.tokens))) or (bare and _cranked_before(line, paragraph))


def _cranked(line: Line, last: int) -> list[Mark[Speed]]:
    """Where a sentence says before a token that the starter turned the engine."""
    marks = line.stated(line.lexicon.speed)
    done = [m for m in marks if m.value is Speed.CRANKING and line.word(m.first) != "cranking"]
    return [m for m in done if m.first < last and not line.denied(m)]  # no "when cranking"


def _cranked_before(line: Line, paragraph: Paragraph) -> bool:
    """Whether the sentence before says so."""
    before = [x for x in paragraph.lines if x.number == line.number - 1]
    return any(_cranked(x, len(x.tokens)) for x in before)


def _none_by_starter(line: Line, paragraph: Paragraph) -> Iterator[Mark[Shows]]:
    """A clause that says no more than "still nothing", after the starter turned the engine."""
    if not paragraph.speaks_of_pressure:
        return
    cranked = _cranked_before(line, paragraph)
    for clause in line.sentence.clauses:
        words = [k for k in range(clause.first, clause.last) if not line.tokens[k].is_mark]
        said = [k for k in words if line.word(k) in NONE_BY_STARTER]
        cranked = cranked or bool(_cranked(line, clause.first))
        if cranked and said and all(k in said or line.word(k) in BESIDE_NONE for k in words):
            yield Mark(Shows.NONE, said[0], said[0] + 1)


def _says_since(line: Line, mark: Mark[Shows]) -> bool:
    """Whether "low" is an answer by itself: "low since the rebuild", of what the tool is for."""
    return mark.value is Shows.LOW and line.word(mark.last - 1) in _SINCE


def _only_names_it(head: Head, found: list[Head]) -> bool:
    """Whether "oil warning" names the lamp that is said to flicker in the same breath."""
    return head.mark.value is Shows.LAMP and any(
        other.mark.value in (Shows.UNSTEADY, Shows.SLOW)
        and 0 <= other.mark.first - head.mark.last <= 1
        for other in found
    )


def _in_a_trial(head: Head) -> bool:
    """Whether it is only said of a trial's outcome: "still low after that"."""
    return (
        False
        if head.is_pressure
        else any(
            m.first <= head.mark.first and head.mark.last <= m.last
            for m in head.line.find(head.line.lexicon.features)
        )
    )


def _of_pressure(
    line: Line, mark: Mark[Shows], marks: list[Mark[Shows]], heads: list[Head]
) -> bool:
    """Whether "fine" is said of the pressure: it is named in the clause, or was spoken of before."""
    clause = line.clause(mark.first)
    instruments = line.find(line.lexicon.instrument)
    if any(clause.first <= m.first < clause.last for m in instruments):
        return True
    words = [t.word for t in line.tokens[clause.first : clause.last]]
    if {"runs", "sounds", "engine", "level", "running", "run", "drives", "oil", "lifters"} & set(
        words
    ):
        return False
    figure = any("pressure" in t.kinds for t in line.tokens)
    beside = any(m.value not in VAGUE | SHOWN_BY_THE_ENGINE for m in marks)
    spoken = any(h.is_pressure for h in heads if h.line is line or h is heads[-1])
    has_when = any(clause.first <= m.first < clause.last for m in line.circumstances)
    return has_when and (figure or beside or spoken)
