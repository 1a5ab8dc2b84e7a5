"""A good order of variable elimination."""

from __future__ import annotations

import heapq
import math
from collections.abc import Sequence
from functools import lru_cache

LARGE = 300_000  #: entries in a sweep from which other orders are worth trying
FEW = 2  #: neighbours up to which a variable is eliminated before any order is tried
HUGE = 3_000_000  #: and from which many more are
TIES = (1, 3571, 7919)  #: multipliers that settle ties, each in another way

Order = list[
    tuple[int, tuple[int, ...]]
]  #: each variable with its neighbours when it is eliminated


@lru_cache(maxsize=64)
def best_order(scopes: tuple[tuple[int, ...], ...], variables: int) -> Order:
    """A greedy order; if its sum is large, the best of several.

    Weighing whether a sum is affordable and making it ask for the same order.
    """
    first, _, rest = ordered(neighbours(scopes, variables), (1, 0), most=FEW)
    names, core = renumbered(rest)
    last = _best_of_core(core)
    return _shared_last(first + [(names[v], tuple(names[u] for u in around)) for v, around in last])


def renumbered(graph: list[int]) -> tuple[list[int], tuple[int, ...]]:
    """The variables that are left, and their graph with these numbered from 0."""
    names = [v for v, around in enumerate(graph) if around]
    place = {v: i for i, v in enumerate(names)}
    return names, tuple(sum(1 << place[u] for u in _members(graph[v])) for v in names)


@lru_cache(maxsize=64)
def _best_of_core(core: tuple[int, ...]) -> Order:
    """The order of what is left once the variables of few neighbours are eliminated.

    Sweeps of one case often differ only in those, so the search is made once for all of them.
    """
    graph = list(core)
    best, least, _ = ordered(graph, (1, 0))
    mixes = [(mix, 1) for mix in ((2, 1), (3, 1), (4, 1))]
    more = [(mix, tie) for tie in TIES for mix in ((1, 2), (2, 1), (3, 1), (3, 2))]
    for tries, worth in ((mixes, LARGE), (more, HUGE)):
        if least > worth:
            for mix, tie in tries:
                other, effort, _ = ordered(graph, mix, least, tie)
                if effort < least:
                    best, least = other, effort
    return best


def forget_orders() -> None:
    """Forget the orders found, so that each is searched again as in a fresh process."""
    best_order.cache_clear()
    _best_of_core.cache_clear()
    _members.cache_clear()


def _shared_last(order: Order) -> Order:
    """The same sum with the variables of most large tables eliminated last.

    Once all variables that are left are neighbours of each other, their order is free. Tables
    that share their last axes are multiplied and summed in long rows.
    """
    first = next((i for i, (_, around) in enumerate(order) if len(around) == len(order) - i - 1), 0)
    weight = {v: 0 for v, _ in order[first:]}
    for _, around in order[:first]:
        for u in around:
            if u in weight:
                weight[u] += 2 << len(around)
    left = sorted(weight, key=lambda v: (weight[v], v))
    return order[:first] + [(v, tuple(left[i + 1 :])) for i, v in enumerate(left)]


def neighbours(scopes: tuple[tuple[int, ...], ...], variables: int) -> list[int]:
    """The neighbours of every variable, as the bits of a number; 0 for none."""
    neighbours = [0] * variables
    for scope in scopes:
        around = 0
        for v in scope:
            around |= 1 << v
        for v in scope:
            neighbours[v] |= around
    return neighbours


def ordered(
    graph: list[int],
    mix: tuple[int, int],
    limit: float = math.inf,
    tie: int = 1,
    most: float = math.inf,
) -> tuple[Order, int, list[int]]:
    """Fewest neighbours first, then least fill; ``mix`` weights both, ``tie`` settles ties.

    ``graph``: the variables that are left around each, itself included; not changed.
    Returns the order, its number of table entries and the graph that is left; stops once the
    number reaches ``limit``, or before a variable with more than ``most`` neighbours.
    """
    by_size, by_fill = mix
    neighbours = [around & ~(1 << v) for v, around in enumerate(graph)]
    there = [v for v, around in enumerate(graph) if around]
    settled = [v * tie % 10_007 for v in range(len(graph))]
    heap = [
        (by_size * size, 0, settled[v], v, size)
        for v, size in ((v, neighbours[v].bit_count()) for v in there)
    ]
    heapq.heapify(heap)
    left = set(there)
    order: Order = []
    effort = 0
    while heap and effort < limit:
        _, fill, _, v, size = heap[0]
        around = neighbours[v]
        if v not in left or size != around.bit_count():
            heapq.heappop(heap)
            continue
        if size > most:
            break
        beside = _members(around)
        exact = _fill(around, size, beside, neighbours) if size > 1 else 0
        if exact > fill:
            first = by_size * size + by_fill * exact
            heapq.heapreplace(heap, (first, exact, settled[v], v, size))
            continue
        heapq.heappop(heap)
        left.discard(v)
        order.append((v, beside))
        effort += 2 << size
        for u in beside:
            neighbours[u] = now = (neighbours[u] | around) & ~(1 << u | 1 << v)
            many = now.bit_count()
            heapq.heappush(heap, (by_size * many, 0, settled[u], u, many))
    rest = [around | 1 << v if v in left else 0 for v, around in enumerate(neighbours)]
    return order, effort, rest


@lru_cache(maxsize=4_096)
def _members(bits: int) -> tuple[int, ...]:
    """The positions of the bits that are set."""
    found = []
    while bits:
        low = bits & -bits
        found.append(low.bit_length() - 1)
        bits ^= low
    return tuple(found)


def _fill(around: int, size: int, beside: Sequence[int], neighbours: Sequence[int]) -> int:
    """Number of pairs of neighbours that are not yet neighbours of each other."""
    shared = map(around.__and__, map(neighbours.__getitem__, beside))
    return (size * (size - 1) - sum(map(int.bit_count, shared))) // 2
