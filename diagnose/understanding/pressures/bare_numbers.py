"""Whether a number without a unit is a pressure: beside a speed or heat, or once one was spoken of."""

from __future__ import annotations

from diagnose.understanding.pressures.compared_figures import beside_the_book
from diagnose.understanding.pressures.no_pressures import NO_PRESSURES
from diagnose.understanding.pressures.rows import row_of
from diagnose.understanding.pressures.then_now import (
    beside_what_was,
    came_after_none,
    came_down,
    fell_within,
    is_dated,
    is_what_is_now,
    later_alone,
    left_from,
)
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.figure_patterns import WORDS
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import Token
from knowledge.lexicon.shows.beside_pressure import GAUGE_WORDS
from knowledge.lexicon.shows.instruments_named import STATIONS
from knowledge.lexicon.stance.stance_words import SIDES
from knowledge.lexicon.values.beside_numbers import (
    ABOUT,
    COUNTS,
    DASH,
    DRIVES,
    FASTER,
    FASTER_TO,
    FOLLOWS,
    GETS,
    GRADUALLY,
    IS,
    MOST,
    MOVES,
    NAMES,
    NEARLY,
    NEVER,
    ON_THE,
    ONCE,
    OR_LESS,
    OR_MORE,
    OVER,
    ROAD,
    RUNNING,
    SAYS,
    SHOWN_BY,
    SHOWN_THEN,
    SO_MUCH,
    THEN_NOW,
    TOWARDS,
    UNDER,
    WAS_AT,
    WHO_DRIVES,
)
from knowledge.reports.words import Circumstance, Speed

MOST_PSI, MOST_BAR = 150.0, 10.0  #: a larger number without a unit is no pressure
MOST_KPA = 1000.0
#: after "about 10", which then is what the instrument shows
_THEN = frozenset(
    ["", ",", ".", "where", "when", "at", "now", "instead", "and", "but", "hot", "cold", "max"]
)
#: beside these a bare number is a pressure
_LISTED = (Circumstance.COLD, Circumstance.HOT, Circumstance.IDLE, *Speed)
_WENT = 9  #: words from a person to how fast he goes
_HYPHENS = frozenset(["-", "–", "—", "/", "%"])
_TO_GAUGE = 3  #: words from "on" to the test gauge it was read on


def may_be_pressure(line: Line, i: int, token: Token, unit: str, spoken_of: bool) -> bool:
    """Whether a number without a unit stands where a pressure does.

    ``unit``: that of the other pressures; ``spoken_of``: a pressure was named before.
    """
    if not _is_plausible(token, unit) or _is_another_number(line, i):
        return False
    if spoken_of and _is_named_so(line, i):
        return True
    if _counts_something(line, i, token):
        return False
    return _is_read_there(line, i, spoken_of) or (spoken_of and _goes_on_with_it(line, i))


def _is_plausible(token: Token, unit: str) -> bool:
    """Whether a gauge can show it, written as one writes pressures; ".004" is a clearance."""
    clearance = "." in token.word[:2] and len(token.word) > len(".00")
    if token.word in WORDS or token.word == "zero" or clearance:
        return False
    low, *high = (float(p) for p in token.value.split(" to "))
    most = {"psi": MOST_PSI, "kPa": MOST_KPA}.get(unit, MOST_BAR)
    return low <= max(high, default=low) <= most


def _is_another_number(line: Line, i: int) -> bool:
    """Whether it is a speed on the road, a size, a row of another gauge."""
    road = _is_of_the_road(line, i) or _how_fast_one_went(line, i)
    return road or any(f(line, i) for f in NO_PRESSURES)


def _is_named_so(line: Line, i: int) -> bool:
    """Whether a side, a row or the place on a dial says that it is one: "the 20 mark"."""
    if line.word(i + 1) == "mark" or _of_a_side(line, i) or i in row_of(line):
        return True
    tested = line.word(i + 1) == "on" and any(
        i < m.first <= i + _TO_GAUGE for m in line.find(line.lexicon.direct)
    )
    return tested or ((line.word(i + 1), line.word(i + 2)) in ON_THE and line.word(i + 3) in DASH)


def _counts_something(line: Line, i: int, token: Token) -> bool:
    """Whether it counts what follows, is a name, or one of a pair: "20/20"."""
    named = line.word(i - 1) in NAMES and not (
        line.word(i - 1) == "of" and line.word(i - 2) in ("pressure", "reading", "psi")
    )
    bounds = line.word(i + 1) == "or" and line.word(i + 2) in OR_LESS | OR_MORE
    if (line.word(i + 1) in COUNTS and not bounds) or (named and not token.word[:1].isalpha()):
        return True
    return line.word(i + 1) == "/" or (line.word(i - 1) == "/" and _is_ratio(line, i))


