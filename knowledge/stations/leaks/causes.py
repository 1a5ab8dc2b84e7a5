"""Root causes at the outside leaks, and what each leads to."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.model import (
    ALWAYS,
    MOSTLY,
    OFTEN,
    SELDOM,
    SOMETIMES,
    STRONG_UP,
    UP,
    Cause,
    Rate,
    Shifts,
    Station,
)
from knowledge.pressure import behaviour, patterns
from knowledge.rule_api import LinkGroup, example
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.leaks import findings, findings_places
from knowledge.stations.oil import findings_record as oil_record

EXTERNAL_LEAK_MAJOR = Cause(
    id="external_leak_major",
    station=Station.LEAKS,
    says="a big outside oil leak, place not found yet",
    mechanism="the level falls until the pickup draws air; a big leak takes the pressure at once",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, oil_just_changed=STRONG_UP),
    remedy="stop, wash it down, find the place and repair it before you refill",
    source=sources.OVERHAUL_MANUAL_5_101,
    follows="fire on hot parts, then starved bearings and a seized engine",
    also=(
        "oil leak",
        "losing oil",
        "pouring oil",
        "leaking oil everywhere",
        "puddle of oil",
        "gusher of oil",
    ),
    state=conditions.OIL_ESCAPING,
    gives_way=True,
)
BIG_LEAK_OF_UNKNOWN_PLACE = LinkGroup(
    id="big_leak_of_unknown_place",
    station=Station.LEAKS,
    says="A big outside leak empties the sump; the biggest take the pressure too.",
    parent=EXTERNAL_LEAK_MAJOR,
    effects={
        conditions.OIL_ESCAPING: (ALWAYS, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SOMETIMES, idea_from(sources.OVERHAUL_MANUAL_5_101)),
        findings.LEAKS_ONLY_RUNNING: (OFTEN, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (SELDOM, COMMON_PRACTICE),
    },
    matches=[
        example(findings.OIL_LOSS_FAST, patterns.FELL_SUDDENLY),
        example(findings.OIL_SPRAYED, patterns.GAUGE_READS_ZERO),
    ],
    non_matches=[
        example(
            patterns.FELL_SUDDENLY,
            lacks=[findings.OIL_SEEN_OUTSIDE, findings.OIL_ON_THE_GROUND, findings.OIL_LOSS_FAST],
        )
    ],
)

FILTER_SEAL_LEAK = Cause(
    id="filter_seal_leak",
    station=Station.LEAKS,
    says="oil filter loose, its seal leaking, or the old gasket left under it",
    mechanism="full pump pressure acts on that seal, so the leak empties the sump in minutes",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(freshly_rebuilt=UP, oil_just_changed=STRONG_UP),
    remedy=(
        "clean the face, fit one new oiled seal, tighten as the filter says; check again when "
        "running"
    ),
    source=COMMON_PRACTICE,
    follows="oil gone in minutes, fire on hot parts, starved bearings",
    also=(
        "double gasket",
        "oil filter leaking",
        "filter came loose",
        "filter spun off",
        "blew the filter gasket",
    ),
)
OIL_OUT_FROM_UNDER_THE_FILTER = LinkGroup(
    id="oil_out_from_under_the_filter",
    station=Station.LEAKS,
    says="A loose filter, or one on top of the old seal, lets oil out at full pump pressure.",
    note="It may hold at idle and let go at the first cold start or hard pull.",
    parent=FILTER_SEAL_LEAK,
    effects={
        conditions.OIL_ESCAPING: (ALWAYS, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (SOMETIMES, COMMON_PRACTICE),
        delivery_filter.FILTER_SEAT_LEAKS: (ALWAYS, COMMON_PRACTICE),
        findings_places.FILTER_FOUND_LOOSE: (OFTEN, COMMON_PRACTICE),
        delivery_filter.FILTER_MISFITTED: (SOMETIMES, COMMON_PRACTICE),
        delivery_filter.FILTER_BURST: (SOMETIMES, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (OFTEN, COMMON_PRACTICE),
        findings.LEAKS_ONLY_RUNNING: (MOSTLY, COMMON_PRACTICE),
    },
    matches=[
        example(behaviour.CHANGED_WITH_OIL_CHANGE, delivery_filter.FILTER_SEAT_LEAKS),
        example(delivery_filter.FILTER_MISFITTED),
        example(findings_places.FILTER_FOUND_LOOSE),
    ],
    non_matches=[
        example(
            behaviour.CHANGED_WITH_OIL_CHANGE,
            lacks=[
                delivery_filter.FILTER_SEAT_LEAKS,
                findings_places.FILTER_FOUND_LOOSE,
                delivery_filter.FILTER_MISFITTED,
            ],
        )
    ],
)

OIL_LINE_LEAK = Cause(
    id="oil_line_leak",
    station=Station.LEAKS,
    says="oil line, hose or cooler burst, or its fitting loose",
    mechanism="oil escapes on the pressure side: the pump empties the sump through it",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=UP, freshly_rebuilt=UP, oil_just_changed=UP, raced_or_heeled=UP),
    remedy="renew line and fitting, support it, keep it clear of heat and edges",
    source=sources.DIESEL_TESTING_MANUAL,
    follows="oil gone in a minute or two, fire, starved bearings",
    also=(
        "oil hose blew",
        "cooler line burst",
        "oil cooler leaking",
        "remote filter hose off",
        "fitting came loose",
    ),
)
LINE_OR_COOLER_LETS_GO = LinkGroup(
    id="line_or_cooler_lets_go",
    station=Station.LEAKS,
    says=(
        "A burst line or cooler empties the sump at pump pressure; with a cooler you may not see "
        "it."
    ),
    note="A water-cooled cooler loses oil into its water, and the engine stays dry outside.",
    parent=OIL_LINE_LEAK,
    effects={
        conditions.OIL_ESCAPING: (ALWAYS, sources.DIESEL_TESTING_MANUAL),
        conditions.PRESSURE_GONE: (OFTEN, idea_from(sources.DIESEL_TESTING_MANUAL)),
        findings_places.OIL_LINE_FOUND_BROKEN: (MOSTLY, COMMON_PRACTICE),
        findings_places.OIL_LINE_FITTING_WET: (OFTEN, COMMON_PRACTICE),
        findings.OIL_OVERBOARD: (SELDOM, sources.ARMY_TM_272_TABLE),
        findings.LEAKS_ONLY_RUNNING: (MOSTLY, COMMON_PRACTICE),
        behaviour.CHANGED_AFTER_OTHER_WORK: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings_places.OIL_LINE_FOUND_BROKEN),
        example(findings.OIL_SPRAYED, findings_places.OIL_LINE_FITTING_WET),
    ],
    non_matches=[
        example(
            findings.OIL_SPRAYED,
            lacks=[findings_places.OIL_LINE_FOUND_BROKEN, findings_places.OIL_LINE_FITTING_WET],
        )
    ],
)

DRAIN_PLUG_OUT = Cause(
    id="drain_plug_out",
    station=Station.LEAKS,
    says="drain plug or drain valve lost, loose or stripped",
    mechanism="the sump drains; the pressure is normal until the pickup is out of the oil",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(oil_just_changed=STRONG_UP, raced_or_heeled=UP),
    remedy="fit a new plug and washer, repair the thread, wire or lock it if it can shake loose",
    source=COMMON_PRACTICE,
    follows="dry sump within a mile or two, wiped bearings",
    also=(
        "drain plug fell out",
        "sump plug missing",
        "forgot to tighten drain plug",
        "stripped drain plug",
    ),
)
SUMP_RUNS_EMPTY_BY_ITSELF = LinkGroup(
    id="sump_runs_empty_by_itself",
    station=Station.LEAKS,
    says=(
        "A lost drain plug empties the sump, running or not; the gauge reads right to the last "
        "pint."
    ),
    parent=DRAIN_PLUG_OUT,
    effects={
        conditions.OIL_ESCAPING: (ALWAYS, COMMON_PRACTICE),
        conditions.PRESSURE_GONE: (OFTEN, COMMON_PRACTICE),
        findings_places.DRAIN_PLUG_FOUND_LOOSE: (ALWAYS, COMMON_PRACTICE),
        oil_record.LEVEL_FALLS_STANDING: (MOSTLY, COMMON_PRACTICE),
        behaviour.CHANGED_WITH_OIL_CHANGE: (OFTEN, COMMON_PRACTICE),
    },
    matches=[
        example(findings_places.DRAIN_PLUG_FOUND_LOOSE),
        example(findings_places.DRAIN_PLUG_FOUND_LOOSE, lacks=[findings.LEAKS_ONLY_RUNNING]),
    ],
    non_matches=[
        example(findings.OIL_ON_THE_GROUND, lacks=[findings_places.DRAIN_PLUG_FOUND_LOOSE])
    ],
)

SHAFT_SEAL_LEAK = Cause(
    id="shaft_seal_leak",
    station=Station.LEAKS,
    says="crank or cam seal, or a cover gasket, leaks badly",
    mechanism="splash and drain oil escapes; the level falls over hours, and the pressure with it",
    rate=Rate.OCCASIONAL,
    shifts=Shifts(high_mileage=STRONG_UP, freshly_rebuilt=UP, stood_long=UP),
    remedy="check the breather first, then renew seal or gasket and smooth the groove in the shaft",
    source=COMMON_PRACTICE,
    follows="slipping clutch or belts, low level, starved pickup",
    also=(
        "rear main seal leak",
        "front seal leaking",
        "timing cover leak",
        "rocker cover gasket leak",
        "leaks from bellhousing",
    ),
)
SEAL_OR_COVER_LETS_OIL_BY = LinkGroup(
    id="seal_or_cover_lets_oil_by",
    station=Station.LEAKS,
    says=(
        "A bad seal or cover loses oil over hours; the pressure goes only when the level has gone."
    ),
    note="Misleads when the breather is blocked: then the seals are not to blame.",
    parent=SHAFT_SEAL_LEAK,
    effects={
        conditions.OIL_ESCAPING: (MOSTLY, COMMON_PRACTICE),
        findings.SEAL_OR_GASKET_WET: (ALWAYS, COMMON_PRACTICE),
        findings.OIL_FROM_BELLHOUSING: (SOMETIMES, COMMON_PRACTICE),
        findings.LEAKS_ONLY_RUNNING: (SOMETIMES, COMMON_PRACTICE),
    },
    matches=[
        example(findings.SEAL_OR_GASKET_WET, findings.OIL_LOSS_FAST),
        example(findings.OIL_FROM_BELLHOUSING),
    ],
    non_matches=[
        example(
            findings.OIL_LOSS_FAST,
            lacks=[findings.SEAL_OR_GASKET_WET, findings.OIL_FROM_BELLHOUSING],
        )
    ],
)
