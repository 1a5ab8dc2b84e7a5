"""The grade that is in the engine, and when it was put in: "10w30 in it, changed two weeks ago"."""

from __future__ import annotations

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        (
            "10w30 in it, changed two weeks ago",
            {"oil 10W-30", "earlier oil_change renewed 2 weeks"},
        ),
        (
            "20w50 in the sump, changed it last month",
            {"oil 20W-50", "earlier oil_change renewed 1 months"},
        ),
        (
            "oil is 15w40, changed 200 hours ago",
            {"oil 15W-40", "earlier oil_change renewed 9 months"},
        ),
        (
            "15w40 in it and changed the filter last week",
            {"oil 15W-40", "earlier filter_change renewed 1 weeks"},
        ),
        (
            "running 20w50, changed every 3000 miles",
            {"oil 20W-50", "finding service_neglected absent"},
        ),
    ],
)
def test_grade_with_its_change(words: str, wanted: set[str]) -> None:
    """Both are read, and no other part is taken for the one that was changed."""
    assert {fact.short for fact in read(words, the_book()).facts} == wanted
