"""Entries of reassembly and closing: what is kept, corrected, taken back, refused."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose.case.case import Case, TaskRecord
from diagnose.case.loading import from_text, load
from diagnose.case.writing import start, table_text
from diagnose.errors import BadCaseError
from knowledge.book import the_book
from knowledge.units import DIMENSIONS, INCH, LBF
from knowledge.work import Task
from tests.support.command_line import call, in_eighty_columns

BOOK = the_book()
HEAD = "schema = 1\n"
PLAIN = "pump_cover_screws_locked"  #: a task that is done, failed or skipped
CLEARANCE = "main_clearance_fitted"  #: a length
TORQUE = "pump_cover_screws_torqued"


@pytest.fixture
def case(tmp_path: Path) -> Path:
    path = tmp_path / "petrel.toml"
    start(path, BOOK, {"title": "Petrel"}, {"layout": "distributor_v8"})
    return path


def record(case: Path, *words: str) -> Case:
    before = case.read_text()
    done = call("record", case, *words)
    assert (done.code, done.err) == (0, ""), done
    in_eighty_columns(done.out)
    assert case.read_text().startswith(before)
    return load(case, BOOK)


def one(case: Path, *words: str) -> TaskRecord:
    [worked] = record(case, *words).task_records
    return worked


def refused(case: Path, *words: str) -> str:
    before = case.read_bytes()
    done = call("record", case, *words)
    assert (done.code, done.out, len(done.err.splitlines())) == (2, "", 1), done
    assert len(done.err) < 300
    assert case.read_bytes() == before
    return done.err


def faults(text: str) -> list[str]:
    with pytest.raises(BadCaseError) as bad:
        from_text(HEAD + text, Path("x.toml"), BOOK)
    assert all(fault.isprintable() for fault in bad.value.faults)
    return list(bad.value.faults)


def work(**fields: object) -> str:
    return table_text("[[work]]", {"no": 1, **fields})  # type: ignore[dict-item]


def closed(**fields: object) -> str:
    return table_text("[[closed]]", {"no": 1, **fields})  # type: ignore[dict-item]


# --------------------------------------------------------------------------- what is recorded


@pytest.mark.parametrize(
    ("typed", "state"),
    [
        *(("done", "done"), ("Done ", "done"), ("yes", "done"), ("ok", "done"), ("passed", "done")),
        *(("failed", "failed"), ("FAILED", "failed"), ("no", "failed"), ("n", "failed")),
    ],
)
def test_a_task_done_or_failed(case: Path, typed: str, state: str) -> None:
    worked = one(case, f"{PLAIN}={typed}")
    assert worked.task is BOOK.tasks[PLAIN]
    assert (worked.entry.state, worked.entry.value, worked.value) == (state, None, None)


@pytest.mark.parametrize("task", BOOK.tasks.values(), ids=lambda t: t.id)
def test_every_task_of_the_book_can_be_ticked_off(tmp_path: Path, task: Task) -> None:
    """By its id as a person may type it, and, where it is measured, by a value in a right unit."""
    text = work(what=task.id.replace("_", "-").upper(), state="done")
    if task.dimension:
        spelling = DIMENSIONS[task.dimension].spellings[0]
        text += "\n" + table_text("[[work]]", {"no": 2, "what": task.id, "value": spelling})
    works = from_text(HEAD + text, tmp_path / "x.toml", BOOK).task_records
    assert {w.task for w in works} == {task}
    assert (works[-1].value is not None) == bool(task.dimension)


def test_details_are_kept(case: Path) -> None:
    words = ["--by", "Maud", "--where", "rod 3", "--when", "2026-05-01", "--note", "twice"]
    worked = one(case, f"{PLAIN}=done", *words)
    entry = worked.entry
    assert (entry.by, entry.where, str(entry.when), entry.note) == (
        *("Maud", "rod 3", "2026-05-01", "twice"),
    )


def test_a_skip_needs_a_reason(case: Path) -> None:
    assert "reason with --note" in refused(case, f"{PLAIN}=skipped")
    assert "reason with --note" in refused(case, f"{PLAIN}=Skipped", "--note", "  ")
    worked = one(case, f"{PLAIN}=skipped", "--note", "new screws with a patch")
    assert (worked.entry.state, worked.entry.note) == ("skipped", "new screws with a patch")


def test_a_measured_value_is_kept_as_it_was_typed(case: Path) -> None:
    worked = one(case, f"{CLEARANCE}= 2.5 thou ")
    assert worked.entry.value == "2.5 thou"
    assert worked.value == pytest.approx(0.0025 * INCH)
    assert 'value = "2.5 thou"' in case.read_text()


def test_inch_pounds_and_pound_feet_stay_apart(case: Path) -> None:
    """A twelvefold mistake, if they did not."""
    for typed, arm in (("106 in-lb", INCH), ("106 lb-ft", 0.3048), ("106 inch pounds", INCH)):
        worked = one(case, f"{TORQUE}={typed}")
        assert worked.entry.value == typed
        assert worked.value == pytest.approx(106 * LBF * arm)


def test_a_measured_task_may_be_done_without_a_figure(case: Path) -> None:
    worked = one(case, f"{CLEARANCE}=done")
    assert (worked.entry.state, worked.value) == ("done", None)


def test_several_tasks_and_findings_at_once(case: Path) -> None:
    after = record(case, f"{PLAIN}=done", "metal_in_pan=no", f"{CLEARANCE}=0.002 in")
    assert [w.task.id for w in after.task_records] == [PLAIN, CLEARANCE]
    assert [s.finding.id for s in after.finding_records] == ["metal_in_pan"]


# --------------------------------------------------------------------------- corrected, withdrawn


def test_the_same_task_again_corrects_it(case: Path) -> None:
    assert one(case, f"{PLAIN}=failed").entry.no == 1
    worked = one(case, f"{PLAIN}=done")
    assert (worked.entry.no, worked.entry.state, worked.entry.replaces) == (2, "done", 1)
    worked = one(case, f"{PLAIN}=skipped", "--note", "x")
    assert (worked.entry.no, worked.entry.replaces) == (3, 2)


def test_each_place_is_judged_by_itself(case: Path) -> None:
    for place, value in (("main 1", "0.002 in"), ("main 2", "0.003 in"), ("main 1", "0.0021 in")):
        record(case, f"{CLEARANCE}={value}", "--where", place)
    works = load(case, BOOK).task_records
    assert {w.entry.where: w.entry.value for w in works} == {
        "main 2": "0.003 in",
        "main 1": "0.0021 in",
    }


def test_a_task_is_corrected_by_number_and_taken_back(case: Path) -> None:
    record(case, f"{PLAIN}=done")
    worked = one(case, f"{CLEARANCE}=0.002 in", "--replaces", "1")
    assert worked.task.id == CLEARANCE
    assert not record(case, "--withdraw", "2").task_records
    assert "no entry 2 stands" in refused(case, "--withdraw", "2")
    assert one(case, f"{PLAIN}=done").entry.replaces is None
    assert load(case, BOOK).last_number == 4


def test_a_task_corrects_no_finding(case: Path) -> None:
    record(case, "metal_in_pan=no", f"{PLAIN}=done")
    message = refused(case, f"{PLAIN}=failed", "--replaces", "1")
    assert "another kind" in message
    assert "another kind" in refused(case, "needle_flickers=yes", "--replaces", "2")


def test_an_earlier_state_can_be_read_back(case: Path) -> None:
    record(case, f"{PLAIN}=failed")
    record(case, f"{PLAIN}=done")
    states = [[w.entry.state for w in load(case, BOOK, last).task_records] for last in (0, 1, 2)]
    assert states == [[], ["failed"], ["done"]]


# --------------------------------------------------------------------------- refused

REFUSED = [
    (f"{PLAIN}=perhaps", "'perhaps' is no answer; write done, failed or skipped"),
    (f"{PLAIN}=", "'' is no answer"),
    (f"{PLAIN}=0.002 in", "is no answer"),
    (f"{CLEARANCE}=3 psi", "'3 psi' is no length here; write it like 0.0045 in"),
    (f"{CLEARANCE}=0.05", "'0.05' is no length here"),
    (f"{CLEARANCE}=0,,05 mm", "'0,,05 mm' is no length here"),
    (f"{CLEARANCE}=-1 mm", "cannot be below zero"),
    (f"{TORQUE}=106 lb", "'106 lb' is no torque here"),
    (f"{TORQUE}=106 in", "is no torque here"),
    ("pump_cover_screws_loked=done", "Did you mean 'pump_cover_screws_locked'?"),
    ("zzzz=done", "no finding 'zzzz'"),
]


@pytest.mark.parametrize(("typed", "message"), REFUSED, ids=lambda v: v[:40])
def test_wrong_answers_to_a_task_are_refused(case: Path, typed: str, message: str) -> None:
    assert message in refused(case, typed)


def test_a_task_entered_twice_in_one_command(case: Path) -> None:
    assert "given 2 times" in refused(case, f"{PLAIN}=done", f"{PLAIN}=failed")


BAD_WORK = [
    ({"what": "sump_wahsed", "state": "done"}, "no such task 'sump_wahsed'. Did you mean 'sump_w"),
    ({"what": "metal_in_pan", "state": "done"}, "no such task 'metal_in_pan'"),
    ({"state": "done"}, "what: missing"),
    ({"what": PLAIN}, 'has no answer; write state = "done"'),
    ({"what": CLEARANCE}, "has no answer; write value, or state"),
    ({"what": PLAIN, "state": "present"}, "'present' is not 'done', 'failed', 'skipped'"),
    ({"what": PLAIN, "state": "skiped"}, "Did you mean 'skipped'?"),
    ({"what": PLAIN, "state": "skipped"}, "is skipped; write the reason as its note"),
    ({"what": PLAIN, "state": "skipped", "note": " "}, "write the reason as its note"),
    ({"what": PLAIN, "value": "3 mm"}, "is not measured"),
    ({"what": CLEARANCE, "value": "4 psi"}, "'4 psi' is no length"),
    ({"what": CLEARANCE, "value": "-4 mm"}, "cannot be below zero"),
    (
        {"what": PLAIN, "stat": "done", "state": "done"},
        "stat: no such field. Did you mean 'state'?",
    ),
    ({"what": PLAIN, "state": "done", "replaces": 7}, "replaces = 7 names no earlier entry"),
    ({"what": CLEARANCE, "value": 3}, "must be text, in quotes"),
]


@pytest.mark.parametrize(("fields", "message"), BAD_WORK, ids=lambda v: str(v)[:40])
def test_a_bad_table_of_work_is_refused_with_a_reason(
    fields: dict[str, object], message: str
) -> None:
    [fault] = faults(work(**fields))
    assert fault.startswith(("work no = 1", "entry no = 1"))
    assert message in fault


def test_work_must_be_tables() -> None:
    assert "must be a list of tables, each written [[work]]" in faults("[work]\nno = 1\n")[0]


# --------------------------------------------------------------------------- the end of a job


def test_a_closed_job_is_read_back(tmp_path: Path) -> None:
    text = closed(
        causes=["relief_debris", "Pump-Gear-Wear"],
        how="chip under the ball",
        remedy="washed",
        minutes="2.5 h",
        comeback="old.toml",
    )
    case = from_text(HEAD + text, tmp_path / "x.toml", BOOK)
    assert case.closed
    assert [c.id for c in case.closed.causes] == ["relief_debris", "pump_gear_wear"]
    assert case.closed.minutes == pytest.approx(150)
    assert case.closed.entry.how == "chip under the ball"
    assert from_text(HEAD, tmp_path / "x.toml", BOOK).closed is None


def test_the_last_word_counts_and_can_be_taken_back(tmp_path: Path) -> None:
    first = closed(causes=["relief_debris"])
    second = table_text("[[closed]]", {"no": 2, "causes": ["oil_level_low"], "replaces": 1})
    taken = table_text("[[closed]]", {"no": 3, "state": "withdrawn", "replaces": 2})
    case = from_text(HEAD + first + second, tmp_path / "x.toml", BOOK)
    assert case.closed
    assert [c.id for c in case.closed.causes] == ["oil_level_low"]
    assert case.closed.minutes is None
    assert from_text(HEAD + first + second + taken, tmp_path / "x.toml", BOOK).closed is None


BAD_CLOSED = [
    ({"causes": ["relief_debri"]}, "no such cause 'relief_debri'. Did you mean 'relief_debris'?"),
    ({"causes": ["metal_in_pan"]}, "no such cause 'metal_in_pan'"),
    ({}, "no cause; name one of the book, or not_in_the_book"),
    ({"causes": []}, "no cause; name one of the book"),
    ({"causes": "relief_debris"}, "must be a list in square brackets"),
    ({"causes": ["relief_debris"], "minutes": "150"}, "minutes: '150' is no time"),
    ({"causes": ["relief_debris"], "minutes": 150}, "minutes: '150' must be text, in quotes"),
    ({"causes": ["relief_debris"], "minutes": "3 psi"}, "minutes: '3 psi' is no time"),
    ({"causes": ["relief_debris"], "reasn": "x"}, "reasn: no such field. Did you mean 'reason'?"),
    ({"causes": ["relief_debris"], "state": "done"}, "'done' is not 'withdrawn'"),
]


@pytest.mark.parametrize(("fields", "message"), BAD_CLOSED, ids=lambda v: str(v)[:40])
def test_a_bad_closing_table_is_refused_with_a_reason(
    fields: dict[str, object], message: str
) -> None:
    [fault] = faults(closed(**fields))
    assert fault.startswith("closed no = 1")
    assert message in fault


def test_not_in_the_book_is_a_cause(tmp_path: Path) -> None:
    case = from_text(HEAD + closed(causes=["not_in_the_book"]), tmp_path / "x.toml", BOOK)
    assert case.closed
    assert len(case.closed.causes) == 1
