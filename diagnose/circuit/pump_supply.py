"""What a pump delivers at a pressure beside what the engine takes, and the speed it fills to."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from diagnose.circuit.band import Band
from diagnose.circuit.forecast import Target
from diagnose.circuit.parameters import CIRCUIT_PARAMETERS
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.network import STEP, network_of
from diagnose.hydraulics.ranges import FloatArray

MARGIN = 0.15  #: more flow than the clearances take that a sound choice has (judgement)
MOST_OF_THEM, FEW = 0.9, 0.1  #: shares of plausible engines that settle the question
FILLS = 0.98  #: share of its displacement below which a pump counts as cavitating
SLOWEST, FASTEST = 300.0, 10_000.0  #: rpm: looked at for cavitation
FACTORS = (0.1, 10.0)  #: of the displacement, between which the least pump is looked for
HALF_STEPS = 40  #: bisections


@dataclass(frozen=True, slots=True, kw_only=True)
class Supply:
    """What the pump delivers at the pressure wanted, beside what the clearances take [m3/s]."""

    delivers: Band  #: after its slip
    takes: Band
    slips: Band
    spare: Band  #: share of what is taken by which more is delivered; below zero: missing
    chance: float  #: share of plausible engines with enough
    by_branch: dict[str, float]  #: mean share of what is taken, the largest first
    least_pump: Band  #: that delivers ``MARGIN`` more than is taken, for this pump [m3/rev]
    this_pump: float  #: [m3/rev]
    none_does: bool  #: whether even ten times the pump is too little
    bleeds: bool  #: whether the relief is already open at the pressure wanted

    @property
    def enough(self) -> bool | None:
        """Whether it is enough; None: plausible engines differ."""
        return True if self.chance >= MOST_OF_THEM else False if self.chance <= FEW else None


def supply(engine: Engine, target: Target, hot: float) -> Supply:
    """Return what the pump delivers at the target's pressure, beside what the engine takes there.

    ``engine``: columns of plausible engines; ``hot``: oil [K].
    """
    unknown = np.log1p(np.asarray(target.pressure) / STEP)
    speed, heat = np.asarray(target.rpm), np.asarray(hot)
    at = network_of(engine, speed, heat).at(unknown)
    flows = at["flows"]
    slip = np.asarray(flows["slip"])
    branches = {k: q for k, q in flows.items() if k not in ("slip", "relief", "theoretical")}
    takes = np.asarray(sum(branches.values(), start=0.0))
    delivers = np.asarray(at["surplus"]) + np.asarray(at["flows"]["relief"]) + takes
    delivers = np.maximum(delivers, 0.0)  # of one that does not fill, rounding may leave less
    shares = {k: float(np.mean(np.asarray(q) / takes)) for k, q in branches.items()}
    own = np.asarray(engine.pump_displacement)
    this_pump = float(np.median(own))
    larger = least_pump(engine, target, hot) / own  # of each engine's pump: what it lacks or spares
    return Supply(
        delivers=Band.of(delivers),
        takes=Band.of(takes),
        slips=Band.of(slip),
        spare=Band.of(delivers / takes - 1),
        chance=float(np.mean(delivers >= takes)),
        by_branch=dict(sorted(shares.items(), key=lambda s: -s[1])),
        least_pump=Band.of(larger * this_pump),
        this_pump=this_pump,
        none_does=float(np.mean(larger)) > 0.98 * FACTORS[1],
        bleeds=bool(np.mean(np.asarray(flows["relief"]) > 0.01 * takes) > 0.5),
    )


def least_pump(engine: Engine, target: Target, hot: float, margin: float = MARGIN) -> FloatArray:
    """Return the displacement that delivers ``margin`` more than is taken at a pressure [m3/rev].

    A longer pump of the same gears slips more; the relief valve is left out of it. Bisection
    between a tenth and ten times the engine's pump.
    """
    resize = CIRCUIT_PARAMETERS["pump_displacement"].apply
    own = np.asarray(engine.pump_displacement)
    unknown = np.log1p(np.asarray(target.pressure) / STEP)

    def spare(factor: FloatArray) -> FloatArray:
        at = network_of(resize(engine, factor * own), np.asarray(target.rpm), np.asarray(hot)).at(
            unknown
        )
        flows = at["flows"]
        skip = ("slip", "relief", "theoretical")
        takes = np.asarray(sum((q for k, q in flows.items() if k not in skip), start=0.0))
        return np.asarray(at["surplus"] + flows["relief"] - margin * takes)

    return own * _bisected(spare, np.full(own.shape, FACTORS[0]), np.full(own.shape, FACTORS[1]))


def _bisected(
    rising: Callable[[FloatArray], FloatArray],
    low: FloatArray,
    high: FloatArray,
    steps: int = HALF_STEPS,
) -> FloatArray:
    """Where a rising function of each element is zero, in the logarithm; an end where it is not."""
    for _ in range(steps):
        middle = np.sqrt(low * high)
        below = rising(middle) < 0.0
        low, high = np.where(below, middle, low), np.where(below, high, middle)
    return np.asarray(np.sqrt(low * high))


def cavitates_from(engine: Engine, temperature: float) -> Band | None:
    """Return the engine speed from which the pump no longer fills [rpm]; None: none up to 10,000.

    ``temperature`` of the oil in K. An engine that fills at every speed counts as filling to the
    fastest looked at.
    """
    shape = np.shape(np.asarray(engine.pump_displacement))
    first = _bisected(
        lambda rpm: FILLS - np.asarray(solve(engine, rpm, temperature).fill_share),
        np.full(shape, SLOWEST),
        np.full(shape, FASTEST),
        steps=12,
    )
    return None if float(np.mean(first > 0.99 * FASTEST)) > 0.5 else Band.of(first)
