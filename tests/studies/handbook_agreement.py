"""How the ranking agrees with published troubleshooting tables; ``python -m tests.studies.handbook_agreement``.

The tables are those of makers' manuals, army manuals and trade writers, restated in
``data/handbook_tables.toml`` with their sources. No table gives chances, so an order is compared
only where it means something: a procedure, from outside in, ranked by its author, shares, or
the number of tables that list a family. Procedures put the easy before the likely: expect
little agreement there.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from math import sqrt
from pathlib import Path
from typing import Any

from diagnose.case.loading import from_text
from diagnose.diagnosis import Diagnosis
from knowledge.book import the_book

TABLES = Path(__file__).parents[1] / "data" / "handbook_tables.toml"
FEWEST = 4  #: rows below which an order says nothing


@dataclass(frozen=True, slots=True)
class Row:
    """One printed row: its place, what it says, the causes that it may mean."""

    no: int
    says: str
    causes: tuple[str, ...]
    weight: float
    exception: str


@dataclass(frozen=True, slots=True)
class Table:
    """One list of a published table for one symptom."""

    id: str
    name: str
    source: str
    read: str
    order: str
    layout: str
    symptom: tuple[str, ...]
    rows: tuple[Row, ...]

    def __str__(self) -> str:
        return f"{self.id} {self.name}"


def _row(raw: dict[str, Any]) -> Row:
    weight = raw.get("weight", -raw["no"])
    causes = tuple(raw["causes"])
    return Row(raw["no"], raw["says"], causes, float(weight), raw.get("exception", ""))


def tables() -> Iterator[Table]:
    """Every list of every table."""
    for table in tomllib.loads(TABLES.read_text(encoding="utf-8"))["table"]:
        for part in table["list"]:
            yield Table(
                table["id"],
                part["name"],
                table["source"],
                table["read"],
                part["order"],
                part["layout"],
                tuple(part["symptom"]),
                tuple(_row(r) for r in part["rows"]),
            )


@cache
def ranked(layout: str, symptom: tuple[str, ...]) -> dict[str, float]:
    """Every cause with its probability for a bare symptom on such an engine, likeliest first."""
    findings = (
        f'[[finding]]\nno = {n}\nwhat = "{what}"\nstate = "present"\n'
        for n, what in enumerate(symptom, 1)
    )
    text = f'schema = 1\n[engine]\nlayout = "{layout}"\n' + "".join(findings)
    diagnosis = Diagnosis(the_book(), from_text(text, None, the_book()))
    return {r.cause.id: r.probability for r in diagnosis.ranking}


def of_family(ranking: dict[str, float], causes: Sequence[str]) -> float:
    """The likeliest of the causes a row may mean; 0 where the engine can have none of them."""
    return max(ranking.get(cause, 0.0) for cause in causes)


def places(values: Sequence[float]) -> list[float]:
    """Place of each value, smallest first; equal values share the mean of their places."""
    return [
        sum(other < value for other in values) + (sum(o == value for o in values) + 1) / 2
        for value in values
    ]


def spearman(first: Sequence[float], second: Sequence[float]) -> float:
    """Rank correlation: Pearson's of the places; 0 where one side is all equal.

    >>> spearman([1, 2, 3, 4], [10, 20, 30, 40])
    1.0
    >>> spearman([1, 2, 3, 4], [2, 1, 4, 3])
    0.6
    """
    a, b = places(first), places(second)
    middle = (len(a) + 1) / 2
    both = sum((x - middle) * (y - middle) for x, y in zip(a, b, strict=True))
    spread = sqrt(sum((x - middle) ** 2 for x in a) * sum((y - middle) ** 2 for y in b))
    return round(both / spread, 12) if spread else 0.0


def agreement(table: Table) -> float:
    """Rank correlation of the printed order with the ranking's."""
    ranking = ranked(table.layout, table.symptom)
    return spearman(
        [row.weight for row in table.rows],
        [of_family(ranking, row.causes) for row in table.rows],
    )


def main() -> None:
    """Print one line for each table whose order means something."""
    print(f"{'table':34}{'order':12}{'rows':>5}{'rank correlation':>18}")
    for table in tables():
        if table.order != "list" and len(table.rows) >= FEWEST:
            print(f"{table!s:34}{table.order:12}{len(table.rows):5}{agreement(table):18.2f}")


if __name__ == "__main__":
    main()
