"""Every word that another names stands in the book under its own id; every id means one thing."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

from diagnose.bookcheck.examples import yields
from diagnose.bookcheck.shapes import Result, Whole, inside
from knowledge.model import Cause, Condition, Finding, Limit, Measure, Quantity
from knowledge.rule_api import Example, Rule
from knowledge.work import Inspection, Layout, Task

#: on which shelf a word of each kind stands
_SHELF: dict[type, str] = {
    Cause: "causes",
    Condition: "conditions",
    Finding: "findings",
    Inspection: "inspections",
    Layout: "layouts",
    Limit: "limits",
    Measure: "measures",
    Quantity: "quantities",
    Task: "tasks",
}
_NAME = re.compile(r"[a-z][a-z0-9_]*")
#: a case names words of these shelves in one breath
_ONE_BREATH = ("causes", "conditions", "findings", "measures")


def names(whole: Whole) -> Result:
    """Ids, and every reference from word to word."""
    faults = list(_ids(whole))
    count = 0
    for where, word in referred(whole):
        count += 1
        shelf = _SHELF[type(word)]
        if getattr(whole.book, shelf).get(word.id) is not word:
            faults.append(f"{where} names {word.id}, which is not among the {shelf}")
    faults += _layouts_of_profiles(whole)
    words = sum(len(words) for _, words in whole.shelves())
    return Result(
        "names", "every name is a word of the book", {"words": words, "names": count}, tuple(faults)
    )


def _ids(whole: Whole) -> Iterator[str]:
    seen: dict[str, str] = {}
    for shelf, words in whole.shelves():
        for id_, word in words.items():
            if id_ != word.id:
                yield f"{shelf}: {word.id} stands under {id_}"
            if not _NAME.fullmatch(id_):
                yield f"{shelf}: '{id_}' is no id; small letters, figures and _"
            if shelf in _ONE_BREATH and seen.setdefault(id_, shelf) != shelf:
                yield f"{id_} is on two shelves, {seen[id_]} and {shelf}"


def referred(whole: Whole) -> Iterator[tuple[str, Any]]:
    """Every word named by another, with who names it."""
    for shelf, words in whole.shelves():
        for word in words.values():
            for field, value in inside(word):
                if type(value) in _SHELF:
                    yield f"{shelf}: {word.id}: {field}", value
    for rule in whole.book.rules.values():
        yield from _concluded(rule)
    yield from (("looks always taken", check) for check in whole.kept)
    for line in whole.precedences:
        for field, value in inside(line):
            if type(value) in _SHELF:
                yield f"precedence of {line.check.id}: {field}", value


def _concluded(rule: Rule) -> Iterator[tuple[str, Any]]:
    """Words in what a rule concludes of its own examples."""
    for example in (*rule.matches, *rule.non_matches, Example()):
        for conclusion in yields(rule, example):
            for field, value in inside(conclusion):
                if type(value) in _SHELF:
                    yield f"rule {rule.id}: {field}", value


def _layouts_of_profiles(whole: Whole) -> Iterator[str]:
    for profile in whole.book.profiles.values():
        for layout in profile.layouts:
            if layout not in whole.book.layouts:
                yield f"profile {profile.id} names {layout}, which is not among the layouts"
        for number in profile.numbers:
            if number not in whole.book.dimensions:
                yield f"profile {profile.id} names {number}, which is not among the dimensions"
