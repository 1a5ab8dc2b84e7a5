"""Parts and places with their states: the files of each station, put together."""

from __future__ import annotations

from knowledge.lexicon.things.bearings import THINGS_BEARINGS
from knowledge.lexicon.things.crankcase import THINGS_CRANKCASE
from knowledge.lexicon.things.filter_and_galleries import THINGS_DELIVERY
from knowledge.lexicon.things.gauge_and_sender import THINGS_INSTRUMENT
from knowledge.lexicon.things.leaks import THINGS_LEAKS
from knowledge.lexicon.things.oil import THINGS_OIL
from knowledge.lexicon.things.pickup_and_sump import THINGS_SUCTION
from knowledge.lexicon.things.pump import THINGS_PUMP
from knowledge.lexicon.things.relief_valve import THINGS_RELIEF
from knowledge.lexicon.things.thing import Thing
from knowledge.lexicon.things.top_end import THINGS_TOPEND

#: parts whose states say nothing here; named so that their state goes to no other part
OTHER = Thing(
    family="other",
    names=(
        "valve|valves|ring|rings|carb|carburettor|carburetor|thermostat|starter|"
        "throttle|brake|brakes|injector|injectors|plugs|points|coil|battery|fuse|fuses|relay|belt|pulley|"
        "head|heads|manifold|gearbox|transmission|door|bolt|bolts|nut|washer|spring|bearing|tank|switch",
        "water|injection|hydraulic|fuel|lift|feed|vacuum|bilge|steering|air|coolant|hand|foot|raw|sea|primer|grease pump",
        "air|fuel filter",
        "clutch|friction plate|plates|basket|lining|linings",
        "wheel|alternator|release|pilot|pulley|supercharger|clutch|gearbox|thrust-release|water-pump|layshaft "
        "shaft? bearing|bearings|bush|bushes|bushing|bushings",
        "belt|fan|drive|accessory|serpentine? idler|tensioner pulley|wheel bush|bushing|bushes|bearing",
        "belt|fan|drive|accessory|serpentine idler|tensioner bush|bushing|bushes|bearing?",
        "vvt|ocv|solenoid|phaser solenoid? screen|filter|strainer|gauze",
        "scavenge|scavenging line|lines|hose|hoses|pipe|pipes|tube|side|fitting|fittings",
        "dry|wet sump system?",
        "wind|touch|phone|computer|head screen",
        "ground run|runs|check|speed|idle",
        "fuel|water|coolant|brake|vacuum|radiator|heater|boost|intercooler|hydraulic|injector|jumper|spill|air|shop line|lines|hose|hoses|pipe|pipes",
    ),
)
#: one table for each station
THINGS: tuple[Thing, ...] = (
    *THINGS_BEARINGS,
    *THINGS_CRANKCASE,
    *THINGS_DELIVERY,
    *THINGS_INSTRUMENT,
    *THINGS_LEAKS,
    *THINGS_OIL,
    *THINGS_PUMP,
    *THINGS_RELIEF,
    *THINGS_SUCTION,
    *THINGS_TOPEND,
    OTHER,
)
