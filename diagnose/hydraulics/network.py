"""An engine at a speed and a temperature as conductances, and its flows at one pressure.

What does not depend on it is computed once.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np

from diagnose.hydraulics import aeration, bearing, leaks, oil, passage, pump, relief, suction
from diagnose.hydraulics.aeration import ATMOSPHERE
from diagnose.hydraulics.clearance import radial_of
from diagnose.hydraulics.engine import Cam, Engine, Lifter, Main, Rod
from diagnose.hydraulics.ranges import FloatArray, Floats, refuse_outside

MOST_AIR = 0.95  #: share of air beyond which a pump is counted as drawing froth [1]
STEP = 1e3  #: Pa: the unknown is linear in pressure below this, logarithmic above
FEED_RAMP = 1e4  #: Pa over which a rod feed that must run inward first breaks


@dataclass(frozen=True, slots=True)
class RodFeed:
    """Rod bearings of one kind and the crank drilling that feeds them."""

    conductance: Floats  #: [m3/s/Pa]
    head: Floats  #: gained from journal to crankpin [Pa]
    barrier: Floats  #: to overcome running inward first [Pa]

    def flow(self, p: FloatArray) -> Floats:
        """Broken feed gives nothing; a whole one adds its head to the gallery's pressure."""
        fed = np.clip((p - self.barrier) / FEED_RAMP + 1, 0.0, 1.0)
        return fed * self.conductance * np.maximum(p + self.head, 0.0)


@dataclass(frozen=True, slots=True)
class Network:
    """An engine at given speed and temperature: what does not depend on the pressure."""

    engine: Engine
    mu: Floats  #: low-shear [Pa·s]
    rho: Floats
    mains: Floats  #: conductance [m3/s/Pa], as the next three and the slip
    cams: Floats
    lifters: Floats
    other: Floats
    rods: tuple[RodFeed, ...]
    slip: Floats
    hydrodynamic: Floats  #: [m3/s]
    theoretical: Floats  #: [m3/s]
    tip_speed: Floats  #: [m/s]

    def engine_flows(self, p: FloatArray) -> dict[str, Floats]:
        """Flow by branch at a gallery pressure [m3/s]."""
        e = self.engine
        return {
            "mains": self.mains * p,
            "rods": sum((g.flow(p) for g in self.rods), start=0.0),
            "cams": self.cams * p,
            "lifters": self.lifters * p,
            "jets": sum(
                (
                    g.count
                    * leaks.orifice_flow(
                        np.maximum(p - g.opening_pressure, 0.0),
                        self.rho, self.mu, leaks.hole_area(g.diameter), g.cd, g.bores,
                    )
                    for g in e.jets
                ),
                start=0.0,
            ),
            "other": self.other * p,
            "open_orifice": sum(
                (
                    leaks.orifice_flow(p, self.rho, self.mu, area)
                    for area in (e.open_orifice_area, e.open_jet_area)
                ),
                start=0.0,
            ),
            "hydrodynamic": self.hydrodynamic,
        }  # fmt: skip

    def delivery_drop(self, q: Floats) -> Floats:
        """Pressure lost from pump to gallery [Pa]."""
        e = self.engine
        element = e.filter_resistance * e.filter_blocked
        bore = e.passage_diameter * np.sqrt(e.cooler_open_share)
        return (
            passage.filter_drop(q, self.mu, element, e.filter_bypass, e.filter_bypass_override)
            + passage.fitting_drop(q, self.rho, bore, e.passage_k)
            + passage.pipe_drop(q, self.mu, self.rho, bore, e.passage_length)
        )

    def relief_flow(self, p: Floats) -> Floats:
        """Oil through the relief valve at a pump pressure [m3/s]."""
        e = self.engine
        return relief.relief_flow(
            p,
            e.relief_setting,
            leaks.hole_area(e.relief_plunger_diameter),
            e.relief_rate,
            e.relief_port_width,
            self.rho,
            self.mu,
            cd=e.relief_cd,
            stuck_lift=e.relief_stuck_lift,
            seat_leak=e.relief_seat_leak,
            travel=e.relief_travel,
            feed_resistance=e.relief_feed,
        )

    def inlet_pressure(self, q: Floats) -> Floats:
        """Absolute pressure at the pump for a flow out of the sump [Pa]."""
        e = self.engine
        gap = suction.gap_drop(q, e.pickup_gap, e.pickup_rim, self.mu, self.rho)
        screen = suction.screen_drop(q, self.mu, self.rho, e.screen_area, e.screen_open_share)
        return suction.inlet_pressure(
            q,
            self.mu,
            self.rho,
            tube_diameter=e.tube_diameter,
            tube_length=e.tube_length,
            fittings=e.tube_fittings,
            lift=e.suction_lift,
            restrictions=gap + screen,
            crankcase=ATMOSPHERE,
        )

    def at(self, unknown: FloatArray) -> dict[str, Any]:
        """Return everything that follows from the unknown, by name.

        The unknown is ``log(1 + p/STEP)``, and below zero the logarithm of the share reached of
        the flow wanted at ``p = 0``.
        """
        p = STEP * np.expm1(np.maximum(unknown, 0.0))
        reached = np.exp(np.minimum(unknown, 0.0))
        flows = {name: q * reached for name, q in self.engine_flows(p).items()}
        q = sum(flows.values(), start=0.0)
        p_pump = p + self.delivery_drop(q)
        back = self.relief_flow(p_pump)
        p_in = self.inlet_pressure(q + (1 - self.engine.relief_return_share) * back)
        fill = pump.fill_share(p_in, self.engine.pump_least_inlet, self.rho, self.tip_speed)
        drawn = suction.air_drawn(p_in, self.engine.suction_leak_area, ATMOSPHERE)
        air = np.minimum(self.engine.air_fraction + drawn / self.theoretical, MOST_AIR)
        filled = self.theoretical * fill * aeration.delivered_share(air, p_in, ATMOSPHERE + p_pump)
        slip = np.minimum(self.slip * (ATMOSPHERE + p_pump - p_in), filled)  # or never primes
        return {
            "p": p, "p_pump": p_pump, "p_in": p_in, "fill": fill, "air": air,
            "flows": flows | {"slip": slip, "relief": back, "theoretical": self.theoretical},
            "surplus": filled - slip - back - q,
        }  # fmt: skip


