"""What ``show`` and a long ``lookup`` print by default: one screen of what the book holds.

``text.lookup`` has every row.
"""

from __future__ import annotations

from diagnose.output.documents.lookup import BookWord, ListDocument, Row, ShowDocument
from diagnose.output.lines import columns, labelled, width, wrapped
from diagnose.output.text.screen import MOST, Block, command_lines, cut, on_screen

TEXTS, STEPS = 3, 9  #: of a row; steps of a check
#: rows a person wants first; the others go first where the screen is full
FIRST = (
    "asked as",
    "what it does",
    "remedy",
    "usual",
    "accepted",
    "how",
    "steps",
    "seen by",
    "shows",
)
LONG = 240  #: characters of a text
RECORDED = {"finding": "yes", "trial": '"no difference"', "task": "done"}  #: by kind


def show_brief(document: ShowDocument) -> str:
    """Return what the book holds of the words in about thirty lines."""
    blocks = [block for each in document.words for block in _word(each)]
    return on_screen([*blocks, Block(_next_lines(document))])


def list_brief(document: ListDocument) -> str:
    """Return the first words of a kind, and how to see all."""
    names = [_line(w) for w in document.words]
    room = MOST - 3
    if len(names) <= room + 1:
        return "\n".join(names)
    more = f"{len(names) - room:,} more: --full; by words: diagnose lookup WORDS --kind {document.kind}"
    return "\n".join([*names[:room], "", more])


def _line(word: BookWord) -> str:
    """A word in one line; its id is never cut."""
    name = f" [{word.word.id}]"
    return cut(word.word.says, max(10, width() - columns(name))) + name


def _word(word: BookWord) -> list[Block]:
    rows = [r for r in word.rows if r.label != "id"]
    blocks = [Block(wrapped(f"{word.kind}: {word.word.says}", 0, 2))]
    for at, row in enumerate(rows):
        spare = at + 1 if row.label in FIRST else at + 1 + len(rows)
        blocks.append(Block(_row(row), spare=spare, space=False))
    return blocks


def _row(row: Row) -> list[str]:
    lines, most = [], STEPS if row.label == "steps" else TEXTS
    for i, text in enumerate(row.texts[:most]):
        lines += labelled(row.label if i == 0 else "", cut(text, LONG), 2, 18)
    if len(row.texts) > most:
        lines += labelled("", f"and {len(row.texts) - most} more", 2, 18)
    return lines


def _next_lines(document: ShowDocument) -> list[str]:
    first = document.words[0]
    name = first.word.id
    lines = command_lines("Everything, with sources", f"diagnose show {name} --full")
    value = next((v for w in document.words if (v := RECORDED.get(w.kind))), None)
    if any(w.kind == "measure" for w in document.words):
        value = '"VALUE UNIT"'
    if value:
        lines += command_lines("Write it down", f"diagnose record CASE {name}={value}")
    return lines
