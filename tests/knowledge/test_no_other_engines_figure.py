"""No figure printed for another engine judges this one: sign-off, review, verdicts, alarms."""

from __future__ import annotations

import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.limits import limits_of
from diagnose.output.documents.signoff_items import limit_lines
from diagnose.signoff.judging import NO_FIGURE, EngineFigures, Verdict, bands_of, judged
from diagnose.signoff.sheet import Item
from knowledge.book import the_book
from knowledge.engines import features
from knowledge.model import Severity
from knowledge.pressure.quantities import STOP_IDLE_PRESSURE
from knowledge.units import INCH, MM, PSI
from knowledge.work import Task
from tests.support.every import every

BOOK = the_book()
GENERAL = ("practice", "judgement", "memory")
#: sources that print for every engine: makers of bearings, gauges, cams and lifters, lubrication
#: laboratories, builders' rules of priming and running in
FOR_ALL = {
    "bearing maker", "stock parts", "stiff block", "0.001 in for each inch", "lifter maker",
    "laboratory", "new build", "well primed", "printed for starting", "1500 to 2500", "about 2000",
    "20 to 30 minutes", "one builder", "15 to 20 psi", "30 s to 3 min", "after hard work",
    "two to three", "after about the first hour", "a rebuilder", "one rebuilder", "electric gauge",
    "rule of thumb", "stop at 121", "out in a few seconds", "prelubrication switch",
}  # fmt: skip
#: gear pumps of petrol engines, and rotor pumps: of their kind wherever they are
PUMP_KINDS = {
    "gear_end_clearance_fitted", "end_clearance_with_groove", "gear_side_clearance_fitted",
    "rotor_body_clearance_fitted", "rotor_tip_clearance_fitted", "pump_cover_flat",
    "skew_gear_end_float_set",
}  # fmt: skip


def engine(layout: str, more: str = "", entries: str = "") -> Case:
    return from_text(f'schema = 1\n[engine]\nlayout = "{layout}"\n{more}\n{entries}', None, BOOK)


def signed_off(layout: str, task: str, value: str, more: str = "") -> tuple[Verdict, str]:
    entry = f'[[work]]\nno = 1\nwhat = "{task}"\nvalue = "{value}"\n'
    case = engine(layout, more, entry)
    found = judged(BOOK.tasks[task], case.task_records[0], EngineFigures.of(case))
    return found.verdict, found.because


@every([t for t in BOOK.tasks.values() if t.bands], lambda t: t.id)
def test_what_decides_for_an_unknown_engine_was_printed_for_no_single_one(task: Task) -> None:
    """General practice, or a source for every engine; the rest is only shown."""
    deciding, _ = bands_of(task, EngineFigures.of(engine("unknown")))
    for band in deciding:
        if band.source.trust in GENERAL or task.id in PUMP_KINDS:
            continue
        assert any(words in band.says for words in FOR_ALL), (task.id, band.says)


@pytest.mark.parametrize(
    ("task", "value"),
    [
        ("relief_cap_torqued", "35 lb-ft"),
        ("pickup_bolt_torqued", "12 N·m"),
        ("pump_backlash_fitted", "0.010 in"),
        ("pump_bush_fitted", "0.004 in"),
        ("distributor_end_play_set", "0.030 in"),
        ("sump_flange_flat", "0.003 in"),
    ],
)
def test_where_only_other_engines_are_printed_the_value_waits_for_yours(
    task: str, value: str
) -> None:
    found, because = signed_off("distributor_v8", task, value)
    assert found is Verdict.BORDERLINE
    assert because.startswith("no figure for this engine: enter yours; it fits ")
    case = engine("distributor_v8")
    word = BOOK.tasks[task]
    shown = [
        line.whole
        for line in limit_lines(
            Item(word, "", judged(word, None, EngineFigures.of(case)), ()), case
        )
    ]
    assert shown[0] == f"limit: {NO_FIGURE}"
    assert all(line.startswith("printed for another engine or use:") for line in shown[1:])


def test_a_figure_of_one_engine_never_passes_and_never_fails_anything() -> None:
    """It can only keep a value from failing against general practice."""
    for value, right in (("65 lb-ft", Verdict.BORDERLINE), ("120 lb-ft", Verdict.FAILED)):
        assert signed_off("distributor_v8", "pump_bolts_torqued", value)[0] is right
    assert signed_off("distributor_v8", "pump_bolts_torqued", "30 lb-ft")[0] is Verdict.PASSED


@pytest.mark.parametrize(
    ("layout", "value", "finds"),
    [("vee_diesel", "0.009 in", True), ("distributor_v8", "0.009 in", False)],
)
def test_a_diesels_limit_judges_diesels_only(layout: str, value: str, finds: bool) -> None:
    entry = f'[[finding]]\nno = 1\nwhat = "pump_bush_clearance"\nvalue = "{value}"\n'
    case = engine(layout, entries=entry)
    derived = Diagnosis(BOOK, case).inference.result.derived
    assert any(d.finding.id == "pump_shaft_play" for d in derived) is finds
    says = limits_of(BOOK.measures["pump_bush_clearance"], case)
    assert (says == NO_FIGURE) is not finds


