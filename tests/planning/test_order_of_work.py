"""The plan goes as a mechanic goes: what belongs together, nothing that is done, nothing for nothing."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.found import strip_down
from diagnose.planning.choosing import LEAST_ADDED
from diagnose.planning.options import PlanState
from diagnose.reasoning.check_planner import looked_into
from diagnose.teardown.plan import COSTLY, LEAST_WORTH, Plan
from knowledge.access.together import SHORT, TOGETHER, Together
from knowledge.book import the_book
from knowledge.work import Access
from tests.support.command_line import ROOT
from tests.support.every import every

BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'


def case(*present: str, value: str = "") -> Diagnosis:
    """A V8 with these findings."""
    entries = (
        f'[[finding]]\nno = {i}\nwhat = "{f}"\nstate = "present"\n'
        for i, f in enumerate(present, 1)
    )
    return Diagnosis(BOOK, from_text(HEAD + "".join(entries) + value, None, BOOK))


@every(TOGETHER, lambda t: t.opening)
def test_what_is_done_together_lies_behind_that_place(line: Together) -> None:
    """On some layout the check takes a short opening once the place is open, on none a free one."""
    assert line.source.title
    for check in line.checks:
        assert BOOK.inspections[check.id] is check
        ways = []
        for layout in ("distributor_v8", "skew_gear_four"):
            text = HEAD.replace("distributor_v8", layout)
            tree = Diagnosis(BOOK, from_text(text, None, BOOK)).planner.tree
            way = tree.way(check.access, tree.closure(line.opening))
            ways += [] if way is None else [tree.opening_minutes(way)]
        assert min(ways) <= SHORT


def test_a_filter_that_is_off_is_cut_before_anything_else_is_opened() -> None:
    answer = case("good_cold_low_hot", "bearing_knock")
    chooser = answer.planner.chooser()
    state = answer.planner.plan_state
    outside = {
        i for i in BOOK.inspections.values() if i.access in (Access.OUTSIDE, Access.FILTER_OFF)
    }
    opened = frozenset({Access.OUTSIDE, Access.FILTER_OFF})
    now = PlanState(state.weight, state.answered, opened, frozenset(outside))
    choice = chooser.choose(now)
    assert choice is not None
    assert choice.inspection.access is Access.FILTER_CUT
    assert "filter is off" in choice.evidence
    assert chooser.tree.opening_minutes(choice.option.way) <= SHORT


def test_a_pump_that_was_looked_into_is_not_looked_into_again() -> None:
    look = BOOK.inspections["look_into_the_opened_pump"]
    seen = [f.id for f in look.reveals[: (len(look.reveals) + 1) // 2]]
    answer = case("good_cold_low_hot", *seen)
    assert look in looked_into(answer.planner)
    assert look in answer.planner.plan_state.done
    assert look not in case("good_cold_low_hot").planner.plan_state.done


def test_no_check_is_named_that_changes_nothing() -> None:
    """The worked launch: the valve was seen held open; no look leaves that in doubt."""
    text = (ROOT / "cases" / "petrel.toml").read_text("utf-8")
    answer = Diagnosis(BOOK, from_text(text, None, BOOK))
    assert answer.ranking[0].probability > 0.9
    choice = answer.next_check
    if choice is not None:
        outcomes = answer.planner.outcomes(choice.option)
        assert any(o.leads is not answer.ranking[0].cause or o.leads_with < 0.9 for o in outcomes)


@pytest.mark.parametrize("present", [("good_cold_low_hot",), ("needle_flickers", "low_hot_idle")])
def test_a_plan_ends_before_costly_openings_that_find_nothing(present: tuple[str, ...]) -> None:
    known = [f for f in present if f in BOOK.findings]
    plan = Plan(case(*known))
    last = plan.line[-1]
    opening = plan.chooser.tree.opening_minutes(last.choice.option.way)
    assert opening < COSTLY or last.named >= LEAST_WORTH or last.named > LEAST_ADDED
    tail = 0.0
    for link in reversed(plan.line):
        tail += link.named
        if plan.chooser.tree.opening_minutes(link.choice.option.way) >= COSTLY:
            break
    assert tail >= LEAST_WORTH


def test_wiped_bearings_and_metal_mean_a_full_strip() -> None:
    says = strip_down(case("shells_wiped", "metal_in_filter"))
    assert "crank out" in says
    assert "oilway" in says
    assert strip_down(case("metal_in_filter")) == ""
