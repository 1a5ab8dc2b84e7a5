"""Ranking where size matters: long chains, large tables, unlikely reports."""

from __future__ import annotations

import math
import random
from itertools import combinations, pairwise

import networkx as nx
import pytest

from diagnose.inference.cause_sets import MOST_EFFORT, best_sets
from diagnose.inference.elimination import posterior
from diagnose.inference.leave_one_out import leave_each_out
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Evidence, Likelihood, Network
from diagnose.inference.ordering import (
    FEW,
    HUGE,
    LARGE,
    TIES,
    Order,
    best_order,
    neighbours,
    ordered,
    renumbered,
)
from tests.support.nets import enumerated


def chain(length: int) -> Network:
    """A cause and a row of conditions, each brought about by the one before it."""
    nodes = ["r", *(f"m{i}" for i in range(length))]
    parents = {later: {before: 0.9} for before, later in pairwise(nodes)}
    return Network({"r": 0.2}, dict.fromkeys(nodes[1:], 0.05), parents)


def said_of_all(net: Network, weight: float) -> Evidence:
    """The same thing of every node, twice as likely where it is there; ``weight`` is its scale."""
    return dict.fromkeys(net.leak, Likelihood(weight, 2 * weight))


@pytest.mark.parametrize("weight", [1e-6, 1e6])
def test_only_the_ratio_of_a_likelihood_counts(weight: float) -> None:
    """Hundreds of reports, each a millionth as likely: the same beliefs, no number runs out."""
    net = chain(300)
    plain = posterior(net, said_of_all(net, 0.5))
    scaled = posterior(net, said_of_all(net, 0.5 * weight))
    assert scaled.marginal == pytest.approx(plain.marginal, abs=1e-12)
    assert scaled.log_evidence == pytest.approx(plain.log_evidence + 300 * math.log(weight))


def test_a_long_chain_as_forward_and_backward_sums_give_it() -> None:
    """The sums of a hidden chain by hand (Rabiner 1989), scaled at every step."""
    length = 300
    net = chain(length)
    there = [0.05, 1 - 0.95 * 0.1]  # P(a condition | the one before it absent, present)
    forward = [(0.8, 0.2)]
    for _ in range(length):
        off, on = forward[-1]
        new = (off * (1 - there[0]) + on * (1 - there[1]), 2 * (off * there[0] + on * there[1]))
        forward.append((new[0] / sum(new), new[1] / sum(new)))
    backward = [(1.0, 1.0)]
    for _ in range(length):
        off, on = backward[-1]
        back = tuple(off * (1 - p) + 2 * on * p for p in there)
        backward.append((back[0] / sum(back), back[1] / sum(back)))
    found = posterior(net, said_of_all(net, 0.5)).marginal
    names = ["r", *net.leak]
    for name, ahead, behind in zip(names, forward, reversed(backward), strict=True):
        off, on = ahead[0] * behind[0], ahead[1] * behind[1]
        assert found[name] == pytest.approx(on / (off + on), abs=1e-12), name


@pytest.mark.parametrize(("fits", "many"), [(6, 6), (5, 5), (4, 4), (3, 3), (2, 2), (0, 2), (9, 6)])
def test_as_many_causes_as_the_effort_allows(fits: int, many: int) -> None:
    """All sets of n causes cost 2^n times one sum: two to six, the likeliest."""
    causes = [f"r{i}" for i in range(8)]
    links = {"f": {c: 0.9 - 0.05 * i for i, c in enumerate(causes)}}
    net = Network(dict.fromkeys(causes, 0.03), {"f": 0.01}, links)
    found = posterior(net, {"f": SEEN})
    spent = MOST_EFFORT >> fits
    sets = best_sets(
        net, {"f": SEEN}, found.marginal, found.log_evidence, how_many=1000, spent=spent
    )
    assert {c for one in sets for c in one.causes} == set(causes[:many])


@pytest.mark.parametrize("causes", [("a",), ("b",), ("a", "b"), ("c", "b")])
def test_an_absent_finding_of_causes_with_no_other_sign_is_left_out(
    causes: tuple[str, ...],
) -> None:
    """One cause with signs of its own, two without: the sum over all cases, with it and without."""
    net = Network(
        {"a": 0.2, "b": 0.3, "c": 0.1},
        {"f": 0.05, "g": 0.02},
        {"f": {"a": 0.7, "b": 0.6, "c": 0.9}, "g": {"a": 0.8}},
    )
    evidence = {"f": SEEN_NOT_THERE, "g": SEEN}
    without = leave_each_out(net, evidence, causes)
    for name, found in without.items():
        rest = {n: e for n, e in evidence.items() if n != name}
        marginal, chance = enumerated(net, rest)
        assert found.marginal == pytest.approx({c: marginal[c] for c in causes})
        assert found.log_evidence == pytest.approx(math.log(chance))


# --------------------------------------------------------------------------- order of summing out


def random_pairs(seed: int, variables: int, pairs: int) -> tuple[tuple[int, int], ...]:
    """Tables of two variables, at random, every variable in one at least."""
    dice = random.Random(seed)
    found = {(v, (v + 1) % variables) for v in range(variables)}
    while len(found) < pairs:
        one, other = dice.sample(range(variables), 2)
        found.add((one, other))
    return tuple(sorted(found))


@pytest.mark.parametrize("seed", range(30))
def test_each_variable_summed_out_has_the_least_neighbours_and_the_first_the_least_fill(
    seed: int,
) -> None:
    """By definition, on a networkx graph that fills in as variables go."""
    scopes = random_pairs(seed, 12, 20)
    graph: nx.Graph[int] = nx.Graph(scopes)

    def cost(v: int) -> tuple[int, int]:
        around = list(graph[v])
        return len(around), sum(not graph.has_edge(a, b) for a, b in combinations(around, 2))

    order = best_order(scopes, 12)
    assert cost(order[0][0]) == min(map(cost, graph))
    for v, around in order:
        assert set(around) == set(graph[v])
        assert len(around) == min(map(len, map(graph.__getitem__, graph)))
        graph.add_edges_from(combinations(around, 2))
        graph.remove_node(v)
    assert not graph


@pytest.mark.parametrize("seed", range(4))
def test_in_an_entangled_case_the_cheapest_of_several_orders_is_taken(seed: int) -> None:
    """The numbers gone through, counted over again for every mix of neighbours and fill."""
    scopes = random_pairs(seed, 60, 150)

    def numbers(order: Order) -> int:
        return sum(2 ** (1 + len(around)) for _, around in order)

    first, _, rest = ordered(neighbours(scopes, 60), (1, 0), most=FEW)
    core = list(renumbered(rest)[1])
    every = [ordered(core, mix)[0] for mix in ((1, 0), (2, 1), (3, 1), (4, 1))]
    if min(map(numbers, every)) > HUGE:
        every += [
            ordered(core, mix, tie=tie)[0]
            for tie in TIES
            for mix in ((1, 2), (2, 1), (3, 1), (3, 2))
        ]
    best = min(map(numbers, every))
    assert numbers(best_order(scopes, 60)) == numbers(first) + best
    assert max(map(numbers, every)) > LARGE
