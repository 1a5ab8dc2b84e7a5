"""What each state of the oil circuit shows on a gauge over time: late, sudden, wavering, in bends.

The steady circuit model cannot give these; strengths are judged, apart from the steady part of an
air leak.
"""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import ALWAYS, MOSTLY, OFTEN, SELDOM, SOMETIMES, Station
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.pressure.computed import computed_effects
from knowledge.rule_api import LinkGroup, effects_of, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from

LATE_AND_WAVERING_AFTER_STANDING = LinkGroup(
    id="late_and_wavering_after_standing",
    station=Station.INSTRUMENT,
    says="Late after standing, then wavering: air gets in on the suction side.",
    links=(
        *effects_of(
            conditions.AIR_IN_SUCTION,
            {
                behaviour.SLOW_AFTER_STANDING: (SOMETIMES, COMMON_PRACTICE),
                behaviour.TEN_SECONDS_OR_MORE: (OFTEN, COMMON_PRACTICE),
                patterns_speed.FLICKERS_ONLY_AT_SPEED: (SOMETIMES, JUDGEMENT),
                behaviour.NONE_FROM_FIRST_START: (SELDOM, JUDGEMENT),
                patterns.FELL_SUDDENLY: (SELDOM, JUDGEMENT),
            },
        ),
        # its other patterns stay out: only one leak in four lowers a steady pressure, the rest waver
        *computed_effects(conditions.AIR_IN_SUCTION, direct_gauge.PUMP_PORT_LOW),
    ),
    matches=[example(behaviour.TEN_SECONDS_OR_MORE, patterns.NEEDLE_FLICKERS)],
    non_matches=[example(patterns.NEEDLE_FLICKERS, lacks=[behaviour.TEN_SECONDS_OR_MORE])],
)
UNSTEADY_ONLY_AT_HIGH_REVS = LinkGroup(
    id="unsteady_only_at_high_revs",
    station=Station.INSTRUMENT,
    says="Unsteady at high revs, steady below: the crank whips air into the oil.",
    parent=conditions.OIL_AERATED,
    effects={
        patterns_speed.FLICKERS_ONLY_AT_SPEED: (MOSTLY, sources.MARINE_SERVICE_MANUAL_1999),
        # more revs whip in more air; the model has the same share of air at every speed
        patterns_speed.FALLS_AS_REVS_RISE: (SOMETIMES, sources.MARINE_SERVICE_MANUAL_1999),
    },
    matches=[example(patterns_speed.FLICKERS_ONLY_AT_SPEED)],
    non_matches=[example(patterns_speed.FLICKERS_ONLY_AT_HOT_IDLE)],
)
FALLS_WITH_THE_MANOEUVRE = LinkGroup(
    id="falls_with_the_manoeuvre",
    station=Station.INSTRUMENT,
    says="Falling in the same bend or heel each time: the pickup comes out of the oil.",
    parent=conditions.PICKUP_UNCOVERED,
    effects={
        behaviour.FALLS_IN_A_MANOEUVRE: (ALWAYS, sources.SUMP_TILT_TEST),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (
            SOMETIMES,
            idea_from(sources.OIL_STARVATION_ARTICLE),
        ),
        patterns_speed.FLICKERS_ONLY_AT_SPEED: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(behaviour.FALLS_IN_A_MANOEUVRE)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[behaviour.FALLS_IN_A_MANOEUVRE])],
)
TOO_LITTLE_OIL_SHOWS_IN_TIME = LinkGroup(
    id="too_little_oil_shows_in_time",
    station=Station.INSTRUMENT,
    says="Lost in bends, or sinking in one run: there was too little oil.",
    parent=conditions.OIL_SHORT,
    effects={
        behaviour.FALLS_IN_A_MANOEUVRE: (SOMETIMES, sources.SUMP_TILT_TEST),
        patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE),
        patterns.SANK_WHILE_RUNNING: (SOMETIMES, JUDGEMENT),
        behaviour.FADES_AT_SPEED_BACK_AFTER_REST: (SELDOM, JUDGEMENT),
    },
    matches=[example(behaviour.FALLS_IN_A_MANOEUVRE), example(patterns.SANK_WHILE_RUNNING)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[behaviour.FALLS_IN_A_MANOEUVRE])],
)
GOING_DOWN_AS_OIL_IS_LOST = LinkGroup(
    id="going_down_as_oil_is_lost",
    station=Station.INSTRUMENT,
    says="Falling within one run, slowly or at once: oil is leaving the engine.",
    parent=conditions.OIL_ESCAPING,
    effects={
        patterns.FELL_SUDDENLY: (OFTEN, COMMON_PRACTICE),
        patterns.SANK_WHILE_RUNNING: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(patterns.FELL_SUDDENLY, patterns.SANK_WHILE_RUNNING)],
    non_matches=[example(patterns.DECLINED_OVER_MONTHS)],
)
GONE_AT_A_STROKE = LinkGroup(
    id="gone_at_a_stroke",
    station=Station.INSTRUMENT,
    says="Lost suddenly while running: nothing drives the pump any more.",
    parent=conditions.PUMP_NOT_TURNING,
    effects={
        patterns.FELL_SUDDENLY: (OFTEN, sources.NAVY_ENGINEMAN),
        behaviour.NONE_FROM_FIRST_START: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[example(patterns.FELL_SUDDENLY, direct_gauge.DIRECT_GAUGE_ZERO)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[patterns.FELL_SUDDENLY])],
)
NOTHING_SINCE_THE_FIRST_TURN = LinkGroup(
    id="nothing_since_the_first_turn",
    station=Station.INSTRUMENT,
    says="None since the first start after work or storage: the pump has not drawn oil.",
    parent=conditions.PUMP_DRY,
    effects={
        behaviour.NONE_FROM_FIRST_START: (MOSTLY, sources.FILTER_MAKER_PRIME),
        behaviour.TEN_SECONDS_OR_MORE: (OFTEN, sources.FILTER_MAKER_PRIME),
        behaviour.LOW_FIRST_MINUTES_THEN_GOOD: (SELDOM, JUDGEMENT),
    },
    matches=[example(behaviour.NONE_FROM_FIRST_START)],
    non_matches=[example(patterns.GAUGE_READS_ZERO, lacks=[behaviour.NONE_FROM_FIRST_START])],
)
LATE_THEN_NORMAL = LinkGroup(
    id="late_then_normal",
    station=Station.INSTRUMENT,
    says="Late after standing, then normal: the oil drained back while it stood.",
    parent=conditions.DRAINS_BACK,
    effects={
        behaviour.SLOW_AFTER_STANDING: (ALWAYS, sources.FILTER_MAKER_VALVES),
        behaviour.TEN_SECONDS_OR_MORE: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(behaviour.SLOW_AFTER_STANDING)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[behaviour.SLOW_AFTER_STANDING])],
)
TROUBLE_WITHOUT_A_WARNING = LinkGroup(
    id="trouble_without_a_warning",
    station=Station.INSTRUMENT,
    says="Trouble without a warning: a branch ran dry that the gauge does not see.",
    links=(
        *effects_of(
            conditions.BRANCH_DRY,
            {
                direct_gauge.NOTHING_WARNED: (OFTEN, idea_from(sources.CAM_BEARING_HOLES_BLOG)),
                patterns.ENGINE_RUNS_NORMALLY: (SELDOM, JUDGEMENT),
            },
        ),
        *effects_of(
            conditions.JOURNAL_DRY,
            {
                direct_gauge.NOTHING_WARNED: (OFTEN, JUDGEMENT),
            },
        ),
    ),
    matches=[example(direct_gauge.NOTHING_WARNED)],
    non_matches=[example(patterns.GAUGE_READS_LOW, lacks=[direct_gauge.NOTHING_WARNED])],
)
COMES_AND_GOES_WITH_THE_DRIVE = LinkGroup(
    id="comes_and_goes_with_the_drive",
    station=Station.INSTRUMENT,
    says="On and off, late on starting: the pump drive slips.",
    parent=conditions.PUMP_DRIVE_ERRATIC,
    effects={
        behaviour.SLOW_AFTER_STANDING: (SELDOM, JUDGEMENT),
        patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE),
        behaviour.TEN_SECONDS_OR_MORE: (SELDOM, JUDGEMENT),
    },
    matches=[example(patterns.FELL_SUDDENLY, patterns.NEEDLE_FLICKERS)],
    non_matches=[example(patterns_speed.CAPPED_LOW)],
)
ENGINE_LOST_BEFORE_ANYONE_SAW = LinkGroup(
    id="engine_lost_before_anyone_saw",
    station=Station.INSTRUMENT,
    says="An engine lost while nobody watched the gauge: the warning was missed or never came.",
    parent=conditions.ENGINE_FAILED,
    effects={
        direct_gauge.NOTHING_WARNED: (SOMETIMES, JUDGEMENT),
    },
    matches=[example(direct_gauge.NOTHING_WARNED)],
    non_matches=[example(patterns.ENGINE_RUNS_NORMALLY)],
)
