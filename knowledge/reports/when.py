"""Engine speed and oil temperature as people say them: each word as a distribution.

Every figure here is judgement, as no source publishes what people mean by "hot idle"; a range such
as "idle within 100 rpm" is taken as nine cases in ten. Speeds are relative to the engine's idle
figure and to its top speed.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass
from itertools import pairwise

from knowledge.reports.words import Circumstance, Heat, Speed
from knowledge.units import PSI

CELSIUS = 273.15
USUAL_IDLE = 700.0  #: rpm
NEAR_IDLE = 0.75, 1.3  #: of that speed: a reading in between was taken at idle
SLOWEST_IDLE = 400.0  #: rpm, of old engines with a long stroke (judgement); slower is cranking
TOP_PETROL = 5500.0  #: rpm
TOP_DIESEL = 2600.0  #: rpm
LEAST_SPREAD = 20.0  #: rpm


@dataclass(frozen=True, slots=True)
class Spread:
    """A value known as a distribution: mean and standard deviation."""

    mean: float
    sd: float


@dataclass(frozen=True, slots=True)
class Speeds:
    """The idle figure and the top speed of an engine [rpm]."""

    idle: float = USUAL_IDLE
    top: float = TOP_PETROL

    @property
    def cruise(self) -> Spread:
        """Driving: 1800 to 3200 rpm with 5500 rpm at the top, 1260 to 2120 of 2600 rpm.

        >>> Speeds().cruise.mean
        2500.0
        """
        if self.top > 4000.0:
            return Spread(self.top / 2.2, 0.08 * self.top)
        return Spread(0.65 * self.top, 0.1 * self.top)


def speeds_of(idle: float | None, diesel: bool) -> Speeds:
    """Return the speeds of an engine from its idle figure [rpm] and its kind.

    >>> speeds_of(None, True).top
    2600.0
    """
    return Speeds(idle or USUAL_IDLE, TOP_DIESEL if diesel else TOP_PETROL)


def speed(word: Speed, of: Speeds) -> Spread:
    """Return what a word for the engine speed means [rpm].

    >>> speed(Speed.IDLE, Speeds())
    Spread(mean=700.0, sd=60.0)
    """
    match word:
        case Speed.CRANKING:
            return Spread(200.0, 40.0)
        case Speed.IDLE:
            return Spread(of.idle, 60.0)  # within 100 rpm
        case Speed.FAST_IDLE:
            return Spread(of.idle + 400.0, 150.0)
        case Speed.OFF_IDLE:
            return Spread(1.5 * of.idle, 0.15 * of.idle)
        case Speed.CRUISE:
            return of.cruise
        case Speed.HALF:
            return Spread(0.5 * of.top, 0.15 * of.top)
        case Speed.FULL:
            return Spread(0.95 * of.top, 0.07 * of.top)
    return Spread(of.cruise.mean, 0.2 * of.top)  # any speed


#: °C: mean and standard deviation
_HEAT = {
    Heat.COLD: Spread(20.0, 8.0),  # after a night, up to 30 °C
    Heat.WARMING: Spread(55.0, 10.0),
    Heat.HOT: Spread(92.0, 7.5),  # 80 to 105 °C
    Heat.VERY_HOT: Spread(112.0, 8.0),
    Heat.ANY: Spread(60.0, 28.0),
}
DRIVEN = Spread(88.0 + CELSIUS, 12.0)  #: K: of an engine in use on the road, field or water
_AFTER_MINUTES = Spread(80.0 + CELSIUS, 14.0)
UNKNOWN_HEAT_SD = 20.0  #: K: nothing is known of the oil temperature


def heat(word: Heat) -> Spread:
    """Return what a word for the oil temperature means [K].

    >>> round(heat(Heat.HOT).mean - 273.15)
    92
    """
    spread = _HEAT[word]
    return Spread(spread.mean + CELSIUS, spread.sd)


#: coolant and oil temperature, °C: oil follows slowly until the thermostat opens, then catches up
_COOLANT = ((-30.0, -30.0), (20.0, 20.0), (75.0, 60.0), (90.0, 85.0), (100.0, 98.0), (130.0, 125.0))


def oil_from_coolant(coolant: float) -> Spread:
    """Return the oil temperature to expect at a coolant temperature [K]; one sd is 9 K.

    The oil of an engine that has just warmed up lags behind its coolant.

    >>> round(oil_from_coolant(75 + 273.15).mean - 273.15)
    60
    """
    c = min(max(coolant - CELSIUS, _COOLANT[0][0]), _COOLANT[-1][0])
    for (low, oil_low), (high, oil_high) in pairwise(_COOLANT):
        if c <= high:
            share = (c - low) / (high - low)
            return Spread(oil_low + share * (oil_high - oil_low) + CELSIUS, 9.0)
    raise AssertionError("the last row is the largest value")


_DRIVING = frozenset(
    {
        Circumstance.SPEED,
        Circumstance.BENDS,
        Circumstance.BRAKING,
        Circumstance.ACCELERATING,
        Circumstance.SLOPE,
        Circumstance.ROUGH_ROAD,
        Circumstance.LOAD,
        Circumstance.HARD_RUN,
    }
)
_SPEEDS = {
    Circumstance.IDLE: Speed.IDLE,
    Circumstance.SLOWING: Speed.IDLE,
    Circumstance.OFF_IDLE: Speed.OFF_IDLE,
    Circumstance.START: Speed.FAST_IDLE,
}
_HEATS = {
    Circumstance.COLD: heat(Heat.COLD),
    Circumstance.WARMING: heat(Heat.WARMING),
    Circumstance.STANDING: heat(Heat.COLD),
    Circumstance.HARD_RUN: Spread(105.0 + CELSIUS, 10.0),
    Circumstance.HOT: heat(Heat.HOT),
    Circumstance.LATE: heat(Heat.HOT),
    Circumstance.MINUTES: _AFTER_MINUTES,
}


def unsaid_speed(during: Collection[Circumstance], cold: bool, of: Speeds) -> Spread:
    """Return the speed [rpm] of a reading whose speed was not said; ``cold``: with cold oil.

    A pressure "cold" is mostly read soon after the start. Where nothing is known it may have been
    idling or driven: the distribution reaches from idle to well above it.
    """
    for circumstance, word in _SPEEDS.items():
        if circumstance in during:
            return speed(word, of)
    if _DRIVING.intersection(during):
        return of.cruise
    if cold:
        return Spread(of.idle + 450.0, 350.0)
    return Spread(of.idle + 0.15 * (of.top - of.idle), 0.14 * of.top)


def unsaid_heat(word: Speed | None, during: Collection[Circumstance]) -> Spread | None:
    """Return the oil temperature [K] of a reading that has none, or None where nothing tells.

    None never counts as hot. An engine that is being driven is mostly warm.
    """
    for circumstance, spread in _HEATS.items():
        if circumstance in during:
            return spread
    if word is Speed.CRUISE or _DRIVING.intersection(during) or Circumstance.SLOWING in during:
        return DRIVEN
    return None


DIAL = 80 * PSI  #: Pa: full scale of a dial, where it is not said
DIAL_SD = 0.15  #: of the full scale, where it is not said: dials of 60 to 100 psi
EYE_SD = 0.05  #: of the full scale: a share of the dial as seen from the seat
ABOUT_SD = 0.1  #: of the figure in "about 40 psi"


def dial_share(share: float, full_scale: float | None = None) -> Spread:
    """Return the pressure [Pa] of a share of the dial; its full scale [Pa] where it is known.

    >>> round(dial_share(0.5).mean / PSI), round(dial_share(0.5, 80 * PSI).sd / PSI)
    (40, 4)
    """
    whole = full_scale or DIAL
    unsure = 0.0 if full_scale else DIAL_SD * share
    return Spread(share * whole, whole * (unsure**2 + EYE_SD**2) ** 0.5)


def off_the_top(full_scale: float | None = None) -> Spread:
    """Return the least pressure [Pa] where the needle has left the top of its dial."""
    whole = full_scale or DIAL
    return Spread(whole, 0.0 if full_scale else DIAL_SD * whole)


def between(low: float, high: float) -> Spread:
    """Return a value that lies evenly between two, in their unit.

    >>> round(between(40.0, 50.0).sd, 1)
    2.9
    """
    return Spread(0.5 * (low + high), (high - low) / 12.0**0.5)
