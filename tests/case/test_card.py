"""An engine's card: reading, writing, its figures in a job, and one clear line for each fault."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from diagnose import BadCaseError, CaseBuilder, engine_card
from diagnose.case.card import Card, card_from_text
from diagnose.case.card_text import CardValue, card_value
from diagnose.case.case import Case
from diagnose.case.file_faults import Faults
from diagnose.case.loading import from_text, load
from diagnose.circuit.engine_model import numbers
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.entries import entry_lines
from diagnose.output.documents.limits import limits_of
from diagnose.signoff.judging import OWN, EngineFigures, Verdict, bands_of, judged
from diagnose.signoff.measured import measured_bounds, reading_bounds
from knowledge.book import the_book
from knowledge.card import CardFigure
from knowledge.model import Severity
from knowledge.units import INCH, LBF, MM, PSI
from tests.support.command_line import ROOT, call

BOOK = the_book()
WORKBOAT = ROOT / "cases" / "cards" / "workboat_v8.toml"
CARD = """
card = 1
[engine]
name = "trial engine"
layout = "distributor_v8"
[units]
torque = "lb-ft"
[pressures]
hot_idle_pressure = "1.2 bar"
relief_setting = "85 psi"
stop_idle_pressure = "9 psi"
[clearances]
main_clearance = "0.0010 to 0.0020 in, limit 0.0028 in"
rod_clearance = "0.03 to 0.05 mm"
cam_bearing_clearance = "at most 0.12 mm"
[torques]
pump_cover_screws = "80 in-lb"
sump_bolts = "9 to 11"
main_caps = "60 + 90 deg"
[settings]
idle_speed = "900 rpm"
[oil]
grade = "15W-40"
"""


def card_of(text: str = CARD) -> Card:
    return card_from_text(text, Path("trial.toml"), BOOK)


def job(folder: Path, entries: str = "", engine: str = "", card: str = CARD) -> Case:
    """A job in a folder beside its card."""
    (folder / "trial.toml").write_text(card, "utf-8")
    path = folder / "job.toml"
    path.write_text(f'schema = 1\n[engine]\ncard = "trial.toml"\n{engine}\n{entries}', "utf-8")
    return load(path, BOOK)


def read(text: str, figure: str = "main_clearance", unit: str | None = None) -> CardValue | str:
    faults = Faults()
    value = card_value(text, BOOK.card_figures[figure], unit, "here", faults)
    return value if value is not None else faults[0]


# ------------------------------------------------------------------------------- what it can hold


def test_every_figure_sets_or_decides_something_that_exists() -> None:
    for figure in BOOK.card_figures.values():
        assert set(figure.tasks) <= set(BOOK.tasks), figure.id
        for task in map(BOOK.tasks.__getitem__, figure.tasks):
            assert task.dimension in ("", figure.dimension), figure.id
        for limit in figure.limits:
            assert limit.dimension == figure.dimension, figure.id
            assert figure.quantity in limit.quantities, figure.id
        assert figure.source.trust == "practice"
        assert figure.manual


def test_a_card_can_hold_every_limit_and_every_torque_of_the_book() -> None:
    limits = {x for f in BOOK.card_figures.values() for x in f.limits}
    left = {x.id for x in BOOK.limits.values()} - {x.id for x in limits}
    assert left == {"sender_ground_ohms"}, "the same for every engine"
    torques = {t.id for t in BOOK.tasks.values() if t.dimension == "torque"}
    assert torques <= {t for f in BOOK.card_figures.values() for t in f.tasks}


# -------------------------------------------------------------------------------- as manuals print


@pytest.mark.parametrize(
    ("text", "figure", "low", "high", "worn", "unit"),
    [
        ("0.0010 to 0.0025 in", "main_clearance", 0.001 * INCH, 0.0025 * INCH, None, "in"),
        ("0.0010-0.0025 in", "main_clearance", 0.001 * INCH, 0.0025 * INCH, None, "in"),
        ('.0010"-.0025"', "main_clearance", 0.001 * INCH, 0.0025 * INCH, None, '"'),
        ("0.02 – 0.06 mm", "main_clearance", 0.02 * MM, 0.06 * MM, None, "mm"),
        ("1 to 2.5 thou, limit 3.5 thou", "main_clearance", 25.4e-6, 63.5e-6, 88.9e-6, "thou"),
        ("0.02 to 0.06, wear limit 0.09 mm", "main_clearance", 2e-5, 6e-5, 9e-5, "mm"),
        ("at most 0.0035 in", "main_clearance", None, 0.0035 * INCH, None, "in"),
        ("limit 0.1 mm", "main_clearance", None, None, 0.1 * MM, "mm"),
        ("1/4 to 3/8 in", "pickup_gap", 0.25 * INCH, 0.375 * INCH, None, "in"),
        ("50 psi", "relief_setting", 50 * PSI, 50 * PSI, None, "psi"),
        ("24 ± 4 N·m", "pump_bolts", 20.0, 28.0, None, "N·m"),
        ("24 +/- 4 Nm", "pump_bolts", 20.0, 28.0, None, "Nm"),
        ("80 in-lb", "pump_cover_screws", 80 * LBF * INCH, 80 * LBF * INCH, None, "in-lb"),
        ("40 N·m + 90 deg", "main_caps", 40.0, 40.0, None, "N·m"),
        ("15 psi", "hot_idle_pressure", 15 * PSI, None, None, "psi"),
        ("250 F", "oil_temperature", None, 394.26, None, "F"),
        ("5", "main_count", 5.0, 5.0, None, None),
    ],
)
def test_figures_as_manuals_print_them(
    text: str,
    figure: str,
    low: float | None,
    high: float | None,
    worn: float | None,
    unit: str | None,
) -> None:
    value = read(text, figure)
    assert isinstance(value, CardValue), value
    for found, wanted in ((value.low, low), (value.high, high), (value.worn, worn)):
        assert (found is None) == (wanted is None)
        assert found is None or found == pytest.approx(wanted, rel=1e-4)
    assert value.unit == (unit or value.unit)


@pytest.mark.parametrize(
    ("text", "figure", "says"),
    [
        ("0.002 in", "main_clearance", "may be a fit or a limit"),
        ("0.0025 to 0.0010 in", "main_clearance", "the smaller figure comes first"),
        ("1 to 3 thou, limit 2 thou", "main_clearance", "within the fit of a new one"),
        ("0.0010 to 0.0025", "main_clearance", "'0.0010' has no unit; write it like 0.0045 in"),
        ("2 to 3 in", "main_clearance", "cannot be the main bearing clearance"),
        ("50 pounds of oil", "relief_setting", "is no pressure here"),
        ("", "relief_setting", "is no figure"),
        ("1" * 200 + " psi", "relief_setting", "is no figure"),
    ],
)
def test_what_is_no_figure_is_refused_in_one_line(text: str, figure: str, says: str) -> None:
    found = read(text, figure)
    assert isinstance(found, str)
    assert says in found
    assert "\n" not in found


@given(
    st.sampled_from(list(BOOK.card_figures.values())),
    st.text(alphabet="0123456789./ -to±,limit inpsmbarN·fthou+", max_size=40),
)
def test_any_text_is_a_figure_or_one_fault(figure: CardFigure, text: str) -> None:
    faults = Faults()
    value = card_value(text, figure, None, "here", faults)
    assert (value is None) == (len(faults) == 1)
    if value is not None and value.low is not None and value.high is not None:
        assert value.low <= value.high


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        ("schema = 1", "card: missing; this is a case"),
        ("[engine]", "card: missing; it must begin 'card = 1'"),
        ("card = 2", "card: '2' is unknown here; this is 1"),
        (
            'card = 1\n[clearences]\nmain_clearance = "at most 1 thou"',
            "clearences: no such table. Did you mean 'clearances'?",
        ),
        (
            'card = 1\n[clearances]\nmain_clearence = "at most 1 thou"',
            "clearances.main_clearence: no such figure. Did you mean 'main_clearance'?",
        ),
        (
            'card = 1\n[clearances]\nrelief_setting = "50 psi"',
            "clearances.relief_setting: belongs under [pressures]",
        ),
        (
            'card = 1\nmain_caps = "60 lb-ft"',
            "main_caps: no such table. It belongs under [torques].",
        ),
        (
            "card = 1\n[pressures]\nrelief_setting = true",
            "pressures.relief_setting: true must be text, in quotes, with its unit",
        ),
        (
            'card = 1\n[pressures]\nrelief_setting = "_ psi"',
            "pressures.relief_setting: still to be filled in; write a figure for each _",
        ),
        (
            'card = 1\n[units]\nlenght = "in"',
            "units.lenght: no such unit to set. Did you mean 'length'?",
        ),
        (
            'card = 1\n[units]\ntorque = "psi"',
            "units.torque: 'psi' is no unit of torque; write one of n·m, lb·ft, in·lb, kgf·m",
        ),
        (
            'card = 1\n[engine]\nlayout = "distributer_v8"',
            "engine.layout: no such layout 'distributer_v8'. Did you mean 'distributor_v8'?",
        ),
        ('card = 1\n[engine]\nnames = "x"', "engine.names: no such field. Did you mean 'name'?"),
        ('card = 1\n[engine]\nhas = ["turbo"]', "engine.has: no such feature 'turbo'."),
        ("card = 1\npressures = 3", "pressures: must be a table, written [pressures]"),
        ('card = 1\n[oil]\ngrade = "jam"', "oil.grade: "),
        ("card = 1\n[", "not a TOML file"),
    ],
)
def test_each_fault_is_one_line_with_the_nearest_right_thing(text: str, fault: str) -> None:
    with pytest.raises(BadCaseError) as caught:
        card_of(text)
    assert len(caught.value.faults) == 1
    assert caught.value.faults[0].startswith(fault)


# ------------------------------------------------------------------------------------- in a job


def test_a_job_has_what_its_card_says(tmp_path: Path) -> None:
    case = job(tmp_path)
    limits = {x.id: value for x, value in case.limits.items()}
    assert case.layout.id == "distributor_v8"
    assert (case.engine.name, case.engine.oil) == ("trial engine", "15W-40")
    assert limits["hot_idle_pressure"] == pytest.approx(1.2e5)
    assert limits["main_clearance"] == pytest.approx(0.0028 * INCH), "worn beyond the wear limit"
    assert limits["rod_clearance"] == pytest.approx(0.05 * MM), "none printed: the widest fit"
    assert limits["least_bearing_clearance"] == pytest.approx(0.001 * INCH), "the tighter of both"
    circuit = numbers(case)
    assert circuit["main_clearance"] == pytest.approx(0.0015 * INCH), "the middle of a new one"
    assert circuit["relief_setting"] == pytest.approx(85 * PSI)


def test_the_case_goes_before_its_card(tmp_path: Path) -> None:
    stated = (
        'name = "number two"\noil = "SAE 30"\nlayout = "marine_petrol_v8"\n'
        '[engine.limits]\nrelief_setting = "60 psi"\n[engine.dimensions]\nmain_clearance = "2 thou"'
    )
    case = job(tmp_path, engine=stated)
    assert (case.engine.name, case.engine.oil, case.layout.id) == (
        "number two",
        "SAE 30",
        "marine_petrol_v8",
    )
    assert numbers(case)["relief_setting"] == pytest.approx(60 * PSI)
    assert numbers(case)["main_clearance"] == pytest.approx(0.002 * INCH)
    assert "relief_opens_at" not in case.own_figures
    assert bands_of(BOOK.tasks["relief_opens_at"], EngineFigures.of(case))[0][
        0
    ].high == pytest.approx(66 * PSI)


@pytest.mark.parametrize(
    ("task", "value", "verdict"),
    [
        ("main_clearance_fitted", "0.0016 in", Verdict.PASSED),
        ("main_clearance_fitted", "0.0026 in", Verdict.FAILED),
        ("rod_clearance_fitted", "0.040 mm", Verdict.PASSED),
        ("rod_clearance_fitted", "0.065 mm", Verdict.FAILED),
        ("relief_opens_at", "85 psi", Verdict.PASSED),
        ("relief_opens_at", "50 psi", Verdict.FAILED),
        ("pump_cover_screws_torqued", "80 in-lb", Verdict.PASSED),
        ("pump_cover_screws_torqued", "15 lb-ft", Verdict.FAILED),
        ("sump_bolts_torqued", "10 lb-ft", Verdict.PASSED),
        ("sump_bolts_torqued", "11 lb-ft", Verdict.BORDERLINE),
        ("sump_bolts_torqued", "20 N·m", Verdict.FAILED),
        ("pressure_at_hot_idle", "15 psi", Verdict.FAILED),
    ],
)
def test_sign_off_goes_by_the_card(tmp_path: Path, task: str, value: str, verdict: Verdict) -> None:
    entry = f'[[work]]\nno = 1\nwhat = "{task}"\nvalue = "{value}"\n'
    case = job(tmp_path, entry)
    found = judged(BOOK.tasks[task], case.task_records[0], EngineFigures.of(case))
    assert found.verdict is verdict, found.because
    assert found.compared[0].band.source is OWN
    (line,) = entry_lines(case, BOOK)
    assert line.fits is (verdict is Verdict.PASSED)


def test_findings_alarms_and_verdicts_go_by_the_card(tmp_path: Path) -> None:
    found = '[[finding]]\nno = 1\nwhat = "main_clearance"\nvalue = "0.0032 in"\n'
    reading = '[[reading]]\nno = 2\nrpm = "900 rpm"\noil = "95 C"\npressure = "8 psi"\n'
    measure = BOOK.measures["main_clearance"]
    usual = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n' + found
    typical = Diagnosis(BOOK, from_text(usual, None, BOOK)).inference
    own = Diagnosis(BOOK, job(tmp_path, found)).inference
    assert own.belief("main_clearance_too_wide") > 0.3, "over this engine's 0.0028 in"
    assert typical.belief("main_clearance_too_wide") < 0.03, "within the usual 0.0035 in"
    case = job(tmp_path, found + reading)
    bound = measured_bounds(measure, 0.0032 * INCH, case, BOOK)[0][0]
    assert bound.broken
    assert bound.figure == pytest.approx(0.0028 * INCH)
    assert "0.0028 in (this engine's own figure)" in limits_of(measure, case)
    assert not Diagnosis(BOOK, case).may_run, "8 psi is below the 9 psi at which this engine stops"
    without = CARD.replace('stop_idle_pressure = "9 psi"\n', "")
    (care,) = Diagnosis(BOOK, job(tmp_path, reading, card=without)).alarms
    assert care.severity is Severity.CARE, "it wants 17 psi at hot idle"


def test_a_spring_is_held_against_the_card(tmp_path: Path) -> None:
    """The book has no limit of its length; the card has its figure."""
    card = CARD.replace("[oil]", 'relief_spring_length = "2.40 in"\n[oil]')
    case = job(tmp_path, card=card)
    done = call("record", str(case.path), "relief_spring_length=2.30 in")
    assert done.code == 0
    wanted = "should be 2.4 in (this engine's own figure); 0.1 under it"
    assert wanted in " ".join((done.out + done.err).split())


def test_units_are_those_of_the_card(tmp_path: Path) -> None:
    case = job(tmp_path)
    assert case.unit("length", "rod_clearance") == "mm"
    assert case.unit("length", "main_clearance") == "in"
    assert case.unit("pressure") == "bar"
    assert case.unit("torque") == "lb-ft"
    assert case.unit("volume") is None
    assert limits_of(BOOK.measures["rod_clearance"], case).endswith(
        "at most 0.05 mm (this engine's own figure)"
    )
    shown = call("signoff", str(case.path), "--whole-engine", "--full").out
    for wanted in (
        "0.03 mm to 0.05 mm",
        "72 in-lb to 88 in-lb",
        "9 lb-ft to 11 lb-ft",
        "60 + 90 deg",
    ):
        assert wanted in " ".join(shown.split()), wanted


def test_a_bad_or_missing_card_is_one_line_of_the_job(tmp_path: Path) -> None:
    with pytest.raises(BadCaseError, match=r"engine\.card: .*trial\.toml: clearances\.main_x: no"):
        job(tmp_path, card='card = 1\n[clearances]\nmain_x = "1 thou"')
    path = tmp_path / "job.toml"
    path.write_text('schema = 1\n[engine]\ncard = "trail.toml"\n', "utf-8")
    done = call("review", path)
    assert done.code == 65
    assert done.err.count("\n") == 1
    assert "engine.card:" in done.err
    assert "did you mean" in done.err


@pytest.mark.parametrize("name", [".", "..", "trial", "job.toml", "x" * 300, "a/b", "a\\u0000b"])
def test_any_name_of_a_card_is_one_clear_line(tmp_path: Path, name: str) -> None:
    """Without its ending the card is found all the same."""
    (tmp_path / "trial.toml").write_text(CARD, "utf-8")
    path = tmp_path / "job.toml"
    path.write_text(f'schema = 1\n[engine]\ncard = "{name}"\n', "utf-8")
    if name == "trial":
        assert load(path, BOOK).card is not None
        return
    with pytest.raises(BadCaseError) as caught:
        load(path, BOOK)
    assert all("card" in fault and "\n" not in fault for fault in caught.value.faults)


def test_a_card_is_no_case_and_stands_in_no_ones_way(tmp_path: Path) -> None:
    job(tmp_path)
    done = call("review", tmp_path / "trial.toml")
    assert done.code == 65
    assert "is an engine's card, no case" in done.err
    listed = call("history", tmp_path)
    assert listed.code == 0
    assert "trial.toml" not in listed.out + listed.err


def test_a_case_built_in_python_names_a_card(tmp_path: Path) -> None:
    path = tmp_path / "trial.toml"
    path.write_text(CARD, "utf-8")
    assert CaseBuilder(card=path).build().layout.id == "distributor_v8"
    assert engine_card(path).oil_grade == "15W-40"


def test_the_makers_figure_at_2000_rpm_judges_readings_and_sign_off(tmp_path: Path) -> None:
    """30 psi at 2000 rpm keeps the rule of thumb and breaks this maker's 35 psi; at 4000 the rule."""
    card = CARD.replace("[clearances]", 'hot_running_pressure = "35 psi"\n[clearances]')
    entry = '[[reading]]\nno = 1\nrpm = "2000 rpm"\noil = "95 C"\npressure = "27 psi"\n'
    entry += '[[work]]\nno = 2\nwhat = "pressure_hot_at_2000"\nvalue = "27 psi"\n'
    for text, low in ((CARD, False), (card, True)):
        case = job(tmp_path, entry, card=text)
        assert any(b[0].broken for b in reading_bounds(case.readings[0].reading, case)) is low
        record = case.task_records[0]
        assert (
            judged(record.task, record, EngineFigures.of(case)).verdict is Verdict.FAILED
        ) is low
        derived = Diagnosis(BOOK, case).inference.result.derived
        shown = {d.finding.id: d.state.value for d in derived}
        assert (shown.get("gauge_reads_low") == "present") is low
