"""The relief valve: its cracking pressure, lift and flow.

It only limits pressure: below its cracking pressure it passes nothing, unless it does not seat.
"""

from __future__ import annotations

import numpy as np

from diagnose.hydraulics.leaks import orifice_flow
from diagnose.hydraulics.ranges import Floats, refuse_outside, refuse_unless_positive


def spring_rate(load: Floats, deflection: Floats) -> Floats:
    """Rate of a spring from one test load, ``k = F / x`` [N/m].

    ``load`` [N], ``deflection`` from free length [m].

    >>> round(float(spring_rate(18.5, 2.125 - 1.44)))  # lbf and in give lbf/in
    27

    Source: Hooke; data of US Army TM 10-3930-638-24&P.
    """
    return load / deflection


def crack_pressure(preload: Floats, rate: Floats, area: Floats) -> Floats:
    """Pressure at which the valve leaves its seat, ``p = k x0 / A`` [Pa].

    ``preload`` the spring's compression with the valve shut ``x0`` [m], ``rate`` [N/m],
    ``area`` the pressure acts on [m2].

    >>> round(float(crack_pressure(0.2, 2500.0, 0.75)))  # in, lbf/in, in2 give psi
    667

    Source: Esposito, Fluid Power with Applications, Example 8-1.
    """
    refuse_unless_positive("m2", area=area)
    return rate * preload / area


def shim_gain(rate: Floats, shim: Floats, area: Floats) -> Floats:
    """What a shim under the spring adds to the setting, ``dp = k s / A`` [Pa].

    ``rate`` [N/m], ``shim`` thickness [m], ``area`` [m2].

    A 1 mm washer behind a 4 N/mm spring on a 12.7 mm plunger, in psi:

    >>> round(float(shim_gain(4e3, 1e-3, 1.267e-4)) / 6894.76, 1)
    4.6

    Source: follows from ``crack_pressure``.
    """
    return crack_pressure(shim, rate, area)


def lift(
    p: Floats,
    crack: Floats,
    area: Floats,
    rate: Floats,
    *,
    stuck_lift: Floats = 0.0,
    travel: Floats = np.inf,
    held_back: Floats = 0.0,
) -> Floats:
    """How far the valve stands open, ``x = A (p - p_crack)/k`` from zero to its stop [m].

    ``p`` and ``crack`` [Pa], ``area`` [m2], ``rate`` [N/m], ``travel`` to the stop [m].
    ``stuck_lift`` [m]: the plunger stands this far open with no pressure on it, so its spring,
    broken or hung up, has no preload left (however small the lift) and yields from there,
    ``x = x_s + A p/k``. A valve propped open by dirt under a sound spring is not this: give it
    a seat leak in ``relief_flow``. ``travel=0`` is a valve stuck shut. ``held_back``: what the
    plunger lacks of ``p`` for each metre of its lift, lost on the way to it [Pa/m].

    >>> [round(float(lift(p * 6894.76, 50 * 6894.76, 1.267e-4, 4e3)) * 1e3, 2) for p in (40, 60)]
    [0.0, 2.18]

    Source: Esposito, Fluid Power with Applications, Example 8-1 (force balance).
    """
    refuse_outside("stuck lift", stuck_lift, 0.0, np.inf, "m")
    held_off = np.asarray(stuck_lift) > 0
    spring = area * (p - np.where(held_off, 0.0, crack)) / (rate + area * held_back)
    return np.minimum(np.maximum(spring, 0.0) + stuck_lift, travel)


def port_flow(
    p: Floats, lift: Floats, port_width: Floats, rho: Floats, mu: Floats, cd: Floats = 0.65
) -> Floats:
    """Flow through a port that a plunger uncovers by ``lift``: a slit [m3/s].

    The root of  p = rho Q^2/(2 Cd^2 A^2) + 32 mu Q/(pi w x^2),  A = w x: the jet's loss and the
    creeping one. ``p`` across the port [Pa], ``lift`` ``x`` and ``port_width`` ``w`` [m],
    ``rho`` [kg/m3], ``mu`` [Pa·s], ``cd`` [1].

    Oil at freezing, 70 times as thick, leaves slowly through a port that is 0.2 mm open:

    >>> cold, hot = (port_flow(4e5, 2e-4, 9e-3, 830.0, mu) for mu in (0.84, 0.0118))
    >>> round(float(cold / hot), 1)
    0.4

    Source: Esposito, Fluid Power, Ex. 8-4, for the jet; Hasimoto 1958, in Happel & Brenner, Low
    Reynolds Number Hydrodynamics, for the creep through a slit (from memory); adding them is
    judgement.
    """
    creep = 32 / np.pi * mu
    jet = 2 * rho * np.abs(p) * (lift / cd) ** 2
    return 2 * p * port_width * lift**2 / (creep + np.sqrt(creep**2 + jet))


def relief_flow(
    p: Floats,
    crack: Floats,
    area: Floats,
    rate: Floats,
    port_width: Floats,
    rho: Floats,
    mu: Floats,
    *,
    cd: Floats = 0.65,
    stuck_lift: Floats = 0.0,
    seat_leak: Floats = 0.0,
    travel: Floats = np.inf,
    feed_resistance: Floats = 0.0,
) -> Floats:
    """Flow through a plunger relief valve [m3/s]: through its port, and past its seat.

    ``p`` before the valve [Pa], ``port_width`` ``w`` [m], ``rho`` [kg/m3], ``mu`` [Pa·s], ``cd``
    [1], ``seat_leak`` an area that stays open under a sound spring: a scored seat, dirt [m2];
    ``feed_resistance`` of the drilling that leads to the plunger, laminar [1/m3]; the rest as in
    ``lift``. Flow forces, which add a little override, are left out.

    Thick oil leaves hardly, for two reasons: the port is a slit that chokes it, and the plunger
    sees less than the pump's pressure, by what its drilling loses. The loss is taken as that of
    the jet at the lift, ``R mu Cd w x sqrt(2 p/rho)``, so that it acts as a stiffer spring. Cold
    pressure therefore stands above the hot setting, the more the more oil must leave.

    Propped 1 mm open it is a leak at idle (l/min at 8 psi) that still regulates above:

    >>> valve = dict(crack=345e3, area=1.267e-4, rate=4e3, port_width=9e-3, rho=818.0, mu=0.0118)
    >>> [round(float(relief_flow(55e3, seat_leak=a, **valve)) * 60e3, 1) for a in (0.0, 9e-6)]
    [0.0, 4.1]

    Source: Esposito, Fluid Power with Applications, Examples 8-1 and 8-4; laminar pipe, Massey &
    Ward-Smith, Mechanics of Fluids; the stiffer spring is an own approximation.
    """
    lost = feed_resistance * mu * cd * port_width * np.sqrt(2 * np.maximum(p, 0.0) / rho)
    x = lift(p, crack, area, rate, stuck_lift=stuck_lift, travel=travel, held_back=lost)
    return port_flow(p, x, port_width, rho, mu, cd) + orifice_flow(p, rho, mu, seat_leak, cd)
