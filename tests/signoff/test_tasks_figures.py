"""Tasks of reassembly against the figures and practice of the trade."""

from __future__ import annotations

import re

import pytest

from knowledge.book import the_book
from knowledge.sources import (
    BUILD_ARTICLE_2017,
    COMMON_PRACTICE,
    FOUR_PUMP_SERVICE_1988,
    PUMP_INSTALLATION_1983,
    V8_PUMP_SERVICE_2006,
)
from knowledge.units import DIMENSIONS, LENGTH, TORQUE, parse
from knowledge.work import Band, Task
from tests.support.every import every

BOOK = the_book()
TASKS = list(BOOK.tasks.values())


def ids(task: Task) -> str:
    return task.id


def passes(band: Band, value: float) -> bool:
    return (band.low is None or band.low <= value) and (band.high is None or value <= band.high)


IN_LB = parse("1 in-lb", TORQUE)
LB_FT = parse("1 lb-ft", TORQUE)


@pytest.mark.parametrize(
    ("task", "figure"),
    [
        ("pump_bolts_torqued", "30 lb-ft"),
        ("tray_bolts_torqued", "15 in-lb"),
    ],
)
def test_common_practice_torque_is_used_first(task: str, figure: str) -> None:
    """Ten per cent either side of the figure, marked as practice and not as read somewhere."""
    torque = parse(figure, TORQUE)
    band = BOOK.tasks[task].bands[0]
    assert band.source is COMMON_PRACTICE
    assert figure in band.says
    assert "10 %" in band.says
    assert (band.low, band.high) == pytest.approx((0.9 * torque, 1.1 * torque))
    assert passes(band, torque)


def test_inch_pounds_never_pass_for_foot_pounds() -> None:
    tray = BOOK.tasks["tray_bolts_torqued"]
    cover = BOOK.tasks["pump_cover_screws_torqued"]
    assert passes(tray.bands[0], 15 * IN_LB)
    assert not passes(tray.bands[0], 15 * LB_FT)
    assert passes(cover.bands[0], 106 * IN_LB)
    assert not passes(cover.bands[0], 106 * LB_FT)
    assert any(passes(b, 15 * LB_FT) for b in cover.bands)
    assert not any(passes(b, 15 * IN_LB) for b in cover.bands)
    assert any("inch-pounds" in step for step in tray.how)


@pytest.mark.parametrize(
    ("task", "figure", "source"),
    [
        ("pump_cover_screws_torqued", "106 in-lb", BUILD_ARTICLE_2017),
        ("pump_cover_screws_torqued", "10 ft-lb", PUMP_INSTALLATION_1983),
        ("pump_cover_screws_torqued", "6 ft-lb", FOUR_PUMP_SERVICE_1988),
        ("pump_cover_screws_torqued", "9 ft-lb", FOUR_PUMP_SERVICE_1988),
        ("pump_bolts_torqued", "26 ft-lb", FOUR_PUMP_SERVICE_1988),
        ("pump_bolts_torqued", "35 ft-lb", FOUR_PUMP_SERVICE_1988),
        ("pump_bolts_torqued", "55 ft-lb", BUILD_ARTICLE_2017),
        ("pump_bolts_torqued", "25 N·m", V8_PUMP_SERVICE_2006),
        ("relief_cap_torqued", "35 ft-lb", PUMP_INSTALLATION_1983),
        ("pickup_bolt_torqued", "12 N·m", V8_PUMP_SERVICE_2006),
        ("tray_bolts_torqued", "25 N·m", V8_PUMP_SERVICE_2006),
    ],
)
def test_published_torques_stand_beside(task: str, figure: str, source: object) -> None:
    bands = [b for b in BOOK.tasks[task].bands if b.source is source]
    assert any(passes(b, parse(figure, TORQUE)) for b in bands)


def test_pickup_gap() -> None:
    """3/8 in passes every view, no gap passes none, and 1/8 in more or less is asked after."""
    gap = BOOK.tasks["pickup_gap_fitted"]
    assert all(b.source is COMMON_PRACTICE for b in gap.bands)
    assert all(passes(b, parse("3/8 in", LENGTH)) for b in gap.bands)
    assert all(passes(b, parse("1/4 in", LENGTH)) for b in gap.bands)
    assert not any(passes(b, 0.0) for b in gap.bands)
    assert not any(passes(b, parse("1/8 in", LENGTH)) for b in gap.bands)
    assert not any(passes(b, parse("5/8 in", LENGTH)) for b in gap.bands)
    assert gap.bands[0].low == gap.limits[0].typical if gap.limits[0] else False
    assert gap.spread == parse("1/32 in", LENGTH)


