"""What follows at restrictors, jets, the distributor body and the turbo."""

from knowledge.causes.topend import (
    DIST_HOUSING_LEAK,
    PISTON_JET_OPEN,
    RESTRICTOR_MISSING,
    TURBO_FEED_LEAK,
    TURBO_FEED_RESTRICTED,
)
from knowledge.conditions import (
    BEARINGS_STARVED,
    BRANCH_DRY,
    CLEARANCES_WIDE,
    METAL_SHED,
    OIL_ESCAPING,
    OPEN_LEAK_INSIDE,
)
from knowledge.engines.features import (
    PISTON_JETS,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    TURBOCHARGED,
)
from knowledge.findings.behaviour import CHANGED_AFTER_OTHER_WORK, LOW_FROM_FIRST_START
from knowledge.findings.oil_heat import OIL_IN_TURBO_OUTLETS
from knowledge.findings.pressure import (
    ENGINE_RUNS_NORMALLY,
    FELL_SUDDENLY,
    GAUGE_READS_LOW,
    LOW_HOT_IDLE_GOOD_SPEED,
)
from knowledge.findings.topend import ROCKERS_FLOODED
from knowledge.findings.topend_feeds import (
    DISTRIBUTOR_BORE_POURS,
    DISTRIBUTOR_SEAL_BAD,
    JETS_RUN_AT_LOW_PRESSURE,
    PISTON_JET_FOUND_BROKEN,
    RESTRICTOR_ABSENT,
    TURBO_FAILED,
    TURBO_FEED_FOUND_BLOCKED,
    TURBO_LINE_LEAKS,
    TURBO_SHAFT_LOOSE,
    TURBO_SHAFT_STIFF_OR_BLUED,
    TURBO_SHRIEKS,
)
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Contradiction,
    Known,
    cannot_be,
    case_of,
    is_absent,
    leads_to,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB18, MON, TUR
from knowledge.vocabulary import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    Severity,
    Station,
)

rule = rules_of(Station.TOPEND)


@rule(
    source=MON,
    catches=[
        case_of(LOW_FROM_FIRST_START, ROCKERS_FLOODED, RESTRICTOR_ABSENT),
        case_of(RESTRICTOR_ABSENT),
    ],
    spares=[case_of(LOW_FROM_FIRST_START, lacks=[ROCKERS_FLOODED, RESTRICTOR_ABSENT])],
)
def feed_without_its_restrictor(known: Known) -> Conclusions:
    """A feed without its restrictor floods the top and leaves the mains short since the rebuild."""
    yield leads_to(RESTRICTOR_MISSING, OPEN_LEAK_INSIDE, MOSTLY)
    yield leads_to(RESTRICTOR_MISSING, LOW_FROM_FIRST_START, OFTEN)
    yield leads_to(RESTRICTOR_MISSING, CHANGED_AFTER_OTHER_WORK, SOMETIMES)
    yield leads_to(RESTRICTOR_MISSING, ROCKERS_FLOODED, MOSTLY)
    yield leads_to(RESTRICTOR_MISSING, RESTRICTOR_ABSENT, ALWAYS)


@rule(
    source=HB18,
    catches=[
        case_of(LOW_HOT_IDLE_GOOD_SPEED, JETS_RUN_AT_LOW_PRESSURE),
        case_of(PISTON_JET_FOUND_BROKEN),
    ],
    spares=[
        case_of(LOW_HOT_IDLE_GOOD_SPEED, lacks=[JETS_RUN_AT_LOW_PRESSURE, PISTON_JET_FOUND_BROKEN])
    ],
)
def jets_spend_oil_at_idle(known: Known) -> Conclusions:
    """A jet that does not shut spends oil at idle, where there is none to spare.

    Misleads on engines whose jets have no valve by design.
    """
    yield leads_to(PISTON_JET_OPEN, OPEN_LEAK_INSIDE, MOSTLY)
    yield leads_to(PISTON_JET_OPEN, LOW_HOT_IDLE_GOOD_SPEED, OFTEN)
    yield leads_to(PISTON_JET_OPEN, JETS_RUN_AT_LOW_PRESSURE, MOSTLY)
    yield leads_to(PISTON_JET_OPEN, PISTON_JET_FOUND_BROKEN, OFTEN)


