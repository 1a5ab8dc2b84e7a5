"""Root causes, one room a station."""

from knowledge.causes import (
    assembly,
    bearings,
    delivery,
    instrument,
    leaks,
    oil,
    pump,
    relief,
    suction,
    topend,
    unlisted,
)

MODULES = (
    assembly,
    bearings,
    delivery,
    instrument,
    leaks,
    oil,
    pump,
    relief,
    suction,
    topend,
    unlisted,
)
