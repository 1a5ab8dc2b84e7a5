"""Tasks of reassembly: every task complete, and the engines each applies to."""

from __future__ import annotations

import re
from collections import Counter

import pytest

from knowledge import contents_work
from knowledge.applying import applies
from knowledge.book import the_book
from knowledge.engines import features, features_build, features_kinds
from knowledge.engines.features import (
    DRY_SUMP,
    FLOATING_PICKUP,
    PUMP_ON_CRANK_NOSE,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    TURBOCHARGED,
    WINDAGE_TRAY,
)
from knowledge.limits import Side
from knowledge.model import Finding, State, all_in
from knowledge.sources import (
    JUDGEMENT,
)
from knowledge.units import DIMENSIONS
from knowledge.work import Caution, Hold, Layout, Phase, Task
from tests.support.every import every

BOOK = the_book()
TASKS = list(BOOK.tasks.values())
MEASURED = [t for t in TASKS if t.dimension]
NAMED = {v: k for m in contents_work.WORK for k, v in vars(m).items() if isinstance(v, Task)}
#: the phases every build goes through; cleaning is called for by what was found
FITTING = [p for p in Phase if p is not Phase.CLEANING]


def ids(task: Task) -> str:
    return task.id


def state_of(layout: Layout) -> dict[Finding, State]:
    return {
        **dict.fromkeys(layout.has, State.PRESENT),
        **dict.fromkeys(layout.lacks, State.ABSENT),
    }


# ------------------------------------------------------------------ every task is whole


@every(TASKS, ids)
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


@every(TASKS, ids)
def test_id_is_the_name(task: Task) -> None:
    assert re.fullmatch(r"[a-z][a-z0-9_]*", task.id)
    assert NAMED[task] == task.id.upper()


@every([t for t in TASKS if t.hold is Hold.STOP], ids)
def test_a_stop_names_its_remedy(task: Task) -> None:
    assert task.remedy


def test_ids_mean_one_thing() -> None:
    """A task is called like no cause, finding, measure, inspection or limit."""
    for kind in ("causes", "conditions", "findings", "measures", "inspections", "limits"):
        assert not BOOK.tasks.keys() & getattr(BOOK, kind).keys(), kind


@every(TASKS, ids)
def test_guards_and_features_are_in_the_book(task: Task) -> None:
    assert all(BOOK.causes.get(c.id) is c for c in task.guards)
    known = {
        f for m in (features, features_build, features_kinds) for f in all_in(m.__name__, Finding)
    }
    assert known >= {*task.only_with, *task.not_with}
    assert not set(task.only_with) & set(task.not_with)
    assert all(BOOK.findings.get(f.id) is f for f in task.after)
    assert len(set(task.guards)) == len(task.guards)


@every(MEASURED, ids)
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
        assert low.typical < high.typical or (low is high and low.side is Side.NOMINAL)


@every([t for t in TASKS if not t.dimension], ids)
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
    assert {t.phase for m in contents_work.WORK for t in all_in(m.__name__, Task)} == set(count)


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
