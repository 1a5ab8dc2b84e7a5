"""A relief valve that does not relieve: what it should open at, and what freeing it brings."""

from __future__ import annotations

import numpy as np
import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.circuit.budget import budget
from diagnose.circuit.deviations import deviations
from diagnose.circuit.forecast import forecast
from diagnose.circuit.sizing import sizing
from diagnose.entry.requests import parse_fixes
from diagnose.output.documents.budget import budget_document
from diagnose.output.documents.forecast import forecast_document
from knowledge.book import the_book
from knowledge.units import PSI

BOOK = the_book()
HIGH = ((700, 85), (1800, 85))
SOUND = ((700, 25), (1800, 50))


def tractor(read: tuple[tuple[int, int], ...], *found: str) -> Case:
    """A tractor's engine, read hot on a trusted gauge, with these things seen."""
    text = 'schema = 1\n[engine]\nlayout = "tractor_diesel"\n'
    for no, (rpm, psi) in enumerate(read, 1):
        text += f'[[reading]]\nno = {no}\ngauge = "direct"\nrpm = "{rpm} rpm"\noil = "90 C"\n'
        text += f'pressure = "{psi} psi"\n'
    for no, what in enumerate(found, 11):
        text += f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\n'
    return from_text(text, None, BOOK)


@pytest.mark.parametrize("found", ["relief_valve_stayed_shut", "relief_found_stuck"])
def test_freeing_a_valve_that_held_too_much_brings_the_pressure_down(found: str) -> None:
    case = tractor(HIGH, found)
    document = forecast_document(forecast(case, [], plans=parse_fixes(["relief"], case)))
    assert document.fits
    assert "nothing was found there" not in document.settings[0].says
    fast = max(document.speeds, key=lambda row: row.rpm)
    slow = min(document.speeds, key=lambda row: row.rpm)
    assert slow.hot_before.mean / PSI == pytest.approx(80, abs=10)
    assert slow.hot_after.mean < slow.hot_before.mean - 12 * PSI
    assert fast.cold_after.mean < fast.cold_before.mean - 12 * PSI


def test_the_spring_is_set_for_the_sound_engine_not_for_what_the_fault_shows() -> None:
    """85 psi on the gauge of a stuck valve is no setting; a kind of engine has one."""
    high = sizing(tractor(HIGH, "relief_valve_stayed_shut")).spring.setting
    sound = sizing(tractor(SOUND)).spring.setting
    assert high == pytest.approx(sound, rel=0.1)
    assert high < 65 * PSI


def test_a_valve_stuck_somewhere_held_too_much_only_where_the_gauge_says_so() -> None:
    stuck = [
        [d.id for d in deviations(tractor(read, "relief_found_stuck"), 8, np.random.default_rng(1))]
        for read in (HIGH, SOUND)
    ]
    assert stuck == [["relief_setting"], []]


def test_a_budget_of_too_much_pressure_misses_none() -> None:
    case = tractor(HIGH, "relief_valve_stayed_shut")
    idle = budget_document(budget(case), case).accounts[0]
    assert idle.verdict.startswith("Nothing is missing: the gauge reads ")
