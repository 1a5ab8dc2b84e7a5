"""Alarms on what people report of the pressure, beside what a trusted gauge shows."""

from knowledge import sources
from knowledge.model import Gauge, Severity, Station
from knowledge.pressure import direct_gauge, patterns
from knowledge.reports.shapes import Behaviour
from knowledge.reports.words import Shows
from knowledge.rule_api import Alarm, Conclusions, Known, example, rules_of
from knowledge.sources import idea_from

rule = rules_of(Station.INSTRUMENT)

LAMP_FLICKERS = Behaviour(Shows.UNSTEADY, gauge=Gauge.LAMP)
NEEDLE_WAVERS = Behaviour(Shows.UNSTEADY)


def needle_wavers(known: Known) -> bool:
    """Whether a needle wavers, and not only a lamp flickers."""
    unsteady = [b for b in known.behaviours() if b.shows is Shows.UNSTEADY]
    only_lamp = bool(unsteady) and all(b.gauge is Gauge.LAMP for b in unsteady)
    return known.has(patterns.NEEDLE_FLICKERS) and not only_lamp


@rule(
    source=idea_from(sources.TRUCK_DRIVER_MANUAL),
    matches=[
        example(direct_gauge.DIRECT_GAUGE_LOW, patterns.NEEDLE_FLICKERS),
        example(
            direct_gauge.DIRECT_GAUGE_LOW, patterns.NEEDLE_FLICKERS, behaviours=[NEEDLE_WAVERS]
        ),
    ],
    non_matches=[
        example(patterns.NEEDLE_FLICKERS),
        example(direct_gauge.DIRECT_GAUGE_LOW, lacks=[patterns.NEEDLE_FLICKERS]),
        example(
            direct_gauge.DIRECT_GAUGE_LOW, patterns.NEEDLE_FLICKERS, behaviours=[LAMP_FLICKERS]
        ),
    ],
)
def truly_low_and_wavering(known: Known) -> Conclusions:
    """Low on a trusted gauge and wavering too: air gets through, and bearings run short of oil.

    The driver manual says stop when the pressure falls or swings; 2 or 3 psi is common practice.
    A lamp that flickers is no wavering needle.
    """
    if known.has(direct_gauge.DIRECT_GAUGE_LOW) and needle_wavers(known):
        yield Alarm(
            Severity.STOP,
            "pressure low and wavering on a trusted gauge, limit: steady within 2 or 3 psi: stop, "
            "read the stick, do not run until you find the cause",
            low=False,
        )
