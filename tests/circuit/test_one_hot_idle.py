"""The hot idle of every command is the speed a person read; each figure says of which engine it is."""

from __future__ import annotations

from pathlib import Path

import pytest

from diagnose import budget, forecast, load_case, parse_case
from diagnose.case.case import Case
from diagnose.circuit.forecast import speeds_of
from diagnose.circuit.operating_points import points_of
from diagnose.circuit.sizing import sizing
from diagnose.circuit.worth_reading import within_reach
from diagnose.output.documents.forecast import forecast_document
from diagnose.signoff.start import first_start
from knowledge.book import the_book
from knowledge.pressure.quantities import USUAL_IDLE_SPEED
from tests.support.command_line import call

MAINS = '[[finding]]\nno = 90\nwhat = "main_clearance"\nvalue = "6 thou"\n'


def job(*readings: str, layout: str = "tractor_diesel", more: str = "") -> str:
    """A case; each reading ``rpm; pressure; oil``."""
    text = f'schema = 1\n[job]\n[engine]\nlayout = "{layout}"\n{more}'
    for number, reading in enumerate(readings, 1):
        rpm, pressure, oil = (part.strip() for part in reading.split(";"))
        text += f'[[reading]]\nno = {number}\npressure = "{pressure}"\n'
        text += f'rpm = "{rpm}"\n' if rpm else ""
        text += f'oil = "{oil}"\n' if oil else ""
    return text


def case(*readings: str, layout: str = "tractor_diesel", more: str = "") -> Case:
    return parse_case(job(*readings, layout=layout, more=more))


@pytest.mark.parametrize(
    ("readings", "idle"),
    [
        (["750 rpm; 8 psi; hot", "1800 rpm; 25 psi; hot", "idle; 8 psi; hot"], 750.0),
        (["850 rpm; 0.5 bar; hot"], 850.0),
        (["1800 rpm; 25 psi; hot"], USUAL_IDLE_SPEED.typical),
        (["idle; 8 psi; hot"], USUAL_IDLE_SPEED.typical),
        (["200 rpm; 8 psi; hot"], USUAL_IDLE_SPEED.typical),
        (["500 rpm; 6 psi; hot", "2000 rpm; 22 psi; hot"], 500.0),
        (["900 rpm; 9 psi; hot", "650 rpm; 8 psi; hot"], 650.0),
    ],
)
def test_idle_is_the_speed_at_which_it_was_read(readings: list[str], idle: float) -> None:
    found = case(*readings)
    assert found.idle_speed == idle
    assert points_of(found)[0].rpm == pytest.approx(idle)
    assert idle in speeds_of(found)


def test_the_idle_speed_that_the_job_states_goes_first() -> None:
    stated = '[engine.limits]\nidle_speed = "600 rpm"\n'
    found = case("750 rpm; 8 psi; hot", "idle; 8 psi; hot", more=stated)
    assert found.idle_speed == 600.0
    assert found.readings[1].reading.rpm == 600.0


def test_a_word_for_idle_means_the_speed_that_was_counted() -> None:
    assert case("750 rpm; 8 psi; hot", "idle; 8 psi; hot").readings[1].reading.rpm == 750.0


def test_a_trusted_reading_at_idle_is_in_the_budget() -> None:
    found = budget(case("850 rpm; 0.5 bar; hot", layout="overhead_cam_four"))
    assert found.accounts[0].shortfall is not None


def test_no_speed_is_shown_that_nobody_gave() -> None:
    unclear = case("; 8 psi; ", layout="distributor_v8")
    assert unclear.readings[0].reading.rpm not in speeds_of(unclear)


def test_a_generator_set_is_read_at_its_own_speed_only() -> None:
    found = case("1500 rpm; 1.5 bar; hot", layout="generator_diesel")
    predicted = forecast(found)
    assert max(predicted.speeds) == 1500.0
    assert {t.rpm for t in predicted.targets} == {1500.0}
    assert sizing(found, engines=12).speed == 1500.0
    assert {p.rpm for p in within_reach(found, predicted.state).now} == {1500.0}
    tractor = case("1500 rpm; 1.5 bar; hot")
    assert max(p.rpm for p in within_reach(tractor, forecast(tractor).state).now) > 1500.0


def test_a_generator_set_is_to_show_again_what_it_showed_when_sound() -> None:
    """2.3 bar for 4.0 is the complaint; 0.7 bar at an idle it never runs at is met and no aim."""
    baseline = '[[baseline]]\nno = 90\nrpm = "1500 rpm"\noil = "95 C"\npressure = "4 bar"\n'
    found = case("1500 rpm; 2.3 bar; 95 C", layout="generator_diesel", more=baseline)
    (target,) = forecast(found).targets
    assert target.rpm == 1500.0
    assert target.pressure == pytest.approx(3.6e5)


def test_each_figure_of_hot_idle_says_of_which_engine_it_is(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(job("750 rpm; 12 psi; hot") + MAINS, "utf-8")
    shown = {
        command: call(*command.split()[:1], path, *command.split()[1:]).out
        for command in ("sizing", "bearings", "forecast --fix mains", "signoff --start")
    }
    for out in shown.values():
        assert "750 rpm" in out
    assert "bearings and pump stay as they are" in shown["sizing"]
    assert "and nothing else put right" in " ".join(shown["bearings"].split())
    assert "all else as it was found" in shown["forecast --fix mains"]
    assert "with all faults put right" in shown["signoff --start"]
    assert load_case(path).idle_speed == 750.0


def test_the_thinnest_oil_says_how_sure_it_is(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(job("750 rpm; 12 psi; hot") + MAINS, "utf-8")
    assert "in nine engines of ten:" in " ".join(call("sizing", path).out.split())


def test_idle_without_a_figure_is_the_idle_of_its_kind() -> None:
    """A petrol tractor idles at 475 rpm where most engines idle at 700: "at hot idle" is there."""
    case = parse_case(
        'schema = 1\n[engine]\nlayout = "skew_gear_six"\n'
        '[[finding]]\nno = 1\nwhat = "in_a_tractor"\nstate = "present"\n'
        '[[finding]]\nno = 2\nwhat = "diesel"\nstate = "absent"\n'
        '[[reading]]\nno = 3\npressure = "4 psi"\noil = "hot"\nrpm = "idle"\n'
    )
    idle = points_of(case)[0]
    assert case.idle_speed == 475.0
    assert idle.read is not None
    assert idle.rpm == 475.0


def test_all_put_right_is_predicted_at_the_speed_that_is_named(tmp_path: Path) -> None:
    """Forecast and first start give one figure for the lowest speed, also where idle is faster."""
    stated = '[engine.limits]\nidle_speed = "700 rpm"\n'
    found = case("500 rpm; 9 psi; 85 C", "2000 rpm; 30 psi; 85 C", more=stated + MAINS)
    document = forecast_document(forecast(found, fixes=["mains"]))
    start = first_start(found, the_book())
    mean = float(start.pressures(document.speeds[0].rpm, 358.15).mean())
    assert document.all_right is not None
    assert document.all_right.mean == pytest.approx(mean, rel=0.02)
