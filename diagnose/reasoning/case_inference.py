"""Inference for one case: rules, cause graph, network, evidence and exact posterior."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, NamedTuple

from diagnose.case.case import Case
from diagnose.case.pressure_since import shown_since
from diagnose.circuit.survey_evidence import drop_reading_findings, enough_for_survey
from diagnose.inference import causegraph
from diagnose.inference.causegraph import Graph
from diagnose.inference.chaining import Facts, InferenceResult, Observation, infer
from diagnose.inference.elimination import (
    Posterior,
    TooEntangledError,
    effort,
    posterior,
    prior_marginals,
)
from diagnose.inference.evidence import gather
from diagnose.inference.network import SEEN, Evidence, Likelihood, Network
from diagnose.reasoning.proved import proved_faults, shown_causes, surely_present
from knowledge.book import Book
from knowledge.circuit.conditions import (
    PRESSURE_GONE,
    PRESSURE_HIGH,
    PRESSURE_LOW,
    PRESSURE_UNSTEADY,
)
from knowledge.faults import Fault
from knowledge.model import Cause, Finding, Stage, State
from knowledge.pressure.direct_gauge import (
    DIRECT_GAUGE_LOW,
    DIRECT_GAUGE_ZERO,
    PRESSURE_SHOWN_SINCE,
)
from knowledge.pressure.proof_of_loss import PROOF_OF_LOSS

if TYPE_CHECKING:
    from diagnose.circuit.survey import Survey

#: true faults of pressure, as against a wrong gauge
TRUE_PRESSURE = (PRESSURE_LOW, PRESSURE_GONE, PRESSURE_UNSTEADY, PRESSURE_HIGH)
LOW_ON_TRUSTED_GAUGE = (DIRECT_GAUGE_LOW, DIRECT_GAUGE_ZERO)
CERTAIN = 0.9
BEGAN = 0.9  #: probability from which it surely began at a cause
MOST_ENTRIES = 10_000_000  #: table entries of an exact sum: about a second
EXPLAINS = 0.5  #: a cause this probable explains a state, so that no other need stand for it


@dataclass(frozen=True, slots=True)
class Ranked:
    """A cause with its posterior and prior probability, both from 0 to 1.

    ``began``: the probability that it began there; less than ``probability`` for a cause named
    after a state that others can bring about.
    """

    cause: Cause
    probability: float
    prior: float
    began: float
    shown: bool = False  #: a found fault shows it, whatever else the evidence says


class Solution(NamedTuple):
    """Evidence, the exact posterior given it, and the ids of findings left out of it."""

    evidence: dict[str, Likelihood]
    posterior: Posterior
    left_out: tuple[str, ...]


def proves_loss(facts: Facts, result: InferenceResult) -> bool:
    """Whether anything seen, heard or measured, or derived from it, shows that pressure was lost."""
    seen = {f for f, o in facts.observations.items() if o.state is State.PRESENT and o.sure >= 0.5}
    derived = {c.finding for c in result.derived if c.state is State.PRESENT}
    return not (seen | derived - facts.observations.keys()).isdisjoint(PROOF_OF_LOSS)


@dataclass(frozen=True)
class CaseInference:
    """What follows from one case; each part is computed when first used."""

    book: Book
    case: Case
    up_to: Stage = Stage.OPENED
    learned: Mapping[str, float] | None = None  #: a shop's factor on the rate of each cause

    @cached_property
    def facts(self) -> Facts:
        """Observations, readings and measurements of the case up to its stage, in SI units.

        A trusted gauge that showed enough after the fall counts as pressure shown since.
        """
        facts = self.case.facts(self.up_to)
        if PRESSURE_SHOWN_SINCE in facts.observations or not shown_since(self.case):
            return facts
        shown = {PRESSURE_SHOWN_SINCE: Observation(State.PRESENT)}
        return replace(facts, observations={**facts.observations, **shown})

    @cached_property
    def result(self) -> InferenceResult:
        """The conclusions of all rules."""
        return infer(self.book.statements, self.facts)

    @cached_property
    def graph(self) -> Graph:
        """The cause graph of this case."""
        graph = causegraph.build(self.book.causes, self.result, self.learned)
        if self.survey is not None:
            fits = self.survey.likelihoods.items()
            causegraph.add_readings(graph, {n: e.if_present / e.if_absent for n, e in fits})
        return graph

    @cached_property
    def network(self) -> Network:
        """The cause graph as a leaky noisy-OR network.

        Inhibitors couple the causes even of a finding that was not there. Where that makes the
        sum too large, such an absence counts as if nothing inhibited the finding: close, because
        what inhibits it is seldom likely too, where leaving a finding out would lose it.
        """
        network = causegraph.as_network(self.graph)
        absent = {n for n, e in self._gathered.items() if not e.if_present}
        if absent.isdisjoint(network.inhibitors) or _affordable(network, self._gathered):
            return network
        kept = {n: z for n, z in network.inhibitors.items() if n not in absent}
        return replace(network, inhibitors=kept)

    @cached_property
    def survey(self) -> Survey | None:
        """The hydraulic survey, or None without enough readings; loads the physics if needed."""
        readings = self.facts.readings
        if not enough_for_survey(self.case, readings):
            return None
        from diagnose.circuit.survey import survey

        return survey(self.case.up_to(self.up_to), self.book, readings)

    @property
    def evidence(self) -> dict[str, Likelihood]:
        """Likelihoods by the id of the finding or, from a survey, of the condition."""
        return self._solution.evidence

    @property
    def posterior(self) -> Posterior:
        """Exact marginals and the log probability of the evidence."""
        return self._solution.posterior

    @property
    def left_out(self) -> tuple[str, ...]:
        """Ids of findings left out because the exact sum would be too large with them."""
        return self._solution.left_out

    def belief(self, name: str) -> float:
        """P(node | evidence) of a cause, condition or finding of the graph, by id."""
        if name in self.posterior.marginal:
            return self.posterior.marginal[name]
        asked = {**self.evidence, name: Likelihood(1.0, 1.0)}
        return posterior(self.network, asked).marginal[name]

    def node_of(
        self,
        cause: str,
        evidence: Evidence | None = None,
        marginal: Mapping[str, float] | None = None,
    ) -> str:
        """Id of the node whose probability is the figure of a cause, given by its id.

        Its own where no effect of the state it is named after was seen, or where it gives way to
        another cause that explains it. ``evidence``, ``marginal``: those of the case, or others
        with their posterior.
        """
        evidence = self.evidence if evidence is None else evidence
        marginal = self.posterior.marginal if marginal is None else marginal
        findings = self.book.findings
        seen = {n for n, e in evidence.items() if n in findings and e.if_present > e.if_absent}
        node = causegraph.node_of(self.book.causes[cause], self.graph, seen)
        if node != cause and self.book.causes[cause].gives_way:
            others = (n for n in self.graph.predecessors(node) if n != cause)
            if any(marginal[n] >= EXPLAINS for n in others if n in self.book.causes):
                return cause
        return node

    @cached_property
    def ranking(self) -> tuple[Ranked, ...]:
        """Every cause this engine can have, most probable first.

        Where the loss of pressure is real, causes that only make the gauge wrong do not explain
        it: they keep their probability and come after all others. A cause at which it surely began
        comes before the state it brought about, however sure that is. What a found fault shows
        comes before what nobody has found; beside a found fault, or a trusted gauge that
        reads low, that nothing is wrong comes last.
        """
        harmless = self.harmless if self.loss_is_real else frozenset()
        priors = prior_marginals(self.network)
        proved = proved_in(self)
        bare = [_ranked(self, self.book.causes[c], p) for c, p in priors.items()]
        shown = shown_causes(proved, self.graph, {r.cause.id: r.probability for r in bare})
        rows = [replace(r, shown=r.cause.id in shown) for r in bare]
        faulty = any(not fault.damage for fault in proved) or trusted_gauge_is_low(self)
        return tuple(
            sorted(
                rows,
                key=lambda r: (
                    r.cause.id in harmless,
                    faulty and r.cause.no_fault,
                    r.began < BEGAN,
                    not r.shown,
                    -r.probability,
                    r.cause.id,
                ),
            )
        )

    @cached_property
    def loss_is_real(self) -> bool:
        """Whether a true fault of pressure is nearly certain, even if the gauge is wrong too.

        It needs proof besides the panel's reading: a direct gauge, clatter, knock or metal.
        """
        chance = max(self.posterior.marginal.get(c.id, 0.0) for c in TRUE_PRESSURE)
        return chance >= CERTAIN and proves_loss(self.facts, self.result)

    @cached_property
    def harmless(self) -> frozenset[str]:
        """Ids of the causes that cannot lead to a true fault of pressure."""
        above = self.network.ancestors({c.id for c in TRUE_PRESSURE if c.id in self.graph})
        return frozenset(c for c in self.network.prior if c not in above)

    @cached_property
    def _gathered(self) -> dict[str, Likelihood]:
        """All evidence; a survey replaces the findings derived from its readings."""
        observations = self.facts.observations
        if self.survey is None:
            return gather(observations, self.result, self.graph)
        others = gather(observations, drop_reading_findings(self.result, observations), self.graph)
        readings = {causegraph.READINGS: SEEN} if causegraph.READINGS in self.graph else {}
        return {**others, **readings}

    @cached_property
    def _solution(self) -> Solution:
        """Evidence and posterior; drops the finding with most parents while the sum is too large."""
        evidence = self._gathered
        left_out: list[str] = []
        while True:
            try:
                return Solution(evidence, posterior(self.network, evidence), tuple(left_out))
            except TooEntangledError:
                busiest = _busiest(self.network, evidence)
                left_out.append(busiest)
                evidence = {n: e for n, e in evidence.items() if n != busiest}


def _affordable(network: Network, evidence: Evidence) -> bool:
    """Whether the exact sum of this evidence is of ``MOST_ENTRIES`` at most."""
    try:
        return effort(network, evidence) <= MOST_ENTRIES
    except TooEntangledError:
        return False


def proved_in(known: CaseInference) -> dict[Fault, tuple[Finding, ...]]:
    """The faults that something seen or measured proves, with what does, in the book's order."""
    return proved_faults(known.book.faults.values(), surely_present(known.facts, known.result))


