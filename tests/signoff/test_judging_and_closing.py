"""Judging, the sheet of tasks and closing, at their limits and piece by piece."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from types import SimpleNamespace
from typing import Any

import pytest

from diagnose.case.case import BearingTable, TaskRecord
from diagnose.case.loading import from_text
from diagnose.case.schema import WorkEntry
from diagnose.inference.chaining import Facts, WorkingMemory
from diagnose.signoff import closing
from diagnose.signoff.judging import NOTHING_KNOWN, Verdict, compare, figures, judged
from diagnose.signoff.parts import OUTSIDE_IN, parts_list
from diagnose.signoff.sheet import Signoff
from diagnose.teardown.loose_ends import DueTask
from knowledge.access.precedence import ENDS_RUNNING
from knowledge.book import the_book
from knowledge.judging import beyond_limit, sure_beyond
from knowledge.judging import judged as derived_of
from knowledge.model import State
from knowledge.reassembly.first_start import CAM_RUN_IN_TIMED, FIRST_PRESSURE_TIMED
from knowledge.reassembly.later import HOT_IDLE_AFTER_1_H
from knowledge.reassembly.run_in import OLD_PARTS_KEPT
from knowledge.reassembly.scope import OPENED_FOR, SERVICED
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.units import DIMENSIONS, PSI, show, unit_in
from knowledge.work import Access, Band, Phase, Task
from tests.signoff.test_judging import FIRST, MM, OFF, TASK, WIDER, judge
from tests.support.tasks import of_phase

BOOK = the_book()


# ------------------------------------------------------------------------ compared with a band


@pytest.mark.parametrize(
    ("value", "spread", "near"),
    [(1.25, 0.25, False), (1.2, 0.25, True), (1.75, 0.25, False), (1.8, 0.25, True),
     (0.75, 0.25, False), (0.8, 0.25, True), (2.25, 0.25, False), (2.2, 0.25, True),
     # a band as narrow as the error: a quarter of it at each end is near
     (1.25, 1.0, False), (1.24, 1.0, True), (1.26, 1.0, False), (1.5, 0.0, False)],
)  # fmt: skip
def test_near_is_within_the_error_of_an_end(value: float, spread: float, near: bool) -> None:
    """Exactly one error away is no longer near; figures exact in binary."""
    assert compare(value, Band(low=1.0, high=2.0, source=JUDGEMENT), spread).near is near


@pytest.mark.parametrize(("past", "right"), [(1e-12, Verdict.PASSED), (1e-7, Verdict.FAILED)])
def test_only_rounding_is_forgiven_at_an_exact_limit(past: float, right: Verdict) -> None:
    exact = replace(TASK, spread=0.0, bands=(FIRST,))
    assert judge(2.0 * (1 + past), exact).verdict is right
    assert judge(1.0 * (1 - past), exact).verdict is right


def test_of_several_sources_the_first_that_differs_is_named() -> None:
    narrow, narrower = (
        Band(low=1.0 * MM, high=high * MM, source=JUDGEMENT, says=says)
        for high, says in ((1.2, "the narrow source"), (1.1, "the narrower source"))
    )
    refused = judge(1.5, replace(TASK, bands=(FIRST, WIDER, narrow, narrower)))
    assert refused.because == "fits the first source; the narrow source would refuse it"
    widest = Band(low=0.1 * MM, high=9 * MM, source=JUDGEMENT, says="the widest source")
    differ = judge(2.5, replace(TASK, bands=(FIRST, narrow, WIDER, widest)))
    assert "but fits the wider source: sources differ" in differ.because


def test_a_source_without_words_goes_by_its_title() -> None:
    plain = replace(FIRST, says="")
    assert judge(1.5, replace(TASK, bands=(plain,))).because == f"fits {COMMON_PRACTICE.title}"


def test_inside_an_own_figure_no_other_source_matters() -> None:
    """Outside it, the others do not soften the verdict either."""
    own = {"least": 1.2, "most": 1.4}
    assert judge(1.3, replace(TASK, spread=0.0), own).because == "fits this engine's own figure"
    assert judge(1.5, replace(TASK, spread=0.0), own).verdict is Verdict.FAILED


@pytest.mark.parametrize("dimension", sorted(set(DIMENSIONS) - {"torque"}))
def test_nothing_but_a_torque_is_off_by_twelve(dimension: str) -> None:
    task = replace(TASK, dimension=dimension)
    assert "twelve" not in judge(1.5 * 12, task).because


@pytest.mark.parametrize(("task", "value", "which"), OFF)
def test_the_right_torque_is_stated_in_the_unit_that_was_typed(
    task: str, value: str, which: str
) -> None:
    text = f'schema = 1\n[[work]]\nno = 1\nwhat = "{task}"\nvalue = "{value}"\n'
    found = judged(BOOK.tasks[task], from_text(text, None, BOOK).task_records[0], NOTHING_KNOWN)
    right = re.search(r"twelve times too \w+: (.+?) would fit", found.because)
    assert right
    assert which in found.because
    assert right[1].split()[-1] == unit_in(value, DIMENSIONS["torque"])


def test_a_torque_without_a_figure_of_its_own_is_judged_by_its_word() -> None:
    task = BOOK.tasks["pump_bolts_torqued"]
    entry = WorkEntry.model_validate({"no": 1, "what": task.id, "state": "done", "note": "by ear"})
    assert judged(task, TaskRecord(entry, task), NOTHING_KNOWN).verdict is Verdict.PASSED


# ------------------------------------------------------------------------ a band in words

TIMED = BOOK.tasks["first_pressure_timed"]
LENGTH = BOOK.tasks["main_clearance_fitted"]


@pytest.mark.parametrize(
    ("low", "high", "unit", "words"),
    [(None, 119.0, None, "at most 119 s"), (None, 120.0, None, "at most 2 min"),
     (120.0, None, None, "at least 2 min"), (None, 7199.0, None, "at most 120 min"),
     (None, 7200.0, None, "at most 2 h"), (60.0, 600.0, None, "1 min to 10 min"),
     (60.0, 600.0, "s", "60 s to 600 s"), (3600.0, 7200.0, None, "1 h to 2 h")],
)  # fmt: skip
def test_a_time_is_said_as_a_person_says_it(
    low: float | None, high: float | None, unit: str | None, words: str
) -> None:
    """Seconds below two minutes, hours from two on, unless a unit was used."""
    assert figures(Band(low=low, high=high, source=JUDGEMENT), TIMED, unit) == words


def test_a_length_is_said_in_the_first_unit_of_its_dimension() -> None:
    band = Band(low=5.08e-5, high=None, source=JUDGEMENT)
    assert figures(band, LENGTH) == f"at least {show(5.08e-5, DIMENSIONS['length'], None)}"


# ------------------------------------------------------------------------ a measured part's limit

CLEARANCE = BOOK.measures["main_clearance"]
WIDE = BOOK.findings["main_clearance_too_wide"]


@pytest.mark.parametrize(
    ("limit", "values", "sure"),
    [
        ("main_clearance", (50e-6, 90e-6), sure_beyond(90e-6, 70e-6, CLEARANCE.spread)),
        ("least_bearing_clearance", (50e-6, 90e-6), sure_beyond(70e-6, 50e-6, CLEARANCE.spread)),
        ("least_bearing_clearance", (80e-6, 90e-6), sure_beyond(70e-6, 80e-6, CLEARANCE.spread)),
    ],
)
def test_the_worst_value_is_held_against_the_limit(
    limit: str, values: Sequence[float], sure: float
) -> None:
    """The widest for a limit at the top, the narrowest for one at the bottom."""
    own = BOOK.limits[limit]
    known = WorkingMemory(Facts(measures={CLEARANCE: list(values)}, limits={own: 70e-6}))
    (found,) = beyond_limit(known, WIDE, CLEARANCE, own)
    assert found.state is (State.PRESENT if sure >= 0.5 else State.ABSENT)
    assert found.sure == pytest.approx(max(sure, 1.0 - sure))
    nothing = WorkingMemory(Facts(limits={own: 70e-6}))
    assert list(beyond_limit(nothing, WIDE, CLEARANCE, own)) == []


# ------------------------------------------------------------------------ parts that close a place


@pytest.mark.parametrize("opened", [tuple(Access), tuple(Access)[::2], tuple(Access)[1::3]])
def test_what_closes_names_its_places_from_outside_in(opened: tuple[Access, ...]) -> None:
    found = [
        (min(map(OUTSIDE_IN.index, places)), n, places)
        for n in parts_list((), opened, lambda _: None, BOOK)
        if (places := [a for a in OUTSIDE_IN if a in opened and a in n.part.for_places])
    ]
    assert len(found) >= 10
    assert [place for place, _, _ in found] == sorted(place for place, _, _ in found)
    for _, needed, places in found:
        named = tuple(f"to close: {a.value.replace('_', ' ')}" for a in places)
        assert needed.because == named


def test_what_every_repair_uses_is_listed_from_the_first_place_that_ends_running() -> None:
    always = {p.id for p in BOOK.parts.values() if p.always}
    assert always
    for place in Access:
        found = {n.part.id for n in parts_list((), (place,), lambda _: None, BOOK)}
        assert (always <= found) is (place in ENDS_RUNNING), place
    assert not always & {n.part.id for n in parts_list((), (), lambda _: None, BOOK)}


# ------------------------------------------------------------------------ why a task is called for


def sheet(
    *opened: Access,
    more: frozenset[Access] = frozenset(),
    whole: bool = False,
    ranking: Sequence[tuple[str, float]] = (),
    closed: Any = None,
    features: Any = None,
) -> Signoff:
    """A sheet over a diagnosis of the parts that it asks for."""
    ranked = [SimpleNamespace(cause=BOOK.causes[c], probability=p, shown=False) for c, p in ranking]
    known = dict.fromkeys(("features", "known_features"), features or {})
    answer: Any = SimpleNamespace(
        planner=SimpleNamespace(opened=frozenset(opened)),
        case=SimpleNamespace(
            closed=closed, task_records=(), layout=None, bearings=BearingTable(), **known
        ),
        ranking=ranked,
        book=BOOK,
    )
    return Signoff(answer, 0.9, more, whole)


def why(sheet_: Signoff, task: Task, due: Any = None) -> str:
    return sheet_.called_for(task, due or {})


def test_places_opened_twice_are_open() -> None:
    """By the case, by the caller, or by both."""
    one, two = Access.SUMP_OFF, Access.DRAINED
    assert sheet(one, more=frozenset({one, two})).places == {one, two}
    assert sheet(one).places == {one}
    assert sheet(more=frozenset({two})).places == {two}


def test_the_causes_of_the_repair() -> None:
    ranking = [("relief_debris", 0.95), ("pickup_tube_loose", 0.9), ("bearing_spun", 0.89)]
    assert [c.id for c in sheet(ranking=ranking).causes] == ["relief_debris", "pickup_tube_loose"]
    closed = SimpleNamespace(causes=(BOOK.causes["bearing_spun"],))
    assert sheet(ranking=ranking, closed=closed).causes == closed.causes


def test_why_a_task_is_called_for() -> None:
    sump, start = of_phase(Phase.SUMP), of_phase(Phase.FIRST_START)
    assert Phase.SUMP in OPENED_FOR
    assert why(sheet(), sump) == ""
    assert why(sheet(Access.OUTSIDE), sump) == ""
    assert why(sheet(Access.OUTSIDE), start) == "", "nothing was opened"
    assert why(sheet(Access.SUMP_OFF, Access.PICKUP_OFF), sump) == "opened: pickup_off, sump_off"
    assert why(sheet(Access.SUMP_OFF), start) == "the engine has been open"
    assert why(sheet(Access.FILTER_OFF), sump) == ""
    for place in SERVICED:
        assert why(sheet(place), FIRST_PRESSURE_TIMED) == "the engine has been open"
        assert why(sheet(place), CAM_RUN_IN_TIMED) == ""
        assert why(sheet(place), OLD_PARTS_KEPT) == "", "an oil or filter change"
        assert why(sheet(place), HOT_IDLE_AFTER_1_H) == "the engine has been open"
        assert why(sheet(place, Access.SUMP_OFF), OLD_PARTS_KEPT) == "the engine has been open"
    assert why(sheet(*ENDS_RUNNING), start) == "the engine has been open"
    assert why(sheet(whole=True), sump) == "the whole engine is built"
    guarding = next(
        t for t in BOOK.tasks.values()
        if t.guards and t.phase is not Phase.CLEANING and not t.only_with + t.not_with
    )  # fmt: skip
    cause = guarding.guards[0]
    assert why(sheet(ranking=[(cause.id, 0.95)]), guarding) == f"guards against {cause.says}"


def test_a_task_for_other_engines_is_called_for_by_nothing() -> None:
    task = next(t for t in BOOK.tasks.values() if t.not_with and t.phase is not Phase.CLEANING)
    present = dict.fromkeys(task.not_with, State.PRESENT)
    assert why(sheet(whole=True, features=present), task) == ""
    absent = dict.fromkeys(task.not_with, State.ABSENT)
    allowed = not task.only_with
    assert bool(why(sheet(whole=True, features=absent), task)) is allowed


def test_cleaning_is_called_for_by_what_was_found() -> None:
    """At most two of the findings are named, and nothing else calls for it."""
    task = of_phase(Phase.CLEANING)
    found = tuple(BOOK.findings[f] for f in ("oil_milky", "bearing_knock", "needle_flickers"))
    due = {task: DueTask(task, found, None)}
    assert why(sheet(whole=True), task, due) == f"{found[0].says}, {found[1].says}"
    assert why(sheet(whole=True), task) == ""


# ------------------------------------------------------------------------ what keeps a job open


def ended(
    confirmed: bool = True, explained: bool | None = True, open_tasks: Sequence[str] = ()
) -> Any:
    return SimpleNamespace(
        confirmed=confirmed,
        pressure_closed=explained,
        open_tasks=[SimpleNamespace(task=BOOK.tasks[t]) for t in open_tasks],
    )


def item(task: str, verdict: Verdict = Verdict.OPEN) -> Any:
    return SimpleNamespace(task=BOOK.tasks[task], judged=SimpleNamespace(verdict=verdict))


TASKS = sorted(BOOK.tasks)[:7]
SAYS = [BOOK.tasks[t].says for t in TASKS]
UNSURE = "no cause is confirmed: the cause leads with {} %"


@pytest.mark.parametrize(
    ("ends", "blocking", "items", "probability", "weak", "lines"),
    [
        (ended(), (), (), 0.95, False, []),
        (ended(False), (), (), 0.5, False, [UNSURE.format(50)]),
        (ended(False), (), (), 0.9, False,
         [UNSURE.format(90) + ", but nobody has seen it on the engine"]),
        (ended(explained=False), (), (), 0.95, False,
         ["some of the missing pressure is not explained (diagnose budget shows how much)"]),
        (ended(explained=None), (), (), 0.95, False, []),
        (ended(open_tasks=TASKS[:2]), [item(TASKS[0]), item(TASKS[2])], (), 0.95, False,
         [f"debris or damage not followed up: {SAYS[0]}; {SAYS[1]}",
          f"sign-off not finished: {SAYS[2]}"]),
        (ended(), [item(t) for t in TASKS[:3]], (), 0.95, False,
         ["sign-off not finished: " + "; ".join(SAYS[:3])]),
        (ended(), [item(t) for t in TASKS[:4]], (), 0.95, False,
         ["sign-off not finished: " + "; ".join(SAYS[:3]) + "; and 1 more"]),
        (ended(), [item(t) for t in TASKS[:5]], (), 0.95, False,
         ["sign-off not finished: " + "; ".join(SAYS[:3]) + "; and 2 more"]),
        (ended(), [item(TASKS[0], Verdict.FAILED)],
         [item(TASKS[0], Verdict.FAILED), item(TASKS[1], Verdict.FAILED), item(TASKS[2])],
         0.95, False, [f"sign-off not finished: {SAYS[0]}", f"sign-off failed: {SAYS[1]}"]),
        (ended(), (), (), 0.95, True,
         ["the first start read less than was predicted (diagnose signoff --start)"]),
    ],
)  # fmt: skip
def test_what_keeps_a_job_open(
    ends: Any,
    blocking: Any,
    items: Any,
    probability: float,
    weak: bool,
    lines: list[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(closing, "loose_ends", lambda *_: ends)
    sheet = SimpleNamespace(blocking=blocking, items=items, maybe=(), asks=())
    monkeypatch.setattr(closing, "Signoff", lambda *_: sheet)
    monkeypatch.setattr(closing, "falls_short", lambda _: weak)
    monkeypatch.setattr(closing, "reads_as_when_sound", lambda _: False)
    names = ("the cause", "another", "the last")
    named = [SimpleNamespace(says=says, no_fault=False) for says in names]
    ranking = [
        SimpleNamespace(cause=c, probability=p)
        for c, p in zip(named, (probability, 0.3, 0.1), strict=True)
    ]
    answer: Any = SimpleNamespace(ranking=ranking, case=None)
    assert list(closing.obstacles(answer, 0.9)) == lines


@pytest.mark.parametrize(("psi", "short"), [(1, True), (20, False)])
def test_a_first_start_without_a_circuit_falls_short_of_the_stop_limits(
    psi: int, short: bool
) -> None:
    layout = next(n for n in BOOK.layouts if BOOK.profile_of(n) is None)
    text = (
        f'schema = 1\n[engine]\nlayout = "{layout}"\n[[reading]]\nno = 1\nrpm = "700 rpm"\n'
        f'oil = "90 C"\npressure = "{psi} psi"\nat = "start"\n'
    )
    case = from_text(text, None, BOOK)
    assert case.start_readings
    answer: Any = SimpleNamespace(case=case, book=BOOK)
    assert closing.falls_short(answer) is short


# ------------------------------------------------------------------------ findings and bands

OPENS = BOOK.tasks["relief_opens_at"]


@pytest.mark.parametrize(
    ("probability", "state", "sure"),
    [(0.2, State.ABSENT, 0.8), (0.49, State.ABSENT, 0.51), (0.5, State.PRESENT, 0.5),
     (0.9, State.PRESENT, 0.9)],
)  # fmt: skip
def test_likelier_than_not_is_present(probability: float, state: State, sure: float) -> None:
    derived = derived_of(BOOK.findings["needle_flickers"], probability)
    assert derived.state is state
    assert derived.sure == pytest.approx(sure)


@pytest.mark.parametrize(
    ("low", "high", "words"),
    [(40 * PSI, 60 * PSI, "40 psi to 60 psi"), (40 * PSI, None, "at least 40 psi"),
     (None, 60 * PSI, "at most 60 psi")],
)  # fmt: skip
def test_a_band_may_be_open_at_one_end(low: float | None, high: float | None, words: str) -> None:
    assert figures(Band(low=low, high=high, source=JUDGEMENT), OPENS, "psi") == words


@pytest.mark.parametrize("below", [False, True])
@pytest.mark.parametrize("stop", [False, True])
def test_either_fault_of_a_first_start_falls_short(
    below: bool, stop: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Less than predicted, or under a stop limit: one is enough."""
    start = SimpleNamespace(compared=[SimpleNamespace(below=below, stop=stop)])
    monkeypatch.setattr("diagnose.signoff.start.predicted_start", lambda *_: start)
    answer: Any = SimpleNamespace(case=SimpleNamespace(start_readings=(1,)), book=BOOK)
    assert closing.falls_short(answer) is (below or stop)
