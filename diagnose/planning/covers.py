"""Checks behind covers: the order of least expected cost, by bottom-up P over C.

A cover costs time and finds nothing; what lies behind it can only be done once it is open, and
its result is seen at once (Ottosen & Jensen 2010, cost clusters with inside information: the
out-tree case of one-machine weighted completion time, Horn 1972). For one fault and checks that
do not overlap the order is optimal. Independent of the rest of the project.
"""

from __future__ import annotations

import heapq
from collections.abc import Collection, Hashable, Iterable, Sequence
from dataclasses import dataclass
from itertools import count
from typing import Generic, TypeVar

Key = TypeVar("Key", bound=Hashable)


@dataclass(frozen=True, slots=True)
class Job(Generic[Key]):
    """A check, or a cover with no chance of its own: ``behind`` names the job to do first."""

    id: Key
    chance: float
    cost: float
    behind: Key | None = None


@dataclass(frozen=True, slots=True)
class Block(Generic[Key]):
    """Jobs that pay only together, in the order to do them."""

    jobs: tuple[Key, ...]
    chance: float
    cost: float

    @property
    def ratio(self) -> float:
        """Chance per cost; a free block that may find something comes before everything."""
        if self.cost > 0.0:
            return self.chance / self.cost
        return float("inf") if self.chance > 0.0 else 0.0


def blocks(jobs: Iterable[Job[Key]]) -> list[Block[Key]]:
    """Group all jobs in blocks, best ratio first; ties as given. A job never precedes its cover.

    Raises ValueError where a job is behind none of the others, or behind itself.
    """
    every = {job.id: job for job in jobs}
    children: dict[Key | None, list[Job[Key]]] = {}
    for job in every.values():
        if job.behind is not None and job.behind not in every:
            raise ValueError(f"{job.id}: behind {job.behind}, which is not there")
        children.setdefault(job.behind, []).append(job)
    ticket = count()
    heaps: dict[Key, list[_Entry[Key]]] = {}
    order = _down(children)
    if len(order) != len(every):
        raise ValueError("a job is behind itself")
    for job in reversed(order):  # what lies behind before what it lies behind
        heap = _merged([heaps.pop(child.id) for child in children.get(job.id, ())])
        block: Block[Key] = Block((job.id,), job.chance, job.cost)
        while heap and heap[0][2].ratio >= block.ratio:  # equal: or they might change places
            inner = heapq.heappop(heap)[2]
            block = Block(
                block.jobs + inner.jobs, block.chance + inner.chance, block.cost + inner.cost
            )
        heapq.heappush(heap, (-block.ratio, next(ticket), block))
        heaps[job.id] = heap
    rank = {job: i for i, job in enumerate(every)}
    found = [entry[2] for heap in heaps.values() for entry in heap]
    return sorted(found, key=lambda b: (-b.ratio, rank[b.jobs[0]]))


_Entry = tuple[float, int, Block[Key]]


def _down(children: dict[Key | None, list[Job[Key]]]) -> list[Job[Key]]:
    """List every job below the root, covers before what is behind them."""
    order: list[Job[Key]] = []
    stack = list(children.get(None, ()))
    while stack:
        job = stack.pop()
        order.append(job)
        stack.extend(children.get(job.id, ()))
    return order


def _merged(heaps: Sequence[list[_Entry[Key]]]) -> list[_Entry[Key]]:
    """Merge small heaps into the largest."""
    largest: list[_Entry[Key]] = max(heaps, key=len, default=[])
    for heap in heaps:
        if heap is not largest:
            for entry in heap:
                heapq.heappush(largest, entry)
    return largest


def order(jobs: Collection[Job[Key]]) -> list[Key]:
    """List the jobs in the order of least expected cost."""
    return [job for block in blocks(jobs) for job in block.jobs]
