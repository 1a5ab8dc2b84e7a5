"""Our networks handed to pyAgrum, a general Bayesian-network library: full tables, or factors."""

from __future__ import annotations

import math
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
        links, against = network.parents.get(name, {}), network.inhibitors.get(name, {})
        above = [*links, *against]
        for parent in above:
            net.addArc(parent, name)
        values = []
        for states in product((0, 1), repeat=len(above)):
            there = dict(zip(above, reversed(states), strict=True))
            absent = 1.0 - network.prior.get(name, network.leak.get(name, 0.0))
            absent *= math.prod(1.0 - q * there[parent] for parent, q in links.items())
            present = (1.0 - absent) * math.prod(1.0 - r * there[z] for z, r in against.items())
            values += [1.0 - present, present]
        net.cpt(name).fillWith(values)  # own state fastest, then the first parent's
    return net


def as_factors(network: Network, evidence: Evidence) -> gum.MarkovRandomField:
    """The signed split as a Markov field; a Bayesian network takes no negative entries.

    P(present) = 1 - (1 - leak) prod(1 - q): Heckerman 1989; Díez & Galán 2003. With inhibitors
    that is multiplied by N = prod(1 - r), with a hidden variable of three states: 1, N and the
    signed product. Tables stay small whatever the fan-in, so a whole case fits. In ``fillWith``
    the first name's state runs fastest.
    """
    field = gum.MarkovRandomField()
    for name in network.order:
        field.add(gum.LabelizedVariable(name, name, 2))
    for name in network.order:
        no, yes = (evidence.get(name, FLAT).if_absent, evidence.get(name, FLAT).if_present)
        stay = 1.0 - network.prior.get(name, network.leak.get(name, 0.0))
        links, against = network.parents.get(name, {}), network.inhibitors.get(name, {})
        if not links and not against:
            field.addFactor([name]).fillWith([no * stay, yes * (1.0 - stay)])
            continue
        hidden = f"{name}__missed"
        if against:
            field.add(gum.LabelizedVariable(hidden, hidden, 3))
            terms = [no, 0.0, -no, yes, no * stay, -yes * stay]
            field.addFactor([name, hidden]).fillWith(terms)
            for parent, strength in links.items():
                left = 1.0 - strength
                field.addFactor([hidden, parent]).fillWith([1.0, 1.0, 1.0, 1.0, 1.0, left])
            for inhibitor, strength in against.items():
                left = 1.0 - strength
                field.addFactor([hidden, inhibitor]).fillWith([1.0, 1.0, 1.0, 1.0, left, left])
            continue
        field.add(gum.LabelizedVariable(hidden, hidden, 2))
        field.addFactor([name, hidden]).fillWith([0.0, yes, no * stay, -yes * stay])
        for parent, strength in links.items():
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
    for name in network.order:
        for parent in network.above(name):
            graph.addArc(number[parent], number[name])
    tree = gum.JunctionTreeGenerator().junctionTree(graph)
    return max(len(tree.clique(node)) for node in tree.nodes())


def cut(network: Network, causes: Iterable[str]) -> Network:
    """The network as if no other root cause existed."""
    left = {c: network.prior[c] for c in causes}
    known = left.keys() | network.leak.keys()
    parents, inhibitors = (
        {
            name: {p: q for p, q in links.items() if p in known}
            for name, links in strengths.items()
            if name in known and links.keys() & known
        }
        for strengths in (network.parents, network.inhibitors)
    )
    return Network(left, network.leak, parents, inhibitors)


def as_much_as_fits(
    network: Network, evidence: Evidence, ranked: Sequence[str], most: int
) -> tuple[Network, Network]:
    """The likeliest causes, as many as the library holds in tables of ``most`` variables.

    The network cut to them, and the same with parents in groups of the size that suits best.
    """
    whole = restricted(network, set(evidence))
    causes = [c for c in ranked if c in whole.prior]
    for many in (len(causes), 50, 40, 32, 26, 20, 16, 12, 10, 9, 8, 7, 6, 5, 3):
        part = cut(whole, causes[:many])
        split = min((with_few_parents(part, group) for group in (3, 5, 8)), key=widest)
        if widest(split) <= most:
            break
    return part, split
