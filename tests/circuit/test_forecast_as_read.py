"""The forecast starts from what the gauge shows, or says that the model does not fit."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest

from diagnose.case.loading import from_text, load
from diagnose.circuit.as_read import FITS
from diagnose.circuit.budget import budget
from diagnose.circuit.condition_effects import FAULTS
from diagnose.circuit.engine_model import Point, healthy, shown
from diagnose.circuit.forecast import forecast, without_readings
from diagnose.circuit.operating_points import hot_of, latest_readings
from diagnose.circuit.unlisted_loss import KINDS
from diagnose.entry.requests import parse_fixes
from diagnose.hydraulics.circuit import solve
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.text.forecast_brief import forecast_brief
from diagnose.output.text.plot import plot_lines
from diagnose.signoff.start import first_start
from knowledge.units import PSI
from tests.support.circuits import BOOK, KNOWN_GOOD, WORN, a_case, saved, text
from tests.support.command_line import call
from tests.support.complaints import CASES
from tests.support.examples import one_in

AT = ((700, 95), (1500, 95), (3000, 95))


def reads(condition: str, severity: float) -> tuple[str, ...]:
    """What the sample engine shows with a condition, as readings."""
    engine = FAULTS[condition].apply(healthy(a_case()), severity)
    points = [Point(n, t + 273.15, 0.0) for n, t in AT]
    every = zip(AT, shown(engine, points) / PSI, strict=True)
    return tuple(f"{n} rpm, {t} C, {p:.0f} psi" for (n, t), p in every)


@pytest.mark.parametrize(
    "condition",
    one_in(2, ["clearances_wide", "oil_thin", "pump_slip", "relief_bleeds", "relief_caps_low",
     "open_leak_inside", "delivery_reduced", "suction_throttled"]),
)  # fmt: skip
def test_before_is_what_the_gauge_reads_whatever_is_wrong(condition: str) -> None:
    """Nothing was found, yet the table starts from the readings, with a loss nobody has found."""
    readings = reads(condition, 0.5)
    each = forecast(a_case(readings=readings), [], engines=24)
    assert each.fits
    assert each.unlisted is not None
    for fit in each.state.readings:
        before = float(np.mean(each.hot_pressure(each.before, fit.read.reading.rpm)))
        assert abs(before - fit.read.reading.pressure) <= FITS * fit.error
        assert fit.read.reading.rpm in each.speeds


@pytest.mark.parametrize("name", one_in(4, [p.stem for p in sorted(CASES.glob("*.toml"))]))
def test_every_case_starts_from_its_readings_or_says_that_it_cannot(name: str) -> None:
    case = load(CASES / f"{name}.toml", BOOK)
    document = forecast_document(forecast(case, [], engines=24))
    assert document.fits == all(r.fits for r in document.readings)
    if document.fits:
        assert document.speeds
        for row in document.readings:
            assert abs(row.before.mean - row.read) <= FITS * row.error
    else:
        assert document.speeds == ()
        assert document.targets == ()
        assert document.misfit is not None
        assert len(document.misfit.readings) == sum(not r.fits for r in document.readings)


def test_readings_no_engine_shows_give_no_figures(tmp_path: Path) -> None:
    """Which reading, by how much, what could explain it; and no table."""
    impossible = ("700 rpm, 95 C, 40 psi", "1500 rpm, 95 C, 8 psi", "3000 rpm, 95 C, 62 psi")
    path = saved(tmp_path, text(WORN, impossible, KNOWN_GOOD))
    data = json.loads(call("forecast", path, "--fix", "mains", "--json").out)
    assert data["fits"] is False
    assert data["speeds"] == data["targets"] == data["warnings"] == []
    assert [r["fits"] for r in data["readings"]].count(False) == len(data["misfit"]["readings"])


def test_the_misfit_in_words() -> None:
    impossible = ("700 rpm, 95 C, 40 psi", "1500 rpm, 95 C, 8 psi", "3000 rpm, 95 C, 62 psi")
    each = forecast(a_case(WORN, impossible), [], engines=16)
    out = " ".join(forecast_brief(forecast_document(each)).split())
    assert "The model does not fit these readings" in out
    assert "1500 rpm" in out
    assert "too much" in out
    assert "the gauge read 8 psi" in out
    assert "Next:" in out


def test_a_misfit_still_says_what_the_repair_does_by_the_model_alone() -> None:
    """With what was measured, whatever the gauge read: the pressure now and after it."""
    wide, mains = {"main_clearance": "0.006 in"}, parse_fixes(["mains=0.0025 in"], a_case())
    reads_high = ("700 rpm, 95 C, 60 psi", "2500 rpm, 95 C, 80 psi")
    each = forecast(a_case(wide, reads_high), [], engines=16, plans=mains)
    other = forecast(a_case(wide, ("700 rpm, 95 C, 70 psi",)), [], engines=16, plans=mains)
    assert not each.fits
    alone, again = without_readings(each), without_readings(other)
    idle = [
        float(np.mean(a.hot_pressure(p, 700.0)))
        for a in (alone, again)
        for p in (a.before, a.after)
    ]
    assert idle[:2] == pytest.approx(idle[2:]), "the gauge has no part in it"
    assert idle[1] > 1.5 * idle[0]
    document = forecast_document(each)
    assert document.misfit is not None
    heading, *rows = document.misfit.by_model
    assert "not by this gauge" in heading
    assert [r.partition(" rpm")[0] for r in rows] == [f"{t.rpm:.0f}" for t in each.targets]
    assert all(", repaired " in r and ", wanted " in r for r in rows)
    assert rows[0] in " ".join(forecast_brief(document).split())


def test_a_gauge_that_reads_high_is_named_as_what_could_explain_it() -> None:
    """Measured clearances that pass more oil than the pressure allows: the gauge, or thick oil."""
    wide = {"main_clearance": "0.006 in", "rod_clearance": "0.006 in"}
    document = forecast_document(
        forecast(a_case(wide, ("700 rpm, 95 C, 60 psi", "2500 rpm, 95 C, 80 psi")), [])
    )
    assert document.misfit is not None
    assert "gauge_reads_high" in {c.id for c in document.misfit.could_be}
    assert "reading_false" not in {c.id for c in document.misfit.could_be}


@pytest.mark.parametrize(
    ("readings", "baseline", "hot"),
    [
        (("700 rpm, 84 C, 20 psi",), KNOWN_GOOD, 84),
        (("2500 rpm, 101 C, 40 psi",), KNOWN_GOOD, 101),
        ((), KNOWN_GOOD, 95),
        ((), (), 90),
        (("700 rpm, 20 C, 60 psi",), (), 90),
    ],
)
def test_one_hot_idle_for_budget_forecast_and_sign_off(
    readings: tuple[str, ...], baseline: tuple[str, ...], hot: float
) -> None:
    case = a_case(WORN, readings, baseline)
    kelvin = pytest.approx(hot + 273.15)
    assert hot_of(case) == kelvin
    assert budget(case, engines=4).accounts[0].point.temperature == kelvin
    assert forecast(case, [], engines=8).hot_temperature == kelvin
    assert max(e.temperature for e in first_start(case, BOOK).expected) == kelvin


def test_a_later_look_takes_the_place_of_an_earlier_one() -> None:
    """The log of three weeks ago is not what the gauge shows now."""
    case = load(CASES / "dunlin.toml", BOOK)
    assert [r.entry.no for r in latest_readings(case)] == [3, 4]


def test_wide_clearances_alone_do_not_throttle_the_suction() -> None:
    """No loss on the suction side leaves the screen open, so pressure holds as the speed rises."""
    case = a_case(readings=reads("clearances_wide", 0.7))
    state = forecast(case, [], engines=24).state
    alone = state.engine(closed=[kind for kind in KINDS if kind != "weep"])
    assert np.all(np.asarray(alone.screen_open_share) == 1.0)
    cold, hot = (
        np.asarray(solve(alone, np.array([700.0, 2500.0]), heat).gallery_pressure).mean(0)
        for heat in (293.15, 365.15)
    )
    assert cold[1] > cold[0]
    assert hot[1] > hot[0]


def test_the_table_ends_a_little_above_the_speeds_read_or_wanted() -> None:
    slow = forecast(a_case(readings=("700 rpm, 95 C, 9 psi", "1800 rpm, 95 C, 26 psi")), [])
    fast = forecast(a_case(readings=("700 rpm, 95 C, 9 psi", "5500 rpm, 95 C, 40 psi")), [])
    assert max(slow.speeds) < 4000 < 5000 < max(fast.speeds)


def test_a_loss_not_found_is_to_be_found_and_is_no_repair() -> None:
    case = a_case(readings=("700 rpm, 95 C, 5 psi", "2500 rpm, 95 C, 14 psi"))
    document = forecast_document(forecast(case, [], engines=24))
    [loss] = [r for t in document.targets[:1] for r in t.enough if r.fixes == ("leak",)]
    assert loss.says.startswith("find what takes the pressure")
    assert "100 %" not in forecast_brief(document)


TRACTOR = """schema = 1
[engine]
layout = "tractor_diesel"
oil = "15W-40"
[[reading]]
no = 1
rpm = "700 rpm"
oil = "80 C"
pressure = "{idle}"
gauge = "direct"
[[reading]]
no = 2
rpm = "1800 rpm"
oil = "82 C"
pressure = "2.4 bar"
gauge = "direct"
[[reading]]
no = 3
rpm = "800 rpm"
oil = "15 C"
pressure = "3.8 bar"
[[finding]]
no = 4
what = "main_clearance"
value = "0.14 mm"
"""


@pytest.mark.parametrize(("idle", "doubt"), [("0.6 bar", True), ("0.9 bar", False)])
def test_no_repair_is_called_needless_where_the_gauge_itself_reads_too_little(
    idle: str, doubt: bool
) -> None:
    """The engines meet it within the gauge's error; the gauge does not."""
    found = forecast(from_text(TRACTOR.format(idle=idle), None, BOOK), [])
    target = found.targets[0]
    assert target.pressure > 0.65e5
    assert found.fits
    assert found.chance(target, found.before) >= 0.9
    says = " ".join(forecast_brief(forecast_document(found)).split())
    assert ("No repair is needed for 0.7 bar at 700 rpm" in says) is not doubt
    assert ("too near to say. The gauge reads 0.6 bar there" in says) is doubt


def test_what_the_gauge_denies_is_no_share_of_engines_and_is_drawn() -> None:
    """The model stays above the limit within the gauge's error; the gauge itself does not."""
    document = forecast_document(
        forecast(from_text(TRACTOR.format(idle="0.6 bar"), None, BOOK), [])
    )
    idle, fast = document.targets
    assert idle.met_now == "the gauge reads 0.6 bar there"
    assert fast.met_now.endswith("%")
    assert document.plot is not None
    assert 0.6 in [round(y, 2) for _, y in document.plot.gauge]
    assert "X read on the gauge" in "\n".join(plot_lines(document.plot))
