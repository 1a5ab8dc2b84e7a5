"""Which single check buys most per hands-on minute, with two steps of look-ahead.

One step of look-ahead can be a third dearer than the optimum; the second repairs it
(Pattipati & Alexandridis 1990; Jensen et al. 2001).
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from diagnose.planning.worlds import Array, Worlds, gain, outcomes, telling
from knowledge.access import Opening
from knowledge.vocabulary import Access, Finding, Inspection

SHORTLIST = 6
MOST_FINDINGS = 6  #: outcomes of one check looked at when thinking ahead
LEAST_MINUTES = 1.0
LEAST_BITS = 1e-9  #: below this a check tells nothing; rounding can leave as much


@dataclass(frozen=True, slots=True)
class Step:
    """A check worth doing: its cost with the access it needs, and what it buys."""

    inspection: Inspection
    findings: tuple[Finding, ...]  #: open questions it answers, most telling first
    openings: tuple[Opening, ...]  #: what must be opened first, outermost first
    minutes: float
    bits: float
    value: float  #: bits per minute with the follow-up counted in


def path_to(
    access: Access, openings: Mapping[Access, Opening], opened: Collection[Access]
) -> tuple[Opening, ...] | None:
    """What is still to open for this access, outermost first; None where it cannot be had."""
    found: dict[Access, Opening] = {}

    def visit(place: Access) -> bool:
        if place in opened or place in found:
            return True
        opening = openings.get(place)
        if opening is None or not all(visit(n) for n in opening.needs):
            return False
        found[place] = opening
        return True

    return tuple(found.values()) if visit(access) else None


def candidates(
    inspections: Sequence[Inspection],
    table: Worlds,
    answered: Collection[Finding],
    openings: Mapping[Access, Opening],
    opened: Collection[Access],
    may_run: bool,
) -> list[Step]:
    """Every check that still answers something, with its cost; none that needs a running
    engine under a stop alarm."""
    steps = []
    for inspection in inspections:
        if inspection.needs_running and not may_run:
            continue
        ids = {f.id: f for f in inspection.reveals if f not in answered}
        names = telling(table, table.weight, list(ids))[:MOST_FINDINGS]
        way = path_to(inspection.access, openings, opened)
        if not names or way is None:
            continue
        bits = gain(table.weight, outcomes(table, names))
        minutes = inspection.minutes + sum(o.minutes_in_place for o in way)
        minutes = max(minutes, LEAST_MINUTES)
        found = tuple(ids[n] for n in names)
        steps.append(Step(inspection, found, way, minutes, bits, bits / minutes))
    return steps


def best(steps: list[Step], table: Worlds, how_many: int = 3) -> list[Step]:
    """The steps of most value with the best follow-up counted in, best first."""
    steps = sorted(steps, key=lambda s: (-s.value, s.inspection.id))
    short = steps[:SHORTLIST]
    tables = {s.inspection.id: outcomes(table, [f.id for f in s.findings]) for s in steps}
    rated = [(_two_steps(s, steps, tables, table.weight), s) for s in short]
    rated.sort(key=lambda vs: (-vs[0], vs[1].inspection.id))
    return [
        Step(s.inspection, s.findings, s.openings, s.minutes, s.bits, value)
        for value, s in rated[:how_many]
    ]


def _two_steps(first: Step, steps: list[Step], tables: Mapping[str, Array], weight: Array) -> float:
    """(bits now + expected bits of the best follow-up) per (minutes now + its minutes).

    A follow-up dearer than the check itself counts only where it pays better than the check:
    otherwise a cheap check would be charged for the dear ones that come after any check.
    """
    joint = tables[first.inspection.id] * weight
    bits, minutes = first.bits, first.minutes
    open_then = {o.access for o in first.openings}
    for row in joint:
        p = float(row.sum())
        if p < 1e-6:
            continue
        after = row / p
        value, more, time = 0.0, 0.0, 0.0
        for step in steps:
            if step.inspection.id == first.inspection.id:
                continue
            spared = sum(o.minutes_in_place for o in step.openings if o.access in open_then)
            cost = max(step.minutes - spared, LEAST_MINUTES)
            if step.bits / cost * 4 < value:  # far from paying: not worth the sum
                continue
            follow = gain(after, tables[step.inspection.id])
            if follow > LEAST_BITS and follow / cost > value:
                value, more, time = follow / cost, follow, cost
        if time <= first.minutes or value > first.value:
            bits += p * more
            minutes += p * time
    return bits / minutes
