from __future__ import annotations
from collections.abc import Mapping
from diagnose.modelling import UNCERTAIN
ENGINES = 32
def widths(*, relief_known: bool) -> Mapping[str, float]:
    return UNCERTAIN if relief_known else {**UNCERTAIN, "relief": 0.15}
