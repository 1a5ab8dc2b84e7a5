"""What is opened on the way to a check."""

from __future__ import annotations

from dataclasses import dataclass

from knowledge.access import Opening


@dataclass(frozen=True, kw_only=True)
class OpeningStep:
    """Something to open on the way to a check."""

    says: str
    minutes: float
    keep: str  #: what to record before it is disturbed; may be empty


def opening_step(opening: Opening, minutes: float) -> OpeningStep:
    """Build the step of one opening; ``minutes``: hands-on, without what is open already."""
    return OpeningStep(says=opening.says, minutes=minutes, keep=opening.keep)
