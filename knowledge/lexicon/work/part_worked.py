"""The shape of a part that is worked on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from knowledge.reports.words import Done


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class PartWorked:
    """A part that is worked on: its names, the trial each action is, the area of earlier work."""

    names: tuple[str, ...]
    trials: Mapping[Done, str] = field(default_factory=dict)
    area: str | None = None
    area_if: Done | None = None  #: the area holds for this action only
