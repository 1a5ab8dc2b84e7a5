"""Complaints with the trade's first answers, and how the tool does on them."""

from __future__ import annotations

import json
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

DATA = Path(__file__).parents[1] / "data"
TABLES = ("reading", "behaviour", "trial", "earlier")


class Complaints:
    """The complaints of one file, numbered from 1."""

    def __init__(self, file: str) -> None:
        self.every: list[dict[str, Any]] = tomllib.loads((DATA / file).read_text("utf-8"))[
            "complaint"
        ]
        self.numbers = range(1, len(self.every) + 1)
        self.first_five = cache(self._first_five)

    def trade(self, number: int) -> list[str]:
        """Ids of the causes that the trade names, first ones first."""
        causes: list[str] = self.every[number - 1]["trade"]
        return causes

    def shared(self, number: int) -> int:
        """How many of the trade's first three answers are among the tool's first five."""
        return len(set(self.trade(number)[:3]) & set(self.first_five(number)))

    def is_right(self, number: int) -> bool:
        """Two of the trade's first three in the tool's five; the tool's first in the trade's."""
        return self.shared(number) >= 2 and self.first_five(number)[0] in self.trade(number)

    def check_words(self) -> None:
        """Fail where a complaint names what the book has not, or too few or many answers."""
        book = the_book()
        for complaint in self.every:
            assert {fact.lstrip("-") for fact in complaint["facts"]} <= set(book.findings)
            assert set(complaint["trade"]) <= set(book.causes)
            assert 3 <= len(complaint["trade"]) <= 5

    def _first_five(self, number: int) -> tuple[str, ...]:
        """Ids of the five causes the tool ranks first."""
        book = the_book()
        case = from_text(case_text(self.every[number - 1]), None, book)
        return tuple(row.cause.id for row in Diagnosis(book, case).ranking[:5])


def case_text(complaint: dict[str, Any]) -> str:
    """The complaint as the text of a case file."""
    lines = ["schema = 1", "[engine]", f'layout = "{complaint["engine"]}"']
    lines.append(f"has = {json.dumps(complaint.get('has', []))}")
    no = 0
    for fact in complaint["facts"]:
        no += 1
        state = "absent" if fact.startswith("-") else "present"
        lines += ["[[finding]]", f"no = {no}", f'what = "{fact.lstrip("-")}"', f'state = "{state}"']
    for table in TABLES:
        for entry in complaint.get(table, ()):
            no += 1
            lines += [f"[[{table}]]", f"no = {no}"]
            lines += [f"{key} = {json.dumps(value)}" for key, value in entry.items()]
    return "\n".join(lines) + "\n"
