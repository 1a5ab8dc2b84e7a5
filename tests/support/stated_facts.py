"""Facts that a text states, in the language of a case file, and what follows from them.

A fact is one table of a case file, or one feature of the engine. A reading with the usual pressure
is two facts. ``follow`` runs the rules of the book on a few facts.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from functools import cache
from typing import Any, NamedTuple

from diagnose.case.loading import from_tables
from diagnose.inference.chaining import infer
from knowledge.book import the_book
from knowledge.model import Kind as FindingKind
from knowledge.model import State

#: tables of a case file, by name: ``{"engine": {...}, "finding": [{...}], ...}``
Tables = Mapping[str, Any]
UNKNOWN = "unknown"  #: the layout of an engine of which nothing is known
LEAST_SURE = 0.5  #: least certainty of a finding that counts as one that follows


class Kind(StrEnum):
    """Kinds of fact, as they are counted."""

    FINDING = "finding"
    MEASURED = "measured value"
    BEHAVIOUR = "behaviour"
    READING = "reading"
    USUAL = "usual pressure"
    TRIAL = "trial"
    EARLIER = "earlier work"
    FEATURE = "feature"
    LAYOUT = "layout"  #: of the engine, proposed


class Seen(NamedTuple):
    """The id of a finding and "present" or "absent"."""

    finding: str
    state: str


@dataclass(frozen=True, eq=False)
class Fact:
    """One fact: its kind, what it is about, and the other fields of its table.

    ``about``: the id of a finding, measure, trial, area or feature; of a behaviour, what shows; of
    a reading, its pressure. Facts of the same words are equal.
    """

    kind: Kind
    about: str
    fields: Mapping[str, Any] = field(default_factory=dict)

    def __str__(self) -> str:
        rest = ", ".join(f"{k} {v}" for k, v in self.fields.items())
        return f"{self.kind}: {self.about}" + (f" ({rest})" if rest else "")

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Fact) and str(self) == str(other)

    def __hash__(self) -> int:
        return hash(str(self))


#: of each kind: its table, and the field of that table that says what it is about
_TABLES = {
    Kind.FINDING: ("finding", "what"),
    Kind.MEASURED: ("finding", "what"),
    Kind.BEHAVIOUR: ("behaviour", "shows"),
    Kind.READING: ("reading", "pressure"),
    Kind.USUAL: ("baseline", "pressure"),
    Kind.TRIAL: ("trial", "what"),
    Kind.EARLIER: ("earlier", "what"),
}
#: how a list of sentences names what a fact is about, and the kind it makes
_KEYS = {
    "measured": Kind.MEASURED,
    "shows": Kind.BEHAVIOUR,
    "pressure": Kind.READING,
    "trial": Kind.TRIAL,
    "earlier": Kind.EARLIER,
}
_STATES = {"present": "present", "absent": "absent"}
_FEATURES = {"has": "present", "lacks": "absent"}
_NOT_COUNTED = (
    "no",
    "note",
    "learned",
    "sure",
    "where",
    "when",
    "by",
    "replaces",
    "state",
    "words",
)


def from_state(table: Mapping[str, Any]) -> Iterator[Fact]:
    """The facts in one table of a list of sentences.

    Raises ValueError where the table names no kind of fact.
    """
    rest = dict(table)
    for key, state in _STATES.items():
        if key in rest:
            yield Fact(Kind.FINDING, rest.pop(key), {"state": state})
            return
    for key, state in _FEATURES.items():
        if key in rest:
            yield Fact(Kind.FEATURE, rest.pop(key), {"state": state})
            return
    for key, kind in _KEYS.items():
        if key in rest:
            yield from _split(kind, rest.pop(key), rest)
            return
    raise ValueError(f"no kind of fact: {table}")


def from_states(tables: Iterable[Mapping[str, Any]]) -> list[Fact]:
    """The facts in tables of a list of sentences."""
    return [fact for table in tables for fact in from_state(table)]


def in_tables(tables: Tables) -> list[Fact]:
    """The facts in the tables of a case file; entries withdrawn or unknown are none."""
    engine = tables.get("engine", {})
    found = [
        Fact(Kind.FEATURE, name, {"state": state})
        for key, state in _FEATURES.items()
        for name in engine.get(key, ())
    ]
    if (layout := engine.get("layout", UNKNOWN)) != UNKNOWN:
        found.append(Fact(Kind.LAYOUT, layout))
    for kind in (k for k in _TABLES if k is not Kind.MEASURED):
        table, about = _TABLES[kind]
        for entry in tables.get(table, ()):
            found += _of_entry(kind, entry, about)
    return found


def _of_entry(kind: Kind, entry: Mapping[str, Any], about: str) -> Iterator[Fact]:
    state = entry.get("state")
    if state in ("unknown", "withdrawn") or entry.get("result") == "not tried":
        return
    rest = {k: v for k, v in entry.items() if k not in _NOT_COUNTED and k != about}
    rest.pop("where", None)
    if kind is Kind.FINDING and entry.get("value") is not None:
        yield Fact(Kind.MEASURED, entry[about], {"value": entry["value"]})
    elif kind is Kind.FINDING:
        is_feature = the_book().findings[entry[about]].kind is FindingKind.LAYOUT
        kind = Kind.FEATURE if is_feature else Kind.FINDING
        place = {"where": entry["where"]} if entry.get("where") else {}
        yield Fact(kind, entry[about], {"state": state or "present", **place})
    else:
        yield from _split(kind, entry[about], rest)


def _split(kind: Kind, about: str, rest: dict[str, Any]) -> Iterator[Fact]:
    usual = rest.pop("usual", None)
    yield Fact(kind, about, {k: v for k, v in rest.items() if v not in (None, [], ())})
    if usual is not None:
        yield Fact(Kind.USUAL, usual)


def as_tables(facts: Iterable[Fact]) -> dict[str, Any]:
    """The tables of a case file that hold these facts.

    >>> as_tables([Fact(Kind.FINDING, "oil_milky", {"state": "absent"})])["finding"]
    [{'no': 1, 'what': 'oil_milky', 'state': 'absent'}]
    """
    engine: dict[str, Any] = {"layout": UNKNOWN, "has": [], "lacks": []}
    tables: dict[str, Any] = {"schema": 1, "job": {"title": "text"}, "engine": engine}
    for number, fact in enumerate(dict.fromkeys(facts), 1):
        if fact.kind is Kind.FEATURE:
            engine["has" if fact.fields["state"] == "present" else "lacks"].append(fact.about)
            continue
        if fact.kind is Kind.LAYOUT:
            engine["layout"] = fact.about
            continue
        table, about = _TABLES[fact.kind]
        entry = {"no": number, about: fact.about, **fact.fields}
        tables.setdefault(table, []).append(entry)
    return tables


def follow(facts: Sequence[Fact]) -> frozenset[Seen]:
    """The findings that these facts state, and those that the rules derive from them.

    Raises BadCaseError where the facts make no case.
    """
    tables = as_tables(facts)
    case = from_tables(tables, None, the_book())
    observed = case.facts()
    seen = {
        Seen(f.id, o.state.value) for f, o in observed.observations.items() if o.sure >= LEAST_SURE
    }
    derived = infer(the_book().statements, observed).derived
    seen |= {Seen(d.finding.id, d.state.value) for d in derived if d.sure >= LEAST_SURE}
    return frozenset(s for s in seen if s.state in (State.PRESENT.value, State.ABSENT.value))


@cache
def follow_alone(fact: Fact) -> frozenset[Seen]:
    """What follows from one fact by itself, without what holds of every case."""
    return follow([fact]) - follow([])
