"""Read findings whose words stand together in a clause, in whatever order they were put."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.pressures.on_trial import by_drill
from diagnose.understanding.sentences.paragraph import Line, Paragraph, new_now, what_is_measured
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.facts import Fact, reader
from diagnose.understanding.words.groups import Together
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.joining import by_hand, opened_case
from knowledge.lexicon.shows.in_order import GOOD_NEWS
from knowledge.lexicon.sights.exceptions import (
    NEVER_DENIED,
    NOT_DONE,
    NOT_INSIDE,
    OF_OTHERS,
    RUNS_OUT,
    SAID_AS_SUCH,
)
from knowledge.lexicon.sights.of_another_part import OF_ANOTHER, OF_NEAR
from knowledge.lexicon.sights.split_crankcase import CASES
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.lexicon.words.joints import EARLIER
from knowledge.model import Kind, Stage

_PANELS = frozenset(["panel_reads_too_low", "panel_reads_too_high"])
_APART, _LEAST_APART = 0.25, 3.0  #: share, psi: two gauges that differ by less agree (judgement)
_NEGATION = frozenset(NEGATION)


@reader(
    {
        "solenoid unplugged, pressure jumps": ["finding pump_rises_unplugged present"],
        "vvt solenoid unplugged, pressure jumps": [],
        "cam bearings dont line up with the oil feed": ["finding shell_hole_mismatch present"],
        "cam bearing holes line up with the oil feed": [],
        "ball spring and screw back but one washer left over": [
            "finding relief_parts_not_standard present"
        ],
        "half of the outlet port was hidden by the gasket": ["finding gasket_masks_port present"],
        "the gasket hides half of the outlet port": ["finding gasket_masks_port present"],
        "was lazy with the rods and didn't measure them": [
            "finding clearances_never_measured present"
        ],
        "going to measure the rods": [],
        "poured a pint of oil down the filter head": [],
        "drained the oil and pulled the plug": [],
        "the drain passages were plugged": ["finding returns_blocked present"],
        "the gauge never moved off zero": [],
        "the gasket does not cover the port": ["finding gasket_masks_port absent"],
        "my brother's gasket hid half of the port": [],
        "could the gasket hide the port?": [],
        "did the front cover gasket and no oil pressure": [],
        "maybe the gasket hides the port": [],
        "going to check whether the gasket hides the port": [],
        "primed it with the drill and got maybe 15 psi": ["finding drill_gives_little present"],
        "just freshened it up, had 75 psi while pre-oiling it with the drill": [
            "finding drill_gives_good present"
        ],
        "primed it with the drill and got a good 55 psi": ["finding drill_gives_good present"],
    }
)
def together(paragraph: Paragraph) -> Iterator[Fact]:
    """Findings named by several words of one clause or sentence."""
    for line in paragraph.lines:
        for found in line.lexicon.groups.find(line.sentence):
            fact = _fact(line, found)
            if fact is not None:
                yield fact


def _near_each_other(line: Line) -> bool:
    """Whether two pressures of a sentence are nearly the same."""
    made = [v for k in range(len(line.tokens)) for v in pressures_at(line, k)]
    return len(made) > 1 and max(made) - min(made) < max(_APART * max(made), _LEAST_APART)


def _denies_pressure(line: Line, found: Together, place: int) -> bool:
    """Whether a "no" among its words is that of "no oil pressure", which is none of them."""
    if line.word(place) not in _NEGATION:
        return False
    noun = place + 2 if line.word(place + 1) == "oil" else place + 1
    return line.word(noun) == "pressure" and noun not in found.places


def _fact(line: Line, found: Together) -> Fact | None:
    finding = line.lexicon.book.findings.get(found.finding)
    if finding is None:
        return None
    stance = Stance.STATED
    for place in found.places:
        stance |= line.stances.of[place]
    if found.finding in RUNS_OUT and any(by_hand(line, place) for place in found.places):
        return None  # "poured oil down the hole in the filter head"
    if found.finding in CASES and opened_case(line, Mark(True, found.first, found.last)):
        return None  # "crankcase split again: O-ring cut"
    well = line.find(line.lexicon.nothing_wrong)
    if (
        found.there
        and found.finding not in GOOD_NEWS
        and any(w.first <= place < w.last for w in well for place in found.places)
    ):
        return None  # "gallery plugs: no defects"
    if found.finding in OF_OTHERS:
        stance &= ~(Stance.ELSEWHERE | Stance.GUESSED)
    if found.finding in NOT_DONE and found.negates and line.word(len(line.tokens) - 1) != "yet":
        stance &= ~Stance.SUPPOSED
    if stance & (Stance.SUPPOSED | Stance.ELSEWHERE | Stance.USUAL | Stance.GUESSED):
        return None
    sure = min(line.stances.sure[place] for place in found.places)
    other = NOT_INSIDE.get(found.finding, frozenset())
    said = line.words(found.first, found.last)
    if found.there and said & other and not said & _NEGATION - other:
        return None  # "reads zero with the key off"
    lead = range(max(found.first - OF_NEAR, line.clause(found.first).first), found.first)
    if {line.word(k) for k in lead} & OF_ANOTHER.get(found.finding, frozenset()):
        return None  # "took the filler cap off"
    inside = finding.stage is Stage.OPENED
    if inside and any(_denies_pressure(line, found, place) for place in found.places):
        return None  # "did the front cover gasket, no oil pressure"
    if what_is_measured(line, found.finding):
        return None
    if found.finding in _PANELS and _near_each_other(line):
        return None  # "the mechanical gauge says 10, the dash shows 9"
    if inside and (sure < 1.0 or {line.word(found.last), line.word(found.last + 1)} & EARLIER):
        return None
    denied = bool(stance & Stance.DENIED) and not found.negates
    if denied and (not found.there or not found.narrow or found.finding in SAID_AS_SUCH):
        return None
    if denied and new_now(line, found.first, found.last):
        return None
    if denied and (found.finding in NEVER_DENIED or finding.kind is not Kind.SEEN):
        return None
    state = "absent" if denied or not found.there else "present"
    what = by_drill(line, found.finding, found.places)
    if not what:
        return None
    span = line.span([Mark(True, found.first, found.last)])
    return Fact("finding", {"what": what, "state": state}, span, sure)
