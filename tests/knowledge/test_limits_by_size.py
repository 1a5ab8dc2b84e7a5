"""Typical limits follow the journal and the layout; the maker's figure goes first."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.limits import limits_of
from diagnose.signoff.judging import EngineFigures, Verdict, judged
from knowledge.book import the_book
from knowledge.engines.profiles import Profile
from knowledge.units import INCH, MM

BOOK = the_book()
MOST = BOOK.limits["main_clearance"]
TASK = BOOK.tasks["main_clearance_fitted"]
MEASURE = BOOK.measures["main_clearance"]
ENGINE = 'schema = 1\n[engine]\nlayout = "{layout}"\n{more}\n'
WORK = '[[work]]\nno = 1\nwhat = "main_clearance_fitted"\nvalue = "{value}"\n'
FOUND = '[[finding]]\nno = 1\nwhat = "main_clearance"\nvalue = "{value}"\n'


def limit_of(layout: str, more: str = "") -> float:
    case = from_text(ENGINE.format(layout=layout, more=more), None, BOOK)
    return case.facts().limits.get(MOST, MOST.typical)


def verdict(layout: str, value: str) -> Verdict:
    text = ENGINE.format(layout=layout, more="") + WORK.format(value=value)
    case = from_text(text, None, BOOK)
    return judged(
        TASK, case.task_records[0], EngineFigures(limits=case.limits, usual=case.usual_limits)
    ).verdict


def too_wide(layout: str, value: str) -> float:
    """How probable it is that the mains are over their limit."""
    text = ENGINE.format(layout=layout, more="") + FOUND.format(value=value)
    return Diagnosis(BOOK, from_text(text, None, BOOK)).inference.belief("main_clearance_too_wide")


@pytest.mark.parametrize("profile", BOOK.profiles.values(), ids=lambda p: p.id)
def test_no_layout_fails_its_own_sound_clearance(profile: Profile) -> None:
    for name in ("main_clearance", "rod_clearance"):
        sound, _ = profile.numbers[name]
        limit = BOOK.limits[name]
        sizes = {k: v for k, (v, _) in profile.numbers.items()}
        for layout in profile.layouts:
            figure = limit.figure_for(layout, sizes)
            assert sound < (figure.value if figure else limit.typical), (layout, name)


def test_published_limits_are_met_by_size() -> None:
    """0.08 mm is printed for one 3.2 V6 (mains of about 63 mm), 0.10 mm for rods of a 3.0 V6."""
    mains, rods = MOST.by_size, BOOK.limits["rod_clearance"].by_size
    assert mains is not None
    assert rods is not None
    assert mains.figure(63 * MM).value == pytest.approx(0.08 * MM, rel=0.03)
    assert rods.figure(53 * MM).value == pytest.approx(0.10 * MM, rel=0.15)
    assert mains.figure(3 * INCH).value == pytest.approx(0.0035 * INCH)


def test_the_same_clearance_is_sound_in_one_engine_and_worn_in_another() -> None:
    assert verdict("tractor_diesel", "0.105 mm") is Verdict.PASSED
    assert verdict("air_cooled_flat_four", "0.10 mm") is Verdict.PASSED
    assert verdict("crank_nose_gerotor_ohc", "0.105 mm") is Verdict.FAILED
    assert too_wide("tractor_diesel", "0.105 mm") < 0.2
    assert too_wide("crank_nose_gerotor_ohc", "0.105 mm") > 0.8
    assert too_wide("air_cooled_flat_four", "0.10 mm") < 0.2
    assert too_wide("distributor_v8", "0.0045 in") > 0.8


def test_a_stated_journal_decides_where_nothing_else_is_known() -> None:
    assert limit_of("unknown") == MOST.typical
    stated = '[engine.dimensions]\nmain_diameter = "4 in"'
    assert limit_of("unknown", stated) == pytest.approx(0.00425 * INCH)


def test_the_makers_figure_goes_first_and_each_names_its_source() -> None:
    own = '[engine.limits]\nmain_clearance = "0.2 mm"'
    assert limit_of("tractor_diesel", own) == pytest.approx(0.2 * MM)
    tractor = from_text(ENGINE.format(layout="tractor_diesel", more=""), None, BOOK)
    assert "tractor or truck diesel" in limits_of(MEASURE, tractor)
    assert "from memory" in limits_of(MEASURE, tractor)
    maker = from_text(ENGINE.format(layout="tractor_diesel", more=own), None, BOOK)
    assert "this engine's own figure" in limits_of(MEASURE, maker)


@pytest.mark.parametrize(
    ("task", "own", "value", "verdict"),
    [
        ("relief_opens_at", 'relief_setting = "85 psi"', "85 psi", Verdict.PASSED),
        ("relief_opens_at", 'relief_setting = "85 psi"', "50 psi", Verdict.FAILED),
        ("relief_opens_at", "", "85 psi", Verdict.BORDERLINE),
        ("pump_cover_screws_torqued", 'pump_cover_torque = "80 in-lb"', "80 in-lb", Verdict.PASSED),
        ("pump_cover_screws_torqued", 'pump_cover_torque = "80 in-lb"', "15 lb-ft", Verdict.FAILED),
        ("pump_cover_screws_torqued", "", "65 lb-ft", Verdict.FAILED),
    ],
)
def test_the_engines_own_figure_decides_a_nominal_value(
    task: str, own: str, value: str, verdict: Verdict
) -> None:
    text = ENGINE.format(layout="distributor_v8", more=f"[engine.limits]\n{own}")
    text += f'[[work]]\nno = 1\nwhat = "{task}"\nvalue = "{value}"\n'
    case = from_text(text, None, BOOK)
    found = judged(
        BOOK.tasks[task],
        case.task_records[0],
        EngineFigures(limits=case.limits, usual=case.usual_limits),
    )
    assert found.verdict is verdict, found.because
