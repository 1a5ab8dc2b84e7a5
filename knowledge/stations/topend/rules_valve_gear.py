"""Rules on what the valve gear shows of the oil."""

from knowledge import sources
from knowledge.alarm import Alarm, Contradiction
from knowledge.circuit import conditions
from knowledge.engines import features
from knowledge.model import MOSTLY, OFTEN, SELDOM, SOMETIMES, Severity, Station
from knowledge.pressure import direct_gauge, patterns
from knowledge.rule_api import Conclusions, Known, example, is_absent, leads_to, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT, idea_from
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.topend import findings, findings_cam

rule = rules_of(Station.TOPEND)


@rule(
    source=sources.MARINE_SERVICE_MANUAL_1999,
    matches=[
        example(features.HYDRAULIC_LIFTERS, patterns.GAUGE_READS_LOW, findings.LIFTERS_QUIET),
        example(features.HYDRAULIC_LIFTERS, findings.LIFTERS_QUIET),
    ],
    non_matches=[
        example(
            features.HYDRAULIC_LIFTERS, patterns.GAUGE_READS_LOW, lacks=[findings.LIFTERS_QUIET]
        )
    ],
)
def quiet_lifters_have_oil(known: Known) -> Conclusions:
    """Hydraulic lifters that stay quiet have enough oil: doubt the gauge, or call it normal.

    Misleads with solid lifters, which say nothing either way.
    """
    if known.has(features.HYDRAULIC_LIFTERS):
        yield leads_to(conditions.READING_FALSE, findings.LIFTERS_QUIET, OFTEN, COMMON_PRACTICE)
        yield leads_to(
            oil_causes_condition.OIL_HOT_NORMAL,
            findings.LIFTERS_QUIET,
            MOSTLY,
            sources.MARINE_SERVICE_MANUAL_1999,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features.CHAIN_TENSIONERS, patterns.GAUGE_READS_LOW, findings.TIMING_COVER_RATTLES),
        example(features.CHAIN_TENSIONERS, findings_cam.TENSIONER_SLACK),
    ],
    non_matches=[
        example(
            features.CHAIN_TENSIONERS,
            lacks=[findings.TIMING_COVER_RATTLES, findings_cam.TENSIONER_SLACK],
        )
    ],
)
def tensioner_lives_on_oil_pressure(known: Known) -> Conclusions:
    """An oil-fed tensioner is only as firm as the oil pressure behind it."""
    if known.has(features.CHAIN_TENSIONERS):
        yield leads_to(
            conditions.PRESSURE_LOW, findings.TIMING_COVER_RATTLES, SOMETIMES, COMMON_PRACTICE
        )
        yield leads_to(
            conditions.PRESSURE_LOW, findings_cam.TENSIONER_SLACK, SELDOM, COMMON_PRACTICE
        )


@rule(
    source=JUDGEMENT,
    matches=[example(findings.LIFTERS_QUIET)],
    non_matches=[example(lacks=[findings.LIFTERS_QUIET]), example(findings.LIFTERS_CLATTER)],
)
def quiet_is_not_clatter(known: Known) -> Conclusions:
    """Lifters that are quiet at hot idle do not clatter there."""
    if known.has(findings.LIFTERS_QUIET):
        yield is_absent(findings.LIFTERS_CLATTER, sure=0.95)


@rule(
    source=JUDGEMENT,
    matches=[example(findings.ROCKERS_FLOODED)],
    non_matches=[example(findings.NO_OIL_AT_ROCKERS), example(lacks=[findings.ROCKERS_FLOODED])],
)
def flood_is_not_drought(known: Known) -> Conclusions:
    """If oil floods the cover, oil reaches the rockers, though the far end may be dry."""
    if known.has(findings.ROCKERS_FLOODED):
        yield is_absent(findings.NO_OIL_AT_ROCKERS, sure=0.85)


