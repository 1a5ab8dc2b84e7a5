"""Simulated jobs on which plans are tried: one true cause, findings drawn from the book's network.

A job is drawn under some network (the book's own, or with every prior, leak and strength off by
up to a factor either way), entered as a person would, and then worked on by a mechanic
who sees what is there. The judge knows the network it was drawn from: the job is done when what
has been seen makes the true cause 0.9 likely by that network. All orders meet the same judge.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import cache

import numpy as np

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from diagnose.inference.elimination import TooEntangledError, posterior
from diagnose.inference.network import Network
from diagnose.planning.access_tree import AccessTree
from diagnose.planning.single_cause import Array, SingleCauseModel, single_cause_model
from knowledge.book import the_book
from knowledge.model import Finding, Kind, Stage
from knowledge.work import Access, Inspection

CONFIRMED = 0.9
REPORTED_IF_THERE, REPORTED_IF_NOT = 0.7, 0.1  #: how readily an owner reports a thing unasked
_ABOUT = ("pressure", "gauge", "needle", "lamp")
_BOOK = the_book()
_COMPLAINTS = [f for f in _BOOK.findings.values() if f.kind is Kind.SEEN and f.stage is Stage.KNOWN]


@dataclass(frozen=True, eq=False)
class ImaginedJob:
    """What a mechanic meets: the true cause, what is there, what was entered."""

    cause: str
    there: dict[str, bool]
    answer: Diagnosis
    judge: SingleCauseModel  #: single-cause model of the network the job was drawn from


@cache
def _plain(layout: str) -> Diagnosis:
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n'
    return Diagnosis(_BOOK, from_text(text, None, _BOOK))


def off(network: Network, factor: float, rng: random.Random) -> Network:
    """The network with every number off by up to ``factor`` either way, evenly in its logarithm."""

    def wrong(p: float, most: float) -> float:
        return float(min(most, p * factor ** rng.uniform(-1.0, 1.0)))

    return Network(
        {n: wrong(p, 0.9) for n, p in network.prior.items()},
        {n: wrong(p, 0.5) for n, p in network.leak.items()},
        {
            n: {parent: wrong(q, 0.99) for parent, q in links.items()}
            for n, links in network.parents.items()
        },
        network.inhibitors,
    )


def _with_numbers_of(network: Network, other: Network) -> Network:
    """The shape of a case's network with another's numbers where it has them."""
    return Network(
        {n: other.prior.get(n, p) for n, p in network.prior.items()},
        {n: other.leak.get(n, p) for n, p in network.leak.items()},
        {
            n: {p: other.parents.get(n, {}).get(p, q) for p, q in links.items()}
            for n, links in network.parents.items()
        },
        network.inhibitors,
    )


def _happens(network: Network, cause: str, rng: random.Random) -> dict[str, bool]:
    """What is there when this cause holds and no other."""
    there: dict[str, bool] = {}
    for node in network.order:
        if node in network.prior:
            there[node] = node == cause
        else:
            there[node] = rng.random() < network.chance(node, there)
    return there


def draw(rng: random.Random, factor: float = 1.0) -> ImaginedJob:
    """One job on any of the book's layouts, with a complaint about pressure or its gauge."""
    while True:
        layout = rng.choice([name for name in _BOOK.layouts if name != "unknown"])
        network = _plain(layout).inference.network
        true = off(network, factor, rng) if factor != 1.0 else network
        known = [c for c in true.prior if c != "not_in_the_book"]
        cause = rng.choices(known, [true.prior[c] for c in known])[0]
        there = _happens(true, cause, rng)
        reported = [
            (f, there[f.id])
            for f in _COMPLAINTS
            if f.id in there
            and rng.random() < (REPORTED_IF_THERE if there[f.id] else REPORTED_IF_NOT)
        ]
        if not any(seen and any(w in f.says + f.asks for w in _ABOUT) for f, seen in reported):
            continue
        answer = Diagnosis(_BOOK, from_text(_case_text(layout, reported), None, _BOOK))
        try:
            judge = answer.planner.single_cause_model
            if factor != 1.0:
                network = _with_numbers_of(answer.inference.network, true)
                judge = single_cause_model(
                    network, posterior(network, answer.inference.evidence).marginal
                )
        except TooEntangledError:
            continue
        if cause in judge.causes and cause in answer.planner.single_cause_model.causes:
            return ImaginedJob(cause, there, answer, judge)


