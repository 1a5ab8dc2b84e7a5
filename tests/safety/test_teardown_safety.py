"""Teardown plans are safe: cautions before steps, nothing runs under an alarm."""

from __future__ import annotations

import re
from typing import Any

import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.cautions import cautions
from knowledge.book import the_book
from knowledge.cautions import CAUTIONS
from knowledge.work import Access, Caution
from tests.support.complaints import JOBS, OPEN, blocks, checks, flat, path_of, plan, teardown, tree
from tests.support.examples import one_in

BOOK = the_book()
#: warned of only where the engine may be meant: a boat's, a tractor's, a diesel's
OF_SOME_ENGINES = {Caution.BOAT, Caution.TRACTOR, Caution.INJECTION, Caution.IGNITION}
ALL = ("--until", "confident=0.99")  #: the longest plans
#: the starter turns the engine over
CRANKED = {
    "watch_the_rotor_cranked",
    "crank_with_the_port_open",
    "crank_with_filter_off",
    "force_oil_into_the_pump",
    "flow_test_the_turbo_feed",
}


@pytest.mark.parametrize("name", [*OPEN, *one_in(4, [n for n in JOBS if n not in OPEN])])
def test_under_a_stop_alarm_nothing_runs(name: str) -> None:
    """But for the trusted gauge, where the stop says to fit one before it runs again."""
    for data in (plan(name), plan(name, *ALL)):
        stops = {a["severity"] for a in data["alarms"]} & {"stop the engine", "do not start or run"}
        if stops:
            running = [i.id for _, i in checks(data) if i.needs_running]
            running += [
                id_
                for stage in data["stages"]
                for id_ in stage["while_open"]
                if BOOK.inspections[id_].needs_running
            ]
            gauge_next = Diagnosis(BOOK, load(path_of(name), BOOK)).gauge_next
            allowed = {"fit_a_direct_gauge"} if gauge_next else set()  # as the stop itself says
            assert set(running) <= allowed


def test_some_of_these_jobs_are_under_a_stop_alarm_and_some_are_not() -> None:
    stopped = {n for n in OPEN if any("stop" in a["severity"] for a in plan(n)["alarms"])}
    assert {"skua", "crane_truck_begun"} <= stopped
    assert "heron" not in stopped
    assert any(i.needs_running for _, i in checks(plan("heron")))


@pytest.mark.parametrize("name", OPEN)
def test_nothing_is_cranked_once_the_oil_is_out(name: str) -> None:
    for data in (plan(name), plan(name, *ALL)):
        opened: set[str] = set()
        for stage in data["stages"]:
            opened |= set(stage["opens"])
            if Access.DRAINED in opened:
                shown = {c["inspection"] for c in stage["checks"]} | set(stage["while_open"])
                assert not shown & CRANKED, f"{name}, stage {stage.get('number')}"


def test_the_cranking_checks_are_in_the_book_and_some_plans_hold_one() -> None:
    assert set(BOOK.inspections) >= CRANKED
    assert any(CRANKED & {i.id for _, i in checks(plan(n, *ALL))} for n in OPEN)


def named_in(stage: Any, name: str) -> set[Caution]:
    """What the book warns of in a stage's openings and checks."""
    places = tree(name)
    named = {c for a in stage["opens"] for c in places[Access(a)].cautions}
    for id_ in [*(c["inspection"] for c in stage["checks"]), *stage["while_open"]]:
        named |= set(BOOK.inspections[id_].cautions)
    return named


@pytest.mark.parametrize("name", OPEN)
def test_each_caution_of_a_check_is_shown_in_its_stage_before_its_steps(name: str) -> None:
    text = [flat(b) for b in blocks(teardown(name).out)]
    sheet = re.split(r"^## ", teardown(name, "--markdown").out, flags=re.MULTILINE)[1:]
    for i, stage in enumerate(plan(name)["stages"]):
        named = named_in(stage, name)
        for caution in named - OF_SOME_ENGINES:
            says = CAUTIONS[caution][0].says
            assert says in stage["cautions"]
            head = re.split(r" open: | \d+\.1 ", text[i])[0]
            assert f"caution: {says}" in head
            assert f"> caution: {says}" in re.split(r"\n- open: |\n### ", sheet[i])[0]
        shown = {c for c in Caution if CAUTIONS[c][0].says in stage["cautions"]}
        assert shown <= named


def test_cautions_of_some_engines_are_shown_on_those() -> None:
    for name, caution in (
        ("gannet", Caution.BOAT),
        ("skua", Caution.TRACTOR),
        ("scoter", Caution.INJECTION),
        *(("smew", c) for c in OF_SOME_ENGINES - {Caution.INJECTION}),
    ):
        shown = [s for s in plan(name)["stages"] if CAUTIONS[caution][0].says in s["cautions"]]
        named = [s for s in plan(name)["stages"] if caution in named_in(s, name)]
        assert shown == named
        assert shown, (name, caution)
    assert not any(CAUTIONS[Caution.BOAT][0].says in s["cautions"] for s in plan("heron")["stages"])
    # none of the first 48 checks of an unknown engine is at the injection; a check that is, warns
    unknown = Diagnosis(BOOK, load(path_of("smew"), BOOK))
    assert CAUTIONS[Caution.INJECTION][0].says in cautions([Caution.INJECTION], unknown)


@pytest.mark.parametrize("name", OPEN)
def test_a_spring_is_held_and_released_slowly(name: str) -> None:
    springs = {"relief_cap_off", "pump_relief_out", "front_cover_off"}
    met = 0
    for stage, text in zip(plan(name)["stages"], blocks(teardown(name).out), strict=True):
        if not set(stage["opens"]) & springs:
            continue
        met += 1
        for words in ("deep socket", "eye protection", "release slowly", "cloth"):
            assert words in flat(text)
    assert met


@pytest.mark.parametrize("name", OPEN)
def test_the_battery_comes_first_where_the_sump_comes_off(name: str) -> None:
    stages = [s for s in plan(name)["stages"] if "sump_off" in s["opens"]]
    for stage in stages:
        assert stage["cautions"][0] == CAUTIONS[Caution.BATTERY][0].says


def test_a_sump_comes_off_in_some_of_these_plans() -> None:
    assert any("sump_off" in s["opens"] for n in OPEN for s in plan(n)["stages"])
