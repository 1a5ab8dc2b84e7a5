"""Exact ranking: published examples, sums over all states, and properties of any network."""

from __future__ import annotations

import math
import random
from dataclasses import replace

import networkx as nx
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.inference.elimination import ImpossibleEvidenceError, posterior, prior_marginals
from diagnose.inference.explain import odds_decibans, weights
from diagnose.inference.leave_one_out import leave_each_out
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Evidence, Likelihood, Network
from tests.support.examples import examples, one_in
from tests.support.nets import (
    FLAT,
    enumerated,
    nets_with_evidence,
    networks,
    quickscore,
    random_net,
)
from tests.support.situations import CASES, situation

NetAndEvidence = tuple[Network, dict[str, Likelihood]]


def chance(network: Network, evidence: Evidence) -> float:
    """P(evidence); 0 where it cannot be."""
    try:
        return math.exp(posterior(network, evidence).log_evidence)
    except ImpossibleEvidenceError:
        return 0.0


# ------------------------------------------------------------------------ published examples

FEVER = Network(
    {"cold": 0.2, "flu": 0.1, "malaria": 0.01},
    {"fever": 0.0},
    {"fever": {"cold": 0.4, "flu": 0.8, "malaria": 0.9}},
)
FEVER_TABLE = {  # cold, flu, malaria: P(fever)
    (0, 0, 0): 0.0,
    (0, 0, 1): 0.9,
    (0, 1, 0): 0.8,
    (0, 1, 1): 0.98,
    (1, 0, 0): 0.4,
    (1, 0, 1): 0.94,
    (1, 1, 0): 0.88,
    (1, 1, 1): 0.988,
}


@pytest.mark.parametrize(("there", "printed"), FEVER_TABLE.items())
def test_fever_table(there: tuple[int, ...], printed: float) -> None:
    """Russell & Norvig, Artificial Intelligence, noisy-OR table for fever; priors are our own."""
    given_ = {c: Likelihood.of(t) for c, t in zip(FEVER.prior, there, strict=True)}
    both = chance(FEVER, {**given_, "fever": SEEN})
    assert both / chance(FEVER, given_) == pytest.approx(printed, abs=1e-12)


def test_fever_by_quickscore() -> None:
    """Heckerman 1989, Quickscore, on the fever net: elimination, signed sums and states agree."""
    for seen in (SEEN, SEEN_NOT_THERE):
        evidence = {"fever": seen}
        assert chance(FEVER, evidence) == pytest.approx(quickscore(FEVER, evidence), abs=1e-15)
        assert chance(FEVER, evidence) == pytest.approx(enumerated(FEVER, evidence)[1], abs=1e-15)


BURGLAR = Network(
    {"burglar": 0.01, "earthquake": 1e-6},
    {"alarm": 1e-4},
    {"alarm": {"burglar": 0.99, "earthquake": 0.99}},
)


def test_burglar_with_a_sure_and_an_unsure_alarm() -> None:
    """Barber, Bayesian Reasoning and Machine Learning, burglar alarm: 0.99 and 0.6930.

    The second is a 70 % mixture (Jeffrey's rule). The printed results were read, the inputs
    are recalled [from memory].
    """
    seen = posterior(BURGLAR, {"alarm": SEEN}).marginal["burglar"]
    absent = posterior(BURGLAR, {"alarm": SEEN_NOT_THERE}).marginal["burglar"]
    assert seen == pytest.approx(0.9900, abs=5e-5)
    assert 0.7 * seen + 0.3 * absent == pytest.approx(0.6930, abs=5e-5)


def test_an_unsure_alarm_is_no_mixture_here() -> None:
    """A report 70 % sure is a likelihood ratio of 7 to 3 here (Pearl), not Jeffrey's mixture."""
    half = posterior(BURGLAR, {"alarm": Likelihood.of(0.7)}).marginal["burglar"]
    alarm = chance(BURGLAR, {"burglar": SEEN, "alarm": SEEN}) / 0.01
    sounded = chance(BURGLAR, {"alarm": SEEN})
    by_hand = 0.01 * (0.7 * alarm + 0.3 * (1 - alarm)) / (0.7 * sounded + 0.3 * (1 - sounded))
    assert half == pytest.approx(by_hand, rel=1e-12)
    assert half < 0.03


