"""What a sentence says came of a trial: "no change", "went from 12 to 30", "fixed it for a week"."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.understanding.changes import changes, pressures_at
from diagnose.understanding.paragraph import Line
from diagnose.understanding.phrases import Mark
from diagnose.understanding.pressures import MOST_PSI
from diagnose.understanding.stance import Stance
from knowledge.lexicon.numbers import STARTED
from knowledge.lexicon.pressure_words import CRANKED
from knowledge.lexicon.results_words import (
    ABOUT,
    ALONE,
    AS_LOW,
    BEFORE_ALONE,
    BETTER,
    BY_THROTTLE,
    COUNTED,
    CURES_ONE,
    DID_IT,
    DOWNWARD,
    ELSEWHERE_READ,
    ENOUGH,
    GAINED,
    GOES_ON,
    GOING,
    HOPED,
    IS_BACK,
    IS_DOWN,
    IS_RIGHT,
    LESS,
    LONE_RESULTS,
    NEGATED,
    NOT_ENDED,
    NOT_THE_PRESSURE,
    OF_HEAT,
    OF_THE_OIL,
    PANELS,
    PASSES_TIME,
    PLENTY,
    PUT_ON,
    RETURNS,
    RIGHT_AGAIN,
    THEIRS,
    TIMES_OF_DAY,
    TRAILS,
    TROUBLES,
    WENT_AGAIN,
    WHOLLY,
)
from knowledge.lexicon.work_words import BY_DRILL
from knowledge.reports.words import Result, Shows

_HEAT_BEHIND = 8  #: words between "a higher" and what is
_GOT = {"got", "gave"}  #: straight before a figure alone it is no gain: "primed it and got 50"
_HELPED_BEHIND = 5  #: words between "not cured" and what it did all the same
_LATER_WITHIN = 6  #: words from "300 miles later" to a result
_REVVED = 8  #: words before a clause in which the engine is revved
RELAPSE = 2  #: sentences from that of a result on in which the trouble may be back
#: behind the figure of a result in which the one for hot idle follows, and words for that
_BESIDE_IT = 6
_HOT_AT = frozenset(["hot", "idle", "tickover", "warm"])


def results_of(line: Line) -> list[Mark[Result]]:
    """Results that are stated; a lone "same" only where a clause ends with it."""
    untrue = Stance.SUPPOSED | Stance.ELSEWHERE | Stance.GUESSED
    found = []
    figures = [f for f in changes(line) if not _only_cold(line, f)]
    leads_on = {f.first: f.value for f in figures}
    worded = [
        Mark(leads_on.get(m.last, m.value), m.first, m.last)  # "pressure came up from 20 to 48"
        for m in line.find(line.lexicon.results)
        if not any(m.overlaps(f) for f in figures)
    ]
    for mark in (*figures, *worded):
        denied = line.denied(mark) and line.word(mark.first) not in ("no", "not", "nothing", "none")
        better = mark.value in BETTER
        if better and line.word(mark.last) in DOWNWARD and line.word(mark.last - 1) in GOING:
            continue  # "pressure went" of "pressure went down"
        if (line.word(mark.last - 1), line.word(mark.last)) == ("down", "to") and _figure(
            line, mark.last + 1
        ):
            continue  # "now down to 9" is less
        if better and line.word(mark.last) in LESS and line.tokens[mark.last - 1].is_figure:
            found.append(Mark(Result.WORSE, mark.first, mark.last + 1))  # "gives 20 psi less"
            continue
        whole = mark
        if "should" in {line.word(k) for k in range(mark.first, mark.last)}:
            whole = Mark(mark.value, mark.first, mark.first + 1)  # "where it should be"
        if line.stances.at(whole) & untrue or (denied and mark.value is not Result.NO_DIFFERENCE):
            continue
        words = {line.word(k) for k in range(mark.first, mark.last)}
        lone = words <= LONE_RESULTS
        if lone and not _ends_clause(line, mark):
            continue
        if line.word(mark.last) in ("till", "until", "before", "up") and words & TROUBLES:
            continue  # "no trouble till then"
        if "life" in words and line.word(mark.last) in ("when", "if", "whenever", "as", "every"):
            continue  # "came back to life when I wiggled it" is no cure
        if line.tokens[mark.last - 1].is_figure and line.word(mark.last) in COUNTED:
            continue  # "turned it up two turns"
        if line.word(mark.last - 1) in ("more", "further") and line.word(mark.last) in NOT_ENDED:
            continue  # "no more than 10 psi"
        if words == {"a", "better"} and not _ends_clause(line, mark):
            continue  # "a better filter"
        if better and _lamp_is_dead(line, mark):
            continue  # "now no light with the key on"
        if better and (_of_the_oil(line, mark) or _is_a_trip(line, mark)):
            continue  # "the level is perfect", "now it shuts off after 5 seconds"
        if better and _so_soon(line, mark.last):
            continue  # "light out in 2 s" is what it does at a start
        if _of_heat(line, mark):
            continue  # "a higher head temperature"
        if line.word(mark.last) in ("on", "for") and line.word(mark.last + 1) in THEIRS:
            continue  # "a new sender cured it on his"
        if _is_no_pressure(line, mark.last - 1) or _says_where(line, mark):
            continue  # "set it back up to 800"
        if line.tokens[mark.last - 1].is_figure and _by_a_drill(line, mark):
            continue  # "with a drill and got 60 psi"
        if mark.value is Result.FOR_A_WHILE and _of_a_trouble(line, mark):
            continue  # "the light stays on for 10 seconds"
        if mark.value is Result.FOR_A_WHILE and line.word(mark.first - 1) in PASSES_TIME | CRANKED:
            continue  # "let it idle for a while", "cranked for a minute"
        if "bad" in words and _of_a_part(line, mark):
            continue  # "one and five not so bad"
        if words <= ALONE and not _begins_clause(line, mark):
            continue
        if words == {"but", line.word(mark.last - 1)} and not _ends_clause(line, mark):
            continue  # "but no pump"
        if mark.value is Result.HELPED and (_only_cold(line, mark) or _is_nothing(line, mark)):
            continue
        if _led_by(line, mark, HOPED) and not (better and relapse(line, mark.last) is not None):
            continue  # "thinking that was it", unless "but it came back" follows
        found.append(_judged(line, mark))
    found = [Mark(Result.HELPED, m.first, m.last) if _in_part(line, m, found) else m for m in found]
    found = [m for m in found if not _less_than_cured(line, m, found)]
    of_pressure = [m for m in found if not _of_another_trouble(line, m)]
    return of_pressure or found  # "noise gone but pressure still low"


def _figure(line: Line, at: int) -> bool:
    """Whether a pressure stands at a place."""
    return at < len(line.tokens) and bool(pressures_at(line, at))


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
    said = {line.word(k) for k in range(mark.first, mark.last)}
    if mark.value is not Result.NO_DIFFERENCE or not said & WHOLLY:
        return False
    behind = {line.word(mark.last), line.word(mark.last + 1), line.word(mark.last + 2)}
    return any(
        m.value is Result.HELPED
        and 0 < m.first - mark.last <= _HELPED_BEHIND
        and bool(behind & {"but", "though", "although", "just"})
        for m in found
    )


def _says_where(line: Line, mark: Mark[Result]) -> bool:
    """Whether "on" leads to where a part is: "the old seal was still on the stem"."""
    on = line.word(mark.last - 1) == "on" and line.word(mark.last) in ("the", "its", "my", "there")
    return on and line.word(mark.last + 1) not in PANELS


def _of_another_trouble(line: Line, mark: Mark[Result]) -> bool:
    """Whether it is a noise, a leak or smoke that is gone or stays."""
    near = range(mark.first - 1, mark.last + 1)
    return bool({line.word(k) for k in near} & NOT_THE_PRESSURE)


def _of_heat(line: Line, mark: Mark[Result]) -> bool:
    """Whether it is the heat or the speed that is higher: "a higher head temperature"."""
    behind = range(mark.last, mark.last + _HEAT_BEHIND)
    return line.word(mark.last - 1) in ("higher", "lower") and any(
        line.word(k) in OF_HEAT for k in behind
    )


def _of_the_oil(line: Line, mark: Mark[Result]) -> bool:
    """Whether a word says that the oil, its level or the engine's sound is right."""
    at = mark.first - 1
    while line.word(at) in IS_RIGHT:
        at -= 1
    return len(mark) == 1 and at < mark.first - 1 and line.word(at) in OF_THE_OIL


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
    lead = {line.word(k) for k in range(max(0, clause.first - _REVVED), mark.first)}
    return mark.value in BETTER and bool(lead & BY_THROTTLE) and not lead & TIMES_OF_DAY


