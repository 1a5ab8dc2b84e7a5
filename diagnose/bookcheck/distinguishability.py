"""Check that some check reveals every cause, and which causes no finding distinguishes.

Each cause is considered alone, on each layout that can have it, with the table of
P(finding | cause) that plans use.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from diagnose.bookcheck.shapes import Result, Whole
from diagnose.inference import causegraph
from diagnose.planning.single_cause import Array, single_cause_model
from knowledge.model import Cause, Finding, Kind, Stage
from knowledge.work import Layout

SHOWN = 0.25  #: least P(finding | cause) for a check to reveal the cause
RAISED = 3.0  #: least ratio of that to P(finding | nothing wrong)
LEAST_RATIO = 10.0  #: least likelihood ratio of a finding that distinguishes two causes
SHARED = 0.5  #: least share of common findings that makes two causes similar
SURE = 0.5  #: least probability of the finding, or of its absence, under one of them
_NOTHING = "nothing wrong"
_CHANCE = 0.5  #: any prior; only P(finding | cause) is used


@dataclass(frozen=True, slots=True)
class Pair:
    """Two similar causes, and the number of layouts with both."""

    one: Cause
    other: Cause
    layouts: int


@dataclass(frozen=True)
class Signatures:
    """What each cause alone shows on one layout; arrays have a row for each cause."""

    causes: tuple[Cause, ...]
    findings: tuple[Finding, ...]
    shows: Array  #: P(finding | cause), shape (causes, findings)
    background: Array  #: P(finding | nothing wrong), shape (findings,)
    by_check: NDArray[np.bool_]  #: whether a check reveals the finding, shape (findings,)

    @property
    def outside(self) -> NDArray[np.bool_]:
        """Which findings need no dismantling, shape (findings,)."""
        return np.array([f.stage is not Stage.OPENED for f in self.findings])

    @property
    def likely(self) -> NDArray[np.bool_]:
        """Which findings each cause is known by, shape (causes, findings)."""
        known: NDArray[np.bool_] = (self.shows >= SHOWN) & (self.shows >= RAISED * self.background)
        return known


def signatures(whole: Whole, layout: Layout) -> Signatures:
    """Return the table of one layout."""
    conclusions = whole.concluded[layout]
    network = causegraph.as_network(causegraph.build(whole.book.causes, conclusions))
    widened = replace(network, prior={**network.prior, _NOTHING: _CHANCE})
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
        and f not in whole.book.shown_by_trial  # to try a repair is no way to tell causes apart
        and (f in revealed or (f.stage is Stage.KNOWN and f not in settled))
    )
    shows = np.array([table.shows[f.id] for f in findings]).T
    return Signatures(
        tuple(whole.book.causes[c] for c in table.causes[:-1]),
        findings,
        shows[:-1],
        shows[-1],
        np.array([f in revealed for f in findings]),
    )


def reached(whole: Whole) -> Result:
    """Check that each layout allows some check that reveals each cause it can have."""
    faults = []
    count = 0
    for layout in whole.book.layouts.values():
        seen = signatures(whole, layout)
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
    """Pairs of similar causes, and those that no finding distinguishes."""

    neighbours: int  #: number of similar pairs
    indistinguishable: tuple[Pair, ...]  #: no finding distinguishes them
    opened: tuple[Pair, ...]  #: only a finding behind a cover distinguishes them


def alike(whole: Whole) -> Likeness:
    """Find every pair of similar causes that no finding, or none from outside, distinguishes."""
    neighbours: set[tuple[Cause, Cause]] = set()
    never: dict[tuple[Cause, Cause], int] = {}
    opened: dict[tuple[Cause, Cause], int] = {}
    for layout in whole.book.layouts.values():
        seen = signatures(whole, layout)
        for a, others in _neighbours(seen):
            distinguishes = distinguishing(seen.shows[a], seen.shows[others])
            any_does = np.asarray(distinguishes.any(axis=1))
            outside_does = np.asarray((distinguishes & seen.outside).any(axis=1))
            for b, by_any, by_outside in zip(others, any_does, outside_does, strict=True):
                pair = seen.causes[a], seen.causes[b]
                neighbours.add(pair)
                if not by_any:
                    never[pair] = never.get(pair, 0) + 1
                elif not by_outside:
                    opened[pair] = opened.get(pair, 0) + 1
    return Likeness(len(neighbours), _named_pairs(never), _named_pairs(opened))


def distinguishing(one: Array, other: Array) -> NDArray[np.bool_]:
    """Return which findings distinguish two causes, by their presence or their absence."""
    high, low = np.maximum(one, other), np.minimum(one, other)
    there = (high >= SURE) & (high >= LEAST_RATIO * low)
    gone = (1.0 - low >= SURE) & (1.0 - low >= LEAST_RATIO * (1.0 - high))
    return np.asarray(there | gone)


def _neighbours(seen: Signatures) -> Iterator[tuple[int, NDArray[np.intp]]]:
    """Yield for each cause the later ones that are similar to it."""
    known = seen.likely.astype(np.float64)
    shared = known @ known.T
    own = np.diag(shared)
    near = np.triu((shared > 0) & (shared >= SHARED * np.minimum(own, own[:, None])), 1)
    for a, row in enumerate(near):
        yield a, np.flatnonzero(row)


def _named_pairs(found: dict[tuple[Cause, Cause], int]) -> tuple[Pair, ...]:
    pairs = (Pair(a, b, many) for (a, b), many in found.items())
    return tuple(sorted(pairs, key=lambda p: (-p.layouts, p.one.id, p.other.id)))
