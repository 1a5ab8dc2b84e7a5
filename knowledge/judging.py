"""The probability that a measured part is past its limit, and the finding that follows.

Imported by every rule that compares a measured value or a gauge reading with a limit.
"""

from collections.abc import Iterator
from math import erf, sqrt

from knowledge.limits import Limit, Side
from knowledge.model import Finding, Measure
from knowledge.rule_api import Derived, Known, is_absent, is_present

LEAST_SURE = 0.01  #: no measurement makes certain (judgement)


def sure_beyond(value: float, limit: float, spread: float) -> float:
    r"""Probability that the true value lies beyond (above) the limit, from one measurement.

    The measuring error is taken as normal about the value read:

    .. math:: P = \frac{1}{2}\left(1 + \operatorname{erf}\frac{v - L}{\sigma\sqrt{2}}\right)

    ``value`` and ``limit`` in the same SI unit, ``spread`` one standard deviation of the
    measuring error, above zero. The answer is kept within 0.01 and 0.99.

    A reading right on the limit says nothing; one error's width past it says a good deal:

    >>> round(sure_beyond(0.15e-3, 0.15e-3, 0.02e-3), 2)
    0.5
    >>> round(sure_beyond(0.17e-3, 0.15e-3, 0.02e-3), 2)
    0.84
    >>> sure_beyond(0.30e-3, 0.15e-3, 0.02e-3)
    0.99
    """
    if spread <= 0.0:
        raise ValueError(f"spread must be above zero, not {spread}")
    past = 0.5 * (1.0 + erf((value - limit) / (spread * sqrt(2.0))))
    return min(max(past, LEAST_SURE), 1.0 - LEAST_SURE)


def judged(finding: Finding, probability: float) -> Derived:
    """The finding present, or absent, as likely as ``probability`` [0 to 1] makes it."""
    if probability >= 0.5:
        return is_present(finding, probability)
    return is_absent(finding, 1.0 - probability)


def over(finding: Finding, measure: Measure, value: float, limit: float) -> Derived:
    """The finding that a measured ``value`` is above ``limit``, both in the measure's SI unit."""
    return judged(finding, sure_beyond(value, limit, measure.spread))


def under(finding: Finding, measure: Measure, value: float, limit: float) -> Derived:
    """The finding that a measured ``value`` is below ``limit``, both in the measure's SI unit."""
    return judged(finding, sure_beyond(limit, value, measure.spread))


def sure_past(known: Known, measure: Measure, limit: Limit, value: float) -> float:
    """Probability that ``value`` is beyond the engine's limit, on that limit's side, SI.

    Where the engine's own figure is not known, the mean over the figures printed for its kind:
    each is as likely to be near its own as any other (judgement).
    """
    way = -1.0 if limit.side is Side.LEAST else 1.0
    each = [sure_beyond(way * value, way * at, measure.spread) for at in known.limit_figures(limit)]
    return sum(each) / len(each)


def beyond_limit(
    known: Known, finding: Finding, measure: Measure, limit: Limit
) -> Iterator[Derived]:
    """The finding that the worst measured value is beyond a limit.

    Nothing follows where none is measured, nor where only figures of another kind of engine are
    printed.

    The worst value is the largest for a limit at the top, the smallest for one at the bottom.
    """
    worst = known.smallest if limit.side is Side.LEAST else known.measured
    if (value := worst(measure)) is not None and known.limit_figures(limit):
        yield judged(finding, sure_past(known, measure, limit, value))
