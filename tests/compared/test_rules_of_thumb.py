"""The trade's own rules of thumb hold (common practice, no source)."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

BOOK = the_book()


def consult(*words: str, layout: str = "unknown", more: str = "") -> Diagnosis:
    """A case of these findings; a leading minus means looked for and not there."""
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n{more}\n'
    for i, word in enumerate(words, 1):
        state = "absent" if word.startswith("-") else "present"
        text += f'[[finding]]\nno = {i}\nwhat = "{word.lstrip("-")}"\nstate = "{state}"\n'
    return Diagnosis(BOOK, from_text(text, None, BOOK))


def order(answer: Diagnosis) -> list[str]:
    return [r.cause.id for r in answer.ranking]


def chance(answer: Diagnosis, cause: str) -> float:
    """The figure of a cause in the ranking."""
    return next(r.probability for r in answer.ranking if r.cause.id == cause)


def test_wavering_needle_with_metal_under_the_ball() -> None:
    """Common practice: debris under the relief valve comes first."""
    answer = consult("needle_flickers", "debris_on_relief_seat")
    assert order(answer)[0] == "relief_debris"
    assert chance(answer, "relief_debris") > 0.5


@pytest.mark.parametrize("sight", ["cover_warped", "cover_screws_loose", "air_at_pump_cover"])
def test_flexing_pump_cover_points_to_loss_past_it(sight: str) -> None:
    """Common practice: a thin or flexing pump cover with gaps at its joint loses oil there."""
    before = chance(consult("gauge_reads_low"), "pump_cover_loose")
    assert chance(consult("gauge_reads_low", sight), "pump_cover_loose") > 3 * before


def test_wiped_bearings_with_relief_debris_are_consequence() -> None:
    """Common practice: the debris under the valve leads, the wiped bearings followed."""
    answer = consult("gauge_reads_low", "debris_on_relief_seat", "shells_wiped")
    ranked = order(answer)
    assert ranked[0] == "relief_debris"
    assert ranked.index("bearing_wiped") > ranked.index("relief_debris")
    assert chance(answer, "relief_debris") > 3 * chance(answer, "bearing_wiped")
    assert answer.inference.belief("bearings_damaged") > 0.75, "damaged all the same"


@pytest.mark.parametrize("gap", ["0.02 in", "1 mm", "0 in"])
def test_tiny_pickup_gap_throttles_the_suction(gap: str) -> None:
    """Common practice: a tiny gap or none between pickup and pan floor throttles the suction."""
    more = f'[[finding]]\nno = 9\nwhat = "pickup_gap"\nvalue = "{gap}"'
    answer = consult("gauge_reads_low", more="\n" + more)
    assert order(answer)[0] in ("pickup_clearance_tight", "pan_dented")
    assert answer.inference.belief("suction_throttled") > 0.5


def test_ample_pickup_gap_is_no_throttle() -> None:
    """Common practice: three eighths of an inch is ample."""
    more = '[[finding]]\nno = 9\nwhat = "pickup_gap"\nvalue = "3/8 in"'
    before = chance(consult("gauge_reads_low"), "pickup_clearance_tight")
    assert chance(consult("gauge_reads_low", more="\n" + more), "pickup_clearance_tight") < before


def test_windage_leads_to_cavitation_and_starvation() -> None:
    """Common practice: oil aerated by the crank cavitates the pump and starves bearings."""
    before = consult("needle_flickers")
    after = consult("needle_flickers", "foam_on_stick", "flickers_only_at_speed")
    for state in ("oil_aerated", "pump_cavitates", "bearings_starved"):
        assert after.inference.belief(state) > before.inference.belief(state), state
    assert "windage_aeration" in order(after)[:3]


def test_old_stock_parts_are_themselves_a_risk() -> None:
    """Common practice: a fifty-year-old stock drive shaft or tray is a risk by itself."""
    plain = consult("gauge_reads_zero")
    old = consult("gauge_reads_zero", "original_drive_shaft", "tray_very_old")
    for cause in ("pump_drive_broken", "pump_drive_slip", "windage_aeration"):
        assert chance(old, cause) > 1.3 * chance(plain, cause), cause


def test_good_cold_low_hot_points_to_leakage() -> None:
    """Common practice: good cold and low hot is clearance, thin oil or pump wear, not suction."""
    answer = consult("gauge_reads_low", "good_cold_low_hot")
    leaks = sum(chance(answer, c) for c in ("bearing_wear_mains", "bearing_wear_rods"))
    assert leaks > chance(answer, "pickup_screen_blocked") + chance(answer, "pan_dented")


def test_a_wrong_gauge_is_distinguished_from_real_loss() -> None:
    """Common practice: a trusted gauge that reads right clears the engine; one that reads low
    clears the instrument."""
    right = consult("gauge_reads_low", "engine_runs_normally", "-direct_gauge_low")
    assert BOOK.causes[order(right)[0]].station == "instrument" or order(right)[0] == (
        "oil_hot_normal"
    )
    low = consult("gauge_reads_low", "direct_gauge_low", "panel_reads_too_high")
    assert BOOK.causes[order(low)[0]].station != "instrument"


@pytest.mark.parametrize(
    "words",
    [
        ("direct_gauge_zero",),
        ("gauge_reads_low", "bearing_knock"),
        ("copper_flakes",),
        ("dipstick_dry",),
        ("gauge_line_leaking",),
    ],
    ids=str,
)
def test_stop_alarms(words: tuple[str, ...]) -> None:
    """What endangers the engine is said before anything else."""
    answer = consult(*words)
    assert answer.alarms
    assert not answer.may_run
    options = answer.planner.chooser().options(answer.planner.plan_state)
    assert options
    assert not any(o.inspection.needs_running for o in options)
