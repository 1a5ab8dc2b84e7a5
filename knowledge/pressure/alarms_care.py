"""Alarms on low pressure that is real, or not yet proved: what must not be run on, and what only for a reading."""

from dataclasses import replace

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.engines import features
from knowledge.model import Gauge, Reading, Severity, Station
from knowledge.pressure import course, direct_gauge, patterns, quantities
from knowledge.pressure.alarms import broken_limits, looked, psi, seen
from knowledge.pressure.gauge import (
    COUNTS,
    NEAR_SETTING,
    PSI_PER_1000,
    idle_share,
    is_cold,
    is_hot,
    possible,
    wanted_cold,
)
from knowledge.pressure.refuted import (
    FAST,
    is_refuted,
    lamp_at_one_speed,
    lamp_is_refuted,
    running,
    runs_on_less,
    share_below,
    stop_limit,
    zero_is_refuted,
)
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.relief import quantities as relief_quantities
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)

IDLES_BELOW = 1100.0  #: rpm: a reading below this is one at idle (judgement)
LIKELY_BELOW = 0.5  #: of what a reading may mean
HIGH_REVS = 2500.0  #: rpm: from here on the limit at 2000 rpm says too little (judgement)
FAR_SHORT = 2 / 3  #: of what the revs need (judgement)
AS_USUAL = 0.85  #: of its usual pressure: as it always was (judgement)
HALF = 0.5  #: of the usual pressure: the limit of a fall


def _trusted(pressure: float, rpm: float, celsius: float = 90.0) -> Reading:
    """An example."""
    return replace(seen(pressure, rpm, celsius), gauge=Gauge.DIRECT)


@rule(
    source=JUDGEMENT,
    matches=[
        example(patterns.GAUGE_READS_ZERO, readings=[seen(0, 700), _trusted(30, 700)]),
        example(patterns.LAMP_COMES_ON, readings=[_trusted(30, 700)]),
        example(patterns.LAMP_COMES_ON, features.STATIONARY, readings=[_trusted(60, 1800)]),
        example(
            patterns.LAMP_COMES_ON,
            readings=[replace(_trusted(45, 1500), rpm_spread=600.0, oil_spread=9.0)],
        ),
    ],
    non_matches=[
        example(patterns.GAUGE_READS_ZERO, readings=[seen(0, 700), _trusted(60, 3000)]),
        example(patterns.GAUGE_READS_ZERO, readings=[seen(0, 700), _trusted(4, 700)]),
        example(patterns.LAMP_COMES_ON, readings=[_trusted(60, 3000)]),
        example(patterns.LAMP_COMES_ON, features.STATIONARY, readings=[_trusted(4, 1800)]),
    ],
)
def trusted_gauge_beside_panel_or_lamp(known: Known) -> Conclusions:
    """A trusted gauge showed pressure where panel or lamp showed none: run it with that gauge on.

    Where nobody said at which speed and heat it was read, it is read again at hot idle.
    """
    idle, again = known.limit(quantities.USUAL_IDLE_SPEED), ""
    trusted = (r for r in running(known) if r.gauge is Gauge.DIRECT)
    if not any(idle_share(r, idle) >= COUNTS and is_hot(r) for r in trusted):
        again = "; read it at hot idle as well"
    lamp = lamp_is_refuted(known) or (known.has(features.STATIONARY) and lamp_at_one_speed(known))
    for finding, refuted in (
        (patterns.GAUGE_READS_ZERO, zero_is_refuted(known)),
        (patterns.LAMP_COMES_ON, lamp),
    ):
        if refuted and known.has(finding):
            yield Alarm(
                Severity.CARE,
                f"{finding.says}, but a trusted gauge shows pressure: run only with that gauge on "
                f"and watched{again}; if it falls too, shut down at once",
                lets_run=True,
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(course.PROTECTION_TRIPPED),
        example(course.PROTECTION_TRIPPED, readings=[seen(40, 1500)]),
        example(course.PROTECTION_TRIPPED, readings=[_trusted(40, 1500, 30.0)]),
        example(course.PROTECTION_TRIPPED, readings=[_trusted(5, 1500)]),
        example(course.PROTECTION_TRIPPED, readings=[_trusted(40, 1500), _trusted(5, 800)]),
    ],
    non_matches=[
        example(lacks=[course.PROTECTION_TRIPPED]),
        example(patterns.GAUGE_READS_LOW),
        example(course.PROTECTION_TRIPPED, readings=[_trusted(40, 1500)]),
    ],
)
def protection_has_stopped_it(known: Known) -> Conclusions:
    """An engine that its own protection stopped is started again only with a trusted gauge on.

    Until that gauge has shown enough with the oil hot: cold oil hides a loss of pressure.
    """
    if known.has(course.PROTECTION_TRIPPED) and _enough_while_hot(known) is None:
        yield Alarm(
            Severity.DO_NOT_RUN,
            "its own protection stopped it, which acts below the least pressure: read the stick and "
            "fit a trusted gauge before it starts again",
            gauge_next=True,
            low=False,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(course.PROTECTION_TRIPPED, readings=[_trusted(40, 1500)])],
    non_matches=[
        example(course.PROTECTION_TRIPPED),
        example(readings=[_trusted(40, 1500)], lacks=[course.PROTECTION_TRIPPED]),
        example(course.PROTECTION_TRIPPED, readings=[_trusted(40, 1500), _trusted(5, 800)]),
    ],
)
def protection_stopped_it_with_pressure_there(known: Known) -> Conclusions:
    """A trusted gauge showed enough with the oil hot: the engine may run, with that gauge on."""
    enough = _enough_while_hot(known)
    if known.has(course.PROTECTION_TRIPPED) and enough is not None:
        yield Alarm(
            Severity.CARE,
            f"its own protection stopped it, a trusted gauge showed {looked(enough)}: run it only "
            "with that gauge on and watched; if that falls too, stop it at once",
            lets_run=True,
        )


