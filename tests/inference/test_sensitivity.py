"""The sensitivity study: one strength moved as evidence equals moving it in the book."""

from __future__ import annotations

from dataclasses import replace

import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.inference.causegraph import priors
from diagnose.inference.elimination import Posterior, posterior, prior_marginals
from diagnose.inference.network import Network
from knowledge.book import the_book
from knowledge.model import Rate, Stage
from tests.confirmed.scoring import case_files, score
from tests.studies.sensitivity import (
    BACKGROUNDS,
    STRENGTHS,
    Found,
    Move,
    Moved,
    again,
    leak_moves,
    link_moves,
    parts,
    posteriors_of_links,
    rate_moves,
    report,
    standing,
    steps,
)
from tests.support.examples import one_in

PATHS = {p.stem: p for p in case_files()}
BOOK = the_book()


def consulted(name: str, stage: Stage = Stage.OPENED) -> Diagnosis:
    return Diagnosis(BOOK, load(PATHS[name], BOOK), stage)


def differ(one: Posterior, other: Posterior, network: Network) -> float:
    return max(abs(one.marginal[c] - other.marginal[c]) for c in network.prior)


def test_one_step_and_no_further() -> None:
    assert dict(steps(0.25, STRENGTHS)) == {True: 0.55, False: 0.08}
    assert dict(steps(0.97, STRENGTHS)) == {False: 0.80}
    assert dict(steps(0.43, STRENGTHS)) == {True: 0.55, False: 0.25}
    assert dict(steps(0.004, BACKGROUNDS)) == {True: 0.015, False: 0.001}


@pytest.mark.parametrize("name", ["A07", "B12", "B67"])
def test_a_link_moved_by_evidence_is_the_link_moved(name: str) -> None:
    """Against the network with the one strength changed."""
    answer = consulted(name)
    network = answer.inference.network
    moves = list(link_moves(answer))[::17]
    seen = 0.0
    for (move, q, r), found in zip(moves, posteriors_of_links(answer, moves), strict=True):
        parents = {n: dict(links) for n, links in network.parents.items()}
        assert parents[move.name][move.parent] == q != r
        parents[move.name][move.parent] = r
        exact = posterior(replace(network, parents=parents), answer.inference.evidence)
        assert differ(found, exact, network) < 1e-9, move
        seen = max(seen, differ(found, answer.inference.posterior, network))
    assert seen > 1e-3, "no move did anything"


@pytest.mark.parametrize("id_", one_in(2, ["relief_debris", "bearing_wear_mains"]))
def test_a_rate_moved_is_the_rate_moved(id_: str) -> None:
    """Against causes with the other rate; every other cause loses or gains its share as well."""
    answer = consulted("B12")
    network, cause = answer.inference.network, BOOK.causes[id_]
    before = prior_marginals(network)
    moves = list(rate_moves(answer, [id_]))
    assert moves
    for move, after in moves:
        up = sorted(Rate, key=lambda r: r.value)
        rate = up[up.index(cause.rate) + (1 if move.up else -1)]
        found = prior_marginals(after)
        factor = {id_: rate.value / cause.rate.value}
        assert found == pytest.approx(priors(BOOK.causes, answer.inference.result, factor))
        if cause.id not in network.fed:
            causes = {**BOOK.causes, id_: replace(cause, rate=rate)}
            assert found == pytest.approx(priors(causes, answer.inference.result))
        assert (found[id_] > before[id_]) is move.up
        assert (found["oil_level_low"] < before["oil_level_low"]) is move.up


def test_leaks_move() -> None:
    answer = consulted("B12")
    moves = list(leak_moves(answer))
    assert {m.name for m, _ in moves} >= set(answer.inference.evidence) & set(BOOK.findings)
    assert all((n.leak[m.name] > answer.inference.network.leak[m.name]) is m.up for m, n in moves)


def test_an_unmoved_case_has_its_confirmed_rank() -> None:
    """The same computation as ``python -m tests.confirmed``."""
    answer = consulted("A36")
    copy = again(answer, answer.inference.network, answer.inference.posterior)
    scored = score(PATHS["A36"], Stage.OPENED)
    assert scored
    assert standing("A36", copy) == standing("A36", answer)
    assert standing("A36", copy).rank == scored.rank
    assert [r.cause.id for r in copy.ranking] == [r.cause.id for r in answer.ranking]


def test_a_move_counts_where_it_moves_a_case() -> None:
    """Two cases; one move brings the second to the first place at one stage."""
    key = ("two", Stage.KNOWN)
    now = {("one", s): Moved(1, 0.1) for s in Stage} | {("two", s): Moved(4, 0.9) for s in Stage}
    move, other = Move("link", "a", "b", True), Move("leak", "", "c", False)
    found = Found(now, {move: {key: Moved(1, 0.5)}, other: {key: Moved(4, 0.8)}})
    assert found.rates(Stage.KNOWN).first == 0.5
    assert found.change(move) == pytest.approx((0.5, 0.5, 0.0, -0.2))
    assert found.change(other) == pytest.approx((0.0, 0.0, 0.0, -0.05))
    text = "\n".join(report(found))
    assert "a -> b up" in text
    assert "by more than 50.0 points, top 3 by 50.0, top 5 by 0.0, Brier by 0.200" in text
    assert "1 moves change something; 1 of them no first place" in text


def test_groups_hold_everything() -> None:
    assert [list(p) for p in parts([1, 2, 3], 2)] == [[1, 2], [3]]
