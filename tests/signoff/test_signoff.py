"""Sign-off: the trade's figures as check values, verdicts beside every source, first start."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose.case.case import Case
from diagnose.case.loading import from_text, load
from diagnose.diagnosis import Diagnosis
from diagnose.signoff.closing import obstacles
from diagnose.signoff.judging import NOTHING_KNOWN, EngineFigures, Verdict, judged, own_band
from diagnose.signoff.sheet import Item, Signoff
from diagnose.signoff.start import first_start
from knowledge.book import the_book
from knowledge.model import Severity
from knowledge.units import DIMENSIONS, LBF, parse
from knowledge.work import Access, Band, Hold, Phase, Task
from tests.support.command_line import ROOT, call
from tests.support.examples import one_in

BOOK = the_book()
ENGINE = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'


def with_work(task: str, value: str, more: str = "") -> Case:
    entry = f'[[work]]\nno = 1\nwhat = "{task}"\nvalue = "{value}"\n'
    return from_text(ENGINE + more + entry, None, BOOK)


def verdict(task: str, value: str, more: str = "") -> tuple[Verdict, str]:
    case = with_work(task, value, more)
    found = judged(BOOK.tasks[task], case.task_records[0], EngineFigures.of(case))
    return found.verdict, found.because


GOOD, BAD, MAYBE = Verdict.PASSED, Verdict.FAILED, Verdict.BORDERLINE


@pytest.mark.parametrize(
    ("task", "value", "right"),
    [
        # common practice, no source
        ("pump_cover_screws_torqued", "15 lb-ft", MAYBE),  # 5/16 in, M8; too much for 1/4 in
        ("pump_cover_screws_torqued", "180 in-lb", MAYBE),
        ("pump_cover_screws_torqued", "65 lb-ft", BAD),
        ("pump_cover_screws_torqued", "80 in-lb", GOOD),
        ("pump_cover_screws_torqued", "15 in-lb", BAD),
        ("pump_bolts_torqued", "30 lb-ft", GOOD),
        ("pump_bolts_torqued", "30 in-lb", BAD),
        ("tray_bolts_torqued", "15 in-lb", GOOD),
        ("tray_bolts_torqued", "15 lb-ft", BAD),
        ("pickup_gap_fitted", "3/8 in", GOOD),
        ("pickup_gap_fitted", "0 in", BAD),
        ("pickup_gap_fitted", "0.75 in", BAD),
        # published: V8 build article (106 in-lb), four-cylinder guide (6 to 9 lb-ft)
        ("pump_cover_screws_torqued", "106 in-lb", GOOD),
        ("pump_cover_screws_torqued", "8 lb-ft", GOOD),
        # published: end clearance 0.002 to 0.006 in for small cast-iron gear pumps
        ("gear_end_clearance_fitted", "0.004 in", GOOD),
        ("gear_end_clearance_fitted", "0.012 in", BAD),
        # published: crank end float, build article aim 0.004 to 0.008 in
        ("crank_end_float_set", "0.020 in", BAD),
    ],
)
def test_the_trades_figures(task: str, value: str, right: Verdict) -> None:
    """A torque in the wrong pounds fails; one that only another source accepts is borderline."""
    assert verdict(task, value)[0] is right


@pytest.mark.parametrize(
    ("task", "value", "meant"),
    [
        ("tray_bolts_torqued", "15 lb-ft", "15 in-lb"),
        ("pump_cover_screws_torqued", "15 in-lb", "15 lb-ft"),
        ("pump_bolts_torqued", "360 lb-ft", "30 lb-ft"),
    ],
)
def test_a_torque_off_by_twelve_is_named_as_such(task: str, value: str, meant: str) -> None:
    """Inch-pounds and foot-pounds differ by twelve (NIST SP 811, Appendix B)."""
    found, because = verdict(task, value)
    assert found is BAD
    assert "in-lb and lb-ft" in because
    assert "twelve times" in because
    stated = re.search(r"twelve times too \w+: (.+?) would fit", because)
    assert stated
    torque = DIMENSIONS["torque"]
    assert parse(stated[1], torque) == pytest.approx(parse(meant, torque), rel=2e-3)


def test_the_engines_own_figure_goes_first() -> None:
    own = '[engine.limits]\nmain_clearance = "0.0018 in"\n'
    assert verdict("main_clearance_fitted", "0.0022 in")[0] is GOOD
    assert verdict("main_clearance_fitted", "0.0024 in", own)[0] is BAD
    case = with_work("main_clearance_fitted", "0.0022 in", own)
    band = own_band(BOOK.tasks["main_clearance_fitted"], EngineFigures.of(case))
    assert band is not None
    assert band.high == pytest.approx(0.0018 * 0.0254)


MEASURED = [t for t in BOOK.tasks.values() if t.dimension and t.bands]


@given(st.sampled_from(MEASURED), st.floats(0.0, 1.0))
def test_nothing_outside_every_source_passes(task: Task, share: float) -> None:
    """What no source accepts never passes, and what all accept never fails."""
    ends = [e for b in task.bands for e in (b.low, b.high) if e is not None]
    value = share * 2.0 * max(ends)
    entry = f'[[work]]\nno = 1\nwhat = "{task.id}"\nstate = "done"\n'
    worked = from_text(ENGINE + entry, None, BOOK).task_records[0]
    found = judged(task, type(worked)(worked.entry, task, value), NOTHING_KNOWN)
    fits = [h.fits for h in found.compared]
    if not any(fits):
        assert found.verdict is not Verdict.PASSED
    if all(fits):
        assert found.verdict is not Verdict.FAILED
    assert len(found.compared) == len(task.bands), "every source is shown, none averaged"


@pytest.mark.parametrize(
    ("task", "words"),
    [
        ("pickup_gap_fitted", ("clay", "gasket")),
        ("pump_cover_screws_torqued", ("in-lb",)),
    ],
)
def test_the_steps_of_a_task_are_shown(task: str, words: tuple[str, ...]) -> None:
    how = " ".join((*BOOK.tasks[task].how, BOOK.tasks[task].says)).lower()
    assert all(w in how for w in words)


@pytest.mark.parametrize(
    "words",
    [
        ("1/8 in", "gap"),  # a pickup raised by so much has its gap checked again
        ("3/16 in", "tray"),  # spacers for a longer stroke: the tray's clearance again
        ("medium", "removable"),  # thread locker
        ("relief spring out",),  # before heat goes near the pump
    ],
)  # fmt: skip
def test_the_trades_warnings_stand_in_the_book(words: tuple[str, ...]) -> None:
    """Common practice, no source."""
    texts = [" ".join((*t.how, t.says, t.why, t.remedy)).lower() for t in BOOK.tasks.values()]
    assert any(all(w in text for w in words) for text in texts)


# ------------------------------------------------------------------------------------- the sheet


def sheet_of(name: str, **more: object) -> Signoff:
    path = ROOT / "cases" / f"{name}.toml"
    return Signoff(Diagnosis(BOOK, load(path, BOOK)), 0.9, **more)  # type: ignore[arg-type]


def test_what_was_opened_calls_for_its_checks() -> None:
    petrel, gauge = sheet_of("petrel"), sheet_of("crane_truck")
    assert {i.task.phase for i in petrel.items} >= {Phase.RELIEF, Phase.PRIMING, Phase.FIRST_START}
    proofs = {"panel_gauge_agrees", "steady_when_wire_moves", "wire_laid_clear"}
    assert {i.task.id for i in gauge.items} == proofs, "no fit was touched"
    more = sheet_of("crane_truck", opened=frozenset({Access.SUMP_OFF, Access.DRAINED}))
    assert Phase.SUMP in {i.task.phase for i in more.items}
    whole = sheet_of("petrel", whole=True)
    assert {i.task for i in petrel.items if i.task.phase is not Phase.CLEANING} <= {
        i.task for i in whole.items
    }


def test_the_sheet_is_in_the_order_of_the_work() -> None:
    phases = [list(Phase).index(i.task.phase) for i in sheet_of("dunlin").items]
    assert phases == sorted(phases)


def test_every_skipped_task_is_named(tmp_path: Path) -> None:
    case = tmp_path / "gannet.toml"
    case.write_text((ROOT / "cases" / "gannet.toml").read_text("utf-8"), "utf-8")
    done = call("record", case, "pickup_gap_fitted=skipped")
    assert done.code == 2
    assert "reason" in done.err or "note" in done.err
    assert call("record", case, "pickup_gap_fitted=skipped", "--note", "no clay").code == 0
    out = call("signoff", case, "--all").out
    assert "left out" in out
    assert "no clay" in out


def test_a_failed_check_blocks_and_shows_its_remedy(tmp_path: Path) -> None:
    case = tmp_path / "gannet.toml"
    case.write_text((ROOT / "cases" / "gannet.toml").read_text("utf-8"), "utf-8")
    assert call("record", case, "pickup_gap_fitted=0 in").code == 0
    out = call("signoff", case).out
    assert "FAILED" in out
    assert "remedy" in out
    answer = Diagnosis(BOOK, load(case, BOOK))
    assert any(i.task.id == "pickup_gap_fitted" for i in Signoff(answer, 0.9).blocking)
    assert any(BOOK.tasks["pickup_gap_fitted"].says in line for line in obstacles(answer, 0.9))


@pytest.mark.parametrize("name", one_in(2, sorted(p.stem for p in (ROOT / "cases").glob("*.toml"))))
def test_the_sheet_reads_on_a_narrow_screen(name: str) -> None:
    for words in (("signoff",), ("signoff", "--open-only"), ("signoff", "--whole-engine", "--all")):
        done = call(words[0], ROOT / "cases" / f"{name}.toml", *words[1:])
        assert done.code == 0, done.err
        lines = [x for x in done.out.splitlines() if "  diagnose " not in x]
        assert max(map(len, lines)) <= 80
        again = call(words[0], ROOT / "cases" / f"{name}.toml", *words[1:])
        assert again.out == done.out


def test_markdown_and_blanks_hold_every_open_task() -> None:
    path = ROOT / "cases" / "petrel.toml"
    open_ = [i.task.id for i in sheet_of("petrel").items if i.judged.verdict is Verdict.OPEN]
    markdown = call("signoff", path, "--markdown").out
    blanks = call("signoff", path, "--blanks").out
    assert all(f"- `{name}`: ___" in markdown for name in open_)
    assert all(f'\n{name} = ""' in blanks for name in open_)


@pytest.mark.parametrize(
    "words",
    [("--opened", "sump_of"), ("--start", "--left", "nothing"), ("--start", "--set", "x=1")],
)
def test_bad_arguments_are_refused_in_one_line(words: tuple[str, ...]) -> None:
    done = call("signoff", ROOT / "cases" / "bullfinch.toml", *words)
    assert done.code == 2
    assert "Traceback" not in done.err


# ------------------------------------------------------------------------------------ first start


START = """
[[reading]]
no = 1
rpm = "700 rpm"
oil = "90 C"
pressure = "{} psi"
gauge = "direct"
at = "start"
"""


def started(pressure: float) -> Case:
    text = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n' + START.format(pressure)
    return from_text(text, None, BOOK)


def test_readings_of_the_start_are_no_evidence_of_the_fault() -> None:
    case = started(4.0)
    assert case.readings == ()
    assert len(case.start_readings) == 1
    assert not Diagnosis(BOOK, case).alarms


def test_a_reading_as_predicted_reopens_nothing() -> None:
    plain = first_start(started(20.0), BOOK)
    middle = float(plain.pressures(700.0, 363.15).mean()) / 6894.757
    as_said = first_start(started(round(middle, 1)), BOOK)
    assert not as_said.deviates
    assert as_said.reopened is None


def test_a_low_first_start_stops_and_reopens_the_diagnosis() -> None:
    start = first_start(started(4.0), BOOK)
    (found,) = start.compared
    assert found.below
    assert found.stop, "below seven psi at idle: shut down"
    assert start.reopened is not None
    assert [a.severity for a in start.reopened.alarms] == [Severity.STOP]
    leaders = start.reopened.ranking[:5]
    assert all(r.probability > 1.5 * r.prior for r in leaders), "the reading speaks for each"
    assert not any(r.cause.no_fault for r in leaders), "a trusted gauge read it"


def test_values_fitted_change_the_prediction() -> None:
    """Wider bearings than aimed at: less pressure hot at idle, as any trade text says."""

    def at(clearance: str) -> float:
        case = with_work("main_clearance_fitted", clearance)
        return float(first_start(case, BOOK).pressures(700.0, 363.15).mean())

    assert at("0.0045 in") < at("0.0020 in")


def test_every_stop_task_holds() -> None:
    """STOP tasks say so; NOTE tasks never stand in the way."""
    items = sheet_of("dunlin").items
    assert {i.judged.verdict for i in items} == {Verdict.OPEN}
    stopping = {i.task.id for i in items if i.blocks}
    assert {"priming_pressure_reached", "debris_followed"} & set(BOOK.tasks) <= stopping
    assert stopping == {i.task.id for i in items} - {i.task.id for i in items if holds_back(i)}
    assert 20 <= len({i.task.id for i in items} - stopping) < len(stopping)


def holds_back(item: Item) -> bool:
    """Whether the sheet itself says that the task may wait."""
    return f"[{item.task.id}] may wait" in printed()


@cache
def printed() -> str:
    """The tasks of one sheet in order, each with whether it may wait, as printed."""
    out = call("signoff", ROOT / "cases" / "dunlin.toml", "--all").out
    tasks = re.split(r"^  \[ \] ", out, flags=re.MULTILINE)[1:]
    said = []
    for task in map(str.split, tasks):
        name = next(w for w in task if w.startswith("[") and w.strip("[]") in BOOK.tasks)
        said.append(name + (" may wait" if "may wait," in " ".join(task) else ""))
    return "\n".join(said)


@pytest.mark.parametrize("hold", Hold)
@pytest.mark.parametrize(
    ("state", "holds"), [("done", False), ("skipped", False), ("failed", True), (None, True)]
)
def test_what_was_recorded_of_a_task_holds_or_frees_the_job(
    hold: Hold, state: str | None, holds: bool
) -> None:
    """A STOP task holds while it is open or has failed; a NOTE task never does."""
    text = (ROOT / "cases" / "dunlin.toml").read_text("utf-8")
    task = next(i.task for i in sheet_of("dunlin").items if i.task.hold is hold)
    if state:
        text += f'\n[[work]]\nno = 9000\nwhat = "{task.id}"\nstate = "{state}"\nnote = "so"\n'
    sheet = Signoff(Diagnosis(BOOK, from_text(text, None, BOOK)), 0.9)
    (item,) = [i for i in sheet.items if i.task is task]
    assert item.blocks is (holds and hold is Hold.STOP)
    assert (item in sheet.blocking) is item.blocks


def test_pounds() -> None:
    """15 lb-ft is 20.337 N·m, 15 in-lb 1.695 N·m (NIST SP 811, Appendix B)."""
    band = BOOK.tasks["pump_cover_screws_torqued"].bands[-1]
    assert isinstance(band, Band)
    assert band.low is not None
    assert band.low < 20.337 < (band.high or 0)
    assert pytest.approx(20.337, abs=1e-3) == LBF * 0.3048 * 15


@pytest.mark.parametrize(
    ("opened", "called"), [("relief_cap_off", False), ("sump_off", False), ("cam_out", True)]
)
def test_a_cam_is_run_in_only_where_cam_or_lifters_were_out(
    tmp_path: Path, opened: str, called: bool
) -> None:
    path = tmp_path / "a.toml"
    path.write_text(
        'schema = 1\n[engine]\nlayout = "distributor_v8"\n[[finding]]\nno = 1\n'
        'what = "debris_on_relief_seat"\nstate = "present"\n',
        "utf-8",
    )
    said = call("signoff", path, "--opened", opened, "--all").out
    assert ("cam_run_in_speed_held" in said) is called
    assert "cooler_flushed_and_proved" not in said
