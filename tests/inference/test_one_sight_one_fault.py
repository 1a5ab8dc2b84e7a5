"""One observation makes one found fault, and its origin agrees with the ranking."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

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
HELD = ("debris_on_relief_seat", "relief_found_stuck", "relief_valve_stayed_open")


def answer(*present: str) -> Diagnosis:
    """The diagnosis with these findings there."""
    text = READ
    for no, what in enumerate(present, 2):
        text += f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize(
    ("present", "faults"),
    [
        (HELD, {"relief_valve_held_open"}),
        (HELD[1:], {"relief_valve_stuck_open"}),
        (HELD[1:2], {"relief_valve_gripped"}),
        ((*HELD, "relief_plunger_sticks"), {"relief_valve_held_open", "relief_valve_gripped"}),
        (("oil_wash_at_gallery_seal", "gallery_plug_found_missing"), {"gallery_plug_out"}),
        (("oil_wash_at_gallery_seal",), {"gallery_seal_bad"}),
        (
            ("gallery_seal_found_bad", "gallery_plug_found_missing"),
            {"gallery_seal_bad", "gallery_plug_out"},
        ),
    ],
    ids=["held open", "stuck open", "stuck", "sticks when clean", "plug", "wash", "plug and seal"],
)
def test_what_follows_from_a_found_fault_is_no_second_one(
    present: tuple[str, ...], faults: set[str]
) -> None:
    assert {f.fault.id for f in answer(*present).found_faults} == faults


def test_a_tooth_under_the_plunger_came_from_the_teeth_in_the_sump() -> None:
    shed = answer(*HELD, "plastic_timing_gear", "plastic_on_screen")
    assert shed.ranking[0].cause.id == "timing_gear_shedding"
    (held,) = shed.found_faults
    assert held.origins[0].node.id == "timing_gear_shedding"
    assert held.origins[0].share > 0.5
    by_id = {r.cause.id: r for r in shed.ranking}
    assert by_id["relief_stuck_open"].probability < 0.3, "the tooth explains the open valve"


def test_the_wash_of_oil_points_to_the_missing_plug_too() -> None:
    without, wash = answer(), answer("oil_wash_at_gallery_seal")
    chance = [
        {r.cause.id: r.probability for r in a.ranking}["gallery_plug_missing"]
        for a in (without, wash)
    ]
    assert chance[1] > chance[0]
