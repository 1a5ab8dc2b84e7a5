"""When the words for what shows say something else: "no pressure gauge", "smoke in the cabin"."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from itertools import pairwise

from diagnose.understanding.pressures.the_gauge import at_rest, sweeps_at_key_on
from diagnose.understanding.sentences.manner import moved_from
from diagnose.understanding.sentences.other_systems import made_elsewhere
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.shows.denied import (
    by_hand,
    is_no_verdict,
    of_another_instrument,
    says_how_it_works,
)
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.meant.beside_what_shows import (
    AND_WARM,
    BLOW,
    CIRCUIT,
    COLOURS,
    DARES_NOT,
    EXHAUST,
    GOES_THEN,
    HEAT_GAUGE,
    JUMPED,
    LEAD_TEST,
    LESS,
    LEVELS,
    MOVED_TO,
    NOT_MISSING,
    NOT_TOO_HIGH,
    OF_SPEED,
    OTHER_LAMPS,
    OTHER_POWER,
    PARTS_DROPPED,
    PLACES,
    PRESSURES,
    PROVING,
    SHUT,
    STOPPED,
    UNPLUGGED,
    UPWARDS,
    VOLTAGE,
    WARNS,
    WITH_REVS,
)
from knowledge.lexicon.shows.beside_pressure import GAUGE_WORDS, KNOCKED, WAYS
from knowledge.lexicon.shows.then_and_now import LOWS
from knowledge.lexicon.values.beside_numbers import FOLLOWS
from knowledge.lexicon.work.beside_results import WON
from knowledge.lexicon.work.beside_work import BY_DRILL
from knowledge.reports.words import NOISES, SHOWN_BY_THE_ENGINE, Shows

Case = Callable[[Line, Mark[Shows]], bool]

_LEAST_SPEED = 200.0  #: a figure from this on is a speed of the engine, no pressure (judgement)
_NEAR = 2  #: words behind the words for what shows in which their figure stands
_NAMES_LAMP = 5  #: fewer words name the lamp and do not say what it does
_DRILLED = 3  #: words before a clause: "spun by a drill: no pressure"
#: straight after what shows: it did not
_LATE_NOT = frozenset(["not", "never", "didnt", "doesnt", "wasnt", "isnt", "wont"])
_PERSONS = frozenset(["i", "we", "you", "he", "she", "to"])
_COMPARED = frozenset(["low", "high", "far", "much", "normal"])


def is_another_thing(line: Line, mark: Mark[Shows]) -> bool:
    """Whether words for what shows say something else in their sentence."""
    return any(case(line, mark) for case in (*_OF_ALL, *_OF.get(mark.value, ())))


def _sentence(line: Line) -> set[str]:
    """All words of a sentence, and all pairs of neighbours."""
    words = [t.word for t in line.tokens]
    return {*words, *(f"{a} {b}" for a, b in pairwise(words))}


def _is_taken_back(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it did not, or is only compared: "clean as a whistle"."""
    return line.word(mark.last) in _LATE_NOT or line.word(mark.first - 1) == "as"


def _is_of_a_drill(line: Line, mark: Mark[Shows]) -> bool:
    """Whether a drill turned the pump."""
    clause = line.clause(mark.first)
    near = line.words(max(0, clause.first - _DRILLED), clause.last)
    return mark.value not in SHOWN_BY_THE_ENGINE and bool(BY_DRILL & near)


def _is_of_another_instrument(line: Line, mark: Mark[Shows]) -> bool:
    """Whether another lamp or gauge shows it, or volts are measured."""
    lamp = line.word(mark.first) in ("light", "lamp") and line.word(mark.first - 1) in OTHER_LAMPS
    volts = VOLTAGE & {*line.words(mark.first - 3, mark.first), line.word(mark.last)}
    of_pressure = mark.value not in SHOWN_BY_THE_ENGINE
    return lamp or bool(volts) or (of_pressure and of_another_instrument(line, mark))


