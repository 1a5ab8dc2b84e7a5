"""Bearings and leaks: by quadrature, against a library, at their limits, and what they refuse."""

from __future__ import annotations

from collections.abc import Callable
from math import inf, pi
from typing import Any

import numpy as np
import pytest
from fluids.flow_meter import C_Reader_Harris_Gallagher, flow_meter_discharge
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from diagnose.hydraulics import bearing, leaks, raimondi_boyd
from diagnose.hydraulics.clearance import Diametral, Radial, film, radial_of


@given(st.floats(1e-6, 1e-3))
def test_clearances_convert_once(gap: float) -> None:
    """Half there, double back, and never halved twice."""
    assert film(Diametral(gap).radial) == gap / 2
    assert Diametral(gap).radial.diametral == gap
    assert np.asarray(radial_of(np.array([gap])))[0] == radial_of(gap)
    with pytest.raises(TypeError, match="already"):
        radial_of(Radial(gap))


@given(st.floats(0.0, 1.0), st.floats(1e-6, 1e-4))
def test_the_annulus_by_quadrature(eps: float, c: float) -> None:
    """The cube of the local gap, summed round the plunger, is (1 + 1.5 eps^2) times the concentric one."""
    round_, _ = quad(lambda x: (c * (1 + eps * np.cos(x))) ** 3, 0.0, 2 * pi)
    wanted = 3e5 * round_ * 0.0107 / (12 * 0.0118 * 0.0114)
    got = leaks.annulus_flow(3e5, 0.0118, 0.0214, Radial(c), eps, 0.0114)
    assert float(got) == pytest.approx(wanted, rel=1e-9)
    both_ends = bearing.groove_flow(3e5, 0.0118, 0.0107, Radial(c), eps, 0.0114)
    assert float(both_ends) == pytest.approx(2 * float(got), rel=1e-9)


@given(st.floats(-20.0, 20.0))
def test_the_slot_by_quadrature(wall: float) -> None:
    """The parabola and the wedge of velocity, summed over the gap."""
    p, mu, h, length = 3e5, 0.0118, 75e-6, 0.0045

    def velocity(y: float) -> float:
        return p * y * (h - y) / (2 * mu * length) + wall * y / h

    flow, _ = quad(velocity, 0.0, h)
    got = leaks.slot_flow(p, mu, h, 1.0, length, wall_speed=wall)
    assert float(got) == pytest.approx(flow, rel=1e-9, abs=1e-15)


def test_the_radial_slot_by_quadrature() -> None:
    """Slots round ever wider circles in a row."""
    drop, _ = quad(lambda r: 6 * 0.0118 / (pi * r * 1e-4**3), 0.02, 0.03)
    assert float(leaks.radial_slot_flow(drop, 0.0118, 1e-4, 1.5)) == pytest.approx(1.0, rel=1e-9)


pressures, viscosities = st.floats(1e2, 1e6), st.floats(3e-3, 5.0)
bores = st.floats(2e-4, 2e-2)


@given(pressures, viscosities, bores)
def test_a_hole_is_slower_than_either_limit(p: float, mu: float, d: float) -> None:
    """Below the jet and below the creep, never under the two combined; odd; no hole no flow."""
    area = leaks.hole_area(d)
    got = float(leaks.orifice_flow(p, 820.0, mu, area))
    jet, creep = 0.62 * area * (2 * p / 820.0) ** 0.5, d**3 * p / (24 * mu)
    assert 1 / (1 / jet + 1 / creep) * (1 - 1e-9) <= got <= min(jet, creep) * (1 + 1e-9)
    assert float(leaks.orifice_flow(-p, 820.0, mu, area)) == -got
    assert float(leaks.orifice_flow(p, 820.0, mu, 0.0)) == 0.0
    assert float(leaks.orifice_flow(0.0, 820.0, mu, area)) == 0.0