def _is_read_there(line: Line, i: int, spoken_of: bool) -> bool:
    """Whether it stands beside when it was read, or straight behind what shows it."""
    mark = Mark(line.tokens[i].value, i, i + 1)
    read = line.find(line.lexicon.instrument)
    listed = [
        m for m in (*line.find(line.lexicon.speed), *line.circumstances) if m.value in _LISTED
    ]
    was = spoken_of and (line.word(i - 1) in WAS_AT or line.word(i + 1) in ONCE)
    if line.usual(mark) and (_has_pressure(line) or listed or was or read):
        return True
    if (spoken_of or listed) and (_follows_what_was(line, i) or _beside_a_speed(line, mark)):
        return True
    near = any(
        line.distance(mark, m) <= 2 and not any(line.tokens[k].is_figure for k in _between(mark, m))
        for m in listed
    )
    return near or any(0 <= i - m.last <= 4 and line.distance(m, mark) <= 4 for m in read)


def _has_pressure(line: Line) -> bool:
    """Whether a figure of the sentence has a unit of pressure."""
    return any("pressure" in t.kinds for t in line.tokens)


def _beside_a_speed(line: Line, mark: Mark[str]) -> bool:
    """Whether a speed in figures stands beside it: "40 @ 2000 rpm"."""
    speeds = (Mark(True, k, k + 1) for k, t in enumerate(line.tokens) if "rpm" in t.kinds)
    return any(_beside(line, mark, s) for s in speeds)


def _goes_on_with_it(line: Line, i: int) -> bool:
    """Whether words say that it is another of the pressures that were spoken of."""
    if beside_the_book(line, i) is not None or any(case(line, i) for case in _GOES_ON):
        return True
    free, others = _stands_free(line, i), _has_pressure(line)
    named = bool(line.find(line.lexicon.instrument)) or others or free
    if _said(line, i, named):
        return True
    return free and (
        _alone(line, i)
        or _is_now(line, i)
        or _beside_when(line, i)
        or line.word(i - 1) in DASH
        or (others and _beside_running(line, i))
    )


def _is_bounded(line: Line, i: int) -> bool:
    """Whether it is what the pressure never passes: "never above 20"."""
    return any(line.word(k) in NEVER for k in range(i - 5, i)) and _bound_before(line, i)


def _beside_running(line: Line, i: int) -> bool:
    """Whether words say what the engine did when it was read: "70 running", "45 steady"."""
    return line.word(i + 1) in RUNNING or line.word(i - 1) in RUNNING


def _is_ratio(line: Line, i: int) -> bool:
    """Whether a figure that is no speed stands before the slash: "20/20", not "7 @ 700 / 24"."""
    before = line.tokens[i - 2]
    return before.is_figure and "rpm" not in before.kinds


def _of_a_side(line: Line, i: int) -> bool:
    """Whether a number follows the side of an engine or a station: "port 45, starboard 28"."""
    return line.word(i - 1) in {*SIDES, *STATIONS} and _stands_free(line, i)


def _is_of_the_road(line: Line, i: int) -> bool:
    """Whether a number is how fast one drove: "doing 70", "flying down the interstate at 75"."""
    before = line.word(i - 1)
    if before in ("at", "doing", "about") and line.word(i - 2) in ROAD:
        return True
    first = line.clause(i).first
    said = line.words(max(first, i - 7), i)
    if before == "doing" or not said & DRIVES or before not in ("at", "about", "around"):
        return before == "doing"
    return not any(first <= m.first < i for m in line.find(line.lexicon.instrument))


def _how_fast_one_went(line: Line, i: int) -> bool:
    """Whether a person goes that fast: "when I get up to 50", "once we hit 70"."""
    first = max(line.clause(i).first, i - _WENT)
    who = next((k for k in range(i - 1, first - 1, -1) if line.word(k) in WHO_DRIVES), None)
    if who is None or line.word(i + 1) in SHOWN_THEN:
        return False
    said = [line.word(k) for k in range(who + 1, i)]
    if not said or any(line.tokens[k].is_mark for k in range(who + 1, i)):
        return False
    behind = line.words(i + 1, i + 4)
    if behind & DASH or GAUGE_WORDS & set(said) or said[-1] not in FASTER | FASTER_TO:
        return False
    faster = set(said) & (FASTER_TO - {"to", "at"} | {"up"})
    return bool(set(said) & FASTER) or bool(set(said) & GETS and faster)


def _beside(line: Line, a: Mark[str], b: Mark[object]) -> bool:
    """Whether two numbers stand beside each other, "at" at most between them."""
    between = _between(a, b)
    return len(between) <= 2 and not any(
        (line.tokens[k].is_mark and line.word(k) not in "@=:") or line.tokens[k].is_figure
        for k in between
    )


