"""Lay out a graph in columns, left to right, with few crossings.

The column of each box is given; the order within each column and the heights are computed.
Barycentre sweeps, of which the best order is kept (Sugiyama, Tagawa & Toda, IEEE Transactions on
Systems, Man and Cybernetics 11, 1981, from memory). A link over several columns takes a thin place
in each column between.
"""

from __future__ import annotations

from bisect import bisect_right, insort
from collections.abc import Callable, Hashable, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import TypeAlias

Place: TypeAlias = Hashable  #: a box's name, or (from, to, column) where a link passes
Links: TypeAlias = Sequence[tuple[str, str]]
SWEEPS = 16
GAP, THIN = 14.0, 8.0  #: between boxes of a column; height of a passing link


@dataclass(frozen=True, slots=True)
class Laid:
    """The middle height of every box, the path of every link, and the total height."""

    middle: Mapping[str, float]
    ways: Mapping[tuple[str, str], tuple[tuple[int, float], ...]]  #: (column, height) passed
    tall: float


def laid_out(column: Mapping[str, int], links: Links, tall: Mapping[str, float]) -> Laid:
    """Lay out boxes of these columns and heights. Raises ValueError where a link goes back."""
    columns, steps = _with_passes(column, links)
    columns = _untangled(columns, steps)
    height = {p: tall[p] if isinstance(p, str) else THIN for c in columns for p in c}
    middle = _heights(columns, steps, height)
    ways = {
        (a, b): tuple((k, middle[a, b, k]) for k in range(column[a] + 1, column[b]))
        for a, b in links
    }
    return Laid(
        {name: middle[name] for name in column},
        ways,
        max((middle[p] + height[p] / 2 for c in columns for p in c), default=0.0),
    )


def _with_passes(
    column: Mapping[str, int], links: Links
) -> tuple[list[list[Place]], list[tuple[Place, Place]]]:
    """The columns with a place for every passing link, and the links in steps of one column."""
    columns: list[list[Place]] = [[] for _ in range(max(column.values(), default=-1) + 1)]
    for name, at in column.items():
        columns[at].append(name)
    steps: list[tuple[Place, Place]] = []
    for a, b in links:
        if column[b] <= column[a]:
            raise ValueError(f"{a} -> {b} does not go to the right")
        passes: list[Place] = [(a, b, k) for k in range(column[a] + 1, column[b])]
        for k, place in enumerate(passes, column[a] + 1):
            columns[k].append(place)
        steps += pairwise([a, *passes, b])
    return columns, steps


def crossings(columns: Sequence[Sequence[Place]], steps: Sequence[tuple[Place, Place]]) -> int:
    """How often two links cross.

    >>> crossings([["a", "b"], ["x", "y"]], [("a", "y"), ("b", "x")])
    1
    """
    at = {p: i for column in columns for i, p in enumerate(column)}
    of = {p: k for k, column in enumerate(columns) for p in column}
    total = 0
    for k in range(len(columns)):
        seen: list[int] = []
        for _, b in sorted((at[a], at[b]) for a, b in steps if of[a] == k):
            total += len(seen) - bisect_right(seen, b)
            insort(seen, b)
    return total


def _untangled(
    columns: list[list[Place]], steps: Sequence[tuple[Place, Place]]
) -> list[list[Place]]:
    """The order with the fewest crossings of all sweeps to the right and back."""
    before: dict[Place, list[Place]] = {p: [] for c in columns for p in c}
    after: dict[Place, list[Place]] = {p: [] for c in columns for p in c}
    for a, b in steps:
        before[b].append(a)
        after[a].append(b)
    best, fewest = [list(c) for c in columns], crossings(columns, steps)
    order = [list(c) for c in columns]
    for sweep in range(SWEEPS):
        right = sweep % 2 == 0
        for k in range(1, len(order)) if right else range(len(order) - 2, -1, -1):
            beside = order[k - 1 if right else k + 1]
            near = before if right else after
            order[k].sort(key=_barycentre(beside, near, order[k]))
        found = crossings(order, steps)
        if found < fewest:
            best, fewest = [list(c) for c in order], found
    return best


def _barycentre(
    beside: Sequence[Place], near: Mapping[Place, Sequence[Place]], now: Sequence[Place]
) -> Callable[[Place], float]:
    """The mean place of a box's neighbours; a box without any keeps its own."""
    at = {p: i / max(len(beside), 1) for i, p in enumerate(beside)}
    own = {p: i / max(len(now), 1) for i, p in enumerate(now)}
    mean = {p: sum(at[n] for n in near[p]) / len(near[p]) if near[p] else own[p] for p in now}
    return mean.__getitem__


def _heights(
    columns: Sequence[Sequence[Place]],
    steps: Sequence[tuple[Place, Place]],
    height: Mapping[Place, float],
) -> dict[Place, float]:
    """Middles from the top: each near the mean of its neighbours, none overlapping."""
    near: dict[Place, list[Place]] = {p: [] for p in height}
    for a, b in steps:
        near[a].append(b)
        near[b].append(a)
    middle: dict[Place, float] = {}
    for column in columns:
        down = 0.0
        for place in column:
            middle[place] = down + height[place] / 2
            down += height[place] + GAP
    for _ in range(SWEEPS):
        for column in columns:
            wished = {
                p: sum(middle[n] for n in near[p]) / len(near[p]) if near[p] else middle[p]
                for p in column
            }
            middle |= _apart(column, wished, height)
    top = min((middle[p] - height[p] / 2 for p in height), default=0.0)
    return {p: m - top for p, m in middle.items()}


def _apart(
    column: Sequence[Place], wished: Mapping[Place, float], height: Mapping[Place, float]
) -> dict[Place, float]:
    """Middles in this order, no two closer than the gap, as near as possible to those wished.

    Boxes that touch move as one (pool adjacent violators; Barlow and others, 1972, from memory).
    """
    blocks: list[tuple[float, int]] = []  #: mean of (wish less offset), how many
    offset, offsets = 0.0, []
    for i, place in enumerate(column):
        if i:
            offset += (height[column[i - 1]] + height[place]) / 2 + GAP
        offsets.append(offset)
        mean, count = wished[place] - offset, 1
        while blocks and blocks[-1][0] > mean:
            other, many = blocks.pop()
            mean, count = (mean * count + other * many) / (count + many), count + many
        blocks.append((mean, count))
    starts = [mean for mean, count in blocks for _ in range(count)]
    return {p: s + o for p, s, o in zip(column, starts, offsets, strict=True)}
