"""What counts as found with the old shells, and a clearance a little beyond its limit."""

from __future__ import annotations

import pytest

from diagnose.bearings.table import bearings_of
from diagnose.case.loading import from_text
from diagnose.output.documents.bearings import bearings_document
from diagnose.output.text.bearings import bearings_text
from knowledge.book import the_book

BOOK = the_book()
ENGINE = 'schema = 1\n[engine]\nlayout = "distributor_v8"\n'
STANDARD = '[[bearing]]\nno = 1\nwhat = "mains"\nnew_shell = "0.0955 in"\n'


def shown(one: str, *more: str) -> str:
    """What ``bearings`` prints of main 1 with these readings."""
    entry = f'[[bearing]]\nno = 9\nwhat = "main 1"\n{one}\n'
    case = from_text(ENGINE + "".join(more) + entry, None, BOOK)
    text = bearings_text(bearings_document(bearings_of(case, with_pressure=False), "b.toml"))
    return " ".join(text.split())


@pytest.mark.parametrize(
    ("one", "more", "asked"),
    [
        ('inside = "2.4505 in"\njournal = "2.4482 in"', (STANDARD,), True),
        ('strip = "2.3 thou"', (STANDARD,), True),
        ('strip = "4.6 thou"', (STANDARD,), False),
        ('strip = "2.3 thou"\nat = "build"', (STANDARD,), False),
        ('strip = "2.3 thou"', (), False),
    ],
    ids=["gauge", "strip", "worn", "as fitted", "no new shells"],
)
def test_a_clearance_as_new_beside_new_shells_is_asked_about(
    one: str, more: tuple[str, ...], asked: bool
) -> None:
    text = shown(one, *more)
    assert ("main 1 counts as found, with the old shells" in text) is asked
    assert ("record it again with --fitted" in text) is asked


@pytest.mark.parametrize(
    ("strip", "side"), [("3.6 thou", "over the limit"), ("3.4 thou", "under the limit")]
)
def test_a_clearance_near_its_limit_says_on_which_side(strip: str, side: str) -> None:
    text = shown(f'strip = "{strip}"')
    assert f"{side} 3.5, by no more than the measuring error" in text