def _enough_while_hot(known: Known) -> Reading | None:
    """The lowest reading of a trusted gauge with hot oil; None if there is none, or one is low."""
    trusted = [r for r in running(known) if r.gauge is Gauge.DIRECT]
    if any(_is_low(known, r) for r in trusted):
        return None
    return min((r for r in trusted if is_hot(r)), key=lambda r: r.pressure, default=None)


def _is_low(known: Known, reading: Reading) -> bool:
    """Whether a reading is most likely below what is wanted at its speed."""
    idle, fast = quantities.HOT_IDLE_PRESSURE, quantities.HOT_RUNNING_PRESSURE
    each = possible(reading)
    low = [share_below(reading, known.limit(fast if r.rpm >= FAST else idle)) for r in each]
    return sum(low) >= LIKELY_BELOW * len(each)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(readings=[seen(8, 700)]),
        example(readings=[replace(seen(8, 750), gauge=Gauge.DIRECT)]),
    ],
    non_matches=[
        example(readings=[seen(5, 700)]),
        example(readings=[seen(15, 700)]),
        example(readings=[seen(8, 700), replace(seen(20, 700), gauge=Gauge.DIRECT)]),
    ],
)
def little_at_hot_idle(known: Known) -> Conclusions:
    """Between the stop limit and the least at hot idle: no load until the cause is found."""
    least = known.limit(quantities.HOT_IDLE_PRESSURE)
    for r in running(known):
        idling, refuted = _is_at_idle(r), is_refuted(known, r, least)
        stops = sum(sure for sure, _ in broken_limits(known, r)) >= LIKELY_BELOW
        if idling and share_below(r, least) >= LIKELY_BELOW and not (stops or refuted):
            yield Alarm(
                Severity.CARE,
                f"{looked(r)}, least at hot idle {psi(least)}: run it only for a reading, without "
                "load, until you find the cause",
                low=True,
                lets_run=True,
            )


def _is_at_idle(reading: Reading) -> bool:
    """Whether a reading was most likely taken at idle."""
    speeds = [r.rpm for r in possible(reading)]
    return sum(v < IDLES_BELOW for v in speeds) > LIKELY_BELOW * len(speeds)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(patterns.GAUGE_READS_LOW),
        example(direct_gauge.DIRECT_GAUGE_LOW),
    ],
    non_matches=[
        example(lacks=[patterns.GAUGE_READS_LOW, direct_gauge.DIRECT_GAUGE_LOW]),
        example(patterns.GAUGE_READS_LOW, readings=[seen(30, 700)]),
    ],
)
def low_by_how_much_unknown(known: Known) -> Conclusions:
    """Low by report without a figure: nobody can say that it is enough, so only for a reading."""
    low = known.has(patterns.GAUGE_READS_LOW) or known.has(direct_gauge.DIRECT_GAUGE_LOW)
    figures = list(running(known))
    if low and not figures:
        idle = known.limit(quantities.STOP_IDLE_PRESSURE)
        fast = known.limit(quantities.STOP_RUNNING_PRESSURE)
        yield Alarm(
            Severity.CARE,
            f"pressure low, by how much is not known: run it only to read a gauge; stop below "
            f"{psi(idle)} at idle or {psi(fast)} from 2000 rpm on",
            unless_denied=direct_gauge.DIRECT_GAUGE_LOW,
            of_pressure=True,
            low=True,
            lets_run=True,
        )


