"""What a sentence says came of a trial: "no change", "went from 12 to 30", "fixed it for a week"."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.understanding.pressures.changes import changes, pressures_at
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.no_result import goes_down, is_no_result, only_cold
from knowledge.lexicon.work.beside_results import (
    AS_IT,
    BETTER,
    BY_THROTTLE,
    CURES_ONE,
    ELSEWHERE_READ,
    ENOUGH,
    GAINED,
    GOES_ON,
    LESS,
    MUCH,
    NOT_THE_PRESSURE,
    PLENTY,
    PUT_ON,
    SHOULD_BE,
    STAYS,
    TIMES_OF_DAY,
    WHOLLY,
)
from knowledge.reports.words import Result

_GOT = {"got", "gave"}  #: straight before a figure alone it is no gain: "primed it and got 50"
_HELPED_BEHIND = 5  #: words between "not cured" and what it did all the same
_LATER_WITHIN = 6  #: words from "300 miles later" to a result
_WELL_BELOW = 0.9  #: share of too much pressure below which it is not too much
_REVVED = 8  #: words before a clause in which the engine is revved
#: behind the figure of a result in which the one for hot idle follows, and words for that
_BESIDE_IT = 6
_HOT_AT = frozenset(["hot", "idle", "tickover", "warm"])


def results_of(line: Line) -> list[Mark[Result]]:
    """Results that are stated; a lone "same" only where a clause ends with it."""
    figures = [f for f in changes(line) if not only_cold(line, f)]
    leads_on = {f.first: f.value for f in figures}
    worded = [
        Mark(leads_on.get(m.last, m.value), m.first, m.last)  # "pressure came up from 20 to 48"
        for m in line.find(line.lexicon.results)
        if not any(m.overlaps(f) for f in figures)
    ]
    found = [r for mark in (*figures, *worded) if (r := _result(line, mark)) is not None]
    found = [Mark(Result.HELPED, m.first, m.last) if _in_part(line, m, found) else m for m in found]
    found = [m for m in found if not _less_than_cured(line, m, found)]
    of_pressure = [m for m in found if not _of_another_trouble(line, m)]
    return of_pressure or found  # "noise gone but pressure still low"


def _result(line: Line, mark: Mark[Result]) -> Mark[Result] | None:
    """What the words for a result say came of a trial; None where they say nothing of it."""
    if goes_down(line, mark):
        return None
    less = line.word(mark.last) in LESS and line.tokens[mark.last - 1].is_figure
    if less and mark.value in BETTER:
        return Mark(Result.WORSE, mark.first, mark.last + 1)  # "gives 20 psi less"
    if not _is_stated(line, mark) or is_no_result(line, mark):
        return None
    return _judged(line, mark)


def _is_stated(line: Line, mark: Mark[Result]) -> bool:
    """Whether it is stated of this engine, and not denied; "no difference" denies by itself."""
    whole = mark
    if "should" in line.words(mark.first, mark.last):
        whole = Mark(mark.value, mark.first, mark.first + 1)  # "where it should be"
    if "than" in line.words(mark.first, mark.last):
        whole = Mark(mark.value, mark.first, mark.first + 1)  # "lower than on the old one"
    if line.stances.at(whole) & (Stance.SUPPOSED | Stance.ELSEWHERE | Stance.GUESSED):
        return False
    negated = line.word(mark.first) in ("no", "not", "nothing", "none")
    return mark.value is Result.NO_DIFFERENCE or negated or not line.denied(mark)


def _in_part(line: Line, mark: Mark[Result], found: Sequence[Mark[Result]]) -> bool:
    """Whether one trouble is cured and another goes on: "cornering fault gone, flicker still there"."""
    if mark.value is Result.CURED and _but_not(line, mark):
        return True
    behind = [m for m in found if m.value is Result.NO_DIFFERENCE and m.first >= mark.last]
    said = {line.word(k) for m in behind for k in range(m.first, m.last)}
    return mark.value is Result.CURED and "still" in said and bool(said & GOES_ON)


def _but_not(line: Line, mark: Mark[Result]) -> bool:
    """Whether it cured one thing "but not the low idle", "but hot idle is still 8"."""
    if line.word(mark.first) not in CURES_ONE:
        return False
    rest = range(mark.last, len(line.tokens))
    but = next((k for k in rest if line.word(k) in ("but", "though", "although")), None)
    if but is None:
        return False
    near = [line.word(k) for k in range(but + 1, min(but + 1 + _HELPED_BEHIND, len(line.tokens)))]
    return near[:1] == ["not"] or "still" in near


def _less_than_cured(line: Line, mark: Mark[Result], found: Sequence[Mark[Result]]) -> bool:
    """Whether it only says that the cure was not whole: "not cured but better", "helped, not fixed"."""
    said = line.words(mark.first, mark.last)
    if mark.value is not Result.NO_DIFFERENCE or not said & WHOLLY:
        return False
    behind = {line.word(mark.last), line.word(mark.last + 1), line.word(mark.last + 2)}
    return any(
        m.value is Result.HELPED
        and 0 < m.first - mark.last <= _HELPED_BEHIND
        and bool(behind & {"but", "though", "although", "just"})
        for m in found
    )


def _of_another_trouble(line: Line, mark: Mark[Result]) -> bool:
    """Whether it is a noise, a leak or smoke that is gone or stays."""
    near = range(mark.first - 1, mark.last + 1)
    return bool({line.word(k) for k in near} & NOT_THE_PRESSURE)


def read_by_a_gauge(line: Line, mark: Mark[Result]) -> bool:
    """Whether a pressure is what a gauge showed that was put on to look: "put a gauge on and got 20"."""
    before = [line.word(k) for k in range(mark.first)]
    put = bool({"gauge", "gage"} & set(before)) and bool(PUT_ON & set(before))
    figure = any(line.tokens[k].is_figure for k in range(mark.first, mark.last))
    return put and mark.value in BETTER and figure


def comes_otherwise(line: Line, mark: Mark[Result]) -> bool:
    """Whether it came of a gauge that was put on, or of the throttle: "a rev and the light went out"."""
    if read_by_a_gauge(line, mark):
        return True
    clause = line.clause(mark.first)
    lead = line.words(max(0, clause.first - _REVVED), mark.first)
    return mark.value in BETTER and bool(lead & BY_THROTTLE) and not lead & TIMES_OF_DAY


def _judged(line: Line, mark: Mark[Result]) -> Mark[Result] | None:
    """A result, "cured" where it names a pressure that is enough at any speed and heat."""
    figure = any(line.tokens[k].is_figure for k in range(mark.first, mark.last))
    if mark.value is Result.HELPED and figure and _low_hot_behind(line, mark.last):
        return Mark(Result.NO_DIFFERENCE, mark.first, mark.last)
    clause = line.clause(mark.first)
    cold = any(line.word(k) in ELSEWHERE_READ for k in range(clause.first, clause.last))
    by = line.words(mark.first, mark.last) & GAINED
    values = [v for k in range(mark.first, mark.last) for v in pressures_at(line, k)]
    if mark.value is Result.CURED and values and values[-1] < ENOUGH and not by:
        if "since" in line.words(mark.first, mark.last):
            return None  # "8 psi ever since" is the trouble
        said = line.words(mark.first, mark.last + 1)
        if "back" in said and _after_a_time(line, mark):
            return Mark(Result.FOR_A_WHILE, mark.first, mark.last)  # "300 miles later back to 5"
        again = "again" in said
        value = Result.NO_DIFFERENCE if again else Result.HELPED  # "15 now", "5 psi again"
        return Mark(value, mark.first, mark.last)
    by -= _GOT if len(mark) == len(("got", "50")) else set()
    if mark.value is Result.NO_DIFFERENCE and values and _stays_well(line, mark, values[-1]):
        return Mark(Result.CURED, mark.first, mark.last)
    if mark.value is Result.HELPED and len(values) > 1 and values[0] >= MUCH:
        return mark  # "down from 110 to 85": still too much
    if mark.value is Result.CURED and values and _wants_more(line, mark):
        return Mark(Result.HELPED, mark.first, mark.last)
    if mark.value is not Result.HELPED or cold or by or not values or values[0] < PLENTY:
        return mark
    return Mark(Result.CURED, mark.first, mark.last)


def _stays_well(line: Line, mark: Mark[Result], value: float) -> bool:
    """Whether it stays at a pressure that is plenty: "the gauge stays at 70"."""
    said = line.words(mark.first, mark.last)
    return PLENTY <= value < MUCH * _WELL_BELOW and bool(said & STAYS) and "still" not in said


def _wants_more(line: Line, mark: Mark[Result]) -> bool:
    """Whether it is short of what it should be: "gets 20 now, wants 40", "22 hot, should be 40"."""
    for k in range(mark.last, min(mark.last + _BESIDE_IT, len(line.tokens))):
        if line.word(k) in SHOULD_BE and line.word(k - 1) not in AS_IT and _is_more(line, mark, k):
            return True
    return False


def _is_more(line: Line, mark: Mark[Result], at: int) -> bool:
    """Whether more stands behind a place than the pressure that a result names."""
    now = [v for k in range(mark.first, mark.last) for v in pressures_at(line, k)]
    behind = range(at + 1, min(at + 1 + _HELPED_BEHIND, len(line.tokens)))
    return any(v > max(now) for k in behind for v in pressures_at(line, k))


def _low_hot_behind(line: Line, last: int) -> bool:
    """Whether a figure behind a result is far too little hot: "now 60 cold and 3 hot idle"."""
    for k in range(last, min(last + _BESIDE_IT, len(line.tokens))):
        hot = _HOT_AT & {line.word(k + 1), line.word(k + 2)}
        if hot and any(v < ENOUGH for v in pressures_at(line, k)):
            return True
    return False


def _after_a_time(line: Line, mark: Mark[Result]) -> bool:
    """Whether "300 miles later" or the like leads to a result."""
    lead = range(max(0, mark.first - _LATER_WITHIN), mark.first)
    timed = any(line.tokens[k].kinds & {"time", "distance", "days", "hours"} for k in lead)
    return timed and bool({line.word(k) for k in lead} & {"later", "after", "within"})
