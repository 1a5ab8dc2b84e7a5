"""The answer in a sentence and the evidence for and against a cause, on a screen and on a page."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from diagnose.diagnosis import Diagnosis
from diagnose.inference.explain import Weight
from diagnose.inference.network import Likelihood
from diagnose.output.lines import percent
from knowledge.model import Finding

SURE = 0.95  #: from here a sighting is told without its doubt
LEADS, SETTLED = 0.4, 0.9  #: how likely the first must be to be called so
REASONS = 4
FOR, AGAINST = "for", "against"


@dataclass(frozen=True, slots=True)
class Reason:
    """One piece of evidence that speaks for or against a cause."""

    side: str  #: for, against
    what: str  #: id of the finding or condition
    decibans: float
    weight: str  #: strong, fair or slight, with the figure
    says: str


def in_short(answer: Diagnosis) -> str:
    """The answer in one sentence, without its full stop."""
    first = answer.ranking[0]
    lead = f"{first.cause.says} ({percent(first.probability)} likely)"
    if first.probability < LEADS:
        return f"cannot tell yet; ahead by a little is {lead}"
    if first.probability < SETTLED:
        return f"most likely {lead}, not settled"
    return f"as good as settled, {lead}"


def reasons(
    answer: Diagnosis, weights: Sequence[Weight], most: int = REASONS
) -> tuple[Reason, ...]:
    """What speaks for the cause, strongest first, then what speaks against it."""
    pro = [w for w in weights if w.decibans > 0][:most]
    con = [w for w in weights if w.decibans < 0][:most]
    return tuple(
        [_reason(answer, FOR, w) for w in pro] + [_reason(answer, AGAINST, w) for w in con]
    )


def _reason(answer: Diagnosis, side: str, weight: Weight) -> Reason:
    text = _says(answer, weight.what)
    if side == FOR and not weight.chain and not is_there(answer, weight.what):
        text += " (rules out rivals)"
    return Reason(side, weight.what, weight.decibans, _word(weight.decibans), text)


def chain_told(answer: Diagnosis, weights: Sequence[Weight], most: int = REASONS) -> str:
    """How the cause brings about what speaks most for it, step by step; empty where it is plain."""
    pro = [w for w in weights if w.decibans > 0][:most]
    seen = [w for w in pro if len(w.chain) > 2 and is_there(answer, w.what)]
    best = max(seen, key=lambda w: w.decibans, default=None)
    return (
        " -> ".join(str(answer.inference.graph.nodes[n]["says"]) for n in best.chain)
        if best
        else ""
    )


def others(answer: Diagnosis, shown: int) -> str:
    """What of the ranking is not shown; empty where all is."""
    rest = answer.ranking[shown:]
    if not rest:
        return ""
    highest = max(r.probability for r in rest)
    after = ""
    if answer.inference.loss_is_real and highest > answer.ranking[shown - 1].probability:
        after = " (the loss is real: what can only make the gauge lie stands last)"
    return (
        f"{len(rest)} more causes, none above {percent(highest)}{after}. Each figure is for that "
        "cause alone; several may hold at once."
    )


def is_there(answer: Diagnosis, name: str) -> bool:
    """Whether the evidence says present, not absent."""
    return answer.inference.evidence[name].there


def _word(decibans: float) -> str:
    size = abs(decibans)
    strength = "strong" if size >= 8 else "fair" if size >= 3 else "slight"
    return f"{strength} ({decibans:+.0f} dB)"


def _says(answer: Diagnosis, name: str) -> str:
    if name in answer.book.conditions:
        seen = answer.inference.evidence[name]
        ratio, fit = seen.if_present / seen.if_absent, "fit"
        if ratio < 1:
            ratio, fit = 1 / ratio, "do not fit"
        return f"the readings, held against the circuit, {fit} ({ratio:.0f} to 1): " + (
            answer.book.conditions[name].says
        )
    return stated(answer.book.findings[name], answer.inference.evidence[name])


def stated(finding: Finding, seen: Likelihood) -> str:
    """What was reported of the finding, in words."""
    text = finding.stated(seen.there)
    sure = max(seen.if_present, seen.if_absent)
    return text if sure >= SURE else f"probably ({100 * sure:.0f} % sure) {text}"
