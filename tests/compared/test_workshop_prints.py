"""Pump flows and oil pressures that workshop texts print, row by row against pump and circuit.

What a text prints is a least for an engine that may stay in service, so a sound engine shows it or
more. No text prints a cold pressure; cold is compared in ``test_cold_pressure``.
"""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from diagnose.circuit.calibration import RELIEF_OF_A_KIND
from diagnose.circuit.engine_model import TEMPERATURE_ERROR, Point, engine_of, shown
from diagnose.circuit.plausible_engines import UNCERTAIN, drawn, varied
from diagnose.hydraulics.engine import Engine
from diagnose.hydraulics.network import network_of
from diagnose.hydraulics.oil import Oil
from diagnose.hydraulics.pump import displacement_gerotor
from diagnose.hydraulics.ranges import FloatArray
from knowledge.book import the_book
from knowledge.units import MM

PRINTS = tomllib.loads(
    (Path(__file__).parents[1] / "data" / "workshop_prints.toml").read_text("utf-8")
)
PROFILES = the_book().profiles
PUMPS: list[dict[str, Any]] = PRINTS["pump"]
PRESSURES: list[dict[str, Any]] = PRINTS["pressure"]
LITRE_MINUTE = 1e-3 / 60
ENGINES, SEED = 400, 11
#: °C of "warm", rpm of "rated", their spreads, and the spread of an idle speed (judgement)
WARM, WARM_SPREAD = 85.0, 8.0
RATED, RATED_SPREAD, IDLE_SPREAD = 2300.0, 150.0, 50.0
WALL = 5 * MM  #: of an outer rotor outside its tooth spaces (judgement)
USUAL_GAPS = {"tip": [0.04, 0.14], "end": [0.02, 0.07]}  #: where none are printed: the first pump's
USUAL_OIL = "5W-30"  #: where none is printed
FLOWS = [(pump, flow) for pump in PUMPS for flow in pump["flow"]]


def _rotors(pump: dict[str, Any]) -> float:
    """Displacement of the printed rotors [m3/rev].

    Full cycloids: one tooth fewer inside, e = root radius / (inner teeth + 2).
    """
    inner, outer = pump["teeth"]
    assert outer == inner + 1
    e = (pump["diameter"] * MM / 2 - WALL) / (inner + 2)
    return float(displacement_gerotor(2 * e * (inner + 1), e, pump["thickness"] * MM))


def _with_pump(pump: dict[str, Any], displacement: float) -> Engine:
    """The circuit whose pump has the printed rotors and gaps, and this displacement [m3/rev]."""
    gaps = pump.get("gaps", USUAL_GAPS)
    figures = {name: value for name, (value, _) in PROFILES["crank_nose_four"].numbers.items()}
    figures |= {
        "pump_displacement": displacement,
        "pump_gear_diameter": pump["diameter"] * MM,
        "pump_gear_length": pump["thickness"] * MM,
        "pump_side_clearance": sum(gaps["tip"]) / 2 * MM,
        "pump_end_clearance": sum(gaps["end"]) / 2 * MM,
    }
    return engine_of(figures, Oil.of_grade(pump.get("oil", USUAL_OIL)))


def _delivers(pump: dict[str, Any], flow: dict[str, Any], displacement: float) -> float:
    """Displacement less slip at the printed speed, heat and pressure [l/min]."""
    engine = _with_pump(pump, displacement)
    net = network_of(engine, np.array(float(flow["rpm"])), np.array(flow["oil_c"] + 273.15))
    return float(net.theoretical - net.slip * flow["kpa"] * 1e3) / LITRE_MINUTE


def _name(pump: dict[str, Any], flow: dict[str, Any]) -> str:
    return f"{pump['id']} at {flow['rpm']}"


