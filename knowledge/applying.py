"""Whether a task or a part is one for this engine, from the features it has and lacks."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from knowledge.model import Finding, State


class ForSome(Protocol):
    """Something that belongs to some engines only."""

    @property
    def only_with(self) -> tuple[Finding, ...]:
        """Any of these features, else it does not apply."""

    @property
    def not_with(self) -> tuple[Finding, ...]:
        """None of these features."""


def applies(task: ForSome, state: Callable[[Finding], State | None]) -> bool:
    """Whether the task is for the engine whose features ``state`` returns.

    An unknown feature does not rule a task out: it may be there.
    """
    if any(state(feature) is State.PRESENT for feature in task.not_with):
        return False
    if not task.only_with:
        return True
    return any(state(feature) is not State.ABSENT for feature in task.only_with)


def surely_applies(task: ForSome, state: Callable[[Finding], State | None]) -> bool:
    """Whether nothing it needs is unknown: it is for every engine, or this one has what it is for."""
    return not task.only_with or any(state(f) is State.PRESENT for f in task.only_with)
