"""Every layout has a whole tree of access, in which every check has its place and its turn."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from graphlib import CycleError, TopologicalSorter

from diagnose.checking.shapes import Result, Whole
from diagnose.planning.access_tree import AccessTree, TangledAccessError
from knowledge.access import Opening
from knowledge.precedence import CLOSED_TO_RUN, ENDS_RUNNING
from knowledge.vocabulary import Access, Layout


def access(whole: Whole) -> Result:
    """The tree of every layout, and an order in which all lines of precedence are kept."""
    faults: list[str] = []
    for layout in whole.book.layouts.values():
        faults += [f"layout {layout.id}: {fault}" for fault in of_layout(whole, layout)]
    count = {
        "layouts": len(whole.book.layouts),
        "openings": len(Access),
        "inspections": len(whole.book.inspections),
        "lines of precedence": len(whole.precedences),
    }
    return Result("access", "every layout has a whole tree of access", count, tuple(faults))


def of_layout(whole: Whole, layout: Layout) -> Iterator[str]:
    """What is wrong with one layout's tree."""
    tree = whole.tree(layout)
    missing = [a for a in Access if a not in tree]
    for place in missing:
        yield f"{place} cannot be opened"
    try:
        made = AccessTree(tree)
        places = made.places
    except TangledAccessError as error:
        yield f"its openings wait for each other: {error}"
        return
    for place in places:
        if Access.OUTSIDE not in made.closure(place):
            yield f"{place} is not reached from outside"
    for check in whole.book.inspections.values():
        if check.access not in tree:
            yield f"{check.id} has no place: {check.access} cannot be opened"
    if missing:
        return
    for line in _lines(whole, layout):
        if line[1] in made.closure(whole.book.inspections[line[0]].access):
            yield f"{line[0]} must come before {line[1]}, and lies behind it"
    try:
        TopologicalSorter(first_things(whole, layout)).prepare()
    except CycleError as error:
        yield f"no order keeps every line: {' -> '.join(str(n) for n in error.args[1])}"


def _lines(whole: Whole, layout: Layout) -> Iterator[tuple[str, Access]]:
    """Checks that must come before an opening on this layout."""
    for line in whole.before:
        if not set(line.not_with) & set(layout.has) and line.check.id in whole.book.inspections:
            yield line.check.id, line.opening


def first_things(whole: Whole, layout: Layout) -> dict[str, set[str]]:
    """For each place and check what comes first: openings, precedence, running before its end."""
    tree = whole.tree(layout)
    first: dict[str, set[str]] = {place: {*opening.needs} for place, opening in tree.items()}
    for check in whole.book.inspections.values():
        first[check.id] = {check.access}
    for id_, place in _lines(whole, layout):
        first[place].add(id_)
    for line in whole.first_of:
        for later in line.then:
            first.setdefault(later.id, set()).add(line.check.id)
    _add_running(first, whole, tree)
    return first


def _add_running(first: dict[str, set[str]], whole: Whole, tree: Mapping[Access, Opening]) -> None:
    """What needs the engine running comes before what ends that and is not closed for it."""
    made = AccessTree(tree)
    for check in whole.book.inspections.values():
        if check.needs_running:
            ended = made.closure(check.access) & ENDS_RUNNING
            for place in ENDS_RUNNING - CLOSED_TO_RUN if ended else ENDS_RUNNING:
                first[place].add(check.id)
