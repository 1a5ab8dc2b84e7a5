"""A variable pump stuck in its low stage, and a rotor that shattered on the crank nose."""

from __future__ import annotations

from functools import cache

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()


@cache
def diagnosed(layout: str, has: str, *findings: str) -> Diagnosis:
    """An engine with a feature and these findings."""
    stated = f'has = ["{has}"]\n' if has else ""
    entries = "".join(
        f'[[finding]]\nno = {n}\nwhen = 2026-01-01\nwhat = "{what}"\nstate = "present"\n'
        for n, what in enumerate(findings, 1)
    )
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{stated}{entries}'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


def chance(answer: Diagnosis, cause: str) -> float:
    return answer.inference.posterior.marginal.get(cause, 0.0)


def test_a_control_can_stick_only_where_there_is_one() -> None:
    stuck = "pump_control_stuck"
    assert chance(diagnosed("distributor_v8", "", "capped_low"), stuck) == 0.0
    unknown = chance(diagnosed("overhead_cam_four", "", "capped_low"), stuck)
    known = chance(diagnosed("overhead_cam_four", "variable_pump", "capped_low"), stuck)
    assert known > 2 * unknown > 0.0


def test_a_pump_that_stays_low_is_stuck() -> None:
    answer = diagnosed("overhead_cam_four", "variable_pump", "capped_low", "pump_stays_low")
    assert answer.ranking[0].cause.id == "pump_control_stuck"


def test_a_pump_that_rises_only_unplugged_is_held_low() -> None:
    """Pressure that jumps up as the solenoid is unplugged points to its control."""
    answer = diagnosed("overhead_cam_four", "variable_pump", "capped_low", "pump_rises_unplugged")
    without = diagnosed("overhead_cam_four", "variable_pump", "capped_low")
    assert chance(answer, "pump_control_stuck") > 1.5 * chance(without, "pump_control_stuck")
    assert answer.ranking[0].cause.id == "pump_control_stuck"


def test_a_broken_rotor_on_a_raced_crank() -> None:
    """It shattered by itself more often there than on a street engine's skew gear."""
    seen = ("gauge_reads_zero", "fell_suddenly", "pump_gear_broken", "raced_or_heeled")
    raced = diagnosed("crank_nose_v8", "", *seen)
    street = diagnosed("skew_gear_four", "", *seen[:-1])
    assert chance(raced, "pump_rotor_shattered") > 3 * chance(street, "pump_rotor_shattered")
