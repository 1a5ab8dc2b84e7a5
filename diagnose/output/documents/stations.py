"""Where along the oil's path it probably is, for when no single cause stands out."""

from __future__ import annotations

from dataclasses import dataclass
from math import prod

from diagnose.diagnosis import Diagnosis
from diagnose.reasoning.case_inference import Ranked
from knowledge.model import Station

LEAST_LIKELY = 0.1  #: a cause that is less likely does not stand out (judgement)
SHOWN = 3  #: places
#: a stretch of the oil's path in the words of the trade
STATION_SAYS = {
    Station.INSTRUMENT: "gauge, sender and wiring",
    Station.OIL: "the oil itself",
    Station.SUCTION: "pickup and sump",
    Station.PUMP: "pump and its drive",
    Station.RELIEF: "relief valve",
    Station.DELIVERY: "filter, cooler and oilways",
    Station.BEARINGS: "bearings",
    Station.TOPEND: "top end",
    Station.ASSEMBLY: "how it was put together",
    Station.LEAKS: "leaks outside",
}


@dataclass(frozen=True, kw_only=True)
class LikelyStation:
    """A stretch of the oil's path: how likely any cause of it is there, and the likeliest of them."""

    station: str
    says: str
    probability: float
    cause: str  #: what it says, without its explanation


def stands_out(diagnosis: Diagnosis) -> bool:
    """Whether the likeliest cause is likely enough to be named by itself."""
    ranking = diagnosis.ranking
    return bool(ranking) and ranking[0].probability >= LEAST_LIKELY


def likely_stations(diagnosis: Diagnosis) -> tuple[LikelyStation, ...]:
    """The likeliest stretches; their causes are taken as independent. No fault is no place."""
    causes: dict[Station, list[Ranked]] = {}
    for ranked in diagnosis.ranking:
        if not ranked.cause.no_fault:
            causes.setdefault(ranked.cause.station, []).append(ranked)
    found = [
        LikelyStation(
            station=station.value,
            says=STATION_SAYS[station],
            probability=1.0 - prod(1.0 - r.probability for r in those),
            cause=those[0].cause.says.partition(":")[0],
        )
        for station, those in causes.items()
        if station in STATION_SAYS
    ]
    return tuple(sorted(found, key=lambda s: -s.probability)[:SHOWN])
