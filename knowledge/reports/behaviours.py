"""What a behaviour states of speed, heat, time and manoeuvre; for the rules on behaviour."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from knowledge.model import Reading
from knowledge.pressure.gauge import (
    COUNTS,
    PSI_PER_1000,
    at_pump,
    speed_share,
    sure_above,
    sure_fallen,
)
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import LOSSES, Circumstance, Course, Shows, Since
from knowledge.rule_api import Known

C = Circumstance

PLAIN = 1.0  #: how sure a finding is that was said in so many words
MEANT = 0.8  #: one that is meant by what was said
LIKELY = 0.7  #: one that usually goes with what was said

GONE = frozenset({Shows.NONE, Shows.LOST})
WRONG = LOSSES | {Shows.UNSTEADY, Shows.SLOW, Shows.HIGH, Shows.TRIPS}
MANOEUVRES = frozenset({C.BENDS, C.BRAKING, C.ACCELERATING, C.SLOPE, C.SEAWAY})
#: what moves a contact and no oil
CONTACTS = frozenset({C.ELECTRICAL, C.TOUCHED, C.ROUGH_ROAD, C.WET})
FAST = frozenset({C.SPEED, C.HARD_RUN, C.LOAD, C.ACCELERATING})
ABOVE_IDLE = FAST | {C.OFF_IDLE}
LATE = frozenset({C.MINUTES, C.LATE, C.HARD_RUN})
AT_FIRST = frozenset({C.START, C.STANDING})
PASSING = frozenset({Course.COMES_AND_GOES, Course.RECOVERED, Course.RETURNS, Course.ONCE})


def shown(known: Known, *shows: Shows) -> Iterator[Behaviour]:
    """Yield the behaviours that show one of these, completed by when the pressure was normal.

    Circumstances in which it was seen normal are circumstances in which the trouble never shows;
    so is speed, where a good pressure was read there.
    """
    every = known.behaviours()
    good = {c for b in every if b.shows is Shows.NORMAL for c in b.during}
    if any(good_at_speed(r) for r in known.readings()):
        good.add(C.SPEED)
    for b in every:
        if b.shows in shows:
            yield replace(b, never=b.never | (good - b.during))


def good_at_speed(reading: Reading) -> bool:
    """Whether it is enough for the speed it was read at (10 psi for each 1000 rpm) and as usual."""
    enough = sure_above(reading, PSI_PER_1000 * reading.rpm / 1000.0)
    as_usual = sure_fallen(reading) < COUNTS
    return as_usual and not at_pump(reading) and enough * speed_share(reading) >= COUNTS


def losses(known: Known) -> Iterator[Behaviour]:
    """Yield what was said of pressure that is missing."""
    return shown(known, *LOSSES)


def within(b: Behaviour, *groups: frozenset[Circumstance]) -> bool:
    """Whether all circumstances it shows in are of these groups, and there are some."""
    return bool(b.during) and b.during <= frozenset().union(*groups)


def is_momentary(b: Behaviour) -> bool:
    """Whether it shows in a manoeuvre, at a contact or at the start only; it says nothing else."""
    return within(b, MANOEUVRES, CONTACTS, AT_FIRST) or at_first(b)


def at_first(b: Behaviour) -> bool:
    """Whether it shows at the start only; also with cold oil, where it is soon over."""
    soon_over = b.lasts is not None or Course.RECOVERED in b.course
    cold_start = bool(b.during & AT_FIRST) and within(b, AT_FIRST, frozenset({C.COLD}))
    return within(b, AT_FIRST) or (cold_start and soon_over)


def wavers_once_up(known: Known) -> bool:
    """Whether it wavers after the start too: then it is not normal once the pressure is up."""
    return any(not is_momentary(b) for b in shown(known, Shows.UNSTEADY))


def idle_not_speed(b: Behaviour) -> float:
    """How sure it is that it shows at idle and not at speed; 0 where that was not said."""
    if not _at_idle(b) or C.COLD in b.during:
        return 0.0
    hot = C.HOT in b.during or at_idle_late(b)
    if b.only or b.never & ABOVE_IDLE:
        return PLAIN if hot else MEANT
    return LIKELY if hot else 0.0


def nothing_at_idle_only(b: Behaviour) -> bool:
    """Whether all pressure is gone at idle and some comes with speed: as of a leak, not of a still pump."""
    return b.shows in GONE and _at_idle(b) and (b.only or bool(b.never & ABOVE_IDLE))


def nothing_at_idle(known: Known) -> bool:
    """Whether it was reported that all pressure is gone at idle and some comes with speed."""
    return any(nothing_at_idle_only(b) for b in shown(known, *GONE))


def _at_idle(b: Behaviour) -> bool:
    """Whether it shows at idle, and nothing is said of its showing above."""
    return C.IDLE in b.during and not b.during & ABOVE_IDLE - LATE


def at_idle_late(b: Behaviour) -> bool:
    """Whether it shows at idle after a hard run: hot oil at idle, not lost in the course of a run."""
    return {C.IDLE, C.HARD_RUN} <= b.during


def speed_not_idle(b: Behaviour) -> float:
    """How sure it is that it shows at speed and not at idle; 0 where that was not said."""
    if not b.during & FAST or b.during & {C.IDLE, C.SLOWING} or within(b, MANOEUVRES):
        return 0.0
    if b.never & {C.IDLE, C.SLOWING}:
        return PLAIN
    return MEANT if b.only else 0.0


def hot_not_cold(b: Behaviour) -> float:
    """How sure it is that it shows hot and not cold; 0 where that was not said.

    A start that is set against hot oil is a cold one.
    """
    hot = C.HOT in b.during or bool(b.during & LATE)
    if not hot or b.during & {C.COLD, C.START}:
        return 0.0
    if C.COLD in b.never:
        return PLAIN
    if C.START in b.never and C.HOT in b.during:
        return MEANT
    if not b.only:
        return 0.0
    return PLAIN if C.HOT in b.during else LIKELY


def everywhere(b: Behaviour) -> float:
    """How sure it is that it shows at every speed, hot and cold; 0 where that was not said."""
    if b.only or b.never or Course.SPREADING in b.course:
        return 0.0
    if {C.HOT, C.COLD} <= b.during:
        return PLAIN if C.IDLE in b.during and b.during & FAST else MEANT
    if not b.during and Course.CONSTANT in b.course:
        return LIKELY
    return 0.0


def passes(b: Behaviour) -> bool:
    """Whether good pressure comes back by itself."""
    return bool(b.course & PASSING)


def from_the_start(b: Behaviour) -> bool:
    """Whether it has been so since the first start of a build, swap or new engine."""
    return b.since is Since.FIRST_START


def surest(sureties: Iterator[float]) -> float:
    """The largest of them; 0 where there is none."""
    return max(sureties, default=0.0)
