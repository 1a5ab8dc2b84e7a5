"""Exact inference against pyAgrum, an independent library: random networks, every case, exports."""

from __future__ import annotations

import json
import math
import re
from pathlib import Path
from typing import TypeAlias

import networkx as nx
import numpy as np
import pyagrum as gum
import pytest

from diagnose.inference import causegraph
from diagnose.inference.causegraph import Graph
from diagnose.inference.elimination import posterior
from diagnose.inference.graph_formats import as_bif, as_dot, as_graphml, as_json, with_few_parents
from diagnose.inference.network import SEEN, Network
from tests.support.examples import one_in
from tests.support.nets import enumerated, random_evidence, random_net, restricted
from tests.support.pyagrum_oracle import (
    as_factors,
    as_much_as_fits,
    as_tables,
    asked,
    asked_of_factors,
)
from tests.support.situations import CASES, Situation, mixed, situation, taken

CLOSE = 1e-9
SINGLE = 1e-6  #: pyAgrum reads the numbers of a BIF file in single precision
#: cases whose whole field takes the library long (bullfinch: minutes): they run with the long suite
LARGEST = frozenset(
    [
        "bullfinch",
        "tern",
        "gannet",
        "A52",
        "crane_truck",
        "B22",
        "A20",
        "B29",
        "A39",
        "whimbrel",
        "generator",
    ]
)
WIDE = 20  #: variables in the library's largest table by default: a few seconds for all cases


Engine: TypeAlias = "gum.LazyPropagation | gum.ShaferShenoyMRFInference"


def assert_same(ours: dict[str, float], theirs: Engine, close: float = CLOSE) -> None:
    """Every marginal we have, the library has too."""
    assert ours == pytest.approx({n: float(theirs.posterior(n)[1]) for n in ours}, abs=close)


# ------------------------------------------------------------------------------ random networks


def compare(seed: int, roots: int, middles: int, leaves: int, fan_in: int) -> None:
    net = random_net(seed, roots, middles, leaves, fan_in)
    evidence = random_evidence(seed + 1, net)
    ours = posterior(net, evidence)
    theirs = asked(as_tables(net), evidence)
    assert_same(ours.marginal, theirs)
    assert math.exp(ours.log_evidence) == pytest.approx(theirs.evidenceProbability(), rel=1e-8)


@pytest.mark.parametrize("seed", one_in(2, range(200)))
def test_random_network(seed: int) -> None:
    """Roots, hidden nodes and leaves, evidence hard and uncertain on any of them."""
    compare(seed, 2 + seed % 9, seed % 7, 1 + seed % 11, fan_in=2 + seed % 5)


@pytest.mark.long
@pytest.mark.parametrize("first", range(1000, 3000, 50))
def test_many_more_random_networks(first: int) -> None:
    for seed in range(first, first + 50):
        compare(seed, 2 + seed % 17, seed % 11, 1 + seed % 23, fan_in=2 + seed % 6)


@pytest.mark.parametrize("seed", range(30))
def test_grouping_parents_changes_nothing(seed: int) -> None:
    """OR groups of two or three parents leave every marginal as it was."""
    net = random_net(seed, roots=6, middles=2, leaves=2, fan_in=8)
    evidence = random_evidence(seed, net)
    ours = posterior(net, evidence)
    for most in (2, 3):
        split = with_few_parents(net, most)
        assert max(len(split.above(n)) for n in split.order) <= most
        again = posterior(split, evidence)
        kept = {n: again.marginal[n] for n in ours.marginal}
        assert ours.marginal == pytest.approx(kept, abs=CLOSE)


# ------------------------------------------------------------------------------------ all cases


def compare_case(case: Situation, most: int) -> int:
    """The case with as many causes as full tables allow; how many that were."""
    belief = posterior(case.network, case.evidence).marginal
    ranked = sorted(case.network.prior, key=lambda c: -belief[c])
    part, split = as_much_as_fits(case.network, case.evidence, ranked, most)
    ours = posterior(part, case.evidence)
    theirs = asked(as_tables(split), case.evidence)
    assert_same(ours.marginal, theirs)
    assert ours.log_evidence == pytest.approx(math.log(theirs.evidenceProbability()), abs=1e-8)
    return len(part.prior)


@pytest.mark.parametrize("name", one_in(12, list(CASES)))
def test_case_with_its_likeliest_causes(name: str) -> None:
    """Full tables of the case's graph; causes the library cannot hold besides are left out."""
    assert compare_case(situation(name), WIDE) >= min(7, len(situation(name).network.prior))


@pytest.mark.long
@pytest.mark.parametrize("name", CASES)
def test_case_with_more_of_its_causes(name: str) -> None:
    """The same with tables of up to 24 variables."""
    compare_case(situation(name), 24)


@pytest.mark.parametrize(
    "name",
    [
        pytest.param(n, marks=pytest.mark.long if n in LARGEST or i % 4 else ())
        for i, n in enumerate(CASES)
    ],
)
def test_whole_case(name: str) -> None:
    """Every cause of the case, as signed factors in the library's own Markov-field engine."""
    case = situation(name)
    part = restricted(case.network, set(case.evidence))
    ours = posterior(case.network, case.evidence).marginal
    theirs = asked_of_factors(as_factors(part, case.evidence))
    assert_same({n: ours[n] for n in part.order if n in ours}, theirs)


