"""Oil, bearings and leaks against published values; all else in ``test_hydraulics_published_pump``."""

from __future__ import annotations

from collections.abc import Callable
from math import log, pi
from typing import Any

import pytest

from diagnose.hydraulics import bearing, leaks, oil, raimondi_boyd
from diagnose.hydraulics.clearance import Diametral, Radial
from diagnose.hydraulics.viscosity_index import viscosity_index
from tests.hydraulics.test_hydraulics_published_pump import FORMULAS as THE_OTHERS
from tests.support.published import Check, assert_meets, cases, check, checks, unclaimed

SHIGLEY_RHO_CP = 861.0 * 1760.0  #: J/(m3·K), behind Shigley's temperature charts
METRIC_RHO_CP = 1.5 / 978e6 * 1e15  #: J/(m3·K), what the printed 978e6 of kN, kPa, mm implies


def refutas(nu: float) -> float:
    """Refutas' blending number: no part of the product, a second opinion on its blends."""
    return 14.534 * log(log(nu * 1e6 + 0.8)) + 10.975


def sus(seconds: float) -> float:
    """Kinematic viscosity [m2/s] of a Saybolt time at 100 °F; D2161, roughly."""
    a, b = (0.2253, 194.4) if seconds < 56 else (0.2193, 134.6)
    return (a * seconds - b / seconds) * 1e-6


def engine_oil() -> tuple[Any, Any]:
    """The line of Incropera's engine oil through its rows at 310 and 370 K."""
    cool, hot = (check(f"engineoil-A5-{t}K").expected for t in (310, 370))
    return oil.walther(cool, hot, 310.0, 370.0)


def engine_oil_mu(c: Check) -> Any:
    """The same oil as an ``Oil``, of the density printed at 370 K."""
    kv40, kv100 = (oil.kinematic_viscosity(t, *engine_oil()) for t in (oil.T40, oil.T100))
    return oil.dynamic_viscosity(oil.Oil(kv40, kv100, c["rho"] / oil.density(370.0, 1.0)), 370.0)


def expansion(_: Check) -> Any:
    """Mean expansion of our oil over the table's span."""
    cold, hot = oil.density(273.0, 1.0), oil.density(430.0, 1.0)
    return (cold - hot) / (430 - 273) / ((cold + hot) / 2)


class TaskRecord:
    """A bearing of Shigley's problems: geometry and load as printed, state by our formulas."""

    def __init__(self, c: Check) -> None:
        self.r = c["d"] / 2 if "d" in c.inputs else c["r"]
        self.c, self.l = Radial(c["c"]), c["l"]
        self.n, self.unit_load = c["N"], c["W"] / (2 * self.r * c["l"])
        self.w = c["W"]
        self.film = c.inputs.get("T_in")
        self.s = c.inputs.get("S") or self._number(c)
        self.runs = raimondi_boyd.performance(self.s, self.l / (2 * self.r))

    def _number(self, c: Check) -> float:
        if "mu" in c.inputs:
            return float(bearing.sommerfeld(c["mu"], self.n, self.unit_load, self.r, self.c))
        for _ in range(60):  # halfway up its own temperature rise, to agreement
            assert self.film is not None
            mu = oil.straight_grade_viscosity(self.film, c["oil"].removeprefix("SAE "))
            s = float(bearing.sommerfeld(mu, self.n, self.unit_load, self.r, self.c))
            runs = raimondi_boyd.performance(s, self.l / (2 * self.r))
            aim = c["T_in"] + runs.temperature_rise(self.unit_load, SHIGLEY_RHO_CP) / 2
            self.film += 0.5 * (aim - self.film)
        return s

    @property
    def flow(self) -> Any:
        return self.runs.flow * self.r * self.c * self.n * self.l

    @property
    def side_flow(self) -> Any:
        return self.flow * self.runs.side_share

    @property
    def least_film(self) -> Any:
        return self.runs.least_film * self.c

    @property
    def heat(self) -> Any:
        friction = self.runs.friction * self.c / self.r
        return bearing.friction_power(friction * self.w * self.r, self.n)


def side_flow_number(c: Check) -> Any:
    """Qs/(r c N l) of the short bearing; one metre of everything, one turn a second."""
    return bearing.side_flow_short(c["eps"], Radial(1.0), 1.0, 1.0, 2 * pi)


def shigley_groove(c: Check, land_over_r: float = 1.0) -> Any:
    eps = 1 - c["h0_over_c"]
    return bearing.groove_flow(c["ps"], c["mu"], land_over_r, Radial(c["c"]), eps, 1.0)


