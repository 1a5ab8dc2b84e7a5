"""The one speed of a generating set holds for each of its readings."""

from __future__ import annotations

import pytest

from tests.support.readers import by_tell


@pytest.mark.parametrize(
    ("text", "speeds"),
    [
        ("diesel generator, 1500 rpm. Cold 4 bar, hot 2.4 bar", ["1500 rpm", "1500 rpm"]),
        ("genset governed at 1800 rpm, pressure 45 cold and 30 hot", ["1800 rpm", "1800 rpm"]),
        ("generator idles at 700 rpm, 1500 rpm on load. Hot 2.4 bar", [None]),
        ("diesel boat, 1500 rpm at hull speed. Hot 2.4 bar", [None]),
    ],
)
def test_the_speed_of_a_set(text: str, speeds: list[str | None]) -> None:
    assert [r.get("rpm") for r in by_tell(text)["reading"]] == speeds
