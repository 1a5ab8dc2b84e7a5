"""What a shop's closed jobs teach: the computation and the records of a folder."""

from __future__ import annotations

import random
from datetime import date
from functools import cache
from math import fsum, log
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import minimize

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.errors import NoCaseError
from diagnose.history.learning import (
    BOOK_COUNTS,
    JobShares,
    Learned,
    learn,
    learned_from,
    pace,
    plain_shares,
    prior_changes,
    shares,
)
from diagnose.history.shop import read_shop
from diagnose.history.work_done import checks_made, minutes_of_checks
from diagnose.inference.causegraph import priors
from knowledge.book import the_book
from tests.studies import history_study as study
from tests.support.history_jobs import KNOWN, SEEN, a_folder, job_text, three_jobs

BOOK = the_book()
PLAIN = plain_shares(BOOK)
CAUSES = sorted(PLAIN)

# ------------------------------------------------------------------------------------- the sums


def test_a_textbooks_worked_example() -> None:
    """Bayesian Data Analysis, 3rd edition, section 3.4: a poll of 1447 adults, 727 for one
    candidate, 583 for another, 137 for others or none, and a uniform prior: Dirichlet(728, 584, 138).
    """
    third = dict.fromkeys("abc", 1 / 3)
    jobs = [
        JobShares((c,), third)
        for c, n in zip("abc", (727, 583, 137), strict=True)
        for _ in range(n)
    ]
    found = learn(third, jobs, counts=3.0)
    for cause, counted in zip("abc", (728, 584, 138), strict=True):
        assert found.share[cause] == pytest.approx(counted / 1450, rel=1e-12)


@st.composite
def alike(draw: st.DrawFn) -> tuple[dict[str, float], list[str]]:
    """A small book's shares, and what its jobs were."""
    weights = draw(st.lists(st.floats(0.1, 10.0), min_size=2, max_size=8))
    share = {f"c{i}": w / fsum(weights) for i, w in enumerate(weights)}
    return share, draw(st.lists(st.sampled_from(sorted(share)), max_size=30))


@given(alike(), st.floats(1.0, 500.0))
def test_jobs_alike_give_the_posterior_mean(
    shop: tuple[dict[str, float], list[str]], counts: float
) -> None:
    """(a + n) / (A + N) for every cause; the shares sum to one."""
    share, jobs = shop
    found = learn(share, [JobShares((c,), share) for c in jobs], counts)
    for cause, p in share.items():
        due = (counts * p + jobs.count(cause)) / (counts + len(jobs))
        assert found.share[cause] == pytest.approx(due, rel=1e-9)
        assert found.factor[cause] == pytest.approx(due / p, rel=1e-9)
        assert found.expected[cause] == pytest.approx(len(jobs) * p)
    assert fsum(found.share.values()) == pytest.approx(1.0, abs=1e-12)


@st.composite
def mixed(draw: st.DrawFn) -> tuple[dict[str, float], list[JobShares]]:
    """Jobs on engines that each have shares of their own, and cannot have everything."""
    share, _ = draw(alike())
    jobs = []
    for _ in range(draw(st.integers(0, 12))):
        weight = {
            c: p * draw(st.sampled_from([0.0, 0.15, 0.5, 1.0, 2.0, 16.0])) for c, p in share.items()
        }
        was = draw(st.lists(st.sampled_from(sorted(share)), min_size=1, max_size=2, unique=True))
        weight |= {c: weight[c] or share[c] for c in was}
        jobs.append(
            JobShares(tuple(was), {c: w / fsum(weight.values()) for c, w in weight.items() if w})
        )
    return share, jobs


@given(mixed())
@settings(max_examples=30)
def test_mixed_jobs_against_a_general_optimiser(
    shop: tuple[dict[str, float], list[JobShares]],
) -> None:
    """Nothing makes book counts and jobs together likelier than the learned factors."""
    share, jobs = shop
    names, counts = list(share), 10.0
    base = np.array([share[c] for c in names])
    rows = np.array([[j.shares.get(c, 0.0) for c in names] for j in jobs]).reshape(-1, len(names))
    was = np.array([sum(1 / len(j.causes) for j in jobs if c in j.causes) for c in names])

    def unlikely(logs: np.ndarray[tuple[int], np.dtype[np.float64]]) -> float:
        of_book = counts * float(np.log(base @ np.exp(logs)))
        of_jobs = float(np.log(rows @ np.exp(logs)).sum())
        return of_book + of_jobs - float((counts * base + was) @ logs)

    found = learn(share, jobs, counts)
    learned = np.log([found.factor[c] for c in names])
    other = minimize(unlikely, np.zeros(len(names)), method="BFGS", options={"gtol": 1e-9})
    assert unlikely(learned) <= other.fun + 1e-7
    assert learned == pytest.approx(other.x - np.log(base @ np.exp(other.x)), abs=2e-3)


