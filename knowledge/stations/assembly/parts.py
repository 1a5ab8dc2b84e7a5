"""Parts for a repair of the assembly."""

from knowledge import sources
from knowledge.engines import features
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.assembly import causes
from knowledge.work import Part

TIMING_GEAR_SET = Part(
    id="timing_gear_set",
    says="timing gears, or chain and sprockets, with metal teeth if available",
    quantity="1 set",
    source=sources.CLUB_BLOCKED_SCREENS,
    measure_first="teeth, links, bore and key; marks for the timing",
    for_causes=(causes.TIMING_GEAR_SHEDDING,),
    only_with=(features.PLASTIC_TIMING_GEAR,),
)
CHAIN_GUIDES = Part(
    id="chain_guides",
    says="chain guides and tensioner blades",
    quantity="1 set",
    source=COMMON_PRACTICE,
    measure_first="chain width, pivot diameter, the version of each",
    for_causes=(causes.TIMING_GEAR_SHEDDING,),
    only_with=(features.CHAIN_TENSIONERS, features.PLASTIC_TIMING_GEAR),
)
INSIDE_FASTENERS = Part(
    id="inside_fasteners",
    says="bolts, nuts and locks to replace what was loose, stretched or lost",
    quantity="by the count",
    source=COMMON_PRACTICE,
    measure_first="thread, length, grade marked on the head; thread of the hole whole and dry",
    for_causes=(causes.FASTENER_LOOSE_INSIDE,),
)
SHED_PART = Part(
    id="shed_part",
    says="the part that sheds, and what it runs against",
    quantity="as found",
    source=COMMON_PRACTICE,
    measure_first="find it first: the kind of metal, then size and fit of the part",
    for_causes=(causes.PART_SHEDDING_INSIDE,),
)