def _case_text(layout: str, reported: list[tuple[Finding, bool]]) -> str:
    entries = (
        f'[[finding]]\nno = {i}\nwhat = "{f.id}"\nstate = "{"present" if seen else "absent"}"\n'
        for i, (f, seen) in enumerate(reported, 1)
    )
    return f'schema = 1\n[engine]\nlayout = "{layout}"\n' + "".join(entries)


@dataclass
class Mechanic:
    """One person at one simulated job: what was seen, what stands open, minutes spent."""

    job: ImaginedJob
    answered: set[Finding] = field(default_factory=set)
    opened: frozenset[Access] = frozenset()
    done: set[Inspection] = field(default_factory=set)
    minutes: float = 0.0
    belief: Array = field(init=False)  #: the tool's
    judged: Array = field(init=False)  #: the judge's
    may_run: bool = field(init=False)
    tree: AccessTree = field(init=False)
    openings: dict[tuple[Access, frozenset[Access]], float] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.answered = set(self.job.answer.planner.answered)
        self.belief = np.log(np.maximum(self.job.answer.planner.single_cause_model.weight, 1e-300))
        self.judged = np.log(np.maximum(self.job.judge.weight, 1e-300))
        self.may_run = self.job.answer.may_run
        self.tree = self.job.answer.planner.tree

    @property
    def weight(self) -> Array:
        """The tool's beliefs now."""
        return _normal(self.belief)

    def confirmed(self) -> bool:
        """Whether the judge takes the true cause as confirmed."""
        at = self.job.judge.causes.index(self.job.cause)
        return float(_normal(self.judged)[at]) >= CONFIRMED

    def may(self, check: Inspection) -> bool:
        """Whether the check can be done now and can still show something."""
        return (
            check not in self.done
            and (self.may_run or not check.needs_running)
            and check.access in self.tree.openings
            and self.tree.may_do(check, self.opened)
            and any(f not in self.answered and f.id in self.job.there for f in check.reveals)
        )

    def cost(self, check: Inspection) -> float:
        """Minutes of the check with what must still be opened for it."""
        key = check.access, self.opened
        if key not in self.openings:
            way = self.tree.way(*key) or ()
            self.openings[key] = self.tree.opening_minutes(way)
        return self.openings[key] + self.tree.check_minutes(check)

    def do(self, check: Inspection) -> None:
        """Open what is needed, look, and learn."""
        self.minutes += self.cost(check)
        self.done.add(check)
        self.opened = self.tree.after(check, self.opened)
        for finding in check.reveals:
            if finding in self.answered:
                continue
            self.answered.add(finding)
            if finding.id in self.job.there:
                seen = self.job.there[finding.id]
                self.belief = self.belief + _told(
                    self.job.answer.planner.single_cause_model, finding.id, seen
                )
                self.judged = self.judged + _told(self.job.judge, finding.id, seen)


def _normal(logs: Array) -> Array:
    full: Array = np.exp(logs - logs.max())
    return np.asarray(full / full.sum())


def _told(table: SingleCauseModel, finding: str, seen: bool) -> Array:
    if finding not in table.shows:
        return np.zeros(len(table.causes))
    shows = np.clip(table.shows[finding], 1e-12, 1.0 - 1e-12)
    return np.asarray(np.log(shows) if seen else np.log1p(-shows))


Order = Callable[[Mechanic], Iterator[Inspection]]


def worked(job: ImaginedJob, order: Order) -> float | None:
    """Minutes until the judge is content; None where the order ends before."""
    person = Mechanic(job)
    for check in order(person):
        if person.may(check):
            person.do(check)
            if person.confirmed():
                return person.minutes
    return None
