"""Rules on work done before the trouble began: what it makes more or less common.

The multiple of the work likeliest to have brought a cause about counts. It includes what
facts of history ("oil just changed", "freshly rebuilt") do to the cause's rate, so nothing counts
twice.
"""

from collections.abc import Iterator
from itertools import pairwise
from math import log, sqrt
from typing import NamedTuple

from knowledge.engines import features
from knowledge.history import areas, areas_inside, findings
from knowledge.history.fresh_build import just_rebuilt
from knowledge.model import DOWN, OFTEN, SOMETIMES, Finding, Shift, Station
from knowledge.pressure import behaviour
from knowledge.reports.behaviours import LIKELY, MEANT
from knowledge.reports.shapes import Behaviour, EarlierWork, WorkArea
from knowledge.reports.words import Circumstance, Course, Done, Onset, Shows, Since
from knowledge.rule_api import (
    Conclusions,
    Known,
    Multiple,
    Shifted,
    example,
    is_present,
    leads_to,
    less_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.instrument import findings as instrument_findings
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump

rule = rules_of(Station.ASSEMBLY)

HOUR = 3600.0  #: seconds
DAY = 24 * HOUR
YEAR = 365 * DAY

#: seconds between work and trouble, and what work does to the rate of a cause it can bring about
#: (judgement): 8 where the trouble began with it, 4 within days, 2 within months, 1 after years
AGES = ((HOUR, 8.0), (3 * DAY, 4.0), (90 * DAY, 2.0), (3 * YEAR, 1.0))
AGE_UNKNOWN = 3.0  #: somebody thought it worth telling (judgement)
MOST_BESIDE_FINDING = 4.0  #: where a finding says already that it began with the work (judgement)
MAIN_SHARE = 0.75  #: from this share a cause is a usual mistake of the work (judgement)
LATELY = 14 * DAY  #: so long it counts as "just before" (judgement)
#: facts of history that say in fewer words what an entry of earlier work says
SAME_WORK = (
    findings.FRESHLY_REBUILT,
    findings.OIL_JUST_CHANGED,
    findings.SUMP_OR_PUMP_SWAPPED,
    findings.JUST_WORKED_ON,
)
#: facts of history whose absence makes these mistakes rarer for the same reason
SAME_REASON = (findings.OIL_JUST_CHANGED, findings.FRESHLY_REBUILT)
#: pumps that come off without the sump
OUTSIDE_THE_SUMP = (features.PUMP_OUTSIDE, features.PUMP_ON_CAM_NOSE)
#: what work on a pump in the sump may leave wrong beside it
OF_THE_PICKUP = (
    suction_causes.PICKUP_TUBE_LOOSE,
    suction_causes_sump.PICKUP_CLEARANCE_TIGHT,
    suction_causes_sump.PICKUP_CLEARANCE_WIDE,
    suction_causes_sump.FOREIGN_BODY_IN_SUMP,
)
REPLACED = (Done.RENEWED, Done.REBUILT)

#: the finding that says that the trouble began with work there
BEGAN_WITH: dict[WorkArea, tuple[Finding, ...]] = {
    areas.OIL_CHANGE: (behaviour.CHANGED_WITH_OIL_CHANGE,),
    areas.FILTER_CHANGE: (behaviour.CHANGED_WITH_OIL_CHANGE,),
    areas.OIL_PUMP: (behaviour.CHANGED_WITH_NEW_PUMP,),
    areas.INSTRUMENT: (instrument_findings.INSTRUMENT_JUST_CHANGED,),
    areas_inside.WHOLE_ENGINE: (
        behaviour.LOW_FROM_FIRST_START,
        behaviour.NONE_FROM_FIRST_START,
    ),
}
OTHER_WORK = (behaviour.CHANGED_AFTER_OTHER_WORK,)
WITH_THE_WORK = (Since.WORK, Since.FIRST_START)
#: what a rebuilt engine shows since the rebuild, which is since its first start
LOW_SINCE = (Shows.LOW, Shows.LAMP)
AT_THE_START = {Circumstance.START, Circumstance.COLD}


def multiple(before: float | None) -> float:
    """What work ``before`` seconds earlier does to the rate of a cause, 8 down to 1.

    Straight lines over the logarithm of time between ``AGES``.
    """
    if before is None:
        return AGE_UNKNOWN
    if before <= AGES[0][0]:
        return AGES[0][1]
    for (early, more), (late, less) in pairwise(AGES):
        if before <= late:
            share = log(before / early) / log(late / early)
            return float(more * (less / more) ** share)
    return 1.0


class Worked(NamedTuple):
    """One piece of work that was done: its number among all, and its multiple."""

    number: int
    work: EarlierWork
    most: float


def work_of(known: Known) -> Iterator[Worked]:
    """Yield all work that was done, a second time where a finding says that it began with it.

    What is named beside a rebuild, without a date of its own, was done with it.
    """
    with_work = any(b.since in WITH_THE_WORK for b in known.behaviours())
    rebuilt = [w.before for w in known.earlier_work() if _is_rebuild(w) and w.before is not None]
    for number, work in enumerate(known.earlier_work()):
        if work.area is areas.NOTHING:
            continue
        age = work.before
        if age is None:
            age = 0.0 if with_work else min(rebuilt, default=None)
        most = multiple(age)
        yield Worked(number, work, most)
        if any(known.has(f) for f in BEGAN_WITH.get(work.area, OTHER_WORK)):
            yield Worked(number, work, min(most, MOST_BESIDE_FINDING))


def _is_rebuild(work: EarlierWork) -> bool:
    return work.area is areas_inside.WHOLE_ENGINE and work.done is Done.REBUILT


@rule(
    source=JUDGEMENT,
    matches=[
        example(earlier=[EarlierWork(areas.OIL_CHANGE, before=DAY)]),
        example(earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT, 0.0)]),
        example(earlier=[EarlierWork(areas.OIL_PUMP, Done.RENEWED, 2 * DAY)]),
    ],
    non_matches=[
        example(earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT, YEAR)]),
        example(earlier=[EarlierWork(areas.OIL_PUMP, Done.CLEANED, 2 * DAY)]),
        example(),
    ],
)
def work_done_lately(known: Known) -> Conclusions:
    """Work done within the last two weeks is "just before"."""
    for work in known.earlier_work():
        if work.before is None or work.before > LATELY:
            continue
        for fact in work.area.implies:
            if fact is not findings.SUMP_OR_PUMP_SWAPPED or work.done in REPLACED:
                yield is_present(fact)


