"""What was entered in Fahrenheit, bar or thousandths comes back so; bare figures take the unit."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.case.loading import load
from diagnose.case.units import JobUnits, units_of
from diagnose.entry.bare_figures import NO_UNITS, with_unit
from diagnose.entry.numbers import SLOTS, parse_numbers
from knowledge.book import the_book
from knowledge.units import DIMENSIONS, PRESSURE, TEMPERATURE, parse
from tests.support.command_line import call
from tests.support.examples import examples

BOOK = the_book()
CLEARANCE = BOOK.measures["main_clearance"]
JOB = """schema = 1
[job]
title = "Guillemot, workboat"
[engine]
layout = "distributor_v8"
oil = "20W-50"
[[reading]]
no = 1
rpm = "650 rpm"
oil = "195 F"
pressure = "0.6 bar"
[[reading]]
no = 2
rpm = "2000 rpm"
oil = "200 F"
pressure = "2.1 bar"
"""


@pytest.fixture
def job(tmp_path: Path) -> Path:
    path = tmp_path / "guillemot.toml"
    path.write_text(JOB, "utf-8")
    return path


@pytest.mark.parametrize(
    "words",
    [
        ("budget",),
        ("survey",),
        ("forecast",),
        ("forecast", "--at", "1200 rpm 203 F"),
        ("signoff", "--start"),
    ],
    ids=" ".join,
)
def test_fahrenheit_and_bar_come_back(job: Path, words: tuple[str, ...]) -> None:
    done = call(words[0], job, *words[1:])
    assert done.code == 0, done.err
    assert " F" in done.out or words == ("budget",)  # which names no temperature
    assert " bar" in done.out
    assert not re.search(r"\d C\b", done.out.replace("cSt at 100 C", ""))
    assert " psi" not in done.out.replace("10 psi per 1000 rpm", "")  # the rule's own words


@pytest.mark.parametrize(
    ("typed", "units", "meant"),
    [
        ("0.0045", {}, "0.0045 in"),
        ("0.0045", {"length": "mm"}, "0.0045 in"),  # nobody reads 4.5 microns
        (".003", {"length": "mm"}, ".003 in"),
        ("0.11", {"length": "mm"}, "0.11 mm"),
        ("4.5", {"length": "thou"}, "4.5 thou"),
        ("4.5", {}, "4.5 thou"),  # 4.5 mm and 4.5 in are no clearances
        ("4.5", {"length": "mm"}, "4.5 thou"),
        ("0.05", {}, "0.05"),  # 2 thou or 50: refused by the parser
        ("0.1 mm", {"length": "in"}, "0.1 mm"),
        ("yes", {"length": "in"}, "yes"),
    ],
)
def test_a_bare_clearance(typed: str, units: dict[str, str], meant: str) -> None:
    assert with_unit(typed, CLEARANCE, JobUnits(units)) == meant


def test_a_bare_torque_takes_the_unit_of_the_job() -> None:
    task = next(t for t in BOOK.tasks.values() if t.dimension == "torque")
    assert with_unit("65", task, JobUnits({"torque": "lb ft"})) == "65 lb ft"
    assert with_unit("65", task, NO_UNITS) == "65"


@settings(max_examples=examples(200))
@given(figure=st.decimals(0, 5000, places=3), unit=st.sampled_from(["psi", "bar", "kPa"]))
def test_a_bare_figure_never_leaves_what_is_possible(figure: object, unit: str) -> None:
    """Whatever unit is taken, the figure is in it plausible; else the text stays as it was."""
    for measure in [m for m in BOOK.measures.values() if m.dimension == "pressure"]:
        text = with_unit(str(figure), measure, JobUnits({"pressure": unit}))
        if text != str(figure):
            low, high = measure.plausible
            assert low <= parse(text, PRESSURE) <= high


def test_record_takes_the_unit_and_says_so(job: Path) -> None:
    assert call("record", job, "main_clearance=0.08 mm").code == 0
    done = call("record", job, "rod_clearance=0.06")
    assert "rod_clearance: 0.06 mm (no unit typed: taken as this)" in done.out
    assert units_of(load(job, BOOK)).names == {
        "length": "mm",
        "pressure": "bar",
        "temperature": "F",
    }


def test_pressures_asked_for_are_in_the_unit_of_the_job() -> None:
    found = parse_numbers("0.5 2.5 4", SLOTS, "bar")
    assert found is not None
    assert [r.pressure for r in found.given] == ["0.5 bar", "2.5 bar", "4 bar"]


def test_every_dimension_shows_its_unit_as_written() -> None:
    for dimension in DIMENSIONS.values():
        for unit in dimension.units:
            name = unit.names[0]
            shown = JobUnits({dimension.id: name}).show(
                1000 * unit.factor + unit.offset, dimension, 6
            )
            assert shown.casefold() == f"1000 {name}".strip().casefold()
    assert NO_UNITS.show(368.15, TEMPERATURE) == "95 C"
