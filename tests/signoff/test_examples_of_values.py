"""The value a task is typed with in its example: one that fits, in the unit of the job."""

from __future__ import annotations

from itertools import chain

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.signoff_items import signoff_item
from diagnose.planning.choosing import SURE
from diagnose.signoff.judging import EngineFigures, bands_of
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book
from knowledge.units import DIMENSIONS, LENGTH, PRESSURE, TORQUE, parse

BOOK = the_book()
HEAD = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
METRIC = '[[finding]]\nno = 1\nwhat = "main_clearance"\nvalue = "0.05 mm"\n'


def examples(text: str) -> dict[str, str]:
    """The example of each task that is measured, on the sheet of a whole engine."""
    sheet = Signoff(Diagnosis(BOOK, from_text(text, None, BOOK)), SURE, whole=True)
    items = [signoff_item(i, sheet) for i in chain(sheet.items, sheet.maybe)]
    return {i.task: i.example.strip('"') for i in items if i.measured}


def test_an_example_is_accepted_by_the_source_that_decides() -> None:
    engine = EngineFigures.of(from_text(HEAD, None, BOOK))
    found = examples(HEAD)
    assert len(found) > 20
    for id_, text in found.items():
        task = BOOK.tasks[id_]
        dimension = DIMENSIONS[task.dimension]
        bands = [b for b in bands_of(task, engine)[0] if b.low or b.high]
        if task.like or not bands or dimension not in (LENGTH, PRESSURE, TORQUE):
            continue
        value = parse(text, dimension)
        assert (bands[0].low or 0.0) <= value <= (bands[0].high or float("inf")), (id_, text)


@pytest.mark.parametrize(("text", "unit"), [(HEAD, "in"), (HEAD + METRIC, "mm")])
def test_the_gap_under_the_pickup_is_no_bearing_clearance(text: str, unit: str) -> None:
    """About 1/4 to 3/8 in, in the unit of the job."""
    gap = examples(text)["pickup_gap_fitted"]
    assert gap.endswith(f" {unit}")
    assert 0.005 < parse(gap, LENGTH) < 0.0105
