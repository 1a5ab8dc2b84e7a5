"""How many examples a property is tried on: few by default, more where the environment asks.

``EXAMPLES=1 pytest`` tries as many as a property names, ``EXAMPLES=10 pytest`` ten times as many.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from typing import TypeVar

import pytest
from _pytest.mark.structures import ParameterSet

T = TypeVar("T")
SHARE = float(os.environ.get("EXAMPLES", "0.3"))
FEWEST = 15


def examples(many: int) -> int:
    """Return the number of examples to try of a property that names so many."""
    return max(FEWEST, round(many * SHARE))


def one_in(step: int, values: Sequence[T]) -> list[ParameterSet]:
    """Return every value as a parameter; all but each ``step``-th belong to the long suite."""
    return [
        pytest.param(value, marks=() if number % step == 0 else pytest.mark.long)
        for number, value in enumerate(values)
    ]
