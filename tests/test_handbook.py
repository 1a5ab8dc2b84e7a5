"""Every cause that a published troubleshooting table lists stands up for that table's symptom.

Checked against: tables of makers' workshop and owners' manuals, army technical manuals and trade
writers, restated in ``data/handbook_tables.toml`` with their sources. For the bare symptom of a
table, on an engine of its kind, each listed row must be likelier than by chance (one over the
number of causes) or stand in the first half of the ranking. Where a row means one of several
causes, the likeliest counts. Rank agreement: ``python -m tests.studies.handbook_agreement``.
"""

from __future__ import annotations

from typing import NamedTuple

import pytest

from knowledge.book import the_book
from tests.studies.handbook_agreement import (
    Row,
    Table,
    agreement,
    of_family,
    ranked,
    spearman,
    tables,
)

TABLES = list(tables())
MOST_EXCEPTIONS = 0.05
LEAST_AGREEMENT = 0.5  #: with the number of tables that list a family


class Listed(NamedTuple):
    """A row with the table it stands in."""

    table: Table
    row: Row

    def __str__(self) -> str:
        return f"{self.table}-{self.row.no}-{'|'.join(self.row.causes)}".replace(" ", "_")


ROWS = [Listed(table, row) for table in TABLES for row in table.rows]
RULE = [r for r in ROWS if not r.row.exception]
EXCEPTIONS = [r for r in ROWS if r.row.exception]


def stands_up(listed: Listed) -> bool:
    """Likelier than by chance, or in the first half of the ranking."""
    ranking = ranked(listed.table.layout, listed.table.symptom)
    first_half = list(ranking)[: len(ranking) // 2]
    likelier = of_family(ranking, listed.row.causes) > 1 / len(ranking)
    return likelier or any(cause in first_half for cause in listed.row.causes)


def test_every_word_is_in_the_book() -> None:
    book = the_book()
    assert {f for t in TABLES for f in t.symptom} <= set(book.findings)
    assert {t.layout for t in TABLES} <= set(book.layouts)
    assert {c for listed in ROWS for c in listed.row.causes} <= set(book.causes)


def test_every_published_table_is_here() -> None:
    assert {t.id for t in TABLES} == {f"HB-{n:02}" for n in range(1, 24)} | {"tally"}
    assert all(t.source and t.read in {"full", "part"} for t in TABLES)


@pytest.mark.parametrize("listed", RULE, ids=str)
def test_listed_cause_is_raised_by_the_symptom(listed: Listed) -> None:
    assert stands_up(listed), listed.row.says


@pytest.mark.parametrize("listed", EXCEPTIONS, ids=str)
def test_listed_exception_is_still_one(listed: Listed) -> None:
    """An exception that stands up by now must lose its reason in the table."""
    assert not stands_up(listed), f"stands up now: {listed.row.exception}"
    assert listed.row.exception.startswith(("book disagrees: ", "open: "))


def test_exceptions_are_few() -> None:
    assert len(EXCEPTIONS) < MOST_EXCEPTIONS * len(ROWS)


def test_families_listed_by_more_tables_rank_higher() -> None:
    (tally,) = (t for t in TABLES if t.order == "tally")
    assert agreement(tally) > LEAST_AGREEMENT


def test_rank_correlation() -> None:
    """Textbook ends of the scale, and ties that share the mean of their places (own echo)."""
    assert spearman([1, 2, 3], [4, 5, 6]) == 1.0
    assert spearman([1, 2, 3], [6, 5, 4]) == -1.0
    assert spearman([1, 1, 2], [5, 5, 9]) == 1.0
    assert spearman([1, 2, 3], [7, 7, 7]) == 0.0
