"""Choose the next question: the one with the largest expected gain about the cause."""

from __future__ import annotations

from collections.abc import Collection, Iterable

from diagnose.planning.single_cause import SingleCauseModel, gain, outcomes
from knowledge.model import Finding, Kind, Stage

LEAST_BITS = 0.01
_EFFORT = {Stage.KNOWN: 1.0, Stage.OUTSIDE: 2.5}  #: an outside check is less often known already

_TRIAL_EFFORT = 4.0  #: one trial in four was made by the person who is asked (judgement)


def best_question(
    findings: Iterable[Finding],
    table: SingleCauseModel,
    answered: Collection[Finding],
    of_trials: Collection[Finding] = (),
) -> Finding | None:
    """The open question of most bits that can be answered without tools; None where none informs.

    ``of_trials``: findings that only a trial shows; most trials were not made.
    """
    best: tuple[float, str, Finding] | None = None
    for finding in findings:
        if (
            finding.kind is not Kind.SEEN
            or finding.stage not in _EFFORT
            or finding in answered
            or finding.id not in table.shows
        ):
            continue
        effort = _EFFORT[finding.stage] * (_TRIAL_EFFORT if finding in of_trials else 1.0)
        bits = gain(table.weight, outcomes(table, [finding.id])) / effort
        if bits >= LEAST_BITS and (best is None or (-bits, finding.id) < (best[0], best[1])):
            best = (-bits, finding.id, finding)
    return best[2] if best else None
