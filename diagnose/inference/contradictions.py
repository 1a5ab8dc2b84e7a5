"""What does not fit together, besides what the rules say; imported by ``consultation``.

By derivation: something reported that cannot be where a rule is right. By probability: a finding
that hardly fits the rest.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Mapping
from math import exp

from diagnose.inference.chaining import InferenceResult, Observation
from diagnose.inference.leave_one_out import Without
from diagnose.inference.network import Evidence
from knowledge.model import Finding, State
from knowledge.rule_api import Contradiction

DERIVED_SURE = 0.9  #: what is derived less surely than this contradicts nothing
ODD = 0.004  #: a finding less likely than this, given all the others, is asked for again


def by_derivation(
    conclusions: InferenceResult, observations: Mapping[Finding, Observation]
) -> Iterator[Contradiction]:
    """Reports that a rule derives the opposite of."""
    for derived, trace in conclusions.derived.items():
        observation = observations.get(derived.finding)
        if observation and observation.state is not derived.state and derived.sure >= DERIVED_SURE:
            says = derived.finding.stated(observation.state is State.PRESENT)
            yield Contradiction(
                (derived.finding, *trace.premises),
                f"it was reported that {says}; that does not fit: {trace.rule.says}",
                derived.finding,
            )


def by_odds(
    evidence: Evidence,
    findings: Mapping[str, Finding],
    without: Mapping[str, Without],
    log_evidence: float,
    told: Container[Finding],
) -> Iterator[Contradiction]:
    """Findings that all the others together make very unlikely; ``told`` are told already."""
    for name, seen in evidence.items():
        if name not in findings:  # a condition: its evidence is a survey's
            continue
        finding, rest = findings[name], without[name].log_evidence
        chance = exp(log_evidence - rest) / max(seen.if_present, seen.if_absent)
        if chance < ODD and finding not in told:
            yield Contradiction(
                (finding,),
                f"'{finding.stated(seen.there)}' hardly fits the rest "
                f"(about 1 in {round(1 / max(chance, 1e-6)):,})",
                finding,
            )
