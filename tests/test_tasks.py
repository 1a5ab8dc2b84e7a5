"""What is checked while the engine goes together: every task whole, the trade's figures in it."""

from __future__ import annotations

import re
from collections import Counter

import pytest

from knowledge import contents
from knowledge.applying import applies
from knowledge.book import the_book
from knowledge.engines import features
from knowledge.engines.features import (
    DRY_SUMP,
    FLOATING_PICKUP,
    PUMP_ON_CRANK_NOSE,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    TURBOCHARGED,
    WINDAGE_TRAY,
)
from knowledge.model import Finding, State, all_in
from knowledge.sources import (
    BUILD_ARTICLE_2017,
    COMMON_PRACTICE,
    FOUR_PUMP_SERVICE_1988,
    JUDGEMENT,
    PUMP_INSTALLATION_1983,
    V8_PUMP_SERVICE_2006,
)
from knowledge.units import DIMENSIONS, LENGTH, TORQUE, parse
from knowledge.work import Band, Caution, Hold, Layout, Phase, Task

BOOK = the_book()
TASKS = list(BOOK.tasks.values())
MEASURED = [t for t in TASKS if t.dimension]
NAMED = {v: k for m in contents.WORK for k, v in vars(m).items() if isinstance(v, Task)}
#: the phases every build goes through; cleaning is called for by what was found
FITTING = [p for p in Phase if p is not Phase.CLEANING]


def ids(task: Task) -> str:
    return task.id


def passes(band: Band, value: float) -> bool:
    return (band.low is None or band.low <= value) and (band.high is None or value <= band.high)


def state_of(layout: Layout) -> dict[Finding, State]:
    return {
        **dict.fromkeys(layout.has, State.PRESENT),
        **dict.fromkeys(layout.lacks, State.ABSENT),
    }


# ------------------------------------------------------------------ every task is whole


@pytest.mark.parametrize("task", TASKS, ids=ids)
def test_task_can_be_done(task: Task) -> None:
    """Steps, a source that says how far it can be trusted, and words that complete 'checked: ...'."""
    assert task.how
    assert all(step.strip() for step in task.how)
    assert task.source.title
    assert task.source.trust
    assert task.says
    assert not task.says.endswith(".")
    assert task.also
    assert isinstance(task.phase, Phase)
    assert isinstance(task.hold, Hold)


@pytest.mark.parametrize("task", TASKS, ids=ids)
def test_id_is_the_name(task: Task) -> None:
    assert re.fullmatch(r"[a-z][a-z0-9_]*", task.id)
    assert NAMED[task] == task.id.upper()


@pytest.mark.parametrize("task", [t for t in TASKS if t.hold is Hold.STOP], ids=ids)
def test_a_stop_names_its_remedy(task: Task) -> None:
    assert task.remedy


def test_ids_mean_one_thing() -> None:
    """A task is called like no cause, finding, measure, inspection or limit."""
    for kind in ("causes", "conditions", "findings", "measures", "inspections", "limits"):
        assert not BOOK.tasks.keys() & getattr(BOOK, kind).keys(), kind


@pytest.mark.parametrize("task", TASKS, ids=ids)
def test_guards_and_features_are_in_the_book(task: Task) -> None:
    assert all(BOOK.causes.get(c.id) is c for c in task.guards)
    known = set(all_in(features.__name__, Finding))
    assert known >= {*task.only_with, *task.not_with}
    assert not set(task.only_with) & set(task.not_with)
    assert all(BOOK.findings.get(f.id) is f for f in task.after)
    assert len(set(task.guards)) == len(task.guards)


@pytest.mark.parametrize("task", MEASURED, ids=ids)
def test_measured_task_has_something_to_measure_against(task: Task) -> None:
    assert task.dimension in DIMENSIONS
    assert task.bands or any(task.limits)
    assert task.spread > 0 or task.dimension == "count"
    for band in task.bands:
        assert band.low is not None or band.high is not None
        assert band.low is None or band.high is None or band.low < band.high
        assert band.says
        assert band.source.trust
    low, high = task.limits
    for limit in (low, high):
        if limit is not None:
            assert BOOK.limits[limit.id] is limit
            assert limit.dimension == task.dimension
    if low and high:
        assert low.typical < high.typical


@pytest.mark.parametrize("task", [t for t in TASKS if not t.dimension], ids=ids)
def test_unmeasured_task_has_no_figures(task: Task) -> None:
    assert not task.bands
    assert task.limits == (None, None)
    assert not task.spread


@pytest.mark.parametrize("task", [t for t in MEASURED if len(t.bands) > 1], ids=ids)
def test_differing_sources_say_what_they_hold_for(task: Task) -> None:
    """Several sources stand side by side, each saying for what it holds."""
    assert len({b.says for b in task.bands}) == len(task.bands)


def test_every_phase_has_its_tasks() -> None:
    count = Counter(t.phase for t in TASKS)
    assert all(count[p] for p in Phase)
    assert {t.phase for m in contents.WORK for t in all_in(m.__name__, Task)} == set(count)