@rule(
    source=JUDGEMENT,
    matches=[
        example(earlier=[EarlierWork(areas.RELIEF_VALVE, before=0.0)]),
        example(earlier=[EarlierWork(areas_inside.SUMP, before=300 * DAY)]),
        example(
            behaviours=[Behaviour(Shows.LOW, since=Since.WORK)],
            earlier=[EarlierWork(areas_inside.TIMING)],
        ),
    ],
    non_matches=[
        example(earlier=[EarlierWork(areas.RELIEF_VALVE, before=5 * YEAR)]),
        example(earlier=[EarlierWork(areas.NOTHING)]),
        example(),
    ],
)
def worked_on_before_it_began(known: Known) -> Conclusions:
    """Work done just before the trouble comes first; the longer ago, the less it counts."""
    for number, work, most in work_of(known):
        for cause, share in work.area.causes.items():
            if most > 1.0:
                yield Shifted(cause, Multiple(most**share, SAME_WORK, number))


@rule(
    source=JUDGEMENT,
    matches=[
        example(
            behaviour.CHANGED_AFTER_OTHER_WORK, earlier=[EarlierWork(areas.PUMP_DRIVE, before=0.0)]
        ),
    ],
    non_matches=[
        example(behaviour.CHANGED_AFTER_OTHER_WORK),
        example(earlier=[EarlierWork(areas.PUMP_DRIVE, before=0.0)]),
        example(behaviour.CHANGED_AFTER_OTHER_WORK, earlier=[EarlierWork(areas.OIL_CHANGE)]),
    ],
)
def what_the_work_brings_about_begins_with_it(known: Known) -> Conclusions:
    """A cause that the work can bring about shows as soon as the engine runs again."""
    began = known.has(behaviour.CHANGED_AFTER_OTHER_WORK)
    for work in known.earlier_work() if began else ():
        if work.area is not areas.NOTHING and work.area not in BEGAN_WITH:
            for cause, share in work.area.causes.items():
                strength = OFTEN if share >= MAIN_SHARE else SOMETIMES
                yield leads_to(cause, behaviour.CHANGED_AFTER_OTHER_WORK, strength, JUDGEMENT)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            behaviours=[Behaviour(Shows.LOW, since=Since.WORK)],
            earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT)],
        ),
    ],
    non_matches=[
        example(
            behaviours=[Behaviour(Shows.LOW)],
            earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT)],
        ),
        example(
            behaviours=[Behaviour(Shows.LOW, since=Since.WORK)],
            earlier=[EarlierWork(areas_inside.TIMING, Done.REBUILT)],
        ),
        example(
            behaviours=[
                Behaviour(Shows.LOW, since=Since.WORK, course=frozenset({Course.WORSENING}))
            ],
            earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT)],
        ),
    ],
)
def since_the_rebuild_is_since_its_first_start(known: Known) -> Conclusions:
    """Low ever since the engine was rebuilt: low from the first start, unless it got worse."""
    low = any(
        b.since is Since.WORK and b.shows in LOW_SINCE and not b.course for b in known.behaviours()
    )
    for work in known.earlier_work() if low else ():
        if _is_rebuild(work):
            yield is_present(behaviour.LOW_FROM_FIRST_START, LIKELY)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            findings.FRESHLY_REBUILT,
            behaviours=[Behaviour(Shows.NONE)],
            earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT)],
        ),
        example(
            behaviours=[Behaviour(Shows.NONE)],
            earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT, before=0.0)],
        ),
    ],
    non_matches=[
        example(
            behaviours=[Behaviour(Shows.NONE, frozenset({Circumstance.HOT}))],
            earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT, before=0.0)],
        ),
        example(
            behaviours=[Behaviour(Shows.NONE, onset=Onset.SUDDEN)],
            earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT, before=0.0)],
        ),
        example(
            behaviours=[Behaviour(Shows.NONE)],
            earlier=[EarlierWork(areas_inside.WHOLE_ENGINE, Done.REBUILT, before=7 * DAY)],
        ),
        example(behaviours=[Behaviour(Shows.NONE)]),
    ],
)
def none_of_a_fresh_build_is_none_since_its_first_start(known: Known) -> Conclusions:
    """No pressure, of an engine just rebuilt and with no more said: it never had any."""
    none = any(
        b.shows is Shows.NONE and not (b.since or b.course or b.onset or b.during - AT_THE_START)
        for b in known.behaviours()
    )
    for work in known.earlier_work() if none else ():
        fresh = known.has(findings.FRESHLY_REBUILT) if work.before is None else just_rebuilt(work)
        if work.area is areas_inside.WHOLE_ENGINE and fresh:
            yield is_present(behaviour.NONE_FROM_FIRST_START, MEANT)


