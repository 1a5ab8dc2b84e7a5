"""Shells that leave no room, and a crank that was ground before."""

from __future__ import annotations

from diagnose import parse_case
from diagnose.bearings.judging import Flag
from diagnose.bearings.table import Bearings, Step, bearings_of
from diagnose.fits.bearing import Kind
from knowledge.units import MM

RODS = range(1, 5)
HEAD = 'schema = 1\n[job]\ntitle = "Test four"\n[engine]\nlayout = "overhead_cam_four"\n'


def rods_with(group: str) -> Bearings:
    """Four rods of 51.35 mm on journals of 47.74 mm, with what goes for all of them."""
    text = f'{HEAD}[[bearing]]\nno = 1\nwhat = "rods"\nwanted = "0.03 0.06 mm"\n{group}\n'
    for n in RODS:
        text += f'[[bearing]]\nno = {n + 1}\nwhat = "rod {n}"\n'
        text += 'bore = "51.35 mm"\njournal = "47.74 mm"\n'
    return bearings_of(parse_case(text), with_pressure=False)


def test_shells_without_room_are_no_order() -> None:
    """The wall of an undersize shell typed as the standard one gives no clearance, and no order."""
    found = rods_with('new_shell = "1.785 mm"\nundersize = "0.25 mm"')
    assert all(j.has(Flag.NO_ROOM) for j in found.found)
    order = found.orders.get(Kind.ROD)
    assert order is None or not order.choices
    assert found.next_step is Step.CHECK


def test_a_journal_ground_before_gets_the_shells_it_was_ground_for() -> None:
    """A journal 0.25 mm below what bore and standard shells want is no journal to grind."""
    order = rods_with('new_shell = "1.66 mm"').orders[Kind.ROD]
    assert order.ground is None
    assert {round(c.pair.thick / MM, 3) for c in order.choices} == {0.25}
    assert all(abs(c.clearance / MM - 0.04) < 0.001 for c in order.choices)
