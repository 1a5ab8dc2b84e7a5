"""How well logs of real engines are predicted.

``python -m tests.studies.real_engines [ENGINE=PROFILE ...] FOLDER``

``FOLDER`` holds CSV files of medians of steady running, with the columns rpm, oil_c or coolant_c,
pressure_psi; files whose names agree up to the first underscore are runs of the same engine.

The law is learned from nine medians of one run, or from four, chosen by rule: the run is cut into
thirds by oil temperature, and of each third the lowest, middle and highest speed are taken (of
four: lowest and highest speed of the coldest and the hottest third; as a person takes four: hot
idle, hot and fast, cold idle, and the middle speed of the middle third). The rest of the run and the
other runs are predicted, as ``forecast --at`` does from a case with these medians as its
``[[baseline]]``; an oil temperature is taken from the coolant's where only that was logged. Beside
it the circuit calibrated to the same medians, from the profile named for the engine, else from that
of an unknown layout (no profile was made from these engines); and what ``forecast --at`` averages
of both, and two peers: a regression of pressure on speed, log viscosity and their product, and the
four-parameter form rpm = a p/mu + b sqrt(p) + g (p - p_r)+ by least squares. RMS in psi: all, at
idle (up to 1.25 times the lowest speed), cold (below 50 °C); and the share of medians inside the 90
% bands of law, circuit and average. Errors of a reading and of its oil temperature are drawn for
the circuit as the law draws them. Last, what surveys say of these engines, which are sound.

``--leave-one-out FOLDER`` asks whether the law's priors suit only these engines: factors on the
widths of its priors and on its errors are chosen on all engines but one, from nine and from four
medians, and scored on that one beside the factors 1 and the factors that would be best for it.
Chosen by the mean CRPS [psi], which wants the middle near and the band no wider than needed
(Gneiting & Raftery, Journal of the American Statistical Association 102 (2007), 359-378).
"""

from __future__ import annotations

import csv
import sys
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from itertools import product
from pathlib import Path
from typing import Any
from unittest.mock import patch

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import least_squares

from diagnose.circuit import pressure_law
from diagnose.circuit.averaged import averaged, circuit_pressures
from diagnose.circuit.calibration import WIDE, calibrated
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import BASELINE_ERROR, Point, engine_of
from diagnose.circuit.fitting import HEALTHY, fits, predicted, shares, warmer
from diagnose.circuit.plausible_engines import UNCERTAIN, conditioned, drawn
from diagnose.circuit.pressure_law import SEED, At, Shown, learn
from diagnose.circuit.survey import ENGINES, gauge_of
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil, dynamic_viscosity
from diagnose.hydraulics.ranges import FloatArray
from knowledge.book import the_book
from knowledge.engines.profiles import Profile
from knowledge.model import Gauge, Reading
from knowledge.reports.when import Spread, oil_from_coolant
from knowledge.units import PSI

ZERO_C = 273.15
OIL = Oil.of_grade("15W-40")  #: no source states the oil
DRAWS = 64  #: plausible engines of the circuit, as many as a forecast has
READ = 7  #: readings of a survey of a sound engine
UNKNOWN_ENGINE = "skew_gear_four"  #: the profile of an unknown layout
#: factors tried on the widths of the priors, and on the law's errors
WIDTHS, ERRORS = (0.5, 0.75, 1.0, 1.5, 2.0), (0.7, 1.0, 1.4)


@dataclass(frozen=True)
class Run:
    """Medians of one run: columns rpm, oil temperature [K], pressure [psi]."""

    name: str
    rows: FloatArray
    spread: float  #: K: of oil temperatures that stand for the coolant's

    @property
    def engine(self) -> str:
        """The name up to the first underscore."""
        return self.name.split("_")[0]

    def states(self, rows: FloatArray) -> list[At]:
        """The running states of some rows."""
        return [At(n, t, temperature_spread=self.spread) for n, t, _ in rows]

    def shown(self, rows: FloatArray) -> list[Shown]:
        """Some of its rows as known pressures, as ``[[baseline]]`` has them."""
        states = zip(self.states(rows), rows[:, 2], strict=True)
        return [Shown(at, p * PSI, BASELINE_ERROR) for at, p in states]


