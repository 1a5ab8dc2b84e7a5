"""Situations for tests: each case file, and the examples of rules and links, mixed."""

from __future__ import annotations

import random
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from diagnose.bookcheck.examples import facts_of
from diagnose.case.loading import load
from diagnose.inference import causegraph
from diagnose.inference.causegraph import Graph
from diagnose.inference.chaining import Facts, Observation, infer
from diagnose.inference.elimination import TooEntangledError, posterior
from diagnose.inference.evidence import gather
from diagnose.inference.network import Likelihood, Network
from knowledge.book import the_book
from knowledge.model import Finding, Measure, Reading
from knowledge.reports.shapes import Behaviour, EarlierWork, TrialMade

TESTS = Path(__file__).parents[1]
CASES = {
    p.stem: p
    for folder in (TESTS / "confirmed" / "cases", TESTS.parent / "cases")
    for p in sorted(folder.glob("*.toml"))
}


@dataclass(frozen=True)
class Situation:
    """One case taken all the way to numbers."""

    facts: Facts
    graph: Graph
    network: Network
    evidence: dict[str, Likelihood]


@cache
def facts_of_case(name: str) -> Facts:
    """The facts of a case file, everything learnt included."""
    book = the_book()
    return load(CASES[name], book).facts()


@cache
def situation(name: str) -> Situation:
    """A case file's graph, network and evidence."""
    return taken(facts_of_case(name))


def taken(facts: Facts) -> Situation:
    """Facts taken through rules, graph and evidence."""
    book = the_book()
    conclusions = infer(book.statements, facts)
    graph = causegraph.build(book.causes, conclusions)
    evidence = gather(facts.observations, conclusions, graph)
    network = causegraph.as_network(graph)
    while not _can_be_summed(network, evidence):  # as a case's inference does
        present = (n for n, e in evidence.items() if e.if_present > e.if_absent)
        busiest = max(present, key=lambda n: (len(network.parents.get(n, ())), n))
        evidence = {n: e for n, e in evidence.items() if n != busiest}
    return Situation(facts, graph, network, evidence)


def _can_be_summed(network: Network, evidence: dict[str, Likelihood]) -> bool:
    """Whether the exact sum stays within its bounds."""
    try:
        posterior(network, evidence)
    except TooEntangledError:
        return False
    return True


def mixed(seed: int, many: int = 6) -> Facts:
    """Several examples of rules and links combined, with a few unsure reports."""
    rng = random.Random(seed)
    examples = [e for s in the_book().statements for e in (*s.matches, *s.non_matches)]
    observations: dict[Finding, Observation] = {}
    readings: list[Reading] = []
    measures: dict[Measure, list[float]] = {}
    behaviours: list[Behaviour] = []
    trials: list[TrialMade] = []
    earlier: list[EarlierWork] = []
    for facts in map(facts_of, rng.sample(examples, many)):
        sure = rng.choice([1.0, 1.0, 0.7])
        observations |= {f: Observation(r.state, sure) for f, r in facts.observations.items()}
        readings += facts.readings
        behaviours += facts.behaviours
        trials += facts.trials
        earlier += facts.earlier
        for measure, values in facts.measures.items():
            measures.setdefault(measure, []).extend(values)
    return Facts(
        observations,
        readings,
        measures,
        behaviours=behaviours,
        trials=trials,
        earlier=earlier,
    )
