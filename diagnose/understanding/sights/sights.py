"""Read what was seen, smelt or known: "level is fine", "no leaks", "metal in the filter"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.understanding.pressures.on_trial import by_drill
from diagnose.understanding.sentences.paragraph import Line, Paragraph, new_now
from diagnose.understanding.sentences.stance import UNTRUE, Stance
from diagnose.understanding.sights.ages import bare_ages
from diagnose.understanding.sights.no_sight import is_no_sight, is_no_sight_inside, is_reversed
from diagnose.understanding.sights.things import pairs
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.lexicon import book_stem
from diagnose.understanding.words.phrases import Mark, longest
from knowledge.lexicon.sights.exceptions import (
    BESIDE,
    COMPOUNDS,
    MAY_BE,
    NEVER_DENIED,
    NOT_DONE,
    OF_OTHERS,
    REPORTED,
    SEEN_BY_ANYBODY,
    VAGUE_SIGHTS,
)
from knowledge.lexicon.sights.of_another_part import MADE_ANOTHER
from knowledge.lexicon.stance.stance import FAILS, NEGATION
from knowledge.lexicon.words.spelling import DEGREES, PERCEIVED
from knowledge.model import Finding, Kind, Stage

_SPARE = 1  #: words that may stand between those of a phrase of the book
_SHORT = 2  #: words of a phrase that holds "oil" between which none may stand
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
    said = line.words(line.clause(mark.first).first, mark.last)
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
    mark, there = sight.mark, sight.there
    finding = line.lexicon.book.findings[mark.value]
    stance = _stance(line, mark)
    if stance & (UNTRUE if mark.value == "long_unchanged" else UNTRUE | Stance.USUAL):
        return None
    sure = line.stances.surety(mark)
    inside = finding.stage is Stage.OPENED
    if stance & Stance.GUESSED or (inside and (sure < 1.0 or is_no_sight_inside(line, mark))):
        return None
    if is_no_sight(line, mark) or (there and is_reversed(line, mark)):
        return None
    own = any(line.word(k) in _NEGATION for k in range(mark.first, mark.last))
    denied = sight.denied or (bool(stance & Stance.DENIED) and not own)
    if denied and not (there and _can_be_denied(line, mark, finding)):
        return None  # "not in spec" is no statement of its own
    if not there and not own and _fails(line, mark):
        return None  # "the lamp fails to light with the ignition on"
    first = _place_of_denial(line, mark.first) if denied and not sight.denied else mark.first
    spans = line.span([Mark(True, first, mark.last)])
    state = "present" if there and not denied else "absent"
    what = by_drill(line, mark.value, range(mark.first, mark.last)) or mark.value
    return Fact("finding", {"what": what, "state": state}, spans, sure)


def _stance(line: Line, mark: Mark[str]) -> Stance:
    """How a sight is meant, its own words counted as no plan, guess or other engine."""
    stance = line.stances.at(mark)
    if mark.value in OF_OTHERS:
        stance &= ~(Stance.ELSEWHERE | Stance.GUESSED)
    if mark.value in SEEN_BY_ANYBODY and _is_reported(line, mark):
        stance &= ~Stance.GUESSED
    planned = line.stances.of[mark.first] & Stance.SUPPOSED
    negated = any(line.word(k) in _NEGATION for k in range(mark.first + 1, mark.last))
    if negated and not planned:
        stance &= ~Stance.SUPPOSED  # "the oil has not been changed for years" is no plan
    begins = line.word(mark.first) in _NEGATION and line.word(len(line.tokens) - 1) != "yet"
    if mark.value in NOT_DONE and begins:
        stance &= ~Stance.SUPPOSED  # "did not measure a thing"
    return stance


def _can_be_denied(line: Line, mark: Mark[str], finding: Finding) -> bool:
    """Whether a denial is of the sight, now, and says that somebody looked."""
    if new_now(line, mark.first, mark.last):
        return False  # "never had metal in the filter before"
    if mark.value in NEVER_DENIED or finding.kind is not Kind.SEEN:
        return False
    # not over two clauses: "no oil on the stick and the belly was black"
    return line.clause(mark.first) == line.clause(mark.last - 1)


def _place_of_denial(line: Line, at: int) -> int:
    """The negation before a place, or the first word behind a mark."""
    while at > 0 and line.word(at) not in _NEGATION and not line.tokens[at - 1].is_mark:
        at -= 1
    return at


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
