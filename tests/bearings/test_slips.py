"""A wrong digit or unit in a reading of a bearing: it is read again, and nothing is ordered for it."""

from __future__ import annotations

import pytest

from diagnose.bearings.judging import Flag
from diagnose.fits.bearing import Kind, Place
from diagnose.output.documents.bearing_steps import next_lines
from knowledge.units import INCH
from tests.bearings.test_bearings import ENGINE, GOOD, NEW, case_of, flags, judged_alone


@pytest.mark.parametrize(
    ("reading", "right"),
    [
        (f"{GOOD}; journal = 2.4483 2.4482 2.3483 2.4482 in", {Flag.SLIP}),
        (f"{GOOD}; journal = 2.2483 in", {Flag.SLIP}),
        (f"{GOOD}; journal = 24.483 mm", {Flag.SLIP}),
        ("bore = 2.1412 in; journal = 2.4482 in", {Flag.SLIP}),
        ("strip = 1.5 to 2 thou", set()),
        (f"{GOOD}; journal = 2.4483 2.4482 2.4483 2.4482 in", set()),
    ],
)
def test_a_slip_is_flagged_and_nothing_else(reading: str, right: set[Flag]) -> None:
    assert flags(case_of(NEW, f"main 2; {reading}"))["main 2"] == right


def test_one_wrong_digit_sends_no_crank_to_the_grinder() -> None:
    """The bearing is read again; it is no worn journal, and no others are ground for it."""
    sound = [f"main {n}; {GOOD}; journal = 2.4483 in" for n in (1, 2, 4, 5)]
    slip = f"main 3; {GOOD}; journal = 2.4483 2.3483 in"
    for wrong in (slip, "main 3; inside = 2.4521 in; journal = 2.4482 in; strip = 2.2 thou"):
        case = case_of(NEW, *sound, wrong)
        found = judged_alone(case)
        order = found.orders[Kind.MAIN]
        assert order.ground is None
        assert Place(Kind.MAIN, 3) not in {c.place for c in order.choices}
    assert "journal_not_true" not in {
        r.finding.id for r in case_of(NEW, *sound, slip).finding_records
    }


def test_a_clearance_as_the_maker_wants_it_is_not_near_a_limit() -> None:
    """His fit is 1.0 to 2.7 thou and nothing else is known: 2.2 by strip is right."""
    wanted = "mains; wanted = 1.0 2.7 thou"
    limit = ENGINE + '[engine.limits]\nmain_clearance = "2.7 thou"\n'
    assert flags(case_of(wanted, "main 2; strip = 2.2 thou", head=limit)) == {"main 2": set()}
    over = flags(case_of(wanted, "main 2; strip = 3 thou", head=limit))
    assert over == {"main 2": {Flag.AT_LIMIT}}


def test_a_ground_crank_is_compared_with_no_standard_shells() -> None:
    """Ground 0.010 in: standard shells would leave 12 thou, and nobody asks for that."""
    ground = "mains; undersize = 0.010 in; wanted = 0.0010 0.0027 in"
    each = [f"main {n}; inside = 2.1181 in; journal = 2.1161 in" for n in (1, 2, 3)]
    order = judged_alone(case_of(ground, *each)).orders[Kind.MAIN]
    sizes = [a.undersize / INCH for a in order.alternatives]
    assert sizes[0] == pytest.approx(0.010)
    assert min(sizes) >= 0.0099


def test_a_slip_with_the_new_shells_in_asks_for_no_other_shells() -> None:
    for wrong in ("journal = 2.4483 2.3483 in", "inside = 2.4403 in; journal = 2.4482 in"):
        case = case_of(NEW, f"main 2; {wrong}; at = build", "main 1; strip = 2 thou; at = build")
        assert "again" in next_lines(judged_alone(case), "job.toml")[0]
