"""Rules on several gauge readings together: with speed, and from cold to hot."""

from collections.abc import Iterator
from itertools import permutations, product
from typing import Any

from knowledge import sources
from knowledge.model import Gauge, Reading, Station
from knowledge.pressure import patterns_speed, quantities
from knowledge.pressure.gauge import (
    COUNTS,
    NEAR_SETTING,
    PAST_SETTING,
    REACHED_COLD,
    SAY_SO,
    at_pump,
    at_speed,
    cold_share,
    counted,
    faster_share,
    hot_share,
    idle_share,
    idles,
    if_clear,
    is_bound,
    is_cold,
    is_hot,
    moments,
    runs,
    same_gauge,
    same_heat,
    same_moment,
    speed_share,
    sure_above,
    sure_below,
    sure_high,
    sure_low,
    sure_lower,
    wanted_cold,
    wanted_hot,
)
from knowledge.pressure.own_figures import relief_setting
from knowledge.rule_api import Conclusions, Known, example, is_absent, is_present, rules_of
from knowledge.sources import JUDGEMENT, PHYSICS, idea_from
from knowledge.stations.instrument import quantities as instrument_quantities
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)
LITTLE_MORE = 0.5  #: of the rise in proportion to speed (judgement)
CEILING = 0.8  #: how far "never above" a figure is taken for a ceiling (judgement)


def running(known: Known) -> list[Reading]:
    """Gallery readings of the running engine; no panel gauge that a direct gauge contradicts.

    A report of any speed, or of hot and cold, stands for several readings.
    """
    idle = known.limit(quantities.USUAL_IDLE_SPEED)
    gallery = [r for r in known.readings() if runs(r) and not at_pump(r)]
    every = [m for r in gallery for m in moments(r, idle)]
    direct = [r for r in every if r.gauge is Gauge.DIRECT]
    belied = any(
        abs(p.pressure - d.pressure) > known.limit(instrument_quantities.MOST_PANEL_ERROR)
        for p in every
        for d in direct
        if p.gauge is Gauge.PANEL and same_moment(p, d) and not (is_bound(p) or is_bound(d))
    )
    return direct if belied else every


def hot_idle(known: Known) -> list[float]:
    """How sure it is that each hot idle reading is below this engine's figure."""
    idle, limit = (
        known.limit(quantities.USUAL_IDLE_SPEED),
        known.limit(quantities.HOT_IDLE_PRESSURE),
    )
    return [
        counted(sure_low(r, lambda _: limit), hot_share(r) * idle_share(r, idle))
        for r in running(known)
        if is_hot(r) and idles(r, idle)
    ]


def low_hot(known: Known, reading: Reading) -> float:
    """How sure it is that a hot reading is below what is wanted at its speed."""
    figures = (
        known.limit(quantities.HOT_IDLE_PRESSURE),
        relief_setting(known),
    )
    running = known.limit(quantities.HOT_RUNNING_PRESSURE)
    sure = sure_low(reading, lambda r: wanted_hot(r.rpm, *figures, running))
    return counted(sure, hot_share(reading))


def low_cold(known: Known, reading: Reading) -> float:
    """How sure it is that a cold reading is below what cold oil should give."""
    figures = (
        known.limit(quantities.HOT_IDLE_PRESSURE),
        relief_setting(known),
    )
    sure = sure_low(reading, lambda r: wanted_cold(r.rpm, *figures))
    return counted(sure, cold_share(reading))


def hot_at_speed(known: Known) -> list[float]:
    """How sure it is that each hot reading at speed is low."""
    return [
        counted(low_hot(known, r), speed_share(r))
        for r in running(known)
        if is_hot(r) and at_speed(r)
    ]


def all_cold(known: Known) -> list[float]:
    """How sure it is that each cold reading is low."""
    return [low_cold(known, r) for r in running(known) if is_cold(r)]


def off_idle_share(known: Known, reading: Reading) -> float:
    """Probability that a reading was taken above idle and below what counts as at speed."""
    idle = idle_share(reading, known.limit(quantities.USUAL_IDLE_SPEED))
    return max(1.0 - idle - speed_share(reading), 0.0)


def words(psi: float, rpm: float, spread: float, celsius: float, **more: Any) -> Reading:
    """An example in words: a panel gauge, a speed with its spread, oil within 8 K."""
    heat = celsius + 273.15
    return Reading(rpm, heat, psi * PSI, rpm_spread=spread, oil_spread=8.0, **more)


def seen(psi: float, rpm: float, celsius: float = 90.0) -> Reading:
    """An example, on a direct gauge."""
    return Reading(rpm, celsius + 273.15, psi * PSI, Gauge.DIRECT)


