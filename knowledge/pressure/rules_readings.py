"""Rules that turn gauge readings into findings: low, zero, high."""

from dataclasses import replace
from itertools import product

from knowledge import sources
from knowledge.engines import features
from knowledge.judging import sure_beyond
from knowledge.model import Gauge, Reading, Station
from knowledge.pressure import direct_gauge, patterns, quantities
from knowledge.pressure.gauge import (
    BEYOND_BELIEF,
    NEXT_TO_NOTHING,
    PAST_SETTING,
    RUNNING,
    SAY_SO,
    at_pump,
    at_speed,
    counted,
    hot_share,
    idle_share,
    idles,
    if_clear,
    is_cold,
    is_hot,
    moments,
    runs,
    said_alike,
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
from knowledge.pressure.refuted import shown_enough, speed_is_said
from knowledge.rule_api import Conclusions, Known, example, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.instrument import findings as instrument_findings
from knowledge.stations.instrument import findings_direct_gauge as trusted
from knowledge.stations.instrument import quantities as instrument_quantities
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.stations.oil import quantities as oil_quantities
from knowledge.stations.relief import quantities as relief_quantities
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)
LEAST_SHOWN = 0.8 * PSI  #: a gauge of a few psi shows no less as more than nothing (judgement)
AT_ONCE = 0.8  #: how likely two figures with the same words for when are of one moment (judgement)


def _panels_agree(known: Known, limit: float) -> bool:
    """Whether no two panel readings of one moment showed pressures that cannot both be right."""
    panel = list(gallery(known, Gauge.PANEL))
    return all(
        sure_lower(a, b, limit) < SAY_SO
        for a, b in product(panel, panel)
        if same_moment(a, b) or said_alike(a, b)
    )


def wanted(known: Known, reading: Reading) -> float:
    """Least pressure at this speed and heat by this engine's figures [Pa]."""
    figures = (
        reading.rpm,
        known.limit(quantities.HOT_IDLE_PRESSURE),
        relief_setting(known),
    )
    if is_cold(reading):
        return wanted_cold(*figures)
    least = wanted_hot(*figures, known.limit(quantities.HOT_RUNNING_PRESSURE))
    at_its_speed = quantities.DIESEL_AT_SPEED.value
    if at_speed(reading) and at_its_speed in known.limit_figures(quantities.STOP_RUNNING_PRESSURE):
        return max(least, at_its_speed)
    return least


def low(known: Known, reading: Reading) -> float:
    """How sure it is that a reading is below what is wanted, or below its usual."""
    return sure_low(reading, lambda r: wanted(known, r))


def gallery(known: Known, gauge: Gauge) -> list[Reading]:
    """Readings of one kind of gauge on the gallery of a running engine.

    A report of any speed, or of hot and cold, stands for several readings.
    """
    idle = known.limit(quantities.USUAL_IDLE_SPEED)
    looks = [r for r in known.readings() if r.gauge is gauge and runs(r) and not at_pump(r)]
    return [m for r in looks for m in moments(r, idle)]


def next_to_nothing(known: Known) -> float:
    """A pressure [Pa] that cannot be distinguished from none; less where little is normal."""
    half = 0.5 * known.limit(quantities.HOT_IDLE_PRESSURE)
    return min(NEXT_TO_NOTHING, max(half, LEAST_SHOWN))


def nothing_anywhere(known: Known, readings: list[Reading]) -> list[float]:
    """How sure it is that each reading means that there is no pressure at all.

    Nothing at idle with pressure at speed is low at idle, as of a big leak, not an idle pump.
    """
    idle = known.limit(quantities.USUAL_IDLE_SPEED)
    none = next_to_nothing(known)
    at_speed = [sure_above(r, none) * speed_share(r) for r in readings]
    rises = max(at_speed, default=0.0)
    return [sure_below(r, none) * (1.0 - rises * idle_share(r, idle)) for r in readings]


def hot(psi: float, rpm: float, gauge: Gauge = Gauge.PANEL, tap: str = "gallery") -> Reading:
    """A hot example."""
    return Reading(rpm, 363.15, psi * PSI, gauge, tap)


def cold(psi: float, rpm: float, gauge: Gauge = Gauge.PANEL) -> Reading:
    """A cold example."""
    return Reading(rpm, 293.15, psi * PSI, gauge)


