"""What a trusted gauge settles, and where a stop calls for one."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from diagnose.planning.options import Choice, Option
from diagnose.reasoning.case_inference import (
    LOW_ON_TRUSTED_GAUGE,
    CaseInference,
    trusted_gauge_is_low,
)
from knowledge.model import Gauge, State
from knowledge.pressure.patterns import SECOND_INSTRUMENT_DISAGREES
from knowledge.stations.instrument.findings_direct_gauge import FIT_A_DIRECT_GAUGE
from knowledge.work import Inspection

ALMOST_ALL = 0.75  #: share of what a check can show from which it is only about that (judgement)


def needless(known: CaseInference) -> frozenset[Inspection]:
    """Checks that show only why a gauge is wrong, once the loss of pressure is real.

    Or once a second instrument read the same, or a trusted one low: then only what could be wrong
    with that one is still looked for.
    """
    harmless = known.harmless
    if not (known.loss_is_real or _panel_is_right(known)):
        if not trusted_gauge_is_low(known):
            return frozenset()
        misleads = {f.id for f in LOW_ON_TRUSTED_GAUGE if f.id in known.network.leak}
        harmless -= known.network.ancestors(misleads)
    return frozenset(
        check for check in known.book.inspections.values() if _only_shows(check, harmless, known)
    )


def _only_shows(check: Inspection, harmless: frozenset[str], known: CaseInference) -> bool:
    """Whether all but a little of what a check can show comes of these causes alone."""
    causes = [
        known.network.ancestors({f.id}) & known.network.prior.keys()
        for f in check.reveals
        if f.id in known.network.leak
    ]
    theirs = [c for c in causes if c and c <= harmless]
    return len(theirs) > ALMOST_ALL * len(causes)


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