@rule(
    source=CP,
    catches=[
        case_of(GAUGE_READS_LOW, DISTRIBUTOR_BORE_POURS),
        case_of(GAUGE_READS_LOW, DISTRIBUTOR_SEAL_BAD),
    ],
    spares=[case_of(GAUGE_READS_LOW, lacks=[DISTRIBUTOR_BORE_POURS, DISTRIBUTOR_SEAL_BAD])],
)
def oil_past_the_distributor_body(known: Known) -> Conclusions:
    """Where the distributor body closes a gallery, a worn or wrong one lets the gallery out."""
    yield leads_to(DIST_HOUSING_LEAK, OPEN_LEAK_INSIDE, MOSTLY)
    yield leads_to(DIST_HOUSING_LEAK, LOW_FROM_FIRST_START, SOMETIMES)
    yield leads_to(DIST_HOUSING_LEAK, DISTRIBUTOR_BORE_POURS, MOSTLY)
    yield leads_to(DIST_HOUSING_LEAK, DISTRIBUTOR_SEAL_BAD, MOSTLY)


# --------------------------------------------------------------------------------- the turbo


@rule(
    source=TUR,
    catches=[
        case_of(TURBOCHARGED, TURBO_LINE_LEAKS, GAUGE_READS_LOW),
        case_of(TURBOCHARGED, OIL_IN_TURBO_OUTLETS, TURBO_SHAFT_LOOSE),
    ],
    spares=[case_of(TURBOCHARGED, lacks=[TURBO_LINE_LEAKS, OIL_IN_TURBO_OUTLETS])],
)
def oil_lost_at_the_turbo(known: Known) -> Conclusions:
    """A worn turbo smokes and bleeds a little pressure; a burst feed line throws the oil out."""
    yield leads_to(TURBO_FEED_LEAK, OIL_ESCAPING, OFTEN)
    yield leads_to(TURBO_FEED_LEAK, CLEARANCES_WIDE, SOMETIMES)
    yield leads_to(TURBO_FEED_LEAK, FELL_SUDDENLY, SOMETIMES)
    yield leads_to(TURBO_FEED_LEAK, TURBO_LINE_LEAKS, OFTEN)
    yield leads_to(TURBO_FEED_LEAK, OIL_IN_TURBO_OUTLETS, MOSTLY)
    yield leads_to(TURBO_FEED_LEAK, TURBO_SHAFT_LOOSE, OFTEN)
    yield leads_to(TURBO_FEED_LEAK, TURBO_FAILED, SOMETIMES)
    yield leads_to(TURBO_FEED_LEAK, TURBO_SHRIEKS, SELDOM)


@rule(
    source=TUR,
    catches=[
        case_of(TURBOCHARGED, TURBO_SHRIEKS, ENGINE_RUNS_NORMALLY),
        case_of(TURBOCHARGED, TURBO_FAILED, TURBO_FEED_FOUND_BLOCKED),
    ],
    spares=[case_of(TURBOCHARGED, lacks=[TURBO_SHRIEKS, TURBO_FAILED, TURBO_FEED_FOUND_BLOCKED])],
)
def turbo_starves_while_the_gauge_is_right(known: Known) -> Conclusions:
    """A kinked or coked feed starves the turbo alone: it shrieks while the gauge is right.

    A few seconds dry hurt a turbo as much as minutes hurt the engine.
    """
    yield leads_to(TURBO_FEED_RESTRICTED, BRANCH_DRY, ALWAYS)
    yield leads_to(TURBO_FEED_RESTRICTED, TURBO_SHRIEKS, OFTEN)
    yield leads_to(TURBO_FEED_RESTRICTED, TURBO_FAILED, OFTEN)
    yield leads_to(TURBO_FEED_RESTRICTED, TURBO_SHAFT_STIFF_OR_BLUED, MOSTLY)
    yield leads_to(TURBO_FEED_RESTRICTED, TURBO_SHAFT_LOOSE, SOMETIMES)
    yield leads_to(TURBO_FEED_RESTRICTED, TURBO_FEED_FOUND_BLOCKED, MOSTLY)
    yield leads_to(TURBO_FEED_RESTRICTED, METAL_SHED, SELDOM)


