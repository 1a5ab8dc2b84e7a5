"""Every listed root cause, for rules about all of them.

Imported by files of ``history`` and ``engines``; a new file of causes is added to ``MODULES``.
"""

from collections.abc import Iterator

from knowledge import unlisted
from knowledge.model import STRONG_UP, Cause, Finding, all_in
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_geometry as bearings_causes_geometry
from knowledge.stations.bearings import causes_poured as bearings_causes_poured
from knowledge.stations.bearings import causes_shafts as bearings_causes_shafts
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_crank_feed as delivery_causes_crank_feed
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.instrument import causes_line as instrument_causes_line
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.leaks import causes_openings as leaks_causes_openings
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.oil import causes_feed as oil_causes_feed
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.pump import causes_variable as pump_causes_variable
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.suction import causes_tap as suction_causes_tap
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds
from knowledge.stations.topend import causes_phasers as topend_causes_phasers

MODULES = (
    assembly_causes,
    assembly_causes_left_out,
    bearings_causes,
    bearings_causes_geometry,
    bearings_causes_poured,
    bearings_causes_shafts,
    delivery_causes,
    delivery_causes_galleries,
    delivery_causes_crank_feed,
    instrument_causes,
    instrument_causes_line,
    leaks_causes,
    leaks_causes_openings,
    oil_causes,
    oil_causes_contamination,
    oil_causes_feed,
    oil_causes_condition,
    pump_causes,
    pump_causes_drive,
    pump_causes_fitted,
    pump_causes_variable,
    relief_causes,
    suction_causes,
    suction_causes_sump,
    suction_causes_tap,
    topend_causes,
    topend_causes_feeds,
    topend_causes_phasers,
    unlisted,
)

CAUSES: tuple[Cause, ...] = tuple(c for m in MODULES for c in all_in(m.__name__, Cause))


def strongly_raised_by(fact: Finding) -> Iterator[Cause]:
    """Yield the causes that are strongly more common with this fact of history."""
    return (c for c in CAUSES if c.shifts.get(fact.id) is STRONG_UP)
