"""What one gauge reading is worth: its error, its state of running, the pressure wanted there.

Imported by the rules on readings and by ``reports``, ``oil``, ``case``, ``diagnosis``,
``instrument_only``, ``entry``, ``circuit``, ``signoff``, ``teardown`` and ``output``. Every threshold here is judgement unless a source is named;
the engine's own figures are arguments.
"""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from datetime import date, datetime
from math import erf, hypot, sqrt

from knowledge.judging import LEAST_SURE, sure_beyond
from knowledge.model import Finding, Gauge, Reading
from knowledge.rule_api import Derived, is_absent, is_present
from knowledge.units import PSI

PANEL_SPREAD = 3 * PSI  #: usual error of a panel gauge read by eye, one standard deviation
DIRECT_SPREAD = 2 * PSI  #: the same for a trusted direct gauge
HOT = 348.15  #: K, 75 °C: oil counts as hot from here
COLD = 318.15  #: K, 45 °C: oil counts as cold up to here
RUNNING = 350.0  #: rpm: below this the starter turns it, or nothing does
SPEED = 1500.0  #: rpm: "at speed" from here
IDLE_SLACK = 1.2  #: up to this much above its idle figure an engine counts as idling
NEXT_TO_NOTHING = 3 * PSI  #: a pressure that cannot be distinguished from none
PSI_PER_1000 = 10 * PSI  #: pressure wanted hot for each 1000 rpm (trade rule of thumb)
NEAR_SETTING = 0.85  #: this share of the relief setting counts as reaching it
REACHED_COLD = (
    1.0  #: cold oil stands above the setting in a sound engine, so this counts there (judgement)
)
BEYOND_BELIEF = 2.0  #: this share of the relief setting is more than a pump makes behind its valve
PAST_SETTING = 1.3  #: this share of the relief setting counts as past it
SAY_SO = 0.6  #: from this probability a reading gives a finding; nearer to even it gives none
PUMP_TAPS = frozenset({"pump", "pump outlet", "filter", "filter head"})


COUNTS = 0.6  #: a reading counts as hot, idling ... from this probability of having been so
UNDER = 0.85  #: of the figure in "under 25 psi": about what was read (judgement)
#: of the usual pressure: below the first it has fallen, above the second it has risen (judgement)
FALLEN, RISEN = 0.75, 1.4
USUAL_SPREAD = 0.1  #: of the usual pressure: error of what a person remembers of it
SUREST_OF_USUAL = 0.9  #: a comparison with the usual is never surer: it may have read wrongly then
SAME_HEAT = 15.0  #: K
#: readings no further apart are of one state, oil and speed (judgement)
SAME_STATE, SAME_SPEED = 20.0, 0.15  #: K, share of the speed
USUAL_HOT = 363.15  #: K: assumed where a reading has no temperature
#: standard normal quantiles of five equally likely values
_FIVE = (-1.2816, -0.5244, 0.0, 0.5244, 1.2816)


def gauge_error(reading: Reading) -> float:
    """One standard deviation of the gauge's error [Pa]: its own where stated, else the usual.

    >>> round(gauge_error(Reading(700, 363.0, 8 * PSI)) / PSI, 1)
    3.0
    >>> round(gauge_error(Reading(700, 363.0, 8 * PSI, gauge=Gauge.DIRECT)) / PSI, 1)
    2.0
    """
    if reading.error is not None and reading.error > 0.0:
        return reading.error
    return DIRECT_SPREAD if reading.gauge is Gauge.DIRECT else PANEL_SPREAD


def state_of(reading: Reading) -> tuple[float, float]:
    """Return speed [rpm] and oil temperature [K] of a reading, which is hot where it does not say."""
    heat = reading.oil_temperature
    return reading.rpm, USUAL_HOT if heat is None else heat


def states_agree(one: tuple[float, float], other: tuple[float, float]) -> bool:
    """Return whether two states, speed [rpm] and oil temperature [K] each, are about the same.

    >>> states_agree((700.0, 363.0), (650.0, 358.0)), states_agree((700.0, 363.0), (700.0, 333.0))
    (True, False)
    """
    return (
        abs(one[0] - other[0]) <= SAME_SPEED * max(one[0], other[0])
        and abs(one[1] - other[1]) <= SAME_STATE
    )


def of_one_state(one: Reading, other: Reading) -> bool:
    """Both readings were on one tap, at about the same speed and oil temperature."""
    return one.tap == other.tap and states_agree(state_of(one), state_of(other))


