"""Whether seat, plunger and spring of the relief valve go back in."""

from knowledge.model import Station
from knowledge.reuse import Fate, FateRule, UsedPart
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.relief import findings

RELIEF_VALVE = UsedPart(
    id="used_relief_valve",
    station=Station.RELIEF,
    says="relief valve: seat, plunger or ball",
    rules=(
        FateRule(
            fate=Fate.REWORK,
            when=(
                findings.RELIEF_SEAT_SCORED,
                findings.RELIEF_PLUNGER_STICKS,
                findings.RELIEF_VALVE_STAYED_OPEN,
                findings.RELIEF_VALVE_STAYED_SHUT,
                findings.RELIEF_FOUND_STUCK,
                findings.RELIEF_FOUND_BAD,
            ),
            how=(
                "lap or recut the seat, polish out burrs, fit a new ball or plunger; oiled, it must drop "
                "by its own weight. Renew the body if scores remain"
            ),
            source=COMMON_PRACTICE,
        ),
    ),
    look="drop test of the oiled plunger; bright light on the seat",
    reuse="wash bore and seat, rod the return passage, oil the plunger",
    source=COMMON_PRACTICE,
)
RELIEF_SPRING = UsedPart(
    id="used_relief_spring",
    station=Station.RELIEF,
    says="relief spring",
    rules=(
        FateRule(
            fate=Fate.RENEW,
            when=(
                findings.RELIEF_SPRING_SHORT_OR_BROKEN,
                findings.RELIEF_BENCH_OPENS_LOW,
                findings.RELIEF_PARTS_NOT_STANDARD,
            ),
            how="renew it with the listed one; test the force at fitted length on the bench",
            source=COMMON_PRACTICE,
        ),
    ),
    look="free length, and force at its fitted length on a scale",
    reuse="fit the same shims it came out with",
    source=COMMON_PRACTICE,
)
