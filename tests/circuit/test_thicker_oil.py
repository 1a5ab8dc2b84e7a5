"""Whether thicker oil can carry a worn engine until it is repaired."""

from __future__ import annotations

import pytest

from diagnose.circuit.band import Band
from diagnose.circuit.forecast import Target, forecast
from diagnose.circuit.sizing import sizing
from diagnose.entry.requests import parse_fixes
from diagnose.output.documents.forecast import forecast_document
from diagnose.output.documents.sizing import sizing_document
from diagnose.output.documents.thicker_oil import what_it_gives
from diagnose.output.scale import Scale
from diagnose.output.text.sizing import sizing_text
from knowledge.units import PSI
from tests.circuit.test_one_hot_idle import MAINS, case

WORN = MAINS + '[oil]\ngrade = "20W-50"\n'
READ = "700 rpm; 8 psi; hot"


def said(*fixes: str, may_run: bool = True) -> str:
    worn = case(READ, more=WORN)
    planned = forecast(worn, [], engines=24, plans=parse_fixes(fixes, worn))
    return forecast_document(planned, may_run=may_run).oil_until


def test_the_forecast_of_thicker_oil_says_what_it_does_and_when_to_stop() -> None:
    text = said("oil=50")
    assert text.startswith("SAE 50 gives ")
    for part in (
        "at 700 rpm hot",
        "It cures nothing: main bearing clearance",
        "stop at once below",
    ):
        assert part in text


def test_it_is_said_of_thicker_oil_alone_and_of_an_engine_that_may_run() -> None:
    assert not said("oil=10W-30")
    assert not said("oil=50", "mains=0.002")
    assert not said("mains=0.002")
    assert not said("oil=50", may_run=False)


def test_sizing_compares_a_straight_oil_and_says_whether_it_will_do() -> None:
    worn = sizing(case(READ, more=WORN), engines=24)
    assert "SAE 50" in {o.grade for o in worn.oils}
    assert "  SAE 50" in sizing_text(sizing_document(worn))
    assert "cures nothing" in sizing_document(worn).oil_until
    good = sizing(case("700 rpm; 35 psi; hot", more='[oil]\ngrade = "20W-50"\n'), engines=24)
    assert not sizing_document(good).oil_until


@pytest.mark.parametrize(
    ("low", "mean", "high", "says"),
    [
        (0.3, 0.61, 0.9, "gives no more at hot idle (0.6 bar): too little"),
        (0.9, 1.01, 1.2, "gives no more at hot idle (1.0 bar): enough"),
    ],
)
def test_an_oil_that_adds_nothing_is_not_perhaps_enough(
    low: float, mean: float, high: float, says: str
) -> None:
    before = Band(low * 1e5, (mean - 0.01) * 1e5, high * 1e5)
    after = Band(low * 1e5, mean * 1e5, high * 1e5)
    said = what_it_gives("50", "hot idle", before, after, 0.7e5, Scale("bar", 1e5, 1))
    assert says in said
    assert "perhaps" not in said


def test_what_an_oil_gives_is_said_in_figures_that_agree() -> None:
    """0.84 and 0.94 bar are shown as 0.8 and 0.9; no difference is put beside them."""
    before, after = (Band(0.7e5, p, 1.2e5) for p in (0.84e5, 0.94e5))
    said = what_it_gives("20W-50", "hot idle", before, after, 0.7e5, Scale("bar", 1e5, 1))
    assert "gives 0.9 instead of 0.8 bar at hot idle" in said
    assert "more" not in said


def test_an_oil_whose_mean_falls_short_is_not_called_perhaps_enough() -> None:
    """One engine in twenty reaches it: nobody buys oil for that."""
    before, after = (Band(0.1e5, mean, 1.1e5) for mean in (0.4e5, 0.6e5))
    said = what_it_gives("50", "hot idle", before, after, 1.0e5, Scale("bar", 1e5, 1))
    assert said.endswith("most likely too little for the 1.0 bar wanted.")


def test_an_oil_is_judged_at_the_speed_whose_pressure_was_asked_for() -> None:
    worn = case(READ, more=WORN)
    plans, target = parse_fixes(["oil=50"], worn), Target(2000.0, 30 * PSI, "wanted")
    planned = forecast(worn, [], engines=24, plans=plans, target=target)
    text = forecast_document(planned, may_run=True).oil_until
    assert "at 2000 rpm hot" in text
    assert "30 psi wanted" in text
