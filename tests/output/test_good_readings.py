"""Readings that keep their limits are said to, and nothing is sought where nothing is amiss."""

import pytest

from diagnose.case.loading import from_tables
from diagnose.diagnosis import Diagnosis
from diagnose.output.documents.tell import minute_document
from diagnose.output.text.tell import minute_lines
from knowledge.book import the_book
from tests.support.case_texts import as_case
from tests.support.readers import by_tell

BOOK = the_book()


def answered(text: str) -> list[str]:
    case = from_tables(as_case(by_tell(text)), None, BOOK)
    return minute_lines(minute_document(Diagnosis(BOOK, case), "job.toml"))


def test_good_readings_are_said_to_be_good_and_no_cause_is_listed() -> None:
    """10 psi at hot idle and 10 psi for each 1000 rpm are the rules of thumb."""
    lines = " ".join(answered("rebuilt v8, 60 psi cold, 15 psi hot idle, 45 psi at 2500 rpm"))
    assert "15 psi at hot idle (at least 10 psi)" in lines
    assert "No reading is low, and no other sign was understood." in lines
    assert "ikeliest" not in lines


@pytest.mark.parametrize(
    ("text", "amiss"),
    [
        ("15 psi hot idle, 45 psi at 2500 rpm, knock from the bottom end", True),
        ("15 psi hot idle, 45 psi at 2500 rpm, oil pressure flickers in bends", True),
        ("8 psi hot idle, 45 psi at 2500 rpm", True),
        ("rebuilt v8, 25 psi hot idle, never goes above 35 psi", True),
        ("25 psi hot idle, 45 psi at 2500 rpm", False),
    ],
)
def test_a_sign_of_trouble_or_a_doubtful_reading_is_looked_into(text: str, amiss: bool) -> None:
    """One reading that breaks a limit, or anything else reported, brings the places back."""
    assert any("ikeliest" in line for line in answered(text)) is amiss


def test_a_reading_below_its_limit_leaves_none_said_to_be_good() -> None:
    """Nothing is called good beside a reading that is not."""
    assert not any(line.startswith("Within") for line in answered("4 psi hot idle, 45 at 2500 rpm"))
