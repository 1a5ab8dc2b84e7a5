"""Forward chaining: CLIPS concludes the same, order makes no difference, reports only add."""

from __future__ import annotations

import ast
import random
import re
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from diagnose.inference.chaining import Facts, Observation, WorkingMemory, infer
from knowledge.alarm import Alarm
from knowledge.book import the_book
from knowledge.model import Finding, State, Station
from knowledge.rule_api import (
    Conclusions,
    Derived,
    InhibitorGroup,
    Known,
    LinkGroup,
    Rule,
    Statement,
)
from tests.support.clips_oracle import Oracle, flat, probes
from tests.support.command_line import ROOT
from tests.support.every import every
from tests.support.examples import examples, one_in
from tests.support.situations import CASES, facts_of_case, mixed

BOOK = the_book()
RULES = tuple(BOOK.rules.values())
STATEMENTS = BOOK.statements
FINDINGS = tuple(BOOK.findings.values())
#: features that say for which engines a limit was printed
NAMES_LIMITS = {f for x in BOOK.limits.values() for p in x.others for f in p.only_with}
SEEDS = st.integers(0, 10**9)
MIXED = 100  #: mixtures of examples compared with CLIPS; so many that nearly every rule fires


@pytest.fixture(scope="module")
def oracle() -> Oracle:
    """The book in CLIPS, built once."""
    return Oracle(STATEMENTS)


# ----------------------------------------------------------------------------- CLIPS as oracle


@pytest.mark.parametrize("name", one_in(4, list(CASES)))
def test_clips_concludes_the_same_of_a_case(oracle: Oracle, name: str) -> None:
    """CLIPS (Giarratano & Riley, Expert Systems): same facts, links, shifts, alarms, no more."""
    facts = facts_of_case(name)
    assert oracle.concludes(facts) == flat(infer(STATEMENTS, facts))


@pytest.mark.parametrize("seed", one_in(4, range(MIXED)))
def test_clips_concludes_the_same_of_mixed_examples(oracle: Oracle, seed: int) -> None:
    """Up to forty examples of rules and links at once, so that most rules fire somewhere."""
    facts = mixed(seed, many=4 + seed % 37)
    assert oracle.concludes(facts) == flat(infer(STATEMENTS, facts))


def test_the_situations_fire_nearly_every_rule() -> None:
    """The comparison is worth something only where rules fire."""
    everything = [facts_of_case(n) for n in CASES] + [mixed(s, 4 + s % 37) for s in range(MIXED)]
    fired = {r for f in everything for r in RULES if list(r.does(WorkingMemory(f)))}
    assert len(fired) >= 0.9 * len(RULES)


def test_only_rules_that_read_a_case_are_left_to_it(oracle: Oracle) -> None:
    assert 0 < len(oracle.read_case) < 0.2 * len(STATEMENTS)


WORDS = FINDINGS[:8]
PREMISE = st.tuples(st.sampled_from(["has", "lacks"]), st.sampled_from(WORDS))
CLAUSE = st.tuples(
    st.lists(PREMISE, max_size=2), st.sampled_from(WORDS), st.sampled_from(list(State))
)


@settings(max_examples=examples(150), deadline=None)
@given(
    st.lists(CLAUSE, min_size=6, max_size=24),
    st.dictionaries(st.sampled_from(WORDS), st.sampled_from(list(State)), min_size=1, max_size=3),
)
def test_clips_concludes_the_same_of_random_rules(
    clauses: list[tuple[list[tuple[str, Finding]], Finding, State]], observed: dict[Finding, State]
) -> None:
    """Long chains, circles and findings derived both ways, which the book has few of."""
    rules = [clause(f"r{i:02}", *parts) for i, parts in enumerate(clauses)]
    facts = Facts({f: Observation(s) for f, s in observed.items()})
    assert Oracle(rules).concludes(facts) == flat(infer(rules, facts))


def clause(id_: str, premises: list[tuple[str, Finding]], head: Finding, state: State) -> Rule:
    """A rule of any premises and one derived finding."""

    def body(known: Known) -> Conclusions:
        if all(getattr(known, sort)(finding) for sort, finding in premises):
            yield Derived(head, state)

    return replace(RULES[0], id=id_, does=body)


# ---------------------------------------------------------------------------------- any order


def shuffled(rng: random.Random) -> tuple[dict[str, str], list[Statement]]:
    """The statements under names that sort in random order (chaining sorts by name)."""
    order = rng.sample(range(len(STATEMENTS)), len(STATEMENTS))
    stations = rng.choices(list(Station), k=len(STATEMENTS))
    names = {s.id: f"{i:04}" for s, i in zip(STATEMENTS, order, strict=True)}
    renamed = [renamed_to(names[s.id], at, s) for s, at in zip(STATEMENTS, stations, strict=True)]
    return {new: old for old, new in names.items()}, renamed


def renamed_to(id_: str, station: Station, statement: Statement) -> Statement:
    if isinstance(statement, Rule):
        return replace(statement, id=id_, station=station)
    if isinstance(statement, InhibitorGroup):
        return replace(statement, id=id_, station=station)
    return LinkGroup(
        id=id_,
        station=station,
        says=statement.says,
        links=statement.links,
        matches=statement.matches,
        non_matches=statement.non_matches,
    )


def assert_order_makes_no_difference(facts: Facts, seed: int) -> None:
    names, renamed = shuffled(random.Random(seed))
    again = {(names[str(c[0])], c[1]) if len(c) == 2 else c for c in flat(infer(renamed, facts))}
    assert again == flat(infer(STATEMENTS, facts))


@pytest.mark.parametrize("name", one_in(3, list(CASES)))
def test_order_makes_no_difference_to_a_case(name: str) -> None:
    assert_order_makes_no_difference(facts_of_case(name), seed=len(name))


