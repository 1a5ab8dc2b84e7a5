"""Alarms at the outside leaks: when to stop, or not to run."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.model import Severity, Station
from knowledge.rule_api import Conclusions, Known, example, rules_of
from knowledge.sources import COMMON_PRACTICE, idea_from
from knowledge.stations.instrument import findings_sender as instrument_sender
from knowledge.stations.leaks import findings, findings_places
from knowledge.stations.oil import findings_heat as oil_heat

rule = rules_of(Station.LEAKS)


@rule(
    source=idea_from(sources.ARMY_TM_304_LEAKAGE),
    matches=[
        example(findings.OIL_SPRAYED),
        example(findings_places.FILTER_FOUND_LOOSE),
        example(findings_places.OIL_LINE_FOUND_BROKEN),
    ],
    non_matches=[example(findings.OIL_ON_THE_GROUND), example(lacks=[findings.OIL_SPRAYED])],
)
def jet_of_oil_means_stop(known: Known) -> Conclusions:
    """Oil that sprays, a loose filter or a broken line: stop and watch for fire."""
    for place in (
        findings.OIL_SPRAYED,
        findings_places.FILTER_FOUND_LOOSE,
        findings_places.OIL_LINE_FOUND_BROKEN,
        findings.CUP_PLUG_FOUND_OUT,
    ):
        if known.has(place):
            yield Alarm(
                Severity.STOP,
                f"{place.says}; none is allowed: stop the engine now, extinguisher at hand, "
                "repair before it turns again",
            )


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(findings.DROPS_FALL_WHILE_WATCHED, oil_heat.BURNING_OIL_SMOKE),
        example(findings.OIL_SEEN_OUTSIDE, oil_heat.BURNING_OIL_SMOKE),
    ],
    non_matches=[example(oil_heat.BURNING_OIL_SMOKE), example(findings.DROPS_FALL_WHILE_WATCHED)],
)
def leaking_oil_on_hot_parts(known: Known) -> Conclusions:
    """Leaking oil that reaches hot parts may burn: stop and watch for fire."""
    outside = (findings.DROPS_FALL_WHILE_WATCHED, findings.OIL_SEEN_OUTSIDE)
    if known.has(oil_heat.BURNING_OIL_SMOKE) and any(known.has(f) for f in outside):
        yield Alarm(
            Severity.STOP,
            "oil outside, and it smells or smokes on hot parts; none may reach the exhaust: stop, "
            "extinguisher at hand, watch for fire until it is cold",
        )


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.OIL_CAUGHT_FIRE)],
    non_matches=[example(lacks=[findings.OIL_CAUGHT_FIRE])],
)
def oil_has_burned(known: Known) -> Conclusions:
    """After an oil fire run nothing until you have inspected lines, wires and hoses."""
    if known.has(findings.OIL_CAUGHT_FIRE):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "oil caught fire: do not start until you have repaired the leak and inspected fuel "
            "lines, wires and hoses",
        )


@rule(
    source=sources.ARMY_TM_304_LEAKAGE,
    matches=[
        example(findings.OIL_LOSS_FAST),
        example(findings_places.DRAIN_PLUG_FOUND_LOOSE),
        example(findings.SUMP_FOUND_HOLED),
        example(findings.DROPS_FALL_WHILE_WATCHED),
    ],
    non_matches=[example(findings.OIL_ON_THE_GROUND), example(instrument_sender.SENDER_LEAKS_OIL)],
)
def empties_itself(known: Known) -> Conclusions:
    """Do not run an engine that empties itself: pressure reads right until the oil is gone."""
    for sign in (
        findings.OIL_LOSS_FAST,
        findings_places.DRAIN_PLUG_FOUND_LOOSE,
        findings.SUMP_FOUND_HOLED,
        findings.DROPS_FALL_WHILE_WATCHED,
    ):
        if known.has(sign):
            yield Alarm(
                Severity.DO_NOT_RUN,
                f"{sign.says}; drops that fall are past the limit: do not run until you have repaired it "
                "and filled to the mark",
            )
