"""What the stick rules out of outside leaks: seen only rarely beside it."""

from knowledge.model import ALWAYS, Station
from knowledge.pressure import patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.leaks import causes, causes_openings
from knowledge.stations.oil import findings as oil_findings

OVER_FULL_HAS_NOT_RUN_OUT = InhibitorGroup(
    id="over_full_has_not_run_out",
    station=Station.LEAKS,
    says="A sump that is over full has not lost its oil to the outside.",
    note="Misleads when somebody has topped it up since, and far too much.",
    child=oil_findings.LEVEL_HIGH,
    inhibited_by={
        causes.EXTERNAL_LEAK_MAJOR: (ALWAYS, COMMON_PRACTICE),
        causes.DRAIN_PLUG_OUT: (ALWAYS, COMMON_PRACTICE),
        causes_openings.SUMP_HOLED: (ALWAYS, COMMON_PRACTICE),
    },
    matches=[example(patterns.GAUGE_READS_LOW, oil_findings.LEVEL_HIGH)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
