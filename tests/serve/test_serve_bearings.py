"""Bearings on the web page: all at once, and shells to order."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from diagnose.case.loading import load
from knowledge.book import the_book
from tests.support.web import Browser, Page, browser, jobs_in

SHEET = "/job/generator.toml/bearings/sizes"
COUNT = "bearings/sizes"


def sent(tab: Browser, page: Page, fields: dict[str, str], **more: str) -> Page:
    """The page after the form was sent with these fields."""
    given: dict[str, Any] = {**fields, **more}
    return tab.send(page, COUNT, **given)


@pytest.fixture
def tab(tmp_path: Path) -> Browser:
    """A browser at a folder with one job whose bearings nobody measured."""
    return browser(jobs_in(tmp_path, "generator"))


def test_shells_are_ordered_from_the_page(tab: Browser) -> None:
    """Count, wall and undersize, then every rod in one go."""
    group = {"count": "2", "new_shell": "1.66", "undersize": "0.25"}
    fields = {f"b:{name} @ rods": figure for name, figure in group.items()}
    page = sent(tab, tab.get(SHEET), fields, unit="mm")
    assert page.status == 200
    sizes = {"bore": "51.35", "journal": "47.74 47.741"}
    each = {f"b:{name} @ rod {n}": figure for n in (1, 2) for name, figure in sizes.items()}
    page = sent(tab, tab.get(SHEET), each)
    assert "2 of 2 rods worked out from sizes" in page.words
    assert "Rods 1, 2: 0.25 mm undersize; gives 0.0" in page.words
    form = tab.get(SHEET).form(COUNT).fields
    assert form["b:new_shell @ rods"] == ["1.66"]
    assert form["b:journal @ rod 2"] == ["47.74 47.741"]


def test_only_what_was_changed_is_saved(tab: Browser, tmp_path: Path) -> None:
    """And a figure that cannot be keeps all of them in the form."""
    sent(tab, tab.get(SHEET), {"b:count @ mains": "2"}, unit="mm")
    page = tab.get(SHEET)
    again = tab.send(page, COUNT)
    assert (again.status, "Nothing was put in" in again.words) == (400, True)
    wrong = {"b:journal @ main 1": "53.74", "b:journal @ main 2": "5374"}
    refused = sent(tab, page, wrong)
    assert (refused.status, "Did you mean 53.74 mm?" in refused.words) == (400, True)
    assert refused.form(COUNT).fields["b:journal @ main 1"] == ["53.74"]
    sent(tab, refused, {"b:journal @ main 2": "53.74"})
    case = load(tmp_path / "generator.toml", the_book())
    entries = [b.entry for b in case.bearings.found.values() if b.entry]
    assert [(e.what, e.journal) for e in entries] == [
        ("main 1", "53.74 mm"),
        ("main 2", "53.74 mm"),
    ]


def test_new_parts_have_a_form_of_their_own(tab: Browser, tmp_path: Path) -> None:
    sent(tab, tab.get(SHEET), {"b:count @ rods": "2"}, unit="mm")
    page = tab.get(f"{SHEET}?fitted=1")
    sent(tab, page, {"b:strip @ rod 1": "1.9", "b:strip @ rod 2": "2"}, unit="thou")
    case = load(tmp_path / "generator.toml", the_book())
    assert [p.says for p in case.bearings.fitted] == ["rod 1", "rod 2"]
    assert not case.bearings.found
    assert "new_shell" not in page.text


def test_the_example_is_in_the_unit_offered(tab: Browser) -> None:
    """Millimetres once they were used, though the job began in inches."""
    sent(tab, tab.get(SHEET), {"b:count @ rods": "2"}, unit="mm")
    sent(tab, tab.get(SHEET), {"b:journal @ rod 1": "47.74"}, unit="mm")
    page = tab.get("/job/generator.toml/bearings")
    assert "<option selected>mm" in page.text
    assert 'placeholder="0.055, or 62.18 62.17"' in page.text
