"""What one engine shows at any speed and oil temperature, learned from a few of its readings.

A lumped law with few parameters, all of which readings can settle: it follows a real engine closer
than a circuit of many dimensions calibrated to the same readings, and its bands say what the
readings leave open. It cannot say what a clearance does: the circuit does.

The pump's flow goes with the speed n. With m the oil's viscosity relative to 100 °C, q = p / 40 psi
and Q = n / n40, the flow that stays below the relief valve's opening follows

    q = (1 - b) m^k Q + b Q^2

one way with two losses: the viscous one of films, and the inertial one of the holes and drillings
that feed them, of jets and nozzles. Thick oil makes it straight in speed, thin oil bends it up. The
relief valve opens softly about ``opens`` and takes ``slope`` rev/min for each psi above it, less in
thick oil: m^-override. k is below 1 because films are warmer than the sump. The gauge is off by an
amount of its own. Parallel leaks would bend the other way (a hot engine straight in speed, a cold
one flat), which no log of a real engine shows.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from diagnose.circuit.band import Band
from diagnose.circuit.sampling import conditioned_draws
from diagnose.hydraulics.oil import T100, Oil, dynamic_viscosity
from diagnose.hydraulics.ranges import FloatArray, Floats
from knowledge.units import PSI

#: mean and standard deviation of each parameter before any reading (judgement but where named):
#: logarithm of n40 [rev/min]; logit of the inertial share b at 40 psi and 100 °C; exponent k of
#: films; logarithm of the relief's slope [rev/min per psi]; logarithm of its opening [psi], about as
#: printed settings spread; exponent of its override; error of the gauge [psi]
PRIOR = np.array([np.log(2000.0), 0.0, 0.8, np.log(200.0), np.log(62.0), 0.7, 0.0])
WIDTH = np.array([0.7, 1.2, 0.3, 0.9, 0.28, 0.4, 1.5])
SLOPE, OVERRIDE = 3, 5  #: their places
#: their correlation: the more a valve passes for each psi, the more thick oil chokes it; as the
#: circuits of the book's profiles have it (``tests.studies.law_of_circuits``)
TOGETHER = 0.58
AT = 40.0  #: psi at which n40 is the speed below the relief's opening
SOFT = 2.0  #: psi: how softly the relief valve opens (judgement)
MOST = 300.0  #: psi: no gauge of an engine shows more
MISFIT = 0.03  #: error of the law, share of the pressure (judgement)
READ_ERROR = 1.0  #: psi: of a gauge that is read once more
HEAT_ERROR = 1.0  #: K: of an oil temperature, where it is measured against where it matters; what
#: one thermometer is always off by is learned with the parameters
COLD_LAG = 0.1  #: K more of that for each kelvin below 90 °C: films and metal lag in a warm-up
WARM = 363.15  #: K
NEWTON, CLOSE = 40, 1e-6
WALKERS, SEED = 256, 5
TAILS = 4.0  #: degrees of freedom of an error: one reading in ten may be far off
WORTH_READING = 0.1  #: share of the variance that a further reading must take away (judgement)
CANDIDATE_ERROR = 1.5  #: psi: of a further reading


@dataclass(frozen=True, slots=True)
class At:
    """A running state: speed [rev/min] and oil temperature [K], each with its spread."""

    rpm: float
    temperature: float
    rpm_spread: float = 0.0
    temperature_spread: float = 0.0


@dataclass(frozen=True, slots=True)
class Shown:
    """A pressure [Pa] that the engine showed in a state, and its error (one standard deviation)."""

    state: At
    pressure: float
    error: float


@dataclass(frozen=True, slots=True, kw_only=True)
class PressureLaw:
    """Draws of the law's parameters given the readings, shape (draws, 7)."""

    draws: FloatArray
    oil: Oil

    def pressures(self, states: Sequence[At]) -> FloatArray:
        """Return the pressure of every draw at each state [Pa], shape (draws, states).

        Speed and oil temperature of a state are drawn with their spreads, the temperature with
        ``HEAT_ERROR`` at least.
        """
        rng = np.random.default_rng(SEED)
        size = (len(self.draws), len(states))
        rpm = np.array([s.rpm for s in states])
        rpm = rpm + np.array([s.rpm_spread for s in states]) * rng.standard_normal(size)
        heat = np.array([s.temperature for s in states])
        heat = heat + _heat_errors(states) * rng.standard_normal(size)
        exact = pressure(self.draws, np.maximum(rpm, 50.0), _thickness(self.oil, heat))
        off = MISFIT * exact * rng.standard_normal(size) + READ_ERROR * rng.standard_normal(size)
        return np.asarray(np.maximum(exact + off, 0.0) * PSI)

    def band(self, state: At) -> Band:
        """Return the middle 90 % of the pressure at a state, and the mean of the middle half [Pa]."""
        return Band.of_middle(self.pressures([state])[:, 0])

    def settles_most(self, asked: Sequence[At], candidates: Sequence[At]) -> At | None:
        """Return the further reading that would narrow the asked pressures most, or None.

        By the share of their variance that a reading at the candidate explains, as if all were
        normal; None where no candidate would take a tenth of it.
        """
        if not asked or not candidates:
            return None
        bare = [replace(s, rpm_spread=0.0, temperature_spread=0.0) for s in (*asked, *candidates)]
        each = pressure(
            self.draws,
            np.array([s.rpm for s in bare]),
            _thickness(self.oil, np.array([s.temperature for s in bare])),
        )
        cov = np.atleast_2d(np.cov(each, rowvar=False))
        k = len(asked)
        total = float(np.trace(cov[:k, :k]))
        gains = [
            float(np.sum(cov[:k, c] ** 2)) / (cov[c, c] + CANDIDATE_ERROR**2)
            for c in range(k, len(bare))
        ]
        best = int(np.argmax(gains))
        return candidates[best] if total > 0 and gains[best] >= WORTH_READING * total else None


