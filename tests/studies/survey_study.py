"""How often a survey of gauge readings finds the true condition.

``python -m tests.studies.survey_study [trials]``. Single conditions of random severity on random
engines of every profile; reading noise 1.5 psi, a gauge with an error of its own, oil temperature
known to 5 K; the baseline known (five pressures of the same engine when sound, on another gauge) or
not. The engines, readings and severities come from the model that judges them, so what the model
itself has wrong does not show here; ``survey_unlike`` makes them apart. "First" and "within two"
rank the conditions among each other; "outright" also wants the true one above "the circuit is
sound" and "none of these alone".
"""

from __future__ import annotations

import sys
import time
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

import numpy as np

from diagnose.circuit.calibration import RELIEF_OF_A_KIND, WIDE
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import Point, engine_of, shown
from diagnose.circuit.fitting import GaugeError, Predicted, fits, predicted, shares, warmer
from diagnose.circuit.plausible_engines import UNCERTAIN, conditioned, drawn, varied
from diagnose.circuit.survey import ENGINES
from diagnose.circuit.survey_evidence import states
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.ranges import FloatArray
from knowledge.book import the_book
from knowledge.engines.profiles import Profile
from knowledge.units import PSI

SEED = 20260501
NOISE, GAUGE_OFFSET, GAUGE_SCALE, SUMP = 1.5, 1.0, 0.02, 5.0
COLD, HOT = 298.15, 363.15
#: share of the engine's top speed, oil temperature; the first 2, the first 4, and all 7
LOOKS = (
    (0.0, HOT), (0.55, HOT), (0.1, COLD), (0.45, COLD), (0.2, HOT), (1.0, HOT), (0.8, COLD),
)  # fmt: skip
KNOWN = ((0.0, HOT), (0.2, HOT), (0.5, HOT), (1.0, HOT), (0.3, COLD))
COUNTS = (2, 4, 7)
#: a choice of nine, distinguished among themselves only; easier than all thirteen
NINE = (
    "clearances_wide", "oil_thin", "pump_slip", "delivery_reduced", "relief_bleeds",
    "relief_caps_low", "open_leak_inside", "suction_throttled", "flow_restricted",
)  # fmt: skip


@dataclass
class Tally:
    """What came of the trials of one kind."""

    trials: int = 0
    first: int = 0
    second: int = 0
    outright: int = 0
    misled: int = 0  #: another condition has at least half of the probability
    shares: list[float] = field(default_factory=list)
    confused: Counter[tuple[str, str]] = field(default_factory=Counter)

    def add(self, true: str, ranked: Sequence[str], share: Mapping[str, float]) -> None:
        self.trials += 1
        self.outright += share[true] >= max(share.values())
        self.first += ranked[0] == true
        self.second += true in ranked[:2]
        self.misled += max(share[name] for name in ranked if name != true) >= 0.5
        self.shares.append(share[true])
        self.confused[true, ranked[0]] += 1

    def line(self) -> str:
        n = self.trials
        return (
            f"first {self.first / n:4.0%}, within two {self.second / n:4.0%}, outright "
            f"{self.outright / n:4.0%}, mean share {np.mean(self.shares):4.0%} ({n} trials)"
        )


def looks(profile: Profile, where: Sequence[tuple[float, float]]) -> list[Point]:
    """The points of a survey on this engine."""
    idle, top = profile.specified[0][0], profile.specified[-1][0] * 1.15
    return [Point(round(idle + x * (top - idle), -1), heat, 0.0) for x, heat in where]


@dataclass(frozen=True, slots=True)
class Truth:
    """What the engine and its gauge are really like."""

    profile: Profile
    oil_grade: str
    scale: float = GAUGE_SCALE  #: error of the gauge, share of the pressure (one deviation)
    offset: float = GAUGE_OFFSET  #: and the same at every pressure [psi]


def read(
    engine: Engine,
    points: Sequence[Point],
    rng: np.random.Generator,
    off: FloatArray | float,
    truth: Truth,
) -> FloatArray:
    """What a gauge with an error shows [psi], the oil ``off`` warmer than was thought."""
    true = shown(engine, points, off)[0] / PSI
    scale, offset = 1 + truth.scale * rng.standard_normal(), truth.offset * rng.standard_normal()
    seen = true * scale + offset + NOISE * rng.standard_normal(len(points))
    return np.asarray(np.maximum(seen, 0.0))


def typical(profile: Profile, grade: str) -> Engine:
    """The typical engine of a profile with an oil of this grade."""
    return engine_of({k: v for k, (v, _) in profile.numbers.items()}, Oil.of_grade(grade))


