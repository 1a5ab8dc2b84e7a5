"""Published troubleshooting tables: every cause listed for a symptom is raised by it.

Checked against: tables of makers' workshop and owners' manuals, army technical manuals and trade
writers, restated in ``data/handbook_tables.toml`` with their sources. The bare symptom of a table,
on an engine of its kind, must raise each listed row and bring it into the first quarter of the
ranking, or a reason stands below. Where a row means one of several causes, the one that does best
counts. Rank agreement: ``python -m tests.studies.handbook_agreement``.
"""

from __future__ import annotations

from typing import NamedTuple

import pytest

from knowledge.book import the_book
from tests.studies.handbook_agreement import (
    Row,
    Table,
    agreement,
    ranked,
    spearman,
    tables,
)

TABLES = list(tables())
MOST_EXCEPTIONS = 6  #: as many as today
RAISED = 1.25  #: factor on the probability before the symptom from which a cause is raised
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


def raised(listed: Listed) -> bool:
    """Whether the symptom makes one of the causes likelier than it is on such an engine anyway."""
    before = ranked(listed.table.layout, ())
    after = ranked(listed.table.layout, listed.table.symptom)
    return any(after[c] > RAISED * before[c] for c in listed.row.causes if c in after)


def in_top_quarter(listed: Listed) -> bool:
    """Whether one of the causes the row may mean stands in the first quarter of the ranking."""
    ranking = list(ranked(listed.table.layout, listed.table.symptom))
    return any(cause in ranking[: len(ranking) // 4] for cause in listed.row.causes)


AFTER_WORK = "happens where the engine was just apart, which the bare symptom does not say"
BYPASSED = "its bypass opens: the gauge behind it hardly falls"
SELDOM = "seldom beside worn bearings, thin oil and a stuck relief valve"
UNSTEADY = "makes the pressure unsteady rather than low"
#: causes that tables list and that stand below the first quarter, and why (judgement)
BELOW_THE_QUARTER = {
    "bearing_wrong_size": AFTER_WORK,
    "bearing_wiped": "the table tells of slow damage; a wiped bearing is mostly sudden",
    "filter_blocked": BYPASSED,
    "gallery_blocked": SELDOM,
    "gallery_crack": SELDOM,
    "gallery_plug_missing": AFTER_WORK,
    "gallery_seal_leak": AFTER_WORK,
    "gauge_line_blocked": "a blocked line answers slowly rather than low",
    "idle_too_slow": "found by counting revolutions, and few engines idle that slowly",
    "oil_cooler_blocked": BYPASSED,
    "oil_level_high": UNSTEADY,
    "pan_dented": "somebody must have struck the sump, which the symptom does not say",
    "pickup_tube_cracked": UNSTEADY,
    "pump_mount_leak": AFTER_WORK,
    "relief_spring_weak_broken": SELDOM,
    "relief_spring_wrong": AFTER_WORK,
    "suction_joint_air_leak": UNSTEADY,
    "tensioner_seal_leak": SELDOM,
}
MOST_BELOW = 44  #: rows of the tables, as many as today


def test_every_word_is_in_the_book() -> None:
    book = the_book()
    assert {f for t in TABLES for f in t.symptom} <= set(book.findings)
    assert {t.layout for t in TABLES} <= set(book.layouts)
    assert {c for listed in ROWS for c in listed.row.causes} <= set(book.causes)


def test_every_published_table_is_here() -> None:
    assert {t.id for t in TABLES} == {f"HB-{n:02}" for n in range(1, 24)} | {"tally"}
    assert all(t.source and t.read in {"full", "part"} for t in TABLES)


@pytest.mark.parametrize("listed", ROWS, ids=str)
def test_listed_cause_is_raised_by_the_symptom(listed: Listed) -> None:
    """Every row without exception, seldom causes too."""
    assert raised(listed), listed.row.says


@pytest.mark.parametrize("listed", RULE, ids=str)
def test_listed_cause_ranks_in_the_first_quarter_or_has_a_reason(listed: Listed) -> None:
    """The first half would be no claim: half of all causes stand there."""
    assert in_top_quarter(listed) or set(listed.row.causes) <= set(BELOW_THE_QUARTER)


@pytest.mark.parametrize("cause", BELOW_THE_QUARTER)
def test_a_cause_below_the_first_quarter_is_still_there(cause: str) -> None:
    """A reason that no row needs any more must go."""
    rows = [r for r in RULE if cause in r.row.causes and not in_top_quarter(r)]
    assert rows, f"{cause} stands in the first quarter now"


def test_few_rows_rank_below_the_first_quarter() -> None:
    assert sum(not in_top_quarter(r) for r in RULE) <= MOST_BELOW < len(RULE) / 4


@pytest.mark.parametrize("listed", EXCEPTIONS, ids=str)
def test_listed_exception_is_still_one(listed: Listed) -> None:
    """An exception that ranks high by now must lose its reason in the table."""
    assert not in_top_quarter(listed), f"ranks high now: {listed.row.exception}"
    assert listed.row.exception.startswith(("book disagrees: ", "open: "))


def test_exceptions_are_few() -> None:
    assert len(EXCEPTIONS) <= MOST_EXCEPTIONS


def test_families_listed_by_more_tables_rank_higher() -> None:
    (tally,) = (t for t in TABLES if t.order == "tally")
    assert agreement(tally) > LEAST_AGREEMENT


def test_rank_correlation() -> None:
    """Textbook ends of the scale, and ties that share the mean of their places (own echo)."""
    assert spearman([1, 2, 3], [4, 5, 6]) == 1.0
    assert spearman([1, 2, 3], [6, 5, 4]) == -1.0
    assert spearman([1, 1, 2], [5, 5, 9]) == 1.0
    assert spearman([1, 2, 3], [7, 7, 7]) == 0.0