def network_of(engine: Engine, rpm: FloatArray, temperature: FloatArray) -> Network:
    """The engine as a network; ``rpm`` of the crank [rev/min], ``temperature`` of the oil [K]."""
    refuse_outside("engine speed", rpm, 0.0, np.inf, "rpm", open_low=True)
    e = engine
    omega = 2 * np.pi * rpm / 60
    mu, rho = oil.dynamic_viscosity(e.oil, temperature), oil.density(temperature, e.oil.rho15)
    sheared = mu * e.oil.hths_factor
    film = oil.film_viscosity(
        e.oil, oil.film_temperature(e.oil, temperature, e.film_rise, e.film_own_heat)
    )
    speed = rpm / 60 * e.pump_drive_ratio
    return Network(
        engine=e,
        mu=mu,
        rho=rho,
        mains=sum((_main(g, film) for g in e.mains), start=0.0),
        cams=sum((_hole_fed(g, film) for g in e.cams), start=0.0),
        lifters=sum((_lifter(g, sheared) for g in e.lifters), start=0.0),
        other=e.other_conductance / mu,
        rods=tuple(
            RodFeed(
                _hole_fed(g, film),
                passage.centrifugal_head(rho, omega, g.entry_radius, g.exit_radius),
                passage.centrifugal_head(rho, omega, _least(g), g.entry_radius),
            )
            for g in e.rods
        ),
        slip=_slip(e, sheared),
        hydrodynamic=sum((_thrown(g, omega) for g in e.mains), start=0.0)
        + sum((_thrown(g, omega) for g in e.rods), start=0.0)
        + sum((_thrown(g, omega * g.speed_ratio) for g in e.cams), start=0.0),
        theoretical=pump.theoretical_flow(e.pump_displacement, speed),
        tip_speed=np.pi * e.pump_gear_diameter * speed,
    )


def _main(group: Main, mu: Floats) -> Floats:
    """Conductance [m3/s/Pa]: the flow at 1 Pa, for all bearings of the group."""
    radial = radial_of(group.clearance_diametral)
    one = bearing.groove_flow_partial(
        1.0, mu, group.diameter / 2, radial, group.eccentricity, group.land, group.feed_share
    )
    return group.count * one


def _hole_fed(group: Rod | Cam, mu: Floats) -> Floats:
    """Conductance [m3/s/Pa]: the flow at 1 Pa, for all bearings of the group."""
    widest = bearing.film_at(radial_of(group.clearance_diametral), group.eccentricity, 0.0)
    one = bearing.hole_flow(1.0, mu, widest, group.hole_diameter, group.length)
    return group.count * group.feed_share * one


def _lifter(group: Lifter, mu: Floats) -> Floats:
    """Conductance [m3/s/Pa]: the flow at 1 Pa, for all bores of the group."""
    radial = radial_of(group.clearance_diametral)
    one = leaks.annulus_flow(1.0, mu, group.diameter, radial, group.eccentricity, group.land)
    return group.count * group.lands * one


def _slip(e: Engine, mu: Floats) -> Floats:
    """Conductance of the pump's own gaps [m3/s/Pa]."""
    tip = pump.slip_tip(
        1.0, mu, e.pump_tip_clearance, e.pump_gear_length, e.pump_tip_land, paths=e.pump_tip_paths
    )
    return tip + pump.slip_end(1.0, mu, e.pump_end_clearance / 2, e.pump_end_path, e.pump_faces)


def _thrown(group: Main | Rod | Cam, omega: Floats) -> Floats:
    """Flow carried out by the turning journals, whatever the pressure [m3/s]."""
    length = 2 * group.land if isinstance(group, Main) else group.length
    one = bearing.side_flow_short(
        group.eccentricity, radial_of(group.clearance_diametral), group.diameter / 2, length, omega
    )
    return group.count * one


def _least(group: Rod) -> Floats:
    return group.entry_radius if group.least_radius is None else group.least_radius
