"""Rules that make a fault of the oil more or less common."""

from knowledge import sources
from knowledge.engines import features
from knowledge.history import findings as history
from knowledge.history import findings_habits
from knowledge.model import Reading, Shift, Station
from knowledge.pressure import behaviour, patterns, patterns_speed
from knowledge.pressure.alarms import broken_limits
from knowledge.pressure.gauge import (
    COUNTS,
    PAST_SETTING,
    is_cold,
    is_hot,
    sure_fallen,
    sure_high,
)
from knowledge.pressure.refuted import running
from knowledge.reports.behaviours import nothing_at_idle
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import Circumstance, Shows
from knowledge.rule_api import Conclusions, Known, example, less_common, more_common, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.oil import (
    causes,
    causes_condition,
    causes_contamination,
    findings,
    findings_heat,
)
from knowledge.stations.relief import quantities as relief_quantities
from knowledge.units import PSI

rule = rules_of(Station.OIL)

#: examples: too little at hot idle, and far below the usual there
LITTLE = Reading(700, 363.0, 4 * PSI)
FALLEN = Reading(700, 363.0, 12 * PSI, usual=40 * PSI)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[features.WATER_COOLED])],
    non_matches=[example(features.WATER_COOLED), example(findings.OIL_MILKY)],
)
def no_coolant_to_leak(known: Known) -> Conclusions:
    """In an engine without coolant, water gets into the oil only from outside."""
    if known.lacks(features.WATER_COOLED):
        yield less_common(causes_contamination.COOLANT_IN_OIL, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[Behaviour(Shows.HIGH, frozenset({Circumstance.COLD}))]),
        example(behaviours=[Behaviour(Shows.HIGH, frozenset({Circumstance.START}))]),
        example(readings=[Reading(1200, 278.15, 80 * PSI)]),
    ],
    non_matches=[
        example(behaviours=[Behaviour(Shows.HIGH)]),
        example(readings=[Reading(1200, 363.15, 80 * PSI)]),
    ],
)
def high_while_the_oil_was_cold(known: Known) -> Conclusions:
    """A high reading with cold oil is mostly just that; without a word of cold it is not."""
    cold = {Circumstance.COLD, Circumstance.START}
    said = any(b.shows is Shows.HIGH and b.during & cold for b in known.behaviours())
    if said or any(is_cold(r) for r in known.readings()) or known.has(findings_heat.OIL_VERY_COLD):
        yield more_common(causes_condition.OIL_COLD_NORMAL)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(behaviours=[Behaviour(Shows.HIGH, frozenset({Circumstance.HOT}))]),
        example(patterns.GAUGE_READS_HIGH, readings=[Reading(700, 363.15, 80 * PSI)]),
    ],
    non_matches=[
        example(behaviours=[Behaviour(Shows.HIGH, frozenset({Circumstance.COLD}))]),
        example(patterns.GAUGE_READS_HIGH, readings=[Reading(1200, 278.15, 80 * PSI)]),
        example(
            patterns.GAUGE_READS_HIGH,
            readings=[Reading(700, 363.15, 20 * PSI), Reading(1200, 278.15, 80 * PSI)],
        ),
    ],
)
def high_while_the_oil_was_hot(known: Known) -> Conclusions:
    """A reading that is high with hot oil is not a cold-oil reading."""
    hot, cold = {Circumstance.HOT}, {Circumstance.COLD, Circumstance.START}
    said = any(
        b.shows is Shows.HIGH and b.during & hot and not b.during & cold for b in known.behaviours()
    )
    setting = known.limit(relief_quantities.USUAL_RELIEF_SETTING)
    read = any(
        is_hot(r) and sure_high(r, PAST_SETTING * setting) >= COUNTS for r in known.readings()
    )
    if said or read:
        yield less_common(causes_condition.OIL_COLD_NORMAL, Shift.STRONG_DOWN)


