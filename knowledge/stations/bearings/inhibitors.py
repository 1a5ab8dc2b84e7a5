"""What shells and metal rule out: seen only rarely beside it."""

from knowledge.debris import findings as debris_findings
from knowledge.history import findings as history
from knowledge.model import ALWAYS, MOSTLY, OFTEN, Station
from knowledge.pressure import patterns
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.bearings import (
    causes,
    causes_shafts,
    findings,
    findings_shells,
    trials,
)
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import trials as pump_trials
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.topend import causes as topend_causes

SOUND_ENGINES_SHED_NO_BEARING = InhibitorGroup(
    id="sound_engines_shed_no_bearing",
    station=Station.BEARINGS,
    says="Bearing metal, wiped shells and a knock are never just the normal fall of warm oil.",
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
NEW_SHELLS_LEAVE_OTHER_WEAR = InhibitorGroup(
    id="new_shells_leave_other_wear",
    station=Station.BEARINGS,
    says="New shells do not cure an engine if its cam bearings, pump or relief bore are worn too.",
    note=(
        "They wore in the same hours: if new shells changed nothing, such wear is more likely, "
        "not less."
    ),
    child=trials.NEW_BEARINGS.cured,
    inhibited_by={
        topend_causes.CAM_BEARING_WEAR: (OFTEN, COMMON_PRACTICE),
        causes_shafts.BALANCE_SHAFT_WEAR: (OFTEN, JUDGEMENT),
        causes_shafts.AUXILIARY_SHAFT_WEAR: (OFTEN, JUDGEMENT),
        causes_shafts.IDLER_BUSH_WEAR: (OFTEN, JUDGEMENT),
        pump_causes.PUMP_GEAR_WEAR: (OFTEN, JUDGEMENT),
        relief_causes.RELIEF_BORE_SCORED: (OFTEN, JUDGEMENT),
    },
    matches=[example(history.FRESHLY_REBUILT, trials.NEW_BEARINGS.cured)],
    non_matches=[example(history.FRESHLY_REBUILT, lacks=[trials.NEW_BEARINGS.cured])],
)
NEW_PUMP_LEAVES_WORN_BEARINGS = InhibitorGroup(
    id="new_pump_leaves_worn_bearings",
    station=Station.BEARINGS,
    says="A new pump does not cure an engine if its bearings are worn too.",
    child=pump_trials.NEW_PUMP.cured,
    inhibited_by={
        causes.BEARING_WEAR_MAINS: (OFTEN, COMMON_PRACTICE),
        causes.BEARING_WEAR_RODS: (OFTEN, COMMON_PRACTICE),
        topend_causes.CAM_BEARING_WEAR: (OFTEN, COMMON_PRACTICE),
        causes_shafts.BALANCE_SHAFT_WEAR: (OFTEN, JUDGEMENT),
        causes_shafts.AUXILIARY_SHAFT_WEAR: (OFTEN, JUDGEMENT),
        causes_shafts.IDLER_BUSH_WEAR: (OFTEN, JUDGEMENT),
    },
    matches=[example(history.FRESHLY_REBUILT, pump_trials.NEW_PUMP.cured)],
    non_matches=[example(history.FRESHLY_REBUILT, lacks=[pump_trials.NEW_PUMP.cured])],
)
