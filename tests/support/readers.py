"""Readers of plain English: functions from a text to the tables of a case file."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from typing import Any

from diagnose.entry.readings import parse_reading
from diagnose.entry.telling import understand
from diagnose.errors import UsageError
from diagnose.lookup.finder import Finder
from knowledge.book import the_book
from knowledge.model import Finding, Kind
from tests.support.stated_facts import Tables

NEW = Path("no such case.toml")  #: where nothing is written
Reader = Callable[[str], Tables]
_PIECES = re.compile(r"[.;:!?\n]+(?=\s|$)|,\s|\s(?:and|but|then)\s")


def pieces(text: str) -> Iterator[str]:
    """The text between stops, commas, "and" and "but".

    >>> list(pieces("no knock, but 2.5 bar cold"))
    ['no knock', '2.5 bar cold']
    """
    for piece in _PIECES.split(text):
        words = piece.strip().removeprefix("but ").removeprefix("and ")
        if words:
            yield words


def by_lookup(text: str) -> Tables:
    """Read each piece as a reading as typed, else as the finding that lookup puts first.

    What a person can do without ``tell``: type the words into ``lookup`` and record the best hit.
    """
    finder = _finder()
    tables: dict[str, Any] = {"finding": [], "reading": [], "engine": {"has": []}}
    for piece in pieces(text):
        try:
            given = parse_reading(piece).fields()
        except UsageError:
            hits = finder.find(piece, (Finding,), 1)
            for word in (hit.word for hit in hits):
                if isinstance(word, Finding) and word.kind is Kind.LAYOUT:
                    tables["engine"]["has"].append(word.id)
                else:
                    tables["finding"].append({"what": word.id, "state": "present"})
        else:
            tables["reading"].append({k: v for k, v in given.items() if v is not None})
    return tables


@cache
def _finder() -> Finder:
    return Finder(the_book())


def by_tell(text: str) -> Tables:
    """What ``tell`` would write into a new case."""
    facts = understand(NEW, text, the_book()).understanding.facts
    tables: dict[str, Any] = {"engine": {}}
    for fact in facts:
        if fact.table == "layout":
            tables["engine"]["layout"] = fact.fields["layout"]
        elif fact.table == "oil":
            tables["oil"] = {"grade": fact.value}
        else:
            sure = {"sure": fact.sure} if fact.table == "finding" and fact.sure < 1 else {}
            tables.setdefault(fact.table, []).append({**fact.fields, **sure})
    return tables


#: every reader, by the command a person would use
READERS: dict[str, Reader] = {"tell": by_tell, "lookup": by_lookup}
