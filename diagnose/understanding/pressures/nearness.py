"""Which of several pressures, or of what shows, a speed, a heat or a circumstance belongs to."""

from __future__ import annotations

from collections.abc import Sequence

from diagnose.understanding.pressures.pressures import value_at
from diagnose.understanding.pressures.then_now import left_behind
from diagnose.understanding.sentences.paragraph import Line
from diagnose.understanding.words.phrases import Mark
from knowledge.lexicon.words.joints import BEFORE, UNTIL
from knowledge.reports.words import Shows

_GONE = (Shows.NONE, Shows.LOST)  #: shown by no figure
_GOES_ON = frozenset(["up", "to", "down", "back"])  #: behind "goes": it is not gone
_OF_THE_NEXT = 8  #: words by which a pressure before "rev it to" is farther than one behind it
REVS = frozenset(["rev", "revs", "revved", "revving", "raise", "raised", "bring", "bringing"])
_LED = 2  #: words by which a pressure is farther from what leads in another clause


def nearness(line: Line, head: Mark[object], mark: Mark[object], order: int) -> tuple[int, ...]:
    """What is least for the pressure that a mark belongs to; of equal distance, the same clause."""
    clause = line.clause(mark.first)
    apart = not clause.first <= head.first < clause.last
    leads = mark.first <= clause.first + 1 and apart
    at = head.last == mark.first - 1 and line.word(head.last) in ("at", "@")  # "12 at 2000 and 3"
    # "11 psi, at 600 rpm, 26 at 1800": the next has its own
    turned = line.word(mark.first - 1) in ("to", "it", "at") and REVS & line.words(
        mark.first - 3, mark.first
    )
    if turned and apart and head.last <= clause.first:
        return _OF_THE_NEXT, apart, order  # "pressure 8, rev to 1500, pressure 25"
    at |= line.word(mark.first) == "at" == line.word(mark.last + 2) and head.last < mark.first
    return line.distance(head, mark) + (_LED if leads else 0) - at, apart, order


def of_none(line: Line, head: Mark[object], mark: Mark[object]) -> bool:
    """Whether a mark stands beside "zero" and not beside a pressure: "20 at speed, zero at hot idle"."""
    clause = line.clause(mark.first)
    last = clause.last
    while clause.first > head.last and line.word(last) in ("and", "then", "until"):
        last = line.clause(last).last  # "30 cold, runs 20 minutes pulling, then drops to nothing"
    return any(
        clause.first <= m.first < last
        and (line.distance(m, mark) < line.distance(head, mark) or last > clause.last)
        for m in (*line.find(line.lexicon.shows), *line.find(line.lexicon.bare))
        if m.value in _GONE and not m.overlaps(head) and line.word(m.last) not in _GOES_ON
    )


def of_a_reading(line: Line, head: Mark[Shows], mark: Mark[object], far: int) -> bool:
    """Whether a circumstance is of a pressure that is not one statement with what shows.

    "drops to 5 psi" is one statement.
    """
    figures: list[Mark[object]] = [
        Mark(True, i, i + 1)
        for i, t in enumerate(line.tokens)
        if t.is_figure and value_at(line, i, "psi", True) is not None
    ]
    nearest = min(figures, key=lambda r: line.distance(r, mark), default=None)
    if nearest is None or line.distance(nearest, mark) > far:
        return False
    if left_behind(line, nearest.first) and line.distance(nearest, mark) <= 1:
        return True  # "from 60 cold to 8"
    if of_none(line, nearest, mark):
        return False
    shown = (f for f in figures if f.last > head.first and not left_behind(line, f.first))
    first = next(shown, nearest)
    if first.last <= nearest.first and first.first - head.last <= 1:
        return True  # "drops to 5 psi, 45 at 2000"
    linked = head.overlaps(nearest) or 0 <= nearest.first - head.last <= 4
    return not (linked and line.distance(head, nearest) <= 4)


def parted_by_time(line: Line, marks: Sequence[Mark[object]]) -> bool:
    """Whether "before" or "until" parts two marks: "a good gauge in before the cooler"."""
    ends = sorted(marks, key=lambda m: m.first)
    between = range(ends[0].last, ends[-1].first)
    return any(line.word(k) in BEFORE | UNTIL for k in between)


def how_near(line: Line, head: Mark[str], mark: Mark[object]) -> tuple[int, bool]:
    """What is least for what a pressure was read at: "after an hour's cruising 8 at tickover"."""
    behind = mark.first >= head.last
    led = behind and line.word(mark.first - 1) in ("at", "@")
    return line.distance(head, mark) - led, not behind
