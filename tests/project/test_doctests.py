"""Every example in a docstring gives the result shown under it."""

from __future__ import annotations

import doctest
import re
from importlib import import_module
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
MODULES = [
    ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__")
    for package in ("diagnose", "knowledge", "tests")
    for path in sorted((ROOT / package).rglob("*.py"))
    if re.search(r"(?m)^ *>>> ", path.read_text("utf-8"))
]


@pytest.mark.parametrize("name", MODULES)
def test_docstring_examples(name: str) -> None:
    """Run every example of the module."""
    done = doctest.testmod(import_module(name))
    assert done.attempted
    assert not done.failed


def test_many_modules_have_examples() -> None:
    """The search above finds the modules that hold them."""
    assert len(MODULES) > 30
    assert {"diagnose.hydraulics.leaks", "knowledge.units"} <= set(MODULES)
