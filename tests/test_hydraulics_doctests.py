"""What the hydraulic docstrings show is what comes out."""

from __future__ import annotations

import doctest
from importlib import import_module
from pkgutil import iter_modules

import pytest

import diagnose.hydraulics
from knowledge.stations.oil import grades as oil_grades

MODULES = [f"diagnose.hydraulics.{m.name}" for m in iter_modules(diagnose.hydraulics.__path__)]


@pytest.mark.parametrize("name", [*MODULES, oil_grades.__name__])
def test_examples_run(name: str) -> None:
    """Every example of the module."""
    assert doctest.testmod(import_module(name)).failed == 0
