"""A figure of all bearings adds none once each was measured; what is sound is not ordered again."""

from __future__ import annotations

import numpy as np
import pytest

from diagnose.bearings.table import Step, bearings_of
from diagnose.case.bearing_counts import each_measured
from diagnose.case.loading import from_text
from diagnose.circuit.deviations import deviations
from diagnose.fits.bearing import Kind
from knowledge.book import the_book

BOOK = the_book()
HEAD = (
    'schema = 1\n[engine]\nlayout = "skew_gear_six"\n'
    '[[bearing]]\nno = 1\nwhat = "rods"\ncount = "6"\n'
    '[[finding]]\nno = 2\nwhat = "main_clearance"\nvalue = "2.2 thou"\n'
)


def measured(mains: int, wide: str = "2.0 thou") -> str:
    text = HEAD
    for n in range(1, mains + 1):
        gap = wide if n == 1 else "2.0 thou"
        text += f'[[bearing]]\nno = {9 + n}\nwhat = "main {n}"\nstrip = "{gap}"\n'
    return text


@pytest.mark.parametrize(("mains", "whole"), [(7, True), (3, False)])
def test_seven_mains_of_a_six_are_all(mains: int, whole: bool) -> None:
    case = from_text(measured(mains), None, BOOK)
    assert each_measured(case, Kind.MAIN) is whole
    assert any(not j.place.number for j in bearings_of(case).found) is not whole
    (leak,) = (d for d in deviations(case, 20, np.random.default_rng(1)) if "main" in d.id)
    assert f"(of {mains if whole else mains + 1})" in leak.found


@pytest.mark.parametrize(("wide", "step"), [("2.0 thou", Step.SOUND), ("6.0 thou", None)])
def test_bearings_in_limits_call_for_no_shells(wide: str, step: Step | None) -> None:
    case = from_text(measured(7, wide), None, BOOK)
    found = bearings_of(case, counts={Kind.ROD: 0})
    assert (found.next_step is Step.SOUND) is (step is Step.SOUND)
    assert bool(found.orders) is (step is None)
