"""The one road: a case comes in, one frozen answer comes out.

Imported by whatever shows an answer or goes on from one; prints nothing, asks nothing, writes
nothing.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from diagnose.case.case import Case
from diagnose.circuit.survey_evidence import drop_reading_findings, enough_for_survey
from diagnose.inference import causegraph
from diagnose.inference.cause_sets import Explanation, best_sets
from diagnose.inference.causegraph import Graph
from diagnose.inference.chaining import InferenceResult, Observation, infer
from diagnose.inference.contradictions import by_derivation, by_odds
from diagnose.inference.elimination import Posterior, TooEntangledError, posterior
from diagnose.inference.evidence import gather
from diagnose.inference.explain import Weight, unexplained, weights
from diagnose.inference.leave_one_out import Without, leave_each_out
from diagnose.inference.network import Likelihood, Network
from diagnose.inference.outcomes import Outcome, Supposed, outcomes
from diagnose.planning.access_tree import AccessTree, Pace
from diagnose.planning.choosing import SURE, Chooser
from diagnose.planning.options import Choice, Option, PlanState
from diagnose.planning.outcome_tables import OutcomeTables
from diagnose.planning.precedence import Precedence
from diagnose.planning.single_cause import SingleCauseModel, single_cause_model
from knowledge.access import Opening, openings_for
from knowledge.book import Book
from knowledge.circuit.conditions import (
    PRESSURE_GONE,
    PRESSURE_HIGH,
    PRESSURE_LOW,
    PRESSURE_UNSTEADY,
)
from knowledge.model import Cause, Condition, Finding, Severity, Stage, State
from knowledge.rule_api import Alarm, Contradiction
from knowledge.work import Access

if TYPE_CHECKING:
    from diagnose.circuit.survey import Survey

#: true faults of pressure, as against a gauge that lies
TRUE_PRESSURE = (PRESSURE_LOW, PRESSURE_GONE, PRESSURE_UNSTEADY, PRESSURE_HIGH)
CERTAIN = 0.9
LIKELY = 0.5
#: how many causes have their reasons told: the more entangled the case, the fewer
EXPLAINED = ((400_000, 5), (1_200_000, 3))


@dataclass(frozen=True, slots=True)
class Ranked:
    """A cause with its probability now and before any evidence."""

    cause: Cause
    probability: float
    prior: float


@dataclass(frozen=True)
class Diagnosis:
    """Everything that follows from one case, each part computed when first asked for."""

    book: Book
    case: Case
    up_to: Stage = Stage.OPENED
    learned: Mapping[str, float] | None = None  #: a shop's factor on the rate of each cause

    @cached_property
    def conclusions(self) -> InferenceResult:
        """What the rules conclude."""
        return infer(self.book.statements, self.case.facts(self.up_to))

    @cached_property
    def graph(self) -> Graph:
        """The cause graph of this case."""
        return causegraph.build(self.book.causes, self.conclusions, self.learned)

    @cached_property
    def network(self) -> Network:
        """The cause graph as numbers."""
        return causegraph.as_network(self.graph)

    @cached_property
    def _heard(self) -> tuple[dict[str, Likelihood], Posterior, tuple[str, ...]]:
        """Evidence, posterior, and what had to be left out to keep the sum possible."""
        evidence = self._gathered()
        left_out: list[str] = []
        while True:
            try:
                return evidence, posterior(self.network, evidence), tuple(left_out)
            except TooEntangledError:
                busiest = max(
                    (n for n, e in evidence.items() if e.if_present > e.if_absent),
                    key=lambda n: (len(self.network.parents.get(n, ())), n),
                )
                left_out.append(busiest)
                evidence = {n: e for n, e in evidence.items() if n != busiest}

    def _gathered(self) -> dict[str, Likelihood]:
        """The findings that speak; a survey of the readings in place of what is said of them."""
        observations = self.case.facts(self.up_to).observations
        if self.survey is None:
            return gather(observations, self.conclusions, self.graph)
        heard = gather(
            observations, drop_reading_findings(self.conclusions, observations), self.graph
        )
        by = {n: e for n, e in self.survey.likelihoods.items() if n in self.graph}
        return {**heard, **by}

    @cached_property
    def survey(self) -> Survey | None:
        """The hydraulic survey, where the readings are enough for one; loads the physics then."""
        readings = self.case.facts(self.up_to).readings
        if not enough_for_survey(self.case, readings):
            return None
        from diagnose.circuit.survey import survey

        return survey(self.case, self.book, readings)

    @property
    def evidence(self) -> dict[str, Likelihood]:
        """Findings that speak, with their likelihoods."""
        return self._heard[0]

    @property
    def posterior(self) -> Posterior:
        """Exact marginals and the evidence's log probability."""
        return self._heard[1]

    @property
    def effort(self) -> int:
        """How many numbers one sweep of this case goes through."""
        return self.posterior.effort

    def belief(self, name: str) -> float:
        """P(node | evidence) of any cause, condition or finding of the graph."""
        if name in self.posterior.marginal:
            return self.posterior.marginal[name]
        asked = {**self.evidence, name: Likelihood(1.0, 1.0)}
        return posterior(self.network, asked).marginal[name]

    @property
    def left_out(self) -> tuple[str, ...]:
        """Findings left out because together they would have been too entangled."""
        return self._heard[2]

    @cached_property
    def loss_is_real(self) -> bool:
        """Whether a true fault of pressure is as good as certain, whatever the gauge does."""
        chance = max(self.posterior.marginal.get(c.id, 0.0) for c in TRUE_PRESSURE)
        return chance >= CERTAIN

    @cached_property
    def ranking(self) -> tuple[Ranked, ...]:
        """Every cause this engine can have, likeliest first.

        Where the loss is real, what can only make the gauge lie explains none of it: such
        causes keep their probability and stand after those that do.
        """
        harmless = self.harmless if self.loss_is_real else frozenset()
        rows = (
            Ranked(self.book.causes[c], self.posterior.marginal[c], prior)
            for c, prior in self.network.prior.items()
        )
        return tuple(
            sorted(rows, key=lambda r: (r.cause.id in harmless, -r.probability, r.cause.id))
        )

    @cached_property
    def harmless(self) -> frozenset[str]:
        """Causes that no way leads from to a true fault of pressure."""
        above = self.network.ancestors({c.id for c in TRUE_PRESSURE if c.id in self.graph})
        return frozenset(c for c in self.network.prior if c not in above)

    @cached_property
    def explanations(self) -> tuple[Explanation, ...]:
        """The best few sets of causes."""
        return best_sets(
            self.network,
            self.evidence,
            self.posterior.marginal,
            self.posterior.log_evidence,
            spent=self.effort,
        )

    @cached_property
    def alarms(self) -> tuple[Alarm, ...]:
        """What must be done now, gravest first; without what somebody's word has taken back."""
        grave, observations = list(Severity), self.case.facts(self.up_to).observations
        there = {f for f, report in observations.items() if report.state is State.PRESENT}
        return tuple(
            sorted(
                (a for a in self.conclusions.alarms if a.until not in there),
                key=lambda a: (grave.index(a.severity), a.says),
            )
        )

    @property
    def may_run(self) -> bool:
        """Whether no alarm forbids running the engine."""
        return all(a.severity is Severity.CARE for a in self.alarms)

    @cached_property
    def contradictions(self) -> tuple[Contradiction, ...]:
        """What does not fit together: by rule, by derivation, by probability."""
        found = list(self.conclusions.contradictions)
        found += by_derivation(self.conclusions, self.case.facts(self.up_to).observations)
        told = {f for c in found for f in c.findings}
        if len(self.evidence) > 1:  # one alone has no rest to fit
            weight = self.posterior.log_evidence
            found += by_odds(self.evidence, self.book.findings, self._without, weight, told)
        return tuple(found)

    def weights(self, causes: Collection[str]) -> dict[str, tuple[Weight, ...]]:
        """For and against each of these causes, in decibans."""
        without = self._without
        if not set(causes) <= set(self.explained):
            without = leave_each_out(self.network, self.evidence, tuple(causes), self.effort)
        return weights(without, self.posterior.marginal, self.graph, tuple(causes))

    @cached_property
    def explained(self) -> tuple[str, ...]:
        """The causes whose reasons are worked out: the likeliest few."""
        many = next((n for most, n in EXPLAINED if self.effort <= most), 2)
        return tuple(r.cause.id for r in self.ranking[:many])

    @cached_property
    def _without(self) -> dict[str, Without]:
        """What would be believed with each finding left out."""
        return leave_each_out(self.network, self.evidence, self.explained, self.effort)

    @cached_property
    def unexplained(self) -> tuple[Finding, ...]:
        """Findings no listed cause explains better than chance."""
        names = unexplained(self.network, self.evidence, self.posterior.marginal)
        return tuple(self.book.findings[n] for n in names if n in self.book.findings)

    @cached_property
    def damage(self) -> tuple[tuple[Condition, float], ...]:
        """Harm that has more likely than not been done, in the order it came about."""
        harmed = [c for c in self.book.conditions.values() if c.damage and c.id in self.graph]
        chance = {c: self.posterior.marginal.get(c.id, 0.0) for c in harmed}
        return tuple((c, p) for c, p in chance.items() if p >= LIKELY)

    @cached_property
    def damage_chain(self) -> tuple[str, ...]:
        """The likeliest way from the first cause to the last of the harm."""
        if not self.damage:
            return ()
        first, last = self.ranking[0].cause.id, self.damage[-1][0].id
        return tuple(causegraph.chain(self.graph, first, last))

    @cached_property
    def single_cause_model(self) -> SingleCauseModel:
        """What each likely cause alone would show."""
        return single_cause_model(self.network, self.posterior.marginal)

    @cached_property
    def answered(self) -> frozenset[Finding]:
        """Findings asked about or derived: no need to ask."""
        return self.case.answered() | {d.finding for d in self.conclusions.derived}

    @cached_property
    def openings(self) -> Mapping[Access, Opening]:
        """The tree of access for this layout."""
        features = self.case.features
        return openings_for(lambda f: features.get(f) is State.PRESENT)

    @cached_property
    def opened(self) -> frozenset[Access]:
        """What must be open already, judging by what has been seen inside."""
        seen = {s.finding for s in self.case.sightings if s.stage is Stage.OPENED and s.observation}
        out: frozenset[Access] = frozenset()
        for finding in seen:
            ways = {i.access for i in self.book.inspections.values() if finding in i.reveals}
            if len(ways) == 1:
                out |= self.tree.closure(*ways)
        return out

    @cached_property
    def tree(self) -> AccessTree:
        """What must be open before what, for a practised hand with the engine in its place."""
        return AccessTree(self.openings)

    @cached_property
    def plan_state(self) -> PlanState:
        """Where the job stands, for planning."""
        return PlanState(self.single_cause_model.weight, self.answered, self.opened)

    def chooser(
        self,
        pace: Pace | None = None,
        until: float = SURE,
        most_minutes: float | None = None,
        to_see: bool = False,
    ) -> Chooser:
        """What chooses checks for this case; none that runs the engine under a stop alarm."""
        checks = self.book.inspections.values()
        features = (f for f, state in self.case.features.items() if state is State.PRESENT)
        return Chooser(
            self._proofs if to_see else self.outcome_tables,
            self.tree if pace is None else AccessTree(self.openings, pace),
            tuple(i for i in checks if self.may_run or not i.needs_running),
            Precedence(frozenset(features)),
            until,
            most_minutes,
            to_see,
        )

    @cached_property
    def outcome_tables(self) -> OutcomeTables:
        """What every check would show."""
        return OutcomeTables(self.single_cause_model)

    @cached_property
    def _proofs(self) -> OutcomeTables:
        """The same with only what the likeliest cause itself shows to somebody who looks."""
        first, findings = self.ranking[0].cause.id, self.book.findings
        direct = {
            name: self.single_cause_model.shows[name]
            for name, parents in self.network.parents.items()
            if first in parents and name in findings and findings[name].stage is not Stage.KNOWN
        }
        return (
            OutcomeTables(replace(self.single_cause_model, shows=direct))
            if direct
            else self.outcome_tables
        )

    @cached_property
    def choice(self) -> Choice | None:
        """The best next check; None where nothing that is left tells anything."""
        return self.chooser().choose(self.plan_state)

    def outcomes(self, step: Option, how_many: int = 3) -> tuple[Outcome, ...]:
        """What the likeliest outcomes of a check would do to the ranking."""
        how_many = how_many if self.effort <= EXPLAINED[0][0] else 1
        shown = [Supposed(f, {f: Observation(State.PRESENT)}) for f in step.findings[:how_many]]
        nothing = Supposed(None, {f: Observation(State.ABSENT) for f in step.findings})
        return tuple(self._suppose([*shown, nothing]))

    def either_way(self, finding: Finding) -> dict[str, Outcome]:
        """What a yes and what a no to one question would do; empty where the sum is too large."""
        yes = Supposed(finding, {finding: Observation(State.PRESENT)})
        no = Supposed(None, {finding: Observation(State.ABSENT)})
        return dict(zip(("yes", "no"), self._suppose([yes, no]), strict=False))

    def _suppose(self, supposed: list[Supposed]) -> list[Outcome]:
        return outcomes(self.network, self.evidence, self.posterior, supposed, self.book.causes)