def test_quake_explains_the_alarm_away() -> None:
    """Thief, quake and radio (textbook inputs, read): 0.50025 and 0.00991, worked by hand."""
    net = Network(
        {"thief": 1e-3, "quake": 1e-2},
        {"alarm": 0.0, "radio": 0.0},
        {"alarm": {"thief": 1.0, "quake": 0.1}, "radio": {"quake": 0.5}},
    )
    alarm = posterior(net, {"alarm": SEEN}).marginal["thief"]
    radio = posterior(net, {"alarm": SEEN, "radio": SEEN}).marginal["thief"]
    assert alarm == pytest.approx(0.001 / (1 - 0.999**2), rel=1e-9)
    assert (round(alarm, 5), round(radio, 5)) == (0.50025, 0.00991)


def screening(prevalence: float, of_ill: float, of_healthy: float) -> Network:
    """A test that is positive in these shares of the ill and the healthy."""
    link = 1.0 - (1.0 - of_ill) / (1.0 - of_healthy)
    return Network({"ill": prevalence}, {"positive": of_healthy}, {"positive": {"ill": link}})


@pytest.mark.parametrize("prevalence", [0.001, 0.1, 0.5])
def test_screening_test_in_decibans(prevalence: float) -> None:
    """Positive in 70 % of the ill, 10 % of the healthy (rates read): 7 to 1, 8.45 decibans.

    Decibans after Good 1985, "Weight of evidence".
    """
    net = screening(prevalence, 0.7, 0.1)
    after = posterior(net, {"positive": SEEN}).marginal
    assert odds_decibans(after["ill"]) - odds_decibans(prevalence) == pytest.approx(
        8.4510, abs=1e-4
    )
    graph: nx.DiGraph[str] = nx.DiGraph()
    without = leave_each_out(net, {"positive": SEEN}, ["ill"])
    (weight,) = weights(without, after, graph, ("ill",))["ill"]
    assert weight.decibans == pytest.approx(10 * math.log10(7), abs=1e-9)


def test_predictive_values() -> None:
    """Prevalence 8 %, sensitivity 75 %, specificity 96 % (inputs read): PPV .6198, NPV .9779."""
    net = screening(0.08, 0.75, 0.04)
    assert posterior(net, {"positive": SEEN}).marginal["ill"] == pytest.approx(0.6198, abs=5e-5)
    negative = posterior(net, {"positive": SEEN_NOT_THERE}).marginal["ill"]
    assert 1 - negative == pytest.approx(0.9779, abs=5e-5)


# ------------------------------------------------------------------- against summing all states


@settings(max_examples=examples(150), deadline=None)
@given(nets_with_evidence())
def test_equals_the_sum_over_all_states(drawn_: NetAndEvidence) -> None:
    """Evidence on roots, hidden nodes and leaves, certain or not."""
    network, evidence = drawn_
    marginal, total = enumerated(network, evidence)
    for asked in ({}, dict.fromkeys(network.order, FLAT)):
        found = posterior(network, {**asked, **evidence})
        assert found.log_evidence == pytest.approx(math.log(total), abs=1e-9)
        assert found.marginal.keys() >= network.prior.keys()
        right = {n: marginal[n] for n in found.marginal}
        assert found.marginal == pytest.approx(right, abs=1e-9)


@settings(max_examples=examples(100), deadline=None)
@given(networks(), st.data())
def test_certain_links_and_no_background(network: Network, data: st.DataObject) -> None:
    """Links of one and leaks of nothing: right, or refused as impossible, never nonsense."""
    never = st.sampled_from([0.0, 0.3])
    leak = {n: data.draw(never) for n in network.leak}
    always, forbidden = (
        {n: dict.fromkeys(links, 1.0) for n, links in strengths.items()}
        for strengths in (network.parents, network.inhibitors)
    )
    sharp = Network(network.prior, leak, always, forbidden)
    names = st.sampled_from(network.order)
    evidence = data.draw(
        st.dictionaries(names, st.sampled_from([SEEN, SEEN_NOT_THERE]), max_size=4)
    )
    assert chance(sharp, evidence) == pytest.approx(enumerated(sharp, evidence)[1], abs=1e-12)