def runs(folder: Path) -> Iterator[Run]:
    """Every run of the folder; files with other columns are left out."""
    for path in sorted(folder.glob("*.csv")):
        with path.open(newline="") as file:
            table = list(csv.DictReader(file))
        names = table[0].keys() if table else set()
        heat = next((n for n in ("oil_c", "coolant_c") if n in names), None)
        if heat and {"rpm", "pressure_psi"} <= set(names):
            kelvin = [float(r[heat]) + ZERO_C for r in table]
            oil = [oil_from_coolant(t) if heat == "coolant_c" else Spread(t, 0.0) for t in kelvin]
            rows = [
                [float(r["rpm"]), t.mean, float(r["pressure_psi"])]
                for r, t in zip(table, oil, strict=True)
            ]
            yield Run(path.stem, np.array(rows), oil[0].sd)


def nine(rows: FloatArray) -> list[int]:
    """Lowest, middle and highest speed of each third by temperature."""
    taken: list[int] = []
    for third in np.array_split(np.argsort(rows[:, 1], kind="stable"), 3):
        by_speed = third[np.argsort(rows[third, 0], kind="stable")]
        taken += [int(by_speed[0]), int(by_speed[len(by_speed) // 2]), int(by_speed[-1])]
    return sorted(set(taken))


def four(rows: FloatArray) -> list[int]:
    """Lowest and highest speed of the coldest and the hottest third."""
    thirds = np.array_split(np.argsort(rows[:, 1], kind="stable"), 3)
    taken: list[int] = []
    for third in (thirds[0], thirds[-1]):
        by_speed = third[np.argsort(rows[third, 0], kind="stable")]
        taken += [int(by_speed[0]), int(by_speed[-1])]
    return sorted(set(taken))


def four_as_taken(rows: FloatArray) -> list[int]:
    """Hot idle, hot and fast, cold idle, and between them: the middle speed of the middle third."""
    coldest, middle, hottest = (
        third[np.argsort(rows[third, 0], kind="stable")]
        for third in np.array_split(np.argsort(rows[:, 1], kind="stable"), 3)
    )
    picked = (hottest[0], hottest[-1], coldest[0], middle[len(middle) // 2])
    return sorted({int(i) for i in picked})


def _thick(rows: FloatArray) -> FloatArray:
    return np.asarray(dynamic_viscosity(OIL, rows[:, 1])) * 1e3


def regression(known: FloatArray, asked: FloatArray) -> FloatArray:
    """Pressure from speed, log viscosity and their product, by least squares."""

    def terms(rows: FloatArray) -> FloatArray:
        n, mu = rows[:, 0] / 1000, np.log(_thick(rows))
        return np.stack([np.ones(len(rows)), n, mu, n * mu], axis=1)

    found, *_ = np.linalg.lstsq(terms(known), known[:, 2], rcond=None)
    return np.asarray(terms(asked) @ found)


def form(known: FloatArray, asked: FloatArray) -> FloatArray:
    """The four-parameter form, fitted in speed by least squares with positive coefficients."""

    def speed(x: FloatArray, p: FloatArray, mu: FloatArray) -> FloatArray:
        a, b, g = np.exp(x[:3])
        return np.asarray(a * p / mu + b * np.sqrt(p) + g * np.maximum(p - x[3], 0.0))

    mu, p = _thick(known), known[:, 2]
    best = min(
        (
            least_squares(
                lambda x: (speed(x, p, mu) - known[:, 0]) / 200.0,
                [np.log(300), np.log(100), 4, p_r],
            )
            for p_r in (20.0, 40.0, 60.0)
        ),
        key=lambda r: float(r.cost),
    )
    low, high = np.zeros(len(asked)), np.full(len(asked), 300.0)
    for _ in range(50):
        middle = (low + high) / 2
        below = speed(best.x, middle, _thick(asked)) < asked[:, 0]
        low, high = np.where(below, middle, low), np.where(below, high, middle)
    return np.asarray((low + high) / 2)


def calibrated_circuit(run: Run, known: FloatArray, profile: Profile) -> Engine:
    """Plausible engines as a case with this ``[[baseline]]`` has them."""
    figures = {name: value for name, (value, _) in profile.numbers.items()}
    points = [
        Point(s.state.rpm, s.state.temperature, s.pressure, False, s.error)
        for s in run.shown(known)
    ]
    rng = np.random.default_rng(SEED)
    return calibrated(engine_of(figures, OIL), points, DRAWS, rng)


def sound_surveys(every: list[Run], named: dict[str, str], widths: Mapping[str, float]) -> str:
    """How surveys judge these engines, which are sound: the medians as baseline, others as readings."""
    healthy, misled = [], []
    for run, rule in product(every, (nine, four)):
        known = run.rows[rule(run.rows)]
        figures = the_book().profiles[named.get(run.engine, UNKNOWN_ENGINE)].numbers
        engine = engine_of({name: value for name, (value, _) in figures.items()}, OIL)
        points = [
            Point(s.state.rpm, s.state.temperature, s.pressure, False, s.error)
            for s in run.shown(known)
        ]
        for other, seed in product((o for o in every if o.engine == run.engine), range(2)):
            rng = np.random.default_rng(seed)
            rest = np.delete(run.rows, rule(run.rows), 0) if other is run else other.rows
            picked = rest[rng.permutation(len(rest))[:READ]]
            draws = conditioned(engine, drawn(ENGINES, rng), points, rng, widths=widths)
            looks = [Point(n, t, 0.0) for n, t, _ in picked]
            off = warmer(ENGINES, looks, rng)
            shows = predicted(engine, draws, looks, off, widths=widths)
            gauges = [gauge_of(Reading(n, t, p * PSI, gauge=Gauge.DIRECT)) for n, t, p in picked]
            share = shares(fits(shows, picked[:, 2], gauges, rng))
            healthy.append(max(share, key=lambda k: share[k]) == HEALTHY)
            misled.append(max(v for k, v in share.items() if k in FAULTS) >= 0.5)
    return (
        f"sound first {np.mean(healthy):4.0%}, a fault at half or more {np.mean(misled):4.0%} "
        f"({len(misled)} surveys)"
    )


def _rms(off: FloatArray) -> str:
    return f"{float(np.sqrt(np.mean(off**2))):5.1f}" if len(off) else "    -"


def _row(off: FloatArray, rows: FloatArray) -> str:
    idle = rows[:, 0] <= 1.25 * rows[:, 0].min()
    cold = rows[:, 1] < 50 + ZERO_C
    return f"{_rms(off)} {_rms(off[idle])} {_rms(off[cold])}"


def predict(
    run: Run, others: list[Run], rule: Callable[[FloatArray], list[int]], profile: Profile
) -> Iterator[tuple[str, NDArray[np.bool_]]]:
    """One printed line for the rest of the run and each other run, with who was inside the bands.

    These have the shape (3, medians): of the law, of the circuit, of their average.
    """
    chosen = rule(run.rows)
    known, rest = run.rows[chosen], np.delete(run.rows, chosen, 0)
    law, engine = learn(run.shown(known), OIL), calibrated_circuit(run, known, profile)
    for name, rows in (("its rest", rest), *((o.name, o.rows) for o in others)):
        states = run.states(rows)
        draws = [
            law.pressures(states) / PSI,
            circuit_pressures(engine, states) / PSI,
            averaged(law, engine, run.shown(known), states) / PSI,
        ]
        bands = np.array([np.percentile(each, [5, 50, 95], axis=0) for each in draws])
        inside = (bands[:, 0] <= rows[:, 2]) & (rows[:, 2] <= bands[:, 2])
        found = (*bands[:, 1], regression(known, rows), form(known, rows))
        cells = "   ".join(_row(each - rows[:, 2], rows) for each in found)
        held = "  ".join(f"{share:4.0%}" for share in inside.mean(axis=1))
        yield f"  {name:24} {cells}   {held}  {len(rows)}", inside


@dataclass
class Score:
    """How one engine's medians are predicted with some factors."""

    crps: list[FloatArray] = field(default_factory=list)
    off: list[FloatArray] = field(default_factory=list)  #: psi
    inside: list[FloatArray] = field(default_factory=list)

    @property
    def mean(self) -> float:
        """Mean CRPS [psi]."""
        return float(np.concatenate(self.crps).mean())

    def says(self) -> str:
        """CRPS, RMS and share inside the band."""
        rms = _rms(np.concatenate(self.off))
        return f"CRPS {self.mean:5.2f}, RMS {rms}, inside {np.concatenate(self.inside).mean():4.0%}"


def crps(each: FloatArray, seen: FloatArray) -> FloatArray:
    """CRPS of draws (draws, m) at what was seen (m,)."""
    n = len(each)
    ranks = 2 * np.arange(1, n + 1)[:, None] - n - 1
    apart = 2 * np.sum(ranks * np.sort(each, axis=0), axis=0) / n**2
    return np.asarray(np.abs(each - seen).mean(axis=0) - apart / 2)


def scored(every: list[Run], engine: str, width: float, error: float) -> Score:
    """Score one engine's runs with factors on the widths of the priors and on the law's errors."""
    out = Score()
    own = [run for run in every if run.engine == engine]
    factors: dict[str, Any] = {
        "WIDTH": width * pressure_law.WIDTH,
        "MISFIT": error * pressure_law.MISFIT,
        "HEAT_ERROR": error * pressure_law.HEAT_ERROR,
        "READ_ERROR": error * pressure_law.READ_ERROR,
    }
    with patch.multiple(pressure_law, **factors):
        for run in own:
            for chosen in (nine(run.rows), four(run.rows)):
                law = learn(run.shown(run.rows[chosen]), OIL)
                for other in own:
                    rows = np.delete(run.rows, chosen, 0) if other is run else other.rows
                    each = law.pressures(run.states(rows)) / PSI
                    low, middle, high = np.percentile(each, [5, 50, 95], axis=0)
                    out.crps.append(crps(each, rows[:, 2]))
                    out.off.append(middle - rows[:, 2])
                    out.inside.append((low <= rows[:, 2]) & (rows[:, 2] <= high))
    return out


def leave_one_out(every: list[Run]) -> None:
    """Print each engine's score with the factors chosen on the other engines."""
    engines = list(dict.fromkeys(run.engine for run in every))
    grid = {(w, e): {n: scored(every, n, w, e) for n in engines} for w in WIDTHS for e in ERRORS}
    for left in engines:
        others = [n for n in engines if n != left]
        chosen = min(grid, key=lambda f: np.mean([grid[f][n].mean for n in others]))
        best = min(grid, key=lambda f: grid[f][left].mean)
        print(f"{left} left out; factors on widths and errors")
        for name, at in (
            ("as they are", (1.0, 1.0)),
            ("chosen on the others", chosen),
            ("best for it", best),
        ):
            print(f"  {name:21} {at[0]:4} {at[1]:4}   {grid[at][left].says()}")


def main() -> None:
    """Print the tables."""
    if len(sys.argv) < 2 or not Path(sys.argv[-1]).is_dir():
        raise SystemExit(
            "usage: python -m tests.studies.real_engines [--leave-one-out | ENGINE=PROFILE ...] FOLDER"
        )
    every = list(runs(Path(sys.argv[-1])))
    if "--leave-one-out" in sys.argv[1:-1]:
        return leave_one_out(every)
    named = dict(word.split("=") for word in sys.argv[1:-1])
    heads = "   ".join(
        f"{x:^17}" for x in ("law", "circuit", "average", "regression", "four parameters")
    )
    for rule in (nine, four, four_as_taken):
        inside = []
        print(
            f"learned from {rule.__name__.replace('_', ' ')}, medians; RMS [psi]: all, idle, cold"
        )
        print(f"  {'':24} {heads}   in 90 %: law, circuit, average")
        for run in every:
            profile = the_book().profiles[named.get(run.engine, UNKNOWN_ENGINE)]
            print(f" {run.name}, circuit from {profile.id}")
            others = [o for o in every if o.engine == run.engine and o is not run]
            for line, hits in predict(run, others, rule, profile):
                print(line)
                inside.append(hits)
        law, circuit, both = np.concatenate(inside, axis=1).mean(axis=1)
        print(f" inside the 90 % bands: law {law:.0%}, circuit {circuit:.0%}, average {both:.0%}\n")
    print(f"surveys of these sound engines, {READ} readings each; engines about their profile")
    print(f"  as wide as calibrated     {sound_surveys(every, named, WIDE)}")
    print(f"  as alike as those of one kind  {sound_surveys(every, named, UNCERTAIN)}")


if __name__ == "__main__":
    main()