def _lamp_is_dead(line: Line, mark: Mark[Result]) -> bool:
    """Whether it says that the lamp stays dark where it should light, with the key on."""
    lamp = {line.word(k) for k in range(mark.first, mark.last)} & {"light", "lamp", "warning"}
    behind = {line.word(k) for k in range(mark.last, mark.last + _HELPED_BEHIND)}
    return bool(lamp) and bool(behind & {"key", "ignition", "bulb", "position"})


def _is_a_trip(line: Line, mark: Mark[Result]) -> bool:
    """Whether the words say that the engine stops: "changed the oil and now it shuts off"."""
    stops = (Shows.TRIPS, Shows.LOST_POWER)
    return any(m.value in stops and m.overlaps(mark) for m in line.find(line.lexicon.shows))


def _so_soon(line: Line, at: int) -> bool:
    """Whether seconds after the start are said there: "out in 2 s"."""
    seconds = any("seconds" in t.kinds for t in line.tokens[at + 1 : at + 2])
    return line.word(at) in ("in", "within") and seconds


def _by_a_drill(line: Line, mark: Mark[Result]) -> bool:
    """Whether a drill made the pressure, which the engine has not shown yet."""
    beside = range(line.clause(mark.first).first, mark.last + 3)
    before = [line.word(k) for k in range(mark.first)]
    started = bool(STARTED & set(before))
    return any(line.word(k) in BY_DRILL for k in beside) or ("drill" in before and not started)


