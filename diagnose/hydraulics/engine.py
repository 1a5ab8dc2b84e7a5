"""Parameters of one engine's lubrication circuit: every bearing, gap, spring and tube.

All SI; every field may be an array that
broadcasts with the others and with engine speed and oil temperature. Change one with
``dataclasses.replace``.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal, TypeVar

import numpy as np

from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.ranges import Floats
from knowledge.units import INCH, PSI


@dataclass(frozen=True, slots=True)
class Main:
    """Main bearings of one kind, fed through a groove: on each side a land leaks."""

    count: Floats  #: how many alike [1]
    diameter: Floats  #: of the journal [m]
    length: Floats  #: of the shell, groove included [m]
    groove_width: Floats  #: [m]
    clearance_diametral: Floats  #: on the diameter [m]
    eccentricity: Floats  #: orbit average, share of the radial clearance [1]
    feed_share: Floats = 1.0  #: of a full groove's flow: 0.6 to 0.85 for half a groove [1]

    @property
    def land(self) -> Floats:
        """Length of one land beside the groove [m]."""
        return (self.length - self.groove_width) / 2


@dataclass(frozen=True, slots=True)
class Rod:
    """Rod bearings of one kind, fed through the crank by a hole in the crankpin."""

    count: Floats  #: [1]
    diameter: Floats  #: of the crankpin [m]
    length: Floats  #: [m]
    hole_diameter: Floats  #: [m]
    clearance_diametral: Floats  #: on the diameter [m]
    eccentricity: Floats  #: [1]
    feed_share: Floats  #: of the flow with the hole at the widest gap, over the orbit [1]
    entry_radius: Floats  #: where oil enters the crank, from its axis [m]
    exit_radius: Floats  #: where it leaves at the crankpin [m]
    least_radius: Floats | None = None  #: nearest the axis on the way; None: straight out [m]


@dataclass(frozen=True, slots=True)
class Cam:
    """Camshaft bearings of one kind, fed by a hole in the block."""

    count: Floats  #: [1]
    diameter: Floats  #: [m]
    length: Floats  #: [m]
    hole_diameter: Floats  #: [m]
    clearance_diametral: Floats  #: on the diameter [m]
    eccentricity: Floats  #: [1]
    feed_share: Floats  #: [1]
    speed_ratio: Floats = 0.5  #: to the crank [1]


@dataclass(frozen=True, slots=True)
class Lifter:
    """Bores of one kind that leak round what slides in them: lifters, valve stems, plungers."""

    count: Floats  #: [1]
    diameter: Floats  #: [m]
    land: Floats  #: length of one land [m]
    clearance_diametral: Floats  #: on the diameter [m]
    eccentricity: Floats = 0.5  #: [1]
    lands: Floats = 2.0  #: leaking sides, above and below the feed [1]


Group = TypeVar("Group", Main, Rod, Cam, Lifter)


@dataclass(frozen=True, slots=True)
class Jet:
    """Holes of one kind into the open: metered pushrods, piston jets, chain tensioner bleeds."""

    count: Floats  #: [1]
    diameter: Floats  #: [m]
    cd: Floats = 0.62  #: [1]
    opening_pressure: Floats = 0.0  #: a check valve takes this out of the drop [Pa]
    bores: Floats = 0.0  #: length of the hole in diameters: thick oil is choked along it [1]


@dataclass(frozen=True, slots=True, kw_only=True)
class Engine:
    """Every parameter of one circuit, faults included; the defaults are an engine without fault."""

    oil: Oil
    mains: tuple[Main, ...]
    rods: tuple[Rod, ...]
    cams: tuple[Cam, ...]
    lifters: tuple[Lifter, ...]
    jets: tuple[Jet, ...]

    pump_displacement: Floats  #: [m3/rev of the pump]
    pump_drive_ratio: Floats = 0.5  #: pump turns per crank turn [1]
    pump_gear_diameter: Floats = 0.038  #: over the teeth [m]
    pump_gear_length: Floats  #: [m]
    pump_tip_clearance: Floats  #: from tooth tip to body, one side [m]
    pump_tip_land: Floats  #: all sealing tips in series [m]
    pump_tip_paths: Floats = 2.0  #: gears [1]
    pump_end_clearance: Floats  #: end float of a gear, both faces together [m]
    pump_end_path: Floats = 1.5  #: width over length of the leak over one face [1]
    pump_faces: Floats = 4.0  #: [1]
    pump_least_inlet: Floats = 60e3  #: absolute; below it nothing more enters the teeth [Pa]

    relief_setting: Floats  #: cracking pressure [Pa]
    relief_plunger_diameter: Floats  #: [m]
    relief_rate: Floats  #: of the spring [N/m]
    relief_port_width: Floats  #: [m]
    relief_cd: Floats = 0.65  #: [1]
    relief_travel: Floats = 9e-3  #: to the stop; 0 is stuck shut [m]
    relief_stuck_lift: Floats = 0.0  #: open at rest, preload gone; see ``relief.lift`` [m]
    relief_seat_leak: Floats = 0.0  #: open under a sound spring: dirt, a scored seat [m2]
    relief_feed: Floats = 0.0  #: resistance of the drilling that leads to the plunger [1/m3]
    relief_return_share: Floats = 1.0  #: of relief flow led back to the inlet, not the sump [1]

    filter_resistance: Floats  #: of the clean element [1/m3]
    filter_blocked: Floats = 1.0  #: factor on it as the element loads [1]
    filter_bypass: Floats = np.inf  #: bypass opens at [Pa]
    filter_bypass_override: Floats = 0.0  #: [Pa·s/m3]
    passage_diameter: Floats  #: pump to gallery [m]
    passage_k: Floats  #: sum of its loss coefficients [1]
    passage_length: Floats = 0.0  #: [m]
    cooler_open_share: Floats = 1.0  #: of the cooler and its lines, which all oil passes [1]

    pickup_gap: Floats = 9.5e-3  #: rim to sump floor [m]
    pickup_rim: Floats = 0.065  #: diameter [m]
    screen_area: Floats = 1.5e-3  #: of all its holes [m2]
    screen_open_share: Floats = 1.0  #: not blocked [1]
    tube_diameter: Floats = 0.019  #: pickup tube [m]
    tube_length: Floats = 0.25  #: [m]
    tube_fittings: Floats = 1.5  #: sum K [1]
    suction_lift: Floats = 0.05  #: oil level to pump [m]
    suction_leak_area: Floats = 0.0  #: letting air into the suction side [m2]
    air_fraction: Floats = 0.0  #: bubbles in what is drawn from the sump, by volume [1]

    film_rise: Floats = 0.0  #: bearing film above gallery temperature [K]
    film_own_heat: Floats = 0.0  #: share of that rise which goes with the film's viscosity [1]
    other_conductance: Floats = 0.0  #: leaks not listed, Q = k p/mu: calibrated [m3]
    open_orifice_area: Floats = 0.0  #: a hole that should be plugged [m2]
    open_jet_area: Floats = 0.0  #: what a piston jet leaves open [m2]
    gauge_tap: Literal["gallery", "pump"] = "gallery"  #: behind the filter, or before it


def reclearanced(
    engine: Engine,
    *,
    mains: Floats | None = None,
    rods: Floats | None = None,
    cams: Floats | None = None,
    lifters: Floats | None = None,
) -> Engine:
    """Return the engine with other clearances in all bearings of a kind, on the diameter [m].

    >>> worn = reclearanced(SET_A, rods=0.0035 * INCH)
    >>> worn.rods[0].clearance_diametral > worn.mains[0].clearance_diametral
    True
    """
    return replace(
        engine,
        mains=_with_clearance(engine.mains, mains),
        rods=_with_clearance(engine.rods, rods),
        cams=_with_clearance(engine.cams, cams),
        lifters=_with_clearance(engine.lifters, lifters),
    )


def _with_clearance(groups: tuple[Group, ...], clearance: Floats | None) -> tuple[Group, ...]:
    if clearance is None:
        return groups
    return tuple(replace(g, clearance_diametral=clearance) for g in groups)


def sample_v8(
    *,
    clearance: Floats,
    eccentricity: Floats,
    main_share: Floats,
    rod_share: Floats,
    film_rise: Floats,
    pump_gap: Floats,
) -> Engine:
    """Return a typical wet-sump V8, no engine in particular.

    ``clearance`` of mains and rods on the diameter [m], their ``eccentricity`` [1], ``main_share``
    and ``rod_share`` the orbit averages of groove and hole feed [1], ``film_rise`` [K],
    ``pump_gap`` end float of the gears and gap at their tips [m].

    What the sample set leaves open is filled in here: both lands of a main bearing carry
    hydrodynamic flow, its groove does not; each lifter leaks at two lands; the pump's four faces
    leak over a path 1.5 times as wide as long; films, not lifters, are hotter than the gallery;
    no shear thinning; a 19 mm pickup tube and 38 mm gears, so that suction limits nothing here.

    Source: own calculation, assumed typical dimensions; a sanity target, not data.
    """
    return Engine(
        oil=Oil(kv40=96e-6, kv100=14.4e-6, rho15=870.0),
        mains=(Main(5, 3.0 * INCH, 0.90 * INCH, 0.16 * INCH, clearance, eccentricity, main_share),),
        rods=(
            Rod(
                8, 2.10 * INCH, 0.78 * INCH, 3 / 16 * INCH, clearance, eccentricity, rod_share,
                entry_radius=38.1e-3, exit_radius=61e-3,
            ),
        ),
        cams=(Cam(5, 1.87 * INCH, 0.75 * INCH, 3 / 16 * INCH, 0.003 * INCH, 0.5, 0.5),),
        lifters=(Lifter(16, 0.842 * INCH, 0.45 * INCH, 0.0015 * INCH),),
        jets=(Jet(16, 0.4e-3),),
        pump_displacement=20.8e-6,
        pump_gear_length=1.2 * INCH,
        pump_tip_clearance=pump_gap,
        pump_tip_land=4.5e-3,
        pump_end_clearance=pump_gap,
        relief_setting=50 * PSI,
        relief_plunger_diameter=12.7e-3,
        relief_rate=4e3,
        relief_port_width=9e-3,
        filter_resistance=70e3 / 1e-3 / 11.8e-3,
        filter_bypass=100e3,
        passage_diameter=11e-3,
        passage_k=6.0,
        film_rise=film_rise,
    )  # fmt: skip


def set_a(clearance: Floats = 0.0025 * INCH) -> Engine:
    """The sample V8 tight, with cool films; ``clearance`` of mains and rods, diametral [m]."""
    return sample_v8(
        clearance=clearance,
        eccentricity=0.6,
        main_share=0.65,
        rod_share=0.5,
        film_rise=0.0,
        pump_gap=0.003 * INCH,
    )


def set_b(clearance: Floats = 0.0025 * INCH) -> Engine:
    """The sample V8 as it runs, films 30 K hotter; ``clearance`` of mains and rods, diametral [m]."""
    return sample_v8(
        clearance=clearance,
        eccentricity=0.8,
        main_share=0.8,
        rod_share=0.7,
        film_rise=30.0,
        pump_gap=0.004 * INCH,
    )


SET_A = set_a()
SET_B = set_b()