def _is_of_the_circuit(line: Line, mark: Mark[Shows]) -> bool:
    """Whether a wire was off: "unplugged the sender and it dropped to zero"."""
    steady = mark.value in (Shows.NONE, Shows.LOW, Shows.HIGH)
    return steady and bool((words := _sentence(line)) & UNPLUGGED and words & CIRCUIT)


def _stands_still(line: Line, mark: Mark[Shows]) -> bool:
    """Whether the gauge shows nothing because the engine stands."""
    return mark.value in (Shows.NONE, Shows.LOW) and at_rest(line)


def _is_made_elsewhere(line: Line, mark: Mark[Shows]) -> bool:
    """Whether another system makes the noise."""
    return mark.value in NOISES and made_elsewhere(line.tokens, mark)


def _sweeps(line: Line, mark: Mark[Shows]) -> bool:
    """Whether the needle only sweeps as the key is turned on."""
    return sweeps_at_key_on(line)


def _no_longer_moves(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it was stopped: "made the gauge stop jumping about"."""
    return bool(STOPPED & line.words(mark.first - 1, mark.last))


def _is_one_step(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it went up once: "it jumped from 8 to 17", "pressure jumps to 3.5"."""
    after = line.word(mark.last)
    said = line.words(mark.first, mark.last)
    up = {after, line.word(mark.last - 1)} & UPWARDS
    to_figure = after == "to" and line.word(mark.last + 1)[:1].isdigit()
    jumped = said & JUMPED or (to_figure and "jumps" in said)
    return bool(jumped and up) and "back" not in {t.word for t in line.tokens}


def _was_moved(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it says where the gauge is now: "gauge moved to the gallery"."""
    return line.word(mark.last - 1) == "moved" and line.word(mark.last) in MOVED_TO


def _follows_the_revs(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it does as it should: "goes up and down with the revs"."""
    up = "up" in line.words(mark.first, mark.last) and line.word(mark.last) in ("with", "as")
    return up and bool(WITH_REVS & line.words(mark.last, mark.last + 4))


def _is_of_a_lead(line: Line, mark: Mark[Shows]) -> bool:
    """Whether the lead of the sender was tested."""
    return bool(_sentence(line) & LEAD_TEST)


def _is_of_the_idle_speed(line: Line, mark: Mark[Shows]) -> bool:
    """Whether a speed or a part dropped: "idle dropped to 500", "dropped a valve"."""
    subject = {line.word(mark.first), line.word(mark.first - 1)} & OF_SPEED
    part = line.word(mark.last) in ("a", "an") and line.word(mark.last + 1) in PARTS_DROPPED
    return part or (bool(subject) and _names_a_speed(line, mark))


def _names_a_speed(line: Line, mark: Mark[Shows]) -> bool:
    """Whether the figure in the words, or straight behind them, is too high for a pressure."""
    near = line.tokens[mark.first : mark.last + _NEAR]
    numbers = [n for t in near if t.is_figure for n in re.findall(r"\d+(?:\.\d+)?", t.value)]
    return any(float(n) >= _LEAST_SPEED for n in numbers)


def _is_still_there(line: Line, mark: Mark[Shows]) -> bool:
    """Whether "goes" or "gone" leads to more words: "goes as low as 2 bar", "gone up to 90"."""
    after, said = line.word(mark.last), line.word(mark.last - 1)
    if line.word(mark.last + 1) in _COMPARED:
        return after == "as"
    if said in ("goes", "went"):
        return after not in GOES_THEN and not line.tokens[mark.last].is_mark  # "goes to 60"
    return said == "gone" and after in UPWARDS  # "gone from 45 to 30"


def _only_names_the_lamp(line: Line, mark: Mark[Shows]) -> bool:
    """Whether a lamp is named, and not said to be on: "then the light."."""
    if line.word(mark.first) in ("then", "and") and len(mark) < _NAMES_LAMP:
        return bool(line.word(mark.last)) and not line.tokens[mark.last].is_mark
    named = line.words(mark.first, mark.last)
    return ("lights" in named and not named & WARNS) or says_how_it_works(line, mark)


def _is_no_trip(line: Line, mark: Mark[Shows]) -> bool:
    """Whether the gauge quits, or a person shut it off: "Shut off after 15 seconds": I did."""
    at_once = line.word(mark.last) == "once" and line.word(mark.last - 1) == "at"
    begins = mark.first == line.clause(mark.first).first and line.word(mark.first) in SHUT
    begins = begins and "pressure" not in line.words(mark.first, mark.last)
    return line.word(mark.first - 1) in GAUGE_WORDS or at_once or begins


def _is_not_slow(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it is slowly getting lower, or the way is long: "on in a long bend"."""
    after, said = line.word(mark.last), line.word(mark.last - 1)
    return bool({said, after} & LESS) or (said == "long" and after in WAYS)


def _is_not_missing(line: Line, mark: Mark[Shows]) -> bool:
    """Whether no pressure is missing: "no pressure gauge", "ground the wire and it goes to zero"."""
    words = _sentence(line)
    if (words & LEAD_TEST and words & CIRCUIT) or moved_from(line.tokens, mark):
        return True
    if line.word(mark.first) == "nothing" and _no_gain(line, mark.first):
        return True
    return line.word(mark.last) in NOT_MISSING and line.word(mark.last - 1) in ("pressure", "oil")


def _no_gain(line: Line, at: int) -> bool:
    """Whether it is what work did not win: "bought me 4 psi at idle and nothing at speed"."""
    return any(pair in WON for pair in pairwise(line.word(k) for k in range(at)))


def _is_not_high(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it says where the gauge is: "the gauge is at the top of the dash"."""
    of = "of" in line.words(mark.first, mark.last + 1)
    place = of and PLACES & line.words(mark.last, mark.last + 3)
    return bool(place or NOT_TOO_HIGH & line.words(mark.last, mark.last + 4))


def _is_not_low(line: Line, mark: Mark[Shows]) -> bool:
    """Whether the level, a green field or the heat is meant: "falls into the green and stays"."""
    if line.word(mark.first) == "it" and _of_the_level(line, mark.first):
        return True  # "looked at the oil and it had dropped"
    if "green" in line.words(mark.last, mark.last + 3):
        return line.word(mark.last) in ("into", "to", "back")
    return line.word(mark.last - 1) == "red" and bool(_sentence(line) & HEAT_GAUGE - {"hot"})


def _of_the_level(line: Line, at: int) -> bool:
    """Whether the oil itself, not its pressure, was named before "it" in the sentence."""
    said = line.words(0, at)
    return bool(said & LEVELS) and not said & PRESSURES


def _is_the_usual_figure(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it says what is usual: "oil pressure normal 55. Now 20"."""
    behind = line.tokens[mark.last] if mark.last < len(line.tokens) else None
    figure = behind is not None and bool(behind.kinds & {"pressure", "number", "range"})
    return figure and line.word(mark.last - 1) in ("normal", "normally")


def _is_no_praise(line: Line, mark: Mark[Shows]) -> bool:
    """Whether "normal" is of another thing: "up to normal operating temperature", "good and warm"."""
    after, said = line.word(mark.last), line.word(mark.last - 1)
    if len(mark) == 1 and not _ends_there(line, mark.last):
        return True  # "great heat"
    if said == "steady" and line.words(mark.last, len(line.tokens)) & LOWS:
        return True  # "steady at all speeds but much lower than before"
    proved = line.word(mark.first) in ("gauge", "needle")
    if proved and line.words(mark.first - 3, mark.first) & PROVING:
        return True  # "so the gauge is right"
    return said == "warm" or (after == "and" and line.word(mark.last + 1) in AND_WARM)


def _ends_there(line: Line, at: int) -> bool:
    """Whether no noun follows: an end, a mark, a figure, "at", "when hot"."""
    if at >= len(line.tokens):
        return True
    token = line.tokens[at]
    led = token.word in FOLLOWS or any(m.first == at for m in line.circumstances)
    return token.is_mark or token.is_figure or led


def _is_no_smoke(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it is a colour, or smoke where no exhaust is named: "smoky grey"."""
    first = line.word(mark.first)
    colour = first in ("smoky", "smokey") and line.word(mark.last) in COLOURS
    return colour or (first == "smoke" and not _sentence(line) & EXHAUST)


def _is_an_alarm(line: Line, mark: Mark[Shows]) -> bool:
    """Whether an alarm makes the noise: "the alarm chirps"."""
    clause = line.clause(mark.first)
    near = line.words(max(0, clause.first - _DRILLED), clause.last)
    return bool({"alarm", "buzzer", "beeper"} & near)


def _is_no_tick(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it runs well, or a person taps: "like a ...", "ticks over"."""
    water = (line.word(mark.first - 2), line.word(mark.first - 1)) == ("like", "a")
    return water or by_hand(line, mark) or line.word(mark.last) in ("over", "along")


def _is_other_power(line: Line, mark: Mark[Shows]) -> bool:
    """Whether a person halts, or it is electric power: "when I come to a halt"."""
    halted = line.tokens[mark.first].stem == "come" and line.word(mark.first - 1) in _PERSONS
    return line.word(mark.last) in OTHER_POWER or halted


def _is_not_dared(line: Line, mark: Mark[Shows]) -> bool:
    """Whether nobody dares to start it."""
    return bool(DARES_NOT & line.words(mark.first - 4, mark.first + 1))


def _is_a_blow(line: Line, mark: Mark[Shows]) -> bool:
    """Whether something was knocked: "the sump has had a bad knock"."""
    if by_hand(line, mark):
        return True
    if line.word(mark.first - 1) in ("the", "a") and line.word(mark.first - 2) in BLOW:
        return line.word(mark.first - 3) != "because"
    took_one = line.words(line.clause(mark.first).first, mark.first)
    if {"sump", "pan"} & took_one and {"had", "took", "taken", "got", "a"} & took_one:
        return True
    on_it = line.words(mark.last, mark.last + 3)
    return line.word(mark.last) in KNOCKED or bool(on_it & {"sump", "pan", "free"})


#: asked of whatever shows
_OF_ALL: tuple[Case, ...] = (
    _is_taken_back,
    _is_of_a_drill,
    _is_of_another_instrument,
    is_no_verdict,
    _is_of_the_circuit,
    _stands_still,
    _is_made_elsewhere,
)
#: asked of one kind of what shows
_OF: Mapping[Shows, tuple[Case, ...]] = {
    Shows.NONE: (_sweeps, _is_not_missing),
    Shows.LOW: (_sweeps, _is_of_the_idle_speed, _is_not_low),
    Shows.LOST: (_sweeps, _is_of_the_idle_speed, _is_still_there),
    Shows.FALLING: (_sweeps, _is_of_the_idle_speed),
    Shows.HIGH: (_is_not_high, _is_of_a_lead),
    Shows.UNSTEADY: (
        _sweeps,
        _no_longer_moves,
        _is_one_step,
        _was_moved,
        _follows_the_revs,
        _is_of_a_lead,
    ),
    Shows.NORMAL: (_is_no_praise, _is_of_a_lead, _is_the_usual_figure),
    Shows.SLOW: (_is_not_slow,),
    Shows.LAMP: (_only_names_the_lamp,),
    Shows.TRIPS: (_is_no_trip,),
    Shows.SMOKE: (_is_no_smoke,),
    Shows.SQUEAK: (_is_an_alarm,),
    Shows.TICKING: (_is_no_tick,),
    Shows.KNOCK: (_is_a_blow,),
    Shows.LOST_POWER: (_is_other_power,),
    Shows.NO_START: (_is_not_dared,),
}
