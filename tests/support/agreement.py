"""How far facts read from a text agree with the facts it states: precision and recall by kind.

When two facts agree:

- finding, feature: same id and state. Measured value: same measure, the value within 2 %.
- behaviour: the same shows, and nothing said of it contradicts; half where one says more.
- reading: the pressure within rounding (half a psi or 3 %), and nothing said of when contradicts;
  half where one says more of when, takes a word for a figure, or a bound for the figure itself. Usual pressure: within rounding.
- layout: it contradicts no feature that is stated; not counted where no feature is.
- trial: same id and result. Earlier work: same area.

The same can be said as a finding or as a behaviour, trial or earlier work. So a fact without a
partner counts as read where all that follows from it by the rules was read or follows (half where
some of it does, if it is a behaviour); likewise a fact read beside what was stated. A reading of
nothing is the same as "the gauge reads zero".
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, field
from itertools import product
from typing import Any

from diagnose.case.gauge_looks import SPEEDS
from diagnose.case.pressures import pressure_of
from knowledge.book import the_book
from knowledge.reports.words import Since
from knowledge.units import DIMENSIONS, PSI, SPEED, TEMPERATURE, UnitError, parse
from tests.support.stated_facts import Fact, Kind, Seen, follow, follow_alone

ROUNDING = 0.03  #: share of a pressure
LEAST_ROUNDING = 0.5 * PSI  #: Pa
NEAR = 0.02  #: share of a measured value
SAME_TIME = 0.1  #: share of a time
HALF = 0.5
#: what a reading of nothing says
ZERO = {Seen("gauge_reads_zero", "present"), Seen("direct_gauge_zero", "present")}
WHEN = ("rpm", "oil", "coolant", "gauge")  #: what is said of a reading besides its pressure
#: kinds that rules turn into findings one by one
_SPEAKING = (Kind.BEHAVIOUR, Kind.TRIAL, Kind.EARLIER)
#: what "since work" can be said as
_WORK = {Since.WORK, Since.FIRST_START, Since.OIL_CHANGE}
#: circumstances that say the same as a word for speed or heat
_AS_SPEED = {"idle": "idle", "at speed": "cruise", "off idle": "off idle"}
_AS_HEAT = {"hot": "hot", "cold": "cold", "warming up": "warming"}


@dataclass
class Tally:
    """Facts of one kind, each counted 0, 0.5 or 1."""

    stated: int = 0  #: facts that the text states
    found: float = 0.0  #: of these, read
    read: int = 0  #: facts that were read
    right: float = 0.0  #: of these, stated

    @property
    def precision(self) -> float:
        """Share of what was read that is right; 1 where nothing was read."""
        return self.right / self.read if self.read else 1.0

    @property
    def recall(self) -> float:
        """Share of what is stated that was read; 1 where nothing is stated."""
        return self.found / self.stated if self.stated else 1.0

    def add(self, other: Tally) -> None:
        """Add the counts of another tally."""
        self.stated += other.stated
        self.found += other.found
        self.read += other.read
        self.right += other.right


@dataclass
class Outcome:
    """Tallies by kind, and the facts that were missed or are wrong."""

    by_kind: dict[Kind, Tally] = field(default_factory=lambda: {k: Tally() for k in Kind})
    missed: list[Fact] = field(default_factory=list)
    wrong: list[Fact] = field(default_factory=list)

    @property
    def all(self) -> Tally:
        """The sum over kinds."""
        total = Tally()
        for tally in self.by_kind.values():
            total.add(tally)
        return total


def outcome(
    read: Sequence[Fact], stated: Sequence[Fact], may: Collection[str] = frozenset()
) -> Outcome:
    """Compare what was read with what is stated.

    ``may``: what may be read as well, by id or word: it counts neither for nor against.
    """
    result = Outcome()
    read, stated = list(dict.fromkeys(read)), list(dict.fromkeys(stated))
    pairs = _pairs(read, stated, may)
    all_read, all_stated = _seen(read), _seen(stated)
    features = [f for f in stated if f.kind is Kind.FEATURE]
    for place, fact in enumerate(stated):
        got = max((w for _, j, w in pairs if j == place), default=_covered(fact, all_read))
        tally = result.by_kind[fact.kind]
        tally.stated += 1
        tally.found += got
        if not got:
            result.missed.append(fact)
    for place, fact in enumerate(read):
        if fact.kind is Kind.LAYOUT:
            if not features:
                continue
            got = float(not _contradicts(fact, features))
        else:
            got = max((w for i, _, w in pairs if i == place), default=_covered(fact, all_stated))
        if not got and _may(fact, may):
            continue
        tally = result.by_kind[fact.kind]
        tally.read += 1
        tally.right += got
        if not got:
            result.wrong.append(fact)
    return result


def total(outcomes: Iterable[Outcome]) -> Outcome:
    """The sum of outcomes."""
    result = Outcome()
    for each in outcomes:
        for kind, tally in each.by_kind.items():
            result.by_kind[kind].add(tally)
        result.missed += each.missed
        result.wrong += each.wrong
    return result


def _pairs(
    read: Sequence[Fact], stated: Sequence[Fact], may: Collection[str]
) -> list[tuple[int, int, float]]:
    """Places of facts read and stated that agree, each used once, the best pairs first."""
    weights = [
        (agreement(a, b, may), i, j)
        for (i, a), (j, b) in product(enumerate(read), enumerate(stated))
        if a.kind is b.kind
    ]
    left, right, pairs = set(), set(), []
    for weight, i, j in sorted(weights, key=lambda w: (-w[0], w[1], w[2])):
        if weight and i not in left and j not in right:
            left.add(i)
            right.add(j)
            pairs.append((i, j, weight))
    return pairs


def agreement(read: Fact, stated: Fact, may: Collection[str] = frozenset()) -> float:
    """How far two facts of one kind agree: 0, 0.5 or 1.

    >>> a = Fact(Kind.BEHAVIOUR, "low", {"during": ["hot"]})
    >>> agreement(a, Fact(Kind.BEHAVIOUR, "low", {"during": ["hot", "idle"]}))
    0.5
    """
    match stated.kind:
        case Kind.READING:
            return _of_readings(read, stated, may)
        case Kind.USUAL:
            return float(_same_pressure(read.about, stated.about))
        case Kind.BEHAVIOUR:
            return _of_behaviours(read, stated, may) if read.about == stated.about else 0.0
        case Kind.MEASURED:
            return float(read.about == stated.about and _same_value(read, stated))
        case Kind.TRIAL:
            key = "result"
        case Kind.EARLIER:
            return float(read.about == stated.about)
        case _:
            key = "state"
    return float(read.about == stated.about and read.fields.get(key) == stated.fields.get(key))


def _of_behaviours(read: Fact, stated: Fact, may: Collection[str]) -> float:
    a, b = _said(read), _said(stated)
    if a["during"] & b["never"] or a["never"] & b["during"]:
        return 0.0
    full = all(a[k] - set(may) == b[k] - set(may) for k in ("during", "never", "course"))
    for key in ("onset", "since", "gauge", "lasts", "only"):
        one, other = a[key], b[key]
        if one is not None and other is not None:
            if not _same(key, one, other):
                return 0.0
        elif one != other and str(one or other) not in may:
            full = False
    return 1.0 if full else HALF


def _said(fact: Fact) -> dict[str, Any]:
    """What is said of a behaviour; the panel gauge is what nothing says."""
    said: dict[str, Any] = {k: set(fact.fields.get(k, ())) for k in ("during", "never", "course")}
    said |= {k: fact.fields.get(k) or None for k in ("onset", "since", "lasts", "only")}
    gauge = fact.fields.get("gauge")
    said["gauge"] = None if gauge == "panel" or fact.about == "lamp" else gauge
    return said


def _same(key: str, one: Any, other: Any) -> bool:
    if key == "lasts":
        a, b = _seconds(one), _seconds(other)
        return abs(a - b) <= SAME_TIME * max(a, b)
    if key == "since" and {one, other} <= _WORK:
        return True
    return bool(one == other)


def _seconds(text: str) -> float:
    return parse(text, DIMENSIONS["time"])


def _of_readings(read: Fact, stated: Fact, may: Collection[str]) -> float:
    if not _same_pressure(read.about, stated.about):
        return 0.0
    a, b = _when(read), _when(stated)
    agrees = min((_same_when(a[k], b[k]) for k in WHEN if k in a and k in b), default=1.0)
    unequal = [k for k in WHEN if (k in a) != (k in b) and a.get(k, b.get(k)) not in may]
    circumstances = (a["during"] ^ b["during"]) - set(may)
    bound = pressure_of(read.about).bound is pressure_of(stated.about).bound
    return agrees if bound and not unequal and not circumstances else min(agrees, HALF)


def _when(fact: Fact) -> dict[str, Any]:
    """Speed, oil and coolant temperature, and circumstances; words in one spelling."""
    given = {k: v for k, v in fact.fields.items() if k in ("rpm", "oil", "coolant")}
    if fact.fields.get("gauge") == "direct":
        given["gauge"] = "direct"
    during = set(fact.fields.get("during", ()))
    given["during"] = during
    if rpm := given.get("rpm"):
        given["rpm"] = str(SPEEDS.get(rpm, rpm))
        if rpm == "hot idle":
            given.setdefault("oil", "hot")
    for key, words in (("rpm", _AS_SPEED), ("oil", _AS_HEAT)):
        for word in [w for w in during if w in words]:
            during.discard(word)
            given.setdefault(key, words[word])
    return given


def _same_when(one: str, other: str) -> float:
    """1 for the same, 0.5 for a figure beside a word, 0 for a contradiction."""
    if one == other or {one, other} == {"hot", "very hot"}:
        return 1.0
    for dimension, near in ((SPEED, ROUNDING), (TEMPERATURE, NEAR)):
        try:
            a, b = parse(one, dimension), parse(other, dimension)
        except UnitError:
            continue
        return float(abs(a - b) <= near * max(a, b))
    return HALF if one[:1].isdigit() != other[:1].isdigit() else 0.0


def _same_pressure(one: str, other: str) -> bool:
    a, b = pressure_of(one).value, pressure_of(other).value
    return abs(a - b) <= max(LEAST_ROUNDING, ROUNDING * max(a, b))


def _same_value(read: Fact, stated: Fact) -> bool:
    dimension = the_book().measures[stated.about].dimension
    a, b = (parse(f.fields["value"], DIMENSIONS[dimension]) for f in (read, stated))
    return abs(a - b) <= NEAR * max(a, b)


def _seen(facts: Sequence[Fact]) -> frozenset[Seen]:
    """What follows from all of these facts, and from each by itself."""
    alone = (follow_alone(f) for f in facts if f.kind in _SPEAKING)
    return follow(facts).union(*alone)


def _covered(fact: Fact, seen: Collection[Seen]) -> float:
    """How far a fact without a partner is among what was seen: 0, 0.5 or 1."""
    if fact.kind is Kind.FINDING or fact.kind is Kind.FEATURE:
        return float(Seen(fact.about, fact.fields["state"]) in seen)
    if fact.kind is Kind.READING and pressure_of(fact.about).value == 0.0:
        return float(bool(follow_alone(fact) & ZERO & set(seen)))
    if fact.kind not in _SPEAKING:
        return 0.0
    follows = follow_alone(fact)
    if follows and follows <= set(seen):
        return 1.0
    return HALF if fact.kind is Kind.BEHAVIOUR and follows & set(seen) else 0.0


def _contradicts(layout: Fact, features: Sequence[Fact]) -> bool:
    """Whether a layout gives the other state of a feature."""
    seen = dict(follow([layout]))
    return any(seen.get(f.about, f.fields["state"]) != f.fields["state"] for f in features)


def _may(fact: Fact, may: Collection[str]) -> bool:
    if fact.kind in (Kind.READING, Kind.USUAL):
        return "reading" in may
    return fact.about in may
