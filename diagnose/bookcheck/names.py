"""Check that every reference is to a word of the book, and that ids are unique."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from diagnose.bookcheck.examples import yields
from diagnose.bookcheck.shapes import Result, Whole, inside
from knowledge.faults import Fault
from knowledge.limits import Limit
from knowledge.model import Cause, Condition, Finding, Measure, Quantity
from knowledge.reports.shapes import TrialKind, WorkArea
from knowledge.rule_api import Example, Rule
from knowledge.work import Inspection, Layout, Task

#: the table of the book for each type of word
_TABLE: dict[type, str] = {
    Cause: "causes",
    Condition: "conditions",
    Fault: "faults",
    Finding: "findings",
    Inspection: "inspections",
    Layout: "layouts",
    Limit: "limits",
    Measure: "measures",
    Quantity: "quantities",
    Task: "tasks",
    TrialKind: "trials",
    WorkArea: "areas",
}
_NAME = re.compile(r"[a-z][a-z0-9_]*")
#: tables that share one set of ids in a case file
_SHARED_IDS = ("causes", "conditions", "findings", "measures")


def names(whole: Whole) -> Result:
    """Check ids, and every reference from word to word."""
    faults = list(_ids(whole))
    count = 0
    for where, word in referred(whole):
        count += 1
        table = _TABLE[type(word)]
        if getattr(whole.book, table).get(word.id) is not word:
            faults.append(f"{where} names {word.id}, which is not among the {table}")
    faults += _layouts_of_profiles(whole)
    words = sum(len(words) for _, words in whole.tables())
    return Result(
        "names", "every name is a word of the book", {"words": words, "names": count}, tuple(faults)
    )


def _ids(whole: Whole) -> Iterator[str]:
    seen: dict[str, str] = {}
    for table, words in whole.tables():
        for id_, word in words.items():
            if id_ != word.id:
                yield f"{table}: {word.id} is stored under {id_}"
            if not _NAME.fullmatch(id_):
                yield f"{table}: '{id_}' is no id; use small letters, figures and _"
            if table in _SHARED_IDS and seen.setdefault(id_, table) != table:
                yield f"{id_} is used twice, in {seen[id_]} and {table}"


def referred(whole: Whole) -> Iterator[tuple[str, Any]]:
    """Yield every word that another names, with the place that names it."""
    for table, words in whole.tables():
        for word in words.values():
            for field, value in inside(word):
                if type(value) in _TABLE:
                    yield f"{table}: {word.id}: {field}", value
    for rule in whole.book.rules.values():
        yield from _concluded(rule)
    yield from (("checks always recorded", check) for check in whole.kept)
    for line in whole.precedences:
        for field, value in inside(line):
            if type(value) in _TABLE:
                yield f"precedence of {line.check.id}: {field}", value


def _concluded(rule: Rule) -> Iterator[tuple[str, Any]]:
    """Yield the words in the conclusions of a rule on its own examples."""
    for example in (*rule.matches, *rule.non_matches, Example()):
        for conclusion in yields(rule, example):
            for field, value in inside(conclusion):
                if type(value) in _TABLE:
                    yield f"rule {rule.id}: {field}", value


def _layouts_of_profiles(whole: Whole) -> Iterator[str]:
    for profile in whole.book.profiles.values():
        for layout in profile.layouts:
            if layout not in whole.book.layouts:
                yield f"profile {profile.id} names {layout}, which is not among the layouts"
        for number in profile.numbers:
            if number not in whole.book.dimensions:
                yield f"profile {profile.id} names {number}, which is not among the dimensions"
