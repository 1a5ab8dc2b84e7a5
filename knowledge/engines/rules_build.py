"""What the build of pump, valve, filter and sender makes impossible, rarer or more common."""

from knowledge.engines import features, features_build
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
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.assembly import causes as assembly_causes
from knowledge.stations.assembly import causes_left_out as assembly_causes_left_out
from knowledge.stations.bearings import causes as bearings_causes
from knowledge.stations.delivery import causes as delivery_causes
from knowledge.stations.leaks import causes as leaks_causes
from knowledge.stations.pump import causes_drive as pump_causes_drive
from knowledge.stations.pump import causes_fitted as pump_causes_fitted
from knowledge.stations.relief import causes as relief_causes
from knowledge.stations.suction import causes as suction_causes
from knowledge.stations.topend import causes as topend_causes
from knowledge.stations.topend import causes_phasers as topend_causes_phasers

rule = rules_of(Station.ASSEMBLY)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features_build.ROTOR_PUMP),
        example(features_build.SPIN_ON_FILTER),
        example(features_build.SENDER_BEFORE_FILTER),
    ],
    non_matches=[example(lacks=[features_build.ROTOR_PUMP]), example()],
)
def one_kind_of_each(known: Known) -> Conclusions:
    """A pump has gears or a rotor, a filter is a can or an element: one of them, not the other."""
    for group in features_build.ONE_OF:
        for own in group:
            if known.has(own):
                yield from (is_absent(other) for other in group if other is not own)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.RELIEF_OUTSIDE)],
    non_matches=[example(lacks=[features.RELIEF_OUTSIDE]), example()],
)
def valve_reached_from_outside(known: Known) -> Conclusions:
    """A relief valve reached from outside is in the block, cover or housing."""
    if known.has(features.RELIEF_OUTSIDE):
        yield is_present(features_build.RELIEF_IN_BLOCK)
        yield more_common(relief_causes.RELIEF_SPRING_WRONG)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.ROTOR_PUMP)],
    non_matches=[example(features_build.GEAR_PUMP), example()],
)
def rotor_has_no_idler_pin(known: Known) -> Conclusions:
    """A rotor pump has no idler gear, and so no idler pin that could walk out."""
    if known.has(features_build.ROTOR_PUMP):
        yield cannot_be(pump_causes_fitted.PUMP_IDLER_PIN_MIGRATED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.GEAR_PUMP)],
    non_matches=[example(features_build.ROTOR_PUMP), example()],
)
def gears_have_no_wrong_way_round(known: Known) -> Conclusions:
    """Two plain gears fit either way round; a rotor's ring does not."""
    if known.has(features_build.GEAR_PUMP):
        yield less_common(pump_causes_fitted.PUMP_ROTOR_REVERSED, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.NO_OIL_FILTER)],
    non_matches=[example(features_build.SPIN_ON_FILTER), example()],
)
def no_filter_no_filter_faults(known: Known) -> Conclusions:
    """Without a full-flow filter none can block, burst, leak or drain back; dirt gets further."""
    if known.has(features_build.NO_OIL_FILTER):
        for cause in (
            delivery_causes.FILTER_BLOCKED,
            delivery_causes.FILTER_BYPASS_STUCK,
            delivery_causes.FILTER_WRONG,
            delivery_causes.FILTER_DRAINBACK,
            leaks_causes.FILTER_SEAL_LEAK,
        ):
            yield cannot_be(cause)
        yield more_common(relief_causes.RELIEF_DEBRIS)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.CARTRIDGE_FILTER)],
    non_matches=[example(features_build.SPIN_ON_FILTER), example()],
)
def element_in_a_housing(known: Known) -> Conclusions:
    """An element is easier to fit wrongly than a can, and has no anti-drain-back valve."""
    if known.has(features_build.CARTRIDGE_FILTER):
        yield more_common(delivery_causes.FILTER_WRONG)
        yield less_common(delivery_causes.FILTER_DRAINBACK)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.FILTER_ADAPTER)],
    non_matches=[example(lacks=[features_build.FILTER_ADAPTER]), example()],
)
def one_joint_more_at_the_filter(known: Known) -> Conclusions:
    """An adapter under the filter adds a seal, and a thread that may not suit the filter."""
    if known.has(features_build.FILTER_ADAPTER):
        yield more_common(leaks_causes.FILTER_SEAL_LEAK)
        yield more_common(delivery_causes.FILTER_WRONG)


