"""Read how the pressure behaves and what is heard: "drops at idle when hot", "no knock"."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.pressures.nearness import of_a_reading
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.shows.at_odds import at_odds
from diagnose.understanding.shows.denied import denied
from diagnose.understanding.shows.endings import (
    at_once_then,
    ended_by,
    ends_then,
    falls_with_revs,
    fell_slowly,
    fine_until,
    from_then,
    lasts_for,
    not_by_itself,
    of_what_was_before,
    only_then,
    says_only_when,
    set_lengths,
    set_only,
    shown_elsewhere,
    turned,
)
from diagnose.understanding.shows.heads import Head, by_starter, heads_of
from diagnose.understanding.shows.merged import merged
from diagnose.understanding.shows.modifiers import modifiers, since_then
from diagnose.understanding.shows.shown_by import set_gauge
from diagnose.understanding.words.facts import Fact, Span, Value, reader
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import jobs
from knowledge.lexicon.shows.beside_pressure import (
    ADDS_TO_IT,
    CRANKED,
    DENY,
    FINDING_OF,
    PASSED,
    STAYS,
    STEADY,
    STOOD,
    TIMES,
)
from knowledge.lexicon.words.joints import UNTIL
from knowledge.reports.words import Circumstance, Course, Onset, Shows, Since, Speed

_FARTHEST = 30  #: words between what shows and when
_OTHER_CLAUSE = 6  #: words that the end of a clause counts for
_PEOPLE = frozenset(["i", "we", "you", "they", "he", "she", "ive", "weve", "youve", "anyone"])
_ORDER = [w.value for w in (*Circumstance, *Course)]
#: how sure a noise is that is only guessed at (judgement)
_GUESSED = 0.7
_DOUBTFUL = 0.75  #: a noise less sure than this is an observation with a certainty


@reader(
    {
        "pressure drops at idle when hot": ["behaviour low idle, hot"],
        "almost no pressure at idle when hot": ["behaviour none idle, hot"],
        "almost nothing on the gauge at idle": ["behaviour none idle"],
        "oil light flickers in left hand bends": ["behaviour unsteady bends"],
        "engine sat for 3 years, no oil pressure": ["behaviour none standing"],
        "parked up for years, low oil pressure": ["behaviour low standing"],
        "oil pressure has been low for years": ["behaviour low unchanged for years"],
        "drops from 60 cold to 8 psi when hot": ["behaviour low hot"],
        "pressure falls from 55 cold to 12 hot at idle": ["behaviour low idle, hot"],
        "pressure is low from cold": ["behaviour low cold"],
        "changed the oil, now the pressure is low": ["behaviour low oil change"],
        "low pressure. changed the oil and now the gauge is at zero": [
            "behaviour low",
            "behaviour none",
        ],
        "oil buzzer sounds while motoring": ["behaviour lamp at speed"],
        "low oil pressure horn goes off at idle": ["behaviour lamp idle"],
        "oil light comes on when heeled": ["behaviour lamp seaway"],
        "tappets tick on a cold start, goes away after a minute": [
            "behaviour ticking at start, cold recovered by itself"
        ],
        "lifters clatter from cold, quiets after 2 minutes": ["behaviour ticking cold"],
        "lifters tick after 5 minutes": ["behaviour ticking after minutes of running"],
        "oil light comes on in left hand bends only, goes out on the straight": [
            "behaviour lamp bends at speed"
        ],
        "oil light comes on on the straight": ["behaviour lamp at speed"],
        "pressure sinks on a long climb": ["behaviour low load"],
        "pressure drops on a steep side slope": ["behaviour low slopes"],
        "laid up over winter, slow to build pressure now": ["behaviour slow to build standing"],
        "rattle at cold start, gone in a few seconds": ["behaviour rattle at start, cold"],
        "ford v8 with low oil pressure": ["behaviour low"],
        "low pressure after a splash through a ford": ["behaviour low wet"],
        "pressure drops on long uphill pulls": ["behaviour low load"],
        "fitted a spring from another engine, the needle is pegged": ["behaviour high"],
        "on another engine the needle was pegged": [],
        "was driven daily for years, now low pressure": ["behaviour low"],
        "the oil warning light is fine": [],
        "the lamp is lit with the key on": [],
        "ran it with the lamp off": [],
        "the light is on with the ignition off": [],
        "oil warning light not going out": ["behaviour lamp"],
        "oil light goes out 10 seconds after start": ["behaviour slow to build at start"],
        "no knock": ["finding bearing_knock absent"],
        "no leaks": [],
        "no leaks or smoke": ["finding blue_smoke absent"],
        "was afraid the pressure had gone to zero but it had not": [],
        "would a new pump cure low oil pressure?": [],
        "lost all oil pressure suddenly on the highway": ["behaviour lost at speed sudden"],
        "my brother's engine had low oil pressure": [],
        "12 psi at hot idle, low since first start": ["behaviour low first start"],
        "changed the oil pump last month. Pressure has been low since then": ["behaviour low work"],
        "pressure has been low since then": ["behaviour low"],
        "new pump, fine for two years. Now pressure is low": ["behaviour low"],
        "gauge zero since filter change": ["behaviour none oil change"],
        "Rebuilt V8, low since first start": ["behaviour low first start"],
        "low since the rebuild": ["behaviour low work"],
        "low on oil when cold": [],
        "Pressure is fine until I brake hard or turn right then the light comes on": [
            "behaviour lamp bends, braking"
        ],
        "pressure drops at idle only, fine at steady speed": [
            "behaviour low idle",
            "behaviour normal at speed",
        ],
        "the oil was low since first start": [],
        "low oil pressure, getting worse": ["behaviour low worsening"],
        "no knock yet": ["finding bearing_knock absent"],
        "maybe a knock": ["finding bearing_knock present"],
        "cranked it, no oil pressure": ["behaviour none", "reading 0 cranking"],
        "spun it on the starter, nothing on the gauge": ["behaviour none", "reading 0 cranking"],
        "cranked it for two minutes, no pressure": ["behaviour none", "reading 0 cranking"],
        "cranked it in short bursts with an eye on the gauge. Still nothing": [
            "behaviour none",
            "reading 0 cranking",
        ],
        "oil pressure after the build: it stays at zero": ["behaviour none work"],
        "The gauge is pegged, but only at idle": ["behaviour high idle"],
        "oil light flickers but never when cold": ["behaviour unsteady cold"],
        "Good around town. When hot however the pressure sags": ["behaviour low hot"],
        "low pressure. Not every time though": ["behaviour low comes and goes"],
        "it stays at zero degrees all week": [],
        "cranked it and it started, no oil pressure": ["behaviour none"],
        "cranked it, no leaks. Nothing to see": [],
        "it would not make any oil pressure": ["behaviour none"],
        "put it together with my brother, no oil pressure": ["behaviour none"],
        "helped a fella with his flat four, no oil pressure": ["behaviour none"],
        "a fella with the same engine has no oil pressure": [],
        "as the revs rise the pressure falls": ["behaviour falling at speed"],
        "the needle has very slowly been falling": ["behaviour falling gradual"],
        "low oil pressure warning in the climb": ["behaviour lamp slopes"],
        "gauge suddenly at zero": ["behaviour none sudden"],
        "pressure drops in long left handers": ["behaviour low bends"],
        "oil light takes 15 seconds to go out": ["behaviour slow to build"],
        "light comes on every time I brake hard": [
            "behaviour lamp braking returns under the same condition"
        ],
        "pressure is good at idle. drops off as the revs go up": [
            "behaviour normal idle",
            "behaviour falling at speed",
        ],
        "fitted a new pressure gauge, no pressure gauge before": [],
        "it does not flicker at idle": [],
        "light flickers but the pressure is where it should be": [
            "behaviour normal",
            "behaviour unsteady",
            "finding second_instrument_disagrees present",
        ],
        "never had a knock before": [],
        "smoke in the cabin": [],
        "since a knock on the sump": [],
        "low at idle, idle dropped to 500": ["behaviour low idle"],
        "oil pressure jumped from 8 to 17": [],
        "5 psi once it was good and warm": [],
        "oil light on. Shut off after 15 seconds": ["behaviour lamp"],
        "pulled the motor because of a knock": ["behaviour knock"],
        "oil light is still flickering at idle": ["behaviour unsteady idle"],
        "it dropped a valve seat, oil pressure is fine at idle": ["behaviour normal idle"],
        "grounded the wire and the needle swings to full scale": [],
        "ground the wire and it goes to zero": [],
        "fitted a new oil pump. Now the gauge is at zero": ["behaviour none work"],
        "oil pressure at hot idle is too low": ["behaviour low idle, hot"],
        "oil pressure at idle is not low": [],
        "oil pressure at zero. It happens in bends": ["behaviour none bends"],
        "oil pressure at zero. It corners well": ["behaviour none"],
        "pressure drops to 5 psi, 45 at 2000": ["behaviour low"],
    }
)
def behaviours(paragraph: Paragraph) -> Iterator[Fact]:
    """What shows of the pressure, and noises, with when, since when and how it went on."""
    heads: list[Head] = []
    for line in paragraph.lines:
        heads += heads_of(line, heads, paragraph)
    loose: list[tuple[Line, Mark[object]]] = []
    for line in paragraph.lines:
        own = [h for h in heads if h.line is line]
        for head in own:
            set_gauge(head)
        set_lengths(line, own)
        marks = [*modifiers(line, heads), *since_then(line, paragraph, heads)]
        done = jobs(line)
        work = [j.whole for j in done if j.trial]
        taken_out = [j.whole for j in done if not j.trial]  # "after pulling the clutch"
        marks = [
            m
            for m in marks
            if not not_by_itself(line, m)
            and not _is_tried(line, m, heads)
            and not (isinstance(m.value, Circumstance) and any(_inside(m, w) for w in work))
            and not (m.value is Circumstance.LOAD and any(_inside(m, w) for w in taken_out))
        ]
        loose += [(line, mark) for mark in marks if not _give(line, mark, own)]
    _give_to_neighbours(heads, loose)
    set_only(heads)
    for head in heads:
        if falls_with_revs(head):
            head.mark = Mark(Shows.FALLING, head.mark.first, head.mark.last)
        elif fell_slowly(head):
            head.mark = Mark(Shows.LOW, head.mark.first, head.mark.last)
    yield from at_odds(heads)
    for head in merged(heads):
        fact = _fact(head)
        yield fact
        if by_starter(head, paragraph):
            fields: dict[str, Value] = {"pressure": "0", "rpm": Speed.CRANKING.value}
            yield Fact("reading", fields, fact.spans, fact.sure)
    for line in paragraph.lines:
        yield from denied(line)


def _give(line: Line, mark: Mark[object], heads: list[Head]) -> bool:
    """Give a modifier to the nearest head of its sentence; False where none takes it."""
    takers = [
        h for h in heads if h.is_pressure or not isinstance(mark.value, Course | Since | Onset)
    ]
    if not takers:
        takers = [h for h in heads if not isinstance(mark.value, Onset)]
    later = [h for h in takers if h.mark.first > mark.first]
    if (ended := fine_until(line, mark, takers)) is not None and not later:
        ended.mark = Mark(Shows.LOW, ended.mark.first, ended.mark.last)
        _take(ended, line, from_then(mark))
        return True
    if line.word(mark.first) in UNTIL:  # "fine until 5000 rpm, then it drops"
        takers = later or [h for h in takers if h.mark.value is not Shows.NORMAL]
    takers = [h for h in takers if not ended_by(line, h.mark, mark)]
    best = min(takers, key=lambda h: _far(line, h.mark, mark), default=None)
    if best is None:
        return False
    far = line.distance(best.mark, mark)
    if at_once_then(line, best.mark, mark):
        if isinstance(mark.value, Circumstance) and mark.value.value not in best.during:
            best.never.append(mark.value.value)
            best.used.append((line, mark))
        return True
    if isinstance(mark.value, Circumstance) and (
        ends_then(line, best.mark, mark) or lasts_for(line, best.mark, mark)
    ):
        length = [t for t in line.tokens[mark.first : mark.last] if t.kinds & TIMES]
        if mark.value in PASSED and length:
            best.lasts = best.lasts or length[0].value
        elif mark.value not in PASSED and mark.value.value not in [*best.during, *best.never]:
            best.never.append(mark.value.value)
        else:
            return True
        best.used.append((line, mark))
        return True
    if isinstance(mark.value, Circumstance) and (
        turned(line, best.mark, mark)
        or shown_elsewhere(line, best.mark, mark)
        or of_what_was_before(line, best.mark, mark)
    ):
        return True
    cranked = CRANKED & line.words(mark.first, mark.last)
    if best.mark.value is Shows.NONE and cranked:
        best.used.append((line, mark))  # turned by the starter it has not started
        return True
    if far > _FARTHEST and isinstance(mark.value, Circumstance):
        return True
    if isinstance(mark.value, Circumstance) and of_a_reading(line, best.mark, mark, far):
        return True
    _take(best, line, mark)
    return True


def _is_tried(line: Line, mark: Mark[object], heads: list[Head]) -> bool:
    """Whether another grade of oil was a trial of a trouble named before, which did not begin then."""
    if mark.value is not Since.GRADE or line.word(mark.first) in ("since", "ever", "after", "from"):
        return False
    return any((h.line.number, h.mark.last) <= (line.number, mark.first) for h in heads)


def _inside(mark: Mark[object], work: Mark[object]) -> bool:
    """Whether words for when are words for work: "bumped the idle up" """
    return work.first <= mark.first and mark.last <= work.last


def _far(line: Line, head: Mark[Shows], mark: Mark[object]) -> int:
    """How far a head is from what may be said of it; one of another clause is farther."""
    clause = line.clause(mark.first)
    inside = clause.first <= head.first < clause.last
    return line.distance(head, mark) + (0 if inside else _OTHER_CLAUSE)


def _take(head: Head, line: Line, mark: Mark[object]) -> None:
    """Add a modifier to a head."""
    value = mark.value
    match value:
        case Circumstance():
            own = range(head.mark.first, head.mark.last) if line is head.line else range(0)
            lead = (k for k in range(mark.first - 2, mark.first) if k not in own)
            denied = any(line.word(k) in DENY for k in lead)  # not the "no" of "no pressure"
            denied = denied or (head.mark.value is Shows.UNSTEADY and _is_steady(line, head, mark))
            into = head.never if denied and line.tokens else head.during
            other = head.during if denied else head.never
            if value.value in other:
                return
            if value.value not in into:
                into.append(value.value)
            head.only = head.only or only_then(line, mark)
        case Course.CONSTANT if head.mark.value is Shows.SLOW:
            pass  # "stays on for 3 seconds"
        case Course():
            if value.value not in head.course:
                head.course.append(value.value)
        case Onset():
            head.onset = head.onset or value.value
        case Since():
            head.since = head.since or value.value
        case _:
            return
    head.used.append((line, mark))


def _is_steady(line: Line, head: Head, mark: Mark[object]) -> bool:
    """Whether it is said to be steady then: "bounces at 2200, steady at idle", no "still bounces"."""
    first = head.mark.last if head.line is line and head.mark.first < mark.first else 0
    return any(line.word(k) in STEADY for k in range(max(first, mark.first - 2), mark.first))


def _give_to_neighbours(heads: list[Head], loose: list[tuple[Line, Mark[object]]]) -> None:
    """Give what stands in a sentence without a head to the pressure last spoken of, or the next."""
    of_pressure = [h for h in heads if h.is_pressure and h.mark.value is not Shows.NORMAL]
    if not of_pressure:
        return
    for line, mark in loose:
        before = [h for h in of_pressure if h.line.number < line.number]
        if _of_something_else(line, mark):
            continue  # "I have done it many times", "not on the road for 20 years"
        alone = isinstance(mark.value, Circumstance) and mark.value is not Circumstance.RANDOM
        if alone and not (before and (_only_that(line) or says_only_when(line, before[-1].line))):
            continue
        _take(before[-1] if before else of_pressure[0], line, mark)


def _of_something_else(line: Line, mark: Mark[object]) -> bool:
    """Whether a course is of what people do, in a clause without anything that shows, or of a rest."""
    if mark.value in (Course.UNCHANGED, Onset.GRADUAL) and STOOD & {t.word for t in line.tokens}:
        return True
    said = any(line.word(k) in _PEOPLE for k in range(line.clause(mark.first).first, mark.first))
    return isinstance(mark.value, Course) and said and mark.value is not Course.NOT_REPRODUCED


def _only_that(line: Line) -> bool:
    """Whether a sentence adds to the one before: "Only when hot.", but not "It corners well." """
    only = ("only", "happens", "always", "mostly", "usually", "just")
    return line.word(0) in only or (line.word(0) in ("it", "this") and line.word(1) in ADDS_TO_IT)


def _fact(head: Head) -> Fact:
    line, shows = head.line, head.mark.value
    sure = line.stances.surety(head.mark)
    if line.guessed(head.mark):
        sure = min(sure, _GUESSED)
    spans: list[Span] = []
    for each in dict.fromkeys(x for x, _ in head.used):
        spans += each.span([m for x, m in head.used if x is each])
    if shows in FINDING_OF and not head.is_pressure and sure < _DOUBTFUL:
        fields: dict[str, Value] = {"what": FINDING_OF[shows], "state": "present"}
        return Fact("finding", fields, tuple(sorted(spans)), sure)
    fields = {"shows": shows.value}
    stays = STAYS & line.words(head.mark.first, head.mark.last)
    if shows is Shows.NONE and stays and Circumstance.START.value in head.during:
        head.during.remove(Circumstance.START.value)  # "fired it up, gauge stays at zero"
    for key, listed in (("during", head.during), ("never", head.never), ("course", head.course)):
        if listed:
            fields[key] = sorted(listed, key=_ORDER.index)
    if head.only and head.during:
        fields["only"] = True
    for key, word in (("onset", head.onset), ("since", head.since)):
        if word:
            fields[key] = word
    if head.lasts:
        fields["lasts"] = head.lasts
    if head.gauge:
        fields["gauge"] = head.gauge
    return Fact("behaviour", fields, tuple(sorted(spans)), sure)