@pytest.mark.parametrize(
    ("task", "words"),
    [
        ("pickup_gap_fitted", "compressed thickness"),
        ("pickup_gap_fitted", "clay"),
        ("pickup_gap_checked_again", "1/8 in"),
        ("tray_spacers_even", "3/16 in"),
        ("tray_clears_pump", "3/16 in"),
        ("tray_clears_pump", "check it again"),
        ("tray_clears_crank", "two full turns"),
        ("pump_cover_screws_locked", "medium-strength (removable) thread locker"),
        ("pump_bolts_locked", "medium-strength (removable) thread locker"),
        ("tray_bolts_locked", "medium-strength (removable) thread locker"),
        ("pickup_retained", "medium-strength (removable) thread locker"),
    ],
)
def test_practice_of_the_trade_is_stated_and_marked(task: str, words: str) -> None:
    found = BOOK.tasks[task]
    assert words in " ".join((found.says, *found.how))
    assert found.source is COMMON_PRACTICE


@pytest.mark.parametrize(
    ("task", "typed", "dimension", "first"),
    [
        ("gear_end_clearance_fitted", "0.003 in", "length", True),
        ("gear_end_clearance_fitted", "0.007 in", "length", False),
        ("gear_end_clearance_fitted", "0.001 in", "length", False),
        ("gear_side_clearance_fitted", "0.003 in", "length", True),
        ("gear_side_clearance_fitted", "0.006 in", "length", False),
        ("rotor_tip_clearance_fitted", "0.20 mm", "length", False),
        ("pump_cover_flat", "0.002 in", "length", False),
        ("main_clearance_fitted", "0.0022 in", "length", True),
        ("main_clearance_fitted", "0.0045 in", "length", False),
        ("rod_clearance_fitted", "0.0005 in", "length", False),
        ("crank_end_float_set", "0.005 in", "length", True),
        ("crank_end_float_set", "0.015 in", "length", False),
        ("tray_clears_crank", "0.100 in", "length", True),
        ("tray_clears_crank", "0.030 in", "length", False),
        ("skew_gear_end_float_set", "0.005 in", "length", True),
        ("priming_pressure_reached", "45 psi", "pressure", True),
        ("priming_pressure_reached", "10 psi", "pressure", False),
        ("priming_pressure_timed", "3 min", "time", False),
        ("first_pressure_timed", "4 s", "time", True),
        ("first_pressure_timed", "15 s", "time", False),
        ("pressure_at_hot_idle", "4 psi", "pressure", False),
        ("pressure_hot_at_2000", "15 psi", "pressure", False),
        ("pressure_hot_at_2000", "45 psi", "pressure", True),
        ("oil_heat_watched", "95 C", "temperature", True),
        ("oil_heat_watched", "260 F", "temperature", False),
        ("cam_run_in_timed", "25 min", "time", True),
        ("first_oil_change_done", "1 h", "time", True),
        ("panel_gauge_agrees", "8 psi", "pressure", False),
    ],
)
def test_figure_against_the_band_used_first(
    task: str, typed: str, dimension: str, first: bool
) -> None:
    found = BOOK.tasks[task]
    assert found.dimension == dimension
    assert passes(found.bands[0], parse(typed, DIMENSIONS[dimension])) is first


@pytest.mark.parametrize(
    ("task", "spread"),
    [
        ("main_clearance_fitted", "0.008 mm"),
        ("journals_round", "0.0001 in"),
        ("gear_end_clearance_fitted", "0.0005 in"),
        ("pickup_gap_fitted", "1/32 in"),
    ],
)
def test_usual_error_of_the_method(task: str, spread: str) -> None:
    assert BOOK.tasks[task].spread == pytest.approx(parse(spread, LENGTH))


@pytest.mark.parametrize(
    "task",
    [
        "right_pump",
        "mount_gasket_right_way_round",
        "relief_clean",
        "relief_plunger_drops",
        "relief_seat_sound",
        "relief_spring_right",
        "relief_lock_nut_tight",
        "pickup_retained",
        "pickup_welded_right",
        "pickup_gap_fitted",
        "drive_shaft_sound",
        "drive_shaft_right_end_down",
        "drive_shaft_floats",
        "distributor_tried_first",
        "tray_clears_crank",
        "tray_spacers_even",
        "tray_clears_pump",
        "sump_fits_over_all",
        "front_plugs_in",
        "rear_plugs_in",
        "valley_plugs_in",
        "lifter_bores_sound",
        "oilways_brushed_clean",
        "filter_filled",
        "direct_gauge_fitted",
        "oil_at_every_rocker",
        "first_filter_cut_open",
        "retorqued_after_heat",
        "oil_sample_sent",
        "baseline_written_down",
    ],
)
def test_nothing_the_trade_insists_on_is_missing(task: str) -> None:
    assert task in BOOK.tasks


def test_weld_only_with_the_pump_stripped_and_the_spring_out() -> None:
    text = " ".join(BOOK.tasks["pickup_welded_right"].how)
    assert "relief spring out before any heat" in text


@every(TASKS, ids)
def test_words_are_plain(task: Task) -> None:
    """No name of a maker, no key of a source, no sentence too long for a phone."""
    text = " ".join((task.says, *task.how, task.remedy, task.why, *(b.says for b in task.bands)))
    assert not re.search(r"\b(HB-?\d\d|F\d\d|W\d\d|B-\d\d|COMMON_PRACTICE)\b", text)
    assert all(len(step) <= 130 for step in task.how), [s for s in task.how if len(s) > 130]