@pytest.mark.parametrize("seed", one_in(2, range(6)))
def test_mixed_examples(seed: int) -> None:
    """Situations put together from examples of rules and links, some reports unsure."""
    compare_case(taken(mixed(seed)), WIDE)


@pytest.mark.long
@pytest.mark.parametrize("seed", range(6, 40))
def test_many_more_mixed_examples(seed: int) -> None:
    compare_case(taken(mixed(seed)), WIDE)


def test_signed_factors_are_the_same_network() -> None:
    """The signed split against full tables and against all states, where all three fit."""
    for seed in range(20):
        net = random_net(seed, roots=4, middles=2, leaves=4)
        evidence = random_evidence(seed, net)
        right, _ = enumerated(net, evidence)
        assert_same(right, asked_of_factors(as_factors(net, evidence)))
        assert_same(right, asked(as_tables(net), evidence))


# -------------------------------------------------------------------------------------- exports


@pytest.fixture(scope="module")
def whole() -> Graph:
    """The graph of a case about which nothing is known: the whole book."""
    return taken(mixed(0, 0)).graph


def read_bif(text: str, folder: Path) -> gum.BayesNet:
    path = folder / "causes.bif"
    path.write_text(text, "utf-8")
    return gum.loadBN(str(path))


def part_of(case: Situation, many: int = 9) -> tuple[Graph, Network]:
    """What ties a case's likeliest causes to its evidence."""
    belief = posterior(case.network, case.evidence).marginal
    best = sorted(case.network.prior, key=lambda c: -belief[c])[:many]
    graph = causegraph.around(case.graph, set(case.evidence), set(best))
    return graph, causegraph.as_network(graph)


@pytest.mark.parametrize("name", list(CASES)[::5])
def test_bif_gives_the_same_marginals(name: str, tmp_path: Path) -> None:
    case = situation(name)
    graph, network = part_of(case)
    evidence = {n: e for n, e in case.evidence.items() if n in graph}
    theirs = asked(read_bif(as_bif(graph, network), tmp_path), evidence)
    assert_same(posterior(network, evidence).marginal, theirs, SINGLE)


def test_bif_of_the_whole_book_loads(whole: Graph, tmp_path: Path) -> None:
    """Every word of the graph is a variable, and its table says what the rule says."""
    network = causegraph.as_network(whole)
    net = read_bif(as_bif(whole, network), tmp_path)
    assert set(whole) <= set(net.names())
    for cause, prior in network.prior.items():
        if cause not in network.fed:
            assert float(net.cpt(cause)[1]) == np.float32(prior)
    for name, links in network.parents.items():
        if len(network.above(name)) == 1 and name in network.leak:
            ((parent, strength),) = links.items()
            there = 1.0 - (1.0 - network.leak[name]) * (1.0 - strength)
            assert float(net.cpt(name)[{parent: 1}][1]) == np.float32(there)


def test_a_hub_survives_the_bif(whole: Graph, tmp_path: Path) -> None:
    """The child of most causes, seen: its parents' marginals from the file are ours."""
    network = causegraph.as_network(whole)
    roots_only = {
        n: links for n, links in network.parents.items() if links.keys() <= network.prior.keys()
    }
    hub = max(roots_only, key=lambda n: len(roots_only[n]))
    net = read_bif(as_bif(whole, network), tmp_path)
    theirs = asked(net, {hub: SEEN}, targets=roots_only[hub])
    ours = posterior(network, {hub: SEEN}).marginal
    assert_same({c: ours[c] for c in roots_only[hub]}, theirs, SINGLE)


def test_json_loads_in_networkx(whole: Graph) -> None:
    data = json.loads(as_json(whole))
    assert data["schema"] == 1
    again = nx.node_link_graph(data, edges="links")
    assert list(again.nodes(data=True)) == list(whole.nodes(data=True))
    assert {(a, b): d["strength"] for a, b, d in again.edges(data=True)} == {
        (a, b): d["strength"] for a, b, d in whole.edges(data=True)
    }


def test_graphml_loads_in_networkx(whole: Graph) -> None:
    again = nx.parse_graphml(as_graphml(whole))
    assert set(again.edges) == set(whole.edges)
    for name, data in whole.nodes(data=True):
        assert again.nodes[name] == data
    for a, b, data in whole.edges(data=True):
        assert again.edges[a, b]["rules"].split() == list(data["rules"])


NODE = re.compile(r'  "(\w+)" \[shape=\w+, label="(?:[^"\\]|\\.)*"\];')
TEE = ", style=dashed, arrowhead=tee"  #: of an inhibitor
EDGE = re.compile(rf'  "(\w+)" -> "(\w+)" \[penwidth=\d\.\d\d, label="\d\.\d\d"(?:{TEE})?\];')


def test_dot_is_a_digraph_line_by_line(whole: Graph) -> None:
    """The DOT grammar's statement forms: header, quoted nodes, quoted edges, closing brace."""
    first, direction, *body, last = as_dot(whole).splitlines()
    assert (first, direction.strip(), last) == ("digraph causes {", "rankdir=LR;", "}")
    nodes = [m[1] for line in body if (m := NODE.fullmatch(line))]
    edges = [(m[1], m[2]) for line in body if (m := EDGE.fullmatch(line))]
    assert len(nodes) + len(edges) == len(body)
    assert nodes == list(whole)
    assert edges == list(whole.edges)
