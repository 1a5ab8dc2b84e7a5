"""Every rule and link group fits its examples: it fires on each match and on no non-match."""

from __future__ import annotations

import pytest

from diagnose.bookcheck.duplicates import duplicates
from diagnose.bookcheck.examples import ExampleRunner, of_statement
from diagnose.bookcheck.shapes import Whole
from knowledge.book import the_book
from knowledge.rule_api import Statement

BOOK = the_book()
RUNNER = ExampleRunner(BOOK)


@pytest.mark.parametrize("statement", BOOK.statements, ids=lambda s: s.id)
def test_statement_fits_its_examples(statement: Statement) -> None:
    """It has a sentence, matches and non-matches, and concludes what they demand.

    A rule without links concludes something on each match and nothing on each non-match. Links
    make some parent likelier on each match, and less likely than that on each non-match.
    """
    assert not list(of_statement(statement, RUNNER))


def test_no_link_or_conclusion_is_stated_twice() -> None:
    """One fact, one home."""
    assert not duplicates(Whole(BOOK)).faults
