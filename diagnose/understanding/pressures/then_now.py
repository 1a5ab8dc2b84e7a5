"""Pressures of different times beside each other: "35 where it ran 45", "down to 10 from 50"."""

from __future__ import annotations

from diagnose.understanding.pressures.rows import goes_by, was_first
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.shows.beside_pressure import TIMES
from knowledge.lexicon.values.beside_numbers import (
    ABOUT,
    COUNTED_BY,
    DATES,
    EACH,
    FALLS,
    IT_WAS,
    LATER,
    NOTHING,
    OPPOSED,
    RISEN,
    STEPS,
    THEN_NOW,
    TODAY,
    TOWARDS,
    WENT,
    WHEN_DATED,
)
from knowledge.lexicon.work.beside_results import WAS, WELL

_NEAR = 6  #: words between two pressures that are compared
_LONGEST = 9  #: words before it in which there was none
_FIGURES = frozenset(["pressure", "number", "range"])


def _is_figure(line: Line, at: int) -> bool:
    return 0 <= at < len(line.tokens) and bool(line.tokens[at].kinds & _FIGURES)


def beside_what_was(line: Line, at: int) -> bool:
    """Whether a number is compared with one of another time: "35 where it ran 45", "20 not 40"."""
    if line.word(at + 1) not in OPPOSED:
        return False
    if line.word(at + 1) in ("where", "when") and not IT_WAS & {
        line.word(at + 2),
        line.word(at + 3),
        line.word(at + 4),
    }:
        return False
    after = range(at + 2, at + 2 + _NEAR)
    other = next((k for k in after if _is_figure(line, k)), None)
    return other is not None and not any(line.tokens[k].is_mark for k in range(at + 1, other))


def left_from(line: Line, at: int) -> bool:
    """Whether a number is what a pressure before it came from: "down to 10 from 50"."""
    k = at - 1
    while line.word(k) in ABOUT | {"the", "its", "usual", "a", "normal"} and k > at - 4:
        k -= 1
    return line.word(k) == "from" and _is_figure(line, k - 1)


def came_down(line: Line, at: int) -> bool:
    """Whether a clause is no more than a fall from one number to another: "..., 70 to 20"."""
    clause = line.clause(at)
    words = [k for k in range(clause.first, clause.last) if not line.tokens[k].is_mark]
    if len(words) != len(("70", "to", "20")) or line.word(words[1]) != "to" or not clause.first:
        return False
    return at in (words[0], words[2]) and all(_is_figure(line, k) for k in (words[0], words[2]))


def is_first_of_fall(line: Line, at: int) -> bool:
    """Whether it is the first number of such a clause, which is what there was."""
    return came_down(line, at) and line.word(at + 1) == "to"


def later_alone(line: Line, at: int) -> bool:
    """Whether its clause only says how long after it was read: "50 at first, two weeks later 30"."""
    clause = line.clause(at)
    words = [k for k in range(clause.first, clause.last) if not line.tokens[k].is_mark]
    lead = [k for k in words if k < at]
    timed = any("time" in line.tokens[k].kinds for k in lead)
    plain = all(
        "time" in line.tokens[k].kinds or line.word(k) in LATER | ABOUT | THEN_NOW for k in lead
    )
    return timed and plain and at == words[-1]


def came_after_none(line: Line, at: int) -> bool:
    """Whether it is what came after a while without: "no pressure for a minute then 20"."""
    lead = range(max(0, at - _LONGEST), at)
    timed = any(line.tokens[k].kinds & {"seconds", "minutes"} for k in lead)
    none = any(line.word(k) in NOTHING for k in lead)
    behind = line.word(at + 1)
    ends = behind in ("", "psi", "at", "and", "hot", "cold") or line.tokens[at + 1].is_mark
    return line.word(at - 1) == "then" and timed and none and ends


