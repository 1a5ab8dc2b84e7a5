"""What a question is worth by Shannon's definition, and whether it could change the next check."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np
import pytest

from diagnose.planning.choosing import Chooser
from diagnose.planning.options import PlanState
from diagnose.planning.outcome_tables import OutcomeTables
from diagnose.planning.precedence import Precedence
from diagnose.planning.questions import LOOK_EFFORT, Candidate, NextCheck, by_value, most_telling
from knowledge.model import Finding, Stage
from tests.support.planning_examples import OUTSIDE, check, finding, table_of


def entropy(weights: Sequence[float]) -> float:
    total = sum(weights)
    return -math.fsum(w / total * math.log2(w / total) for w in weights if w > 0)


@pytest.mark.parametrize("seed", range(20))
def test_the_question_of_most_bits_for_its_trouble(seed: int) -> None:
    """Shannon's information by its definition; a check from outside must give 2.5 times as much."""
    rng = np.random.default_rng(seed)
    weight: list[float] = rng.dirichlet(np.ones(4)).tolist()
    stages = (Stage.KNOWN, Stage.OUTSIDE, Stage.OPENED)
    asked = [finding(f"f{i}", stages[i % 3]) for i in range(9)]
    signs: dict[str, list[float]] = {f.id: rng.uniform(0.02, 0.98, 4).tolist() for f in asked}
    trouble = {Stage.KNOWN: 1.0, Stage.OUTSIDE: 2.5}

    def bits(f: Finding) -> float:
        yes = [w * p for w, p in zip(weight, signs[f.id], strict=True)]
        no = [w - y for w, y in zip(weight, yes, strict=True)]
        return entropy(weight) - sum(yes) * entropy(yes) - sum(no) * entropy(no)

    worth = {f: bits(f) / trouble[f.stage] for f in asked[1:] if f.stage in trouble}
    table = table_of(tuple(weight), **signs)
    candidates = [Candidate(f, (f,), trouble[f.stage]) for f in worth]
    found = [c.question for c in by_value(candidates, table)]
    assert found == sorted((f for f in worth if worth[f] >= 0.01), key=lambda f: -worth[f])
    assert most_telling(table, asked, 2) == tuple(sorted(asked, key=lambda f: -bits(f))[:2])


def test_related_findings_are_worth_more_as_one_question() -> None:
    """Three causes with a sign each: one question with choices tells all, a yes or no one of them."""
    third = 1 / 3
    table = table_of((third,) * 3, a=(1.0, 0.0, 0.0), b=(0.0, 1.0, 0.0), c=(0.0, 0.0, 1.0))
    a, b, c = map(finding, "abc")
    together, alone = Candidate("all", (a, b, c)), Candidate("a", (a,))
    assert together.bits(table) == pytest.approx(math.log2(3))
    assert alone.bits(table) == pytest.approx(entropy([1, 2]))
    assert Candidate("a", (a,), LOOK_EFFORT).bits(table) == pytest.approx(entropy([1, 2]) / 2.5)
    assert [c.question for c in by_value([alone, together], table)] == ["all", "a"]
    assert by_value([Candidate("none", (finding("nobody_shows_it"),))], table) == []


def test_a_question_that_could_change_the_next_check() -> None:
    """Cheap check of cause one, dear check of cause two: which comes first goes by the answer."""
    table = table_of(
        (0.5, 0.3, 0.2),
        a=(0.9, 0.0, 0.0),
        b=(0.0, 0.9, 0.0),
        tells=(0.05, 0.95, 0.5),
        idle=(0.5, 0.5, 0.5),
        seldom=(0.0, 0.1, 0.0),
    )
    checks = check("i1", 5, finding("a")), check("i2", 6, finding("b"))
    chooser = Chooser(OutcomeTables(table), OUTSIDE, checks, Precedence(frozenset()))
    state = PlanState(table.weight, frozenset(), frozenset())
    following = NextCheck(table, chooser, state)
    assert following.changed_by([finding("tells")])
    assert not following.changed_by([finding("idle")])
    assert not following.changed_by([finding("seldom")]), "one answer in thirty"
    assert not following.changed_by([finding("nobody_shows_it")])
