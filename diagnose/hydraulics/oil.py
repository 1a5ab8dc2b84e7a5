"""Viscosity of the oil, hot and cold, new, diluted or sheared.

Viscosity is kinematic [m2/s] where named nu or kv and dynamic [Pa·s] where named mu.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive
from diagnose.hydraulics.viscosity_index import kv40_from_vi
from knowledge.stations.oil.grades import SEIREG_DANDAGE, grade_named

T40, T100, T150 = 313.15, 373.15, 423.15  #: K: 40, 100 and 150 °C
T95 = 368.15  #: K: hot oil, where a film's rise is stated
FILM_STEPS = 4  #: Newton steps for a film's temperature: exact to 0.1 K from -30 °C up
T15 = 288.15  #: K: the temperature densities are quoted at
MM2_S = 1e-6  #: one mm2/s in m2/s
THINNEST, THICKEST = 0.21e-6, 20.0  #: m2/s: where the ASTM D341 chart holds
LEAST_SHARE = 0.2  #: of a film's own heat left by one step: very thin oil makes little, never none
COLDEST, HOTTEST = 223.15, 573.15  #: K: -50 to 300 °C, beyond any oil still a plain liquid
EXPANSION = 0.70e-3  #: 1/K, Incropera & DeWitt, Table A.5, engine oil; 0.65e-3 is seen too


def walther(
    nu40: Floats, nu100: Floats, cool: Floats = T40, hot: Floats = T100
) -> tuple[Floats, Floats]:
    """The straight line of an oil on the ASTM chart, through two measured viscosities: (A, B).

    log10 log10 Z = A - B log10 T, with Z = nu + 0.7 + exp(-1.47 - 1.84 nu - 0.51 nu^2).

    nu40, nu100: kinematic viscosity [m2/s], 0.21e-6 to 20, at the temperatures
    cool, hot: [K], 40 and 100 °C unless given.

    Holds between cloud point and first boiling; good to 1-3 % between the two points, too thick
    by a tenth to a third some 20 to 40 K below them.

    >>> a, b = walther(96e-6, 14.4e-6)
    >>> round(float(a), 3), round(float(b), 3)
    (7.718, 2.973)

    Source: ASTM D341.
    """
    for nu in (nu40, nu100):
        refuse_outside("kinematic viscosity", nu, THINNEST, THICKEST, "m2/s")
    w_cool, w_hot = chart_height(nu40), chart_height(nu100)
    b = (w_cool - w_hot) / (np.log10(hot) - np.log10(cool))
    a = w_cool + b * np.log10(cool)
    return a, b


def kinematic_viscosity(temperature: Floats, a: Floats, b: Floats) -> Floats:
    """Kinematic viscosity [m2/s] at a temperature, on the oil's line of the ASTM chart.

    temperature: [K], 223 to 573; a, b: the line, from ``walther``.

    The same 20 K cost three quarters of the viscosity at freezing, a third of it when hot:

    >>> a, b = walther(96e-6, 14.4e-6)
    >>> ratio = lambda t: float(kinematic_viscosity(t + 20, a, b) / kinematic_viscosity(t, a, b))
    >>> round(ratio(273.15), 2), round(ratio(373.15), 2)
    (0.27, 0.66)

    Source: ASTM D341.
    """
    refuse_outside("oil temperature", temperature, COLDEST, HOTTEST, "K")
    return from_chart_height(a - b * np.log10(temperature))


def chart_height(nu: Floats) -> Floats:
    """log10 log10 Z, the height of a viscosity [m2/s] on the ASTM D341 chart.

    Oils mix by it: the blend's height is the mean of the parts' heights.
    """
    v = np.asarray(nu) / MM2_S
    return np.log10(np.log10(v + 0.7 + np.exp(-1.47 - 1.84 * v - 0.51 * v**2)))


def from_chart_height(height: Floats) -> Floats:
    """The viscosity [m2/s] at a height of the ASTM D341 chart.

    D341's own inverse, then two Newton steps on Z, so that the way there and back is exact.
    """
    z = 10**10 ** np.asarray(height)
    x = z - 0.7
    v = x - np.exp(-0.7487 - 3.295 * x + 0.6119 * x**2 - 0.3193 * x**3)
    for _ in range(2):
        tail = np.exp(-1.47 - 1.84 * v - 0.51 * v**2)
        v = v - (v + 0.7 + tail - z) / (1 - (1.84 + 1.02 * v) * tail)
    return v * MM2_S


def straight_grade_viscosity(temperature: Floats, grade: str) -> Floats:
    """Dynamic viscosity [Pa·s] of an old straight grade, "10" to "60", Seireg and Dandage's form.

    mu = mu0 exp(b / (1.8 t + 127)), t in °C.

    temperature: [K], 40 °C and up; mu0 and b are the grade's.

    >>> round(float(straight_grade_viscosity(273.15 + 79, "30")) * 1e3, 1)
    15.2

    Source: Shigley, Mechanical Engineering Design, Table 12-1, after Seireg and Dandage.
    """
    refuse_outside("oil temperature", temperature, T40, HOTTEST, "K")
    mu0, b = SEIREG_DANDAGE[grade]
    return mu0 * np.exp(b / (1.8 * (temperature - 273.15) + 127))


def density(temperature: Floats, rho15: Floats) -> Floats:
    """Density [kg/m3]: rho15 (1 - 0.70e-3 (T - 288.15)).

    temperature: [K]; rho15: density at 15 °C [kg/m3].

    >>> round(float(density(373.15, 870.0)))
    818

    Source: Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, Table A.5.
    """
    return rho15 * (1 - EXPANSION * (temperature - T15))


@dataclass(frozen=True, slots=True)
class Oil:
    """An oil by what its sheet prints.

    Viscosity at 40 and 100 °C [m2/s], density at 15 °C [kg/m3], and the share of its viscosity left
    in a sheared bearing film [1].
    """

    kv40: Floats
    kv100: Floats
    rho15: Floats = 870.0
    hths_factor: Floats = 1.0

    def __post_init__(self) -> None:
        refuse_outside("viscosity at 40 °C", self.kv40, THINNEST, 0.01, "m2/s")
        refuse_outside("viscosity at 100 °C", self.kv100, THINNEST, 0.01, "m2/s")
        refuse_outside("density at 15 °C", self.rho15, 600.0, 1100.0, "kg/m3")
        refuse_outside("share left under shear", self.hths_factor, 0.3, 1.0)
        if not np.all(np.asarray(self.kv40) > self.kv100):
            raise ValueError("an oil is thicker at 40 °C than at 100 °C")

    @classmethod
    def of_grade(cls, name: str, vi: Floats | None = None, rho15: Floats = 870.0) -> Oil:
        """The oil in the middle of its SAE J300 grade, with an assumed viscosity index unless given.

        A multigrade is as thin under shear as J300 lets it be, but never below three quarters.

        >>> oil = Oil.of_grade("10W-40")
        >>> round(float(oil.kv40) * 1e6), round(float(oil.kv100) * 1e6, 1)
        (96, 14.4)
        >>> round(float(oil.hths_factor), 2), Oil.of_grade("40").hths_factor
        (0.77, 1.0)

        Source: SAE J300; the viscosity index assumed per class is from memory.
        """
        grade = grade_named(name)
        kv100 = grade.hot.kv100_middle
        kv40 = kv40_from_vi(kv100, grade.assumed_vi if vi is None else vi)
        oil = cls(kv40, kv100, rho15)
        return replace(oil, hths_factor=hths_factor(oil, grade.hths_least)) if grade.winter else oil


def dynamic_viscosity(oil: Oil, temperature: Floats) -> Floats:
    """Dynamic viscosity [Pa·s] of the oil at rest or nearly so: passages, filter, jets, suction.

    mu = nu rho.   temperature: [K].

    >>> round(float(dynamic_viscosity(Oil(96e-6, 14.4e-6), 373.15)) * 1e3, 1)
    11.8
    """
    a, b = walther(oil.kv40, oil.kv100)
    return kinematic_viscosity(temperature, a, b) * density(temperature, oil.rho15)


def film_viscosity(oil: Oil, temperature: Floats) -> Floats:
    """Dynamic viscosity [Pa·s] in a film sheared hard: bearings, lifter bores, gear faces.

    mu_film = f_HTHS mu.   temperature: [K].
    """
    return oil.hths_factor * dynamic_viscosity(oil, temperature)


def film_temperature(oil: Oil, temperature: Floats, rise: Floats, own_heat: Floats = 0.0) -> Floats:
    """Temperature of a bearing film [K], above the oil it is fed with at ``temperature`` [K].

    T_f = T + rise (1 - h + h nu(T_f)/nu(T_ref + rise)), T_ref = 95 °C.

    rise: with oil of 95 °C [K]; own_heat: ``h``, the share of the rise that the film's own shear
    makes, which goes with its viscosity; the rest comes from hot metal [1], 0 to 1.

    Films of cold oil heat themselves, so that they thin less than the sump suggests:

    >>> oil = Oil(96e-6, 14.4e-6)
    >>> [round(float(film_temperature(oil, t + 273.15, 22.0, 0.5)) - 273.15) for t in (0, 20, 95)]
    [60, 68, 117]

    Source: heat balance of a film at one speed; the share is the caller's judgement.
    """
    if isinstance(own_heat, float) and own_heat == 0.0:
        return temperature + rise
    refuse_outside("share of heat made in the film", own_heat, 0.0, 1.0)
    a, b = walther(oil.kv40, oil.kv100)
    made = rise * own_heat
    given = temperature + rise - made
    reference = np.log(_plain_viscosity(T95 + rise, a, b)[0])
    own = np.asarray(made) + 0.0 * given
    for _ in range(FILM_STEPS):
        nu, slope = _plain_viscosity(given + own, a, b)
        off = (
            np.log(np.maximum(made, 1e-9)) + np.log(nu) - reference - np.log(np.maximum(own, 1e-9))
        )
        own = own * np.maximum(1 + off / (1 + slope * own), LEAST_SHARE)
    return given + own


def _plain_viscosity(temperature: Floats, a: Floats, b: Floats) -> tuple[Floats, Floats]:
    """Viscosity [mm2/s] above 2 mm2/s, and what share of it a kelvin takes [1/K]."""
    log_z = np.log(10.0) * 10.0 ** (a - b * np.log10(temperature))
    z = np.exp(log_z)
    nu = np.maximum(z - 0.7, 0.2)
    return nu, log_z * b / temperature * z / nu


def hths_factor(oil: Oil, hths: Floats) -> Floats:
    """Share of its viscosity an oil keeps under shear [1], from its sheet's HTHS figure.

    f = hths / mu(150 °C), held between 0.75 and 1.   hths: [Pa·s] at 150 °C and 1e6 1/s.

    Source: SAE J300 for what HTHS is; the floor of 0.75 is judgement.
    """
    refuse_unless_positive("Pa·s", HTHS_viscosity=hths)
    return np.clip(hths / dynamic_viscosity(oil, T150), 0.75, 1.0)


@dataclass(frozen=True, slots=True)
class Fuel:
    """What gets into the oil: viscosity at 40 and 100 °C [m2/s], density at 15 °C [kg/m3]."""

    kv40: float
    kv100: float
    rho15: float


DIESEL = Fuel(3.0e-6, 1.2e-6, 835.0)  #: EN 590 allows 2.0 to 4.5 mm2/s at 40 °C; rest assumed
PETROL = Fuel(0.55e-6, 0.38e-6, 745.0)  #: assumed, from memory


def blended(nu: Floats, share: Floats, thinner: Floats) -> Floats:
    """Viscosity [m2/s] of two liquids mixed at one temperature.

    w = (1 - x) w(nu) + x w(thinner), w the height on the ASTM chart.

    nu, thinner: [m2/s]; share: volume of the thinner in the blend [1].

    Good to 5 %, biased thin, against a published dilution chart. Three parts of diesel fuel in
    a hundred cost a fifth of the viscosity:

    >>> round(float(blended(160e-6, 0.03, 3.0e-6)) * 1e6)
    131

    Source: ASTM D7152, ASTM blending method.
    """
    refuse_outside("share in the blend", share, 0.0, 1.0)
    return from_chart_height((1 - share) * chart_height(nu) + share * chart_height(thinner))


def diluted(oil: Oil, fuel_share: Floats, fuel: Fuel) -> Oil:
    """The oil with fuel in it, blended at 40 and at 100 °C.

    fuel_share: volume of fuel in the mixture [1].

    A twentieth of petrol takes a 40 down to a 30:

    >>> round(float(diluted(Oil(96e-6, 14.4e-6), 0.05, PETROL).kv100) * 1e6, 1)
    9.9

    Source: ASTM D7152, ASTM blending method; the fuels' figures are assumed.
    """
    return replace(
        oil,
        kv40=blended(oil.kv40, fuel_share, fuel.kv40),
        kv100=blended(oil.kv100, fuel_share, fuel.kv100),
        rho15=oil.rho15 + fuel_share * (fuel.rho15 - np.asarray(oil.rho15)),
    )