@settings(max_examples=examples(40), deadline=None)
@given(SEEDS, SEEDS, st.integers(1, 40))
def test_order_makes_no_difference(examples: int, order: int, many: int) -> None:
    assert_order_makes_no_difference(mixed(examples, many), order)


def test_a_chain_written_backwards_is_followed() -> None:
    """Each link of a chain sorts before the one it waits for."""
    chain = FINDINGS[:6]
    rules = [
        clause(f"{9 - i}", [("has", a)], b, State.PRESENT)
        for i, (a, b) in enumerate(pairwise(chain))
    ]
    derived = infer(rules, Facts({chain[0]: Observation(State.PRESENT)})).derived
    assert [d.finding for d in derived] == list(chain[:0:-1])


# --------------------------------------------------------------------------------- only adding


def without_derived(
    statements: tuple[Statement, ...], finding: Finding, state: State
) -> list[Statement]:
    """The statements, none of which may derive the finding in this state."""
    barred = (finding, state)

    def held(rule: Rule) -> Rule:
        def body(known: Known) -> Conclusions:
            for c in rule.does(known):
                if not (isinstance(c, Derived) and (c.finding, c.state) == barred):
                    yield c

        return replace(rule, does=body)

    return [held(s) if isinstance(s, Rule) else s for s in statements]


def without_figures(concluded: set[tuple[object, ...]]) -> set[tuple[object, ...]]:
    """The same, with no figures in what alarms say: a kind of engine has its own limits."""
    return {
        (replace(c, says=re.sub(r"\d+(\.\d+)?", "#", c.says)),) if isinstance(c, Alarm) else each
        for each in concluded
        for c in [each[0]]
    }


def assert_report_only_adds(facts: Facts, finding: Finding, state: State) -> None:
    """Reporting a finding takes nothing away but what rested on its having been derived.

    Precisely: let the finding be unreported. Every conclusion that the rules reach without
    deriving the finding in the *other* state is still reached once it is reported in this
    state. Where they did not derive that other state, that is every conclusion there was.
    """
    other = State.ABSENT if state is State.PRESENT else State.PRESENT
    compared = without_figures if finding in NAMES_LIMITS else set[tuple[object, ...]]
    before = infer(STATEMENTS, facts)
    reported = {**facts.observations, finding: Observation(state)}
    after = compared(flat(infer(STATEMENTS, replace(facts, observations=reported))))
    if (finding, other) not in {(d.finding, d.state) for d in before.derived}:
        assert compared(flat(before)) <= after
    underived = infer(without_derived(STATEMENTS, finding, other), facts)
    assert compared(flat(underived)) <= after


@settings(max_examples=examples(40), deadline=None)
@given(SEEDS, st.integers(0, 12), st.sampled_from(FINDINGS), st.sampled_from(list(State)))
def test_a_report_only_adds(seed: int, many: int, finding: Finding, state: State) -> None:
    """But for the kind of engine, which decides the limits that judge its figures."""
    facts = mixed(seed, many)
    if finding in NAMES_LIMITS:
        facts = replace(facts, readings=(), measures={})
    if finding not in facts.observations:
        assert_report_only_adds(facts, finding, state)


@pytest.mark.parametrize("name", one_in(3, list(CASES)))
def test_denying_what_was_derived_takes_only_that_away(name: str) -> None:
    """The same where it matters: reports that go against what the case's rules derive."""
    facts = facts_of_case(name)
    for derived in [
        d for d in infer(STATEMENTS, facts).derived if d.finding not in facts.observations
    ][:3]:
        other = State.ABSENT if derived.state is State.PRESENT else State.PRESENT
        assert_report_only_adds(facts, derived.finding, other)


@every(RULES, lambda r: r.id)
def test_a_further_yes_takes_no_conclusion_away(rule: Rule) -> None:
    """A rule whose questions of two paths are all answered yes concludes what each path does."""
    found = [
        ({p for p, yes in probe.answers.items() if yes}, set(concluded))
        for probe, concluded in probes(rule, Facts())
    ]
    for yes_a, said_a in found[:64]:
        for yes_b, said_b in found[:64]:
            assert said_a | said_b <= set(rule.does(YesTo(yes_a | yes_b)))


class YesTo(WorkingMemory):
    """Answers yes to exactly these questions."""

    def __init__(self, yes: set[tuple[str, Finding]]) -> None:
        super().__init__(Facts())
        self.yes = yes

    def has(self, finding: Finding) -> bool:
        return ("has", finding) in self.yes

    def lacks(self, finding: Finding) -> bool:
        return ("lacks", finding) in self.yes


def negations(tree: ast.AST) -> list[int]:
    """Lines on which ``not`` is put before anything that asks what is known."""
    return [
        node.lineno
        for node in ast.walk(tree)
        if isinstance(node, ast.UnaryOp)
        and isinstance(node.op, ast.Not)
        and any(isinstance(n, ast.Name) and n.id == "known" for n in ast.walk(node.operand))
    ]


SOURCES = sorted(
    p for p in (ROOT / "knowledge").rglob("*.py") if "(known: Known)" in p.read_text("utf-8")
)


@pytest.mark.parametrize("path", SOURCES, ids=lambda p: f"{p.parent.name}/{p.stem}")
def test_no_rule_asks_what_is_not_known(path: Path) -> None:
    """``not known.has(...)`` would let a later report take a conclusion away."""
    assert negations(ast.parse(path.read_text("utf-8"))) == []


def test_the_search_for_not_finds_it() -> None:
    assert negations(ast.parse("if not known.has(X): pass")) == [1]
    assert negations(ast.parse("a = 1\nb = not any(known.lacks(x) for x in y)")) == [2]
    assert negations(ast.parse("if known.has(X) and not lows: pass")) == []
