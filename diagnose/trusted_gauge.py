"""What a trusted gauge settles, and where a stop calls for one.

Imported by ``check_planner`` and ``entry``.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from diagnose.case_inference import CaseInference
from diagnose.planning.options import Choice, Option
from knowledge.model import Gauge, State
from knowledge.pressure.patterns import SECOND_INSTRUMENT_DISAGREES
from knowledge.stations.instrument.findings_direct_gauge import FIT_A_DIRECT_GAUGE
from knowledge.work import Inspection


def needless(known: CaseInference) -> frozenset[Inspection]:
    """Checks that show only why a gauge is wrong, once the loss of pressure is real.

    Or once a second instrument read the same.
    """
    if not (known.loss_is_real or _panel_is_right(known)):
        return frozenset()
    found = []
    for check in known.book.inspections.values():
        shown = {f.id for f in check.reveals if f.id in known.network.leak}
        causes = known.network.ancestors(shown) & known.network.prior.keys()
        if causes and causes <= known.harmless:
            found.append(check)
    return frozenset(found)


def _panel_is_right(known: CaseInference) -> bool:
    """Whether a second instrument agreed with the panel, and nothing says otherwise."""
    seen = known.facts.observations.get(SECOND_INSTRUMENT_DISAGREES)
    states = {d.state for d in known.result.derived if d.finding is SECOND_INSTRUMENT_DISAGREES}
    return ({seen.state} if seen else states) == {State.ABSENT}


def with_gauge(choice: Choice, options: Iterable[Option], known: CaseInference) -> Choice:
    """The choice with the trusted gauge among its first few, if it is one of the options.

    Not where one was read already.
    """
    named = {choice.inspection, *(o.inspection for o in choice.runners_up)}
    read = any(r.gauge is Gauge.DIRECT for r in known.facts.readings)
    if read or FIT_A_DIRECT_GAUGE in named:
        return choice
    gauge = tuple(o for o in options if o.inspection is FIT_A_DIRECT_GAUGE)
    return replace(choice, runners_up=(*gauge, *choice.runners_up))