def before_evidence(known: CaseInference, name: str) -> float:
    """P(node) without any evidence, by id."""
    return posterior(known.network, {name: Likelihood(1.0, 1.0)}).marginal[name]


def trusted_gauge_is_low(known: CaseInference) -> bool:
    """Whether a trusted gauge more likely than not reads low, or nothing."""
    derived = (d.finding for d in known.result.derived if d.state is State.PRESENT)
    seen = any(map(known.facts.has, LOW_ON_TRUSTED_GAUGE))
    return seen or any(f in LOW_ON_TRUSTED_GAUGE for f in derived)


def _ranked(known: CaseInference, cause: Cause, prior: float) -> Ranked:
    """A cause with its probability and that without evidence; of a found fault, of the fault."""
    node, began = known.node_of(cause.id), known.posterior.marginal[cause.id]
    if node == cause.id:
        return Ranked(cause, began, prior, began)
    return Ranked(cause, known.belief(node), before_evidence(known, node), began)


def _busiest(network: Network, evidence: Evidence) -> str:
    """The finding to leave out first: one that is present, with most parents."""

    def weight(name: str) -> tuple[bool, int, str]:
        given = evidence[name]
        return given.if_present > given.if_absent, len(network.parents.get(name, ())), name

    return max(evidence, key=weight)