def is_what_is_now(line: Line, at: int) -> bool:
    """Whether it ends a list of what was: "40 in July and 30 now"."""
    led = line.word(at - 1) in ("and", ",", "then")
    return led and line.word(at + 1) == "now" and any(is_dated(line, k) for k in range(at))


def is_dated(line: Line, at: int) -> bool:
    """Whether it was read at a time before now: 55 of "55 in May, 48 in July, 40 now"."""
    dated = line.word(at + 1) in WHEN_DATED and {line.word(at + 2), line.word(at + 3)} & DATES
    later = (k for k in range(at + 1, len(line.tokens)) if line.word(k) in ("now", "today"))
    return bool(dated) and any(_is_figure(line, k - 1) or _is_figure(line, k + 1) for k in later)


def of_an_earlier_day(line: Line, at: int) -> bool:
    """Whether a figure is what an earlier day showed: "had 40 psi yesterday and today none".

    Only where it is compared with today, or was good then: "was fine in the autumn, 3.5 bar".
    """
    clause = line.clause(at)
    day = next((k for k in range(clause.first, clause.last) if _is_earlier_day(line, k)), None)
    if day is None:
        return False
    today = next((k for k in range(day, len(line.tokens)) if line.word(k) in TODAY), None)
    if today is not None:
        return at < today
    said = line.words(clause.first, clause.last)
    return line.word(clause.first) in WAS and bool(said & WELL)


def _is_earlier_day(line: Line, at: int) -> bool:
    """Whether "yesterday", "last week" or "in the autumn" ends there."""
    before = {line.word(at - 1), line.word(at - 2)}
    return line.word(at) == "yesterday" or (
        line.word(at) in DATES and bool(before & {"last", "in"})
    )


def is_a_step(line: Line, i: int) -> bool:
    """Whether a figure was shown on the way to a later one: 70 of "became 70, then 64, now 58"."""
    before = line.word(i - 1)
    if goes_by(line, i) or _each(line, i + 1):
        return True  # "drops 3 psi every 20 miles"
    if is_dated(line, i):
        usual = line.usual(Mark(True, i, i + 1))
        return not usual or any(is_dated(line, k) for k in range(i))
    led = before in STEPS or (before in TOWARDS and line.word(i - 2) in STEPS)
    later = range(i + 1, len(line.tokens))
    return led and any(line.word(k) == "now" for k in later)


def _each(line: Line, at: int) -> bool:
    """Whether "every 20 miles" or "per thousand" stands there, not "every time I stop"."""
    behind = line.tokens[at + 1 : at + 2]
    counted = any(t.is_figure or t.kinds or t.word in COUNTED_BY for t in behind)
    return line.word(at) == "per" or (line.word(at) in EACH and counted)


def left_behind(line: Line, i: int) -> bool:
    """Whether a pressure is where one came from: "dropped from 60 to 20", "20 from 60"."""
    if " to " in line.tokens[i].value and line.word(i - 1) == "from":
        return False  # "rose from 20 to 35" names both
    if is_first_of_fall(line, i) or was_first(line, i):
        return True
    start = next((k for k in range(i - 1, max(-1, i - 4), -1) if line.word(k) == "from"), -1)
    return start >= 0 and not any(line.tokens[k].is_figure for k in range(start, i))


def risen_to(line: Line, i: int) -> str:
    """The value of a pressure; of "rose from 20 to 35" and "went 11 to 19", no ranges, the later."""
    value, before = line.tokens[i].value, line.word(i - 1)
    risen = before == "from" and line.words(i - 5, i) & RISEN
    return value.split(" to ")[-1] if risen or before in WENT else value


def fell_within(line: Line, at: int) -> bool:
    """Whether it fell in a time that stands before "to": "drops within a minute to 20"."""
    verb = next((k for k in range(at - 1, at - 6, -1) if line.word(k) in FALLS), -1)
    return verb >= 0 and any(line.tokens[k].kinds & TIMES for k in range(verb, at))
