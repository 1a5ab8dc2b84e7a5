"""Ranking at its limits: what it refuses, the best sets of causes, and whether 70 % means 70 %."""

from __future__ import annotations

import math
import random
from itertools import product

import pytest

from diagnose.inference.cause_sets import Explanation, best_sets
from diagnose.inference.elimination import (
    WIDEST,
    ImpossibleEvidenceError,
    TooEntangledError,
    log_evidences,
    posterior,
    posteriors,
)
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Evidence, Likelihood, Network
from tests.support.examples import one_in
from tests.support.nets import FLAT, drawn, enumerated, random_evidence, random_net, weighed

# ---------------------------------------------------------------------------------- refusals


def everything_with_everything(many: int) -> Network:
    """``many`` causes, each of which brings about each of ``many`` findings."""
    causes = [f"r{i}" for i in range(many)]
    findings = [f"f{i}" for i in range(many)]
    links = {
        f: {c: 0.1 + 0.8 * ((i + j) % 7) / 7 for i, c in enumerate(causes)}
        for j, f in enumerate(findings)
    }
    return Network(dict.fromkeys(causes, 0.05), dict.fromkeys(findings, 0.02), links)


def test_too_many_present_findings_on_the_same_causes_are_refused() -> None:
    net = everything_with_everything(WIDEST + 4)
    with pytest.raises(TooEntangledError):
        posterior(net, dict.fromkeys(net.leak, SEEN))


def test_as_many_absent_findings_are_not() -> None:
    """Absent findings couple nothing, however many there are."""
    net = everything_with_everything(WIDEST + 4)
    found = posterior(net, dict.fromkeys(net.leak, SEEN_NOT_THERE))
    assert all(found.marginal[c] < p for c, p in net.prior.items())


def test_a_finding_of_thirty_causes_is_exact() -> None:
    net = everything_with_everything(30)
    found = posterior(net, {f"f{i}": SEEN for i in range(8)})
    assert all(0.0 < found.marginal[c] < 1.0 for c in net.prior)


IMPOSSIBLE: dict[str, tuple[Network, Evidence]] = {
    "no background and no cause": (
        Network({"r": 0.1}, {"f": 0.0}, {"f": {"r": 0.5}}),
        {"r": SEEN_NOT_THERE, "f": SEEN},
    ),
    "a link that never fails": (
        Network({"r": 0.1}, {"f": 0.1}, {"f": {"r": 1.0}}),
        {"r": SEEN, "f": SEEN_NOT_THERE},
    ),
    "a leak of one, not seen": (Network({"r": 0.1}, {"f": 1.0}), {"f": SEEN_NOT_THERE}),
    "a cause that cannot be, seen": (Network({"r": 0.0}, {}), {"r": SEEN}),
    "a likelihood of nothing": (Network({"r": 0.1}, {"f": 0.1}), {"f": Likelihood(0.0, 0.0)}),
}


@pytest.mark.parametrize("name", IMPOSSIBLE)
def test_what_cannot_be_is_refused(name: str) -> None:
    with pytest.raises(ImpossibleEvidenceError):
        posterior(*IMPOSSIBLE[name])


def test_a_circle_is_refused() -> None:
    net = Network({}, {"a": 0.1, "b": 0.1}, {"a": {"b": 0.5}, "b": {"a": 0.5}})
    with pytest.raises(ValueError, match="circle"):
        posterior(net, {"a": SEEN})


@pytest.mark.parametrize("links", [{"nobody": {"s": 0.5}}, {"f": {"nobody": 0.5}}])
def test_a_network_that_hangs_together_wrongly_is_refused(
    links: dict[str, dict[str, float]],
) -> None:
    with pytest.raises(ValueError, match="parent"):
        Network({"r": 0.1, "s": 0.1}, {"f": 0.1}, links)
    with pytest.raises(ValueError, match="inhibitor"):
        Network({"r": 0.1, "s": 0.1}, {"f": 0.1}, {}, links)


def test_what_brings_about_cannot_inhibit_as_well() -> None:
    with pytest.raises(ValueError, match="f: a parent inhibits it"):
        Network({"r": 0.1}, {"f": 0.1}, {"f": {"r": 0.5}}, {"f": {"r": 0.5}})


# --------------------------------------------------------------------- many variants at once


@pytest.mark.parametrize("seed", one_in(2, range(60)))
def test_many_at_once_equal_one_by_one(seed: int) -> None:
    """One sweep over variants, as for "without this finding", gives what single sweeps give."""
    net = random_net(seed, roots=7, middles=4, leaves=6)
    whole = random_evidence(seed, net)
    variants: list[Evidence] = [
        whole,
        {},
        random_evidence(seed + 1000, net),
        *({n: e for n, e in whole.items() if n != name} for name in whole),
    ]
    alone = [posterior(net, v) for v in variants]
    together = posteriors(net, variants)
    assert log_evidences(net, variants) == pytest.approx([p.log_evidence for p in alone], abs=1e-9)
    for one, of_many in zip(alone, together, strict=True):
        assert of_many.log_evidence == pytest.approx(one.log_evidence, abs=1e-9)
        asked = {n: of_many.marginal[n] for n in one.marginal if n in of_many.marginal}
        assert asked.keys() >= net.prior.keys()
        assert asked == pytest.approx({n: one.marginal[n] for n in asked}, abs=1e-9)


