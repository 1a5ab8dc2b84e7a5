"""What a pressure has in common with the one before it: "25 at idle cold and 10 hot" are both of idle."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise, permutations

from diagnose.understanding.pressures.gauges import direct_named, gauges_named
from diagnose.understanding.pressures.gauges_compared import RUN, Pressure
from diagnose.understanding.pressures.reading_fields import is_speed_figure, is_temperature
from diagnose.understanding.pressures.usual_pressures import is_heat
from diagnose.understanding.sentences.paragraph import Line, heat_at
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.values.beside_numbers import FALLS
from knowledge.reports.words import Circumstance, Shows, Speed

#: said of how long it ran, not of the speed
SPANS = (Circumstance.MINUTES, Circumstance.LATE, Circumstance.STANDING)
#: an engine that was hot is no longer so
_NOT_HOT = (*SPANS, Circumstance.START, Circumstance.AFTER_REST, Speed.CRANKING)
_JOINED = frozenset([",", "and", "but", "or", ";", "only"])  #: all that parts two figures of a list
_LEADS = frozenset(["it", "and", "then", "needle", "gauge", "pressure", "the", ",", "but", "just"])
_LEAST = 2  #: pressures of a list
_FALLING = 3  #: words before a pressure in which it is said to have fallen to it


def carry_on(line: Line, found: Sequence[Pressure]) -> None:
    """Give each pressure of a sentence the heat, speed and gauge that it shares with another."""
    _heat_said_ahead(line, found)
    _gauge_said_behind(line, found)
    for before, each in pairwise(found):
        if before.usual == each.usual:
            _heat_since(line, before, each)
            _speed_of(line, before, each)
    _of_what_it_did(line, found)


def at_one_moment(line: Line, pair: Sequence[Pressure]) -> None:
    """Give a pressure without speed and heat those of the other gauge beside it."""
    gauges = gauges_named(line)
    for one, other in permutations(pair):
        if all(m in gauges or m in other.near for m in one.near):
            one.near += [m for m in other.near if m not in gauges and m not in one.near]


def _heat_said_ahead(line: Line, found: Sequence[Pressure]) -> None:
    """Heat ahead of a list is that of all of it, and so is the test gauge of the first."""
    lead: list[Mark[object]] = []
    for before, other in zip((None, *found), found, strict=False):
        own = [m for m in other.near if m.last <= other.mark.first and _is_warmth(m)]
        later = any(m.value in SPANS for m in other.near)  # "cold 75, after an hour 20"
        if own:
            lead = own
        elif later or _fell_to(line, before, other) or any(map(_is_warmth, other.near)):
            lead = []  # "cold it's 60, then 45 once warm and 15 at the lights"
        else:
            other.near += lead
        if other is not found[0] and not any(m in gauges_named(line) for m in other.near):
            other.near += [m for m in found[0].near if m in direct_named(line)]


def _is_warmth(mark: Mark[object]) -> bool:
    return is_heat(mark) or is_temperature(mark)


def _gauge_said_behind(line: Line, found: Sequence[Pressure]) -> None:
    """The test gauge named behind a list is that of all of it, where each has its own speed.

    "6 psi at 500 rpm, 22 psi at 2000 rpm on a test gauge", not "dash 5, 45 on a test gauge".
    """
    named = gauges_named(line)
    own_speed = all(any(map(_is_speed, p.near)) for p in found)
    if len(found) < _LEAST or not own_speed or len(named) != 1 or found[-1].usual:
        return
    (gauge,) = named
    if (
        gauge in direct_named(line)
        and gauge in found[-1].near
        and gauge.first > found[-1].mark.first
    ):
        for each in found[:-1]:
            each.near += [gauge] * (not each.usual)


def _fell_to(line: Line, before: Pressure | None, pressure: Pressure) -> bool:
    """Whether a pressure came down from one before it, no longer cold: "cold 50, then down to 15"."""
    first = pressure.mark.first - _FALLING if before is None else before.mark.last
    return any(line.word(k) in FALLS for k in range(first, pressure.mark.first))


def _heat_since(line: Line, before: Pressure, each: Pressure) -> None:
    """What follows "until it gets hot" is of a hot engine, where nothing else is said."""
    at = each.mark.first
    if any(_is_warmth(m) or m.value in _NOT_HOT for m in each.near):
        return
    until = [m for m in before.near if is_heat(m) and heat_at(line, m) != heat_at(line, m, at)]
    each.near += until


def _speed_of(line: Line, before: Pressure, each: Pressure) -> None:
    """Two figures that differ in heat alone are of one speed: "25 at idle cold and 10 hot".

    Not the other way: "10 hot at idle, 60 cold" is what it shows after a start, at a faster idle.
    """
    cold = any(m.value is Circumstance.COLD for m in before.near)
    if not cold or {m.value for m in each.near} != {Circumstance.HOT}:
        return
    last = max(m.last for m in (before.mark, *before.near))
    first = min(m.first for m in (each.mark, *each.near))
    if last < first and all(line.word(k) in _JOINED for k in range(last, first)):
        each.near += [m for m in before.near if _is_speed(m)]


def _of_what_it_did(line: Line, found: Sequence[Pressure]) -> None:
    """What it sank to is read when it showed so: "flickers at hot idle, drops to 5 psi"."""
    for each in found:
        clause = line.clause(each.mark.first)
        verb = next((k for k in range(clause.first, each.mark.first) if line.word(k) in FALLS), -1)
        if verb < 0 or any(line.word(k) not in _LEADS for k in range(clause.first, verb)):
            continue
        if any(_is_speed(m) or _is_warmth(m) for m in each.near):
            continue
        ahead = line.clause(clause.first - 1) if clause.first else clause
        shown = [m for m in line.find(line.lexicon.shows) if m.value in (Shows.UNSTEADY, Shows.LOW)]
        if ahead is clause or not any(ahead.first <= m.first < ahead.last for m in shown):
            continue
        if any(ahead.first <= p.mark.first < ahead.last for p in found):
            continue
        said = [m for m in line.circumstances if ahead.first <= m.first < ahead.last]
        each.near += [m for m in said if _is_speed(m) or is_heat(m)]


def _is_speed(mark: Mark[object]) -> bool:
    """Whether a mark says how fast it ran, in words or figures."""
    return is_speed_figure(mark) or mark.value in RUN
