"""``python -m tests.studies.pattern_strengths``: how often each hydraulic fault shows each pattern.

Draws sound engines of every profile (``modelling.spread`` about the profile's usual pressures),
gives each condition of ``faults.FAULTS`` a severity drawn evenly from 0 to 1, solves six points
(hot idle, 1200 rpm, cruise, high revs, cold idle, cold at 2500) with the sound engine beside it,
and asks ``pattern_reports`` what a person would see. Only faults severe enough to cause a complaint
count. Prints shares with their binomial error; ``--write`` writes the table that
``knowledge.pressure.computed`` takes its strengths from. Write it again whenever profiles, faults
or circuit change: ``tests/knowledge/test_pattern_strengths.py`` fails then.
"""

from __future__ import annotations

import argparse
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import USUAL_ERROR, Point, engine_of
from diagnose.circuit.plausible_engines import spread
from diagnose.hydraulics.circuit import solve
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from knowledge.book import the_book
from knowledge.engines.profiles import Profile
from knowledge.pressure.gauge import PANEL_SPREAD
from knowledge.pressure.quantities import HOT_IDLE_PRESSURE
from tests.support.pattern_reports import POINTS, Looks, Pressures, complaint, observations

TABLE = Path(__file__).parents[2] / "knowledge/pressure/pattern_strengths.py"
MODEL = 3  #: version of model, sampling and thresholds together: raise it when one changes
HOT, COLD = 368.15, 288.15  #: usual oil temperature, warmed through and overnight [K]
WARMTH = 6.0  #: spread of both from day to day, one standard deviation [K]
TOP = {
    "small_diesel": 3200.0,
    "tractor_diesel": 2200.0,
    "inline_six_diesel": 2600.0,
    "air_cooled_flat_four": 4000.0,
    "flat_six": 2700.0,
}  #: rpm
USUAL_TOP = 4500.0
CRUISE = 0.6  #: cruising speed as a share of high revs, but never under 1500 rpm
REPORTED = 0.85  #: share who report what they could see when they are asked (judgement)
LEAST = 0.02  #: floor of a strength: the model is not the engine


@dataclass(frozen=True, slots=True)
class Share:
    """So many of so many."""

    shown: int
    of: int

    @property
    def share(self) -> float:
        """Shown over all."""
        return self.shown / self.of if self.of else 0.0

    @property
    def error(self) -> float:
        """Binomial standard error, never quite zero."""
        p = (self.shown + 1) / (self.of + 2)
        return float(np.sqrt(p * (1 - p) / max(self.of, 1)))

    @property
    def strength(self) -> float:
        """Probability that the condition shows the pattern and it is reported."""
        return round(max(REPORTED * self.share, LEAST), 3)


Shares = dict[tuple[str, str], Share]


def speeds(profile: Profile) -> dict[str, float]:
    """Crank speed of each point [rev/min]."""
    top = TOP.get(profile.id, USUAL_TOP)
    idle = profile.specified[0][0]
    fast = (top, min(2500.0, top))
    return dict(
        zip(POINTS, (idle, 1200.0, max(CRUISE * top, 1500.0), fast[0], idle, fast[1]), strict=True)
    )


def sound(profile: Profile, n: int, rng: np.random.Generator) -> Engine:
    """Engines of this kind without fault, as columns."""
    figures = {name: value for name, (value, _) in profile.numbers.items()}
    points = [Point(rpm, t, usual, False, USUAL_ERROR) for rpm, t, _, usual in profile.specified]
    return spread(engine_of(figures, Oil.of_grade(profile.oil_grade)), n, rng, points)


def solved(
    engine: Engine, rpm: dict[str, float], heat: Pressures
) -> tuple[dict[str, Pressures], dict[str, Pressures]]:
    """Gallery and pump pressure by point."""
    state = solve(engine, np.array([rpm[p] for p in POINTS]), heat)
    by_point = [
        {p: np.asarray(pressure)[:, i] for i, p in enumerate(POINTS)}
        for pressure in (state.gallery_pressure, state.pump_pressure)
    ]
    return by_point[0], by_point[1]


