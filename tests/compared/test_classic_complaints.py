"""Twenty classic complaints: the trade's first answers are among the tool's (common practice)."""

from __future__ import annotations

import pytest

from tests.support.trade_answers import Complaints

COMPLAINTS = Complaints("classic_complaints.toml")


def test_twenty_complaints_of_known_words() -> None:
    assert len(COMPLAINTS.every) == 20
    COMPLAINTS.check_words()


@pytest.mark.parametrize("number", COMPLAINTS.numbers)
def test_none_is_off(number: int) -> None:
    """At least one of the trade's first three answers is among the tool's first five."""
    assert COMPLAINTS.shared(number) >= 1, COMPLAINTS.first_five(number)


def test_seventeen_are_right() -> None:
    right = [number for number in COMPLAINTS.numbers if COMPLAINTS.is_right(number)]
    assert len(right) >= 17, f"right: {right}"
