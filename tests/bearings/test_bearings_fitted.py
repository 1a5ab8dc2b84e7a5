"""What ``bearings`` and ``forecast`` say once a crank is ground and bearings are fitted."""

from __future__ import annotations

import pytest

from diagnose import forecast
from diagnose.bearings.table import bearings_of
from diagnose.fits.bearing import Kind
from diagnose.output.documents.bearing_notes import notes
from knowledge.units import PSI
from tests.bearings.test_bearings import ENGINE, case_of, judged_alone

OVAL_MAINS = (
    "mains; new_journal = 76.00 mm",
    "main 1; journal = 75.93 75.90 75.93 75.89 mm; inside = 76.08 mm",
)


def test_worn_journals_are_ground_with_those_that_must_be() -> None:
    """The crank goes to the grinder: no three fine undersizes on pins worn 0.04 to 0.06 mm."""
    pins = [f"rod {n}; journal = {d} mm; inside = 62.05 mm" for n, d in ((1, 61.94), (2, 61.96))]
    away = judged_alone(case_of(*OVAL_MAINS, "rods; new_journal = 62.00 mm", *pins))
    assert away.orders[Kind.ROD].ground == pytest.approx(0.25e-3)
    assert any("same set-up" in n for n in notes(away))
    stays = judged_alone(case_of("rods; new_journal = 62.00 mm", *pins))
    assert stays.orders[Kind.ROD].ground is None
    assert not any("same set-up" in n for n in notes(stays))
    new = [f"rod {n}; journal = 62.00 mm; inside = 62.05 mm" for n in (1, 2)]
    good = judged_alone(case_of(*OVAL_MAINS, "rods; new_journal = 62.00 mm", *new))
    assert good.orders[Kind.ROD].ground is None


def test_nothing_is_ordered_for_bearings_that_are_fitted() -> None:
    worn, fitted = ("main 1; strip = 4.5 thou", "main 1; strip = 2.2 thou; at = build")
    assert Kind.MAIN in judged_alone(case_of(worn)).orders
    assert Kind.MAIN not in judged_alone(case_of(worn, fitted)).orders
    said = [r.option.says for r in bearings_of(case_of(worn, fitted)).pressures.rows]
    assert "as fitted" in said
    assert "with this order" not in said


def test_after_the_first_start_the_engine_is_the_one_that_was_fitted() -> None:
    """What-if and bearings start from the clearances fitted and the first start's readings."""
    worn, fitted = ("main 1; strip = 4.5 thou", "main 1; strip = 2.2 thou; at = build")
    before = '[[reading]]\nno = 8\nrpm = "700 rpm"\noil = "95 C"\npressure = "8 psi"\n'
    after = (
        '[[reading]]\nno = 9\nrpm = "700 rpm"\noil = "95 C"\npressure = "24 psi"\nat = "start"\n'
    )
    head = ENGINE + before
    running = forecast(case_of(worn, fitted, head=head + after))
    assert running.repaired
    assert [d.found for d in running.found] == ["2.2 thou"]
    assert [r.read.reading.pressure for r in running.state.readings] == [24 * PSI]
    still = forecast(case_of(worn, fitted, head=head))
    assert not still.repaired
    assert [d.found for d in still.found] == ["4.5 thou"]
