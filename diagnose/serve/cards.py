"""The engines' cards of the folder that is served: in it and in its folder ``cards``."""

from __future__ import annotations

import os
from dataclasses import dataclass
from pathlib import Path

from diagnose.case.card import holds_card, load_card
from diagnose.case.case import Case
from diagnose.case.files import is_toml
from diagnose.errors import FileError, UsageError
from diagnose.serve.folder import as_file_name
from knowledge.book import Book
from knowledge.engines.layouts import UNKNOWN

CARDS = "cards"  #: the folder of new cards
MOST_LISTED = 200


@dataclass(frozen=True, slots=True)
class CardLine:
    """One card in a list; ``file`` from the folder that is served."""

    file: str
    name: str
    layout: str  #: in words; may be empty
    filled: int


def cards_in(root: Path, book: Book) -> list[CardLine]:
    """The cards that a job of the folder can name, by their names; those that cannot be read not."""
    found = []
    for folder in (root, root / CARDS):
        names = sorted(os.listdir(folder)) if is_within(root, folder) and folder.is_dir() else []
        for name in names[:MOST_LISTED]:
            path = folder / name
            if is_toml(name) and is_within(root, path) and holds_card(path):
                try:
                    card = load_card(path, book)
                except FileError:
                    continue
                layout = book.layouts.get(card.engine.layout)
                says = layout.says if layout and layout is not UNKNOWN else ""
                file = path.relative_to(root).as_posix()
                found.append(CardLine(file, card.name, says, card.filled))
    return sorted(found, key=lambda line: line.name.lower())


def own_card(root: Path, case: Case) -> Path | None:
    """The file of the card a case names, where it lies within the folder; else None."""
    path = case.card.path if case.card else None
    return path if path is not None and is_within(root, path) else None


def new_card(root: Path, name: str) -> str:
    """A free file for a card of that name, from the folder. Raises UsageError."""
    stem = as_file_name(name)
    if not stem:
        raise UsageError("Name the engine in letters or figures, like: launch V8, number 4")
    for number in range(1, 100):
        file = f"{CARDS}/{stem}.toml" if number == 1 else f"{CARDS}/{stem}-{number}.toml"
        if not os.path.lexists(root / file) and is_within(root, (root / file).parent):
            return file
    raise UsageError(f"There are many cards called {name}; give it another name")


def is_within(root: Path, path: Path) -> bool:
    """Whether a path, links followed, leads to the folder or into it."""
    real = Path(os.path.realpath(path))
    return real == root or root in real.parents
