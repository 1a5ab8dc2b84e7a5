"""What engine layout and history say about the pump."""

from knowledge.causes.pump import (
    PUMP_BODY_CRACKED,
    PUMP_COVER_SCORED,
    PUMP_DEBRIS_LOCK,
    PUMP_DRIVE_BIND,
    PUMP_DRIVE_BROKEN,
    PUMP_DRIVE_SLIP,
    PUMP_GASKET_WRONG,
    PUMP_GEAR_WEAR,
    PUMP_IDLER_PIN_MIGRATED,
    PUMP_MOUNT_LEAK,
    PUMP_NOT_PRIMED,
    PUMP_OVERSIZED,
    PUMP_ROTOR_REVERSED,
    PUMP_WRONG_PART,
    SCAVENGE_FAILURE,
)
from knowledge.engines.features import (
    DRY_SUMP,
    PUMP_ON_CHAIN,
    PUMP_ON_CRANK_NOSE,
    PUMP_ON_DISTRIBUTOR_SHAFT,
    PUMP_ON_SKEW_GEAR,
    PUMP_OUTSIDE,
)
from knowledge.findings.history import (
    EARLIER_BREAKAGE,
    FRESHLY_REBUILT,
    HIGH_MILEAGE,
    SERVICE_NEGLECTED,
    STOOD_IN_FROST,
    STOOD_LONG,
    SUMP_OR_PUMP_SWAPPED,
)
from knowledge.findings.pump_drive import (
    ORIGINAL_DRIVE_SHAFT,
)
from knowledge.rulebook import (
    Conclusions,
    Known,
    cannot_be,
    case_of,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import EB09, HB19, HPA, POI, TM8
from knowledge.vocabulary import Shift, Station

rule = rules_of(Station.PUMP)

# ---------------------------------------------------------------------------- the layout


@rule(
    source=POI,
    catches=[case_of(PUMP_ON_CRANK_NOSE)],
    spares=[case_of(PUMP_ON_DISTRIBUTOR_SHAFT), case_of(lacks=[PUMP_ON_CRANK_NOSE])],
)
def pump_round_the_crank(known: Known) -> Conclusions:
    """A pump around the crankshaft has no drive shaft to slip or bind and no idler pin."""
    if known.has(PUMP_ON_CRANK_NOSE):
        yield cannot_be(PUMP_DRIVE_SLIP)
        yield cannot_be(PUMP_DRIVE_BIND)
        yield cannot_be(PUMP_IDLER_PIN_MIGRATED)
        yield less_common(PUMP_DRIVE_BROKEN, Shift.STRONG_DOWN)
        yield less_common(PUMP_DEBRIS_LOCK)
        yield less_common(PUMP_COVER_SCORED)
        yield less_common(PUMP_MOUNT_LEAK)
        yield less_common(PUMP_GASKET_WRONG)
        yield less_common(PUMP_OVERSIZED)


@rule(
    source=TM8,
    catches=[case_of(PUMP_OUTSIDE), case_of(PUMP_ON_CHAIN)],
    spares=[case_of(PUMP_ON_DISTRIBUTOR_SHAFT), case_of(lacks=[PUMP_OUTSIDE, PUMP_ON_CHAIN])],
)
def pump_by_gear_train_or_chain(known: Known) -> Conclusions:
    """A pump on the gear train or a chain has no loose shaft that could be too long or bottom."""
    if known.has(PUMP_OUTSIDE) or known.has(PUMP_ON_CHAIN):
        yield cannot_be(PUMP_DRIVE_BIND)
        yield less_common(PUMP_DRIVE_SLIP)
        yield less_common(PUMP_OVERSIZED)


@rule(
    source=HB19,
    catches=[case_of(PUMP_ON_DISTRIBUTOR_SHAFT), case_of(PUMP_ON_SKEW_GEAR)],
    spares=[
        case_of(PUMP_ON_CRANK_NOSE),
        case_of(lacks=[PUMP_ON_DISTRIBUTOR_SHAFT, PUMP_ON_SKEW_GEAR]),
    ],
)
def gear_pump_in_the_sump(known: Known) -> Conclusions:
    """A pump hung in the sump is mostly of the gear type: few have a rotor to turn over."""
    if known.has(PUMP_ON_DISTRIBUTOR_SHAFT) or known.has(PUMP_ON_SKEW_GEAR):
        yield less_common(PUMP_ROTOR_REVERSED)


@rule(
    source=HPA,
    catches=[case_of(lacks=[DRY_SUMP])],
    spares=[case_of(DRY_SUMP), case_of()],
)
def no_tank_no_scavenge_stage(known: Known) -> Conclusions:
    """An engine that keeps its oil in the sump has no scavenge stage to fail."""
    if known.lacks(DRY_SUMP):
        yield cannot_be(SCAVENGE_FAILURE)


# --------------------------------------------------------------------------- the history


@rule(
    source=CP,
    catches=[case_of(ORIGINAL_DRIVE_SHAFT), case_of(STOOD_LONG)],
    spares=[case_of(lacks=[ORIGINAL_DRIVE_SHAFT, STOOD_LONG]), case_of(FRESHLY_REBUILT)],
)
def drive_shaft_decades_old(known: Known) -> Conclusions:
    """A drive shaft decades old, or long stood, is itself a risk: it rounds or breaks."""
    if known.has(ORIGINAL_DRIVE_SHAFT) or known.has(STOOD_LONG):
        yield more_common(PUMP_DRIVE_BROKEN)
        yield more_common(PUMP_DRIVE_SLIP)


@rule(
    source=CP,
    catches=[case_of(EARLIER_BREAKAGE)],
    spares=[case_of(lacks=[EARLIER_BREAKAGE]), case_of(FRESHLY_REBUILT)],
)
def pieces_still_about(known: Known) -> Conclusions:
    """Where a part broke earlier, a piece left behind may still find its way into the pump."""
    if known.has(EARLIER_BREAKAGE):
        yield more_common(PUMP_DEBRIS_LOCK, Shift.STRONG_UP)
        yield more_common(PUMP_DRIVE_BROKEN)


@rule(
    source=CP,
    catches=[case_of(SUMP_OR_PUMP_SWAPPED)],
    spares=[case_of(lacks=[SUMP_OR_PUMP_SWAPPED]), case_of(HIGH_MILEAGE)],
)
def pump_was_changed(known: Known) -> Conclusions:
    """After a pump swap look for what the swap itself brings: part, gasket, joint, drive, prime."""
    if known.has(SUMP_OR_PUMP_SWAPPED):
        yield more_common(PUMP_WRONG_PART, Shift.STRONG_UP)
        yield more_common(PUMP_OVERSIZED, Shift.STRONG_UP)
        yield more_common(PUMP_MOUNT_LEAK)
        yield more_common(PUMP_GASKET_WRONG)
        yield more_common(PUMP_DRIVE_BIND)
        yield more_common(PUMP_NOT_PRIMED)
        yield less_common(PUMP_GEAR_WEAR)


@rule(
    source=CP,
    catches=[case_of(STOOD_IN_FROST)],
    spares=[case_of(lacks=[STOOD_IN_FROST]), case_of(STOOD_LONG)],
)
def frost_in_the_pump(known: Known) -> Conclusions:
    """Water frozen in the pump, or oil stiff with frost, cracks castings and breaks drives."""
    if known.has(STOOD_IN_FROST):
        yield more_common(PUMP_BODY_CRACKED)
        yield more_common(PUMP_DRIVE_BROKEN)


@rule(
    source=EB09,
    catches=[case_of(SERVICE_NEGLECTED)],
    spares=[case_of(lacks=[SERVICE_NEGLECTED])],
)
def pump_fed_with_neglected_oil(known: Known) -> Conclusions:
    """Everything the screen lets through passes the pump unfiltered: neglected oil wears it."""
    if known.has(SERVICE_NEGLECTED):
        yield more_common(PUMP_GEAR_WEAR)
        yield more_common(PUMP_COVER_SCORED)
