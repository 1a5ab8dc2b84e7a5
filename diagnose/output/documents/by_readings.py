"""Where the gauge readings alone point to another state of the circuit than the ranking does."""

from __future__ import annotations

from diagnose.diagnosis import Diagnosis
from diagnose.output.lines import percent
from diagnose.reasoning.found_faults import EXPLAINS

FITS = 0.4  #: share of the readings' fit from which a state is worth naming (judgement)
AHEAD = 2.0  #: times the share of any other state (judgement)


def survey_differs(diagnosis: Diagnosis) -> str:
    """Say in a sentence which state fits the readings best where the first cause is none of it.

    Empty where they agree, where no state fits much better than the others, or without a survey.
    """
    inference, first = diagnosis.inference, diagnosis.ranking[0]
    if inference.survey is None or diagnosis.case.closed or first.cause.no_fault:
        return ""
    states = [r for r in inference.survey.rows if r.id in diagnosis.book.conditions]
    best, *others = [*states, None]
    if best is None or best.id not in inference.graph or best.share < FITS:
        return ""
    if any(r and best.share < AHEAD * r.share for r in others):
        return ""
    state = diagnosis.book.conditions[best.id]
    if first.shown or diagnosis.found.leads(first.cause, state) >= EXPLAINS:
        return ""
    those = [r for r in diagnosis.ranking if diagnosis.found.leads(r.cause, state) >= EXPLAINS]
    such = f", such as {those[0].cause.says} ({percent(those[0].probability)})" if those else ""
    return (
        f"Survey and ranking differ: the readings alone fit best, {percent(best.share)}, that "
        f"{state.says}{such}."
    )