def cube_law(c: Check) -> Any:
    new, worn = (
        bearing.groove_flow(1e5, 0.02, 0.03, Radial(c[k]), 0.9, 0.03) for k in ("c1", "c2")
    )
    return worn / new


def fed_rise(c: Check) -> Any:
    return bearing.temperature_rise_fed(
        c["eps"], c["fr_over_c"], c["S"], c["W"], c["ps"], c["r"], METRIC_RHO_CP
    )


def fed_rise_by_parts(c: Check) -> Any:
    """Friction power over the heat the printed side flow carries, r = 25 mm and W = 10 kN."""
    other = check("pf-shigley-metric-dT-1")
    torque = other["fr_over_c"] / c["r_over_c"] * other["W"] * other["r"]
    heat = bearing.friction_power(torque, c["N"])
    return bearing.temperature_rise(heat, c["Qs"], c["rho"], c["cp"])


def dashpot(c: Check) -> Any:
    """Speed at which a piston's displacement leaks past it, the moving wall dragging oil back."""
    r, gap = c["d_piston"] / 2, (c["d_cyl"] - c["d_piston"]) / 2
    mu, around = c["nu"] * 1000 * c["RD"], 2 * pi * r
    still = leaks.slot_flow(c["dp"], mu, gap, around, c["L"])
    dragged = still - leaks.slot_flow(c["dp"], mu, gap, around, c["L"], wall_speed=-1.0)
    return still / (pi * r**2 + dragged)


def crank_drag(c: Check) -> Any:
    mu = c.inputs.get("mu") or check("fox-8-2-crank-torque")["mu"]
    clearance = Diametral(c["diametral_clearance"]).radial
    return bearing.petroff_torque(mu, c["N"], c["D"] / 2, c["L"], clearance)


