"""What a reading usually was counts for every reading at the same speed and heat."""

from __future__ import annotations

from dataclasses import replace

import pytest

from diagnose.case.loading import from_text
from diagnose.case.usual import with_usual
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import Gauge, Reading
from knowledge.units import PSI

BOOK = the_book()
IDLE = Reading(700.0, 363.15, 8 * PSI)
FAST = Reading(3000.0, 363.15, 30 * PSI)
CASE = """schema = 1
[engine]
layout = "distributor_v8"
{baseline}
[[reading]]
no = 1
pressure = "12 psi"
rpm = "700 rpm"
oil = "90 C"
gauge = "direct"
{usual}
[[reading]]
no = 2
pressure = "13 psi"
rpm = "720 rpm"
oil = "92 C"
"""
SOUND = '[[baseline]]\nno = 3\npressure = "32 psi"\nrpm = "700 rpm"\noil = "90 C"\n'


def test_a_usual_pressure_counts_for_every_gauge_at_that_speed() -> None:
    named = replace(IDLE, usual=20 * PSI)
    trusted = replace(IDLE, rpm=720.0, pressure=9 * PSI, gauge=Gauge.DIRECT)
    assert [r.usual for r in with_usual([named, trusted, FAST], [])] == [20 * PSI, 20 * PSI, None]


def test_the_sound_engine_names_it_too_and_a_reading_its_own() -> None:
    sound = [replace(IDLE, pressure=25 * PSI), replace(FAST, pressure=55 * PSI)]
    own = replace(IDLE, usual=20 * PSI)
    assert [r.usual for r in with_usual([own, FAST], sound)] == [20 * PSI, 55 * PSI]


@pytest.mark.parametrize(
    "other",
    [
        replace(IDLE, rpm=2500.0),
        replace(IDLE, oil_temperature=300.0),
        replace(IDLE, tap="pump"),
        replace(IDLE, at_least=True),
    ],
)
def test_no_other_speed_heat_port_or_bound_names_it(other: Reading) -> None:
    assert with_usual([IDLE], [replace(other, pressure=25 * PSI)]) == [IDLE]


@pytest.mark.parametrize(
    ("baseline", "usual"), [(SOUND, ""), ("", 'usual = "32 psi"')], ids=["sound", "named"]
)
def test_nothing_wrong_leads_no_more_where_it_has_fallen(baseline: str, usual: str) -> None:
    """12 psi is enough for most engines, and far too little for one that made 32."""
    bare, known = (
        Diagnosis(BOOK, from_text(CASE.format(baseline=b, usual=u), None, BOOK))
        for b, u in (("", ""), (baseline, usual))
    )
    normal = "oil_hot_normal"
    before, after = (
        next(r.probability for r in d.ranking if r.cause.id == normal) for d in (bare, known)
    )
    assert after < before
    assert known.ranking[0].cause.id != normal
