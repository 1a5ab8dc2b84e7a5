"""Rules at the assembly: what follows from what is known."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.engines import features
from knowledge.history import findings as history
from knowledge.model import Severity, Shift, Station
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    is_present,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.assembly import causes, findings
from knowledge.stations.assembly import findings_left_out as left_out
from knowledge.stations.bearings import findings_measured as measured
from knowledge.stations.bearings import findings_shell_map as bearings_shell_map
from knowledge.stations.bearings import quantities

NEAR_THE_LIMIT = 0.9  #: of the limit for worn bearings (judgement)
rule = rules_of(Station.ASSEMBLY)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[features.PLASTIC_TIMING_GEAR, features.CHAIN_TENSIONERS])],
    non_matches=[
        example(lacks=[features.PLASTIC_TIMING_GEAR]),
        example(features.PLASTIC_TIMING_GEAR),
    ],
)
def no_plastic_to_shed(known: Known) -> Conclusions:
    """An engine with neither plastic timing teeth nor chain guides cannot shed them."""
    if known.lacks(features.PLASTIC_TIMING_GEAR) and known.lacks(features.CHAIN_TENSIONERS):
        yield cannot_be(causes.TIMING_GEAR_SHEDDING)


@rule(
    source=sources.CLUB_BLOCKED_SCREENS,
    matches=[example(features.PLASTIC_TIMING_GEAR)],
    non_matches=[example(lacks=[features.PLASTIC_TIMING_GEAR])],
)
def family_known_for_plastic_teeth(known: Known) -> Conclusions:
    """In a family known for plastic or fibre timing teeth, shed teeth are much more common."""
    if known.has(features.PLASTIC_TIMING_GEAR):
        yield more_common(causes.TIMING_GEAR_SHEDDING, Shift.STRONG_UP)


@rule(
    source=sources.CLUB_BLOCKED_SCREENS,
    matches=[example(features.PLASTIC_TIMING_GEAR, history.EARLIER_BREAKAGE)],
    non_matches=[
        example(features.PLASTIC_TIMING_GEAR),
        example(history.EARLIER_BREAKAGE),
    ],
)
def teeth_that_broke_before(known: Known) -> Conclusions:
    """If plastic teeth broke before, crumbs from then may still lie in the sump."""
    if known.has(features.PLASTIC_TIMING_GEAR) and known.has(history.EARLIER_BREAKAGE):
        yield more_common(causes.TIMING_GEAR_SHEDDING, Shift.STRONG_UP)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.CAP_BOLTS_SLACK), example(bearings_shell_map.WRONG_SHELLS_FITTED)],
    non_matches=[example(findings.FASTENER_FOUND_LOOSE)],
)
def slack_cap_is_a_loose_fastener(known: Known) -> Conclusions:
    """Loose cap bolts are loose fasteners; shells that do not suit are wrong parts."""
    if known.has(findings.CAP_BOLTS_SLACK):
        yield is_present(findings.FASTENER_FOUND_LOOSE, sure=0.9)
    if known.has(bearings_shell_map.WRONG_SHELLS_FITTED):
        yield is_present(findings.FOREIGN_PART_FITTED, sure=0.8)


@rule(
    source=idea_from(sources.CLUB_BLOCKED_SCREENS),
    matches=[example(history.EARLIER_BREAKAGE)],
    non_matches=[example(lacks=[history.EARLIER_BREAKAGE])],
)
def pieces_left_from_a_breakage(known: Known) -> Conclusions:
    """After an earlier breakage, pieces left inside are more common."""
    if known.has(history.EARLIER_BREAKAGE):
        yield more_common(causes.DIRT_IN_ASSEMBLY, Shift.STRONG_UP)
        yield more_common(causes.PART_SHEDDING_INSIDE)
        yield more_common(causes.TIMING_GEAR_SHEDDING)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.CAP_BOLTS_SLACK)],
    non_matches=[example(lacks=[findings.CAP_BOLTS_SLACK])],
)
def caps_not_clamped(known: Known) -> Conclusions:
    """Do not turn the engine again with caps that are not clamped."""
    if known.has(findings.CAP_BOLTS_SLACK):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Bearing cap or through bolts below torque; the maker's figure is the limit: do not run "
            "or just re-tighten, inspect shells and seats first.",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.CAPS_MIXED)],
    non_matches=[example(lacks=[findings.CAPS_MIXED])],
)
def caps_bored_in_another_place(known: Known) -> Conclusions:
    """Caps are bored in place: in another place or turned round, the bore is neither round nor true."""
    if known.has(findings.CAPS_MIXED):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Bearing caps in the wrong place or turned round: do not turn or start the engine until "
            "each cap is back in its own place and the bores are measured.",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.LEFTOVER_FOUND)],
    non_matches=[example(lacks=[findings.LEFTOVER_FOUND])],
)
def left_inside_at_assembly(known: Known) -> Conclusions:
    """What was left inside is drawn to the pickup or blocks an oilway within seconds."""
    if known.has(findings.LEFTOVER_FOUND):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Something was left inside at assembly: do not start until it is out and you have "
            "looked where the rest of it may lie.",
        )


@rule(
    source=idea_from(sources.BEARING_MAKER_CLEARANCE),
    matches=[
        example(history.FRESHLY_REBUILT, measures={measured.MEASURED_MAIN_CLEARANCE: 0.09e-3}),
        example(history.FRESHLY_REBUILT, measures={measured.MEASURED_ROD_CLEARANCE: 0.09e-3}),
    ],
    non_matches=[
        example(measures={measured.MEASURED_MAIN_CLEARANCE: 0.09e-3}),
        example(history.FRESHLY_REBUILT, measures={measured.MEASURED_MAIN_CLEARANCE: 0.06e-3}),
    ],
)
def built_to_the_limit_of_a_worn_engine(known: Known) -> Conclusions:
    """The limit is for worn bearings; a fresh build that stands near it was built wide."""
    if known.has(history.FRESHLY_REBUILT):
        for measure, limit in (
            (measured.MEASURED_MAIN_CLEARANCE, quantities.MOST_MAIN_CLEARANCE),
            (measured.MEASURED_ROD_CLEARANCE, quantities.MOST_ROD_CLEARANCE),
        ):
            value = known.measured(measure)
            if value is not None and value >= NEAR_THE_LIMIT * known.limit(limit):
                yield is_present(left_out.CLEARANCES_BUILT_WIDE, sure=0.8)
