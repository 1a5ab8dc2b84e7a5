"""Rules on measured bearing clearances. All clearances are on the diameter."""

from knowledge import sources
from knowledge.judging import beyond_limit, judged, sure_past
from knowledge.model import Station
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import idea_from
from knowledge.stations.bearings import findings_measured, quantities

rule = rules_of(Station.BEARINGS)


@rule(
    source=sources.ENGINE_BUILDER_2021,
    matches=[
        example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.13e-3}),
        example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.05e-3}),
    ],
    non_matches=[example(measures={findings_measured.MEASURED_ROD_CLEARANCE: 0.13e-3})],
)
def main_clearance_against_its_limit(known: Known) -> Conclusions:
    """The widest main clearance, on the diameter, compared with the maker's limit."""
    yield from beyond_limit(
        known,
        findings_measured.MAIN_CLEARANCE_TOO_WIDE,
        findings_measured.MEASURED_MAIN_CLEARANCE,
        quantities.MOST_MAIN_CLEARANCE,
    )


@rule(
    source=sources.ENGINE_BUILDER_2021,
    matches=[
        example(measures={findings_measured.MEASURED_ROD_CLEARANCE: 0.13e-3}),
        example(measures={findings_measured.MEASURED_ROD_CLEARANCE: 0.05e-3}),
    ],
    non_matches=[example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.13e-3})],
)
def rod_clearance_against_its_limit(known: Known) -> Conclusions:
    """The widest rod clearance, on the diameter, compared with the maker's limit."""
    yield from beyond_limit(
        known,
        findings_measured.ROD_CLEARANCE_TOO_WIDE,
        findings_measured.MEASURED_ROD_CLEARANCE,
        quantities.MOST_ROD_CLEARANCE,
    )


@rule(
    source=idea_from(sources.BEARING_MAKER_CLEARANCE),
    matches=[
        example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.01e-3}),
        example(
            measures={
                findings_measured.MEASURED_ROD_CLEARANCE: 0.05e-3,
                findings_measured.MEASURED_MAIN_CLEARANCE: 0.05e-3,
            }
        ),
    ],
    non_matches=[example(measures={findings_measured.MEASURED_CRANK_END_FLOAT: 0.01e-3})],
)
def tightest_bearing_against_the_least(known: Known) -> Conclusions:
    """The tightest main or rod clearance, on the diameter, compared with the least allowed."""
    below = [
        sure_past(known, measure, quantities.LEAST_BEARING_CLEARANCE, tightest)
        for measure in (
            findings_measured.MEASURED_MAIN_CLEARANCE,
            findings_measured.MEASURED_ROD_CLEARANCE,
        )
        if (tightest := known.smallest(measure)) is not None
    ]
    if below:
        yield judged(findings_measured.BEARING_CLEARANCE_TOO_TIGHT, max(below))


@rule(
    source=sources.BEARING_GUIDE_CEB1,
    matches=[
        example(measures={findings_measured.MEASURED_CRANK_END_FLOAT: 0.5e-3}),
        example(measures={findings_measured.MEASURED_CRANK_END_FLOAT: 0.15e-3}),
    ],
    non_matches=[example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.13e-3})],
)
def end_float_against_its_limit(known: Known) -> Conclusions:
    """The crank's end float compared with the maker's limit."""
    yield from beyond_limit(
        known,
        findings_measured.CRANK_END_FLOAT_OVER,
        findings_measured.MEASURED_CRANK_END_FLOAT,
        quantities.MOST_CRANK_END_FLOAT,
    )
