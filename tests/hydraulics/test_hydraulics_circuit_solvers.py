"""The whole circuit against independent solvers, on equations written a second time.

Nothing here takes a formula of the product: only the fields of an ``Engine``.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from math import log, log10, pi, sqrt
from typing import Any

import fluids
import numpy as np
import pytest
from scipy import optimize

from diagnose.hydraulics import passage
from diagnose.hydraulics.circuit import State, solve, surplus
from diagnose.hydraulics.engine import SET_A, SET_B, Engine, set_b
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.roots import falling_root
from knowledge.units import INCH

HOT = 373.15


def viscosity(kv40: float, kv100: float, kelvin: float) -> float:
    """ASTM D341 without its small terms, which matter below 2 mm2/s [mm2/s]."""
    w40, w100 = (log10(log10(v + 0.7)) for v in (kv40, kv100))
    b = (w40 - w100) / (log10(373.15) - log10(313.15))
    return float(10**10 ** (w40 + b * (log10(313.15) - log10(kelvin)))) - 0.7


def orifice(p: float, rho: float, mu: float, area: float, cd: float) -> float:
    """Q of  p = rho Q^2/(2 Cd^2 A^2) + 24 mu Q/d^3."""
    if area <= 0 or p <= 0:
        return 0.0
    a, b = rho / (2 * (cd * area) ** 2), 24 * mu / (4 * area / pi) ** 1.5
    return float(2 * p / (b + sqrt(b * b + 4 * a * p)))


def slit(p: float, rho: float, mu: float, width: float, height: float, cd: float) -> float:
    """Q of  p = rho Q^2/(2 Cd^2 A^2) + 32 mu Q/(pi w x^2),  A = w x."""
    if height <= 0 or p <= 0:
        return 0.0
    a, b = rho / (2 * (cd * width * height) ** 2), 32 * mu / (pi * width * height**2)
    return float(2 * p / (b + sqrt(b * b + 4 * a * p)))


def film_temperature(kv: tuple[float, float], t: float, rise: float, own: float) -> float:
    """Root of  T_f = T + rise (1 - h + h nu(T_f)/nu(95 C + rise))."""
    hot = viscosity(*kv, 368.15 + rise)

    def off(film: float) -> float:
        return film - t - rise * (1 - own + own * viscosity(*kv, film) / hot)

    return float(optimize.brentq(off, t, t + 20 * rise + 1, xtol=1e-9))


def friction(q: float, rho: float, mu: float, d: float, length: float) -> float:
    re = 4 * rho * q / (pi * d * mu)
    if re < 1e-6:
        return 0.0
    knee, far = 64 / 2300, 0.316 * 4000**-0.25
    bridge = knee + (re - 2300) / 1700 * (far - knee)
    f = 64 / re if re < 2300 else 0.316 * re**-0.25 if re > 4000 else bridge
    return f * length / d * rho / 2 * (4 * q / pi / d**2) ** 2


def equations(engine: Engine, rpm: float, t: float) -> Callable[[np.ndarray], list[float]]:
    """The circuit written out from its equations, as three in three pressures [bar]: gallery and
    pump gauge, inlet absolute. One group of each kind; nothing of the product but its fields."""
    e: Any = engine  # its fields may be arrays; here every one is a number
    (main,), (rod,), (cam,), (lifter,), (jet,) = e.mains, e.rods, e.cams, e.lifters, e.jets
    kv = float(e.oil.kv40) * 1e6, float(e.oil.kv100) * 1e6
    rho = float(e.oil.rho15) * (1 - 0.7e-3 * (t - 288.15))
    t_film = film_temperature(kv, t, e.film_rise, e.film_own_heat)
    rho_film = float(e.oil.rho15) * (1 - 0.7e-3 * (t_film - 288.15))
    mu = viscosity(*kv, t) * 1e-6 * rho
    film = e.oil.hths_factor * viscosity(*kv, t_film) * 1e-6 * rho_film
    tight = e.oil.hths_factor * mu
    omega = rpm * pi / 30
    n = rpm / 60 * e.pump_drive_ratio
    swirl = rho * omega**2 / 2
    cm, cr, cc, cl = (g.clearance_diametral / 2 for g in (main, rod, cam, lifter))

    def martin(b: Any, c: float) -> float:
        h = c * (1 + b.eccentricity)
        wide = (b.hole_diameter / b.length + 0.4) ** 1.75
        return float(b.count * b.feed_share * 0.675 * h**3 / film * wide)

    def demand(p: float) -> float:
        land = (main.length - main.groove_width) / 2
        groove = (
            pi * main.diameter / 2 * cm**3 * (1 + 1.5 * main.eccentricity**2) / (3 * film * land)
        )
        annulus = pi * lifter.diameter * cl**3 * (1 + 1.5 * lifter.eccentricity**2)
        r_least = rod.entry_radius if rod.least_radius is None else rod.least_radius
        barrier = swirl * (rod.entry_radius**2 - r_least**2)
        fed = min(max((p - barrier) / 1e4 + 1, 0), 1)
        at_pin = max(p + swirl * (rod.exit_radius**2 - rod.entry_radius**2), 0)
        thrown = main.count * main.eccentricity * cm * main.diameter / 2 * 2 * land * omega
        thrown += rod.count * rod.eccentricity * cr * rod.diameter / 2 * rod.length * omega
        thrown += cam.count * cam.eccentricity * cc * cam.diameter / 2 * cam.length * omega / 2
        return float(
            main.count * main.feed_share * groove * p
            + fed * martin(rod, cr) * at_pin
            + martin(cam, cc) * p
            + lifter.count * lifter.lands * annulus * p / (12 * tight * lifter.land)
            + jet.count * orifice(p, rho, mu, pi / 4 * jet.diameter**2, jet.cd)
            + e.other_conductance / mu * p
            + orifice(p, rho, mu, e.open_orifice_area, 0.62)
            + thrown
        )

    def residual(bars: np.ndarray) -> list[float]:
        p, p_pump, p_in = (float(x) * 1e5 for x in bars)
        q = demand(max(p, 0.0))
        v = q / (pi / 4 * e.passage_diameter**2)
        lost = min(e.filter_resistance * e.filter_blocked * mu * q, e.filter_bypass)
        lost += e.passage_k * rho * v**2 / 2
        face = pi / 4 * e.relief_plunger_diameter**2
        jet_flow = e.relief_cd * e.relief_port_width * sqrt(2 * max(p_pump, 0) / rho)
        push = face / (e.relief_rate + face * e.relief_feed * mu * jet_flow)
        x = max(push * (p_pump - e.relief_setting), 0)
        if e.relief_stuck_lift:
            x = e.relief_stuck_lift + push * max(p_pump, 0)
        x = min(x, e.relief_travel)
        back = slit(p_pump, rho, mu, e.relief_port_width, x, e.relief_cd)
        drawn = q + (1 - e.relief_return_share) * back
        tube = drawn / (pi / 4 * e.tube_diameter**2)
        screen = drawn / e.screen_area / e.screen_open_share
        suck = rho * 9.80665 * e.suction_lift + (1 + e.tube_fittings) * rho * tube**2 / 2
        suck += friction(drawn, rho, mu, e.tube_diameter, e.tube_length)
        suck += rho / 2 * (screen / 0.6) ** 2 + 32 * mu * 1e-3 * screen / 1e-6
        suck += rho / 2 * (drawn / (0.6 * pi * e.pickup_rim * e.pickup_gap)) ** 2
        suck += 6 * mu * drawn * log(1.1) / (pi * e.pickup_gap**3)
        u = pi * e.pump_gear_diameter * n
        fill = sqrt(min(max((p_in - e.pump_least_inlet) / (rho * u * u / 2), 0), 1))
        ideal = e.pump_displacement * n
        leak = 0.62 * e.suction_leak_area * sqrt(2 * max(101325 - p_in, 0) / 1.1)
        air = e.air_fraction + leak / ideal
        tip = e.pump_tip_paths * e.pump_gear_length * e.pump_tip_clearance**3 / e.pump_tip_land
        end = e.pump_faces * e.pump_end_path * (e.pump_end_clearance / 2) ** 3
        slip = (tip + end) / (12 * tight) * (101325 + p_pump - p_in)
        supply = ideal * fill * (1 - air + air * p_in / (101325 + p_pump)) - slip - back
        return [(p + lost - p_pump) / 1e5, (101325 - suck - p_in) / 1e5, (supply - q) / ideal]

    return residual


def crossed(engine: Engine) -> Engine:
    """With a crank drilled through its axis."""
    return replace(engine, rods=tuple(replace(g, least_radius=0.0) for g in engine.rods))


CASES: dict[str, tuple[Engine, float, float]] = {
    "hot idle": (SET_B, 700, HOT),
    "relief open": (SET_A, 3000, HOT),
    "worn, fast": (set_b(0.0045 * INCH), 6000, HOT),
    "cool": (SET_B, 1500, 313.15),
    "freezing": (SET_B, 1500, 273.15),
    "very hot, sheared": (replace(SET_B, oil=Oil.of_grade("10W-40")), 800, 410.0),
    "air and a leak": (replace(SET_B, air_fraction=0.2, suction_leak_area=2e-7), 2500, HOT),
    "pickup on the floor": (replace(SET_B, pickup_gap=0.3e-3), 4000, HOT),
    "screen all but shut": (replace(SET_B, screen_open_share=0.02), 3500, HOT),
    "hung relief": (replace(SET_B, relief_stuck_lift=1e-3), 2000, HOT),
    "relief to the sump": (replace(SET_A, relief_return_share=0.0), 5000, HOT),
    "drilling before the relief, cold": (replace(SET_B, relief_feed=5e8), 2500, 283.15),
    "films that heat themselves": (replace(SET_B, film_own_heat=0.5), 900, 323.15),
    "films that heat themselves, cold": (replace(SET_B, film_own_heat=1.0), 1500, 263.15),
    "relief shut": (replace(SET_A, relief_travel=0.0), 1200, HOT),
    "cross-drilled": (crossed(SET_B), 3500, HOT),
    "cross-drilled, breaking": (crossed(set_b(0.0045 * INCH)), 6000, 400.0),
    "plug missing": (replace(SET_B, open_orifice_area=7e-6, other_conductance=1e-13), 900, HOT),
    "filter loaded": (replace(SET_B, filter_blocked=8.0), 1500, HOT),
}


@pytest.mark.parametrize("case", CASES)
def test_agrees_with_a_general_solver_on_the_equations(case: str) -> None:
    """The answer is where scipy's root finder, from elsewhere and in three unknowns, finds it."""
    engine, rpm, kelvin = CASES[case]
    state = solve(engine, rpm, kelvin)
    residual = equations(engine, rpm, kelvin)
    starts = [np.array([p, p + 0.4, i]) for p in (1.0, 2.5, 4.0) for i in (0.7, 0.95)]
    found = [optimize.root(residual, x, tol=1e-11) for x in starts]
    answers = [f.x for f in found if f.success and np.max(np.abs(f.fun)) < 1e-9 and f.x[0] > 0]
    assert answers, "the general solver found nothing"
    for answer in answers:
        got = (state.gallery_pressure, state.pump_pressure, state.inlet_pressure)
        assert np.array(got) / 1e5 == pytest.approx(answer, rel=1e-6)


