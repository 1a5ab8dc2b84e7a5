"""How many examples a property is tried on: few by default, more where the environment asks.

``EXAMPLES=1 pytest`` tries as many as a property names, ``EXAMPLES=10 pytest`` ten times as many.
"""

from __future__ import annotations

import os

SHARE = float(os.environ.get("EXAMPLES", "0.3"))
FEWEST = 15


def examples(many: int) -> int:
    """Return the number of examples to try of a property that names so many."""
    return max(FEWEST, round(many * SHARE))