@rule(
    source=JUDGEMENT,
    matches=[example(features_build.SENDER_BEFORE_FILTER)],
    non_matches=[example(features_build.SENDER_BEHIND_FILTER), example()],
)
def gauge_that_sees_the_pump_side(known: Known) -> Conclusions:
    """A gauge ahead of the filter shows no loss in filter or cooler, however blocked they are."""
    if known.has(features_build.SENDER_BEFORE_FILTER):
        yield less_common(delivery_causes.FILTER_BLOCKED, Shift.STRONG_DOWN)
        yield less_common(delivery_causes.OIL_COOLER_BLOCKED, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.WET_BELT)],
    non_matches=[example(lacks=[features_build.WET_BELT]), example()],
)
def belt_that_crumbles_in_oil(known: Known) -> Conclusions:
    """A belt that runs in oil sheds fibres and rubber, which end up on the pickup screen."""
    if known.has(features_build.WET_BELT):
        yield more_common(assembly_causes.TIMING_GEAR_SHEDDING, Shift.STRONG_UP)
        yield more_common(suction_causes.PICKUP_SCREEN_BLOCKED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.SEVERAL_SCAVENGE_PUMPS)],
    non_matches=[example(features.DRY_SUMP), example()],
)
def more_pumps_to_fail(known: Known) -> Conclusions:
    """Each scavenge pump can seize, break its drive or draw air."""
    if known.has(features_build.SEVERAL_SCAVENGE_PUMPS):
        yield more_common(pump_causes_fitted.SCAVENGE_FAILURE)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.CAM_RUNS_IN_BLOCK)],
    non_matches=[example(lacks=[features_build.CAM_RUNS_IN_BLOCK]), example()],
)
def no_cam_shells_to_turn(known: Known) -> Conclusions:
    """A camshaft without shells wears its bores slowly; there is no shell to wear out or turn."""
    if known.has(features_build.CAM_RUNS_IN_BLOCK):
        yield less_common(topend_causes.CAM_BEARING_WEAR)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.WIRE_LIFTER_CLIPS)],
    non_matches=[example(lacks=[features_build.WIRE_LIFTER_CLIPS]), example()],
)
def clip_that_lets_a_lifter_out(known: Known) -> Conclusions:
    """A broken clip lets a lifter turn or leave its bore and open the gallery."""
    if known.has(features_build.WIRE_LIFTER_CLIPS):
        yield more_common(topend_causes.LIFTER_BORE_LEAK)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.ROLLER_CRANKSHAFT)],
    non_matches=[example(lacks=[features_build.ROLLER_CRANKSHAFT]), example()],
)
def rollers_need_no_pressure(known: Known) -> Conclusions:
    """A crankshaft on rollers has no main shells to wear, wipe, spin or be the wrong size."""
    if known.has(features_build.ROLLER_CRANKSHAFT):
        for cause in (
            bearings_causes.BEARING_WEAR_MAINS,
            bearings_causes.BEARING_SPUN,
            bearings_causes.BEARING_WRONG_SIZE,
        ):
            yield less_common(cause, Shift.STRONG_DOWN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features_build.SEVERAL_RELIEFS)],
    non_matches=[example(lacks=[features_build.SEVERAL_RELIEFS]), example()],
)
def several_valves_to_mix_up(known: Known) -> Conclusions:
    """With several relief valves it is easier to mix up springs and plungers."""
    if known.has(features_build.SEVERAL_RELIEFS):
        yield more_common(relief_causes.RELIEF_SPRING_WRONG)
        yield more_common(relief_causes.RELIEF_PART_MISSING)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(lacks=[features_build.CAM_PHASERS]),
        example(features.PUSHROD_ENGINE),
        example(features_build.CAM_PHASERS),
    ],
    non_matches=[example(), example(features.OVERHEAD_CAM)],
)
def phasers_or_none(known: Known) -> Conclusions:
    """Without oil-fed phasers none can leak; few pushrod engines have them."""
    if known.lacks(features_build.CAM_PHASERS):
        yield cannot_be(topend_causes_phasers.CAM_PHASER_LEAK)
    if known.has(features.PUSHROD_ENGINE):
        yield less_common(topend_causes_phasers.CAM_PHASER_LEAK, Shift.STRONG_DOWN)
    if known.has(features_build.CAM_PHASERS):
        yield more_common(topend_causes_phasers.CAM_PHASER_LEAK)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features.PUMP_ON_CRANK_NOSE),
        example(features.PUMP_OUTSIDE),
        example(features.PUMP_ON_CHAIN),
    ],
    non_matches=[example(features.PUMP_ON_DISTRIBUTOR_SHAFT), example()],
)
def no_loose_shaft_to_leave_out(known: Known) -> Conclusions:
    """A pump on the crank, a chain or the gear train has no loose shaft to leave out."""
    if any(
        known.has(place)
        for place in (features.PUMP_ON_CRANK_NOSE, features.PUMP_OUTSIDE, features.PUMP_ON_CHAIN)
    ):
        yield cannot_be(assembly_causes_left_out.PUMP_DRIVE_LEFT_OUT)


@rule(
    source=JUDGEMENT,
    matches=[example(features.PUMP_ON_AUXILIARY_DRIVE)],
    non_matches=[example(features.PUMP_ON_CRANK_NOSE), example()],
)
def pump_at_the_end_of_a_long_drive(known: Known) -> Conclusions:
    """Between engine and pump stand more gears and a coupling that can shear or slip."""
    if known.has(features.PUMP_ON_AUXILIARY_DRIVE):
        yield more_common(pump_causes_drive.PUMP_DRIVE_BROKEN)
        yield more_common(pump_causes_drive.PUMP_DRIVE_SLIP)
