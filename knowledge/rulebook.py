"""What a rule is, what it may ask and what it may conclude.

Imported by every rule and by whatever runs or reads rules; knows no rule itself.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Protocol

from knowledge.vocabulary import (
    Cause,
    Condition,
    Finding,
    Limit,
    Measure,
    Reading,
    Severity,
    Shift,
    Source,
    State,
    Station,
    Strength,
)

# ----------------------------------------------------------------- what a rule may conclude


@dataclass(frozen=True, slots=True)
class Derived:
    """A finding follows from what is known. ``sure`` < 1 makes it an uncertain sighting."""

    finding: Finding
    state: State
    sure: float = 1.0


@dataclass(frozen=True, slots=True)
class Computed:
    """A link's strength worked out, where a ``Strength`` is judged: a probability and what from."""

    value: float
    source: Source

    def __post_init__(self) -> None:
        if not 0.0 < self.value < 1.0:
            raise ValueError(f"a strength is a probability between 0 and 1, not {self.value}")

    @property
    def name(self) -> str:
        """The number itself: nobody chose a word for it.

        >>> Computed(0.43, Source("X", "some model")).name
        'computed 0.43'
        """
        return f"computed {self.value:.2f}"


@dataclass(frozen=True, slots=True)
class Link:
    """A cause or condition brings a condition or finding about."""

    parent: Cause | Condition
    child: Condition | Finding
    strength: Strength | Computed


@dataclass(frozen=True, slots=True)
class Shifted:
    """Circumstances make a cause more or less common."""

    cause: Cause
    shift: Shift


@dataclass(frozen=True, slots=True)
class Excluded:
    """This engine cannot have that fault: it has no such part."""

    cause: Cause


@dataclass(frozen=True, slots=True)
class Alarm:
    """What must be done now, in one line: state, limit, action."""

    severity: Severity
    says: str
    until: Finding | None = None  #: somebody's word that takes it back


@dataclass(frozen=True, slots=True)
class Contradiction:
    """Two findings that do not fit together; look at ``recheck`` again first."""

    findings: tuple[Finding, ...]
    says: str
    recheck: Finding


Conclusion = Derived | Link | Shifted | Excluded | Alarm | Contradiction
Conclusions = Iterator[Conclusion]


def is_present(finding: Finding, sure: float = 1.0) -> Derived:
    """It follows that the finding is there."""
    return Derived(finding, State.PRESENT, sure)


def is_absent(finding: Finding, sure: float = 1.0) -> Derived:
    """It follows that the finding is not there."""
    return Derived(finding, State.ABSENT, sure)


def leads_to(
    parent: Cause | Condition, child: Condition | Finding, how_often: Strength | Computed
) -> Link:
    """``parent`` alone brings ``child`` about this often."""
    return Link(parent, child, how_often)


def more_common(cause: Cause, shift: Shift = Shift.UP) -> Shifted:
    """The cause is more common here."""
    return Shifted(cause, shift)


def less_common(cause: Cause, shift: Shift = Shift.DOWN) -> Shifted:
    """The cause is less common here."""
    return Shifted(cause, shift)


def cannot_be(cause: Cause) -> Excluded:
    """This engine has no part in which the cause could sit."""
    return Excluded(cause)


class Known(Protocol):
    """All a rule may ask. There is no way to ask "unknown": rules only ever add."""

    def has(self, finding: Finding) -> bool:
        """Seen, told or derived."""

    def lacks(self, finding: Finding) -> bool:
        """Looked for and not there, or derived as not there."""

    def readings(self) -> Sequence[Reading]:
        """Every gauge reading that stands."""

    def measured(self, measure: Measure) -> float | None:
        """The largest value entered, SI; None where nothing was measured."""

    def smallest(self, measure: Measure) -> float | None:
        """The smallest value entered, SI; None where nothing was measured."""

    def limit(self, limit: Limit) -> float:
        """This engine's figure, SI: the maker's where the case gives it, else typical."""


Words = frozenset[Finding]


@dataclass(frozen=True, slots=True, eq=False)
class Example:
    """A situation a rule is tried on: findings there and not there, readings, measures."""

    has: frozenset[Finding] = frozenset()
    lacks: frozenset[Finding] = frozenset()
    readings: tuple[Reading, ...] = ()
    measures: tuple[tuple[Measure, float], ...] = ()


def case_of(
    *has: Finding,
    lacks: Iterable[Finding] = (),
    readings: Iterable[Reading] = (),
    measures: dict[Measure, float] | None = None,
) -> Example:
    """An example in a rule's papers."""
    return Example(
        frozenset(has), frozenset(lacks), tuple(readings), tuple((measures or {}).items())
    )


@dataclass(frozen=True, slots=True, eq=False)
class Rule:
    """One small function that says what it knows, with its papers.

    ``catches``: situations in which it must speak, or, for a rule of links, findings that
    must make its causes likelier. ``spares``: near misses in which it must stay silent, or
    must leave its causes less likely than in every catch.
    """

    id: str
    station: Station
    does: Callable[[Known], Conclusions]
    source: Source
    catches: tuple[Example, ...]
    spares: tuple[Example, ...]
    says: str
    text: str


RuleBody = Callable[[Known], Conclusions]


def rules_of(station: Station) -> Callable[..., Callable[[RuleBody], Rule]]:
    """Give one station's ``rule`` decorator; the rule's id is the function's name."""

    def rule(
        *, source: Source, catches: Sequence[Example], spares: Sequence[Example]
    ) -> Callable[[RuleBody], Rule]:
        def wrap(body: RuleBody) -> Rule:
            text = inspect.cleandoc(body.__doc__ or "")
            return Rule(
                id=body.__name__,
                station=station,
                does=body,
                source=source,
                catches=tuple(catches),
                spares=tuple(spares),
                says=text.split("\n", 1)[0],
                text=text,
            )

        return wrap

    return rule
