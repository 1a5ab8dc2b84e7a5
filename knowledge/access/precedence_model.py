"""The two shapes of "look before you open", and what ends running."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from knowledge.model import Finding, Source
from knowledge.work import Access, Inspection


@dataclass(frozen=True, slots=True)
class Before:
    """Do this check, if it is still open, before this place is opened."""

    check: Inspection
    opening: Access
    why: str
    source: Source
    not_with: tuple[Finding, ...] = ()  #: does not bind an engine with any of these features
    spoilt: bool = True  #: the opening spoils it; else it only says what is worth opening
    #: what of it must be known before; empty: whatever it shows
    only_for: tuple[Finding, ...] = ()


@dataclass(frozen=True, slots=True)
class FirstOf:
    """This check comes before those: they wipe, wash, turn or move what it reads.

    Most are at the same open place. Otherwise neither place needs the other to be open, or
    theirs is behind the place of the check.
    """

    check: Inspection
    then: tuple[Inspection, ...]
    why: str
    source: Source
    #: what of it must be known before; empty: whatever it shows
    only_for: tuple[Finding, ...] = ()


#: once open, the engine cannot be run until it is closed again
ENDS_RUNNING: frozenset[Access] = frozenset(Access) - {
    Access.OUTSIDE,
    Access.GAUGE_PORT,
    Access.OIL_SAMPLE,
    Access.VALVE_COVER_OFF,
}
#: of these the ones a running check closes again by itself: oil back in, a filter on
CLOSED_TO_RUN: frozenset[Access] = frozenset({Access.DRAINED, Access.FILTER_OFF})


def before(
    *,
    check: Inspection,
    why: str,
    source: Source,
    openings: Iterable[Access],
    not_with: tuple[Finding, ...] = (),
    spoilt: bool = True,
    only_for: tuple[Finding, ...] = (),
) -> tuple[Before, ...]:
    """Return one check that must come before several openings for the same reason."""
    return tuple(
        Before(
            check=check,
            opening=opening,
            why=why,
            source=source,
            not_with=not_with,
            spoilt=spoilt,
            only_for=only_for,
        )
        for opening in openings
    )