@given(mixed(), st.randoms(use_true_random=False))
def test_order_and_deleting(
    shop: tuple[dict[str, float], list[JobShares]], rng: random.Random
) -> None:
    """The order of jobs does not matter, and a job taken away is as if it had never been."""
    share, jobs = shop
    shuffled = rng.sample(jobs, len(jobs))
    assert learn(share, shuffled) == learn(share, jobs)
    for job in jobs:
        more = learn(share, [*jobs, job])
        left = [*jobs, job]
        left.remove(job)
        assert learn(share, left) == learn(share, jobs)
        assert more.jobs == len(jobs) + 1
    assert fsum(learn(share, jobs).share.values()) == pytest.approx(1.0, abs=1e-12)


@given(mixed(), st.data())
def test_one_job_more_of_a_cause_never_makes_it_rarer(
    shop: tuple[dict[str, float], list[JobShares]], data: st.DataObject
) -> None:
    """And it makes every other cause rarer beside it."""
    share, jobs = shop
    cause = data.draw(st.sampled_from(sorted(share)))
    before = learn(share, jobs)
    after = learn(share, [*jobs, JobShares((cause,), share)])
    assert after.share[cause] > before.share[cause]
    for other in share:
        if other != cause:
            was = before.share[other] / before.share[cause]
            assert after.share[other] / after.share[cause] < was


def test_no_jobs_are_the_book() -> None:
    """To the last bit."""
    found = learned_from([], BOOK)
    assert set(found.factor.values()) == {1.0}
    assert found.share == PLAIN
    assert prior_changes(found, BOOK) == ()


def test_no_cause_becomes_nothing_and_none_everything() -> None:
    """A thousand jobs of one cause: why no bound is needed."""
    found = learn(PLAIN, [JobShares(("relief_debris",), PLAIN)] * 1000)
    assert 0.8 < found.share["relief_debris"] < 1.0
    least = min(f for c, f in found.factor.items() if c != "relief_debris")
    assert least == pytest.approx(BOOK_COUNTS / (BOOK_COUNTS + 1000))


def test_a_job_with_two_causes_counts_half_for_each() -> None:
    found = learn(PLAIN, [JobShares(("oil_level_low", "relief_debris"), PLAIN)])
    assert (found.found["relief_debris"], found.found["oil_level_low"]) == (0.5, 0.5)
    due = (BOOK_COUNTS * PLAIN["relief_debris"] + 0.5) / (BOOK_COUNTS + 1)
    assert found.share["relief_debris"] == pytest.approx(due)


@cache
def rebuilt() -> dict[str, float]:
    """The book's shares for an engine that has just been rebuilt."""
    text = job_text(findings='[[finding]]\nno = 1\nwhat = "freshly_rebuilt"\nstate = "present"\n')
    return shares(BOOK, Diagnosis(BOOK, from_text(text, None, BOOK)).inference.result)


def test_a_shop_that_rebuilds_is_not_counted_twice() -> None:
    """Two thousand rebuilt engines with the causes the book gives such engines teach little;
    held against the plain book, the same jobs would move the rates by far more."""
    rng = random.Random(1)
    names = list(rebuilt())
    drawn = rng.choices(names, list(rebuilt().values()), k=2000)

    def off(found: Learned) -> float:
        return sum(p * abs(log(found.factor[c])) for c, p in found.share.items())

    own = off(learn(PLAIN, [JobShares((c,), rebuilt()) for c in drawn]))
    against_plain = off(learn(PLAIN, [JobShares((c,), PLAIN) for c in drawn]))
    assert own < 0.25
    assert against_plain > 2 * own


# ---------------------------------------------------------------------------- in a diagnosis

EXAMPLE = Path(__file__).parents[2] / "cases" / "petrel.toml"


def test_without_history_nothing_changes() -> None:
    """No factors, an empty table of them and factors of one: the same answer, to the last bit."""
    case = load(EXAMPLE, BOOK)
    plain = Diagnosis(BOOK, case)
    for factor in (None, {}, dict.fromkeys(CAUSES, 1.0)):
        answer = Diagnosis(BOOK, case, learned=factor)
        assert answer.inference.network.prior == plain.inference.network.prior
        assert answer.ranking == plain.ranking
        assert answer.inference.posterior.log_evidence == plain.inference.posterior.log_evidence


def test_factors_multiply_what_history_facts_left() -> None:
    """A factor changes a cause's prior beside any other by just that factor; shifts still count."""
    case = from_text(
        job_text(findings='[[finding]]\nno = 1\nwhat = "freshly_rebuilt"\nstate = "present"\n'),
        None,
        BOOK,
    )
    conclusions = Diagnosis(BOOK, case).inference.result
    was = priors(BOOK.causes, conclusions)
    now = priors(BOOK.causes, conclusions, {"relief_debris": 3.0, "no_such_cause": 9.0})
    assert set(now) == set(was)
    ratio = now["relief_debris"] / was["relief_debris"]
    other = now["oil_level_low"] / was["oil_level_low"]
    assert ratio / other == pytest.approx(3.0)
    assert fsum(now.values()) == pytest.approx(fsum(was.values()))


