"""When a leak means stop."""

from knowledge.findings.instrument import SENDER_LEAKS_OIL
from knowledge.findings.leaks import (
    CUP_PLUG_FOUND_OUT,
    DRAIN_PLUG_FOUND_LOOSE,
    DROPS_FALL_WHILE_WATCHED,
    FILTER_FOUND_LOOSE,
    OIL_CAUGHT_FIRE,
    OIL_LINE_FOUND_BROKEN,
    OIL_LOSS_FAST,
    OIL_ON_THE_GROUND,
    OIL_SPRAYED,
    SUMP_FOUND_HOLED,
)
from knowledge.findings.oil_heat import BURNING_OIL_SMOKE
from knowledge.rulebook import Alarm, Conclusions, Known, case_of, rules_of
from knowledge.sources import COMMON_PRACTICE as CP
from knowledge.sources import TMK
from knowledge.vocabulary import Severity, Station

rule = rules_of(Station.LEAKS)


@rule(
    source=TMK,
    catches=[case_of(OIL_SPRAYED), case_of(FILTER_FOUND_LOOSE), case_of(OIL_LINE_FOUND_BROKEN)],
    spares=[case_of(OIL_ON_THE_GROUND), case_of(lacks=[OIL_SPRAYED])],
)
def jet_of_oil_means_stop(known: Known) -> Conclusions:
    """Oil that sprays, a loose filter or a broken line: stop and watch for fire."""
    for place in (
        OIL_SPRAYED,
        FILTER_FOUND_LOOSE,
        OIL_LINE_FOUND_BROKEN,
        CUP_PLUG_FOUND_OUT,
    ):
        if known.has(place):
            yield Alarm(
                Severity.STOP,
                f"{place.says}; none is allowed: stop the engine now, extinguisher at hand, "
                "repair before it turns again",
            )


@rule(
    source=TMK,
    catches=[case_of(DROPS_FALL_WHILE_WATCHED, BURNING_OIL_SMOKE)],
    spares=[case_of(BURNING_OIL_SMOKE), case_of(DROPS_FALL_WHILE_WATCHED)],
)
def leaking_oil_on_hot_parts(known: Known) -> Conclusions:
    """Leaking oil that reaches hot parts may burn: stop and watch for fire."""
    if known.has(BURNING_OIL_SMOKE) and known.has(DROPS_FALL_WHILE_WATCHED):
        yield Alarm(
            Severity.STOP,
            "oil drips and smokes on hot parts; none may reach the exhaust: stop, watch for fire "
            "until it is cold",
        )


@rule(source=CP, catches=[case_of(OIL_CAUGHT_FIRE)], spares=[case_of(lacks=[OIL_CAUGHT_FIRE])])
def oil_has_burned(known: Known) -> Conclusions:
    """After an oil fire nothing is run before lines, wires and hoses have been seen."""
    if known.has(OIL_CAUGHT_FIRE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "oil caught fire: do not start before the leak is repaired and fuel lines, wires and "
            "hoses have been looked at",
        )


@rule(
    source=TMK,
    catches=[
        case_of(OIL_LOSS_FAST),
        case_of(DRAIN_PLUG_FOUND_LOOSE),
        case_of(SUMP_FOUND_HOLED),
        case_of(DROPS_FALL_WHILE_WATCHED),
    ],
    spares=[case_of(OIL_ON_THE_GROUND), case_of(SENDER_LEAKS_OIL)],
)
def empties_itself(known: Known) -> Conclusions:
    """An engine that empties itself must not be run: pressure stays right until the oil is gone."""
    for sign in (
        OIL_LOSS_FAST,
        DRAIN_PLUG_FOUND_LOOSE,
        SUMP_FOUND_HOLED,
        DROPS_FALL_WHILE_WATCHED,
    ):
        if known.has(sign):
            yield Alarm(
                Severity.DO_NOT_RUN,
                f"{sign.says}; drops that fall are past the limit: do not run until it is repaired "
                "and filled to the mark",
            )
