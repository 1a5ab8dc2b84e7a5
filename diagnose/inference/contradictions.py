"""Contradictions besides those that rules state.

By derivation: an observation that is the opposite of what a rule derives. By probability: a
finding that is very improbable given all the others.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping
from math import exp

from diagnose.inference.chaining import InferenceResult, Observation
from diagnose.inference.leave_one_out import Without
from diagnose.inference.network import Evidence
from knowledge.model import Finding, State
from knowledge.rule_api import Contradiction

DERIVED_SURE = 0.9  #: a finding derived with less certainty contradicts nothing
ODD = 0.004  #: a finding less probable than this given all the others is a contradiction


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
) -> Iterator[Contradiction]:
    """Findings that are very improbable given all the others, without those already ``named``."""
    for name, seen in evidence.items():
        if name not in findings:  # a condition, whose evidence comes from the survey
            continue
        finding, rest = findings[name], without[name].log_evidence
        chance = exp(log_evidence - rest) / max(seen.if_present, seen.if_absent)
        if chance < ODD and finding not in named:
            yield Contradiction(
                (finding,),
                f"'{finding.stated(seen.there)}' hardly fits the rest "
                f"(about 1 in {round(1 / max(chance, 1e-6)):,})",
                finding,
            )
