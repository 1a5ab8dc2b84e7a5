"""Published sizes of bearings: clearance by journal diameter, undersizes of shells, instruments.

All lengths in metres, all clearances on the diameter.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from knowledge import sources
from knowledge.figures import GAUGE_STRIP, MICROMETER
from knowledge.model import Source
from knowledge.sources import COMMON_PRACTICE, FROM_MEMORY, JUDGEMENT
from knowledge.units import INCH, MM, THOU


class Use(StrEnum):
    """What an engine is built for, as far as its clearances depend on it."""

    ROAD = "road"  #: road, boat, farm: everyday loads
    HARD = "hard"  #: high speed or high output


@dataclass(frozen=True, slots=True, kw_only=True)
class Guide:
    """Clearance wanted by journal diameter: shares of it, and metres added, as one source says."""

    says: str
    source: Source
    low: float  #: share of the diameter
    high: float  #: share of the diameter
    low_added: float = 0.0  #: m
    high_added: float = 0.0  #: m
    use: Use | None = None  #: None: for either

    def band(self, diameter: float) -> tuple[float, float]:
        """Return the least and the most clearance [m] for a journal diameter [m].

        >>> [round(c / INCH, 4) for c in GUIDES[0].band(2.0 * INCH)]
        [0.0015, 0.002]
        """
        return self.low * diameter + self.low_added, self.high * diameter + self.high_added


#: the first one of a use decides where the engine's maker gives nothing; all are shown
GUIDES = (
    Guide(
        says="bearing maker, most engines",
        source=sources.BEARING_MAKER_PER_INCH,
        low=0.00075,
        high=0.00100,
        use=Use.ROAD,
    ),
    Guide(  # the source gives the larger figure; that the road's largest is the least: JUDGEMENT
        says="bearing maker, high performance",
        source=sources.BEARING_MAKER_PER_INCH,
        low=0.00100,
        high=0.00100,
        high_added=0.5 * THOU,
        use=Use.HARD,
    ),
    Guide(
        says="magazine with a bearing maker's guide",
        source=sources.MAGAZINE_BEARINGS_2008,
        low=0.00100,
        high=0.00100,
        high_added=0.5 * THOU,
    ),
    Guide(
        says="builders: tight to loose",
        source=sources.RACE_CLEARANCES,
        low=0.00100,
        low_added=-0.5 * THOU,
        high=0.00100,
        high_added=0.5 * THOU,
    ),
    Guide(
        says="maker of gauge strip, usual",
        source=sources.STRIP_MAKER_LEAFLET,
        low=0.00050,
        high=0.00050,
    ),
)


@dataclass(frozen=True, slots=True)
class Undersize:
    """How much less than standard a shell's bore is [m], and a source that lists it.

    Half of it is added to the wall of each shell.
    """

    size: float
    source: Source
    usual: bool = True  #: made for most engines; others only for some


#: shells that adjust a clearance on a journal as it is; below zero: thinner than standard
FINE_INCH = (
    Undersize(-0.001 * INCH, sources.MAGAZINE_BEARINGS_2008, usual=False),
    Undersize(0.0005 * INCH, sources.FOUR_CRANK_1998, usual=False),
    Undersize(0.001 * INCH, sources.V10_JOURNALS_1996),
    Undersize(0.002 * INCH, sources.ARMY_TM_300_SHELLS),
    Undersize(0.003 * INCH, sources.V10_JOURNALS_1996, usual=False),
)
FINE_METRIC = (
    Undersize(0.025 * MM, sources.FOUR_CRANK_1998),
    Undersize(0.03 * MM, sources.FLAT_FOUR_CRANK_2000, usual=False),
    Undersize(0.05 * MM, sources.FLAT_FOUR_CRANK_2000),
)
#: shells for ground journals
GROUND_INCH = (
    Undersize(0.010 * INCH, sources.ARMY_TM_300_SHELLS),
    Undersize(0.020 * INCH, sources.ARMY_TM_300_SHELLS),
    Undersize(0.030 * INCH, sources.ARMY_TM_300_SHELLS),
)
GROUND_METRIC = (
    Undersize(0.25 * MM, sources.METRIC_UNDERSIZES),
    Undersize(0.50 * MM, sources.METRIC_UNDERSIZES),
    Undersize(0.75 * MM, sources.METRIC_UNDERSIZES),
)
MOST_FINE = 0.004 * INCH  #: an undersize up to this needs no grinding (JUDGEMENT)
#: two halves in one bore differ by no more than this in wall thickness
MOST_MIXED = 0.0005 * INCH
MIXED_SOURCE = sources.MAGAZINE_BEARINGS_2008
NOT_MIXED_SOURCE = sources.FOUR_SHELL_SELECTION_2000  #: says never to mix
#: taken off the smallest reading to clean a journal up (JUDGEMENT)
CLEAN_UP = 0.001 * INCH
CLEAN_UP_SOURCE = JUDGEMENT
GRIND_ALL_SOURCE = sources.ARMY_TM_262_CRANKPINS  #: one journal ground, all ground
GRIND_TO_BORE_SOURCE = sources.UNDERSIZE_GUIDE_2012

# What an instrument is off by, one standard deviation [m].
# A micrometer reads to 0.0002 in (ARMY_TM_202_JOURNALS), taken as two deviations.
JOURNAL_ERROR = MICROMETER
JOURNAL_ERROR_SOURCE = sources.ARMY_TM_202_JOURNALS
SHELL_ERROR = MICROMETER  #: ball-ended micrometer
SHELL_ERROR_SOURCE = JUDGEMENT
BORE_ERROR = 0.2 * THOU  #: bore gauge set in the micrometer: its own error, and the setting's
BORE_ERROR_SOURCE = JUDGEMENT
#: a strip is good to 0.0005 in (CLEARANCE_CALCULATOR), taken as a little under two deviations
STRIP_ERROR = GAUGE_STRIP
STRIP_ERROR_SOURCE = sources.CLEARANCE_CALCULATOR

#: a bearing this far from the middle of the others of its kind is not of their family
FAMILY = 0.0005 * INCH
FAMILY_SOURCE = COMMON_PRACTICE

#: how far a shell stands above the joint, cap on and one bolt slack
CRUSH = (0.001 * INCH, 0.004 * INCH)
CRUSH_SOURCE = FROM_MEMORY
#: how much wider than its bore a loose shell is across the joint
SPREAD = (0.005 * INCH, 0.035 * INCH)  #: about 0.025 in on a rod shell, the limits are JUDGEMENT
SPREAD_SOURCE = sources.ARMY_TM_255_BEARING_FIT

# what can be real of parts of engines, for typing errors (JUDGEMENT)
PLAUSIBLE_SIZE = (10 * MM, 300 * MM)  #: of journals and bores
MOST_APART = 0.5 * MM  #: readings of one diameter; further apart, one is a slip of the pen
MOST_OVER_NEW, MOST_UNDER_NEW = 0.25 * MM, 2.5 * MM  #: of a journal beside what it was new
PLAUSIBLE_SHELL = (0.8 * MM, 15 * MM)  #: wall of one shell
PLAUSIBLE_CLEARANCE = (0.0, 1 * MM)
PLAUSIBLE_STRIP = (0.005 * MM, 0.4 * MM)  #: a strip shows no less and no more
PLAUSIBLE_CRUSH = (0.0, 0.5 * MM)
PLAUSIBLE_SPREAD = (0.0, 5 * MM)
PLAUSIBLE_UNDERSIZE = (-0.1 * MM, 2 * MM)
