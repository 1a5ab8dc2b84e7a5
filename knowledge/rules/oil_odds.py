"""What makes a fault of the oil more or less common."""

from knowledge.causes.oil import (
    COOLANT_IN_OIL,
    DIPSTICK_WRONG,
    FUEL_DILUTION,
    OIL_COLD_NORMAL,
    OIL_DEGRADED,
    OIL_HOT_NORMAL,
    OIL_LEVEL_LOW,
    OIL_OVERHEATED,
    VISCOSITY_TOO_HIGH,
    VISCOSITY_TOO_LOW,
)
from knowledge.engines.features import (
    MECHANICAL_LIFT_PUMP,
    TILTS,
    WATER_COOLED,
)
from knowledge.findings.behaviour import NONE_FROM_FIRST_START
from knowledge.findings.history import (
    HOT_AND_THIN,
    IDLES_LONG,
    SERVICE_NEGLECTED,
    STOOD_IN_FROST,
    SUMP_OR_PUMP_SWAPPED,
    WORKED_HARD,
)
from knowledge.findings.oil_look import (
    OIL_MILKY,
)
from knowledge.findings.pressure import (
    FALLS_AS_REVS_RISE,
    FELL_SUDDENLY,
    GAUGE_READS_HIGH,
    GAUGE_READS_LOW,
    GAUGE_READS_ZERO,
    LOW_AT_ALL_SPEEDS,
    LOW_EVEN_COLD,
    LOW_HOT_IDLE_GOOD_SPEED,
)
from knowledge.rulebook import (
    Conclusions,
    Known,
    case_of,
    less_common,
    more_common,
    rules_of,
)
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import HB04, HB08, HB09, HPP, JIO
from knowledge.vocabulary import Shift, Station

rule = rules_of(Station.OIL)


@rule(
    source=CP,
    catches=[case_of(lacks=[WATER_COOLED])],
    spares=[case_of(WATER_COOLED), case_of(OIL_MILKY)],
)
def no_coolant_to_leak(known: Known) -> Conclusions:
    """Without coolant, water gets into the oil only from outside."""
    if known.lacks(WATER_COOLED):
        yield less_common(COOLANT_IN_OIL, Shift.STRONG_DOWN)


@rule(
    source=HB08,
    catches=[case_of(IDLES_LONG), case_of(MECHANICAL_LIFT_PUMP)],
    spares=[case_of(lacks=[IDLES_LONG]), case_of(WORKED_HARD)],
)
def long_idling_and_short_cold_trips(known: Known) -> Conclusions:
    """Long idling, cold short trips and a lift pump on the block bring fuel into the oil."""
    if known.has(IDLES_LONG):
        yield more_common(FUEL_DILUTION)
    if known.has(MECHANICAL_LIFT_PUMP):
        yield more_common(FUEL_DILUTION)


@rule(
    source=JIO,
    catches=[case_of(SERVICE_NEGLECTED)],
    spares=[case_of(lacks=[SERVICE_NEGLECTED])],
)
def neglected_oil(known: Known) -> Conclusions:
    """Where oil changes and level checks were neglected, the oil runs short and wears out."""
    if known.has(SERVICE_NEGLECTED):
        yield more_common(OIL_DEGRADED)
        yield more_common(OIL_LEVEL_LOW)


@rule(
    source=HB09,
    catches=[case_of(HOT_AND_THIN), case_of(WORKED_HARD)],
    spares=[case_of(lacks=[HOT_AND_THIN, WORKED_HARD]), case_of(STOOD_IN_FROST)],
)
def heat_and_hard_work(known: Known) -> Conclusions:
    """Heat and hard work thin the oil, most of all a thin grade."""
    if known.has(HOT_AND_THIN):
        yield more_common(VISCOSITY_TOO_LOW)
        yield more_common(OIL_HOT_NORMAL)
    if known.has(WORKED_HARD):
        yield more_common(OIL_OVERHEATED)


@rule(
    source=CP,
    catches=[case_of(STOOD_IN_FROST)],
    spares=[case_of(lacks=[STOOD_IN_FROST]), case_of(HOT_AND_THIN)],
)
def frost_stiffens_the_oil(known: Known) -> Conclusions:
    """Frost stiffens the oil: high readings and thick oil are more common."""
    if known.has(STOOD_IN_FROST):
        yield more_common(OIL_COLD_NORMAL)
        yield more_common(VISCOSITY_TOO_HIGH)


@rule(
    source=HPP,
    catches=[case_of(SUMP_OR_PUMP_SWAPPED), case_of(TILTS)],
    spares=[case_of(lacks=[SUMP_OR_PUMP_SWAPPED, TILTS])],
)
def changed_sump_or_tilted_engine(known: Known) -> Conclusions:
    """A changed sump, or an engine that does not stand level, makes a lying stick more common."""
    if known.has(SUMP_OR_PUMP_SWAPPED):
        yield more_common(DIPSTICK_WRONG)
    if known.has(TILTS):
        yield more_common(DIPSTICK_WRONG)


@rule(
    source=HB09,
    catches=[case_of(LOW_AT_ALL_SPEEDS), case_of(FALLS_AS_REVS_RISE), case_of(FELL_SUDDENLY)],
    spares=[case_of(LOW_HOT_IDLE_GOOD_SPEED), case_of(lacks=[LOW_AT_ALL_SPEEDS])],
)
def never_the_way_of_warm_oil(known: Known) -> Conclusions:
    """Low at all speeds or cold, falling with revs, or gone at once is never just warm oil."""
    for pattern in (
        LOW_AT_ALL_SPEEDS,
        LOW_EVEN_COLD,
        FALLS_AS_REVS_RISE,
        FELL_SUDDENLY,
        NONE_FROM_FIRST_START,
    ):
        if known.has(pattern):
            yield less_common(OIL_HOT_NORMAL, Shift.STRONG_DOWN)


@rule(
    source=HB04,
    catches=[case_of(GAUGE_READS_LOW), case_of(GAUGE_READS_ZERO)],
    spares=[case_of(GAUGE_READS_HIGH), case_of(lacks=[GAUGE_READS_LOW])],
)
def low_is_never_cold_oil(known: Known) -> Conclusions:
    """A low or dead gauge is not the high reading of cold oil."""
    for reading in (GAUGE_READS_LOW, GAUGE_READS_ZERO):
        if known.has(reading):
            yield less_common(OIL_COLD_NORMAL, Shift.STRONG_DOWN)
