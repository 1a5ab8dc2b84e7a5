"""When a pressure means stop, whatever the cause."""

from collections.abc import Iterator

from knowledge.engines.features import DIESEL, LAMP_ONLY
from knowledge.findings.behaviour import (
    DIRECT_GAUGE_LOW,
    DIRECT_GAUGE_UNSTEADY,
    DIRECT_GAUGE_ZERO,
    FALLS_IN_A_MANOEUVRE,
    NONE_FROM_FIRST_START,
    PRESSURE_SHOWN_SINCE,
    TEN_SECONDS_OR_MORE,
)
from knowledge.findings.history import FRESHLY_REBUILT
from knowledge.findings.pressure import (
    CLIMBS_PAST_SETTING,
    ENGINE_RUNS_NORMALLY,
    FELL_SUDDENLY,
    FLICKERS_ONLY_AT_HOT_IDLE,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    LAMP_COMES_ON,
    NEEDLE_FLICKERS,
    SANK_WHILE_RUNNING,
)
from knowledge.findings.pump import DRILL_GIVES_NONE
from knowledge.reference.gauge import at_pump, at_speed, is_cold, runs, same_moment
from knowledge.reference.limits import (
    RELIEF_SETTING,
    STOP_IDLE_PRESSURE,
    STOP_RUNNING_PRESSURE,
)
from knowledge.rulebook import Alarm, Conclusions, Known, case_of, rules_of
from knowledge.sources import (
    COMMON_PRACTICE,
    DTN,
    HB13,
    HB19,
    INL,
    LAM,
    NE3,
    SLO,
    TMG,
)
from knowledge.units import PSI
from knowledge.vocabulary import Reading, Severity, Station

rule = rules_of(Station.INSTRUMENT)

FARM_DIESEL_LEAST = 0.2e6  #: Pa: below this at speed a farm diesel is stopped
FAR_TOO_HIGH = 90 * PSI  #: cold pressure past this bursts filters


def psi(pressure: float) -> str:
    """A pressure as it is read out."""
    return f"{pressure / PSI:.0f} psi ({pressure / 1e5:.1f} bar)"


def running(known: Known) -> Iterator[Reading]:
    """Gallery readings of the running engine."""
    return (r for r in known.readings() if runs(r) and not at_pump(r))


def seen(value: float, rpm: float, celsius: float = 90.0) -> Reading:
    """An example."""
    return Reading(rpm, celsius + 273.15, value * PSI)


@rule(
    source=NE3,
    catches=[case_of(GAUGE_READS_ZERO)],
    spares=[case_of(GAUGE_READS_LOW), case_of(lacks=[GAUGE_READS_ZERO])],
)
def no_pressure_means_stop_now(known: Known) -> Conclusions:
    """No pressure shown: shut down at once; do not start again before the cause is found.

    Only somebody's word that a trusted gauge has shown pressure *since* takes the stop back: of
    what was told and read nobody knows which came first.
    """
    if known.has(GAUGE_READS_ZERO):
        yield Alarm(
            Severity.STOP,
            "gauge reads zero, some pressure is needed at any speed: shut down at once, no restart "
            "until a trusted gauge shows pressure (then record pressure_shown_since=yes) or the "
            "cause is found",
            until=PRESSURE_SHOWN_SINCE,
        )


@rule(
    source=NE3,
    catches=[
        case_of(GAUGE_READS_ZERO, PRESSURE_SHOWN_SINCE),
        case_of(PRESSURE_SHOWN_SINCE, DIRECT_GAUGE_LOW),
    ],
    spares=[
        case_of(GAUGE_READS_ZERO),
        case_of(GAUGE_READS_ZERO, DIRECT_GAUGE_LOW, lacks=[PRESSURE_SHOWN_SINCE]),
    ],
)
def trusted_gauge_shows_it_is_there(known: Known) -> Conclusions:
    """A trusted gauge has shown pressure since: it may run under that gauge's eye.

    Told beside a trusted gauge that reads low or zero, one of the two is over: stop.
    """
    if known.has(GAUGE_READS_ZERO) and known.has(PRESSURE_SHOWN_SINCE):
        yield Alarm(
            Severity.CARE,
            "gauge reads zero, a trusted gauge has shown pressure since: run only with that gauge "
            "on and watched; if it falls as well, shut down at once",
        )
    for low in (DIRECT_GAUGE_LOW, DIRECT_GAUGE_ZERO):
        if known.has(PRESSURE_SHOWN_SINCE) and known.has(low):
            yield Alarm(
                Severity.STOP,
                "a trusted gauge is told to show pressure and to lack it: stop, read it again",
            )


