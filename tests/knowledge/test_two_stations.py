"""Gauges at two stations: the ohms of their sender, and whose ground is at fault."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.loading import load
from diagnose.case.writing import NewEntry, append_by, start
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book
from knowledge.model import State

BOOK = the_book()


def case_of(path: Path, *entries: NewEntry) -> Diagnosis:
    start(path, BOOK, {"title": "x"})
    append_by(path, BOOK, lambda _: list(entries))
    return Diagnosis(BOOK, load(path, BOOK))


def ohms(value: str) -> NewEntry:
    return NewEntry("finding", {"what": "sender_resistance_at_rest", "value": value})


def finding(what: str, state: str = "present") -> NewEntry:
    return NewEntry("finding", {"what": what, "state": state})


def state_of(answer: Diagnosis, what: str) -> State | None:
    known = {d.finding.id: d.state for d in answer.inference.result.derived}
    return known.get(what)


ONE_SENDER = "one_sender_for_two_gauges"


@pytest.mark.parametrize(
    ("entries", "what", "state"),
    [
        ((ohms("33 ohm"),), "sender_ohms_low", State.PRESENT),
        ((ohms("120 ohm"),), "sender_ohms_low", None),
        ((ohms("10 ohm"),), "sender_ohms_low", None),
        ((ohms("120 ohm"), finding(ONE_SENDER, "absent")), "sender_ohms_low", State.PRESENT),
        ((ohms("120 ohm"), finding(ONE_SENDER)), "sender_not_for_gauge", None),
        ((ohms("240 ohm"), finding(ONE_SENDER)), "sender_not_for_gauge", State.PRESENT),
        ((ohms("240 ohm"),), "sender_not_for_gauge", None),
    ],
)
def test_half_the_ohms_are_right_for_two_gauges(
    entries: tuple[NewEntry, ...], what: str, state: State | None, tmp_path: Path
) -> None:
    """What nobody said of the number of gauges makes no sender of half the ohms a bad one."""
    assert state_of(case_of(tmp_path / "a.toml", *entries), what) is state


@pytest.mark.parametrize("what", ["one_station_alone_wrong", "station_ground_poor"])
def test_one_station_alone_points_to_its_ground(what: str, tmp_path: Path) -> None:
    low = finding("gauge_reads_low")
    two = finding("second_instrument_disagrees")
    answer = case_of(tmp_path / "a.toml", low, two, finding(what))
    assert answer.ranking[0].cause.id == "wiring_ground_fault"


def test_both_stations_are_compared_only_where_there_are_two(tmp_path: Path) -> None:
    def offered(answer: Diagnosis) -> bool:
        planner = answer.planner
        options = planner.chooser().options(planner.plan_state)
        return "compare_two_stations" in {o.inspection.id for o in options}

    low = finding("gauge_reads_low")
    assert not offered(case_of(tmp_path / "a.toml", low))
    assert offered(case_of(tmp_path / "b.toml", low, finding("gauges_at_two_stations")))


def test_a_second_panel_gauge_far_off_keeps_the_two_at_odds(tmp_path: Path) -> None:
    """One gauge agrees with the test gauge and the other does not: the instruments disagree."""

    def reading(pressure: str, gauge: str | None = None) -> NewEntry:
        return NewEntry(
            "reading", {"pressure": pressure, "rpm": "idle", "oil": "hot", "gauge": gauge}
        )

    panel, test = reading("45 psi"), reading("47 psi", "direct")
    at_odds = "second_instrument_disagrees"
    assert state_of(case_of(tmp_path / "a.toml", panel, test), at_odds) is State.ABSENT
    both = case_of(tmp_path / "b.toml", reading("10 psi"), panel, test)
    assert state_of(both, at_odds) is not State.ABSENT
