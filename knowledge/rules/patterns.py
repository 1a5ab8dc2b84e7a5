"""What each state of the oil circuit makes a gauge show."""

from knowledge.conditions import (
    AIR_IN_SUCTION,
    BRANCH_DRY,
    CLEARANCES_WIDE,
    DELIVERY_REDUCED,
    DRAINS_BACK,
    ENGINE_FAILED,
    FLOW_RESTRICTED,
    JOURNAL_DRY,
    OIL_AERATED,
    OIL_ESCAPING,
    OIL_SHORT,
    OIL_THIN,
    OPEN_LEAK_INSIDE,
    PICKUP_UNCOVERED,
    PRESSURE_GONE,
    PRESSURE_HIGH,
    PRESSURE_LOW,
    PRESSURE_UNSTEADY,
    PUMP_CAVITATES,
    PUMP_DRIVE_ERRATIC,
    PUMP_DRY,
    PUMP_NOT_TURNING,
    PUMP_SLIP,
    READING_ERRATIC,
    READING_FALSE,
    RELIEF_BLEEDS,
    RELIEF_CAPS_LOW,
    RELIEF_HOLDS_HIGH,
    SUCTION_THROTTLED,
)
from knowledge.findings.behaviour import (
    DIRECT_GAUGE_LOW,
    DIRECT_GAUGE_UNSTEADY,
    DIRECT_GAUGE_ZERO,
    FADES_AT_SPEED_BACK_AFTER_REST,
    FALLS_IN_A_MANOEUVRE,
    GOOD_AT_PUMP_LOW_IN_GALLERY,
    LOW_FIRST_MINUTES_THEN_GOOD,
    NONE_FROM_FIRST_START,
    NOTHING_WARNED,
    PORTS_DIFFER,
    PUMP_PORT_LOW,
    SAGS_AS_OIL_HEATS,
    SLOW_AFTER_STANDING,
    TEN_SECONDS_OR_MORE,
    TOP_UP_CURES_FOR_A_WHILE,
)
from knowledge.findings.pressure import (
    CAPPED_LOW,
    CLIMBS_PAST_SETTING,
    DECLINED_OVER_MONTHS,
    ENGINE_RUNS_NORMALLY,
    FALLS_AS_REVS_RISE,
    FELL_SUDDENLY,
    FLICKERS_ONLY_AT_HOT_IDLE,
    FLICKERS_ONLY_AT_SPEED,
    GAUGE_READS_HIGH,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    GOOD_COLD_LOW_HOT,
    LAMP_COMES_ON,
    LOW_AT_ALL_SPEEDS,
    LOW_EVEN_COLD,
    LOW_HOT_IDLE_GOOD_SPEED,
    NEEDLE_FLICKERS,
    NEVER_REACHES_SETTING_COLD,
    RISES_JUST_OFF_IDLE,
    SANK_WHILE_RUNNING,
)
from knowledge.reference.modelled import shown_by_the_model
from knowledge.rulebook import Conclusions, Known, Rule, case_of, leads_to, rules_of
from knowledge.sources import (
    AA97,
    CAV,
    COMMON_PRACTICE,
    CTG,
    DTN,
    FLV,
    HB02,
    HB09,
    HB14,
    HB17,
    HB19,
    INL,
    ISS,
    LTK,
    MON,
    NE1,
    NE2,
    NE3,
    PF,
    PHYSICS,
    PRM,
    SLO,
    TWO_CP,
    VTE,
)
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station, all_in

rule = rules_of(Station.INSTRUMENT)


