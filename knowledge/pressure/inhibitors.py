"""What a pressure pattern or a direct gauge rules out: it is seen only rarely beside it."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import ALWAYS, MOSTLY, OFTEN, Station
from knowledge.pressure import behaviour, course, direct_gauge, patterns, patterns_speed
from knowledge.rule_api import InhibitorGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, PHYSICS
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.bearings import causes_shafts as bearings_causes_shafts
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.oil import causes as oil_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.pump import causes as pump_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.topend import causes as topend_causes

DIRECT_GAUGE_WAVERS_TOO = InhibitorGroup(
    id="direct_gauge_wavers_too",
    station=Station.INSTRUMENT,
    says="A direct gauge needs no sender and no wire: if it wavers, the oil pressure does.",
    child=direct_gauge.DIRECT_GAUGE_UNSTEADY,
    inhibited_by={
        instrument_causes.SENDER_FAULTY: (MOSTLY, COMMON_PRACTICE),
        instrument_causes.WIRING_GROUND_FAULT: (MOSTLY, COMMON_PRACTICE),
        instrument_causes.GAUGE_FAULTY: (OFTEN, JUDGEMENT),
    },
    matches=[example(patterns.NEEDLE_FLICKERS, direct_gauge.DIRECT_GAUGE_UNSTEADY)],
    non_matches=[
        example(patterns.NEEDLE_FLICKERS),
        example(patterns.NEEDLE_FLICKERS, lacks=[direct_gauge.DIRECT_GAUGE_UNSTEADY]),
    ],
)
LAMP_NEEDS_A_WIRE = InhibitorGroup(
    id="lamp_needs_a_wire",
    station=Station.INSTRUMENT,
    says="A pressure switch lights its lamp through its own wire: left off, the lamp stays dark.",
    note="Misleads where the loose wire touches metal, and with alarms that watch for a break.",
    parent=instrument_causes.SENDER_NOT_FITTED,
    inhibits={patterns.LAMP_COMES_ON: (MOSTLY, COMMON_PRACTICE)},
    matches=[example(patterns.LAMP_COMES_ON)],
    non_matches=[example(patterns.GAUGE_READS_ZERO), example(patterns.NEEDLE_FLICKERS)],
)
GOOD_AT_THE_PUMP_CLEARS_IT = InhibitorGroup(
    id="good_at_the_pump_clears_it",
    station=Station.PUMP,
    says="Good pressure at the pump outlet clears the pump and its suction.",
    child=direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY,
    inhibited_by={
        conditions.PUMP_SLIP: (ALWAYS, sources.ARMY_TM_272_TABLE),
        conditions.PUMP_NOT_TURNING: (ALWAYS, sources.ARMY_TM_272_TABLE),
        conditions.PUMP_DRY: (ALWAYS, sources.ARMY_TM_272_TABLE),
        conditions.SUCTION_THROTTLED: (MOSTLY, JUDGEMENT),
    },
    matches=[
        example(
            patterns.GAUGE_READS_LOW,
            direct_gauge.DIRECT_GAUGE_LOW,
            direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY,
        )
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW, direct_gauge.DIRECT_GAUGE_LOW)],
)
OIL_COLUMN_CANNOT_STEP = InhibitorGroup(
    id="oil_column_cannot_step",
    station=Station.INSTRUMENT,
    says="A bad contact moves the needle in steps, without lag; a leak moves it slowly.",
    child=patterns.NEEDLE_STEPS_AT_ONCE,
    inhibited_by={
        conditions.CLEARANCES_WIDE: (OFTEN, PHYSICS),
        conditions.PUMP_SLIP: (OFTEN, PHYSICS),
        conditions.RELIEF_BLEEDS: (OFTEN, PHYSICS),
    },
    matches=[example(patterns.NEEDLE_FLICKERS, patterns.NEEDLE_STEPS_AT_ONCE)],
    non_matches=[example(patterns.NEEDLE_FLICKERS)],
)
MORE_THAN_WARM_OIL = InhibitorGroup(
    id="more_than_warm_oil",
    station=Station.OIL,
    says=(
        "Warm oil is low only at hot idle; low everywhere, falling with revs or never rising is "
        "more than that."
    ),
    parent=oil_causes_condition.OIL_HOT_NORMAL,
    inhibits={
        patterns_speed.CAPPED_LOW: (MOSTLY, PHYSICS),
        patterns_speed.LOW_AT_ALL_SPEEDS: (MOSTLY, sources.MARINE_SERVICE_MANUAL_1999),
        patterns_speed.FALLS_AS_REVS_RISE: (MOSTLY, sources.MARINE_SERVICE_MANUAL_1999),
        behaviour.NONE_FROM_FIRST_START: (ALWAYS, COMMON_PRACTICE),
        patterns.FELL_SUDDENLY: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, patterns_speed.CAPPED_LOW),
        example(patterns.GAUGE_READS_LOW, patterns_speed.LOW_AT_ALL_SPEEDS),
        example(patterns.GAUGE_READS_LOW, patterns_speed.FALLS_AS_REVS_RISE),
        example(patterns.LAMP_COMES_ON, behaviour.NONE_FROM_FIRST_START),
        example(patterns.GAUGE_READS_LOW, patterns.FELL_SUDDENLY),
    ],
    non_matches=[example(patterns.GAUGE_READS_LOW), example(patterns.LAMP_COMES_ON)],
)
WEAR_NEVER_COMES_AT_ONCE = InhibitorGroup(
    id="wear_never_comes_at_once",
    station=Station.BEARINGS,
    says=(
        "Wear takes months, and a grade too thin shows from its fill on: a sudden fall means that "
        "something broke, moved or came loose."
    ),
    note="A worn engine can have a sudden fault too; then the fault is the cause.",
    child=patterns.FELL_SUDDENLY,
    inhibited_by={
        bearings_causes.BEARING_WEAR_MAINS: (MOSTLY, COMMON_PRACTICE),
        bearings_causes.BEARING_WEAR_RODS: (OFTEN, JUDGEMENT),
        topend_causes.CAM_BEARING_WEAR: (OFTEN, JUDGEMENT),
        bearings_causes_shafts.AUXILIARY_SHAFT_WEAR: (OFTEN, JUDGEMENT),
        bearings_causes_shafts.IDLER_BUSH_WEAR: (OFTEN, JUDGEMENT),
        pump_causes.PUMP_GEAR_WEAR: (MOSTLY, COMMON_PRACTICE),
        pump_causes.PUMP_COVER_SCORED: (MOSTLY, COMMON_PRACTICE),
        oil_causes.VISCOSITY_TOO_LOW: (OFTEN, JUDGEMENT),
    },
    matches=[example(patterns.GAUGE_READS_ZERO, patterns.FELL_SUDDENLY)],
    non_matches=[example(patterns.GAUGE_READS_ZERO), example(patterns.DECLINED_OVER_MONTHS)],
)
PAST_THE_SETTING_WITH_NO_LEAK = InhibitorGroup(
    id="past_the_setting_with_no_leak",
    station=Station.RELIEF,
    says="If pressure climbs past the setting, the pump delivers and there is no large leak.",
    child=patterns_speed.CLIMBS_PAST_SETTING,
    inhibited_by={
        conditions.CLEARANCES_WIDE: (MOSTLY, PHYSICS),
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, PHYSICS),
        conditions.PUMP_SLIP: (MOSTLY, PHYSICS),
        conditions.RELIEF_BLEEDS: (MOSTLY, PHYSICS),
    },
    matches=[example(patterns.GAUGE_READS_HIGH, patterns_speed.CLIMBS_PAST_SETTING)],
    non_matches=[example(patterns.GAUGE_READS_HIGH)],
)
OIL_THAT_LEFT_DOES_NOT_COME_BACK = InhibitorGroup(
    id="oil_that_left_does_not_come_back",
    station=Station.LEAKS,
    says="Pressure lost through an outside leak does not come back, to be lost the same way again.",
    note=(
        "Misleads while the level is only just too low, when it comes and goes with the road, and "
        "where somebody tops up between the runs."
    ),
    parent=conditions.OIL_ESCAPING,
    inhibits={
        course.LOSS_IS_PASSING: (MOSTLY, COMMON_PRACTICE),
        course.RETURNS_THE_SAME_WAY: (MOSTLY, JUDGEMENT),
    },
    matches=[example(course.LOSS_IS_PASSING), example(course.RETURNS_THE_SAME_WAY)],
    non_matches=[example(patterns.FELL_SUDDENLY)],
)
A_VALVE_WIDE_OPEN_IS_LOW_COLD = InhibitorGroup(
    id="a_valve_wide_open_is_low_cold",
    station=Station.RELIEF,
    says="A relief valve stuck open or a broken spring keeps the pressure low with cold oil too.",
    child=patterns_speed.GOOD_COLD_LOW_HOT,
    inhibited_by={
        relief_causes.RELIEF_STUCK_OPEN: (MOSTLY, PHYSICS),
        relief_causes.RELIEF_SPRING_WEAK_BROKEN: (OFTEN, PHYSICS),
    },
    matches=[example(patterns.GAUGE_READS_LOW, patterns_speed.GOOD_COLD_LOW_HOT)],
    non_matches=[
        example(patterns.GAUGE_READS_LOW),
        example(patterns.GAUGE_READS_LOW, lacks=[patterns_speed.GOOD_COLD_LOW_HOT]),
    ],
)
GRADE_ALONE_MENDS_NO_HOLE = InhibitorGroup(
    id="grade_alone_mends_no_hole",
    station=Station.OIL,
    says=(
        "If only the oil grade changed it, the cause is neither a hole nor a pump that stands "
        "still."
    ),
    child=behaviour.CHANGED_WITH_GRADE,
    inhibited_by={
        pump_causes_drive.PUMP_DRIVE_BROKEN: (MOSTLY, COMMON_PRACTICE),
        conditions.PUMP_NOT_TURNING: (MOSTLY, COMMON_PRACTICE),
        conditions.OPEN_LEAK_INSIDE: (OFTEN, JUDGEMENT),
    },
    matches=[example(patterns.GAUGE_READS_LOW, behaviour.CHANGED_WITH_GRADE)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
A_FIXED_LEAK_DOES_NOT_CLEAR = InhibitorGroup(
    id="a_fixed_leak_does_not_clear",
    station=Station.ASSEMBLY,
    says=(
        "Low only for the first minutes and good since: neither a hole nor a wide clearance "
        "cures itself."
    ),
    child=behaviour.LOW_FIRST_MINUTES_THEN_GOOD,
    inhibited_by={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, PHYSICS),
        conditions.CLEARANCES_WIDE: (MOSTLY, PHYSICS),
    },
    matches=[example(patterns.GAUGE_READS_LOW, behaviour.LOW_FIRST_MINUTES_THEN_GOOD)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
LOW_BEFORE_THE_OIL_COULD_AGE = InhibitorGroup(
    id="low_before_the_oil_could_age",
    station=Station.OIL,
    says="Low from the very first start after a rebuild: old oil or wear had no time to act.",
    child=behaviour.LOW_FROM_FIRST_START,
    inhibited_by={
        oil_causes_condition.OIL_DEGRADED: (MOSTLY, COMMON_PRACTICE),
        bearings_causes.BEARING_WEAR_MAINS: (MOSTLY, COMMON_PRACTICE),
        bearings_causes.BEARING_WEAR_RODS: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[example(patterns.GAUGE_READS_LOW, behaviour.LOW_FROM_FIRST_START)],
    non_matches=[example(patterns.GAUGE_READS_LOW)],
)
A_WORN_PUMP_MAKES_NO_CEILING = InhibitorGroup(
    id="a_worn_pump_makes_no_ceiling",
    station=Station.PUMP,
    says="A steady ceiling comes from the relief valve: a worn pump catches up with revs.",
    child=patterns_speed.CAPPED_LOW,
    inhibited_by={conditions.PUMP_SLIP: (MOSTLY, PHYSICS)},
    matches=[example(patterns_speed.CAPPED_LOW)],
    non_matches=[example(lacks=[patterns_speed.CAPPED_LOW])],
)
