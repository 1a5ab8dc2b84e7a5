"""What priming with a drill rules out: seen only rarely beside it."""

from knowledge.model import MOSTLY, OFTEN, Station
from knowledge.pressure import patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.pump import causes_drive, findings_priming

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
