"""The reference job on one screen, from words: found, what it explains, from where, what decides."""

from __future__ import annotations

from functools import cache
from math import log

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.inference.contradictions import by_odds
from diagnose.inference.leave_one_out import Without
from diagnose.inference.network import Likelihood
from diagnose.output.documents.review import review_document
from diagnose.output.text.review_brief import review_brief
from diagnose.reasoning.comes_first import open_origin
from knowledge.book import the_book
from tests.support.readers import by_tell
from tests.support.trade_answers import case_text

BOOK = the_book()
HELD = ("needle_flickers", "debris_on_relief_seat")
WIPED = (*HELD, "cover_grooved", "shells_wiped")


@cache
def job(*facts: str, layout: str = "distributor_v8") -> Diagnosis:
    """The engine of the reference job with these findings."""
    return Diagnosis(BOOK, from_text(case_text({"engine": layout, "facts": facts}), None, BOOK))


def screen(*facts: str) -> str:
    """The default answer in one line."""
    return " ".join(review_brief(review_document(job(*facts), "v8.toml")).split())


def test_one_screen_says_what_it_explains_and_where_it_can_have_come_from() -> None:
    said = screen(*WIPED)
    parts = [
        "the relief valve was held open by debris under it: costs",
        "explains the needle wavers",
        "from a stray piece of unknown origin",
        "metal shed by damaged parts",
        "oil leaks across the pump cover",
        "it was found; where that came from is still open",
        "to clean dirt or metal: sump",
        "Next: sort the debris by magnet",
    ]
    places = [said.index(p) for p in parts]
    assert places == sorted(places)


def test_what_was_found_beside_the_first_is_no_origin() -> None:
    """Without a found fault nothing is said of an origin."""
    said = screen("needle_flickers")
    assert "still open" not in said
    assert " from a stray" not in said


@pytest.mark.parametrize("kind", ["bright_soft_metal", "magnetic_metal", "hard_chips"])
def test_once_the_debris_was_sorted_another_check_comes_next(kind: str) -> None:
    assert open_origin(job(*WIPED).inference) is not None
    known = job(*WIPED, kind)
    assert open_origin(known.inference) is None
    choice = known.next_check
    assert choice is None or choice.inspection.id != "sort_what_the_filter_held"
    assert "sort the debris" not in screen(*WIPED, kind)


def test_a_sight_outside_calls_for_no_check_of_its_origin() -> None:
    """A leak was seen from outside: the check that is worth most comes next, as before."""
    assert open_origin(job("oil_seen_outside", "dipstick_low").inference) is None


def test_with_bearings_certainly_damaged_a_cap_comes_off_next() -> None:
    """Knock and copper flakes: no lamp is looked at, and nothing is cranked to see oil come."""
    known = job("bearing_knock", "copper_flakes", "fell_suddenly", layout="small_diesel")
    choice = known.next_check
    assert choice is not None
    assert choice.inspection.id == "lift_one_cap"
    said = screen("bearing_knock", "copper_flakes", "fell_suddenly")
    assert "the bearings are wiped, scored or spun (> 99 %)" in said
    seen = job("bearing_knock", "copper_flakes", "fell_suddenly", "shells_wiped").next_check
    assert seen is None or seen.inspection.id != "lift_one_cap"
    quiet = job("fell_suddenly", layout="small_diesel").next_check
    assert quiet is not None
    assert quiet.inspection.id != "lift_one_cap"


def test_a_rare_fault_beside_others_is_no_contradiction() -> None:
    """A cover that gapes is seldom seen on any engine: the metal elsewhere does not deny it."""
    assert not job(*WIPED, "cover_warped").contradictions


@pytest.mark.parametrize(
    ("chance_on_any_engine", "odd"), [(0.5, True), (0.002, True), (0.001, False)]
)
def test_only_what_the_rest_makes_rarer_contradicts(
    chance_on_any_engine: float, *, odd: bool
) -> None:
    """One in 1,000 given the others, beside its chance on any engine."""
    finding = BOOK.findings["cover_warped"]
    found = by_odds(
        {finding.id: Likelihood(0.0, 1.0)},
        BOOK.findings,
        {finding.id: Without(0.0, {})},
        log(0.00099),
        (),
        lambda _: chance_on_any_engine,
    )
    assert bool(list(found)) is odd


def test_low_and_good_at_the_pump_contradict() -> None:
    both = job("pump_port_low", "good_at_pump_low_in_gallery").contradictions
    assert [c for c in both if "pump outlet" in c.says]


def test_the_words_of_the_reference_job_are_read() -> None:
    text = "Metal under the relief ball, a worn ring and a gap at the pump's cover, wiped bearings."
    read = present(text)
    assert {"debris_on_relief_seat", "cover_grooved", "cover_warped", "shells_wiped"} <= read
    assert "cover_warped" not in present("No gap at the pump cover.")
    assert "cover_warped" not in present("Gap between gears and pump cover .003.")


def present(text: str) -> set[str]:
    """Ids of the findings read as there."""
    return {f["what"] for f in by_tell(text).get("finding", ()) if f.get("state") == "present"}