@rule(
    source=NE2,
    catches=[case_of(GAUGE_READS_ZERO, ENGINE_RUNS_NORMALLY)],
    spares=[case_of(DIRECT_GAUGE_ZERO)],
)
def instrument_shows_low_by_itself(known: Known) -> Conclusions:
    """An instrument at fault reads low or nothing while the engine runs as always."""
    yield leads_to(READING_FALSE, GAUGE_READS_LOW, OFTEN)
    yield leads_to(READING_FALSE, GAUGE_READS_ZERO, OFTEN)
    yield leads_to(READING_FALSE, LAMP_COMES_ON, OFTEN)
    yield leads_to(READING_FALSE, ENGINE_RUNS_NORMALLY, MOSTLY)
    yield leads_to(READING_FALSE, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(READING_FALSE, NONE_FROM_FIRST_START, SELDOM)
    yield leads_to(READING_FALSE, NEEDLE_FLICKERS, SELDOM)


@rule(
    source=CTG,
    catches=[case_of(NEEDLE_FLICKERS, ENGINE_RUNS_NORMALLY)],
    spares=[case_of(DIRECT_GAUGE_UNSTEADY)],
)
def instrument_jumps_by_itself(known: Known) -> Conclusions:
    """A loose contact makes the needle jump or the lamp flicker while the engine runs as always."""
    yield leads_to(READING_ERRATIC, NEEDLE_FLICKERS, MOSTLY)
    yield leads_to(READING_ERRATIC, LAMP_COMES_ON, OFTEN)
    yield leads_to(READING_ERRATIC, GAUGE_READS_LOW, SOMETIMES)
    yield leads_to(READING_ERRATIC, GAUGE_READS_ZERO, SOMETIMES)
    yield leads_to(READING_ERRATIC, ENGINE_RUNS_NORMALLY, MOSTLY)
    yield leads_to(READING_ERRATIC, FELL_SUDDENLY, SOMETIMES)


@rule(
    source=HB09,
    catches=[case_of(DIRECT_GAUGE_LOW)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[DIRECT_GAUGE_LOW])],
)
def low_pressure_on_every_gauge(known: Known) -> Conclusions:
    """Truly low pressure shows on every gauge that is right."""
    yield leads_to(PRESSURE_LOW, GAUGE_READS_LOW, MOSTLY)
    yield leads_to(PRESSURE_LOW, LAMP_COMES_ON, OFTEN)
    yield leads_to(PRESSURE_LOW, DIRECT_GAUGE_LOW, ALWAYS)
    yield leads_to(PRESSURE_LOW, ENGINE_RUNS_NORMALLY, SELDOM)
    yield leads_to(PRESSURE_LOW, NEEDLE_FLICKERS, SELDOM)


@rule(
    source=NE3,
    catches=[case_of(DIRECT_GAUGE_ZERO)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[DIRECT_GAUGE_ZERO])],
)
def no_pressure_on_every_gauge(known: Known) -> Conclusions:
    """Pressure that is gone shows on every gauge that is right."""
    yield leads_to(PRESSURE_GONE, GAUGE_READS_ZERO, MOSTLY)
    yield leads_to(PRESSURE_GONE, LAMP_COMES_ON, OFTEN)
    yield leads_to(PRESSURE_GONE, GAUGE_READS_LOW, SOMETIMES)
    yield leads_to(PRESSURE_GONE, DIRECT_GAUGE_ZERO, ALWAYS)
    yield leads_to(PRESSURE_GONE, DIRECT_GAUGE_LOW, MOSTLY)


@rule(
    source=COMMON_PRACTICE,
    catches=[case_of(DIRECT_GAUGE_UNSTEADY)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[DIRECT_GAUGE_UNSTEADY])],
)
def unsteady_on_every_gauge(known: Known) -> Conclusions:
    """Truly unsteady pressure shows on a direct gauge as well."""
    yield leads_to(PRESSURE_UNSTEADY, NEEDLE_FLICKERS, MOSTLY)
    yield leads_to(PRESSURE_UNSTEADY, LAMP_COMES_ON, SOMETIMES)
    yield leads_to(PRESSURE_UNSTEADY, DIRECT_GAUGE_UNSTEADY, ALWAYS)
    yield leads_to(PRESSURE_UNSTEADY, GAUGE_READS_LOW, SOMETIMES)


