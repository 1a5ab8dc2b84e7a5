"""No two rules say the same thing, and every strength is one of the scale or of the computed table."""

from __future__ import annotations

from collections.abc import Iterator

from diagnose.bookcheck.examples import yields
from diagnose.bookcheck.shapes import Result, Whole
from knowledge.model import Background, Cause, Rate, Strength
from knowledge.pressure.pattern_strengths import SHOWN
from knowledge.rule_api import Conclusion, Example, Link, Rule
from knowledge.sources import CIRCUIT_MODEL


def doubles(whole: Whole) -> Result:
    """The same link written twice, or two rules that conclude the same of the same."""
    faults = [*doubled_links(whole), *_alike(whole)]
    count = {"rules": len(whole.book.rules), "links": len(whole.links)}
    return Result("doubles", "no two rules say the same thing", count, tuple(faults))


def doubled_links(whole: Whole) -> Iterator[str]:
    """Links that more than one rule adds, whatever the strength."""
    homes: dict[tuple[str, str], list[str]] = {}
    for link, rules in whole.links.items():
        homes.setdefault((link.parent.id, link.child.id), []).extend(r.id for r in rules)
    for (parent, child), ids in homes.items():
        if len(set(ids)) > 1:
            yield f"{parent} leads to {child} in more than one place: {', '.join(dict.fromkeys(ids))}"


def _alike(whole: Whole) -> Iterator[str]:
    """Rules that conclude the same, and something, in every example of both."""
    said: dict[tuple[Rule, Example], frozenset[Conclusion]] = {}
    examples = {r: (*r.matches, *r.non_matches) for r in whole.book.rules.values()}

    def concluded(rule: Rule, example: Example) -> frozenset[Conclusion]:
        if (rule, example) not in said:
            said[rule, example] = frozenset(yields(rule, example))
        return said[rule, example]

    by_word: dict[str, list[Rule]] = {}
    for rule, its in examples.items():
        told = {c for e in its for c in concluded(rule, e) if not isinstance(c, Link)}
        for word in {repr(c) for c in told}:
            by_word.setdefault(word, []).append(rule)
    pairs = {
        (a, b) for rules in by_word.values() for i, a in enumerate(rules) for b in rules[i + 1 :]
    }
    for a, b in sorted(pairs, key=lambda p: (p[0].id, p[1].id)):
        both = (*examples[a], *examples[b])
        if all(concluded(a, e) == concluded(b, e) for e in both):
            yield f"rules {a.id} and {b.id} conclude the same of the same"


def strengths(whole: Whole) -> Result:
    """Links, rates and backgrounds: chosen from the closed scales, or computed."""
    faults = []
    computed = 0
    for link in whole.links:
        ends = link.parent.id, link.child.id
        if isinstance(link.strength, Strength):
            continue
        computed += 1
        if SHOWN.get(ends) != link.strength.value or link.source is not CIRCUIT_MODEL:
            faults.append(
                f"{ends[0]} leads to {ends[1]}: {link.strength.value} is neither of the scale "
                "nor of the computed table"
            )
    for cause in whole.book.causes.values():
        if not isinstance(cause.rate, Rate):
            faults.append(f"causes: {cause.id}: rate {cause.rate} is not of the scale")
    for finding in whole.book.findings.values():
        if not isinstance(finding.background, Background):
            faults.append(f"findings: {finding.id}: background is not of the scale")
    linked = {k.parent for k in whole.links if isinstance(k.parent, Cause)}
    faults += [
        f"causes: {c.id} leads to nothing; declare a LinkGroup with it as parent"
        for c in whole.book.causes.values()
        if c not in linked
    ]
    count = {"links": len(whole.links), "of them computed": computed}
    return Result("strengths", "every strength is of the scale or computed", count, tuple(faults))
