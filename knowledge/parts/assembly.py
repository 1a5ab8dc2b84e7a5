"""Parts a bad build or a part breaking up inside calls for."""

from knowledge.causes.assembly import (
    FASTENER_LOOSE_INSIDE,
    PART_SHEDDING_INSIDE,
    TIMING_GEAR_SHEDDING,
)
from knowledge.engines.features import CHAIN_TENSIONERS, PLASTIC_TIMING_GEAR
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import JIO, PE17

TIMING_GEAR_SET = Part(
    "timing_gear_set",
    "timing gears, or chain and sprockets, with metal teeth where they are made",
    "1 set",
    JIO,
    measure_first="teeth, links, bore and key; marks for the timing",
    for_causes=(TIMING_GEAR_SHEDDING,),
    only_with=(PLASTIC_TIMING_GEAR,),
)
CHAIN_GUIDES = Part(
    "chain_guides",
    "chain guides and tensioner blades",
    "1 set",
    CP,
    measure_first="chain width, pivot diameter, the version of each",
    for_causes=(TIMING_GEAR_SHEDDING,),
    only_with=(CHAIN_TENSIONERS, PLASTIC_TIMING_GEAR),
)
INSIDE_FASTENERS = Part(
    "inside_fasteners",
    "bolts, nuts and locks for what was slack, stretched or lost",
    "by the count",
    PE17,
    measure_first="thread, length, grade marked on the head; the hole's thread whole and dry",
    for_causes=(FASTENER_LOOSE_INSIDE,),
)
SHED_PART = Part(
    "shed_part",
    "the part that sheds, and what it runs against",
    "as found",
    CP,
    measure_first="find it first: the metal's kind, then size and fit of the part",
    for_causes=(PART_SHEDDING_INSIDE,),
)
