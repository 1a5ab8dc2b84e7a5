"""What is said of a relief spring on the bench where nobody knows its length in the valve."""

from __future__ import annotations

import pytest

from diagnose.circuit.relief_spring import parse_spring_tests
from diagnose.circuit.sizing import Sizing, Wanted, sizing
from diagnose.output.documents.sizing import sizing_document
from diagnose.output.text.sizing import sizing_text
from knowledge.units import INCH, LBF, PSI
from tests.support.circuits import a_case

RELIEF = '[engine.limits]\nrelief_setting = "45 psi"\n'


def on_bench(*loads: str) -> Sizing:
    """A valve that opens at 45 psi: 8.84 lbf on a plunger of half an inch."""
    asked = Wanted(plunger=0.5 * INCH, springs=parse_spring_tests(loads))
    return sizing(a_case(engine=RELIEF), engines=12, wanted=asked)


def test_two_loads_say_how_long_it_must_be_and_neither_fails_it() -> None:
    """9 lbf at 1.3 in, 12 lbf at 1.1 in: 15 lbf/in, so 8.84 lbf at 1.311 in."""
    found = on_bench("9 lbf at 1.3 in", "12 lbf at 1.1 in")
    valve = found.spring
    assert valve.rate == pytest.approx(15 * LBF / INCH)
    assert valve.gain(0.02 * INCH) == pytest.approx(0.02 * 15 / 0.19635 * PSI, rel=1e-3)
    assert valve.opens_found is None
    assert valve.length_to_open == pytest.approx(1.311 * INCH, rel=1e-3)
    text = " ".join(sizing_text(sizing_document(found)).split())
    assert "where it is 1.31 in long with the valve shut: measure that length" in text
    assert "failed" not in text


def test_one_load_is_taken_at_the_fitted_length() -> None:
    found = on_bench("9 lbf at 1.3 in")
    assert found.spring.opens_found == pytest.approx(9 / 0.19635 * PSI, rel=1e-3)
    text = " ".join(sizing_text(sizing_document(found)).split())
    opens = (
        "The spring in hand opens it at 46 psi, if it is 1.3 in long with the valve shut: passed"
    )
    assert opens in text


def test_a_setting_that_is_only_usual_passes_and_fails_no_spring() -> None:
    """Nobody has said at what this engine's valve opens: its maker's figure decides."""
    asked = Wanted(plunger=0.5 * INCH, springs=parse_spring_tests(["4 lbf at 1.3 in"]))
    document = sizing_document(sizing(a_case(), engines=12, wanted=asked))
    assert {line.verdict for line in document.spring.bench} == {""}
    text = " ".join(sizing_text(document, full=True).split())
    assert "not as usual in engines of its kind" in text
    assert "Typical, not this engine's: opening pressure" in text
    assert "failed" not in text
