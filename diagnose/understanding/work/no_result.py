"""When the words for a result say nothing of what came of work: "no more than 10 psi"."""

from __future__ import annotations

from collections.abc import Callable

from diagnose.understanding.pressures.bare_numbers import MOST_PSI
from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.relapses import relapse
from knowledge.lexicon.shows.beside_pressure import CRANKED
from knowledge.lexicon.values.beside_numbers import STARTED
from knowledge.lexicon.work.beside_results import (
    ALONE,
    BEFORE_ALONE,
    BETTER,
    COUNTED,
    DOWNWARD,
    ELSEWHERE_READ,
    GOING,
    HOPED,
    IS_RIGHT,
    LONE_RESULTS,
    NOT_ENDED,
    OF_HEAT,
    OF_THE_OIL,
    PANELS,
    PASSES_TIME,
    THEIRS,
    TRAILS,
    TROUBLES,
)
from knowledge.lexicon.work.beside_work import BY_DRILL
from knowledge.reports.words import Result, Shows

_HEAT_BEHIND = 8  #: words between "a higher" and what is
_KEY_BEHIND = 5  #: words between a lamp that is out and the key that is on


def is_no_result(line: Line, mark: Mark[Result]) -> bool:
    """Whether words for a result say nothing of what came of work."""
    cases = (*_OF_ALL, *(_OF_BETTER if mark.value in BETTER else ()))
    return any(case(line, mark) for case in cases)


def goes_down(line: Line, mark: Mark[Result]) -> bool:
    """Whether "went" or "now" leads to less: "pressure went down", "now down to 9"."""
    last, after = line.word(mark.last - 1), line.word(mark.last)
    if mark.value in BETTER and after in DOWNWARD and last in GOING:
        return True
    return (last, after) == ("down", "to") and _figure(line, mark.last + 1)


def _says_too_little(line: Line, mark: Mark[Result]) -> bool:
    """Whether its words say what came of work only where a clause ends, or begins, with them."""
    words = line.words(mark.first, mark.last)
    ends = _ends_clause(line, mark)
    if not ends and (words <= LONE_RESULTS or words == {"a", "better"}):
        return True  # "a better filter"
    if not ends and words == {"but", line.word(mark.last - 1)}:
        return True  # "but no pump"
    return words <= ALONE and not _begins_clause(line, mark)


def _goes_on(line: Line, mark: Mark[Result]) -> bool:
    """Whether what follows makes it another thing: "no trouble till then", "no more than 10"."""
    words, last, after = (
        line.words(mark.first, mark.last),
        line.word(mark.last - 1),
        line.word(mark.last),
    )
    if after in ("till", "until", "before", "up") and words & TROUBLES:
        return True
    if "life" in words and after in ("when", "if", "whenever", "as", "every"):
        return True  # "came back to life when I wiggled it" is no cure
    if line.tokens[mark.last - 1].is_figure and after in COUNTED:
        return True  # "turned it up two turns"
    return last in ("more", "further") and after in NOT_ENDED


def _is_of_theirs(line: Line, mark: Mark[Result]) -> bool:
    """Whether it came of work on another engine: "a new sender cured it on his"."""
    return line.word(mark.last) in ("on", "for") and line.word(mark.last + 1) in THEIRS


def _is_how_long(line: Line, mark: Mark[Result]) -> bool:
    """Whether "for a while" is how long a trouble or a step lasts: "cranked for a minute"."""
    if mark.value is not Result.FOR_A_WHILE:
        return False
    return _of_a_trouble(line, mark) or line.word(mark.first - 1) in PASSES_TIME | CRANKED


def _is_no_gain(line: Line, mark: Mark[Result]) -> bool:
    """Whether nothing was gained, or only where nothing was missing."""
    return mark.value is Result.HELPED and (only_cold(line, mark) or _is_nothing(line, mark))


def _is_since_then(line: Line, mark: Mark[Result]) -> bool:
    """Whether it is so since the work, not for a while after it: "since then", "then the light came on"."""
    said = line.words(mark.first, mark.last)
    first = line.word(mark.first) == "then" and not said & {"back", "again"}
    return first and (line.word(mark.first - 1) in ("since", "from") or "on" in said)


def _was_hoped(line: Line, mark: Mark[Result]) -> bool:
    """Whether it was only hoped: "thinking that was it", unless "but it came back" follows."""
    if not _led_by(line, mark, HOPED):
        return False
    return mark.value not in BETTER or relapse(line, mark.last) is None


def _is_another_figure(line: Line, mark: Mark[Result]) -> bool:
    """Whether it ends with a figure that is no pressure, or that a drill made."""
    figure = line.tokens[mark.last - 1].is_figure
    return _is_no_pressure(line, mark.last - 1) or (figure and _by_a_drill(line, mark))


def _says_where(line: Line, mark: Mark[Result]) -> bool:
    """Whether "on" leads to where a part is: "the old seal was still on the stem"."""
    on = line.word(mark.last - 1) == "on" and line.word(mark.last) in ("the", "its", "my", "there")
    return on and line.word(mark.last + 1) not in PANELS


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


def _lamp_is_dead(line: Line, mark: Mark[Result]) -> bool:
    """Whether it says that the lamp stays dark where it should light, with the key on."""
    lamp = line.words(mark.first, mark.last) & {"light", "lamp", "warning"}
    behind = line.words(mark.last, mark.last + _KEY_BEHIND)
    return bool(lamp) and bool(behind & {"key", "ignition", "bulb", "position"})


def _is_a_trip(line: Line, mark: Mark[Result]) -> bool:
    """Whether the words say that the engine stops: "changed the oil and now it shuts off"."""
    stops = (Shows.TRIPS, Shows.LOST_POWER)
    return any(m.value in stops and m.overlaps(mark) for m in line.find(line.lexicon.shows))


def _so_soon(line: Line, mark: Mark[Result]) -> bool:
    """Whether it is what a lamp does at each start: "light out in 2 s"."""
    seconds = any("seconds" in t.kinds for t in line.tokens[mark.last + 1 : mark.last + 2])
    return line.word(mark.last) in ("in", "within") and seconds


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
    """Whether "bad" is said of a part that was looked at, or numbered: "one and five not so bad"."""
    if "bad" not in line.words(mark.first, mark.last):
        return False
    clause = line.clause(mark.first)
    named = any(clause.first <= t.first < clause.last for t in line.find(line.lexicon.things))
    return named or any(line.tokens[k].is_figure for k in range(clause.first, mark.first))


def _led_by(line: Line, mark: Mark[Result], words: frozenset[str]) -> bool:
    """Whether one of these words stands before a result in its clause."""
    return any(line.word(k) in words for k in range(line.clause(mark.first).first, mark.first))


def only_cold(line: Line, change: Mark[Result]) -> bool:
    """Whether it changed cold or at speed, and idle is said to be as it was."""
    clause = line.clause(change.first)
    said = line.words(clause.first, clause.last)
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


def _figure(line: Line, at: int) -> bool:
    """Whether a pressure stands at a place."""
    return at < len(line.tokens) and bool(pressures_at(line, at))


Case = Callable[[Line, Mark[Result]], bool]

#: asked of every result
_OF_ALL: tuple[Case, ...] = (
    _says_too_little,
    _goes_on,
    _of_heat,
    _is_of_theirs,
    _is_another_figure,
    _says_where,
    _is_how_long,
    _is_since_then,
    _of_a_part,
    _is_no_gain,
    _was_hoped,
)
#: asked of what is better than it was
_OF_BETTER: tuple[Case, ...] = (_lamp_is_dead, _of_the_oil, _is_a_trip, _so_soon)