@rule(source=HB14, catches=[case_of(GAUGE_READS_HIGH)], spares=[case_of(GAUGE_READS_LOW)])
def high_pressure_shows(known: Known) -> Conclusions:
    """Too much pressure shows as a high gauge, most of all cold."""
    yield leads_to(PRESSURE_HIGH, GAUGE_READS_HIGH, MOSTLY)
    yield leads_to(PRESSURE_HIGH, CLIMBS_PAST_SETTING, SOMETIMES)


@rule(
    source=PF,
    catches=[case_of(LOW_HOT_IDLE_GOOD_SPEED, PUMP_PORT_LOW)],
    spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED, GOOD_AT_PUMP_LOW_IN_GALLERY)],
)
def bleeding_past_the_valve_is_felt_at_idle(known: Known) -> Conclusions:
    """Bleeding past the relief valve is felt most at idle and hardly changes with heat."""
    yield from shown_by_the_model(
        RELIEF_BLEEDS,
        LOW_HOT_IDLE_GOOD_SPEED,
        LOW_AT_ALL_SPEEDS,
        RISES_JUST_OFF_IDLE,
        LOW_EVEN_COLD,
        PUMP_PORT_LOW,
        NEVER_REACHES_SETTING_COLD,
    )
    yield leads_to(RELIEF_BLEEDS, FLICKERS_ONLY_AT_HOT_IDLE, SOMETIMES)


@rule(
    source=PF,
    catches=[case_of(GOOD_COLD_LOW_HOT)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[GOOD_COLD_LOW_HOT])],
)
def good_cold_and_low_hot(known: Known) -> Conclusions:
    """Good cold, low hot: oil runs out of wide clearances as it thins."""
    yield from shown_by_the_model(
        CLEARANCES_WIDE,
        GOOD_COLD_LOW_HOT,
        LOW_HOT_IDLE_GOOD_SPEED,
        LOW_AT_ALL_SPEEDS,
        GOOD_AT_PUMP_LOW_IN_GALLERY,
        PUMP_PORT_LOW,
    )
    yield leads_to(CLEARANCES_WIDE, SAGS_AS_OIL_HEATS, SOMETIMES)
    yield leads_to(CLEARANCES_WIDE, FLICKERS_ONLY_AT_HOT_IDLE, SOMETIMES)


@rule(source=VTE, catches=[case_of(SAGS_AS_OIL_HEATS)], spares=[case_of(LOW_EVEN_COLD)])
def sags_with_the_heat_of_the_oil(known: Known) -> Conclusions:
    """Sagging with heat and back when cooled is the mark of thin oil."""
    yield from shown_by_the_model(OIL_THIN, GOOD_COLD_LOW_HOT, LOW_HOT_IDLE_GOOD_SPEED)
    yield leads_to(OIL_THIN, SAGS_AS_OIL_HEATS, OFTEN)
    yield leads_to(OIL_THIN, FLICKERS_ONLY_AT_HOT_IDLE, SOMETIMES)


@rule(
    source=PHYSICS,
    catches=[case_of(RISES_JUST_OFF_IDLE)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[RISES_JUST_OFF_IDLE])],
)
def better_as_soon_as_it_turns_faster(known: Known) -> Conclusions:
    """Low at idle, right just off idle: the pump slips when it turns slowly."""
    yield from shown_by_the_model(
        PUMP_SLIP,
        LOW_HOT_IDLE_GOOD_SPEED,
        RISES_JUST_OFF_IDLE,
        GOOD_COLD_LOW_HOT,
        PUMP_PORT_LOW,
        LOW_AT_ALL_SPEEDS,
    )
    yield leads_to(PUMP_SLIP, SLOW_AFTER_STANDING, SOMETIMES)
    yield leads_to(PUMP_SLIP, SAGS_AS_OIL_HEATS, SOMETIMES)
    yield leads_to(PUMP_SLIP, TEN_SECONDS_OR_MORE, SELDOM)


