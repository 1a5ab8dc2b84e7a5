"""Parts and consumables of a repair, one room a kind; generic names, no maker."""

from knowledge.parts import (
    consumables,
    instrument,
    oil,
    suction,
)

MODULES = (instrument, oil, suction, consumables)
