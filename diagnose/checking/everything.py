"""The whole check: every room's result in order, and the causes that look alike."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from diagnose.chaining import Facts
from diagnose.checking.access import access
from diagnose.checking.apart import Likeness, alike, reached
from diagnose.checking.doubles import doubles, strengths
from diagnose.checking.names import names
from diagnose.checking.papers import never_fired, papers
from diagnose.checking.shapes import Result, Whole
from diagnose.checking.sources import sources
from knowledge.rulebook import Rule

CHECKS: tuple[Callable[[Whole], Result], ...] = (
    names,
    sources,
    strengths,
    doubles,
    access,
    reached,
    papers,
)


@dataclass(frozen=True, slots=True)
class Checked:
    """What came of it."""

    results: tuple[Result, ...]
    alike: Likeness
    cases: int  #: how many the rules were tried on
    silent: tuple[Rule, ...]  #: rules that spoke in none of them

    @property
    def faults(self) -> int:
        """How many things are wrong."""
        return sum(len(r.faults) for r in self.results)


def everything(whole: Whole, cases: Mapping[str, Facts]) -> Checked:
    """Check the book; ``cases`` are facts of real jobs, to see which rules they never need."""
    results = tuple(check(whole) for check in CHECKS)
    silent = tuple(never_fired(whole.book, cases)) if cases else ()
    return Checked(results, alike(whole), len(cases), silent)
