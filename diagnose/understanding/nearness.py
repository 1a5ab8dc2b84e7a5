"""Which of several pressures a speed, a heat or a circumstance belongs to; used by ``readings``."""

from __future__ import annotations

from diagnose.understanding.paragraph import Line
from diagnose.understanding.phrases import Mark

_LED = 2  #: words by which a pressure is farther from what leads in another clause


def nearness(line: Line, head: Mark[object], mark: Mark[object], order: int) -> tuple[int, ...]:
    """What is least for the pressure that a mark belongs to; of equal distance, the same clause."""
    clause = line.clause(mark.first)
    apart = not clause.first <= head.first < clause.last
    leads = mark.first <= clause.first + 1 and apart
    at = head.last == mark.first - 1 and line.word(head.last) in ("at", "@")  # "12 at 2000 and 3"
    # "11 psi, at 600 rpm, 26 at 1800": the next has its own
    at |= line.word(mark.first) == "at" == line.word(mark.last + 2) and head.last < mark.first
    return line.distance(head, mark) + (_LED if leads else 0) - at, apart, order