@rule(
    source=MON,
    catches=[case_of(LOW_AT_ALL_SPEEDS)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[LOW_AT_ALL_SPEEDS])],
)
def low_at_every_speed_hot_or_cold(known: Known) -> Conclusions:
    """Low at every speed, hot or cold: oil leaves through a hole, not through clearances."""
    yield from shown_by_the_model(
        OPEN_LEAK_INSIDE,
        LOW_AT_ALL_SPEEDS,
        LOW_EVEN_COLD,
        NEVER_REACHES_SETTING_COLD,
        GOOD_AT_PUMP_LOW_IN_GALLERY,
        PUMP_PORT_LOW,
        LOW_HOT_IDLE_GOOD_SPEED,
    )


@rule(
    source=HB19,
    catches=[case_of(LOW_AT_ALL_SPEEDS, PUMP_PORT_LOW)],
    spares=[case_of(LOW_AT_ALL_SPEEDS, lacks=[PUMP_PORT_LOW])],
)
def short_of_delivery_at_every_speed(known: Known) -> Conclusions:
    """Short of delivery at every speed, at the pump's own port too."""
    yield from shown_by_the_model(
        DELIVERY_REDUCED,
        LOW_AT_ALL_SPEEDS,
        LOW_EVEN_COLD,
        NEVER_REACHES_SETTING_COLD,
        PUMP_PORT_LOW,
        LOW_HOT_IDLE_GOOD_SPEED,
    )


@rule(
    source=TWO_CP,
    catches=[case_of(FALLS_AS_REVS_RISE)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[FALLS_AS_REVS_RISE])],
)
def falls_when_it_should_rise(known: Known) -> Conclusions:
    """Falling when it should rise, or fading at speed until it has rested: the suction cannot feed the pump."""
    yield from shown_by_the_model(SUCTION_THROTTLED, PUMP_PORT_LOW, LOW_AT_ALL_SPEEDS)
    yield leads_to(SUCTION_THROTTLED, FALLS_AS_REVS_RISE, OFTEN)
    yield leads_to(SUCTION_THROTTLED, FADES_AT_SPEED_BACK_AFTER_REST, OFTEN)
    yield leads_to(SUCTION_THROTTLED, FLICKERS_ONLY_AT_SPEED, SOMETIMES)
    yield leads_to(SUCTION_THROTTLED, SANK_WHILE_RUNNING, SOMETIMES)
    yield leads_to(SUCTION_THROTTLED, FELL_SUDDENLY, SELDOM)


@rule(
    source=CAV,
    catches=[case_of(FALLS_AS_REVS_RISE, FLICKERS_ONLY_AT_SPEED)],
    spares=[case_of(FLICKERS_ONLY_AT_HOT_IDLE)],
)
def flutters_and_falls_at_speed(known: Known) -> Conclusions:
    """Flutter and fall at high revs: the pump cavitates."""
    yield leads_to(PUMP_CAVITATES, FALLS_AS_REVS_RISE, MOSTLY)
    yield leads_to(PUMP_CAVITATES, FLICKERS_ONLY_AT_SPEED, OFTEN)


@rule(
    source=HB17,
    catches=[case_of(TEN_SECONDS_OR_MORE, NEEDLE_FLICKERS)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[TEN_SECONDS_OR_MORE])],
)
def late_and_wavering_after_standing(known: Known) -> Conclusions:
    """Late after standing and wavering after that: air gets in on the suction side."""
    yield from shown_by_the_model(AIR_IN_SUCTION, PUMP_PORT_LOW)
    yield leads_to(AIR_IN_SUCTION, SLOW_AFTER_STANDING, OFTEN)
    yield leads_to(AIR_IN_SUCTION, TEN_SECONDS_OR_MORE, OFTEN)
    yield leads_to(AIR_IN_SUCTION, FLICKERS_ONLY_AT_SPEED, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, NONE_FROM_FIRST_START, SELDOM)
    yield leads_to(AIR_IN_SUCTION, FELL_SUDDENLY, SELDOM)


