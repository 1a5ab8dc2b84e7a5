"""What is looked at while a place is open anyway, before anything further is opened.

Imported by planning. Each line binds only while its check can still show something.
"""

from __future__ import annotations

from dataclasses import dataclass

from knowledge.model import Source
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.delivery import findings_filter_cut as delivery_cut
from knowledge.stations.relief import findings as relief_findings
from knowledge.stations.topend import findings_feeds as topend_feeds
from knowledge.work import Access, Inspection

SHORT = 20.0  #: longest opening [min] that is done along with something else (judgement)


@dataclass(frozen=True, slots=True)
class Together:
    """Once this place is open, these checks come before any further opening."""

    opening: Access
    checks: tuple[Inspection, ...]
    why: str
    source: Source


TOGETHER: tuple[Together, ...] = (
    Together(
        opening=Access.FILTER_OFF,
        checks=(delivery_cut.CUT_THE_FILTER_OPEN, delivery_cut.SORT_WHAT_THE_FILTER_HELD),
        why="the filter is off: the metal it caught shows which part sheds",
        source=COMMON_PRACTICE,
    ),
    Together(
        opening=Access.SUMP_OFF,
        checks=(topend_feeds.LOOK_AT_THE_PISTON_JETS,),
        why="the sump is off: one look shows whether every piston jet is there",
        source=COMMON_PRACTICE,
    ),
    Together(
        opening=Access.PUMP_OFF,
        checks=(
            relief_findings.PULL_THE_RELIEF_VALVE,
            relief_findings.LOOK_AT_RELIEF_SEAT,
            relief_findings.BENCH_TEST_RELIEF,
        ),
        why="the pump is on the bench: inspect its relief valve with it",
        source=COMMON_PRACTICE,
    ),
    Together(
        opening=Access.PUMP_COVER_OFF,
        checks=(relief_findings.BENCH_TEST_RELIEF,),
        why="the pump is open on the bench: test its relief valve with it",
        source=COMMON_PRACTICE,
    ),
)
