"""Rules on what the pressure usually was: an engine that held more before was not built low."""

from dataclasses import replace

from knowledge.history.areas import OIL_PUMP
from knowledge.model import Gauge, Reading, Station
from knowledge.pressure import behaviour
from knowledge.pressure.gauge import SAY_SO, at_pump, runs, sure_fallen
from knowledge.reports.shapes import EarlierWork
from knowledge.reports.words import Done
from knowledge.rule_api import Conclusions, Known, example, is_absent, rules_of
from knowledge.sources import COMMON_PRACTICE
from knowledge.units import PSI

rule = rules_of(Station.INSTRUMENT)
NOW = Reading(3000, 363.15, 20 * PSI)  #: an example
NOW_DIRECT = replace(NOW, gauge=Gauge.DIRECT)


@rule(
    source=COMMON_PRACTICE,
    matches=[
        example(readings=[replace(NOW, usual=50 * PSI)]),
        example(readings=[replace(NOW_DIRECT, usual=50 * PSI)]),
    ],
    non_matches=[
        example(readings=[NOW]),
        example(readings=[replace(NOW, usual=22 * PSI)]),
        example(readings=[replace(NOW, usual=50 * PSI, tap="pump")]),
        example(
            readings=[replace(NOW, usual=50 * PSI)], earlier=[EarlierWork(OIL_PUMP, Done.RENEWED)]
        ),
    ],
)
def held_more_before(known: Known) -> Conclusions:
    """What held more before has fallen: it was not low since it was built.

    Where parts were renewed or it was rebuilt, the usual figure may be that of before.
    """
    if any(work.done in (Done.RENEWED, Done.REBUILT) for work in known.earlier_work()):
        return
    fallen = [sure_fallen(r) for r in known.readings() if runs(r) and not at_pump(r)]
    if fallen and max(fallen) >= SAY_SO:
        yield is_absent(behaviour.LOW_FROM_FIRST_START, max(fallen))