@rule(
    source=sources.MARINE_OWNERS_MANUAL_2008,
    matches=[example(history.IDLES_LONG)],
    non_matches=[
        example(lacks=[history.IDLES_LONG]),
        example(history.WORKED_HARD),
        example(features.MECHANICAL_LIFT_PUMP),
    ],
)
def long_idling_and_short_cold_trips(known: Known) -> Conclusions:
    """Long idling and short cold trips bring fuel into the oil.

    A lift pump on the block is one way in among several; the cause's rate is that of all of them.
    """
    if known.has(history.IDLES_LONG):
        yield more_common(causes_contamination.FUEL_DILUTION)


@rule(
    source=JUDGEMENT,
    matches=[example(history.SERVICE_NEGLECTED)],
    non_matches=[example(lacks=[history.SERVICE_NEGLECTED])],
)
def neglected_oil(known: Known) -> Conclusions:
    """If oil changes and level checks were neglected, the oil runs low and wears out."""
    if known.has(history.SERVICE_NEGLECTED):
        yield more_common(causes_condition.OIL_DEGRADED)
        yield more_common(causes.OIL_LEVEL_LOW)


@rule(
    source=sources.MARINE_SERVICE_MANUAL_1999,
    matches=[example(history.HOT_AND_THIN), example(history.WORKED_HARD)],
    non_matches=[
        example(lacks=[history.HOT_AND_THIN, history.WORKED_HARD]),
        example(history.STOOD_IN_FROST),
    ],
)
def heat_and_hard_work(known: Known) -> Conclusions:
    """Heat and hard work thin the oil, especially a thin grade."""
    if known.has(history.HOT_AND_THIN):
        yield more_common(causes.VISCOSITY_TOO_LOW)
        yield more_common(causes_condition.OIL_HOT_NORMAL)
    if known.has(history.WORKED_HARD):
        yield more_common(causes_condition.OIL_OVERHEATED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.STOOD_IN_FROST)],
    non_matches=[example(lacks=[history.STOOD_IN_FROST]), example(history.HOT_AND_THIN)],
)
def frost_stiffens_the_oil(known: Known) -> Conclusions:
    """Frost thickens the oil: high readings and thick oil are more common."""
    if known.has(history.STOOD_IN_FROST):
        yield more_common(causes_condition.OIL_COLD_NORMAL)
        yield more_common(causes.VISCOSITY_TOO_HIGH)


@rule(
    source=idea_from(sources.STICK_VERIFICATION_2002),
    matches=[example(history.SUMP_OR_PUMP_SWAPPED), example(features.TILTS)],
    non_matches=[example(lacks=[history.SUMP_OR_PUMP_SWAPPED, features.TILTS])],
)
def changed_sump_or_tilted_engine(known: Known) -> Conclusions:
    """A wrong dipstick reading is likelier after a sump change or in an engine on a slant."""
    if known.has(history.SUMP_OR_PUMP_SWAPPED):
        yield more_common(causes.DIPSTICK_WRONG)
    if known.has(features.TILTS):
        yield more_common(causes.DIPSTICK_WRONG)


@rule(
    source=idea_from(sources.MARINE_SERVICE_MANUAL_1999),
    matches=[
        example(patterns_speed.LOW_AT_ALL_SPEEDS),
        example(patterns_speed.FALLS_AS_REVS_RISE),
        example(patterns.FELL_SUDDENLY),
    ],
    non_matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED),
        example(lacks=[patterns_speed.LOW_AT_ALL_SPEEDS]),
    ],
)
def never_the_way_of_warm_oil(known: Known) -> Conclusions:
    """Low at all speeds or cold, falling with revs, none or lost at once: not just warm oil."""
    for pattern in (
        patterns_speed.LOW_AT_ALL_SPEEDS,
        patterns_speed.LOW_EVEN_COLD,
        patterns_speed.FALLS_AS_REVS_RISE,
        patterns_speed.FLICKERS_ONLY_AT_SPEED,
        patterns.FELL_SUDDENLY,
        patterns.GAUGE_READS_ZERO,
        behaviour.NONE_FROM_FIRST_START,
    ):
        if known.has(pattern):
            yield less_common(causes_condition.OIL_HOT_NORMAL, Shift.STRONG_DOWN)
    if nothing_at_idle(known):
        yield less_common(causes_condition.OIL_HOT_NORMAL, Shift.STRONG_DOWN)


