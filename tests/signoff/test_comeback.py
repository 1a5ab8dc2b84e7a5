"""A job comes back from an earlier one of the same engine only."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.support.command_line import call

HEAD = 'schema = 1\n[engine]\nlayout = "{}"\n'


@pytest.mark.parametrize(
    ("earlier", "refused"),
    [("distributor_v8", True), ("marine_diesel", False), ("unknown", False)],
)
def test_another_engine_is_no_comeback(tmp_path: Path, earlier: str, refused: bool) -> None:
    (tmp_path / "old.toml").write_text(HEAD.format(earlier), "utf-8")
    path = tmp_path / "new.toml"
    path.write_text(HEAD.format("marine_diesel"), "utf-8")
    done = call(
        "close", path, "--cause", "relief_debris", "--how", "seen", "--comeback-of", "old.toml"
    )
    assert ("'old.toml' is a job of another engine" in done.err) is refused


def test_the_example_of_how_names_no_fault(tmp_path: Path) -> None:
    path = tmp_path / "new.toml"
    path.write_text(HEAD.format("marine_diesel"), "utf-8")
    assert "seat" not in call("close", path, "--cause", "crank_plug_missing").err
