"""The node of the cause graph through which gauge readings are evidence of conditions."""

from __future__ import annotations

from math import exp

import pytest
from networkx import DiGraph

from diagnose.inference.causegraph import (
    MISFIT,
    MOST_RATIO,
    READINGS,
    Graph,
    add_readings,
    as_network,
    chain,
)
from diagnose.inference.elimination import posterior
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Likelihood, Network


@pytest.mark.parametrize("ratio", [1.5, 6.0, 20.0, MOST_RATIO])
def test_a_condition_alone_keeps_its_likelihood_ratio(ratio: float) -> None:
    """One condition explains the readings by its ratio; two explain them once, not once each."""
    graph: Graph = DiGraph()
    for name in ("one", "two"):
        graph.add_node(name, layer="condition", says=name, leak=0.01)
    add_readings(graph, {"one": ratio, "two": ratio})
    network = as_network(graph)
    before = posterior(network, {"one": Likelihood(1.0, 1.0), "two": SEEN_NOT_THERE})
    after = posterior(network, {READINGS: SEEN, "two": SEEN_NOT_THERE})
    assert odds(after.marginal["one"]) / odds(before.marginal["one"]) == pytest.approx(ratio)
    both = {"one": SEEN, "two": SEEN}
    neither = {"one": SEEN_NOT_THERE, "two": SEEN_NOT_THERE}
    explained, unexplained = (
        posterior(network, {**state, READINGS: SEEN}).log_evidence
        - posterior(network, state).log_evidence
        for state in (both, neither)
    )
    assert ratio < exp(explained - unexplained) < 2 * ratio


@pytest.mark.parametrize("ratio", [0.02, 0.1, 0.5, 0.85])
def test_a_condition_that_does_not_fit_keeps_its_ratio_and_two_count_once(ratio: float) -> None:
    """Two misfits of one cause are one misfit: the readings were taken once."""
    network = as_network(with_readings({"one": ratio, "two": ratio}))
    assert raises(network, "one", "two") == pytest.approx(ratio)
    assert raises(network, "two", "one") == pytest.approx(ratio)
    neither = {"one": SEEN_NOT_THERE, "two": SEEN_NOT_THERE}
    both = {"one": SEEN, "two": SEEN}
    assert exp(shown(network, both) - shown(network, neither)) == pytest.approx(ratio)


@pytest.mark.parametrize("milder", [0.1, 0.3, 0.6])
def test_several_misfits_count_for_no_more_than_the_worst(milder: float) -> None:
    worst = 0.05
    network = as_network(with_readings({"one": milder, "two": worst, "three": milder}))
    none, every = dict.fromkeys(NAMES, SEEN_NOT_THERE), dict.fromkeys(NAMES, SEEN)
    together = exp(shown(network, every) - shown(network, none))
    assert together >= worst * (1 - 1e-9)
    assert raises(network, "one", "two", "three") == pytest.approx(milder)


def test_what_fits_and_what_does_not_share_one_node() -> None:
    """The node is the only evidence; what is indifferent has no link to it."""
    graph = with_readings({"one": 20.0, "two": 0.1, "three": 0.97})
    assert set(graph.predecessors(READINGS)) == {"one", MISFIT}
    assert set(graph.predecessors(MISFIT)) == {"two"}
    assert not list(graph.successors("three"))
    network = as_network(graph)
    assert raises(network, "one", "two", "three") == pytest.approx(20.0)
    assert raises(network, "two", "one", "three") == pytest.approx(0.1)
    assert chain(graph, "two", READINGS) == [], "a misfit brings nothing about"


def test_readings_that_say_nothing_are_no_evidence() -> None:
    assert READINGS not in with_readings({"one": 1.0, "two": 0.95})


NAMES = ("one", "two", "three")


def with_readings(ratios: dict[str, float]) -> Graph:
    """A graph of three conditions, and the readings with these likelihood ratios."""
    graph: Graph = DiGraph()
    for name in NAMES:
        graph.add_node(name, layer="condition", says=name, leak=0.01)
    add_readings(graph, ratios)
    return graph


def raises(network: Network, name: str, *absent: str) -> float:
    """The factor by which the readings raise the odds of a condition, others absent."""
    others: dict[str, Likelihood] = dict.fromkeys(absent, SEEN_NOT_THERE)
    before = posterior(network, {name: Likelihood(1.0, 1.0), **others})
    after = posterior(network, {READINGS: SEEN, **others})
    return odds(after.marginal[name]) / odds(before.marginal[name])


def shown(network: Network, state: dict[str, Likelihood]) -> float:
    """The log probability of the readings in a state of the conditions."""
    with_them = posterior(network, {**state, READINGS: SEEN}).log_evidence
    return with_them - posterior(network, state).log_evidence


def odds(chance: float) -> float:
    return chance / (1.0 - chance)