def looked_at(profile: Profile, n: int, rng: np.random.Generator) -> dict[str, Looks]:
    """Every fault in ``n`` engines of a profile."""
    rpm = speeds(profile)
    engine = sound(profile, n, rng)
    usual = np.array([COLD if p.startswith("cold") else HOT for p in POINTS])
    heat = usual + WARMTH * np.clip(rng.standard_normal((n, 1)), -2.5, 2.5)
    wrong = PANEL_SPREAD * rng.standard_normal(n)
    least = profile.specified[0][2] if profile.specified else HOT_IDLE_PRESSURE.typical
    gallery_sound, pump_sound = solved(engine, rpm, heat)
    found = {}
    for id_, fault in FAULTS.items():
        severity = rng.random((n, 1))
        gallery, pump = solved(fault.apply(engine, severity), rpm, heat)
        found[id_] = Looks(
            rpm={p: np.full(n, rpm[p]) for p in POINTS},
            idle_figure=np.full(n, least),
            setting=np.broadcast_to(np.ravel(engine.relief_setting), (n,)),
            panel={p: np.maximum(v + wrong, 0.0) for p, v in gallery.items()},
            panel_sound={p: np.maximum(v + wrong, 0.0) for p, v in gallery_sound.items()},
            gallery=gallery,
            gallery_sound=gallery_sound,
            pump=pump,
            pump_sound=pump_sound,
        )
    return found


def shares(engines: int, seed: int) -> Shares:
    """Of engines with a condition bad enough to be complained of, how many show each pattern."""
    profiles = list(the_book().profiles.values())
    rngs = np.random.default_rng(seed).spawn(len(profiles))
    shown: dict[tuple[str, str], list[int]] = {}
    for i, (profile, rng) in enumerate(zip(profiles, rngs, strict=True)):
        many = (engines + i) // len(profiles)  # as even as it goes, and the sum is ``engines``
        for condition, looks in looked_at(profile, many, rng).items():
            bad = complaint(looks)
            for finding, seen in observations(looks).items():
                count = shown.setdefault((condition, finding.id), [0, 0])
                count[0] += int(np.sum(seen & bad))
                count[1] += int(np.sum(bad))
    return {pair: Share(*count) for pair, count in shown.items()}


def table(found: Shares, engines: int, seed: int) -> str:
    """The module that holds the strengths."""
    rows = "\n".join(
        f'    ("{condition}", "{finding}"): {share.strength},'
        for (condition, finding), share in found.items()
    )
    return f'''"""How often a hydraulic condition shows a pattern of pressure, computed from the circuit model.

Written by ``python -m tests.studies.pattern_strengths --engines {engines} --seed {seed} --write``; not by hand.
Each figure: of plausible engines in which this condition alone is bad enough to be complained of,
the share whose gauge shows the pattern, times {REPORTED} for being reported when asked (judgement);
never under {LEAST}. Thresholds: ``knowledge.reference.gauge`` and ``tests.support.pattern_reports``.
"""

MODEL_VERSION = {MODEL}
ENGINES = {engines}
SEED = {seed}
REPORTED = {REPORTED}
LEAST = {LEAST}

#: (condition, finding) -> probability
SHOWN: dict[tuple[str, str], float] = {{
{rows}
}}
'''


def main() -> None:
    """Print the shares; write the table if asked to."""
    options = argparse.ArgumentParser(
        prog="python -m tests.studies.pattern_strengths", description=__doc__
    )
    options.add_argument("--engines", type=int, default=2000)
    options.add_argument("--seed", type=int, default=7)
    options.add_argument("--write", action="store_true", help=f"write {TABLE.name}")
    asked = options.parse_args()
    found = shares(asked.engines, asked.seed)
    last = ""
    for (condition, finding), share in found.items():
        if condition != last:
            print(f"\n{condition}: {share.of} of {asked.engines} engines complained of")
            last = condition
        print(f"  {finding:30} {share.share:5.1%} +/- {share.error:.1%}  strength {share.strength}")
    if asked.write:
        TABLE.write_text(table(found, asked.engines, asked.seed), "utf-8")
        print(f"\nwritten: {TABLE.name}")


if __name__ == "__main__":
    main()
