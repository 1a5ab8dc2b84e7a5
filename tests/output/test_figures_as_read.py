"""Figures are shown in the units of the job, and no finer than they can be read."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from diagnose import forecast, parse_case
from diagnose.case.units import units_of
from knowledge.units import LENGTH
from tests.support.command_line import call
from tests.support.complaints import path_of

TRACTOR = """schema = 1
[job]
[engine]
layout = "tractor_diesel"
[[reading]]
no = 1
pressure = "{}"
rpm = "750 rpm"
oil = "hot"
[[finding]]
no = 2
what = "{}"
value = "{}"
"""


def job(
    folder: Path, pressure: str = "12 psi", what: str = "main_clearance", value: str = "7 thou"
) -> Path:
    path = folder / "job.toml"
    path.write_text(TRACTOR.format(pressure, what, value), "utf-8")
    return path


@pytest.mark.parametrize(
    ("pressure", "right", "wrong"),
    [
        ("12 psi", ("lb-ft", "lbf", " in plunger"), ("N·m", "mm")),
        ("0.8 bar", ("N·m", " N on a ", "mm plunger"), ("lb-ft", "lbf", " in plunger")),
    ],
)
def test_torque_force_and_length_go_with_the_pressure(
    pressure: str, right: tuple[str, ...], wrong: tuple[str, ...], tmp_path: Path
) -> None:
    path = tmp_path / "job.toml"
    path.write_text(TRACTOR.format(pressure, "x", "").split("[[finding]]")[0], "utf-8")
    out = call("sizing", path).out
    choices = out[out.index("Change") : out.index("\nOil")]
    assert all(r in choices for r in right), choices
    assert not any(w in choices for w in wrong), choices


def test_a_unit_that_was_only_shown_is_no_unit_of_the_job() -> None:
    """A bare figure is read as before; only what is shown goes with the pressures."""
    units = units_of(parse_case(TRACTOR.format("12 psi", "x", "").split("[[finding]]")[0]))
    assert units.of(LENGTH) is None
    assert units.shown_in(LENGTH) == "in"


@pytest.mark.parametrize(
    ("value", "says"),
    [
        ("8 thou", "over the limit of 5.9 thou by 2.1 ("),
        ("0.006 in", "over the limit of 0.0059 in by 0.0001 ("),
        ("0.2 mm", "over the limit of 0.15 mm by 0.05 ("),
        ("0.1501 mm", "over the limit of 0.15 mm by less than 0.001 ("),
    ],
)
def test_a_verdict_is_no_finer_than_a_workshop_reads(value: str, says: str, tmp_path: Path) -> None:
    out = call("record", job(tmp_path), f"main 2 clearance {value}").out
    assert says in " ".join(out.split())


def test_many_minutes_are_hours(tmp_path: Path) -> None:
    path = job(tmp_path, pressure="9 psi", value="9 thou")
    out = " ".join(call("forecast", path).out.split())
    assert "mains:" in out
    assert " h: main bearing clearance" in out
    assert not re.search(r"\d{3,} min", out)


def test_what_was_measured_keeps_its_name() -> None:
    found = forecast(parse_case(TRACTOR.format("12 psi", "rotor_tip_clearance", "0.006 in"))).found
    assert [d.says for d in found] == ["clearance between the rotor tips"]


def test_the_switch_point_is_said_in_both_units(tmp_path: Path) -> None:
    path = tmp_path / "lamp.toml"
    path.write_text('schema = 1\n[job]\n[engine]\nlayout = "distributor_v8"\n', "utf-8")
    out = call("record", path, "lamp_comes_on=yes").out
    assert "4.5 to 7 psi (0.3 to 0.5 bar)" in " ".join(out.split())


def test_the_plans_mean_is_no_time_of_its_table() -> None:
    out = " ".join(call("teardown", path_of("heron")).out.split())
    assert "on average after" in out
    assert "as you stop then" in out