def _said(line: Line, i: int, names_it: bool) -> bool:
    """Whether a word before a number says that an instrument shows it or moves to it."""
    at = i - 1
    while line.word(at) in NEARLY | SO_MUCH | {"than"} and at > i - 4:
        at -= 1
    word = line.word(at)
    if names_it and at < i - 1 and line.word(i - 1) in ABOUT and line.word(i + 1) in _THEN:
        return True
    came = (
        at > 0
        and line.tokens[at - 1].is_figure
        and "from" in [line.word(k) for k in range(at - 5, at - 1)]
    )
    if word == "to" and came and _moves(line, i):
        return True  # "dropped from its usual 80 psi to 40"
    if word == "to" and names_it and fell_within(line, at):
        return True
    if word in TOWARDS | OVER | UNDER:
        verb = at - 1
        while (
            line.word(verb) in NEARLY | GRADUALLY | {"out", "up", "down", "back"} and verb > at - 3
        ):
            verb -= 1
        if {line.word(verb), line.word(at - 1)} & (MOVES | MOST):
            return True
        if word in OVER | UNDER and line.word(verb) in IS and line.word(verb - 1) in SHOWN_BY:
            return _stands_free(line, i)
        if word == "at" and line.word(verb) in ("is", "its") and line.word(verb - 1) in SHOWN_BY:
            return _stands_free(line, i)
    used_to = word in IS and (line.word(at - 2), line.word(at - 1)) == ("used", "to")
    return word in SAYS or used_to or (names_it and word in IS)


def _follows_what_was(line: Line, i: int) -> bool:
    """Whether "now" leads to it from a figure of the time before: "it was 40, now 10 and 5"."""
    at = i - 1
    if line.word(at) == "and" and line.tokens[at - 1].is_figure and _stands_free(line, i):
        at -= 2
    while at > 0 and line.word(at) in NEARLY | IS | SAYS | TOWARDS | MOVES | {"it", "to"}:
        at -= 1
    led = any(line.word(k) == "now" for k in range(at, i))
    before = (
        k for k, t in enumerate(line.tokens[: at + 1]) if t.kinds & {"number", "range", "pressure"}
    )
    return led and any(line.usual(Mark(True, k, k + 1)) for k in before)


def _moves(line: Line, i: int) -> bool:
    """Whether the clause of a number says that something fell or rose."""
    clause = line.clause(i)
    return any(line.word(k) in MOVES for k in range(clause.first, i))


def _begins_bounded(line: Line, i: int) -> bool:
    """Whether a clause begins with "below" and a number: "it slowly drops, below 15 by the end"."""
    clause = line.clause(i)
    lead = [line.word(k) for k in range(clause.first, i) if not line.tokens[k].is_mark]
    bound = bool(lead) and lead[-1] in OVER | UNDER and set(lead[:-1]) <= THEN_NOW | {"and", "well"}
    ends = line.word(i + 1) in ("by", "") or line.word(i + 1) in FOLLOWS
    return bound and clause.first > 0 and ends and _moves_in(line, range(clause.first))


def _moves_in(line: Line, places: range) -> bool:
    """Whether a word of these places says that something fell or rose."""
    return any(line.word(k) in MOVES for k in places)


def _bound_before(line: Line, i: int) -> bool:
    """Whether "above", "below", "more than" stands straight before a number."""
    at = i - 2 if line.word(i - 1) in ("than", "about", "the") else i - 1
    return line.word(at) in OVER | UNDER


def _stands_free(line: Line, i: int) -> bool:
    """Whether nothing that a number could count follows it: an end, a mark, "at", "when hot"."""
    if i + 1 >= len(line.tokens):
        return True
    after = line.tokens[i + 1]
    if after.is_mark:
        return after.word not in _HYPHENS
    return after.word in FOLLOWS or any(
        m.first == i + 1 for m in (*line.find(line.lexicon.speed), *line.circumstances)
    )


def _alone(line: Line, i: int) -> bool:
    """Whether a number is a clause of its own: "fine at start, 50, but"."""
    clause = line.clause(i)
    words = [k for k in range(clause.first, clause.last) if not line.tokens[k].is_mark]
    led = all(line.word(k) in THEN_NOW | ABOUT for k in words if k != i)
    return words[-1:] == [i] and led and len(line.sentence.clauses) > 1


def _is_now(line: Line, i: int) -> bool:
    """Whether its clause only says that it is so now: "used to be 50. Now 20"."""
    clause = line.clause(i)
    before = line.words(clause.first, i)
    return "now" in before and before <= NEARLY | IS | TOWARDS | {"and", "it", "down", "up", "to"}


def _beside_when(line: Line, i: int) -> bool:
    """Whether it stands beside when it was read: "after an hour 20", "40 when it fires"."""
    mark = Mark(True, i, i + 1)
    return any(
        (0 <= i - m.last <= 1 and line.distance(m, mark) <= 1) or 0 <= m.first - i - 1 <= 1
        for m in line.circumstances
    )


def _between(a: Mark[str], b: Mark[object]) -> range:
    return range(a.last, b.first) if a.first < b.first else range(b.last, a.first)


#: each says of a number that it goes on with a pressure that was spoken of
_GOES_ON = (
    beside_what_was,
    left_from,
    came_down,
    later_alone,
    is_dated,
    is_what_is_now,
    came_after_none,
    _begins_bounded,
    _is_bounded,
)
