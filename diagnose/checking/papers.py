"""Every rule keeps what its papers say: it speaks where it must and spares the near miss."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from diagnose import causegraph
from diagnose.causegraph import Graph
from diagnose.chaining import Conclusions, Facts, Notebook, Report, infer
from diagnose.checking.shapes import Result, Whole
from diagnose.evidence import gather
from diagnose.ranking.elimination import posterior
from diagnose.ranking.network import Likelihood, Network
from knowledge.book import Book
from knowledge.rulebook import Conclusion, Example, Link, Rule
from knowledge.vocabulary import State

RISEN = 1.01  #: a parent counts as likelier from this factor on


@dataclass
class Bench:
    """Where rules are tried; each network is made once, for most examples share one."""

    book: Book
    _made: dict[object, tuple[Graph, Network]] = field(default_factory=dict)

    def taken(self, facts: Facts) -> tuple[Conclusions, Graph, Network]:
        """Facts taken through rules and graph."""
        conclusions = infer(self.book.rules.values(), facts)
        key = (
            frozenset(conclusions.links),
            frozenset(conclusions.shifts),
            frozenset(conclusions.excluded),
        )
        if key not in self._made:
            graph = causegraph.build(self.book.causes, conclusions)
            self._made[key] = graph, causegraph.as_network(graph)
        return conclusions, *self._made[key]


def papers(whole: Whole) -> Result:
    """Every rule tried on its own examples."""
    rules, bench = whole.book.rules.values(), Bench(whole.book)
    faults = [f"rule {r.id}: {fault}" for r in rules for fault in of_rule(r, bench)]
    count = {
        "rules": len(rules),
        "examples": sum(len(r.catches) + len(r.spares) for r in rules),
    }
    return Result("papers", "every rule speaks in its own examples", count, tuple(faults))


def of_rule(rule: Rule, bench: Bench) -> Iterator[str]:
    """What is wrong with one rule's papers, or with what it does on them."""
    if not rule.says.endswith((".", "!")):
        yield "its first line is not the sentence a person is shown"
    for label, examples in (("catches", rule.catches), ("spares", rule.spares)):
        if not examples:
            yield f"it {label} nothing: no example"
    names = subjects(rule)
    yield from _of_links(rule, names, bench) if names else _of_others(rule)


def facts_of(example: Example) -> Facts:
    """What an example states."""
    reports = {f: Report(State.PRESENT) for f in example.has}
    reports |= {f: Report(State.ABSENT) for f in example.lacks}
    return Facts(reports, example.readings, {m: [v] for m, v in example.measures})


def yields(rule: Rule, example: Example) -> list[Conclusion]:
    """What the rule by itself concludes of an example."""
    return list(rule.does(Notebook(facts_of(example))))


def subjects(rule: Rule) -> set[str]:
    """The parents of a rule's links, tried on every example of its papers."""
    return {
        c.parent.id
        for e in (*rule.catches, *rule.spares, Example())
        for c in yields(rule, e)
        if isinstance(c, Link)
    }


def _of_others(rule: Rule) -> Iterator[str]:
    """A rule without links concludes something in each catch, nothing in each spare."""
    for number, example in enumerate(rule.catches, 1):
        if not yields(rule, example):
            yield f"it is silent in catch {number} of its papers"
    for number, example in enumerate(rule.spares, 1):
        if yields(rule, example):
            yield f"it speaks in spare {number} of its papers"


def _of_links(rule: Rule, names: set[str], bench: Bench) -> Iterator[str]:
    """Some parent of its links is likelier in each catch, and less so in each spare."""
    least = dict.fromkeys(names, 1.0)
    for number, example in enumerate(rule.catches, 1):
        before, after = beliefs(example, names, bench)
        risen = [n for n in names if n in after and after[n] > before[n] * RISEN]
        if not risen:
            yield f"catch {number} makes none of {', '.join(sorted(names))} likelier"
        least = {n: min(least[n], after.get(n, 0.0)) for n in risen if n in least}
    if not least:
        yield "no cause of its links is likelier in every catch"
        return
    for number, example in enumerate(rule.spares, 1):
        _, after = beliefs(example, set(least), bench)
        if all(after.get(n, 0.0) >= least[n] for n in least):
            yield f"spare {number} is not spared: as likely as in the catches"


def beliefs(
    example: Example, names: set[str], bench: Bench
) -> tuple[dict[str, float], dict[str, float]]:
    """Before and after: P(parent) with no evidence and with the example's."""
    facts = facts_of(example)
    conclusions, graph, network = bench.taken(facts)
    evidence = gather(facts.reports, conclusions, graph)
    flat = {n: Likelihood(1.0, 1.0) for n in names if n in graph}
    before = posterior(network, flat).marginal
    after = posterior(network, {**flat, **evidence}).marginal
    return before, after


def never_fired(book: Book, cases: Mapping[str, Facts]) -> list[Rule]:
    """Rules that speak in none of these cases.

    A rule of links speaks where one of its links leads to something that was seen or denied.
    """
    silent, bench = dict.fromkeys(book.rules.values()), Bench(book)
    for facts in cases.values():
        for rule in _fired(facts, bench):
            silent.pop(rule, None)
    return list(silent)


def _fired(facts: Facts, bench: Bench) -> Iterable[Rule]:
    conclusions, graph, network = bench.taken(facts)
    heard = gather(facts.reports, conclusions, graph)
    above = network.ancestors(set(heard))
    yield from (t.rule for t in conclusions.derived.values())
    yield from (rule for rule, _ in conclusions.shifts)
    yield from (t.rule for t in conclusions.excluded.values())
    yield from (t.rule for t in conclusions.alarms.values())
    yield from (t.rule for t in conclusions.contradictions.values())
    for link, rules in conclusions.links.items():
        if link.child.id in above and link.parent.id in graph:
            yield from rules