def spread_of(reading: Reading) -> float:
    """One standard deviation of a reading's error [Pa]: the gauge's, and that of a vague figure.

    >>> round(spread_of(Reading(700, 363.0, 8 * PSI, pressure_spread=4 * PSI)) / PSI, 1)
    5.0
    """
    own = gauge_error(reading)
    return hypot(own, reading.pressure_spread) if reading.pressure_spread else own


def sure_below(reading: Reading, wanted: float) -> float:
    """Probability that the true pressure is below ``wanted`` [Pa].

    5 psi on a panel gauge where 10 are wanted is most likely low; 10 is undecided. What bounds
    the pressure from above can make it low, never good, and the other way round.

    >>> round(sure_below(Reading(700, 363.0, 5 * PSI), 10 * PSI), 2)
    0.95
    >>> round(sure_below(Reading(700, 363.0, 10 * PSI), 10 * PSI), 2)
    0.5
    >>> sure_below(Reading(700, 363.0, 25 * PSI, at_most=True), 10 * PSI)
    0.5
    >>> round(sure_below(Reading(2500, 363.0, 25 * PSI, at_most=True), 25 * PSI), 2)
    0.89
    """
    said = reading.pressure * (UNDER if reading.at_most else 1.0)
    sure = sure_beyond(-said, -wanted, spread_of(reading))
    return _bounded(sure, reading.at_most, reading.at_least)


def sure_above(reading: Reading, wanted: float) -> float:
    """Probability that the true pressure is above ``wanted`` [Pa]."""
    sure = sure_beyond(reading.pressure, wanted, spread_of(reading))
    return _bounded(sure, reading.at_least, reading.at_most)


def _bounded(sure: float, not_less: bool, not_more: bool) -> float:
    """The probability where a bound leaves one side open."""
    if not_less:
        sure = max(sure, 0.5)
    return min(sure, 0.5) if not_more else sure


def sure_fallen(reading: Reading) -> float:
    """Probability that the pressure is well below the usual; 0 where that is not known.

    >>> sure_fallen(Reading(2500, 363.0, 40 * PSI, usual=80 * PSI))
    0.9
    """
    if not reading.usual:
        return 0.0
    sure = sure_beyond(FALLEN * reading.usual, reading.pressure, _usual_spread(reading))
    return min(_bounded(sure, reading.at_most, reading.at_least), SUREST_OF_USUAL)


def sure_risen(reading: Reading) -> float:
    """Probability that the pressure is well above the usual; 0 where that is not known."""
    if not reading.usual:
        return 0.0
    sure = sure_beyond(reading.pressure, RISEN * reading.usual, _usual_spread(reading))
    return min(_bounded(sure, reading.at_least, reading.at_most), SUREST_OF_USUAL)


def _usual_spread(reading: Reading) -> float:
    """Error of the difference from the usual [Pa]: on one gauge, most of its error is shared."""
    parts = (0.5 * gauge_error(reading), reading.pressure_spread)
    return hypot(*parts, USUAL_SPREAD * (reading.usual or 0.0))


def setting_here(setting: float, readings: Iterable[Reading]) -> float:
    """The relief setting [Pa] as this gauge shows it: the figure, or the highest usual pressure.

    A sound engine shows no more than its relief valve allows, so the usual pressure bounds the
    setting from below.
    """
    return max([setting, *(r.usual for r in readings if r.usual)])


def sure_low(reading: Reading, wanted: Callable[[Reading], float]) -> float:
    """Probability that a reading is below what is wanted where it was taken, or below its usual.

    ``wanted`` gives the pressure [Pa] wanted at the speed and oil temperature of a reading; the
    probability is the mean over the speeds and temperatures at which it may have been taken.
    """
    every = [sure_below(exact, wanted(exact)) for exact in possible(reading)]
    return max(sum(every) / len(every), sure_fallen(reading))


def sure_high(reading: Reading, limit: float) -> float:
    """Probability that a reading is above ``limit`` [Pa], or well above its usual."""
    return max(sure_above(reading, limit), sure_risen(reading))