@rule(
    source=sources.NAVY_14075_INSTRUMENTS,
    matches=[
        example(findings.LIFTERS_CLATTER, patterns.GAUGE_READS_LOW),
        example(findings.LIFTERS_CLATTER, patterns.GAUGE_READS_ZERO),
        example(findings.LIFTERS_CLATTER, direct_gauge.DIRECT_GAUGE_LOW),
    ],
    non_matches=[
        example(findings.LIFTERS_CLATTER),
        example(patterns.GAUGE_READS_LOW, lacks=[findings.LIFTERS_CLATTER]),
    ],
)
def clatter_and_a_low_gauge(known: Known) -> Conclusions:
    """Clatter with a low or dead gauge: two signs that the oil is missing."""
    if known.has(findings.LIFTERS_CLATTER) and known.has(patterns.GAUGE_READS_ZERO):
        yield Alarm(
            Severity.STOP,
            "Gauge at zero and the valve gear clatters, no running without pressure: shut down, do "
            "not restart until the cause is found.",
            low=False,
        )
    if known.has(findings.LIFTERS_CLATTER) and known.has(direct_gauge.DIRECT_GAUGE_LOW):
        yield Alarm(
            Severity.STOP,
            "low on a trusted gauge and the valve gear clatters: shut down, do not run until you "
            "find the cause",
            low=False,
        )
    if known.has(findings.LIFTERS_CLATTER) and known.has(patterns.GAUGE_READS_LOW):
        yield Alarm(
            Severity.STOP,
            "gauge low and the valve gear clatters: shut down, fit a direct gauge before you run it "
            "again",
            until=direct_gauge.DIRECT_GAUGE_LOW,
            gauge_next=True,
            low=False,
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings.CAMSHAFT_BROKEN),
        example(findings_cam.LIFTER_OUT_OF_BORE),
        example(findings.NO_OIL_AT_ROCKERS),
        example(findings_cam.CAM_BEARING_FOUND_BAD),
    ],
    non_matches=[
        example(findings_cam.CAM_JOURNALS_WORN),
        example(
            lacks=[
                findings_cam.CAM_BEARING_FOUND_BAD,
                findings.CAMSHAFT_BROKEN,
                findings_cam.LIFTER_OUT_OF_BORE,
                findings.NO_OIL_AT_ROCKERS,
            ]
        ),
    ],
)
def top_end_not_fit_to_run(known: Known) -> Conclusions:
    """A broken cam, a lifter out of its bore or dry rockers: every further turn does damage."""
    if known.has(findings.CAMSHAFT_BROKEN):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Camshaft broken or seized, it must be whole and turn: do not crank or run.",
        )
    if known.has(findings_cam.LIFTER_OUT_OF_BORE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "A lifter is out of its bore, all must be in: do not run, the gallery is open.",
        )
    if known.has(findings_cam.CAM_BEARING_FOUND_BAD):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "A cam bearing is worn through, loose or turned, its oil hole may be covered: do not run "
            "it until a new one is in with its hole open.",
        )
    if known.has(findings.NO_OIL_AT_ROCKERS):
        yield Alarm(
            Severity.CARE,
            "No oil at the rockers, each needs a steady flow: run it no longer than the minute you "
            "need to look.",
            lets_run=True,
        )


@rule(
    source=idea_from(sources.MARINE_SERVICE_MANUAL_1999),
    matches=[
        example(features.HYDRAULIC_LIFTERS, findings.LIFTERS_QUIET, direct_gauge.DIRECT_GAUGE_ZERO)
    ],
    non_matches=[
        example(findings.LIFTERS_QUIET, direct_gauge.DIRECT_GAUGE_ZERO),
        example(features.HYDRAULIC_LIFTERS, findings.LIFTERS_QUIET),
    ],
)
def quiet_lifters_without_pressure(known: Known) -> Conclusions:
    """Hydraulic lifters cannot stay quiet at hot idle with no pressure at all."""
    if (
        known.has(features.HYDRAULIC_LIFTERS)
        and known.has(findings.LIFTERS_QUIET)
        and known.has(direct_gauge.DIRECT_GAUGE_ZERO)
    ):
        yield Contradiction(
            (findings.LIFTERS_QUIET, direct_gauge.DIRECT_GAUGE_ZERO),
            "Quiet hydraulic lifters and a trusted gauge at zero do not agree: fit a second gauge at "
            "another port before you think of a restart.",
            direct_gauge.DIRECT_GAUGE_ZERO,
        )


@rule(
    source=JUDGEMENT,
    matches=[
        example(findings.LIFTERS_QUIET, findings.LIFTERS_CLATTER),
        example(findings.ROCKERS_FLOODED, findings.NO_OIL_AT_ROCKERS),
    ],
    non_matches=[
        example(findings.LIFTERS_QUIET),
        example(findings.ROCKERS_FLOODED),
        example(patterns.FELL_SUDDENLY),
    ],
)
def top_end_reports_that_clash(known: Known) -> Conclusions:
    """Quiet and clattering, flooded and dry: one was seen at another place or temperature."""
    if known.has(findings.LIFTERS_QUIET) and known.has(findings.LIFTERS_CLATTER):
        yield Contradiction(
            (findings.LIFTERS_QUIET, findings.LIFTERS_CLATTER),
            "The lifters are recorded as both quiet and clattering: listen again at hot idle.",
            findings.LIFTERS_CLATTER,
        )
    if known.has(findings.ROCKERS_FLOODED) and known.has(findings.NO_OIL_AT_ROCKERS):
        yield Contradiction(
            (findings.ROCKERS_FLOODED, findings.NO_OIL_AT_ROCKERS),
            "The rockers are recorded as both flooded and dry: note which end of which shaft, and "
            "look for a lost end plug.",
            findings.NO_OIL_AT_ROCKERS,
        )
