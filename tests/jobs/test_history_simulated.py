"""What closed jobs teach simulated shops, and the pace of a shop."""

from __future__ import annotations

import random
from collections.abc import Mapping
from math import exp, fsum, log
from statistics import mean

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.diagnosis import Diagnosis
from diagnose.history.learning import (
    MOST_PACE,
    PLAN_COUNTS,
    JobShares,
    ShopPace,
    learn,
    plain_shares,
)
from knowledge.book import the_book
from tests.studies import history_study as study

BOOK = the_book()
PLAIN = plain_shares(BOOK)
CAUSES = sorted(PLAIN)

# ----------------------------------------------------------------------------------------- pace


@given(st.lists(st.tuples(st.floats(0.0, 1e4), st.floats(1.0, 1e4)), max_size=20))
def test_pace_keeps_between_one_and_the_shops_own(figures: list[tuple[float, float]]) -> None:
    """Never beyond its bounds, nor beyond what the jobs themselves say."""
    found = ShopPace([s for s, _ in figures], [p for _, p in figures])
    spent, planned = (fsum(column) for column in zip(*figures, strict=True)) if figures else (0, 0)
    usual = PLAN_COUNTS * planned / len(figures) if figures else 1.0
    by_hand = (spent + usual) / (planned + usual)
    assert found.factor == pytest.approx(min(max(by_hand, 0.5), 3.0), rel=1e-9)
    own = spent / planned if figures else 1.0
    if 0.5 < by_hand < 3.0:
        assert min(own, 1.0) - 1e-9 <= found.factor <= max(own, 1.0) + 1e-9
    slower = ShopPace([s + 100.0 for s, _ in figures], [p for _, p in figures])
    assert slower.factor >= found.factor


def test_pace_by_hand() -> None:
    """Ten jobs that took twice their time, and ten that went to plan counted in."""
    assert ShopPace([200.0] * 10, [100.0] * 10).factor == pytest.approx(
        (10 * 200 + PLAN_COUNTS * 100) / (10 * 100 + PLAN_COUNTS * 100)
    )
    assert ShopPace([], []).factor == 1.0
    assert ShopPace([1e6] * 50, [10.0] * 50).factor == MOST_PACE


# ------------------------------------------------------------------------------ simulated shops


def gain(shop: Mapping[str, float], n: int, rng: random.Random) -> float:
    """Nats that n closed jobs add to the mean log score of a fresh job before anything is known."""
    true = {c: PLAIN[c] * shop[c] for c in CAUSES}
    whole = fsum(true.values())
    drawn = rng.choices(CAUSES, list(true.values()), k=n)
    found = learn(PLAIN, [JobShares((c,), PLAIN) for c in drawn])
    return fsum(p / whole * log(found.factor[c]) for c, p in true.items())


@pytest.mark.parametrize("spread", [0.0, 0.5, 1.0, 1.5])
def test_learning_before_anything_is_known(spread: float) -> None:
    """Over many shops: what differs gains the more the more jobs; what is alike loses next to
    nothing; a few jobs never do harm worth speaking of."""
    rng = random.Random(8)
    shops = [{c: exp(rng.gauss(0.0, spread)) for c in CAUSES} for _ in range(60)]
    gains = {n: [gain(shop, n, rng) for shop in shops] for n in (1, 2, 3, 5, 20, 80)}
    for n in (1, 2, 3):
        assert min(gains[n]) > -0.05
    assert min(mean(g) for g in gains.values()) > -0.06
    if spread >= 1.0:
        assert 0.0 < mean(gains[5]) < mean(gains[20]) < mean(gains[80])


def test_the_study_ranks_as_a_diagnosis_does() -> None:
    rng = random.Random(2)
    shop = study.a_shop(rng, 1.0)
    job = study.fresh(shop, rng)
    factor = learn(PLAIN, [study.closed(shop, rng) for _ in range(30)]).factor
    answer = Diagnosis(BOOK, job.answer.case, learned=factor)
    found = study.ranked(job, factor)
    assert {r.cause.id: r.began for r in answer.ranking} == pytest.approx(found)


def test_fresh_jobs_are_ranked_better() -> None:
    """One simulated shop, whole reviews: eighty closed jobs help, three do no harm."""
    rows = study.study(1, 20, 1.0, (0, 3, 80))
    gains = {n: mean(r[n].log_score - r[0].log_score for r in rows) for n in (3, 80)}
    assert gains[80] > 0.01
    assert min(r[3].log_score - r[0].log_score for r in rows) > -0.05
    assert [line.split()[0] for line in study.lines_of(rows)] == ["closed", "0", "3", "80"]


@pytest.mark.long
def test_many_simulated_shops() -> None:
    """Better with every step for shops of their own; next to no harm for shops like the book."""
    own = study.study(12, 60, 1.0, (0, 1, 3, 20, 80))
    alike = study.study(12, 60, 0.0, (0, 1, 3, 20, 80))

    def gained(rows: list[dict[int, study.Scored]], n: int) -> float:
        return mean(r[n].log_score - r[0].log_score for r in rows)

    assert 0.0 < gained(own, 20) < gained(own, 80)
    for rows in (own, alike):
        assert min(r[n].log_score - r[0].log_score for r in rows for n in (1, 3)) > -0.05
        assert min(gained(rows, n) for n in (1, 3, 20, 80)) > -0.06
