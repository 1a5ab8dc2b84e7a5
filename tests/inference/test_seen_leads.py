"""What was seen on the engine leads the ranking, and ends the search where one repair cures it."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.loose_ends import loose_ends_notice
from diagnose.output.documents.next_checks import next_checks
from diagnose.output.documents.reasons import in_short, is_settled
from diagnose.output.documents.review import review_document
from diagnose.output.text.review_brief import review_brief
from diagnose.planning.choosing import SURE
from diagnose.reasoning.seen_on_engine import chance_together, is_found, taken_together
from diagnose.signoff.sheet import Signoff
from diagnose.teardown.loose_ends import loose_ends
from diagnose.teardown.plan import Plan
from knowledge.book import the_book

BOOK = the_book()
LOW_AT_IDLE = """[[reading]]
no = 90
rpm = "idle"
oil = "hot"
pressure = "0.6 bar"
gauge = "direct"
[[reading]]
no = 91
rpm = "2000 rpm"
pressure = "2 bar"
gauge = "direct"
"""
#: what was there beside the found thing, and what speaks for something else
TWO_GASKETS = ("filter_misfitted", "filter_seat_leaks", "lamp_comes_on", "dipstick_low")
PLUNGER = ("relief_plunger_sticks", "relief_seat_scored", "lamp_comes_on")
WORN_DRIVE = ("drive_shaft_rounded", "rises_just_off_idle", "lifters_clatter", "idle_below_spec")


def answer(*findings: str, more: str = "", layout: str = "unknown") -> Diagnosis:
    """The diagnosis with these findings; a leading minus means looked for and absent."""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{more}'
    for no, word in enumerate(findings, 1):
        state = "absent" if word.startswith("-") else "present"
        text += f'[[finding]]\nno = {no}\nwhat = "{word.lstrip("-")}"\nstate = "{state}"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


@pytest.mark.parametrize("findings", [TWO_GASKETS, PLUNGER])
def test_one_found_thing_shared_by_two_causes_is_found(findings: tuple[str, ...]) -> None:
    """Neither reaches the mark alone; one repair puts both right."""
    known = answer(*findings)
    assert known.ranking[0].began < SURE
    assert len(taken_together(known.inference)) > 1
    assert chance_together(known.inference) >= SURE
    assert is_found(known.inference)
    assert is_settled(known)
    assert next_checks(known) == ()
    assert Plan(known).confirmed
    assert Plan(known).stages == ()
    ends = loose_ends(known, SURE)
    assert ends.confirmed
    assert set(ends.causes) == set(taken_together(known.inference))
    assert set(Signoff(known, SURE).causes) == set(ends.causes)
    names = [c.says for c in ends.causes]
    assert f"almost certainly {'; or '.join(names)}" in in_short(known)
    assert loose_ends_notice(known, ends).causes == "; or ".join(names)


def test_two_causes_that_only_share_what_was_reported_are_not_taken_together() -> None:
    known = answer("lamp_comes_on", "filter_seat_leaks", "changed_with_oil_change")
    assert taken_together(known.inference) == (known.ranking[0].cause,)


def test_a_found_worn_drive_is_the_likeliest_cause() -> None:
    """What is seen worn is there: no cause that only fits the readings is likelier."""
    known = answer(*WORN_DRIVE, more=LOW_AT_IDLE)
    first = known.ranking[0]
    assert first.cause.id == "pump_drive_slip"
    assert first.shown
    assert first.probability == max(r.probability for r in known.ranking)


def test_a_found_worn_gear_leads_over_likelier_causes() -> None:
    """A gear worn on one flank may have come after: it leads, and is said to lead as found."""
    known = answer("drive_gear_worn", *WORN_DRIVE[1:], more=LOW_AT_IDLE)
    first = known.ranking[0]
    assert first.cause.id == "pump_drive_slip"
    assert first.shown
    assert first.probability < max(r.probability for r in known.ranking[1:])
    text = review_brief(review_document(known, "a.toml"))
    assert "(named first because it was found)" in text
    assert "remedy" in text


def test_without_the_worn_drive_the_likeliest_cause_leads() -> None:
    known = answer(*WORN_DRIVE[1:], more=LOW_AT_IDLE)
    assert not any(r.shown for r in known.ranking)
    assert known.ranking[0].cause.id != "pump_drive_slip"
    assert "named first" not in review_brief(review_document(known, "a.toml"))


def test_nothing_wrong_never_leads_beside_a_found_fault() -> None:
    reported = ("good_cold_low_hot", "-bearing_knock", "engine_runs_normally")
    alone = answer(*reported)
    assert alone.ranking[0].cause.no_fault
    beside = answer(*reported, "drive_gear_worn")
    order = [r.cause.no_fault for r in beside.ranking]
    assert order == sorted(order), "nothing wrong stands before a fault"
    assert beside.ranking[0].shown


def test_damage_that_followed_shows_no_cause() -> None:
    """Wiped bearings are where it ended, not where it began."""
    known = answer("shells_wiped", "crank_scored")
    assert {f.fault.damage for f in known.found_faults} == {True}
    assert not any(r.shown for r in known.ranking)


def test_what_is_seen_from_outside_moves_no_cause() -> None:
    """A low dipstick is found, and says little of why."""
    assert not any(r.shown for r in answer("dipstick_low", "gauge_reads_low").ranking)
