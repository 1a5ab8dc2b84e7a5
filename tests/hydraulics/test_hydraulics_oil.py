"""The oil: thinner when hotter, blends between their parts, and figures of two other sources."""

from __future__ import annotations

import numpy as np
import pytest
from chemicals.viscosity import VI_Hs, VI_Ls, VI_nus
from chemicals.viscosity import viscosity_index as library_index
from hypothesis import assume, given
from hypothesis import strategies as st

from diagnose.hydraulics import aeration, oil
from diagnose.hydraulics.oil import DIESEL, PETROL, Oil
from diagnose.hydraulics.viscosity_index import kv40_from_vi, reference_oils, viscosity_index
from knowledge.stations.oil.grades import HOT_GRADES, WINTER_GRADES

CANS = [f"{w}-{h}" for w in WINTER_GRADES for h in HOT_GRADES] + list(HOT_GRADES)
celsius = st.floats(-30.0, 160.0).map(lambda t: t + 273.15)
nus = st.floats(-6.67, 1.0).map(lambda p: 10**p)  # 0.21 mm2/s and up
shares = st.floats(0.0, 1.0)


@st.composite
def oils(draw: st.DrawFn) -> Oil:
    """Any engine oil one can buy, and some one cannot."""
    kv100, vi = draw(st.floats(3e-6, 30e-6)), draw(st.floats(80.0, 220.0))
    return Oil(float(kv40_from_vi(kv100, vi)), kv100, draw(st.floats(820.0, 910.0)))


@given(nus)
def test_the_chart_there_and_back(nu: float) -> None:
    """Height and viscosity turn into each other exactly."""
    assert float(oil.from_chart_height(oil.chart_height(nu))) == pytest.approx(nu, rel=1e-9)


@given(oils())
def test_the_line_goes_through_both_points(some: Oil) -> None:
    """ASTM D341 gives back at 40 and 100 °C what it was drawn through."""
    line = oil.walther(some.kv40, some.kv100)
    assert float(oil.kinematic_viscosity(oil.T40, *line)) == pytest.approx(some.kv40, rel=1e-9)
    assert float(oil.kinematic_viscosity(oil.T100, *line)) == pytest.approx(some.kv100, rel=1e-9)


@given(oils(), celsius, celsius)
def test_hotter_is_thinner_and_lighter(some: Oil, one: float, other: float) -> None:
    """Viscosity and density only fall with temperature."""
    assume(abs(one - other) > 1e-3)
    cool, hot = sorted((one, other))
    assert oil.dynamic_viscosity(some, hot) < oil.dynamic_viscosity(some, cool)
    assert oil.density(hot, some.rho15) < oil.density(cool, some.rho15)


@given(oils(), st.floats(1.001, 2.0), st.floats(1.001, 2.0), st.floats(0.0, 1.0))
def test_thick_stays_thicker(some: Oil, at_40: float, at_100: float, between: float) -> None:
    """An oil thicker at both points is thicker between them."""
    t = oil.T40 + between * (oil.T100 - oil.T40)
    thicker = oil.walther(some.kv40 * at_40, some.kv100 * at_100)
    thinner = oil.walther(some.kv40, some.kv100)
    assert oil.kinematic_viscosity(t, *thicker) > oil.kinematic_viscosity(t, *thinner)


@given(nus, nus, shares)
def test_a_blend_lies_between_its_parts(thick: float, thin: float, share: float) -> None:
    """Neither thicker than the thick nor thinner than the thin; unmixed it is the part itself."""
    low, high = sorted((thick, thin))
    blend = float(oil.blended(thick, share, thin))
    assert low * (1 - 1e-9) <= blend <= high * (1 + 1e-9)
    assert float(oil.blended(thick, 0.0, thin)) == pytest.approx(thick, rel=1e-9)
    assert float(oil.blended(thick, 1.0, thin)) == pytest.approx(thin, rel=1e-9)


@given(oils(), st.floats(0.001, 0.1), celsius)
def test_fuel_thins_and_petrol_thins_more(some: Oil, share: float, t: float) -> None:
    """At any running temperature, and the more of it the more."""
    assume(t > oil.T40)
    neat, diesel, petrol, more = (
        oil.dynamic_viscosity(o, t)
        for o in (
            some,
            oil.diluted(some, share, DIESEL),
            oil.diluted(some, share, PETROL),
            oil.diluted(some, 2 * share, PETROL),
        )
    )
    assert neat > diesel > petrol > more