def learn(shown: Sequence[Shown], oil: Oil, seed: int = SEED) -> PressureLaw:
    """Return the law given pressures the engine showed; without any, the law of no certain engine.

    An oil temperature is taken to be off by ``HEAT_ERROR`` at least, more while the engine is cold.
    The tails of an error are long, so that one odd reading does not decide.
    """
    rng = np.random.default_rng(seed)
    rpm = np.array([s.state.rpm for s in shown])
    thick = _thickness(oil, np.array([s.state.temperature for s in shown]))
    seen = np.array([s.pressure for s in shown]) / PSI
    error = _errors(shown, oil) if shown else np.empty(0)

    def log_likelihood(z: FloatArray) -> FloatArray:
        if not shown:
            return np.zeros(len(z))
        off = (pressure(of_prior(z), rpm, thick) - seen) / error
        return np.asarray(-(TAILS + 1) / 2 * np.sum(np.log1p(off**2 / TAILS), axis=1))

    start = rng.standard_normal((WALKERS, len(PRIOR)))
    return PressureLaw(draws=of_prior(conditioned_draws(log_likelihood, start, rng)), oil=oil)


def of_prior(z: FloatArray) -> FloatArray:
    """Return the law's parameters (draws, 7) of standard normal draws, as the prior has them."""
    mixed = z.copy()
    mixed[:, OVERRIDE] = TOGETHER * z[:, SLOPE] + np.sqrt(1.0 - TOGETHER**2) * z[:, OVERRIDE]
    return np.asarray(PRIOR + WIDTH * mixed)


def pressure(parameters: FloatArray, rpm: Floats, thickness: Floats) -> FloatArray:
    """Return the pressure [psi] of each set of parameters (draws, 7) at each state (draws, states).

    ``rpm``, ``thickness``: of the states, shape (states,) or (draws, states).
    """
    n40, share, film, slope, opens, override, offset = (c[:, None] for c in parameters.T)
    inertial = 1.0 / (1.0 + np.exp(-share))
    viscous = (1.0 - inertial) * thickness ** np.clip(film, 0.1, 2.0)
    opens = np.exp(np.clip(opens, 2.0, 6.0))
    relief = SOFT * np.exp(slope - n40) * thickness ** -np.clip(override, 0.0, 1.5)
    turns = rpm / np.exp(n40)
    flow = turns  # the surplus is concave and falls: Newton's steps from here never pass its root
    for _ in range(NEWTON):
        over = (AT * flow * (viscous + inertial * flow) - opens) / SOFT
        lifted = np.logaddexp(0.0, over)
        steep = relief * AT / SOFT * (viscous + 2.0 * inertial * flow) * np.exp(over - lifted)
        step = (turns - flow - relief * lifted) / (1.0 + steep)
        flow = flow + step
        if np.all(np.abs(step) < CLOSE * turns):
            break
    real = np.minimum(AT * flow * (viscous + inertial * flow), MOST)
    return np.asarray(np.maximum(real + offset, 0.0))


def _thickness(oil: Oil, temperature: Floats) -> FloatArray:
    """Return the oil's viscosity relative to 100 °C."""
    heat = np.clip(temperature, 243.0, 433.0)
    return np.asarray(dynamic_viscosity(oil, heat) / dynamic_viscosity(oil, T100))


def _errors(shown: Sequence[Shown], oil: Oil) -> FloatArray:
    """Return one standard deviation of each pressure [psi]: its own, the law's, the state's."""
    rpm = np.array([s.state.rpm for s in shown])
    heat = np.array([s.state.temperature for s in shown])
    faster = np.array([s.state.rpm_spread for s in shown])
    warmer = _heat_errors([s.state for s in shown])

    def middle(turn: FloatArray, warm: FloatArray) -> FloatArray:
        each = pressure(PRIOR[None], np.maximum(turn, 50.0), _thickness(oil, warm))
        return np.asarray(each[0])

    by_speed = 0.5 * (middle(rpm + faster, heat) - middle(rpm - faster, heat))
    by_heat = 0.5 * (middle(rpm, heat + warmer) - middle(rpm, heat - warmer))
    seen = np.array([s.pressure for s in shown]) / PSI
    own = np.array([s.error for s in shown]) / PSI
    return np.asarray(np.sqrt(own**2 + (MISFIT * seen) ** 2 + by_speed**2 + by_heat**2))


def heat_errors(temperature: FloatArray) -> FloatArray:
    """Return one standard deviation of oil temperatures [K] that were measured."""
    return np.hypot(COLD_LAG * np.maximum(WARM - temperature, 0.0), HEAT_ERROR)


def _heat_errors(states: Sequence[At]) -> FloatArray:
    """Return one standard deviation of each state's oil temperature [K]."""
    measured = heat_errors(np.array([s.temperature for s in states]))
    return np.hypot([s.temperature_spread for s in states], measured)
