"""Rules on what layout and history say about the pump."""

from knowledge import sources
from knowledge.circuit import conditions
from knowledge.engines import features, features_build
from knowledge.history import findings as history
from knowledge.model import SELDOM, SOMETIMES, Shift, Station
from knowledge.rule_api import (
    Conclusions,
    Known,
    cannot_be,
    example,
    is_absent,
    leads_to,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.leaks import findings as leaks
from knowledge.stations.pump import (
    causes,
    causes_drive,
    causes_fitted,
    causes_variable,
    findings,
    findings_drive,
)

rule = rules_of(Station.PUMP)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.DIESEL)],
    non_matches=[example(), example(lacks=[features.DIESEL])],
)
def diesel_has_no_rotor_to_watch(known: Known) -> Conclusions:
    """A diesel has no ignition: no rotor to watch, no timing mark to strobe."""
    if known.has(features.DIESEL):
        yield is_absent(findings.ROTOR_STILL_WHEN_CRANKED)
        yield is_absent(findings.IGNITION_SCATTERS)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(lacks=[features_build.IGNITION_DISTRIBUTOR]),
        example(features_build.COIL_ON_PLUG),
    ],
    non_matches=[example(features.PUMP_ON_DISTRIBUTOR_SHAFT), example()],
)
def no_distributor_no_rotor(known: Known) -> Conclusions:
    """Without a distributor (magneto, coil on plug) no rotor shows whether the drive turns."""
    if known.lacks(features_build.IGNITION_DISTRIBUTOR) or known.has(features_build.COIL_ON_PLUG):
        yield is_absent(findings.ROTOR_STILL_WHEN_CRANKED)
        yield is_absent(findings.IGNITION_SCATTERS)


@rule(
    source=JUDGEMENT,
    matches=[example(features.PUMP_ON_CRANK_NOSE)],
    non_matches=[
        example(features.PUMP_ON_DISTRIBUTOR_SHAFT),
        example(lacks=[features.PUMP_ON_CRANK_NOSE]),
    ],
)
def pump_round_the_crank(known: Known) -> Conclusions:
    """A pump around the crankshaft has no drive shaft to slip or bind and no idler pin."""
    if known.has(features.PUMP_ON_CRANK_NOSE):
        yield cannot_be(causes_drive.PUMP_DRIVE_SLIP)
        yield cannot_be(causes_drive.PUMP_DRIVE_BIND)
        yield cannot_be(causes_fitted.PUMP_IDLER_PIN_MIGRATED)
        yield less_common(causes_drive.PUMP_DRIVE_BROKEN, Shift.STRONG_DOWN)
        yield less_common(causes.PUMP_DEBRIS_LOCK)
        yield less_common(causes.PUMP_COVER_SCORED)
        yield less_common(causes.PUMP_MOUNT_LEAK)
        yield less_common(causes.PUMP_GASKET_WRONG)
        yield less_common(causes_fitted.PUMP_OVERSIZED)


