"""Work in words once the repair has begun: a task of its sign-off, no cause of the trouble."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.entry.recording import Input, record
from diagnose.errors import UsageError
from diagnose.planning.choosing import SURE
from diagnose.signoff.judging import EngineFigures, Verdict, judged
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.model import Stage
from knowledge.work import Access
from tests.support.command_line import call

BOOK = the_book()
OPENED = """schema = 1
[engine]
layout = "marine_diesel"
[[finding]]
no = 1
what = "metal_in_filter"
state = "present"
[[finding]]
no = 12
what = "shells_worn_evenly"
state = "present"
[[bearing]]
no = 2
what = "main 3"
inside = "76.08 mm"
journal = "75.93 mm"
"""
CLOSED = OPENED.partition("[[bearing]]")[0]
APART = '[[finding]]\nno = 4\nwhat = "engine_apart"\nstate = "present"\n'
FITTED = """[[bearing]]
no = 3
what = "main 3"
strip = "0.064 mm"
at = "build"
"""
STARTED = '[[reading]]\nno = 3\nrpm = "idle"\noil = "hot"\npressure = "1.7 bar"\nat = "start"\n'


def saved(folder: Path, text: str) -> Path:
    """A job in a file."""
    path = folder / "tern.toml"
    path.write_text(text, "utf-8")
    return path


@pytest.mark.parametrize("begun", [FITTED, STARTED], ids=["fitted", "started"])
@pytest.mark.parametrize(
    ("words", "tasks"),
    [
        ("main caps torqued 110 Nm", ["caps_torqued"]),
        ("oil cooler new", ["cooler_renewed"]),
        ("sump washed", ["sump_washed"]),
        ("source of the debris: main 3 shell wiped, renewed", ["debris_source_cured"]),
        ("galleries brushed with all plugs out", ["galleries_cleared"]),
        ("sump washed, front plugs in", ["sump_washed", "front_plugs_in"]),
        ("rod bolts 45 nm, oiled threads", ["rod_caps_torqued"]),
        ("all gallery plugs in front and rear, counted 7", ["front_plugs_in", "rear_plugs_in"]),
    ],
)
def test_work_of_the_repair_ticks_its_task(
    begun: str, words: str, tasks: list[str], tmp_path: Path
) -> None:
    path = saved(tmp_path, OPENED + begun)
    done = record(path, BOOK, Input(facts=[words]))
    after = load(path, BOOK)
    ticked = [w for w in after.task_records if w.entry.no >= done.first_number]
    assert [w.task.id for w in ticked] == tasks
    assert all((w.entry.state == "done") is (w.value is None) for w in ticked)
    notes = re.sub(r", | and ", " ", " ".join(w.entry.note for w in ticked))
    assert notes == re.sub(r", | and ", " ", words), "what was said stays, a torque too"
    assert not after.earlier
    assert len(after.finding_records) == len(done.before.finding_records)


def test_a_priming_in_words_ticks_how_and_keeps_its_figures(tmp_path: Path) -> None:
    path = saved(tmp_path, OPENED.replace("marine_diesel", "distributor_v8") + FITTED)
    said = "primed with drill, 3,2 bar on test gauge after 25 sec, oil at all rockers"
    done = record(path, BOOK, Input(facts=[said]))
    worked = [w for w in load(path, BOOK).task_records if w.entry.no >= done.first_number]
    assert {w.task.id: w.entry.value or w.entry.state for w in worked} == {
        "primed_by_drill": "done",
        "oil_at_every_rocker": "done",
        "priming_pressure_timed": "25 sec",
        "priming_pressure_reached": "3.2 bar",
    }
    assert len(worked) == len(done.entries), "nothing of it is a finding of the fault"


@pytest.mark.parametrize(
    ("words", "verdicts"),
    [
        ("main caps torqued 110 Nm, rod bolts 45 Nm", [Verdict.PASSED, Verdict.PASSED]),
        ("rod bolts 70 Nm, oiled threads", [Verdict.FAILED]),
    ],
)
def test_a_torque_is_judged_by_the_engines_card(
    words: str, verdicts: list[Verdict], tmp_path: Path
) -> None:
    (tmp_path / "four.toml").write_text(
        'card = 1\n[torques]\nmain_caps = "112 N·m"\nrod_caps = "45 N·m"\n', "utf-8"
    )
    text = OPENED.replace("[engine]\n", '[engine]\ncard = "four.toml"\n') + FITTED
    path = saved(tmp_path, text)
    record(path, BOOK, Input(facts=[words]))
    case = load(path, BOOK)
    engine = EngineFigures.of(case)
    caps = [w for w in case.task_records if "caps" in w.task.id]
    assert [judged(w.task, w, engine).verdict for w in caps] == verdicts


def test_the_caps_of_mains_and_rods_do_not_replace_each_other(tmp_path: Path) -> None:
    path = saved(tmp_path, OPENED + FITTED)
    record(path, BOOK, Input(facts=["main caps torqued to 95 Nm"]))
    record(path, BOOK, Input(facts=["rod bolts 45 Nm"]))
    standing = {w.task.id for w in load(path, BOOK).task_records}
    assert {"caps_torqued", "rod_caps_torqued"} <= standing


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (CLOSED, "oil cooler new"),
        (OPENED + FITTED, "oil pump renewed 2 weeks before"),
        (OPENED + FITTED, "sump was washed before it began"),
    ],
    ids=["not begun", "dated", "before it began"],
)
def test_work_before_the_trouble_stays_history(text: str, words: str, tmp_path: Path) -> None:
    path = saved(tmp_path, text)
    record(path, BOOK, Input(facts=[words]))
    after = load(path, BOOK)
    assert after.earlier
    assert all(w.value for w in after.task_records), "the clearance as fitted alone"


def test_what_names_no_task_for_sure_ticks_none(tmp_path: Path) -> None:
    path = saved(tmp_path, OPENED + FITTED)
    with pytest.raises(UsageError, match="it may mean"):
        record(path, BOOK, Input(facts=["sump not washed yet"]))
    assert path.read_text("utf-8") == OPENED + FITTED


@pytest.mark.parametrize("begun", [APART, OPENED[len(CLOSED) :], FITTED])
@pytest.mark.parametrize("words", ["new oil pump", "timing chain slack, replaced"])
def test_work_on_an_engine_that_is_apart_began_nothing(
    begun: str, words: str, tmp_path: Path
) -> None:
    """It is kept as done in this repair, whether or not a task of the sign-off names it."""
    path = saved(tmp_path, CLOSED + begun)
    shown = " ".join(call("record", path, words).out.split())
    after = load(path, BOOK)
    assert [r.work.area.id for r in after.repairs] in (["oil_pump"], ["timing"])
    assert not after.earlier
    assert not after.up_to(Stage.OPENED).facts().earlier
    assert "in this repair" in shown
    assert "If it was before it: diagnose record" in shown
    assert "which may have caused it" not in shown


def test_work_after_the_repair_is_of_the_repair(tmp_path: Path) -> None:
    path = saved(tmp_path, CLOSED)
    record(path, BOOK, Input(facts=["new oil pump fitted"], repaired=True))
    assert [r.work.area.id for r in load(path, BOOK).repairs] == ["oil_pump"]


def test_a_new_sight_and_a_reading_are_still_read(tmp_path: Path) -> None:
    path = saved(tmp_path, OPENED + FITTED)
    record(path, BOOK, Input(facts=["main 3 shell wiped"]))
    record(path, BOOK, Input(facts=["bearings renewed, 1.9 bar at hot idle"], repaired=True))
    after = load(path, BOOK)
    assert "shells_wiped" in [r.finding.id for r in after.finding_records]
    assert after.start_readings
    assert all(w.value for w in after.task_records), "the clearance as fitted alone"


def test_new_shells_fitted_call_for_the_tasks_of_an_open_bottom_end() -> None:
    """Nobody has to say that a cap was off where the clearance was measured as fitted."""
    text = 'schema = 1\n[engine]\nlayout = "marine_diesel"\n'
    without, fitted = (from_text(text + more, None, BOOK) for more in ("", FITTED))
    sheets = [Signoff(Diagnosis(BOOK, case), SURE) for case in (without, fitted)]
    assert [Access.CAP_OFF in sheet.places for sheet in sheets] == [False, True]
    assert BOOK.tasks["caps_torqued"] in [i.task for i in sheets[1].items]


def test_the_task_is_named_in_words(tmp_path: Path) -> None:
    shown = " ".join(call("record", saved(tmp_path, OPENED + FITTED), "sump washed").out.split())
    assert f"{BOOK.tasks['sump_washed'].says}: done" in shown
    assert "work before the trouble" not in shown


WORN = """schema = 1
[engine]
layout = "side_valve"
[[finding]]
no = 1
what = "gauge_reads_low"
state = "present"
[[finding]]
no = 2
what = "pump_end_clearance"
value = "0.011 in"
"""


@pytest.mark.parametrize(
    "given",
    [
        Input(facts=["one gasket .003 fitted, end clearance now .003"]),
        Input(facts=["pump end clearance .003"], repaired=True),
        Input(facts=["pump_end_clearance=0.003 in"], repaired=True),
    ],
    ids=["words", "said", "typed"],
)
def test_a_value_after_the_repair_stays_beside_the_one_found(given: Input, tmp_path: Path) -> None:
    """It is one of the sign-off, passed; what was found still is the evidence."""
    path = saved(tmp_path, WORN)
    done = record(path, BOOK, given)
    (measured,) = done.after.measurements
    assert measured.entry.value == "0.011 in"
    (worked,) = done.after.task_records
    assert worked.task.measures is measured.measure.quantity
    assert judged(worked.task, worked, EngineFigures.of(done.after)).verdict is Verdict.PASSED


def test_a_good_value_in_place_of_a_bad_one_says_how_to_keep_both(tmp_path: Path) -> None:
    path = saved(tmp_path, WORN)
    out = call("record", path, "pump end clearance .003").out
    assert "takes the place of the value that was found" in " ".join(out.split())
    kept = f"diagnose record {path} pump_end_clearance='0.011 in'; then"
    assert "".join(kept.split()) in "".join(out.split()), "a long path is wrapped anywhere"
    again = call("record", path, "pump end clearance .004").out
    assert "takes the place" not in again, "a good value for a good one is a correction"


def test_after_repair_wants_a_pressure_or_a_value(tmp_path: Path) -> None:
    with pytest.raises(UsageError, match="no pressure, no measured value and no task"):
        record(saved(tmp_path, WORN), BOOK, Input(facts=["oil level ok"], repaired=True))
    with pytest.raises(UsageError, match="is no measured value"):
        record(saved(tmp_path, WORN), BOOK, Input(facts=["oil_milky=yes"], repaired=True))


def test_a_reading_of_the_repaired_engine_is_answered_with_its_limit(tmp_path: Path) -> None:
    reading = ("--after-repair", "--reading", "600 rpm 85 C 15 psi direct")
    assert "within limits: at least" in call("record", saved(tmp_path, WORN), *reading).out


STUCK = """schema = 1
[engine]
layout = "marine_diesel"
[[finding]]
no = 1
what = "relief_plunger_sticks"
state = "present"
[[behaviour]]
no = 2
shows = "rattle"
"""
BEGUN = '[[work]]\nno = 3\nwhat = "sump_washed"\nstate = "done"\n'


@pytest.mark.parametrize(
    ("text", "words"),
    [
        (STUCK, "polished plunger slides free now"),
        (STUCK + BEGUN, "plunger slides free"),
        (STUCK + BEGUN, "no flicker, no rattle"),
    ],
    ids=["now", "begun", "noise"],
)
def test_a_fault_that_is_gone_is_no_evidence_against_it(
    text: str, words: str, tmp_path: Path
) -> None:
    path = saved(tmp_path, text)
    with pytest.raises(UsageError, match="said of the repaired engine"):
        record(path, BOOK, Input(facts=[words]))
    assert path.read_text("utf-8") == text


def test_before_the_repair_a_finding_is_corrected_as_ever(tmp_path: Path) -> None:
    path = saved(tmp_path, STUCK)
    done = record(path, BOOK, Input(facts=["relief plunger does not stick after all"]))
    (corrected,) = done.after.finding_records
    assert (corrected.finding.id, corrected.entry.state) == ("relief_plunger_sticks", "absent")


def test_the_opening_pressure_found_on_the_bench_is_evidence(tmp_path: Path) -> None:
    """It is a fault found, with its cost; the sign-off holds only the one after the repair."""
    flat = """schema = 1
