"""Rules from reported behaviour to what happens over time: onset, a run, a start, since when."""

from dataclasses import replace

from knowledge.history import findings as history
from knowledge.model import Finding, Station
from knowledge.pressure import behaviour, course, direct_gauge, patterns
from knowledge.reports.behaviours import (
    AT_FIRST,
    FAST,
    LATE,
    LIKELY,
    MANOEUVRES,
    MEANT,
    PLAIN,
    WRONG,
    at_first,
    at_idle_late,
    from_the_start,
    is_momentary,
    losses,
    shown,
    within,
)
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import LOSSES, NOISES, Circumstance, Course, Onset, Shows, Since
from knowledge.rule_api import Conclusions, Known, example, is_absent, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import findings as instrument
from knowledge.stations.oil import findings_heat
from knowledge.stations.pump import findings_drive
from knowledge.stations.relief import findings as relief

rule = rules_of(Station.INSTRUMENT)
C = Circumstance
TEN_SECONDS = 10.0
#: a loss only then leaves pressure at other times
PART_OF_A_RUN = LATE | FAST | {C.HOT, C.IDLE}
#: after these a loss "at the start" is one that has not come right since
NEVER_SINCE = (Since.WORK, Since.OIL_CHANGE, Since.STANDING)

GONE_SOON_AFTER_STANDING = Behaviour(
    Shows.LOW,
    frozenset({C.STANDING}),
    course=frozenset({Course.RECOVERED}),
    since=Since.STANDING,
)
SUDDEN_LOSS = Behaviour(Shows.LOST, onset=Onset.SUDDEN)
LOSS = Behaviour(Shows.LOST)
SLOW_DECLINE = Behaviour(Shows.LOW, onset=Onset.GRADUAL)
NONE_AT_START = Behaviour(Shows.NONE, frozenset({C.START}))
NONE_AT_FIRST_START = replace(NONE_AT_START, just_built=True)
SINKING = Behaviour(Shows.FALLING, onset=Onset.GRADUAL)


def in_one_run(b: Behaviour) -> bool:
    """Whether it came while one watched, not over months."""
    return b.shows is Shows.FALLING or b.lasts is not None or bool(b.during & LATE)


def fails_the_first_start(b: Behaviour) -> bool:
    """Whether there was none at a start soon after a rebuild, and nobody says that it ever came."""
    none = b.shows is Shows.NONE and C.START in b.during and C.STANDING not in b.during
    came = b.lasts is not None or Course.RECOVERED in b.course
    return none and not came and b.since is None and b.just_built


