"""Read what was seen, smelt or known: "level is fine", "no leaks", "metal in the filter"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.understanding.ages import AGE, bare_ages
from diagnose.understanding.facts import Fact, reader
from diagnose.understanding.holes import BROKEN_OPEN, known_hole
from diagnose.understanding.joining import acted, by_hand, opened_case
from diagnose.understanding.lexicon import book_stem
from diagnose.understanding.paragraph import (
    Line,
    Paragraph,
    new_now,
    over_months,
    reads_a_value,
    what_is_measured,
)
from diagnose.understanding.phrases import Mark, longest
from diagnose.understanding.stance import UNTRUE, Stance
from diagnose.understanding.things import pairs
from knowledge.lexicon.joints import EXCEPT
from knowledge.lexicon.plain import DEGREES, PERCEIVED
from knowledge.lexicon.sights_beside import MADE_ANOTHER, OF_ANOTHER, OF_NEAR, PRIMING
from knowledge.lexicon.sights_kinds import (
    AT_ANOTHER_TIME,
    BESIDE,
    COMPOUNDS,
    IN_ONE_RUN,
    INSIDE_THE_ENGINE,
    ITS_COVERS,
    LEAVES_THE_ENGINE,
    MAY_BE,
    NEVER_DENIED,
    NOT_DONE,
    NOT_INSIDE,
    OF_OTHERS,
    REPORTED,
    SEEN_BY_ANYBODY,
    VAGUE_SIGHTS,
)
from knowledge.lexicon.sights_shop import CASES
from knowledge.lexicon.stance import FAILS, NEGATION
from knowledge.model import Kind, Stage

_PLACE = 5  #: words behind in which it is said what oil comes out of
_SPARE = 1  #: words that may stand between those of a phrase of the book
_SHORT = 2  #: words of a phrase that holds "oil" between which none may stand
_BEARINGS = frozenset(["bearing", "bearings", "shell", "shells", "journal", "journals", "bushes"])
#: before "bearings": they are not those of the crank
_NOT_OF_THE_CRANK = frozenset(
    ["cam", "camshaft", "wheel", "turbo", "alternator", "balance", "pump"]
)
#: of these only what stands in the same clause may be another thing: "new sender, oil level ok"
_BY_CLAUSE = frozenset([AGE, "level_correct", "dipstick_low"])
_FIGURE = "#"  #: stands for a number among stems
_NEGATION = frozenset(NEGATION)


@dataclass(frozen=True, slots=True)
class _Sight:
    """A phrase found; whether it says that the finding is there, and whether it is denied inside."""

    mark: Mark[str]
    there: bool = True
    denied: bool = False


@reader(
    {
        "oil level is fine, no leaks": [
            "finding level_correct present",
            "finding oil_seen_outside absent",
        ],
        "oil is not milky": ["finding oil_milky absent"],
        "engine has never overheated": ["finding engine_ran_hot absent"],
        "lost all its oil": ["finding oil_loss_fast present"],
        "lost all oil pressure": [],
        "magnet was clean": ["finding magnetic_metal absent"],
        "I am worried about metal in the filter": [],
        "my brother's had metal in the pan": [],
        "probably a spun bearing": [],
        "haven't checked the oil level": [],
        "metal in the filter": ["finding metal_in_filter present"],
        "nearly new, fuses good": [
            "finding high_mileage absent",
            "finding fuse_blown absent",
        ],
        "needle slowly sinks on the motorway": [],
        "needle is sluggish": ["finding slow_needle present"],
        "stuck needle at 40 psi": ["finding needle_stuck_at_one_value present"],
        "stuck needle valve": ["finding fuel_gets_in present"],
        "float needle stuck": ["finding fuel_gets_in present"],
        "topped it up with 2 quarts": ["finding dipstick_low present"],
        "changed the oil, put in 5 litres": [],
        "rattle gone in a few seconds": [],
        "a quart in 500 miles": ["finding oil_used_fast present"],
        "was a litre low": ["finding dipstick_low present"],
        "lamp stays dark with the key on": ["finding lamp_dead_with_key_on present"],
        "the pump had seized": ["finding pump_jammed present"],
        "is the fuse good?": [],
        "took the filler cap off": [],
        "30 seconds in limp home mode": [],
        "the filter came off hard": [],
        "the lifters pump up in ten seconds": [],
        "oil temp 250": [],
        "bearings were all fine except the last": [],
        "20 minutes for cam break in": ["finding freshly_rebuilt present"],
        "took the oil pump out": [],
        "trolling all day in cold water": ["finding idles_long present"],
        "engine never warms up": ["finding idles_long present"],
        "engine warms up quickly": [],
        "i did not warm up the engine": [],
        "oil cooler thermostat stuck open": [],
        "knocked a hole in the block": ["finding rod_through_block present"],
        "its oil hole lines up with the hole in the block": [],
        "the hole in the block for the gallery": [],
        "there is a hole in the block where the dowel sits": [],
        "made sure the old filter gasket came off": [],
        "drive shaft had come up out of the pump": ["finding drive_not_engaged present"],
        "had the shaft out of the pump": [],
        "it stays at 34 no matter what after that": ["finding capped_low present"],
    }
)
def sights(paragraph: Paragraph) -> Iterator[Fact]:
    """Findings that are named as such, there or not there."""
    said = pairs(paragraph)
    for line in paragraph.lines:
        of_parts = [pair.said_by for pair in said if pair.line.number == line.number]
        for sight in _found(line):
            vague = sight.mark.value in VAGUE_SIGHTS
            if vague and any(m.overlaps(sight.mark) for m in of_parts):
                continue  # "leak at the filter" says where
            fact = _fact(line, sight)
            if fact is not None:
                yield fact


def _found(line: Line) -> list[_Sight]:
    """Every phrase for a sight in a sentence."""
    lexicon = line.lexicon
    absent = line.find(lexicon.sights_absent)
    own = [*line.find_alike(lexicon.sights), *_without(line, _padding(line))]
    own = [m for m in dict.fromkeys(own) if m.value in lexicon.book.findings]
    spans = longest(own)
    own = [m for m in own if any((m.first, m.last) == (s.first, s.last) for s in spans)]
    own = [m for m in own if not _goes_on(line, m)]
    own = [
        m
        for m in own
        if not any(_within(m, a) and len(m) < len(a) and a.value not in BESIDE for a in absent)
    ]
    absent = [
        a
        for a in absent
        if not any((len(m) > len(a) or m.value == a.value) and _within(a, m) for m in own)
    ]
    inner = [m for m in _denied_inside(line) if not any(o.overlaps(m) for o in (*own, *absent))]
    nothing = line.find(lexicon.sights_nothing)
    well = line.find(lexicon.nothing_wrong)
    own = [m for m in own if not any(m.overlaps(w) and _takes_back(line, w, m) for w in well)]
    own = [m for m in own if not any(_within(m, n) for n in nothing)]
    absent = [m for m in absent if not any(_within(m, n) for n in nothing)]
    taken = (*own, *absent, *inner, *nothing)
    also = [
        m
        for m in _by_the_book(line)
        if not any(o.overlaps(m) for o in taken) and not _goes_on(line, m)
    ]
    old, young = bare_ages(line)
    return [
        *(_Sight(m) for m in (*own, *longest(also), *old)),
        *(_Sight(m, there=False) for m in (*absent, *young)),
        *(_Sight(m, denied=True) for m in inner),
    ]


def _takes_back(line: Line, well: Mark[bool], mark: Mark[str]) -> bool:
    """Whether "no fault", "ruled out" of a part uses words of a phrase: "cam bearings ruled out"."""
    return not _within(well, mark) or line.word(well.last - 1) == "out"


def _is_reported(line: Line, mark: Mark[str]) -> bool:
    """Whether somebody says that he saw it, not that it may be so: "the dealer said it was low"."""
    said = {line.word(k) for k in range(line.clause(mark.first).first, mark.last)}
    return bool(said & REPORTED) and not said & MAY_BE


def _within(mark: Mark[object], other: Mark[object]) -> bool:
    return other.first <= mark.first and mark.last <= other.last


def _goes_on(line: Line, mark: Mark[str]) -> bool:
    """Whether the last word belongs to the next: "lost all oil pressure", "slowly sinks"."""
    after = line.word(mark.last)
    if line.word(mark.last - 1) == "oil" and after in COMPOUNDS:
        return True
    return after in MADE_ANOTHER.get(mark.value, ())


def _denied_inside(line: Line) -> Iterator[Mark[str]]:
    """Phrases with a negation between their words: "the oil is not milky"."""
    denials = {i for i, t in enumerate(line.tokens) if t.word in _NEGATION and not t.is_figure}
    if not denials:
        return
    for mark in longest(_without(line, denials | _padding(line))):
        within = denials & set(range(mark.first, mark.last))
        known = mark.value in line.lexicon.book.findings
        if within and known and not _goes_on(line, mark) and not _cut(line, mark):
            yield mark


def _padding(line: Line) -> set[int]:
    """Places of words that change nothing: "was found to be very low"."""
    words = [t.word for t in line.tokens]
    padding = {i for i, word in enumerate(words) if word in DEGREES}
    for i in range(len(words) - 2):
        if words[i] in PERCEIVED and words[i + 1] == "to" and words[i + 2] in ("be", "have"):
            padding |= {i, i + 1, i + 2}
    return padding | {i for i, word in enumerate(words) if i and word in ("been", "being")}


def _without(line: Line, left_out: set[int]) -> list[Mark[str]]:
    """Phrases in a sentence as it is without some of its words."""
    kept = [i for i in range(len(line.tokens)) if i not in left_out]
    if len(kept) == len(line.tokens):
        return []
    found = line.lexicon.sights.find_alike([line.tokens[i] for i in kept])
    return [Mark(m.value, kept[m.first], kept[m.last - 1] + 1) for m in found]


def _cut(line: Line, mark: Mark[str]) -> bool:
    """Whether a comma stands inside."""
    return any(line.tokens[k].is_mark for k in range(mark.first, mark.last))


def _fact(line: Line, sight: _Sight) -> Fact | None:
    mark = sight.mark
    finding = line.lexicon.book.findings[mark.value]
    stance = line.stances.at(mark)
    if mark.value in OF_OTHERS:
        stance &= ~(Stance.ELSEWHERE | Stance.GUESSED)
    if mark.value in SEEN_BY_ANYBODY and _is_reported(line, mark):
        stance &= ~Stance.GUESSED
    if not line.stances.of[mark.first] & Stance.SUPPOSED and any(
        line.word(k) in _NEGATION for k in range(mark.first + 1, mark.last)
    ):
        stance &= ~Stance.SUPPOSED  # "the oil has not been changed for years" is no plan
    begins = line.word(mark.first) in _NEGATION and line.word(len(line.tokens) - 1) != "yet"
    if mark.value in NOT_DONE and begins:
        stance &= ~Stance.SUPPOSED  # "did not measure a thing"
    if stance & (UNTRUE if mark.value == "long_unchanged" else UNTRUE | Stance.USUAL):
        return None
    near = mark.first - OF_NEAR
    if mark.value in _BY_CLAUSE:
        near = max(near, line.clause(mark.first).first)  # "the oil is milky, 42,000 miles"
        if line.word(mark.first) in ("it", "its") and near > 0:
            near = line.clause(near - 1).first  # "pulled the filter and it's full of oil"
    before = {line.word(k) for k in range(near, mark.first)}
    if before & OF_ANOTHER.get(mark.value, frozenset()):
        return None
    if mark.value in BROKEN_OPEN and known_hole(line, mark):
        return None
    if mark.value == "engine_ran_hot" and _is_of_the_oil(line, mark):
        return None
    if mark.value in CASES and opened_case(line, mark):
        return None
    if line.word(mark.first) in _BEARINGS and line.word(mark.first - 1) in _NOT_OF_THE_CRANK:
        return None  # "cam bearings look good"
    if what_is_measured(line, mark.value):
        return None
    if mark.value == "stood_long" and reads_a_value(line, mark):
        return None  # "it sat at 45 for years"
    within = {line.word(k) for k in range(mark.first, mark.last)}
    other = NOT_INSIDE.get(mark.value, frozenset())
    if sight.there and within & other and not within & _NEGATION - other:
        return None  # "reads zero with the key off"
    if mark.value in IN_ONE_RUN and over_months(line, mark.first):
        return None  # "dropped gradually over the last few months"
    behind = {line.word(k) for k in range(mark.last, mark.last + _PLACE)}
    within_it = behind & INSIDE_THE_ENGINE and not behind & ITS_COVERS
    primed = PRIMING & {t.word for t in line.tokens}
    if mark.value in LEAVES_THE_ENGINE and (within_it or primed):
        return None  # "oil pouring out of the rockers", "behind it when I spin the pump"
    if mark.value == "oil_sprayed" and by_hand(line, mark.first):
        return None
    inside = finding.stage is Stage.OPENED
    if EXCEPT & {line.word(k) for k in (mark.last, mark.last + 1)} and inside:
        return None  # "the bearings were all fine except number 6"
    if inside and acted(line, Mark(True, mark.first, mark.first + 1), [line.word(mark.first + 1)]):
        return None  # "stripped the pump: gears good"
    sure = line.stances.surety(mark)
    if inside and AT_ANOTHER_TIME & {line.word(k) for k in range(mark.last, mark.last + 3)}:
        return None  # "spun a bearing two years ago"
    if stance & Stance.GUESSED or (inside and sure < 1.0):
        return None
    own = {line.tokens[k].word for k in range(mark.first, mark.last)} & _NEGATION
    denied = sight.denied or (bool(stance & Stance.DENIED) and not own)
    if denied and new_now(line, mark.first, mark.last):
        return None  # "never had metal in the filter before"
    if denied and not sight.there:
        return None  # "not in spec" is no statement of its own
    if denied and (mark.value in NEVER_DENIED or finding.kind is not Kind.SEEN):
        return None
    if denied and line.clause(mark.first) != line.clause(mark.last - 1):
        return None  # "no oil on the stick and the belly was black"
    if not sight.there and not own and _fails(line, mark):
        return None  # "the lamp fails to light with the ignition on"
    absent = denied or not sight.there
    first = mark.first
    if denied and not sight.denied:
        while (
            first > 0 and line.word(first) not in _NEGATION and not line.tokens[first - 1].is_mark
        ):
            first -= 1
    spans = line.span([Mark(True, first, mark.last)])
    state = "absent" if absent else "present"
    return Fact("finding", {"what": mark.value, "state": state}, spans, sure)


def _is_of_the_oil(line: Line, mark: Mark[str]) -> bool:
    """Whether "hot" is said of the oil: "oil temp 250", "after a quick run hot 0.5 bar"."""
    figure = any(t.is_figure for t in line.tokens[mark.last :][:1])
    return line.word(mark.first - 1) == "oil" or (line.word(mark.first) == "run" and figure)


def _fails(line: Line, mark: Mark[str]) -> bool:
    """Whether a clause says up to the end of a phrase that something does not do so."""
    said = range(line.clause(mark.first).first, mark.last)
    return any(
        line.word(k) in FAILS or (line.word(k) in _NEGATION and line.word(k).endswith("nt"))
        for k in said
    )


def _by_the_book(line: Line) -> Iterator[Mark[str]]:
    """Phrases of the book's own findings, their words in order and near each other in a clause."""
    shows = line.find(line.lexicon.shows)
    for clause in line.sentence.clauses:
        stems = [
            "" if t.is_mark else _FIGURE if t.is_figure else book_stem(t.word)
            for t in line.tokens[clause.first : clause.last]
        ]
        for first, stem in enumerate(stems):
            for phrase, finding in line.lexicon.also.get(stem, ()):
                last = _end(stems, first, phrase)
                mark = Mark(finding.id, clause.first + first, clause.first + last)
                if last and not any(s.overlaps(mark) for s in shows):
                    yield mark


def _end(stems: list[str], first: int, phrase: tuple[str, ...]) -> int:
    """Where a phrase ends that begins at ``first``; 0 where its words do not follow."""
    wanted, spare = 0, 0
    most = 0 if len(phrase) == _SHORT and "oil" in phrase else _SPARE
    for k in range(first, len(stems)):
        if stems[k] == phrase[wanted]:
            wanted += 1
            if wanted == len(phrase):
                return k + 1
        elif stems[k]:
            spare += 1
            if spare > most or stems[k] in _NEGATION or stems[k] == _FIGURE:
                break
    return 0
