"""Alarms on pressure: when a pressure means stop, whatever the cause."""

from dataclasses import replace

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.engines import features
from knowledge.history import findings as history
from knowledge.model import Gauge, Reading, Severity, Station
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed, quantities
from knowledge.pressure.gauge import at_speed, is_cold, possible
from knowledge.pressure.refuted import (
    FAST,
    is_nothing,
    is_refuted,
    lamp_at_one_speed,
    lamp_is_refuted,
    running,
    share_below,
    stop_limit,
    zero_is_refuted,
)
from knowledge.reports.behaviours import nothing_at_idle
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.pump import findings_priming as pump_priming
from knowledge.stations.relief.quantities import most_held
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)


ENOUGH_TO_STOP = 0.4  #: of what a reading in words may mean (judgement; stopping costs little)


def psi(pressure: float) -> str:
    """A pressure as it is read out."""
    return f"{pressure / PSI:.0f} psi ({pressure / 1e5:.1f} bar)"


def looked(reading: Reading) -> str:
    """A reading as it was given, in words or in figures."""
    return reading.said or f"{psi(reading.pressure)} at {reading.rpm:.0f} rpm"


def broken_limits(known: Known, reading: Reading) -> list[tuple[float, float]]:
    """For each reading a vague one may have been: how surely it is too low, and its limit [Pa]."""
    limits = [stop_limit(known, r) for r in possible(reading)]
    return [(share_below(reading, limit), limit) for limit in limits]


def seen(value: float, rpm: float, celsius: float = 90.0) -> Reading:
    """An example."""
    return Reading(rpm, celsius + 273.15, value * PSI)


def trusted(value: float, rpm: float) -> Reading:
    """An example on a trusted gauge."""
    return replace(seen(value, rpm), gauge=Gauge.DIRECT)


def reads_nothing(known: Known) -> bool:
    """Whether the gauge was seen at zero, be it at idle only."""
    return known.has(patterns.GAUGE_READS_ZERO) or nothing_at_idle(known)


@rule(
    source=sources.NAVY_14075_CASUALTY,
    matches=[example(patterns.GAUGE_READS_ZERO)],
    non_matches=[example(patterns.GAUGE_READS_LOW), example(lacks=[patterns.GAUGE_READS_ZERO])],
)
def no_pressure_means_stop_now(known: Known) -> Conclusions:
    """No pressure shown: shut down at once; do not start again until you find the cause.

    The stop ends only when a trusted gauge has shown pressure *since*, or at the same moment.
    """
    refuted = zero_is_refuted(known)
    if reads_nothing(known) and not refuted:
        yield Alarm(
            Severity.STOP,
            "gauge reads zero, some pressure is needed at any speed: shut down at once, no restart "
            "until a trusted gauge shows pressure (then record: pressure shown since) or you find "
            "the cause",
            until=direct_gauge.PRESSURE_SHOWN_SINCE,
            gauge_next=True,
            of_pressure=True,
            low=False if any(r.pressure == 0.0 for r in running(known)) else None,
        )


@rule(
    source=JUDGEMENT,
    matches=[
        example(patterns.GAUGE_READS_ZERO, direct_gauge.PRESSURE_SHOWN_SINCE),
        example(patterns.FELL_SUDDENLY, direct_gauge.PRESSURE_SHOWN_SINCE),
        example(direct_gauge.PRESSURE_SHOWN_SINCE, direct_gauge.DIRECT_GAUGE_ZERO),
    ],
    non_matches=[
        example(patterns.GAUGE_READS_ZERO),
        example(patterns.FELL_SUDDENLY),
        example(
            patterns.GAUGE_READS_ZERO,
            direct_gauge.DIRECT_GAUGE_LOW,
            lacks=[direct_gauge.PRESSURE_SHOWN_SINCE],
        ),
        example(direct_gauge.PRESSURE_SHOWN_SINCE, direct_gauge.DIRECT_GAUGE_LOW),
    ],
)
def trusted_gauge_shows_it_is_there(known: Known) -> Conclusions:
    """A trusted gauge has shown pressure since: run it only with that gauge on.

    Stop where a trusted gauge reads low after the fall, or is recorded as zero as well.
    """
    for fall in (patterns.GAUGE_READS_ZERO, patterns.FELL_SUDDENLY):
        seen_so = known.has(fall) or (fall is patterns.GAUGE_READS_ZERO and reads_nothing(known))
        if seen_so and known.has(direct_gauge.PRESSURE_SHOWN_SINCE):
            yield Alarm(
                Severity.CARE,
                f"{fall.says}, a trusted gauge has shown pressure since: run only with that gauge "
                "on and watched; if it falls too, shut down at once",
                lets_run=True,
            )
            if known.has(direct_gauge.DIRECT_GAUGE_LOW):
                yield Alarm(
                    Severity.STOP,
                    f"{fall.says}, and a trusted gauge shows pressure since, but too little: shut "
                    "down, do not run until you find the cause",
                )
    if known.has(direct_gauge.PRESSURE_SHOWN_SINCE) and known.has(direct_gauge.DIRECT_GAUGE_ZERO):
        yield Alarm(
            Severity.STOP,
            "a trusted gauge is recorded as showing pressure and as showing none: stop, read it again",
        )


