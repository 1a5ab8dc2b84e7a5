"""What one gauge reading is worth: its error, its state of running, the pressure wanted there.

Imported by the rules on readings and by ``circuit`` and ``signoff``. Every threshold here is
judgement unless a source is named; the engine's own figures are arguments.
"""

from collections.abc import Iterator
from datetime import date, datetime

from knowledge.judging import LEAST_SURE, sure_beyond
from knowledge.model import Finding, Reading
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
PAST_SETTING = 1.3  #: this share of the relief setting counts as past it
SAY_SO = 0.6  #: from this probability a reading gives a finding; nearer to even it gives none
PUMP_TAPS = frozenset({"pump", "pump outlet", "filter", "filter head"})


def spread_of(reading: Reading) -> float:
    """One standard deviation of a reading's error [Pa]: its own where stated, else the usual.

    >>> round(spread_of(Reading(700, 363.0, 8 * PSI)) / PSI, 1)
    3.0
    >>> round(spread_of(Reading(700, 363.0, 8 * PSI, gauge="direct")) / PSI, 1)
    2.0
    """
    if reading.error is not None and reading.error > 0.0:
        return reading.error
    return DIRECT_SPREAD if reading.gauge == "direct" else PANEL_SPREAD


def sure_below(reading: Reading, wanted: float) -> float:
    """Probability that the true pressure is below ``wanted`` [Pa].

    5 psi on a panel gauge where 10 are wanted is most likely low; 10 is undecided:

    >>> round(sure_below(Reading(700, 363.0, 5 * PSI), 10 * PSI), 2)
    0.95
    >>> round(sure_below(Reading(700, 363.0, 10 * PSI), 10 * PSI), 2)
    0.5
    """
    return sure_beyond(-reading.pressure, -wanted, spread_of(reading))


def sure_above(reading: Reading, wanted: float) -> float:
    """Probability that the true pressure is above ``wanted`` [Pa]."""
    return sure_beyond(reading.pressure, wanted, spread_of(reading))


def is_hot(reading: Reading) -> bool:
    """The oil was hot, and known to be."""
    return reading.oil_temperature is not None and reading.oil_temperature >= HOT


def is_cold(reading: Reading) -> bool:
    """The oil was cold, and known to be."""
    return reading.oil_temperature is not None and reading.oil_temperature <= COLD


def runs(reading: Reading) -> bool:
    """The engine ran by itself."""
    return reading.rpm >= RUNNING


def idles(reading: Reading, idle_speed: float) -> bool:
    """The engine ran at or near its idle speed [rpm]."""
    return runs(reading) and reading.rpm <= idle_speed * IDLE_SLACK


def at_speed(reading: Reading) -> bool:
    """The engine ran well above idle."""
    return reading.rpm >= SPEED


def at_pump(reading: Reading) -> bool:
    """The gauge was tapped near the pump, before the gallery."""
    return reading.tap.strip().lower() in PUMP_TAPS


def wanted_hot(rpm: float, hot_idle: float, relief_setting: float) -> float:
    """Least pressure [Pa] for hot oil: the idle figure, then ten psi a thousand, up to the relief.

    >>> [round(wanted_hot(n, 10 * PSI, 55 * PSI) / PSI) for n in (700, 2000, 4000, 6500)]
    [10, 20, 40, 47]
    """
    return min(max(hot_idle, PSI_PER_1000 * rpm / 1000.0), NEAR_SETTING * relief_setting)


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
    return abs(one.oil_temperature - other.oil_temperature) <= 15.0


def same_moment(one: Reading, other: Reading) -> bool:
    """Both readings were on the same day, at about the same speed (15 %) and oil temperature."""
    if one.when is not None and other.when is not None and _day(one.when) != _day(other.when):
        return False
    return same_heat(one, other) and abs(one.rpm - other.rpm) <= 0.15 * max(one.rpm, other.rpm)


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
        spread = 0.5 * spread_of(one)
    else:
        spread = (spread_of(one) ** 2 + spread_of(other) ** 2) ** 0.5
    return sure_beyond(other.pressure - one.pressure, by, spread)


def if_clear(finding: Finding, sure: float) -> Iterator[Derived]:
    """Yield present or absent, or nothing where the gauge's error leaves it open."""
    if sure >= SAY_SO:
        yield is_present(finding, min(sure, 1.0 - LEAST_SURE))
    if sure <= 1.0 - SAY_SO:
        yield is_absent(finding, min(1.0 - sure, 1.0 - LEAST_SURE))
