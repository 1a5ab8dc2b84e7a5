"""Which used parts go back in: reuse, rework or renew, by what the case knows of each."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from diagnose.case.case import Case
from diagnose.diagnosis import Diagnosis
from diagnose.reasoning.proved import SURE
from knowledge.contents_reuse import USED_PARTS
from knowledge.model import Finding, State
from knowledge.reuse import Fate, UsedPart
from knowledge.stations.bearings.reuse import SHELLS


@dataclass(frozen=True, slots=True)
class PartFate:
    """A used part and what becomes of it."""

    part: UsedPart
    fate: Fate | None  #: None: it was not looked at yet
    because: tuple[Finding, ...]  #: what decides it
    how: str  #: what to do, as an order


def part_fates(diagnosis: Diagnosis) -> tuple[PartFate, ...]:
    """Every used part that was looked at, or stands open, with the gravest verdict that holds."""
    return tuple(_judged(diagnosis))


def _judged(diagnosis: Diagnosis) -> Iterator[PartFate]:
    present, absent = diagnosis.found.present, _absent(diagnosis)
    measured = {m.measure for m in diagnosis.case.measurements}
    renewed = _renewed(diagnosis.case)
    for part in USED_PARTS:
        if part in renewed:
            continue
        found = [
            (rule, tuple(f for f in rule.when if f in present))
            for rule in sorted(part.rules, key=lambda r: list(Fate).index(r.fate))
        ]
        worst = next(((rule, proofs) for rule, proofs in found if proofs), None)
        if worst is not None:
            yield PartFate(part, worst[0].fate, worst[1], worst[0].how)
            continue
        sound = tuple(f for f in part.sound if f in present)
        denied = tuple(f for rule in part.rules for f in rule.when if f in absent)
        if sound or denied or measured.intersection(part.measures):
            yield PartFate(part, Fate.REUSE, sound or denied, part.reuse)
        else:
            yield PartFate(part, None, (), part.look)


def _renewed(case: Case) -> tuple[UsedPart, ...]:
    """Parts of which new ones are in hand: nobody puts the old ones back.

    Of shells: some were measured as fitted, or the wall of new ones.
    """
    new = case.bearings.fitted or any(g.new_shell for g in case.bearings.groups.values())
    return (SHELLS,) if new else ()


def _absent(diagnosis: Diagnosis) -> frozenset[Finding]:
    """Findings that were looked for and are not there, surely enough."""
    known, case = diagnosis.inference, diagnosis.case
    unseen = case.denied_unseen()
    facts = known.facts.observations
    seen = {
        f
        for f, o in facts.items()
        if o.state is State.ABSENT and o.sure >= SURE and f not in unseen
    }
    derived = {
        d.finding
        for d in known.result.derived
        if d.state is State.ABSENT and d.sure >= SURE and d.finding not in facts
    }
    return frozenset(seen | derived)
