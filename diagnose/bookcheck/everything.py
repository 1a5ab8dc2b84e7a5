"""The whole check: every room's result in order, and the causes that look alike."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from diagnose.bookcheck.access import access
from diagnose.bookcheck.distinguishability import Likeness, alike, reached
from diagnose.bookcheck.duplicates import doubles, strengths
from diagnose.bookcheck.examples import examples, never_fired
from diagnose.bookcheck.names import names
from diagnose.bookcheck.shapes import Result, Whole
from diagnose.bookcheck.sources import sources
from diagnose.inference.chaining import Facts
from knowledge.rule_api import Statement

CHECKS: tuple[Callable[[Whole], Result], ...] = (
    names,
    sources,
    strengths,
    doubles,
    access,
    reached,
    examples,
)


@dataclass(frozen=True, slots=True)
class Checked:
    """What came of it."""

    results: tuple[Result, ...]
    alike: Likeness
    cases: int  #: how many the rules were tried on
    silent: tuple[Statement, ...]  #: rules and link groups that fired in none of them

    @property
    def faults(self) -> int:
        """How many things are wrong."""
        return sum(len(r.faults) for r in self.results)


def everything(whole: Whole, cases: Mapping[str, Facts]) -> Checked:
    """Check the book; ``cases`` are facts of real jobs, to see which rules they never need."""
    results = tuple(check(whole) for check in CHECKS)
    silent = tuple(never_fired(whole.book, cases)) if cases else ()
    return Checked(results, alike(whole), len(cases), silent)
