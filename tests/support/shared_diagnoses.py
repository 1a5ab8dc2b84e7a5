"""Parts of diagnoses that the tests of one process share: equal cases are inferred once.

So are the pressures of equal engines at equal speeds and temperatures.

Commands that tests call in this process, and tests that diagnose a case themselves, ask about the
same few dozen cases hundreds of times. A part is shared only between diagnoses of the same book
object and of cases that are equal in everything but the path of their file and what their
``[expect]`` holds, which nothing is inferred from. Commands in a process
of their own share nothing, nor does a test marked ``own_diagnoses``.
"""

from __future__ import annotations

import pickle
from collections import OrderedDict
from collections.abc import Callable, Hashable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from functools import cached_property
from typing import Any

from diagnose.diagnosis import Diagnosis
from diagnose.hydraulics import circuit
from diagnose.hydraulics.network import Network
from diagnose.hydraulics.ranges import FloatArray
from diagnose.reasoning.check_planner import CheckPlanner
from diagnose.reasoning.reasons import Reasons
from diagnose.teardown.plan import Plan
from knowledge.book import Book

MOST = {"once": 32, "again": 96}  #: cases kept at once; each takes a few megabytes
PARTS = ("inference", "reasons", "found", "planner")
#: what a part works out anew each time it is asked
ASKED = ((Reasons, "_leaving_out"), (CheckPlanner, "_suppose"))
PLANNED = ("line", "estimate")  #: of a plan: shared by plans of one planner and equal requests
SOLVED = "_balanced"  #: finds the pressure of a circuit
MOST_CIRCUITS = 2000  #: solved circuits kept at once; each takes some ten kilobytes
_solved: OrderedDict[bytes, FloatArray] = OrderedDict()
_own = [False]  #: whether every diagnosis is made anew just now
_Parts = dict[Hashable, object]
#: cases asked about once, and those asked about again: many of the first must not drive out these
_kept: dict[str, OrderedDict[Hashable, tuple[Book, _Parts]]] = {n: OrderedDict() for n in MOST}


def _parts_of(diagnosis: Diagnosis) -> _Parts:
    """Return what is kept for this diagnosis; it is looked for once."""
    own = vars(diagnosis)
    if "shared parts" not in own:
        own["shared parts"] = _looked_up(diagnosis)
    parts: _Parts = own["shared parts"]
    return parts


def _looked_up(diagnosis: Diagnosis) -> _Parts:
    """Return what is kept of this book, case, facts and learned rates; the oldest goes."""
    learned = None if diagnosis.learned is None else tuple(sorted(diagnosis.learned.items()))
    case = repr(replace(diagnosis.case, path=None, expect=None))
    facts = repr(diagnosis.case.facts(diagnosis.up_to))  # often the same at two stages
    key = (id(diagnosis.book), case, facts, learned)
    once, again = _kept["once"], _kept["again"]
    known = again.pop(key, None) or once.pop(key, None)
    to = "again" if known else "once"
    book, parts = known or (diagnosis.book, {})
    _kept[to][key] = book, parts  # the book stays, and so does its id
    if len(_kept[to]) > MOST[to]:
        _kept[to].popitem(last=False)
    return parts


def _property(owner: type, name: str, compute: Callable[[Any], object]) -> Any:
    found: cached_property[object] = cached_property(compute)
    found.__set_name__(owner, name)
    return found


def _shared(name: str, compute: Callable[[Diagnosis], object]) -> Any:
    """Return a cached property that computes a part unless an equal case has it already."""

    def part(self: Diagnosis) -> object:
        if _own[-1]:
            return compute(self)
        known = _parts_of(self)
        key = (name, self.may_run) if name == "planner" else name
        if key not in known:
            known[key] = compute(self)
        return known[key]

    return _property(Diagnosis, name, part)


def _asked_once(name: str, compute: Callable[[Any, object], object]) -> Any:
    """Return a method that keeps its answers, by what was asked, beside the values of its object."""

    def method(self: object, asked: object) -> object:
        if _own[-1]:
            return compute(self, asked)
        key = f"{name}({asked!r})"
        if key not in vars(self):
            vars(self)[key] = compute(self, asked)
        return vars(self)[key]

    return method


def _planned_once(name: str, compute: Callable[[Plan], object]) -> Any:
    """Return a cached property that computes a part of a plan unless its planner has it already."""

    def part(self: Plan) -> object:
        if _own[-1]:
            return compute(self)
        known, key = vars(self.answer.planner), f"plan {name} {self.request!r}"
        if key not in known:
            known[key] = compute(self)
        return known[key]

    return _property(Plan, name, part)


def _balanced_once(compute: Callable[[Network], FloatArray]) -> Callable[[Network], FloatArray]:
    """Return a function that solves a circuit unless an equal one is solved already."""

    def balanced(network: Network) -> FloatArray:
        if _own[-1]:
            return compute(network)
        key = pickle.dumps(network)
        root = _solved.pop(key, None)
        _solved[key] = compute(network) if root is None else root
        if len(_solved) > MOST_CIRCUITS:
            _solved.popitem(last=False)
        return _solved[key].copy()

    return balanced


def share() -> None:
    """Share the parts of diagnoses, plans and circuits in this process from now on."""
    setattr(circuit, SOLVED, _balanced_once(getattr(circuit, SOLVED)))
    for name in PARTS:
        setattr(Diagnosis, name, _shared(name, vars(Diagnosis)[name].func))
    for name in PLANNED:
        setattr(Plan, name, _planned_once(name, vars(Plan)[name].func))
    for kind, name in ASKED:
        setattr(kind, name, _asked_once(name, vars(kind)[name]))


@contextmanager
def own_diagnoses() -> Iterator[None]:
    """Make every diagnosis of the block anew."""
    _own.append(True)
    try:
        yield
    finally:
        _own.pop()
