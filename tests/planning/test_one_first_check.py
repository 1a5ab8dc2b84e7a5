"""The first check: one for every command, and the filter cut open before anything costly."""

from __future__ import annotations

from functools import cache

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.entry.answered_by_story import safety_left
from diagnose.entry.known import next_check
from diagnose.output.documents.review import review_document
from diagnose.output.documents.stages import stage_summaries
from diagnose.output.documents.teardown import teardown_document
from diagnose.output.documents.tell import minute_document
from diagnose.output.text.review_brief import review_brief
from diagnose.output.text.teardown_brief import teardown_brief
from diagnose.planning.choosing import SURE
from diagnose.reasoning.check_planner import A_DAY, best_choice
from diagnose.teardown.loose_ends import loose_ends
from diagnose.teardown.plan import Plan
from knowledge.book import the_book
from knowledge.questions.essentials import SAFETY, SAFETY_KNOCK
from knowledge.questions.first_steps import ASKED_BY_WORD
from knowledge.work import Access
from tests.support.trade_answers import case_text

BOOK = the_book()
LONG = {Access.SUMP_OFF, Access.FRONT_COVER_OFF, Access.PUMP_OFF, Access.FLYWHEEL_OFF}
DAMAGED = ("bearing_knock", "copper_flakes", "fell_suddenly")
#: layout and findings of a story
STORIES = [
    ("overhead_cam_four", ("gauge_reads_low", "direct_gauge_low", "needle_flickers")),
    ("distributor_v8", ("gauge_reads_low", "good_cold_low_hot")),
    ("overhead_cam_four", ("slow_after_standing", "oil_just_changed")),
    ("small_diesel", ("gauge_reads_zero", "none_from_first_start")),
]


@cache
def job(layout: str, facts: tuple[str, ...]) -> Diagnosis:
    return Diagnosis(BOOK, from_text(case_text({"engine": layout, "facts": facts}), None, BOOK))


@pytest.mark.parametrize(("layout", "facts"), STORIES)
def test_the_plan_begins_with_the_next_check_of_the_review(
    layout: str, facts: tuple[str, ...]
) -> None:
    answer = job(layout, facts)
    assert answer.next_check is not None
    line = Plan(answer).line
    assert line[0].choice.inspection is answer.next_check.inspection


def test_words_are_answered_with_the_next_check_of_the_review() -> None:
    """`tell` and `ask` leave out only what an interview asks itself."""
    answer = job("small_diesel", DAMAGED)
    first, review = next_check(answer), answer.next_check
    assert first is not None
    assert review is not None
    assert first.inspection is review.inspection
    asked = job("overhead_cam_four", ("gauge_reads_low",))
    by_word = best_choice(asked.planner, without=ASKED_BY_WORD)
    assert by_word is not None
    assert by_word.inspection.id not in ASKED_BY_WORD


def test_what_is_settled_is_put_right() -> None:
    """`tell` and the review name the same looks beforehand, and no check after that."""
    answer = job("overhead_cam_four", ("fuel_smell", "level_high", "level_risen"))
    minute, review = minute_document(answer, "job.toml"), review_document(answer, "job.toml")
    assert minute.to_be_mended
    assert [c.inspection for c in minute.checks] == [c.inspection for c in review.afterwards]
    assert minute.checks[0].inspection == "look_for_the_fuel"


def test_no_laboratory_before_the_right_oil() -> None:
    """An answer that takes days comes after one of today; the grade is known to be wrong."""
    answer = job("overhead_cam_four", ("flickers_only_at_hot_idle", "oil_grade_too_thin"))
    assert answer.next_check is not None
    assert answer.next_check.inspection.waits_minutes < A_DAY


def test_the_plan_goes_straight_to_the_cap_that_the_review_names() -> None:
    """Before it only what its openings uncover; no lamp is looked at, no hose followed."""
    answer = job("small_diesel", DAMAGED)
    assert answer.next_check is not None
    assert answer.next_check.inspection.id == "lift_one_cap"
    line = Plan(answer).line
    checks = [link.choice.inspection for link in line]
    before = checks[: [c.id for c in checks].index("lift_one_cap")]
    assert all(c.access is not Access.OUTSIDE for c in before)
    assert "then take off one bearing cap" in line[0].choice.evidence


@pytest.mark.parametrize(("layout", "facts"), STORIES[:2])
def test_the_filter_is_cut_open_before_a_long_opening(layout: str, facts: tuple[str, ...]) -> None:
    opened: set[Access] = set()
    for link in Plan(job(layout, facts)).line:
        opened |= {o.access for o in link.choice.option.way}
        if link.choice.inspection.id == "cut_the_filter_open":
            assert not opened & LONG
            return
    pytest.fail("the filter is not cut open")


