"""Check that every layout has a complete access tree, and an order for all its checks."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from graphlib import CycleError, TopologicalSorter

from diagnose.bookcheck.shapes import Result, Whole
from diagnose.planning.access_tree import AccessTree, CyclicAccessError
from knowledge.access import Opening
from knowledge.access.precedence import CLOSED_TO_RUN, ENDS_RUNNING, Before
from knowledge.model import Finding
from knowledge.work import Access, Inspection, Layout


def access(whole: Whole) -> Result:
    """Check the access tree of every layout, and that one order satisfies all precedence."""
    faults: list[str] = []
    for layout in whole.book.layouts.values():
        faults += [f"layout {layout.id}: {fault}" for fault in of_layout(whole, layout)]
    count = {
        "layouts": len(whole.book.layouts),
        "openings": len(Access),
        "inspections": len(whole.book.inspections),
        "precedence constraints": len(whole.precedences),
    }
    return Result("access", "every layout has a complete access tree", count, tuple(faults))


def of_layout(whole: Whole, layout: Layout) -> Iterator[str]:
    """Yield what is wrong with one layout's tree."""
    tree = whole.tree(layout)
    missing = [a for a in Access if a not in tree]
    for place in missing:
        yield f"{place} cannot be opened"
    try:
        made = AccessTree(tree)
        places = made.places
    except CyclicAccessError as error:
        yield f"its openings need each other in a circle: {error}"
        return
    for place in places:
        if Access.OUTSIDE not in made.closure(place):
            yield f"{place} cannot be reached from outside"
    for check in whole.book.inspections.values():
        if check.access not in tree:
            yield f"{check.id} cannot be done: {check.access} cannot be opened"
        elif check.needs_running and made.closure(check.access) & ENDS_RUNNING - CLOSED_TO_RUN:
            yield f"{check.id} runs the engine, but after {check.access} it cannot run"
    if missing:
        return
    checks = tuple(whole.book.inspections.values())
    for line in binding(whole.before, layout.has, checks):
        if line.opening in made.closure(line.check.access):
            yield f"{line.check.id} must come before {line.opening}, but needs it open"
    try:
        TopologicalSorter(predecessors(whole, tree, layout.has, checks)).prepare()
    except CycleError as error:
        yield f"no order satisfies all precedence: {' -> '.join(str(n) for n in error.args[1])}"


def binding(
    before: Iterable[Before], has: Collection[Finding], checks: Collection[Inspection]
) -> Iterator[Before]:
    """Yield the constraints that apply to an engine with these features and these checks."""
    wanted = {c.id for c in checks}
    for line in before:
        if line.check.id in wanted and not set(line.not_with) & set(has):
            yield line


def predecessors(
    whole: Whole,
    tree: Mapping[Access, Opening],
    has: Collection[Finding],
    checks: Collection[Inspection],
    running: bool = True,
) -> dict[str, set[str]]:
    """Return what must come before each place and check.

    Openings, precedence and, with ``running``, checks of the running engine before places that end
    running.
    """
    first: dict[str, set[str]] = {place: {*opening.needs} for place, opening in tree.items()}
    first |= {check.id: {check.access} for check in checks}
    for line in binding(whole.before, has, checks):
        first[line.opening].add(line.check.id)
    for early in whole.first_of:
        for later in early.then:
            if {later.id, early.check.id} <= first.keys():
                first[later.id].add(early.check.id)
    if running:
        _add_running(first, tree, checks)
    return first


def _add_running(
    first: dict[str, set[str]], tree: Mapping[Access, Opening], checks: Collection[Inspection]
) -> None:
    """Put the checks of the running engine before the places that end running.

    A check behind a drain or a filter closes these itself.
    """
    made = AccessTree(tree)
    for check in checks:
        if check.needs_running:
            ended = made.closure(check.access) & ENDS_RUNNING
            for place in ENDS_RUNNING - CLOSED_TO_RUN if ended else ENDS_RUNNING:
                first[place].add(check.id)