def possible(reading: Reading) -> list[Reading]:
    """Readings at certain speeds and temperatures that a vague one may have been, equally likely.

    A reading in figures is the only one.

    >>> len(possible(Reading(700, 363.0, 5 * PSI, rpm_spread=60.0, oil_spread=8.0)))
    25
    """
    if not (reading.rpm_spread or reading.oil_spread):
        return [reading]
    heat, heats = reading.oil_temperature, [reading.oil_temperature]
    if heat is not None and reading.oil_spread:
        heats = [heat + z * reading.oil_spread for z in _FIVE]
    speeds = [reading.rpm]
    if reading.rpm_spread:
        speeds = [max(reading.rpm + z * reading.rpm_spread, 0.0) for z in _FIVE]
    return [
        replace(reading, rpm=n, oil_temperature=t, rpm_spread=0.0, oil_spread=0.0)
        for n in speeds
        for t in heats
    ]


def moments(reading: Reading, idle_speed: float) -> list[Reading]:
    """The readings that a report of "any speed" or "hot or cold" stands for; else itself.

    Any speed: at idle [rpm], a little above, and fast. Hot or cold: 20 and 92 °C.
    """
    heats = (293.15, 365.15) if reading.at_all_heats else (None,)
    fast = 0.8 * reading.rpm_spread
    speeds = (
        (idle_speed, reading.rpm - fast, reading.rpm + fast) if reading.at_all_speeds else (None,)
    )
    found = []
    for heat in heats:
        one = reading
        if heat is not None:
            one = replace(one, oil_temperature=heat, oil_spread=0.0, at_all_heats=False)
        for rpm in speeds:
            found.append(one if rpm is None else replace(one, rpm=rpm, rpm_spread=0.0))
    return found


def counted(sure: float, share: float) -> float:
    """How sure a statement is that holds only if a reading counts, which is ``share`` likely.

    >>> counted(0.99, 1.0), counted(0.9, 0.75), counted(0.9, 0.0)
    (0.99, 0.8, 0.5)
    """
    return sure if share == 1.0 else 0.5 + share * (sure - 0.5)


def _share_above(mean: float, spread: float, limit: float) -> float:
    """Probability that a value is at or above a limit; 0 or 1 for one without spread."""
    if spread <= 0.0:
        return float(mean >= limit)
    return 0.5 * (1.0 + erf((mean - limit) / (spread * sqrt(2.0))))


def hot_share(reading: Reading) -> float:
    """Probability that the oil was hot; 0 where nothing is known of it."""
    if reading.oil_temperature is None:
        return 0.0
    return _share_above(reading.oil_temperature, reading.oil_spread, HOT)


def cold_share(reading: Reading) -> float:
    """Probability that the oil was cold; 0 where nothing is known of it."""
    if reading.oil_temperature is None:
        return 0.0
    return _share_above(-reading.oil_temperature, reading.oil_spread, -COLD)


def speed_share(reading: Reading, low: float = SPEED, high: float = float("inf")) -> float:
    """Probability that the speed was from ``low`` up to ``high`` [rpm], both included."""
    below = _share_above(-reading.rpm, reading.rpm_spread, -high)
    return max(_share_above(reading.rpm, reading.rpm_spread, low) + below - 1.0, 0.0)


def idle_share(reading: Reading, idle_speed: float) -> float:
    """Probability that the engine ran at or near its idle speed [rpm]."""
    return speed_share(reading, RUNNING, idle_speed * IDLE_SLACK)


def faster_share(fast: Reading, slow: Reading, by: float) -> float:
    """Probability that one reading was taken faster than another by ``by`` [rpm] or more."""
    spread = hypot(fast.rpm_spread, slow.rpm_spread)
    return _share_above(fast.rpm - slow.rpm, spread, by)


def is_hot(reading: Reading) -> bool:
    """The oil was hot, and known to be."""
    return hot_share(reading) >= COUNTS


def is_cold(reading: Reading) -> bool:
    """The oil was cold, and known to be."""
    return cold_share(reading) >= COUNTS


def runs(reading: Reading) -> bool:
    """The engine ran by itself."""
    return reading.rpm >= RUNNING


def idles(reading: Reading, idle_speed: float) -> bool:
    """The engine ran at or near its idle speed [rpm]."""
    return idle_share(reading, idle_speed) >= COUNTS


def at_speed(reading: Reading) -> bool:
    """The engine ran well above idle."""
    return speed_share(reading) >= COUNTS


def is_bound(reading: Reading) -> bool:
    """The figure bounds the pressure, and is not the pressure itself."""
    return reading.at_most or reading.at_least


def at_pump(reading: Reading) -> bool:
    """The gauge was tapped near the pump, before the gallery."""
    return reading.tap.strip().lower() in PUMP_TAPS