def test_the_stop_at_idle_is_no_tractors() -> None:
    """A petrol engine is stopped by common practice, a diesel by the figure of a like diesel."""
    petrol = STOP_IDLE_PRESSURE.printed(lambda _: False)
    diesel = STOP_IDLE_PRESSURE.printed(lambda f: f is features.DIESEL)
    assert [p.source.trust for p in petrol] == ["practice"]
    assert {p.of for p in diesel} == {"any engine"}
    kinds = {features.IN_A_TRACTOR: "small tractor diesel", features.VEE_ENGINE: "diesel V8 truck"}
    for kind, of in kinds.items():
        own = {features.DIESEL, kind}
        assert {p.of for p in STOP_IDLE_PRESSURE.printed(own.__contains__)} == {of}
    assert petrol[0].value == pytest.approx(7 * PSI)


def test_an_alarm_goes_by_the_engines_own_figure() -> None:
    reading = '[[reading]]\nno = 1\nrpm = "700 rpm"\noil = "95 C"\npressure = "{} psi"\n'
    own = '[engine.limits]\nstop_idle_pressure = "4 psi"\n'
    for psi, usual, with_own in ((5, True, False), (3, True, True), (9, False, False)):
        entry = reading.format(psi)
        for more, stops in (("", usual), (own, with_own)):
            alarms = Diagnosis(BOOK, engine("distributor_v8", more, entry)).alarms
            stopped = any(a.severity is Severity.STOP for a in alarms)
            assert stopped is stops, (psi, more)


# ----------------------------------------------------------------- the audit's points on sign-off


def test_a_clearance_is_judged_by_the_journals_size() -> None:
    """The same 0.105 mm: sound in a tractor, worn in an overhead-cam four; 0.075 mm worn there."""
    assert signed_off("tractor_diesel", "main_clearance_fitted", "0.105 mm")[0] is Verdict.PASSED
    four = "crank_nose_gerotor_ohc"
    assert signed_off(four, "main_clearance_fitted", "0.105 mm")[0] is Verdict.FAILED
    air = signed_off("air_cooled_flat_four", "main_clearance_fitted", "0.10 mm")[0]
    assert air is Verdict.PASSED
    sizes = engine(four).sizes
    limit = BOOK.limits["main_clearance"].figure_for(four, sizes)
    assert limit is not None
    assert limit.value < 0.075 * MM


def test_the_aim_of_a_pushrod_v8_judges_no_other_engine() -> None:
    task = BOOK.tasks["main_clearance_fitted"]
    for layout, decides in (("distributor_v8", True), ("overhead_cam_four", False)):
        first = bands_of(task, EngineFigures.of(engine(layout)))[0][0]
        assert (first.says == "usual aim for a pushrod V8") is decides


SCREW = 'card = 1\n[sizes]\npump_cover_screw = "{}"\n'


@pytest.mark.parametrize(
    ("thread", "value", "right"),
    [
        ("1/4 in", "80 in-lb", Verdict.PASSED),
        ("1/4 in", "106 in-lb", Verdict.PASSED),
        ("1/4 in", "15 lb-ft", Verdict.FAILED),  # strips it
        ("6 mm", "15 lb-ft", Verdict.FAILED),
        ("5/16 in", "15 lb-ft", Verdict.PASSED),
        ("8 mm", "15 lb-ft", Verdict.PASSED),
        ("8 mm", "80 in-lb", Verdict.FAILED),  # too slack to hold
        ("8 mm", "65 lb-ft", Verdict.FAILED),
        ("10 mm", "15 lb-ft", Verdict.BORDERLINE),  # neither: the maker's figure
    ],
)
def test_a_torque_is_chosen_by_the_thread(
    tmp_path_factory: pytest.TempPathFactory, thread: str, value: str, right: Verdict
) -> None:
    card = tmp_path_factory.mktemp("card") / "own.toml"
    card.write_text(SCREW.format(thread), "utf-8")
    found, because = signed_off(
        "distributor_v8", "pump_cover_screws_torqued", value, f'card = "{card.as_posix()}"'
    )
    assert found is right, because


def test_end_float_goes_by_the_journal() -> None:
    task = BOOK.tasks["crank_end_float_set"]
    for size, low in (("2 in", 0.003), ("3 in", 0.005), ("4 in", 0.007)):
        case = engine("unknown", f'[engine.dimensions]\nmain_diameter = "{size}"')
        first = bands_of(task, EngineFigures.of(case))[0][0]
        assert first.low == pytest.approx(low * INCH)


@pytest.mark.parametrize(
    ("setting", "value", "right"),
    [
        ("85 psi", "85 psi", Verdict.PASSED),
        ("85 psi", "60 psi", Verdict.FAILED),
        ("40 psi", "40 psi", Verdict.PASSED),
        (None, "85 psi", Verdict.BORDERLINE),
        (None, "50 psi", Verdict.PASSED),
        (None, "150 psi", Verdict.FAILED),
    ],
)
def test_the_relief_opens_at_the_stated_setting(
    setting: str | None, value: str, right: Verdict
) -> None:
    more = f'[engine.limits]\nrelief_setting = "{setting}"' if setting else ""
    assert signed_off("distributor_v8", "relief_opens_at", value, more)[0] is right


def test_a_cam_clearance_of_a_petrol_v8_is_no_diesels() -> None:
    first = bands_of(
        BOOK.tasks["cam_clearance_fitted"], EngineFigures.of(engine("distributor_v8"))
    )[0][0]
    assert first.high == pytest.approx(0.006 * INCH)
    assert first.source.trust == "memory"
    diesel = bands_of(
        BOOK.tasks["cam_clearance_fitted"], EngineFigures.of(engine("tractor_diesel"))
    )[0][0]
    assert "diesel" in diesel.says
