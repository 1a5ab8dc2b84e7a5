"""A journal bearing: its leakage, its drag, the heating of its oil.

Side flow is what the turning journal carries over the edges plus what the gallery pressure pushes
through. Every clearance here is radial; lengths in m, ``eps`` is eccentricity over
radial clearance, ``omega`` in rad/s, ``speed`` in rev/s. Charts of loaded bearings are in
``raimondi_boyd``.
"""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.clearance import RadialClearance, film
from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive


def sommerfeld(
    mu: Floats,
    speed: Floats,
    unit_load: Floats,
    journal_radius: Floats,
    radial_clearance: RadialClearance,
) -> Floats:
    """Sommerfeld number [1]: the one number a plain bearing's state depends on.

    S = (r/c)^2 mu N / P.

    mu: [Pa·s]; speed: N [rev/s]; unit_load: P = W/(2 r L) [Pa], for a grooved bearing
    W/(4 r l'), l' the length of one land; journal_radius: r [m]; radial_clearance: c [m].

    >>> from diagnose.hydraulics.clearance import Radial
    >>> load = 1200 / (0.025 * 0.0125)
    >>> round(float(sommerfeld(0.055, 1100 / 60, load, 0.0125, Radial(15e-6))), 3)
    0.182

    Source: Shigley, Mechanical Engineering Design, ch. 12.
    """
    c = film(radial_clearance)
    refuse_unless_positive("Pa", unit_load=unit_load)
    refuse_unless_positive("m", radial_clearance=c)
    return (journal_radius / c) ** 2 * mu * speed / unit_load


def film_at(radial_clearance: RadialClearance, eps: Floats, angle: Floats) -> Floats:
    """Film thickness [m] at an angle [rad] from where the film is thickest.

    h = c (1 + eps cos(angle)).
    """
    refuse_outside("eccentricity ratio", eps, 0.0, 1.0)
    return film(radial_clearance) * (1 + eps * np.cos(angle))


def side_flow_short(
    eps: Floats,
    radial_clearance: RadialClearance,
    journal_radius: Floats,
    length: Floats,
    omega: Floats,
) -> Floats:
    """Oil the turning journal itself throws out of both ends [m3/s].

    Q1 = eps r c omega L.

    eps: [1], 0 to 1; radial_clearance: c, journal_radius: r, length: L [m]; omega: [rad/s].

    A short bearing: 2 % high at L/D = 1/4, 7 % at 1/2, 29 % at 1, and less for a lighter load. No
    pressure and no viscosity in it: this much must come in or the film starves.

    >>> from diagnose.hydraulics.clearance import Radial
    >>> q = side_flow_short(0.8, Radial(32e-6), 0.038, 0.023, 2 * np.pi * 700 / 60)
    >>> round(float(q) * 6e4, 3)  # l/min
    0.098

    Source: the short-bearing limit (Ocvirk) of Reynolds' equation; against Raimondi & Boyd 1958.
    """
    refuse_outside("eccentricity ratio", eps, 0.0, 1.0)
    return eps * journal_radius * film(radial_clearance) * omega * length


def groove_flow(
    p: Floats,
    mu: Floats,
    journal_radius: Floats,
    radial_clearance: RadialClearance,
    eps: Floats,
    land: Floats,
) -> Floats:
    """Oil pushed out of both ends of a bearing with a groove all round [m3/s].

    Q2 = pi r c^3 p (1 + 1.5 eps^2) / (3 mu l').

    p: pressure in the groove above the crankcase [Pa]; mu: [Pa·s]; journal_radius: r,
    radial_clearance: c [m]; eps: [1], 0 to 1; land: l', of one land beside the groove [m].

    Laminar, c far below r. Half as much clearance again leaks 3.4 times as much:

    >>> from diagnose.hydraulics.clearance import Radial
    >>> flow = lambda c: groove_flow(3e5, 0.0118, 0.0381, Radial(c), 0.6, 0.0094)
    >>> round(float(flow(48e-6) / flow(32e-6)), 3)
    3.375

    Source: Shigley, Mechanical Engineering Design, eq. 12-22.
    """
    c = film(radial_clearance)
    refuse_outside("eccentricity ratio", eps, 0.0, 1.0)
    refuse_unless_positive("Pa·s", mu=mu)
    refuse_unless_positive("m", land=land)
    return np.pi * journal_radius * c**3 * p * (1 + 1.5 * eps**2) / (3 * mu * land)


def groove_flow_partial(
    p: Floats,
    mu: Floats,
    journal_radius: Floats,
    radial_clearance: RadialClearance,
    eps: Floats,
    land: Floats,
    orbit_factor: Floats,
) -> Floats:
    """Oil pushed out of a bearing grooved half round [m3/s]: a share of the full groove's.

    orbit_factor: the share [1]. For a groove of 180 degrees: 0.55 centred, and off centre
    0.86-0.98 while the groove faces the wide side, 0.23-0.09 while it faces the narrow one;
    0.6 to 0.85 over an engine's orbit. The rest as in ``groove_flow``.

    Source: own finite-difference solution of Reynolds' equation; the orbit average is judgement.
    """
    refuse_outside("share of the full groove's flow", orbit_factor, 0.0, 1.0)
    return orbit_factor * groove_flow(p, mu, journal_radius, radial_clearance, eps, land)