@rule(
    source=HB09,
    catches=[case_of(FLICKERS_ONLY_AT_SPEED)],
    spares=[case_of(FLICKERS_ONLY_AT_HOT_IDLE)],
)
def unsteady_only_at_high_revs(known: Known) -> Conclusions:
    """Unsteady at high revs, calm below: air is whipped into the oil."""
    yield leads_to(OIL_AERATED, FLICKERS_ONLY_AT_SPEED, MOSTLY)
    yield leads_to(OIL_AERATED, FALLS_AS_REVS_RISE, SOMETIMES)


@rule(
    source=SLO,
    catches=[case_of(FALLS_IN_A_MANOEUVRE)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[FALLS_IN_A_MANOEUVRE])],
)
def falls_with_the_manoeuvre(known: Known) -> Conclusions:
    """Falling in the same bend or heel each time: the pickup comes out of the oil."""
    yield leads_to(PICKUP_UNCOVERED, FALLS_IN_A_MANOEUVRE, ALWAYS)
    yield leads_to(PICKUP_UNCOVERED, FADES_AT_SPEED_BACK_AFTER_REST, SOMETIMES)


@rule(
    source=INL,
    catches=[case_of(TOP_UP_CURES_FOR_A_WHILE)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[TOP_UP_CURES_FOR_A_WHILE])],
)
def back_after_topping_up(known: Known) -> Conclusions:
    """Back for a while after topping up, gone in bends: there was too little oil."""
    yield leads_to(OIL_SHORT, TOP_UP_CURES_FOR_A_WHILE, OFTEN)
    yield leads_to(OIL_SHORT, FALLS_IN_A_MANOEUVRE, SOMETIMES)
    yield leads_to(OIL_SHORT, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(OIL_SHORT, SANK_WHILE_RUNNING, SOMETIMES)
    yield leads_to(OIL_SHORT, FADES_AT_SPEED_BACK_AFTER_REST, SELDOM)


@rule(
    source=DTN,
    catches=[case_of(FELL_SUDDENLY, TOP_UP_CURES_FOR_A_WHILE)],
    spares=[case_of(DECLINED_OVER_MONTHS)],
)
def going_down_as_oil_is_lost(known: Known) -> Conclusions:
    """Going down within one run, slowly or at once: oil is leaving the engine."""
    yield leads_to(OIL_ESCAPING, FELL_SUDDENLY, OFTEN)
    yield leads_to(OIL_ESCAPING, SANK_WHILE_RUNNING, OFTEN)


@rule(
    source=NE1,
    catches=[case_of(FELL_SUDDENLY, DIRECT_GAUGE_ZERO)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[FELL_SUDDENLY])],
)
def gone_at_a_stroke(known: Known) -> Conclusions:
    """Gone at a stroke while running: the pump is no longer turned."""
    yield leads_to(PUMP_NOT_TURNING, FELL_SUDDENLY, OFTEN)
    yield leads_to(PUMP_NOT_TURNING, NONE_FROM_FIRST_START, SOMETIMES)


@rule(
    source=PRM,
    catches=[case_of(NONE_FROM_FIRST_START)],
    spares=[case_of(GAUGE_READS_ZERO, lacks=[NONE_FROM_FIRST_START])],
)
def nothing_since_the_first_turn(known: Known) -> Conclusions:
    """Nothing since the first turn after work or storage: the pump has not taken up oil."""
    yield leads_to(PUMP_DRY, NONE_FROM_FIRST_START, MOSTLY)
    yield leads_to(PUMP_DRY, TEN_SECONDS_OR_MORE, OFTEN)
    yield leads_to(PUMP_DRY, LOW_FIRST_MINUTES_THEN_GOOD, SELDOM)