@rule(
    source=TUR,
    catches=[case_of(TURBOCHARGED, TURBO_FAILED, TURBO_SHAFT_STIFF_OR_BLUED)],
    spares=[case_of(TURBOCHARGED, lacks=[TURBO_FAILED, TURBO_SHAFT_STIFF_OR_BLUED])],
)
def turbo_dies_with_the_bearings(known: Known) -> Conclusions:
    """When the whole engine runs short of oil, its turbo is among the first to go."""
    if known.has(TURBOCHARGED):
        yield leads_to(BEARINGS_STARVED, TURBO_FAILED, SOMETIMES)
        yield leads_to(BEARINGS_STARVED, TURBO_SHAFT_STIFF_OR_BLUED, SOMETIMES)
        yield leads_to(BEARINGS_STARVED, TURBO_SHRIEKS, SELDOM)


# -------------------------------------------------------------------------------- layout


@rule(
    source=TUR,
    catches=[case_of(lacks=[TURBOCHARGED])],
    spares=[case_of(TURBOCHARGED), case_of()],
)
def no_turbo_no_turbo_feed(known: Known) -> Conclusions:
    """Without a turbocharger there is no turbo feed."""
    if known.lacks(TURBOCHARGED):
        yield cannot_be(TURBO_FEED_LEAK)
        yield cannot_be(TURBO_FEED_RESTRICTED)


@rule(
    source=HB18,
    catches=[case_of(lacks=[PISTON_JETS])],
    spares=[case_of(PISTON_JETS), case_of()],
)
def no_jets_under_the_pistons(known: Known) -> Conclusions:
    """Without piston jets none can stand open."""
    if known.lacks(PISTON_JETS):
        yield cannot_be(PISTON_JET_OPEN)
        yield is_absent(JETS_RUN_AT_LOW_PRESSURE)
        yield is_absent(PISTON_JET_FOUND_BROKEN)


@rule(
    source=CP,
    catches=[case_of(lacks=[PUMP_ON_DISTRIBUTOR_SHAFT, PUMP_ON_SKEW_GEAR])],
    spares=[
        case_of(PUMP_ON_DISTRIBUTOR_SHAFT, lacks=[PUMP_ON_SKEW_GEAR]),
        case_of(lacks=[PUMP_ON_DISTRIBUTOR_SHAFT]),
    ],
)
def distributor_clear_of_the_galleries(known: Known) -> Conclusions:
    """A distributor that is not on the pump's drive crosses no pressure gallery."""
    if known.lacks(PUMP_ON_DISTRIBUTOR_SHAFT) and known.lacks(PUMP_ON_SKEW_GEAR):
        yield cannot_be(DIST_HOUSING_LEAK)


# ------------------------------------------------------------------ alarms, clashing reports


@rule(
    source=TUR,
    catches=[
        case_of(TURBO_LINE_LEAKS),
        case_of(TURBO_SHRIEKS),
        case_of(TURBO_SHAFT_STIFF_OR_BLUED),
    ],
    spares=[case_of(lacks=[TURBO_LINE_LEAKS, TURBO_SHRIEKS, TURBO_SHAFT_STIFF_OR_BLUED])],
)
def turbo_in_danger(known: Known) -> Conclusions:
    """A leaking turbo line can set fire; a starved turbo breaks within minutes."""
    if known.has(TURBO_LINE_LEAKS):
        yield Alarm(
            Severity.STOP,
            "Turbo oil line leaks, no leak allowed beside the hot housing: shut down, fire watch.",
        )
    if known.has(TURBO_SHRIEKS):
        yield Alarm(
            Severity.STOP,
            "Turbo shrieks, an even whistle is the limit: shut down, prove its oil feed first.",
        )
    if known.has(TURBO_SHAFT_STIFF_OR_BLUED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Turbo shaft stiff or blued, it must spin freely: do not run before feed and turbo are "
            "put right.",
        )


@rule(
    source=TUR,
    catches=[case_of(TURBO_SHRIEKS, lacks=[TURBOCHARGED])],
    spares=[case_of(TURBO_SHRIEKS, TURBOCHARGED), case_of(TURBO_SHRIEKS)],
)
def turbo_heard_where_there_is_none(known: Known) -> Conclusions:
    """A turbo cannot shriek, fail or leak on an engine that has none."""
    if known.lacks(TURBOCHARGED):
        for sight in (TURBO_SHRIEKS, TURBO_FAILED, TURBO_LINE_LEAKS, OIL_IN_TURBO_OUTLETS):
            if known.has(sight):
                yield Contradiction(
                    (sight, TURBOCHARGED),
                    "A turbo trouble is reported on an engine said to have no turbocharger: "
                    "correct the layout.",
                    TURBOCHARGED,
                )
