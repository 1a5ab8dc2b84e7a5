"""Check the faults of parts: a check can prove each, and each origin leads to it."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.bookcheck.shapes import Result, Whole
from knowledge.faults import Fault
from knowledge.model import OFTEN, Cause, Stage

#: a fault and a cause that shows its proof because it comes of it
COMES_OF_IT = frozenset([("sludge_in_the_engine", "pickup_screen_blocked")])


def fault_proofs(whole: Whole) -> Result:
    """Check that what proves a fault can be looked for, and that each origin leads to it."""
    revealed = {f for i in whole.book.inspections.values() for f in i.reveals}
    effects: dict[str, set[str]] = {}
    for link in whole.links:
        effects.setdefault(link.parent.id, set()).add(link.child.id)
    often = [
        k for k in whole.links if isinstance(k.parent, Cause) and k.strength.value >= OFTEN.value
    ]
    faults: list[str] = []
    for fault in whole.book.faults.values():
        faults += _unproved(fault)
        faults += [
            f"fault {fault.id}: no check reveals {p.id}" for p in fault.proofs if p not in revealed
        ]
        ends = {s.id for s in fault.states} | {p.id for p in fault.proofs}
        faults += [
            f"fault {fault.id}: {origin.id} does not lead to it"
            for origin in fault.origins
            if not ends & _below(origin.id, effects)
        ]
        faults += [
            f"fault {fault.id}: {link.parent.id} often shows {link.child.id}, and is no origin"
            for link in often
            if link.child in fault.proofs
            and link.parent not in fault.origins
            and (fault.id, link.parent.id) not in COMES_OF_IT
        ]
    counts = {
        "faults": len(whole.book.faults),
        "proofs": sum(len(f.proofs) for f in whole.book.faults.values()),
    }
    return Result(
        "faults", "every fault has a proof and comes from what leads to it", counts, tuple(faults)
    )


def _unproved(fault: Fault) -> Iterator[str]:
    if not fault.proofs:
        yield f"fault {fault.id}: nothing proves it"
    if not fault.origins:
        yield f"fault {fault.id}: nothing that it can come from"
    for proof in fault.proofs:
        if proof.stage is Stage.KNOWN:
            yield f"fault {fault.id}: {proof.id} is a report, no proof"


def _below(start: str, effects: dict[str, set[str]]) -> set[str]:
    """The node and all it leads to."""
    found, stack = {start}, [start]
    while stack:
        more = effects.get(stack.pop(), set()) - found
        found |= more
        stack.extend(more)
    return found
