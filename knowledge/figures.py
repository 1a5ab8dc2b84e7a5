"""Figures that quantities and tasks share: units, errors of a method, a band round a figure."""

from knowledge.model import Source
from knowledge.units import INCH, LBF, MM, PSI, THOU
from knowledge.work import Band, SizeRange

LB_FT = LBF * 0.3048  #: N·m
IN_LB = LBF * INCH  #: N·m, a twelfth of a foot-pound
MINUTE = 60.0
HOUR = 3600.0
# Usual error of a method, one standard deviation each, with care; JUDGEMENT. The strip's scale
# has steps of half a thou and is read between them, so its error is below that of a feeler.
GAUGE_STRIP = 0.008 * MM
MICROMETER = 0.1 * THOU
BORE_GAUGE = 0.5 * THOU  #: a clearance as the difference of bore and journal
FEELER = 0.5 * THOU
DIAL_GAUGE = 0.5 * THOU
CLAY = INCH / 32
FEELERS_STACKED = 5 * THOU  #: a pack of blades or a drill shank in a gap hard to reach
TRUSTED_GAUGE = 2 * PSI
THERMOMETER = 4.0  #: K
STOPWATCH = 0.5  #: s
TACHOMETER = 20.0  #: rpm
#: how far either side of one printed torque still counts as that figure; JUDGEMENT
EITHER_SIDE = 0.10


def wrench(torque: float) -> float:
    """Usual error of a setting torque wrench at a torque [N·m], one standard deviation [N·m].

    A class A tool is allowed 4 %, and 6 % up to 10 N·m (TORQUE_TOOL_ISO_6789); hand and thread add
    their share, so its whole allowance is taken as one standard deviation (JUDGEMENT).

    >>> round(wrench(20.0), 2), round(wrench(1.7), 2)
    (0.8, 0.1)
    """
    return torque * (0.04 if torque > 10.0 else 0.06)


def around(
    torque: float,
    source: Source,
    says: str,
    *,
    of_one: bool = False,
    of_size: SizeRange | None = None,
) -> Band:
    """The band for a source that prints one torque: ten per cent either side of it.

    >>> from knowledge.sources import COMMON_PRACTICE
    >>> band = around(20.0, COMMON_PRACTICE, "a screw")
    >>> band.low, band.high
    (18.0, 22.0)
    """
    return Band(
        low=torque * (1 - EITHER_SIDE),
        high=torque * (1 + EITHER_SIDE),
        source=source,
        says=f"{says}; one figure, taken 10 % either side",
        of_one=of_one,
        of_size=of_size,
    )
