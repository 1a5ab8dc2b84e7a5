"""Shapley values: shares of a joint effect that do not depend on the order of the findings.

A game is an array with one entry for each coalition; coalition ``k`` has player ``i`` where bit
``i`` of ``k`` is set.
"""

from __future__ import annotations

from math import factorial

import numpy as np
from numpy.typing import NDArray

from diagnose.hydraulics.ranges import FloatArray

MOST_EXACT = 10  #: players up to which every coalition is computed


def coalitions(players: int) -> NDArray[np.bool_]:
    """Every coalition as a row of yes and no, ``(2**players, players)``, the empty one first.

    >>> coalitions(2).astype(int).tolist()
    [[0, 0], [1, 0], [0, 1], [1, 1]]
    """
    bits = np.arange(2**players)[:, None] >> np.arange(players)
    return np.asarray(bits & 1, dtype=bool)


def shapley(worth: FloatArray) -> FloatArray:
    """Each player's share of the worth of all together, ``(players, ...)``, in the worth's unit.

    ``phi_i = sum over S without i of |S|! (n-|S|-1)! / n! (v(S + i) - v(S))``, exactly.

    ``worth``: ``(2**players, ...)`` in the order of ``coalitions``. Raises ValueError for another
    length.

    Two that only work together share alike, and nothing is lost:

    >>> shapley(np.array([0.0, 1.0, 1.0, 6.0]))
    array([3., 3.])

    Source: L. S. Shapley, A Value for n-Person Games (1953).
    """
    players = len(worth).bit_length() - 1
    if len(worth) != 2**players:
        raise ValueError(f"{len(worth)} entries are no game: one is needed for each coalition")
    members = coalitions(players)
    size = members.sum(axis=1)
    weight = np.array(
        [factorial(s) * factorial(players - s - 1) / factorial(players) for s in range(players)]
    )
    out = np.zeros((players, *worth.shape[1:]))
    for i in range(players):
        without = np.flatnonzero(~members[:, i])
        gain = worth[without | (1 << i)] - worth[without]
        out[i] = np.tensordot(weight[size[without]], gain, axes=1)
    return out


def walks(players: int, count: int, rng: np.random.Generator) -> NDArray[np.bool_]:
    """Random orders of joining, each with its reverse, for games too large to compute whole.

    As coalitions from nobody to all, shape ``(2*count, players+1, players)``.
    """
    orders = np.array([rng.permutation(players) for _ in range(count)])
    orders = np.concatenate([orders, orders[:, ::-1]])
    place = np.argsort(orders, axis=1)
    result: NDArray[np.bool_] = place[:, None, :] < np.arange(players + 1)[None, :, None]
    return result


def shapley_sampled(steps: NDArray[np.bool_], worth: FloatArray) -> FloatArray:
    """The shares estimated from ``walks``: a player's mean gain on joining, ``(players, ...)``.

    ``worth``: ``(walks, players + 1, ...)``. The shares add up exactly all the same.

    Source: J. Castro, D. Gómez, J. Tejada, Computers & Operations Research 36 (2009), 1726-1730.
    """
    joins = steps[:, 1:] & ~steps[:, :-1]
    gain = worth[:, 1:] - worth[:, :-1]
    gained: FloatArray = np.einsum("wsp,ws...->p...", joins.astype(float), gain)
    return gained / len(steps)
