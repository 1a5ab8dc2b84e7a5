"""Rules from reported behaviour to the patterns of pressure: gauge, speed, heat, manoeuvre."""

from knowledge.model import Gauge, Station
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.reports.behaviours import (
    CONTACTS,
    FAST,
    LIKELY,
    MANOEUVRES,
    MEANT,
    PLAIN,
    everywhere,
    hot_not_cold,
    idle_not_speed,
    is_momentary,
    losses,
    nothing_at_idle_only,
    shown,
    speed_not_idle,
    surest,
    within,
)
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import LOSSES, Circumstance, Course, Shows
from knowledge.rule_api import Conclusions, Known, example, is_absent, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import findings_direct_gauge as trusted
from knowledge.stations.instrument import findings_sender

rule = rules_of(Station.INSTRUMENT)
C = Circumstance


def seen(
    shows: Shows, *during: Circumstance, only: bool = False, gauge: Gauge = Gauge.PANEL
) -> Behaviour:
    """An example."""
    return Behaviour(shows, frozenset(during), only=only, gauge=gauge)


HOT_IDLE_ONLY = seen(Shows.LOW, C.HOT, C.IDLE, only=True)
IN_BENDS_ONLY = seen(Shows.UNSTEADY, C.BENDS, only=True)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.LOW)]),
        example(behaviours=[HOT_IDLE_ONLY]),
        example(behaviours=[seen(Shows.UNSTEADY)]),
        example(behaviours=[seen(Shows.NONE, gauge=Gauge.DIRECT)]),
    ],
    non_matches=[
        example(behaviours=[IN_BENDS_ONLY]),
        example(behaviours=[seen(Shows.NORMAL, C.SPEED)]),
        example(behaviours=[seen(Shows.KNOCK)]),
    ],
)
def what_the_instrument_shows(known: Known) -> Conclusions:
    """What was reported of gauge or lamp counts, unless it came only in a bend or while braking.

    Nothing at idle with pressure at speed is low.
    """
    for b in shown(known, *LOSSES, Shows.UNSTEADY, Shows.HIGH):
        if is_momentary(b):
            continue
        match b.shows:
            case Shows.HIGH:
                yield is_present(patterns.GAUGE_READS_HIGH, PLAIN)
            case Shows.UNSTEADY:
                yield is_present(patterns.NEEDLE_FLICKERS, PLAIN)
            case Shows.LAMP:
                yield is_present(patterns.LAMP_COMES_ON, PLAIN)
            case _ if b.gauge is Gauge.LAMP:
                yield is_present(patterns.LAMP_COMES_ON, PLAIN)
            case _ if nothing_at_idle_only(b):
                yield is_present(patterns.GAUGE_READS_LOW, PLAIN)
            case Shows.NONE:
                yield is_present(patterns.GAUGE_READS_ZERO, PLAIN)
            case Shows.LOST:
                yield is_present(patterns.GAUGE_READS_ZERO, MEANT)
            case _:
                yield is_present(patterns.GAUGE_READS_LOW, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.LOW, gauge=Gauge.DIRECT)]),
        example(behaviours=[seen(Shows.NORMAL, gauge=Gauge.DIRECT)]),
        example(behaviours=[seen(Shows.HIGH, gauge=Gauge.DIRECT)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW)]),
        example(behaviours=[seen(Shows.NORMAL, C.SPEED, gauge=Gauge.DIRECT)]),
    ],
)
def what_a_trusted_gauge_shows(known: Known) -> Conclusions:
    """What a trusted gauge showed by report, and whether the panel agrees with it."""
    panel = [b for b in losses(known) if b.gauge is not Gauge.DIRECT and not is_momentary(b)]
    for b in shown(known, *LOSSES, Shows.UNSTEADY, Shows.NORMAL, Shows.HIGH):
        if b.gauge is not Gauge.DIRECT:
            continue
        match b.shows:
            case Shows.NORMAL:
                if not b.during:
                    yield is_absent(direct_gauge.DIRECT_GAUGE_LOW, PLAIN)
                    yield is_absent(direct_gauge.DIRECT_GAUGE_ZERO, PLAIN)
                    if any(p.gauge is Gauge.PANEL and p.shows is not Shows.LAMP for p in panel):
                        yield is_present(trusted.PANEL_READS_TOO_LOW, PLAIN)
            case Shows.UNSTEADY:
                yield is_present(direct_gauge.DIRECT_GAUGE_UNSTEADY, PLAIN)
            case Shows.HIGH:
                yield is_present(direct_gauge.DIRECT_GAUGE_HIGH, PLAIN)
            case Shows.NONE | Shows.LOST:
                yield is_present(direct_gauge.DIRECT_GAUGE_ZERO, PLAIN)
            case _:
                yield is_present(direct_gauge.DIRECT_GAUGE_LOW, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.LOW), seen(Shows.NORMAL, gauge=Gauge.LAMP)]),
        example(behaviours=[seen(Shows.LAMP, gauge=Gauge.LAMP), seen(Shows.NORMAL)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW), seen(Shows.LAMP, gauge=Gauge.LAMP)]),
        example(behaviours=[seen(Shows.LOW), seen(Shows.NORMAL, C.SPEED, gauge=Gauge.LAMP)]),
    ],
)
def lamp_and_gauge_apart(known: Known) -> Conclusions:
    """The lamp stays out with a low gauge, or burns with a good one."""
    normal = {b.gauge for b in shown(known, Shows.NORMAL) if not b.during}
    wrong = {Gauge.LAMP if b.shows is Shows.LAMP else b.gauge for b in losses(known)}
    lamp_differs = Gauge.LAMP in normal and Gauge.PANEL in wrong
    if lamp_differs or (Gauge.PANEL in normal and Gauge.LAMP in wrong):
        yield is_present(patterns.SECOND_INSTRUMENT_DISAGREES, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[HOT_IDLE_ONLY]),
        example(behaviours=[seen(Shows.LOW, C.HOT, C.IDLE), seen(Shows.NORMAL, C.SPEED)]),
        example(behaviours=[seen(Shows.LAMP, C.HOT, C.IDLE)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW, C.HOT, C.IDLE, C.SPEED)]),
        example(behaviours=[seen(Shows.LOW, C.IDLE)]),
        example(behaviours=[seen(Shows.UNSTEADY, C.HOT, C.IDLE, only=True)]),
    ],
)
def less_at_idle_than_at_speed(known: Known) -> Conclusions:
    """Low at hot idle and good at speed; right again with a touch of throttle."""
    sure = surest(idle_not_speed(b) for b in losses(known))
    if sure:
        yield is_present(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, sure)
    if any(idle_not_speed(b) and C.OFF_IDLE in b.never for b in losses(known)):
        yield is_present(patterns_speed.RISES_JUST_OFF_IDLE, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.LOW, C.IDLE, C.SPEED)]),
        example(behaviours=[seen(Shows.LAMP, C.LOAD)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW, C.IDLE)]),
        example(behaviours=[seen(Shows.LOW, C.ACCELERATING, only=True)]),
        example(behaviours=[seen(Shows.LOW, C.HOT, C.COLD, C.IDLE, C.SPEED)]),
    ],
)
def low_at_speed_too(known: Known) -> Conclusions:
    """What is low at speed is not good there.

    What is low everywhere, or at speed only, is a pattern of its own.
    """
    low = [b for b in losses(known) if not is_momentary(b)]
    in_both = (b for b in low if not everywhere(b) and not speed_not_idle(b))
    if any(b.during & (FAST - MANOEUVRES) for b in in_both):
        yield is_absent(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.FALLING, C.SPEED, only=True)]),
        example(behaviours=[seen(Shows.LOW, C.SPEED), seen(Shows.NORMAL, C.IDLE)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW, C.SPEED, C.IDLE)]),
        example(behaviours=[seen(Shows.LOW, C.ACCELERATING, only=True)]),
    ],
)
def less_at_speed_than_at_idle(known: Known) -> Conclusions:
    """Good at idle and low at speed.

    Who calls it "low" at speed may mean that it falls, or that it stops rising: a ceiling.
    """
    lost = list(losses(known))
    sure = surest(speed_not_idle(b) for b in lost if b.shows is not Shows.LOW)
    perhaps = surest(speed_not_idle(b) for b in lost if b.shows is Shows.LOW)
    if sure or perhaps:
        yield is_present(patterns_speed.FALLS_AS_REVS_RISE, max(sure, min(perhaps, LIKELY)))
    if perhaps and not sure:
        yield is_present(patterns_speed.CAPPED_LOW, min(perhaps, LIKELY))


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.UNSTEADY, C.HOT, C.IDLE, only=True)]),
        example(behaviours=[seen(Shows.UNSTEADY, C.SPEED, only=True)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.UNSTEADY)]),
        example(behaviours=[IN_BENDS_ONLY]),
        example(behaviours=[HOT_IDLE_ONLY]),
    ],
)
def unsteady_in_one_range(known: Known) -> Conclusions:
    """Wavering at hot idle only, or at speed only."""
    unsteady = list(shown(known, Shows.UNSTEADY))
    if sure := surest(idle_not_speed(b) for b in unsteady):
        yield is_present(patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE, sure)
    if sure := surest(speed_not_idle(b) for b in unsteady):
        yield is_present(patterns_speed.FLICKERS_ONLY_AT_SPEED, sure)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.UNSTEADY, C.IDLE)]),
        example(behaviours=[seen(Shows.UNSTEADY, C.SPEED)]),
        example(behaviours=[seen(Shows.UNSTEADY, C.IDLE, C.SPEED, gauge=Gauge.DIRECT)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.UNSTEADY)]),
        example(behaviours=[seen(Shows.UNSTEADY, C.SLOWING)]),
        example(behaviours=[seen(Shows.UNSTEADY, C.HOT, C.IDLE)]),
        example(behaviours=[seen(Shows.UNSTEADY, C.SPEED, only=True)]),
        example(behaviours=[IN_BENDS_ONLY]),
    ],
)
def unsteady_in_that_range_too(known: Known) -> Conclusions:
    """What wavers at idle does not waver at speed only, and the other way round.

    What wavers in one range only is a pattern of its own.
    """
    unsteady = [b for b in shown(known, Shows.UNSTEADY) if not is_momentary(b)]
    for b in unsteady:
        if idle_not_speed(b) or speed_not_idle(b):
            continue
        if C.IDLE in b.during:
            yield is_absent(patterns_speed.FLICKERS_ONLY_AT_SPEED, PLAIN)
        if b.during & FAST:
            yield is_absent(patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[HOT_IDLE_ONLY]),
        example(behaviours=[seen(Shows.LOW, C.HOT), seen(Shows.NORMAL, C.COLD)]),
        example(behaviours=[seen(Shows.LOW, C.COLD)]),
        example(behaviours=[seen(Shows.LOW, C.COLD, only=True)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW, C.HOT)]),
        example(behaviours=[seen(Shows.LOW, C.COLD, C.START)]),
    ],
)
def cold_against_hot(known: Known) -> Conclusions:
    """Good with cold oil and low with hot oil, low with cold oil already, or with cold oil only."""
    low = [b for b in losses(known) if not is_momentary(b)]
    if sure := surest(hot_not_cold(b) for b in low):
        yield is_present(patterns_speed.GOOD_COLD_LOW_HOT, sure)
    cold = [b for b in low if C.COLD in b.during and C.START not in b.during]
    if any(not b.only or C.HOT in b.during for b in cold):
        yield is_present(patterns_speed.LOW_EVEN_COLD, PLAIN)
    if any(C.HOT in b.never or (b.only and C.HOT not in b.during) for b in cold):
        yield is_absent(patterns_speed.LOW_AT_ALL_SPEEDS, PLAIN)
        yield is_absent(patterns_speed.GOOD_COLD_LOW_HOT, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.LOW, C.HOT, C.COLD, C.IDLE, C.SPEED)]),
        example(behaviours=[Behaviour(Shows.LOW, course=frozenset({Course.CONSTANT}))]),
        example(behaviours=[HOT_IDLE_ONLY]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW)]),
        example(behaviours=[seen(Shows.LOW, C.HOT, C.IDLE)]),
    ],
)
def missing_everywhere(known: Known) -> Conclusions:
    """Low at every speed, hot and cold; not so if it is good at speed or when cold."""
    low = [b for b in losses(known) if not is_momentary(b)]
    if sure := surest(everywhere(b) for b in low):
        yield is_present(patterns_speed.LOW_AT_ALL_SPEEDS, sure)
    elif any(max(idle_not_speed(b), speed_not_idle(b), hot_not_cold(b)) >= MEANT for b in low):
        yield is_absent(patterns_speed.LOW_AT_ALL_SPEEDS, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[IN_BENDS_ONLY]),
        example(behaviours=[seen(Shows.LOST, C.SEAWAY)]),
        example(behaviours=[Behaviour(Shows.LOW, never=frozenset({C.BENDS}))]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW, C.SPEED)]),
        example(behaviours=[seen(Shows.KNOCK, C.BENDS)]),
    ],
)
def missing_in_a_manoeuvre(known: Known) -> Conclusions:
    """Low or wavering in bends, under braking, on a slope or in a seaway."""
    every = list(shown(known, *LOSSES, Shows.UNSTEADY))
    moving = [b for b in every if b.during & MANOEUVRES]
    if any(b.during & MANOEUVRES - {C.ACCELERATING} for b in moving):
        yield is_present(behaviour.FALLS_IN_A_MANOEUVRE, PLAIN)
    elif moving:
        yield is_present(behaviour.FALLS_IN_A_MANOEUVRE, LIKELY)
    elif any(b.never & MANOEUVRES for b in every):
        yield is_absent(behaviour.FALLS_IN_A_MANOEUVRE, MEANT)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.UNSTEADY, C.ELECTRICAL)]),
        example(behaviours=[seen(Shows.LOW, C.TOUCHED)]),
    ],
    non_matches=[
        example(behaviours=[IN_BENDS_ONLY]),
        example(behaviours=[seen(Shows.KNOCK, C.ROUGH_ROAD)]),
    ],
)
def moved_by_a_contact(known: Known) -> Conclusions:
    """If lamps, bumps or a hand on the wiring change the reading, a contact is bad."""
    every = list(shown(known, *LOSSES, Shows.UNSTEADY, Shows.HIGH))
    if any(C.ELECTRICAL in b.during for b in every):
        yield is_present(patterns.NEEDLE_FOLLOWS_LOADS, PLAIN)
    elif any(C.ROUGH_ROAD in b.during for b in every):
        bumps_only = any(C.ROUGH_ROAD in b.during and within(b, CONTACTS) for b in every)
        yield is_present(patterns.NEEDLE_FOLLOWS_LOADS, PLAIN if bumps_only else LIKELY)
    elif any(C.ELECTRICAL in b.never for b in every):
        yield is_absent(patterns.NEEDLE_FOLLOWS_LOADS, MEANT)
    if any(C.TOUCHED in b.during for b in every):
        yield is_present(findings_sender.WIGGLE_MOVES_NEEDLE, PLAIN)
