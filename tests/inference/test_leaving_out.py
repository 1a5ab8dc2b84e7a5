"""Leaving a finding out, or supposing one, by what is computed already equals computing again."""

from __future__ import annotations

import math
import random
from collections.abc import Mapping
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.inference import leave_one_out as leaving_out
from diagnose.inference import outcomes as supposing
from diagnose.inference.chaining import Observation
from diagnose.inference.elimination import posterior
from diagnose.inference.explain import odds_decibans
from diagnose.inference.leave_one_out import leave_each_out
from diagnose.inference.network import SEEN, SEEN_NOT_THERE, Evidence, Likelihood, Network
from diagnose.inference.outcomes import Supposed
from knowledge.book import the_book
from knowledge.model import State
from tests.support.examples import one_in
from tests.support.nets import furnished

CASES = sorted((Path(__file__).parents[1] / "confirmed" / "cases").glob("*.toml"))[::6]
FEW = one_in(3, CASES)
BOOK = the_book()


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


@cache
def real_without(path: Path, name: str) -> tuple[float, dict[str, float]]:
    """ln P(evidence) and the marginals of a real case without one finding."""
    known = Diagnosis(BOOK, load(path, BOOK)).inference
    return directly(known.network, known.evidence, name)


def directly(network: Network, evidence: Evidence, name: str) -> tuple[float, dict[str, float]]:
    rest = posterior(network, {n: e for n, e in evidence.items() if n != name})
    return rest.log_evidence, rest.marginal


@pytest.mark.parametrize("seed", one_in(2, range(60)))
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
        log_evidence, marginal = real_without(path, name)
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
        _, marginal = real_without(path, name)
        for cause in top:
            off = odds_decibans(without.marginal[cause]) - odds_decibans(marginal[cause])
            assert abs(off) < 1.0, (name, cause, off)


@pytest.mark.parametrize("seed", range(30))
@pytest.mark.parametrize("small", [0, 10**9], ids=["one by one", "together"])
def test_outcomes_of_a_check(seed: int, small: int, monkeypatch: pytest.MonkeyPatch) -> None:
    """A finding supposed present, by difference, and all supposed absent: as computed directly."""
    monkeypatch.setattr(supposing, "SMALL", small)
    network, evidence = random_net(seed)
    asked = {f: evidence.pop(f) for f in ("f1", "f4")}
    a_finding, a_cause = next(iter(BOOK.findings.values())), next(iter(BOOK.causes.values()))
    findings = {f: replace(a_finding, id=f) for f in asked}
    causes = {r: replace(a_cause, id=r) for r in network.prior}
    there = [Supposed(findings[f], {findings[f]: Observation(State.PRESENT)}) for f in asked]
    none = Supposed(None, {f: Observation(State.ABSENT) for f in findings.values()})

    def nodes(_: Evidence, marginal: Mapping[str, float]) -> dict[str, str]:
        return {r: r for r in network.prior}

    before = posterior(network, evidence)
    found = supposing.outcomes(network, evidence, before, [*there, none], causes, (), nodes)
    hard = [{f: SEEN} for f in asked] + [dict.fromkeys(asked, SEEN_NOT_THERE)]
    for outcome, new in zip(found, hard, strict=True):
        then = posterior(network, {**evidence, **new})
        assert outcome.probability == pytest.approx(
            math.exp(then.log_evidence - before.log_evidence), abs=1e-9
        )
        leader = max(network.prior, key=lambda r: then.marginal[r])
        assert outcome.leads_with == pytest.approx(then.marginal[leader], abs=1e-7)
        assert outcome.leads is causes[leader]
