"""Build a kind of trial, the links to its cure, and what the result of a trial shows.

A trial that was not made is no evidence. One without effect makes "it cures this" absent: that
multiplies the odds of each cause it would have cured by one minus the strength of its link, and
those of no other.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from knowledge.model import VERY_RARE, Cause, Finding, Source, Stage, State, Station, Strength
from knowledge.reports.shapes import TrialKind, TrialMade
from knowledge.reports.words import Result
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
    still: Finding | None = None,
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
        still=still,
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
        says=f"Causes cured if {kind.says}.",
        note="If it had no effect, these causes are less likely and no others.",
        links=tuple(Link(cause, kind.cured, *how) for cause, how in kind.cures.items()),
        matches=[example(kind.cured)],
        non_matches=[example(lacks=[kind.cured])],
    )


#: what each result says of "this cures it", and how surely (judgement)
SAYS_OF_CURE: dict[Result, tuple[State, float]] = {
    Result.CURED: (State.PRESENT, 1.0),
    Result.FOR_A_WHILE: (State.PRESENT, 0.9),
    Result.HELPED: (State.PRESENT, 0.8),
    Result.NO_DIFFERENCE: (State.ABSENT, 1.0),
    Result.WORSE: (State.ABSENT, 1.0),
}


def shown_by(made: TrialMade) -> Iterator[tuple[Finding, State, float]]:
    """Yield the findings that a trial shows, and how surely, 0.5 to 1."""
    kind = made.trial
    yield kind.cured, *SAYS_OF_CURE[made.result]
    if kind.worse is not None and made.result is Result.WORSE:
        yield kind.worse, State.PRESENT, 1.0
    if kind.still is not None:
        same = made.result is Result.NO_DIFFERENCE
        yield kind.still, State.PRESENT if same else State.ABSENT, 1.0
