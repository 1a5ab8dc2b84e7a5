"""A story of which nothing is understood: said once, and never in the way."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.command_line import call


@pytest.mark.parametrize("answer", ["", "d", "dunno", "y"])
def test_a_story_nobody_understands_holds_nobody_up(tmp_path: Path, answer: str) -> None:
    """Whoever knows no other words goes on to the first question in one answer."""
    done = call("ask", tmp_path / "a.toml", answers=f"4\ndunno, grandad's thing\n{answer}\nstop\n")
    assert done.code == 0
    assert done.err.count("Say it in other words, or Enter to go on without it") == 1
    assert "All right?" not in done.err
    assert "What kind of engine is it?" in done.err
