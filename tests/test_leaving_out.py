"""Leaving a finding out by the slope of P(evidence) equals computing again without it."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.inference import leave_one_out as leaving_out
from diagnose.inference.elimination import posterior
from diagnose.inference.explain import odds_decibans
from diagnose.inference.leave_one_out import leave_each_out
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Evidence, Likelihood, Network
from knowledge.book import the_book
from tests.support.examples import one_in
from tests.support.nets import furnished

CASES = sorted((Path(__file__).parent / "confirmed" / "cases").glob("*.toml"))[::6]
FEW = one_in(3, CASES)


def random_net(seed: int) -> tuple[Network, dict[str, Likelihood]]:
    rng = random.Random(seed)
    roots = {f"r{i}": rng.uniform(0.02, 0.3) for i in range(6)}
    leak = {f"m{i}": rng.uniform(0.001, 0.1) for i in range(4)}
    leaves = {f"f{i}": rng.uniform(0.001, 0.2) for i in range(6)}
    parents = {m: {r: rng.uniform(0.1, 0.95) for r in rng.sample(list(roots), 3)} for m in leak}
    for f in leaves:
        pool = [*roots, *leak]
        parents[f] = {p: rng.uniform(0.1, 0.95) for p in rng.sample(pool, rng.randint(1, 4))}
    kinds = (SEEN, SEEN_NOT_THERE, Likelihood.of(0.8), Likelihood.of(0.3))
    evidence = {f: rng.choice(kinds) for f in leaves}
    return furnished(Network(roots, {**leak, **leaves}, parents), rng), evidence


def directly(network: Network, evidence: Evidence, name: str) -> tuple[float, dict[str, float]]:
    rest = posterior(network, {n: e for n, e in evidence.items() if n != name})
    return rest.log_evidence, rest.marginal


@pytest.mark.parametrize("seed", range(60))
def test_random_networks(seed: int) -> None:
    """Present, absent and unsure findings of one parent or several, inhibited or not."""
    network, evidence = random_net(seed)
    for name, without in leave_each_out(network, evidence, ("r0", "r3")).items():
        log_evidence, marginal = directly(network, evidence, name)
        assert without.log_evidence == pytest.approx(log_evidence, abs=1e-9)
        for cause in ("r0", "r3"):
            assert without.marginal[cause] == pytest.approx(marginal[cause], abs=1e-9)


@pytest.mark.parametrize("path", FEW, ids=lambda p: p.stem)
def test_real_cases(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Every finding of real cases, for the likeliest causes, the entangled cases the long way."""
    monkeypatch.setattr(leaving_out, "CHEAP", 10**12)
    answer = Diagnosis(the_book(), load(path, the_book()))
    top = tuple(r.cause.id for r in answer.ranking[:3])
    for name, without in leave_each_out(
        answer.inference.network, answer.inference.evidence, top
    ).items():
        log_evidence, marginal = directly(answer.inference.network, answer.inference.evidence, name)
        assert without.log_evidence == pytest.approx(log_evidence, abs=1e-8)
        for cause in top:
            assert without.marginal[cause] == pytest.approx(marginal[cause], abs=1e-8)


@pytest.mark.parametrize("path", FEW, ids=lambda p: p.stem)
def test_the_short_way_for_entangled_cases_is_close(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Parents of an absent finding taken as independent: never off by more than one decibel."""
    monkeypatch.setattr(leaving_out, "CHEAP", 0)
    answer = Diagnosis(the_book(), load(path, the_book()))
    top = tuple(r.cause.id for r in answer.ranking[:3])

    for name, without in leave_each_out(
        answer.inference.network, answer.inference.evidence, top
    ).items():
        _, marginal = directly(answer.inference.network, answer.inference.evidence, name)
        for cause in top:
            off = odds_decibans(without.marginal[cause]) - odds_decibans(marginal[cause])
            assert abs(off) < 1.0, (name, cause, off)