@rule(
    source=sources.DIESEL_WORKSHOP_2015,
    matches=[
        example(patterns.GAUGE_READS_LOW),
        example(patterns.GAUGE_READS_ZERO),
        example(behaviours=[Behaviour(Shows.LOW, frozenset({Circumstance.COLD}))]),
    ],
    non_matches=[
        example(patterns.GAUGE_READS_HIGH),
        example(lacks=[patterns.GAUGE_READS_LOW]),
        example(behaviours=[Behaviour(Shows.HIGH, frozenset({Circumstance.COLD}))]),
    ],
)
def low_is_never_cold_oil(known: Known) -> Conclusions:
    """A low or dead gauge is not a cold-oil reading, however short it was low."""
    reported = any(b.shows in (Shows.LOW, Shows.NONE, Shows.LOST) for b in known.behaviours())
    if reported or known.has(patterns.GAUGE_READS_LOW) or known.has(patterns.GAUGE_READS_ZERO):
        yield less_common(causes_condition.OIL_COLD_NORMAL, Shift.STRONG_DOWN)


@rule(
    source=sources.MARINE_SERVICE_MANUAL_1999,
    matches=[
        example(readings=[LITTLE]),
        example(readings=[FALLEN]),
    ],
    non_matches=[
        example(readings=[Reading(700, 363.0, 12 * PSI)]),
        example(readings=[Reading(700, 363.0, 36 * PSI, usual=40 * PSI)]),
    ],
)
def lower_than_warm_oil_makes_it(known: Known) -> Conclusions:
    """Below the limit at which an engine is stopped, or far below its usual: not just warm oil."""
    if has_fallen(known):
        yield less_common(causes_condition.OIL_HOT_NORMAL, Shift.STRONG_DOWN)
    elif below_the_stop_limit(known):
        yield less_common(causes_condition.OIL_HOT_NORMAL)


@rule(
    source=sources.MARINE_SERVICE_MANUAL_1999,
    matches=[
        example(findings_habits.MAKER_CALLS_IT_NORMAL, readings=[LITTLE]),
        example(findings_habits.MAKER_CALLS_IT_NORMAL, readings=[FALLEN]),
        example(history.OIL_JUST_CHANGED, readings=[FALLEN]),
        example(history.HOT_AND_THIN, readings=[FALLEN]),
    ],
    non_matches=[
        example(readings=[LITTLE]),
        example(findings_habits.MAKER_CALLS_IT_NORMAL),
        example(history.OIL_JUST_CHANGED, readings=[LITTLE]),
    ],
)
def low_as_it_should_be(known: Known) -> Conclusions:
    """The limit is that of most engines: the maker's word comes first, as some idle with less.

    With other or thinner oil in it, the usual pressure is another one.
    """
    fallen = has_fallen(known)
    other_oil = known.has(history.OIL_JUST_CHANGED) or known.has(history.HOT_AND_THIN)
    if known.has(findings_habits.MAKER_CALLS_IT_NORMAL):
        if fallen:
            yield more_common(causes_condition.OIL_HOT_NORMAL, Shift.STRONG_UP)
        elif below_the_stop_limit(known):
            yield more_common(causes_condition.OIL_HOT_NORMAL)
    elif fallen and other_oil:
        yield more_common(causes_condition.OIL_HOT_NORMAL, Shift.STRONG_UP)


def has_fallen(known: Known) -> bool:
    """Whether a reading is surely far below the usual one."""
    return any(sure_fallen(r) > COUNTS for r in running(known))


def below_the_stop_limit(known: Known) -> bool:
    """Whether a reading most likely means less than the limit at which an engine is stopped."""
    shares = [[share for share, _ in broken_limits(known, r)] for r in running(known)]
    return any(sum(each) / len(each) > COUNTS for each in shares)
