"""Generators that run at one speed: what is read there stands for idle and for high speed."""

from __future__ import annotations

from diagnose.case.case import Case, GaugeReading
from diagnose.case.mended import FAST, LIKELY
from knowledge.engines.layouts_special import GENERATOR_DIESEL, GENERATOR_PETROL
from knowledge.pressure.gauge import speed_share

GENERATORS = (GENERATOR_DIESEL, GENERATOR_PETROL)
GOVERNED = 1400.0  #: rpm: a generator at or above this runs at its one speed (1500 of 50 Hz)


def at_speed(read: GaugeReading, case: Case) -> bool:
    """Whether a reading counts for the pressure at speed."""
    least = GOVERNED if case.layout in GENERATORS else FAST
    return speed_share(read.reading, least) >= LIKELY


def has_one_speed(case: Case) -> bool:
    """Whether it is a generator that was read at its one speed and never at idle."""
    if case.layout not in GENERATORS:
        return False
    read = [r for r in (*case.readings, *case.start_readings) if r.entry.rpm]
    return bool(read) and all(at_speed(r, case) for r in read)
