"""The short sheet for the bench states no other engine's figure as the limit of this one."""

from __future__ import annotations

import html
import re

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.signoff import SignoffDocument, signoff_document
from diagnose.output.html.signoff_page import short_signoff_html, signoff_html
from diagnose.signoff.judging import NO_FIGURE
from diagnose.signoff.sheet import Signoff
from knowledge.book import the_book

BOOK = the_book()
JOB = 'schema = 1\n[engine]\nlayout = "{}"\n'


def sheet_of(layout: str) -> SignoffDocument:
    """The whole sheet of an engine of this kind."""
    case = from_text(JOB.format(layout), None, BOOK)
    return signoff_document(Signoff(Diagnosis(BOOK, case), 0.9, whole=True), (), "job.toml")


def row_of(page: str, says: str) -> str:
    """The row of a task on a page, as text."""
    row = next(r for r in html.unescape(page).split("<tr>") if says in r)
    return " ".join(re.sub("<[^>]*>", " ", row).split())


@pytest.mark.parametrize("layout", ["air_cooled_flat_four", "distributor_v8"])
def test_every_limit_of_the_short_sheet_is_the_one_that_decides(layout: str) -> None:
    document = sheet_of(layout)
    page = short_signoff_html(document)
    for item in document.items:
        if item.measured and item.deciding and item.unsettled:
            assert item.deciding in row_of(page, item.says), item.task


def test_a_torque_of_another_engine_is_called_so_on_every_sheet() -> None:
    """A flat four with a light-alloy case is not tightened by the figure of an iron V6."""
    document = sheet_of("air_cooled_flat_four")
    foreign = [i for i in document.items if i.deciding == NO_FIGURE and len(i.accepted) > 1]
    assert any("torque" in item.says for item in foreign)
    for item in foreign:
        assert row_of(short_signoff_html(document), item.says).count(" to ") == item.says.count(
            " to "
        ), item.task
        assert item.accepted[0].accepts == NO_FIGURE
        assert all("another engine" in each.accepts for each in item.accepted[1:])
    assert "printed for another engine or use: " in signoff_html(document)