@rule(
    source=LAM,
    catches=[case_of(NONE_FROM_FIRST_START)],
    spares=[case_of(lacks=[NONE_FROM_FIRST_START]), case_of(GAUGE_READS_LOW)],
)
def none_since_the_work(known: Known) -> Conclusions:
    """No pressure since the work or the storage: no further start, prime with the engine still."""
    if known.has(NONE_FROM_FIRST_START):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "no pressure since the work, limit 10 s (5 s on a fresh build): do not start again, "
            "prime with the engine still",
        )


@rule(
    source=LAM,
    catches=[case_of(FRESHLY_REBUILT, TEN_SECONDS_OR_MORE)],
    spares=[case_of(FRESHLY_REBUILT), case_of(TEN_SECONDS_OR_MORE)],
)
def fresh_build_gets_half_the_time(known: Known) -> Conclusions:
    """A fresh build gets five seconds only: its new surfaces have no film to live on."""
    if known.has(FRESHLY_REBUILT) and known.has(TEN_SECONDS_OR_MORE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "fresh build without pressure for ten seconds, limit 5 s: do not start again, prime, "
            "then look at a bearing",
        )


@rule(
    source=HB13,
    catches=[case_of(readings=[seen(4, 700)]), case_of(readings=[seen(12, 3000)])],
    spares=[
        case_of(readings=[seen(12, 700)]),
        case_of(readings=[seen(45, 3000)]),
        case_of(readings=[seen(0, 0)]),
    ],
)
def reading_below_the_stop_limit(known: Known) -> Conclusions:
    """Below 7 psi at idle, or 20 psi from 2000 rpm on, or the maker's own figures: stop.

    A panel gauge may lie; stop first, then put a trusted gauge on.
    """
    for r in running(known):
        limit = known.limit(STOP_RUNNING_PRESSURE if r.rpm >= 2000.0 else STOP_IDLE_PRESSURE)
        refuted = r.gauge == "panel" and any(
            d.gauge == "direct" and d.pressure >= limit and same_moment(r, d)
            for d in known.readings()
        )
        if r.pressure < limit and not refuted:
            then = (
                "the trusted gauge says so: shut down, do not run until the cause is found"
                if r.gauge == "direct"
                else "shut down, check with a trusted gauge before it runs again"
            )
            yield Alarm(
                Severity.STOP, f"{psi(r.pressure)} at {r.rpm:.0f} rpm, limit {psi(limit)}: {then}"
            )


@rule(
    source=HB19,
    catches=[
        case_of(DIESEL, readings=[seen(26, 1800)]),
        case_of(DIESEL, DIRECT_GAUGE_UNSTEADY),
    ],
    spares=[
        case_of(readings=[seen(26, 1800)]),
        case_of(DIESEL, readings=[seen(26, 800)]),
        case_of(DIESEL, readings=[seen(45, 1800)]),
    ],
)
def farm_diesel_below_two_bar(known: Known) -> Conclusions:
    """A diesel below 2 bar (29 psi) at working speed, or one that swings, is stopped."""
    if known.has(DIESEL):
        for r in running(known):
            if at_speed(r) and r.pressure < FARM_DIESEL_LEAST:
                yield Alarm(
                    Severity.STOP,
                    f"{psi(r.pressure)} at {r.rpm:.0f} rpm on a diesel, limit "
                    f"{psi(FARM_DIESEL_LEAST)} at working speed: stop",
                )
        if known.has(DIRECT_GAUGE_UNSTEADY):
            yield Alarm(
                Severity.STOP,
                "a trusted gauge swings on a diesel, steady within 2 or 3 psi is the limit: stop",
            )


@rule(
    source=DTN,
    catches=[case_of(FELL_SUDDENLY), case_of(SANK_WHILE_RUNNING)],
    spares=[case_of(lacks=[FELL_SUDDENLY, SANK_WHILE_RUNNING]), case_of(GAUGE_READS_LOW)],
)
def pressure_that_falls_away(known: Known) -> Conclusions:
    """A sudden fall, or a steady sinking in one run: stop, and stay stopped till it is explained."""
    for fall in (FELL_SUDDENLY, SANK_WHILE_RUNNING):
        if known.has(fall):
            yield Alarm(
                Severity.STOP,
                f"{fall.says}, half the usual is the limit: stop, do not run until the cause is "
                "found",
            )


