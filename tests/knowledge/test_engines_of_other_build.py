"""Split cases, end-fed cranks, dry sumps, piston jets and variable pumps: plan, questions, sign-off."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.entry.agenda import as_known
from diagnose.entry.known import Known
from diagnose.output.documents.alarms import alarm_notices
from diagnose.planning.choosing import SURE
from diagnose.signoff.sheet import Signoff
from knowledge.access import openings_for
from knowledge.book import the_book
from knowledge.questions.essentials import JETS, LEVEL, LEVEL_IN_TANK
from knowledge.work import Access, Phase

BOOK = the_book()


def answer(*present: str, layout: str = "unknown", built: str = "") -> Diagnosis:
    """The diagnosis with these findings there."""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{built}'
    for no, what in enumerate(present, 1):
        text += f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


def test_an_engine_of_two_case_halves_is_split_to_see_its_bearings() -> None:
    has = BOOK.layouts["air_cooled_flat_four"].has
    tree = openings_for(lambda f: f in has)
    assert "sump" not in tree[Access.SUMP_OFF].says
    assert "strainer" in tree[Access.SUMP_OFF].says
    assert "split the crankcase" in tree[Access.CAP_OFF].says
    assert Access.SUMP_OFF not in tree[Access.CAP_OFF].needs
    for place in (Access.PICKUP_OFF, Access.CRANK_OUT, Access.CAM_OUT, Access.VALLEY_OPEN):
        assert tree[place].needs == (Access.CAP_OFF,), place
    plain = openings_for(lambda _f: False)
    assert "sump" in plain[Access.SUMP_OFF].says
    assert "cap" in plain[Access.CAP_OFF].says


@pytest.mark.parametrize(
    ("layout", "seen", "cause", "task"),
    [
        (
            "dry_sump_motorcycle",
            "crank_feed_seal_bad",
            "crank_feed_seal_leak",
            "crank_feed_seal_new",
        ),
        ("dry_sump_race", "scavenge_side_takes_air", "scavenge_failure", "scavenge_side_right"),
        ("heavy_diesel", "piston_jet_found_broken", "piston_jet_open", "piston_jets_aimed"),
    ],
)
def test_what_was_found_leads_and_is_signed_off(
    layout: str, seen: str, cause: str, task: str
) -> None:
    known = answer("gauge_reads_low", "good_cold_low_hot", seen, layout=layout)
    first = known.ranking[0]
    assert first.cause.id == cause
    assert not first.cause.no_fault
    assert any(seen in {p.id for p in f.proofs} for f in known.found_faults)
    assert task in {i.task.id for i in Signoff(known, first.probability).items}
    without = answer("gauge_reads_low", "good_cold_low_hot", layout=layout)
    assert without.ranking[0].cause.id != cause


def test_an_engine_with_its_oil_in_the_sump_has_no_feed_seal() -> None:
    known = answer("gauge_reads_low", layout="distributor_v8")
    assert "crank_feed_seal_leak" not in {r.cause.id for r in known.ranking}


def test_a_missing_piston_jet_stops_the_engine() -> None:
    says = [a.says for a in alarm_notices(answer("piston_jet_found_broken"))]
    assert any("Piston cooling jet missing" in s for s in says)
    says = [a.says for a in alarm_notices(answer("jets_run_at_low_pressure"))]
    assert not any("Piston cooling jet missing" in s for s in says)


def test_jets_are_asked_of_a_rebuilt_turbo_diesel_alone() -> None:
    def asked(*present: str) -> bool:
        return bool(Known.of(answer(*present)).choices(JETS))

    assert asked("diesel", "freshly_rebuilt")
    assert not asked("diesel")
    assert not asked("freshly_rebuilt")
    assert not asked("diesel", "freshly_rebuilt", "piston_jets")


def test_the_level_of_a_dry_sump_is_that_of_its_tank() -> None:
    assert as_known(LEVEL, answer(layout="dry_sump_race")) is LEVEL_IN_TANK
    assert as_known(LEVEL, answer(layout="distributor_v8")) is LEVEL
    assert "tank" in LEVEL_IN_TANK.asks
    assert not any("stick" in c.says for c in LEVEL_IN_TANK.choices)
    assert [c.there for c in LEVEL_IN_TANK.choices] == [c.there for c in LEVEL.choices]


def test_a_tank_that_foams_points_to_the_scavenge_side() -> None:
    def rank(*present: str) -> float:
        known = answer("gauge_reads_low", *present, layout="dry_sump_race")
        return next(r.probability for r in known.ranking if r.cause.id == "scavenge_failure")

    assert rank("tank_foams") > 3 * rank()


def test_both_stages_of_a_variable_pump_are_read_after_its_repair() -> None:
    known = answer("pump_stays_low", "variable_pump")
    items = {i.task.id: i.task for i in Signoff(known, SURE).items}
    assert {"pump_control_works", "low_stage_read", "high_stage_read"} <= items.keys()
    low, high = items["low_stage_read"].bands[0], items["high_stage_read"].bands[0]
    assert low.low is not None
    assert low.high is not None
    assert high.low is not None
    assert low.low < low.high < high.low
    assert items["high_stage_read"].phase is Phase.FIRST_START