def _of_a_trouble(line: Line, mark: Mark[Result]) -> bool:
    """Whether "for a while" stands straight behind a trouble and says how long that lasts."""
    shown = line.find(line.lexicon.shows)
    return line.word(mark.first) == "for" and any(
        m.first < mark.first <= m.last and m.value is not Shows.NORMAL for m in shown
    )


def _is_nothing(line: Line, mark: Mark[Result]) -> bool:
    """Whether the figure that came of it is none: "new pump, now zero"."""
    return line.tokens[mark.last - 1].value in ("0", "zero", "0 psi", "0 bar")


def _is_no_pressure(line: Line, at: int) -> bool:
    """Whether a figure is a speed or more than any gauge shows."""
    kinds = line.tokens[at].kinds
    return "rpm" in kinds or any(v > MOST_PSI for v in pressures_at(line, at))


def _of_a_part(line: Line, mark: Mark[Result]) -> bool:
    """Whether the clause names a part that was looked at, or a number stands before it."""
    clause = line.clause(mark.first)
    named = any(clause.first <= t.first < clause.last for t in line.find(line.lexicon.things))
    return named or any(line.tokens[k].is_figure for k in range(clause.first, mark.first))


def _led_by(line: Line, mark: Mark[Result], words: frozenset[str]) -> bool:
    """Whether one of these words stands before a result in its clause."""
    return any(line.word(k) in words for k in range(line.clause(mark.first).first, mark.first))