@rule(
    source=idea_from(sources.TRACTOR_WORKSHOP_MANUAL),
    matches=[
        example(readings=[seen(5, 700), seen(45, 3000)]),
        example(readings=[seen(20, 700), seen(45, 3000)]),
        example(readings=[words(5, 700, 60, 92), words(45, 2475, 440, 92)]),
    ],
    non_matches=[
        example(readings=[seen(5, 700)]),
        example(readings=[seen(10, 700), seen(45, 3000)]),
    ],
)
def low_idling_and_good_at_speed(known: Known) -> Conclusions:
    """Hot idle below its figure, while speed has its 10 psi for each 1000 rpm."""
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
    off_idle = [
        counted(low_hot(known, r), share)
        for r in running(known)
        if is_hot(r) and (share := off_idle_share(known, r)) >= COUNTS
    ]
    if idle and off_idle:
        yield from if_clear(patterns_speed.RISES_JUST_OFF_IDLE, max(idle) * (1.0 - min(off_idle)))


@rule(
    source=sources.MARINE_SERVICE_MANUAL_1999,
    matches=[
        example(readings=[seen(50, 1000, 20), seen(5, 700)]),
        example(readings=[seen(8, 1000, 20), seen(5, 700)]),
        example(readings=[words(60, 1150, 350, 20), words(5, 700, 60, 92)]),
    ],
    non_matches=[
        example(readings=[Reading(1150, None, 60 * PSI), words(5, 700, 60, 92)]),
        example(readings=[seen(5, 700)]),
        example(readings=[seen(50, 1000, 20)]),
    ],
)
def right_cold_and_low_hot(known: Known) -> Conclusions:
    """Right with cold oil and low with hot oil."""
    cold = all_cold(known)
    hot = [low_hot(known, r) for r in running(known) if is_hot(r)]
    if cold and hot:
        yield from if_clear(patterns_speed.GOOD_COLD_LOW_HOT, (1.0 - max(cold)) * max(hot))


@rule(
    source=JUDGEMENT,
    matches=[example(readings=[seen(10, 1000, 20)]), example(readings=[seen(50, 1000, 20)])],
    non_matches=[example(readings=[seen(20, 1000, 20)]), example(readings=[seen(10, 1000)])],
)
def low_with_cold_oil(known: Known) -> Conclusions:
    """Cold oil should lift even an idling engine well above its hot idle figure."""
    cold = all_cold(known)
    if cold:
        yield from if_clear(patterns_speed.LOW_EVEN_COLD, max(cold))


