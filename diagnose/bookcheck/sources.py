"""Check that every statement and number has a source, or a mark that it has none."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import fields, is_dataclass
from typing import Any

from diagnose.bookcheck.shapes import Result, Whole
from knowledge.cautions import CAUTIONS
from knowledge.model import Source
from knowledge.rule_api import InhibitorGroup, LinkGroup


def sources(whole: Whole) -> Result:
    """Check words, openings, precedence and cautions, and each number in them."""
    faults: list[str] = []
    count = {"statements": 0, "numbers": 0, "sources": 0}
    seen: set[Source] = set()
    for name, thing in _things(whole):
        own = _own(thing)
        count["statements"] += 1
        seen.update(own)
        if not own:
            faults.append(f"{name}: no source and no mark")
        for source in own:
            faults += _unfit(name, source)
        numbers = list(_numbers(thing, bool(own)))
        count["numbers"] += len(numbers)
        faults += [
            f"{name}: {field}: a number without source or mark" for field, ok in numbers if not ok
        ]
    for caution, wordings in CAUTIONS.items():
        for wording in wordings:
            seen.add(wording.source)
            faults += _unfit(f"caution {caution}", wording.source)
    count["sources"] = len(seen)
    return Result(
        "sources", "every statement and number has a source or a mark", count, tuple(faults)
    )


def _things(whole: Whole) -> Iterator[tuple[str, Any]]:
    for table, words in whole.tables():
        for word in words.values():
            if isinstance(word, LinkGroup | InhibitorGroup):
                held = word.links if isinstance(word, LinkGroup) else word.inhibitors
                for link in held:
                    yield f"{table}: {word.id}: {link.parent.id} to {link.child.id}", link
            else:
                yield f"{table}: {word.id}", word
    openings = {
        id(opening): (f"opening {opening.access} of {layout.id}", opening)
        for layout in whole.book.layouts.values()
        for opening in whole.tree(layout).values()
    }
    yield from openings.values()
    for line in whole.precedences:
        yield f"precedence of {line.check.id}", line


def _unfit(name: str, source: Source) -> Iterable[str]:
    if not (source.key and source.title and source.trust):
        yield f"{name}: source '{source.key}' has no title, or no statement of how far it can be trusted"


def _own(thing: Any) -> list[Source]:
    return [v for f in fields(thing) if isinstance(v := getattr(thing, f.name), Source)]


def _numbers(thing: Any, sourced: bool) -> Iterator[tuple[str, bool]]:
    """Yield each number's field, and whether the number or its statement has a source."""
    for field in fields(thing):
        yield from _numbers_in(field.name, getattr(thing, field.name), sourced)


def _numbers_in(name: str, value: Any, sourced: bool) -> Iterator[tuple[str, bool]]:
    match value:
        case bool():
            return
        case int() | float():
            yield name, sourced
        case dict():
            for key, one in value.items():
                yield from _numbers_in(f"{name}.{key}", one, sourced)
        case tuple() | frozenset():
            marked = sourced or any(isinstance(v, Source) for v in value)
            for one in value:
                yield from _numbers_in(name, one, marked)
        case _ if is_dataclass(value) and not hasattr(value, "id"):
            for field, ok in _numbers(value, sourced or bool(_own(value))):
                yield f"{name}.{field}", ok
