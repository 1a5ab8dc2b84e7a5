"""All knowledge as one frozen value; ``diagnose`` takes it from here."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from functools import cache, cached_property
from types import ModuleType
from typing import TypeVar

from knowledge import contents
from knowledge.card import CardFigure
from knowledge.engines import card_figures, dimensions
from knowledge.engines.profiles import Profile
from knowledge.faults import Fault
from knowledge.limits import Limit, Side
from knowledge.model import Cause, Condition, Finding, Measure, Quantity, all_in
from knowledge.reports.shapes import TrialKind, WorkArea
from knowledge.reports.trials import cure_links
from knowledge.rule_api import InhibitorGroup, LinkGroup, Rule, Statement
from knowledge.work import Inspection, Layout, Part, Task

Made = TypeVar("Made")
Word = TypeVar(
    "Word",
    Cause,
    Condition,
    Fault,
    Finding,
    InhibitorGroup,
    Inspection,
    Layout,
    Limit,
    LinkGroup,
    Measure,
    Part,
    Profile,
    Quantity,
    Rule,
    Task,
    TrialKind,
    WorkArea,
)

#: what lazily loaded entries hold
Entry = TypeVar("Entry", Task, Part)


@dataclass(frozen=True)
class Book:
    """Every word, group of links or inhibitors, and rule by its id."""

    causes: dict[str, Cause]
    conditions: dict[str, Condition]
    findings: dict[str, Finding]
    quantities: dict[str, Quantity]
    measures: dict[str, Measure]
    limits: dict[str, Limit]
    inspections: dict[str, Inspection]
    layouts: dict[str, Layout]
    faults: dict[str, Fault]
    links: dict[str, LinkGroup]
    inhibitors: dict[str, InhibitorGroup]
    rules: dict[str, Rule]
    profiles: dict[str, Profile]
    dimensions: dict[str, Quantity]  #: those of an oil circuit
    card_figures: dict[str, CardFigure]  #: what an engine's card can hold
    trials: dict[str, TrialKind]
    areas: dict[str, WorkArea]  #: places of earlier work
    tasks: Mapping[str, Task]
    parts: Mapping[str, Part]

    @property
    def statements(self) -> tuple[Statement, ...]:
        """Every rule and every group of links or inhibitors."""
        return (*self.rules.values(), *self.links.values(), *self.inhibitors.values())

    def limits_of(self, quantity: Quantity) -> tuple[Limit | None, Limit | None]:
        """The least and the most a quantity may be, as far as the book has such limits."""
        bounds = {x.side: x for x in self.limits.values() if quantity in x.quantities}
        return bounds.get(Side.LEAST), bounds.get(Side.MOST)

    @cached_property
    def shown_by_trial(self) -> Mapping[Finding, TrialKind]:
        """The trial whose result shows a finding, for every such finding."""
        return {f: t for t in self.trials.values() for f in t.findings}

    @cached_property
    def unclear_absent(self) -> frozenset[Finding]:
        """Findings of which "absent" may mean that the trial was not made."""
        kinds = self.trials.values()
        return frozenset(f for t in kinds for f in (t.cured, t.worse) if f is not None)

    @cached_property
    def retired(self) -> Mapping[str, TrialKind]:
        """The trial meant by each earlier id of "it was tried, and made no difference"."""
        return {id_: t for t in self.trials.values() for id_ in t.retired}

    def profile_of(self, layout: str) -> Profile | None:
        """The circuit in figures that goes with a layout, if there is one."""
        return next((p for p in self.profiles.values() if layout in p.layouts), None)


class LazyEntries(Mapping[str, Entry]):
    """Entries by id that are loaded when first used."""

    def __init__(self, load: Callable[[], dict[str, Entry]]) -> None:
        self._load: Callable[[], dict[str, Entry]] = cache(load)

    def __getitem__(self, id_: str) -> Entry:
        return self._load()[id_]

    def __iter__(self) -> Iterator[str]:
        return iter(self._load())

    def __len__(self) -> int:
        return len(self._load())


class DoubledIdError(Exception):
    """Two words of one kind have the same id."""


def _by_id(kind: type[Word], modules: Iterable[ModuleType] = contents.MODULES) -> dict[str, Word]:
    found: dict[str, Word] = {}
    for module in modules:
        for word in all_in(module.__name__, kind):
            if found.setdefault(word.id, word) is not word:
                raise DoubledIdError(f"{module.__name__}: {word.id}")
    return found


def _tasks() -> dict[str, Task]:
    from knowledge import contents_work

    return _by_id(Task, contents_work.WORK)


def _parts() -> dict[str, Part]:
    from knowledge import contents_work

    return _by_id(Part, contents_work.PARTS)


@cache
def the_book() -> Book:
    """All knowledge, gathered once. Raises DoubledIdError."""
    trials = _by_id(TrialKind)
    cured = {t.cured.id: t.cured for t in trials.values()}
    cures = {group.id: group for group in map(cure_links, trials.values())}
    return Book(
        causes=_by_id(Cause),
        conditions=_by_id(Condition),
        findings={**_by_id(Finding), **cured},
        quantities=_by_id(Quantity),
        measures=_by_id(Measure),
        limits=_by_id(Limit),
        inspections=_by_id(Inspection),
        layouts=_by_id(Layout),
        faults=_by_id(Fault),
        links={**_by_id(LinkGroup), **cures},
        inhibitors=_by_id(InhibitorGroup),
        rules=_by_id(Rule),
        profiles=_by_id(Profile),
        dimensions=dimensions.CIRCUIT,
        card_figures=card_figures.FIGURES,
        trials=trials,
        areas=_by_id(WorkArea),
        tasks=LazyEntries(_tasks),
        parts=LazyEntries(_parts),
    )


def made_once(make: Callable[[Book], Made]) -> Callable[[Book], Made]:
    """``make`` as a function that makes its thing once for each book, and keeps it."""
    kept: list[tuple[Book, Made]] = []

    def made(book: Book) -> Made:
        for own, thing in kept:
            if own is book:
                return thing
        kept.append((book, make(book)))
        return kept[-1][1]

    return made
