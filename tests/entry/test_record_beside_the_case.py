"""What ``record`` answers beside what the case and the book hold already."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.command_line import call

EMPTY = "schema = 1\n"


@pytest.mark.parametrize(
    ("words", "asked"),
    [
        ("20 psi at 3000 rpm hot", "asks for 30 psi at 3000 rpm"),
        ("35 psi at 3000 rpm hot", ""),
        ("20 psi at 2000 rpm hot", ""),
        ("10 psi at 3000 rpm hot", ""),
    ],
)
def test_the_rule_of_thumb_grows_with_the_speed(words: str, asked: str, tmp_path: Path) -> None:
    """What keeps the limit for 2000 rpm may be little for more; beside a broken limit it is silent."""
    path = tmp_path / "a.toml"
    path.write_text(EMPTY, "utf-8")
    shown = " ".join(call("record", path, words).out.split())
    assert (asked in shown) if asked else ("asks for" not in shown)


def test_the_oil_that_the_case_has_is_not_asked_for_again(tmp_path: Path) -> None:
    """It is said to be there, with what says that it is the grade of the manual."""
    path = tmp_path / "a.toml"
    path.write_text('schema = 1\n[oil]\ngrade = "20W-50"\n', "utf-8")
    said = " ".join(call("record", path, "20w50 is what the book says").err.split())
    assert "20W-50 is in the case already" in said
    assert call("record", path, "oil_grade_as_manual=yes").code == 0
    assert "oil_grade_as_manual" in path.read_text("utf-8")