def vague(psi: float, gauge: Gauge = Gauge.PANEL) -> Reading:
    """An example of which only the pressure was said."""
    return Reading(1500.0, 360.0, psi * PSI, gauge, rpm_spread=600.0, oil_spread=9.0)


@rule(
    source=idea_from(sources.TEN_PSI_RULE_2009),
    matches=[
        example(readings=[hot(4, 700)]),
        example(readings=[hot(20, 700), hot(12, 3000)]),
        example(readings=[replace(hot(40, 2500), usual=80 * PSI)]),
    ],
    non_matches=[example(readings=[hot(10, 700)]), example(readings=[hot(4, 700, Gauge.DIRECT)])],
)
def panel_below_what_is_wanted(known: Known) -> Conclusions:
    """A panel reading below the idle figure, or below 10 psi for each 1000 rpm, is low.

    All readings above it mean not low. Near the limit the gauge error leaves it undecided. A
    reading well below its usual is low as well.
    """
    lows = [low(known, r) for r in gallery(known, Gauge.PANEL)]
    if lows:
        yield from if_clear(patterns.GAUGE_READS_LOW, max(lows))


@rule(
    source=idea_from(sources.TEN_PSI_RULE_2009),
    matches=[example(readings=[hot(4, 700, Gauge.DIRECT)])],
    non_matches=[example(readings=[hot(10, 700, Gauge.DIRECT)]), example(readings=[hot(4, 700)])],
)
def direct_gauge_below_what_is_wanted(known: Known) -> Conclusions:
    """A trusted gauge below the figure for that speed and temperature proves low pressure."""
    lows = [low(known, r) for r in gallery(known, Gauge.DIRECT)]
    if lows:
        yield from if_clear(direct_gauge.DIRECT_GAUGE_LOW, max(lows))


@rule(
    source=JUDGEMENT,
    matches=[
        example(readings=[hot(0, 800)]),
        example(readings=[hot(25, 800)]),
        example(readings=[hot(0, 700), hot(40, 2000)]),
    ],
    non_matches=[example(readings=[hot(3, 800)]), example(readings=[hot(0, 0)])],
)
def panel_reads_nothing(known: Known) -> Conclusions:
    """A panel gauge that reads no more than its error on a running engine reads zero."""
    nones = nothing_anywhere(known, gallery(known, Gauge.PANEL))
    if nones:
        yield from if_clear(patterns.GAUGE_READS_ZERO, max(nones))


@rule(
    source=JUDGEMENT,
    matches=[example(readings=[hot(0, 800, Gauge.DIRECT)])],
    non_matches=[example(readings=[hot(3, 800, Gauge.DIRECT)]), example(readings=[hot(0, 800)])],
)
def direct_gauge_reads_nothing(known: Known) -> Conclusions:
    """A direct gauge that reads no more than its error on a running engine means no pressure."""
    if nones := nothing_anywhere(known, gallery(known, Gauge.DIRECT)):
        yield from if_clear(direct_gauge.DIRECT_GAUGE_ZERO, max(nones))


@rule(
    source=idea_from(sources.PUMP_MAKER_PRESSURE_FLOW),
    matches=[
        example(readings=[cold(95, 2000)]),
        example(readings=[hot(50, 3000)]),
        example(readings=[replace(cold(80, 2000), at_least=True)]),
    ],
    non_matches=[example(readings=[cold(71, 2000)]), example(readings=[hot(50, 0)])],
)
def far_above_the_relief_setting(known: Known) -> Conclusions:
    """A reading far above the relief setting, or above its usual, is too high, hot or cold."""
    limit = PAST_SETTING * relief_setting(known)
    highs = [sure_high(r, limit) for r in gallery(known, Gauge.PANEL)]
    if highs:
        yield from if_clear(patterns.GAUGE_READS_HIGH, max(highs))


