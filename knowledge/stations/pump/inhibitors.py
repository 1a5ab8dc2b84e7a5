"""What priming with a drill rules out: seen only rarely beside it."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import ALWAYS, MOSTLY, OFTEN, Station
from knowledge.pressure import direct_gauge, patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.pump import causes, causes_drive, findings_priming
from knowledge.stations.relief import causes as relief_causes

DRILL_TAKES_THE_PLACE_OF_THE_DRIVE = InhibitorGroup(
    id="drill_takes_the_place_of_the_drive",
    station=Station.PUMP,
    says="A drill turns the pump itself: if that brings no pressure, the drive is not the fault.",
    note="Misleads when the drive broke because the pump is locked.",
    child=findings_priming.DRILL_GIVES_NONE,
    inhibited_by={
        causes_drive.PUMP_DRIVE_BROKEN: (MOSTLY, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_SLIP: (MOSTLY, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_BIND: (OFTEN, JUDGEMENT),
    },
    matches=[example(patterns.GAUGE_READS_ZERO, findings_priming.DRILL_GIVES_NONE)],
    non_matches=[example(patterns.GAUGE_READS_ZERO)],
)
GOOD_BY_DRILL_CLEARS_THE_CIRCUIT = InhibitorGroup(
    id="good_by_drill_clears_the_circuit",
    station=Station.PUMP,
    says=(
        "Good pressure by drill clears oil level, suction, pump, relief valve and oilways; if the "
        "engine still shows none, look at what turns the pump."
    ),
    note="Misleads when cold thick oil and a strong drill hide what hot thin oil will show.",
    child=findings_priming.DRILL_GIVES_GOOD,
    inhibited_by={
        conditions.PUMP_DRY: (MOSTLY, COMMON_PRACTICE),
        conditions.OIL_SHORT: (MOSTLY, COMMON_PRACTICE),
        conditions.AIR_IN_SUCTION: (MOSTLY, COMMON_PRACTICE),
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, idea_from(sources.PRE_OILING_ARTICLE)),
        conditions.OIL_ESCAPING: (OFTEN, COMMON_PRACTICE),
        conditions.RELIEF_HELD_OPEN: (OFTEN, JUDGEMENT),
        conditions.RELIEF_BLEEDS: (MOSTLY, JUDGEMENT),
        conditions.PUMP_SLIP: (MOSTLY, COMMON_PRACTICE),
        relief_causes.RELIEF_PART_MISSING: (ALWAYS, COMMON_PRACTICE),
        causes.PUMP_DEBRIS_LOCK: (ALWAYS, COMMON_PRACTICE),
    },
    matches=[
        example(direct_gauge.DIRECT_GAUGE_ZERO, findings_priming.DRILL_GIVES_GOOD),
        example(direct_gauge.DIRECT_GAUGE_LOW, findings_priming.DRILL_GIVES_GOOD),
    ],
    non_matches=[
        example(direct_gauge.DIRECT_GAUGE_ZERO),
        example(direct_gauge.DIRECT_GAUGE_LOW),
    ],
)
