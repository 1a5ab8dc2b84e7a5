"""Shapley values: the axioms, a published game, and the sampled shares against the exact ones."""

from __future__ import annotations

from itertools import permutations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.circuit.shapley import coalitions, shapley, shapley_sampled, walks

WORTHS = st.integers(1, 5).flatmap(
    lambda n: st.lists(st.floats(-50, 50), min_size=2**n, max_size=2**n)
)


@given(WORTHS)
def test_nothing_is_lost_and_nothing_invented(worth: list[float]) -> None:
    """Efficiency: the shares add up to the whole less nothing."""
    v = np.array(worth)
    assert shapley(v).sum() == pytest.approx(v[-1] - v[0], abs=1e-9)


@given(WORTHS)
def test_by_definition(worth: list[float]) -> None:
    """The mean gain on joining over every order."""
    v = np.array(worth)
    n = len(v).bit_length() - 1
    orders = list(permutations(range(n)))
    mean = np.zeros(n)
    for order in orders:
        have = 0
        for i in order:
            mean[i] += v[have | 1 << i] - v[have]
            have |= 1 << i
    assert shapley(v) == pytest.approx(mean / len(orders), abs=1e-9)


@given(st.lists(st.floats(-50, 50), min_size=5, max_size=5))
def test_who_does_the_same_gets_the_same(by_size: list[float]) -> None:
    """Symmetry: if only the number of players counts, all shares are alike."""
    v = np.array(by_size)[coalitions(4).sum(axis=1)]
    assert shapley(v) == pytest.approx(np.full(4, (v[-1] - v[0]) / 4), abs=1e-9)


@given(WORTHS)
def test_who_does_nothing_gets_nothing(worth: list[float]) -> None:
    """Null player: joining without effect earns nothing, and takes nothing from the others."""
    v = np.array(worth)
    wider = shapley(np.concatenate([v, v]))
    assert wider[-1] == pytest.approx(0, abs=1e-9)
    assert wider[:-1] == pytest.approx(shapley(v), abs=1e-9)


def test_airport_game() -> None:
    """Littlechild & Owen (1973): each pays an equal part of every stretch it needs."""
    needs = np.array([8.0, 11.0, 13.0, 18.0])
    v = np.array([max([0.0, *needs[row]]) for row in coalitions(4)])
    assert shapley(v) == pytest.approx([2, 3, 4, 9])


def test_a_game_must_be_whole() -> None:
    """Three entries are no game."""
    with pytest.raises(ValueError, match="one is needed for each coalition"):
        shapley(np.zeros(3))


def test_sampled_shares_come_close_and_add_up() -> None:
    """Too many to work out whole: unbiased, and still nothing lost."""
    rng = np.random.default_rng(5)
    n, pull = 6, rng.uniform(1, 4, 6)

    def worth(rows: np.ndarray) -> np.ndarray:
        return 60 - 60 / (1 + rows @ pull / 5)

    exact = shapley(worth(coalitions(n)))
    steps = walks(n, 200, rng)
    shares = shapley_sampled(steps, worth(steps))
    assert shares.sum() == pytest.approx(exact.sum())
    assert shares == pytest.approx(exact, rel=0.1)