def is_one_event(b: Behaviour) -> bool:
    """Whether it happened once so far: how long the engine had run by then is chance."""
    again = {Course.COMES_AND_GOES, Course.RETURNS, Course.WORSENING, Course.CONSTANT}
    once = b.shows in (Shows.LOST, Shows.NONE) or b.onset is Onset.SUDDEN or Course.ONCE in b.course
    return once and not b.course & again


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[SUDDEN_LOSS]),
        example(behaviours=[Behaviour(Shows.LAMP, onset=Onset.SUDDEN)]),
        example(behaviours=[SLOW_DECLINE]),
    ],
    non_matches=[
        example(behaviours=[LOSS]),
        example(behaviours=[Behaviour(Shows.KNOCK, onset=Onset.SUDDEN)]),
        example(behaviours=[Behaviour(Shows.LOW, onset=Onset.SUDDEN, since=Since.FIRST_START)]),
    ],
)
def how_fast_it_came(known: Known) -> Conclusions:
    """Lost suddenly, sunk within one run, or fallen over months.

    Every pressure falls while the oil warms: that alone is no sinking.
    """
    for b in losses(known):
        if from_the_start(b) or b.onset is None or within(b, AT_FIRST):
            continue
        if b.onset is Onset.SUDDEN:
            yield is_present(patterns.FELL_SUDDENLY, MEANT if b.shows is Shows.LAMP else PLAIN)
            yield is_absent(patterns.DECLINED_OVER_MONTHS, PLAIN)
        elif not in_one_run(b):
            yield is_present(patterns.DECLINED_OVER_MONTHS, PLAIN)
            yield is_absent(patterns.FELL_SUDDENLY, PLAIN)
        else:
            yield is_absent(patterns.FELL_SUDDENLY, MEANT)
            only_warms = C.WARMING in b.during and not b.during & (LATE | FAST)
            if not (b.course - {Course.WORSENING} or b.never or only_warms):
                yield is_present(patterns.SANK_WHILE_RUNNING, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(behaviours=[LOSS])],
    non_matches=[
        example(behaviours=[SUDDEN_LOSS]),
        example(behaviours=[Behaviour(Shows.LOW)]),
        example(behaviours=[Behaviour(Shows.LOST, frozenset({C.BENDS}))]),
    ],
)
def lost_at_an_unknown_speed(known: Known) -> Conclusions:
    """Pressure was there and is gone, and nobody knows how fast it went."""
    for b in shown(known, Shows.LOST):
        if b.onset is None and not from_the_start(b) and not is_momentary(b):
            yield is_present(course.PRESSURE_LOST, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[Behaviour(Shows.LOW, frozenset({C.MINUTES}))]),
        example(behaviours=[Behaviour(Shows.LOW, frozenset({C.LATE, C.HOT}))]),
        example(behaviours=[Behaviour(Shows.LAMP, frozenset({C.IDLE, C.HARD_RUN}))]),
        example(behaviours=[Behaviour(Shows.TRIPS, frozenset({C.MINUTES, C.LOAD}))]),
        example(
            behaviours=[Behaviour(Shows.LOST, frozenset({C.SPEED}), frozenset({C.AFTER_REST}))]
        ),
    ],
    non_matches=[
        example(behaviours=[Behaviour(Shows.LOW, frozenset({C.HOT}))]),
        example(behaviours=[Behaviour(Shows.LOST, frozenset({C.MINUTES}))]),
        example(behaviours=[Behaviour(Shows.KNOCK, frozenset({C.MINUTES}))]),
        example(behaviours=[Behaviour(Shows.LAMP, frozenset({C.HARD_RUN, C.BENDS}))]),
    ],
)
def later_in_a_run(known: Known) -> Conclusions:
    """Right at first and low later in the run, with heat, with speed, or for no stated reason."""
    for b in shown(known, *LOSSES, Shows.UNSTEADY, Shows.TRIPS):
        late = bool(b.during & LATE)
        if C.AFTER_REST in b.never and b.during & (FAST | LATE):
            yield is_present(behaviour.FADES_AT_SPEED_BACK_AFTER_REST, PLAIN)
        elif late and ((b.during & {C.HOT, C.WARMING} and not b.during & FAST) or at_idle_late(b)):
            yield is_present(behaviour.SAGS_AS_OIL_HEATS, MEANT)
        elif late and not is_one_event(b) and not b.during & MANOEUVRES:
            yield is_present(course.GOES_AFTER_MINUTES, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            behaviours=[
                Behaviour(Shows.LOST, frozenset({C.SPEED})),
                Behaviour(Shows.NORMAL, frozenset({C.SLOWING})),
            ]
        ),
        example(
            behaviours=[Behaviour(Shows.FALLING, frozenset({C.SPEED}), frozenset({C.SLOWING}))]
        ),
    ],
    non_matches=[
        example(behaviours=[Behaviour(Shows.LOST, frozenset({C.SPEED}))]),
        example(behaviours=[Behaviour(Shows.NORMAL, frozenset({C.SLOWING}))]),
    ],
)
def back_when_the_engine_slows(known: Known) -> Conclusions:
    """Low at speed, and back when the engine slows to idle."""
    if any(C.SLOWING in b.never for b in shown(known, *LOSSES, Shows.UNSTEADY)):
        yield is_present(course.BACK_WHEN_SLOWED, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[Behaviour(Shows.SLOW)]),
        example(behaviours=[Behaviour(Shows.LAMP, frozenset({C.STANDING}), lasts=12.0)]),
        example(behaviours=[GONE_SOON_AFTER_STANDING]),
        example(behaviours=[Behaviour(Shows.LAMP, frozenset({C.START, C.COLD}), lasts=5.0)]),
    ],
    non_matches=[
        example(behaviours=[Behaviour(Shows.LAMP)]),
        example(behaviours=[Behaviour(Shows.LOW, frozenset({C.START, C.COLD}))]),
        example(behaviours=[Behaviour(Shows.LOW, frozenset({C.START, C.HOT}))]),
        example(behaviours=[Behaviour(Shows.NONE, frozenset({C.START}), since=Since.WORK)]),
        example(behaviours=[NONE_AT_FIRST_START]),
    ],
)
def slow_at_the_start(known: Known) -> Conclusions:
    """Pressure slow to build at a start, and how slow."""
    for b in shown(known, Shows.SLOW, *LOSSES):
        stays = b.since in NEVER_SINCE and Course.RECOVERED not in b.course
        if b.shows is not Shows.SLOW and (not at_first(b) or stays):
            continue
        if b.lasts is not None and b.lasts >= TEN_SECONDS:
            yield is_present(behaviour.TEN_SECONDS_OR_MORE, PLAIN)
        elif b.lasts is not None:
            yield is_absent(behaviour.TEN_SECONDS_OR_MORE, MEANT)
        if not (from_the_start(b) or fails_the_first_start(b)):
            yield is_present(behaviour.SLOW_AFTER_STANDING, PLAIN if b.during else MEANT)
            if Course.WORSENING in b.course:
                yield is_present(instrument.LAMP_SLOW_TO_GO_OUT, PLAIN)
        elif Course.RECOVERED in b.course:
            yield is_present(behaviour.LOW_FIRST_MINUTES_THEN_GOOD, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[Behaviour(Shows.NONE, since=Since.FIRST_START)]),
        example(behaviours=[Behaviour(Shows.LOW, since=Since.FIRST_START)]),
        example(behaviours=[Behaviour(Shows.HIGH, since=Since.FIRST_START)]),
        example(behaviours=[Behaviour(Shows.NONE, frozenset({C.START}), since=Since.STANDING)]),
        example(behaviours=[Behaviour(Shows.NONE, since=Since.WORK)]),
        example(behaviours=[Behaviour(Shows.NONE, since=Since.OIL_CHANGE)]),
        example(behaviours=[Behaviour(Shows.NONE, frozenset({C.HOT}), since=Since.FIRST_START)]),
        example(behaviours=[NONE_AT_FIRST_START]),
    ],
    non_matches=[
        example(behaviours=[NONE_AT_START]),
        example(behaviours=[Behaviour(Shows.LOW, since=Since.WORK)]),
        example(behaviours=[Behaviour(Shows.KNOCK, since=Since.FIRST_START)]),
    ],
)
def since_the_first_start(known: Known) -> Conclusions:
    """Wrong ever since the first start of a build, a swap or an engine new to its owner."""
    for b in shown(known, *LOSSES, Shows.UNSTEADY, Shows.HIGH):
        if not from_the_start(b):
            never_since = b.since in NEVER_SINCE and b.shows is Shows.NONE and C.START in b.during
            if never_since or fails_the_first_start(b):
                yield is_present(behaviour.NONE_FROM_FIRST_START, PLAIN)
            elif b.since in NEVER_SINCE and b.shows is Shows.NONE and not b.during and not b.course:
                yield is_present(behaviour.NONE_FROM_FIRST_START, MEANT)
            continue
        if b.shows is Shows.HIGH:
            yield is_present(relief.HIGH_FROM_FIRST_START, PLAIN)
        elif Course.RECOVERED in b.course:
            yield is_present(behaviour.LOW_FIRST_MINUTES_THEN_GOOD, PLAIN)
        elif b.shows in (Shows.NONE, Shows.LOST) and (
            C.START in b.during or not b.during & PART_OF_A_RUN  # "none after fifteen seconds"
        ):
            yield is_present(behaviour.NONE_FROM_FIRST_START, PLAIN)
        elif b.shows is not Shows.UNSTEADY:
            sure = LIKELY if b.shows is Shows.LAMP else PLAIN
            yield is_present(behaviour.LOW_FROM_FIRST_START, sure)


