"""The table of ``tests.studies.mutation`` names modules, tests and lines that are there."""

from __future__ import annotations

import pytest

from tests.studies.mutation import AREAS, ROOT, area_of, concerning, explained, modules


@pytest.mark.parametrize("area", AREAS)
def test_named_places_and_tests_are_there(area: str) -> None:
    """A test file moved away would let every mutant live, or kill them all."""
    assert modules(area)
    for place in AREAS[area].places:
        assert (ROOT / place).exists(), place
    for module in modules(area):
        for name in (module, *concerning(module)):
            assert (ROOT / name).is_file(), name


def test_a_module_named_by_itself_has_the_tests_of_its_own_area() -> None:
    module = "diagnose/output/documents/cautions.py"
    assert "tests/safety/test_alarms.py" in concerning(module)
    assert area_of("diagnose/inference/evidence.py") == "inference"


def test_every_explained_line_still_exists() -> None:
    """A line that was changed needs its explanation thought over again."""
    for row in explained():
        lines = [x.strip() for x in (ROOT / row["module"]).read_text("utf-8").splitlines()]
        assert row["line"] in lines, f"{row['module']}: {row['line']}"
        assert row.get("becomes") != row["line"]
        assert row["why"]
