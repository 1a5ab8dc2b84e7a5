"""Read parts in a state and what lies where: "relief valve stuck open", "sludge in the pickup"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from diagnose.understanding.pressures.nearness import parted_by_time
from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.joining import (
    acted,
    alike,
    ends_behind,
    ends_there,
    gone_only,
    head_of,
    is_no_find,
    is_no_state,
    is_word_of,
    joined,
    linked,
    listed,
    looked_for,
    sealed_with,
)
from diagnose.understanding.work.parts_named import things_in
from knowledge.lexicon.shows.in_order import BEHIND_ONLY
from knowledge.lexicon.sights.exceptions import COMPOUNDS
from knowledge.lexicon.sights.looked_at import LEAKS
from knowledge.lexicon.things.thing import State, Substance, Thing
from knowledge.lexicon.words.joints import (
    ACTED,
    AMOUNT,
    BACK,
    BEFORE_PART,
    CANS,
    DRAWN_OUT,
    EARLIER,
    FORGOT_TO,
    HOLDING,
    INTO,
    IT,
    JOINS,
    LEADS,
    LEFT,
    NONE,
    OFF,
    OPENED,
    OUT_OF,
    RUNS_DRY,
    SOUNDS_SO,
    STARTS,
    WETTED,
)
from knowledge.model import Stage

_AFTER, _AHEAD, _APART = 5, 4, 6  #: most words: part to state, state to part, substance and place
_LONE = 5  #: words of a clause that only names a substance
_IN = frozenset(["in", "inside", "from", "into"])
_LEVEL = "level"  #: no part: "oil level fine, no leaks"
_ENGINE = "engine"  #: oil inside it is as it should be


@dataclass(frozen=True, slots=True)
class Pair:
    """A finding, whether it is there, and the words that say so; ``finding`` may be empty."""

    finding: str
    there: bool
    line: Line
    marks: tuple[Mark[object], ...]
    said_by: Mark[object]


@reader(
    {
        "relief valve was stuck open": ["finding relief_valve_stayed_open present"],
        "the pickup screen was half blocked": ["finding screen_blocked present"],
        "pickup and strainer were clean": ["finding screen_blocked absent"],
        "dropped the pan, cleaned it and found sludge in the strainer": [
            "finding sludge_on_screen present"
        ],
        "a bit of metal under the relief ball": ["finding debris_on_relief_seat present"],
        "took out the relief valve. the plunger was scored and the spring was broken": [
            "finding relief_seat_scored present",
            "finding relief_spring_short_or_broken present",
        ],
        "relief valve not stuck": [
            "finding relief_found_stuck absent",
            "finding relief_plunger_sticks absent",
        ],
        "no leaks at the filter": ["finding filter_seat_leaks absent"],
        "engine bay covered in oil": ["finding oil_seen_outside present"],
        "he left the o-ring off the pickup": ["finding suction_seal_cut_or_missing present"],
        "gallery plugs: no defects": ["finding gallery_plug_found_missing absent"],
        "pump chain in place": ["finding pump_chain_broken absent"],
        "relief spring u/s": ["finding relief_spring_short_or_broken present"],
        "took out the pump in order to clean it": [],
        "loosened the filter": [],
        "going to clean the pickup": [],
        "could the relief valve be stuck open?": [],
        "maybe the pickup is blocked": [],
        "my brother's filter had metal in it": [],
        "dropped the pan, lots of metal in it": ["finding metal_in_pan present"],
        "cut the filter open, no metal": ["finding metal_in_filter absent"],
        "filter cut open, full of metal": [
            "finding filter_packed present",
            "finding metal_in_filter present",
        ],
        "a chip wedged in the relief valve": ["finding debris_on_relief_seat present"],
        "plenty of oil in the engine": [],
        "the filter was changed, a valve stuck": [],
        "cracked the filter loose": [],
        "the pan is bone dry, rear main drips": ["finding seal_or_gasket_wet present"],
        "rod bearings all fine except number 6 which was spun": ["finding shell_spun present"],
        "lost its water through a split hose": [],
    }
)
def parts_and_places(paragraph: Paragraph) -> Iterator[Fact]:
    """Findings that are a part in a state, or a substance in a place."""
    seen: set[tuple[int, str]] = set()
    for pair in pairs(paragraph):
        fact = _fact(pair)
        if fact is not None and (pair.line.number, fact.short) not in seen:
            seen.add((pair.line.number, fact.short))
            yield fact


@lru_cache(maxsize=1)
def pairs(paragraph: Paragraph) -> tuple[Pair, ...]:
    """Parts with their states and substances with their places; without a finding as well."""
    known: list[tuple[Line, Mark[Thing]]] = []
    found: list[Pair] = []
    for line in paragraph.lines:
        things = things_in(line, known)
        stuff = [*_substances(line, things, known)]
        between = [_between(pair) for pair in stuff]
        found += stuff
        found += [
            pair
            for pair in _states(line, things, known)
            if line.word(pair.said_by.first) not in INTO  # "a chip wedged in it"
            or not any(pair.said_by.first in places for places in between)
        ]
        found += _left_off(line, things)
        known += [(line, m) for m in things]
    return tuple(found)


def _between(pair: Pair) -> range:
    """The places between a substance and where it lies, which is named after it."""
    if any(m.first < pair.said_by.first for m in pair.marks):
        return range(0)
    marks = sorted(pair.marks, key=lambda m: m.first)
    return range(marks[0].last, marks[-1].first)


def _fact(pair: Pair) -> Fact | None:
    line = pair.line
    if not pair.finding:
        return None
    finding = line.lexicon.book.findings[pair.finding]
    stance = Stance.STATED
    for mark in pair.marks:
        stance |= line.stances.at(mark)
    if stance & (Stance.SUPPOSED | Stance.ELSEWHERE | Stance.USUAL | Stance.GUESSED):
        return None
    sure = min(line.stances.surety(m) for m in pair.marks)
    if finding.stage is Stage.OPENED and sure < 1.0:
        return None
    last = max(m.last for m in pair.marks)
    if {line.word(k) for k in (last, last + 1)} & EARLIER or parted_by_time(line, pair.marks):
        return None  # "a pump had failed before"
    state = "present" if pair.there else "absent"
    return Fact("finding", {"what": pair.finding, "state": state}, line.span(pair.marks), sure)


def _states(
    line: Line, things: Sequence[Mark[Thing]], known: Sequence[tuple[Line, Mark[Thing]]]
) -> Iterator[Pair]:
    """Parts with the state each is in."""
    for mark, meanings in alike(line.lexicon.states.find_alike(line.tokens)):
        inside = [t for t in things if t.overlaps(mark)]
        if any(not is_word_of(t, mark) for t in inside) or line.word(mark.first - 1) in ACTED:
            continue
        if line.word(mark.first) in LEAKS and looked_for(line, mark.first):
            continue  # "checked the pipes, leaks and the level"
        if line.word(mark.first) == "sound" and line.word(mark.last) in SOUNDS_SO:
            continue  # "the big ends sound quiet", "the sound of a follower"
        if _of_what_follows(line, mark):
            continue
        if State.COLD in meanings and line.word(mark.last) in STARTS:
            continue  # "blew the filter off on a cold start"
        if line.tokens[mark.first].stem == "come" and line.word(mark.last) in DRAWN_OUT:
            continue  # "the dipstick came out clean", "the filter came off hard"
        those = _parts_of(line, mark, [t for t in things if t not in inside])
        if is_no_state(line, mark, meanings, those):
            continue
        fine = State.FINE in meanings and bool(those)
        if fine and (not linked(line, those[0], mark) or is_no_find(line, those[0])):
            continue
        if (
            fine
            and line.word(mark.last - 1) in BEHIND_ONLY
            and not ends_behind(line, mark, those[0])
        ):
            continue
        if line.word(mark.first) == "dry" and line.word(mark.first - 1) in RUNS_DRY:
            continue  # "ran dry when the drain plug fell out"
        marks: tuple[Mark[object], ...] = (mark,)
        if not those:
            back = _named_before(line, mark, things, known)
            those = [back] if back is not None else []
            marks = (mark, *(t for t in those if t in things))
        else:
            marks = (mark, *those)
        for thing in those:
            yield from _meant(line, mark, meanings, thing, marks)


def _of_what_follows(line: Line, mark: Mark[object]) -> bool:
    """Whether a state is of the stuff named straight after it: "full of broken nylon teeth"."""
    if line.word(mark.last - 1) in ("of", "with"):
        return False
    found = line.lexicon.substances.find(line.tokens)
    return any(s.first == mark.last and len(s) > 1 for s in found)


def _left_off(line: Line, things: Sequence[Mark[Thing]]) -> Iterator[Pair]:
    """Parts that were left out: "left the o-ring off", "forgot the o-ring"."""
    for part in things:
        start = part.first
        while start and line.word(start - 1) in FORGOT_TO:
            start -= 1
        before = range(max(0, start - 2), start)
        left = next((k for k in before if line.word(k) in LEFT), None)
        if left is None:
            continue
        after = next((k for k in range(part.first, part.last + 2) if line.word(k) in OFF), None)
        if after is None and line.word(left) in ("left", "leaving"):
            continue
        mark = Mark(True, left, max(part.last, (after or 0) + 1))
        for finding in part.value.shows.get(State.ABSENT, ()):
            yield Pair(finding, not line.denied(mark), line, (mark,), mark)


def _meant(
    line: Line,
    mark: Mark[object],
    meanings: Sequence[State],
    thing: Mark[Thing],
    marks: tuple[Mark[object], ...],
) -> Iterator[Pair]:
    """The findings of a part in a state; of several meanings of the words, the first it has."""
    denied = line.denied(mark)
    one = len(marks) > 1 and any(line.tokens[k].is_figure for k in range(thing.first, thing.last))
    if State.IN_PLACE in meanings and len(marks) > 1 and not denied:
        for finding in gone_only(thing.value):
            yield Pair(finding, False, line, marks, mark)
    for state in meanings:
        shown = thing.value.shows.get(state, ())
        excluded = () if one else thing.value.rules_out.get(state, ())  # "3 looks fine, 4 is wiped"
        if shown or excluded:
            for finding in shown:
                yield Pair(finding, not denied, line, marks, mark)
            for finding in () if denied else excluded:
                yield Pair(finding, False, line, marks, mark)
            return
    if len(marks) > 1 and thing.value.family != _LEVEL:
        yield Pair("", True, line, marks, mark)


def _parts_of(line: Line, state: Mark[object], things: Sequence[Mark[Thing]]) -> list[Mark[Thing]]:
    """The parts that a state is said of: the nearest, and the others of its list."""
    before = [t for t in things if t.last <= state.first]
    after = [t for t in things if t.first >= state.last]
    best: Mark[Thing] | None = None
    cost = 99.0
    if before and joined(line, before[-1].last, state.first, _AFTER):
        best, cost = before[-1], (state.first - before[-1].last) / 2
    if after:
        gap = [line.word(k) for k in range(state.last, after[0].first)]
        if acted(line, state, gap):
            return []
        if len(gap) <= _AHEAD and set(gap) <= BEFORE_PART and len(gap) < cost:
            best = after[0]
    if best is None:
        return []
    if best in before and (head := head_of(line, best, before)) is not None:
        return [head]
    return [best, *listed(line, best, before if best in before else after, best in before)]


def _named_before(
    line: Line,
    state: Mark[object],
    things: Sequence[Mark[Thing]],
    known: Sequence[tuple[Line, Mark[Thing]]],
) -> Mark[Thing] | None:
    """The part named last, where the clause of a state names none and goes on about it."""
    clause = line.clause(state.first)
    if any(clause.first <= t.first < clause.last for t in things):
        return None
    lead = line.words(clause.first, state.first)
    if not lead <= LEADS or not ends_there(line, state):
        return None
    if line.word(state.last) in ("it", "them", "her", "now", "since"):
        return None  # "spun it with a drill" is done by somebody; "good now" is what came of it
    own = [t for t in things if t.last <= clause.first]
    if own:
        return own[-1]
    goes_on = line.word(clause.first) in BACK and clause.first == 0
    last = [m for x, m in known if x.number == line.number - 1]
    return last[-1] if last and goes_on else None


def _substances(
    line: Line, things: Sequence[Mark[Thing]], known: Sequence[tuple[Line, Mark[Thing]]]
) -> Iterator[Pair]:
    """Substances with the place each lies in."""
    places: list[Mark[Thing]] = []
    last = 0
    for mark in line.lexicon.substances.find(line.tokens):
        if any(t.overlaps(mark) for t in things) or line.word(mark.last) in CANS:
            continue  # "crushed like a coke can"
        if mark.value is Substance.SEALER and sealed_with(line, mark):
            continue
        if mark.value is Substance.OIL and line.word(mark.last) in COMPOUNDS:
            continue  # "oil lamp came on and the engine died"
        before = [p for p in places if p.last <= mark.first]
        too = before if _in_a_row(line, last, mark.first) else []
        places = _places_of(line, mark, things) or too or _in_it(line, mark, things, known)
        last = mark.last
        for place in places:
            denied = line.denied(mark)
            between = range(*sorted((mark.last, place.first))) or range(place.last, mark.first)
            out = {line.word(k) for k in between} & OUT_OF
            held = (
                place.value.gives if out and mark.value in place.value.gives else place.value.holds
            )
            marks = (mark, place) if place in things else (mark,)
            for finding in held.get(mark.value, ()):
                yield Pair(finding, not denied, line, marks, mark)


def _in_a_row(line: Line, first: int, last: int) -> bool:
    """Whether only "and" stands between two substances: "covered with bits of rag and gasket"."""
    between = line.words(first, last)
    return bool(between & JOINS) and between <= JOINS | {"bits", "of", "some", "bit"}


def _in_it(
    line: Line,
    substance: Mark[Substance],
    things: Sequence[Mark[Thing]],
    known: Sequence[tuple[Line, Mark[Thing]]],
) -> list[Mark[Thing]]:
    """The place named last: "lots of metal in it", "filter opened, full of metal"."""
    clause = line.clause(substance.first)
    before = [t for t in things if t.last <= substance.first]
    after = [line.word(k) for k in range(substance.last, substance.last + _AHEAD)]
    if any(a in INTO and b in IT for a, b in pairwise(after)):
        last = [m for x, m in known if x.number == line.number - 1]
        return before[-1:] or last[-1:]
    lead = line.words(clause.first, substance.first)
    said = bool(lead & HOLDING) or line.denied(substance) or clause.last - clause.first <= _LONE
    goes_on = said and before and before[-1].last <= clause.first
    if goes_on and lead <= LEADS | HOLDING | NONE | AMOUNT and substance.value is not Substance.OIL:
        return before[-1:]
    if things or not known or lead - (LEADS | HOLDING | NONE | AMOUNT) or clause.first:
        return []
    opened, place = known[-1]
    near = opened.number == line.number - 1 and substance.value is not Substance.OIL
    words = {t.word for t in opened.tokens[: place.last + 2]}
    return [place] if near and words & OPENED else []


def _places_of(
    line: Line, substance: Mark[Substance], things: Sequence[Mark[Thing]]
) -> list[Mark[Thing]]:
    """Where a substance lies."""
    after = [t for t in things if t.first >= substance.last]
    before = [t for t in things if t.last <= substance.first]
    if after and joined(line, substance.last, after[0].first, _APART):
        words = line.words(substance.last, after[0].first)
        fits = bool(words & INTO)
        if substance.value is Substance.OIL and after[0].value.family == _ENGINE:
            fits = bool(words & (INTO - _IN))
        if fits:
            return [after[0], *listed(line, after[0], after, False)]
    if before and joined(line, before[-1].last, substance.first, _APART):
        words = line.words(before[-1].last, substance.first)
        if words & (WETTED if substance.value is Substance.OIL else HOLDING):
            return [before[-1], *listed(line, before[-1], before, True)]
    return []
