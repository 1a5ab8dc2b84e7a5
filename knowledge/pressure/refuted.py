"""Whether a trusted gauge showed pressure where panel or lamp showed none, under the same condition."""

from collections.abc import Iterator

from knowledge.judging import sure_beyond
from knowledge.model import Gauge, Reading
from knowledge.pressure import quantities
from knowledge.pressure.gauge import (
    FALLEN,
    at_pump,
    hot_share,
    idle_share,
    is_cold,
    runs,
    said_alike,
    same_moment,
)
from knowledge.reports.behaviours import shown
from knowledge.reports.words import LOSSES, Circumstance, Course, Shows
from knowledge.rule_api import Known

FAST = 2000.0  #: rpm: from here on the stop limit for speed holds
ROUNDED = 0.001  #: share that a limit in another unit is off by: 29 psi is no less than 2 bar
SAID = 0.3  #: spread of a speed in words, of the speed; a larger one was not said (judgement)
_ALWAYS_ON = frozenset({Course.CONSTANT})
HARDLY = 0.02  #: of what a reading in words may mean: too little to count (judgement)
LIKELY = 0.5  #: least probability that a reading in words was taken hot and at idle


def running(known: Known) -> Iterator[Reading]:
    """Gallery readings of the running engine."""
    return (r for r in known.readings() if runs(r) and not at_pump(r))


def share_below(reading: Reading, limit: float) -> float:
    """How much of what a reading may mean is below a limit [Pa]; the gauge's error left out."""
    if reading.at_least:
        return 0.0
    if reading.pressure_spread:
        return sure_beyond(limit, reading.pressure, reading.pressure_spread)
    below = reading.pressure < limit * (1.0 - ROUNDED)
    return float(below or (reading.at_most and reading.pressure <= limit))


def stop_limit(known: Known, reading: Reading) -> float:
    """The pressure [Pa] below which the engine is stopped at a reading's speed.

    An old engine that runs on 10 psi is not judged by the rule of thumb for others: if its own
    usual pressure is known and the rule would stop it there, three quarters of the usual count.
    """
    idle = known.limit(quantities.STOP_IDLE_PRESSURE)
    if reading.rpm < FAST:
        return idle
    fast = known.limit(quantities.STOP_RUNNING_PRESSURE)
    if runs_on_less(known, reading):
        return max(idle, FALLEN * (reading.usual or 0.0))
    return fast


def runs_on_less(known: Known, reading: Reading) -> bool:
    """Whether an engine usually shows less at a reading's speed than the rule of thumb allows.

    A maker's own figure is never set aside.
    """
    limit = known.limit(quantities.STOP_RUNNING_PRESSURE)
    thumb = limit == quantities.STOP_RUNNING_PRESSURE.typical
    return thumb and 0.0 < (reading.usual or 0.0) < limit


def is_refuted(known: Known, reading: Reading, limit: float) -> bool:
    """Whether a trusted gauge showed a limit [Pa] or more at the moment of a panel's reading.

    Two readings with the same words for speed and heat count as of one moment, and so does one
    with no word on when.
    """
    return reading.gauge is Gauge.PANEL and (
        shown_enough(known)
        or any(
            d.gauge is Gauge.DIRECT
            and d.pressure >= limit
            and (same_moment(reading, d) or (said_alike(reading, d) and speed_is_said(reading)))
            for d in known.readings()
        )
    )


def shown_enough(known: Known) -> bool:
    """Whether a trusted gauge showed enough, at idle or with no word on when, and never too little.

    "The panel shows 5, a mechanical gauge 40": both of one moment. A figure has to be enough for
    any speed, as nobody knows at which, or how hot, it was read.
    """
    trusted = [b for b in shown(known, *LOSSES, Shows.NORMAL) if b.gauge is Gauge.DIRECT]
    if any(b.shows is not Shows.NORMAL for b in trusted):
        return False
    fast = known.limit(quantities.STOP_RUNNING_PRESSURE)
    idle = known.limit(quantities.USUAL_IDLE_SPEED)
    said = any(not b.during for b in trusted) and _none_too_low(known)
    return said or any(
        share_below(d, fast) <= HARDLY
        and not is_cold(d)
        and (not speed_is_said(d) or (d.oil_temperature is None and idle_share(d, idle) >= LIKELY))
        for d in _good(known)
    )


def speed_is_said(reading: Reading) -> bool:
    """Whether the speed was said, in figures or words."""
    return reading.rpm_spread <= SAID * reading.rpm


def is_nothing(reading: Reading) -> bool:
    """Whether a panel gauge showed no pressure at all."""
    return reading.gauge is Gauge.PANEL and reading.pressure == 0.0


def zero_is_refuted(known: Known) -> bool:
    """Whether all that panels showed too low was shown otherwise by a trusted gauge."""
    low = [
        r
        for r in running(known)
        if r.gauge is Gauge.PANEL and share_below(r, stop_limit(known, r)) > 0.0
    ]
    if any(shown(known, Shows.LOST)):
        return False
    if any(b.gauge is not Gauge.DIRECT for b in shown(known, Shows.NONE)):
        return shown_enough(known)
    return bool(low) and all(is_refuted(known, r, stop_limit(known, r)) for r in low)


def lamp_is_refuted(known: Known) -> bool:
    """Whether a trusted gauge showed pressure at hot idle, where a lamp comes on first.

    Or with no word on when. Not where the lamp comes on in a manoeuvre, at speed, or in the course
    of a run.
    """
    idle = known.limit(quantities.USUAL_IDLE_SPEED)
    at_hot_idle = (hot_share(d) >= LIKELY and idle_share(d, idle) >= LIKELY for d in _good(known))
    return _plain_lamp(known) and (shown_enough(known) or any(at_hot_idle))


def lamp_at_one_speed(known: Known) -> bool:
    """Whether lamp and trusted gauge were seen, with no word on when: one speed only agrees."""
    return _plain_lamp(known) and any(_good(known))


def _plain_lamp(known: Known) -> bool:
    when = frozenset({Circumstance.HOT, Circumstance.IDLE})
    lamps = list(shown(known, Shows.LAMP))
    return not any(b.during - when or b.course - _ALWAYS_ON or b.onset for b in lamps)


def _good(known: Known) -> Iterator[Reading]:
    """Readings of a trusted gauge above the stop limit, where none is below."""
    if _none_too_low(known):
        yield from _trusted(known)


def _none_too_low(known: Known) -> bool:
    """Whether no reading of a trusted gauge may be below the stop limit."""
    return all(share_below(d, stop_limit(known, d)) <= HARDLY for d in _trusted(known))


def _trusted(known: Known) -> Iterator[Reading]:
    return (r for r in running(known) if r.gauge is Gauge.DIRECT)