@rule(
    source=JUDGEMENT,
    matches=[example(features.PUMP_OUTSIDE), example(features.PUMP_ON_CHAIN)],
    non_matches=[
        example(features.PUMP_ON_DISTRIBUTOR_SHAFT),
        example(lacks=[features.PUMP_OUTSIDE, features.PUMP_ON_CHAIN]),
    ],
)
def pump_by_gear_train_or_chain(known: Known) -> Conclusions:
    """A pump on the gear train or a chain has no loose shaft that could be too long or bottom."""
    if known.has(features.PUMP_OUTSIDE) or known.has(features.PUMP_ON_CHAIN):
        yield cannot_be(causes_drive.PUMP_DRIVE_BIND)
        yield less_common(causes_drive.PUMP_DRIVE_SLIP)
        yield less_common(causes_fitted.PUMP_OVERSIZED)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features.PUMP_OUTSIDE, leaks.OIL_SEEN_OUTSIDE),
        example(features.PUMP_ON_CAM_NOSE, leaks.OIL_SEEN_OUTSIDE),
    ],
    non_matches=[
        example(leaks.OIL_SEEN_OUTSIDE),
        example(leaks.OIL_SEEN_OUTSIDE, lacks=[features.PUMP_OUTSIDE, features.PUMP_ON_CAM_NOSE]),
    ],
)
def pump_that_leaks_to_the_outside(known: Known) -> Conclusions:
    """A pump with its cover outside shows its leaks; in a timing case, as most on gears, seldom."""
    shown = {features.PUMP_OUTSIDE: SELDOM, features.PUMP_ON_CAM_NOSE: SOMETIMES}
    for place in (p for p in shown if known.has(p)):
        for cause in (
            causes.PUMP_COVER_LOOSE,
            causes.PUMP_GASKET_WRONG,
            causes.PUMP_MOUNT_LEAK,
            causes_fitted.PUMP_BODY_CRACKED,
        ):
            yield leads_to(cause, conditions.OIL_ESCAPING, shown[place], COMMON_PRACTICE)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.PUMP_ON_DISTRIBUTOR_SHAFT), example(features.PUMP_ON_SKEW_GEAR)],
    non_matches=[
        example(features.PUMP_ON_CRANK_NOSE),
        example(lacks=[features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR]),
    ],
)
def gear_pump_in_the_sump(known: Known) -> Conclusions:
    """A pump in the sump is mostly of the gear type: few have a rotor that could be reversed."""
    if known.has(features.PUMP_ON_DISTRIBUTOR_SHAFT) or known.has(features.PUMP_ON_SKEW_GEAR):
        yield less_common(causes_fitted.PUMP_ROTOR_REVERSED)


@rule(
    source=JUDGEMENT,
    matches=[example(lacks=[features.DRY_SUMP])],
    non_matches=[example(features.DRY_SUMP), example()],
)
def no_tank_no_scavenge_stage(known: Known) -> Conclusions:
    """An engine that keeps its oil in the sump has no scavenge stage to fail."""
    if known.lacks(features.DRY_SUMP):
        yield cannot_be(causes_fitted.SCAVENGE_FAILURE)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings_drive.ORIGINAL_DRIVE_SHAFT), example(history.STOOD_LONG)],
    non_matches=[
        example(lacks=[findings_drive.ORIGINAL_DRIVE_SHAFT, history.STOOD_LONG]),
        example(history.FRESHLY_REBUILT),
    ],
)
def drive_shaft_decades_old(known: Known) -> Conclusions:
    """A drive shaft that is decades old or stood for long is a risk: it rounds or breaks."""
    if known.has(findings_drive.ORIGINAL_DRIVE_SHAFT) or known.has(history.STOOD_LONG):
        yield more_common(causes_drive.PUMP_DRIVE_BROKEN)
        yield more_common(causes_drive.PUMP_DRIVE_SLIP)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.EARLIER_BREAKAGE)],
    non_matches=[example(lacks=[history.EARLIER_BREAKAGE]), example(history.FRESHLY_REBUILT)],
)
def pieces_still_about(known: Known) -> Conclusions:
    """If a part broke earlier, a piece left behind may still get into the pump."""
    if known.has(history.EARLIER_BREAKAGE):
        yield more_common(causes.PUMP_DEBRIS_LOCK, Shift.STRONG_UP)
        yield more_common(causes_drive.PUMP_DRIVE_BROKEN)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.SUMP_OR_PUMP_SWAPPED)],
    non_matches=[example(lacks=[history.SUMP_OR_PUMP_SWAPPED]), example(history.HIGH_MILEAGE)],
)
def pump_was_changed(known: Known) -> Conclusions:
    """After a pump change check what came with it: part, gasket, joint, drive, prime."""
    if known.has(history.SUMP_OR_PUMP_SWAPPED):
        yield more_common(causes_fitted.PUMP_WRONG_PART, Shift.STRONG_UP)
        yield more_common(causes_fitted.PUMP_OVERSIZED, Shift.STRONG_UP)
        yield more_common(causes.PUMP_MOUNT_LEAK)
        yield more_common(causes.PUMP_GASKET_WRONG)
        yield more_common(causes_drive.PUMP_DRIVE_BIND)
        yield more_common(causes_fitted.PUMP_NOT_PRIMED)
        yield less_common(causes.PUMP_GEAR_WEAR)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(history.STOOD_IN_FROST)],
    non_matches=[example(lacks=[history.STOOD_IN_FROST]), example(history.STOOD_LONG)],
)
def frost_in_the_pump(known: Known) -> Conclusions:
    """Water frozen in the pump, or oil stiff with cold, cracks castings and breaks drives."""
    if known.has(history.STOOD_IN_FROST):
        yield more_common(causes_fitted.PUMP_BODY_CRACKED)
        yield more_common(causes_drive.PUMP_DRIVE_BROKEN)


