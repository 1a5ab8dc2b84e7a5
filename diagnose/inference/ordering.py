"""A good order of variable elimination."""

from __future__ import annotations

import heapq
import math
from collections.abc import Sequence
from functools import lru_cache

LARGE = 60_000  #: entries in a sweep from which other orders are worth trying
HUGE = 1_000_000  #: and from which many more are
TIES = (1, 3571, 7919, 5003, 6661)  #: multipliers that settle ties, each in another way

Order = list[
    tuple[int, tuple[int, ...]]
]  #: each variable with its neighbours when it is eliminated


@lru_cache(maxsize=64)
def best_order(scopes: tuple[tuple[int, ...], ...], variables: int) -> Order:
    """A greedy order; if its sum is large, the best of several."""
    best, least = _ordered(scopes, variables, (1, 0), math.inf)
    if least > LARGE:
        for mix in ((1, 1), (2, 1), (4, 1)):
            other, effort = _ordered(scopes, variables, mix, least)
            if effort < least:
                best, least = other, effort
    if least > HUGE:
        for tie in TIES:
            for mix in ((1, 2), (2, 1), (3, 1), (3, 2)):
                other, effort = _ordered(scopes, variables, mix, least, tie)
                if effort < least:
                    best, least = other, effort
    return best


def _ordered(
    scopes: tuple[tuple[int, ...], ...],
    variables: int,
    mix: tuple[int, int],
    limit: float,
    tie: int = 1,
) -> tuple[Order, int]:
    """Fewest neighbours first, then least fill; ``mix`` weights both, ``tie`` settles ties.

    Returns the order and its number of table entries; stops once that reaches ``limit``.
    """
    by_size, by_fill = mix
    neighbours = [0] * variables  #: sets of variables as the bits of a number
    for scope in scopes:
        around = 0
        for v in scope:
            around |= 1 << v
        for v in scope:
            neighbours[v] |= around
    there = [v for v, around in enumerate(neighbours) if around]
    for v in there:
        neighbours[v] ^= 1 << v

    def entry(v: int, fill: int) -> tuple[int, int, int, int, int]:
        size = neighbours[v].bit_count()
        return by_size * size + by_fill * fill, fill, v * tie % 10_007, v, size

    heap = [entry(v, 0) for v in there]
    heapq.heapify(heap)
    eliminated = [False] * variables
    order: Order = []
    effort = 0
    while heap and effort < limit:
        _, fill, _, v, size = heapq.heappop(heap)
        around = neighbours[v]
        if eliminated[v] or size != around.bit_count():
            continue
        beside = _members(around)
        exact = _fill(around, [neighbours[u] for u in beside]) if size > 1 else 0
        if exact > fill:
            heapq.heappush(heap, entry(v, exact))
            continue
        eliminated[v] = True
        order.append((v, beside))
        effort += 2 << size
        for u in beside:
            neighbours[u] = (neighbours[u] | around) & ~(1 << u | 1 << v)
            heapq.heappush(heap, entry(u, 0))
    return order, effort


def _members(bits: int) -> tuple[int, ...]:
    """The positions of the bits that are set."""
    found = []
    while bits:
        low = bits & -bits
        found.append(low.bit_length() - 1)
        bits ^= low
    return tuple(found)


def _fill(around: int, beside: Sequence[int]) -> int:
    """Number of pairs of neighbours that are not yet neighbours of each other."""
    return sum((around & ~them).bit_count() - 1 for them in beside) // 2
