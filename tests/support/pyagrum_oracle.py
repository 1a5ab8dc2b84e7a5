"""Our networks handed to pyAgrum, a general Bayesian-network library: full tables, or factors."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import product

import pyagrum as gum

from diagnose.inference.graph_formats import with_few_parents
from diagnose.inference.network import Evidence, Network
from tests.support.nets import FLAT, restricted


def as_tables(network: Network) -> gum.BayesNet:
    """Every node with its full table, as any textbook writes it."""
    net = gum.BayesNet()
    for name in network.order:
        net.add(gum.LabelizedVariable(name, name, 2))
    for name in network.order:
        links = network.parents.get(name, {})
        for parent in links:
            net.addArc(parent, name)
        values = []
        for states in product((0, 1), repeat=len(links)):
            absent = 1.0 - network.prior.get(name, network.leak.get(name, 0.0))
            for there, strength in zip(reversed(states), links.values(), strict=True):
                absent *= 1.0 - strength * there
            values += [absent, 1.0 - absent]
        net.cpt(name).fillWith(values)  # own state fastest, then the first parent's
    return net


def as_factors(network: Network, evidence: Evidence) -> gum.MarkovRandomField:
    """The signed split as a Markov field; a Bayesian network takes no negative entries.

    P(present) = 1 - (1 - leak) prod(1 - q): Heckerman 1989; Díez & Galán 2003. Tables stay
    small whatever the fan-in, so a whole case fits. In ``fillWith`` the first name's state
    runs fastest.
    """
    field = gum.MarkovRandomField()
    for name in network.order:
        field.add(gum.LabelizedVariable(name, name, 2))
    for name in network.order:
        no, yes = (evidence.get(name, FLAT).if_absent, evidence.get(name, FLAT).if_present)
        if name in network.prior:
            p = network.prior[name]
            field.addFactor([name]).fillWith([no * (1.0 - p), yes * p])
            continue
        hidden = f"{name}__missed"
        field.add(gum.LabelizedVariable(hidden, hidden, 2))
        stay = 1.0 - network.leak[name]
        field.addFactor([name, hidden]).fillWith([0.0, yes, no * stay, -yes * stay])
        for parent, strength in network.parents.get(name, {}).items():
            field.addFactor([hidden, parent]).fillWith([1.0, 1.0, 1.0, 1.0 - strength])
    return field


def asked(
    net: gum.BayesNet, evidence: Evidence, targets: Iterable[str] = ()
) -> gum.LazyPropagation:
    """The library's own inference with the evidence given, done."""
    engine = gum.LazyPropagation(net)
    if targets:
        engine.setTargets(set(targets))
    engine.setEvidence({n: [e.if_absent, e.if_present] for n, e in evidence.items()})
    engine.makeInference()
    return engine


def asked_of_factors(field: gum.MarkovRandomField) -> gum.ShaferShenoyMRFInference:
    """The same for a field, whose factors hold the evidence already."""
    engine = gum.ShaferShenoyMRFInference(field)
    engine.makeInference()
    return engine


def widest(network: Network) -> int:
    """Variables in the largest table the library would have to hold."""
    graph = gum.DAG()
    number = {name: graph.addNode() for name in network.order}
    for name, links in network.parents.items():
        for parent in links:
            graph.addArc(number[parent], number[name])
    tree = gum.JunctionTreeGenerator().junctionTree(graph)
    return max(len(tree.clique(node)) for node in tree.nodes())


def cut(network: Network, causes: Iterable[str]) -> Network:
    """The network as if no other root cause existed."""
    left = {c: network.prior[c] for c in causes}
    parents = {
        name: {p: q for p, q in links.items() if p in left or p in network.leak}
        for name, links in network.parents.items()
    }
    return Network(left, network.leak, {n: links for n, links in parents.items() if links})


def as_much_as_fits(
    network: Network, evidence: Evidence, ranked: Sequence[str], most: int
) -> tuple[Network, Network]:
    """The likeliest causes, as many as the library holds in tables of ``most`` variables.

    The network cut to them, and the same with parents in groups of the size that suits best.
    """
    whole = restricted(network, set(evidence))
    causes = [c for c in ranked if c in whole.prior]
    for many in (len(causes), 50, 40, 32, 26, 20, 16, 12, 9, 7, 5, 3):
        part = cut(whole, causes[:many])
        split = min((with_few_parents(part, group) for group in (3, 5, 8)), key=widest)
        if widest(split) <= most:
            break
    return part, split
