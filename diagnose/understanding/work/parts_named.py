"""The parts and places a sentence names: in full, by a short name, or again by a number or "one"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.values.values_named import NUMBER_WORDS
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.words.text import stemmed
from knowledge.lexicon.engine.traits import KINDS, TUBE, Trait
from knowledge.lexicon.meant.beside_what_shows import HOSES, WATER
from knowledge.lexicon.things.thing import Thing
from knowledge.lexicon.words.joints import EXCEPT, LINKS, OF_SEVERAL, SIDES
from knowledge.lexicon.work.beside_work import OTHER_CIRCUITS, SENDERS

_LINES_BACK = 3  #: sentences that a short name reaches back
_ROW_BACK = 2  #: sentences that "number 3" reaches back
_OF_THE_CRANK = frozenset(["bearing", "cap"])
_NUMBERED = _OF_THE_CRANK | {"cam bearing"}  #: families of parts that stand in a row
_CAPS = frozenset(["to", *map(str, range(1, 13))])  #: numbers of bearings
_SHELL = stemmed("shell")
_BARE = frozenset(["other", "line"])  #: whose names alone may be the short name of another part
_WHICH = frozenset(["which", "that"])


def things_in(line: Line, known: Sequence[tuple[Line, Mark[Thing]]]) -> list[Mark[Thing]]:
    """The parts and places named in a sentence, by full name or by a short one."""
    stuff = line.find(line.lexicon.substances)
    named = [
        m
        for m in line.find(line.lexicon.things)
        if not any(s.overlaps(m) and len(s) > len(m) for s in stuff)  # "gasket goo"
        and not (line.word(m.last - 1) in SENDERS and line.word(m.first - 1) in OTHER_CIRCUITS)
        and not _is_the_engine(line, m)
        and not _carries_water(line, m)
    ]
    every = [*named]
    recent = [m.value.family for x, m in known if line.number - x.number <= _LINES_BACK]
    for i, token in enumerate(line.tokens):
        short = line.lexicon.later.get(token.stem, ())
        place = Mark(None, i, i + 1)
        over = [m for m in named if m.overlaps(place)]
        if not short or any(len(m) > 1 or m.value.family not in _BARE for m in over):
            continue
        before = recent + [m.value.family for m in named if m.last <= i]
        meant = max(short, key=lambda t: _last_place(before, t.family), default=None)
        if meant is not None and meant.family in before:
            every = [m for m in every if not m.overlaps(place)] + [Mark(meant, i, i + 1)]
    every += [m for m in _again(line, known, named) if not any(m.overlaps(e) for e in every)]
    return sorted(every, key=lambda m: m.first)


def _is_the_engine(line: Line, mark: Mark[Thing]) -> bool:
    """Whether it says what engine it is, or what it is in: "a pushrod V8 in a pickup"."""
    if line.word(mark.first) == "pushrod" and line.word(mark.last) in KINDS:
        return True
    traits = line.lexicon.traits.find_each(line.tokens)
    return line.word(mark.first) == "pickup" and any(
        t.value is Trait.TRUCK and t.overlaps(mark) for t in traits if line.word(t.last) not in TUBE
    )


def _carries_water(line: Line, mark: Mark[Thing]) -> bool:
    """Whether a hose is one of the cooling system: "lost all its water through a split hose"."""
    words = {t.word for t in line.tokens}
    bare = len(mark) == 1 and line.word(mark.first) in HOSES
    return bare and bool(words & WATER) and "oil" not in words


def named_things(line: Line) -> list[Mark[Thing]]:
    """The parts and places that a sentence names in full."""
    return things_in(line, ())


def _last_place(families: Sequence[str], family: str) -> int:
    """Where a family was named last; -1 if it was not."""
    return max((k for k, f in enumerate(families) if f == family), default=-1)


def _again(
    line: Line, known: Sequence[tuple[Line, Mark[Thing]]], named: Sequence[Mark[Thing]]
) -> Iterator[Mark[Thing]]:
    """Parts named before and now by a number or a place only: "number 3 is wiped", "the rear one"."""
    last = next((m for x, m in reversed(known) if 0 < line.number - x.number <= 1), None)
    near = [m.value for x, m in known if line.number - x.number <= _ROW_BACK]
    for first, end in _runs(line):
        said = line.words(first, end)
        if said & {"one", "ones"} and said & SIDES:
            if last is not None:
                yield Mark(last.value, first, end)
        elif any(line.tokens[k].is_figure for k in range(first, end)):
            row = _row(line, [*near, *(m.value for m in named if m.last <= first)])
            if row is not None:
                yield Mark(row, first, end)


def _row(line: Line, before: Sequence[Thing]) -> Thing | None:
    """The parts that stand in a row of which one was named last."""
    row = next((t for t in reversed(before) if t.family in _NUMBERED), None)
    if row is not None and row.family in _OF_THE_CRANK:
        return next(iter(line.lexicon.later.get(_SHELL, ())), None)
    return row


def _runs(line: Line) -> Iterator[tuple[int, int]]:
    """Where words that may name one of several begin what is said, and end before "is", "looks"."""
    for clause in line.sentence.clauses:
        inside = range(clause.first, clause.last)
        starts = [k + 1 for k in inside if line.word(k) in ("and", "but") or _excepts(line, k)]
        reached = clause.first
        for first in (clause.first, *starts):
            end = first
            while end < clause.last and _names_one(line, end):
                end += 1
            if first >= reached and end > first and line.word(end) in LINKS | _WHICH:
                yield first, end
            reached = max(reached, end)


def _excepts(line: Line, at: int) -> bool:
    """Whether a word leads to one of several that is not so: "except", "except for"."""
    return line.word(at) in EXCEPT or (
        line.word(at) in ("for", "from") and line.word(at - 1) in EXCEPT
    )


def _names_one(line: Line, at: int) -> bool:
    """Whether a word may stand in "number 3 and 4", "the rear one"."""
    token = line.tokens[at]
    return (
        (token.is_figure and set(re.findall(r"\w+", token.value)) <= _CAPS)
        or token.word in NUMBER_WORDS
        or token.word in OF_SEVERAL
        or token.word in SIDES
    )