[engine]
layout = "heavy_diesel"
[[reading]]
no = 1
rpm = "2000 rpm"
oil = "90 C"
pressure = "27 psi"
gauge = "direct"
"""
    path = saved(tmp_path, flat)
    found = record(path, BOOK, Input(facts=["relief opens at 25 psi on the bench"])).after
    assert not found.task_records
    answer = Diagnosis(BOOK, found)
    assert "relief_bench_opens_low" in {d.finding.id for d in answer.inference.result.derived}
    assert answer.ranking[0].cause.id == "relief_spring_weak_broken"
    after = record(path, BOOK, Input(facts=["relief opens at 56 psi"], repaired=True)).after
    assert [w.entry.value for w in after.task_records] == ["56 psi"]
    assert [m.entry.value for m in after.measurements] == ["25 psi"]


@pytest.mark.parametrize(("psi", "stops"), [(3, True), (15, False)])
def test_a_reading_of_the_repaired_engine_sounds_its_own_alarm_only(
    psi: int, stops: bool, tmp_path: Path
) -> None:
    """The stop of the old fault was shown when it was found."""
    low = '[[reading]]\nno = 2\nrpm = "700 rpm"\noil = "90 C"\npressure = "4 psi"\n' + APART
    path = saved(tmp_path, CLOSED + low)
    shown = call("record", path, "--after-repair", f"{psi} psi at hot idle").out
    assert "limit 7 psi (0.5 bar)" not in shown, "what the 4 psi said"
    assert (f"STOP THE ENGINE: {psi} psi after the repair, limit " in shown) is stops


@pytest.mark.parametrize(
    ("words", "kept"),
    [
        ("relief plunger drops by its own weight", "relief_plunger_drops"),
        ("cleaned relief valve, plunger slides freely now", "relief_clean"),
    ],
)
def test_a_state_after_the_repair_takes_the_place_of_no_find(
    words: str, kept: str, tmp_path: Path
) -> None:
    """The plunger that sticks stays found; that it is free now belongs to the sign-off."""
    path = tmp_path / "relief.toml"
    found = "".join(
        f'[[finding]]\nno = {no}\nwhat = "{what}"\nstate = "present"\n'
        for no, what in ((1, "relief_plunger_sticks"), (2, "relief_found_stuck"))
    )
    path.write_text(f'schema = 1\n[engine]\nlayout = "tractor_diesel"\n{found}')
    record(path, BOOK, Input(facts=(words,), repaired=True))
    case = load(path, BOOK)
    assert {r.finding.id for r in case.finding_records} == {
        "relief_plunger_sticks",
        "relief_found_stuck",
    }
    assert all(
        r.observation and r.observation.state.value == "present" for r in case.finding_records
    )
    assert kept in {t.task.id for t in case.task_records}
