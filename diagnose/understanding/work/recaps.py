"""Parts named only with what came of them: "sender: no. Pump: a bit", "so the pump did nothing"."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from diagnose.understanding.pressures.changes import pressures_at
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.sentences.stance import Stance
from diagnose.understanding.words.phrases import Mark
from diagnose.understanding.work.jobs import Job
from diagnose.understanding.work.pairing import WITH, names_another
from knowledge.lexicon.work.beside_results import (
    ANSWERS,
    CAME_TO,
    ENOUGH,
    IN_TURN,
    LISTS_WORK,
    PLENTY,
    ROW_JOINS,
    ROW_LEADS,
    SETS_OFF,
    WHERE,
)
from knowledge.lexicon.work.beside_work import BY_ITSELF, EVEN, IN_VAIN_JOINS, THAT_IS
from knowledge.lexicon.work.part_worked import PartWorked
from knowledge.reports.words import Done, Result, Shows

_UNTRUE = Stance.SUPPOSED | Stance.ELSEWHERE | Stance.GUESSED
_ONLY_SHOWS = frozenset(["other_gauge"])  #: trials that only show what is so
_KINDS = frozenset([("screw", "on"), ("spin", "on")])  #: of a filter: no work on it
_LONGEST = 3  #: words of a short answer
_TO_COLON = 6  #: words between "no change" and the colon before the parts
Row = tuple[Mark[PartWorked], ...]


def recaps(
    line: Line, results: Sequence[Mark[Result]], own: Sequence[Job], seen: Collection[str | None]
) -> Iterator[tuple[Job, Mark[Result]]]:
    """Trials that a sentence names by the part alone, each with its result.

    ``seen``: the trials that sentences before name in full; then the part alone recalls one.
    """
    for row in rows(line, own):
        found = _ahead(line, row, results) or _behind(line, row[-1].last, results)
        if found is None or _says_where(line, row[0].first):
            continue
        mark, set_off = found
        trials = [trial_of(part.value, seen) for part in row]
        known = any(t in seen for t in trials)
        brief = set_off and (mark not in results or _is_an_answer(line, mark))
        brief = brief or (set_off and mark.last <= row[0].first)
        brief = brief or (set_off and mark.value is Result.HELPED and _ends_its_clause(line, mark))
        if not (known or brief or in_turn(line, row[0].first)):
            continue
        for part, trial in zip(row, trials, strict=True):
            if trial == "engine_rebuilt" and not set_off:
                continue  # "the engine now has good pressure" names no rebuild
            if trial in _ONLY_SHOWS and {"the", "other"} <= line.words(part.first - 2, part.last):
                continue  # "one gauge nearly zero, the other gauge normal": it was there
            if trial in _ONLY_SHOWS and not (set_off or known) and mark.value is Result.CURED:
                continue  # "I started it and the gauge read OK" names no other gauge
            if trial and not line.stances.at(part) & _UNTRUE:
                yield Job(line, (part,), Done.RENEWED, trial, None), mark
                if trial == "right_oil" and line.word(part.last - 1) in ("filter", "filters"):
                    yield Job(line, (part,), Done.RENEWED, "new_filter", None), mark


def trial_of(part: PartWorked, seen: Collection[str | None]) -> str | None:
    """The trial that a part named alone stands for: one named before, else that it was renewed."""
    before = [t for t in part.trials.values() if t in seen]
    return before[0] if before else part.trials.get(Done.RENEWED)


def rows(line: Line, own: Sequence[Job]) -> Iterator[Row]:
    """Runs of parts joined by "and" or a comma, of which no work is said in their sentence."""
    listed = _is_list(line)
    parts = [
        p
        for p in line.find(line.lexicon.parts)
        if not names_another(line, p)
        and (line.word(p.first - 2), line.word(p.first - 1)) not in _KINDS
        and (listed or not any(j.first < p.last and p.first < j.last for j in own))
    ]
    row: list[Mark[PartWorked]] = []
    for part in parts:
        between = line.words(row[-1].last, part.first) if row else set()
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
    if near is not None and near.first > first and line.word(first) in BY_ITSELF:
        return None  # "then the relief bypasses and goes to 0"
    if near is not None and not (near.first > first and line.tokens[first].is_mark):
        return near, set_off
    if not set_off:
        return None
    if (figure := _came_to(line, first)) is not None:
        return figure, True
    for size in range(_LONGEST, 0, -1):
        said = " ".join(line.word(k) for k in range(first, first + size))
        ends = first + size >= len(line.tokens) or line.tokens[first + size].is_mark
        if ends and said in ANSWERS:
            return Mark(ANSWERS[said], first, first + size), True
    return None


def _ahead(
    line: Line, row: Row, results: Sequence[Mark[Result]]
) -> tuple[Mark[Result], bool] | None:
    """The result that a colon sets off before a row: "no change from any of these: pump, sender"."""
    colon = row[0].first - 1
    while line.word(colon) in ROW_JOINS - {","}:
        colon -= 1
    if line.word(colon) != ":":
        return None
    near = [r for r in results if r.last <= colon <= r.last + _TO_COLON]
    return (near[-1], True) if near and near[-1].value is Result.NO_DIFFERENCE else None


def _says_where(line: Line, at: int) -> bool:
    """Whether a part only says where something was put: "a gauge in place of the switch and got 4"."""
    while line.word(at - 1) in ("the", "my", "its", "that", "old"):
        at -= 1
    return line.word(at - 1) in WHERE


def _is_an_answer(line: Line, mark: Mark[Result]) -> bool:
    """Whether a result is one of the short answers: "pump - nope"."""
    return " ".join(line.word(k) for k in range(mark.first, mark.last)) in ANSWERS


def _ends_its_clause(line: Line, mark: Mark[Result]) -> bool:
    """Whether no more follows in its clause: "pump - slight improvement"."""
    return all(line.tokens[k].is_mark for k in range(mark.last, line.clause(mark.first).last))


def brought(line: Line, job: Job) -> Mark[Result] | None:
    """What is set off behind the work: "fitted a new pump (up to 14)", "swapped the gauge: zero"."""
    at = job.last - 1 if line.word(job.last - 1) in SETS_OFF else job.last
    set_off = line.word(at) in SETS_OFF and not _is_list(line)
    found = _behind(line, at, ()) if set_off else None
    return found[0] if found is not None else None


def _came_to(line: Line, first: int) -> Mark[Result] | None:
    """The pressure that a part brought, set off behind it: "new pump (up to 14)"."""
    at = first
    while line.word(at) in CAME_TO:
        at += 1
    if at == first or at >= len(line.tokens) or not (values := pressures_at(line, at)):
        return None
    if values[0] <= ENOUGH and "up" not in line.words(first, at):
        return None  # "new pump, now 5 psi" is the complaint
    return Mark(Result.CURED if values[0] >= PLENTY else Result.HELPED, first, at + 1)


def in_turn(line: Line, first: int) -> bool:
    """Whether "first", "then" or the like leads to a row, or a list of what was done."""
    lead = [line.word(k) for k in range(first)]
    if _is_list(line):
        return True
    clause = lead[line.clause(first).first :]
    if {"started", "began"} & set(clause) and not WITH & set(clause):
        return False  # "started the engine and the gauges read well"
    return bool(IN_TURN & set(clause)) and set(clause) <= IN_TURN | ROW_LEADS


def _is_list(line: Line) -> bool:
    """Whether a sentence begins a list of what was done: "Replaced: sender (no), pump (a bit)"."""
    words = [line.word(k) for k in range(3)]
    return ":" in words and bool(LISTS_WORK & set(words[: words.index(":")]))


def even_with(line: Line, job: Job, own: list[Job], trouble: bool) -> Mark[Result] | None:
    """The words "even with", "and that's with" before trials, where the trouble is named all the same."""
    taken = {k for j in own for k in range(j.first, j.last)}
    at = job.first - 1
    while at >= 0 and (at in taken or line.word(at) in IN_VAIN_JOINS):
        at -= 1
    near = range(at, max(-1, at - 2), -1) if at >= job.first - 3 else (at,)
    even = next((k for k in near if line.word(k) in EVEN), None)
    if even is None and line.word(at) in THAT_IS and line.word(at + 1) == "with":
        return Mark(Result.NO_DIFFERENCE, at, at + 2) if trouble else None
    rest = range(job.last, len(line.tokens))
    shown = any(m.value is not Shows.NORMAL for m in line.stated(line.lexicon.shows))
    if even is None or not (shown or any(pressures_at(line, k) for k in rest)):
        return None
    return Mark(Result.NO_DIFFERENCE, even, even + 1)