@rule(
    source=idea_from(sources.OIL_CHANGE_LAMP_TEXT),
    matches=[example(behaviour.NONE_FROM_FIRST_START)],
    non_matches=[
        example(lacks=[behaviour.NONE_FROM_FIRST_START]),
        example(patterns.GAUGE_READS_LOW),
    ],
)
def none_since_the_work(known: Known) -> Conclusions:
    """No pressure since the work or the storage: do not start again, prime it without running."""
    if known.has(behaviour.NONE_FROM_FIRST_START):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "no pressure since the work, limit 10 s (5 s on a fresh build): do not start again, "
            "prime with the engine stopped",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(history.FRESHLY_REBUILT, behaviour.TEN_SECONDS_OR_MORE)],
    non_matches=[example(history.FRESHLY_REBUILT), example(behaviour.TEN_SECONDS_OR_MORE)],
)
def fresh_build_gets_half_the_time(known: Known) -> Conclusions:
    """A fresh build gets only five seconds: its new surfaces have no oil film yet."""
    if known.has(history.FRESHLY_REBUILT) and known.has(behaviour.TEN_SECONDS_OR_MORE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "fresh build without pressure for ten seconds, limit 5 s: do not start again, prime, "
            "then inspect a bearing",
        )


@rule(
    source=idea_from(sources.TRACTOR_WORKSHOP_MANUAL),
    matches=[
        example(readings=[seen(4, 700)]),
        example(readings=[seen(12, 3000)]),
        example(readings=[replace(seen(5, 700), rpm_spread=60.0, oil_spread=8.0)]),
    ],
    non_matches=[
        example(readings=[seen(12, 700)]),
        example(readings=[replace(seen(12, 700), rpm_spread=60.0, oil_spread=8.0)]),
        example(readings=[seen(45, 3000)]),
        example(readings=[seen(0, 0)]),
    ],
)
def reading_below_the_stop_limit(known: Known) -> Conclusions:
    """Below 7 psi at idle, or 20 psi from 2000 rpm on, or the maker's own figures: stop.

    A panel gauge may be wrong; stop first, then fit a trusted gauge. A reading in words counts as
    below if four in ten of the speeds and pressures it may mean are. One pressure said twice of one
    gauge, in figures and in words, is named in figures.
    """
    named: set[tuple[float, Gauge, float]] = set()
    for r in sorted(running(known), key=lambda r: r.rpm_spread > 0.0):
        broken = broken_limits(known, r)
        limit = max((at for sure, at in broken if sure > 0.5), default=stop_limit(known, r))
        share = sum(sure for sure, _ in broken) / len(broken)
        refuted = is_refuted(known, r, limit)
        same = (round(r.pressure), r.gauge, limit)
        if share >= ENOUGH_TO_STOP and not refuted and same not in named:
            named.add(same)
            then = (
                "the trusted gauge confirms it: shut down, do not run until you find the cause"
                if r.gauge is Gauge.DIRECT
                else "shut down, check with a trusted gauge before it runs again"
            )
            yield Alarm(
                Severity.STOP,
                f"{looked(r)}, limit {psi(limit)}: {then}",
                until=direct_gauge.PRESSURE_SHOWN_SINCE if is_nothing(r) else None,
                gauge_next=r.gauge is not Gauge.DIRECT,
                low=True,
            )


@rule(
    source=sources.DIESEL_CASE_NOTE,
    matches=[
        example(features.DIESEL, readings=[seen(26, 1800)]),
        example(features.DIESEL, direct_gauge.DIRECT_GAUGE_UNSTEADY),
    ],
    non_matches=[
        example(readings=[seen(26, 1800)]),
        example(features.DIESEL, readings=[seen(26, 800)]),
        example(features.DIESEL, readings=[seen(45, 1800)]),
        example(
            features.DIESEL, readings=[seen(20, 2200), replace(seen(52, 2200), gauge=Gauge.DIRECT)]
        ),
    ],
)
def farm_diesel_below_two_bar(known: Known) -> Conclusions:
    """A diesel below 2 bar (29 psi) at working speed, or with a swinging needle: stop it.

    Not if a trusted gauge showed more at the same moment. From 2000 rpm on the same figure is the
    stop limit of a diesel.
    """
    if known.has(features.DIESEL):
        for r in running(known):
            low = (
                at_speed(r)
                and r.rpm < FAST
                and share_below(r, quantities.DIESEL_AT_SPEED.value) >= ENOUGH_TO_STOP
            )
            refuted = is_refuted(known, r, quantities.DIESEL_AT_SPEED.value)
            if low and not refuted:
                yield Alarm(
                    Severity.STOP,
                    f"{looked(r)} on a diesel, limit "
                    f"{psi(quantities.DIESEL_AT_SPEED.value)} at working speed: stop",
                )
        if known.has(direct_gauge.DIRECT_GAUGE_UNSTEADY):
            yield Alarm(
                Severity.STOP,
                "trusted gauge swings on a diesel, limit: steady within 2 or 3 psi: stop",
            )