@rule(
    source=JUDGEMENT,
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
    """Low at hot idle, at speed and cold means low everywhere; one good reading rules that out."""
    idle, speed, cold = hot_idle(known), hot_at_speed(known), all_cold(known)
    looks = (*idle, *speed, *cold)
    if idle and speed and cold:
        yield from if_clear(patterns_speed.LOW_AT_ALL_SPEEDS, min(looks))
    elif looks and min(looks) <= 1.0 - SAY_SO:
        yield is_absent(patterns_speed.LOW_AT_ALL_SPEEDS, 1.0 - min(looks))


@rule(
    source=idea_from(sources.PUMP_MAKER_PRESSURE_FLOW),
    matches=[
        example(readings=[seen(28, 2000), seen(29, 3500)]),
        example(readings=[words(25, 2475, 1100, 90, at_most=True, at_all_speeds=True)]),
        example(readings=[seen(30, 2000), seen(55, 3500)]),
        example(readings=[seen(17, 800), seen(25, 3000)]),
    ],
    non_matches=[
        example(readings=[seen(20, 2000), seen(32, 3500)]),
        example(readings=[words(5, 2475, 1100, 90, at_most=True, at_all_speeds=True)]),
        example(readings=[seen(1, 2000), seen(1, 3500)]),
        example(readings=[seen(8, 800), seen(25, 3000)]),
    ],
)
def flat_below_the_setting(known: Known) -> Conclusions:
    """The same low pressure at two speeds well apart is a ceiling; the relief setting is not.

    So is a pressure "never above" a figure at any speed, less surely: low everywhere keeps under it
    too. So is a good idle with little more at speed: through a leak, pressure would rise with the
    speed of the pump.
    """
    setting, floor = (
        relief_setting(known),
        1.5 * known.limit(quantities.HOT_IDLE_PRESSURE),
    )
    fast = [r for r in running(known) if at_speed(r)]
    reached = [counted(sure_above(r, NEAR_SETTING * setting), speed_share(r)) for r in fast]
    ceilings = [
        counted(sure_below(r, NEAR_SETTING * setting), CEILING)
        for r in known.readings()
        if r.at_all_speeds and r.at_most and r.pressure >= floor and not at_pump(r)
    ]
    if reached and max(reached) >= SAY_SO:
        yield is_absent(patterns_speed.CAPPED_LOW, max(reached))
    flat = [
        counted(
            sure_below(b, NEAR_SETTING * setting) * (1.0 - sure_lower(a, b, 4 * PSI)),
            faster_share(b, a, 800.0) * speed_share(a),
        )
        for a, b in permutations(fast, 2)
        if same_gauge(a, b)
        and same_heat(a, b)
        and faster_share(b, a, 800.0) >= COUNTS
        and a.pressure >= floor
        and b.pressure >= a.pressure - 3 * PSI
        and not (is_bound(a) or is_bound(b))
    ]
    flat += [*ceilings, *_little_more_than_at_idle(known, fast, NEAR_SETTING * setting)]
    if flat and max(flat) >= SAY_SO and max(reached, default=0.0) < SAY_SO:
        yield is_present(patterns_speed.CAPPED_LOW, max(flat))


def _little_more_than_at_idle(known: Known, fast: list[Reading], setting: float) -> Iterator[float]:
    """How sure it is that each pressure at speed is one that a good hot idle hardly rises to.

    Colder oil at speed would only show more.
    """
    idle, wanted = (
        known.limit(quantities.USUAL_IDLE_SPEED),
        known.limit(quantities.HOT_IDLE_PRESSURE),
    )
    for a, b in product(running(known), fast):
        if not (idles(a, idle) and is_hot(a) and same_gauge(a, b)):
            continue
        if a.pressure >= wanted and b.pressure * a.rpm < LITTLE_MORE * a.pressure * b.rpm:
            good = sure_above(a, wanted) * idle_share(a, idle)
            low = sure_below(b, setting) * speed_share(b)
            if not (is_bound(a) or is_bound(b)):
                yield counted(min(good, low), CEILING)


@rule(
    source=PHYSICS,
    matches=[
        example(readings=[seen(90, 2500, 20)]),
        example(readings=[seen(55, 2500, 20)]),
    ],
    non_matches=[example(readings=[seen(71, 2500, 20)]), example(readings=[seen(55, 900, 20)])],
)
def past_the_setting_when_cold(known: Known) -> Conclusions:
    """Cold oil at speed may go a little over the relief setting, not far past it.

    The factor 1.3 is judgement.
    """
    limit = PAST_SETTING * relief_setting(known)
    past = [
        counted(sure_high(r, limit), cold_share(r) * speed_share(r))
        for r in running(known)
        if is_cold(r) and at_speed(r)
    ]
    if past:
        yield from if_clear(patterns_speed.CLIMBS_PAST_SETTING, max(past))


@rule(
    source=idea_from(sources.PUMP_MAKER_PRESSURE_FLOW),
    matches=[
        example(readings=[seen(30, 2500, 20)]),
        example(readings=[seen(56, 2500, 20)]),
    ],
    non_matches=[example(readings=[seen(30, 1000, 20)]), example(readings=[seen(30, 2500)])],
)
def short_of_the_setting_when_cold(known: Known) -> Conclusions:
    """Cold oil at 2300 rpm or more should reach the relief setting."""
    setting = REACHED_COLD * relief_setting(known)
    short = [
        counted(sure_below(r, setting), cold_share(r) * share)
        for r in running(known)
        if is_cold(r) and (share := speed_share(r, 2300.0)) >= COUNTS
    ]
    if short:
        yield from if_clear(patterns_speed.NEVER_REACHES_SETTING_COLD, min(short))


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
    """Lower pressure at higher revs, oil equally hot: the pump is not filling."""
    drops = [
        counted(sure_lower(fast, slow, 3 * PSI), share)
        for slow, fast in permutations(running(known), 2)
        if same_gauge(slow, fast)
        and same_heat(slow, fast)
        and (share := faster_share(fast, slow, 400.0)) >= COUNTS
    ]
    if drops and max(drops) >= SAY_SO:
        yield is_present(patterns_speed.FALLS_AS_REVS_RISE, max(drops))
    elif drops and max(r.rpm for r in running(known)) >= 2500.0 and max(drops) <= 1.0 - SAY_SO:
        yield is_absent(patterns_speed.FALLS_AS_REVS_RISE, 1.0 - max(drops))


@rule(
    source=JUDGEMENT,
    matches=[example(readings=[seen(25, 700)])],
    non_matches=[example(readings=[seen(10, 700)]), example(readings=[seen(45, 3000)])],
)
def right_at_idle_has_nothing_to_recover(known: Known) -> Conclusions:
    """An engine within its figure at hot idle cannot come right off idle."""
    idle = hot_idle(known)
    if idle and max(idle) <= 1.0 - SAY_SO:
        yield is_absent(patterns_speed.RISES_JUST_OFF_IDLE, 1.0 - max(idle))
