"""Parts for a repair of the relief valve."""

from knowledge import sources
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.relief import causes
from knowledge.work import Access, Part

RELIEF_VALVE = Part(
    id="relief_valve",
    says="relief plunger or ball",
    quantity="1",
    source=sources.RELIEF_FREE_FALL,
    measure_first="plunger and bore diameter: oiled, it must drop through by its own weight",
    for_causes=(
        causes.RELIEF_STUCK_OPEN,
        causes.RELIEF_STUCK_CLOSED,
        causes.RELIEF_HUNTING,
        causes.RELIEF_PART_MISSING,
    ),
    note="if it only stuck on a burr or dirt, the old one may be reused",
    also=("relief valve kit",),
)
RELIEF_SPRING = Part(
    id="relief_spring",
    says="relief spring of the maker's rate",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="free length, wire, coils and outside diameter; load at its fitted length",
    for_causes=(
        causes.RELIEF_SPRING_WEAK_BROKEN,
        causes.RELIEF_SPRING_WRONG,
        causes.RELIEF_PART_MISSING,
    ),
    note="never stretch an old one",
    also=("pressure spring",),
)
RELIEF_SHIMS = Part(
    id="relief_shims",
    says="relief shims, as many as the maker fits",
    quantity="by the drawing",
    source=sources.RELIEF_SPRING_STUDY,
    measure_first="thickness and number found; opening pressure on the bench",
    for_causes=(causes.RELIEF_SPRING_WRONG, causes.RELIEF_PART_MISSING),
)
RELIEF_SMALL_PARTS = Part(
    id="relief_small_parts",
    says="spring seat, guide and stop of the relief valve",
    quantity="as the drawing shows",
    source=idea_from(sources.RELIEF_VALVE_EXPLANATION),
    measure_first="the parts found against the drawing, which way round each sits",
    for_causes=(causes.RELIEF_PART_MISSING, causes.RELIEF_SPRING_WRONG),
)
RELIEF_SEAT = Part(
    id="relief_seat",
    says="relief seat, or the body or pump it is part of; an oversize ball where the maker allows it",
    quantity="1",
    source=idea_from(sources.CROSSOVER_V6_MANUAL_2007),
    measure_first="bore and seat diameter, depth of the score",
    for_causes=(causes.RELIEF_BORE_SCORED,),
)
RELIEF_CAP = Part(
    id="relief_cap",
    says="relief cap or plug, if the thread or hex is damaged or it is lost",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="thread, depth under the head: it sets the spring's load",
    for_causes=(causes.RELIEF_CAP_LOOSE,),
)
RELIEF_CAP_WASHER = Part(
    id="relief_cap_washer",
    says="new seal washer for the relief cap",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="diameters and thickness: it is part of the spring's setting",
    for_causes=(causes.RELIEF_CAP_LOOSE, causes.RELIEF_SPRING_WRONG, causes.RELIEF_PART_MISSING),
    for_places=(Access.RELIEF_CAP_OFF,),
)
RELIEF_LOCK = Part(
    id="relief_lock",
    says="new split pin (cotter pin) or lock, if it has one",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="hole diameter and length",
    for_causes=(causes.RELIEF_CAP_LOOSE,),
    for_places=(Access.RELIEF_CAP_OFF,),
)
PUMP_RELIEF_PIN = Part(
    id="pump_relief_pin",
    says="new relief pin, plug or seal washer",
    quantity="1",
    source=COMMON_PRACTICE,
    measure_first="pin diameter and length, or plug thread",
    for_places=(Access.PUMP_RELIEF_OUT,),
)