@rule(
    source=COMMON_PRACTICE,
    matches=[example(readings=[hot(88, 2500, Gauge.DIRECT)])],
    non_matches=[
        example(readings=[hot(71, 2500, Gauge.DIRECT)]),
        example(readings=[hot(88, 2500)]),
    ],
)
def direct_gauge_far_above_the_setting(known: Known) -> Conclusions:
    """A trusted gauge far above the relief setting, or above the usual: the pressure is too high."""
    limit = PAST_SETTING * relief_setting(known)
    highs = [sure_high(r, limit) for r in gallery(known, Gauge.DIRECT)]
    if highs:
        yield from if_clear(direct_gauge.DIRECT_GAUGE_HIGH, max(highs))


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(readings=[hot(125, 1500)]),
        example(readings=[hot(130, 3000)]),
        example(readings=[hot(85, 700)]),
    ],
    non_matches=[
        example(readings=[hot(90, 1500)]),
        example(readings=[hot(50, 0)]),
        example(readings=[hot(60, 700)]),
        example(readings=[cold(85, 700)]),
    ],
)
def far_past_what_a_pump_makes(known: Known) -> Conclusions:
    """A reading of about twice the relief setting is more than the engine can make.

    At hot idle a pump makes too little flow to hold more than its valve is set for. Misleads where
    the maker's setting is far from the typical one and was not entered.
    """
    limit = BEYOND_BELIEF * known.limit(relief_quantities.USUAL_RELIEF_SETTING)
    idle, past = known.limit(quantities.USUAL_IDLE_SPEED), PAST_SETTING * relief_setting(known)
    highs = [
        max(
            sure_above(r, limit),
            sure_above(r, past) * min(hot_share(r), idle_share(r, idle)),
        )
        for r in gallery(known, Gauge.PANEL)
    ]
    if highs and max(highs) >= SAY_SO:
        yield is_present(instrument_findings.MORE_THAN_IT_CAN_MAKE, min(max(highs), 0.95))


@rule(
    source=sources.GAUGE_MAKER_SENDERS,
    matches=[
        example(readings=[hot(5, 700), hot(25, 700, Gauge.DIRECT)]),
        example(readings=[hot(25, 700), hot(25, 700, Gauge.DIRECT)]),
        example(readings=[vague(25), vague(45, Gauge.DIRECT)]),
        example(readings=[hot(5, 700), vague(45, Gauge.DIRECT)]),
    ],
    non_matches=[
        example(readings=[vague(25), replace(vague(45, Gauge.DIRECT), rpm=2500.0)]),
        example(readings=[hot(5, 700), hot(45, 3000, Gauge.DIRECT)]),
        example(readings=[hot(20, 700), hot(25, 700, Gauge.DIRECT)]),
    ],
)
def panel_and_direct_gauge_side_by_side(known: Known) -> Conclusions:
    """Panel and direct gauge at the same moment should agree within about 5 psi.

    Two figures with the same words for when are most likely of one moment; so is a trusted one with
    no word on when, if it is enough for any speed. Misleads when tapped at different ports.
    """
    limit = known.limit(instrument_quantities.MOST_PANEL_ERROR)
    less, more, enough = [], [], shown_enough(known)
    for p, d in product(gallery(known, Gauge.PANEL), gallery(known, Gauge.DIRECT)):
        share = 1.0 if same_moment(p, d) else AT_ONCE
        if share == 1.0 or said_alike(p, d) or (enough and not speed_is_said(d)):
            less.append(counted(sure_lower(p, d, limit), share))
            more.append(counted(sure_lower(d, p, limit), share))
    apart = max((*less, *more), default=0.0)
    if less and (apart >= SAY_SO or _panels_agree(known, limit)):
        yield from if_clear(patterns.SECOND_INSTRUMENT_DISAGREES, apart)
    for finding, sure in (
        (trusted.PANEL_READS_TOO_LOW, max(less, default=0.0)),
        (trusted.PANEL_READS_TOO_HIGH, max(more, default=0.0)),
    ):
        if sure >= SAY_SO:
            yield is_present(finding, sure)


@rule(
    source=sources.TWO_GAUGE_METHOD,
    matches=[example(readings=[hot(40, 1500, Gauge.DIRECT, "pump"), hot(20, 1500, Gauge.DIRECT)])],
    non_matches=[
        example(readings=[hot(40, 1500, Gauge.DIRECT, "pump")]),
        example(readings=[hot(40, 3000, Gauge.DIRECT, "pump"), hot(20, 700, Gauge.DIRECT)]),
    ],
)
def two_ports_at_once(known: Known) -> Conclusions:
    """Two ports read with direct gauges at the same moment should agree within 5 psi."""
    direct = [r for r in known.readings() if r.gauge is Gauge.DIRECT and runs(r)]
    apart = [
        sure_lower(a, b, 5 * PSI)
        for a in direct
        for b in direct
        if a.tap != b.tap and same_moment(a, b)
    ]
    if apart:
        yield from if_clear(direct_gauge.PORTS_DIFFER, max(apart))