# -------------------------------------------------------------------------- records of a folder


def test_records(tmp_path: Path) -> None:
    shop = read_shop(three_jobs(tmp_path), BOOK)
    assert [j.path.name for j in shop.jobs] == ["dunlin.toml", "eider.toml"]
    assert (shop.open, shop.left_out) == (1, ())
    dunlin, eider = shop.jobs
    assert dunlin.minutes_spent == pytest.approx(40.0)
    assert dunlin.minutes_planned is None
    assert (dunlin.closed_on, eider.closed_on) == (date(2026, 5, 1), None)
    assert dunlin.layout.id == "skew_gear_four"
    assert [c.id for c in eider.causes] == ["relief_debris", "oil_level_low"]
    assert eider.minutes_spent is None
    found = learned_from(shop.counted(), BOOK)
    assert (found.jobs, found.found["relief_debris"]) == (2, 1.5)
    assert prior_changes(found, BOOK)[0].cause == "relief_debris"


def test_a_job_taken_out_of_the_folder_is_forgotten(tmp_path: Path) -> None:
    three_jobs(tmp_path)
    before = learned_from(read_shop(tmp_path, BOOK).counted(), BOOK)
    more = a_folder(tmp_path, whimbrel=job_text("coolant_in_oil")) / "whimbrel.toml"
    assert learned_from(read_shop(tmp_path, BOOK).counted(), BOOK) != before
    shop = read_shop(tmp_path, BOOK)
    assert learned_from(shop.counted(but=more), BOOK) == before, "the job in hand does not speak"
    more.unlink()
    assert learned_from(read_shop(tmp_path, BOOK).counted(), BOOK) == before


def test_of_comebacks_only_the_last_counts(tmp_path: Path) -> None:
    a_folder(
        tmp_path,
        a=job_text("oil_level_low"),
        b=job_text("pump_gear_wear", comeback="../jobs/a.toml"),
        c=job_text("relief_debris", comeback="b"),
        d=job_text("coolant_in_oil", comeback="d.toml"),
        e=job_text("coolant_in_oil", comeback="gone.toml"),
        f=job_text("coolant_in_oil", comeback="g.toml"),
        g=job_text("coolant_in_oil", comeback="f.toml"),
    )
    shop = read_shop(tmp_path, BOOK)
    assert [j.path.stem for j in shop.counted()] == ["c", "d", "e"]
    why = {r.name[0]: r.why for r in shop.remarks}
    assert set(why) == {"d", "e", "f", "g"}
    assert "itself" in why["d"]
    assert "gone.toml, which is no closed job" in why["e"]
    assert "circle" in why["f"]


def test_a_cause_the_layout_cannot_have(tmp_path: Path) -> None:
    """It was found all the same: the job is taken as one of any engine."""
    layout, cause = next(
        (name, c)
        for name in study.LAYOUTS
        for c in CAUSES
        if c not in study.book_shares(study.Engine(name, ()))
    )
    shop = read_shop(a_folder(tmp_path, a=job_text(cause, layout=layout)), BOOK)
    found = learned_from(shop.counted(), BOOK)
    assert found.found[cause] == 1.0
    assert found.factor[cause] > 1.0


def test_minutes_planned_on_request(tmp_path: Path) -> None:
    """Those of the checks that were made: what was only said took none to compare with."""
    a_folder(tmp_path, a=job_text("relief_debris"), b=job_text("oil_level_low", findings=KNOWN))
    a_folder(tmp_path, c=job_text("oil_level_low", findings=SEEN))
    first, second, third = read_shop(tmp_path, BOOK, planned=True).jobs
    assert first.minutes_planned == third.minutes_planned
    assert second.minutes_planned is None
    case = from_text(job_text("relief_debris"), None, BOOK)
    pulled = BOOK.inspections["pull_the_relief_valve"]
    assert checks_made(Diagnosis(BOOK, case)) == (pulled,)
    assert first.minutes_planned is not None
    assert pulled.minutes <= first.minutes_planned < 60.0
    found = pace([first, second, third])
    assert found.jobs == 2


def test_a_trusted_gauge_and_a_stick_cost_what_they_take() -> None:
    """The minutes are those of these two checks, not those of a whole plan."""
    text = (
        'schema = 1\n[[finding]]\nno = 1\nwhat = "fuel_smell"\nstate = "present"\n'
        '[[reading]]\nno = 2\nrpm = "700 rpm"\npressure = "8 psi"\ngauge = "direct"\n'
    )
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    made = {c.id for c in checks_made(answer)}
    assert made == {"fit_a_direct_gauge", "read_the_stick"}
    minutes = minutes_of_checks(answer)
    assert minutes is not None
    assert minutes < 60.0


def test_no_such_folder(tmp_path: Path) -> None:
    (tmp_path / "a.toml").write_text("")
    for name in ("gone", "a.toml", "a.toml/b", "x" * 300, "nul\0"):
        with pytest.raises(NoCaseError):
            read_shop(tmp_path / name, BOOK)