def wanted_hot(
    rpm: float, hot_idle: float, relief_setting: float, running: float = 2 * PSI_PER_1000
) -> float:
    """Least pressure [Pa] for hot oil: the idle figure, then ten psi a thousand, up to the relief.

    ``running`` [Pa]: the figure at 2000 rpm; in proportion below, never less above. Where it is less
    than ten psi a thousand, its own share goes on.

    >>> [round(wanted_hot(n, 10 * PSI, 55 * PSI) / PSI) for n in (700, 2000, 4000, 6500)]
    [10, 20, 40, 47]
    >>> [round(wanted_hot(n, 10 * PSI, 55 * PSI, 35 * PSI) / PSI) for n in (1000, 2000, 3000, 4000)]
    [18, 35, 35, 40]
    >>> [round(wanted_hot(n, 5 * PSI, 30 * PSI, 15 * PSI) / PSI) for n in (1200, 2000, 2500)]
    [9, 15, 19]
    """
    by_speed = running * rpm / 2000.0
    if rpm > 2000.0:
        by_speed = max(running, min(PSI_PER_1000, running / 2.0) * rpm / 1000.0)
    return min(max(hot_idle, by_speed), NEAR_SETTING * relief_setting)


def wanted_cold(rpm: float, hot_idle: float, relief_setting: float) -> float:
    """Least pressure [Pa] for cold oil: twice the hot idle figure, most of the setting at speed.

    >>> [round(wanted_cold(n, 10 * PSI, 55 * PSI) / PSI) for n in (700, 2000)]
    [20, 38]
    """
    if rpm >= SPEED:
        return 0.7 * relief_setting
    return min(2.0 * hot_idle, 0.7 * relief_setting)


def same_heat(one: Reading, other: Reading) -> bool:
    """Both readings were at oil of about the same temperature (15 K), or neither was measured."""
    if one.oil_temperature is None or other.oil_temperature is None:
        return one.oil_temperature is other.oil_temperature
    if max(one.oil_spread, other.oil_spread) > SAME_HEAT:
        return False
    return abs(one.oil_temperature - other.oil_temperature) <= SAME_HEAT


def same_moment(one: Reading, other: Reading) -> bool:
    """Both readings were on the same day, at about the same speed (15 %) and oil temperature."""
    if one.when is not None and other.when is not None and _day(one.when) != _day(other.when):
        return False
    apart = 0.15 * max(one.rpm, other.rpm)
    if max(one.rpm_spread, other.rpm_spread) > apart:
        return False
    return same_heat(one, other) and abs(one.rpm - other.rpm) <= apart


def said_alike(one: Reading, other: Reading) -> bool:
    """Both readings were given with the same words for speed and heat, or with none."""
    when = [(r.rpm, r.rpm_spread, r.oil_temperature, r.oil_spread, r.when) for r in (one, other)]
    return when[0] == when[1] and not (is_bound(one) or is_bound(other))


def _day(when: date) -> date:
    return when.date() if isinstance(when, datetime) else when


def same_gauge(one: Reading, other: Reading) -> bool:
    """Both readings were at the same kind of gauge on the same tap."""
    return (one.gauge, one.tap) == (other.gauge, other.tap)


def sure_lower(one: Reading, other: Reading, by: float) -> float:
    """Probability that ``one`` is truly lower than ``other`` by more than ``by`` [Pa].

    On the same gauge the errors are mostly shared, so half of one spread is taken; between
    gauges both errors count.

    >>> low, high = Reading(3000, 363.0, 20 * PSI), Reading(1500, 363.0, 35 * PSI)
    >>> sure_lower(low, high, 3 * PSI)
    0.99
    """
    if same_gauge(one, other):
        spread = hypot(0.5 * gauge_error(one), one.pressure_spread, other.pressure_spread)
    else:
        spread = hypot(spread_of(one), spread_of(other))
    sure = sure_beyond(other.pressure - one.pressure, by, spread)
    return _bounded(sure, one.at_most or other.at_least, one.at_least or other.at_most)


def if_clear(finding: Finding, sure: float) -> Iterator[Derived]:
    """Yield present or absent, or nothing where the gauge's error leaves it open."""
    if sure >= SAY_SO:
        yield is_present(finding, min(sure, 1.0 - LEAST_SURE))
    if sure <= 1.0 - SAY_SO:
        yield is_absent(finding, min(1.0 - sure, 1.0 - LEAST_SURE))
