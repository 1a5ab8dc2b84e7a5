"""Cleaning after debris: every finding has its task, every task its source."""

from __future__ import annotations

import re

import pytest

from knowledge import contents_work
from knowledge.book import the_book
from knowledge.debris import findings as debris_findings
from knowledge.engines import features as engine_features
from knowledge.engines import features_build as engine_build
from knowledge.model import Finding, Kind, Stage, all_in
from knowledge.reassembly import (
    after_damage,
    cleaning,
    cleaning_block,
    cleaning_first,
    cleaning_oil,
)
from knowledge.reassembly import what_was_found as found
from knowledge.work import Caution, Phase, Task

FILES = (cleaning_first, cleaning, cleaning_block, cleaning_oil, after_damage)
TASKS = tuple(t for file in FILES for t in all_in(file.__name__, Task))
BOOK = the_book()
HARMLESS = {"fine_dust_only", "plug_fur_only"}
OUTSIDE_ONLY = {"sealer_squeezed_out"}

#: every sign of debris or of something strange in the oil, by its place in the oil's way
CALLS_FOR_CLEANING = {
    "bearings": [f.id for f in all_in(debris_findings.__name__, Finding) if f.id not in HARMLESS]
    + [
        "shells_embedded_dirt",
        "lower_halves_embedded",
        "shells_scratched",
        "damaged_by_debris_only",
        "piston_or_pin_broken",
    ],
    "suction": [f.id for f in BOOK.findings.values() if f.id.endswith(("_on_screen", "_at_screen"))]
    + ["screen_blocked", "metal_past_the_screen", "sealer_in_sump", "debris_seen_before"],
    "oil": [
        "glitter_in_oil",
        "sludge_seen",
        "oil_black_and_gritty",
        "oil_milky",
        "oil_film_in_coolant",
        "water_at_the_drain",
        "water_in_sample",
        "glycol_found",
        "silicon_high",
        "fuel_smell",
        "fuel_gets_in",
        "lab_fuel_high",
        "additive_or_flush_in_oil",
    ],
    "pump": [
        "piece_in_pump",
        "steel_slivers_in_pump",
        "pump_gear_broken",
        "piece_through_pump_cover",
    ],
    "relief": ["debris_on_relief_seat", "relief_return_blocked"],
    "delivery": [
        "filter_packed",
        "filter_collapsed",
        "filter_burst",
        "filter_bypass_witness",
        "milky_film_in_filter",
        "gasket_shreds_found",
        "gallery_found_blocked",
        "gallery_plug_lies_in_sump",
        "cooler_found_blocked",
    ],
    "assembly": ["leftover_found", "piece_found_inside"],
    "instrument": ["sender_port_clogged", "gauge_line_sludged"],
    "topend": ["turbo_feed_found_blocked", "cam_lobes_wiped"],
}
#: what was damaged on the way, and calls for its neighbours to be measured
DAMAGE = [
    "shells_wiped",
    "one_bearing_wiped",
    "all_bearings_wiped",
    "shells_found_ruined",
    "shells_flaking",
    "shells_etched",
    "bearing_found_seized",
    "several_journals_dry",
    "signs_of_starvation",
    "shell_spun",
    "shell_backs_shiny",
    "main_bearing_shifted",
    "crank_scored",
    "journal_not_true",
    "main_bores_out_of_line",
    "rod_or_crank_bent",
    "rod_through_block",
    "thrust_face_ploughed",
    "crank_end_float_over",
    "cover_grooved",
    "pump_scored_seen",
    "pump_jammed",
    "pump_found_failed",
    "pump_casting_cracked",
    "pump_housing_burst",
    "drive_shaft_broken",
    "drive_gear_stripped",
    "drive_coupling_sheared",
    "pump_chain_broken",
    "cam_bearing_found_bad",
    "camshaft_broken",
    "turbo_shaft_stiff_or_blued",
    "turbo_shaft_loose",
]


def called_for(finding: str, among: tuple[Task, ...] = TASKS) -> set[str]:
    """The tasks one finding calls for, whatever the engine."""
    return {t.id for t in among if BOOK.findings[finding] in t.after}


@pytest.mark.parametrize(
    "finding", [f for place in CALLS_FOR_CLEANING.values() for f in place], ids=str
)
def test_every_sign_of_debris_calls_for_cleaning(finding: str) -> None:
    assert called_for(finding)


@pytest.mark.parametrize("station", CALLS_FOR_CLEANING)
def test_signs_stand_at_their_station(station: str) -> None:
    for finding in CALLS_FOR_CLEANING[station]:
        assert BOOK.findings[finding].station == station, finding


@pytest.mark.parametrize("finding", DAMAGE)
def test_every_damage_calls_for_its_neighbours(finding: str) -> None:
    assert called_for(finding, all_in(after_damage.__name__, Task))


