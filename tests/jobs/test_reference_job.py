"""A whole job: wavering needle, metal under the relief ball, a leaking pump, wiped bearings.

The engine and every figure are invented.
"""

from __future__ import annotations

from functools import cache

from diagnose import CaseBuilder, as_json, diagnose, plan, review
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.found import headline
from diagnose.output.documents.teardown import teardown_document
from diagnose.output.text.review import review_text
from diagnose.reasoning.found_faults import FoundFault
from diagnose.teardown.loose_ends import loose_ends
from knowledge.units import PSI
from knowledge.work import Access
from tests.support.complaints import flat

HELD, COVER, BEARINGS = "relief_valve_held_open", "pump_cover_leaks", "bearings_failed"


@cache
def job(stage: int) -> Diagnosis:
    """The job after so many steps: complaint, relief valve, pump, bearings."""
    case = CaseBuilder(title="Gadwall, ski boat", layout="distributor_v8", has=["oil_cooler"])
    case.finding("needle_flickers")
    case.finding("flickers_only_at_hot_idle")
    case.reading("650 rpm 92 C 9 psi direct")
    case.reading("2500 rpm 92 C 38 psi direct")
    if stage >= 1:
        case.finding("debris_on_relief_seat")
    if stage >= 2:
        case.finding("cover_grooved")
        case.finding("gears_worn_out")
        case.measurement("pump_end_clearance", "0.010 in")
    if stage >= 3:
        case.finding("shells_wiped")
        case.finding("metal_in_filter")
        case.finding("metal_in_pan")
        case.measurement("main_clearance", "0.0045 in")
    return diagnose(case.build())


def fault(stage: int, name: str) -> FoundFault:
    """The found fault of that id."""
    return next(f for f in job(stage).found_faults if f.fault.id == name)


def test_with_the_complaint_alone_nothing_is_found() -> None:
    assert job(0).found_faults == ()
    assert "found:" not in headline(job(0))


def test_metal_under_the_ball_is_found_at_once() -> None:
    """Before anything else is known, and it explains the wavering needle."""
    held = fault(1, HELD)
    assert {f.id for f in held.explains} >= {"needle_flickers", "flickers_only_at_hot_idle"}
    assert held.cost is not None
    assert 2 * PSI < held.cost.mean < 30 * PSI
    assert headline(job(1)).startswith("found: the relief valve was held open")


def test_the_relief_valve_stays_found_and_likely_to_the_end() -> None:
    """Whatever shed the metal, debris under the valve stays among the first causes."""
    for stage in (1, 2, 3):
        order = [r.cause.id for r in job(stage).ranking]
        assert order.index("relief_debris") < 3, stage
        assert fault(stage, HELD).proofs


def test_the_cover_leaks_with_its_pressure() -> None:
    cover = fault(3, COVER)
    assert {f.id for f in cover.proofs} == {"cover_grooved", "end_clearance_wide"}
    assert cover.cost is not None
    assert cover.cost.mean > 0.5 * PSI


def test_the_wiped_bearings_are_damage() -> None:
    wiped = fault(3, BEARINGS)
    assert wiped.fault.damage
    assert wiped.origins[0].node.id == "bearings_starved"
    order = [r.cause.id for r in job(3).ranking]
    assert order.index("bearing_wiped") > order.index("relief_debris")
    assert "bearings_damaged" in {c.id for c, _ in job(3).reasons.damage}


def test_where_the_metal_came_from_is_open_and_a_check_would_decide() -> None:
    held = fault(3, HELD)
    origins = {o.node.id for o in held.origins}
    assert {"pump_gear_wear", "metal_under_relief"} <= origins
    assert all(o.share < 0.9 for o in held.origins)
    assert "magnet" in held.decides


def test_what_else_is_contaminated() -> None:
    places = job(3).found.contaminated
    for place in ("oil cooler", "filter", "galleries", "lifters", "oil lines"):
        assert any(place in p for p in places), place
    assert job(0).found.contaminated == ()


def test_review_and_budget_have_one_headline() -> None:
    document = review(job(3))
    assert document.in_short == headline(job(3))
    costs = [f.cost.mean for f in job(3).found_faults if f.cost and not f.fault.damage]
    assert len(costs) >= 3
    assert costs == sorted(costs, reverse=True), "the largest loss first, as in the budget"


def test_the_review_says_it_in_order() -> None:
    text = flat(review_text(review(job(3))))
    parts = [
        "In short: found: ",
        "Found - ",
        "Where it began Root causes",
        "Following damage: look for it",
        "Also contaminated",
        "What was found explains",
    ]
    places = [text.index(p) for p in parts]
    assert places == sorted(places)
    assert "decide sort it with magnet and magnifier" in text


def test_the_same_in_json() -> None:
    data = as_json(review(job(3), for_json=True))
    held = next(f for f in data["found"] if f["id"] == HELD)
    assert held["proofs"] == ["debris_on_relief_seat"]
    assert "needle_flickers" in held["explains"]
    assert held["cost"]["mean"] > 0
    assert {o["id"] for o in held["origins"]} >= {"pump_gear_wear", "metal_under_relief"}
    assert "galleries" in data["contaminated"]


def test_the_plan_looks_at_nothing_twice() -> None:
    """What was recorded is not looked for again, and a first look is past once later ones were made."""
    planned = {c.inspection.id for s in plan(unsettled()).stages for c in s.checks}
    assert planned, "something is left to look at"
    assert not planned & {"look_into_the_opened_pump", "pull_the_relief_valve", "lift_one_cap"}
    for answer in (job(3), unsettled()):
        choice = answer.next_check
        assert choice is not None or answer.ranking[0].probability > 0.95, (
            "settled, or a next check"
        )
        recorded = {s.finding for s in answer.case.finding_records}
        assert choice is None or not recorded.intersection(choice.option.findings)
    assert unsettled().next_check is not None


def unsettled() -> Diagnosis:
    """Metal under the ball and wiped bearings, and the pump open; nothing is settled yet."""
    case = CaseBuilder(layout="distributor_v8")
    for word in ("needle_flickers", "debris_on_relief_seat", "cover_grooved", "shells_wiped"):
        case.finding(word)
    return diagnose(case.build())


def test_a_repair_that_opens_the_crank_anyway_says_so() -> None:
    (crank,) = (n for n in plan(unsettled()).not_planned if n.opening.access is Access.CRANK_OUT)
    assert [f.id for f in crank.repair] == [BEARINGS]
    ends = loose_ends(unsettled(), 0.9)
    left = teardown_document(plan(unsettled()), ends, "gadwall.toml").not_planned
    (says,) = (n.says for n in left if n.opens is Access.CRANK_OUT)
    assert "the repair opens it in any case, as bearings are wiped" in says