@pytest.mark.parametrize(
    ("pump", "flow"),
    [
        pytest.param(
            pump,
            flow,
            id=_name(pump, flow),
            marks=[pytest.mark.xfail(reason=pump["no_model"], strict=True)]
            if "no_model" in pump
            else [],
        )
        for pump, flow in FLOWS
    ],
)
def test_printed_rotors_deliver_the_printed_least_and_not_half_as_much_again(
    pump: dict[str, Any], flow: dict[str, Any]
) -> None:
    """From the rotors' size alone: the print is 65 to 100 % of what the model delivers."""
    delivered = _delivers(pump, flow, _rotors(pump))
    assert 0.65 * delivered <= flow["least"] <= delivered


@pytest.mark.parametrize(
    "pump", [p for p in PUMPS if "no_model" not in p], ids=lambda pump: str(pump["id"])
)
def test_the_flow_at_speed_predicts_the_flow_at_idle(pump: dict[str, Any]) -> None:
    """Displacement from the fast row and slip through the printed gaps: idle within 25 %."""
    slow, fast = pump["flow"]
    slip = _rotors(pump) * fast["rpm"] / 60 / LITRE_MINUTE - _delivers(pump, fast, _rotors(pump))
    displacement = (fast["least"] + slip) * LITRE_MINUTE / (fast["rpm"] / 60)
    assert _delivers(pump, fast, displacement) == pytest.approx(fast["least"], rel=1e-6)
    assert _delivers(pump, slow, displacement) == pytest.approx(slow["least"], rel=0.25)


def _plausible(row: dict[str, Any]) -> FloatArray:
    """Gallery pressure of plausible engines of the row's kind in the printed state [kPa]."""
    profile = PROFILES[row["profile"]]
    figures = {name: value for name, (value, _) in profile.numbers.items()}
    if "relief" in row:
        figures["relief_setting"] = row["relief"] * 1e3
    rng = np.random.default_rng(SEED)
    engine = engine_of(figures, Oil.of_grade(row.get("oil", profile.oil_grade)))
    unknown = {} if "relief" in row else {"relief": RELIEF_OF_A_KIND}
    made = varied(engine, drawn(ENGINES, rng), UNCERTAIN | unknown)
    rpm = {"idle": profile.specified[0][0], "rated": RATED}.get(row["rpm"], row["rpm"])
    turns = {"idle": IDLE_SPREAD, "rated": RATED_SPREAD}.get(row["rpm"], 0.0)
    heat, spread = (
        (WARM, WARM_SPREAD) if row["oil_c"] == "warm" else (row["oil_c"], TEMPERATURE_ERROR)
    )
    warmer, faster = rng.standard_normal((2, ENGINES, 1))
    at = [Point(float(rpm), heat + 273.15, 0.0)]
    return np.asarray(shown(made, at, spread * warmer, turns * faster)[:, 0] / 1e3)


ANSWERED = [row for row in PRESSURES if "profile" in row]


@pytest.mark.parametrize("row", ANSWERED, ids=lambda row: str(row["id"]))
def test_printed_pressures_and_the_plausible_engines_agree(row: dict[str, Any]) -> None:
    """A least: the middle engine shows it, at idle 95 of 100 do. A range: its middle is inside
    the 90 % band."""
    low, middle, high = np.percentile(_plausible(row), [5, 50, 95])
    idles = row["rpm"] == "idle" or (row["rpm"] != "rated" and row["rpm"] < 1000)
    assert row["least"] <= (low if idles else middle)
    if "most" in row:
        assert low <= (row["least"] + row["most"]) / 2 <= high


def test_every_row_is_answered_or_says_why_not() -> None:
    """33 printed rows; one without a profile says why, and its layout has no profile indeed."""
    assert len(FLOWS) + len(PRESSURES) == 33
    covered = {layout for profile in PROFILES.values() for layout in profile.layouts}
    for row in PRESSURES:
        assert ("profile" in row) != bool(row.get("no_model"))
        assert row.get("layout", "") not in covered
        if "layout" in row:
            assert row["layout"] in the_book().layouts
    assert all(row["source"] for row in (*PUMPS, *PRESSURES))
    assert len(ANSWERED) == 21
