"""Which findings speak to the network, and how loudly.

Imported by ``consultation``, ``outcomes`` and ``checking``.
"""

from __future__ import annotations

from collections.abc import Container, Mapping

from diagnose.inference.chaining import InferenceResult, Observation
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Likelihood
from knowledge.model import Finding, Kind, State


def of_report(observation: Observation) -> Likelihood:
    """A report as likelihoods: hard where sure, virtual evidence where not."""
    if observation.state is State.PRESENT:
        return SEEN if observation.sure >= 1.0 else Likelihood.of(observation.sure)
    return SEEN_NOT_THERE if observation.sure >= 1.0 else Likelihood.of(1.0 - observation.sure)


def gather(
    observations: Mapping[Finding, Observation],
    conclusions: InferenceResult,
    linked: Container[str],
) -> dict[str, Likelihood]:
    """Evidence by finding id, each observation heard once.

    A derived finding speaks only where nothing it was derived from, near or far, speaks
    already: two statements resting on one observation are one witness. Derived both ways, it
    is silent.
    """
    evidence = {
        f.id: of_report(r)
        for f, r in observations.items()
        if f.kind is Kind.SEEN and f.id in linked
    }
    heard = _heard(evidence, observations, conclusions, linked)
    derived: dict[Finding, Observation | None] = {}
    for conclusion, trace in conclusions.derived.items():
        finding = conclusion.finding
        if finding in observations or finding.id not in linked:
            continue
        if heard.intersection(trace.premises):
            continue
        if trace.premises and all(p.kind is Kind.LAYOUT for p in trace.premises):
            continue  # a part that is not there was not looked at
        observation = Observation(conclusion.state, conclusion.sure)
        old = derived.get(finding, observation)
        if old is None or old.state is not observation.state:
            derived[finding] = None
        else:
            derived[finding] = max(old, observation, key=lambda r: r.sure)
    evidence.update((f.id, of_report(r)) for f, r in derived.items() if r is not None)
    return evidence


def _heard(
    evidence: Container[str],
    observations: Mapping[Finding, Observation],
    conclusions: InferenceResult,
    linked: Container[str],
) -> set[Finding]:
    """Findings that speak, that something they rest on speaks for, or that rest on such a one."""
    heard = {f for f in observations if f.id in evidence}
    derived = {c: t for c, t in conclusions.derived.items() if c.finding not in observations}
    heard |= {c.finding for c in derived if c.finding.id in linked}
    grown = True
    while grown:
        more = {c.finding for c, t in derived.items() if heard.intersection(t.premises)} - heard
        heard |= more
        grown = bool(more)
    return heard
