"""What sounds each alarm, found by trying: ``python -m tests.support.alarm_table`` prints it as CSV.

``tests/data/alarms.csv`` keeps the table as it was read through. A row holds a rule, a severity and
the findings that sound it, none of which can be left out. Alarms on readings or trials are not in
it.
"""

from __future__ import annotations

import csv
import sys
from collections.abc import Iterable, Iterator
from functools import cache
from itertools import combinations
from pathlib import Path
from typing import NamedTuple

from diagnose.inference.chaining import Facts, Observation, WorkingMemory
from knowledge.alarm import Alarm
from knowledge.book import the_book
from knowledge.model import Finding, State
from knowledge.rule_api import Rule

BOOK = the_book()
KEPT = Path(__file__).parents[1] / "data" / "alarms.csv"
MOST = 3  #: findings that are tried together


class Row(NamedTuple):
    """Findings that together, and not without one of them, sound an alarm of this severity."""

    rule: str
    severity: str
    present: tuple[str, ...]


def sounds(rule: Rule, present: Iterable[Finding]) -> tuple[frozenset[str], frozenset[Finding]]:
    """The severities of the rule's own alarms, and the findings it asked about."""
    memory = WorkingMemory(Facts({f: Observation(State.PRESENT) for f in present}))
    found = frozenset(c.severity.name for c in rule.does(memory) if isinstance(c, Alarm))
    return found, frozenset(memory.questions)


@cache
def asked(rule: Rule) -> tuple[Finding, ...]:
    """Every finding the rule can ask about: it asks more once something is there."""
    known: frozenset[Finding] = frozenset()
    more = sounds(rule, ())[1]
    while more - known:
        known |= more
        for finding in known:
            more |= sounds(rule, (finding,))[1]
    return tuple(sorted(known, key=lambda f: f.id))


def rows_of(rule: Rule) -> Iterator[Row]:
    """The smallest sets of findings that sound each of the rule's alarms."""
    found: list[tuple[str, frozenset[Finding]]] = []
    for many in range(1, MOST + 1):
        for chosen in combinations(asked(rule), many):
            for severity in sorted(sounds(rule, chosen)[0]):
                if not any(s == severity and less <= set(chosen) for s, less in found):
                    found.append((severity, frozenset(chosen)))
    for severity, present in found:
        yield Row(rule.id, severity, tuple(sorted(f.id for f in present)))


def tried() -> list[Row]:
    """The table as the rules are now."""
    return sorted(row for rule in BOOK.rules.values() for row in rows_of(rule))


def kept() -> list[Row]:
    """The table as it was read through."""
    with KEPT.open(encoding="utf-8", newline="") as file:
        return [
            Row(r["rule"], r["severity"], tuple(r["present"].split())) for r in csv.DictReader(file)
        ]


if __name__ == "__main__":
    table = csv.writer(sys.stdout, lineterminator="\n")
    table.writerow(Row._fields)
    table.writerows((r.rule, r.severity, " ".join(r.present)) for r in tried())
