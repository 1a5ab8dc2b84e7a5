"""The answer in a sentence, and the evidence for and against a cause in words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from diagnose.diagnosis import Diagnosis
from diagnose.inference.causegraph import READINGS
from diagnose.inference.explain import Weight
from diagnose.inference.network import Likelihood
from diagnose.output.as_json import NOT_IN_JSON
from diagnose.output.lines import percent
from diagnose.reasoning.comes_first import open_origin
from diagnose.reasoning.seen_on_engine import (
    SETTLED,
    chance_together,
    is_found,
    is_sure,
    taken_together,
)
from diagnose.signoff.nothing_wrong import nothing_wrong
from knowledge.model import Finding

SURE = 0.95  #: certainty from which a finding is stated without its doubt
LEADS = 0.4  #: probability from which the first cause leads
STRONG, SOME = 8, 3  #: dB from which evidence is strong, or more than slight
STRONGEST = 4  #: pieces of evidence a person is shown on either side


@dataclass(frozen=True, kw_only=True)
class EvidenceItem:
    """One piece of evidence for or against a cause."""

    finding: str  #: id
    decibans: float  #: above zero: for the cause
    chain: tuple[str, ...]  #: node ids from the cause to the finding
    weight: str = field(metadata=NOT_IN_JSON)  #: strong, some or slight, with the figure
    strength: str = field(metadata=NOT_IN_JSON)  #: strong, some or slight
    says: str = field(metadata=NOT_IN_JSON)


def is_settled(diagnosis: Diagnosis) -> bool:
    """Whether the most probable cause is nearly certain, and nothing else has brought it about."""
    return is_sure(diagnosis.inference, SETTLED)


def is_confirmed(diagnosis: Diagnosis) -> bool:
    """Whether it is, and was seen on the engine as well."""
    return is_found(diagnosis.inference)


def in_short(diagnosis: Diagnosis) -> str:
    """The answer in one sentence, without its full stop; empty without evidence."""
    if not diagnosis.inference.evidence:
        return ""
    if nothing_wrong(diagnosis):
        return "nothing wrong found: every reading is within its limits"
    first, together = diagnosis.ranking[0], taken_together(diagnosis.inference)
    if len(together) > 1 and is_settled(diagnosis):
        chance = percent(chance_together(diagnosis.inference))
        return f"almost certainly {'; or '.join(c.says for c in together)} ({chance} likely)"
    lead = f"{first.cause.says} ({percent(first.probability)} likely)"
    if first.probability < LEADS:
        return f"not clear yet; best guess: {lead}"
    if not is_settled(diagnosis):
        if first.probability >= SETTLED:
            return f"almost certainly {lead}; where that came from is not known yet"
        if open_origin(diagnosis.inference):
            return f"most likely {lead}; where that came from is not known yet"
        return f"most likely {lead}; not settled"
    return f"almost certainly {lead}"


def evidence_items(
    diagnosis: Diagnosis, weights: Sequence[Weight], sign: int
) -> tuple[EvidenceItem, ...]:
    """The evidence for (``sign`` 1) or against (-1) a cause, strongest first."""
    return tuple(_item(diagnosis, w) for w in weights if w.decibans * sign > 0)


def _item(diagnosis: Diagnosis, weight: Weight) -> EvidenceItem:
    says = _of_readings(diagnosis, weight) or _says(diagnosis, weight.what)
    if weight.decibans > 0 and not weight.chain and not is_there(diagnosis, weight.what):
        says += " (rules out rivals)"
    return EvidenceItem(
        finding=weight.what,
        decibans=weight.decibans,
        chain=weight.chain,
        weight=f"{strength(weight.decibans)} ({weight.decibans:+.0f} dB)",
        strength=strength(weight.decibans),
        says=says,
    )


def chain_in_words(diagnosis: Diagnosis, weights: Sequence[Weight]) -> str:
    """How the cause brings about the strongest evidence for it; empty where that is plain."""
    strongest = [w for w in weights if w.decibans > 0][:STRONGEST]
    present = [w for w in strongest if len(w.chain) > 2 and is_there(diagnosis, w.what)]
    best = max(present, key=lambda w: w.decibans, default=None)
    return path_in_words(diagnosis, best.chain) if best else ""


def path_in_words(diagnosis: Diagnosis, nodes: Sequence[str]) -> str:
    """The nodes of a path through the cause graph, joined by arrows."""
    return " -> ".join(str(diagnosis.inference.graph.nodes[n]["says"]) for n in nodes)


def is_there(diagnosis: Diagnosis, name: str) -> bool:
    """Whether the evidence says present, not absent."""
    return diagnosis.inference.evidence[name].there


def strength(decibans: float) -> str:
    """Return the size of a piece of evidence in a word.

    >>> strength(17), strength(-4.2), strength(1)
    ('strong', 'some', 'slight')
    """
    size = abs(decibans)
    return "strong" if size >= STRONG else "some" if size >= SOME else "slight"


def _of_readings(diagnosis: Diagnosis, weight: Weight) -> str:
    """What the readings as a whole say for a cause; empty for other evidence."""
    survey = diagnosis.inference.survey
    if weight.what != READINGS or survey is None:
        return ""
    if len(weight.chain) < 2:
        return "the readings fit other faults of the circuit"
    likelihood = survey.likelihoods[weight.chain[-2]]
    condition = diagnosis.book.conditions[weight.chain[-2]].says
    ratio = likelihood.if_present / likelihood.if_absent
    fit = "fit" if ratio >= 1.0 else "do not fit"
    return (
        f"the readings {fit} a known fault of the circuit ({max(ratio, 1 / ratio):.0f} to 1): "
        f"{condition}"
    )


def _says(diagnosis: Diagnosis, name: str) -> str:
    return stated(diagnosis.book.findings[name], diagnosis.inference.evidence[name])


def stated(finding: Finding, likelihood: Likelihood) -> str:
    """What was observed of the finding, in words."""
    text = finding.stated(likelihood.there)
    sure = max(likelihood.if_present, likelihood.if_absent)
    return text if sure >= SURE else f"probably ({100 * sure:.0f} % sure) {text}"
