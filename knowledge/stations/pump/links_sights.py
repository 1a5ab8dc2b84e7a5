"""What further sights at the pump and its drive speak for."""

from knowledge.circuit import conditions
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.pump import (
    causes,
    causes_drive,
    causes_fitted,
    findings,
    findings_sights,
)
from knowledge.stations.suction import causes_tap

GEAR_TURNS_ON_ITS_SHAFT = LinkGroup(
    id="gear_turns_on_its_shaft",
    station=Station.PUMP,
    says="A gear that slips on its shaft drives the pump only now and then, in the end not at all.",
    child=findings_sights.GEAR_SLIPS_ON_SHAFT,
    origins={
        causes_drive.PUMP_DRIVE_SLIP: (OFTEN, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_BROKEN: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(findings_sights.GEAR_SLIPS_ON_SHAFT)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.GEAR_SLIPS_ON_SHAFT])],
)
WORN_FLATS = LinkGroup(
    id="worn_flats",
    station=Station.PUMP,
    says="Worn flats or splines let the drive lag, then slip, then stop.",
    child=findings_sights.DRIVE_FLATS_WORN,
    origins={
        causes_drive.PUMP_DRIVE_SLIP: (OFTEN, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_BROKEN: (SOMETIMES, COMMON_PRACTICE),
        causes_drive.PUMP_DRIVE_BIND: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.DRIVE_FLATS_WORN)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.DRIVE_FLATS_WORN])],
)
SCAVENGE_STAGE_STOPPED = LinkGroup(
    id="scavenge_stage_stopped",
    station=Station.PUMP,
    says="If a scavenge stage stops, oil stays in the crankcase and the tank runs empty.",
    child=findings_sights.SCAVENGE_PUMP_JAMMED,
    origins={
        causes_fitted.SCAVENGE_FAILURE: (OFTEN, COMMON_PRACTICE),
        causes.PUMP_DEBRIS_LOCK: (SELDOM, JUDGEMENT),
    },
    matches=[example(findings_sights.SCAVENGE_PUMP_JAMMED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings_sights.SCAVENGE_PUMP_JAMMED])],
)
NOTHING_FED_NOTHING_BACK = LinkGroup(
    id="nothing_fed_nothing_back",
    station=Station.PUMP,
    says="A dry sump returns only what was fed: no return means a dry feed or a dry scavenge stage.",
    note="Misleads in the first minute after a rebuild: oil needs that long to come round.",
    child=findings.NO_RETURN_TO_TANK,
    origins={
        conditions.PUMP_DRY: (MOSTLY, COMMON_PRACTICE),
        causes_tap.OIL_TAP_SHUT: (MOSTLY, COMMON_PRACTICE),
        causes_fitted.SCAVENGE_FAILURE: (MOSTLY, COMMON_PRACTICE),
        conditions.PUMP_NOT_TURNING: (OFTEN, JUDGEMENT),
    },
    matches=[
        example(behaviour.NONE_FROM_FIRST_START, findings.NO_RETURN_TO_TANK),
        example(findings.NO_RETURN_TO_TANK),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[findings.NO_RETURN_TO_TANK])],
)
