"""Parts named only with what came of them: "sender: no. Pump: a bit", "so the pump did nothing"."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from diagnose.understanding.jobs import Job
from diagnose.understanding.pairing import names_another
from diagnose.understanding.paragraph import Line
from diagnose.understanding.phrases import Mark
from diagnose.understanding.stance import Stance
from knowledge.lexicon.parts_model import PartWorked
from knowledge.lexicon.results_words import (
    ANSWERS,
    IN_TURN,
    LISTS_WORK,
    ROW_JOINS,
    ROW_LEADS,
    SETS_OFF,
)
from knowledge.reports.words import Done, Result

_UNTRUE = Stance.SUPPOSED | Stance.ELSEWHERE | Stance.GUESSED
_LONGEST = 3  #: words of a short answer
Row = tuple[Mark[PartWorked], ...]


def recaps(
    line: Line, results: Sequence[Mark[Result]], own: Sequence[Job], seen: Collection[str | None]
) -> Iterator[tuple[Job, Mark[Result]]]:
    """Trials that a sentence names by the part alone, each with its result.

    ``seen``: the trials that sentences before name in full; then the part alone recalls one.
    """
    for row in _rows(line, own):
        found = _behind(line, row[-1].last, results)
        if found is None:
            continue
        mark, set_off = found
        trials = [_trial(part.value, seen) for part in row]
        known = any(t in seen for t in trials)
        if not (known or (set_off and mark not in results) or _in_turn(line, row[0].first)):
            continue
        for part, trial in zip(row, trials, strict=True):
            if trial and not line.stances.at(part) & _UNTRUE:
                yield Job(line, (part,), Done.RENEWED, trial, None), mark
                if trial == "right_oil" and line.word(part.last - 1) in ("filter", "filters"):
                    yield Job(line, (part,), Done.RENEWED, "new_filter", None), mark


def _trial(part: PartWorked, seen: Collection[str | None]) -> str | None:
    """The trial that a part named alone stands for: one named before, else that it was renewed."""
    before = [t for t in part.trials.values() if t in seen]
    return before[0] if before else part.trials.get(Done.RENEWED)


def _rows(line: Line, own: Sequence[Job]) -> Iterator[Row]:
    """Runs of parts joined by "and" or a comma, of which no work is said in their sentence."""
    listed = _is_list(line)
    parts = [
        p
        for p in line.find(line.lexicon.parts)
        if not names_another(line, p)
        and (listed or not any(j.first < p.last and p.first < j.last for j in own))
    ]
    row: list[Mark[PartWorked]] = []
    for part in parts:
        between = {line.word(k) for k in range(row[-1].last, part.first)} if row else set()
        if row and not (between and between <= ROW_JOINS):
            yield tuple(row)
            row = []
        row.append(part)
    if row:
        yield tuple(row)


def _behind(
    line: Line, at: int, results: Sequence[Mark[Result]]
) -> tuple[Mark[Result], bool] | None:
    """The result straight behind a row, and whether a mark sets it off."""
    set_off = line.word(at) in SETS_OFF
    first = at + 1 if set_off or line.word(at) == "," else at
    near = next((r for r in results if first <= r.first <= first + 1), None)
    if near is not None and not (near.first > first and line.tokens[first].is_mark):
        return near, set_off
    if not set_off:
        return None
    for size in range(_LONGEST, 0, -1):
        said = " ".join(line.word(k) for k in range(first, first + size))
        ends = first + size >= len(line.tokens) or line.tokens[first + size].is_mark
        if ends and said in ANSWERS:
            return Mark(ANSWERS[said], first, first + size), True
    return None


def _in_turn(line: Line, first: int) -> bool:
    """Whether "first", "then" or the like leads to a row, or a list of what was done."""
    lead = [line.word(k) for k in range(first)]
    if _is_list(line):
        return True
    clause = lead[line.clause(first).first :]
    return bool(IN_TURN & set(clause)) and set(clause) <= IN_TURN | ROW_LEADS


def _is_list(line: Line) -> bool:
    """Whether a sentence begins a list of what was done: "Replaced: sender (no), pump (a bit)"."""
    words = [line.word(k) for k in range(3)]
    return ":" in words and bool(LISTS_WORK & set(words[: words.index(":")]))
