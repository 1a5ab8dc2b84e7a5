"""The relief valve's spring of a case: rate, preload, shims, and what a bench test should show."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from itertools import pairwise

import numpy as np

from diagnose.case.card_text import CardValue
from diagnose.case.case import Case
from diagnose.circuit.engine_model import numbers
from diagnose.errors import UsageError, plain
from diagnose.hydraulics import spring
from diagnose.hydraulics.engine import Engine
from knowledge.figures import EITHER_SIDE
from knowledge.stations.relief.quantities import (
    RELIEF_PLUNGER,
    RELIEF_RATE,
    USUAL_RELIEF_SETTING,
)
from knowledge.units import FORCE, LENGTH, UnitError, parse, unit_in

SHIMS = (0.25e-3, 0.5e-3, 1.0e-3, 2.0e-3)  #: m: thicknesses shown
_TEST = re.compile(r"\s*(.+?)\s*(?:\bat\b|@)\s*(.+?)\s*", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class SpringTest:
    """A force measured at a length [N, m]."""

    force: float
    length: float
    units: tuple[str | None, str | None] = field(default=(None, None), repr=False, compare=False)
    #: as typed, of force and length


@dataclass(frozen=True, slots=True, kw_only=True)
class ReliefSpring:
    """A spring and its valve as they should be; SI. None: nobody has stated it."""

    setting: float  #: opens at [Pa]
    least: float  #: accepted from [Pa]
    most: float  #: to [Pa]
    plunger: float  #: diameter [m]
    rate: float  #: [N/m]
    assumed: tuple[str, ...]  #: what is only typical: opening pressure, plunger, rate
    own_setting: bool = True  #: whether that is of this engine; else usual for its kind
    free_length: float | None = None
    printed: SpringTest | None = None  #: load and length that the maker prints
    wanted: float | None = None  #: another setting [Pa]
    tests: tuple[SpringTest, ...] = ()  #: the spring in hand, measured at one length or more

    @property
    def measured_rate(self) -> float | None:
        """Rate of the spring in hand [N/m], by its shortest and longest test; None with one."""
        by_length = sorted(self.tests, key=lambda t: t.length)
        if len(by_length) < 2:
            return None
        short, long = by_length[0], by_length[-1]
        return (short.force - long.force) / (long.length - short.length)

    @property
    def force_found(self) -> float | None:
        """Force of the spring in hand at the fitted length [N]; None where it was not measured.

        Where the fitted length is not known, one test is taken as made at it, and of several
        nobody knows which was.
        """
        if not self.tests or (self.fitted_length is None and len(self.tests) > 1):
            return None
        test, fitted = min(self.tests, key=lambda t: t.length), self.fitted_length
        rate = self.measured_rate or self.rate
        more = 0.0 if fitted is None else rate * (test.length - fitted)
        return max(test.force + more, 0.0)

    @property
    def length_to_open(self) -> float | None:
        """Length [m] at which the spring in hand opens the valve at its setting; None: not measured."""
        if not self.tests:
            return None
        test = min(self.tests, key=lambda t: t.length)
        return test.length + (test.force - self.force) / (self.measured_rate or self.rate)

    @property
    def opens_found(self) -> float | None:
        """Pressure [Pa] at which the spring in hand opens the valve; None: not measured."""
        force = self.force_found
        return None if force is None else float(spring.opening_pressure(force, self.plunger))

    @property
    def shim_found(self) -> float | None:
        """Shim [m] that brings the spring in hand to the setting; below zero: take so much out."""
        opens = self.opens_found
        if opens is None:
            return None
        rate = self.measured_rate or self.rate
        return float(spring.shim_for(self.setting - opens, self.plunger, rate))

    @property
    def force(self) -> float:
        """Force at the fitted length [N]."""
        return float(spring.force_to_open(self.setting, self.plunger))

    @property
    def preload(self) -> float:
        """How far it is pressed in with the valve shut [m]."""
        return self.force / self.rate

    @property
    def fitted_length(self) -> float | None:
        """Its length with the valve shut [m]."""
        return None if self.free_length is None else self.free_length - self.preload

    def gain(self, shim: float) -> float:
        """What a shim [m] adds to the setting [Pa]."""
        return float(spring.opening_pressure(self.rate * shim, self.plunger))

    def shim_to(self, setting: float) -> float:
        """Shim that brings the valve to a setting [m]; below zero: so much less."""
        return float(spring.shim_for(setting - self.setting, self.plunger, self.rate))

    @property
    def printed_opens_at(self) -> float | None:
        """The pressure [Pa] at which the maker's load, at its length, opens the plunger."""
        if self.printed is None:
            return None
        return float(spring.opening_pressure(self.printed.force, self.plunger))

    def passes(self, pressure: float) -> bool:
        """Whether a valve that opens at this pressure [Pa] is within its tolerance."""
        slack = 1e-9 * self.setting
        return self.least - slack <= pressure <= self.most + slack


