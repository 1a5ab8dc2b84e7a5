"""The check of the whole book: what was counted, what is wrong, which causes look alike."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from diagnose.bookcheck.distinguishability import LEAST_RATIO, SURE, Pair
from diagnose.bookcheck.everything import Checked
from diagnose.output.as_json import NOT_IN_JSON


@dataclass(frozen=True, kw_only=True)
class CheckedPart:
    """One part of the check: what was counted and what is wrong."""

    id: str
    says: str
    counts: Mapping[str, int]
    faults: tuple[str, ...]


@dataclass(frozen=True, kw_only=True)
class AlikePair:
    """Two causes that look alike, and on how many layouts."""

    causes: tuple[str, str]
    layouts: int


@dataclass(frozen=True, kw_only=True)
class CheckDocument:
    """Everything ``check`` answers."""

    faults: int  #: of all parts together
    checks: tuple[CheckedPart, ...]
    neighbours: int  #: pairs of causes that look alike
    never_distinguished: tuple[AlikePair, ...]
    distinguished_behind_a_cover: tuple[AlikePair, ...]
    cases: int  #: on which the rules were tried
    silent_rules: tuple[str, ...]  #: that fired in none of the cases
    sure: float = field(
        metadata=NOT_IN_JSON
    )  #: share of one cause's cases in which a finding tells it apart
    telling: float = field(
        metadata=NOT_IN_JSON
    )  #: how many times likelier the finding has to be there


def check_document(found: Checked) -> CheckDocument:
    """Build the document from what the check found."""
    return CheckDocument(
        faults=found.faults,
        checks=tuple(
            CheckedPart(id=r.id, says=r.says, counts=dict(r.counts), faults=tuple(r.faults))
            for r in found.results
        ),
        neighbours=found.alike.neighbours,
        never_distinguished=tuple(map(_pair, found.alike.indistinguishable)),
        distinguished_behind_a_cover=tuple(map(_pair, found.alike.opened)),
        cases=found.cases,
        silent_rules=tuple(r.id for r in found.silent),
        sure=SURE,
        telling=LEAST_RATIO,
    )


def _pair(pair: Pair) -> AlikePair:
    return AlikePair(causes=(pair.one.id, pair.other.id), layouts=pair.layouts)
