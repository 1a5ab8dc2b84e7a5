"""Parts and places with their states: the files of each station, put together."""

from __future__ import annotations

from knowledge.lexicon.states import Thing
from knowledge.lexicon.things_delivery import THINGS_DELIVERY
from knowledge.lexicon.things_leaks import THINGS_LEAKS
from knowledge.lexicon.things_oil import THINGS_OIL
from knowledge.lexicon.things_relief import THINGS_RELIEF
from knowledge.lexicon.things_suction import THINGS_SUCTION

#: parts whose states say nothing here; named so that their state goes to no other part
OTHER = Thing(
    family="other",
    names=(
        "valve|valves|ring|rings|piston|pistons|cylinder|cylinders|carb|carburettor|carburetor|thermostat|starter|"
        "throttle|brake|brakes|injector|injectors|plugs|points|coil|battery|fuse|fuses|relay|belt|pulley|rod|rods|"
        "head|heads|manifold|gearbox|transmission|door|bolt|bolts|nut|washer|spring",
        "water|injection|hydraulic pump",
        "air|fuel filter",
        "dry|wet sump system?",
        "wind|touch|phone|computer|head screen",
        "ground run|runs|strap|wire|cable|lead|check|speed|idle|wires",
        "fuel|water|coolant|brake|vacuum line|hose|pipe",
    ),
)
#: one table for each station
THINGS: tuple[Thing, ...] = (
    *THINGS_DELIVERY,
    *THINGS_LEAKS,
    *THINGS_OIL,
    *THINGS_RELIEF,
    *THINGS_SUCTION,
    OTHER,
)
