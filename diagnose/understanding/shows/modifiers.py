"""What may be said of something that shows: when, since when, how fast it came, how it went on."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from itertools import pairwise

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.shows.heads import Head
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import jobs, served
from diagnose.understanding.work.relapses import relapse
from knowledge.lexicon.shows.beside_pressure import (
    AS_IT_IS,
    FALLING,
    IN_USE,
    REDONE,
    START_NOW,
    STARTS_OF,
)
from knowledge.reports.words import SHOWN_BY_THE_ENGINE, Circumstance, Course, Onset, Shows, Since

_WHO = frozenset(["i", "we", "he", "she", "they", "you"])  #: "when we came back" is no recovery
#: beside "recovered": a truck did it
TOWED = frozenset(["got", "get", "been", "was", "were", "being", "be", "home", "by"])
_OF_A_DAY = 3  #: words behind "first start" in which it is said of what
_LINES_AGO = 2  #: sentences from work to a "now" that is since then
_STARTS = frozenset(["start", "startup", "run", "fired", "started", "firing"])
AGES = frozenset(["hours", "distance", "manyhours", "fewhours"])
_BEHIND_BLOW = 2  #: words between a blow and what was hit
_ONCE = frozenset(["used", "was", "were"])
#: behind "hit and miss": a kind of engine, by its governor
GOVERNED_SO = frozenset(["engine", "motor", "single", "engines", "flywheel", "stationary"])
_THEN = frozenset([("since", "then"), ("ever", "since"), ("from", "then")])


def modifiers(line: Line, heads: list[Head]) -> Iterator[Mark[object]]:
    """Circumstances, onsets, courses and beginnings that are stated."""
    lexicon = line.lexicon
    grades = [m for m in line.find(lexicon.since) if m.value is Since.GRADE]
    done = [j for j in jobs(line) if not any(g.overlaps(j.whole) for g in grades)]
    began = [Mark(True, j.lead[0].first, j.last) for j in done if j.begins_it]
    every: list[Mark[object]] = [*line.circumstances, *line.find(lexicon.onset)]
    every += [*line.find(lexicon.course), *line.find(lexicon.since)]
    for mark in every:
        other = any(b.overlaps(mark) for b in began) or _of_a_figure(line, mark, heads)
        if not other and _is_meant(line, mark) and not _means_otherwise(line, mark):
            yield mark
    for job in done:  # none of "since going to thinner oil"
        if job.begins_it:
            yield Mark(job.since, job.lead[0].first, job.last)
        elif job.then_now and not any(_is_before(h, line, job.first) for h in heads):
            yield Mark(job.since, job.first, job.then_now[0].last)


def _is_meant(line: Line, mark: Mark[object]) -> bool:
    """Whether it is stated of this engine as it is now."""
    meant = line.stances.at(mark)
    if _all_along(line, mark):
        meant &= ~Stance.USUAL
    return not meant & (Stance.SUPPOSED | Stance.ELSEWHERE | Stance.USUAL)


def _means_otherwise(line: Line, mark: Mark[object]) -> bool:
    """Whether the words say something else in their sentence."""
    return any(case(line, mark) for case in (*_OF_ALL, *_OF.get(mark.value, ())))


def _of_a_noise(line: Line, mark: Mark[object]) -> bool:
    """Whether when it shows is part of the words for a noise or how the engine runs."""
    return isinstance(mark.value, Circumstance) and any(
        s.value in SHOWN_BY_THE_ENGINE and s.first <= mark.first and mark.last <= s.last
        for s in line.find(line.lexicon.shows)
    )


def _of_work_again(line: Line, mark: Mark[object]) -> bool:
    """Whether it is said of work that was done again."""
    return isinstance(mark.value, Since) and line.word(mark.last) in REDONE


def _of_the_needle(line: Line, mark: Mark[object]) -> bool:
    """Whether it is the needle that rolls, not the boat."""
    shown = line.find(line.lexicon.shows)
    return any(s.value is Shows.UNSTEADY and s.overlaps(mark) for s in shown)


def _by_a_person(line: Line, mark: Mark[object]) -> bool:
    """Whether a person came back: "when we came back"."""
    return line.word(mark.first - 1) in _WHO


def _of_a_loss(line: Line, mark: Mark[object]) -> bool:
    """Whether it is part of the words for a loss: "showed pressure for a moment, then nothing"."""
    shown = line.find(line.lexicon.shows)
    return any(s.value is Shows.LOST and s.first <= mark.first < s.last for s in shown)


def _of_work(line: Line, mark: Mark[object]) -> bool:
    """Whether how long something took is how long work took: "rebuilt it over the winter"."""
    first = line.clause(mark.first).first
    return any(first <= j.first and j.last <= mark.first for j in jobs(line))


def _no_other_fault(line: Line, mark: Mark[object]) -> bool:
    """Whether all else is well: "no fault found otherwise"."""
    return line.word(mark.last) in ("otherwise", "else")


def _of_a_blow(line: Line, mark: Mark[object]) -> bool:
    """Whether the road is what was hit: "bottomed out on a speed bump"."""
    blows = [m for m in line.find(line.lexicon.since) if m.value is Since.BLOW]
    return any(b.overlaps(mark) or 0 <= mark.first - b.last <= _BEHIND_BLOW for b in blows)


def _all_along(line: Line, mark: Mark[object]) -> bool:
    """Whether it was so before as it is now: "it has always been like that"."""
    if mark.value is Course.WORSENING and line.word(mark.first) in _ONCE:
        return True  # "it used to be only slight"
    return mark.value is Course.UNCHANGED and line.word(mark.last - 1) in AS_IT_IS


def _goes_on(line: Line, mark: Mark[object]) -> bool:
    """Whether words of the same clause follow: "once it is hot"."""
    behind = range(mark.last, line.clause(mark.first).last)
    return any(not line.tokens[k].is_mark for k in behind)


def _unchanged_for(line: Line, mark: Mark[object]) -> bool:
    """Whether years are how long it stayed the same: "been that way for ten years"."""
    same = [m for m in line.find(line.lexicon.course) if m.value is Course.UNCHANGED]
    return line.word(mark.first) == "for" and any(abs(mark.first - m.last) <= 1 for m in same)


def since_then(line: Line, paragraph: Paragraph, heads: list[Head]) -> Iterator[Mark[object]]:
    """ "Since then", "ever since" of work that the sentence before it, or it itself, names."""
    for k, pair in enumerate(pairwise(t.word for t in line.tokens)):
        if pair not in _THEN:
            continue
        near = (x for x in paragraph.lines if line.number - 1 <= x.number <= line.number)
        done = [j for x in near for j in jobs(x) if j.area and (x is not line or j.last <= k)]
        if done:
            yield Mark(done[-1].since, k, k + 2)
    if line.word(0) == "now" and not _after_hours(line):  # "changed the pump. Now no pressure"
        near = (x for x in paragraph.lines if 0 < line.number - x.number <= _LINES_AGO)
        done = [j for x in near for j in jobs(x) if j.area]
        between = paragraph.lines[max(0, line.number - _LINES_AGO) : line.number]
        done = [j for j in done if not served(j, (x for x in between if x.number >= j.line.number))]
        if done and not any(_is_before(h, done[0].line, done[0].first) for h in heads):
            yield Mark(done[-1].since, 0, 1)


def _after_hours(line: Line) -> bool:
    """Whether "now" goes on with hours or days in which it ran well: "Now after 3 hours"."""
    return line.word(1) == "after" and any("time" in t.kinds for t in line.tokens[2:5])


def _all_the_same(line: Line, mark: Mark[object]) -> bool:
    """Whether it shows though a lead was touched: "pulled the wire off, the light still on"."""
    behind = range(mark.last, len(line.tokens))
    return any(line.word(k) in ("still", "stays", "stayed", "remains") for k in behind)


def _of_each_day(line: Line, mark: Mark[object]) -> bool:
    """Whether it is the first start of a day or after a rest, not of an engine: "of the day"."""
    behind = [line.word(k) for k in range(mark.last - 1, mark.last + _OF_A_DAY)]
    return any(a in ("of", "in", "after", "each", "every") for a in behind) and bool(
        STARTS_OF & set(behind)
    )


def _each_start(line: Line, mark: Mark[object]) -> bool:
    """Whether it is said of every start: "when I first start it" """
    said = line.words(mark.first, mark.last)
    return "when" in said and bool(said & START_NOW)


def _under_a_minute(line: Line, mark: Mark[object]) -> bool:
    """Whether a time after the start is less than a minute: "half a minute after the start"."""
    near = line.tokens[max(0, mark.first - 1) : mark.last]
    times = [t.value.split() for t in near if t.kinds & {"minutes", "seconds"}]
    return any(len(t) > 1 and t[1] == "min" and float(t[0]) < 1 for t in times)


def _no_recovery(line: Line, mark: Mark[object]) -> bool:
    """Whether no pressure recovers: "got recovered home", "goes off soon as I touch the throttle"."""
    if line.word(mark.last - 1) == "soon" and line.word(mark.last) == "as":
        return True
    own = line.words(mark.first, mark.last) & {"own", "itself", "themselves"}
    if not own and relapse(line, mark.first) in range(mark.first, mark.last):
        return True  # "right back to nothing"
    return line.word(mark.first) == "recovered" and bool(
        TOWED & {line.word(mark.first - 1), line.word(mark.last)}
    )


def _of_a_fall(line: Line, mark: Mark[object]) -> bool:
    """Whether years are how long the pressure has been falling, not how long it stayed so."""
    clause = line.clause(mark.first)
    return any(line.word(k) in FALLING for k in range(clause.first, mark.first))


def _is_an_age(line: Line, mark: Mark[object]) -> bool:
    """Whether it is said of the engine's hours, or of how long it stood.

    "212 hours from new", "first start for 12 years".
    """
    if not mark.first:
        return False
    return bool(line.tokens[mark.first - 1].kinds & AGES) or line.word(mark.first - 1) in _STARTS


def _of_a_figure(line: Line, mark: Mark[object], heads: list[Head]) -> bool:
    """Whether "at all times" is said of a reading in a clause where nothing else shows."""
    if mark.value is not Course.CONSTANT:
        return False
    clause = line.clause(mark.first)
    read = any("pressure" in line.tokens[k].kinds for k in range(clause.first, mark.first))
    shown = [h for h in heads if h.line is line and clause.first <= h.mark.first < clause.last]
    return read and not shown


def _of_use(line: Line, mark: Mark[object]) -> bool:
    """Whether years are said of the use of the engine: "was driven daily for years, now low"."""
    clause = line.clause(mark.first)
    shown = any(clause.first <= m.first < clause.last for m in line.find(line.lexicon.shows))
    return not shown and any(line.word(k) in IN_USE for k in range(clause.first, clause.last))


def _is_before(head: Head, line: Line, at: int) -> bool:
    """Whether a head stands before a token of a sentence."""
    return (head.line.number, head.mark.first) < (line.number, at)


def _of_standing(line: Line, mark: Mark[object]) -> bool:
    """Whether words are said of how long the engine stood: "sat for 3 years, no pressure"."""
    if isinstance(mark.value, Since) or mark.value is Circumstance.STANDING:
        return False
    stood: list[Mark[object]] = [m for m in line.find(line.lexicon.areas) if m.value == "storage"]
    stood += [m for m in line.find(line.lexicon.since) if m.value is Since.STANDING]
    return any(m.overlaps(mark) for m in stood)


Case = Callable[[Line, Mark[object]], bool]


#: asked of every modifier
def _of_the_governor(line: Line, mark: Mark[object]) -> bool:
    """Whether it is a kind of engine: "hit and miss engine"."""
    return line.word(mark.first) == "hit" and line.word(mark.last) in GOVERNED_SO


_OF_ALL: tuple[Case, ...] = (_of_a_noise, _of_work_again, _of_standing)
#: asked of one; no two kinds of modifier share a word
_OF: Mapping[object, tuple[Case, ...]] = {
    Course.UNCHANGED: (_of_use, _of_a_fall, _is_an_age),
    Course.RECOVERED: (_by_a_person, _no_recovery, _of_a_loss),
    Course.NOT_REPRODUCED: (_no_other_fault,),
    Course.ONCE: (_goes_on,),
    Course.COMES_AND_GOES: (_of_the_governor,),
    Since.ALWAYS: (_is_an_age,),
    Since.FIRST_START: (_of_each_day, _each_start),
    Onset.GRADUAL: (_of_work, _unchanged_for),
    Circumstance.SEAWAY: (_of_the_needle,),
    Circumstance.TOUCHED: (_all_the_same,),
    Circumstance.MINUTES: (_under_a_minute,),
    Circumstance.ROUGH_ROAD: (_of_a_blow,),
}