def test_breaking_rod_feed_and_starved_fill_are_among_the_cases() -> None:
    """The cases above reach the branches they are meant to."""

    def at(case: str) -> State:
        return solve(*CASES[case])

    assert at("pickup on the floor").cavitating
    assert at("screen all but shut").cavitating
    assert at("cross-drilled, breaking").flows.rods < 0.8 * at("worn, fast").flows.rods
    assert at("freezing").pump_pressure - at("freezing").gallery_pressure >= 100e3
    assert at("relief open").flows.relief > 0


def test_surplus_is_zero_at_the_answer_and_falls() -> None:
    """What is offered to other solvers is what ``solve`` solved."""
    f, state = surplus(SET_B, 700, HOT), solve(SET_B, 700, HOT)
    assert float(optimize.brentq(f, 0.0, 1e7, xtol=1e-6)) == pytest.approx(state.gallery_pressure)
    assert np.all(np.diff(f(np.linspace(0, 1e7, 200))) < 0)


def test_root_finder_finds_what_scipy_finds() -> None:
    """Falling functions with a kink, a steep start and a long tail, all at once."""
    k = np.geomspace(1e-3, 1e3, 50)

    def f(x: np.ndarray, k: np.ndarray = k) -> np.ndarray:
        return np.asarray(3 - k * x - np.sqrt(np.maximum(x, 0)) - 50 * np.maximum(x - 1, 0))

    got = falling_root(f, np.full(50, -1.0), np.full(50, 100.0))
    for i, x in enumerate(got):
        one = optimize.brentq(lambda y, i=i: float(f(y, k[i])), -1, 100, xtol=1e-13)
        assert x == pytest.approx(one, rel=1e-9, abs=1e-9)


