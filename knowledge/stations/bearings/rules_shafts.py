"""Rules on shafts beside the crank: which engine has one, and what a measured clearance says."""

from knowledge import sources
from knowledge.engines import features_build
from knowledge.judging import beyond_limit
from knowledge.model import STRONG_UP, Station
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    is_present,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE
from knowledge.stations.bearings import causes_shafts, findings_shafts
from knowledge.stations.bearings import quantities_shafts as quantities

rule = rules_of(Station.BEARINGS)
#: each cause needs such a shaft, and each finding shows that there is one
SHAFT_OF = (
    (
        features_build.BALANCE_SHAFTS,
        causes_shafts.BALANCE_SHAFT_WEAR,
        findings_shafts.BALANCE_SHAFT_BEARINGS_WORN,
    ),
    (
        features_build.AUXILIARY_SHAFT,
        causes_shafts.AUXILIARY_SHAFT_WEAR,
        findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN,
    ),
    (
        features_build.IDLER_GEARS,
        causes_shafts.IDLER_BUSH_WEAR,
        findings_shafts.IDLER_GEAR_BUSH_WORN,
    ),
)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features_build.BALANCE_SHAFTS),
        example(lacks=[features_build.AUXILIARY_SHAFT]),
        example(features_build.IDLER_GEARS),
    ],
    non_matches=[example(), example(features_build.WET_BELT)],
)
def shaft_or_none(known: Known) -> Conclusions:
    """A shaft or idler gear that is not there cannot wear; one that is there can."""
    for feature, cause, _ in SHAFT_OF:
        if known.lacks(feature):
            yield cannot_be(cause)
        if known.has(feature):
            yield more_common(cause, STRONG_UP)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings_shafts.BALANCE_SHAFT_BEARINGS_WORN),
        example(findings_shafts.IDLER_GEAR_BUSH_WORN),
    ],
    non_matches=[
        example(lacks=[findings_shafts.BALANCE_SHAFT_BEARINGS_WORN]),
        example(lacks=[findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN]),
    ],
)
def seen_worn_so_it_is_there(known: Known) -> Conclusions:
    """A shaft or idler gear that somebody found worn is one that the engine has."""
    for feature, _, finding in SHAFT_OF:
        if known.has(finding):
            yield is_present(feature)


@rule(
    source=sources.BALANCE_SHAFT_FOUR_2009,
    matches=[
        example(measures={findings_shafts.BALANCE_SHAFT_MEASURED: 0.30e-3}),
        example(measures={findings_shafts.AUXILIARY_SHAFT_MEASURED: 0.15e-3}),
        example(measures={findings_shafts.IDLER_BUSH_MEASURED: 0.05e-3}),
    ],
    non_matches=[example(), example(features_build.BALANCE_SHAFTS)],
)
def shaft_clearance_against_its_limit(known: Known) -> Conclusions:
    """The widest clearance of balance shaft, auxiliary shaft or idler, compared with its limit."""
    for finding, measure, limit in (
        (
            findings_shafts.BALANCE_SHAFT_BEARINGS_WORN,
            findings_shafts.BALANCE_SHAFT_MEASURED,
            quantities.MOST_BALANCE_SHAFT_CLEARANCE,
        ),
        (
            findings_shafts.AUXILIARY_SHAFT_BEARINGS_WORN,
            findings_shafts.AUXILIARY_SHAFT_MEASURED,
            quantities.MOST_AUXILIARY_SHAFT_CLEARANCE,
        ),
        (
            findings_shafts.IDLER_GEAR_BUSH_WORN,
            findings_shafts.IDLER_BUSH_MEASURED,
            quantities.MOST_IDLER_BUSH_CLEARANCE,
        ),
    ):
        yield from beyond_limit(known, finding, measure, limit)
