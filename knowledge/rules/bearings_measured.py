"""What measured clearances say. All clearances are on the diameter."""

from knowledge.findings.bearings_bench import (
    BEARING_CLEARANCE_TOO_TIGHT,
    CRANK_END_FLOAT_OVER,
    MAIN_CLEARANCE_TOO_WIDE,
    MEASURED_CRANK_END_FLOAT,
    MEASURED_MAIN_CLEARANCE,
    MEASURED_ROD_CLEARANCE,
    ROD_CLEARANCE_TOO_WIDE,
)
from knowledge.reference.judging import sure_beyond
from knowledge.reference.limits import (
    CRANK_END_FLOAT,
    LEAST_BEARING_CLEARANCE,
    MAIN_CLEARANCE,
    ROD_CLEARANCE,
)
from knowledge.rulebook import (
    Conclusions,
    Derived,
    Known,
    case_of,
    is_absent,
    is_present,
    rules_of,
)
from knowledge.sources import CEB1, EB21, KNG
from knowledge.vocabulary import Finding, Station

rule = rules_of(Station.BEARINGS)


def judged(finding: Finding, past: float) -> Derived:
    """The finding as likely as the measurement makes it: there, or not there."""
    return is_present(finding, past) if past >= 0.5 else is_absent(finding, 1.0 - past)


@rule(
    source=EB21,
    catches=[
        case_of(measures={MEASURED_MAIN_CLEARANCE: 0.13e-3}),
        case_of(measures={MEASURED_MAIN_CLEARANCE: 0.05e-3}),
    ],
    spares=[case_of(measures={MEASURED_ROD_CLEARANCE: 0.13e-3})],
)
def main_clearance_against_its_limit(known: Known) -> Conclusions:
    """The widest main clearance, on the diameter, is held against the maker's limit."""
    widest = known.measured(MEASURED_MAIN_CLEARANCE)
    if widest is not None:
        past = sure_beyond(widest, known.limit(MAIN_CLEARANCE), MEASURED_MAIN_CLEARANCE.spread)
        yield judged(MAIN_CLEARANCE_TOO_WIDE, past)


@rule(
    source=EB21,
    catches=[
        case_of(measures={MEASURED_ROD_CLEARANCE: 0.13e-3}),
        case_of(measures={MEASURED_ROD_CLEARANCE: 0.05e-3}),
    ],
    spares=[case_of(measures={MEASURED_MAIN_CLEARANCE: 0.13e-3})],
)
def rod_clearance_against_its_limit(known: Known) -> Conclusions:
    """The widest rod clearance, on the diameter, is held against the maker's limit."""
    widest = known.measured(MEASURED_ROD_CLEARANCE)
    if widest is not None:
        past = sure_beyond(widest, known.limit(ROD_CLEARANCE), MEASURED_ROD_CLEARANCE.spread)
        yield judged(ROD_CLEARANCE_TOO_WIDE, past)


@rule(
    source=KNG,
    catches=[
        case_of(measures={MEASURED_MAIN_CLEARANCE: 0.01e-3}),
        case_of(measures={MEASURED_ROD_CLEARANCE: 0.05e-3, MEASURED_MAIN_CLEARANCE: 0.05e-3}),
    ],
    spares=[case_of(measures={MEASURED_CRANK_END_FLOAT: 0.01e-3})],
)
def tightest_bearing_against_the_least(known: Known) -> Conclusions:
    """The tightest main or rod clearance, on the diameter, is held against the least allowed."""
    both = (
        (known.smallest(MEASURED_MAIN_CLEARANCE), MEASURED_MAIN_CLEARANCE.spread),
        (known.smallest(MEASURED_ROD_CLEARANCE), MEASURED_ROD_CLEARANCE.spread),
    )
    least = known.limit(LEAST_BEARING_CLEARANCE)
    below = [sure_beyond(least, value, spread) for value, spread in both if value is not None]
    if below:
        yield judged(BEARING_CLEARANCE_TOO_TIGHT, max(below))


@rule(
    source=CEB1,
    catches=[
        case_of(measures={MEASURED_CRANK_END_FLOAT: 0.5e-3}),
        case_of(measures={MEASURED_CRANK_END_FLOAT: 0.15e-3}),
    ],
    spares=[case_of(measures={MEASURED_MAIN_CLEARANCE: 0.13e-3})],
)
def end_float_against_its_limit(known: Known) -> Conclusions:
    """The crank's end float is held against the maker's limit."""
    widest = known.measured(MEASURED_CRANK_END_FLOAT)
    if widest is not None:
        past = sure_beyond(widest, known.limit(CRANK_END_FLOAT), MEASURED_CRANK_END_FLOAT.spread)
        yield judged(CRANK_END_FLOAT_OVER, past)
