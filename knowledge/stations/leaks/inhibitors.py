"""What stick and seeps rule out of outside leaks: seen only rarely beside it."""

from knowledge.model import ALWAYS, MOSTLY, Station
from knowledge.pressure import patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.leaks import causes, causes_openings, findings
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
SEEPS_COST_NO_PRESSURE = InhibitorGroup(
    id="seeps_cost_no_pressure",
    station=Station.LEAKS,
    says="A joint that only weeps costs no pressure: oil that pours out does.",
    note="Misleads when it pours only at speed: look again with the engine running.",
    child=findings.ONLY_SMALL_SEEPS,
    inhibited_by={
        causes.EXTERNAL_LEAK_MAJOR: (MOSTLY, COMMON_PRACTICE),
        causes.OIL_LINE_LEAK: (MOSTLY, COMMON_PRACTICE),
        causes_openings.SUMP_HOLED: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[example(patterns.GAUGE_READS_LOW, findings.ONLY_SMALL_SEEPS)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
