"""Read what kind of engine it is: "flathead six", "sterndrive V8"."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TypeAlias

from diagnose.understanding.sentences.paragraph import Line, Paragraph
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import jobs
from knowledge.lexicon.engine.features import (
    CONFIRMS,
    ELECTRIC,
    INSTRUMENTS_BESIDE,
    LIGHT_THINGS,
    NOT_AFLOAT,
    OUTBOARD_OF,
    WITHOUT_PRESSURE,
)
from knowledge.lexicon.engine.layouts import LAYOUTS
from knowledge.lexicon.engine.traits import (
    BURNS_IT,
    CYLINDERS,
    ENGINE_WORDS,
    FEATURES,
    FEATURES_ALONE,
    HAS_SO_MANY,
    LACKS,
    OF_A_BOAT,
    OF_A_CRANK,
    OF_THE_FUEL,
    TUBE,
    WASHES,
    Trait,
)
from knowledge.lexicon.stance.stance import NEGATION

VALVES = frozenset(["16v", "24v"])
NO_CYCLES = frozenset({Trait.TRACTOR, Trait.GENERATOR, Trait.PLANT})
_NAMES_IT = frozenset(["a", "its", "my", "the", "is", "old", "this", "our"])
_MAINS = frozenset(["3", "4", "5", "7", "9"])  #: as many as engines have
FARTHEST_NO = 2  #: words between "not" and "a diesel"


def _is_fuel(line: Line, mark: Mark[Trait]) -> bool:
    """Whether "diesel" is the fuel that got into the oil: "diesel in the oil", "smells of diesel"."""
    if line.word(mark.first) != "diesel" or len(mark) > 1:
        return False
    if line.word(mark.first - 2) == "like" or line.word(mark.first - 3) == "like":
        return True  # "sounds like a diesel"
    if line.word(mark.first - 1) == "with" and line.word(mark.last) in ("down", "in", "into", "on"):
        return True  # "freed it off with diesel down the bores"
    clause = line.clause(mark.first)
    if line.word(mark.first - 1) in ("with", "in") and WASHES & line.words(
        clause.first, mark.first
    ):
        return True  # "washed out with diesel"
    after = [line.word(k) for k in range(mark.last, mark.last + 4)]
    return line.word(mark.first - 1) in ("of", "like") or (after[0] == "in" and "oil" in after)


Said: TypeAlias = dict[Trait, tuple[Line, Mark[Trait]]]


def _said(paragraph: Paragraph, denied: bool = False) -> Said:
    """What was said of the kind of this engine, or denied, each where it was said first."""
    said: Said = {}
    for line in paragraph.lines:
        for mark in line.lexicon.traits.find_each(line.tokens):
            no_engine = _is_fuel(line, mark) or line.word(mark.last) in TUBE
            no_engine = no_engine or (
                line.word(mark.last) in ELECTRIC and line.word(mark.first) in VALVES
            )
            no_engine = no_engine or (
                mark.value is Trait.OUTBOARD and line.word(mark.last) in OUTBOARD_OF
            )
            no_engine = no_engine or (mark.value is Trait.BOAT and _is_bike(line, mark))
            stated = line.is_stated(mark) or line.word(mark.first) in OF_A_BOAT
            own = mark.value is Trait.NO_TURBO and not denied
            if stated and (own or line.denied(mark) is denied) and not no_engine:
                said.setdefault(mark.value, (line, mark))
    if Trait.MOWER in said:
        said.pop(Trait.TRACTOR, None)  # "lawn tractor"
    if NO_CYCLES & said.keys() and Trait.CYCLE in said:
        line, mark = said[Trait.CYCLE]
        if line.word(mark.last - 1) == "twin":
            del said[Trait.CYCLE]  # "vintage twin tractor"
    return said


def _is_bike(line: Line, mark: Mark[Trait]) -> bool:
    """Whether a cruiser is a motorcycle or a police car: "V-twin cruiser", "patrol cruiser"."""
    near = {line.word(mark.first - 1), line.word(mark.last)}
    return line.word(mark.first) == "cruiser" and bool(near & NOT_AFLOAT)


def _layout(said: Said) -> tuple[frozenset[Trait], str]:
    """The layout that goes with what was said, and the traits it rests on; empty where none does."""
    for wanted, lacking, layout in LAYOUTS:
        if wanted <= said.keys() and not lacking & said.keys():
            return wanted, layout if layout != "unknown" else ""
    return frozenset(), ""


@reader(
    {
        "three-cylinder diesel tractor": [
            "layout tractor_diesel",
            "finding diesel present",
            "finding in_a_tractor present",
        ],
        "flathead six": ["layout side_valve"],
        "flathead v8": ["layout side_valve_v8"],
        "twin on a generator": ["finding stationary present", "layout generator_petrol"],
        "small-block street rod": ["layout distributor_v8", "finding in_a_vehicle present"],
        "heavy diesel": ["layout heavy_diesel", "finding diesel present"],
        "powerboat with a V8": ["layout marine_petrol_v8", "finding in_a_boat present"],
        "my brother has a diesel tractor": [],
        "not a diesel": ["finding diesel absent"],
        "it is a petrol four not a diesel": ["finding diesel absent"],
        "it is a petrol engine": ["finding diesel absent"],
        "a pushrod petrol four": [
            "layout skew_gear_four",
            "finding diesel absent",
            "finding pushrod_engine present",
        ],
        "it smells of petrol": [],
        "1938 inline six petrol, 3.5 litre": [
            "layout skew_gear_six",
            "finding diesel absent",
        ],
        "the six petrol smells of varnish": [],
        "petrol in the oil": [],
        "is it not a diesel?": [],
        "my brother's is not a diesel": [],
        "not diesel in the oil but water": [],
        "diesel in the oil": [],
        "freed it off with diesel down the bores": [],
        "flushed the engine with diesel": [],
        "it sounds like an old diesel": [],
        "would a V8 oil pump fit?": [],
        "an old six in a pickup": ["finding in_a_vehicle present"],
        "silicone in a pickup tube": [],
        "air cooled v twin": ["finding vee_engine present", "finding water_cooled absent"],
        "the starboard engine": ["finding in_a_boat present"],
        "a 60 hp outboard": ["finding in_a_boat present"],
        "the outboard bearing": [],
        "sterndrive V6": ["layout marine_petrol_v8", "finding in_a_boat present"],
        "wheel loader": ["layout heavy_diesel"],
        "V12 locomotive": ["finding vee_engine present"],
        "the oil tank is under the seat": ["finding dry_sump present"],
        "the hydraulic oil tank is under the seat": [],
        "mechanical fuel pump": ["finding mechanical_lift_pump present"],
        "no oil cooler": [],
        "put a mechanical gauge on it, no difference": [],
        "no turbo on it": ["finding turbocharged absent"],
        "a naturally aspirated diesel": [
            "finding diesel present",
            "finding turbocharged absent",
        ],
        "no problem with the turbo": ["finding turbocharged present"],
    }
)
def engine_kind(paragraph: Paragraph) -> Iterator[Fact]:
    """The layout that all that was said of the engine means, and features it has."""
    said = _said(paragraph)
    meant = FEATURES | FEATURES_ALONE
    wanted, layout = _layout(said)
    if layout:
        meant = FEATURES if Trait.V_TWIN not in said else meant
        spans = [s for t in wanted for s in said[t][0].span([said[t][1]])]
        yield Fact("layout", {"layout": layout}, tuple(sorted(set(spans))))
    book = paragraph.lexicon.book
    known = book.findings
    if Trait.BOAT in said and Trait.CYCLE in said and _is_a_cycle(said):
        del said[Trait.BOAT]  # "cruiser v twin"
    for trait, (line, mark) in said.items():
        feature = meant.get(trait)
        if feature in known:
            yield Fact("finding", {"what": str(feature), "state": "present"}, line.span([mark]))
        if trait in LACKS:
            yield Fact("finding", {"what": LACKS[trait], "state": "absent"}, line.span([mark]))
    if Trait.DIESEL not in said:
        lacks = book.layouts[layout].lacks if layout else ()
        alone = not any(f.id == "diesel" for f in lacks)
        yield from _no_diesel(said, _said(paragraph, denied=True), alone=alone)
    unpressured = bool(WITHOUT_PRESSURE & said.keys())
    beside = any(t.word in INSTRUMENTS_BESIDE for x in paragraph.lines for t in x.tokens)
    for line in paragraph.lines:
        for own in line.stated(line.lexicon.features):
            if _light_weight(line, own) or (unpressured and own.value == "lamp_only"):
                continue  # "no gauge": there is no pressure to show
            if not line.denied(own) and own.value in known and not _put_on(line, own, beside):
                yield Fact("finding", {"what": own.value, "state": "present"}, line.span([own]))


def _light_weight(line: Line, mark: Mark[str]) -> bool:
    """Whether "light" is no lamp: "only a light rumble"."""
    return line.word(mark.last - 1) == "light" and line.word(mark.last) in LIGHT_THINGS


def _is_a_cycle(said: Said) -> bool:
    """Whether the word for a boat is part of the name of a motorcycle."""
    (line, boat), (other, cycle) = said[Trait.BOAT], said[Trait.CYCLE]
    return line is other and boat.overlaps(cycle)


def _no_diesel(said: Said, denied: Said, alone: bool) -> Iterator[Fact]:
    """That it is no diesel; ``alone``: no layout says so."""
    if Trait.DIESEL in denied:
        line, mark = denied[Trait.DIESEL]
        before = range(max(mark.first - FARTHEST_NO, 0), mark.first)
        first = next((k for k in before if line.word(k) in NEGATION), mark.first)
        where = line.span([replace(mark, first=first)])
        yield Fact("finding", {"what": "diesel", "state": "absent"}, where)
    elif alone and Trait.PETROL in said:
        line, mark = said[Trait.PETROL]
        behind = line.word(mark.last)
        if behind in ENGINE_WORDS:
            where = line.span([replace(mark, last=mark.last + 1)])
            yield Fact("finding", {"what": "diesel", "state": "absent"}, where)
        elif _is_sized(line, mark.first - 1) and behind not in OF_THE_FUEL:
            where = line.span([replace(mark, first=mark.first - 1)])
            yield Fact("finding", {"what": "diesel", "state": "absent"}, where)


def _is_sized(line: Line, at: int) -> bool:
    """Whether the size of an engine, or its cylinders, stand there: "a 1.4 petrol", "petrol four"."""
    token = line.tokens[at] if at >= 0 else None
    size = token is not None and token.kinds == {"number"} and "." in token.word
    return line.word(at) in BURNS_IT or (size and line.word(at - 1) in _NAMES_IT)


def _put_on(line: Line, feature: Mark[str], beside: bool) -> bool:
    """Whether a gauge was put on for a trial: it is no part of the engine.

    ``beside``: the text names another instrument, which this one only confirms.
    """
    if feature.value == "direct_gauge" and beside and line.word(feature.last) in CONFIRMS:
        return True
    return feature.value == "direct_gauge" and any(
        job.trial == "other_gauge" and job.whole.overlaps(feature) for job in jobs(line)
    )


@reader(
    {
        "three cylinder diesel tractor": ["bearing rods 3"],
        "four pot diesel generator": ["bearing rods 4"],
        "a parallel twin, dry sump": ["bearing rods 2"],
        "it is a four cylinder": ["bearing rods 4"],
        "small block v8": [],
        "flathead six": ["bearing rods 6"],
        "my brother has a three cylinder tractor": [],
        "not a four cylinder": [],
        "it ran on three cylinders": [],
        "a v8 and a six cylinder": [],
    }
)
def cylinders(paragraph: Paragraph) -> Iterator[Fact]:
    """The cylinders, each with a rod, where they are not those of the layout that is meant."""
    said = _said(paragraph)
    counted = {CYLINDERS[t]: t for t in reversed(said) if t in CYLINDERS}
    if len(counted) != 1:
        return
    ((count, trait),) = counted.items()
    profile = paragraph.lexicon.book.profile_of(_layout(said)[1])
    if profile is None or profile.numbers["rod_count"][0] != count:
        line, mark = said[trait]
        if line.word(mark.first - 1) in ("on", "of"):  # "ran on three cylinders"
            return
        yield Fact("bearing", {"what": "rods", "count": str(count)}, line.span([mark]))


@reader(
    {
        "straight six, 7 main bearings, 12 psi hot": ["bearing mains 7"],
        "a four with 3 mains": ["bearing mains 3"],
        "it has five main bearings": ["bearing mains 5"],
        "5 main bearing engine": ["bearing mains 5"],
        "renewed 5 main bearings": [],
        "3 mains wiped": [],
        "2 mains 4 thou": [],
        "my mate's has 7 mains": [],
    }
)
def main_bearings(paragraph: Paragraph) -> Iterator[Fact]:
    """How many main bearings the engine has, where nothing else is said of them."""
    for line in paragraph.lines:
        for k, token in enumerate(line.tokens):
            last = _end_of_mains(line, k + 1)
            mark = Mark(True, k, last)
            number = token.kinds == {"number"} and token.value in _MAINS
            if number and last and line.is_stated(mark) and _is_count(line, mark):
                yield Fact("bearing", {"what": "mains", "count": token.value}, line.span([mark]))


def _end_of_mains(line: Line, at: int) -> int:
    """Behind "mains" or "main bearings" at a place; 0 where they do not stand there."""
    if line.word(at) == "mains":
        return at + 1
    named = line.word(at) == "main" and line.word(at + 1) in ("bearing", "bearings")
    return at + 2 if named else 0


def _is_count(line: Line, mark: Mark[bool]) -> bool:
    """Whether it says what the engine has: "with 7 mains", "..., 7 mains,", "5 main bearing engine"."""
    clause = line.clause(mark.first)
    words = [line.word(k) for k in range(mark.last, clause.last) if not line.tokens[k].is_mark]
    led = mark.first == clause.first or line.word(mark.first - 1) in HAS_SO_MANY
    return (led and not words) or (bool(words) and words[0] in OF_A_CRANK)