def test_fine_dust_calls_for_nothing() -> None:
    """What a sound engine sheds while running in is no reason to strip it."""
    for finding in HARMLESS:
        assert not called_for(finding)


def test_one_finding_alone_does_not_call_for_nothing_on_a_plain_engine() -> None:
    """Where the engine has no cooler, turbo or tank, something is still left to clean."""
    plain = tuple(t for t in TASKS if not t.only_with)
    for place in CALLS_FOR_CLEANING.values():
        for finding in place:
            if finding not in {"cooler_found_blocked", "turbo_feed_found_blocked"}:
                assert called_for(finding, plain), finding


@pytest.mark.parametrize("task", TASKS, ids=lambda t: t.id)
def test_task_is_complete(task: Task) -> None:
    assert task.phase is Phase.CLEANING
    assert task.after
    assert len(set(task.after)) == len(task.after), "a finding is named twice"
    assert task.how
    assert all(step and not step.endswith(".") for step in task.how)
    assert task.remedy
    assert task.source.title
    assert task.source.trust
    assert re.fullmatch(r"[a-z][a-z0-9_]*", task.id)
    assert not task.says.endswith(".")
    assert set(task.guards) <= set(BOOK.causes.values())
    for finding in task.after:
        assert BOOK.findings[finding.id] is finding
        assert finding.kind is not Kind.LAYOUT
    for feature in (*task.only_with, *task.not_with):
        assert feature.kind is Kind.LAYOUT
        known = (*vars(engine_features).values(), *vars(engine_build).values())
        assert feature in known


def test_every_id_is_used_once() -> None:
    ids = [t.id for t in TASKS]
    assert len(set(ids)) == len(ids)
    others = {t.id for m in contents_work.WORK if m not in FILES for t in all_in(m.__name__, Task)}
    assert not set(ids) & others


@pytest.mark.parametrize("task", TASKS, ids=lambda t: t.id)
def test_steps_that_can_hurt_carry_their_caution(task: Task) -> None:
    text = " ".join(task.how).lower()
    needed = {
        "solvent": Caution.SOLVENT,
        "blow dry": Caution.EYES,
        "blown through": Caution.PRESSURE,
        "injectors": Caution.INJECTION,
        "crankcase can explode": Caution.FIRE,
        "hoist": Caution.HEAVY,
    }
    for word, caution in needed.items():
        if word in text:
            assert caution in task.cautions, f"{task.id}: {word}"
    assert len(set(task.cautions)) == len(task.cautions)


def test_metal_reaches_everything_the_oil_runs_through() -> None:
    """Bearing metal in the filter: each part the oil passes on any engine has its task."""
    assert {
        "debris_source_cured",
        "sump_washed",
        "pickup_cleared",
        "pump_stripped",
        "relief_freed_of_debris",
        "filter_and_bypass_renewed",
        "cooler_renewed",
        "oil_hoses_renewed",
        "oil_tank_cleaned",
        "galleries_cleared",
        "crank_traps_cleared",
        "lifters_cleaned",
        "piston_jets_cleared",
        "chain_tensioners_cleared",
        "turbo_lines_cleaned",
        "sender_port_cleared",
    } <= called_for("metal_in_filter")


def test_coolant_is_traced_before_it_is_flushed() -> None:
    wanted = called_for("oil_milky")
    assert {"coolant_leak_cured", "bearings_seen_after_coolant", "coolant_flushed_out"} <= wanted
    order = [t.id for t in TASKS]
    assert order.index("coolant_leak_cured") < order.index("coolant_flushed_out")
    assert order.index("fuel_leak_cured") < order.index("fuelled_oil_changed")


def test_groups_do_not_name_a_finding_twice() -> None:
    for name in ("METAL", "GRIT", "PIECES", "SLUDGE", "COOLANT", "FUEL", "DEBRIS"):
        group = getattr(found, name)
        assert len(set(group)) == len(group), name
    opened = [f for f in found.DEBRIS if f.stage is Stage.OPENED]
    assert len(opened) > len(found.DEBRIS) / 2


def test_where_water_or_fuel_got_in_is_cured_before_anything_is_washed() -> None:
    """Its own words say so: before any flushing."""
    order = list(BOOK.tasks)
    for first in ("coolant_leak_cured", "fuel_leak_cured"):
        for then in ("sump_washed", "coolant_flushed_out", "cooler_flushed_and_proved"):
            assert order.index(first) < order.index(then)


def test_a_common_rail_diesel_gets_its_leak_off_pipes_and_no_diaphragm_pump() -> None:
    leak_off, lift = BOOK.tasks["leak_off_pipes_dry"], BOOK.tasks["lift_pump_sealed"]
    assert leak_off.only_with == (engine_features.DIESEL,)
    assert leak_off.guards == lift.guards
    assert engine_build.COMMON_RAIL in lift.not_with
