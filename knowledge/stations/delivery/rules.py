"""Rules at the filter, cooler and galleries: what follows from what is known."""

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.engines import features
from knowledge.model import SOMETIMES, Severity, Shift, Station
from knowledge.pressure import direct_gauge, patterns
from knowledge.reports.behaviours import shown, wavers_once_up
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import Circumstance, Shows
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    is_absent,
    leads_to,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.delivery import causes, findings_filter, findings_filter_cut

rule = rules_of(Station.DELIVERY)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            features.REMOTE_FILTER,
            findings_filter.REMOTE_HOSES_CROSSED,
            findings_filter_cut.FILTER_COLLAPSED,
        ),
        example(features.REMOTE_FILTER, findings_filter.REMOTE_HOSES_CROSSED),
    ],
    non_matches=[
        example(
            features.REMOTE_FILTER,
            lacks=[findings_filter.REMOTE_HOSES_CROSSED, findings_filter_cut.FILTER_COLLAPSED],
        )
    ],
)
def remote_hoses_the_wrong_way_round(known: Known) -> Conclusions:
    """Crossed hoses feed a remote filter from inside: its valve shuts or its core collapses."""
    if known.has(features.REMOTE_FILTER):
        yield leads_to(
            causes.FILTER_WRONG, findings_filter.REMOTE_HOSES_CROSSED, SOMETIMES, COMMON_PRACTICE
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            behaviours=[
                Behaviour(Shows.SLOW),
                Behaviour(Shows.UNSTEADY, frozenset({Circumstance.IDLE})),
            ]
        )
    ],
    non_matches=[
        example(behaviours=[Behaviour(Shows.SLOW)]),
        example(behaviours=[Behaviour(Shows.UNSTEADY, frozenset({Circumstance.IDLE}))]),
    ],
)
def wavers_after_a_slow_start(known: Known) -> Conclusions:
    """A filter that drained is full once the pressure is up: what wavers then takes air."""
    if list(shown(known, Shows.SLOW)) and wavers_once_up(known):
        yield less_common(causes.FILTER_DRAINBACK, Shift.STRONG_DOWN)


@rule(
    source=JUDGEMENT,
    matches=[example(features.OIL_COOLER)],
    non_matches=[example(lacks=[features.OIL_COOLER]), example()],
)
def cooler_in_the_way(known: Known) -> Conclusions:
    """A blocked cooler is likelier in an engine known to have one than in one nobody asked about."""
    if known.has(features.OIL_COOLER):
        yield more_common(causes.OIL_COOLER_BLOCKED)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[features.OIL_COOLER])],
    non_matches=[example(features.OIL_COOLER), example()],
)
def no_cooler_no_blocked_cooler(known: Known) -> Conclusions:
    """An engine without an oil cooler cannot have a blocked one."""
    if known.lacks(features.OIL_COOLER):
        yield cannot_be(causes.OIL_COOLER_BLOCKED)
        yield is_absent(findings_filter.COOLER_STAYS_COLD)
        yield is_absent(findings_filter_cut.COOLER_BYPASSED_CURES)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_filter.FILTER_BURST), example(findings_filter.FILTER_SEAT_LEAKS)],
    non_matches=[example(lacks=[findings_filter.FILTER_BURST, findings_filter.FILTER_SEAT_LEAKS])],
)
def oil_thrown_out_at_the_filter(known: Known) -> Conclusions:
    """Oil thrown out at the filter empties the sump in a minute and can burn on the exhaust."""
    if known.has(findings_filter.FILTER_BURST):
        yield Alarm(
            Severity.STOP,
            "Filter burst or off, no leak allowed: shut down at once, watch for fire, and check the "
            "relief valve before you fit another.",
        )
    if known.has(findings_filter.FILTER_SEAT_LEAKS):
        yield Alarm(
            Severity.STOP,
            "Oil runs out at the filter seat, no leak allowed: shut down, reseat, check the level.",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_filter_cut.FILTER_COLLAPSED)],
    non_matches=[
        example(findings_filter_cut.FILTER_PACKED),
        example(lacks=[findings_filter_cut.FILTER_COLLAPSED]),
    ],
)
def pieces_of_element_downstream(known: Known) -> Conclusions:
    """A torn or crushed element may have sent paper and metal into the gallery."""
    if known.has(findings_filter_cut.FILTER_COLLAPSED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Filter element torn or crushed, none may be missing: do not run until you have all its "
            "pieces and the gallery is clear.",
        )


