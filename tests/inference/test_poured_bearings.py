"""Poured bearing metal breaks up of age; a lining that flakes was not always hammered."""

from __future__ import annotations

from functools import cache

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()
FLAKES = '[[finding]]\nno = 1\nwhat = "shells_flaking"\nstate = "present"\n'


@cache
def answer(layout: str, has: str, more: str) -> Diagnosis:
    has = f'has = ["{has}"]\n' if has else ""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{has}' + more
    return Diagnosis(BOOK, from_text(text, None, BOOK))


def chance(cause: str, layout: str = "side_valve", has: str = "", more: str = FLAKES) -> float:
    return answer(layout, has, more).inference.posterior.marginal.get(cause, 0.0)


def test_where_bearings_are_poured_flakes_are_of_the_metal() -> None:
    first = answer("side_valve", "poured_bearings", FLAKES).ranking[0]
    assert first.cause.id == "poured_bearing_broken_up"
    assert "pour" in first.cause.remedy


@pytest.mark.parametrize("layout", ["side_valve", "distributor_v8", "overhead_cam_four"])
def test_flakes_alone_do_not_prove_a_hammered_bearing(layout: str) -> None:
    assert 0.2 < chance("overload_lugging", layout) < 0.8


def test_what_is_not_known_to_be_poured_seldom_broke_up_so() -> None:
    assert chance("poured_bearing_broken_up", "distributor_v8") < 0.2
    assert chance("poured_bearing_broken_up") < 0.2


def test_a_case_that_has_shells_cannot_have_it() -> None:
    text = 'schema = 1\n[engine]\nlayout = "side_valve"\nlacks = ["poured_bearings"]\n' + FLAKES
    found = Diagnosis(BOOK, from_text(text, None, BOOK)).inference.posterior.marginal
    assert "poured_bearing_broken_up" not in found


def test_its_part_is_no_set_of_shells() -> None:
    parts = [
        p
        for p in BOOK.parts.values()
        if any(c.id == "poured_bearing_broken_up" for c in p.for_causes)
    ]
    assert [p.id for p in parts] == ["poured_bearing"]
