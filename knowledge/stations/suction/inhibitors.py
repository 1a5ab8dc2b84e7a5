"""What a look into the sump rules out: seen only rarely beside it."""

from knowledge.model import ALWAYS, Station
from knowledge.pressure import patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.suction import causes_sump, findings_sump

TOUCHED_IS_NOT_TOO_FAR = InhibitorGroup(
    id="touched_is_not_too_far",
    station=Station.SUCTION,
    says="A pickup that has touched the sump is not too high above it.",
    child=findings_sump.PICKUP_WITNESS_MARK,
    inhibited_by={causes_sump.PICKUP_CLEARANCE_WIDE: (ALWAYS, COMMON_PRACTICE)},
    matches=[example(patterns.GAUGE_READS_LOW, findings_sump.PICKUP_WITNESS_MARK)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