def hole_flow(
    p: Floats, mu: Floats, film_at_hole: Floats, hole_diameter: Floats, length: Floats
) -> Floats:
    """Oil pushed through a bearing fed by one hole [m3/s].

    Q2 = 0.675 (p h^3 / mu) (d/L + 0.4)^1.75.

    p: at the hole [Pa]; mu: [Pa·s]; film_at_hole: h, from ``film_at`` [m]; hole_diameter: d,
    length: L of the bearing [m].

    Up to 9 % high against a finite-difference solution with the hole at the widest gap, d/L 0.15
    to 0.35; elsewhere h^3 overstates what the place of the hole does. An even round of places
    takes 0.39 of the widest gap's flow (eps 0.6); over an engine's orbit 0.4 to 0.6 is judgement.

    Twice the hole is not twice the flow, for the film chokes it:

    >>> flow = lambda d: hole_flow(3e5, 0.0118, 5e-5, d, 0.020)
    >>> round(float(flow(0.006) / flow(0.003)), 2)
    1.53

    Source: after F. A. Martin, in Stachowiak & Batchelor, Engineering Tribology (from memory).
    """
    refuse_unless_positive("Pa·s", mu=mu)
    refuse_unless_positive("m", length=length)
    return 0.675 * (p * film_at_hole**3 / mu) * (hole_diameter / length + 0.4) ** 1.75


def petroff_torque(
    mu: Floats,
    speed: Floats,
    journal_radius: Floats,
    length: Floats,
    radial_clearance: RadialClearance,
) -> Floats:
    """Drag of a bearing turning without load [N·m].

    T = 4 pi^2 mu N r^3 L / c.

    mu: [Pa·s]; speed: N [rev/s]; journal_radius: r, length: L, radial_clearance: c [m].
    A load only adds to it. A tight bearing drags in proportion, and so heats its oil:

    >>> from diagnose.hydraulics.clearance import Radial
    >>> drag = lambda c: petroff_torque(0.0118, 50.0, 0.038, 0.023, Radial(c))
    >>> round(float(drag(16e-6) / drag(32e-6)), 3)
    2.0

    Source: Petroff's equation, as in Fox & McDonald, Introduction to Fluid Mechanics, Ex. 8.2.
    """
    c = film(radial_clearance)
    refuse_unless_positive("m", radial_clearance=c)
    return 4 * np.pi**2 * mu * speed * journal_radius**3 * length / c


def friction_power(torque: Floats, speed: Floats) -> Floats:
    """Power turned into heat in the film [W]: 2 pi N T.   torque: [N·m]; speed: N [rev/s]."""
    return 2 * np.pi * speed * torque


def temperature_rise(power: Floats, flow: Floats, rho: Floats, cp: Floats) -> Floats:
    """How much warmer the oil leaves than it came [K], all heat going into the oil.

    dT = H / (rho cp Q).

    power: H [W]; flow: Q [m3/s]; rho: [kg/m3]; cp: [J/(kg·K)].

    Throttling alone warms oil hardly at all, a sixteenth of a kelvin for each bar:

    >>> round(float(temperature_rise(1e5 * 1e-4, 1e-4, 830.0, 2000.0)), 2)
    0.06

    Source: first law.
    """
    refuse_unless_positive(flow=flow, density=rho, heat_capacity=cp)
    return power / (rho * cp * flow)


def temperature_rise_fed(
    eps: Floats,
    friction: Floats,
    s: Floats,
    load: Floats,
    p: Floats,
    journal_radius: Floats,
    heat_capacity_volume: Floats,
) -> Floats:
    """How much warmer the oil leaves a bearing with a groove all round [K], Q2 carrying the heat.

    dT = 1.5 (f r/c) S W^2 / ((1 + 1.5 eps^2) rho cp p r^4).

    eps: [1]; friction: f r/c [1] and s: Sommerfeld number [1], found with l'/d;
    load: W [N]; p: in the groove [Pa]; journal_radius: r [m];
    heat_capacity_volume: rho cp [J/(m3·K)], Shigley's charts take 1.53e6.

    Twice the pressure halves the rise:

    >>> rise = lambda p: temperature_rise_fed(0.9, 1.6, 0.0296, 1e4, p, 0.025, 1.534e6)
    >>> round(float(rise(2e5)), 1), round(float(rise(4e5)), 1)
    (26.8, 13.4)

    Source: Shigley, Mechanical Engineering Design, eq. 12-24 (metric).
    """
    refuse_outside("eccentricity ratio", eps, 0.0, 1.0)
    refuse_unless_positive("Pa", pressure=p)
    heat = 1.5 * friction * s * load**2
    return heat / ((1 + 1.5 * eps**2) * heat_capacity_volume * p * journal_radius**4)
