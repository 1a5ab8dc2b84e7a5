"""Pressures as people write them: a figure, a range, a bound, a share of the dial, nothing."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from knowledge.reports.when import ABOUT_SD, Spread, between, dial_share, off_the_top
from knowledge.reports.words import Bound
from knowledge.units import PRESSURE, PSI, UnitError, parse, pointed, unit_named

NUMBER = r"(?:\d+(?:\.\d*)?|\.\d+)"
UNIT = r"[^\W\d_][\w/²]*"  #: a unit of pressure; ``unit_named`` says whether it is one
BOUNDS = {
    Bound.AT_MOST: "no more than|not more than|less than|never above|never over|not above|at most|"
    "up to|under|below",
    Bound.AT_LEAST: "more than|never below|never under|at least|over|above",
}
ABOUT = "about|around|roughly|some"
SHARES = {
    "a third": Fraction(1, 3),
    "one third": Fraction(1, 3),
    "third": Fraction(1, 3),
    "two thirds": Fraction(2, 3),
    "a half": Fraction(1, 2),
    "half": Fraction(1, 2),
    "a quarter": Fraction(1, 4),
    "one quarter": Fraction(1, 4),
    "quarter": Fraction(1, 4),
    "three quarters": Fraction(3, 4),
}
NOTHING = ("nothing", "zero", "none", "0")
_SHARE = "|".join(sorted(SHARES, key=len, reverse=True)) + r"|\d{1,2}/\d{1,2}|\d{1,3} ?%"
DIAL = rf"(?:of )?(?:the |a |an )?(?:(?P<full>{NUMBER}) ?(?P<unit>{UNIT}) )?(?:dial|scale)"
SHARE_OF_DIAL = rf"(?P<share>{_SHARE})(?: {DIAL})"
OFF_THE_TOP = rf"(?:off the top|off the scale|off the dial|pegged)(?: {DIAL})?"
RANGE = rf"(?P<low>{NUMBER})(?: to | ?- ?| ?– ?)(?P<high>{NUMBER}) ?(?P<unit>{UNIT})"
_BOUND = "|".join(BOUNDS.values())
BOUNDED = rf"(?P<bound>{_BOUND}) (?P<rest>.+)"
APPROXIMATE = rf"(?:(?:{ABOUT}) |~ ?)(?P<rest>.+)"
LONGEST = 100  #: characters; a real pressure is far shorter
_LIKE = "'8 psi', '40 to 50 psi', 'under 25 psi', 'a third of the dial', 'off the top' or '0'"


@dataclass(frozen=True, slots=True)
class Pressure:
    """A pressure in Pa, its spread (one standard deviation), and whether it is a bound."""

    value: float
    spread: float = 0.0
    bound: Bound = Bound.EXACT
    ever: bool = False  #: the bound holds whenever one looked: "never above"

    @staticmethod
    def of(spread: Spread, bound: Bound = Bound.EXACT) -> Pressure:
        """The pressure with this mean and spread."""
        return Pressure(spread.mean, spread.sd, bound)


def pressure_of(text: str) -> Pressure:
    """The pressure a text gives.

    >>> round(pressure_of("a third of the dial").value / PSI)
    27
    >>> pressure_of("under 25 psi").bound.value
    'at most'

    Raises UnitError with right spellings.
    """
    if len(text) > LONGEST:
        return _figure(text)  # which refuses it
    text = pointed(text)
    wanted = " ".join(text.lower().split())
    if wanted in NOTHING:
        return Pressure(0.0)
    if found := re.fullmatch(SHARE_OF_DIAL, wanted):
        share = _share(found["share"])
        if share is None or share > 1:
            raise UnitError(f"'{wanted[:40]}' is no share of a dial")
        return Pressure.of(dial_share(float(share), _full_scale(found)))
    if found := re.fullmatch(OFF_THE_TOP, wanted):
        return Pressure.of(off_the_top(_full_scale(found)), Bound.AT_LEAST)
    if found := re.fullmatch(RANGE, wanted):
        low, high = (parse(f"{found[k]} {found['unit']}", PRESSURE) for k in ("low", "high"))
        if low > high:
            raise UnitError(f"'{wanted[:40]}': the smaller figure comes first")
        return Pressure.of(between(low, high))
    if found := re.fullmatch(BOUNDED, wanted):
        bound = next(b for b, words in BOUNDS.items() if found["bound"] in words.split("|"))
        inner = pressure_of(found["rest"])
        return Pressure(inner.value, inner.spread, bound, found["bound"].startswith("never"))
    if found := re.fullmatch(APPROXIMATE, wanted):
        inner = pressure_of(found["rest"])
        return Pressure(inner.value, max(ABOUT_SD * inner.value, PSI, inner.spread), inner.bound)
    return _figure(text)


def _figure(text: str) -> Pressure:
    try:
        return Pressure(parse(text, PRESSURE))
    except UnitError as error:
        if any(c.isdigit() for c in text):
            raise
        raise UnitError(f"{error}; or {_LIKE}") from None


def _share(text: str) -> Fraction | None:
    if text in SHARES:
        return SHARES[text]
    if text.endswith("%"):
        return Fraction(int(text[:-1]), 100)
    top, _, bottom = text.partition("/")
    return Fraction(int(top), int(bottom)) if int(bottom) else None


def _full_scale(found: re.Match[str]) -> float | None:
    if not (full := found["full"]):
        return None
    value = parse(f"{full} {found['unit']}", PRESSURE)
    return value or None


def pressure_unit(text: str) -> str | None:
    """The unit of pressure a text uses, in a range or a bound too.

    >>> pressure_unit("3 to 4 bar")
    'bar'
    """
    for found in re.finditer(rf"(?:{NUMBER}) ?({UNIT}\d?)", pointed(text)):
        if unit_named(found[1], PRESSURE):
            return found[1]
    return None
