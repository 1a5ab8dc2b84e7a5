"""What is checked and what a check says; imported by whatever checks or tells of it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, fields, is_dataclass
from functools import cached_property
from typing import Any

from diagnose.inference.chaining import Facts, InferenceResult, Observation, infer
from knowledge.access import Opening, openings_for
from knowledge.access.always_recorded import KEPT
from knowledge.access.precedence import BEFORE, FIRST_OF, Before, FirstOf
from knowledge.book import Book
from knowledge.model import Finding, State
from knowledge.rule_api import Link, Statement
from knowledge.work import Access, Inspection, Layout

Has = Callable[[Finding], bool]
#: the shelves of a book that hold words with an id
SHELVES = (
    "causes",
    "conditions",
    "findings",
    "quantities",
    "measures",
    "limits",
    "inspections",
    "layouts",
    "links",
    "rules",
    "profiles",
    "dimensions",
    "tasks",
    "parts",
)


@dataclass(frozen=True)
class Whole:
    """The book and what stands beside it: what opens what, what must be seen before what."""

    book: Book
    before: tuple[Before, ...] = BEFORE
    first_of: tuple[FirstOf, ...] = FIRST_OF
    kept: frozenset[Inspection] = KEPT
    openings: Callable[[Has], dict[Access, Opening]] = openings_for

    @property
    def precedences(self) -> list[Before | FirstOf]:
        """Every line of what must be seen before what."""
        return [*self.before, *self.first_of]

    @cached_property
    def concluded(self) -> dict[Layout, InferenceResult]:
        """What the rules conclude of an engine of which only the layout is known."""
        found = {}
        for layout in self.book.layouts.values():
            observations = {f: Observation(State.PRESENT) for f in layout.has}
            observations |= {f: Observation(State.ABSENT) for f in layout.lacks}
            found[layout] = infer(self.book.statements, Facts(observations))
        return found

    @cached_property
    def links(self) -> dict[Link, list[Statement]]:
        """Every link there is on some layout, or where nothing is known, with what states it."""
        found = dict(infer(self.book.statements, Facts()).links)
        for conclusions in self.concluded.values():
            found |= conclusions.links
        return found

    def tree(self, layout: Layout) -> dict[Access, Opening]:
        """What opens what on an engine of this layout, made once."""
        return self._trees[layout]

    @cached_property
    def _trees(self) -> dict[Layout, dict[Access, Opening]]:
        layouts = self.book.layouts.values()
        return {x: self.openings(frozenset(x.has).__contains__) for x in layouts}

    def shelves(self) -> Iterator[tuple[str, Mapping[str, Any]]]:
        """Each shelf with its words by id."""
        for name in SHELVES:
            yield name, getattr(self.book, name)


@dataclass(frozen=True, slots=True)
class Result:
    """One check: what was looked at, how much of it, and what is wrong, a line each."""

    id: str
    says: str  #: completes "checked: ..."
    counts: Mapping[str, int]
    faults: tuple[str, ...] = ()


def inside(thing: Any, name: str = "") -> Iterator[tuple[str, Any]]:
    """Every value in a field of a word, with the field's name, also in tuples and tables.

    A table's keys count as names; a value that is a word is given, not gone into.
    """
    for field in fields(thing):
        yield from _each(getattr(thing, field.name), f"{name}{field.name}")


def _each(value: Any, name: str) -> Iterator[tuple[str, Any]]:
    match value:
        case tuple() | list() | frozenset():
            for one in value:
                yield from _each(one, name)
        case Mapping():
            for key, one in value.items():
                yield from _each(one, f"{name}.{key}")
        case _ if is_dataclass(value) and not hasattr(value, "id") and not hasattr(value, "key"):
            yield name, value
            yield from inside(value, f"{name}.")
        case _:
            yield name, value