@rule(
    source=sources.ARMY_TM_272_TABLE,
    matches=[
        example(readings=[hot(5, 700, Gauge.DIRECT, "pump")]),
        example(readings=[hot(40, 1500, Gauge.DIRECT, "pump")]),
    ],
    non_matches=[example(readings=[hot(5, 700, Gauge.DIRECT)]), example(readings=[hot(5, 0)])],
)
def low_at_the_pump_itself(known: Known) -> Conclusions:
    """Low at the pump's own outlet points to the pump side; right there points to the engine.

    Misleads when a big leak behind pulls the pump's pressure down as well.
    """
    lows = [low(known, r) for r in known.readings() if at_pump(r) and runs(r)]
    if lows:
        yield from if_clear(direct_gauge.PUMP_PORT_LOW, max(lows))


@rule(
    source=sources.ARMY_TM_272_TABLE,
    matches=[example(readings=[hot(40, 1500, Gauge.DIRECT, "pump"), hot(5, 1500, Gauge.DIRECT)])],
    non_matches=[
        example(readings=[hot(5, 1500, Gauge.DIRECT)]),
        example(readings=[hot(40, 1500, Gauge.DIRECT, "pump")]),
    ],
)
def lost_between_pump_and_gallery(known: Known) -> Conclusions:
    """Right at the pump and low in the gallery at the same moment: it is lost in between."""
    pairs = [
        (1.0 - low(known, p)) * low(known, g)
        for p in known.readings()
        if at_pump(p) and runs(p)
        for g in gallery(known, Gauge.DIRECT)
        if same_moment(p, g)
    ]
    if pairs:
        yield from if_clear(direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY, max(pairs))


@rule(
    source=idea_from(sources.PRESSURE_TEST_MANUAL_2005),
    matches=[example(readings=[hot(8, 520)]), example(readings=[hot(12, 720)])],
    non_matches=[
        example(readings=[hot(8, 650)]),
        example(readings=[hot(40, 3000)]),
        example(features.IN_A_TRACTOR, readings=[hot(8, 420)]),
    ],
)
def idling_slower_than_its_figure(known: Known) -> Conclusions:
    """A reading at a speed below every idle figure of its kind: the engine idles too slowly.

    Misleads when the counter is wrong, or the engine was about to stall.
    """
    figures = known.limit_figures(quantities.USUAL_IDLE_SPEED)
    figure = max(figures)
    counted_speeds = (r for r in known.readings() if not r.rpm_spread)
    idling = [r.rpm for r in counted_speeds if is_hot(r) and idles(r, figure)]
    if idling and min(idling) > RUNNING:
        below = [sure_beyond(-min(idling), -0.93 * f, 30.0) for f in figures]
        if min(below) >= SAY_SO:
            yield is_present(direct_gauge.IDLE_BELOW_SPEC, min(below))
        elif max(below) <= 1.0 - SAY_SO:
            yield from if_clear(direct_gauge.IDLE_BELOW_SPEC, max(below))


@rule(
    source=idea_from(sources.ARMY_TM_272_TABLE),
    matches=[
        example(readings=[Reading(3000, 398.15, 20 * PSI)]),
        example(readings=[hot(20, 3000)]),
    ],
    non_matches=[
        example(readings=[Reading(3000, None, 20 * PSI)]),
        example(readings=[cold(50, 1000)]),
    ],
)
def oil_hotter_than_its_limit(known: Known) -> Conclusions:
    """Oil above its limit lowers the pressure in any engine; below it, heat is not the cause."""
    measured = (r for r in known.readings() if not r.oil_spread)
    heat = [r.oil_temperature for r in measured if r.oil_temperature and is_hot(r)]
    if heat:
        past = sure_beyond(
            max(heat),
            known.limit(oil_quantities.MOST_OIL_TEMPERATURE) - 1.0,
            oil_quantities.OIL_TEMPERATURE.spread,
        )
        yield from if_clear(oil_heat.OIL_TEMPERATURE_HIGH, past)