@rule(
    source=JUDGEMENT,
    matches=[
        example(earlier=[EarlierWork(areas.OIL_PUMP, Done.RENEWED, 20 * DAY)]),
        example(earlier=[EarlierWork(areas_inside.BEARINGS, Done.RENEWED, 300 * DAY)]),
    ],
    non_matches=[
        example(earlier=[EarlierWork(areas.OIL_PUMP, Done.REFITTED, 20 * DAY)]),
        example(earlier=[EarlierWork(areas.OIL_PUMP, Done.RENEWED, 5 * YEAR)]),
        example(),
    ],
)
def renewed_is_not_yet_worn(known: Known) -> Conclusions:
    """A part renewed lately is not yet worn out or blocked."""
    for number, work, most in work_of(known):
        for cause in work.area.renews if work.done in REPLACED else ():
            if most > 1.0:
                yield Shifted(cause, Multiple(1.0 / sqrt(most), SAME_WORK, number))


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features.PUMP_ON_CAM_NOSE, earlier=[EarlierWork(areas.OIL_PUMP)]),
        example(features.PUMP_OUTSIDE, earlier=[EarlierWork(areas.OIL_PUMP, Done.RENEWED)]),
    ],
    non_matches=[
        example(features.PUMP_ON_SKEW_GEAR, earlier=[EarlierWork(areas.OIL_PUMP)]),
        example(features.PUMP_ON_CAM_NOSE, earlier=[EarlierWork(areas.OIL_CHANGE)]),
        example(features.PUMP_ON_CAM_NOSE),
    ],
)
def pump_work_away_from_the_pickup(known: Known) -> Conclusions:
    """A pump that comes off from outside is renewed without touching the pickup in the sump."""
    pump = any(work.area is areas.OIL_PUMP for work in known.earlier_work())
    if pump and any(map(known.has, OUTSIDE_THE_SUMP)):
        for cause in OF_THE_PICKUP:
            yield less_common(cause, Shift.STRONG_DOWN)


@rule(
    source=JUDGEMENT,
    matches=[example(earlier=[EarlierWork(areas.NOTHING)])],
    non_matches=[example(earlier=[EarlierWork(areas.OIL_CHANGE)]), example()],
)
def nobody_had_touched_it(known: Known) -> Conclusions:
    """If nobody had touched the engine, mistakes of assembly and of an oil change are rarer."""
    if any(work.area is areas.NOTHING for work in known.earlier_work()):
        for cause in areas.NOTHING.causes:
            yield Shifted(cause, Multiple(DOWN.value, SAME_REASON))
