"""All of the book as one frozen value; the door through which ``diagnose`` takes it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from types import ModuleType
from typing import TypeVar

from knowledge import causes as _causes
from knowledge import conditions as _conditions
from knowledge import findings as _findings
from knowledge import inspections as _inspections
from knowledge import parts as _parts
from knowledge import rules as _rules
from knowledge import tasks as _tasks
from knowledge.engines import dimensions as _dimensions
from knowledge.engines import features as _features
from knowledge.engines import layouts as _layouts
from knowledge.engines import profiles as _profiles
from knowledge.engines.dimensions import Dimensioned
from knowledge.engines.profiles import Profile
from knowledge.parts.shapes import Part
from knowledge.reference import limits as _limits
from knowledge.rulebook import Rule
from knowledge.vocabulary import (
    Cause,
    Condition,
    Finding,
    Inspection,
    Layout,
    Limit,
    Measure,
    Task,
    all_in,
)

Word = TypeVar(
    "Word", Cause, Condition, Finding, Inspection, Layout, Limit, Measure, Part, Profile, Rule, Task
)


@dataclass(frozen=True)
class Book:
    """Every word and rule by its id."""

    causes: dict[str, Cause]
    conditions: dict[str, Condition]
    findings: dict[str, Finding]
    measures: dict[str, Measure]
    limits: dict[str, Limit]
    inspections: dict[str, Inspection]
    layouts: dict[str, Layout]
    rules: dict[str, Rule]
    profiles: dict[str, Profile]
    dimensions: dict[str, Dimensioned]
    tasks: dict[str, Task]
    parts: dict[str, Part]

    def profile_of(self, layout: str) -> Profile | None:
        """The circuit in figures that goes with a layout, if there is one."""
        return next((p for p in self.profiles.values() if layout in p.layouts), None)


class DoubledIdError(Exception):
    """Two words of one kind bear the same id."""


def _by_id(modules: tuple[ModuleType, ...], kind: type[Word]) -> dict[str, Word]:
    found: dict[str, Word] = {}
    for module in modules:
        for word in all_in(module.__name__, kind):
            if found.setdefault(word.id, word) is not word:
                raise DoubledIdError(f"{module.__name__}: {word.id}")
    return found


@cache
def the_book() -> Book:
    """The book, gathered once."""
    return Book(
        causes=_by_id(_causes.MODULES, Cause),
        conditions=_by_id((_conditions,), Condition),
        findings=_by_id((*_findings.MODULES, _features), Finding),
        measures=_by_id(_findings.MODULES, Measure),
        limits=_by_id((_limits, *_findings.MODULES), Limit),
        inspections=_by_id(_inspections.MODULES, Inspection),
        layouts=_by_id((_layouts,), Layout),
        rules=_by_id(_rules.MODULES, Rule),
        profiles=_by_id((_profiles,), Profile),
        dimensions=_dimensions.DIMENSIONED,
        tasks=_by_id(_tasks.MODULES, Task),
        parts=_by_id(_parts.MODULES, Part),
    )
