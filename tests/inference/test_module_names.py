"""Where a rule is written decides nothing: its module may be renamed, or all rules moved into one."""

from __future__ import annotations

from dataclasses import replace
from types import FunctionType

import pytest

from diagnose.case.loading import load
from diagnose.diagnosis import Diagnosis
from knowledge.book import Book, the_book
from knowledge.rule_api import Rule
from tests.support.command_line import ROOT
from tests.support.examples import one_in

BOOK = the_book()


def moved(rule: Rule, module: str) -> Rule:
    """The rule as if its function were written in this module."""
    body = rule.does
    assert isinstance(body, FunctionType)
    code = body.__code__.replace(co_filename=f"/{module.replace('.', '/')}.py")
    copy = FunctionType(code, body.__globals__, body.__name__, body.__defaults__, body.__closure__)
    copy.__module__ = module
    copy.__qualname__ = body.__qualname__
    return replace(rule, does=copy)


def book_with_rules_in(module: str) -> Book:
    rules = {id_: moved(rule, module) for id_, rule in BOOK.rules.items()}
    assert {r.does.__module__ for r in rules.values()} == {module}
    return replace(BOOK, rules=rules)


@pytest.mark.parametrize(
    "module", one_in(2, ["knowledge.stations.pump.rules", "knowledge.anything"])
)
@pytest.mark.parametrize("name", ["turnstone", "eider"])
def test_renaming_the_modules_of_the_rules_changes_no_ranking(name: str, module: str) -> None:
    """Turnstone's readings are weighed against its circuit, in place of what rules read in them."""
    path = ROOT / "cases" / f"{name}.toml"
    plain = Diagnosis(BOOK, load(path, BOOK))
    other = Diagnosis(book_with_rules_in(module), load(path, BOOK))
    assert [(r.cause, r.probability) for r in other.ranking] == [
        (r.cause, r.probability) for r in plain.ranking
    ]
    assert other.alarms == plain.alarms
    assert [c.says for c in other.contradictions] == [c.says for c in plain.contradictions]


def test_one_of_the_cases_replaces_findings_by_a_survey() -> None:
    """Else the filter by what rules have read would not be run."""
    surveyed = [
        name
        for name in ("turnstone", "eider")
        if Diagnosis(BOOK, load(ROOT / "cases" / f"{name}.toml", BOOK)).inference.survey is not None
    ]
    assert surveyed
