"""Law and circuit averaged: the weights, and what the average predicts of a known engine."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.circuit.averaged import averaged, circuit_pressures, nearness, share_of
from diagnose.circuit.calibration import WIDE, calibrated
from diagnose.circuit.engine_model import Point, engine_of
from diagnose.circuit.engine_model import shown as circuit_shown
from diagnose.circuit.expected import expected
from diagnose.circuit.pressure_law import At, Shown, learn
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.oil import Oil
from knowledge.book import the_book
from knowledge.units import PSI
from tests.support.circuits import a_case
from tests.support.examples import one_in

C = 273.15
KNOWN = (At(700, 90 + C), At(1500, 92 + C), At(3000, 95 + C))
ASKED = (At(800, 30 + C), At(2000, 45 + C), At(4500, 100 + C))
draws = st.lists(st.floats(0, 8e5), min_size=2, max_size=6)


def typical(name: str) -> Engine:
    profile = the_book().profiles[name]
    figures = {k: v for k, (v, _) in profile.numbers.items()}
    return engine_of(figures, Oil.of_grade(profile.oil_grade))


def true(engine: Engine, states: tuple[At, ...]) -> np.ndarray:
    """What the engine shows at each state [Pa]."""
    return circuit_shown(engine, [Point(s.rpm, s.temperature, 0.0) for s in states])


@given(draws, draws, st.floats(0, 8e5), st.floats(2e3, 5e4))
def test_the_weights_of_both_models_are_one_together(
    first: list[float], second: list[float], seen: float, error: float
) -> None:
    one, other = (np.array(d)[:, None] for d in (first, second))
    known = [Shown(KNOWN[0], seen, error)]
    share = share_of(one, other, known)
    assert share + share_of(other, one, known) == pytest.approx(1.0)
    far = share_of(one, other, known * 3, near=0.0)
    assert min(share, 0.5) - 1e-9 <= far <= max(share, 0.5) + 1e-9, "three like one"
    nearer = np.abs(one - seen).max() < np.abs(other - seen).min()
    assert share >= 0.5 if nearer else True


@pytest.mark.parametrize("name", one_in(3, ["skew_gear_four", "distributor_v8", "crank_nose_four"]))
def test_beyond_the_readings_it_is_nearer_than_the_law_alone(name: str) -> None:
    """Three hot readings of a sound engine: cold oil, and faster than was read."""
    engine = typical(name)
    pressures = true(engine, KNOWN)
    known = [Shown(s, float(p), 1.5 * PSI) for s, p in zip(KNOWN, pressures, strict=True)]
    law = learn(known, engine.oil)
    points = [Point(s.state.rpm, s.state.temperature, s.pressure, False, s.error) for s in known]
    guessed = calibrated(engine, points, 48, np.random.default_rng(3))
    wanted = true(engine, ASKED)

    def misses(each: np.ndarray) -> float:
        return float(np.sqrt(np.mean((each.mean(axis=0) - wanted) ** 2)) / PSI)

    both = averaged(law, guessed, known, ASKED)
    assert misses(both) < misses(law.pressures(ASKED))
    assert misses(both) < 12
    low, high = np.percentile(both, [5, 95], axis=0)
    assert np.all((low <= wanted) & (wanted <= high))


def test_a_model_that_misses_what_was_read_does_not_count() -> None:
    """The readings are of an engine with half the pressure: the average is the law's."""
    engine = typical("skew_gear_four")
    known = [
        Shown(s, 0.5 * float(p), 1.5 * PSI) for s, p in zip(KNOWN, true(engine, KNOWN), strict=True)
    ]
    law = learn(known, engine.oil)
    sound = calibrated(engine, [], 48, np.random.default_rng(3), dict.fromkeys(WIDE, 0.01))
    mean = averaged(law, sound, known, KNOWN).mean(axis=0)
    assert mean == pytest.approx(law.pressures(KNOWN).mean(axis=0), rel=0.02)
    assert np.all(circuit_pressures(sound, KNOWN).mean(axis=0) > 1.3 * mean)


def test_what_a_case_expects_lies_between_both() -> None:
    """Where the gauge was read both agree with it, so the answer does."""
    band = expected(a_case(), [At(700, 95 + C)]).bands[0]
    assert band.mean == pytest.approx(32 * PSI, abs=3 * PSI)
    assert band.low < 32 * PSI < band.high


@pytest.mark.parametrize("far", [At(700, 30 + C), At(250, 50 + C)])
def test_what_was_read_decides_less_far_away(far: At) -> None:
    """Of two models that both show what was read, neither is dropped where nothing was."""
    near = At(800, 88 + C)
    assert 1.0 >= nearness(near, KNOWN) > 0.9 > 0.2 > nearness(far, KNOWN)
    draws = np.array([[200e3, 250e3, 300e3]])
    known = [Shown(s, float(p), 1.5 * PSI) for s, p in zip(KNOWN, draws[0], strict=True)]
    other = draws + 2 * PSI
    there, away = (share_of(draws, other, known, nearness(at, KNOWN)) for at in (near, far))
    assert there > away > 0.5
