"""Rules on several gauge readings together: with speed, and from cold to hot."""

from itertools import permutations

from knowledge import sources
from knowledge.model import Reading, Station
from knowledge.pressure import patterns_speed, quantities
from knowledge.pressure.gauge import (
    NEAR_SETTING,
    PAST_SETTING,
    SAY_SO,
    SPEED,
    at_pump,
    at_speed,
    idles,
    if_clear,
    is_cold,
    is_hot,
    runs,
    same_gauge,
    same_heat,
    same_moment,
    sure_above,
    sure_below,
    sure_lower,
    wanted_cold,
    wanted_hot,
)
from knowledge.rule_api import Conclusions, Known, example, is_absent, is_present, rules_of
from knowledge.sources import PHYSICS
from knowledge.stations.instrument import quantities as instrument_quantities
from knowledge.stations.relief import quantities as relief_quantities
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)


def running(known: Known) -> list[Reading]:
    """Gallery readings of the running engine; no panel gauge that a direct gauge contradicts."""
    every = [r for r in known.readings() if runs(r) and not at_pump(r)]
    direct = [r for r in every if r.gauge == "direct"]
    belied = any(
        abs(p.pressure - d.pressure) > known.limit(instrument_quantities.MOST_PANEL_ERROR)
        for p in every
        for d in direct
        if p.gauge == "panel" and same_moment(p, d)
    )
    return direct if belied else every


def hot_idle(known: Known) -> list[float]:
    """How sure it is that each hot idle reading is below this engine's figure."""
    idle, limit = (
        known.limit(quantities.USUAL_IDLE_SPEED),
        known.limit(quantities.HOT_IDLE_PRESSURE),
    )
    return [sure_below(r, limit) for r in running(known) if is_hot(r) and idles(r, idle)]


def low_hot(known: Known, reading: Reading) -> float:
    """How sure it is that a hot reading is below what is wanted at its speed."""
    figures = (
        known.limit(quantities.HOT_IDLE_PRESSURE),
        known.limit(relief_quantities.USUAL_RELIEF_SETTING),
    )
    return sure_below(reading, wanted_hot(reading.rpm, *figures))


def low_cold(known: Known, reading: Reading) -> float:
    """How sure it is that a cold reading is below what cold oil should give."""
    figures = (
        known.limit(quantities.HOT_IDLE_PRESSURE),
        known.limit(relief_quantities.USUAL_RELIEF_SETTING),
    )
    return sure_below(reading, wanted_cold(reading.rpm, *figures))


def hot_at_speed(known: Known) -> list[float]:
    """How sure it is that each hot reading at speed is low."""
    return [low_hot(known, r) for r in running(known) if is_hot(r) and at_speed(r)]


def all_cold(known: Known) -> list[float]:
    """How sure it is that each cold reading is low."""
    return [low_cold(known, r) for r in running(known) if is_cold(r)]


def seen(psi: float, rpm: float, celsius: float = 90.0) -> Reading:
    """An example, on a direct gauge."""
    return Reading(rpm, celsius + 273.15, psi * PSI, "direct")


@rule(
    source=sources.TRACTOR_WORKSHOP_MANUAL,
    matches=[
        example(readings=[seen(5, 700), seen(45, 3000)]),
        example(readings=[seen(20, 700), seen(45, 3000)]),
    ],
    non_matches=[
        example(readings=[seen(5, 700)]),
        example(readings=[seen(10, 700), seen(45, 3000)]),
    ],
)
def low_idling_and_good_at_speed(known: Known) -> Conclusions:
    """Hot idle below its figure while speed gets 10 psi for each 1000 rpm."""
    idle, speed = hot_idle(known), hot_at_speed(known)
    if idle and speed:
        yield from if_clear(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, max(idle) * (1.0 - max(speed)))


