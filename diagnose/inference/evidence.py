"""Convert observations and derived findings to likelihoods."""

from __future__ import annotations

from collections.abc import Container, Mapping

from diagnose.inference.chaining import InferenceResult, Observation, Trace
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Likelihood
from knowledge.model import Finding, Kind, State

NEARLY_SURE = 0.95  #: from this certainty an absence counts as certain (judgement)


def likelihood_of(observation: Observation) -> Likelihood:
    """The likelihood of an observation: hard evidence where certain, else virtual evidence.

    An absence counts as certain from ``NEARLY_SURE``: a hard absence is one factor for each
    parent, a soft one couples all parents and can double the sum.
    """
    if observation.state is State.PRESENT:
        return SEEN if observation.sure >= 1.0 else Likelihood.of(observation.sure)
    certain = observation.sure >= NEARLY_SURE
    return SEEN_NOT_THERE if certain else Likelihood.of(1.0 - observation.sure)


def gather(
    observations: Mapping[Finding, Observation],
    conclusions: InferenceResult,
    linked: Container[str],
) -> dict[str, Likelihood]:
    """Evidence by finding id; no observation counts twice.

    A derived finding is evidence only if nothing it was derived from, directly or not, is evidence
    already. Of a finding derived both present and absent, what was reported holds, as typical
    figures may be wrong for the engine; else it is no evidence.
    """
    evidence = {
        f.id: likelihood_of(r)
        for f, r in observations.items()
        if f.kind is Kind.SEEN and f.id in linked
    }
    counted = _counted(evidence, observations, conclusions, linked)
    derived: dict[Finding, Observation | None] = {}
    by_report: set[Finding] = set()
    for conclusion, trace in conclusions.derived.items():
        finding = conclusion.finding
        if finding in observations or finding.id not in linked:
            continue
        if counted.intersection(trace.premises):
            continue
        if _from_layout_alone(trace):
            continue  # a missing part was not observed
        observation = Observation(conclusion.state, conclusion.sure)
        old = derived.get(finding, observation)
        if old is None or old.state is not observation.state:
            if trace.reported is (finding in by_report):
                derived[finding] = None
            elif trace.reported:
                derived[finding] = observation
        else:
            derived[finding] = max(old, observation, key=lambda r: r.sure)
        if trace.reported:
            by_report.add(finding)
    evidence.update((f.id, likelihood_of(r)) for f, r in derived.items() if r is not None)
    return evidence


def _from_layout_alone(trace: Trace) -> bool:
    """Whether a rule saw nothing but how the engine is built: no reading, measurement or report."""
    seen = trace.read or trace.measures or trace.reported
    return not seen and bool(trace.premises) and all(p.kind is Kind.LAYOUT for p in trace.premises)


def _counted(
    evidence: Container[str],
    observations: Mapping[Finding, Observation],
    conclusions: InferenceResult,
    linked: Container[str],
) -> set[Finding]:
    """Findings that are evidence, or that depend on one, directly or not."""
    counted = {f for f in observations if f.id in evidence}
    derived = {c: t for c, t in conclusions.derived.items() if c.finding not in observations}
    counted |= {c.finding for c in derived if c.finding.id in linked}
    grown = True
    while grown:
        more = {c.finding for c, t in derived.items() if counted.intersection(t.premises)} - counted
        counted |= more
        grown = bool(more)
    return counted
