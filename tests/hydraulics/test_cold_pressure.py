"""Cold oil: pressure at or above hot, the relief valve's override, films that heat themselves."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.circuit.plausible_engines import UNCERTAIN, varied
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil, film_temperature
from diagnose.hydraulics.relief import port_flow, relief_flow
from knowledge.book import the_book
from knowledge.units import PSI
from tests.support.circuits import engine_like
from tests.support.examples import examples

PROFILES = list(the_book().profiles.values())
HOT = 368.15
VALVE = {"crack": 345e3, "area": 1.267e-4, "rate": 4e3, "port_width": 9e-3, "rho": 840.0}
celsius = st.floats(-10.0, 120.0)


ENGINES = [engine_like(p) for p in PROFILES]


@pytest.mark.parametrize("engine", ENGINES, ids=[p.id for p in PROFILES])
def test_cold_pressure_is_at_or_above_hot_at_the_same_speed(engine: Engine) -> None:
    """From -10 to 90 °C, idle to 4000 rpm, wherever suction does not limit the pump."""
    rpm = np.array([700.0, 1000.0, 1500.0, 2000.0, 2500.0, 3000.0, 4000.0])[:, None]
    hot = solve(engine, rpm, np.array([HOT])).gallery_pressure
    cold = solve(engine, rpm, np.arange(263.15, 364.0, 5.0))
    fills = ~np.asarray(cold.cavitating)
    assert fills.mean() > 0.7
    assert np.all(np.asarray(cold.gallery_pressure >= hot)[fills])


@pytest.mark.parametrize("engine", ENGINES, ids=[p.id for p in PROFILES])
def test_cold_oil_stands_above_the_relief_setting_at_speed(engine: Engine) -> None:
    """In the gallery at 20 °C and 2500 rpm (common practice: 5 to 20 psi; more with 20W-50)."""
    shows = float(solve(engine, 2500.0, 293.15).gallery_pressure) / PSI
    assert 2 < shows - float(engine.relief_setting) / PSI < 35


@settings(max_examples=examples(100), deadline=None)
@given(
    st.sampled_from(ENGINES),
    st.lists(st.floats(-2, 2), min_size=len(UNCERTAIN), max_size=len(UNCERTAIN)),
    st.floats(500, 5000),
    celsius,
    st.floats(1.05, 3.0),
)
def test_thicker_oil_never_lowers_the_pumps_pressure(
    engine: Engine, z: list[float], rpm: float, warm: float, thicker: float
) -> None:
    """Of any sound engine, unless suction limits it; nor the gallery's, but by what filter takes."""
    thin = varied(engine, np.array([z]))
    oil = thin.oil
    thick = replace(thin, oil=replace(oil, kv40=oil.kv40 * thicker, kv100=oil.kv100 * thicker))
    before, after = (solve(e, rpm, warm + 273.15) for e in (thin, thick))
    if np.any(after.cavitating):
        return
    assert np.all(after.pump_pressure >= before.pump_pressure * (1 - 1e-6))
    bare = [solve(replace(e, filter_resistance=0.0), rpm, warm + 273.15) for e in (thin, thick)]
    if not np.any(bare[1].cavitating):
        assert np.all(bare[1].gallery_pressure >= bare[0].gallery_pressure * (1 - 1e-6))


@settings(max_examples=examples(150))
@given(st.floats(1e-4, 4e-3), st.floats(0.005, 1.0), st.floats(1.05, 5.0))
def test_a_port_passes_less_thick_oil_and_more_at_a_higher_lift(
    lift: float, mu: float, more: float
) -> None:
    here = port_flow(4e5, lift, 9e-3, 840.0, mu)
    assert (
        port_flow(4e5, lift, 9e-3, 840.0, mu * more)
        < here
        < port_flow(4e5, lift * more, 9e-3, 840.0, mu)
    )


@settings(max_examples=examples(150))
@given(st.floats(3.5e5, 9e5), st.floats(0.005, 1.0), st.floats(1.05, 5.0), st.floats(0, 5e9))
def test_override_grows_with_flow_and_viscosity(
    p: float, mu: float, more: float, feed: float
) -> None:
    """At one pressure thick oil leaves less; more oil needs more pressure."""

    def flow(p: float, mu: float) -> float:
        return float(relief_flow(p, mu=mu, feed_resistance=feed, **VALVE))

    assert flow(p, mu * more) < flow(p, mu) < flow(p * more, mu)
    assert flow(p, mu) <= float(relief_flow(p, mu=mu, **VALVE)) * (1 + 1e-12)


def test_a_wide_port_at_a_high_reynolds_number_is_an_orifice() -> None:
    """Q = Cd w x sqrt(2 p/rho) where nothing creeps."""
    wanted = 0.65 * 9e-3 * 3e-3 * np.sqrt(2 * 4e5 / 840.0)
    assert float(port_flow(4e5, 3e-3, 9e-3, 840.0, 1e-6)) == pytest.approx(wanted, rel=1e-3)


def test_the_filter_is_bypassed_when_cold_and_not_when_hot() -> None:
    for engine in ENGINES:
        hot, cold = (solve(engine, 1500.0, t) for t in (HOT, 263.15))
        lost = [float(s.pump_pressure - s.gallery_pressure) for s in (hot, cold)]
        assert lost[0] < float(engine.filter_bypass) <= lost[1] * 1.001


@settings(max_examples=examples(150))
@given(celsius, st.floats(0.5, 30.0), st.floats(5.0, 40.0), st.floats(0.0, 1.0))
def test_a_film_is_warmer_than_its_oil_and_colder_with_colder_oil(
    warm: float, colder: float, rise: float, own: float
) -> None:
    oil = Oil.of_grade("10W-40")
    here, there = (
        float(film_temperature(oil, t + 273.15, rise, own)) for t in (warm, warm - colder)
    )
    assert there < here
    assert there > warm - colder + 273.15


def test_a_film_has_its_stated_rise_with_hot_oil() -> None:
    oil = Oil.of_grade("15W-40")
    for own in (0.0, 0.5, 1.0):
        assert float(film_temperature(oil, HOT, 25.0, own)) == pytest.approx(HOT + 25.0, abs=0.1)
    cold = [float(film_temperature(oil, 293.15, 25.0, own)) - 293.15 for own in (0.0, 0.5, 1.0)]
    assert cold[0] == pytest.approx(25.0)
    assert cold[0] < cold[1] < cold[2] < 100.0
