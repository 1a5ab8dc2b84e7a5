"""When the oil says stop, or do not run."""

from knowledge.findings.oil import (
    DIPSTICK_DRY,
    DIPSTICK_LOW,
    LEVEL_CORRECT,
    LEVEL_HIGH,
    LEVEL_RISEN,
)
from knowledge.findings.oil_heat import (
    BURNING_OIL_SMOKE,
    OIL_TEMPERATURE_HIGH,
)
from knowledge.findings.oil_look import (
    FUEL_SMELL,
    OIL_MILKY,
)
from knowledge.findings.pressure import GAUGE_READS_LOW, GAUGE_READS_ZERO
from knowledge.rulebook import (
    Alarm,
    Conclusions,
    Known,
    case_of,
    rules_of,
)
from knowledge.sources import DGA, HB01, HB02, LCF, LCW, TMK
from knowledge.vocabulary import Severity, Station

rule = rules_of(Station.OIL)


@rule(
    source=HB01,
    catches=[case_of(DIPSTICK_DRY)],
    spares=[case_of(DIPSTICK_LOW), case_of(lacks=[DIPSTICK_DRY])],
)
def no_oil_on_the_stick(known: Known) -> Conclusions:
    """No oil on the dipstick: the engine must not be turned."""
    if known.has(DIPSTICK_DRY):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "no oil on the dipstick, the least is the add mark: do not start or crank; find where "
            "the oil went, fill to the mark, prime, and watch for pressure within 10 s",
        )


@rule(
    source=HB01,
    catches=[case_of(DIPSTICK_LOW)],
    spares=[case_of(LEVEL_CORRECT), case_of(lacks=[DIPSTICK_LOW])],
)
def below_the_add_mark(known: Known) -> Conclusions:
    """Below the add mark: record it, then fill before any further run."""
    if known.has(DIPSTICK_LOW):
        yield Alarm(
            Severity.CARE,
            "oil below the add mark: photograph the stick, take a sample, then fill to the mark "
            "before any further run",
        )


@rule(
    source=HB02,
    catches=[case_of(OIL_TEMPERATURE_HIGH)],
    spares=[case_of(lacks=[OIL_TEMPERATURE_HIGH])],
)
def oil_past_its_heat(known: Known) -> Conclusions:
    """Oil at 121 °C (250 °F) or more: unload, then stop."""
    if known.has(OIL_TEMPERATURE_HIGH):
        yield Alarm(
            Severity.STOP,
            "oil temperature high, limit 121 °C (250 °F): take the load off, then stop and let it "
            "cool",
        )


@rule(
    source=LCW,
    catches=[case_of(OIL_MILKY, GAUGE_READS_LOW), case_of(OIL_MILKY)],
    spares=[case_of(GAUGE_READS_LOW), case_of(GAUGE_READS_LOW, lacks=[OIL_MILKY])],
)
def milk_is_no_oil(known: Known) -> Conclusions:
    """Milky oil carries no bearing: do not run, least of all with falling pressure."""
    if known.has(OIL_MILKY):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "milky oil, the limit is 0.1 % water: do not run; find the way in, drain, flush and "
            "change oil twice",
        )


@rule(
    source=DGA,
    catches=[case_of(FUEL_SMELL, LEVEL_RISEN), case_of(FUEL_SMELL, LEVEL_HIGH)],
    spares=[case_of(FUEL_SMELL), case_of(LEVEL_RISEN, lacks=[FUEL_SMELL])],
)
def fuel_fills_the_sump(known: Known) -> Conclusions:
    """A smell of fuel with a risen level: fire risk, do not run or crank."""
    if known.has(FUEL_SMELL) and known.has(LEVEL_RISEN):
        yield _fire("the level risen")
    if known.has(FUEL_SMELL) and known.has(LEVEL_HIGH):
        yield _fire("the level above full")


@rule(
    source=LCF,
    catches=[case_of(FUEL_SMELL)],
    spares=[case_of(lacks=[FUEL_SMELL]), case_of(LEVEL_HIGH)],
)
def smell_of_fuel(known: Known) -> Conclusions:
    """A smell of fuel at the stick: no flame, no cranking on a strong smell."""
    if known.has(FUEL_SMELL):
        yield Alarm(
            Severity.CARE,
            "oil smells of fuel: no flame or sparks, extinguisher at hand, no cranking if the "
            "smell is strong",
        )


@rule(
    source=TMK,
    catches=[case_of(BURNING_OIL_SMOKE)],
    spares=[case_of(lacks=[BURNING_OIL_SMOKE]), case_of(GAUGE_READS_ZERO)],
)
def oil_burning_on_the_engine(known: Known) -> Conclusions:
    """Oil burning about the engine: stop and look for the fire before the leak."""
    if known.has(BURNING_OIL_SMOKE):
        yield Alarm(
            Severity.STOP,
            "smoke or smell of burning oil: stop, extinguisher at hand, find where oil meets hot "
            "metal before any further run",
        )


def _fire(level: str) -> Alarm:
    """The alarm for fuel in the sump."""
    return Alarm(
        Severity.DO_NOT_RUN,
        f"oil smells of fuel and {level}, no fuel is allowed: do not run or crank, it can burn or "
        "explode; drain, find the leak, change oil and filter",
    )
