"""The circuit where a default or a limit decides: full grooves, returned oil, sound engines."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import SET_B, Main
from diagnose.hydraulics.oil import THINNEST, Oil, film_viscosity
from diagnose.hydraulics.pump import displacement_gear, displacement_gerotor, shaft_power
from diagnose.hydraulics.raimondi_boyd import ROWS
from diagnose.hydraulics.ranges import FloatArray
from diagnose.hydraulics.roots import falling_root
from diagnose.hydraulics.suction import air_drawn, gap_drop, screen_drop

HOT = 373.15


def test_a_main_bearing_without_a_share_is_grooved_all_round() -> None:
    """Shigley's eq. 12-22 by hand: pi r c^3 p (1 + 1.5 eps^2) / (3 mu l')."""
    main = Main(4, 0.060, 0.024, 0.004, 60e-6, 0.5)
    engine = replace(SET_B, mains=(main,))
    state = solve(engine, 2000, HOT)
    mu, land = film_viscosity(engine.oil, HOT + engine.film_rise), 0.010
    one = math.pi * 0.030 * (30e-6) ** 3 * (1 + 1.5 * 0.25) / (3 * mu * land)
    assert state.flows.mains == pytest.approx(4 * one * state.gallery_pressure)


def test_relief_oil_goes_back_to_the_inlet_by_default() -> None:
    """What the relief valve lets go does not pass the pickup again: the inlet is pulled down less."""
    back, to_sump = SET_B, replace(SET_B, relief_return_share=0.0)
    assert solve(back, 6000, HOT).flows.relief > 0
    assert solve(back, 6000, HOT).inlet_pressure > solve(to_sump, 6000, HOT).inlet_pressure
    assert solve(back, 600, HOT).inlet_pressure == pytest.approx(
        solve(to_sump, 600, HOT).inlet_pressure
    )


def test_an_engine_of_the_defaults_has_no_fault() -> None:
    """At a hot idle: no air, a full pump, a shut relief valve, nothing lost where nothing is."""
    state = solve(SET_B, 700, HOT)
    assert (state.air_share, state.fill_share) == (0.0, 1.0)
    assert not state.cavitating
    assert not state.starved
    assert (state.flows.relief, state.flows.other, state.flows.open_orifice) == (0.0, 0.0, 0.0)
    assert state.gauge_pressure == state.gallery_pressure < state.pump_pressure


@pytest.mark.parametrize("inner", [-0.001, 0.0381])
def test_gears_without_teeth_or_core_displace_nothing(inner: float) -> None:
    """Refused, with the range: the root circle of the teeth is inside the gear."""
    assert displacement_gear(0.038, 0.038, 0.03) == 0.0
    with pytest.raises(ValueError, match=r"inner over outer diameter must lie in \[0, 1\]"):
        displacement_gear(0.038, inner, 0.03)
    with pytest.raises(ValueError, match="eccentricity over tip diameter"):
        displacement_gerotor(0.057, -0.001, 0.01)


def test_a_warm_pump_takes_a_little_more_than_its_hydraulic_power() -> None:
    """Ideal: pressure times flow. Rubbing takes a tenth to a fifth of what is put in."""
    ideal = 400e3 * 20.8e-6 * 25
    assert ideal / 0.9 < shaft_power(20.8e-6, 25.0, 400e3) < ideal / 0.8


@pytest.mark.parametrize("length", ROWS)
def test_a_load_only_adds_to_petroffs_drag(length: float) -> None:
    """Without load f r/c = 2 pi^2 S (Petroff); the printed rows start close above and move away."""
    above = [float(f / (2 * math.pi**2 * s)) for _, s, f, *_ in ROWS[length]]
    assert 1.0 < above[0] < 1.02
    assert above == sorted(above)
    assert above[1] < 1.08


@pytest.mark.parametrize(("zero", "end"), [(-1.0, 0.0), (9.0, 5.0)])
def test_where_nothing_crosses_zero_the_end_is_found_at_once(zero: float, end: float) -> None:
    """All of it above zero or all below: no walk of sixty steps to an end known from the start."""
    asked = []

    def falling(x: FloatArray) -> FloatArray:
        asked.append(x)
        return zero - x

    assert falling_root(falling, np.zeros(3), np.full(3, 5.0)).tolist() == [end] * 3
    assert len(asked) <= 3


@pytest.mark.parametrize("lip_ratio", [0.5, 1.0])
def test_a_rim_is_wider_outside_than_inside(lip_ratio: float) -> None:
    with pytest.raises(ValueError, match=r"rim radius must lie in \(1, inf\)"):
        gap_drop(1e-3, 5e-3, 0.065, 0.0118, 818.0, lip_ratio)


@pytest.mark.parametrize(
    ("kv40", "kv100", "density", "message"),
    [
        (0.0101, 14e-6, 870.0, "viscosity at 40"),
        (0.0099, 0.0101, 870.0, "viscosity at 100"),
        (96e-6, THINNEST * 0.99, 870.0, "viscosity at 100"),
        (96e-6, 14e-6, 0.87, "density"),
        (96e-6, 14e-6, 599.9, "density"),
        (96e-6, 14e-6, 1100.1, "density"),
        (14e-6, 96e-6, 870.0, "thicker at 40"),
    ],
)
def test_an_oil_in_the_wrong_unit_is_refused_by_name(
    kv40: float, kv100: float, density: float, message: str
) -> None:
    """Ten thousand cSt, a density in kg/l, the two viscosities changed about."""
    with pytest.raises(ValueError, match=message):
        Oil(kv40, kv100, density)


@pytest.mark.parametrize("density", [600.0, 1100.0])
def test_the_ends_of_the_range_belong_to_it(density: float) -> None:
    assert Oil(0.01, 0.0099, density).rho15 == density


def test_no_air_is_drawn_where_nothing_sucks() -> None:
    """At the standard atmosphere, 101 325 Pa by definition; a pascal below it a little."""
    assert air_drawn(101325.0, 1e-6) == air_drawn(101400.0, 1e-6) == 0.0
    assert air_drawn(101324.0, 1e-6) > 0.0


def test_a_screen_is_clean_by_default() -> None:
    """Creeping flow: half as many holes, twice the loss."""
    clean, half = screen_drop(1e-9, 0.8, 870.0, 1e-3), screen_drop(1e-9, 0.8, 870.0, 1e-3, 0.5)
    assert half == pytest.approx(2 * clean)
    assert screen_drop(1e-9, 0.8, 870.0, 1e-3, 1.0) == clean
