"""Checks behind covers: bottom-up P over C against exhaustive search and published examples."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.planning.covers import Block, Job, blocks, order
from tests.support.examples import examples


def every_order(
    jobs: Sequence[Job[str]], done: tuple[Job[str], ...] = ()
) -> Iterator[tuple[Job[str], ...]]:
    """All orders in which each job comes after the one it is behind."""
    if len(done) == len(jobs):
        yield done
    open_ = {job.id for job in done}
    for job in jobs:
        if job not in done and (job.behind is None or job.behind in open_):
            yield from every_order(jobs, (*done, job))


def expected_cost(jobs: Sequence[Job[str]]) -> float:
    """Expected cost until the fault is found or all is done: Σ cost × P(not found before)."""
    left, total = 1.0, 0.0
    for job in jobs:
        total += job.cost * left
        left -= job.chance
    return total


def planned(jobs: Sequence[Job[str]]) -> tuple[Job[str], ...]:
    by = {job.id: job for job in jobs}
    return tuple(by[name] for name in order(jobs))


@st.composite
def trees(draw: st.DrawFn) -> list[Job[str]]:
    """Up to seven checks and covers; chances sum to one at most, covers find nothing."""
    many = draw(st.integers(1, 7))
    raw = [draw(st.integers(0, 10)) for _ in range(many)]
    share = draw(st.floats(0.1, 1.0)) / max(sum(raw), 1)
    return [
        Job(
            str(i),
            raw[i] * share,
            float(draw(st.integers(1, 12))),
            None if i == 0 else draw(st.sampled_from([None, *map(str, range(i))])),
        )
        for i in range(many)
    ]


@settings(max_examples=examples(300), deadline=None)
@given(trees())
def test_bottom_up_equals_exhaustive_search(jobs: list[Job[str]]) -> None:
    """Random trees, every admissible order tried: no order costs less (Horn 1972)."""
    best = min(expected_cost(o) for o in every_order(jobs))
    assert expected_cost(planned(jobs)) == pytest.approx(best, rel=1e-12, abs=1e-12)


@settings(max_examples=examples(200), deadline=None)
@given(trees())
def test_every_job_once_and_needs_first(jobs: list[Job[str]]) -> None:
    done: set[str] = set()
    for job in planned(jobs):
        assert job.behind is None or job.behind in done
        done.add(job.id)
    assert done == {job.id for job in jobs}
    ratios = [block.ratio for block in blocks(jobs)]
    assert ratios == sorted(ratios, reverse=True)


def weighted(
    times: Sequence[float], weights: Sequence[float], behind: Sequence[int | None]
) -> list[Job[str]]:
    """Jobs of a scheduling example, numbered from one; weights stand for chances."""
    whose = [None if b is None else str(b) for b in behind]
    return [
        Job(str(i), w, t, b)
        for i, (t, w, b) in enumerate(zip(times, weights, whose, strict=True), 1)
    ]


def completion(jobs: Sequence[Job[str]]) -> float:
    """Sum of weight times completion time."""
    total = time = 0.0
    for job in jobs:
        time += job.cost
        total += job.chance * time
    return total


def test_two_jobs_of_kleinberg_and_tardos() -> None:
    """Kleinberg & Tardos, Algorithm Design, chapter 4, exercise 13: times 1, 3, weights 10, 2."""
    jobs = weighted([1, 3], [10, 2], [None, None])
    assert completion(jobs) == 18
    assert completion(jobs[::-1]) == 46
    assert completion(planned(jobs)) == 18


def test_chains_of_pinedo() -> None:
    """Pinedo, Scheduling, chains 1>2>3>4 and 5>6>7 [from memory]: 1 2 5 6 3 7 4."""
    jobs = weighted([3, 6, 6, 5, 4, 8, 10], [6, 18, 12, 8, 8, 17, 18], [None, 1, 2, 3, None, 5, 6])
    assert order(jobs) == ["1", "2", "5", "6", "3", "7", "4"]
    assert completion(planned(jobs)) == min(completion(o) for o in every_order(jobs))


def test_tied_chains_of_sidneys_decomposition() -> None:
    """A public test case of Sidney's decomposition: {0, 2} with ratio 3, then {1, 3} with 1."""
    jobs = weighted([1, 1, 1, 1], [3, 1, 3, 1], [None, 1, None, 3])
    found = blocks(jobs)
    assert [sorted(b.jobs) for b in found if b.ratio == 3] == [["1"], ["3"]]
    assert sum(b.chance for b in found if b.ratio == 1) == 2
    assert {j for b in found[:2] for j in b.jobs} == {"1", "3"}


def test_the_bound_example_of_ottosen_and_jensen() -> None:
    """Ottosen & Jensen, A* wars (2008): two actions of unit cost curing with 0.9 and 0.8: 1.1."""
    assert expected_cost([Job("a", 0.9, 1.0), Job("b", 0.08, 1.0)]) == pytest.approx(1.1)


@pytest.mark.parametrize(
    ("jobs", "right", "cost"),
    [
        (
            [("A", 0.05, 2, None), ("X", 0, 6, None), ("B", 0.30, 1, "X"), ("C", 0.15, 1, "X"),
             ("Y", 0, 10, "X"), ("D", 0.25, 2, "Y"), ("E", 0.23, 1, "Y")],
            "XBCYEDA",
            14.53,
        ),
        (
            [("A", 0.08, 1, None), ("X", 0, 6, None), ("B", 0.05, 1, "X"), ("C", 0.02, 1, "X"),
             ("Y", 0, 10, "X"), ("D", 0.55, 2, "Y"), ("E", 0.28, 1, "Y")],
            "AXYEDBC",
            18.05,
        ),
    ],
)  # fmt: skip
def test_straight_through_a_cover(
    jobs: list[tuple[str, float, float, str | None]], right: str, cost: float
) -> None:
    """Our own examples, the optimum confirmed by exhaustive search."""
    made = [Job(*job) for job in jobs]
    assert expected_cost(planned(made)) == pytest.approx(cost)
    assert min(expected_cost(o) for o in every_order(made)) == pytest.approx(cost)
    assert "".join(order(made)) == right


def test_a_cover_that_is_not_there() -> None:
    with pytest.raises(ValueError, match="behind b"):
        blocks([Job("a", 0.1, 1.0, "b")])
    with pytest.raises(ValueError, match="behind itself"):
        blocks([Job("a", 0.1, 1.0, "a")])


def test_free_jobs_come_first() -> None:
    assert blocks([Job("dear", 0.9, 1.0), Job("free", 0.01, 0.0)])[0].jobs == ("free",)
    assert Block(("nothing",), 0.0, 0.0).ratio == 0.0
    assert math.isinf(Block(("free",), 0.1, 0.0).ratio)
