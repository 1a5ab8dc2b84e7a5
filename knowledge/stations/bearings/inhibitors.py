"""What shells and metal rule out: seen only rarely beside it."""

from knowledge.debris import findings as debris_findings
from knowledge.model import ALWAYS, MOSTLY, Station
from knowledge.pressure import patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.bearings import findings, findings_shells
from knowledge.stations.oil import causes_condition as oil_causes_condition

SOUND_ENGINES_SHED_NO_BEARING = InhibitorGroup(
    id="sound_engines_shed_no_bearing",
    station=Station.BEARINGS,
    says="Bearing metal, wiped shells and a knock are never the ordinary fall of warm oil.",
    parent=oil_causes_condition.OIL_HOT_NORMAL,
    inhibits={
        findings_shells.SHELLS_WIPED: (ALWAYS, COMMON_PRACTICE),
        debris_findings.COPPER_FLAKES: (MOSTLY, COMMON_PRACTICE),
        debris_findings.GREY_SOFT_FLAKES: (MOSTLY, COMMON_PRACTICE),
        findings.BEARING_KNOCK: (MOSTLY, COMMON_PRACTICE),
        findings.DEEP_KNOCK_UNDER_LOAD: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings_shells.SHELLS_WIPED),
        example(patterns.GAUGE_READS_LOW, debris_findings.COPPER_FLAKES),
        example(patterns.GAUGE_READS_LOW, debris_findings.GREY_SOFT_FLAKES),
        example(patterns.GAUGE_READS_LOW, findings.BEARING_KNOCK),
        example(patterns.GAUGE_READS_LOW, findings.DEEP_KNOCK_UNDER_LOAD),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
