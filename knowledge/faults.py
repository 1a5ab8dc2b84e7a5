"""The shape of a fault: a state of a part that is wrong in itself.

A root cause is what went wrong first; a fault is what is wrong with a part now, whatever brought
it about.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from knowledge.model import Cause, Condition, Finding, Quantity, Source, Station
from knowledge.work import Access


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class Fault:
    """A state of a part that was seen or measured to be wrong.

    ``says`` completes "Found: ..."; ``source`` is that of what proves it.
    """

    id: str
    station: Station
    says: str
    proofs: tuple[Finding, ...]  #: any one of these, seen or measured, proves it
    origins: tuple[Cause | Condition, ...]  #: what it can have come from; a condition: of damage
    source: Source
    #: origins that one repair puts right, so that which of them it was may stay open
    alike: tuple[Cause, ...] = ()
    states: tuple[Condition, ...] = ()  #: the states of the circuit it is, which explain the gauge
    costs: tuple[Quantity, ...] = ()  #: by which it costs pressure
    damage: bool = False  #: as a rule it followed
    opens: tuple[Access, ...] = ()  #: what its repair must open in any case
    decides: str = ""  #: the check that decides where it came from, as an order
    decided_by: tuple[Finding, ...] = ()  #: what that check shows; once one is known it is done
    #: proofs that prove nothing of it once one of these was found, which brought them about
    explained: Mapping[Finding, tuple[Finding, ...]] = field(default_factory=dict)

    def __repr__(self) -> str:
        return f"<fault {self.id}>"
