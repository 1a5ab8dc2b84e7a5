"""How much of the missing pressure each measured finding explains, and how much remains.

The shares are Shapley values over the measured deviations: the mean gain of putting one right over
every order of putting them right. They add up to what all explain together, whatever the order of
measuring.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import reduce

import numpy as np
from numpy.typing import NDArray

from diagnose.case.case import Case
from diagnose.circuit import shapley
from diagnose.circuit.band import Band
from diagnose.circuit.deviations import (
    Deviation,
    blended,
    deviations,
    evenly_drawn,
    measures_circuit,
    sees_circuit,
    sound_engines,
    unused,
)
from diagnose.circuit.engine_model import TEMPERATURE_ERROR, heats
from diagnose.circuit.operating_points import OperatingPoint, as_if_read, points_of
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.ranges import FloatArray
from knowledge.pressure.gauge import at_pump, spread_of
from knowledge.units import PSI

ENGINES, SEED = 48, 11  #: those of ``forecast``: one sound engine for both
WALKS = 40  #: orders tried, each with its reverse, where there are too many deviations for all
NEGLIGIBLE = 2 * PSI  #: less missing than this counts as nothing


@dataclass(frozen=True, slots=True, kw_only=True)
class Account:
    """The budget at one point, in pascals: shares in the order of the findings."""

    point: OperatingPoint
    healthy: Band
    shares: tuple[Band, ...]
    explained: Band
    shortfall: Band | None  #: None: no reading to compare with
    unexplained: Band | None
    starved: float  #: share of plausible engines whose bearings would get no oil as found

    @property
    def overdrawn(self) -> bool:
        """Whether what was found clearly explains more than is missing."""
        return self.unexplained is not None and self.unexplained.high < -NEGLIGIBLE

    @property
    def closed(self) -> bool | None:
        """Whether no unexplained pressure worth a search remains; None where the band allows both."""
        rest = self.unexplained
        if rest is None or (rest.low < NEGLIGIBLE and rest.mean >= NEGLIGIBLE):
            return None
        return rest.mean < NEGLIGIBLE


@dataclass(frozen=True, slots=True)
class Remainder:
    """What is left of an account: pressure that nothing found explains, and all that is missing [Pa]."""

    account: Account
    unexplained: Band
    missing: Band


@dataclass(frozen=True, slots=True, kw_only=True)
class Budget:
    """Findings, accounts at hot idle and at cruise, and what could not be used."""

    findings: tuple[Deviation, ...]
    accounts: tuple[Account, ...]
    unused: tuple[str, ...]
    exact: bool  #: every coalition computed, not a sample of orders

    @property
    def unexplained(self) -> Remainder | None:
        """What is left of the first account that does not close.

        One that surely does not goes before one whose band allows both. None where there is no
        reading to compare with.
        """
        rests = [
            Remainder(a, a.unexplained, a.shortfall)
            for a in self.accounts
            if a.unexplained and a.shortfall
        ]
        surely = [r for r in rests if r.account.closed is False]
        perhaps = [r for r in rests if r.account.closed is None]
        return next(iter([*surely, *perhaps, *rests]), None)


def budget(case: Case, engines: int = ENGINES, seed: int = SEED) -> Budget:
    """Draw up the budget of a case over ``engines`` plausible engines."""
    rng = np.random.default_rng(seed)
    sound = sound_engines(case, engines, rng)
    found = deviations(case, engines, rng)
    points = points_of(case)
    warmer = TEMPERATURE_ERROR * evenly_drawn(engines, rng)
    misread = np.hstack([evenly_drawn(engines, rng) for _ in points])
    pressure, starved = _pressures(sound, found, points, warmer)
    exact = len(found) <= shapley.MOST_EXACT
    if exact:
        shares = shapley.shapley(pressure[:1] - pressure)
        whole, bare, all_starved = pressure[0], pressure[-1], starved[-1]
    else:
        steps = shapley.walks(len(found), WALKS, np.random.default_rng(seed))
        worth = (pressure[:1] - pressure).reshape(*steps.shape[:2], *pressure.shape[1:])
        shares = shapley.shapley_sampled(steps, worth)
        last = len(found)
        whole, bare, all_starved = pressure[0], pressure[last], starved[last]
    accounts = tuple(
        _account(point, whole[:, i], bare[:, i], shares[..., i], misread[:, i], all_starved[:, i])
        for i, point in enumerate(points)
    )
    return Budget(findings=tuple(found), accounts=accounts, unused=tuple(unused(case)), exact=exact)


def _pressures(
    sound: Engine, found: Sequence[Deviation], points: Sequence[OperatingPoint], warmer: FloatArray
) -> tuple[FloatArray, NDArray[np.bool_]]:
    """Return the gauge pressure of every coalition, engine and point [Pa], and which starve.

    Shape (coalitions, engines, points); coalitions in ``shapley``'s order, or along its walks.
    """
    count = len(found)
    if count <= shapley.MOST_EXACT:
        members = shapley.coalitions(count)
    else:
        members = shapley.walks(count, WALKS, np.random.default_rng(SEED)).reshape(-1, count)
    rpm = np.array([p.rpm for p in points])
    temperature = heats([p.temperature for p in points], warmer)
    engine = coalesced(sound, found, members[:, :, None, None])
    state = solve(engine, rpm, temperature)
    shape = (len(members), len(warmer), len(points))
    pump_side = np.array([bool(p.read and at_pump(p.read.reading)) for p in points])
    pressure = np.where(pump_side, state.pump_pressure, state.gallery_pressure)
    return np.broadcast_to(pressure, shape), np.broadcast_to(state.starved, shape)


def coalesced(sound: Engine, found: Sequence[Deviation], members: NDArray[np.bool_]) -> Engine:
    """Return the engine with each deviation that is a member; ``members`` (coalitions, findings, ...)."""

    def with_next(engine: Engine, i: int) -> Engine:
        return blended(engine, found[i].apply(engine), members[:, i])

    return reduce(with_next, range(len(found)), sound)


def _account(
    point: OperatingPoint,
    healthy: FloatArray,
    as_found: FloatArray,
    shares: FloatArray,
    misread: FloatArray,
    starved: NDArray[np.bool_],
) -> Account:
    shortfall = unexplained = None
    if point.read:
        reading = as_if_read(point.read.reading)
        truly = np.maximum(reading.pressure + spread_of(reading) * misread, 0.0)
        shortfall, unexplained = Band.of(healthy - truly), Band.of(as_found - truly)
    return Account(
        point=point,
        healthy=Band.of(healthy),
        shares=tuple(Band.of(s) for s in shares),
        explained=Band.of(healthy - as_found),
        shortfall=shortfall,
        unexplained=unexplained,
        starved=float(np.mean(starved)),
    )


def can_be_drawn_up(case: Case, *, seen: bool = False) -> bool:
    """Return whether the case has a circuit, a measured parameter of it and a hot reading.

    ``seen``: what was only seen counts as measured, and no reading is needed.
    """
    if case.profile is None:
        return False
    if seen:
        return measures_circuit(case) or sees_circuit(case)
    return measures_circuit(case) and any(p.read for p in points_of(case))