def _judged(line: Line, mark: Mark[Result]) -> Mark[Result]:
    """A result, "cured" where it names a pressure that is enough at any speed and heat."""
    if mark.value is Result.HELPED and _low_hot_behind(line, mark.last):
        return Mark(Result.NO_DIFFERENCE, mark.first, mark.last)
    clause = line.clause(mark.first)
    cold = any(line.word(k) in ELSEWHERE_READ for k in range(clause.first, clause.last))
    by = {line.word(k) for k in range(mark.first, mark.last)} & GAINED
    values = [v for k in range(mark.first, mark.last) for v in pressures_at(line, k)]
    if mark.value is Result.CURED and values and values[-1] < ENOUGH and not by:
        said = {line.word(k) for k in range(mark.first, mark.last + 1)}
        if "back" in said and _after_a_time(line, mark):
            return Mark(Result.FOR_A_WHILE, mark.first, mark.last)  # "300 miles later back to 5"
        again = "again" in said
        value = Result.NO_DIFFERENCE if again else Result.HELPED  # "15 now", "5 psi again"
        return Mark(value, mark.first, mark.last)
    by -= _GOT if len(mark) == len(("got", "50")) else set()
    if mark.value is not Result.HELPED or cold or by or not values or values[0] < PLENTY:
        return mark
    return Mark(Result.CURED, mark.first, mark.last)


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


def _only_cold(line: Line, change: Mark[Result]) -> bool:
    """Whether it changed cold or at speed, and idle is said to be as it was."""
    clause = line.clause(change.first)
    said = {line.word(k) for k in range(clause.first, clause.last)}
    rest = [line.word(k) for k in range(clause.last, len(line.tokens))]
    return bool(said & ELSEWHERE_READ) and bool({"still", "unchanged", "same"} & set(rest[:6]))


def _ends_clause(line: Line, mark: Mark[Result]) -> bool:
    """Whether only "at all" and the like follow in its clause."""
    rest = range(mark.last, line.clause(mark.first).last)
    return all(line.tokens[k].is_mark or line.word(k) in TRAILS for k in rest)


def _begins_clause(line: Line, mark: Mark[Result]) -> bool:
    """Whether only "and", "but" and the like stand before it in its clause."""
    lead = range(line.clause(mark.first).first, mark.first)
    return all(line.tokens[k].is_mark or line.word(k) in BEFORE_ALONE for k in lead)


def relapse(line: Line, first: int) -> int | None:
    """The place of the word from ``first`` on that says the trouble is there again."""
    shown = [m for m in line.stated(line.lexicon.shows) if m.value is not Shows.NORMAL]
    for k in range(first, len(line.tokens)):
        word, before = line.word(k), line.word(k - 1)
        if line.stances.of[k] & (Stance.SUPPOSED | Stance.DENIED):
            continue
        if _is_low_again(line, k) or (word == "again" and before in WENT_AGAIN):
            return k
        if word in RETURNS or (word == "back" and before in IS_BACK):
            clause = line.clause(k)
            said = {line.word(i) for i in range(clause.first, clause.last)}
            trouble = any(clause.first <= m.first < clause.last for m in shown)
            if "life" in {line.word(k + 1), line.word(k + 2)}:
                continue  # "it came back to life"
            trouble = trouble or (word == "back" and line.word(k + 1) == "on")
            if (trouble or said & DID_IT) and not said & (RIGHT_AGAIN | NEGATED):
                return k
    return None


def says_again(lines: Sequence[Line]) -> bool:
    """Whether "again" or "back" says within the reach of a result that the trouble was there before."""
    for line in lines[: RELAPSE + 1]:
        at = relapse(line, 0)
        clause = line.clause(at) if at is not None else None
        said = {t.word for t in line.tokens[clause.first : clause.last]} if clause else set()
        if said & (RETURNS | {"back"}):
            return True
    return False


def _is_low_again(line: Line, at: int) -> bool:
    """Whether the pressure is said to be low or gone as before: "right back to 8", "zero again"."""
    word = line.word(at)
    if word == "again":
        return line.word(at - 1) in IS_DOWN or _is_low(line, at - 1)
    if word not in ("back", "down") or line.word(at + 1) != "to":
        return False
    place = at + 2
    while line.word(place) in ABOUT:
        place += 1
    return line.word(place) in AS_LOW or _is_low(line, place)


def _is_low(line: Line, at: int) -> bool:
    """Whether a figure is a pressure that is too little at any speed and heat."""
    if not 0 <= at < len(line.tokens):
        return False
    values = pressures_at(line, at)
    return bool(values) and values[0] < ENOUGH
