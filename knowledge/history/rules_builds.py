"""Unusual builds and unknown histories: what they make more or less common."""

from knowledge.circuit.conditions import WORN_BY_HOURS
from knowledge.engines import features
from knowledge.history import findings
from knowledge.model import Shift, Station
from knowledge.rule_api import Conclusions, Known, example, less_common, more_common, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.instrument import causes as instrument_causes
from knowledge.stations.oil import causes_condition as oil_causes_condition
from knowledge.stations.suction import causes as suction_causes

rule = rules_of(Station.INSTRUMENT)
suction_rule = rules_of(Station.SUCTION)
assembly_rule = rules_of(Station.ASSEMBLY)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.GAUGE_LIKE_A_LAMP)],
    non_matches=[example(), example(lacks=[features.GAUGE_LIKE_A_LAMP])],
)
def needle_made_to_stand_still(known: Known) -> Conclusions:
    """A gauge made to show mid-scale above a few psi is not faulty when it does so."""
    if known.has(features.GAUGE_LIKE_A_LAMP):
        yield less_common(instrument_causes.SENDER_FAULTY)
        yield less_common(instrument_causes.GAUGE_FAULTY)


@suction_rule(
    source=COMMON_PRACTICE,
    matches=[example(features.COOLER_ON_SUCTION)],
    non_matches=[example(), example(lacks=[features.COOLER_ON_SUCTION])],
)
def many_joints_before_the_pump(known: Known) -> Conclusions:
    """A cooler or filter before the pump adds joints that can draw air without leaking oil."""
    if known.has(features.COOLER_ON_SUCTION):
        yield more_common(suction_causes.SUCTION_JOINT_AIR_LEAK)


@assembly_rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.HISTORY_UNKNOWN)],
    non_matches=[example(), example(findings.FRESHLY_REBUILT)],
)
def nobody_knows_its_past(known: Known) -> Conclusions:
    """In an engine of unknown history, expect wear and neglected oil."""
    if known.has(findings.HISTORY_UNKNOWN):
        yield more_common(WORN_BY_HOURS, Shift.STRONG_UP)
        yield more_common(oil_causes_condition.OIL_DEGRADED)
