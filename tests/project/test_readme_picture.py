"""The picture of the page in the README: it is there, small, and shows the page as it is."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from PIL import Image

from tests.support import page_picture
from tests.support.browser import needs_browser
from tests.support.command_line import ROOT
from tests.support.page_picture import JOBS, PICTURE, SCREENS, SHOWS
from tests.support.web import jobs_in

MOST_BYTES = 150_000
ANEW = "the page has changed: python -m tests.studies.page_picture"


def test_the_readme_shows_it_beside_the_command() -> None:
    """With words for those who do not see it."""
    text = (ROOT / "README.md").read_text("utf-8")
    (words, path) = re.findall(r"!\[([^\]]+)\]\(([^)]+)\)", text)[0]
    assert ROOT / path == PICTURE
    assert len(words) > 40
    before = text[: text.index("![")]
    assert "`diagnose serve cases`" in before[-600:]


def test_it_is_a_small_picture_of_three_telephones() -> None:
    assert PICTURE.stat().st_size < MOST_BYTES
    with Image.open(PICTURE) as picture:
        assert picture.format == "PNG"
        wide, tall = picture.size
        picture.load()
    assert wide == 3 * (390 + 4) + 2 * page_picture.GAP
    assert tall == 760 + 4


def test_it_shows_the_headings_and_buttons_the_page_has(tmp_path: Path) -> None:
    """Kept in the text of the picture's file when it is made."""
    with Image.open(PICTURE) as picture:
        kept = str(picture.info[SHOWS])
    assert kept == page_picture.shown(jobs_in(tmp_path, *JOBS)), ANEW


@pytest.mark.parametrize("name", [name for name, _, _ in SCREENS])
def test_what_is_kept_says_something(name: str) -> None:
    """Each screen has its line with a heading and something to press."""
    with Image.open(PICTURE) as picture:
        lines = dict(line.split(": ", 1) for line in str(picture.info[SHOWS]).splitlines())
    assert len(lines[name].split("; ")) >= 2


@needs_browser
def test_it_can_be_made_again(tmp_path: Path) -> None:
    """Of the same size, and mostly of the same shades."""
    path = tmp_path / "page.png"
    (tmp_path / "work").mkdir()
    page_picture.make(path, tmp_path / "work")
    with Image.open(path) as new, Image.open(PICTURE) as old:
        assert new.size == old.size
        assert new.info[SHOWS] == old.info[SHOWS]
        assert new.convert("L").histogram()[255] > 0
