"""The outcomes of every check and their value, rated for all checks at once with arrays.

Knows the single-cause model and the checks' findings; no minutes, no access.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from diagnose.planning.single_cause import Array, SingleCauseModel, outcomes, telling
from knowledge.model import Finding
from knowledge.work import Inspection

MOST_FINDINGS = 6  #: findings of one check that are looked at in planning


@dataclass(frozen=True, slots=True)
class OutcomeTable:
    """One check's open findings, most telling first, and P(outcome | cause), one row an outcome."""

    inspection: Inspection
    findings: tuple[Finding, ...]
    rows: Array


@dataclass
class OutcomeTables:
    """The outcome tables of all checks on one single-cause model, each made once."""

    table: SingleCauseModel
    _views: dict[tuple[Inspection, tuple[Finding, ...]], OutcomeTable] = field(default_factory=dict)
    _asks: dict[Inspection, tuple[Finding, ...]] = field(default_factory=dict)

    def view(self, inspection: Inspection, answered: Collection[Finding]) -> OutcomeTable | None:
        """Return what a check can still show; None where nothing."""
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
            self._views[key] = OutcomeTable(inspection, found, outcomes(self.table, names))
        return self._views[key]

    def views(
        self, inspections: Iterable[Inspection], answered: Collection[Finding]
    ) -> list[OutcomeTable]:
        """Every check that can still show something."""
        found = (self.view(i, answered) for i in inspections)
        return [v for v in found if v is not None]


@dataclass(frozen=True)
class StackedTables:
    """Several outcome tables stacked, to be rated at once under any weights."""

    rows: Array
    starts: NDArray[np.intp]

    @staticmethod
    def of(views: Sequence[OutcomeTable]) -> StackedTables:
        """Stack the tables in their order; at least one."""
        starts = np.cumsum([0, *(len(v.rows) for v in views)])[:-1]
        return StackedTables(np.concatenate([v.rows for v in views]), starts)

    def adds(self, weight: Array) -> Array:
        """For each view and cause the share of the doubt about it that the view takes away.

        Where c is the cause, it is named with its weight now, and after the view with what the
        outcome makes of it: rows are views, columns causes.
        """
        joint = self.rows * weight
        after = joint / np.maximum(joint.sum(axis=1), 1e-300)[:, None]
        named = np.add.reduceat(self.rows * after, self.starts, axis=0)
        return np.clip((named - weight) / np.maximum(1.0 - weight, 1e-12), 0.0, 1.0)

    def shows(self, weight: Array) -> Array:
        """For each view and cause the chance that it shows the cause: P of P over C.

        Only findings that are there count, by how far they raise the cause: what is left over
        when nothing is found is rated by ``adds`` only.
        """
        joint = self.rows * weight
        after = joint / np.maximum(joint.sum(axis=1), 1e-300)[:, None]
        raised = np.clip((after - weight) / np.maximum(1.0 - weight, 1e-12), 0.0, 1.0) * self.rows
        raised[np.append(self.starts[1:], len(self.rows)) - 1] = 0.0
        return np.add.reduceat(raised, self.starts, axis=0)

    def gains(self, weight: Array) -> Array:
        """For each view what it adds to the chance of naming the cause, whichever it is."""
        joint = self.rows * weight
        p = joint.sum(axis=1)
        squares = np.einsum("ij,ij->i", joint, joint) / np.maximum(p, 1e-300)
        gained: Array = np.add.reduceat(squares, self.starts) - float(weight @ weight)
        return gained
