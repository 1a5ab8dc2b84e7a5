"""Small petrol engines: no checks of parts they lack, no causes under pressure where oil is splashed."""

from __future__ import annotations

from functools import cache

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.understanding.reader import read
from knowledge.book import the_book

BOOK = the_book()
ROTOR_STILL = BOOK.findings["rotor_still_when_cranked"]
FOUND = """
[[finding]]
no = {no}
when = 2026-01-01
what = "{what}"
state = "present"
"""
SHEARED = FOUND.format(no=1, what="gauge_reads_low") + FOUND.format(
    no=2, what="drive_coupling_sheared"
)


@cache
def diagnosed(layout: str, entries: str, has: str = "") -> Diagnosis:
    stated = f'has = ["{has}"]\n' if has else ""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{stated}{entries}'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize("layout", ["small_air_cooled", "generator_petrol", "crank_nose_v8"])
def test_no_rotor_is_watched_without_a_distributor(layout: str) -> None:
    """The rotor of a distributor says nothing where there is none."""
    derived = diagnosed(layout, SHEARED).inference.result.derived
    assert ROTOR_STILL in {d.finding for d in derived}


def test_a_distributor_engine_still_has_its_rotor_watched() -> None:
    derived = diagnosed("distributor_v8", SHEARED).inference.result.derived
    assert ROTOR_STILL not in {d.finding for d in derived}


def test_splashed_engines_have_nothing_under_pressure() -> None:
    answer = diagnosed(
        "small_air_cooled", FOUND.format(no=1, what="lamp_comes_on"), "splash_lubricated"
    )
    stations = {r.cause.station.value for r in answer.ranking}
    assert not stations & {"pump", "relief", "delivery", "topend"}
    assert answer.ranking[0].cause.id in {"oil_level_low", "sender_faulty", "wiring_ground_fault"}


@pytest.mark.parametrize(
    ("text", "layout"),
    [
        ("petrol generator with low oil pressure", "generator_petrol"),
        ("gas generator with low oil pressure", "generator_petrol"),
        ("standby generator with low oil pressure", "generator_diesel"),
        ("diesel generator with low oil pressure", "generator_diesel"),
        ("petrol V8 generator with low oil pressure", "distributor_v8"),
    ],
)
def test_a_generator_is_taken_for_its_kind(text: str, layout: str) -> None:
    facts = [f.short for f in read(text, BOOK).facts]
    assert f"layout {layout}" in facts
