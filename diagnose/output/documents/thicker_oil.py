"""Whether thicker oil can carry an engine until it is repaired, in a few sentences."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.circuit.band import Band
from diagnose.circuit.deviations import Deviation
from diagnose.circuit.forecast import Forecast, Target
from diagnose.output.scale import Scale
from knowledge.pressure.quantities import STOP_IDLE_PRESSURE


def until_repaired(
    grade: str,
    at: str,
    before: Band,
    after: Band,
    wanted: float,
    stop: float,
    found: Sequence[Deviation],
    scale: Scale,
) -> str:
    """Say what an oil gives, what it does not cure, what to watch and when to stop.

    ``before``, ``after``: hot idle pressure [Pa], at the state of running ``at``; ``wanted`` and
    ``stop``: pressures [Pa] wanted there, and below which nobody may run it.
    """
    gives = what_it_gives(grade, at, before, after, wanted, scale)
    worn = [d.says for d in found if d.parameter is not None and d.parameter.gap]
    stays = "the loss stays"
    if worn:
        stays = f"{' and '.join(worn[:2])} {'stay as they are' if worn[1:] else 'stays as it is'}"
    return (
        f"{gives} It cures nothing: {stays}, wear goes on. Watch hot idle and cold starts; stop at once below {scale.one(stop)} at idle, at a knock, or with "
        "metal in the filter."
    )


def what_it_gives(
    grade: str, at: str, before: Band, after: Band, wanted: float, scale: Scale
) -> str:
    """Say what an oil gives, and whether that is enough; as ``until_repaired``."""
    more = after.mean - before.mean
    if more < scale.least:
        does = "enough" if after.low >= wanted else "too little"
        return (
            f"{in_words(grade)} gives no more at {at} ({scale.one(before.mean)}): {does} for the "
            f"{scale.one(wanted)} wanted."
        )
    does = "still too little"
    if after.high >= wanted:
        likely = "most likely too little" if after.mean < wanted else "perhaps enough"
        does = f"{'enough' if after.low >= wanted else likely} for the {scale.one(wanted)} wanted"
    return (
        f"{in_words(grade)} gives {scale.figure(after.mean)} instead of {scale.one(before.mean)} "
        f"at {at}: {does}."
    )


def in_words(grade: str) -> str:
    """A grade as people say it.

    >>> in_words("50"), in_words("20W-50")
    ('SAE 50', '20W-50')
    """
    return f"SAE {grade}" if grade.isdecimal() else grade


def planned_oil(forecast: Forecast, scale: Scale) -> str:
    """What the oil planned does until the repair, if it is thicker and nothing else is planned."""
    oils = [s for s in forecast.set_to if s.parameter is None]
    if len(oils) != 1 or len((*forecast.plans, *forecast.settings)) > 1:
        return ""
    wanted = _wanted(forecast)
    if wanted is None:
        return ""
    at = wanted.rpm
    before, after = (
        Band.of(forecast.hot_pressure(p, at)) for p in (forecast.before, forecast.after)
    )
    if after.mean <= before.mean:
        return ""
    stop = forecast.case.limit(STOP_IDLE_PRESSURE)
    where, found = f"{at:.0f} rpm hot", forecast.found
    return until_repaired(oils[0].text, where, before, after, wanted.pressure, stop, found, scale)


def _wanted(forecast: Forecast) -> Target | None:
    """The pressure wanted at idle, else the first that is wanted."""
    at_idle = [t for t in forecast.targets if t.rpm == forecast.case.idle_speed]
    return next(iter((*at_idle, *forecast.targets)), None)