def test_a_variant_that_cannot_be_spoils_no_other() -> None:
    net = Network({"r": 0.1, "s": 0.2}, {"f": 0.0}, {"f": {"r": 0.5, "s": 0.4}})
    cannot: Evidence = {"r": SEEN_NOT_THERE, "s": SEEN_NOT_THERE, "f": SEEN}
    variants: list[Evidence] = [{"f": SEEN}, cannot, {"f": SEEN_NOT_THERE}]
    first, impossible, last = posteriors(net, variants)
    assert impossible.log_evidence == -math.inf
    assert log_evidences(net, variants)[1] == -math.inf
    assert first.marginal["r"] == pytest.approx(
        posterior(net, variants[0]).marginal["r"], abs=1e-12
    )
    assert last.marginal["r"] == pytest.approx(posterior(net, variants[2]).marginal["r"], abs=1e-12)


@pytest.mark.parametrize("name", ["r", "m", "f"])
def test_naming_a_node_without_a_word_gives_its_marginal(name: str) -> None:
    """Roots, hidden nodes and leaves alike, and it changes nothing else."""
    net = Network({"r": 0.1}, {"m": 0.1, "f": 0.1}, {"m": {"r": 0.5}, "f": {"m": 0.5, "r": 0.2}})
    asked = posterior(net, {name: FLAT})
    assert asked.marginal[name] == pytest.approx(enumerated(net, {})[0][name], abs=1e-12)
    assert asked.log_evidence == pytest.approx(0.0, abs=1e-12)


# ----------------------------------------------------------------------------------- best sets


def every_set(network: Network, evidence: Evidence, implicated: list[str]) -> list[Explanation]:
    """Every combination of the implicated causes with its exact share, best first."""
    there, p = weighed(network, evidence)
    total = p.sum()
    out = []
    for states in product((False, True), repeat=len(implicated)):
        fits = p > -1.0
        for cause, state in zip(implicated, states, strict=True):
            fits = fits & (there[cause] == state)
        causes = tuple(c for c, s in zip(implicated, states, strict=True) if s)
        out.append(Explanation(causes, float(p[fits].sum() / total)))
    return sorted(out, key=lambda e: -e.share)


def implicated(network: Network, marginal: dict[str, float]) -> list[str]:
    """The causes whose posterior stands out: 2 % and half as much again as the prior."""
    before, _ = enumerated(network, {})
    return [c for c in network.prior if marginal[c] >= max(0.02, 1.5 * before[c])]


def best_and_right(seed: int, at_most: int) -> tuple[tuple[Explanation, ...], list[Explanation]]:
    """The best five sets of a random case, and every set of as many causes written out."""
    net = random_net(seed, roots=6, middles=3, leaves=5)
    evidence = random_evidence(seed, net, share=0.4)
    found = posterior(net, evidence)
    likeliest = sorted(implicated(net, found.marginal), key=lambda c: -found.marginal[c])
    right = every_set(net, evidence, likeliest[:at_most])
    mine = best_sets(net, evidence, found.marginal, found.log_evidence, how_many=5, at_most=at_most)
    return mine, right


@pytest.mark.parametrize("at_most", [6, 2])
@pytest.mark.parametrize("seed", one_in(2, range(40)))
def test_best_sets_equal_enumeration(seed: int, at_most: int) -> None:
    """Same shares in the same order, and each set named has the share it is given."""
    found, right = best_and_right(seed, at_most)
    assert len(found) == min(5, sum(e.share > 1e-9 for e in right))
    share = {frozenset(e.causes): e.share for e in right}
    for mine, best in zip(found, right, strict=False):
        assert mine.share == pytest.approx(best.share, abs=1e-9)
        assert share[frozenset(mine.causes)] == pytest.approx(mine.share, abs=1e-9)


# --------------------------------------------------------------------------------- calibration


def reported(state: dict[str, bool], net: Network, rng: random.Random) -> dict[str, Likelihood]:
    """A dozen findings of a state, some unsure and then wrong as often as stated."""
    evidence = {}
    for name in rng.sample(sorted(net.leak), 12):
        sure = rng.choice([1.0, 1.0, 0.8])
        seen = state[name] if rng.random() < sure else not state[name]
        evidence[name] = Likelihood.of(sure if seen else 1.0 - sure)
    return evidence


def by_tenths(many: int) -> list[tuple[float, float, float]]:
    """Predicted count, true count and binomial spread in each tenth of probability said."""
    net = random_net(11, roots=20, middles=8, leaves=24, fan_in=5)
    rng = random.Random(20)
    said: list[list[tuple[float, bool]]] = [[] for _ in range(10)]
    for _ in range(many):
        state = drawn(net, rng)
        belief = posterior(net, reported(state, net, rng)).marginal
        for cause in net.prior:
            said[min(int(belief[cause] * 10), 9)].append((belief[cause], state[cause]))
    return [
        (sum(p for p, _ in ten), sum(t for _, t in ten), sum(p * (1 - p) for p, _ in ten) ** 0.5)
        for ten in said
    ]


def assert_calibrated(rows: list[tuple[float, float, float]]) -> None:
    for predicted, true, spread in rows:
        assert abs(predicted - true) <= 3.5 * spread + 1.0


def test_seventy_per_cent_means_seventy_per_cent() -> None:
    """Cases drawn from the model itself: an engine that sums right must be calibrated."""
    assert_calibrated(by_tenths(300))


@pytest.mark.long
def test_seventy_per_cent_means_seventy_per_cent_often() -> None:
    """The same with ten times the cases."""
    assert_calibrated(by_tenths(4000))