@given(pressures, bores)
def test_a_hole_against_the_library(p: float, d: float) -> None:
    """The ``fluids`` library's meter in a wide pipe, for oil too thin to creep."""
    mass = flow_meter_discharge(D=100 * d, Do=d, P1=p + 1e5, P2=1e5, rho=820.0, C=0.62)
    got = float(leaks.orifice_flow(p, 820.0, 1e-9, leaks.hole_area(d)))
    assert got == pytest.approx(mass / 820.0, rel=1e-4)


def test_the_sharp_edge_against_the_library() -> None:
    """The coefficient of a small sharp hole, ISO 5167, is ours within 5 %."""
    cd = C_Reader_Harris_Gallagher(D=0.1, Do=0.012, rho=820.0, mu=1e-3, m=0.5, taps="corner")
    assert cd == pytest.approx(leaks.SHARP_EDGE, rel=0.05)


@given(st.floats(0.012, 50.0), st.floats(0.25, 1.0))
def test_a_loaded_bearing_is_sound(s: float, ratio: float) -> None:
    """Whatever the load, the journal stays inside and no more leaves than flows."""
    runs = raimondi_boyd.performance(s, ratio)
    assert 0 < runs.eps < 1
    assert 0 <= runs.side_share <= 1
    assert runs.flow > 0
    assert runs.friction > 0


@pytest.mark.parametrize("ratio", [0.25, 0.5, 1.0, inf])
@given(s=st.floats(1e-4, 50.0), factor=st.floats(1.05, 3.0))
def test_a_lighter_load_rides_higher(ratio: float, s: float, factor: float) -> None:
    """At the printed lengths eccentricity only falls as the Sommerfeld number grows."""
    if ratio < inf:
        heavy, light = (raimondi_boyd.performance(x, ratio).eps for x in (s, s * factor))
        assert light <= heavy
    eps = np.linspace(0.1, 0.9, 30)
    assert np.all(np.diff(raimondi_boyd.sommerfeld_at(eps, ratio)) < 0)


def test_a_light_bearing_drags_like_petroffs() -> None:
    """Without load f r/c = 2 pi^2 S: what Raimondi and Boyd's lightest rows tend to."""
    for ratio in (0.25, 0.5, 1.0):
        got = float(raimondi_boyd.performance(100.0, ratio).friction)
        assert got == pytest.approx(2 * pi**2 * 100.0, rel=0.02)


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda: bearing.groove_flow(1e5, 0.01, 0.03, Radial(3e-5), 1.2, 0.01), "eccentricity"),
        (lambda: bearing.groove_flow(1e5, 0.0, 0.03, Radial(3e-5), 0.6, 0.01), "mu must lie in"),
        (lambda: bearing.film_at(Radial(3e-5), -0.1, 0.0), "eccentricity"),
        (lambda: bearing.sommerfeld(0.01, 50.0, 0.0, 0.03, Radial(3e-5)), "unit load"),
        (lambda: leaks.orifice_flow(1e5, 820.0, 0.01, -1e-6), "area"),
        (lambda: leaks.orifice_flow(1e5, 820.0, 0.01, 1e-6, 0.0), "discharge coefficient"),
        (lambda: leaks.radial_slot_flow(1e5, 0.01, 1e-4, 1.0), "outer over inner"),
        (lambda: leaks.slot_flow(1e5, 0.01, 1e-4, 0.01, 0.0), "length"),
        (lambda: raimondi_boyd.performance(0.0, 0.5), "Sommerfeld"),
        (lambda: raimondi_boyd.performance(0.1, 0.2), "length over diameter"),
        (lambda: raimondi_boyd.sommerfeld_at(0.99, 0.5), "eccentricity"),
    ],
)
def test_nonsense_is_refused_with_its_range(call: Callable[[], Any], says: str) -> None:
    """Out of range is named, not computed."""
    with pytest.raises(ValueError, match=says):
        call()
