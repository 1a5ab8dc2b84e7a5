"""The node of the cause graph through which gauge readings are evidence of conditions."""

from __future__ import annotations

from math import exp

import pytest
from networkx import DiGraph

from diagnose.inference.causegraph import (
    MOST_RATIO,
    READINGS,
    Graph,
    add_readings,
    as_network,
)
from diagnose.inference.elimination import posterior
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Likelihood


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


def odds(chance: float) -> float:
    return chance / (1.0 - chance)
