"""What was understood: facts as entries of a case, each with the words it came from."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field

Value = str | bool | list[str]
Span = tuple[int, int]
#: tables of a case a fact goes into; "layout", "oil" and "limit" are fields of its [engine], "engine" a
#: figure of its build that no command writes
TABLES = (
    "layout",
    "oil",
    "limit",
    "finding",
    "reading",
    "baseline",
    "behaviour",
    "trial",
    "earlier",
    "bearing",
    "work",
    "engine",
)


def is_inside(span: Span, others: Sequence[Span]) -> bool:
    """Whether a piece of the text lies in one of others."""
    return any(first <= span[0] and span[1] <= last for first, last in others)


@dataclass(frozen=True, slots=True)
class Fact:
    """One entry: its table, its fields as a case file has them, where its words stand.

    ``sure``: 0.5 to 1, less where the person doubts it.
    """

    table: str
    fields: Mapping[str, Value]
    spans: tuple[Span, ...]
    sure: float = 1.0

    @property
    def name(self) -> str:
        """What it is about: an id of the book, or what shows, or its table."""
        return str(self.fields.get("what") or self.fields.get("shows") or self.table)

    @property
    def state(self) -> str:
        """Present or absent, the result of a trial, what was done; empty for a reading."""
        return str(
            self.fields.get("state") or self.fields.get("result") or self.fields.get("done") or ""
        )

    @property
    def is_present(self) -> bool:
        """Whether it is a finding that is there."""
        return self.fields.get("state") == "present"

    @property
    def is_absent(self) -> bool:
        """Whether it is a finding that is denied."""
        return self.fields.get("state") == "absent"

    @property
    def value(self) -> str:
        """The pressure of a reading, a measured value, the layout or the oil's grade; else empty."""
        given = (self.fields.get(k) for k in ("pressure", "value", "layout", "grade", "count"))
        return str(next((v for v in given if v), ""))

    @property
    def when(self) -> str:
        """When it shows, how long before it was done, or where it was measured."""
        during = self.fields.get("during")
        parts = [
            str(self.fields.get(k) or "")
            for k in ("oil", "rpm", "coolant", "before", "since", "where")
        ]
        parts[2:2] = [*during] if isinstance(during, list) else []
        return ", ".join(p for p in parts if p)

    @property
    def hull(self) -> Span:
        """From its first word to its last."""
        return min(a for a, _ in self.spans), max(b for _, b in self.spans)

    def is_within(self, others: Sequence[Span]) -> bool:
        """Whether all its words are words of others: "20 psi flat out" is no hard work."""
        return all(is_inside(span, others) for span in self.spans)

    @property
    def short(self) -> str:
        """The fact in a few words, for examples and tests.

        >>> Fact("trial", {"what": "new_pump", "result": "no difference"}, ()).short
        'trial new_pump no difference'
        """
        listed = ("course", "never")
        more = [", ".join(v) for k in listed if isinstance(v := self.fields.get(k), list)]
        parts = [self.table, *([] if self.name == self.table else [self.name])]
        parts += [self.state, self.value, self.when, str(self.fields.get("onset") or ""), *more]
        return " ".join(p for p in parts if p)


@dataclass(frozen=True, slots=True)
class Understanding:
    """A text, the facts read out of it in the order of their words, and what is left over."""

    text: str
    facts: tuple[Fact, ...] = ()
    unread: tuple[Span, ...] = ()

    def words(self, fact: Fact) -> str:
        """The words a fact came from."""
        return " … ".join(map(self._piece, fact.spans))

    @property
    def not_understood(self) -> tuple[str, ...]:
        """The pieces of the text that nothing was made of."""
        return tuple(map(self._piece, self.unread))

    def _piece(self, span: Span) -> str:
        """A piece of the text in one line, up to the end of its last word ("today" read as "now")."""
        first, last = span
        while first < last < len(self.text) and self.text[last - 1 : last + 1].isalpha():
            last += 1
        return " ".join(self.text[first:last].split())


@dataclass(frozen=True, slots=True)
class Example:
    """A sentence, and the short forms of all facts that a reader takes from it."""

    text: str
    facts: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Reader:
    """A rule that reads one kind of fact, with the examples that hold for it alone."""

    name: str
    read: Callable[..., Iterator[Fact]]
    examples: tuple[Example, ...] = field(default=())


def reader(
    examples: Mapping[str, Sequence[str]],
) -> Callable[[Callable[..., Iterator[Fact]]], Reader]:
    """Make a function a rule; ``examples``: sentences with all facts it reads, none in near misses."""

    def made(function: Callable[..., Iterator[Fact]]) -> Reader:
        listed = tuple(Example(text, tuple(facts)) for text, facts in examples.items())
        return Reader(function.__name__, function, listed)

    return made


def said_once(facts: list[Fact]) -> Iterator[Fact]:
    """The readings, without those that another says with more of when it was."""
    for k, fact in enumerate(facts):
        others = (f for n, f in enumerate(facts) if n != k and (n > k or f.fields != fact.fields))
        if not any(_says_more(f.fields, fact.fields) for f in others):
            yield fact


def _says_more(one: Mapping[str, Value], other: Mapping[str, Value]) -> bool:
    """Whether everything in the fields of the other reading is in those of this one."""
    return all(
        set(value) <= set(_listed(one.get(key)))
        if isinstance(value, list)
        else one.get(key) == value
        for key, value in other.items()
    )


def _listed(value: Value | None) -> list[str]:
    return value if isinstance(value, list) else []
