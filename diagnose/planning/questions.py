"""Choose the next question: the one with the largest expected gain about the cause."""

from __future__ import annotations

from collections.abc import Collection, Iterable

from diagnose.planning.single_cause import SingleCauseModel, gain, outcomes
from knowledge.model import Finding, Kind, Stage

LEAST_BITS = 0.01
_EFFORT = {Stage.KNOWN: 1.0, Stage.OUTSIDE: 2.5}  #: an outside check is less often known already


def best_question(
    findings: Iterable[Finding], table: SingleCauseModel, answered: Collection[Finding]
) -> Finding | None:
    """The open question of most bits that can be answered without tools; None where none informs."""
    best: tuple[float, str, Finding] | None = None
    for finding in findings:
        if (
            finding.kind is not Kind.SEEN
            or finding.stage not in _EFFORT
            or finding in answered
            or finding.id not in table.shows
        ):
            continue
        bits = gain(table.weight, outcomes(table, [finding.id])) / _EFFORT[finding.stage]
        if bits >= LEAST_BITS and (best is None or (-bits, finding.id) < (best[0], best[1])):
            best = (-bits, finding.id, finding)
    return best[2] if best else None
