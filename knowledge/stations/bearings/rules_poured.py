"""Rules on bearings poured in place: only where an engine has them can they break up."""

from knowledge.engines import features_build
from knowledge.model import STRONG_DOWN, STRONG_UP, Station
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.bearings import causes, causes_geometry, causes_poured

rule = rules_of(Station.BEARINGS)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features_build.POURED_BEARINGS),
        example(lacks=[features_build.POURED_BEARINGS]),
    ],
    non_matches=[example(), example(features_build.ROLLER_CRANKSHAFT)],
)
def poured_or_with_shells(known: Known) -> Conclusions:
    """Poured bearings break up and do not spin; shells can spin, and nothing was poured."""
    if known.lacks(features_build.POURED_BEARINGS):
        yield cannot_be(causes_poured.POURED_BEARING_BROKEN_UP)
    if known.has(features_build.POURED_BEARINGS):
        yield more_common(causes_poured.POURED_BEARING_BROKEN_UP, STRONG_UP)
        yield less_common(causes.BEARING_SPUN, STRONG_DOWN)
        yield less_common(causes.BEARING_WRONG_SIZE, STRONG_DOWN)


@rule(
    source=JUDGEMENT,
    matches=[example(features_build.POURED_BEARINGS)],
    non_matches=[example(lacks=[features_build.POURED_BEARINGS]), example()],
)
def poured_metal_is_old(known: Known) -> Conclusions:
    """Engines with poured bearings are old, slow and of low compression: age does more than knock."""
    if known.has(features_build.POURED_BEARINGS):
        yield more_common(causes_poured.POURED_BEARING_BROKEN_UP, STRONG_UP)
        yield less_common(causes_geometry.OVERLOAD_LUGGING)
