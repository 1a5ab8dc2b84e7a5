"""The first start as a table: predicted at each heat and speed, and what was read beside it.

Imported by the sign-off page and the report.
"""

from __future__ import annotations

from typing import Any

from diagnose.output.scale import scale_of
from diagnose.output.start import beside, cold_told
from diagnose.signoff.start import FirstStart
from knowledge.units import TEMPERATURE, show


def heats(start: FirstStart) -> list[float]:
    """The oil temperatures predicted for, K."""
    return list(dict.fromkeys(e.temperature for e in start.expected))


def heat_told(heat: float) -> str:
    """An oil temperature as the table names it."""
    return show(heat, TEMPERATURE, "C", 3)


def start_table(start: FirstStart) -> dict[str, Any]:
    """Unit, speeds, a row for each heat, the readings in sentences."""
    scale = scale_of(start.case)
    return {
        "unit": scale.unit,
        "speeds": [f"{rpm:.0f}" for rpm in dict.fromkeys(e.rpm for e in start.expected)],
        "rows": [
            {
                "heat": heat_told(heat),
                "cells": [scale.ends(e.pressure) for e in start.expected if e.temperature == heat],
            }
            for heat in heats(start)
        ],
        "wide": not start.case.baseline,
        "cold": cold_told(start),
        "read": [beside(one, scale) for one in start.compared],
    }
