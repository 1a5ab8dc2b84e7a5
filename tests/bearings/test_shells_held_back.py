"""No shells are ordered by a clearance whose shells, caps or bores are not what they should be."""

from __future__ import annotations

import pytest

from diagnose.bearings.table import Bearings, Step, bearings_of
from diagnose.case.loading import from_text
from diagnose.fits.bearing import Kind
from diagnose.output.documents.bearings import bearings_document
from knowledge.book import the_book
from knowledge.units import MM

BOOK = the_book()
RODS = (
    "".join(
        f'[[bearing]]\nno = {n}\nwhat = "rod {n}"\nstrip = "0.29 mm"\njournal = "59.74 59.74 mm"\n'
        for n in (1, 2)
    )
    + '[[bearing]]\nno = 3\nwhat = "main 1"\nstrip = "0.06 mm"\n'
)
WRONG = '[[finding]]\nno = 8\nwhat = "wrong_shells_fitted"\nstate = "present"\n'
WORKED_ON = '[[earlier]]\nno = 8\nwhat = "bearings"\ndone = "rebuilt"\n'
SIZES = (
    '[[bearing]]\nno = 9\nwhat = "mains"\nundersize = "0.25 mm"\n'
    '[[bearing]]\nno = 10\nwhat = "rods"\nundersize = "0 mm"\n'
)


def found_of(*parts: str) -> Bearings:
    """The bearings of a generating set with two rods and one main."""
    text = 'schema = 1\n[engine]\nlayout = "generator_diesel"\n' + "".join(parts)
    count = {Kind.MAIN: 1, Kind.ROD: 2}
    return bearings_of(from_text(text, None, BOOK), counts=count, with_pressure=False)


@pytest.mark.parametrize("history", [WRONG, WORKED_ON])
def test_shells_that_may_be_undersize_are_not_ordered_by_clearance_alone(history: str) -> None:
    """The size on their backs is asked for, and no good journal is sent to the grinder."""
    found = found_of(RODS, history)
    assert found.next_step is Step.SHELL_BACKS
    assert not any(order.choices for order in found.orders.values())
    assert "grind" not in [f for row in bearings_document(found, "b").bearings for f in row.flags]
    assert "nothing yet" in bearings_document(found, "b").held[0]


def test_the_size_on_the_shell_backs_settles_the_order() -> None:
    """A standard shell on a ground journal is renewed by one that is as much thicker."""
    found = found_of(RODS, WRONG, SIZES)
    rods = [c.pair.undersize / MM for c in found.orders[Kind.ROD].choices]
    assert found.next_step is Step.SHELLS
    assert rods == pytest.approx([0.25, 0.25])
    assert found.orders[Kind.MAIN].choices[0].pair.undersize / MM == pytest.approx(0.25)


def test_nothing_of_the_size_is_asked_where_nobody_worked_on_the_crank() -> None:
    found = found_of(RODS)
    assert found.next_step is not Step.SHELL_BACKS
    assert found.orders[Kind.MAIN].choices


@pytest.mark.parametrize(
    ("fact", "step", "rods"),
    [("caps_mixed", Step.CAPS, False), ("main_bores_out_of_line", Step.LINE, True)],
)
def test_mixed_caps_and_crooked_bores_hold_the_order(fact: str, step: Step, rods: bool) -> None:
    """A bore out of its place makes a clearance that no shell cures; rods have bores of their own."""
    found = found_of(RODS, f'[[finding]]\nno = 8\nwhat = "{fact}"\nstate = "present"\n')
    assert found.next_step is step
    assert not found.orders[Kind.MAIN].choices
    assert (found.orders[Kind.ROD].held is None) is rods
