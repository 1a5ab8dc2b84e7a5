"""Reasons for a diagnosis: weights, cause sets, contradictions, damage, unexplained findings."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from functools import cached_property, partial

from diagnose.inference import causegraph
from diagnose.inference.cause_sets import Explanation, best_sets
from diagnose.inference.contradictions import by_derivation, by_odds
from diagnose.inference.explain import Weight, unexplained, weights
from diagnose.inference.leave_one_out import Without, leave_each_out
from diagnose.inference.network import Likelihood
from diagnose.reasoning.case_inference import CaseInference, before_evidence
from knowledge.alarm import Contradiction
from knowledge.model import Condition, Finding

LIKELY = 0.5
#: (largest effort, number of causes explained): the larger the sum, the fewer
EXPLAINED = ((400_000, 5), (1_200_000, 3))


def _begun_at(cause: str, weight: Weight) -> Weight:
    """The weight of a cause's state, its path begun at the cause."""
    return replace(weight, chain=(cause, *weight.chain)) if weight.chain else weight


@dataclass(frozen=True)
class Reasons:
    """The reasons for the ranking of one case; each part is computed when first used."""

    inference: CaseInference

    @cached_property
    def explained(self) -> tuple[str, ...]:
        """Ids of the most probable causes, whose weights are computed: five at most."""
        effort = self.inference.posterior.effort
        many = next((n for most, n in EXPLAINED if effort <= most), 2)
        return tuple(r.cause.id for r in self.inference.ranking[:many])

    def weights(self, causes: Collection[str]) -> dict[str, tuple[Weight, ...]]:
        """The findings for and against each of these causes (ids), in decibans."""
        known, without = self.inference, self._without
        nodes = {c: known.node_of(c) for c in causes}
        if not set(causes) <= set(self.explained):
            without = self._leaving_out(tuple(nodes.values()))
        belief = {n: known.belief(n) for n in nodes.values()}
        found = weights(without, belief, known.graph, tuple(nodes.values()))
        return {
            c: found[n] if n == c else tuple(_begun_at(c, w) for w in found[n])
            for c, n in nodes.items()
        }

    def for_cause(self, cause: str) -> tuple[Weight, ...]:
        """The findings for and against one cause (id), strongest first, in decibans."""
        return self.weights([cause])[cause]

    @cached_property
    def explanations(self) -> tuple[Explanation, ...]:
        """The three most probable sets of causes."""
        known = self.inference
        return best_sets(
            known.network,
            known.evidence,
            known.posterior.marginal,
            known.posterior.log_evidence,
            spent=known.posterior.effort,
        )

    @cached_property
    def contradictions(self) -> tuple[Contradiction, ...]:
        """Entries that do not fit together: by rule, by derivation, by probability."""
        known = self.inference
        found = list(known.result.contradictions)
        found += by_derivation(known.result, known.facts.observations)
        named = {f for c in found for f in c.findings}
        if len(known.evidence) > 1:  # a single finding cannot contradict the others
            log_evidence = known.posterior.log_evidence
            findings = known.book.findings
            found += by_odds(
                known.evidence,
                findings,
                self._without,
                log_evidence,
                named,
                partial(before_evidence, known),
            )
        return tuple(found)

    @cached_property
    def unexplained(self) -> tuple[Finding, ...]:
        """Findings that chance explains better than any listed cause."""
        known = self.inference
        names = unexplained(known.network, known.evidence, known.posterior.marginal)
        return tuple(known.book.findings[n] for n in names if n in known.book.findings)

    @cached_property
    def damage(self) -> tuple[tuple[Condition, float], ...]:
        """Damage that is probable (0.5 or more), in the order in which it arises."""
        known = self.inference
        harmed = [c for c in known.book.conditions.values() if c.damage and c.id in known.graph]
        chance = {c: known.posterior.marginal.get(c.id, 0.0) for c in harmed}
        return tuple((c, p) for c, p in chance.items() if p >= LIKELY)

    @cached_property
    def damage_chain(self) -> tuple[str, ...]:
        """Node ids of the most probable path from the first cause to the last damage."""
        if not self.damage:
            return ()
        first, last = self.inference.ranking[0].cause.id, self.damage[-1][0].id
        return tuple(causegraph.chain(self.inference.graph, first, last))

    @cached_property
    def _without(self) -> dict[str, Without]:
        """The posterior of the explained causes without each finding in turn."""
        known = self.inference
        return self._leaving_out(tuple(known.node_of(c) for c in self.explained))

    def _leaving_out(self, nodes: Sequence[str]) -> dict[str, Without]:
        """The posterior of these nodes without each finding in turn.

        A state is kept in the sum by a likelihood that says nothing, even where no finding
        is left below it.
        """
        known = self.inference
        kept = {n: Likelihood(1.0, 1.0) for n in nodes if n not in known.network.prior}
        evidence = {**known.evidence, **{n: e for n, e in kept.items() if n not in known.evidence}}
        found = leave_each_out(known.network, evidence, nodes, known.posterior.effort)
        return {n: without for n, without in found.items() if n in known.evidence}
