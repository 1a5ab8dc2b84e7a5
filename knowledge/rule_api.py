"""What links and rules are, what a rule may ask and what it may conclude; holds none itself."""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Protocol

from knowledge.alarm import Alarm, Contradiction
from knowledge.limits import Limit
from knowledge.model import (
    Cause,
    Condition,
    Finding,
    Measure,
    Reading,
    Shift,
    Source,
    State,
    Station,
    Strength,
)
from knowledge.reports.shapes import Behaviour, EarlierWork, TrialMade


@dataclass(frozen=True, slots=True)
class Derived:
    """A finding follows from what is known. ``sure`` < 1 makes it an uncertain sighting."""

    finding: Finding
    state: State
    sure: float = 1.0


@dataclass(frozen=True, slots=True)
class Computed:
    """A link's strength computed, where a ``Strength`` is judged: a probability."""

    value: float

    def __post_init__(self) -> None:
        if not 0.0 < self.value < 1.0:
            raise ValueError(f"a strength is a probability between 0 and 1, not {self.value}")

    @property
    def name(self) -> str:
        """The number itself, as no word was chosen for it.

        >>> Computed(0.43).name
        'computed 0.43'
        """
        return f"computed {self.value:.2f}"


@dataclass(frozen=True, slots=True)
class Link:
    """A cause or condition brings a condition or finding about, or a root condition a cause."""

    parent: Cause | Condition
    child: Cause | Condition | Finding
    strength: Strength | Computed
    source: Source


@dataclass(frozen=True, slots=True)
class Inhibitor:
    """While a cause or condition is present, a finding is seen only rarely."""

    parent: Cause | Condition
    child: Finding
    strength: Strength  #: share of the times it would be seen otherwise in which it is not
    source: Source


@dataclass(frozen=True, slots=True)
class Multiple:
    """A factor on a cause's rate worked out, where a ``Shift`` is judged: above zero.

    It includes what rules conclude the same way from the facts in ``includes``. Of several that
    a rule concludes ``of`` one entry the mildest counts, of several entries the strongest.
    """

    value: float
    includes: tuple[Finding, ...] = ()
    of: int = 0

    def __post_init__(self) -> None:
        if not self.value > 0.0:
            raise ValueError(f"a factor on a rate is above 0, not {self.value}")

    @property
    def name(self) -> str:
        """The number itself, as no word was chosen for it."""
        return f"times {self.value:.1f}"


@dataclass(frozen=True, slots=True)
class Shifted:
    """Circumstances make a cause, or a root that feeds causes, more or less common."""

    cause: Cause | Condition
    shift: Shift | Multiple


@dataclass(frozen=True, slots=True)
class Excluded:
    """This engine cannot have that fault: it has no such part."""

    cause: Cause


Conclusion = Derived | Link | Shifted | Excluded | Alarm | Contradiction
Conclusions = Iterator[Conclusion]


def is_present(finding: Finding, sure: float = 1.0) -> Derived:
    """It follows that the finding is there."""
    return Derived(finding, State.PRESENT, sure)


def is_absent(finding: Finding, sure: float = 1.0) -> Derived:
    """It follows that the finding is not there."""
    return Derived(finding, State.ABSENT, sure)


def leads_to(
    parent: Cause | Condition,
    child: Condition | Finding,
    strength: Strength | Computed,
    source: Source,
) -> Link:
    """Build a link: ``parent`` alone brings ``child`` about with this strength."""
    return Link(parent, child, strength, source)


def more_common(cause: Cause | Condition, shift: Shift = Shift.UP) -> Shifted:
    """The cause is more common here."""
    return Shifted(cause, shift)


def less_common(cause: Cause | Condition, shift: Shift = Shift.DOWN) -> Shifted:
    """The cause is less common here."""
    return Shifted(cause, shift)


def cannot_be(cause: Cause) -> Excluded:
    """This engine has no part in which the cause could sit."""
    return Excluded(cause)


class Known(Protocol):
    """What a rule may ask of working memory. It cannot ask for "unknown", so rules only add."""

    def has(self, finding: Finding) -> bool:
        """Observed or derived as present."""

    def lacks(self, finding: Finding) -> bool:
        """Observed or derived as absent."""

    def readings(self) -> Sequence[Reading]:
        """Every valid gauge reading."""

    def behaviours(self) -> Sequence[Behaviour]:
        """Every behaviour reported of the pressure or the engine."""

    def trials(self) -> Sequence[TrialMade]:
        """Every trial that was made, with its result."""

    def earlier_work(self) -> Sequence[EarlierWork]:
        """All work reported as done before the trouble began."""

    def measured(self, measure: Measure) -> float | None:
        """The largest value entered, SI; None where nothing was measured."""

    def smallest(self, measure: Measure) -> float | None:
        """The smallest value entered, SI; None where nothing was measured."""

    def limit(self, limit: Limit) -> float:
        """The first of ``limit_figures``, SI."""

    def limit_figures(self, limit: Limit) -> Sequence[float]:
        """The maker's figure where the case has it, else those for its kind (may be none), SI."""


Words = frozenset[Finding]


@dataclass(frozen=True, slots=True, eq=False)
class Example:
    """A situation to run a rule on: findings present and absent, readings, measures, reports."""

    has: frozenset[Finding] = frozenset()
    lacks: frozenset[Finding] = frozenset()
    readings: tuple[Reading, ...] = ()
    measures: tuple[tuple[Measure, float], ...] = ()
    behaviours: tuple[Behaviour, ...] = ()
    trials: tuple[TrialMade, ...] = ()
    earlier: tuple[EarlierWork, ...] = ()