@pytest.mark.parametrize("re", [1.0, 300.0, 2000.0, 4001.0, 1e4, 1e5])
def test_friction_agrees_with_a_fluids_library(re: float) -> None:
    """``fluids``: laminar exactly, Blasius but for its 0.3164, and 3 % off the best smooth law."""
    got = float(passage.friction_factor(re))
    laminar = re < 2300
    assert got == pytest.approx(64 / re if laminar else fluids.friction.Blasius(re), rel=2e-3)
    assert got == pytest.approx(fluids.friction_factor(re, eD=0.0), rel=0.04)


@pytest.mark.parametrize("litres_a_minute", [2.0, 60.0])
@pytest.mark.parametrize("mu", [0.0118, 1.9])
def test_pipe_drop_agrees_with_a_fluids_library(litres_a_minute: float, mu: float) -> None:
    """``fluids`` on the pickup tube, friction and fittings."""
    q, d, rho = litres_a_minute / 60e3, 0.016, 840.0
    v = q / (pi / 4 * d**2)
    k = fluids.K_from_f(fluids.friction_factor(fluids.Reynolds(v, d, rho=rho, mu=mu), 0.0), 0.25, d)
    got = passage.pipe_drop(q, mu, rho, d, 0.25) + passage.fitting_drop(q, rho, d, 2.5)
    assert float(got) == pytest.approx(fluids.dP_from_K(k + 2.5, rho, v), rel=0.02)


def test_viscosity_line_written_twice() -> None:
    """The oracle's own viscosity, so that a slip in it does not pass for one in the product."""
    assert viscosity(96.0, 14.4, 393.15) == pytest.approx(9.52, rel=1e-3)
    assert viscosity(96.0, 14.4, 313.15) == pytest.approx(96.0)
