"""What every check may show, and what that is worth: all checks rated in one sweep of arrays.

Knows single-cause worlds and the checks' findings; nothing of minutes or access.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field

import numpy as np

from diagnose.planning.worlds import Array, Worlds, outcomes, telling
from knowledge.vocabulary import Finding, Inspection

MOST_FINDINGS = 6  #: outcomes of one check looked at when thinking ahead


@dataclass(frozen=True, slots=True)
class View:
    """One check's open findings, most telling first, and P(outcome | cause), one row an outcome."""

    inspection: Inspection
    findings: tuple[Finding, ...]
    rows: Array


@dataclass(frozen=True, slots=True)
class Rated:
    """For each of the views: chance it adds of naming the cause, bits, chance that it settles it.

    ``adds[k, c]`` is the share of the doubt about cause c that view k takes away, where c is
    the cause: how likely it then is to be named, drawn by its probability.
    """

    adds: Array
    bits: Array
    settles: Array


@dataclass
class Outlook:
    """The views of all checks on one table of worlds, each made once."""

    table: Worlds
    _views: dict[tuple[Inspection, tuple[Finding, ...]], View] = field(default_factory=dict)
    _asks: dict[Inspection, tuple[Finding, ...]] = field(default_factory=dict)

    def view(self, inspection: Inspection, answered: Collection[Finding]) -> View | None:
        """What a check can still show; None where nothing."""
        if inspection not in self._asks:
            there = self.table.shows
            self._asks[inspection] = tuple(f for f in inspection.reveals if f.id in there)
        left = tuple(f for f in self._asks[inspection] if f not in answered)
        if not left:
            return None
        key = (inspection, left)
        if key not in self._views:
            by = {f.id: f for f in left}
            names = telling(self.table, self.table.weight, list(by))[:MOST_FINDINGS]
            found = tuple(by[n] for n in names)
            self._views[key] = View(inspection, found, outcomes(self.table, names))
        return self._views[key]

    def views(self, inspections: Iterable[Inspection], answered: Collection[Finding]) -> list[View]:
        """Every check that can still show something."""
        found = (self.view(i, answered) for i in inspections)
        return [v for v in found if v is not None]


def rate(views: Sequence[View], weight: Array, until: float) -> Rated:
    """How much each view is worth under these weights (one per cause, summing to one)."""
    rows = np.concatenate([v.rows for v in views])
    starts = np.cumsum([0, *(len(v.rows) for v in views)])[:-1]
    joint = rows * weight
    p = joint.sum(axis=1)
    after = joint / np.maximum(p, 1e-300)[:, None]
    named = np.add.reduceat(rows * after, starts, axis=0)
    doubt = np.maximum(1.0 - weight, 1e-12)
    adds = np.clip((named - weight) / doubt, 0.0, 1.0)
    safe = np.where(after > 0.0, after, 1.0)
    surprise = -(joint * np.log2(safe)).sum(axis=1)
    plain = np.where(weight > 0.0, weight, 1.0)
    before = float(-(weight * np.log2(plain)).sum())
    bits = before - np.add.reduceat(surprise, starts)
    sure = np.where(joint.max(axis=1) >= until * p, joint.max(axis=1), 0.0)
    return Rated(adds, bits, np.add.reduceat(sure, starts))
