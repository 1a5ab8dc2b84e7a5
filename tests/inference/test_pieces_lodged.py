"""A part that sheds pieces is where it began; the search goes on to the place where they sit."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.loose_ends import pressure_in_words
from diagnose.output.documents.next_checks import next_checks
from diagnose.planning.choosing import SURE
from diagnose.reasoning.seen_on_engine import places_to_look
from diagnose.teardown.loose_ends import loose_ends
from knowledge.book import the_book
from knowledge.circuit.conditions import RELIEF_HELD_OPEN, SUCTION_THROTTLED

BOOK = the_book()
READ = """schema = 1
[engine]
layout = "distributor_v8"
[[reading]]
no = 1
rpm = "idle"
oil = "hot"
pressure = "8 psi"
gauge = "direct"
"""
SHED = ("plastic_timing_gear", "plastic_on_screen")


def answer(*present: str, more: str = "") -> Diagnosis:
    """The diagnosis with these findings there."""
    findings = "".join(
        f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\n'
        for no, what in enumerate(present, 2)
    )
    return Diagnosis(BOOK, from_text(READ + findings + more, None, BOOK))


def test_teeth_in_the_sump_are_no_end_of_the_search() -> None:
    shed = answer(*SHED)
    assert shed.ranking[0].cause.id == "timing_gear_shedding"
    assert shed.ranking[0].began >= SURE
    assert set(places_to_look(shed.inference)) == {SUCTION_THROTTLED, RELIEF_HELD_OPEN}
    ends = loose_ends(shed, SURE)
    assert ends.confirmed
    assert not ends.may_stop
    looks = {f for check in next_checks(shed) for f in check.findings}
    assert looks & {"screen_blocked", "debris_on_relief_seat", "relief_found_stuck"}


@pytest.mark.parametrize("seen", ["screen_blocked", "debris_on_relief_seat"])
def test_the_search_may_end_once_a_place_was_seen(seen: str) -> None:
    found = answer(*SHED, seen)
    assert not places_to_look(found.inference)
    assert not loose_ends(found, SURE).lodged


def test_nothing_is_to_look_for_once_the_engine_works_again() -> None:
    again = '[[reading]]\nno = 9\nrpm = "idle"\noil = "hot"\npressure = "25 psi"\nat = "start"\n'
    assert not places_to_look(answer(*SHED, more=again).inference)


def test_a_cause_with_one_place_is_not_asked_for_it() -> None:
    worn = answer("screen_blocked")
    assert not places_to_look(worn.inference)


@pytest.mark.parametrize("heat", ["hot", "cold"])
def test_a_hot_reading_that_is_there_is_not_asked_for(heat: str) -> None:
    text = READ.replace('oil = "hot"', f'oil = "{heat}"')
    for no, what in enumerate(SHED, 2):
        text += f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\n'
    shed = Diagnosis(BOOK, from_text(text, None, BOOK))
    said = pressure_in_words(shed, loose_ends(shed, SURE))
    assert ("a hot gauge reading" in said) is (heat == "cold")
    assert "a measured value of the oil circuit" in said
