"""Run every check of the book in order."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from diagnose.bookcheck.access import access
from diagnose.bookcheck.distinguishability import Likeness, alike, reached
from diagnose.bookcheck.duplicates import duplicates, strengths
from diagnose.bookcheck.examples import examples, never_fired
from diagnose.bookcheck.fault_proofs import fault_proofs
from diagnose.bookcheck.names import names
from diagnose.bookcheck.shapes import Result, Whole
from diagnose.bookcheck.sources import sources
from diagnose.inference.chaining import Facts
from knowledge.rule_api import Statement

CHECKS: tuple[Callable[[Whole], Result], ...] = (
    names,
    sources,
    strengths,
    duplicates,
    access,
    fault_proofs,
    reached,
    examples,
)


@dataclass(frozen=True, slots=True)
class Checked:
    """The results of all checks."""

    results: tuple[Result, ...]
    alike: Likeness
    cases: int  #: number of cases the rules were run on
    silent: tuple[Statement, ...]  #: rules and groups that fired in no case

    @property
    def faults(self) -> int:
        """Number of faults."""
        return sum(len(r.faults) for r in self.results)


def everything(whole: Whole, cases: Mapping[str, Facts]) -> Checked:
    """Check the book; ``cases``: facts of real jobs, to find rules that fire in none of them."""
    results = tuple(check(whole) for check in CHECKS)
    silent = tuple(never_fired(whole.book, cases)) if cases else ()
    return Checked(results, alike(whole), len(cases), silent)
