"""Alarms on what people report of the pressure, beside what a trusted gauge shows."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.model import Gauge, Severity, Station
from knowledge.pressure import behaviour, direct_gauge, patterns
from knowledge.pressure.refuted import lamp_is_refuted
from knowledge.reports.behaviours import (
    ABOVE_IDLE,
    CONTACTS,
    LATE,
    MANOEUVRES,
    is_momentary,
    shown,
    within,
)
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import Circumstance, Shows
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.bearings import findings as bearings
from knowledge.stations.topend import findings as topend

rule = rules_of(Station.INSTRUMENT)

LAMP_FLICKERS = Behaviour(Shows.UNSTEADY, gauge=Gauge.LAMP)
NEEDLE_WAVERS = Behaviour(Shows.UNSTEADY)
SWITCH_POINT = "its switch point is about 4.5 to 7 psi (0.3 to 0.5 bar)"
C = Circumstance
#: noises of parts that run short of oil
RATTLES = (
    topend.LIFTERS_CLATTER,
    topend.TIMING_COVER_RATTLES,
    bearings.RATTLE_OF_UNKNOWN_PLACE,
)


def lamp(*during: Circumstance) -> Behaviour:
    """An example: a lamp that flickers then."""
    return Behaviour(Shows.UNSTEADY, frozenset(during), gauge=Gauge.LAMP)


def gone(shows: Shows, *during: Circumstance) -> Behaviour:
    """An example: pressure that is gone then."""
    return Behaviour(shows, frozenset(during))


def needle_wavers(known: Known) -> bool:
    """Whether a needle wavers, and not only a lamp flickers."""
    unsteady = [b for b in known.behaviours() if b.shows is Shows.UNSTEADY]
    only_lamp = bool(unsteady) and all(b.gauge is Gauge.LAMP for b in unsteady)
    return known.has(patterns.NEEDLE_FLICKERS) and not only_lamp


@rule(
    source=idea_from(sources.TRUCK_DRIVER_MANUAL),
    matches=[
        example(direct_gauge.DIRECT_GAUGE_LOW, patterns.NEEDLE_FLICKERS),
        example(
            direct_gauge.DIRECT_GAUGE_LOW, patterns.NEEDLE_FLICKERS, behaviours=[NEEDLE_WAVERS]
        ),
    ],
    non_matches=[
        example(patterns.NEEDLE_FLICKERS),
        example(direct_gauge.DIRECT_GAUGE_LOW, lacks=[patterns.NEEDLE_FLICKERS]),
        example(
            direct_gauge.DIRECT_GAUGE_LOW, patterns.NEEDLE_FLICKERS, behaviours=[LAMP_FLICKERS]
        ),
    ],
)
def truly_low_and_wavering(known: Known) -> Conclusions:
    """Low on a trusted gauge and wavering too: air gets through, and bearings run short of oil.

    The driver manual says stop when the pressure falls or swings; 2 or 3 psi is common practice.
    A lamp that flickers is no wavering needle.
    """
    if known.has(direct_gauge.DIRECT_GAUGE_LOW) and needle_wavers(known):
        yield Alarm(
            Severity.STOP,
            "pressure low on a trusted gauge and the needle wavers, limit: steady within 2 or 3 psi: "
            "stop, read the stick, do not run until you find the cause",
            low=False,
        )


@rule(
    source=idea_from(sources.OIL_CHANGE_LAMP_TEXT),
    matches=[
        example(behaviours=[lamp(C.SPEED)]),
        example(behaviours=[lamp(C.SPEED, C.MINUTES)]),
        example(behaviours=[lamp(C.LATE)]),
    ],
    non_matches=[
        example(behaviours=[lamp(C.HOT, C.IDLE)]),
        example(behaviours=[lamp(C.MINUTES, C.IDLE)]),
        example(behaviours=[lamp(C.SPEED, C.BENDS)]),
        example(behaviours=[Behaviour(Shows.UNSTEADY, frozenset({C.SPEED}))]),
    ],
)
def lamp_flickers_at_speed(known: Known) -> Conclusions:
    """A lamp that flickers at speed: pressure is at its switch point where it should be high."""
    for b in shown(known, Shows.UNSTEADY):
        fast = b.during & (ABOVE_IDLE | LATE) and C.IDLE not in b.during
        if b.gauge is Gauge.LAMP and fast and not b.during & (MANOEUVRES | CONTACTS):
            yield Alarm(
                Severity.STOP,
                f"oil lamp flickers at speed, {SWITCH_POINT}, far below what speed needs: stop, "
                "run it again only with a trusted gauge on and watched",
                gauge_next=True,
                low=False,
            )


@rule(
    source=JUDGEMENT,
    matches=[example(behaviours=[lamp(C.HOT, C.IDLE)]), example(behaviours=[lamp()])],
    non_matches=[
        example(behaviours=[lamp(C.ELECTRICAL)]),
        example(behaviours=[lamp(C.BENDS)]),
        example(behaviours=[NEEDLE_WAVERS]),
    ],
)
def lamp_flickers(known: Known) -> Conclusions:
    """A lamp that flickers has pressure at its switch point: run it only to read a gauge."""
    for b in shown(known, Shows.UNSTEADY):
        if b.gauge is Gauge.LAMP and not is_momentary(b) and not b.during & CONTACTS:
            yield Alarm(
                Severity.CARE,
                f"oil lamp flickers, {SWITCH_POINT}: without load, and only to read a trusted "
                "gauge, until you find the cause",
                unless_denied=direct_gauge.DIRECT_GAUGE_LOW,
                low=True,
                lets_run=True,
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(topend.LIFTERS_CLATTER, behaviours=[lamp(C.IDLE)]),
        example(patterns.LAMP_COMES_ON, bearings.RATTLE_OF_UNKNOWN_PLACE),
        example(patterns.LAMP_COMES_ON, topend.TIMING_COVER_RATTLES),
    ],
    non_matches=[
        example(patterns.LAMP_COMES_ON, lacks=[topend.LIFTERS_CLATTER]),
        example(topend.LIFTERS_CLATTER),
        example(topend.LIFTERS_CLATTER, behaviours=[lamp(C.BENDS)]),
        example(topend.LIFTERS_CLATTER, behaviours=[NEEDLE_WAVERS]),
    ],
)
def lamp_and_a_rattle(known: Known) -> Conclusions:
    """A lamp and a rattle are two signs of one loss: not a mile further on its own engine."""
    flickers = any(
        b.gauge is Gauge.LAMP and not is_momentary(b) and not b.during & CONTACTS
        for b in shown(known, Shows.UNSTEADY)
    )
    refuted = lamp_is_refuted(known)
    lit = known.has(patterns.LAMP_COMES_ON) and not refuted
    if (lit or flickers) and any(known.has(noise) for noise in RATTLES):
        yield Alarm(
            Severity.STOP,
            "the oil lamp and a rattle together, two signs of too little oil at the parts: shut it "
            "down, do not drive or motor home, have it towed; run it again only to read a trusted "
            "gauge, once the level is right",
            unless_denied=direct_gauge.DIRECT_GAUGE_LOW,
            gauge_next=True,
            low=False,
        )


def gone_in_a_manoeuvre(known: Known) -> bool:
    """Whether all pressure is gone in a bend, under braking or on a slope, and only there."""
    return any(within(b, MANOEUVRES) for b in shown(known, Shows.NONE, Shows.LOST))


@rule(
    source=idea_from(sources.SUMP_TILT_TEST),
    matches=[example(behaviour.FALLS_IN_A_MANOEUVRE)],
    non_matches=[
        example(lacks=[behaviour.FALLS_IN_A_MANOEUVRE]),
        example(behaviour.FALLS_IN_A_MANOEUVRE, behaviours=[gone(Shows.NONE, C.BENDS)]),
    ],
)
def pressure_goes_in_the_manoeuvre(known: Known) -> Conclusions:
    """Each fall in a bend or on a slope damages the rod bearings: stop the manoeuvre."""
    stops = gone_in_a_manoeuvre(known)
    if known.has(behaviour.FALLS_IN_A_MANOEUVRE) and not stops:
        yield Alarm(
            Severity.CARE,
            "pressure falls in the manoeuvre, the stop figure is the limit at any moment: break it "
            "off, fill to the mark, repeat only with a second person on the gauge",
            lets_run=True,
        )


@rule(
    source=idea_from(sources.NAVY_14075_CASUALTY),
    matches=[
        example(behaviours=[gone(Shows.NONE, C.BENDS)]),
        example(behaviours=[gone(Shows.LOST, C.SEAWAY)]),
    ],
    non_matches=[
        example(behaviours=[gone(Shows.LOW, C.BENDS)]),
        example(behaviours=[gone(Shows.NONE, C.BENDS, C.ELECTRICAL)]),
        example(behaviours=[gone(Shows.NONE, C.START)]),
    ],
)
def none_in_the_manoeuvre(known: Known) -> Conclusions:
    """No pressure in a bend or on a slope is no pressure under load: stop, not only slower."""
    if gone_in_a_manoeuvre(known):
        yield Alarm(
            Severity.STOP,
            "pressure drops to nothing in the manoeuvre, some is needed at any moment: stop, read "
            "the stick, fill to the mark; no such manoeuvre again until you find the cause",
        )