#: places of a pump that stands above the oil, or runs empty with it
ABOVE_THE_OIL = (
    features.PUMP_ON_CRANK_NOSE,
    features.PUMP_ON_CAM_NOSE,
    features.PUMP_OUTSIDE,
)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(place) for place in ABOVE_THE_OIL],
    non_matches=[
        example(features.PUMP_ON_SKEW_GEAR),
        example(lacks=ABOVE_THE_OIL),
    ],
)
def pump_above_the_oil(known: Known) -> Conclusions:
    """A pump above the oil has to lift its oil, and loses its prime more easily."""
    if any(known.has(place) for place in ABOVE_THE_OIL):
        yield more_common(causes_fitted.PUMP_NOT_PRIMED)


@rule(
    source=sources.FILTER_MAKER_PRIME,
    matches=[example(place, history.OIL_JUST_CHANGED) for place in ABOVE_THE_OIL],
    non_matches=[
        example(features.PUMP_ON_CRANK_NOSE),
        example(features.PUMP_ON_SKEW_GEAR, history.OIL_JUST_CHANGED),
    ],
)
def pump_above_the_oil_ran_empty(known: Known) -> Conclusions:
    """A pump above the oil runs empty while the oil and filter are out."""
    above = any(known.has(place) for place in ABOVE_THE_OIL)
    if above and known.has(history.OIL_JUST_CHANGED):
        yield more_common(causes_fitted.PUMP_NOT_PRIMED)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.PUMP_ON_DISTRIBUTOR_SHAFT, history.OIL_JUST_CHANGED)],
    non_matches=[
        example(features.PUMP_ON_DISTRIBUTOR_SHAFT),
        example(features.PUMP_ON_CRANK_NOSE, history.OIL_JUST_CHANGED),
    ],
)
def pump_down_in_the_oil(known: Known) -> Conclusions:
    """A pump hung in the sump stays wet through an oil change."""
    submerged = known.has(features.PUMP_ON_DISTRIBUTOR_SHAFT) or known.has(
        features.PUMP_ON_SKEW_GEAR
    )
    if submerged and known.has(history.OIL_JUST_CHANGED):
        yield less_common(causes_fitted.PUMP_NOT_PRIMED)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(features_build.VARIABLE_PUMP),
        example(lacks=[features_build.VARIABLE_PUMP]),
        example(features.PUMP_ON_DISTRIBUTOR_SHAFT),
    ],
    non_matches=[example(), example(features.OVERHEAD_CAM)],
)
def variable_pump_or_plain(known: Known) -> Conclusions:
    """Only a variable pump has a control that can stick; pumps on a distributor or skew gear are plain."""
    if known.has(features_build.VARIABLE_PUMP):
        yield more_common(causes_variable.PUMP_CONTROL_STUCK, Shift.STRONG_UP)
    plain = (features.PUMP_ON_DISTRIBUTOR_SHAFT, features.PUMP_ON_SKEW_GEAR)
    if known.lacks(features_build.VARIABLE_PUMP) or any(known.has(p) for p in plain):
        yield cannot_be(causes_variable.PUMP_CONTROL_STUCK)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(features.PUMP_ON_CRANK_NOSE)],
    non_matches=[example(features.PUMP_ON_SKEW_GEAR), example()],
)
def rotor_shaken_by_the_crank(known: Known) -> Conclusions:
    """A rotor on the crank nose takes every twist of the crank; elsewhere it is driven softly."""
    if known.has(features.PUMP_ON_CRANK_NOSE):
        yield more_common(causes_variable.PUMP_ROTOR_SHATTERED)