def example(
    *has: Finding,
    lacks: Iterable[Finding] = (),
    readings: Iterable[Reading] = (),
    measures: dict[Measure, float] | None = None,
    behaviours: Iterable[Behaviour] = (),
    trials: Iterable[TrialMade] = (),
    earlier: Iterable[EarlierWork] = (),
) -> Example:
    """Build an example of a rule or link group."""
    return Example(
        frozenset(has),
        frozenset(lacks),
        tuple(readings),
        tuple((measures or {}).items()),
        tuple(behaviours),
        tuple(trials),
        tuple(earlier),
    )


@dataclass(frozen=True, slots=True, eq=False)
class Rule:
    """One function of what is known, with its source and examples.

    ``matches`` are situations in which it must conclude something, ``non_matches`` near
    misses in which it must conclude nothing.
    """

    id: str
    station: Station
    does: Callable[[Known], Conclusions]
    source: Source
    matches: tuple[Example, ...]
    non_matches: tuple[Example, ...]
    says: str
    text: str


RuleBody = Callable[[Known], Conclusions]


def rules_of(station: Station) -> Callable[..., Callable[[RuleBody], Rule]]:
    """Return one station's ``rule`` decorator; the id of a rule is its function's name."""

    def rule(
        *, source: Source, matches: Sequence[Example], non_matches: Sequence[Example]
    ) -> Callable[[RuleBody], Rule]:
        def wrap(body: RuleBody) -> Rule:
            text = inspect.cleandoc(body.__doc__ or "")
            return Rule(
                id=body.__name__,
                station=station,
                does=body,
                source=source,
                matches=tuple(matches),
                non_matches=tuple(non_matches),
                says=text.split("\n", 1)[0],
                text=text,
            )

        return wrap

    return rule


Weighed = tuple[Strength | Computed, Source]


def effects_of(
    parent: Cause | Condition, effects: Mapping[Cause | Condition | Finding, Weighed]
) -> Iterator[Link]:
    """Yield the links from one parent, each with its strength and source."""
    return (Link(parent, child, *weighed) for child, weighed in effects.items())


def origins_of(
    child: Condition | Finding, origins: Mapping[Cause | Condition, Weighed]
) -> Iterator[Link]:
    """Yield the links to one child, each with its strength and source."""
    return (Link(parent, child, *weighed) for parent, weighed in origins.items())


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class LinkGroup:
    """Links that hold for every engine, stated together with one sentence and examples.

    Give either ``parent`` with its ``effects``, or ``child`` with its ``origins``, or
    ``links`` in full. ``matches`` are findings that must make the parents likelier,
    ``non_matches`` near misses that must leave them less likely than every match does.
    Raises ValueError where none or several are given.
    """

    id: str
    station: Station
    says: str
    note: str = ""
    parent: Cause | Condition | None = None
    effects: Mapping[Cause | Condition | Finding, Weighed] = field(default_factory=dict)
    child: Condition | Finding | None = None
    origins: Mapping[Cause | Condition, Weighed] = field(default_factory=dict)
    links: tuple[Link, ...] = ()
    matches: Sequence[Example]
    non_matches: Sequence[Example]

    def __post_init__(self) -> None:
        given = (self.parent is not None, self.child is not None, bool(self.links))
        if sum(given) != 1:
            raise ValueError(f"{self.id}: give a parent, a child or links, and only one of them")
        if self.parent is not None:
            object.__setattr__(self, "links", tuple(effects_of(self.parent, self.effects)))
        if self.child is not None:
            object.__setattr__(self, "links", tuple(origins_of(self.child, self.origins)))
        if not self.links:
            raise ValueError(f"{self.id}: holds no link")

    @property
    def text(self) -> str:
        """The sentence and the note under it."""
        return f"{self.says}\n\n{self.note}" if self.note else self.says

    @property
    def source(self) -> Source:
        """The source of the first link."""
        return self.links[0].source

    def __repr__(self) -> str:
        return f"<links {self.id}>"


@dataclass(frozen=True, slots=True, eq=False, kw_only=True)
class InhibitorGroup:
    """Inhibitors that hold for every engine, stated together with one sentence and examples.

    Give ``parent`` with what it ``inhibits``, or ``child`` with what it is ``inhibited_by``, else
    ValueError. ``matches`` make the parents less likely than every ``non_match``, a near miss.
    """

    id: str
    station: Station
    says: str
    note: str = ""
    parent: Cause | Condition | None = None
    inhibits: Mapping[Finding, tuple[Strength, Source]] = field(default_factory=dict)
    child: Finding | None = None
    inhibited_by: Mapping[Cause | Condition, tuple[Strength, Source]] = field(default_factory=dict)
    inhibitors: tuple[Inhibitor, ...] = field(init=False, default=())
    matches: Sequence[Example]
    non_matches: Sequence[Example]

    def __post_init__(self) -> None:
        found: list[Inhibitor] = []
        if self.parent is not None:
            found += (Inhibitor(self.parent, c, *w) for c, w in self.inhibits.items())
        if self.child is not None:
            found += (Inhibitor(p, self.child, *w) for p, w in self.inhibited_by.items())
        if (self.parent is None) == (self.child is None) or not found:
            raise ValueError(f"{self.id}: give a parent with inhibits or a child with inhibited_by")
        object.__setattr__(self, "inhibitors", tuple(found))

    @property
    def text(self) -> str:
        """The sentence and the note under it."""
        return f"{self.says}\n\n{self.note}" if self.note else self.says

    @property
    def source(self) -> Source:
        """The source of the first inhibitor."""
        return self.inhibitors[0].source

    def __repr__(self) -> str:
        return f"<inhibitors {self.id}>"


#: what adds to a cause graph: a rule, or links or inhibitors that hold for every engine
Statement = Rule | LinkGroup | InhibitorGroup
