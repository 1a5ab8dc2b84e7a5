"""Readings in words in the hydraulic survey: wider, weaker, and pointing the same way."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from itertools import pairwise, product
from math import log

import numpy as np
import pytest

from diagnose.case.case import Case
from diagnose.case.loading import from_text
from diagnose.circuit.budget import budget
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import (
    BASELINE_ERROR,
    Point,
    baseline_points,
    healthy,
    point_of,
    shown,
)
from diagnose.circuit.fitting import HEALTHY, apart, warmer
from diagnose.circuit.operating_points import as_if_read, points_of
from diagnose.circuit.survey import Survey, survey
from diagnose.circuit.survey_evidence import MOST_WEIGHED, spread_evenly, usable
from diagnose.diagnosis import Diagnosis
from diagnose.entry.readings import parse_reading
from diagnose.output.documents.report_entries import report_reading
from diagnose.output.documents.survey import survey_document
from diagnose.output.text.survey import survey_text
from knowledge.book import the_book
from knowledge.model import Gauge, Reading
from knowledge.units import PSI
from tests.circuit.test_survey import BASE
from tests.support.examples import one_in

BOOK = the_book()
CASE = from_text(BASE, None, BOOK)
MOMENTS = ("cold", "hot idle", "cruise")


def moment(when: str, *, vague: bool) -> Reading:
    """A reading at this moment; exact: at the middle of what the words mean."""
    look = parse_reading(f"1 psi {when}").in_si()
    assert look.rpm_spread > 0
    assert look.oil_spread > 0
    return look if vague else Reading(look.rpm, look.oil_temperature, look.pressure)


def shows(condition: str | None, severity: float, look: Reading) -> float:
    """What the engine with a condition shows at the middle of a reading [Pa]."""
    engine = healthy(CASE)
    if condition:
        engine = FAULTS[condition].apply(engine, severity)
    return float(shown(engine, [point_of(look, 0.0)])[0])


@cache
def found(condition: str | None, severity: float, vague: bool) -> Survey:
    """The survey of three readings of a simulated engine."""
    looks = [moment(m, vague=vague) for m in MOMENTS]
    return survey(CASE, BOOK, [replace(r, pressure=shows(condition, severity, r)) for r in looks])


def log_ratio(got: Survey, condition: str) -> float:
    return log(next(r.ratio for r in got.rows if r.id == condition))


@pytest.mark.parametrize("made", one_in(3, list(product(FAULTS, [0.5, 0.9]))), ids=str)
def test_a_vague_copy_is_weaker_evidence_in_the_same_direction(made: tuple[str, float]) -> None:
    condition, severity = made
    exact, vague = (found(condition, severity, v) for v in (False, True))
    strong, weak = log_ratio(exact, condition), log_ratio(vague, condition)
    assert weak < strong or abs(strong) < 0.3
    assert weak * strong > 0 or abs(strong) < 0.3
    top = max(exact.share(condition), 0.02)
    assert vague.share(condition) < 1.1 * top


def test_three_vague_readings_of_a_worn_engine_still_favour_wear_over_the_screen() -> None:
    got = found("clearances_wide", 0.6, True)
    assert got.rows[0].id == "clearances_wide"
    assert got.share("clearances_wide") > 10 * got.share("suction_throttled")
    assert got.share("clearances_wide") > got.share(HEALTHY)


def case_of(*readings: str, more: str = "") -> Case:
    text = BASE
    for no, reading in enumerate(readings, 1):
        lines = reading.replace("; ", "\n")
        text += f"[[reading]]\nno = {no}\n{lines}\n"
    return from_text(text + more, None, BOOK)


WORN = (
    'pressure = "40 psi"; oil = "cold"',
    'pressure = "6 psi"; rpm = "idle"; oil = "hot"',
    'pressure = "30 psi"; rpm = "cruise"',
)


def test_vague_readings_enter_the_cause_graph_through_the_survey() -> None:
    answer = Diagnosis(BOOK, case_of(*WORN))
    assert answer.inference.survey is not None
    ranks = {r.cause.id: r.probability for r in answer.ranking}
    assert ranks["bearing_wear_mains"] > ranks["pickup_screen_blocked"]


def test_one_heat_or_an_unknown_heat_is_no_survey_for_the_graph() -> None:
    for readings in (WORN[:2], (*WORN[1:], 'pressure = "20 psi"; oil = "hot or cold"')):
        assert Diagnosis(BOOK, case_of(*readings)).inference.survey is None


def test_documents_show_readings_as_they_were_given() -> None:
    case = case_of(*WORN, 'pressure = "a third of the dial"; rpm = "1000 rpm"; coolant = "165 F"')
    says = [r.says for r in survey_document(survey(case, BOOK), case).readings]
    assert says[1] == "6 psi at hot idle (panel, gallery)"
    assert says[3] == "a third of the dial at 1000 rpm, coolant 165 F (panel, gallery)"
    rows = [report_reading(r, case) for r in case.readings]
    shown_ = [(r.rpm, r.heat, r.pressure) for r in rows]
    assert shown_[1] == ("idle", "hot", "6 psi")
    assert shown_[3] == ("1000", "coolant 165 F", "a third of the dial")


# ------------------------------------------------------------------------------ bounds


def with_bound(text: str) -> Survey:
    looks = [moment(m, vague=False) for m in MOMENTS[:2]]
    sound = [replace(r, pressure=shows(None, 0.0, r)) for r in looks]
    return survey(CASE, BOOK, [*sound, parse_reading(text).in_si()])


def test_a_bound_is_one_sided() -> None:
    """Under 25 psi at speed, right at idle, speaks for a starved pump; under 95 for nothing."""
    ceiling, empty = with_bound("under 25 psi cruise hot"), with_bound("under 95 psi cruise hot")
    assert ceiling.share("suction_throttled") > 2 * empty.share("suction_throttled")
    assert ceiling.share(HEALTHY) < empty.share(HEALTHY)
    assert with_bound("over 5 psi cruise hot").share("relief_holds_high") == pytest.approx(
        empty.share("relief_holds_high"), abs=0.1
    )
    idle = replace(looks := moment("hot idle", vague=False), pressure=shows(None, 0.0, looks))
    high = survey(CASE, BOOK, [idle, parse_reading("over 75 psi cruise hot").in_si()])
    assert high.share("relief_holds_high") > 3 * high.share(HEALTHY)


def test_a_report_of_any_speed_is_one_reading_that_counts_at_several() -> None:
    everywhere = with_bound("0.5 psi any speed hot")
    assert len(everywhere.readings) == 3
    assert sum(len(c.read) for c in everywhere.curves) == 5
    assert everywhere.share(HEALTHY) < 0.01


def test_bounds_alone_are_judged_too() -> None:
    bounds = [parse_reading(t).in_si() for t in ("under 9 psi hot idle", "over 55 psi cold")]
    got = survey(CASE, BOOK, bounds)
    assert sum(r.share for r in got.rows) == pytest.approx(1.0)
    assert got.share(HEALTHY) < max(r.share for r in got.rows)


# ------------------------------------------------------------------------------ what is known


def test_readings_in_figures_draw_nothing_more() -> None:
    """Speed and temperature errors are those of before, and later draws too."""
    looks = [moment(m, vague=False) for m in MOMENTS]
    one, other = np.random.default_rng(3), np.random.default_rng(3)
    off = warmer(8, [point_of(r, 0.0) for r in looks], one)
    got = apart(looks, off, one)
    assert got.faster == 0.0
    assert got.warmer is off
    warmer(8, [point_of(r, 0.0) for r in looks], other)
    assert one.standard_normal() == other.standard_normal()


def test_what_words_leave_open_is_drawn_about_their_middle() -> None:
    looks = [moment(m, vague=True) for m in MOMENTS]
    off = np.zeros((400, 3))
    got = apart(looks, off, np.random.default_rng(3))
    speed = np.asarray(got.faster)
    assert np.std(speed, axis=0) == pytest.approx([r.rpm_spread for r in looks], rel=0.15)
    assert np.std(got.warmer, axis=0) == pytest.approx([r.oil_spread for r in looks], rel=0.15)
    assert (speed + [r.rpm for r in looks] > 0).all()


def test_the_usual_pressure_is_a_pressure_of_the_sound_engine() -> None:
    bare, known = (
        survey(case_of(*WORN[:2], f'pressure = "30 psi"; rpm = "cruise"{more}'), BOOK)
        for more in ("", '; usual = "50 psi"')
    )
    assert known.calibrated
    assert not bare.calibrated
    high = survey(case_of(*WORN[:2], 'pressure = "30 psi"; rpm = "cruise"; usual = "31 psi"'), BOOK)
    [cruise] = [Point(2500.0, 361.15, 0.0)]
    assert np.median(shown(high.sound, [cruise])) < np.median(shown(known.sound, [cruise]))


BASELINE = '[[baseline]]\nno = 9\nrpm = "{}"\noil = "{}"\npressure = "{}"\n'


def test_a_baseline_in_words_has_a_wider_error() -> None:
    def error(rpm: str, oil: str, pressure: str) -> float:
        [point] = baseline_points(case_of(more=BASELINE.format(rpm, oil, pressure)))
        return point.error

    assert error("700 rpm", "92 C", "30 psi") == BASELINE_ERROR
    assert error("idle", "hot", "30 psi") > 1.2 * BASELINE_ERROR
    assert error("700 rpm", "92 C", "25 to 35 psi") == pytest.approx(
        (BASELINE_ERROR**2 + (10 * PSI) ** 2 / 12) ** 0.5
    )
    assert baseline_points(case_of(more=BASELINE.format("idle", "hot", "over 30 psi"))) == ()


def test_the_budget_takes_hot_idle_in_words_and_only_an_upper_bound() -> None:
    idle, cruise = points_of(case_of(*WORN))
    assert idle.read is not None
    assert idle.read.reading.said == "6 psi at hot idle"
    assert cruise.read is not None
    for pressure, rpm in (("over 6 psi", "idle"), ("6 psi", "any speed")):
        bound = f'pressure = "{pressure}"; rpm = "{rpm}"; oil = "hot"'
        assert [p.read for p in points_of(case_of(bound))] == [None, None]


def test_a_ceiling_at_one_speed_is_taken_as_a_pressure_near_it() -> None:
    """Who says "never above 20 psi at 3000 rpm" has seen nearly 20 there."""
    said = 'pressure = "{}"; rpm = "3000 rpm"; oil = "hot"'
    ceiling, exact = said.format("never above 20 psi"), said.format("20 psi")
    [reading] = case_of(ceiling).readings
    taken = as_if_read(reading.reading)
    assert 16 * PSI < taken.pressure < 20 * PSI
    assert not taken.at_most
    cruise = budget(case_of(ceiling)).accounts[1]
    assert cruise.point.read == reading
    assert cruise.shortfall is not None
    assert points_of(case_of(ceiling, exact))[1].read == case_of(ceiling, exact).readings[1]
    assert points_of(case_of(exact, ceiling))[1].read == case_of(exact, ceiling).readings[0]


def test_many_readings_are_weighed_spread_evenly(monkeypatch: pytest.MonkeyPatch) -> None:
    """A log of readings is thinned, from its first to its last, and the survey says so."""
    monkeypatch.setattr("diagnose.circuit.survey.ENGINES", 16)  # which engines does not matter
    looks = [replace(moment(MOMENTS[0], vague=False), rpm=600.0 + n) for n in range(450)]
    few = spread_evenly(tuple(looks))
    assert (len(few), few[0], few[-1]) == (MOST_WEIGHED, looks[0], looks[-1])
    gaps = {b.rpm - a.rpm for a, b in pairwise(few)}
    assert gaps == {4.0, 5.0}
    assert spread_evenly(few) == few
    monkeypatch.setattr("diagnose.circuit.survey_evidence.SAME_PRESSURE", 0.0)
    monkeypatch.setattr(spread_evenly, "__defaults__", (10,))  # a hundred take their time
    other = [replace(r, pressure=r.pressure + n) for n, r in enumerate(looks)]
    document = survey_document(survey(CASE, BOOK, other), CASE)
    assert len(document.readings) == 10
    assert "440 more are not weighed" in " ".join(survey_text(document).split())


def test_a_reading_given_again_counts_once() -> None:
    """Of one state, gauge and pressure: the last, which may say more; another gauge counts too."""
    first, other = moment(MOMENTS[0], vague=False), moment(MOMENTS[1], vague=False)
    again = replace(first, rpm=first.rpm + 5.0)
    assert usable([first, other, again]) == (other, again)
    direct = replace(first, gauge=Gauge.DIRECT)
    higher = replace(first, pressure=first.pressure + 5 * PSI)
    assert usable([first, direct, higher]) == (first, direct, higher)


@pytest.mark.parametrize(
    ("layout", "nearest"),
    [("skew_gear_four", False), ("unknown", False), ("skew_gear_six", True)],
)
def test_figures_of_another_layout_are_called_the_nearest(layout: str, nearest: bool) -> None:
    """A straight six has no circuit of its own; it is not called a four."""
    text = (
        f'schema = 1\n[engine]\nlayout = "{layout}"\n'
        '[[reading]]\nno = 1\nrpm = "700 rpm"\noil = "90 C"\npressure = "6 psi"\n'
    )
    case = from_text(text, None, BOOK)
    document = survey_document(survey(case, BOOK), case)
    assert document.circuit.startswith("the nearest in figures") is nearest
