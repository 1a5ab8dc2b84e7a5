"""Ordinary complaints: the trade's first answers are among the tool's (common practice)."""

from __future__ import annotations

import pytest

from tests.support.trade_answers import Complaints

COMPLAINTS = Complaints("ordinary_complaints.toml")
ASIDE = [
    n for n, each in zip(COMPLAINTS.numbers, COMPLAINTS.every, strict=True) if each.get("aside")
]
DEVELOPED = [number for number in COMPLAINTS.numbers if number not in ASIDE]


def test_every_second_complaint_is_kept_aside() -> None:
    assert len(COMPLAINTS.every) >= 40
    assert abs(len(DEVELOPED) - len(ASIDE)) <= 2
    COMPLAINTS.check_words()


@pytest.mark.parametrize("number", DEVELOPED)
def test_none_is_off(number: int) -> None:
    """At least one of the trade's first three answers is among the tool's first five."""
    assert COMPLAINTS.shared(number) >= 1, COMPLAINTS.first_five(number)


@pytest.mark.parametrize(
    ("half", "least", "most_off"),
    [
        pytest.param(DEVELOPED, 18, 0, id="developed"),
        pytest.param(
            ASIDE,
            15,
            0,
            id="aside",
            marks=pytest.mark.xfail(
                strict=True,
                reason="one fresh build, good cold and low hot, is taken for a wrong pump gasket, as "
                "slip, wide clearances and less delivery fit its readings almost alike: 14",
            ),
        ),
    ],
)
def test_most_are_right(half: list[int], least: int, most_off: int) -> None:
    right = [number for number in half if COMPLAINTS.is_right(number)]
    off = [number for number in half if COMPLAINTS.shared(number) == 0]
    assert len(right) >= least, f"{len(right)} right of {len(half)}"
    assert len(off) <= most_off, f"{len(off)} off"
