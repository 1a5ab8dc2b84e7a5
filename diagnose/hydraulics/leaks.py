"""Leaks other than bearings: round a plunger, through a hole, along a slot.

Lifters, valve stems, jets, a missing plug; ``pump`` and ``suction`` use the slots too.
All flows are odd functions of the pressure.
"""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.clearance import RadialClearance, film
from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive

SHARP_EDGE = 0.62  #: discharge coefficient of a sharp-edged hole; a short tube has 0.8


def annulus_flow(
    p: Floats,
    mu: Floats,
    diameter: Floats,
    radial_clearance: RadialClearance,
    eps: Floats,
    land: Floats,
) -> Floats:
    """Laminar leak along a plunger in its bore [m3/s].

    Q = pi d c^3 p (1 + 1.5 eps^2) / (12 mu L).

    p: across the land [Pa]; mu: [Pa·s]; diameter: d, radial_clearance: c, land: L [m];
    eps: 0 for a centred plunger to 1 for one against its bore [1].

    A lifter lying against its bore leaks two and a half times as much as a centred one:

    >>> from diagnose.hydraulics.clearance import Radial
    >>> flow = lambda eps: annulus_flow(3e5, 0.0118, 0.0214, Radial(19e-6), eps, 0.0114)
    >>> round(float(flow(1.0) / flow(0.0)), 2)
    2.5

    Source: MathWorks, Annular Orifice reference; centred, Fox & McDonald, Ex. 8.1.
    """
    c = film(radial_clearance)
    refuse_outside("eccentricity ratio", eps, 0.0, 1.0)
    return slot_flow(p, mu, c, np.pi * diameter, land) * (1 + 1.5 * eps**2)


def slot_flow(
    p: Floats,
    mu: Floats,
    gap: Floats,
    width: Floats,
    length: Floats,
    wall_speed: Floats = 0.0,
) -> Floats:
    """Laminar flow through a flat slot, one wall of which may move [m3/s].

    Q = w (h^3 p / (12 mu L) + u h/2).

    p: across the slot [Pa]; mu: [Pa·s]; gap: h, width: w across the flow, length: L along the
    flow [m]; wall_speed: u, positive along the flow [m/s].

    Holds for h far below w and L. A gear tip runs against its leak and drags part of it back:

    >>> still = slot_flow(3e5, 0.0118, 75e-6, 0.03, 0.0045)
    >>> running = slot_flow(3e5, 0.0118, 75e-6, 0.03, 0.0045, wall_speed=-2.0)
    >>> round(float(running / still), 2)
    0.62

    Source: Massey & Ward-Smith, Mechanics of Fluids, Ex. 6.3.
    """
    refuse_unless_positive("Pa·s", mu=mu)
    refuse_unless_positive("m", length=length)
    return width * (gap**3 * p / (12 * mu * length) + wall_speed * gap / 2)


def radial_slot_flow(p: Floats, mu: Floats, gap: Floats, radius_ratio: Floats) -> Floats:
    """Laminar flow outward between two flat discs, all the way round [m3/s].

    Q = pi h^3 p / (6 mu ln(R2/R1)).

    p: from the inner to the outer radius [Pa]; mu: [Pa·s]; gap: h [m];
    radius_ratio: R2/R1 [1], above 1.

    Source: Massey & Ward-Smith, Mechanics of Fluids, Ex. 6.2.
    """
    refuse_unless_positive("Pa·s", mu=mu)
    refuse_outside("outer over inner radius", radius_ratio, 1.0, np.inf, open_low=True)
    return np.pi * gap**3 * p / (6 * mu * np.log(radius_ratio))


def hole_area(diameter: Floats) -> Floats:
    """Area [m2] of a round hole.   diameter: [m]."""
    return np.pi * diameter**2 / 4


def orifice_flow(
    p: Floats,
    rho: Floats,
    mu: Floats,
    area: Floats,
    cd: Floats = SHARP_EDGE,
    bores: Floats = 0.0,
) -> Floats:
    """Flow through a hole, thick oil and thin [m3/s].

    The root of  p = rho Q^2 / (2 Cd^2 A^2) + (24 + 128 l/pi) mu Q / d^3,  d the diameter of a hole
    of area A and l its length in diameters.

    The first loss is the jet's, and alone gives Q = Cd A sqrt(2 p/rho); the second is the creeping
    one, Q = p d^3/(24 mu). They are equal at a Reynolds number of 38 Cd^2, about 14, and at
    1000 the second takes 1 % off the flow. No steep start at p = 0, which a solver needs.

    p: across the hole [Pa]; rho: [kg/m3]; mu: [Pa·s]; area: A [m2], zero for no hole;
    cd: discharge coefficient [1], 0.60-0.65 sharp, 0.8 short tube; bores: l, 0 in a thin wall [1].

    Oil at freezing, 70 times as thick, runs from a missing plug nearly as fast as hot oil does,
    while a metering hole chokes:

    >>> cold_over_hot = lambda d: float(
    ...     orifice_flow(2e5, 870.0, 0.84, hole_area(d))
    ...     / orifice_flow(2e5, 818.0, 0.0118, hole_area(d))
    ... )
    >>> round(cold_over_hot(6e-3), 2), round(cold_over_hot(0.4e-3), 2)
    (0.89, 0.33)

    Source: Esposito, Fluid Power, Ex. 8-4, for the jet; Sampson 1891, in Happel & Brenner, Low
    Reynolds Number Hydrodynamics, for the creep (from memory); laminar pipe, Massey & Ward-Smith,
    Mechanics of Fluids; adding them is judgement.
    """
    if isinstance(area, float) and area == 0.0:
        return 0.0  # no hole: the usual case, at every step of the solver
    refuse_unless_positive("Pa·s", mu=mu)
    refuse_unless_positive("kg/m3", density=rho)
    refuse_outside("discharge coefficient", cd, 0.0, 1.0, open_low=True)
    refuse_outside("area", area, 0.0, np.inf, "m2")
    d = np.sqrt(4 * area / np.pi)
    creep = (24 + 128 / np.pi * bores) * mu
    jet = 32 * rho * d**2 * np.abs(p) / (np.pi * cd) ** 2
    return 2 * p * d**3 / (creep + np.sqrt(creep**2 + jet))