@rule(
    source=sources.DIESEL_WORKSHOP_2015,
    matches=[example(readings=[seen(4, 650), seen(20, 1100)])],
    non_matches=[
        example(readings=[seen(4, 650)]),
        example(readings=[seen(4, 650), seen(45, 3000)]),
    ],
)
def right_again_just_off_idle(known: Known) -> Conclusions:
    """Low at hot idle and right again with a few hundred revs more."""
    idle = hot_idle(known)
    above = known.limit(quantities.USUAL_IDLE_SPEED) * 1.2
    off_idle = [low_hot(known, r) for r in running(known) if is_hot(r) and above < r.rpm < SPEED]
    if idle and off_idle:
        yield from if_clear(patterns_speed.RISES_JUST_OFF_IDLE, max(idle) * (1.0 - min(off_idle)))


@rule(
    source=sources.MARINE_SERVICE_MANUAL_1999,
    matches=[
        example(readings=[seen(50, 1000, 20), seen(5, 700)]),
        example(readings=[seen(8, 1000, 20), seen(5, 700)]),
    ],
    non_matches=[example(readings=[seen(5, 700)]), example(readings=[seen(50, 1000, 20)])],
)
def right_cold_and_low_hot(known: Known) -> Conclusions:
    """Right with cold oil and low with hot oil."""
    cold = all_cold(known)
    hot = [low_hot(known, r) for r in running(known) if is_hot(r)]
    if cold and hot:
        yield from if_clear(patterns_speed.GOOD_COLD_LOW_HOT, (1.0 - max(cold)) * max(hot))


@rule(
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    matches=[example(readings=[seen(10, 1000, 20)]), example(readings=[seen(50, 1000, 20)])],
    non_matches=[example(readings=[seen(20, 1000, 20)]), example(readings=[seen(10, 1000)])],
)
def low_with_cold_oil(known: Known) -> Conclusions:
    """Cold oil should lift even an idling engine well above its hot idle figure."""
    cold = all_cold(known)
    if cold:
        yield from if_clear(patterns_speed.LOW_EVEN_COLD, max(cold))


@rule(
    source=sources.DIESEL_TESTING_MANUAL,
    matches=[
        example(readings=[seen(8, 1000, 20), seen(4, 700), seen(12, 3000)]),
        example(readings=[seen(4, 700), seen(45, 3000)]),
    ],
    non_matches=[
        example(readings=[seen(4, 700), seen(12, 3000)]),
        example(readings=[seen(4, 700)]),
    ],
)
def low_wherever_one_looks(known: Known) -> Conclusions:
    """Low at hot idle, low at speed and low cold is low everywhere; one good reading says no."""
    idle, speed, cold = hot_idle(known), hot_at_speed(known), all_cold(known)
    looks = (*idle, *speed, *cold)
    if idle and speed and cold:
        yield from if_clear(patterns_speed.LOW_AT_ALL_SPEEDS, min(looks))
    elif looks and min(looks) <= 1.0 - SAY_SO:
        yield is_absent(patterns_speed.LOW_AT_ALL_SPEEDS, 1.0 - min(looks))


@rule(
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    matches=[
        example(readings=[seen(28, 2000), seen(29, 3500)]),
        example(readings=[seen(30, 2000), seen(55, 3500)]),
    ],
    non_matches=[
        example(readings=[seen(20, 2000), seen(32, 3500)]),
        example(readings=[seen(1, 2000), seen(1, 3500)]),
    ],
)
def flat_below_the_setting(known: Known) -> Conclusions:
    """The same low pressure at two speeds well apart is a ceiling; reaching the setting is not."""
    setting, floor = (
        known.limit(relief_quantities.USUAL_RELIEF_SETTING),
        1.5 * known.limit(quantities.HOT_IDLE_PRESSURE),
    )
    fast = [r for r in running(known) if at_speed(r)]
    reached = [sure_above(r, NEAR_SETTING * setting) for r in fast]
    if reached and max(reached) >= SAY_SO:
        yield is_absent(patterns_speed.CAPPED_LOW, max(reached))
    flat = [
        sure_below(b, NEAR_SETTING * setting) * (1.0 - sure_lower(a, b, 4 * PSI))
        for a, b in permutations(fast, 2)
        if same_gauge(a, b)
        and same_heat(a, b)
        and b.rpm - a.rpm >= 800.0
        and a.pressure >= floor
        and b.pressure >= a.pressure - 3 * PSI
    ]
    if flat and max(flat) >= SAY_SO and max(reached) < SAY_SO:
        yield is_present(patterns_speed.CAPPED_LOW, max(flat))


