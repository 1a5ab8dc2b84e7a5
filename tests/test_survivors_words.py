"""Words of a reading exactly: shares of a dial, and the reading said again."""

from __future__ import annotations

import pytest

from diagnose.case.looks import said
from diagnose.case.pressures import pressure_of
from diagnose.case.schema import ReadingEntry
from knowledge.units import PSI, UnitError


@pytest.mark.parametrize(
    ("text", "psi"),
    [
        ("1/4 of the 80 psi scale", 20.0),
        ("3/4 of the 80 psi scale", 60.0),
        ("50% of the 80 psi scale", 40.0),
    ],
)
def test_a_share_of_a_known_scale(text: str, psi: float) -> None:
    assert pressure_of(text).value / PSI == pytest.approx(psi)


def test_nothing_is_shared_among_none() -> None:
    with pytest.raises(UnitError, match="no share of a dial"):
        pressure_of("1/0 of the dial")


@pytest.mark.parametrize(
    ("usual", "words"),
    [(None, "10 psi at hot idle"), ("40 psi", "10 psi, usually 40 psi, at hot idle")],
)
def test_a_reading_is_said_with_its_usual_pressure(usual: str | None, words: str) -> None:
    entry = ReadingEntry.model_validate(
        {"no": 1, "rpm": "idle", "oil": "hot", "pressure": "10 psi", "usual": usual}
    )
    assert said(entry) == words
