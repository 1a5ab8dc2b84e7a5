"""Every rule keeps what its papers say: it speaks where it must and spares the near miss."""

from __future__ import annotations

import pytest

from diagnose.bookcheck.duplicates import doubles
from diagnose.bookcheck.examples import Bench, of_rule
from diagnose.bookcheck.shapes import Whole
from knowledge.book import the_book
from knowledge.rule_api import Rule

BOOK = the_book()
BENCH = Bench(BOOK)


@pytest.mark.parametrize("rule", BOOK.rules.values(), ids=lambda r: r.id)
def test_rule_keeps_its_papers(rule: Rule) -> None:
    """A sentence, something it catches and something it spares, and it does both.

    A rule without links concludes something in each catch, nothing in each spare; of links some
    parent is likelier in each catch, and less so in each spare.
    """
    assert not list(of_rule(rule, BENCH))


def test_no_two_rules_say_the_same() -> None:
    """One fact, one home."""
    assert not doubles(Whole(BOOK)).faults