@rule(
    source=FLV,
    catches=[case_of(SLOW_AFTER_STANDING)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[SLOW_AFTER_STANDING])],
)
def late_then_normal(known: Known) -> Conclusions:
    """Late after standing, then normal: the oil ran back while it stood."""
    yield leads_to(DRAINS_BACK, SLOW_AFTER_STANDING, ALWAYS)
    yield leads_to(DRAINS_BACK, TEN_SECONDS_OR_MORE, SELDOM)


@rule(
    source=PF, catches=[case_of(CAPPED_LOW)], spares=[case_of(GAUGE_READS_LOW, lacks=[CAPPED_LOW])]
)
def steady_at_a_low_ceiling(known: Known) -> Conclusions:
    """Steady at a low ceiling whatever the revs: the valve opens early."""
    yield from shown_by_the_model(RELIEF_CAPS_LOW, CAPPED_LOW, NEVER_REACHES_SETTING_COLD)


@rule(
    source=HB14,
    catches=[case_of(CLIMBS_PAST_SETTING)],
    spares=[case_of(GAUGE_READS_HIGH, lacks=[CLIMBS_PAST_SETTING])],
)
def climbing_with_the_revs_when_cold(known: Known) -> Conclusions:
    """Climbing with the revs when cold: nothing relieves the pump."""
    yield from shown_by_the_model(RELIEF_HOLDS_HIGH, CLIMBS_PAST_SETTING)


@rule(
    source=HB02,
    catches=[case_of(GOOD_AT_PUMP_LOW_IN_GALLERY)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[GOOD_AT_PUMP_LOW_IN_GALLERY])],
)
def pressure_lost_on_the_way(known: Known) -> Conclusions:
    """Right at the pump and low in the gallery: it is lost on the way."""
    yield from shown_by_the_model(FLOW_RESTRICTED, PORTS_DIFFER, GOOD_AT_PUMP_LOW_IN_GALLERY)
    yield leads_to(FLOW_RESTRICTED, GAUGE_READS_HIGH, SELDOM)
    yield leads_to(FLOW_RESTRICTED, SANK_WHILE_RUNNING, SELDOM)


@rule(
    source=LTK,
    catches=[case_of(NOTHING_WARNED)],
    spares=[case_of(GAUGE_READS_LOW, lacks=[NOTHING_WARNED])],
)
def trouble_without_a_warning(known: Known) -> Conclusions:
    """Trouble without a warning: a branch was dry that the gauge does not see."""
    yield leads_to(BRANCH_DRY, NOTHING_WARNED, OFTEN)
    yield leads_to(BRANCH_DRY, ENGINE_RUNS_NORMALLY, SELDOM)
    yield leads_to(JOURNAL_DRY, NOTHING_WARNED, OFTEN)


@rule(source=ISS, catches=[case_of(FELL_SUDDENLY, NEEDLE_FLICKERS)], spares=[case_of(CAPPED_LOW)])
def comes_and_goes_with_the_drive(known: Known) -> Conclusions:
    """Coming and going, late on starting: the drive of the pump slips."""
    yield leads_to(PUMP_DRIVE_ERRATIC, SLOW_AFTER_STANDING, SELDOM)
    yield leads_to(PUMP_DRIVE_ERRATIC, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(PUMP_DRIVE_ERRATIC, TEN_SECONDS_OR_MORE, SELDOM)


@rule(source=AA97, catches=[case_of(NOTHING_WARNED)], spares=[case_of(ENGINE_RUNS_NORMALLY)])
def engine_lost_before_anyone_saw(known: Known) -> Conclusions:
    """An engine lost while nobody watched the gauge: the warning was missed or never came."""
    yield leads_to(ENGINE_FAILED, NOTHING_WARNED, SOMETIMES)


RULES = all_in(__name__, Rule)
