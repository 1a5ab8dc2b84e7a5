"""How often a survey finds the true condition where the engine is not what it is taken for.

``python -m tests.studies.survey_unlike [engines]``. As ``survey_study``, all conditions, four or
seven readings of a direct gauge, judged as the survey of a case judges them: with the stated
profile and its oil. But the readings come from

- other dimensions: those of another profile, drawn at random (relief setting, pump and all), at the
  speeds of the stated one: a far worse mistake than a wrong choice between two like engines;
- another oil: one of the common grades, not the stated one. Where no baseline is known, thinner or
  thicker oil than stated is a condition in itself, so a survey that says so is not wrong;
- another gauge: three times the error the survey reckons with, in scale and in offset (judgement:
  a panel gauge that nobody checked), another gauge for the baseline;
- all three at once.

Every kind of truth has the same engines, conditions, severities and random errors, so that the
difference between two rows is not chance. "Misled": another condition has at least half of the
probability, so that a person would believe it.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable

import numpy as np

from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.fitting import GaugeError, fits, shares
from diagnose.circuit.survey import gauge_of
from knowledge.book import the_book
from knowledge.engines.profiles import Profile
from knowledge.model import Gauge, Reading
from tests.studies.survey_study import (
    GAUGE_OFFSET,
    GAUGE_SCALE,
    LOOKS,
    Tally,
    Truth,
    part,
    trial,
)

SEED = 20260611
COUNTS = (4, 7)
GRADES = ("5W-30", "10W-40", "15W-40", "20W-50", "30")
WORSE = 3.0  #: times the gauge's error that the survey reckons with


def other_profile(profile: Profile, rng: np.random.Generator) -> Profile:
    """Another profile than the stated one."""
    others = [p for p in the_book().profiles.values() if p is not profile]
    return others[int(rng.integers(len(others)))]


def other_grade(grade: str, rng: np.random.Generator) -> str:
    """Another common grade than the stated one."""
    others = [g for g in GRADES if g != grade]
    return others[int(rng.integers(len(others)))]


def as_stated(profile: Profile, rng: np.random.Generator) -> Truth:
    """The model that judges also makes the readings."""
    del rng
    return Truth(profile, profile.oil_grade)


def dimensions(profile: Profile, rng: np.random.Generator) -> Truth:
    """Another profile's dimensions, the stated oil."""
    return Truth(other_profile(profile, rng), profile.oil_grade)


def oil(profile: Profile, rng: np.random.Generator) -> Truth:
    """Another oil in the stated engine."""
    return Truth(profile, other_grade(profile.oil_grade, rng))


def gauge(profile: Profile, rng: np.random.Generator) -> Truth:
    """A worse gauge on the stated engine."""
    del rng
    return Truth(profile, profile.oil_grade, WORSE * GAUGE_SCALE, WORSE * GAUGE_OFFSET)


def everything(profile: Profile, rng: np.random.Generator) -> Truth:
    """Dimensions, oil and gauge at once."""
    real, grade = other_profile(profile, rng), other_grade(profile.oil_grade, rng)
    return Truth(real, grade, WORSE * GAUGE_SCALE, WORSE * GAUGE_OFFSET)


KINDS: dict[str, Callable[[Profile, np.random.Generator], Truth]] = {
    "as stated": as_stated,
    "another oil": oil,
    "another gauge": gauge,
    "other dimensions": dimensions,
    "all three": everything,
}


def gauges(count: int) -> list[GaugeError]:
    """The errors that the survey itself takes for the first few readings of a direct gauge."""
    return [gauge_of(Reading(1000.0, heat, 0.0, gauge=Gauge.DIRECT)) for _, heat in LOOKS[:count]]


def study(engines: int, seed: int = SEED) -> dict[tuple[str, bool, int], Tally]:
    """Tallies by (kind of truth, baseline known, readings)."""
    profiles, names = list(the_book().profiles.values()), list(FAULTS)
    out: dict[tuple[str, bool, int], Tally] = {}
    for i in range(engines):
        condition = names[i % len(names)]
        draws = np.random.default_rng((seed, i))
        profile = profiles[int(draws.integers(len(profiles)))]
        severity = float(draws.uniform(0.2, 1.0))
        for kind, made in KINDS.items():
            for calibrated in (True, False):
                truth = made(profile, np.random.default_rng((seed, i, 1)))
                rng = np.random.default_rng((seed, i, 2))
                shows, seen, _ = trial(
                    profile, condition, severity, rng, calibrated=calibrated, truth=truth
                )
                for count in COUNTS:
                    found = fits(part(shows, count, names), seen[:count], gauges(count), rng)
                    share = shares(found)
                    ranked = sorted(names, key=lambda k: -share[k])
                    tally = out.setdefault((kind, calibrated, count), Tally())
                    tally.add(condition, ranked, share)
    return out


def main() -> None:
    """Print the table."""
    engines = int(sys.argv[1]) if len(sys.argv) > 1 else 104
    start = time.perf_counter()
    found = study(engines)
    print(f"seed {SEED}, {engines} engines, {len(FAULTS)} conditions")
    for calibrated in (True, False):
        for count in COUNTS:
            print(f"\n{'baseline known' if calibrated else 'no baseline'}, {count} readings")
            for kind in KINDS:
                tally = found[kind, calibrated, count]
                misled = f", misled {tally.misled / tally.trials:4.0%}"
                print(f"  {kind:18} {tally.line()}{misled}")
    print(f"\n{time.perf_counter() - start:.0f} s")


if __name__ == "__main__":
    main()
