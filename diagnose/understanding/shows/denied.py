"""Noises and lamps that are denied, "no knock", and what is only said of the lamp itself."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from diagnose.understanding.sentences.manner import says_how_warm
from diagnose.understanding.sentences.paragraph import Line, new_now
from diagnose.understanding.words.facts import Fact
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.meant.beside_what_shows import (
    AT_USUAL,
    GOES_OUT,
    KEEPS_TO,
    KEY,
    KEY_OFF,
    LAMP_WORKS,
    LEADS_TO_FIGURE,
    LIT_LATER,
    NOT_RUNNING,
    OTHER_INSTRUMENTS,
    STRIKERS,
    STRIKES,
    TAPPED,
    USUAL_RUNNING,
    WARNS,
)
from knowledge.lexicon.shows.beside_pressure import BEFORE_NOW, DENY, FALLS, FINDING_OF, IS_SO_NOW
from knowledge.lexicon.stance.stance import NEGATION
from knowledge.reports.words import NOISES, Shows

_MOST_PSI = 150  #: a larger figure is a speed
_WITH_THE_KEY = 8  #: words before the lamp in which the key is named: "with the key on and ..."


def denied(line: Line) -> Iterator[Fact]:
    """Noises and lamps that are denied."""
    for mark in line.stated(line.lexicon.shows):
        if not line.denied(mark) or mark.value not in FINDING_OF or line.guessed(mark):
            continue
        if any(line.tokens[k].word in DENY for k in range(mark.first, mark.last)):
            continue
        if any(s.overlaps(mark) for s in line.find(line.lexicon.sights)):
            continue
        if line.word(mark.last - 1) == "on" and line.word(mark.last) in ("this", "mine", "it"):
            continue  # "no lamp on this one"
        clause = line.clause(mark.first)
        if (began := _began(line, mark)) is not None:
            yield Fact("behaviour", {"shows": mark.value.value}, line.span([began]))
            continue
        if new_now(line, mark.first, mark.last):
            continue  # "never had a knock before"
        if mark.value not in NOISES and any(
            clause.first <= c.first < clause.last for c in line.circumstances
        ):
            continue  # not then; of other times nothing is said
        start = mark.first
        while start > 0 and line.word(start - 1) and not line.tokens[start].is_mark:
            start -= 1
            if line.word(start) in DENY or line.word(start) in ("without", "nor", "neither"):
                break
        spans = line.span([Mark(True, start, mark.last)])
        yield Fact(
            "finding",
            {"what": FINDING_OF[mark.value], "state": "absent"},
            spans,
            line.stances.surety(mark),
        )


def _began(line: Line, mark: Mark[Shows]) -> Mark[Shows] | None:
    """A noise that was not there and is now, with its words: "never knocked before, now it does"."""
    if mark.value not in NOISES | {Shows.SMOKE}:
        return None
    rest = range(mark.first + 1, len(line.tokens))
    if any(line.word(k) in ("until", "till", "til") for k in rest[:3]):
        return mark  # "never had a knock till yesterday"
    before = any(line.word(k) in BEFORE_NOW for k in rest[:4])
    at = next((k for k in rest if line.word(k) in IS_SO_NOW), None)
    ends = before and at is not None and {line.word(k) for k in rest} & {"now"}
    return Mark(mark.value, mark.first, at + 1) if ends and at is not None else None


def says_how_it_works(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it is said how the lamp works, not that it is lit: "oil warning light is fine"."""
    unlit = line.word(mark.last - 1) in ("light", "lamp") and line.word(mark.last) in ("off", "out")
    if unlit or _at_the_key(line, mark):
        return True
    cut_off = line.word(mark.last - 1) == "warning" and line.word(mark.last) in WARNS
    after = line.words(mark.last + 1, mark.last + 4)
    return cut_off and bool(after & LAMP_WORKS.union(NEGATION)) and not after & GOES_OUT


def _at_the_key(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it is lit before the start, as it should be: "the lamp is lit with the key on"."""
    last = line.clause(mark.first).last
    words = [line.word(k) for k in range(max(0, mark.first - _WITH_THE_KEY), last)]
    pairs = set(pairwise(words))
    before_start = bool(pairs & NOT_RUNNING) or bool(KEY & set(words))
    return before_start and not (LIT_LATER & set(words) or pairs & KEY_OFF)


def by_hand(line: Line, mark: Mark[Shows]) -> bool:
    """Whether somebody taps an instrument: "I tap it", "thumped the dash, no change"."""
    said = [k for k in range(mark.first, mark.last) if line.tokens[k].stem in STRIKES]
    if not said:
        return False
    person = line.word(said[0]) == "tap" and line.word(said[0] - 1) in STRIKERS
    it = line.word(said[0] + 1) == "it" and any(t.word in TAPPED for t in line.tokens)
    return person or it or any(line.word(k) in TAPPED for k in range(said[0] + 1, said[0] + 6))


def is_no_verdict(line: Line, mark: Mark[Shows]) -> bool:
    """Whether "normal" or "steady" is no verdict on the pressure: how warm or fast, or a figure."""
    if mark.value is Shows.NORMAL and says_how_warm(line.tokens, mark):
        return True
    return _run_as_usual(line, mark) or _steady_at_a_figure(line, mark)


def _run_as_usual(line: Line, mark: Mark[Shows]) -> bool:
    """Whether "normal" is how the engine is run: "20 psi at normal idle", "under normal driving"."""
    if line.word(mark.last - 1) != "normal" or line.word(mark.last) not in USUAL_RUNNING:
        return False
    return line.word(mark.last - 2) in AT_USUAL


def _steady_at_a_figure(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it only keeps to a figure, whatever that is: "steady at 5 psi"."""
    if mark.value is not Shows.NORMAL or line.word(mark.last - 1) not in KEEPS_TO:
        return False
    at = mark.last
    while line.word(at) in LEADS_TO_FIGURE:
        at += 1
    behind = line.tokens[at : at + 1] if at > mark.last else ()
    return any("pressure" in t.kinds or (t.kinds == {"number"} and _may_be(t.word)) for t in behind)


def _may_be(figure: str) -> bool:
    """Whether a bare figure may be a pressure, not a speed."""
    return figure.isdigit() and int(figure) <= _MOST_PSI


def of_another_instrument(line: Line, mark: Mark[Shows]) -> bool:
    """Whether it is said of another gauge: "the fuel gauge needle bounces", "temp drops to zero"."""
    if mark.value is Shows.NONE and line.word(mark.last - 2) == "between":
        return True  # "flicks between zero and full"
    at = mark.first - 1
    if line.word(at) in ("gauge", "gage", "guage", "needle"):
        at -= 1
    if line.word(at) == "to" and line.word(at - 1) in FALLS:
        at -= 2
    return line.word(at) in OTHER_INSTRUMENTS
