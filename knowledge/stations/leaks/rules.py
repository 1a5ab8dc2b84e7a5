"""Rules at the outside leaks: what follows from what is known."""

from knowledge.alarm import Contradiction
from knowledge.engines import features
from knowledge.model import Shift, Station
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    is_absent,
    is_present,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.delivery import findings_filter as delivery_filter
from knowledge.stations.leaks import causes, causes_openings, findings, findings_places
from knowledge.stations.oil import findings_heat as oil_heat

rule = rules_of(Station.LEAKS)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.DIRECT_GAUGE, lacks=[features.ELECTRIC_GAUGE, features.LAMP_ONLY])],
    non_matches=[example(features.DIRECT_GAUGE), example(lacks=[features.ELECTRIC_GAUGE])],
)
def no_sender_no_leak_there(known: Known) -> Conclusions:
    """A direct gauge on a line, with no electric gauge or lamp, has no sender to leak."""
    if (
        known.has(features.DIRECT_GAUGE)
        and known.lacks(features.ELECTRIC_GAUGE)
        and known.lacks(features.LAMP_ONLY)
    ):
        yield cannot_be(causes_openings.SENDER_LEAK)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features.OIL_COOLER),
        example(features.REMOTE_FILTER),
        example(features.DRY_SUMP),
    ],
    non_matches=[example(lacks=[features.OIL_COOLER, features.REMOTE_FILTER])],
)
def more_hoses_more_leaks(known: Known) -> Conclusions:
    """A cooler, a remote filter or a dry sump has hoses, and every hose can burst."""
    for hoses in (features.OIL_COOLER, features.REMOTE_FILTER, features.DRY_SUMP):
        if known.has(hoses):
            yield more_common(causes.OIL_LINE_LEAK)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[features.OIL_COOLER, features.REMOTE_FILTER, features.DRY_SUMP])],
    non_matches=[
        example(lacks=[features.OIL_COOLER, features.REMOTE_FILTER]),
        example(features.OIL_COOLER),
    ],
)
def few_lines_outside(known: Known) -> Conclusions:
    """Without a cooler, a remote filter or a dry sump there is hardly a line to burst."""
    if (
        known.lacks(features.OIL_COOLER)
        and known.lacks(features.REMOTE_FILTER)
        and known.lacks(features.DRY_SUMP)
    ):
        yield less_common(causes.OIL_LINE_LEAK, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[findings.OIL_SEEN_OUTSIDE, findings.OIL_ON_THE_GROUND])],
    non_matches=[
        example(lacks=[findings.OIL_SEEN_OUTSIDE]),
        example(findings.OIL_SEEN_OUTSIDE, findings.OIL_ON_THE_GROUND),
    ],
)
def dry_outside_and_dry_below(known: Known) -> Conclusions:
    """Dry outside and no oil below: nothing sprays or drips there.

    Misleads when the oil leaves with the cooling water or burns in a turbocharger.
    """
    if known.lacks(findings.OIL_SEEN_OUTSIDE) and known.lacks(findings.OIL_ON_THE_GROUND):
        yield is_absent(findings.OIL_SPRAYED, sure=0.9)
        yield is_absent(findings.DROPS_FALL_WHILE_WATCHED, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.OIL_SPRAYED), example(findings.DROPS_FALL_WHILE_WATCHED)],
    non_matches=[example(findings.OIL_LOSS_FAST), example(lacks=[findings.OIL_SPRAYED])],
)
def spray_or_drops_wet_the_engine(known: Known) -> Conclusions:
    """Oil that sprays or falls in drops is outside the engine."""
    if known.has(findings.OIL_SPRAYED):
        yield is_present(findings.OIL_SEEN_OUTSIDE, sure=0.95)
    if known.has(findings.DROPS_FALL_WHILE_WATCHED):
        yield is_present(findings.OIL_SEEN_OUTSIDE, sure=0.95)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(lacks=[delivery_filter.FILTER_SEAT_LEAKS])],
    non_matches=[example(delivery_filter.FILTER_SEAT_LEAKS)],
)
def filter_dry_all_round_sits_tight(known: Known) -> Conclusions:
    """A filter that is dry all round is not loose, and its seal is good."""
    if known.lacks(delivery_filter.FILTER_SEAT_LEAKS):
        yield is_absent(findings_places.FILTER_FOUND_LOOSE, sure=0.9)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings.LEAKS_ONLY_RUNNING, findings_places.DRAIN_PLUG_FOUND_LOOSE),
        example(findings.LEAKS_ONLY_RUNNING, findings.SUMP_FOUND_HOLED),
    ],
    non_matches=[
        example(findings_places.DRAIN_PLUG_FOUND_LOOSE, lacks=[findings.LEAKS_ONLY_RUNNING]),
        example(findings.SUMP_FOUND_HOLED),
        example(findings.LEAKS_ONLY_RUNNING),
    ],
)
def hole_that_leaks_only_running(known: Known) -> Conclusions:
    """A loose drain plug or a holed sump leaks with the engine stopped too."""
    for hole in (findings_places.DRAIN_PLUG_FOUND_LOOSE, findings.SUMP_FOUND_HOLED):
        if known.has(findings.LEAKS_ONLY_RUNNING) and known.has(hole):
            yield Contradiction(
                (findings.LEAKS_ONLY_RUNNING, hole),
                f"{hole.says}, yet it is recorded as leaking only while running: is there a second leak?",
                findings.LEAKS_ONLY_RUNNING,
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.OIL_SPRAYED, lacks=[findings.OIL_SEEN_OUTSIDE])],
    non_matches=[
        example(findings.OIL_SPRAYED, findings.OIL_SEEN_OUTSIDE),
        example(findings.OIL_SPRAYED),
    ],
)
def spray_that_wets_nothing(known: Known) -> Conclusions:
    """Oil cannot spray out and leave the engine dry."""
    if known.has(findings.OIL_SPRAYED) and known.lacks(findings.OIL_SEEN_OUTSIDE):
        yield Contradiction(
            (findings.OIL_SPRAYED, findings.OIL_SEEN_OUTSIDE),
            "oil is recorded as spraying out, yet the outside as dry",
            findings.OIL_SEEN_OUTSIDE,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            findings.OIL_LOSS_FAST,
            lacks=[findings.OIL_SEEN_OUTSIDE, findings.OIL_ON_THE_GROUND, findings.OIL_OVERBOARD],
        )
    ],
    non_matches=[
        example(findings.OIL_LOSS_FAST, lacks=[findings.OIL_SEEN_OUTSIDE]),
        example(findings.OIL_LOSS_FAST),
    ],
)
def oil_lost_without_a_trace(known: Known) -> Conclusions:
    """A sump of oil cannot vanish in hours without a trace: outside, below, or in the water.

    Misleads when the engine burns it in clouds of smoke.
    """
    if (
        known.has(findings.OIL_LOSS_FAST)
        and known.lacks(findings.OIL_SEEN_OUTSIDE)
        and known.lacks(findings.OIL_ON_THE_GROUND)
        and known.lacks(findings.OIL_OVERBOARD)
    ):
        yield Contradiction(
            (
                findings.OIL_LOSS_FAST,
                findings.OIL_SEEN_OUTSIDE,
                findings.OIL_ON_THE_GROUND,
                findings.OIL_OVERBOARD,
            ),
            "oil is lost fast, yet you see none outside, below or in the water: look for blue smoke, "
            "and read the stick again on level ground",
            findings.OIL_LOSS_FAST,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(
            findings_places.BREATHER_FOUND_BLOCKED,
            lacks=[oil_heat.BLOW_BY_HIGH, findings.SEVERAL_SEALS_AT_ONCE],
        )
    ],
    non_matches=[
        example(findings_places.BREATHER_FOUND_BLOCKED, oil_heat.BLOW_BY_HIGH),
        example(findings_places.BREATHER_FOUND_BLOCKED),
    ],
)
def blocked_breather_without_pressure(known: Known) -> Conclusions:
    """A blocked breather without crankcase pressure does not fit, unless there is another vent."""
    if (
        known.has(findings_places.BREATHER_FOUND_BLOCKED)
        and known.lacks(oil_heat.BLOW_BY_HIGH)
        and known.lacks(findings.SEVERAL_SEALS_AT_ONCE)
    ):
        yield Contradiction(
            (findings_places.BREATHER_FOUND_BLOCKED, oil_heat.BLOW_BY_HIGH),
            "the breather is blocked, yet nothing blows at the filler: did you try it at idle?",
            oil_heat.BLOW_BY_HIGH,
        )
