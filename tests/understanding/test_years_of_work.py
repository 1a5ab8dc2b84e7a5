"""Work of a year or of ten years, as long ago as it is on the day the words are read."""

from datetime import date

import pytest

from diagnose.understanding.reader import read
from knowledge.book import the_book

BOOK = the_book()


@pytest.mark.parametrize(
    ("text", "year"),
    [
        ("engine rebuilt in 1995", 1995),
        ("rebuilt in the 80s", 1980),
        ("rebuilt in the 1970s", 1970),
        ("pump replaced in 2024", 2024),
    ],
)
def test_a_year_says_how_long_ago_the_work_was(text: str, year: int) -> None:
    work = [f for f in read(text, BOOK).facts if f.table == "earlier"]
    assert [f.fields.get("before") for f in work] == [f"{date.today().year - year} years"]


@pytest.mark.parametrize("text", ["rebuilt in may", "rebuilt with 80s parts", "rebuilt in 20 days"])
def test_other_words_behind_in_are_no_year(text: str) -> None:
    work = [f for f in read(text, BOOK).facts if f.table == "earlier"]
    assert not [f for f in work if "years" in str(f.fields.get("before", ""))]
