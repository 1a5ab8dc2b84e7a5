"""Every formula of bearings and leaks as a law: its dimensions, what it grows and falls with."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.hydraulics import bearing, leaks
from diagnose.hydraulics.clearance import Diametral, Radial

Dimension = tuple[float, float, float]  # powers of mass, length, time
NUMBER, LENGTH, AREA, FLOW = (0, 0, 0), (0, 1, 0), (0, 2, 0), (0, 3, -1)
PRESSURE, VISCOSITY, DENSITY = (1, -1, -2), (1, -1, -1), (1, -3, 0)
RATE, SPEED, FORCE, TORQUE, POWER = (0, 0, -1), (0, 1, -1), (1, 1, -2), (1, 2, -2), (1, 2, -3)
PER_KELVIN = (0, 2, -2)  # heat capacity of mass, the kelvin left out
PER_KELVIN_VOLUME = (1, -1, -2)


@dataclass(frozen=True)
class Law:
    """A formula, a typical value and the dimension of each argument, and of the answer.

    ``up`` and ``down`` name what the answer rises and falls with.
    """

    formula: Callable[..., Any]
    takes: Mapping[str, tuple[float, Dimension]]
    gives: Dimension
    up: str
    down: str = ""

    def __call__(self, **changed: float) -> float:
        return float(self.formula(**_wrap({k: v for k, (v, _) in self.takes.items()} | changed)))


def _wrap(values: Mapping[str, float]) -> dict[str, Any]:
    return {k: Radial(v) if k == "radial_clearance" else v for k, v in values.items()}


P, MU, RHO = (3e5, PRESSURE), (0.0118, VISCOSITY), (818.0, DENSITY)
R, C, EPS = (0.038, LENGTH), (32e-6, LENGTH), (0.6, NUMBER)
JOURNAL = {"journal_radius": R, "radial_clearance": C}
GROOVE = {"p": P, "mu": MU, **JOURNAL, "eps": EPS, "land": (0.0094, LENGTH)}
LAWS = [
    Law(
        bearing.sommerfeld,
        {"mu": MU, "speed": (50.0, RATE), "unit_load": (2e6, PRESSURE), **JOURNAL},
        NUMBER,
        "mu speed journal_radius",
        "unit_load radial_clearance",
    ),
    Law(
        bearing.side_flow_short,
        {"eps": EPS, **JOURNAL, "length": (0.023, LENGTH), "omega": (300.0, RATE)},
        FLOW,
        "eps radial_clearance journal_radius length omega",
    ),
    Law(bearing.groove_flow, GROOVE, FLOW, "p journal_radius radial_clearance eps", "mu land"),
    Law(
        bearing.groove_flow_partial,
        {**GROOVE, "orbit_factor": (0.65, NUMBER)},
        FLOW,
        "p journal_radius radial_clearance eps orbit_factor",
        "mu land",
    ),
    Law(
        bearing.hole_flow,
        {
            "p": P,
            "mu": MU,
            "film_at_hole": (5e-5, LENGTH),
            "hole_diameter": (0.0048, LENGTH),
            "length": (0.02, LENGTH),
        },
        FLOW,
        "p film_at_hole hole_diameter",
        "mu length",
    ),
    Law(
        bearing.petroff_torque,
        {"mu": MU, "speed": (50.0, RATE), **JOURNAL, "length": (0.023, LENGTH)},
        TORQUE,
        "mu speed journal_radius length",
        "radial_clearance",
    ),
    Law(
        bearing.friction_power,
        {"torque": (1.2, TORQUE), "speed": (50.0, RATE)},
        POWER,
        "torque speed",
    ),
    Law(
        bearing.temperature_rise,
        {"power": (200.0, POWER), "flow": (1e-5, FLOW), "rho": RHO, "cp": (2200.0, PER_KELVIN)},
        NUMBER,
        "power",
        "flow rho cp",
    ),
    Law(
        bearing.temperature_rise_fed,
        {
            "eps": EPS,
            "friction": (2.0, NUMBER),
            "s": (0.05, NUMBER),
            "load": (1e4, FORCE),
            "p": P,
            "journal_radius": R,
            "heat_capacity_volume": (1.8e6, PER_KELVIN_VOLUME),
        },
        NUMBER,
        "friction s load",
        "eps p journal_radius heat_capacity_volume",
    ),
    Law(
        leaks.annulus_flow,
        {
            "p": P,
            "mu": MU,
            "diameter": (0.0214, LENGTH),
            "radial_clearance": C,
            "eps": EPS,
            "land": (0.0114, LENGTH),
        },
        FLOW,
        "p diameter radial_clearance eps",
        "mu land",
    ),
    Law(
        leaks.slot_flow,
        {
            "p": P,
            "mu": MU,
            "gap": (75e-6, LENGTH),
            "width": (0.03, LENGTH),
            "length": (0.0045, LENGTH),
            "wall_speed": (2.0, SPEED),
        },
        FLOW,
        "p gap width wall_speed",
        "mu length",
    ),
    Law(
        leaks.radial_slot_flow,
        {"p": P, "mu": MU, "gap": (75e-6, LENGTH), "radius_ratio": (1.4, NUMBER)},
        FLOW,
        "p gap",
        "mu radius_ratio",
    ),
    Law(
        leaks.orifice_flow,
        {"p": P, "rho": RHO, "mu": MU, "area": (1e-6, AREA), "cd": (0.62, NUMBER)},
        FLOW,
        "p area cd",
        "rho mu",
    ),
]
each_law = pytest.mark.parametrize("law", LAWS, ids=lambda law: law.formula.__name__)
factors = st.floats(0.2, 5.0)


@each_law
@given(mass=factors, length=factors, time=factors)
def test_units_do_not_matter(law: Law, mass: float, length: float, time: float) -> None:
    """In any other kilogram, metre and second the formula says the same: its dimensions agree."""

    def scale(d: Dimension) -> float:
        return float(mass ** d[0] * length ** d[1] * time ** d[2])

    got = law(**{k: v * scale(d) for k, (v, d) in law.takes.items()})
    assert got == pytest.approx(law() * scale(law.gives), rel=1e-9)


@each_law
@given(factor=st.floats(1.01, 1.5))
def test_what_it_grows_and_falls_with(law: Law, factor: float) -> None:
    """Flow grows with pressure and clearance and falls with viscosity; so for each argument."""
    assert {*law.up.split(), *law.down.split()} == set(law.takes), "an argument is not spoken for"
    for name in law.up.split():
        assert law(**{name: law.takes[name][0] * factor}) > law(), name
    for name in law.down.split():
        assert law(**{name: law.takes[name][0] * factor}) < law(), name


@each_law
def test_arrays_give_what_floats_give(law: Law) -> None:
    """Each argument in turn as an array, and all at once as a grid."""
    for name, (value, _) in law.takes.items():
        several = np.array([value, value * 1.1, value * 1.3])
        values = _wrap({k: v for k, (v, _) in law.takes.items()}) | {name: several}
        assert law.formula(**values) == pytest.approx([law(**{name: x}) for x in several])


FILMS = [law for law in LAWS if "radial_clearance" in law.takes]


def test_every_film_formula_is_tried() -> None:
    assert len(FILMS) >= 6


@pytest.mark.parametrize("law", FILMS, ids=lambda law: law.formula.__name__)
def test_a_diametral_clearance_is_refused(law: Law) -> None:
    """The factor of eight is caught where a film formula is handed the workshop's figure."""
    values = _wrap({k: v for k, (v, _) in law.takes.items()})
    values["radial_clearance"] = Diametral(64e-6)
    with pytest.raises(TypeError, match="radial"):
        law.formula(**values)
