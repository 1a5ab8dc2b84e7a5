"""Contradictions besides those that rules state.

By derivation: an observation that is the opposite of what a rule derives. By probability: a
finding that is very improbable given all the others.
"""

from __future__ import annotations

from collections.abc import Callable, Container, Iterator, Mapping
from math import exp

from diagnose.inference.chaining import InferenceResult, Observation
from diagnose.inference.leave_one_out import Without
from diagnose.inference.network import Evidence
from knowledge.alarm import Contradiction
from knowledge.model import Finding, State

DERIVED_SURE = 0.9  #: a finding derived with less certainty contradicts nothing
ODD = 0.004  #: a finding less probable than this given all the others is a contradiction
LESS = 0.5  #: of its chance on any engine: a rare finding that the others leave as rare is none


def by_derivation(
    conclusions: InferenceResult, observations: Mapping[Finding, Observation]
) -> Iterator[Contradiction]:
    """Observations whose opposite a rule derives."""
    for derived, trace in conclusions.derived.items():
        observation = observations.get(derived.finding)
        if observation and observation.state is not derived.state and derived.sure >= DERIVED_SURE:
            recorded = derived.finding.stated(observation.state is State.PRESENT)
            follows = derived.finding.stated(derived.state is State.PRESENT)
            yield Contradiction(
                (derived.finding, *trace.premises),
                f"recorded is that {recorded}; from the rest it follows that {follows}. "
                f"{trace.rule.says}",
                derived.finding,
            )


def by_odds(
    evidence: Evidence,
    findings: Mapping[str, Finding],
    without: Mapping[str, Without],
    log_evidence: float,
    named: Container[Finding],
    before: Callable[[str], float],
) -> Iterator[Contradiction]:
    """Findings that the others make very improbable, without those already ``named``.

    ``before``: the probability that the finding of an id is there, before all evidence.
    """
    for name, seen in evidence.items():
        if name not in findings:  # a condition, whose evidence comes from the survey
            continue
        finding, rest = findings[name], without[name].log_evidence
        chance = exp(log_evidence - rest) / max(seen.if_present, seen.if_absent)
        if chance >= ODD or finding in named:
            continue
        if chance < LESS * (before(name) if seen.there else 1.0 - before(name)):
            yield Contradiction(
                (finding,),
                f"'{finding.stated(seen.there)}' hardly fits the rest "
                f"(about 1 in {round(1 / max(chance, 1e-6)):,})",
                finding,
            )
