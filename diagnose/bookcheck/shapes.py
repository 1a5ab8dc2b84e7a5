"""What is checked, and the result of one check."""

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
from knowledge.rule_api import Inhibitor, Link, Statement
from knowledge.work import Access, Inspection, Layout

Has = Callable[[Finding], bool]
#: the tables of a book that hold words by id
TABLES = (
    "causes",
    "conditions",
    "faults",
    "findings",
    "quantities",
    "measures",
    "limits",
    "inspections",
    "layouts",
    "links",
    "inhibitors",
    "rules",
    "profiles",
    "dimensions",
    "card_figures",
    "trials",
    "areas",
    "tasks",
    "parts",
)


@dataclass(frozen=True)
class Whole:
    """The book with the rules of access and precedence."""

    book: Book
    before: tuple[Before, ...] = BEFORE
    first_of: tuple[FirstOf, ...] = FIRST_OF
    kept: frozenset[Inspection] = KEPT
    openings: Callable[[Has], dict[Access, Opening]] = openings_for

    @property
    def precedences(self) -> list[Before | FirstOf]:
        """Every constraint of what must be looked at before what."""
        return [*self.before, *self.first_of]

    @cached_property
    def concluded(self) -> dict[Layout, InferenceResult]:
        """Conclusions of the rules for each layout, if nothing else is known."""
        found = {}
        for layout in self.book.layouts.values():
            observations = {f: Observation(State.PRESENT) for f in layout.has}
            observations |= {f: Observation(State.ABSENT) for f in layout.lacks}
            found[layout] = infer(self.book.statements, Facts(observations))
        return found

    @cached_property
    def links(self) -> dict[Link, tuple[Statement, ...]]:
        """Every link on some layout, or if nothing is known, with the rules and groups that state it."""
        found = dict(infer(self.book.statements, Facts()).links)
        for conclusions in self.concluded.values():
            found |= conclusions.links
        return found

    @cached_property
    def inhibitors(self) -> dict[Inhibitor, tuple[Statement, ...]]:
        """Every inhibitor, with the groups that state it."""
        return infer(self.book.statements, Facts()).inhibitors

    def tree(self, layout: Layout) -> dict[Access, Opening]:
        """The openings of an engine of this layout."""
        return self._trees[layout]

    @cached_property
    def _trees(self) -> dict[Layout, dict[Access, Opening]]:
        layouts = self.book.layouts.values()
        return {x: self.openings(frozenset(x.has).__contains__) for x in layouts}

    def tables(self) -> Iterator[tuple[str, Mapping[str, Any]]]:
        """Yield each table's name and its words by id."""
        for name in TABLES:
            yield name, getattr(self.book, name)


@dataclass(frozen=True, slots=True)
class Result:
    """One check: what was checked, counts, and what is wrong, one line each."""

    id: str
    says: str  #: completes "checked: ..."
    counts: Mapping[str, int]
    faults: tuple[str, ...] = ()


def inside(thing: Any, name: str = "") -> Iterator[tuple[str, Any]]:
    """Yield every value in the fields of a word, with the field's name, also in tuples and dicts.

    The keys of a dict are part of the name; words among the values are not searched further.
    """
    for field in fields(thing):
        yield from _parts_of(getattr(thing, field.name), f"{name}{field.name}")


def _parts_of(value: Any, name: str) -> Iterator[tuple[str, Any]]:
    match value:
        case tuple() | list() | frozenset():
            for one in value:
                yield from _parts_of(one, name)
        case Mapping():
            for key, one in value.items():
                yield from _parts_of(one, f"{name}.{key}")
        case _ if is_dataclass(value) and not hasattr(value, "id") and not hasattr(value, "key"):
            yield name, value
            yield from inside(value, f"{name}.")
        case _:
            yield name, value