def test_steps_that_can_hurt_carry_their_caution() -> None:
    for task in TASKS:
        text = " ".join(task.how).lower()
        if task.phase is Phase.FIRST_START:
            assert Caution.ROTATING in task.cautions, task.id
            assert Caution.EXHAUST in task.cautions, task.id
        if "solvent" in text:
            assert Caution.SOLVENT in task.cautions, task.id
        if "turn the engine by hand" in text or "crank by hand" in text:
            assert Caution.HAND_TURN in task.cautions, task.id
        if "drill on the pump" in task.says or "priming tool" in text:
            assert Caution.PRIMING in task.cautions, task.id


# ------------------------------------------------------------------ which engine it is for


@pytest.mark.parametrize(
    ("only_with", "not_with", "states", "expected"),
    [
        ((), (), {}, True),
        ((WINDAGE_TRAY,), (), {}, True),  # not stated: it may be there
        ((WINDAGE_TRAY,), (), {WINDAGE_TRAY: State.PRESENT}, True),
        ((WINDAGE_TRAY,), (), {WINDAGE_TRAY: State.ABSENT}, False),
        ((WINDAGE_TRAY, TURBOCHARGED), (), {WINDAGE_TRAY: State.ABSENT}, True),
        (
            (WINDAGE_TRAY, TURBOCHARGED),
            (),
            {WINDAGE_TRAY: State.ABSENT, TURBOCHARGED: State.ABSENT},
            False,
        ),
        ((), (DRY_SUMP,), {}, True),
        ((), (DRY_SUMP,), {DRY_SUMP: State.ABSENT}, True),
        ((), (DRY_SUMP,), {DRY_SUMP: State.PRESENT}, False),
        (
            (WINDAGE_TRAY,),
            (DRY_SUMP,),
            {WINDAGE_TRAY: State.PRESENT, DRY_SUMP: State.PRESENT},
            False,
        ),
    ],
)
def test_applies(
    only_with: tuple[Finding, ...],
    not_with: tuple[Finding, ...],
    states: dict[Finding, State],
    expected: bool,
) -> None:
    task = Task(
        id="t",
        phase=Phase.PUMP,
        says="a thing",
        how=("do it",),
        source=JUDGEMENT,
        only_with=only_with,
        not_with=not_with,
    )
    assert applies(task, states.get) is expected


@pytest.mark.parametrize("layout", BOOK.layouts.values(), ids=lambda x: x.id)
def test_every_layout_has_its_tasks(layout: Layout) -> None:
    """Whatever the engine: pump, relief, bearings, sump or tank, drive, priming, first start."""
    states = state_of(layout)
    mine = [t for t in TASKS if applies(t, states.get)]
    count = Counter(t.phase for t in mine)
    assert all(count[p] for p in FITTING)
    names = {t.id for t in mine}
    assert ("tank_lines_right" in names) == (states.get(DRY_SUMP) is not State.ABSENT)
    assert ("pickup_gap_fitted" in names) == (states.get(DRY_SUMP) is not State.PRESENT)
    assert names & {"primed_by_drill", "primed_by_tank"}


@pytest.mark.parametrize(
    ("task", "feature", "when_present", "when_absent"),
    [
        ("distributor_tried_first", PUMP_ON_DISTRIBUTOR_SHAFT, True, False),
        ("drive_shaft_floats", PUMP_ON_DISTRIBUTOR_SHAFT, True, False),
        ("primed_by_drill", PUMP_ON_CRANK_NOSE, False, True),
        ("drill_turns_right_way", PUMP_ON_CRANK_NOSE, False, True),
        ("crank_nose_drive_engaged", PUMP_ON_CRANK_NOSE, True, False),
        ("tray_clears_crank", WINDAGE_TRAY, True, False),
        ("tray_bolts_torqued", WINDAGE_TRAY, True, False),
        ("turbo_wetted", TURBOCHARGED, True, False),
        ("turbo_lines_clear", TURBOCHARGED, True, False),
        ("pickup_gap_fitted", DRY_SUMP, False, True),
        ("pickup_gap_fitted", FLOATING_PICKUP, False, True),
        ("tank_lines_right", DRY_SUMP, True, False),
    ],
)
def test_features_decide(
    task: str, feature: Finding, when_present: bool, when_absent: bool
) -> None:
    assert applies(BOOK.tasks[task], {feature: State.PRESENT}.get) is when_present
    assert applies(BOOK.tasks[task], {feature: State.ABSENT}.get) is when_absent


# ------------------------------------------------------------------ figures of the trade

IN_LB = parse("1 in-lb", TORQUE)
LB_FT = parse("1 lb-ft", TORQUE)


@pytest.mark.parametrize(
    ("task", "figure"),
    [
        ("pump_cover_screws_torqued", "15 lb-ft"),
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
    assert passes(cover.bands[0], 15 * LB_FT)
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


@pytest.mark.parametrize("task", TASKS, ids=ids)
def test_words_are_plain(task: Task) -> None:
    """No name of a maker, no key of a source, no sentence too long for a phone."""
    text = " ".join((task.says, *task.how, task.remedy, task.why, *(b.says for b in task.bands)))
    assert not re.search(r"\b(HB-?\d\d|F\d\d|W\d\d|B-\d\d|COMMON_PRACTICE)\b", text)
    assert all(len(step) <= 130 for step in task.how), [s for s in task.how if len(s) > 130]