def trial(
    profile: Profile,
    condition: str,
    severity: float,
    rng: np.random.Generator,
    *,
    calibrated: bool,
    truth: Truth | None = None,
) -> tuple[Predicted, FloatArray, float]:
    """One engine with one condition: what each hypothesis predicts, what was read, and the
    most the condition moved any true pressure [psi]. ``truth``: as the profile states, if None."""
    truth = truth or Truth(profile, profile.oil_grade)
    engine = typical(profile, profile.oil_grade)
    real = typical(truth.profile, truth.oil_grade)
    points = looks(profile, LOOKS)
    kind = {**UNCERTAIN, "relief": RELIEF_OF_A_KIND}
    guessed = WIDE if calibrated else kind  # as the survey of a case has them
    z = rng.standard_normal((1, len(kind)))
    sound = varied(real, z, kind)
    ill = FAULTS[condition].apply(sound, severity)
    state = states([p.temperature for p in points])
    off = (SUMP * rng.standard_normal(max(state) + 1))[state]
    seen = read(ill, points, rng, off, truth)
    moved = float(np.abs(shown(ill, points) - shown(sound, points)).max() / PSI)
    draws = drawn(ENGINES, rng)
    if calibrated:
        known = looks(profile, KNOWN)
        pressures = read(sound, known, rng, SUMP / 2 * rng.standard_normal(), truth) * PSI
        known = [
            Point(p.rpm, p.temperature, float(q)) for p, q in zip(known, pressures, strict=True)
        ]
        draws = conditioned(engine, draws, known, rng, widths=guessed)
    shows = predicted(engine, draws, points, warmer(ENGINES, points, rng), widths=guessed)
    return shows, seen, moved


def part(shows: Predicted, count: int, among: Sequence[str]) -> Predicted:
    """The predictions at the first few readings, for some of the conditions."""
    return Predicted(
        shows.healthy[:, :count], {k: v[..., :count] for k, v in shows.faults.items() if k in among}
    )


def study(trials: int, seed: int = SEED) -> dict[tuple[str, bool, int], Tally]:
    """Tallies by (conditions distinguished, calibrated, readings)."""
    rng = np.random.default_rng(seed)
    out: dict[tuple[str, bool, int], Tally] = {}
    profiles = list(the_book().profiles.values())
    names = list(FAULTS)
    for i in range(trials):
        condition = names[i % len(names)]
        profile = profiles[int(rng.integers(len(profiles)))]
        severity = float(rng.uniform(0.2, 1.0))
        for calibrated in (True, False):
            shows, seen, moved = trial(profile, condition, severity, rng, calibrated=calibrated)
            sets = {"all 13": names, "nine": NINE if condition in NINE else ()}
            if moved >= 4.0:
                sets["all 13, moves a pressure by 4 psi or more"] = names
                sets["nine, moves a pressure by 4 psi or more"] = sets["nine"]
            for count in COUNTS:
                for kind, among in sets.items():
                    if not among:
                        continue
                    found = fits(
                        part(shows, count, among), seen[:count], [GaugeError(1.5, 1.0)] * count, rng
                    )
                    share = shares(found)
                    ranked = sorted(among, key=lambda k: -share[k])
                    tally = out.setdefault((kind, calibrated, count), Tally())
                    tally.add(condition, ranked, share)
    return out


def table(tally: Tally) -> list[str]:
    """True condition down, the one put first across, in percent of each row."""
    names = [n for n in FAULTS if any(t == n for t, _ in tally.confused)]
    across = list(FAULTS) if len(names) > len(NINE) else list(NINE)
    lines = [" " * 20 + "".join(f"{chr(97 + i):>5}" for i in range(len(across)))]
    for true in names:
        total = sum(tally.confused[true, a] for a in across)
        cells = "".join(
            f"{100 * tally.confused[true, a] / total:5.0f}" if tally.confused[true, a] else "    ."
            for a in across
        )
        lines.append(f"{chr(97 + across.index(true))} {true:<18}{cells}")
    return lines


def main() -> None:
    trials = int(sys.argv[1]) if len(sys.argv) > 1 else 260
    start = time.perf_counter()
    found = study(trials)
    print(f"seed {SEED}, {trials} engines, {ENGINES} engines a survey")
    for kind in dict.fromkeys(k for k, _, _ in found):
        print(f"\n{kind}")
        for calibrated in (True, False):
            for count in COUNTS:
                how = "baseline known" if calibrated else "no baseline   "
                print(f"  {how}, {count} readings: {found[kind, calibrated, count].line()}")
    print("\nput first (across, %) for each true condition (down), 7 readings, baseline known")
    print("\n".join(table(found["all 13, moves a pressure by 4 psi or more", True, 7])))
    print(f"\n{time.perf_counter() - start:.0f} s")


if __name__ == "__main__":
    main()
