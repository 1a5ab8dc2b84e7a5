"""``lookup`` and ``show``: the book itself."""

from __future__ import annotations

import json as _json
from dataclasses import fields
from enum import Enum
from typing import Any

import typer

from diagnose.casefile.reading import nearest
from diagnose.errors import UsageError
from diagnose.lookup import Finder, Word
from diagnose.report.lines import labelled, wrapped
from knowledge.book import Book, the_book
from knowledge.units import DIMENSIONS
from knowledge.units import show as shown
from knowledge.vocabulary import Source

SHELVES = (
    "findings",
    "causes",
    "inspections",
    "measures",
    "conditions",
    "layouts",
    "limits",
    "rules",
)


def show_lookup(text: str, json: bool, most: int) -> None:
    """Print the words of the book that fit."""
    hits = Finder(the_book()).find(text, how_many=most)
    if json:
        rows = [
            {"id": h.word.id, "kind": kind(h.word), "says": h.word.says, "score": h.score}
            for h in hits
        ]
        typer.echo(_json.dumps({"schema": 1, "hits": rows}, indent=2, ensure_ascii=False))
        return
    if not hits:
        raise UsageError(f"nothing in the book sounds like '{text[:60]}'; try one plain word of it")
    for hit in hits:
        typer.echo("\n".join(labelled(kind(hit.word), f"{hit.word.says} [{hit.word.id}]", 0, 12)))
    typer.echo(f"\nMore on one: diagnose show {hits[0].word.id}")


def kind(word: Word) -> str:
    """'finding', 'cause' ..."""
    return type(word).__name__.lower()


def find_word(name: str, book: Book) -> list[Word]:
    """Every word of that id, whatever its kind. Raises UsageError with the nearest."""
    wanted = name.strip().lower().replace("-", "_")
    found = [shelf[wanted] for s in SHELVES if wanted in (shelf := getattr(book, s))]
    if not found:
        every = [w for s in SHELVES for w in getattr(book, s)]
        raise UsageError(
            f"no '{name[:60]}' in the book.{nearest(wanted, every)} Try: diagnose lookup {wanted[:40]}"
        )
    return found


def show_word(name: str, json: bool) -> None:
    """Print all that the book holds on one word."""
    book = the_book()
    words = find_word(name, book)
    if json:
        rows = [{"kind": kind(w), **_plain(w)} for w in words]
        typer.echo(_json.dumps({"schema": 1, "words": rows}, indent=2, ensure_ascii=False))
        return
    for word in words:
        lines = wrapped(f"{kind(word)}: {word.says}")
        for key, value in _plain(word).items():
            if key != "says" and value not in ("", [], None):
                for i, part in enumerate(value if isinstance(value, list) else [value]):
                    lines += labelled(key.replace("_", " ") if i == 0 else "", str(part), 2, 18)
        lines += _around(word, book)
        typer.echo("\n".join(lines))


def _plain(word: Word) -> dict[str, Any]:
    out: dict[str, Any] = {}
    for field in fields(word):
        value = getattr(word, field.name)
        if field.name == "does":
            continue
        if field.name in ("plausible", "typical", "spread"):
            dimension = DIMENSIONS[word.dimension]  # type: ignore[union-attr]
            values = value if isinstance(value, tuple) else (value,)
            value = " to ".join(shown(v, dimension) for v in values) if any(values) else ""
        out[field.name] = _simple(value)
    return out


def _simple(value: Any) -> Any:
    if isinstance(value, Source):
        return f"{value.title} ({value.trust})" if value.trust else value.title
    if isinstance(value, Enum):
        return value.value if isinstance(value.value, str) else value.name.lower().replace("_", " ")
    if isinstance(value, tuple):
        return [_simple(v) for v in value]
    if hasattr(value, "has") and hasattr(value, "lacks") and hasattr(value, "readings"):
        there = [f.id for f in sorted(value.has, key=lambda f: f.id)]
        gone = [f"not {f.id}" for f in sorted(value.lacks, key=lambda f: f.id)]
        numbers = [f"{r.rpm:.0f} rpm" for r in value.readings] + [m.id for m, _ in value.measures]
        return ", ".join(there + gone + numbers)
    return getattr(value, "id", value)


def _around(word: Word, book: Book) -> list[str]:
    """Who reveals a finding; what a cause or condition brings about."""
    from diagnose.chaining import Facts, infer

    links = infer(book.rules.values(), Facts()).links
    lines = []
    down = [k for k in links if k.parent is word]
    up = [k for k in links if k.child is word]
    for label, these in (("leads to", down), ("comes of", up)):
        for i, link in enumerate(sorted(these, key=lambda k: -k.strength.value)):
            other = link.child if label == "leads to" else link.parent
            text = f"{link.strength.name.lower()}: {other.says} [{other.id}]"
            lines += labelled(label if i == 0 else "", text, 2, 18)
    seen_by = [i for i in book.inspections.values() if word in (*i.reveals, *i.measures)]
    for i, inspection in enumerate(seen_by):
        text = f"{inspection.says} [{inspection.id}]"
        lines += labelled("seen by" if i == 0 else "", text, 2, 18)
    return lines