@rule(
    source=idea_from(sources.TRUCK_DRIVER_MANUAL),
    matches=[
        example(readings=[replace(seen(12, 2000, 20), usual=60 * PSI)]),
        example(readings=[replace(seen(12, 2000, 20), usual=60 * PSI, rpm_spread=1100.0)]),
    ],
    non_matches=[
        example(readings=[replace(seen(40, 2000, 20), usual=60 * PSI)]),
        example(readings=[replace(seen(12, 2000, 90), usual=60 * PSI)]),
        example(readings=[seen(25, 2000, 20)]),
        example(
            readings=[
                replace(seen(25, 2000, 20), usual=60 * PSI),
                replace(seen(55, 2000, 20), gauge=Gauge.DIRECT),
            ]
        ),
    ],
)
def half_of_the_usual_when_cold(known: Known) -> Conclusions:
    """Cold oil makes pressure easily: less than half of the usual cold means that much is lost."""
    for r in running(known):
        limit = HALF * (r.usual or 0.0)
        refuted = is_refuted(known, r, limit)
        if is_cold(r) and share_below(r, limit) >= LIKELY_BELOW and not refuted:
            yield Alarm(
                Severity.STOP,
                f"{looked(r)}, limit {psi(limit)}, half of the usual when cold: shut down, do not "
                "run until you find the cause",
                low=True,
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(readings=[seen(12, 700, 20)]),
        example(readings=[replace(seen(25, 2500, 20), gauge=Gauge.DIRECT)]),
    ],
    non_matches=[
        example(readings=[seen(30, 700, 20)]),
        example(readings=[seen(12, 700)]),
        example(readings=[seen(45, 2500, 20)]),
        example(readings=[seen(25, 2500, 20), replace(seen(50, 2500, 20), gauge=Gauge.DIRECT)]),
    ],
)
def little_when_cold(known: Known) -> Conclusions:
    """Less with cold oil than cold oil makes: hot there will be less still, so only for a reading."""
    hot_idle = known.limit(quantities.HOT_IDLE_PRESSURE)
    setting = known.limit(relief_quantities.USUAL_RELIEF_SETTING)
    for r in filter(is_cold, running(known)):
        wanted = [wanted_cold(one.rpm, hot_idle, setting) for one in possible(r)]
        share = sum(share_below(r, least) for least in wanted) / len(wanted)
        refuted = is_refuted(known, r, min(wanted))
        if share > LIKELY_BELOW and not refuted:
            yield Alarm(
                Severity.CARE,
                f"{looked(r)}, cold oil should make at least {psi(min(wanted))}, and hot oil makes "
                "less: run it only to read a gauge, without load, until you find the cause",
                low=True,
                lets_run=True,
            )


@rule(
    source=idea_from(sources.TEN_PSI_RULE_2009),
    matches=[
        example(readings=[_trusted(23, 4000)]),
        example(readings=[seen(25, 5000)]),
    ],
    non_matches=[
        example(readings=[_trusted(30, 4000)]),
        example(readings=[_trusted(23, 2000)]),
        example(readings=[replace(_trusted(23, 4000), usual=25 * PSI)]),
        example(readings=[seen(23, 4000), _trusted(45, 4000)]),
        example(readings=[seen(25, 5000, 20)]),
    ],
)
def far_short_at_speed(known: Known) -> Conclusions:
    """Far less at high revs than the revs need: above the stop limit, yet no engine to load."""
    each_thousand = min(PSI_PER_1000, known.limit(quantities.HOT_RUNNING_PRESSURE) / 2)
    setting = known.limit(relief_quantities.USUAL_RELIEF_SETTING)
    for r in running(known):
        if is_cold(r) or min(one.rpm for one in possible(r)) < HIGH_REVS:
            continue
        wanted = min(each_thousand * r.rpm / 1000.0, NEAR_SETTING * setting)
        limit = FAR_SHORT * wanted
        as_usual = r.usual is not None and r.pressure >= AS_USUAL * r.usual
        refuted = is_refuted(known, r, limit)
        if share_below(r, limit) >= LIKELY_BELOW and not (as_usual or refuted):
            yield Alarm(
                Severity.CARE,
                f"{looked(r)}, its revs need about {psi(wanted)}: light load and low revs only, "
                "until you find the cause",
                low=True,
                lets_run=True,
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(readings=[replace(seen(10, 2200), usual=10 * PSI)]),
        example(readings=[replace(seen(15, 3000), usual=18 * PSI)]),
    ],
    non_matches=[
        example(readings=[replace(seen(5, 2200), usual=10 * PSI)]),
        example(readings=[seen(10, 2200)]),
        example(readings=[replace(seen(30, 2200), usual=40 * PSI)]),
        example(readings=[replace(seen(10, 700), usual=10 * PSI)]),
    ],
)
def as_little_as_it_usually_has(known: Known) -> Conclusions:
    """As little at speed as this engine usually has: right for some old ones, by their manual only."""
    thumb = known.limit(quantities.STOP_RUNNING_PRESSURE)
    for r in running(known):
        fast = r.rpm >= FAST and runs_on_less(known, r)
        if fast and share_below(r, thumb) >= LIKELY_BELOW > share_below(r, stop_limit(known, r)):
            yield Alarm(
                Severity.CARE,
                f"{looked(r)}: as much as usual, but most engines need {psi(thumb)} from 2000 rpm "
                "on: light load and gauge watched, unless its maker's manual gives so little",
                low=True,
                lets_run=True,
            )
