"""What is done, looked at or measured while the engine goes together, one room a phase or two."""

from knowledge.tasks import (
    after_damage,
    bearings,
    block,
    cleaning,
    cleaning_block,
    cleaning_oil,
    distributor,
    drive,
    first_start,
    pickup,
    priming,
    pump,
    pump_cover,
    relief,
    run_in,
    sump,
    tray,
)

#: in the order of the work
MODULES = (
    cleaning,
    cleaning_block,
    cleaning_oil,
    after_damage,
    block,
    bearings,
    pump,
    pump_cover,
    relief,
    drive,
    distributor,
    tray,
    pickup,
    sump,
    priming,
    first_start,
    run_in,
)
