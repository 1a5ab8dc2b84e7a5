"""A bearing whose bore, journal and new shell are known needs no clearance to order its shells."""

from __future__ import annotations

import pytest

from diagnose.bearings.table import Bearings, Step, bearings_of
from diagnose.case.loading import from_text
from diagnose.fits.bearing import Kind
from diagnose.output.documents.bearings import bearings_document
from diagnose.output.text.bearings import bearings_text
from knowledge.book import the_book

ROD = '[[bearing]]\nno = {no}\nwhat = "rod {no}"\nbore = "51.350 mm"\njournal = "47.740 mm"\n'
SHELLS = '[[bearing]]\nno = 8\nwhat = "rods"\ncount = "4"\nnew_shell = "1.660 mm"\n'
UNDERSIZE = 'undersize = "0.25 mm"\n'


def found(*more: str, rods: int = 4) -> Bearings:
    """The bearings of a four whose rods were measured for size."""
    each = "".join(ROD.format(no=n) for n in range(1, rods + 1))
    case = from_text("schema = 1\n" + each + SHELLS + "".join(more), None, the_book())
    return bearings_of(case, counts={Kind.MAIN: 0}, with_pressure=False)


def said(bearings: Bearings) -> str:
    """What the command prints, on one line."""
    return " ".join(bearings_text(bearings_document(bearings, "b.toml")).split())


@pytest.mark.parametrize("rods", [4, 3])
def test_sizes_stand_in_for_a_clearance(rods: int) -> None:
    """All are known, or only the one whose sizes are missing is asked for."""
    bearings = found(UNDERSIZE, rods=rods)
    text = said(bearings)
    assert text.count("0.040 with this order, by its sizes") == rods
    assert f"{rods} of 4 rods worked out from sizes" in text
    assert "no clearance yet" not in text
    wanted = (Step.SHELLS, "order, fit dry") if rods == 4 else (Step.MISSING, "measure rod 4")
    assert bearings.next_step is wanted[0]
    assert f"Next: {wanted[1]}" in text


def test_a_measured_clearance_comes_before_sizes() -> None:
    strip = '[[bearing]]\nno = 9\nwhat = "rod 2"\nstrip = "0.05 mm"\n'
    text = said(found(UNDERSIZE, strip))
    assert "1 of 4 rods measured; 3 of 4 rods worked out from sizes" in text
    assert text.count("with this order, by its sizes") == 3