def spring_of(
    case: Case,
    engine: Engine,
    wanted: float | None = None,
    plunger: float | None = None,
    tests: Sequence[SpringTest] = (),
) -> ReliefSpring:
    """Return the relief spring of a case: of its card and figures, else typical.

    ``engine``: columns of plausible engines; ``wanted``: another setting [Pa]; ``plunger``: its
    diameter as measured [m]; ``tests``: the spring in hand.
    """
    on_card = case.card.values if case.card else {}
    setting = float(np.median(np.asarray(engine.relief_setting)))
    stated = case.own_figures.get("relief_opens_at", ())
    middle = case.limits.get(USUAL_RELIEF_SETTING, setting)
    low, high = (1 - EITHER_SIDE) * middle, (1 + EITHER_SIDE) * middle
    for value in stated:
        if value.low is not None and value.high is not None and value.low < value.high:
            low, high = value.low, value.high
    known = {q.id for q in case.dimensions} | ({RELIEF_PLUNGER.id} if plunger else set())
    known |= {RELIEF_RATE.id} if len(tests) > 1 else set()
    parts = ((RELIEF_PLUNGER, "plunger diameter"), (RELIEF_RATE, "spring rate"))
    own = bool(stated) or USUAL_RELIEF_SETTING in case.limits
    assumed = [] if own else ["opening pressure"]
    assumed += [says for quantity, says in parts if quantity.id not in known]
    test = (
        _middle(on_card.get("relief_spring_load")),
        _middle(on_card.get("relief_spring_test_length")),
    )
    spring = ReliefSpring(
        setting=middle,
        least=low,
        most=high,
        plunger=plunger or float(np.median(np.asarray(engine.relief_plunger_diameter))),
        rate=numbers(case)[RELIEF_RATE.id],  # not of the engines drawn: chance would move it
        assumed=tuple(assumed),
        own_setting=own,
        free_length=_middle(on_card.get("relief_spring_length")),
        printed=SpringTest(test[0], test[1]) if test[0] and test[1] else None,
        wanted=wanted,
        tests=tuple(tests),
    )
    if spring.measured_rate and spring.free_length is None and RELIEF_RATE not in case.dimensions:
        return replace(
            spring, rate=spring.measured_rate
        )  # nothing better is known of the right one
    return spring


def _middle(value: CardValue | None) -> float | None:
    return value.middle if value else None


def parse_spring_tests(texts: Sequence[str]) -> tuple[SpringTest, ...]:
    """Read the tests of one spring. Raises UsageError, also where they are of no one spring."""
    tests = tuple(parse_spring_test(text) for text in texts)
    by_length = sorted(tests, key=lambda t: t.length)
    for short, long in pairwise(by_length):
        if short.length == long.length or short.force <= long.force:
            raise UsageError("--spring: of one spring the shorter length has the greater load")
    return tests


def parse_plunger(text: str) -> float:
    """Read a plunger's diameter [m], 3 to 60 mm. Raises UsageError.

    >>> parse_plunger("12.7 mm")
    0.0127
    """
    try:
        diameter = parse(text, LENGTH)
    except UnitError as error:
        raise UsageError(f"--plunger: {error}") from None
    if not 3e-3 <= diameter <= 60e-3:
        raise UsageError("--plunger: a diameter from 3 to 60 mm")
    return diameter


def parse_spring_test(text: str) -> SpringTest:
    """Read a load and the length it was measured at: "11.2 lbf at 1.75 in". Raises UsageError.

    >>> parse_spring_test("50 N at 40 mm")
    SpringTest(force=50.0, length=0.04)
    >>> parse_spring_test("50 N @ 40mm").length
    0.04
    """
    found = _TEST.fullmatch(text)
    try:
        if found is None:
            raise UnitError(f"'{plain(text, 40)}'; write it like '11.2 lbf at 1.75 in'")
        units = unit_in(found[1], FORCE), unit_in(found[2], LENGTH)
        test = SpringTest(parse(found[1], FORCE), parse(found[2], LENGTH), units)
    except UnitError as error:
        raise UsageError(f"--spring: {error}") from None
    if not (0.0 < test.force < 5000.0 and 2e-3 < test.length < 0.5):
        raise UsageError("--spring: a load up to 5000 N, a length from 2 to 500 mm")
    return test
