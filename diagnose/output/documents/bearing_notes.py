"""Notes on an order of shells, and what the errors and limits rest on."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.bearings.before_ordering import Hold
from diagnose.bearings.orders import Order
from diagnose.bearings.table import RESIZE, Bearings, held_by
from diagnose.bearings.targets import group_of
from diagnose.case.bearings import form_limit, shown
from diagnose.output.documents.bearing_words import (
    SIGMAS,
    figure,
    named_places,
    shell,
    units_for,
)
from diagnose.output.documents.limits import source_title
from diagnose.ways import Way, to
from knowledge.stations.bearings import quantities, sizes

WAITS = {
    Hold.CAPS: "nothing yet: caps were mixed, so these clearances are not the shells' own",
    Hold.BORES: "nothing yet: the bores are out of line, and no shell cures that",
    Hold.SHELL_BACKS: "nothing yet: the crank may be ground, and the size of these shells is not known",
}


def held(found: Bearings) -> Iterator[str]:
    """Return why shells of a kind are not ordered yet."""
    for hold, says in WAITS.items():
        places = held_by(found.orders, hold)
        if places:
            yield f"{named_places(places)}: {says}"


def notes(found: Bearings) -> Iterator[str]:
    """Return what to know of an order before it is sent."""
    orders = list(found.orders.values())
    for order in orders:
        if order.worn is not None:
            size, _ = units_for(order.kind, found)
            low, high = (figure(v, size) for v in order.worn)
            by = high if low == high else f"{low} to {high}"
            yield (
                f"{order.kind.value.capitalize()} journals are {by} {size} below their new size: "
                "grind them in the same set-up, as the crank goes to the grinder for the others."
            )
        if order.ground is not None:
            yield from _before_grinding(order, found)
    if any(c.pair.mixed for o in orders for c in o.choices):
        yield (
            "Two sizes in one bore: one bearing maker allows 0.0005 in of wall, one vehicle maker "
            "forbids it: see the manual."
        )
    if any(o.unusual for o in orders):
        yield "A size made for some engines only is among them: ask first."
    if any(o.old_shells and o.choices for o in orders):
        yield ("Worked out from the shells measured; worn ones read wider than new.")
    if found.pressures.why_not:
        yield f"No hot idle pressure: {found.pressures.why_not}"


def in_doubt(found: Bearings) -> str:
    """Return which bearings may have been measured with new shells in; empty where none may."""
    places = [j.place for j in found.as_if_new]
    if not places:
        return ""
    return (
        f"{named_places(places)} counts as found, with the old shells. If the new ones were in: "
        f"{to(Way.FITTED)}, and withdraw this one."
    )


def _before_grinding(order: Order, found: Bearings) -> Iterator[str]:
    """What the size to grind to follows from, where that is not known yet or will change."""
    mine = [j for j in found.found if j.place.kind is order.kind]
    bores = [j.place for j in mine if j.has(*RESIZE)]
    if bores:
        yield (
            f"Have the bore of {named_places(bores)} resized, and measure it again, before the "
            "crank is ground: the size to grind to follows from the bores."
        )
    if not order.by_maker:
        return
    lacks = [] if group_of(found.case, order.kind).new_shell else [f"{order.kind.plural} new_shell"]
    lacks += ["each bore"] if any(not j.bore for j in mine) else []
    yield (
        f"{named_places(order.by_maker).capitalize()}: ground to the maker's sizes. What is left "
        "between shell and journal is a guess until these are measured, before the grinding: "
        f"{', '.join(lacks)}."
    )


def grinding(found: Bearings) -> Iterator[str]:
    """Return what the maker's own sizes make of ground journals."""
    for order in found.orders.values():
        if order.journals is not None:
            size, _ = units_for(order.kind, found)
            low, high = order.journals
            yield (
                f"By the maker's sizes {order.kind.value} journals end at {figure(low, size)} to "
                f"{shown(high, size)}; all of a kind are ground alike "
                f"({source_title(sizes.GRIND_ALL_SOURCE)})."
            )


def made_sizes(found: Bearings) -> Iterator[str]:
    """Return the undersizes an order was chosen from, each with its source."""
    seen = set()
    for order in found.orders.values():
        size, _ = units_for(order.kind, found)
        for each in order.undersizes:
            rare = "" if each.usual else ", for some engines only"
            line = f"{shell(each.size, size)}{rare} [{each.source.key}]"
            if line not in seen:
                seen.add(line)
                yield line


def instruments(found: Bearings) -> Iterator[str]:
    """Return the error of each instrument, and each limit of form."""
    size, _ = units_for(None, found)
    for says, error, source in (
        ("micrometer on a journal", sizes.JOURNAL_ERROR, sizes.JOURNAL_ERROR_SOURCE),
        ("ball micrometer on a shell", sizes.SHELL_ERROR, sizes.SHELL_ERROR_SOURCE),
        ("bore gauge", sizes.BORE_ERROR, sizes.BORE_ERROR_SOURCE),
        ("gauge strip", sizes.STRIP_ERROR, sizes.STRIP_ERROR_SOURCE),
    ):
        yield f"{says}: ±{shown(SIGMAS * error, size)} ({source_title(source)})"
    for limit in (
        quantities.MOST_JOURNAL_OVAL,
        quantities.MOST_JOURNAL_TAPER,
        quantities.MOST_BORE_OVAL,
        quantities.MOST_BORE_TAPER,
    ):
        most = form_limit(found.case, limit)
        printed = limit.printed(found.case.has)[0]
        own = limit in found.case.limits or most != found.case.limit(limit)
        whose = "this engine's own" if own else f"{printed.of}, {printed.source.key}"
        yield f"{limit.says}: {shown(most, size)} ({whose})"
