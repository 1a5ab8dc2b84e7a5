"""Values of bearings in a row, and figures of what a trial did: each where it belongs."""

from __future__ import annotations

import pytest

from tests.support.readers import by_tell


@pytest.mark.parametrize(
    ("text", "places"),
    [
        ("rod 1 3 thou rod 2 3 thou rod 3 6 thou", ["rod 1", "rod 2", "rod 3"]),
        ("main 1 2 thou, main 4 2.5 thou", ["main 1", "main 4"]),
        ("rod 1 .003 rod 2 .003 rod 3 .006", ["rod 1", "rod 2", "rod 3"]),
    ],
)
def test_each_value_of_a_row_is_of_its_own_bearing(text: str, places: list[str]) -> None:
    """A number between a bearing's name and a value with its unit is the bearing's."""
    assert [row.get("where") for row in by_tell(text)["finding"]] == places


def test_a_cold_figure_is_no_help_beside_a_low_hot_one() -> None:
    """What was done helped nothing where hot idle is as low as before."""
    assert "trial" not in by_tell("line bored, now 60 cold and 3 hot idle")
    (trial,) = by_tell("low at idle. new pump, now 60 cold and 3 hot idle")["trial"]
    assert trial["result"] == "no difference"
