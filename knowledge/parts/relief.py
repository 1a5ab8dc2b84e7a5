"""Parts of the relief valve."""

from knowledge.causes.relief import (
    RELIEF_BORE_SCORED,
    RELIEF_CAP_LOOSE,
    RELIEF_HUNTING,
    RELIEF_PART_MISSING,
    RELIEF_SPRING_WEAK_BROKEN,
    RELIEF_SPRING_WRONG,
    RELIEF_STUCK_CLOSED,
    RELIEF_STUCK_OPEN,
)
from knowledge.parts.shapes import Part
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB05, JHV, RLS, RVF
from knowledge.vocabulary import Access

RELIEF_VALVE = Part(
    "relief_valve",
    "relief plunger or ball",
    "1",
    RVF,
    measure_first="plunger and bore diameter: it must drop through by its own weight, oiled",
    for_causes=(
        RELIEF_STUCK_OPEN,
        RELIEF_STUCK_CLOSED,
        RELIEF_HUNTING,
        RELIEF_PART_MISSING,
    ),
    note="where it only stuck on a burr or dirt, the old one may serve",
    also=("relief valve kit",),
)
RELIEF_SPRING = Part(
    "relief_spring",
    "relief spring of the maker's rate",
    "1",
    CP,
    measure_first="free length, wire, coils and outside diameter; load at its fitted length",
    for_causes=(RELIEF_SPRING_WEAK_BROKEN, RELIEF_SPRING_WRONG, RELIEF_PART_MISSING),
    note="an old one is never stretched",
    also=("pressure spring",),
)
RELIEF_SHIMS = Part(
    "relief_shims",
    "relief shims, as many as the maker fits",
    "by the drawing",
    RLS,
    measure_first="thickness and number found; opening pressure on the bench",
    for_causes=(RELIEF_SPRING_WRONG, RELIEF_PART_MISSING),
)
RELIEF_SMALL_PARTS = Part(
    "relief_small_parts",
    "spring seat, guide and stop of the relief valve",
    "as the drawing shows",
    JHV,
    measure_first="the parts found against the drawing, which way round each sits",
    for_causes=(RELIEF_PART_MISSING, RELIEF_SPRING_WRONG),
)
RELIEF_SEAT = Part(
    "relief_seat",
    "relief seat, or the body or pump it is part of; an oversize ball where the maker allows it",
    "1",
    HB05,
    measure_first="bore and seat diameter, depth of the score",
    for_causes=(RELIEF_BORE_SCORED,),
)
RELIEF_CAP = Part(
    "relief_cap",
    "relief cap or plug, where the thread or hex is spoilt or it is lost",
    "1",
    CP,
    measure_first="thread, depth under the head: it sets the spring's load",
    for_causes=(RELIEF_CAP_LOOSE,),
)
RELIEF_CAP_WASHER = Part(
    "relief_cap_washer",
    "new seal washer for the relief cap",
    "1",
    CP,
    measure_first="diameters and thickness: it is part of the spring's setting",
    for_causes=(RELIEF_CAP_LOOSE, RELIEF_SPRING_WRONG, RELIEF_PART_MISSING),
    for_places=(Access.RELIEF_CAP_OFF,),
)
RELIEF_LOCK = Part(
    "relief_lock",
    "new split pin or lock where it has one",
    "1",
    CP,
    measure_first="hole diameter and length",
    for_causes=(RELIEF_CAP_LOOSE,),
    for_places=(Access.RELIEF_CAP_OFF,),
)
PUMP_RELIEF_PIN = Part(
    "pump_relief_pin",
    "new relief pin, plug or seal washer",
    "1",
    CP,
    measure_first="pin diameter and length, or plug thread",
    for_places=(Access.PUMP_RELIEF_OUT,),
)
