"""What each state of the oil circuit makes a gauge show in time: late, sudden, wavering, in bends.

No steady circuit can speak here, so every strength is judged, but for what steady pressure an
air leak leaves.
"""

from knowledge.conditions import (
    AIR_IN_SUCTION,
    BRANCH_DRY,
    DRAINS_BACK,
    ENGINE_FAILED,
    JOURNAL_DRY,
    OIL_AERATED,
    OIL_ESCAPING,
    OIL_SHORT,
    PICKUP_UNCOVERED,
    PUMP_DRIVE_ERRATIC,
    PUMP_DRY,
    PUMP_NOT_TURNING,
)
from knowledge.findings.behaviour import (
    DIRECT_GAUGE_ZERO,
    FADES_AT_SPEED_BACK_AFTER_REST,
    FALLS_IN_A_MANOEUVRE,
    LOW_FIRST_MINUTES_THEN_GOOD,
    NONE_FROM_FIRST_START,
    NOTHING_WARNED,
    PUMP_PORT_LOW,
    SLOW_AFTER_STANDING,
    TEN_SECONDS_OR_MORE,
    TOP_UP_CURES_FOR_A_WHILE,
)
from knowledge.findings.pressure import (
    CAPPED_LOW,
    DECLINED_OVER_MONTHS,
    ENGINE_RUNS_NORMALLY,
    FALLS_AS_REVS_RISE,
    FELL_SUDDENLY,
    FLICKERS_ONLY_AT_HOT_IDLE,
    FLICKERS_ONLY_AT_SPEED,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    NEEDLE_FLICKERS,
    SANK_WHILE_RUNNING,
)
from knowledge.reference.modelled import shown_by_the_model
from knowledge.rulebook import Conclusions, Known, case_of, leads_to, rules_of
from knowledge.sources import (
    AA97,
    DTN,
    FLV,
    HB09,
    HB17,
    INL,
    ISS,
    LTK,
    NE1,
    PRM,
    SLO,
)
from knowledge.vocabulary import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station

rule = rules_of(Station.INSTRUMENT)


@rule(
    source=HB17,
    catches=[case_of(TEN_SECONDS_OR_MORE, NEEDLE_FLICKERS)],
    spares=[case_of(NEEDLE_FLICKERS, lacks=[TEN_SECONDS_OR_MORE])],
)
def late_and_wavering_after_standing(known: Known) -> Conclusions:
    """Late after standing and wavering after that: air gets in on the suction side."""
    yield leads_to(AIR_IN_SUCTION, SLOW_AFTER_STANDING, OFTEN)
    yield leads_to(AIR_IN_SUCTION, TEN_SECONDS_OR_MORE, OFTEN)
    yield leads_to(AIR_IN_SUCTION, FLICKERS_ONLY_AT_SPEED, SOMETIMES)
    yield leads_to(AIR_IN_SUCTION, NONE_FROM_FIRST_START, SELDOM)
    yield leads_to(AIR_IN_SUCTION, FELL_SUDDENLY, SELDOM)
    # its other patterns stay out: only one leak in four lowers a steady pressure, the rest waver
    yield from shown_by_the_model(AIR_IN_SUCTION, PUMP_PORT_LOW)


@rule(
    source=HB09,
    catches=[case_of(FLICKERS_ONLY_AT_SPEED)],
    spares=[case_of(FLICKERS_ONLY_AT_HOT_IDLE)],
)
def unsteady_only_at_high_revs(known: Known) -> Conclusions:
    """Unsteady at high revs, calm below: air is whipped into the oil."""
    yield leads_to(OIL_AERATED, FLICKERS_ONLY_AT_SPEED, MOSTLY)
    # more revs whip in more air; the model has the same share of air at every speed
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
