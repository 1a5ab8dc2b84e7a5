"""Root causes at jets, restrictors, distributor body and turbo, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.engines import features
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_DOWN,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, direct_gauge, patterns, patterns_speed
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.oil import findings_heat as oil_heat
from knowledge.stations.topend import findings, findings_feeds

PISTON_JET_OPEN = Cause(
    id="piston_jet_open",
    station=Station.TOPEND,
    says="a piston cooling jet is missing, broken or stuck open",
    mechanism="it uses oil that the bearings need at idle: low at idle, less so at speed",
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),
    remedy="renew the jets, check their valves and seats",
    source=sources.AIRCRAFT_FAULT_ISOLATION,
    follows="hot piston, low idle pressure",
    also=("piston squirter broken", "oil squirter missing", "oil jet stuck open", "piston cooler"),
)
JETS_SPEND_OIL_AT_IDLE = LinkGroup(
    id="jets_spend_oil_at_idle",
    station=Station.TOPEND,
    says="A jet that does not shut takes oil at idle, when there is none to spare.",
    note="Misleads on engines whose jets have no valve by design.",
    parent=PISTON_JET_OPEN,
    effects={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, sources.AIRCRAFT_FAULT_ISOLATION),
        patterns_speed.LOW_HOT_IDLE_GOOD_SPEED: (
            OFTEN,
            idea_from(sources.AIRCRAFT_FAULT_ISOLATION),
        ),
        findings_feeds.JETS_RUN_AT_LOW_PRESSURE: (MOSTLY, sources.AIRCRAFT_FAULT_ISOLATION),
        findings_feeds.PISTON_JET_FOUND_BROKEN: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(patterns_speed.LOW_HOT_IDLE_GOOD_SPEED, findings_feeds.JETS_RUN_AT_LOW_PRESSURE),
        example(findings_feeds.PISTON_JET_FOUND_BROKEN),
    ],
    non_matches=[
        example(
            patterns_speed.LOW_HOT_IDLE_GOOD_SPEED,
            lacks=[findings_feeds.JETS_RUN_AT_LOW_PRESSURE, findings_feeds.PISTON_JET_FOUND_BROKEN],
        )
    ],
)

RESTRICTOR_MISSING = Cause(
    id="restrictor_missing",
    station=Station.TOPEND,
    says="a metering restrictor was left out or drilled too big",
    mechanism=(
        "too much oil goes to head, chain or turbo: the top is flooded and main pressure is low"
    ),
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=STRONG_DOWN, freshly_rebuilt=STRONG_UP),
    remedy="fit the right restrictor or gasket orifice",
    source=sources.GALLERY_PLUG_LEFT_OUT,
    follows="flooded covers, oil that is slow to drain back",
    also=(
        "oil restrictor left out",
        "head gasket orifice",
        "metering jet missing",
        "cam feed orifice",
    ),
)
FEED_WITHOUT_ITS_RESTRICTOR = LinkGroup(
    id="feed_without_its_restrictor",
    station=Station.TOPEND,
    says=(
        "A feed without its restrictor floods the top and starves the mains, ever since the "
        "rebuild."
    ),
    parent=RESTRICTOR_MISSING,
    effects={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, COMMON_PRACTICE),
        behaviour.LOW_FROM_FIRST_START: (OFTEN, JUDGEMENT),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, JUDGEMENT),
        findings.ROCKERS_FLOODED: (MOSTLY, COMMON_PRACTICE),
        findings.RESTRICTOR_ABSENT: (ALWAYS, COMMON_PRACTICE),
        oil_heat.BLUE_SMOKE: (SOMETIMES, JUDGEMENT),  # the guides draw in what floods the head
    },
    matches=[
        example(
            behaviour.LOW_FROM_FIRST_START, findings.ROCKERS_FLOODED, findings.RESTRICTOR_ABSENT
        ),
        example(findings.RESTRICTOR_ABSENT),
    ],
    non_matches=[
        example(
            behaviour.LOW_FROM_FIRST_START,
            lacks=[findings.ROCKERS_FLOODED, findings.RESTRICTOR_ABSENT],
        )
    ],
)

DIST_HOUSING_LEAK = Cause(
    id="dist_housing_leak",
    station=Station.TOPEND,
    says="distributor body or its seal leaks where it crosses an oil gallery",
    mechanism=(
        "the body closes off a pressure gallery: if it is worn, short or without its ring, oil "
        "slips past it"
    ),
    rate=Rate.RARE,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP),
    remedy="fit a new ring, and the right body at the right depth",
    source=COMMON_PRACTICE,
    follows="low pressure, timing gear short of oil",
    also=(
        "distributor o-ring",
        "distributor body clearance",
        "wrong distributor",
        "oil past distributor",
    ),
)
OIL_PAST_THE_DISTRIBUTOR_BODY = LinkGroup(
    id="oil_past_the_distributor_body",
    station=Station.TOPEND,
    says="If the distributor body closes a gallery, a worn or wrong one leaks from it.",
    parent=DIST_HOUSING_LEAK,
    effects={
        conditions.OPEN_LEAK_INSIDE: (MOSTLY, COMMON_PRACTICE),
        behaviour.LOW_FROM_FIRST_START: (SOMETIMES, JUDGEMENT),
        findings_feeds.DISTRIBUTOR_BORE_POURS: (MOSTLY, COMMON_PRACTICE),
        findings_feeds.DISTRIBUTOR_SEAL_BAD: (MOSTLY, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(patterns.GAUGE_READS_LOW, findings_feeds.DISTRIBUTOR_BORE_POURS),
        example(patterns.GAUGE_READS_LOW, findings_feeds.DISTRIBUTOR_SEAL_BAD),
    ],
    non_matches=[
        example(
            patterns.GAUGE_READS_LOW,
            lacks=[findings_feeds.DISTRIBUTOR_BORE_POURS, findings_feeds.DISTRIBUTOR_SEAL_BAD],
        )
    ],
)

TURBO_FEED_LEAK = Cause(
    id="turbo_feed_leak",
    station=Station.TOPEND,
    says="turbo bearings worn out, or the turbo oil feed line open or cracked",
    mechanism="a small steady loss of main pressure; a burst line throws the oil out",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, raced_or_heeled=UP),
    remedy="repair the line, repair or replace the turbo",
    source=sources.TURBO_MAKER_STARVATION,
    follows="fire on the hot housing, empty sump, seizure",
    also=(
        "turbo oil line burst",
        "turbo leaking oil",
        "turbo feed pipe cracked",
        "worn turbo bearings",
    ),
)
OIL_LOST_AT_THE_TURBO = LinkGroup(
    id="oil_lost_at_the_turbo",
    station=Station.TOPEND,
    says="A worn turbo smokes and costs a little pressure; a burst feed line throws the oil out.",
    parent=TURBO_FEED_LEAK,
    effects={
        conditions.OIL_ESCAPING: (OFTEN, COMMON_PRACTICE),
        conditions.CLEARANCES_WIDE: (SOMETIMES, JUDGEMENT),
        patterns.FELL_SUDDENLY: (SOMETIMES, COMMON_PRACTICE),
        findings_feeds.TURBO_LINE_LEAKS: (OFTEN, COMMON_PRACTICE),
        oil_heat.OIL_IN_TURBO_OUTLETS: (MOSTLY, COMMON_PRACTICE),
        findings_feeds.TURBO_SHAFT_LOOSE: (OFTEN, COMMON_PRACTICE),
        findings_feeds.TURBO_FAILED: (SOMETIMES, COMMON_PRACTICE),
        findings.TURBO_SHRIEKS: (SELDOM, COMMON_PRACTICE),
    },
    matches=[
        example(features.TURBOCHARGED, findings_feeds.TURBO_LINE_LEAKS, patterns.GAUGE_READS_LOW),
        example(
            features.TURBOCHARGED, oil_heat.OIL_IN_TURBO_OUTLETS, findings_feeds.TURBO_SHAFT_LOOSE
        ),
    ],
    non_matches=[
        example(
            features.TURBOCHARGED,
            lacks=[findings_feeds.TURBO_LINE_LEAKS, oil_heat.OIL_IN_TURBO_OUTLETS],
        )
    ],
)

TURBO_FEED_RESTRICTED = Cause(
    id="turbo_feed_restricted",
    station=Station.TOPEND,
    says="the turbo oil feed is kinked, coked, or masked by gasket or sealer",
    mechanism=(
        "the engine's gauge is normal while the turbo starves; a few seconds without oil ruin "
        "its bearings"
    ),
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, stood_long=UP),
    remedy="fit a new feed pipe and gasket, no sealer; prime the turbo before you start",
    source=sources.TURBO_MAKER_STARVATION,
    follows="turbo failure, its debris in the engine",
    also=("coked turbo line", "turbo starved of oil", "turbo feed kinked", "blocked banjo bolt"),
)
TURBO_STARVES_WHILE_THE_GAUGE_IS_RIGHT = LinkGroup(
    id="turbo_starves_while_the_gauge_is_right",
    station=Station.TOPEND,
    says="A kinked or coked feed starves only the turbo: it shrieks while the gauge reads right.",
    note="A few seconds without oil hurt a turbo as much as minutes hurt the engine.",
    parent=TURBO_FEED_RESTRICTED,
    effects={
        direct_gauge.NOTHING_WARNED: (OFTEN, sources.TURBO_MAKER_STARVATION),
        patterns.ENGINE_RUNS_NORMALLY: (SELDOM, JUDGEMENT),
        findings.TURBO_SHRIEKS: (OFTEN, COMMON_PRACTICE),
        findings_feeds.TURBO_FAILED: (OFTEN, sources.TURBO_MAKER_STARVATION),
        findings_feeds.TURBO_SHAFT_STIFF_OR_BLUED: (MOSTLY, COMMON_PRACTICE),
        findings_feeds.TURBO_SHAFT_LOOSE: (SOMETIMES, COMMON_PRACTICE),
        findings_feeds.TURBO_FEED_FOUND_BLOCKED: (MOSTLY, COMMON_PRACTICE),
        conditions.METAL_SHED: (SELDOM, idea_from(sources.TURBO_MAKER_STARVATION)),
    },
    matches=[
        example(features.TURBOCHARGED, findings.TURBO_SHRIEKS, patterns.ENGINE_RUNS_NORMALLY),
        example(
            features.TURBOCHARGED,
            findings_feeds.TURBO_FAILED,
            findings_feeds.TURBO_FEED_FOUND_BLOCKED,
        ),
    ],
    non_matches=[
        example(
            features.TURBOCHARGED,
            lacks=[
                findings.TURBO_SHRIEKS,
                findings_feeds.TURBO_FAILED,
                findings_feeds.TURBO_FEED_FOUND_BLOCKED,
            ],
        )
    ],
)
