"""Rules on panel gauges of two stations of one engine, such as flybridge and wheelhouse."""

from itertools import product

from knowledge.model import Gauge, Reading, Station
from knowledge.pressure import patterns
from knowledge.pressure.gauge import (
    SAY_SO,
    at_pump,
    counted,
    runs,
    said_alike,
    same_moment,
    sure_lower,
)
from knowledge.rule_api import Conclusions, Known, example, is_present, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import quantities as instrument_quantities
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)
AT_ONCE = 0.8  #: how likely two figures with the same words for when are of one moment (judgement)


def at(station: str, psi: float, rpm: float) -> Reading:
    """A reading of hot oil on the panel gauge of one station; an example."""
    return Reading(rpm, 363.15, psi * PSI, station=station)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(readings=[at("flybridge", 10, 700), at("wheelhouse", 45, 700)])],
    non_matches=[
        example(readings=[at("flybridge", 44, 700), at("wheelhouse", 45, 700)]),
        example(readings=[at("flybridge", 10, 700), at("wheelhouse", 45, 2500)]),
        example(readings=[at("flybridge", 10, 700), at("flybridge", 45, 700)]),
        example(readings=[at("", 10, 700), at("", 45, 700)]),
    ],
)
def panels_of_two_stations(known: Known) -> Conclusions:
    """Panel gauges of two stations that differ at the same moment cannot both be right."""
    limit = known.limit(instrument_quantities.MOST_PANEL_ERROR)
    panel = [
        r
        for r in known.readings()
        if r.station and r.gauge is Gauge.PANEL and runs(r) and not at_pump(r)
    ]
    apart = [
        counted(sure_lower(a, b, limit), 1.0 if same_moment(a, b) else AT_ONCE)
        for a, b in product(panel, panel)
        if a.station != b.station and (same_moment(a, b) or said_alike(a, b))
    ]
    if apart and max(apart) >= SAY_SO:
        yield is_present(patterns.SECOND_INSTRUMENT_DISAGREES, max(apart))