def test_a_filter_through_which_no_oil_has_gone_is_not_cut() -> None:
    checks = [link.choice.inspection.id for link in Plan(job(*STORIES[3])).line]
    assert "cut_the_filter_open" not in checks


def test_a_trusted_gauge_that_read_low_leaves_no_panel_to_check() -> None:
    shown = [link.choice.inspection.id for link in Plan(job(*STORIES[0])).line]
    assert not {"turn_the_key_and_look", "swing_the_gauge_by_its_lead"} & set(shown)
    panel = job("overhead_cam_four", ("gauge_reads_low", "needle_flickers"))
    assert "turn_the_key_and_look" in [c.choice.inspection.id for c in Plan(panel).line]


def test_a_stage_is_named_after_the_place_that_is_reached() -> None:
    """Not after the oil sample that is drawn on the way to the filter."""
    plan = Plan(job(*STORIES[2]))
    titles = [s.says for s in stage_summaries(plan)]
    reached = [s.way[-1].says for s in plan.stages if len(s.way) > 1]
    assert reached
    assert set(reached) <= set(titles)


def test_filling_up_comes_before_any_check_on_every_screen() -> None:
    """`ask` says so as well; not once the engine is open, and not where the level is right."""
    fill = "First: fill to the full mark on level ground, then repeat the bend"
    slope = job("tractor_diesel", ("falls_in_a_manoeuvre", "dipstick_low"))
    assert fill in " ".join(review_brief(review_document(slope, "j.toml")).split())
    plan = teardown_document(Plan(slope), loose_ends(slope, SURE), "j.toml")
    assert fill in " ".join(teardown_brief(plan).split())
    assert fill.removeprefix("First: ") in minute_document(slope, "j.toml").first_step
    full = job("tractor_diesel", ("falls_in_a_manoeuvre", "level_correct"))
    assert "First:" not in review_brief(review_document(full, "j.toml"))


def test_once_the_level_is_known_the_filter_comes_first() -> None:
    """For a filter that lets the oil drain back, smelling the stick decides nothing."""
    story = ("lamp_slow_to_go_out", "slow_after_standing", "oil_just_changed")
    for level, first in (((), "read_the_stick"), (("level_correct",), "feel_the_filter")):
        choice = job("overhead_cam_four", (*story, *level)).next_check
        assert choice is not None
        assert choice.inspection.id == first


def test_a_dry_stick_is_never_answered_by_running_it() -> None:
    dry = job("distributor_v8", ("dipstick_dry", "dipstick_low", "gauge_reads_zero"))
    step = minute_document(dry, "j.toml").first_step
    assert step.startswith("find where the oil went")
    assert "run it" not in step


def test_nobody_with_a_lamp_is_asked_whether_a_gauge_reads_zero() -> None:
    lamp = '[[behaviour]]\nno = 1\nshows = "lamp"\nduring = ["hot", "idle"]\n'
    low = lamp.replace('"lamp"', '"low"')
    head = 'schema = 1\n[engine]\nlayout = "overhead_cam_four"\n'
    for text, asked in ((lamp, SAFETY_KNOCK), (low, SAFETY)):
        assert safety_left(Diagnosis(BOOK, from_text(head + text, None, BOOK))) is asked


def checks(*findings: str) -> list[str]:
    """The ids of the checks that a person is shown, in their order."""
    choice = job("distributor_v8", findings).next_check
    assert choice is not None
    return [o.inspection.id for o in (choice.option, *choice.runners_up)]


def test_a_knock_is_followed_to_a_bearing() -> None:
    """Stick, filter, cap: what stops the engine until a cap was off has that cap among its checks."""
    seen = ("bearing_knock", "gauge_reads_low", "declined_over_months")
    assert checks(*seen)[:3] == ["read_the_stick", "cut_the_filter_open", "lift_one_cap"]
    assert checks(*seen, "level_correct", "metal_in_filter")[0] == "lift_one_cap"
    assert "lift_one_cap" not in checks("gauge_reads_low", "declined_over_months")[:3]


def test_nobody_looks_for_a_leak_on_a_full_sump() -> None:
    """A leak takes the pressure once it has taken the oil; where oil is outside, it is looked for."""
    seen = ("falls_in_a_manoeuvre", "level_correct")
    leaks = {"look_at_the_drain", "look_at_filler_and_stick", "survey_for_leaks"}
    assert not leaks & set(checks(*seen))
    assert leaks & set(checks("falls_in_a_manoeuvre", "oil_trail_behind"))