@rule(
    source=PHYSICS,
    matches=[
        example(readings=[seen(90, 2500, 20)]),
        example(readings=[seen(55, 2500, 20)]),
    ],
    non_matches=[example(readings=[seen(71, 2500, 20)]), example(readings=[seen(55, 900, 20)])],
)
def past_the_setting_when_cold(known: Known) -> Conclusions:
    """Cold oil at speed may stand a little over the relief setting, not far past it.

    The factor 1.3 is judgement.
    """
    limit = PAST_SETTING * known.limit(relief_quantities.USUAL_RELIEF_SETTING)
    past = [sure_above(r, limit) for r in running(known) if is_cold(r) and at_speed(r)]
    if past:
        yield from if_clear(patterns_speed.CLIMBS_PAST_SETTING, max(past))


@rule(
    source=sources.PUMP_MAKER_PRESSURE_FLOW,
    matches=[
        example(readings=[seen(30, 2500, 20)]),
        example(readings=[seen(56, 2500, 20)]),
    ],
    non_matches=[example(readings=[seen(30, 1000, 20)]), example(readings=[seen(30, 2500)])],
)
def short_of_the_setting_when_cold(known: Known) -> Conclusions:
    """Cold oil at 2300 rpm or more should reach the relief setting."""
    setting = NEAR_SETTING * known.limit(relief_quantities.USUAL_RELIEF_SETTING)
    fast = [r for r in running(known) if is_cold(r) and r.rpm >= 2300.0]
    if fast:
        yield from if_clear(
            patterns_speed.NEVER_REACHES_SETTING_COLD, min(sure_below(r, setting) for r in fast)
        )


@rule(
    source=PHYSICS,
    matches=[
        example(readings=[seen(40, 2000), seen(22, 4000)]),
        example(readings=[seen(15, 700), seen(40, 2000), seen(50, 4000)]),
    ],
    non_matches=[
        example(readings=[seen(40, 2000)]),
        example(readings=[seen(40, 2000, 20), seen(22, 4000, 95)]),
    ],
)
def less_at_more_revs(known: Known) -> Conclusions:
    """Less pressure at more revs, oil equally hot: the pump is not filling."""
    drops = [
        sure_lower(fast, slow, 3 * PSI)
        for slow, fast in permutations(running(known), 2)
        if same_gauge(slow, fast) and same_heat(slow, fast) and fast.rpm - slow.rpm >= 400.0
    ]
    if drops and max(drops) >= SAY_SO:
        yield is_present(patterns_speed.FALLS_AS_REVS_RISE, max(drops))
    elif drops and max(r.rpm for r in running(known)) >= 2500.0 and max(drops) <= 1.0 - SAY_SO:
        yield is_absent(patterns_speed.FALLS_AS_REVS_RISE, 1.0 - max(drops))


@rule(
    source=sources.DIESEL_WORKSHOP_2015,
    matches=[example(readings=[seen(25, 700)])],
    non_matches=[example(readings=[seen(10, 700)]), example(readings=[seen(45, 3000)])],
)
def right_at_idle_has_nothing_to_recover(known: Known) -> Conclusions:
    """An engine within its figure at hot idle has nothing to make good off idle."""
    idle = hot_idle(known)
    if idle and max(idle) <= 1.0 - SAY_SO:
        yield is_absent(patterns_speed.RISES_JUST_OFF_IDLE, 1.0 - max(idle))
