"""What a filter rules out: seen only rarely beside it."""

from knowledge.model import MOSTLY, Station
from knowledge.pressure import patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import PHYSICS
from knowledge.stations.delivery import findings_filter
from knowledge.stations.relief import causes as relief_causes

BULGED_WAS_OVER_PRESSURE = InhibitorGroup(
    id="bulged_was_over_pressure",
    station=Station.DELIVERY,
    says="A filter that bulged had too much pressure: a relief valve held open cannot give that.",
    child=findings_filter.FILTER_BULGED,
    inhibited_by={
        relief_causes.RELIEF_DEBRIS: (MOSTLY, PHYSICS),
        relief_causes.RELIEF_STUCK_OPEN: (MOSTLY, PHYSICS),
    },
    matches=[example(patterns.GAUGE_READS_LOW, findings_filter.FILTER_BULGED)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
