"""What a look at a gauge is compared with: pressures wanted, hot and cold, and when looks compare.

Wanted hot: the idle figure, then 10 psi a thousand revolutions (trade rule), up to 85 % of the
relief setting. Wanted cold: twice the idle figure, or 70 % of the setting at speed. Figures in psi.
"""

from __future__ import annotations

from typing import Any

import pytest

from knowledge.book import the_book
from knowledge.judging import sure_beyond
from knowledge.model import Gauge, Reading
from knowledge.pressure import gauge
from knowledge.units import PSI


@pytest.mark.parametrize(
    ("rpm", "idle", "relief", "hot", "cold"),
    [
        (700, 10, 55, 10.0, 20.0),
        (1000, 10, 55, 10.0, 20.0),
        (1499, 10, 55, 14.99, 20.0),
        (1500, 10, 55, 15.0, 38.5),  # at speed from here
        (2000, 10, 55, 20.0, 38.5),
        (4000, 10, 55, 40.0, 38.5),
        (4700, 10, 55, 46.75, 38.5),  # the relief valve holds it: 0.85 * 55
        (9000, 10, 55, 46.75, 38.5),
        (700, 25, 30, 25.0, 21.0),  # a low setting: 0.7 * 30 is less than twice the idle figure
        (700, 30, 30, 25.5, 21.0),
        (3000, 10, 30, 25.5, 21.0),
    ],
)
def test_pressure_wanted(rpm: float, idle: float, relief: float, hot: float, cold: float) -> None:
    figures = (rpm, idle * PSI, relief * PSI)
    assert gauge.wanted_hot(*figures) / PSI == pytest.approx(hot)
    assert gauge.wanted_cold(*figures) / PSI == pytest.approx(cold)


def look(
    rpm: float = 700.0, celsius: float | None = 90.0, psi: float = 10.0, **more: Any
) -> Reading:
    kelvin = None if celsius is None else celsius + 273.15
    return Reading(rpm, kelvin, psi * PSI, **more)


@pytest.mark.parametrize(
    ("celsius", "hot", "cold"),
    [(75.1, True, False), (74.9, False, False), (45.1, False, False), (44.9, False, True)],
)
def test_hot_and_cold(celsius: float, hot: bool, cold: bool) -> None:
    assert gauge.is_hot(look(celsius=celsius)) is hot
    assert gauge.is_cold(look(celsius=celsius)) is cold
    unknown = look(celsius=None)
    assert not gauge.is_hot(unknown)
    assert not gauge.is_cold(unknown)


@pytest.mark.parametrize(
    ("rpm", "runs", "idles", "fast"),
    [
        (349, False, False, False),
        (350, True, True, False),
        (840, True, True, False),  # up to a fifth above the idle figure
        (841, True, False, False),
        (1499, True, False, False),
        (1500, True, False, True),
    ],
)
def test_running_idling_and_at_speed(rpm: float, runs: bool, idles: bool, fast: bool) -> None:
    one = look(rpm)
    assert (gauge.runs(one), gauge.idles(one, 700.0), gauge.at_speed(one)) == (runs, idles, fast)


@pytest.mark.parametrize(
    ("one", "other", "heat", "moment"),
    [
        (look(), look(), True, True),
        (look(celsius=90), look(celsius=105), True, True),
        (look(celsius=90), look(celsius=105.1), False, False),
        (look(celsius=None), look(celsius=None), True, True),
        (look(celsius=None), look(celsius=90), False, False),
        (look(1000), look(850), True, True),  # 15 % of the faster
        (look(1000), look(849), True, False),
        (look(849), look(1000), True, False),
    ],
)
def test_which_looks_are_compared(one: Reading, other: Reading, heat: bool, moment: bool) -> None:
    assert gauge.same_heat(one, other) is heat
    assert gauge.same_moment(one, other) is moment
    assert gauge.same_moment(other, one) is moment


@pytest.mark.parametrize("tap", ["pump", " Pump ", "filter", "filter head", "PUMP OUTLET"])
def test_taps_before_the_gallery(tap: str) -> None:
    assert gauge.at_pump(look(tap=tap))
    assert not gauge.at_pump(look(tap="gallery"))


def test_the_error_of_a_gauge() -> None:
    """3 psi read by eye on the panel, 2 on a trusted gauge, its own where it is known."""
    assert gauge.spread_of(look()) == pytest.approx(3 * PSI)
    assert gauge.spread_of(look(gauge=Gauge.DIRECT)) == pytest.approx(2 * PSI)
    own = Reading(700.0, 363.0, 10 * PSI, error=0.5 * PSI)
    assert gauge.spread_of(own) == pytest.approx(0.5 * PSI)
    none = Reading(700.0, 363.0, 10 * PSI, error=0.0)
    assert gauge.spread_of(none) == pytest.approx(3 * PSI)


#: how many errors past the limit, and how sure that makes (the normal distribution's table)
NORMAL = [(0.0, 0.5), (1.0, 0.8413), (-1.0, 0.1587), (2.0, 0.9772), (1.6449, 0.95), (9.0, 0.99)]


@pytest.mark.parametrize(("errors", "sure"), NORMAL)
def test_how_sure_a_reading_makes(errors: float, sure: float) -> None:
    assert sure_beyond(10.0 + 2.0 * errors, 10.0, 2.0) == pytest.approx(sure, abs=1e-4)
    panel = look(psi=10.0 + 3.0 * errors)
    assert gauge.sure_above(panel, 10 * PSI) == pytest.approx(sure, abs=1e-4)
    assert gauge.sure_below(look(psi=10.0 - 3.0 * errors), 10 * PSI) == pytest.approx(
        sure, abs=1e-4
    )


@pytest.mark.parametrize("spread", [0.0, -1.0])
def test_without_an_error_nothing_is_judged(spread: float) -> None:
    with pytest.raises(ValueError, match="above zero"):
        sure_beyond(1.0, 1.0, spread)


def test_two_looks_at_one_gauge_share_most_of_its_error() -> None:
    """Half of one error counts between looks at one gauge; between two gauges both errors do."""
    low, high = look(3000, psi=20.0), look(1500, psi=23.0)
    assert gauge.sure_lower(low, high, 0.0) == pytest.approx(0.9772, abs=1e-4)  # 3 psi of 1.5
    direct = look(1500, psi=20.0 + 13**0.5, gauge=Gauge.DIRECT)
    assert gauge.sure_lower(low, direct, 0.0) == pytest.approx(0.8413, abs=1e-4)  # 3 and 2 psi
    assert gauge.sure_lower(low, high, 3 * PSI) == pytest.approx(0.5)


@pytest.mark.parametrize(
    ("sure", "state", "certainty"),
    [
        (1.0, "present", 0.99),
        (0.8, "present", 0.8),
        (0.61, "present", 0.61),
        (0.59, None, 0.0),
        (0.5, None, 0.0),
        (0.41, None, 0.0),
        (0.39, "absent", 0.61),
        (0.1, "absent", 0.9),
        (0.0, "absent", 0.99),
    ],
)
def test_a_reading_near_even_concludes_nothing(
    sure: float, state: str | None, certainty: float
) -> None:
    """From 60 % it is concluded, one way or the other, and never for certain."""
    finding = the_book().findings["gauge_reads_low"]
    found = [(c.state.value, round(c.sure, 6)) for c in gauge.if_clear(finding, sure)]
    assert found == ([(state, certainty)] if state else [])
