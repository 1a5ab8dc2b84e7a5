"""The table of ``tests.studies.mutation`` names modules, tests and lines that are there."""

from __future__ import annotations

import pytest

from tests.studies.mutation import ROOT, TESTS, concerning, explained, modules


@pytest.mark.parametrize("place", TESTS)
def test_named_places_and_tests_are_there(place: str) -> None:
    """A test file moved away would let every mutant live, or kill them all."""
    found = [place] if place.endswith(".py") else modules(place)
    assert found
    for module in found:
        for name in (module, *concerning(module)):
            assert (ROOT / name).is_file(), name


def test_every_explained_line_still_stands() -> None:
    """A line that was changed needs its explanation thought over again."""
    for row in explained():
        lines = [x.strip() for x in (ROOT / row["module"]).read_text("utf-8").splitlines()]
        assert row["line"] in lines, f"{row['module']}: {row['line']}"
        assert row.get("becomes") != row["line"]
        assert row["why"]
