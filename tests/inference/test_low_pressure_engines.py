"""Side-valve engines run at low pressure and idle slowly: a healthy one is no finding."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.library import read_words
from knowledge.book import the_book

BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "{layout}"\n'


def reading(no: int, psi: int, oil: str, rpm: str) -> str:
    return (
        f'[[reading]]\nno = {no}\npressure = "{psi} psi"\noil = "{oil}"\nrpm = "{rpm}"\n'
        'gauge = "direct"\n'
    )


#: a healthy tractor: idle, working speed, cold
HEALTHY = reading(1, 12, "90 C", "500 rpm") + reading(2, 28, "90 C", "1300 rpm")
HEALTHY += reading(3, 32, "15 C", "550 rpm")
IN_A_TRACTOR = '[[finding]]\nno = 9\nwhat = "in_a_tractor"\nstate = "present"\n'


def answer(layout: str, more: str) -> Diagnosis:
    return Diagnosis(BOOK, from_text(HEAD.format(layout=layout) + more, None, BOOK))


def present(diagnosis: Diagnosis) -> set[str]:
    derived = diagnosis.inference.result.derived
    return {c.finding.id for c in derived if c.state.name == "PRESENT"}


def test_a_healthy_one_is_not_low() -> None:
    found = answer("side_valve", HEALTHY)
    assert not present(found) & {"direct_gauge_low", "low_even_cold", "idle_below_spec"}
    assert not any(a.low for a in found.alarms)


def test_next_to_nothing_is_low_here_too() -> None:
    found = answer("side_valve", reading(1, 2, "90 C", "500 rpm"))
    assert "direct_gauge_low" in present(found)
    assert not found.may_run


def test_no_circuit_of_another_engine_stands_for_it() -> None:
    assert answer("side_valve", HEALTHY).inference.survey is None


@pytest.mark.parametrize("rpm", ["400 rpm", "450 rpm", "550 rpm"])
def test_a_tractors_own_idle_is_not_too_slow(rpm: str) -> None:
    slow = reading(1, 12, "90 C", rpm)
    assert "idle_below_spec" not in present(answer("skew_gear_four", slow + IN_A_TRACTOR))


def test_a_cars_idle_of_550_is_too_slow_and_a_diesel_tractors() -> None:
    slow = reading(1, 12, "90 C", "550 rpm")
    assert "idle_below_spec" in present(answer("skew_gear_four", slow))
    assert "idle_below_spec" in present(answer("tractor_diesel", slow))


@pytest.mark.parametrize(
    "words", ["1940s flathead 4 cyl tractor", "old sidevalve six", "L-head tractor, runs hot"]
)
def test_side_valves_are_read_as_the_kind(words: str) -> None:
    facts = read_words(words).facts
    assert [f.fields["layout"] for f in facts if f.table == "layout"] == ["side_valve"]
