"""Parts and consumables of a repair, one room a kind; generic names, no maker."""

from knowledge.parts import (
    assembly,
    bearings,
    closing,
    consumables,
    delivery,
    instrument,
    leaks,
    oil,
    pump,
    relief,
    suction,
    topend,
)

#: in the order a parts list is read: what is renewed, by station, then what closes and is used up
MODULES = (
    instrument,
    oil,
    suction,
    pump,
    relief,
    delivery,
    bearings,
    topend,
    assembly,
    leaks,
    closing,
    consumables,
)
