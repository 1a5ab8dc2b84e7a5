"""Rules at the relief valve: what follows from what is known."""

from knowledge import sources
from knowledge.alarm import Alarm
from knowledge.judging import judged, sure_beyond
from knowledge.model import Severity, Station
from knowledge.rule_api import Conclusions, Known, example, is_absent, rules_of
from knowledge.sources import COMMON_PRACTICE, JUDGEMENT
from knowledge.stations.relief import findings, quantities
from knowledge.units import PSI

rule = rules_of(Station.RELIEF)

OFF = 0.25  #: share of its setting by which a valve is off on the bench (judgement)


@rule(
    source=sources.RELIEF_FREE_FALL,
    matches=[example(lacks=[findings.RELIEF_PLUNGER_STICKS])],
    non_matches=[example(findings.RELIEF_PLUNGER_STICKS)],
)
def plunger_that_drops_is_not_seized(known: Known) -> Conclusions:
    """A plunger that drops by its own weight was not seized, open or shut.

    Misleads when the plunger was freed on the way out.
    """
    if known.lacks(findings.RELIEF_PLUNGER_STICKS):
        yield is_absent(findings.RELIEF_VALVE_STAYED_SHUT, sure=0.9)


@rule(
    source=JUDGEMENT,
    matches=[
        example(measures={findings.RELIEF_SETTING: 25 * PSI}),
        example(measures={findings.RELIEF_SETTING: 80 * PSI}),
        example(measures={findings.RELIEF_SETTING: 55 * PSI}),
    ],
    non_matches=[example(findings.RELIEF_BENCH_OPENS_LOW)],
)
def opening_pressure_on_the_bench(known: Known) -> Conclusions:
    """A valve that opens a quarter below its setting opens early; a quarter above it, late.

    Where the engine's own setting is not known, the usual one stands for it, so that less is no
    sign.
    """
    value = known.smallest(findings.RELIEF_SETTING)
    if value is not None:
        setting, spread = (
            known.limit(quantities.USUAL_RELIEF_SETTING),
            findings.RELIEF_SETTING.spread,
        )
        early = sure_beyond((1.0 - OFF) * setting, value, spread)
        late = sure_beyond(value, (1.0 + OFF) * setting, spread)
        yield judged(findings.RELIEF_BENCH_OPENS_LOW, early)
        yield judged(findings.RELIEF_BENCH_OPENS_HIGH, late)


@rule(
    source=COMMON_PRACTICE,
    matches=[example(findings.DEBRIS_ON_RELIEF_SEAT)],
    non_matches=[example(lacks=[findings.DEBRIS_ON_RELIEF_SEAT])],
)
def debris_under_the_valve(known: Known) -> Conclusions:
    """Debris under the relief valve: more is in the oil, to jam the valve or wipe a bearing."""
    if known.has(findings.DEBRIS_ON_RELIEF_SEAT):
        yield Alarm(
            Severity.DO_NOT_RUN,
            "Debris under the relief valve, the seat must be clean: do not run until you know where "
            "it came from; cut the filter open, look in the sump.",
        )
