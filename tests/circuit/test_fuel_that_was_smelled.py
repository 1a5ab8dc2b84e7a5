"""Fuel in the oil that was smelled counts in budget and forecast; kinds without a circuit say so."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from diagnose import budget, forecast, parse_case
from diagnose.case.case import Case
from diagnose.circuit.deviations import deviations
from tests.support.command_line import call

HEAD = 'schema = 1\n[job]\n[engine]\nlayout = "{}"\n[[reading]]\nno = 1\n'
READING = 'pressure = "0.5 bar"\nrpm = "850 rpm"\noil = "hot"\ngauge = "direct"\n'
SMELL = '[[finding]]\nno = 2\nwhat = "fuel_smell"\nstate = "{}"\n'


def text(state: str = "present", layout: str = "overhead_cam_four", more: str = "") -> str:
    return HEAD.format(layout) + READING + SMELL.format(state) + more


def found(case: Case) -> list[str]:
    return [d.id for d in deviations(case, 8, np.random.default_rng(1))]


def test_fuel_that_was_smelled_is_a_share_of_fuel() -> None:
    assert found(parse_case(text())) == ["fuel_share"]
    assert found(parse_case(text("absent"))) == []


@pytest.mark.parametrize("measured", [("fuel_share", "3 %"), ("viscosity_at_100c", "9 cSt")])
def test_a_measured_oil_goes_before_a_smell(measured: tuple[str, str]) -> None:
    what, value = measured
    more = f'[[finding]]\nno = 3\nwhat = "{what}"\nvalue = "{value}"\n'
    assert found(parse_case(text(more=more))) == [what]


def test_the_fuel_of_a_diesel_thins_less_than_petrol() -> None:
    def viscosity(layout: str) -> float:
        engine = forecast(parse_case(text(layout=layout))).state.found[0]
        sound = forecast(parse_case(text(layout=layout))).sound
        thinned = engine.make(sound, np.zeros_like(engine.score))
        return float(np.mean(np.asarray(thinned.oil.kv100) / np.asarray(sound.oil.kv100)))

    assert viscosity("overhead_cam_four") < viscosity("tractor_diesel") < 1.0


def test_the_budget_has_a_share_for_it() -> None:
    account = budget(parse_case(text())).accounts[0]
    assert account.shares[0].mean > 5e3
    assert account.explained.mean == pytest.approx(account.shares[0].mean)


def test_fresh_oil_is_named_with_what_it_gives(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(text(), "utf-8")
    out = " ".join(call("forecast", path).out.split())
    assert "the oil smells of petrol or diesel fuel (assumed) 2.5 % to 20 %" in out
    assert "oil: " in out.split("Smallest repairs")[1]
    assert "fresh oil" in out
    path.write_text(text("absent"), "utf-8")
    assert "put right in any case" not in call("forecast", path).out


@pytest.mark.parametrize("command", ["budget", "forecast", "sizing"])
def test_a_kind_without_a_circuit_says_what_can_be_done(command: str, tmp_path: Path) -> None:
    path = tmp_path / "twin.toml"
    path.write_text(text("absent", "dry_sump_motorcycle"), "utf-8")
    done = call(command, path)
    assert done.code == 2
    assert done.err.startswith("not computed: ")
    assert "diagnose card" in done.err
    assert "distributor_v8" not in done.err
