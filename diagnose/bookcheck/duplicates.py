"""Check that nothing is stated twice, and that every strength is on the scale or computed."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from diagnose.bookcheck.examples import yields
from diagnose.bookcheck.shapes import Result, Whole
from knowledge.model import Background, Cause, Condition, Rate, Strength
from knowledge.pressure.pattern_strengths import SHOWN
from knowledge.rule_api import Conclusion, Example, Inhibitor, Link, Rule, Statement
from knowledge.sources import CIRCUIT_MODEL

LARGEST_SHARE = 0.9  #: of a cause's rate that a root may bring about


def duplicates(whole: Whole) -> Result:
    """Find links and inhibitors stated twice, and rules with the same conclusions."""
    faults = [*repeated_links(whole), *_both_ways(whole), *_repeated_rules(whole)]
    count = {
        "rules": len(whole.book.rules),
        "links": len(whole.links),
        "inhibitors": len(whole.inhibitors),
    }
    return Result("duplicates", "nothing is stated twice", count, tuple(faults))


def repeated_links(whole: Whole) -> Iterator[str]:
    """Yield links and inhibitors that several statements make, whatever the strength."""
    for what, stated in (("leads to", whole.links), ("inhibits", whole.inhibitors)):
        for (parent, child), ids in _stated_in(stated).items():
            if len(ids) > 1:
                yield f"{parent} {what} {child} in more than one place: {', '.join(sorted(ids))}"


def _both_ways(whole: Whole) -> Iterator[str]:
    """Yield pairs that are linked although the one inhibits the other."""
    links = _stated_in(whole.links)
    for (parent, child), ids in _stated_in(whole.inhibitors).items():
        if (parent, child) in links:
            both = ", ".join((*links[parent, child], *ids))
            yield f"{parent} both leads to {child} and inhibits it: {both}"


def _stated_in(
    stated: Mapping[Link, Sequence[Statement]] | Mapping[Inhibitor, Sequence[Statement]],
) -> dict[tuple[str, str], list[str]]:
    """The ids of the statements that state a link between two ends, each once."""
    found: dict[tuple[str, str], dict[str, None]] = {}
    for link, statements in stated.items():
        ends = link.parent.id, link.child.id
        found.setdefault(ends, {}).update((s.id, None) for s in statements)
    return {ends: list(ids) for ends, ids in found.items()}


def _repeated_rules(whole: Whole) -> Iterator[str]:
    """Yield pairs of rules with the same conclusions, and at least one, on every example of both."""
    cache: dict[tuple[Rule, Example], frozenset[Conclusion]] = {}
    examples = {r: (*r.matches, *r.non_matches) for r in whole.book.rules.values()}

    def concluded(rule: Rule, example: Example) -> frozenset[Conclusion]:
        if (rule, example) not in cache:
            cache[rule, example] = frozenset(yields(rule, example))
        return cache[rule, example]

    by_word: dict[str, list[Rule]] = {}
    for rule, own in examples.items():
        conclusions = {c for e in own for c in concluded(rule, e) if not isinstance(c, Link)}
        for word in {repr(c) for c in conclusions}:
            by_word.setdefault(word, []).append(rule)
    pairs = {
        (a, b) for rules in by_word.values() for i, a in enumerate(rules) for b in rules[i + 1 :]
    }
    for a, b in sorted(pairs, key=lambda p: (p[0].id, p[1].id)):
        both = (*examples[a], *examples[b])
        if all(concluded(a, e) == concluded(b, e) for e in both):
            yield f"rules {a.id} and {b.id} have the same conclusions"


def _roots(whole: Whole) -> Iterator[str]:
    """Yield links to a cause that come from no root, or that bring more than the cause's rate."""
    for link in whole.links:
        if not isinstance(link.child, Cause):
            continue
        root = link.parent
        if not isinstance(root, Condition) or not isinstance(root.rate, Rate):
            yield f"{root.id} leads to the cause {link.child.id} and has no rate on the scale"
        elif link.strength.value * root.rate.value > LARGEST_SHARE * link.child.rate.value:
            yield f"{root.id} alone brings about more of {link.child.id} than its rate allows"
    fed = {link.parent for link in whole.links if isinstance(link.child, Cause)}
    for condition in whole.book.conditions.values():
        if condition.rate is not None and condition not in fed:
            yield f"conditions: {condition.id} has a rate and feeds no cause"


def strengths(whole: Whole) -> Result:
    """Check that links, inhibitors, rates and backgrounds are on the closed scales, or computed."""
    faults = []
    computed = 0
    for link in whole.links:
        ends = link.parent.id, link.child.id
        if isinstance(link.strength, Strength):
            continue
        computed += 1
        if SHOWN.get(ends) != link.strength.value or link.source is not CIRCUIT_MODEL:
            faults.append(
                f"{ends[0]} leads to {ends[1]}: {link.strength.value} is neither on the scale "
                "nor in the computed table"
            )
    brought = {link.child for link in whole.links}
    for inhibitor in whole.inhibitors:
        pair = f"{inhibitor.parent.id} inhibits {inhibitor.child.id}"
        if not isinstance(inhibitor.strength, Strength):
            faults.append(f"{pair}: {inhibitor.strength} is not on the scale")
        if inhibitor.child not in brought:
            faults.append(f"{pair}, which nothing leads to")
    for cause in whole.book.causes.values():
        if not isinstance(cause.rate, Rate):
            faults.append(f"causes: {cause.id}: rate {cause.rate} is not on the scale")
    for finding in whole.book.findings.values():
        if not isinstance(finding.background, Background):
            faults.append(f"findings: {finding.id}: background is not on the scale")
    faults += _roots(whole)
    linked = {k.parent for k in whole.links if isinstance(k.parent, Cause)}
    faults += [
        f"causes: {c.id} leads to nothing; declare a LinkGroup with it as parent"
        for c in whole.book.causes.values()
        if c not in linked
    ]
    count = {"links": len(whole.links), "computed": computed}
    return Result("strengths", "every strength is on the scale or computed", count, tuple(faults))