@rule(
    source=idea_from(sources.TRUCK_DRIVER_MANUAL),
    matches=[example(patterns.FELL_SUDDENLY), example(patterns.SANK_WHILE_RUNNING)],
    non_matches=[
        example(lacks=[patterns.FELL_SUDDENLY, patterns.SANK_WHILE_RUNNING]),
        example(patterns.GAUGE_READS_LOW),
    ],
)
def pressure_that_falls_away(known: Known) -> Conclusions:
    """A sudden fall, or a steady sinking in one run: stop, and do not run until it is explained.

    A trusted gauge that has shown pressure since takes back the sudden fall: the panel fell, not
    the pressure. It was fitted after the run, so it says nothing of a sinking within it.
    """
    for fall in (patterns.FELL_SUDDENLY, patterns.SANK_WHILE_RUNNING):
        if known.has(fall):
            yield Alarm(
                Severity.STOP,
                f"{fall.says}, half the usual is the limit: stop, do not run until you find the "
                "cause",
                until=direct_gauge.PRESSURE_SHOWN_SINCE if fall is patterns.FELL_SUDDENLY else None,
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(patterns_speed.CLIMBS_PAST_SETTING), example(readings=[seen(105, 2000, 20)])],
    non_matches=[
        example(readings=[seen(60, 2000, 20)]),
        example(lacks=[patterns_speed.CLIMBS_PAST_SETTING]),
    ],
)
def far_too_much_when_cold(known: Known) -> Conclusions:
    """Cold pressure far past the relief setting bursts filters: back to idle, then stop."""
    limit = most_held(known.limit)
    for r in running(known):
        if is_cold(r) and r.pressure > limit and not r.at_most:
            yield Alarm(
                Severity.STOP,
                f"{psi(r.pressure)} cold, limit {psi(limit)}: back to idle, then stop; the relief "
                "valve does not relieve",
            )
    if known.has(patterns_speed.CLIMBS_PAST_SETTING):
        yield Alarm(
            Severity.CARE,
            "cold pressure climbs past the relief setting, which is the limit: back to idle, stop, "
            "no revs until you have inspected the relief valve",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(pump_priming.DRILL_GIVES_NONE)],
    non_matches=[
        example(lacks=[pump_priming.DRILL_GIVES_NONE]),
        example(behaviour.NONE_FROM_FIRST_START),
    ],
)
def primed_in_vain(known: Known) -> Conclusions:
    """Two minutes of priming without pressure: stop priming and find the cause."""
    if known.has(pump_priming.DRILL_GIVES_NONE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "priming brings no pressure, limit about 2 min: stop, do not start, find where the oil "
            "goes or why none comes",
        )


@rule(
    source=sources.OIL_CHANGE_LAMP_TEXT,
    matches=[
        example(patterns.LAMP_COMES_ON, lacks=[patterns.ENGINE_RUNS_NORMALLY]),
        example(patterns.LAMP_COMES_ON),
    ],
    non_matches=[
        example(lacks=[patterns.LAMP_COMES_ON]),
        example(patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE),
    ],
)
def lamp_says_stop(known: Known) -> Conclusions:
    """A lamp that comes on while running is right until a trusted gauge proves it wrong.

    That is a gauge at hot idle; where an engine has one speed, at any time.
    """
    refuted = lamp_is_refuted(known)
    if known.has(patterns.LAMP_COMES_ON) and not refuted:
        yield Alarm(
            Severity.STOP,
            "oil lamp or alarm on while running, its switch point is about 4.5 to 7 psi (0.3 to 0.5 bar): stop, run it "
            "again only with a trusted gauge on and watched",
            until=features.STATIONARY if lamp_at_one_speed(known) else None,
            gauge_next=True,
            of_lamp=True,
            of_pressure=True,
            low=False,
        )


@rule(
    source=sources.ARMY_TM_643_SHUTDOWN,
    matches=[example(features.LAMP_ONLY)],
    non_matches=[example(lacks=[features.LAMP_ONLY])],
)
def lamp_out_proves_little(known: Known) -> Conclusions:
    """A lamp that is out does not prove enough pressure: its switch opens at 4.5 to 7 psi (0.3 to 0.5 bar).

    Whoever read a figure has a gauge, however such engines are usually built.
    """
    if known.has(features.LAMP_ONLY):
        yield Alarm(
            Severity.CARE,
            "lamp or alarm only, its switch opens at about 4.5 to 7 psi (0.3 to 0.5 bar): a lamp that is out does not "
            "prove enough pressure; fit a trusted gauge",
            until_read=True,
            of_pressure=True,
        )
