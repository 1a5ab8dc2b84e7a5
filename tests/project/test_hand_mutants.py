"""Every wrong change of the list fits the code as it is, and (at length) a test notices it."""

from __future__ import annotations

import ast
from collections import Counter

import pytest

from tests.studies.hand_mutants import HandMutant, listed, tried
from tests.support.command_line import ROOT

EVERY = listed()


@pytest.mark.parametrize("mutant", EVERY, ids=lambda m: m.name)
def test_the_change_fits(mutant: HandMutant) -> None:
    """Its old text stands once in the file, the new one is code, and its tests are there."""
    right = (ROOT / mutant.file).read_text("utf-8")
    changed = mutant.applied(right)
    assert changed != right
    assert ast.dump(ast.parse(changed)) != ast.dump(ast.parse(right))
    assert mutant.tests
    assert all((ROOT / "tests" / name).is_file() for name in mutant.tests)


def test_the_list_is_whole() -> None:
    """Safety, judging, case, circuit and reasons each have their changes, each named once."""
    groups = Counter(m.group for m in EVERY)
    assert set(groups) == {"safety", "judging", "case", "circuit", "reasons"}
    assert all(many >= 4 for many in groups.values())
    assert len({m.name for m in EVERY}) == len(EVERY) >= 40


def test_a_change_that_does_not_fit_is_an_error() -> None:
    mutant = HandMutant("case", "gone", EVERY[0].file, "no such text", "x", EVERY[0].tests)
    with pytest.raises(ValueError, match="stands 0 times"):
        mutant.applied((ROOT / mutant.file).read_text("utf-8"))


@pytest.mark.long
def test_a_test_notices_every_change() -> None:
    assert [m.name for m, fate in tried(EVERY) if fate == "survived"] == []
