"""No pressure at the first start after a rebuild: a pump that was never primed."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "{layout}"\n'
BUILT = (
    '[[earlier]]\nno = 1\nwhat = "whole_engine"\ndone = "rebuilt"\nbefore = "straight before"\n'
    '[[behaviour]]\nno = 2\nshows = "none"\nduring = ["at start"]\n'
)
ENGINES = ("dry_sump_motorcycle", "skew_gear_four", "overhead_cam_four")


def finding(no: int, what: str, state: str = "present") -> str:
    return f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "{state}"\n'


def answer(layout: str, more: str = "") -> Diagnosis:
    return Diagnosis(BOOK, from_text(HEAD.format(layout=layout) + BUILT + more, None, BOOK))


def chance(layout: str, more: str = "", cause: str = "pump_not_primed") -> float:
    return answer(layout, more).inference.posterior.marginal[cause]


@pytest.mark.parametrize("layout", ENGINES)
def test_none_at_the_first_start_is_not_slow_after_standing(layout: str) -> None:
    found = answer(layout)
    derived = {c.finding.id for c in found.inference.result.derived if c.state.name == "PRESENT"}
    assert "none_from_first_start" in derived
    assert "slow_after_standing" not in derived
    assert not found.may_run


def test_an_older_build_may_only_be_slow() -> None:
    older = HEAD.format(layout=ENGINES[0]) + BUILT.replace("straight before", "2 years")
    derived = {
        c.finding.id for c in Diagnosis(BOOK, from_text(older, None, BOOK)).inference.result.derived
    }
    assert "slow_after_standing" in derived
    assert "none_from_first_start" not in derived


@pytest.mark.parametrize("layout", ENGINES)
def test_an_engine_that_was_not_primed_has_a_dry_pump(layout: str) -> None:
    unprimed = answer(layout, finding(3, "started_unprimed"))
    assert unprimed.ranking[0].cause.id == "pump_not_primed"
    assert unprimed.ranking[0].probability > 2 * chance(layout)
    weights = unprimed.reasons.for_cause("pump_not_primed")
    assert any("started_unprimed" in str(w) for w in weights)


@pytest.mark.parametrize("layout", ENGINES)
def test_an_engine_that_was_primed_hardly_has_one(layout: str) -> None:
    assert chance(layout, finding(3, "started_unprimed", "absent")) < 0.5 * chance(layout)


def test_no_return_to_the_tank_points_to_a_dry_pump_and_a_stop() -> None:
    none = finding(3, "no_return_to_tank")
    some = finding(3, "no_return_to_tank", "absent")
    assert chance(ENGINES[0], none) > 1.3 * chance(ENGINES[0])
    assert chance(ENGINES[0], some) < 0.5 * chance(ENGINES[0])
    assert answer(ENGINES[0], none).ranking[0].cause.id == "pump_not_primed"
    assert any("back to the tank" in a.says for a in answer(ENGINES[0], none).alarms)


def test_no_return_while_the_pressure_only_sinks_is_of_the_scavenge_stage() -> None:
    running = HEAD.format(layout=ENGINES[0]) + finding(1, "no_return_to_tank")
    running += finding(2, "sank_while_running")
    chances = Diagnosis(BOOK, from_text(running, None, BOOK)).inference.posterior.marginal
    assert chances["scavenge_failure"] > chances["pump_not_primed"]
