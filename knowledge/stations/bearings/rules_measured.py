"""Rules on measured bearing clearances. All clearances are on the diameter."""

from knowledge import sources
from knowledge.engines import limits
from knowledge.judging import sure_beyond
from knowledge.model import Finding, Station
from knowledge.rule_api import Conclusions, Derived, Known, example, is_absent, is_present, rules_of
from knowledge.stations.bearings import findings_measured

rule = rules_of(Station.BEARINGS)


def judged(finding: Finding, past: float) -> Derived:
    """The finding as likely as the measurement makes it: there, or not there."""
    return is_present(finding, past) if past >= 0.5 else is_absent(finding, 1.0 - past)


@rule(
    source=sources.ENGINE_BUILDER_2021,
    matches=[
        example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.13e-3}),
        example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.05e-3}),
    ],
    non_matches=[example(measures={findings_measured.MEASURED_ROD_CLEARANCE: 0.13e-3})],
)
def main_clearance_against_its_limit(known: Known) -> Conclusions:
    """The widest main clearance, on the diameter, is held against the maker's limit."""
    widest = known.measured(findings_measured.MEASURED_MAIN_CLEARANCE)
    if widest is not None:
        past = sure_beyond(
            widest,
            known.limit(limits.MAIN_CLEARANCE),
            findings_measured.MEASURED_MAIN_CLEARANCE.spread,
        )
        yield judged(findings_measured.MAIN_CLEARANCE_TOO_WIDE, past)


@rule(
    source=sources.ENGINE_BUILDER_2021,
    matches=[
        example(measures={findings_measured.MEASURED_ROD_CLEARANCE: 0.13e-3}),
        example(measures={findings_measured.MEASURED_ROD_CLEARANCE: 0.05e-3}),
    ],
    non_matches=[example(measures={findings_measured.MEASURED_MAIN_CLEARANCE: 0.13e-3})],
)
def rod_clearance_against_its_limit(known: Known) -> Conclusions:
    """The widest rod clearance, on the diameter, is held against the maker's limit."""
    widest = known.measured(findings_measured.MEASURED_ROD_CLEARANCE)
    if widest is not None:
        past = sure_beyond(
            widest,
            known.limit(limits.ROD_CLEARANCE),
            findings_measured.MEASURED_ROD_CLEARANCE.spread,
        )
        yield judged(findings_measured.ROD_CLEARANCE_TOO_WIDE, past)


@rule(
    source=sources.BEARING_MAKER_CLEARANCE,
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
    """The tightest main or rod clearance, on the diameter, is held against the least allowed."""
    both = (
        (
            known.smallest(findings_measured.MEASURED_MAIN_CLEARANCE),
            findings_measured.MEASURED_MAIN_CLEARANCE.spread,
        ),
        (
            known.smallest(findings_measured.MEASURED_ROD_CLEARANCE),
            findings_measured.MEASURED_ROD_CLEARANCE.spread,
        ),
    )
    least = known.limit(limits.LEAST_BEARING_CLEARANCE)
    below = [sure_beyond(least, value, spread) for value, spread in both if value is not None]
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
    """The crank's end float is held against the maker's limit."""
    widest = known.measured(findings_measured.MEASURED_CRANK_END_FLOAT)
    if widest is not None:
        past = sure_beyond(
            widest,
            known.limit(limits.CRANK_END_FLOAT),
            findings_measured.MEASURED_CRANK_END_FLOAT.spread,
        )
        yield judged(findings_measured.CRANK_END_FLOAT_OVER, past)