FORMULAS: dict[str, Callable[[Check], Any]] = {
    # viscosity
    "d341-sae140-60C": lambda c: oil.kinematic_viscosity(
        c["T"], *oil.walther(c["kv40"], c["kv100"])
    ),
    "d341-vg32-80C": lambda c: oil.kinematic_viscosity(c["T"], *oil.walther(c["kv40"], c["kv100"])),
    "d341-vg32-A": lambda c: oil.walther(
        c["kv40"], c["kv100"], 40 + c["T_offset"], 100 + c["T_offset"]
    )[0],
    "d341-vg32-B": lambda c: oil.walther(
        c["kv40"], c["kv100"], 40 + c["T_offset"], 100 + c["T_offset"]
    )[1],
    "d341-iso68-100C": lambda c: oil.kinematic_viscosity(
        c["T"], *oil.walther(c["kv40"], c["kv80"], oil.T40, 353.15)
    ),
    "engineoil-A5-???K": lambda c: oil.kinematic_viscosity(c["T"], *engine_oil()),
    "engineoil-A5-mu-consistency": engine_oil_mu,
    "engineoil-A5-beta": expansion,
    "seireg-sae30-79C": lambda c: oil.straight_grade_viscosity(c["T"], "30"),
    "seireg-sae20-*F": lambda c: oil.straight_grade_viscosity(c["T"], "20"),
    "d2270-ex-*": lambda c: viscosity_index(c["kv40"], c["kv100"]),
    "d2270-iso68": lambda c: viscosity_index(c["kv40"], c["kv100"]),
    # dilution
    "refutas-vbn": lambda c: refutas(c["kv"]),
    "dilution-chart-160cst-3pct": lambda c: oil.blended(c["kv40_new"], c["fuel"], c["kv40_fuel"]),
    "dilution-chart-850sus-2pct": lambda c: oil.blended(
        sus(c["new"]), c["fuel"], sus(c["fuel_visc"])
    ),
    "dilution-5pct-one-grade": lambda c: oil.blended(c["kv100_new"], c["fuel"], c["kv100_fuel"]),
    # loaded bearings
    "short-bearing-limit-*": side_flow_number,
    "rb-eq1216-*": lambda c: raimondi_boyd.between_lengths(
        c["l_over_d"], c["y_inf"], c["y_1"], c["y_half"], c["y_quarter"]
    ),
    "someya-*": lambda c: raimondi_boyd.sommerfeld_at(c["eps"], c["L_over_D"]),
    "shigley-12-1-S": lambda c: TaskRecord(c).s,
    "shigley-12-1*-Q": lambda c: TaskRecord(c).flow,
    "shigley-12-1*-Qs": lambda c: TaskRecord(c).side_flow,
    "shigley-12-1*-h0": lambda c: TaskRecord(c).least_film,
    "shigley-12-1*-H": lambda c: TaskRecord(c).heat,
    "shigley-12-11-dT": lambda c: raimondi_boyd.performance(c["S"], 1.0).temperature_rise(
        c["P"], SHIGLEY_RHO_CP
    ),
    "shigley-12-12-Tf": lambda c: TaskRecord(c).film,
    # bearings fed under pressure
    "pf-shigley-12-21b-Qs": shigley_groove,
    "pf-shigley-12-21-cube-law": cube_law,
    "pf-shigley-metric-dT-[123]": fed_rise,
    "pf-shigley-metric-dT-1-SI": fed_rise_by_parts,
    "pf-shigley-ex12-6-Qs": lambda c: bearing.groove_flow(
        c["ps"], c["mu"], c["d"] / 2, Radial(c["c"]), c["eps"], c["lprime"]
    ),
    "eccentric-annulus-factor": lambda c: leaks.annulus_flow(
        c["dp"], c["mu"], 2 * c["R"], Radial(c["c"]), c["eps"], c["L"]
    ),
    "hole-feed-martin-*": lambda c: bearing.hole_flow(
        1.0, 1.0, bearing.film_at(Radial(1.0), c["eps"], 0.0), c["d_over_L"], 1.0
    ),
    # slots and holes
    "fox-8-1-piston-leak": lambda c: leaks.annulus_flow(
        c["dp"], c["mu"], c["D"], Radial(c["a"]), 0.0, c["L"]
    ),
    "fox-8-2-crank-torque": crank_drag,
    "fox-8-2-crank-power": lambda c: bearing.friction_power(crank_drag(c), c["N"]),
    "massey-6-2-radial-slot": lambda c: leaks.radial_slot_flow(
        c["p"], c["mu"], c["c"], c["R_ratio"]
    ),
    "massey-6-3-couette-poiseuille": lambda c: leaks.slot_flow(
        c["dp"], c["mu"], c["c"], 1.0, c["L"], wall_speed=c["V"]
    ),
    "massey-6-4-dashpot": dashpot,
    "denevers-6-13-seal": lambda c: leaks.annulus_flow(
        c["dp"], c["mu"], c["d"], Radial(c["gap"]), 0.0, c["L"]
    ),
    "esposito-8-4-orifice": lambda c: leaks.orifice_flow(
        c["dp"], 1000 * c["SG"], 1e-4, leaks.hole_area(c["D"]), c["C"]
    ),
    "esposito-11-2-heating": lambda c: (
        c["T_in"] + bearing.temperature_rise(c["dp"] * c["Q"], c["Q"], 895.0, 1758.0)
    ),
}
ROWS_AGAINST_REYNOLDS = "rb-LD*-eps*"  #: in test_hydraulics_reynolds


@pytest.mark.parametrize(("entry", "formula"), cases(FORMULAS))
def test_reproduces(entry: Check, formula: Callable[[Check], Any]) -> None:
    """Each formula within the tolerance its entry states."""
    assert_meets(entry, formula(entry))


def test_every_published_formula_is_met_somewhere() -> None:
    """Every entry of the file is used."""
    assert unclaimed([*FORMULAS, *THE_OTHERS, ROWS_AGAINST_REYNOLDS]) == []


def test_bad_print_is_kept_and_never_asserted() -> None:
    """The two misprints stand in the file, and asserting one is refused."""
    bad = [c for c in checks() if c.erratum]
    assert {c.id for c in bad} == {"shigley-12-2-S-ERRATUM", "pf-shigley-12-21a-Qs-ERRATUM"}
    assert not {c.values[0].id for c in cases(FORMULAS)} & {c.id for c in bad}
    with pytest.raises(AssertionError, match="bad print"):
        assert_meets(bad[0], bad[0].expected)


def test_five_per_cent_of_fuel_costs_a_grade() -> None:
    """The published note is a bound: the blend leaves the SAE 30 band downward."""
    c = check("dilution-5pct-one-grade")
    assert oil.blended(c["kv100_new"], c["fuel"], c["kv100_fuel"]) < c.expected


@pytest.mark.parametrize("share", [0.01, 0.03, 0.05, 0.1])
def test_two_blending_rules_agree(share: float) -> None:
    """Refutas' rule, of its own origin, gives the same dilution within 1 %."""
    mean = (1 - share) * refutas(96e-6) + share * refutas(3e-6)
    got = float(oil.blended(96e-6, share, 3e-6))
    assert refutas(got * 0.99) < mean < refutas(got * 1.01)
