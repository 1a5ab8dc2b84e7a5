"""Run every rule and every group on its examples: matches must fire, non-matches must not."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field

from diagnose.bookcheck.shapes import Result, Whole
from diagnose.inference import causegraph
from diagnose.inference.causegraph import Graph
from diagnose.inference.chaining import Facts, InferenceResult, Observation, WorkingMemory, infer
from diagnose.inference.elimination import posteriors
from diagnose.inference.evidence import gather
from diagnose.inference.network import Likelihood, Network
from knowledge.book import Book
from knowledge.model import State
from knowledge.rule_api import (
    Conclusion,
    Example,
    InhibitorGroup,
    Link,
    LinkGroup,
    Rule,
    Statement,
)

RISEN = 1.01  #: factor from which a parent counts as more probable, or as less


@dataclass(frozen=True, slots=True)
class Followed:
    """What follows from the facts of an example: conclusions, cause graph and network."""

    conclusions: InferenceResult
    graph: Graph
    network: Network


@dataclass
class ExampleRunner:
    """Runs the rules on examples; builds each network once, since most examples share one."""

    book: Book
    _built: dict[object, tuple[Graph, Network]] = field(default_factory=dict)

    def run(self, facts: Facts) -> Followed:
        """Return what follows from these facts."""
        conclusions = infer(self.book.statements, facts)
        key = (
            frozenset(conclusions.links),
            frozenset(conclusions.inhibitors),
            frozenset(conclusions.shifts),
            frozenset(conclusions.excluded),
        )
        if key not in self._built:
            graph = causegraph.build(self.book.causes, conclusions)
            self._built[key] = graph, causegraph.as_network(graph)
        return Followed(conclusions, *self._built[key])


def examples(whole: Whole) -> Result:
    """Run every rule and every group of links or inhibitors on its own examples."""
    statements, runner = whole.book.statements, ExampleRunner(whole.book)
    faults = [
        f"{kind_of(s)} {s.id}: {fault}" for s in statements for fault in of_statement(s, runner)
    ]
    count = {
        "rules": len(whole.book.rules),
        "link groups": len(whole.book.links),
        "inhibitor groups": len(whole.book.inhibitors),
        "examples": sum(len(s.matches) + len(s.non_matches) for s in statements),
    }
    return Result("examples", "every rule and group fits its examples", count, tuple(faults))


def kind_of(statement: Statement) -> str:
    """'rule', 'links' or 'inhibitors'."""
    if isinstance(statement, Rule):
        return "rule"
    return "links" if isinstance(statement, LinkGroup) else "inhibitors"


def of_statement(statement: Statement, runner: ExampleRunner) -> Iterator[str]:
    """Yield what is wrong with the examples of a rule or group, or with its result there."""
    if not statement.says.endswith((".", "!")):
        yield "its first line is not the sentence a person is shown"
    for label, given in (("match", statement.matches), ("non-match", statement.non_matches)):
        if not given:
            yield f"it has no example of a {label}"
    if isinstance(statement, InhibitorGroup):
        yield from _of_inhibitors(statement, runner)
        return
    names = subjects(statement)
    if names:
        yield from _of_links(statement, names, runner)
    elif isinstance(statement, Rule):
        yield from _of_others(statement)


def facts_of(example: Example) -> Facts:
    """What an example states."""
    observations = {f: Observation(State.PRESENT) for f in example.has}
    observations |= {f: Observation(State.ABSENT) for f in example.lacks}
    return Facts(
        observations,
        example.readings,
        {m: [v] for m, v in example.measures},
        behaviours=example.behaviours,
        trials=example.trials,
        earlier=example.earlier,
    )


def yields(rule: Rule, example: Example) -> list[Conclusion]:
    """What the rule by itself concludes of an example."""
    return list(rule.does(WorkingMemory(facts_of(example))))


def subjects(statement: Rule | LinkGroup) -> set[str]:
    """Return the parents of its links; a rule is run on every one of its examples."""
    if isinstance(statement, LinkGroup):
        return {link.parent.id for link in statement.links}
    return {
        c.parent.id
        for e in (*statement.matches, *statement.non_matches, Example())
        for c in yields(statement, e)
        if isinstance(c, Link)
    }


def _of_others(rule: Rule) -> Iterator[str]:
    """A rule without links concludes something in each match, nothing in each non-match."""
    for number, example in enumerate(rule.matches, 1):
        if not yields(rule, example):
            yield f"concludes nothing on its match {number}"
    for number, example in enumerate(rule.non_matches, 1):
        if yields(rule, example):
            yield f"fires on its non-match {number}"


def _of_links(statement: Statement, names: set[str], runner: ExampleRunner) -> Iterator[str]:
    """Some parent of its links is more probable on each match, and less likely on each non-match."""
    least = dict.fromkeys(names, 1.0)
    for number, example in enumerate(statement.matches, 1):
        before, after = beliefs(example, names, runner)
        risen = [n for n in names if n in after and after[n] > before[n] * RISEN]
        if not risen:
            yield f"match {number} makes none of {', '.join(sorted(names))} more probable"
        least = {n: min(least[n], after.get(n, 0.0)) for n in risen if n in least}
    if not least:
        yield "no cause of its links is more probable on every match"
        return
    for number, example in enumerate(statement.non_matches, 1):
        _, after = beliefs(example, set(least), runner)
        if all(after.get(n, 0.0) >= least[n] for n in least):
            yield f"non-match {number} is as probable as the matches"


def _of_inhibitors(group: InhibitorGroup, runner: ExampleRunner) -> Iterator[str]:
    """Each match has the finding and makes every parent less likely than each non-match does."""
    names = {i.parent.id for i in group.inhibitors}
    most = dict.fromkeys(names, 0.0)
    for number, example in enumerate(group.matches, 1):
        own = {i.parent.id for i in group.inhibitors if i.child in example.has}
        before, after = beliefs(example, own, runner)
        fallen = {n for n in own if n in after and after[n] * RISEN < before[n]}
        if not own:
            yield f"match {number} holds none of the findings"
        yield from (f"match {number} leaves {n} as probable" for n in sorted(own - fallen))
        most |= {n: max(most[n], after[n]) for n in fallen}
    yield from (f"no match holds what {n} inhibits" for n in sorted(names) if not most[n])
    for number, example in enumerate(group.non_matches, 1):
        _, after = beliefs(example, names, runner)
        if any(after.get(n, 1.0) <= most[n] for n in names):
            yield f"non-match {number} is as improbable as the matches"


def beliefs(
    example: Example, names: set[str], runner: ExampleRunner
) -> tuple[dict[str, float], dict[str, float]]:
    """Before and after: P(parent) with no evidence and with the example's."""
    facts = facts_of(example)
    follows = runner.run(facts)
    evidence = gather(facts.observations, follows.conclusions, follows.graph)
    flat = {n: Likelihood(1.0, 1.0) for n in names if n in follows.graph}
    (before,) = posteriors(follows.network, [flat], asked=names)
    (after,) = posteriors(follows.network, [{**flat, **evidence}], asked=names)
    return before.marginal, after.marginal


def never_fired(book: Book, cases: Mapping[str, Facts]) -> list[Statement]:
    """Return the rules and groups that fire in none of these cases.

    A group fires where one of its links leads to something that was seen or denied, or one of
    its inhibitors keeps that away.
    """
    silent, runner = dict.fromkeys(book.statements), ExampleRunner(book)
    for facts in cases.values():
        for rule in _fired(facts, runner):
            silent.pop(rule, None)
    return list(silent)


def _fired(facts: Facts, runner: ExampleRunner) -> Iterable[Statement]:
    follows = runner.run(facts)
    conclusions, graph = follows.conclusions, follows.graph
    evidence = gather(facts.observations, conclusions, graph)
    above = follows.network.relevant(set(evidence))
    yield from (t.rule for t in conclusions.derived.values())
    yield from (rule for rule, _ in conclusions.shifts)
    yield from (t.rule for t in conclusions.excluded.values())
    yield from (t.rule for t in conclusions.alarms.values())
    yield from (t.rule for t in conclusions.contradictions.values())
    for link, rules in conclusions.edges:
        if link.child.id in above and link.parent.id in graph:
            yield from rules
