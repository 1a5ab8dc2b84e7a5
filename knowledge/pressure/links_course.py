"""What the course of the trouble and what goes with it speak for.

An engine that is sound after the loss has something that sticks, lets go or shakes loose: worn
clearances do not mend themselves. Strengths are judgement where no source is named.
"""

from knowledge.circuit import conditions
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import course, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_geometry as bearings_causes_geometry
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.delivery import causes_galleries as delivery_causes_galleries
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.instrument import causes_line as instrument_causes_line
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.oil import causes_contamination as oil_causes_contamination
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.suction import causes_sump as suction_causes_sump
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_feeds as topend_causes_feeds

PASSING_LOSS = LinkGroup(
    id="passing_loss",
    station=Station.INSTRUMENT,
    says=("Comes back by itself: something sticks, slips or lets air in; wear does not come back."),
    child=course.LOSS_IS_PASSING,
    origins={
        conditions.READING_ERRATIC: (MOSTLY, COMMON_PRACTICE),
        conditions.PICKUP_UNCOVERED: (MOSTLY, COMMON_PRACTICE),
        conditions.OIL_AERATED: (OFTEN, COMMON_PRACTICE),
        conditions.PUMP_DRIVE_ERRATIC: (OFTEN, COMMON_PRACTICE),
        conditions.OIL_SHORT: (SOMETIMES, JUDGEMENT),
        conditions.DRAINS_BACK: (OFTEN, JUDGEMENT),
        conditions.AIR_IN_SUCTION: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_CAVITATES: (SOMETIMES, JUDGEMENT),
        conditions.CLEARANCES_WIDE: (SELDOM, JUDGEMENT),
        conditions.OIL_THIN: (SOMETIMES, JUDGEMENT),
        instrument_causes.SENDER_FAULTY: (SOMETIMES, JUDGEMENT),
        instrument_causes.GAUGE_FAULTY: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_DEBRIS: (OFTEN, JUDGEMENT),
        # a seized plunger stays where it is; one that only drags comes back now and then
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_HUNTING: (OFTEN, JUDGEMENT),
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: (OFTEN, JUDGEMENT),
        suction_causes.PICKUP_SCREEN_BLOCKED: (SOMETIMES, JUDGEMENT),
        pump_causes_fitted.SCAVENGE_FAILURE: (OFTEN, JUDGEMENT),
        suction_causes_sump.DRAINBACK_POOR: (OFTEN, JUDGEMENT),
        suction_causes_sump.ICE_IN_PICKUP: (OFTEN, JUDGEMENT),
        pump_causes.PUMP_DEBRIS_LOCK: (SELDOM, JUDGEMENT),
        delivery_causes.FILTER_BYPASS_STUCK: (SELDOM, JUDGEMENT),
        oil_causes_condition.OIL_HOT_NORMAL: (SELDOM, JUDGEMENT),
    },
    matches=[example(course.LOSS_IS_PASSING)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.LOSS_IS_PASSING])],
)
WITHOUT_ANY_PATTERN = LinkGroup(
    id="without_any_pattern",
    station=Station.INSTRUMENT,
    says="A loss without any pattern: a bad contact, or a loose part that sticks now and then.",
    child=course.NO_PATTERN_TO_IT,
    origins={
        conditions.READING_ERRATIC: (OFTEN, COMMON_PRACTICE),
        conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, JUDGEMENT),
        instrument_causes.SENDER_FAULTY: (SOMETIMES, JUDGEMENT),
        instrument_causes.GAUGE_FAULTY: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_DEBRIS: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_HUNTING: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: (SOMETIMES, JUDGEMENT),
        suction_causes.PICKUP_SCREEN_BLOCKED: (SELDOM, JUDGEMENT),
        conditions.AIR_IN_SUCTION: (SELDOM, JUDGEMENT),
    },
    matches=[example(course.NO_PATTERN_TO_IT)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.NO_PATTERN_TO_IT])],
)
THE_SAME_CONDITION_AGAIN = LinkGroup(
    id="the_same_condition_again",
    station=Station.INSTRUMENT,
    says=("A loss under one condition every time depends on oil level, heat, speed or road."),
    child=course.RETURNS_THE_SAME_WAY,
    origins={
        conditions.PICKUP_UNCOVERED: (OFTEN, COMMON_PRACTICE),
        conditions.OIL_AERATED: (OFTEN, JUDGEMENT),
        conditions.SUCTION_THROTTLED: (OFTEN, JUDGEMENT),
        conditions.PUMP_CAVITATES: (OFTEN, JUDGEMENT),
        conditions.DRAINS_BACK: (OFTEN, JUDGEMENT),
        conditions.CLEARANCES_WIDE: (SOMETIMES, JUDGEMENT),
        conditions.OIL_THIN: (SOMETIMES, JUDGEMENT),
        conditions.OIL_SHORT: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.DRAINBACK_POOR: (OFTEN, JUDGEMENT),
        oil_causes_condition.OIL_HOT_NORMAL: (SOMETIMES, JUDGEMENT),
        oil_causes_condition.OIL_COLD_NORMAL: (SOMETIMES, JUDGEMENT),
        instrument_causes.SENDER_FAULTY: (SELDOM, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SELDOM, JUDGEMENT),
        relief_causes.RELIEF_HUNTING: (OFTEN, JUDGEMENT),
    },
    matches=[example(course.RETURNS_THE_SAME_WAY)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.RETURNS_THE_SAME_WAY])],
)
SO_FOR_YEARS = LinkGroup(
    id="so_for_years",
    station=Station.INSTRUMENT,
    says=("A reading unchanged for years is normal for the engine or gauge, or a wrong part."),
    child=course.LONG_UNCHANGED,
    origins={
        oil_causes_condition.OIL_HOT_NORMAL: (OFTEN, COMMON_PRACTICE),
        oil_causes_condition.OIL_COLD_NORMAL: (OFTEN, JUDGEMENT),
        instrument_causes.SENDER_MISMATCH: (OFTEN, COMMON_PRACTICE),
        instrument_causes.GAUGE_FAULTY: (SOMETIMES, JUDGEMENT),
        instrument_causes_line.GAUGE_TAP_MOVED: (SOMETIMES, JUDGEMENT),
        instrument_causes.SENDER_FAULTY: (SELDOM, JUDGEMENT),
        instrument_causes_line.IDLE_TOO_SLOW: (SOMETIMES, JUDGEMENT),
        pump_causes_fitted.PUMP_WRONG_PART: (SOMETIMES, JUDGEMENT),
        pump_causes_fitted.PUMP_OVERSIZED: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_SPRING_WRONG: (SOMETIMES, JUDGEMENT),
        oil_causes.VISCOSITY_TOO_LOW: (SOMETIMES, JUDGEMENT),
        oil_causes.VISCOSITY_TOO_HIGH: (SOMETIMES, JUDGEMENT),
        topend_causes_feeds.RESTRICTOR_MISSING: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.ATTITUDE_UNCOVERS_PICKUP: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.PICKUP_CLEARANCE_WIDE: (SELDOM, JUDGEMENT),
        bearings_causes.BEARING_WRONG_SIZE: (SELDOM, JUDGEMENT),
        bearings_causes.BEARING_WEAR_MAINS: (SELDOM, JUDGEMENT),
        bearings_causes.BEARING_WEAR_RODS: (SELDOM, JUDGEMENT),
        delivery_causes.FILTER_DRAINBACK: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_HUNTING: (SELDOM, JUDGEMENT),
    },
    matches=[example(course.LONG_UNCHANGED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.LONG_UNCHANGED])],
)
WORSE_FROM_RUN_TO_RUN = LinkGroup(
    id="worse_from_run_to_run",
    station=Station.INSTRUMENT,
    says=("Worse from run to run: wear, clogging, thinning oil or something working loose."),
    child=course.GROWS_WORSE,
    origins={
        conditions.CLEARANCES_WIDE: (OFTEN, JUDGEMENT),
        conditions.PUMP_SLIP: (OFTEN, JUDGEMENT),
        # what gathers on a screen or in a filter grows; a pickup set too low or a dent does not
        suction_causes.PICKUP_SCREEN_BLOCKED: (OFTEN, JUDGEMENT),
        conditions.OIL_SLUDGED: (SOMETIMES, JUDGEMENT),
        conditions.DIRT_IN_OIL: (SOMETIMES, JUDGEMENT),
        assembly_causes.SEALANT_DEBRIS: (OFTEN, JUDGEMENT),
        delivery_causes.FILTER_BLOCKED: (OFTEN, JUDGEMENT),
        delivery_causes.OIL_COOLER_BLOCKED: (OFTEN, JUDGEMENT),  # sludge, or a hose's liner
        conditions.PUMP_DRIVE_ERRATIC: (OFTEN, JUDGEMENT),
        conditions.OIL_SHORT: (OFTEN, JUDGEMENT),
        instrument_causes.SENDER_FAULTY: (SOMETIMES, JUDGEMENT),
        instrument_causes.WIRING_GROUND_FAULT: (SELDOM, JUDGEMENT),
        oil_causes_contamination.FUEL_DILUTION: (OFTEN, JUDGEMENT),
        oil_causes_contamination.COOLANT_IN_OIL: (OFTEN, JUDGEMENT),
        suction_causes.PICKUP_TUBE_LOOSE: (SOMETIMES, JUDGEMENT),
        delivery_causes_galleries.GALLERY_SEAL_LEAK: (SOMETIMES, JUDGEMENT),
        assembly_causes.TIMING_GEAR_SHEDDING: (OFTEN, JUDGEMENT),
        assembly_causes.PART_SHEDDING_INSIDE: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_BORE_SCORED: (SOMETIMES, JUDGEMENT),
        suction_causes.SUCTION_JOINT_AIR_LEAK: (SOMETIMES, JUDGEMENT),
        assembly_causes.DIRT_IN_ASSEMBLY: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(course.GROWS_WORSE)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.GROWS_WORSE])],
)
WAS_THERE_AND_IS_GONE = LinkGroup(
    id="was_there_and_is_gone",
    station=Station.INSTRUMENT,
    says=("Pressure was there and is gone: drive, oil, pickup, relief valve, plug or gauge."),
    child=course.PRESSURE_LOST,
    origins={
        conditions.PUMP_NOT_TURNING: (MOSTLY, COMMON_PRACTICE),
        conditions.OIL_ESCAPING: (
            SOMETIMES,
            COMMON_PRACTICE,
        ),  # a gusher; the rest by way of OIL_SHORT
        conditions.OIL_SHORT: (OFTEN, JUDGEMENT),
        conditions.READING_FALSE: (OFTEN, JUDGEMENT),
        conditions.READING_ERRATIC: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, JUDGEMENT),
        conditions.AIR_IN_SUCTION: (SOMETIMES, JUDGEMENT),
        conditions.SUCTION_THROTTLED: (SOMETIMES, JUDGEMENT),
        conditions.OPEN_LEAK_INSIDE: (SOMETIMES, JUDGEMENT),
        pump_causes.PUMP_DEBRIS_LOCK: (OFTEN, JUDGEMENT),
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: (OFTEN, JUDGEMENT),
        suction_causes.PICKUP_TUBE_LOOSE: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_CAP_LOOSE: (OFTEN, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (OFTEN, JUDGEMENT),
        relief_causes.RELIEF_DEBRIS: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_SPRING_WEAK_BROKEN: (SOMETIMES, JUDGEMENT),
        bearings_causes.BEARING_WIPED: (SOMETIMES, JUDGEMENT),
        conditions.CLEARANCES_WIDE: (SELDOM, JUDGEMENT),
        conditions.FLOW_RESTRICTED: (SELDOM, JUDGEMENT),
        pump_causes_fitted.PUMP_BODY_CRACKED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(course.PRESSURE_LOST)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.PRESSURE_LOST])],
)
BACK_AT_IDLE = LinkGroup(
    id="back_at_idle",
    station=Station.INSTRUMENT,
    says=("Back when the engine slows: at speed the pump gets too little oil, or draws air."),
    child=course.BACK_WHEN_SLOWED,
    origins={
        conditions.SUCTION_THROTTLED: (OFTEN, JUDGEMENT),
        conditions.OIL_AERATED: (OFTEN, JUDGEMENT),
        conditions.PUMP_CAVITATES: (OFTEN, JUDGEMENT),
        conditions.PICKUP_UNCOVERED: (SOMETIMES, JUDGEMENT),
        conditions.OIL_SHORT: (SOMETIMES, JUDGEMENT),
        conditions.AIR_IN_SUCTION: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.DRAINBACK_POOR: (OFTEN, JUDGEMENT),
        suction_causes_sump.WINDAGE_AERATION: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, JUDGEMENT),  # it grips again at less load
        delivery_causes.FILTER_BLOCKED: (SELDOM, JUDGEMENT),
    },
    matches=[example(course.BACK_WHEN_SLOWED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.BACK_WHEN_SLOWED])],
)
GONE_AFTER_MINUTES = LinkGroup(
    id="gone_after_minutes",
    station=Station.INSTRUMENT,
    says=("Lost after minutes: the screen clogs, oil stays up top, leaks out or overheats."),
    child=course.GOES_AFTER_MINUTES,
    origins={
        conditions.SUCTION_THROTTLED: (OFTEN, JUDGEMENT),
        conditions.OIL_ESCAPING: (SELDOM, JUDGEMENT),
        conditions.OIL_SHORT: (SOMETIMES, JUDGEMENT),
        conditions.OIL_AERATED: (SOMETIMES, JUDGEMENT),
        conditions.OIL_THIN: (SOMETIMES, JUDGEMENT),
        conditions.CLEARANCES_WIDE: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_SLIP: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.DRAINBACK_POOR: (OFTEN, JUDGEMENT),
        oil_causes_condition.OIL_OVERHEATED: (OFTEN, JUDGEMENT),
        pump_causes_fitted.SCAVENGE_FAILURE: (OFTEN, JUDGEMENT),
        instrument_causes.SENDER_FAULTY: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.FOREIGN_BODY_IN_SUMP: (SOMETIMES, JUDGEMENT),
        oil_causes_condition.OIL_HOT_NORMAL: (SOMETIMES, JUDGEMENT),
        relief_causes.RELIEF_STUCK_OPEN: (SELDOM, JUDGEMENT),
        # oil that no cooler cools thins in a run, and a hose's loose liner softens and shuts
        delivery_causes.OIL_COOLER_BLOCKED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(course.GOES_AFTER_MINUTES)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.GOES_AFTER_MINUTES])],
)
ONLY_WHEN_LOW = LinkGroup(
    id="only_when_low",
    station=Station.INSTRUMENT,
    says="Only when the level is down: the pickup, or a leak in its tube, is just under the oil.",
    child=course.LOW_ONLY_WHEN_LEVEL_LOW,
    origins={
        conditions.OIL_SHORT: (MOSTLY, COMMON_PRACTICE),
        conditions.PICKUP_UNCOVERED: (SOMETIMES, JUDGEMENT),
        suction_causes_sump.PICKUP_CLEARANCE_WIDE: (OFTEN, JUDGEMENT),
        suction_causes.PICKUP_TUBE_CRACKED: (SOMETIMES, JUDGEMENT),
        suction_causes.SUCTION_JOINT_AIR_LEAK: (SOMETIMES, JUDGEMENT),
        oil_causes.DIPSTICK_WRONG: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(course.LOW_ONLY_WHEN_LEVEL_LOW)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.LOW_ONLY_WHEN_LEVEL_LOW])],
)
WET_WEATHER = LinkGroup(
    id="wet_weather",
    station=Station.INSTRUMENT,
    says="Rain and spray affect plugs and wires, not the oil.",
    child=course.WORSE_IN_THE_WET,
    origins={
        instrument_causes.WIRING_GROUND_FAULT: (OFTEN, COMMON_PRACTICE),
        instrument_causes.SENDER_FAULTY: (SELDOM, JUDGEMENT),
    },
    matches=[example(course.WORSE_IN_THE_WET)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.WORSE_IN_THE_WET])],
)
NOISE_ENDS_WITH_THE_LOSS = LinkGroup(
    id="noise_ends_with_the_loss",
    station=Station.INSTRUMENT,
    says="A noise that stops as the pressure returns: the loss is real; parts ran dry or slipped.",
    child=course.NOISE_WITH_PRESSURE_LOSS,
    origins={
        conditions.PRESSURE_GONE: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_UNSTEADY: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_LOW: (SELDOM, JUDGEMENT),
        conditions.PUMP_DRIVE_ERRATIC: (OFTEN, JUDGEMENT),
        conditions.PUMP_CAVITATES: (SOMETIMES, JUDGEMENT),
        conditions.DRAINS_BACK: (SOMETIMES, COMMON_PRACTICE),  # a rattle until the oil is up
    },
    matches=[example(course.NOISE_WITH_PRESSURE_LOSS)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.NOISE_WITH_PRESSURE_LOSS])],
)
GRINDING = LinkGroup(
    id="grinding",
    station=Station.INSTRUMENT,
    says="Grinding comes from a drive that slips or binds, a piece in the pump, or bare bearings.",
    child=course.GRINDING_NOISE,
    origins={
        conditions.PUMP_DRIVE_ERRATIC: (SOMETIMES, JUDGEMENT),
        conditions.PUMP_SCORED: (SELDOM, JUDGEMENT),
        conditions.BEARINGS_DAMAGED: (SELDOM, JUDGEMENT),
        pump_causes.PUMP_DEBRIS_LOCK: (SOMETIMES, JUDGEMENT),
        pump_causes_drive.PUMP_DRIVE_BIND: (SOMETIMES, JUDGEMENT),
        pump_causes_drive.PUMP_DRIVE_BROKEN: (SOMETIMES, JUDGEMENT),
        pump_causes_fitted.PUMP_IDLER_PIN_MIGRATED: (SOMETIMES, JUDGEMENT),
        bearings_causes.THRUST_BEARING_WEAR: (SELDOM, JUDGEMENT),
    },
    matches=[example(course.GRINDING_NOISE)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.GRINDING_NOISE])],
)
SQUEAKING = LinkGroup(
    id="squeaking",
    station=Station.INSTRUMENT,
    says="A squeak comes from dry metal rubbing: drive, bearings or valve gear.",
    child=course.SQUEAKING_NOISE,
    origins={
        pump_causes_drive.PUMP_DRIVE_BIND: (SOMETIMES, JUDGEMENT),
        pump_causes_drive.PUMP_DRIVE_SLIP: (SOMETIMES, JUDGEMENT),
        conditions.BEARINGS_STARVED: (SELDOM, JUDGEMENT),
        conditions.VALVE_GEAR_DRY: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(course.SQUEAKING_NOISE)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.SQUEAKING_NOISE])],
)
ALARM_WITHOUT_A_NAME = LinkGroup(
    id="alarm_without_a_name",
    station=Station.INSTRUMENT,
    says="A general alarm may be for pressure, for heat, or false.",
    child=course.GENERAL_ALARM,
    origins={
        conditions.PRESSURE_GONE: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_LOW: (SELDOM, JUDGEMENT),
        conditions.READING_FALSE: (SELDOM, JUDGEMENT),
        conditions.READING_ERRATIC: (SOMETIMES, JUDGEMENT),
        oil_causes_condition.OIL_OVERHEATED: (SOMETIMES, JUDGEMENT),
        conditions.PRESSURE_UNSTEADY: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(course.GENERAL_ALARM)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.GENERAL_ALARM])],
)
ROUGH_RUNNING = LinkGroup(
    id="rough_running",
    station=Station.INSTRUMENT,
    says="Rough running goes with dry valve gear, slipped timing, or fuel or coolant getting in.",
    child=course.ENGINE_RUNS_ROUGH,
    origins={
        conditions.VALVE_GEAR_DRY: (SOMETIMES, JUDGEMENT),
        conditions.BEARINGS_DAMAGED: (SELDOM, JUDGEMENT),
        oil_causes_contamination.FUEL_DILUTION: (SOMETIMES, JUDGEMENT),
        oil_causes_contamination.COOLANT_IN_OIL: (SOMETIMES, JUDGEMENT),
        assembly_causes.TIMING_GEAR_SHEDDING: (SOMETIMES, JUDGEMENT),
        bearings_causes_geometry.OVERLOAD_LUGGING: (SOMETIMES, JUDGEMENT),
        instrument_causes_line.IDLE_TOO_SLOW: (SOMETIMES, JUDGEMENT),
        pump_causes_drive.PUMP_DRIVE_BROKEN: (SELDOM, JUDGEMENT),
        pump_causes_drive.PUMP_DRIVE_SLIP: (SELDOM, JUDGEMENT),
        topend_causes.LIFTER_BORE_LEAK: (SELDOM, JUDGEMENT),  # a lifter out of its bore
        bearings_causes_geometry.BENT_ROD_OR_CRANK: (SOMETIMES, JUDGEMENT),
        assembly_causes.PART_SHEDDING_INSIDE: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(course.ENGINE_RUNS_ROUGH)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.ENGINE_RUNS_ROUGH])],
)
CLUTCH_PUSHES_THE_CRANK = LinkGroup(
    id="clutch_pushes_the_crank",
    station=Station.INSTRUMENT,
    says=("The clutch pushes the crank forward: a worn thrust bearing leaks, or the drive moves."),
    child=course.FALLS_WITH_CLUTCH,
    origins={
        bearings_causes.THRUST_BEARING_WEAR: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(course.FALLS_WITH_CLUTCH)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.FALLS_WITH_CLUTCH])],
)
CLUTCH_SHUTS_A_LEAK = LinkGroup(
    id="clutch_shuts_a_leak",
    station=Station.INSTRUMENT,
    says="The clutch pushes the crank over a leak at its thrust faces, or takes the gearbox's drag "
    "off a slow idle.",
    child=course.RISES_WITH_CLUTCH,
    origins={
        bearings_causes.THRUST_BEARING_WEAR: (SOMETIMES, JUDGEMENT),
        instrument_causes_line.IDLE_TOO_SLOW: (SELDOM, JUDGEMENT),
    },
    matches=[example(course.RISES_WITH_CLUTCH)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.RISES_WITH_CLUTCH])],
)
DOES_NOT_START = LinkGroup(
    id="does_not_start",
    station=Station.INSTRUMENT,
    says="The pump's drive may also drive ignition, injection or cam: then it does not start.",
    child=course.WILL_NOT_START,
    origins={
        pump_causes_drive.PUMP_DRIVE_BROKEN: (SELDOM, JUDGEMENT),
        assembly_causes.TIMING_GEAR_SHEDDING: (SOMETIMES, JUDGEMENT),
        conditions.ENGINE_FAILED: (SELDOM, JUDGEMENT),
    },
    matches=[example(course.WILL_NOT_START)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[course.WILL_NOT_START])],
)