#: what began it, and the findings that say so
BEGAN: dict[Since, tuple[Finding, ...]] = {
    Since.OIL_CHANGE: (behaviour.CHANGED_WITH_OIL_CHANGE, history.OIL_JUST_CHANGED),
    Since.GRADE: (behaviour.CHANGED_WITH_GRADE,),
    Since.BLOW: (behaviour.CHANGED_AFTER_KNOCK,),
    Since.OVERHEATING: (findings_heat.ENGINE_RAN_HOT,),
    Since.STANDING: (history.STOOD_LONG,),
    Since.FROST: (history.STOOD_IN_FROST,),
    Since.REVVING: (findings_drive.BEGAN_AFTER_REVVING_HARD,),
    Since.NEXT_START: (findings_drive.GONE_AT_THE_NEXT_START,),
}


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[Behaviour(Shows.LOW, since=Since.OIL_CHANGE)]),
        example(behaviours=[Behaviour(Shows.LOST, since=Since.NEXT_START)]),
        example(behaviours=[Behaviour(Shows.KNOCK, since=Since.REVVING)]),
        example(behaviours=[Behaviour(Shows.LOW, since=Since.WORK)]),
    ],
    non_matches=[
        example(behaviours=[Behaviour(Shows.LOW)]),
        example(behaviours=[Behaviour(Shows.LOW, since=Since.FIRST_START)]),
        example(behaviours=[Behaviour(Shows.LOW, since=Since.WORK, work_named=True)]),
    ],
)
def what_it_began_with(known: Known) -> Conclusions:
    """It began with an oil change, another grade, a blow, heat, frost, standing or hard revving."""
    for b in shown(known, *WRONG, *NOISES):
        for finding in BEGAN.get(b.since, ()) if b.since else ():
            yield is_present(finding, PLAIN)
        if b.since is Since.WORK and not b.work_named:
            yield is_present(behaviour.CHANGED_AFTER_OTHER_WORK, PLAIN)
            yield is_present(history.JUST_WORKED_ON, PLAIN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(behaviours=[Behaviour(Shows.LOW, since=Since.DATE)])],
    non_matches=[
        example(behaviours=[Behaviour(Shows.LOW)]),
        example(behaviours=[Behaviour(Shows.LOW, since=Since.WORK)]),
    ],
)
def began_with_nothing_touched(known: Known) -> Conclusions:
    """It began on a day without any work on it: no work on it started it."""
    if any(b.since is Since.DATE for b in shown(known, *WRONG)):
        for finding in (
            behaviour.CHANGED_AFTER_OTHER_WORK,
            behaviour.CHANGED_WITH_OIL_CHANGE,
            behaviour.CHANGED_WITH_NEW_PUMP,
            behaviour.NONE_FROM_FIRST_START,
            behaviour.LOW_FROM_FIRST_START,
        ):
            yield is_absent(finding, MEANT)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(behaviours=[Behaviour(Shows.LOW, frozenset({C.LOW_LEVEL}))])],
    non_matches=[
        example(behaviours=[Behaviour(Shows.LOW)]),
        example(behaviours=[Behaviour(Shows.KNOCK, frozenset({C.LOW_LEVEL}))]),
    ],
)
def with_the_level_down(known: Known) -> Conclusions:
    """It shows when the oil level is down, and not at the right level."""
    for b in shown(known, *LOSSES, Shows.UNSTEADY):
        if C.LOW_LEVEL in b.during:
            sure = PLAIN if b.only else MEANT
            yield is_present(course.LOW_ONLY_WHEN_LEVEL_LOW, sure)
            if b.only:
                yield is_present(direct_gauge.TOP_UP_CURES_FOR_A_WHILE, LIKELY)
