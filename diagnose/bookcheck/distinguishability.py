"""Every cause shows itself to some check, and causes that look alike can be told apart.

Each cause is taken alone, on each layout that can have it, from the same table of
P(finding | cause) that plans are made with.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from diagnose.bookcheck.shapes import Result, Whole
from diagnose.inference import causegraph
from diagnose.inference.network import Network
from diagnose.planning.single_cause import Array, single_cause_model
from knowledge.model import Cause, Finding, Kind, Stage
from knowledge.work import Layout

SHOWN = 0.25  #: a check reveals a cause that shows the finding at least so often
RAISED = 3.0  #: and so many times as often as an engine with nothing wrong
TELLING = 10.0  #: a finding tells two causes apart where it is so many times likelier under one
SHARED = 0.5  #: neighbours share so much of what the less known of them is known by
SURE = 0.5  #: and is found, or found wanting, at least so often under that one
_NOTHING = "nothing wrong"
_CHANCE = 0.5  #: any prior: only what each cause shows is read off the table


@dataclass(frozen=True, slots=True)
class Pair:
    """Two causes that look alike, and on how many layouts."""

    one: Cause
    other: Cause
    layouts: int


@dataclass(frozen=True)
class Sight:
    """What each cause alone shows on one layout, of what can be learnt there."""

    causes: tuple[Cause, ...]
    findings: tuple[Finding, ...]
    shows: Array  #: P(finding | cause), a row for each cause
    background: Array  #: P(finding | nothing wrong)
    by_check: NDArray[np.bool_]  #: whether a check reveals the finding

    @property
    def outside(self) -> NDArray[np.bool_]:
        """Which of them are learnt without dismantling."""
        return np.array([f.stage is not Stage.OPENED for f in self.findings])

    @property
    def likely(self) -> NDArray[np.bool_]:
        """Which findings each cause is known by."""
        known: NDArray[np.bool_] = (self.shows >= SHOWN) & (self.shows >= RAISED * self.background)
        return known


def sight(whole: Whole, layout: Layout) -> Sight:
    """The table of one layout."""
    conclusions = whole.concluded[layout]
    network = causegraph.as_network(causegraph.build(whole.book.causes, conclusions))
    widened = Network({**network.prior, _NOTHING: _CHANCE}, network.leak, network.parents)
    table = single_cause_model(widened, dict.fromkeys(widened.prior, _CHANCE))
    settled = {d.finding for d in conclusions.derived}
    tree = whole.tree(layout)
    revealed = {
        f for i in whole.book.inspections.values() if i.access in tree for f in i.reveals
    } - settled
    findings = tuple(
        f
        for f in whole.book.findings.values()
        if f.kind is Kind.SEEN
        and f.id in table.shows
        and (f in revealed or (f.stage is Stage.KNOWN and f not in settled))
    )
    shows = np.array([table.shows[f.id] for f in findings]).T
    return Sight(
        tuple(whole.book.causes[c] for c in table.causes[:-1]),
        findings,
        shows[:-1],
        shows[-1],
        np.array([f in revealed for f in findings]),
    )


def reached(whole: Whole) -> Result:
    """Whether some check that the layout allows reveals each cause it can have."""
    faults = []
    count = 0
    for layout in whole.book.layouts.values():
        seen = sight(whole, layout)
        shown = np.asarray((seen.likely & seen.by_check).any(axis=1))
        count += len(seen.causes)
        faults += [
            f"layout {layout.id}: no check reveals {cause.id}"
            for cause, is_shown in zip(seen.causes, shown, strict=True)
            if not is_shown
        ]
    counts = {"causes": len(whole.book.causes), "causes on layouts": count}
    return Result(
        "reached", "some check reveals every cause a layout can have", counts, tuple(faults)
    )


@dataclass(frozen=True, slots=True)
class Likeness:
    """Neighbours, which share something they are known by, and those that stay alike."""

    neighbours: int
    never: tuple[Pair, ...]  #: no finding tells them apart
    opened: tuple[Pair, ...]  #: only a finding behind a cover does


def alike(whole: Whole) -> Likeness:
    """Every pair of neighbours that cannot be told apart, at all or from outside."""
    neighbours: set[tuple[Cause, Cause]] = set()
    never: dict[tuple[Cause, Cause], int] = {}
    opened: dict[tuple[Cause, Cause], int] = {}
    for layout in whole.book.layouts.values():
        seen = sight(whole, layout)
        for a, others in _neighbours(seen):
            told = telling(seen.shows[a], seen.shows[others])
            any_does = np.asarray(told.any(axis=1))
            outside_does = np.asarray((told & seen.outside).any(axis=1))
            for b, by_any, by_outside in zip(others, any_does, outside_does, strict=True):
                pair = seen.causes[a], seen.causes[b]
                neighbours.add(pair)
                if not by_any:
                    never[pair] = never.get(pair, 0) + 1
                elif not by_outside:
                    opened[pair] = opened.get(pair, 0) + 1
    return Likeness(len(neighbours), _pairs(never), _pairs(opened))


def telling(one: Array, other: Array) -> NDArray[np.bool_]:
    """Which findings tell two causes apart, by being there or by not being there."""
    high, low = np.maximum(one, other), np.minimum(one, other)
    there = (high >= SURE) & (high >= TELLING * low)
    gone = (1.0 - low >= SURE) & (1.0 - low >= TELLING * (1.0 - high))
    return np.asarray(there | gone)


def _neighbours(seen: Sight) -> Iterator[tuple[int, NDArray[np.intp]]]:
    """For each cause the later ones that share enough of what they are known by."""
    known = seen.likely.astype(np.float64)
    shared = known @ known.T
    own = np.diag(shared)
    near = np.triu((shared > 0) & (shared >= SHARED * np.minimum(own, own[:, None])), 1)
    for a, row in enumerate(near):
        yield a, np.flatnonzero(row)


def _pairs(found: dict[tuple[Cause, Cause], int]) -> tuple[Pair, ...]:
    pairs = (Pair(a, b, many) for (a, b), many in found.items())
    return tuple(sorted(pairs, key=lambda p: (-p.layouts, p.one.id, p.other.id)))
