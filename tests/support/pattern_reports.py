"""What a person would report of a gauge, from pressures the circuit model gives.

The figures wanted are those of ``knowledge.reference.gauge``; what is added here is judgement:

- *Low* is below the figure wanted at that speed and heat, or below half of what the same engine
  showed when it was sound: its owner knows it. Either way at least 3 psi must be missing, so an
  engine that never met the figure is not low for that.
- *High* is past the relief setting by the usual share, or more than that share above what the
  same engine showed when sound (its idle, hot, for one), and at least 5 psi above it.
- The panel gauge has an error of its own, the same in every reading and in the memory of better
  days; port readings are taken with a direct gauge.

- *At speed* a person means cruising. Low at all speeds is low hot, idling and cruising, and low
  cold at some speed. Nobody holds an engine at high revs with a gauge on the pump, so ports are
  compared from idle to cruising.
- A ceiling is flat if pressure grows by no more than 4 psi for each 1000 rpm from cruising to
  high revs, since a sound spring too gives way a little.

A complaint is any reading that is low or high, or that falls with rising revs.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import reduce
from typing import TypeAlias

import numpy as np
from numpy.typing import NDArray

from knowledge.model import Finding
from knowledge.pressure import direct_gauge, patterns, patterns_speed
from knowledge.pressure.gauge import (
    NEAR_SETTING,
    PAST_SETTING,
    REACHED_COLD,
    wanted_cold,
    wanted_hot,
)
from knowledge.units import PSI

Pressures: TypeAlias = NDArray[np.float64]
Flags: TypeAlias = NDArray[np.bool_]

HOT_POINTS = ("hot_idle", "off_idle", "cruise", "fast")
COLD_POINTS = ("cold_idle", "cold_fast")
POINTS = (*HOT_POINTS, *COLD_POINTS)
AT_SPEED = ("cruise", "fast", "cold_fast")
AT_PORTS = ("hot_idle", "off_idle", "cruise", "cold_idle")

HABIT = 0.5  #: share of the sound engine's pressure below which its owner calls it low
MISSED = 3 * PSI  #: what must be missing to be seen
NOTICED = 5 * PSI  #: what must be too much to be seen
FLAT = (-3 * PSI, 4 * PSI)  #: change for each 1000 rpm that counts as none
FALL = 3 * PSI  #: fall with rising revs that counts as one (``readings_pattern``)
PORTS = 5 * PSI  #: two ports that differ by more than this differ


@dataclass(frozen=True, slots=True)
class Looks:
    """What gauges show of many engines: by point, faulty and sound, panel and at two ports."""

    rpm: dict[str, Pressures]  #: speed of each point [rev/min]
    idle_figure: Pressures  #: least wanted at hot idle [Pa]
    setting: Pressures  #: of the sound relief valve [Pa]
    panel: dict[str, Pressures]  #: gallery, by the panel gauge with its error
    panel_sound: dict[str, Pressures]
    gallery: dict[str, Pressures]  #: direct gauge
    gallery_sound: dict[str, Pressures]
    pump: dict[str, Pressures]  #: direct gauge at the pump outlet
    pump_sound: dict[str, Pressures]

    def figure(self, point: str) -> Pressures:
        """Least pressure wanted at a point, by ``gauge.wanted_hot`` or ``gauge.wanted_cold``."""
        rule = wanted_hot if point in HOT_POINTS else wanted_cold
        wanted = np.vectorize(rule)(self.rpm[point], self.idle_figure, self.setting)
        return np.asarray(wanted, float)

    def lower(self, point: str, seen: dict[str, Pressures], sound: dict[str, Pressures]) -> Flags:
        """Low at a point."""
        wanted = np.maximum(self.figure(point), HABIT * sound[point])
        return np.asarray(seen[point] < np.minimum(wanted, sound[point] - MISSED))

    def low(self, point: str) -> Flags:
        """Low at a point by the panel gauge."""
        return self.lower(point, self.panel, self.panel_sound)

    def high(self, point: str) -> Flags:
        """High at a point by the panel gauge."""
        seen, sound = self.panel[point], self.panel_sound[point]
        wanted = np.minimum(PAST_SETTING * self.setting, PAST_SETTING * sound)
        return np.asarray(seen > np.maximum(wanted, sound + NOTICED))


def some(*flags: Flags) -> Flags:
    """Where any holds."""
    return reduce(np.logical_or, flags)


def every(*flags: Flags) -> Flags:
    """Where all hold."""
    return reduce(np.logical_and, flags)


def falls(looks: Looks, seen: dict[str, Pressures]) -> Flags:
    """Less pressure at some higher speed, oil equally hot."""
    pairs = [(a, b) for i, a in enumerate(HOT_POINTS) for b in HOT_POINTS[i + 1 :]]
    return some(*(seen[fast] < seen[slow] - FALL for slow, fast in pairs))


def capped(looks: Looks, seen: dict[str, Pressures]) -> Flags:
    """Flat from cruise to high revs, short of the setting, and not next to nothing."""
    change = (seen["fast"] - seen["cruise"]) / (looks.rpm["fast"] - looks.rpm["cruise"]) * 1000
    short = every(*(seen[p] < NEAR_SETTING * looks.setting for p in AT_SPEED))
    flat = (change >= FLAT[0]) & (change <= FLAT[1])
    return np.asarray(flat & short & (seen["cruise"] >= 1.5 * looks.idle_figure))


def observations(looks: Looks) -> dict[Finding, Flags]:
    """Which engines show each pattern; a pattern the sound engine shows too is no news."""
    low = {p: looks.low(p) for p in POINTS}
    hot, cold = some(*(low[p] for p in HOT_POINTS)), some(*(low[p] for p in COLD_POINTS))
    at_pump = {p: looks.lower(p, looks.pump, looks.pump_sound) for p in POINTS}
    direct = {p: looks.lower(p, looks.gallery, looks.gallery_sound) for p in POINTS}
    lost = {p: looks.pump[p] - looks.gallery[p] for p in POINTS}
    kept = {p: looks.pump_sound[p] - looks.gallery_sound[p] for p in POINTS}
    seen, sound = looks.panel, looks.panel_sound
    past = PAST_SETTING * looks.setting
    near = REACHED_COLD * looks.setting
    return {
        patterns.GAUGE_READS_LOW: hot | cold,
        patterns.GAUGE_READS_HIGH: some(*(looks.high(p) for p in POINTS)),
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED: low["hot_idle"] & ~low["cruise"],
        patterns_speed.RISES_JUST_OFF_IDLE: low["hot_idle"] & ~low["off_idle"],
        patterns_speed.GOOD_COLD_LOW_HOT: hot & ~cold,
        patterns_speed.LOW_AT_ALL_SPEEDS: low["hot_idle"] & low["cruise"] & cold,
        patterns_speed.LOW_EVEN_COLD: cold,
        patterns_speed.FALLS_AS_REVS_RISE: falls(looks, seen) & ~falls(looks, sound),
        patterns_speed.CAPPED_LOW: capped(looks, seen) & ~capped(looks, sound),
        patterns_speed.NEVER_REACHES_SETTING_COLD: every(
            seen["cold_fast"] < near, sound["cold_fast"] >= near
        ),
        patterns_speed.CLIMBS_PAST_SETTING: every(
            seen["cold_fast"] > past, sound["cold_fast"] <= past
        ),
        direct_gauge.PUMP_PORT_LOW: some(*(direct[p] & at_pump[p] for p in AT_PORTS)),
        direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY: some(
            *(direct[p] & ~at_pump[p] & (lost[p] > kept[p] + PORTS) for p in AT_PORTS)
        ),
        direct_gauge.PORTS_DIFFER: some(
            *((lost[p] > PORTS) & (kept[p] <= PORTS) for p in ("hot_idle", "off_idle"))
        ),
    }


def complaint(looks: Looks) -> Flags:
    """Whether anyone would bring this engine in for its oil pressure."""
    trouble = [f(p) for p in POINTS for f in (looks.low, looks.high)]
    sinks = falls(looks, looks.panel) & ~falls(looks, looks.panel_sound)
    return some(sinks, *trouble)
