"""Rules at the top end: what follows from what is known."""

from knowledge import sources
from knowledge.engines import features
from knowledge.judging import beyond_limit
from knowledge.model import Station
from knowledge.pressure import patterns_speed
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    is_absent,
    less_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.topend import causes, findings, findings_cam, quantities

rule = rules_of(Station.TOPEND)


@rule(
    source=sources.ARMY_TM_347_CAMSHAFT,
    matches=[
        example(measures={findings_cam.CAM_BEARING_CLEARANCE: 0.00025}),
        example(measures={findings_cam.CAM_BEARING_CLEARANCE: 0.00012}),
    ],
    non_matches=[example(), example(patterns_speed.GOOD_COLD_LOW_HOT)],
)
def cam_clearance_against_its_limit(known: Known) -> Conclusions:
    """The largest cam bearing clearance measured, compared with the limit."""
    yield from beyond_limit(
        known,
        findings_cam.CAM_CLEARANCE_WIDE,
        findings_cam.CAM_BEARING_CLEARANCE,
        quantities.MOST_CAM_CLEARANCE,
    )


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[features.HYDRAULIC_LIFTERS, features.PUMP_ON_DISTRIBUTOR_SHAFT])],
    non_matches=[
        example(features.HYDRAULIC_LIFTERS, lacks=[features.PUMP_ON_DISTRIBUTOR_SHAFT]),
        example(lacks=[features.HYDRAULIC_LIFTERS]),
    ],
)
def no_lifter_gallery_to_leak(known: Known) -> Conclusions:
    """Solid lifters have no pressure gallery that could leak."""
    if known.lacks(features.HYDRAULIC_LIFTERS) and known.lacks(features.PUMP_ON_DISTRIBUTOR_SHAFT):
        yield cannot_be(causes.LIFTER_BORE_LEAK)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[features.CHAIN_TENSIONERS])],
    non_matches=[example(features.CHAIN_TENSIONERS), example()],
)
def no_oil_fed_tensioner(known: Known) -> Conclusions:
    """An engine without an oil-fed tensioner has no tensioner seal to leak."""
    if known.lacks(features.CHAIN_TENSIONERS):
        yield cannot_be(causes.TENSIONER_SEAL_LEAK)
        yield is_absent(findings.TENSIONER_FLOODS)
        yield is_absent(findings_cam.TENSIONER_SEAL_ABSENT)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(lacks=[features.OVERHEAD_CAM, features.PUMP_ON_SKEW_GEAR, features.PUMP_OUTSIDE])
    ],
    non_matches=[
        example(features.PUMP_ON_SKEW_GEAR, lacks=[features.OVERHEAD_CAM, features.PUMP_OUTSIDE]),
        example(lacks=[features.OVERHEAD_CAM]),
    ],
)
def rockers_oiled_through_pushrods(known: Known) -> Conclusions:
    """If the oil comes up through pushrods, there is seldom a rocker shaft to leak.

    Misleads on the few vee engines that carry rocker shafts all the same.
    """
    if (
        known.lacks(features.OVERHEAD_CAM)
        and known.lacks(features.PUMP_ON_SKEW_GEAR)
        and known.lacks(features.PUMP_OUTSIDE)
    ):
        yield less_common(causes.ROCKER_SHAFT_LEAK)
