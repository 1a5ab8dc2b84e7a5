"""Build a kind of trial: the finding that it cured the trouble, and the links to that finding."""

from __future__ import annotations

from collections.abc import Mapping

from knowledge.model import VERY_RARE, Cause, Finding, Source, Stage, Station, Strength
from knowledge.reports.shapes import TrialKind
from knowledge.rule_api import Link, LinkGroup, example


def trial(
    *,
    id: str,
    station: Station,
    says: str,
    asks: str,
    cures: Mapping[Cause, tuple[Strength, Source]],
    source: Source,
    cured: Finding | None = None,
    worse: Finding | None = None,
    retired: tuple[str, ...] = (),
    also: tuple[str, ...] = (),
) -> TrialKind:
    """Build a trial; ``cured`` is made where there is no finding of its own for it.

    ``says`` completes "it was tried: …"; ``asks`` asks what it did. How surely a cause is cured is
    judged by what is left after it: a new part may be bad, or mend only part of the fault.
    """
    return TrialKind(
        id=id,
        station=station,
        says=says,
        asks=asks,
        cures=cures,
        cured=cured or _cured(id, station, says, asks, source),
        source=source,
        worse=worse,
        retired=retired,
        also=also,
    )


def _cured(id: str, station: Station, says: str, asks: str, source: Source) -> Finding:
    """The finding that a trial cured the trouble; it hardly ever does so by chance."""
    return Finding(
        id=f"{id}_cured_it",
        station=station,
        says=f"{says}, and that cured it",
        asks=asks,
        source=source,
        denies=f"{says}, without effect",
        stage=Stage.KNOWN,
        background=VERY_RARE,
    )


def cure_links(kind: TrialKind) -> LinkGroup:
    """The links from the causes a trial cures to the finding that it did."""
    return LinkGroup(
        id=f"cured_by_{kind.id}",
        station=kind.station,
        says=f"It cures: {kind.says}.",
        note="Without effect it lowers these causes and no others.",
        links=tuple(Link(cause, kind.cured, *how) for cause, how in kind.cures.items()),
        matches=[example(kind.cured)],
        non_matches=[example(lacks=[kind.cured])],
    )
