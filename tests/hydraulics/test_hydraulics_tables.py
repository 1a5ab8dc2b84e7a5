"""The tables of the product are the printed ones, to the digit."""

from __future__ import annotations

import pytest

from diagnose.hydraulics import oil, raimondi_boyd
from diagnose.hydraulics.viscosity_index import reference_oils
from knowledge.stations.oil.grades import HOT_GRADES, SEIREG_DANDAGE, WINTER_GRADES, grade_named
from tests.support.published import PSI, Check, matching


@pytest.mark.parametrize("entry", matching("j300-*"), ids=lambda c: c.title)
def test_grades_are_as_printed(entry: Check) -> None:
    """SAE J300's limits, to the digit."""
    wanted, name = entry.expected, entry["grade"].split(" ")[0]
    if name.endswith("W"):
        winter = WINTER_GRADES[name]
        got = {
            "ccs_max_mPas": winter.cranking_most * 1e3,
            "ccs_T_C": winter.cranking_temperature - 273.15,
            "mrv_max_mPas": winter.pumping_most * 1e3,
            "mrv_T_C": winter.pumping_temperature - 273.15,
            "kv100_min_mm2s": winter.kv100_least * 1e6,
        }
    else:
        cans = entry["grade"].removeprefix(name).strip(" ()").split(", ")
        hot = HOT_GRADES[name]
        hths = {grade_named(can or name).hths_least for can in cans}
        assert len(hths) == 1
        got = {
            "kv100_min_mm2s": hot.kv100_least * 1e6,
            "kv100_max_mm2s": hot.kv100_most * 1e6,
            "hths150_min_mPas": hths.pop() * 1e3,
        }
    assert got == pytest.approx(wanted, rel=1e-9)


@pytest.mark.parametrize("entry", matching("seireg-*-constants"), ids=lambda c: c.title)
def test_straight_grades_are_as_printed(entry: Check) -> None:
    """Seireg and Dandage's constants, to the digit."""
    mu0, b = SEIREG_DANDAGE[entry["grade"].removeprefix("SAE ")]
    wanted = entry.expected
    assert (mu0 / PSI * 1e6, b) == pytest.approx((wanted["mu0_microreyn"], wanted["b_degF"]))


@pytest.mark.parametrize("entry", matching("d2270-LH-*"), ids=lambda c: c.title)
def test_reference_oils_meet_the_printed_table(entry: Check) -> None:
    """The quadratics against the table's own interpolated values; 0.02 % is their fit, not ours."""
    low, high = reference_oils(entry["kv100"])
    assert float(low if entry.id.endswith("L") else high) == pytest.approx(entry.expected, rel=4e-4)


ROWS = [c for c in matching("rb-LD*") if "S" in c.expected]


@pytest.mark.parametrize("entry", ROWS, ids=lambda c: c.title)
def test_raimondi_boyd_rows_are_as_printed(entry: Check) -> None:
    """At a row's own Sommerfeld number the row comes out, and its number from its eccentricity."""
    wanted, ratio = entry.expected, entry["L_over_D"]
    if ratio < float("inf"):
        runs = raimondi_boyd.performance(wanted["S"], ratio)
        got = (runs.eps, runs.friction, runs.flow, runs.side_share)
        printed = (entry["eps"], wanted["r_over_c_f"], wanted["Q_over_rcNl"], wanted["Qs_over_Q"])
        assert [float(x) for x in got] == pytest.approx(printed, rel=1e-9)
    assert float(raimondi_boyd.sommerfeld_at(entry["eps"], ratio)) == pytest.approx(wanted["S"])


def test_a_straight_grade_agrees_with_the_old_closed_form() -> None:
    """SAE 30 in the middle of its grade against Seireg and Dandage, hot, within a tenth."""
    mu = oil.dynamic_viscosity(oil.Oil.of_grade("30"), 373.15)
    assert float(mu) == pytest.approx(oil.straight_grade_viscosity(373.15, "30"), rel=0.1)
