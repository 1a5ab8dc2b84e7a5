"""What a user reads, passed through a reading list: length, passive, and words of the glossary.

Before this list was first applied to the book: 9 sentences with a banned word; 8.5 words in the
mean sentence, 15 in the longest but one in twenty, 28 in the longest; 12 % with a verb in the
passive, a state as in "is worn" counted in. Of 200 sentences drawn at random 34 were such as no
workshop manual would print; in a fresh draw after all were read and 3,300 rewritten, 2.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from knowledge.book import the_book
from tests.support.command_line import ROOT
from tests.support.reading_list import BANNED, LONG, Sentence, sentences

SHOWN = sorted(
    path
    for folder in ("output", "cli", "entry", "serve")
    for path in (ROOT / "diagnose" / folder).rglob("*.py")
)
GLOSSARY = (ROOT / "DEVELOPERS.md").read_text("utf-8")


@cache
def book() -> tuple[Sentence, ...]:
    """Every sentence of the book."""
    return tuple(sentences(the_book()))


def test_the_book_uses_no_banned_word() -> None:
    assert [f"{s.where}: {s.text}" for s in book() if s.banned] == []


def test_sentences_are_short() -> None:
    lengths = sorted(s.words for s in book())
    assert len(lengths) > 5000
    assert sum(lengths) / len(lengths) < 8.5
    assert lengths[len(lengths) * 95 // 100] <= 15
    assert lengths[-1] <= LONG


def test_few_sentences_are_passive() -> None:
    assert sum(s.passive for s in book()) / len(book()) < 0.10


def test_a_question_is_answered_in_a_second() -> None:
    lengths = sorted(len(f.asks.split()) for f in the_book().findings.values() if f.asks)
    assert sum(lengths) / len(lengths) < 11.0
    assert lengths[len(lengths) * 95 // 100] <= 16


@pytest.mark.parametrize(
    ("text", "words", "passive", "banned"),
    [
        ("The valve is held against the seat.", 7, True, 1),
        ("Clean the seat.", 3, False, 0),
        ("how is not told", 4, False, 1),
        ("The pump was not driven", 5, True, 0),
        ("Earth the lead; a split pin holds it", 8, False, 2),
        ("Earth (ground) the lead; a split pin (cotter pin) holds it", 11, False, 0),
    ],
)
def test_the_list_itself(text: str, words: int, passive: bool, banned: int) -> None:
    one = Sentence("x", text)
    assert (one.words, one.passive, len(one.banned)) == (words, passive, banned)


def _texts(path: Path) -> Iterator[str]:
    """The text constants of a module that are no docstrings: what its functions print."""
    tree = ast.parse(path.read_text("utf-8"))
    docs = {
        id(node.body[0].value)
        for node in ast.walk(tree)
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef)
        and node.body
        and isinstance(node.body[0], ast.Expr)
    }
    for node in ast.walk(tree):
        text = node.value if isinstance(node, ast.Constant) else None
        if isinstance(text, str) and " " in text and id(node) not in docs:
            yield text


def test_the_program_prints_no_banned_word() -> None:
    found = [
        f"{path.relative_to(ROOT)}: {text}"
        for path in SHOWN
        for text in _texts(path)
        for pattern in BANNED
        if re.search(pattern, text, re.IGNORECASE)
    ]
    assert found == []


def test_the_glossary_names_every_banned_word() -> None:
    part = GLOSSARY.split("Not on screen")[1].split("\n## ")[0]
    for pattern, instead in BANNED.items():
        assert instead.split(",")[0] in part, pattern
