"""What a sentence says shows: low, lamp, knock ..., stated of this engine now."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import pairwise

from diagnose.understanding.denied import (
    by_hand,
    is_no_verdict,
    of_another_instrument,
    says_how_it_works,
)
from diagnose.understanding.low_now import is_past, low_now, noise_before
from diagnose.understanding.manner import moved_from
from diagnose.understanding.other_systems import made_elsewhere, takes_an_object
from diagnose.understanding.otherwise import means_otherwise
from diagnose.understanding.paragraph import Line, Paragraph
from diagnose.understanding.parted import parted
from diagnose.understanding.phrases import Mark
from diagnose.understanding.the_gauge import at_rest, of_the_gauge
from knowledge.lexicon.numbers import FOLLOWS, NEARLY, STARTED
from knowledge.lexicon.other_things import (
    BLOW,
    CIRCUIT,
    COLOURS,
    DARES_NOT,
    EXHAUST,
    GOES_THEN,
    HEAT_GAUGE,
    LEAD_TEST,
    LESS,
    LEVELS,
    MOVED_TO,
    NOT_MISSING,
    NOT_TOO_HIGH,
    OTHER_LAMPS,
    OTHER_POWER,
    PLACES,
    PRESSURES,
    UNPLUGGED,
    UPWARDS,
    VOLTAGE,
    WARNS,
    WITH_REVS,
)
from knowledge.lexicon.pressure_words import (
    BESIDE_NONE,
    GAUGE_WORDS,
    KNOCKED,
    NO_MORE,
    NO_PRESSURE,
    NONE_BY_STARTER,
    VAGUE,
    WAYS,
)
from knowledge.lexicon.sights_beside import MADE_ANOTHER
from knowledge.lexicon.sights_kinds import INSTEAD
from knowledge.lexicon.work_words import BY_DRILL
from knowledge.reports.words import NOISES, Shows, Speed

_NAMES_LAMP = 5  #: fewer words name the lamp and do not say what it does
_SINCE = frozenset(["since", "ever"])  #: behind "low": since when
_DRILLED = 3  #: words before a clause: "spun by a drill: no pressure"
#: straight after what shows: it did not
_LATE_NOT = frozenset(["not", "never", "didnt", "doesnt", "wasnt", "isnt", "wont"])
_TURNS = frozenset(["but", "however", "although", "whereas"])
_PERSONS = frozenset(["i", "we", "you", "he", "she", "to"])
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
#: shown by the engine, not by an instrument; the course of the trouble is not theirs
APART = NOISES | {Shows.SMOKE, Shows.ROUGH, Shows.LOST_POWER, Shows.NO_START, Shows.ALARM}


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
        return self.mark.value not in APART


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
        if line.denied(mark) or _was_so(line, mark) or _is_another_thing(line, mark):
            continue
        if is_past(line, mark, paragraph):
            past.append((line, mark))
            continue
        turned = any(line.word(k) in _TURNS for k in range(mark.first + 1, mark.last))
        if turned and mark.value not in APART:
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


def _is_another_thing(line: Line, mark: Mark[Shows]) -> bool:
    """Whether the words mean something else here: "no pressure gauge", "smoke in the cabin"."""
    after = line.word(mark.last)
    if after in _LATE_NOT or line.word(mark.first - 1) == "as" or means_otherwise(line, mark):
        return True  # "clean as a whistle"
    words = {t.word for t in line.tokens}
    words |= {f"{a.word} {b.word}" for a, b in pairwise(line.tokens)}
    clause = line.clause(mark.first)
    near = {line.word(k) for k in range(max(0, clause.first - _DRILLED), clause.last)}
    if BY_DRILL & near and mark.value not in APART:
        return True
    if mark.value not in APART and of_another_instrument(line, mark):
        return True
    if line.word(mark.first) in ("light", "lamp") and line.word(mark.first - 1) in OTHER_LAMPS:
        return True
    if {line.word(k) for k in (*range(mark.first - 3, mark.first), mark.last)} & VOLTAGE:
        return True
    if is_no_verdict(line, mark) or (
        mark.value is Shows.NORMAL and len(mark) == 1 and not _ends_there(line, mark.last)
    ):
        return True  # "great heat", "up to normal operating temperature"
    if mark.value in (Shows.NONE, Shows.LOW, Shows.HIGH) and words & UNPLUGGED and words & CIRCUIT:
        return True  # "unplugged the sender and it dropped to zero"
    resting = mark.value in (Shows.NONE, Shows.LOW) and at_rest(line)
    if resting or (mark.value in NOISES and made_elsewhere(line.tokens, mark)):
        return True
    match mark.value:
        case Shows.LOST if line.word(mark.last + 1) in ("low", "high", "far", "much", "normal"):
            return after == "as"  # "goes as low as 2 bar"
        case Shows.LOST if line.word(mark.last - 1) in ("goes", "went"):
            return after not in GOES_THEN and not line.tokens[mark.last].is_mark  # "goes to 60"
        case Shows.LOST if line.word(mark.last - 1) == "gone":
            return after in UPWARDS  # "gone up to 90", "gone from 45 to 30"
        case Shows.LAMP if line.word(mark.first) in ("then", "and") and len(mark) < _NAMES_LAMP:
            return bool(after) and not line.tokens[mark.last].is_mark  # "then the light."
        case Shows.LAMP:
            named = {line.word(k) for k in range(mark.first, mark.last)}
            return ("lights" in named and not named & WARNS) or says_how_it_works(line, mark)
        case Shows.TRIPS if line.word(mark.first - 1) in GAUGE_WORDS or (
            after == "once" and line.word(mark.last - 1) == "at"
        ):
            return True  # "the pressure quits after a mile"; shut off at once by a person
        case Shows.SLOW if {line.word(mark.last - 1), after} & LESS:
            return True  # "slowly getting lower"
        case Shows.SLOW if line.word(mark.last - 1) == "long" and after in WAYS:
            return True  # "on in a long bend"
        case Shows.NONE if words & LEAD_TEST and words & CIRCUIT:
            return True  # "ground the wire and it goes to zero"
        case Shows.NONE if moved_from(line.tokens, mark):
            return True
        case Shows.NONE:
            return after in NOT_MISSING and line.word(mark.last - 1) in ("pressure", "oil")
        case Shows.HIGH if "of" in {line.word(k) for k in range(mark.first, mark.last + 1)} and (
            PLACES & {line.word(k) for k in range(mark.last, mark.last + 3)}
        ):
            return True  # "the gauge is at the top of the dash"
        case Shows.HIGH if NOT_TOO_HIGH & {line.word(k) for k in range(mark.last, mark.last + 4)}:
            return True
        case Shows.UNSTEADY if line.word(mark.last - 1) == "moved" and after in MOVED_TO:
            return True  # "gauge moved to the gallery"
        case Shows.UNSTEADY if "up" in {line.word(k) for k in range(mark.first, mark.last)} and (
            after in ("with", "as")
            and WITH_REVS & {line.word(k) for k in range(mark.last, mark.last + 4)}
        ):
            return True  # "goes up and down with the revs"
        case Shows.UNSTEADY | Shows.HIGH | Shows.NORMAL:
            return bool(words & LEAD_TEST)
        case Shows.LOW if line.word(mark.first) == "it" and _of_the_level(line, mark.first):
            return True  # "looked at the oil and it had dropped"
        case Shows.LOW if "green" in {line.word(k) for k in range(mark.last, mark.last + 3)}:
            return after in ("into", "to", "back")  # "falls into the green and stays"
        case Shows.LOW if line.word(mark.last - 1) == "red" and words & HEAT_GAUGE - {"hot"}:
            return True
        case Shows.SMOKE:
            of_colour = line.word(mark.first) in ("smoky", "smokey") and after in COLOURS
            return of_colour or (line.word(mark.first) == "smoke" and not words & EXHAUST)
        case Shows.SQUEAK:
            return bool({"alarm", "buzzer", "beeper"} & near)  # "the alarm chirps"
        case Shows.TICKING:
            water = (line.word(mark.first - 2), line.word(mark.first - 1)) == ("like", "a")
            return water or by_hand(line, mark) or after in ("over", "along")
        case Shows.LOST_POWER:
            halted = (
                line.tokens[mark.first].stem == "come" and line.word(mark.first - 1) in _PERSONS
            )
            return after in OTHER_POWER or halted  # "when I come to a halt"
        case Shows.NO_START:
            return bool(DARES_NOT & {line.word(k) for k in range(mark.first - 4, mark.first + 1)})
        case Shows.KNOCK if by_hand(line, mark):
            return True
        case Shows.KNOCK:
            on_it = {line.word(k) for k in range(mark.last, mark.last + 3)}
            because = line.word(mark.first - 3) == "because"
            if line.word(mark.first - 1) in ("the", "a") and line.word(mark.first - 2) in BLOW:
                return not because
            took_one = {line.word(k) for k in range(clause.first, mark.first)}
            if {"sump", "pan"} & took_one and {"had", "took", "taken", "got", "a"} & took_one:
                return True  # "the sump has had a bad knock"
            return after in KNOCKED or bool(on_it & {"sump", "pan", "free"})
    return False


def _of_the_level(line: Line, at: int) -> bool:
    """Whether the oil itself, not its pressure, was named before "it" in the sentence."""
    said = {line.word(k) for k in range(at)}
    return bool(said & LEVELS) and not said & PRESSURES


def _ends_there(line: Line, at: int) -> bool:
    """Whether no noun follows: an end, a mark, a figure, "at", "when hot"."""
    if at >= len(line.tokens):
        return True
    token = line.tokens[at]
    return (
        token.is_mark
        or token.is_figure
        or token.word in FOLLOWS
        or any(m.first == at for m in line.circumstances)
    )


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
    beside = any(m.value not in VAGUE | APART for m in marks)
    spoken = any(h.is_pressure for h in heads if h.line is line or h is heads[-1])
    has_when = any(clause.first <= m.first < clause.last for m in line.circumstances)
    return has_when and (figure or beside or spoken)
