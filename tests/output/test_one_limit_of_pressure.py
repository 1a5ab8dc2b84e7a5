"""One pressure has one limit, whichever command says it."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose import forecast, load_case
from knowledge.pressure.quantities import HOT_IDLE_PRESSURE, STOP_RUNNING_PRESSURE
from knowledge.reassembly.first_start import PRESSURE_AT_HOT_IDLE, PRESSURE_HOT_AT_2000
from knowledge.units import PSI
from tests.support.command_line import call

DIESELS = ("tractor_diesel", "inline_six_diesel", "generator_diesel")


def job(folder: Path, layout: str) -> Path:
    path = folder / "job.toml"
    path.write_text(
        f'schema = 1\n[job]\n[engine]\nlayout = "{layout}"\n[[reading]]\nno = 1\n'
        'pressure = "40 psi"\nrpm = "2200 rpm"\noil = "hot"\n',
        "utf-8",
    )
    return path


@pytest.mark.parametrize("layout", [*DIESELS, "distributor_v8"])
def test_sign_off_and_the_limits_of_readings_are_the_same(layout: str, tmp_path: Path) -> None:
    case = load_case(job(tmp_path, layout))
    for task, limit in (
        (PRESSURE_AT_HOT_IDLE, HOT_IDLE_PRESSURE),
        (PRESSURE_HOT_AT_2000, STOP_RUNNING_PRESSURE),
    ):
        for psi in (2.0, 8.0, 15.0, 25.0, 35.0):
            bands = [b for b in task.bands if b.fits(case.has)]
            decides = next((b for b in bands if b.only_with), bands[0])
            fits = decides.low is not None and psi * PSI >= decides.low
            assert fits is (psi * PSI >= case.limit(limit)), (task.id, psi)


@pytest.mark.parametrize("layout", DIESELS)
def test_a_diesel_at_speed_has_one_limit(layout: str, tmp_path: Path) -> None:
    path = job(tmp_path, layout)
    low = call("record", path, "25 psi at 2200 rpm hot").out
    assert "under the limit of 29 psi" in low
    assert low.count("STOP THE ENGINE") == 1
    assert "limit 29 psi" in low
    case = load_case(path)
    running = forecast(case).targets[-1].pressure
    assert running == pytest.approx(case.limit(STOP_RUNNING_PRESSURE), rel=0.01)


def test_a_diesel_below_2000_rpm_is_stopped_by_the_same_figure(tmp_path: Path) -> None:
    out = call("record", job(tmp_path, "tractor_diesel"), "25 psi at 1800 rpm hot").out
    assert out.count("STOP THE ENGINE") == 1
    assert "limit 29 psi" in out


def test_no_tractors_figure_stands_beside_a_marine_six(tmp_path: Path) -> None:
    path = job(tmp_path, "inline_six_diesel")
    assert "tractor diesel" not in call("record", path, "22 psi at hot idle").out
    assert (
        "small tractor diesel"
        in call("record", job(tmp_path, "tractor_diesel"), "22 psi at hot idle").out
    )
