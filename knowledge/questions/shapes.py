"""Shapes of questions with numbered choices; they import nothing of ours.

Findings are named by their id.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Choice:
    """One answer to choose: the findings that are there then, and those that are not.

    A choice that names no finding says that none of the other choices is true.
    """

    says: str
    there: tuple[str, ...] = ()
    not_there: tuple[str, ...] = ()
    also: tuple[str, ...] = ()  #: what else people say for it
    beyond: tuple[str, ...] = ()  #: findings it is more of: if they are not there, it is not either
    plain: str = ""  #: "yes" or "no", where that word alone says it


@dataclass(frozen=True, slots=True, kw_only=True)
class Menu:
    """Related yes/no questions asked as one; ``many``: several choices may be true.

    ``changes``: what is true of it may change while the job goes on.
    """

    id: str
    asks: str
    why: str
    choices: tuple[Choice, ...]
    many: bool = False
    changes: bool = True

    @property
    def findings(self) -> tuple[str, ...]:
        """Every finding that a choice names, once."""
        return tuple(dict.fromkeys(f for c in self.choices for f in (*c.there, *c.not_there)))

    def denied_by(self, choice: Choice) -> tuple[str, ...]:
        """What is not there if this choice is true."""
        if choice.there:
            return choice.not_there
        return tuple(dict.fromkeys(f for c in self.choices for f in c.there))


@dataclass(frozen=True, slots=True)
class Premise:
    """What must be known before a question makes sense.

    Each group of ``needs`` must have a finding that is known to be there, or one of the places
    ``work`` must have been worked on, by the id of its area; none of ``unless`` may be known to be
    there.
    """

    needs: tuple[tuple[str, ...], ...] = ()
    unless: tuple[str, ...] = ()
    work: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class FirstStep:
    """What the trade does first once one of ``when`` is known, and none of ``unless``."""

    says: str
    when: tuple[str, ...]
    unless: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class EngineKind:
    """Layouts that go by one name in the trade: id and short words of each.

    ``has``: features that all of them have, by id.
    """

    says: str
    layouts: tuple[tuple[str, str], ...]
    has: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class StillToLook:
    """A check that is worth making once a cause is found, and why; ids of the book."""

    cause: str
    check: str
    why: str
