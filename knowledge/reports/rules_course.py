"""Rules from reported behaviour to its course, to noises, and to what an alarm or trip shows."""

from knowledge.model import Station
from knowledge.pressure import behaviour, course, patterns
from knowledge.reports.behaviours import (
    FAST,
    LIKELY,
    MEANT,
    PLAIN,
    WRONG,
    passes,
    shown,
)
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import LOSSES, NOISES, Circumstance, Course, Onset, Shows, Since
from knowledge.rule_api import Conclusions, Known, example, is_absent, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.bearings import findings as bearings
from knowledge.stations.oil import findings_heat
from knowledge.stations.pump import findings as pump
from knowledge.stations.topend import findings as topend

rule = rules_of(Station.INSTRUMENT)
C = Circumstance


def seen(shows: Shows, *course: Course, since: Since | None = None) -> Behaviour:
    """An example."""
    return Behaviour(shows, course=frozenset(course), since=since)


def heard(shows: Shows, *during: Circumstance, only: bool = False) -> Behaviour:
    """An example."""
    return Behaviour(shows, frozenset(during), only=only)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.LOST, Course.RECOVERED)]),
        example(behaviours=[seen(Shows.LOW, Course.COMES_AND_GOES)]),
        example(behaviours=[seen(Shows.LOW, Course.CONSTANT)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOST)]),
        example(behaviours=[seen(Shows.KNOCK, Course.COMES_AND_GOES)]),
        example(behaviours=[seen(Shows.LOW, Course.RECOVERED, since=Since.FIRST_START)]),
    ],
)
def whether_it_passes(known: Known) -> Conclusions:
    """Good pressure comes back by itself, or the loss stays."""
    every = [b for b in shown(known, *WRONG) if b.shows not in (Shows.SLOW, Shows.HIGH)]
    if any(passes(b) and b.since is not Since.FIRST_START for b in every):
        yield is_present(course.LOSS_IS_PASSING, PLAIN)
    elif any(Course.CONSTANT in b.course for b in every):
        yield is_absent(course.LOSS_IS_PASSING, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[heard(Shows.LOW, C.RANDOM)]),
        example(behaviours=[seen(Shows.LOST, Course.NOT_REPRODUCED)]),
        example(behaviours=[seen(Shows.LOW, Course.RETURNS)]),
        example(behaviours=[seen(Shows.LAMP, Course.COMES_AND_GOES)]),
    ],
    non_matches=[
        example(
            behaviours=[
                Behaviour(Shows.LOW, frozenset({C.IDLE}), course=frozenset({Course.COMES_AND_GOES}))
            ]
        ),
        example(behaviours=[heard(Shows.KNOCK, C.RANDOM)]),
    ],
)
def whether_it_follows_a_pattern(known: Known) -> Conclusions:
    """It comes back under the same condition every time, or without any pattern.

    Who says "now and then" and names no condition has most likely found none.
    """
    every = list(shown(known, *WRONG))
    if any(Course.RETURNS in b.course for b in every):
        yield is_present(course.RETURNS_THE_SAME_WAY, PLAIN)
        yield is_absent(course.NO_PATTERN_TO_IT, PLAIN)
    elif any(C.RANDOM in b.during for b in every):
        yield is_present(course.NO_PATTERN_TO_IT, PLAIN)
        yield is_absent(course.RETURNS_THE_SAME_WAY, PLAIN)
    elif any(
        Course.NOT_REPRODUCED in b.course or (Course.COMES_AND_GOES in b.course and not b.during)
        for b in every
    ):
        yield is_present(course.NO_PATTERN_TO_IT, LIKELY)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[seen(Shows.LOW, Course.UNCHANGED)]),
        example(behaviours=[seen(Shows.HIGH, since=Since.ALWAYS)]),
        example(behaviours=[seen(Shows.LOW, Course.WORSENING)]),
        example(behaviours=[seen(Shows.LOW, Course.SPREADING)]),
    ],
    non_matches=[
        example(behaviours=[seen(Shows.LOW)]),
        example(behaviours=[seen(Shows.KNOCK, Course.WORSENING)]),
    ],
)
def whether_it_grows(known: Known) -> Conclusions:
    """The same for years or always, or worse from run to run."""
    every = list(shown(known, *WRONG))
    growing = {Course.WORSENING, Course.SPREADING}
    if any(Course.UNCHANGED in b.course or b.since is Since.ALWAYS for b in every):
        yield is_present(course.LONG_UNCHANGED, PLAIN)
        yield is_absent(course.GROWS_WORSE, PLAIN)
        yield is_absent(patterns.FELL_SUDDENLY, MEANT)
        yield is_absent(patterns.DECLINED_OVER_MONTHS, MEANT)
    elif any(b.course & growing and b.onset is not Onset.GRADUAL for b in every):
        yield is_present(course.GROWS_WORSE, PLAIN)
        yield is_absent(course.LONG_UNCHANGED, PLAIN)
    elif any(b.onset is not None or b.since in (Since.DATE, Since.WORK) for b in every):
        yield is_absent(course.LONG_UNCHANGED, MEANT)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[heard(Shows.KNOCK)]),
        example(behaviours=[heard(Shows.TICKING)]),
        example(behaviours=[heard(Shows.TICKING, C.SPEED, only=True)]),
        example(behaviours=[heard(Shows.GRINDING)]),
        example(behaviours=[heard(Shows.RATTLE, C.START, C.STANDING)]),
    ],
    non_matches=[
        example(behaviours=[heard(Shows.LOW)]),
        example(behaviours=[heard(Shows.TICKING, C.COLD, C.START)]),
    ],
)
def what_is_heard(known: Known) -> Conclusions:
    """Which noise the engine makes, and when."""
    for b in shown(known, *NOISES):
        match b.shows:
            case Shows.KNOCK:
                yield is_present(bearings.BEARING_KNOCK, MEANT)
            case Shows.TICKING if b.during and b.during <= {C.COLD, C.START, C.STANDING}:
                pass  # lifters that bled down while it stood; it says nothing of the pressure
            case Shows.TICKING if b.during & FAST and not b.during & {C.IDLE}:
                yield is_present(topend.CLATTERS_ONLY_AT_HIGH_REVS, PLAIN if b.only else MEANT)
            case Shows.TICKING:
                yield is_present(topend.LIFTERS_CLATTER, PLAIN)
            case Shows.RATTLE if b.during and b.during <= {C.COLD, C.START, C.STANDING}:
                yield is_present(topend.TIMING_COVER_RATTLES, LIKELY)
                if C.STANDING in b.during:  # the chain hangs slack until the oil is there
                    yield is_present(behaviour.SLOW_AFTER_STANDING, LIKELY)
            case Shows.RATTLE:
                yield is_present(bearings.RATTLE_OF_UNKNOWN_PLACE, PLAIN)
            case Shows.WHINE:
                yield is_present(pump.PUMP_NOISE, MEANT)
            case Shows.GRINDING:
                yield is_present(course.GRINDING_NOISE, PLAIN)
            case Shows.SQUEAK:
                yield is_present(course.SQUEAKING_NOISE, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(behaviours=[Behaviour(Shows.GRINDING, with_pressure=True)])],
    non_matches=[
        example(behaviours=[heard(Shows.GRINDING)]),
        example(behaviours=[Behaviour(Shows.LAMP, with_pressure=True)]),
    ],
)
def heard_while_the_pressure_is_gone(known: Known) -> Conclusions:
    """A noise comes with the loss and stops as the pressure returns."""
    if any(b.with_pressure for b in shown(known, *NOISES)):
        yield is_present(course.NOISE_WITH_PRESSURE_LOSS, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[heard(Shows.TRIPS)]),
        example(behaviours=[heard(Shows.LOST_POWER)]),
        example(behaviours=[heard(Shows.SMOKE)]),
    ],
    non_matches=[example(behaviours=[heard(Shows.LOW)]), example(behaviours=[heard(Shows.NORMAL)])],
)
def what_the_engine_does(known: Known) -> Conclusions:
    """It trips, does not start, loses power, runs rough, smokes, or a general alarm comes on."""
    found = {
        Shows.TRIPS: (course.PROTECTION_TRIPPED, PLAIN),
        Shows.ALARM: (course.GENERAL_ALARM, PLAIN),
        Shows.ROUGH: (course.ENGINE_RUNS_ROUGH, PLAIN),
        Shows.NO_START: (course.WILL_NOT_START, PLAIN),
        Shows.LOST_POWER: (bearings.STOPPED_WITH_LOSS_OF_POWER, PLAIN),
        Shows.SMOKE: (findings_heat.BLUE_SMOKE, LIKELY),
    }
    for b in shown(known, *found):
        yield is_present(*found[b.shows])


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[heard(Shows.LOW, C.WET)]),
        example(behaviours=[heard(Shows.LOW, C.CLUTCH)]),
        example(behaviours=[heard(Shows.KNOCK, C.CLUTCH)]),
    ],
    non_matches=[
        example(behaviours=[heard(Shows.LOW, C.BENDS)]),
        example(behaviours=[heard(Shows.KNOCK, C.WET)]),
    ],
)
def in_the_wet_or_with_the_clutch(known: Known) -> Conclusions:
    """It shows in wet weather, or when the clutch is pressed."""
    pressure = list(shown(known, *LOSSES, Shows.UNSTEADY))
    if any(C.WET in b.during for b in pressure):
        yield is_present(course.WORSE_IN_THE_WET, PLAIN)
    if any(C.CLUTCH in b.during for b in (*pressure, *shown(known, *NOISES))):
        yield is_present(course.FALLS_WITH_CLUTCH, PLAIN)