@rule(
    source=sources.LABORATORY_COOLANT,
    matches=[example(findings_filter_cut.MILKY_FILM_IN_FILTER, patterns.GAUGE_READS_LOW)],
    non_matches=[
        example(findings_filter_cut.MILKY_FILM_IN_FILTER),
        example(patterns.GAUGE_READS_LOW),
    ],
)
def watered_oil_and_low_pressure(known: Known) -> Conclusions:
    """Oil with water in it, at low pressure, no longer carries the bearings."""
    if known.has(findings_filter_cut.MILKY_FILM_IN_FILTER) and known.has(patterns.GAUGE_READS_LOW):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Water in the oil and pressure low, no water allowed: do not run, find where it gets in.",
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings_filter.FILTER_DROP_HIGH, lacks=[direct_gauge.PORTS_DIFFER])],
    non_matches=[
        example(findings_filter.FILTER_DROP_HIGH),
        example(lacks=[direct_gauge.PORTS_DIFFER]),
    ],
)
def filter_takes_pressure_yet_ports_agree(known: Known) -> Conclusions:
    """The filter cannot take a bar (15 psi) if the ports ahead of and behind it read the same."""
    if known.has(findings_filter.FILTER_DROP_HIGH) and known.lacks(direct_gauge.PORTS_DIFFER):
        yield Contradiction(
            (findings_filter.FILTER_DROP_HIGH, direct_gauge.PORTS_DIFFER),
            "A pressure loss across the filter was read, yet two ports agree: swap the gauges and "
            "note which ports you use.",
            direct_gauge.PORTS_DIFFER,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            findings_filter.FILTER_STAYS_COLD,
            lacks=[direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY, patterns.GAUGE_READS_LOW],
        )
    ],
    non_matches=[
        example(findings_filter.FILTER_STAYS_COLD, patterns.GAUGE_READS_LOW),
        example(lacks=[findings_filter.FILTER_STAYS_COLD]),
    ],
)
def cold_filter_with_good_pressure(known: Known) -> Conclusions:
    """Good gallery pressure and a cold full-flow filter do not fit together."""
    if (
        known.has(findings_filter.FILTER_STAYS_COLD)
        and known.lacks(patterns.GAUGE_READS_LOW)
        and known.lacks(direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY)
    ):
        yield Contradiction(
            (
                findings_filter.FILTER_STAYS_COLD,
                patterns.GAUGE_READS_LOW,
                direct_gauge.GOOD_AT_PUMP_LOW_IN_GALLERY,
            ),
            "The filter is recorded as cold with good pressure behind it: feel it again hot, and ask "
            "whether it is a part-flow filter.",
            findings_filter.FILTER_STAYS_COLD,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_filter_cut.FILTER_BYPASS_WITNESS, findings_filter_cut.FILTER_PACKED)],
    non_matches=[
        example(
            findings_filter_cut.FILTER_BYPASS_WITNESS, lacks=[findings_filter_cut.FILTER_PACKED]
        )
    ],
)
def dirt_past_the_filter_scratches(known: Known) -> Conclusions:
    """If the bypass has been open, dirt has gone round the filter to the bearings."""
    if known.has(findings_filter_cut.FILTER_BYPASS_WITNESS) and known.has(
        findings_filter_cut.FILTER_PACKED
    ):
        yield Alarm(
            Severity.CARE,
            "Filter packed and bypassed, clean side must be clean: inspect a bearing before you run "
            "it for long.",
        )
