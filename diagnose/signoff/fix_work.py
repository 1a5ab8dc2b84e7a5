"""The work of a repair of the oil circuit: places to open, parts, hands-on minutes.

Minutes are the planner's for opening and closing what is not open yet, and the repair's own; parts
are those of the causes it puts right and of closing the places.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from diagnose.circuit.deviations import Deviation
from diagnose.circuit.fixes import rights_of
from diagnose.planning.access_tree import AccessTree, Pace
from diagnose.reasoning.check_planner import CheckPlanner
from diagnose.signoff.parts import parts_list
from diagnose.teardown.plan import CLOSING
from knowledge.book import Book
from knowledge.circuit.fixes import Fix
from knowledge.work import Access


@dataclass(frozen=True, slots=True)
class FixWork:
    """What one or two repairs take."""

    parts: tuple[str, ...]
    minutes: float | None  #: None where nobody knows where the work is
    places: tuple[str, ...]  #: still to open, outermost first


def fix_work(
    fixes: Sequence[Fix], found: Sequence[Deviation], planner: CheckPlanner, book: Book
) -> FixWork:
    """Return the work of repairs done together; what one opens the other need not."""
    tree = AccessTree(planner.openings, Pace(closing=CLOSING))
    to_open: set[Access] = set()
    known = True
    for fix in fixes:
        place = next((p for p in fix.places if p in tree.openings), None)
        known = known and place is not None
        to_open |= tree.closure(place) if place else frozenset()
    causes = [
        cause
        for fix in fixes
        for quantity, cause in fix.rights.items()
        if not (ids := {d.id for d in rights_of(fix, found)}) or quantity.id in ids
    ]
    features = planner.inference.case.known_features
    needed = parts_list(causes, to_open, features.get, book) if known else ()
    way = [tree.openings[p] for p in tree.places if p in to_open and p not in planner.opened]
    minutes = tree.opening_minutes(way) + sum(f.minutes for f in fixes)
    return FixWork(
        parts=tuple(n.part.says for n in needed),
        minutes=minutes if known else None,
        places=tuple(o.says for o in way if tree.minutes(o.access) > 0),
    )
