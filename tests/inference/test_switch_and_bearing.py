"""A lamp needs its wire; a switch that does not belong shows from the work on; bearings let go."""

from __future__ import annotations

from functools import cache
from typing import Any

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from tests.support.trade_answers import case_text

BOOK = the_book()
GOOD = {"rpm": "idle", "oil": "hot", "pressure": "50 psi", "gauge": "direct"}


@cache
def _ranks(text: str) -> dict[str, tuple[int, float]]:
    rows = Diagnosis(BOOK, from_text(text, None, BOOK)).ranking
    return {r.cause.id: (n, r.probability) for n, r in enumerate(rows, 1)}


def ranks(*facts: str, **tables: Any) -> dict[str, tuple[int, float]]:
    """Rank and probability of each cause."""
    layout = tables.pop("engine", "small_diesel")
    return _ranks(case_text({"engine": layout, "facts": facts, **tables}))


def test_a_lamp_that_is_on_has_its_wire() -> None:
    since = [{"shows": "lamp", "since": "work", "gauge": "lamp"}]
    lit = ranks("instrument_just_changed", reading=[GOOD], behaviour=since)
    assert lit["sender_mismatch"][0] <= 3
    assert lit["sender_not_fitted"][0] > 3
    zero = [{"shows": "none", "since": "work"}]
    dead = ranks("instrument_just_changed", behaviour=zero)
    assert dead["sender_not_fitted"][1] > lit["sender_not_fitted"][1]


def test_the_wrong_switch_shows_from_the_work_on() -> None:
    work = ranks("gauge_reads_low", "changed_after_other_work")["sender_mismatch"][1]
    assert work > 2 * ranks("gauge_reads_low")["sender_mismatch"][1]


def test_a_bearing_that_lets_go_explains_a_sudden_fall() -> None:
    """With a knock and copper about, a sudden fall says less of a leak than without them."""
    bare = ranks("fell_suddenly", "level_correct")["external_leak_major"][1]
    known = ranks("bearing_knock", "copper_flakes", "fell_suddenly", "level_correct")
    assert known["external_leak_major"][1] < 0.8 * bare
    assert known["bearing_wiped"][0] <= 3


def test_a_trip_after_minutes_on_load_is_lost_in_the_course_of_a_run() -> None:
    trips = [{"shows": "trips", "during": ["load", "after minutes of running"]}]
    at_once = [{"shows": "trips", "during": ["load"]}]
    hot, any_time = (
        ranks("level_correct", engine="generator_petrol", behaviour=b)["oil_overheated"][1]
        for b in (trips, at_once)
    )
    assert hot > 2 * any_time


def test_low_with_cold_oil_only_is_no_valve_stuck_open() -> None:
    """Good pressure with hot oil clears a valve that bleeds; low hot as well does not."""
    only = [{"shows": "low", "during": ["cold"], "only": True}]
    too = [{"shows": "low", "during": ["cold"]}]
    assert (
        2 * ranks(behaviour=only)["relief_stuck_open"][1]
        < ranks(behaviour=too)["relief_stuck_open"][1]
    )


def test_a_rattle_after_standing_is_oil_that_comes_late() -> None:
    standing = [{"shows": "rattle", "during": ["at start", "after standing"], "only": True}]
    start = [{"shows": "rattle", "during": ["at start"], "only": True}]
    late = ranks(engine="turbo_ohc_four", behaviour=standing)
    plain = ranks(engine="turbo_ohc_four", behaviour=start)
    assert late["filter_drainback"][0] == 1
    assert late["filter_drainback"][1] > 1.3 * plain["filter_drainback"][1]


def test_air_at_a_suction_joint_shows_cold_and_at_every_speed() -> None:
    """Low cold and hot at every speed after the sump was off: the joint before what wears."""
    low = [{"shows": "low", "during": ["idle", "at speed", "hot", "cold"], "since": "work"}]
    sump = [{"what": "sump", "done": "taken off and refitted", "before": "straight before"}]
    everywhere = ranks(
        "level_correct", behaviour=low, earlier=sump, engine="crank_nose_gerotor_ohc"
    )
    assert everywhere["suction_joint_air_leak"][0] <= 2
    facts = ("gauge_reads_low", "level_correct")
    plain = ranks(*facts)["suction_joint_air_leak"][1]
    cold = ranks(*facts, "low_even_cold", "low_at_all_speeds")["suction_joint_air_leak"][1]
    assert cold > 1.2 * plain
