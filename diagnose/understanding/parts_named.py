"""The parts and places a sentence names: in full, by a short name, or again by a number or "one"."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from diagnose.understanding.paragraph import Line
from diagnose.understanding.phrases import Mark
from diagnose.understanding.text import stemmed
from diagnose.understanding.values_named import NUMBER_WORDS
from knowledge.lexicon.engine import KINDS, TUBE, Trait
from knowledge.lexicon.joints import LINKS, OF_SEVERAL, SIDES
from knowledge.lexicon.states import Thing
from knowledge.lexicon.work_words import OTHER_CIRCUITS, SENDERS

_LINES_BACK = 3  #: sentences that a short name reaches back
_ROW_BACK = 2  #: sentences that "number 3" reaches back
_OF_THE_CRANK = frozenset(["bearing", "cap"])
_NUMBERED = _OF_THE_CRANK | {"cam bearing"}  #: families of parts that stand in a row
_CAPS = frozenset(["to", *map(str, range(1, 13))])  #: numbers of bearings
_SHELL = stemmed("shell")


def things_in(line: Line, known: Sequence[tuple[Line, Mark[Thing]]]) -> list[Mark[Thing]]:
    """The parts and places named in a sentence, by full name or by a short one."""
    stuff = line.find(line.lexicon.substances)
    named = [
        m
        for m in line.find(line.lexicon.things)
        if not any(s.overlaps(m) and len(s) > len(m) for s in stuff)  # "gasket goo"
        and not (line.word(m.last - 1) in SENDERS and line.word(m.first - 1) in OTHER_CIRCUITS)
        and not _is_the_engine(line, m)
    ]
    every = [*named]
    recent = [m.value.family for x, m in known if line.number - x.number <= _LINES_BACK]
    for i, token in enumerate(line.tokens):
        short = line.lexicon.later.get(token.stem, ())
        place = Mark(None, i, i + 1)
        over = [m for m in named if m.overlaps(place)]
        if not short or any(len(m) > 1 or m.value.family != "other" for m in over):
            continue
        before = recent + [m.value.family for m in named if m.last <= i]
        meant = max(short, key=lambda t: _last_place(before, t.family), default=None)
        if meant is not None and meant.family in before:
            every = [m for m in every if not m.overlaps(place)] + [Mark(meant, i, i + 1)]
    every += [m for m in _again(line, known) if not any(m.overlaps(e) for e in every)]
    return sorted(every, key=lambda m: m.first)


def _is_the_engine(line: Line, mark: Mark[Thing]) -> bool:
    """Whether it says what engine it is, or what it is in: "a pushrod V8 in a pickup"."""
    if line.word(mark.first) == "pushrod" and line.word(mark.last) in KINDS:
        return True
    traits = line.lexicon.traits.find_each(line.tokens)
    return line.word(mark.first) == "pickup" and any(
        t.value is Trait.TRUCK and t.overlaps(mark) for t in traits if line.word(t.last) not in TUBE
    )


def named_things(line: Line) -> list[Mark[Thing]]:
    """The parts and places that a sentence names in full."""
    return things_in(line, ())


def _last_place(families: Sequence[str], family: str) -> int:
    """Where a family was named last; -1 if it was not."""
    return max((k for k, f in enumerate(families) if f == family), default=-1)


def _again(line: Line, known: Sequence[tuple[Line, Mark[Thing]]]) -> Iterator[Mark[Thing]]:
    """Parts named before and now by a number or a place only: "number 3 is wiped", "the rear one"."""
    last = next((m for x, m in reversed(known) if 0 < line.number - x.number <= 1), None)
    near = [m for x, m in known if line.number - x.number <= _ROW_BACK]
    row = next((m.value for m in reversed(near) if m.value.family in _NUMBERED), None)
    if row is not None and row.family in _OF_THE_CRANK:
        row = next(iter(line.lexicon.later.get(_SHELL, ())), None)
    for first, end in _runs(line):
        said = {line.word(k) for k in range(first, end)}
        if said & {"one", "ones"} and said & SIDES:
            if last is not None:
                yield Mark(last.value, first, end)
        elif row is not None and any(line.tokens[k].is_figure for k in range(first, end)):
            yield Mark(row, first, end)


def _runs(line: Line) -> Iterator[tuple[int, int]]:
    """Where words that may name one of several begin what is said, and end before "is", "looks"."""
    for clause in line.sentence.clauses:
        ands = [k + 1 for k in range(clause.first, clause.last) if line.word(k) in ("and", "but")]
        reached = clause.first
        for first in (clause.first, *ands):
            end = first
            while end < clause.last and _names_one(line, end):
                end += 1
            if first >= reached and end > first and line.word(end) in LINKS:
                yield first, end
            reached = max(reached, end)


def _names_one(line: Line, at: int) -> bool:
    """Whether a word may stand in "number 3 and 4", "the rear one"."""
    token = line.tokens[at]
    return (
        (token.is_figure and set(re.findall(r"\w+", token.value)) <= _CAPS)
        or token.word in NUMBER_WORDS
        or token.word in OF_SEVERAL
        or token.word in SIDES
    )