@given(oils(), st.lists(celsius, min_size=1, max_size=5))
def test_an_array_is_its_elements(some: Oil, temperatures: list[float]) -> None:
    """Arrays give what floats give, one by one."""
    whole = oil.dynamic_viscosity(some, np.array(temperatures))
    assert whole == pytest.approx([float(oil.dynamic_viscosity(some, t)) for t in temperatures])


def test_oils_and_temperatures_broadcast() -> None:
    """Three oils in a row under two temperatures in a column."""
    some = Oil(np.array([60e-6, 96e-6, 140e-6]), np.array([10e-6, 14.4e-6, 15e-6]))
    mu = oil.dynamic_viscosity(some, np.array([[353.15], [383.15]]))
    assert np.shape(mu) == (2, 3)
    assert np.shape(oil.diluted(some, np.array([[0.0], [0.05]]), DIESEL).kv100) == (2, 3)


@given(st.floats(2e-6, 100e-6), st.floats(0.0, 350.0))
def test_index_there_and_back(kv100: float, vi: float) -> None:
    """The viscosity at 40 °C of an index has that index, but for the seam at 100."""
    kv40 = kv40_from_vi(kv100, vi)
    assume(kv40 > 1.05 * kv100)
    assert float(viscosity_index(kv40, kv100)) == pytest.approx(vi, abs=1e-6)


@given(st.floats(2.0e-6, 95e-6), st.floats(40.0, 300.0))
def test_index_against_the_library(kv100: float, vi: float) -> None:
    """The ``chemicals`` library, which interpolates the standard's own table."""
    kv40 = float(kv40_from_vi(kv100, vi))
    assume(kv40 > 1.05 * kv100)
    assert float(viscosity_index(kv40, kv100)) == pytest.approx(library_index(kv40, kv100), abs=0.6)


def test_reference_oils_against_the_whole_table() -> None:
    """All 311 rows of ASTM D2270, as that library carries them, to 0.12 %."""
    scale = 1e-6 if max(VI_nus) > 1 else 1.0
    low, high = reference_oils(np.array(VI_nus) * scale)
    assert low == pytest.approx(np.array(VI_Ls) * scale, rel=1.2e-3)
    assert high == pytest.approx(np.array(VI_Hs) * scale, rel=1.2e-3)


@pytest.mark.parametrize("can", CANS)
def test_every_grade_makes_an_oil(can: str) -> None:
    """Every pair of J300 numbers, hot inside its band, thinner under shear only if a multigrade."""
    some = Oil.of_grade(can)
    hot = HOT_GRADES[can.split("-")[-1]]
    assert hot.kv100_least <= some.kv100 < hot.kv100_most
    assert 0.75 <= float(some.hths_factor) <= 1.0
    assert "W" in can or some.hths_factor == 1.0
    assert oil.film_viscosity(some, 373.15) <= oil.dynamic_viscosity(some, 373.15)


@given(st.floats(0.0, 0.5), st.floats(2e4, 1.1e5), st.floats(0.0, 6e5))
def test_air_costs_its_own_volume_at_most(air: float, p_in: float, rise: float) -> None:
    """What arrives is between the oil alone and everything that was drawn in."""
    got = float(aeration.delivered_share(air, p_in, p_in + rise))
    assert 1 - air - 1e-12 <= got <= 1 + 1e-12


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda: Oil(96.0, 14.4), "viscosity at 40 °C must lie in"),
        (lambda: Oil(14.4e-6, 96e-6), "thicker at 40"),
        (lambda: oil.walther(0.1e-6, 1e-6), "kinematic viscosity must lie in"),
        (lambda: oil.kinematic_viscosity(95.0, 7.7, 2.97), "oil temperature must lie in"),
        (lambda: oil.diluted(Oil(96e-6, 14.4e-6), 5.0, DIESEL), "share in the blend"),
        (lambda: reference_oils(1.5e-6), "viscosity at 100 °C"),
        (lambda: Oil.of_grade("10W-45"), "no SAE J300 grade"),
        (lambda: aeration.delivered_share(-0.1, 1e5, 2e5), "share of air"),
        (lambda: oil.straight_grade_viscosity(273.15, "30"), "oil temperature"),
    ],
)
def test_nonsense_is_refused_with_its_range(call: object, says: str) -> None:
    """Mistaken units and impossible oils are named, not computed."""
    with pytest.raises(ValueError, match=says):
        call()  # type: ignore[operator]
