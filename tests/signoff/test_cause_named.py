"""The cause a job is closed with, in words."""

from __future__ import annotations

import pytest

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.entry.cause_named import confirmed_causes
from diagnose.errors import UsageError
from knowledge.book import the_book

BOOK = the_book()
ANSWER = Diagnosis(BOOK, from_text("schema = 1\n", None, BOOK))


@pytest.mark.parametrize("words", ["poor earth", "Poor earth (ground)", "loose terminal"])
def test_words_that_stand_in_one_cause_alone_name_it(words: str) -> None:
    assert confirmed_causes([words], ANSWER) == ["wiring_ground_fault"]


def test_words_that_stand_in_several_are_asked_about() -> None:
    several = [c for c in BOOK.causes.values() if "too wide" in c.says]
    assert len(several) > 1
    with pytest.raises(UsageError, match="May be:"):
        confirmed_causes(["too wide"], ANSWER)
