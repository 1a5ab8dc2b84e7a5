"""How to look, one room a station."""

from knowledge.inspections import (
    assembly,
    bearings,
    debris,
    delivery,
    instrument,
    instrument_gauge,
    leaks,
    oil,
    pump,
    pump_bench,
    relief,
    suction,
    topend,
)

MODULES = (
    assembly,
    bearings,
    debris,
    delivery,
    instrument,
    instrument_gauge,
    leaks,
    oil,
    pump,
    pump_bench,
    relief,
    suction,
    topend,
)