@rule(
    source=COMMON_PRACTICE,
    catches=[case_of(CLIMBS_PAST_SETTING), case_of(readings=[seen(105, 2000, 20)])],
    spares=[case_of(readings=[seen(60, 2000, 20)]), case_of(lacks=[CLIMBS_PAST_SETTING])],
)
def far_too_much_when_cold(known: Known) -> Conclusions:
    """Cold pressure far past the relief setting bursts filters: back to idle, then stop."""
    limit = max(FAR_TOO_HIGH, 1.2 * known.limit(RELIEF_SETTING))
    for r in running(known):
        if is_cold(r) and r.pressure > limit:
            yield Alarm(
                Severity.STOP,
                f"{psi(r.pressure)} cold, limit {psi(limit)}: back to idle, then stop; the relief "
                "valve does not relieve",
            )
    if known.has(CLIMBS_PAST_SETTING):
        yield Alarm(
            Severity.CARE,
            "cold pressure climbs past the relief setting, which is the limit: back to idle, stop, "
            "no revs before the relief valve was seen",
        )


@rule(
    source=SLO,
    catches=[case_of(FALLS_IN_A_MANOEUVRE)],
    spares=[case_of(lacks=[FALLS_IN_A_MANOEUVRE])],
)
def pressure_goes_in_the_manoeuvre(known: Known) -> Conclusions:
    """Each fall in a bend or on a slope costs the rod bearings: break the manoeuvre off."""
    if known.has(FALLS_IN_A_MANOEUVRE):
        yield Alarm(
            Severity.CARE,
            "pressure falls in the manoeuvre, the stop figure is the limit at any instant: break "
            "it off, fill to the mark, repeat only with a second person on the gauge",
        )


@rule(
    source=COMMON_PRACTICE,
    catches=[case_of(DRILL_GIVES_NONE)],
    spares=[case_of(lacks=[DRILL_GIVES_NONE]), case_of(NONE_FROM_FIRST_START)],
)
def primed_in_vain(known: Known) -> Conclusions:
    """Primed for two minutes without pressure: stop priming and find the cause."""
    if known.has(DRILL_GIVES_NONE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "priming brings no pressure, limit about 2 min: stop it, do not start, find where the "
            "oil goes or why none comes",
        )


@rule(
    source=LAM,
    catches=[case_of(LAMP_COMES_ON, lacks=[ENGINE_RUNS_NORMALLY]), case_of(LAMP_COMES_ON)],
    spares=[case_of(lacks=[LAMP_COMES_ON]), case_of(FLICKERS_ONLY_AT_HOT_IDLE)],
)
def lamp_says_stop(known: Known) -> Conclusions:
    """A lamp that comes on while running is believed until a trusted gauge belies it."""
    if known.has(LAMP_COMES_ON):
        yield Alarm(
            Severity.STOP,
            "oil lamp or alarm on while running, its switch point is about 4.5 to 7 psi: stop, put "
            "a trusted gauge on before it runs again",
        )


@rule(
    source=TMG,
    catches=[case_of(LAMP_ONLY)],
    spares=[case_of(lacks=[LAMP_ONLY])],
)
def lamp_out_proves_little(known: Known) -> Conclusions:
    """A lamp that is out does not prove enough pressure: its switch opens at 4.5 to 7 psi."""
    if known.has(LAMP_ONLY):
        yield Alarm(
            Severity.CARE,
            "lamp or alarm only, its switch opens at about 4.5 to 7 psi: a lamp that is out is no "
            "proof of enough pressure; put a trusted gauge on",
        )


@rule(
    source=INL,
    catches=[case_of(DIRECT_GAUGE_LOW, NEEDLE_FLICKERS)],
    spares=[case_of(NEEDLE_FLICKERS), case_of(DIRECT_GAUGE_LOW, lacks=[NEEDLE_FLICKERS])],
)
def truly_low_and_wavering(known: Known) -> Conclusions:
    """Low on a trusted gauge and wavering as well: air comes through, and bearings starve."""
    if known.has(DIRECT_GAUGE_LOW) and known.has(NEEDLE_FLICKERS):
        yield Alarm(
            Severity.STOP,
            "pressure truly low and wavering, steady within 2 or 3 psi is the limit: stop, read "
            "the stick, do not run until the cause is found",
        )
