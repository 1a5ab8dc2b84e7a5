"""Trouble that is there since work: "overhaul 3 weeks ago, since then only 0.9 bar at hot idle"."""

from __future__ import annotations

from itertools import pairwise

from diagnose.understanding.jobs import Job
from diagnose.understanding.paragraph import Line
from diagnose.understanding.phrases import Mark
from diagnose.understanding.stance import UNTRUE, Stance
from knowledge.lexicon.beginnings import SINCE_THEN
from knowledge.lexicon.word_sets import set_of as _set
from knowledge.reports.words import LOSSES, Shows

_WRONG = frozenset((*LOSSES, Shows.UNSTEADY, Shows.SLOW, Shows.LAMP, Shows.FALLING))
_LITTLE = frozenset(["only", "just", "barely", "hardly"])
#: between: all was well at first
_WELL = _set("fine good ok okay great perfect well normal happy until till lovely sweet")
_EARLY = 3  #: words of the next sentence before "since then"


def there_since(job: Job, behind: Line | None) -> Mark[bool] | None:
    """The words of the job's sentence that say so, its own where the next one does; None: unsaid."""
    for at, pair in enumerate(pairwise(t.word for t in job.line.tokens)):
        if at >= job.last and pair in SINCE_THEN and _is_wrong(job.line, at):
            return Mark(True, at, at + 2)
    if behind is None:
        return None
    for at, pair in enumerate(pairwise(t.word for t in behind.tokens[: _EARLY + 1])):
        if pair in SINCE_THEN and _is_wrong(behind, at):
            return Mark(True, job.first, job.last)
    return None


def _is_wrong(line: Line, at: int) -> bool:
    """Whether what stands behind "since then" is a trouble, and not that all is well."""
    if line.stances.of[at] & (UNTRUE | Stance.DENIED):
        return False
    shown = [m for m in line.find(line.lexicon.shows) if m.first > at and line.is_stated(m)]
    wrong = [m.first for m in shown if m.value in _WRONG and not line.denied(m)]
    figures = [k for k in range(at, len(line.tokens)) if "pressure" in line.tokens[k].kinds]
    little = [k for k in figures if line.word(k - 1) in _LITTLE]
    first = min((*wrong, *little), default=None)
    return first is not None and not _WELL & {line.word(k) for k in range(at, first)}
