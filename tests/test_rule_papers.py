"""Every rule keeps what its papers say: it speaks where it must and spares the near miss."""

from __future__ import annotations

import pytest

from diagnose import causegraph
from diagnose.chaining import Facts, Notebook, Report, infer
from diagnose.evidence import gather
from diagnose.ranking.elimination import posterior
from diagnose.ranking.network import Likelihood
from knowledge.book import the_book
from knowledge.rulebook import Example, Link, Rule
from knowledge.vocabulary import Cause, State

BOOK = the_book()
RULES = list(BOOK.rules.values())


def facts_of(example: Example) -> Facts:
    reports = {f: Report(State.PRESENT) for f in example.has}
    reports |= {f: Report(State.ABSENT) for f in example.lacks}
    measures = {m: [v] for m, v in example.measures}
    return Facts(reports, example.readings, measures)


def yields(rule: Rule, example: Example) -> list[object]:
    return list(rule.does(Notebook(facts_of(example))))


def subjects(rule: Rule) -> set[str]:
    """The parents of a rule's links, tried on every example of its papers."""
    return {
        c.parent.id
        for e in (*rule.catches, *rule.spares, Example())
        for c in yields(rule, e)
        if isinstance(c, Link)
    }


def beliefs(example: Example, names: set[str]) -> tuple[dict[str, float], dict[str, float]]:
    """Before and after: P(parent) with no evidence and with the example's."""
    facts = facts_of(example)
    conclusions = infer(RULES, facts)
    graph = causegraph.build(BOOK.causes, conclusions)
    network = causegraph.as_network(graph)
    evidence = gather(facts.reports, conclusions, graph)
    flat = {n: Likelihood(1.0, 1.0) for n in names if n in graph}
    before = posterior(network, flat).marginal
    after = posterior(network, {**flat, **evidence}).marginal
    return before, after


@pytest.mark.parametrize("rule", RULES, ids=lambda r: r.id)
def test_rule_has_its_papers(rule: Rule) -> None:
    """A sentence, a source, something it catches and something it spares."""
    assert rule.says.endswith((".", "!")), "the first line is the sentence a person is shown"
    assert rule.catches
    assert rule.spares
    assert rule.source.title


@pytest.mark.parametrize("rule", [r for r in RULES if not subjects(r)], ids=lambda r: r.id)
def test_rule_speaks_and_keeps_silent(rule: Rule) -> None:
    """A rule without links concludes something in each catch, nothing in each spare."""
    for example in rule.catches:
        assert yields(rule, example)
    for example in rule.spares:
        assert not yields(rule, example)


@pytest.mark.parametrize("rule", [r for r in RULES if subjects(r)], ids=lambda r: r.id)
def test_links_make_their_parent_likelier(rule: Rule) -> None:
    """Some parent of the rule's links is likelier in each catch, and less so in each spare."""
    names = subjects(rule)
    least = dict.fromkeys(names, 1.0)
    for example in rule.catches:
        before, after = beliefs(example, names)
        risen = [n for n in names if n in after and after[n] > before[n] * 1.01]
        assert risen, f"{example} raises none of {sorted(names)}"
        least = {n: min(least[n], after.get(n, 0.0)) for n in risen if n in least}
        assert least, "no parent is risen in every catch"
    for example in rule.spares:
        _, after = beliefs(example, set(least))
        assert any(after.get(n, 0.0) < least[n] for n in least), f"{example} is not spared"


def test_no_two_rules_add_the_same_link() -> None:
    """One fact, one home."""
    doubled = {
        (k.parent.id, k.child.id): [r.id for r in rules]
        for k, rules in infer(RULES, Facts()).links.items()
        if len(rules) > 1
    }
    assert not doubled


def test_every_cause_is_linked() -> None:
    """A cause nothing follows from could never be found."""
    parents = {k.parent for k in infer(RULES, Facts()).links if isinstance(k.parent, Cause)}
    bare = [c.id for c in BOOK.causes.values() if c not in parents]
    assert not bare, f"no rule says what follows from {bare}: leads_to(cause, condition, strength)"
