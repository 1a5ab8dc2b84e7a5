"""Which gauge readings the hydraulic survey uses, and which derived findings it replaces.

What a person reported stays; what rules derived from the readings would count the same evidence
twice.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import replace

from diagnose.case.case import Case
from diagnose.inference.chaining import InferenceResult, Observation
from knowledge.engines.layouts import UNKNOWN
from knowledge.model import Finding, Gauge, Reading, State
from knowledge.pressure.behaviour import FADES_AT_SPEED_BACK_AFTER_REST, LOW_FROM_FIRST_START
from knowledge.pressure.direct_gauge import (
    GOOD_AT_PUMP_LOW_IN_GALLERY,
    IDLE_BELOW_SPEC,
    PORTS_DIFFER,
)
from knowledge.pressure.gauge import SAME_HEAT, of_one_state, runs
from knowledge.pressure.patterns import FELL_SUDDENLY, SECOND_INSTRUMENT_DISAGREES
from knowledge.stations.oil.findings_heat import OIL_TEMPERATURE_HIGH
from knowledge.stations.pump.findings_drive import STEPPED_DOWN_AND_STAYED

LEAST_READINGS, LEAST_DIRECT = 3, 2
SAME_PRESSURE = 0.01  #: of the pressure: less apart, it was the same reading given again
MOST_WEIGHED = 100  #: readings; the time of a survey grows with their cube
#: findings derived from readings that a survey does not weigh
OF_THEIR_OWN = frozenset(
    {
        SECOND_INSTRUMENT_DISAGREES,
        PORTS_DIFFER,
        IDLE_BELOW_SPEC,
        OIL_TEMPERATURE_HIGH,
        LOW_FROM_FIRST_START,
    }
)

#: what two gauges on two ports show; a reported one outweighs what is reckoned from one port
LOST_BETWEEN = frozenset({PORTS_DIFFER, GOOD_AT_PUMP_LOW_IN_GALLERY})


def usable(readings: Sequence[Reading]) -> tuple[Reading, ...]:
    """Return readings of the running engine; those of a direct gauge only, where there are two.

    What was given again, of one state of running and one gauge, counts once, as given last.
    """
    running = _once([r for r in readings if runs(r)])
    direct = [r for r in running if r.gauge is Gauge.DIRECT]
    return tuple(direct if len(direct) >= LEAST_DIRECT else running)


def _once(readings: Sequence[Reading]) -> list[Reading]:
    """The readings without those that a later one repeats."""
    return [
        each
        for i, each in enumerate(readings)
        if not any(_repeats(later, each) for later in readings[i + 1 :])
    ]


def _repeats(later: Reading, each: Reading) -> bool:
    same = (later.gauge, later.at_most, later.at_least) == (each.gauge, each.at_most, each.at_least)
    close = abs(later.pressure - each.pressure) <= SAME_PRESSURE * each.pressure
    return same and close and of_one_state(later, each)


def _is_there(observation: Observation | None) -> bool:
    return observation is not None and observation.state is State.PRESENT


def spread_evenly(readings: tuple[Reading, ...], most: int = MOST_WEIGHED) -> tuple[Reading, ...]:
    """Return at most so many of the readings, two or more, spread evenly from first to last.

    Readings of one gauge share its error, so that more of them add next to nothing.
    """
    last = len(readings) - 1
    if last < most:
        return readings
    return tuple(readings[round(i * last / (most - 1))] for i in range(most))


def states(temperatures: Sequence[float]) -> list[int]:
    """Number the groups of readings taken at about the same oil temperature.

    >>> states([300.0, 365.0, 361.0, 298.0])
    [0, 1, 1, 0]
    """
    order = sorted(range(len(temperatures)), key=lambda i: temperatures[i])
    found = [0] * len(temperatures)
    state, start = -1, float("-inf")
    for i in order:
        if temperatures[i] - start > SAME_HEAT:
            state, start = state + 1, temperatures[i]
        found[i] = state
    return found


def enough_for_survey(case: Case, readings: Sequence[Reading]) -> bool:
    """Return whether the readings suffice for the cause graph.

    Three, at two oil temperatures, on an engine whose circuit is known at least by its layout.
    """
    changing = {FELL_SUDDENLY, FADES_AT_SPEED_BACK_AFTER_REST, STEPPED_DOWN_AND_STAYED}
    if any(s.finding in changing and s.observation for s in case.finding_records):
        return False  # the engine changed between the readings
    if any(s.finding in LOST_BETWEEN and _is_there(s.observation) for s in case.finding_records):
        return False  # measured between two ports: one port's readings do not say where it is lost
    known = case.engine.profile is not None or bool(case.baseline)
    if case.profile is None or (case.layout is UNKNOWN and not known):
        return False
    heats = [
        r.oil_temperature
        for r in usable(readings)
        if r.oil_temperature is not None and r.oil_spread <= SAME_HEAT
    ]
    return len(heats) >= LEAST_READINGS and len(set(states(heats))) >= 2


def drop_reading_findings(
    conclusions: InferenceResult, reported: Collection[Finding]
) -> InferenceResult:
    """Return the result without findings derived, directly or not, from gauge readings."""
    gone = {
        c.finding
        for c, t in conclusions.derived.items()
        if t.read and c.finding not in OF_THEIR_OWN and c.finding not in reported
    }
    grown = True
    while grown:
        more = {
            c.finding
            for c, t in conclusions.derived.items()
            if gone.intersection(t.premises) and c.finding not in reported
        }
        grown = not more <= gone
        gone |= more
    kept = {c: t for c, t in conclusions.derived.items() if c.finding not in gone}
    return replace(conclusions, derived=kept)
