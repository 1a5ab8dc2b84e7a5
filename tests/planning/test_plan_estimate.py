"""The minutes a plan promises come from simulated jobs, each figure for itself."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import numpy as np
import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.history.shop import minutes_planned
from diagnose.output.documents.teardown import hands_on
from diagnose.planning.simulation import PlanEstimate, simulate
from diagnose.teardown.plan import Plan, PlanRequest
from knowledge.book import the_book
from tests.support.complaints import COMPLAINTS, path_of

BOOK = the_book()
CASES = Path(__file__).resolve().parents[2] / "cases"


@cache
def plan(name: str) -> Plan:
    return Plan(Diagnosis(BOOK, load(path_of(name), BOOK)))


@pytest.mark.parametrize("name", COMPLAINTS)
def test_the_mean_of_the_confirming_jobs_and_of_all_agree(name: str) -> None:
    """What confirms nothing takes the whole plan: the two means and the chance say the same."""
    found = plan(name).estimate
    mixed = found.found * found.until_confirmed + (1.0 - found.found) * found.worst
    assert mixed == pytest.approx(found.expected)
    assert 0.0 < found.until_confirmed <= found.expected <= found.worst


def test_the_two_means_stand_in_no_fixed_proportion() -> None:
    ratios = {n: plan(n).estimate.until_confirmed / plan(n).estimate.expected for n in COMPLAINTS}
    assert max(ratios.values()) > 1.2 * min(ratios.values())


@pytest.mark.parametrize("name", COMPLAINTS)
def test_the_mean_follows_from_the_chances_check_by_check(name: str) -> None:
    """The minutes by each check, weighted by the chance that this check confirms a cause."""
    estimate = plan(name).estimate
    minutes = np.cumsum([c.choice.option.minutes for c in plan(name).line])
    here = np.diff([0.0, *estimate.found_by])
    assert estimate.until_confirmed == pytest.approx(float(minutes @ here) / estimate.found)


def test_a_plan_that_confirms_nothing_is_marked() -> None:
    of = plan("heron")
    table, weight = of.chooser.outcome_tables.table, of.answer.planner.plan_state.weight
    none = simulate(of.line[:1], table, weight, until=1.1)
    assert (none.found, none.right) == (0.0, 0.0)
    assert none.until_confirmed == none.expected == none.worst
    assert hands_on(none).startswith("this plan confirms no cause; about ")


def test_no_plan_takes_no_time() -> None:
    of = plan("heron")
    table, weight = of.chooser.outcome_tables.table, of.answer.planner.plan_state.weight
    empty = simulate((), table, weight, until=0.9)
    assert (empty.until_confirmed, empty.expected, empty.worst, empty.found_by) == (0, 0, 0, ())


def test_the_figures_in_words() -> None:
    estimate = PlanEstimate(
        until_confirmed=81.6, expected=140.2, worst=900.0, found=0.7, found_by=(), right=0.9
    )
    assert hands_on(estimate) == (
        "on average 82 min hands-on where this plan confirms a cause; about 140 min on average, "
        "whether it does or not; 900 min where all of it is done"
    )


def test_the_shops_pace_rests_on_the_checks_that_were_made() -> None:
    """Minutes spent are compared with the book's for what was looked at, not for the whole plan."""
    assert minutes_planned(load(path_of("heron"), BOOK), BOOK) is None
    petrel, gannet = (CASES / f"{name}.toml" for name in ("petrel", "gannet"))
    planned = minutes_planned(load(petrel, BOOK), BOOK)
    early, whole = (minutes_planned(load(gannet, BOOK, last), BOOK) for last in (30, None))
    assert planned is not None
    assert early is not None
    assert whole is not None
    assert 0.0 < planned < early < whole


def test_inexperience_lengthens_minutes_in_proportion() -> None:
    slow = Plan(plan("heron").answer, PlanRequest(shop_pace=2.0)).estimate
    assert slow.until_confirmed > plan("heron").estimate.until_confirmed