@pytest.mark.parametrize("seed", range(40))
def test_two_layers_by_quickscore(seed: int) -> None:
    """Heckerman 1989: 25 causes, up to 8 present findings, too many states to write out."""
    net = random_net(seed, roots=25, middles=0, leaves=16, fan_in=8, plain=True)
    rng = random.Random(seed)
    evidence = {f: rng.choice([SEEN, SEEN_NOT_THERE]) for f in rng.sample(list(net.leak), 8)}
    assert chance(net, evidence) == pytest.approx(quickscore(net, evidence), rel=1e-8)


# -------------------------------------------------------------------- what holds of any network


@settings(max_examples=examples(80), deadline=None)
@given(networks(plain=True))
def test_absent_findings_couple_nothing(network: Network) -> None:
    """Roots stay independent when leaves on roots alone are seen not to be there."""
    leaves = {f"leaf{i}": dict.fromkeys(network.prior, 0.1 * i) for i in range(1, 4)}
    leak = {**network.leak, **dict.fromkeys(leaves, 0.05)}
    net = Network(network.prior, leak, {**network.parents, **leaves})
    found = posterior(net, dict.fromkeys(leaves, SEEN_NOT_THERE))
    missed = math.prod(1 - 0.1 * i for i in range(1, 4))
    alone = {c: p * missed / (1 - p + p * missed) for c, p in net.prior.items()}
    assert {c: found.marginal[c] for c in alone} == pytest.approx(alone, abs=1e-12)
    factors = math.prod(1 - p + p * missed for p in net.prior.values())
    assert math.exp(found.log_evidence) == pytest.approx(0.95**3 * factors, rel=1e-12)


def with_number(network: Network, where: tuple[str, ...], value: float) -> Network:
    """The network with one prior, leak or link changed."""
    if len(where) == 2:
        child, parent = where
        kind = "parents" if parent in network.parents.get(child, {}) else "inhibitors"
        old = getattr(network, kind)
        return replace(network, **{kind: {**old, child: {**old[child], parent: value}}})
    (name,) = where
    prior = {n: value if n == name else p for n, p in network.prior.items()}
    leak = {n: value if n == name else p for n, p in network.leak.items()}
    return replace(network, prior=prior, leak=leak)


@settings(max_examples=examples(60), deadline=None)
@given(nets_with_evidence(), st.data())
def test_evidence_is_linear_in_each_number(drawn_: NetAndEvidence, data: st.DataObject) -> None:
    """Kjaerulff & van der Gaag 2000: P(evidence) is a straight line in any one parameter."""
    network, evidence = drawn_
    links = [(c, p) for c in network.order for p in network.above(c)]
    where = data.draw(st.sampled_from([*((n,) for n in network.order), *links]))
    at = {x: chance(with_number(network, where, x), evidence) for x in (0.0, 0.35, 0.6, 1.0)}
    for x in (0.35, 0.6):
        assert at[x] == pytest.approx((1 - x) * at[0.0] + x * at[1.0], rel=1e-9, abs=1e-13)


def test_a_finding_not_looked_at_is_no_evidence() -> None:
    net = random_net(3, roots=5, middles=3, leaves=3, plain=True)
    assert posterior(net, {}).marginal == net.prior == prior_marginals(net)
    assert posterior(net, dict.fromkeys(net.order, FLAT)).log_evidence == pytest.approx(
        0, abs=1e-12
    )


@pytest.mark.parametrize("seed", range(20))
def test_causes_with_parents_have_more_than_their_own_prior(seed: int) -> None:
    """Nothing observed: each cause by the sum over all states."""
    net = random_net(seed, roots=5, middles=2, leaves=2)
    right, _ = enumerated(net, {})
    found = prior_marginals(net)
    assert found == pytest.approx({c: right[c] for c in net.prior}, abs=1e-12)
    fed = [c for c in net.parents if c in net.prior and c not in net.inhibitors]
    assert all(found[c] > net.prior[c] for c in fed)


@pytest.mark.parametrize("name", one_in(6, list(CASES)))
def test_longer_numbers_change_nothing(name: str) -> None:
    """Double against long double on every case file."""
    case = situation(name)
    double = posterior(case.network, case.evidence)
    long = posterior(case.network, case.evidence, np.longdouble)
    assert double.marginal == pytest.approx(long.marginal, abs=1e-9)
    assert double.log_evidence == pytest.approx(long.log_evidence, abs=1e-9)
    assert all(-1e-9 <= p <= 1 + 1e-9 for p in double.marginal.values())
